//! The parts every drawing is made of: lines by what they mean, dimensions, leaders, hatching, bands.
//!
//! Weights and dashes are classes in `styles/drawing.css`; their habits are those of ISO 128: outlines heavy,
//! dimensions and leaders light, hidden edges dashed, centre lines chain-dotted. Before is dashed and hollow, now is
//! solid and filled, what is taken away is hatched, what is uncertain is a band of brass with edges.

use super::Point;
use std::f64::consts::FRAC_1_SQRT_2;
use yew::{Html, html};

/// What a line stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// An edge that is seen.
    Outline,
    /// An edge that lies behind.
    Hidden,
    /// A line of symmetry or the path of a centre.
    Centre,
    /// A light line: grid, construction, ground.
    Fine,
    /// How it was.
    Before,
    /// How it is now.
    Now,
    /// A limit that is not to be passed.
    Limit,
    /// A second kind of curve beside `Now`: a resistance, a load.
    Against,
}

impl Line {
    fn class(self) -> &'static str {
        match self {
            Self::Outline => "outline",
            Self::Hidden => "hidden-edge",
            Self::Centre => "centre",
            Self::Fine => "fine",
            Self::Before => "before",
            Self::Now => "now",
            Self::Limit => "limit",
            Self::Against => "against",
        }
    }
}

/// How an area is filled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fill {
    /// Solid, the colour of now.
    Now,
    /// Hollow with a dashed edge.
    Before,
    /// Hatched: taken away, or cut.
    Hatched,
    /// The ± of something: a band of brass with edges.
    Uncertain,
    /// A plain piece of metal.
    Metal,
    /// Thin pieces of metal that lie on one another, with light edges between them.
    Leaf,
}

impl Fill {
    fn class(self) -> &'static str {
        match self {
            Self::Now => "area-now",
            Self::Before => "area-before",
            Self::Hatched => "area-hatched",
            Self::Uncertain => "area-uncertain",
            Self::Metal => "area-metal",
            Self::Leaf => "area-leaf",
        }
    }
}

/// How far across or down a text leans from its point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lean {
    /// The text begins at the point.
    Start,
    /// The text is centred on the point.
    Middle,
    /// The text ends at the point.
    End,
}

impl Lean {
    fn anchor(self) -> &'static str {
        match self {
            Self::Start => "start",
            Self::Middle => "middle",
            Self::End => "end",
        }
    }
}

/// A length on the paper as SVG writes it: a tenth of a pixel is finer than any screen shows.
pub fn px(value: f64) -> String {
    let rounded = (value * 10.0).round() / 10.0;
    // Never "-0", which some printers of SVG refuse.
    format!("{}", if rounded == 0.0 { 0.0 } else { rounded })
}

fn path(points: &[Point], closed: bool) -> String {
    let mut data = String::with_capacity(points.len() * 12);
    for (i, (x, y)) in points
        .iter()
        .filter(|(x, y)| x.is_finite() && y.is_finite())
        .enumerate()
    {
        data.push_str(if i == 0 { "M" } else { "L" });
        data.push_str(&px(*x));
        data.push(' ');
        data.push_str(&px(*y));
    }
    if closed && !data.is_empty() {
        data.push('Z');
    }
    data
}

/// A run of straight pieces through the points.
pub fn polyline(points: &[Point], line: Line) -> Html {
    html! { <path class={line.class()} d={path(points, false)} /> }
}

/// One straight piece.
pub fn line(from: Point, to: Point, line: Line) -> Html {
    polyline(&[from, to], line)
}

/// A closed outline without a filling.
pub fn outline(points: &[Point], line: Line) -> Html {
    html! { <path class={line.class()} d={path(points, true)} /> }
}

/// A filled, closed area.
pub fn area(points: &[Point], fill: Fill) -> Html {
    html! { <path class={fill.class()} d={path(points, true)} /> }
}

/// An area whose way is given as SVG writes it: one with arcs.
pub fn shape(way: String, fill: Fill) -> Html {
    html! { <path class={fill.class()} d={way} /> }
}

/// A line whose way is given as SVG writes it: one with arcs.
pub fn shape_line(way: String, line: Line) -> Html {
    html! { <path class={line.class()} d={way} /> }
}

/// The band between two edges that run the same way: the ± of a curve.
pub fn band(upper: &[Point], lower: &[Point]) -> Html {
    let round: Vec<Point> = upper
        .iter()
        .copied()
        .chain(lower.iter().rev().copied())
        .collect();
    area(&round, Fill::Uncertain)
}

/// A circle as a line.
pub fn circle(centre: Point, radius: f64, line: Line) -> Html {
    html! { <circle class={line.class()} cx={px(centre.0)} cy={px(centre.1)} r={px(radius.max(0.0))} /> }
}

/// A round mark on a curve: filled for now, hollow for before.
pub fn dot(centre: Point, fill: Fill) -> Html {
    html! { <circle class={fill.class()} cx={px(centre.0)} cy={px(centre.1)} r="6" /> }
}

/// Text at a point; its baseline lies on the point.
pub fn text(at: Point, lean: Lean, said: &str) -> Html {
    html! { <text x={px(at.0)} y={px(at.1)} text-anchor={lean.anchor()}>{ said }</text> }
}

/// Text that may lie on a curve: a halo of the paper's colour keeps it legible.
pub fn text_on(at: Point, lean: Lean, said: &str) -> Html {
    html! { <text class="halo" x={px(at.0)} y={px(at.1)} text-anchor={lean.anchor()}>{ said }</text> }
}

