//! What to measure first: in place of a drawing for which too little is known, a sketch of the thing with the sizes that
//! are wanted, named as their entries are.

use super::parts::{Lean, dimension, leader, px, text, text_width};
use super::{Paper, Point};
use crate::words;
use yew::{Html, html};

/// The field that sketches are drawn on, across and down.
const FIELD: Point = (120.0, 72.0);

/// A sketch: strokes on the field, heavy for outlines and light for construction, and what is to be measured.
struct Sketch {
    plate: &'static str,
    heavy: &'static str,
    light: &'static str,
    taken: &'static [Taken],
}

/// Something to measure.
enum Taken {
    /// From one point to another: drawn as a dimension so many pixels away, named as an entry is.
    Across(Point, Point, f64, &'static str),
    /// Named by a leader from the first point to the second.
    At(Point, Point, &'static str),
    /// A point that has a letter for its name.
    Letter(Point, &'static str),
}

use Taken::{Across, At, Letter};

static SKETCHES: [Sketch; 16] = [
    Sketch {
        plate: "vehicle/side",
        heavy: "M6 42V26l10-2 5-16h19v34M40 30h74v8H40M6 42h8M34 42h50M104 42h10v-4M24 52a9 9 0 1 1 0-18 9 9 0 0 1 0 18ZM94 52a9 9 0 1 1 0-18 9 9 0 0 1 0 18Z",
        light: "M2 52h116M24 43h.1M94 43h.1",
        taken: &[Across(
            (24.0, 43.0),
            (94.0, 43.0),
            -48.0,
            "vehicle/wheelbase",
        )],
    },
    Sketch {
        plate: "marking/pattern",
        heavy: "M6 60V10q54-12 108 0v50H74q0-14-14-14t-14 14ZM88 28a8 8 0 1 1-16 0 8 8 0 0 1 16 0Z",
        light: "M60 2v62M20 50 80 28M100 50 80 28",
        taken: &[
            Across((20.0, 50.0), (100.0, 50.0), -44.0, "marking/ab"),
            At((34.0, 22.0), (42.0, 42.0), "marking/features/1/a"),
            At((100.0, 18.0), (92.0, 41.0), "marking/features/1/b"),
            Letter((14.0, 52.0), "A"),
            Letter((106.0, 52.0), "B"),
        ],
    },
    Sketch {
        plate: "conversion/above",
        heavy: "M8 12h12v26H8ZM100 12h12v26h-12ZM20 25h80M22 25l4 18h68l4-18M96 22 62 10M34 4v14h8V4Z",
        light: "M60 0v60M42 11h20M22 20v12M98 20v12",
        taken: &[
            Across((22.0, 32.0), (98.0, 32.0), -84.0, "conversion/pivots"),
            At((70.0, 3.0), (39.0, 12.0), "conversion/new/1/box_x"),
        ],
    },
    Sketch {
        plate: "conversion/bump",
        heavy: "M14 44q46-26 92 0M10 44a4 4 0 1 1 8 0 4 4 0 0 1-8 0M102 44a4 4 0 1 1 8 0 4 4 0 0 1-8 0M60 44a6 6 0 1 1 0-12 6 6 0 0 1 0 12Z",
        light: "M14 44 60 38M54 6q10 30 2 58M20 14 60 38M62 8q2 32-6 56",
        taken: &[At((96.0, 14.0), (61.0, 22.0), "conversion/rise")],
    },
    Sketch {
        plate: "conversion/lock",
        heavy: "M10 22l10-5 10 23-10 5ZM92 20l10-4 8 24-10 4ZM21 31h80",
        light: "M21 8v50M20 31 12 10M101 8v50M101 31 93 9",
        taken: &[At((44.0, 12.0), (17.0, 14.0), "conversion/stop")],
    },
    Sketch {
        plate: "conversion/ackermann",
        heavy: "M8 8l8-3 8 18-8 3ZM50 8l8-3 7 18-8 3ZM16 15h41M10 48h9v20h-9ZM52 48h9v20h-9Z",
        light: "M16 15l100 43M57 15l59 43M2 58h114",
        taken: &[Across(
            (62.0, 15.0),
            (62.0, 58.0),
            20.0,
            "vehicle/wheelbase",
        )],
    },
    Sketch {
        plate: "conversion/pedal",
        heavy: "M50 8a4 4 0 1 1 0 8 4 4 0 0 1 0-8ZM48 15 34 58l-8 8M52 15 38 60M44 28h40M84 20h26v16H84Z",
        light: "M4 12h90",
        taken: &[
            Across((34.0, 60.0), (50.0, 12.0), 34.0, "conversion/new/1/pad_arm"),
            At((74.0, 54.0), (47.0, 22.0), "conversion/new/1/rod_arm"),
        ],
    },
    Sketch {
        plate: "conversion/way",
        heavy: "M6 14h40q14 0 14 14v14q0 14 14 14h40M6 20h40q8 0 8 8v14q0 20 20 20h40",
        light: "M46 6v18M50 28h18",
        taken: &[
            Across(
                (6.0, 14.0),
                (46.0, 14.0),
                20.0,
                "conversion/routes/1/straights/1/length",
            ),
            At(
                (84.0, 22.0),
                (58.0, 20.0),
                "conversion/routes/1/bends/1/radius",
            ),
        ],
    },
    Sketch {
        plate: "gearing/speeds",
        heavy: "M30 66a30 30 0 1 1 0-60 30 30 0 0 1 0 60ZM30 54a18 18 0 1 1 0-36 18 18 0 0 1 0 36ZM96 64a16 16 0 1 1 0-32 16 16 0 0 1 0 32ZM96 32a6 6 0 1 1 0-12 6 6 0 0 1 0 12Z",
        light: "M30 2v68M0 36h60M76 48h40M96 16v52M96 62a14 14 0 1 1 0-28 14 14 0 0 1 0 28Z",
        taken: &[
            At((66.0, 10.0), (48.0, 20.0), "vehicle/tyre_rear"),
            At((70.0, 62.0), (84.0, 54.0), "gearing/axle"),
        ],
    },
    Sketch {
        plate: "gearing/pull",
        heavy: "M22 52l-5-15 9-6-1-17 18-7 12 33M54 36l50-19 3 8-50 19M40 53a8 8 0 1 1-16 5 8 8 0 0 1 16-5M96 32a8 8 0 1 1-16 5 8 8 0 0 1 16-5",
        light: "M4 72 118 29M4 72h114",
        taken: &[
            At((58.0, 8.0), (38.0, 14.0), "vehicle/height"),
            At((78.0, 62.0), (66.0, 38.0), "vehicle/rear_unladen"),
        ],
    },
    Sketch {
        plate: "springs/side",
        heavy: "M8 24q52 40 104 0M8 20q52 40 104 0M22 37q38 25 76 0M36 48.5q24 12 48 0M8 24a5 5 0 1 1 0-10 5 5 0 0 1 0 10ZM112 24a5 5 0 1 1 0-10 5 5 0 0 1 0 10ZM52 38v24M68 38v24M48 62h24",
        light: "M2 19h116M60 6v62",
        taken: &[
            At(
                (42.0, 12.0),
                (32.0, 34.5),
                "springs/springs/1/leaves/1/length",
            ),
            At(
                (104.0, 54.0),
                (92.0, 36.5),
                "springs/springs/1/leaves/1/thickness",
            ),
        ],
    },
    Sketch {
        plate: "springs/stance",
        heavy: "M4 34h112v6H4M14 40q16 16 32 0M74 40q16 16 32 0M30 62a10 10 0 1 1 0-20 10 10 0 0 1 0 20ZM90 62a10 10 0 1 1 0-20 10 10 0 0 1 0 20Z",
        light: "M30 24v44M90 24v44M2 62h116",
        taken: &[],
    },
    Sketch {
        plate: "paint/elevations",
        heavy: "M6 24h70v36H6ZM6 24l22-14h70l-22 14M98 10v36L76 60",
        light: "M14 30h20v12H14ZM40 30h20v12H40ZM82 26l10-6v12l-10 6Z",
        taken: &[
            Across((6.0, 60.0), (76.0, 60.0), -30.0, "paint/body_length"),
            At((106.0, 6.0), (98.0, 22.0), "paint/body_height"),
            At((100.0, 62.0), (87.0, 53.0), "paint/body_width"),
        ],
    },
    Sketch {
        plate: "paint/films",
        heavy: "M10 56h100v10H10Z",
        light: "M10 48h100v8M10 40h100v8M10 30h100v10M10 22h100v8M10 22v34",
        taken: &[At(
            (60.0, 8.0),
            (60.0, 26.0),
            "paint/systems/1/layers/1/film",
        )],
    },
    Sketch {
        plate: "final_drive/pack",
        heavy: "M46 22 88 8v56L46 50ZM44 28H4v16h40M28 20v32h14V20Z",
        light: "M0 36h120M44 14v44M110 2v68M88 8l22 28M88 64l22-28",
        taken: &[
            Across((44.0, 60.0), (110.0, 60.0), -30.0, "final_drive/depth"),
            At((16.0, 8.0), (43.5, 18.0), "final_drive/old_shim"),
        ],
    },
    Sketch {
        plate: "torque/order",
        heavy: "M60 70a34 34 0 1 1 0-68 34 34 0 0 1 0 68ZM60 50a14 14 0 1 1 0-28 14 14 0 0 1 0 28Z",
        light: "M60 5a5 5 0 1 1 0 10 5 5 0 0 1 0-10ZM60 57a5 5 0 1 1 0 10 5 5 0 0 1 0-10ZM82.5 18a5 5 0 1 1 0 10 5 5 0 0 1 0-10ZM82.5 44a5 5 0 1 1 0 10 5 5 0 0 1 0-10ZM37.5 18a5 5 0 1 1 0 10 5 5 0 0 1 0-10ZM37.5 44a5 5 0 1 1 0 10 5 5 0 0 1 0-10ZM60 15v42M78 25.5 42 46.5M42 25.5l36 21",
        taken: &[
            Letter((60.0, 11.7), "1"),
            Letter((60.0, 63.7), "2"),
            Letter((82.5, 24.7), "3"),
            Letter((37.5, 50.7), "4"),
            Letter((37.5, 24.7), "5"),
            Letter((82.5, 50.7), "6"),
        ],
    },
];

/// The sketch of what to measure first for a drawing; nothing where there is none.
pub fn first_to_measure(plate: &str, paper: &Paper) -> Option<Html> {
    let sketch = SKETCHES.iter().find(|sketch| sketch.plate == plate)?;
    let (width, height) = (paper.width, (paper.width * 0.5).clamp(190.0, 290.0));
    let scale = ((width - 48.0) / FIELD.0).min((height - 60.0) / FIELD.1);
    let (left, top) = ((width - FIELD.0 * scale) / 2.0, 20.0);
    let on_paper = |(x, y): Point| (left + x * scale, top + y * scale);
    let named = |key: &str| words::label(key, paper.tongue);
    let taken = sketch.taken.iter().map(|taken| match *taken {
        Across(from, to, away, key) => dimension(on_paper(from), on_paper(to), away, &named(key)),
        At(from, to, key) => {
            let (said, at) = (named(key), on_paper(from));
            // Above or below the leader's end, and kept on the paper.
            let half = text_width(&said) / 2.0 + 4.0;
            let beside = at.0.clamp(half, (width - half).max(half));
            let below = from.1 > to.1;
            html! { <>
                { leader(at, on_paper(to)) }
                { text((beside, at.1 + if below { 18.0 } else { -6.0 }), Lean::Middle, &said) }
            </> }
        }
        Letter(at, letter) => text(on_paper(at), Lean::Middle, letter),
    });
    Some(html! {
        <svg class="plate first" viewBox={format!("0 0 {} {}", px(width), px(height))} aria-hidden="true" focusable="false">
            <g transform={format!("translate({} {}) scale({scale:.3})", px(left), px(top))}>
                <path class="fine" d={sketch.light} />
                <path class="outline" d={sketch.heavy} />
            </g>
            { for taken }
        </svg>
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Tongue;

    #[test]
    fn what_a_sketch_asks_for_is_called_as_its_entry_is() {
        for sketch in &SKETCHES {
            for taken in sketch.taken {
                if let Across(_, _, _, key) | At(_, _, key) = taken {
                    let said = words::label(key, Tongue::British);
                    let bare = key.rsplit('/').next().unwrap_or_default().replace('_', " ");
                    assert_ne!(said, bare, "{key} has no words");
                }
            }
        }
    }
}