/// About how wide a text is at 18 px, on the safe side.
pub fn text_width(said: &str) -> f64 {
    said.chars()
        .map(|c| match c {
            'i' | 'l' | 'j' | '.' | ',' | '\'' | '|' | ' ' | '\u{a0}' | '\u{202f}' => 5.5,
            'm' | 'w' | 'M' | 'W' | '%' => 15.5,
            'A'..='Z' => 12.5,
            _ => 10.5,
        })
        .sum()
}

/// An arrow head whose tip lies on `tip`, coming from the direction of `from`.
pub fn arrow_head(tip: Point, from: Point) -> Html {
    let (dx, dy) = (from.0 - tip.0, from.1 - tip.1);
    let length = dx.hypot(dy).max(1e-9);
    let (ux, uy) = (dx / length, dy / length);
    let base = (tip.0 + ux * 11.0, tip.1 + uy * 11.0);
    let points = [
        tip,
        (base.0 - uy * 3.5, base.1 + ux * 3.5),
        (base.0 + uy * 3.5, base.1 - ux * 3.5),
    ];
    html! { <path class="arrow" d={path(&points, true)} /> }
}

/// A dimension between two points, drawn `away` pixels to the left of the way from `from` to `to` (negative: to the
/// right), with its extension lines, arrows and text. Arrows go outside when the room between is narrow.
pub fn dimension(from: Point, to: Point, away: f64, said: &str) -> Html {
    let (dx, dy) = (to.0 - from.0, to.1 - from.1);
    let length = dx.hypot(dy);
    if length < 0.5 {
        return html! {};
    }
    let (ux, uy) = (dx / length, dy / length);
    // To the left of the way, on a paper whose y runs down.
    let (nx, ny) = (uy, -ux);
    let shift = |p: Point, by: f64| (p.0 + nx * by, p.1 + ny * by);
    let beyond = away + 6.0 * away.signum();
    let gap = 4.0 * away.signum();
    let (a, b) = (shift(from, away), shift(to, away));
    let middle = ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0);
    let upright = ux.abs() < 0.35;
    let inside = length
        > if upright {
            60.0
        } else {
            text_width(said) + 40.0
        }
        || length > 90.0;
    let out = |p: Point, by: f64| (p.0 + ux * by, p.1 + uy * by);
    let (tail_a, tail_b) = if inside {
        (b, a)
    } else {
        (out(a, -24.0), out(b, 24.0))
    };
    let (at, lean) = if upright {
        let left = nx * away < 0.0;
        (
            (middle.0 + if left { -8.0 } else { 8.0 }, middle.1 + 6.0),
            if left { Lean::End } else { Lean::Start },
        )
    } else {
        ((middle.0, middle.1 - 7.0), Lean::Middle)
    };
    html! {
        <g class="dimension">
            { polyline(&[shift(from, gap), shift(from, beyond)], Line::Fine) }
            { polyline(&[shift(to, gap), shift(to, beyond)], Line::Fine) }
            { polyline(&[if inside { a } else { tail_a }, if inside { b } else { tail_b }], Line::Fine) }
            { arrow_head(a, tail_a) }
            { arrow_head(b, tail_b) }
            { text_on(at, lean, said) }
        </g>
    }
}

/// A leader from a text to the thing it names.
pub fn leader(from: Point, to: Point) -> Html {
    html! {
        <g class="leader">
            { polyline(&[from, to], Line::Fine) }
            <circle class="leader-end" cx={px(to.0)} cy={px(to.1)} r="3" />
        </g>
    }
}

/// A circle hatched line by line: one that is too small for the pattern shows it as well.
pub fn hatched_circle(centre: Point, radius: f64) -> Html {
    const APART: f64 = 5.0;
    let count = (radius / APART).floor();
    let steps = (0..=(2.0 * count) as u32).map(|step| (f64::from(step) - count) * APART);
    let lines = steps.map(|off| {
        let half = (radius * radius - off * off).max(0.0).sqrt();
        // Lines that rise to the right at 45°, side by side.
        let (across, along) = (off * FRAC_1_SQRT_2, half * FRAC_1_SQRT_2);
        let middle = (centre.0 + across, centre.1 + across);
        format!(
            "M{} {}L{} {}",
            px(middle.0 - along),
            px(middle.1 + along),
            px(middle.0 + along),
            px(middle.1 - along)
        )
    });
    html! {
        <>
            { circle(centre, radius, Line::Outline) }
            <path class="hatch-line" d={lines.collect::<String>()} />
        </>
    }
}

/// The pattern that hatched areas are filled with; the app holds it once for all drawings.
pub fn definitions() -> Html {
    html! {
        <defs>
            <pattern id="hatch" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                <path class="hatch-line" d="M0 0V9" />
            </pattern>
        </defs>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_leaves_out_points_that_are_no_numbers() {
        let points = [(0.0, 0.0), (f64::NAN, 1.0), (10.04, -0.01)];
        assert_eq!(path(&points, false), "M0 0L10 0");
        assert_eq!(path(&[], true), "");
    }

    #[test]
    fn a_longer_text_is_taken_to_be_wider() {
        assert!(text_width("1250 mm") > text_width("125 mm"));
    }

    #[test]
    fn a_dimension_of_nothing_draws_nothing() {
        assert_eq!(dimension((3.0, 3.0), (3.0, 3.0), 20.0, "0"), html! {});
    }
}
