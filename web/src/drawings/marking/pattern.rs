//! The drawing of the pattern and its image.

use super::ground::{Centre, Place, View, centre, panel};
use crate::drawings::parts::{
    Fill, Lean, Line, area, hatched_circle, line, outline, px, shape, shape_line, text_on,
    text_width,
};
use crate::drawings::{Drawing, Fit, Paper, Plate, Point, Span, Table};
use crate::shown::written;
use crate::state::State;
use crate::words::{self, filled, marking};
use buildbook::Key;
use buildbook::sheets::marking::MarkingFindings;
use measure::{Kind, Length};
use trade::marking::{Ellipse, Form, Outline, Placed, error_ellipse};
use yew::{Html, html};

/// The pattern and its image.
pub static PATTERN: Plate = Plate::new("marking/pattern", 0.68, pattern);

/// How far the widest band of ± may reach, pixels.
const WIDEST_BAND: f64 = 16.0;

/// Everything in one view, metres.
pub struct Scene<'a> {
    pub(super) marking: &'a MarkingFindings,
    pub(super) view: View,
    pub(super) old: Vec<Place>,
    /// The feature that is worked at.
    pub(super) chosen: Option<usize>,
    fit: Fit,
    middle: Centre,
    /// The outline that all lies on, and how far down and up it reaches.
    body: Vec<Place>,
    reaches: [f64; 2],
    /// What the eye is on.
    looks_at: Place,
}

/// Where on the whole paper the place lies that the eye is on.
pub fn looks_at(state: &State, paper: &Paper) -> Option<Point> {
    let scene = Scene::of(state, paper)?;
    Some(scene.on(scene.looks_at))
}

fn pattern(state: &State, paper: &Paper) -> Option<Drawing> {
    let mut scene = Scene::of(state, paper)?;
    let [x, y] = scene.looks_at;
    scene.fit = scene.fit.nearer(paper.near, (x, y));
    let body: Vec<Point> = scene.body.iter().map(|at| scene.on(*at)).collect();
    let [low, high] = scene.reaches;
    let [top, foot] = [high + 0.05 * (high - low), low].map(|y| scene.on(scene.middle.at(y)));
    let tongue = paper.tongue;
    let (bands, times) = scene.bands(paper);
    let mut texts = Vec::new();
    if paper.holds((top.0, 24.0)) {
        let named = if scene.middle.measured {
            marking::CENTRE
        } else {
            marking::CENTRE_GUESSED
        };
        let named = tongue.say(named).to_owned();
        // All of it stays on the paper.
        let half = text_width(&named) / 2.0;
        let middle = top.0.clamp(half, (paper.width - half).max(half));
        texts.push(((middle, 24.0), Lean::Middle, named));
    }
    texts.extend(times.map(|said| ((12.0, paper.height - 10.0), Lean::Start, said)));
    let count = scene.marking.taken.features.iter();
    let count = count.filter(|feature| feature.fix.is_ok()).count();
    Some(Drawing {
        title: tongue.say(marking::PATTERN_TITLE).to_owned(),
        description: filled(
            tongue.say(marking::PATTERN_SAID),
            &[count.to_string(), struck(state, paper)],
        ),
        marks: html! {
            <>
                { outline(&body, Line::Outline) }
                { line(top, foot, Line::Centre) }
                { scene.edges().map(|(from, to, _)| line(from, to, Line::Limit)).collect::<Html>() }
                { scene.features() }
                { scene.there() }
                { bands }
                { scene.struck() }
                { scene.named(state, paper, &texts) }
                { texts.iter().map(|(at, lean, said)| text_on(*at, *lean, said)).collect::<Html>() }
            </>
        },
        table: table(state, paper),
    })
}

/// The feature that is being entered, else the one whose figure stands in the band.
fn chosen(state: &State) -> Option<usize> {
    let features = &state.findings.marking.sheet.features;
    let list = Key::from("marking/features");
    let entered = state
        .view
        .field
        .as_ref()
        .filter(|key| key.is_under(&list))
        .and_then(|key| features.iter().position(|row| key.is_under(&row.key)));
    let answered = || {
        let answer = state.view.answers.get("marking")?;
        features
            .iter()
            .position(|row| answer.rsplit('/').next() == Some(row.id()))
    };
    entered.or_else(answered).or(Some(0))
}

impl<'a> Scene<'a> {
    /// The whole of it on the paper; none before there is a pattern.
    fn of(state: &'a State, paper: &Paper) -> Option<Self> {
        let marking = &*state.findings.marking;
        let datums = marking.taken.datums.as_ref().ok()?;
        let old: Vec<Place> = datums.iter().map(|at| at.values()).collect();
        let there = marking.taken.features.iter();
        let features: Vec<Place> = there
            .filter_map(|feature| Some(feature.fix.as_ref().ok()?.at.values()))
            .collect();
        let all = || old.iter().chain(&features);
        let (x, y) = (
            Span::of(all().map(|at| at[0]))?,
            Span::of(all().map(|at| at[1]))?,
        );
        let middle = centre(state, marking, x.lowest, x.highest);
        let view = View::of(&marking.moved, [old[0], old[1]], &middle);
        let goes = marking.moved.features.iter();
        let new = goes.filter_map(|goes| Some(view.at(goes.at.as_ref().ok()?.values())));
        let reach = all().copied().chain(new).fold(0.1_f64, |reach, at| {
            reach.max((at[0] - middle.foot[0]).abs())
        });
        let width = state.findings.vehicle.sheet.width.value();
        let half = width
            .map_or(0.0, |width| 0.46 * width.value())
            .max(1.12 * reach);
        let room = 0.14 * y.extent().max(0.2);
        let reaches = [y.lowest - room, y.highest + room];
        let from_above = marking.sheet.seen_from.value() == Some(&"above");
        let body = panel(from_above, &middle, half, reaches[0], reaches[1]);
        let chosen = chosen(state);
        let looks_at = chosen
            .and_then(|chosen| marking.moved.features.get(chosen)?.at.as_ref().ok())
            .map_or(middle.foot, |at| view.at(at.values()));
        let fit = Fit::new(
            paper,
            Span::of(body.iter().map(|at| at[0]))?,
            Span::of(body.iter().map(|at| at[1]))?,
            12.0,
        );
        Some(Self {
            marking,
            view,
            old,
            chosen,
            fit,
            middle,
            body,
            reaches,
            looks_at,
        })
    }

    pub(super) fn on(&self, at: Place) -> Point {
        self.fit.at(at[0], at[1])
    }

    fn path(&self, shape: &Outline) -> String {
        let mut data = String::new();
        let step = |data: &mut String, letter: char, at: Place| {
            let (x, y) = self.on(at);
            data.push_str(&format!("{letter}{} {}", px(x), px(y)));
        };
        for (i, piece) in shape.pieces().enumerate() {
            if i == 0 {
                step(&mut data, 'M', piece.from);
            }
            match piece.arc {
                None => step(&mut data, 'L', piece.to),
                Some(arc) => {
                    let radius = px(arc.radius * self.fit.scale);
                    let large = u8::from(arc.sweep.abs() > std::f64::consts::PI);
                    // On the paper y runs down, so what went anticlockwise still looks so, and SVG calls that 0.
                    let sweep = u8::from(arc.sweep < 0.0);
                    data.push_str(&format!("A{radius} {radius} 0 {large} {sweep} "));
                    let (x, y) = self.on(piece.to);
                    data.push_str(&format!("{} {}", px(x), px(y)));
                }
            }
        }
        if shape.closed {
            data.push('Z');
        }
        data
    }

    /// Every feature where it was, and where it goes.
    fn features(&self) -> Html {
        let taken = &self.marking.taken.features;
        let rows = self.marking.sheet.features.iter();
        let pairs = rows.zip(taken).zip(&self.marking.moved.features);
        pairs
            .map(|((row, fixed), goes)| {
                let was = fixed.fix.as_ref().ok().map(|fix| {
                    let turn = row.turn.value().cloned();
                    match (&fixed.shape, turn) {
                        (Ok(shape), Some(turn)) => {
                            Placed::new(shape.clone(), fix.at.clone(), turn).outline()
                        }
                        _ => spot(fix.at.values()),
                    }
                });
                let now = match (&goes.placed, &goes.at) {
                    (Ok(placed), _) => Some(placed.outline()),
                    (Err(_), Ok(at)) => Some(spot(at.values())),
                    _ => None,
                };
                html! {
                    <>
                        { was.map(|was| shape_line(self.path(&was), Line::Before)).unwrap_or_default() }
                        { now.map(|now| self.filled(&self.view.outline(&now))).unwrap_or_default() }
                    </>
                }
            })
            .collect()
    }

    fn filled(&self, outline: &Outline) -> Html {
        if outline.closed {
            shape(self.path(outline), Fill::Now)
        } else {
            shape_line(self.path(outline), Line::Now)
        }
    }

    /// What is on the new side already.
    fn there(&self) -> Html {
        let there = self.marking.moved.there.iter();
        there
            .map(|(_, placed)| {
                if placed.shape.form() != Form::Round {
                    let way = self.path(&self.view.outline(&placed.outline()));
                    return shape(way, Fill::Hatched);
                }
                let at = self.on(self.view.at(placed.at.values()));
                let across = placed.shape.sizes().first().map_or(0.0, Length::value);
                hatched_circle(at, across / 2.0 * self.fit.scale)
            })
            .collect()
    }

    /// The edges of the sheet metal, each as far as its two points and a little on, and the row of it.
    pub(super) fn edges(&self) -> impl Iterator<Item = (Point, Point, usize)> + '_ {
        let edges = self.marking.edges.iter().enumerate();
        edges.map(|(row, edge)| {
            let [a, b] = edge
                .ends
                .each_ref()
                .map(|at| self.on(self.view.at(at.values())));
            let on = |from: Point, to: Point| {
                (to.0 + 0.1 * (to.0 - from.0), to.1 + 0.1 * (to.1 - from.1))
            };
            (on(b, a), on(a, b), row)
        })
    }

    /// The ± of where each feature goes: its 95 % ellipse, drawn larger where it would not be seen; and how many times larger.
    fn bands(&self, paper: &Paper) -> (Html, Option<String>) {
        let goes = self.marking.moved.features.iter();
        let ellipses: Vec<(Place, Ellipse)> = goes
            .filter_map(|goes| {
                let at = goes.at.as_ref().ok()?;
                Some((at.values(), error_ellipse(at)))
            })
            .collect();
        let widest = ellipses.iter().map(|(_, ellipse)| ellipse.long);
        let widest = widest.fold(0.0, f64::max) * self.fit.scale;
        if widest <= 0.0 {
            return (html! {}, None);
        }
        let times = [50.0, 20.0, 10.0, 5.0, 2.0]
            .into_iter()
            .find(|times| widest * times <= WIDEST_BAND)
            .unwrap_or(1.0);
        let bands = ellipses
            .iter()
            .map(|(at, ellipse)| area(&self.band(*at, ellipse, times), Fill::Uncertain));
        let said = || {
            filled(
                paper.tongue.say(marking::BANDS),
                &[(times as u32).to_string()],
            )
        };
        (bands.collect(), (times > 1.0).then(said))
    }

    fn band(&self, at: Place, ellipse: &Ellipse, times: f64) -> Vec<Point> {
        let (sin, cos) = ellipse.angle.sin_cos();
        let corner = |i: u32| {
            let (across, along) = (std::f64::consts::TAU * f64::from(i) / 36.0).sin_cos();
            let (u, v) = (ellipse.long * along * times, ellipse.short * across * times);
            let place = [at[0] + cos * u - sin * v, at[1] + sin * u + cos * v];
            self.on(self.view.at(place))
        };
        (0..36).map(corner).collect()
    }

    /// The arcs that place the chosen feature, with how far they are struck.
    fn struck(&self) -> Html {
        let moved = &self.marking.moved;
        let Some(goes) = self.chosen.and_then(|chosen| moved.features.get(chosen)) else {
            return html! {};
        };
        let (Ok(from), Ok(at)) = (&moved.from, &goes.at) else {
            return html! {};
        };
        let here = self.on(self.view.at(at.values()));
        from.iter()
            .map(|datum| {
                let there = self.on(self.view.at(datum.values()));
                html! {
                    <>
                        { line(there, here, Line::Hidden) }
                        { shape_line(arc(there, here), Line::Now) }
                    </>
                }
            })
            .collect()
    }
}

/// The feature that the arcs are for, and how far they are struck.
fn struck(state: &State, paper: &Paper) -> String {
    let marking = &state.findings.marking;
    let row = chosen(state).and_then(|chosen| marking.sheet.features.get(chosen));
    row.map_or_else(String::new, |row| {
        let name = words::row_name(
            &state.book,
            &Key::from("marking/features"),
            row.id(),
            paper.tongue,
        );
        format!(
            "{name}, {}, {}",
            cell(state, row.id(), "arc_a", paper),
            cell(state, row.id(), "arc_b", paper)
        )
    })
}

/// A result of a feature as text; a dash where there is none.
fn cell(state: &State, row: &str, name: &str, paper: &Paper) -> String {
    let figure = state
        .findings
        .marking
        .found
        .figure(&format!("marking/{name}/{row}"));
    figure.map_or_else(
        || "—".to_owned(),
        |figure| written(figure, &paper.manner).whole(),
    )
}

/// A part of the circle about a datum that passes a place, a little to both sides of it.
fn arc(about: Point, through: Point) -> String {
    let (dx, dy) = (through.0 - about.0, through.1 - about.1);
    let radius = dx.hypot(dy).max(1.0);
    let half = (34.0 / radius).min(0.6);
    let direction = dy.atan2(dx);
    let end = |turn: f64| {
        let (sin, cos) = (direction + turn).sin_cos();
        format!(
            "{} {}",
            px(about.0 + radius * cos),
            px(about.1 + radius * sin)
        )
    };
    let r = px(radius);
    format!("M{}A{r} {r} 0 0 1 {}", end(-half), end(half))
}

/// The cross of a datum.
pub fn cross(at: Point) -> Html {
    let arm = 8.0;
    html! {
        <>
            { line((at.0 - arm, at.1), (at.0 + arm, at.1), Line::Outline) }
            { line((at.0, at.1 - arm), (at.0, at.1 + arm), Line::Outline) }
        </>
    }
}

/// A place whose size is not known yet.
fn spot(at: Place) -> Outline {
    Outline::circle(at, 0.004)
}

/// A length as the drawing says it.
pub fn length(length: &Length, paper: &Paper) -> String {
    written(&length.figure(Kind::Length), &paper.manner).whole()
}

fn table(state: &State, paper: &Paper) -> Table {
    let marking = &state.findings.marking;
    let tongue = paper.tongue;
    let list = Key::from("marking/features");
    let rows = marking.sheet.features.iter().zip(&marking.moved.features);
    let rows = rows.map(|(row, goes)| {
        let within = goes.at.as_ref().map_or_else(
            |_| "—".to_owned(),
            |at| length(&Length::exact(error_ellipse(at).long), paper),
        );
        vec![
            words::row_name(&state.book, &list, row.id(), tongue),
            cell(state, row.id(), "arc_a", paper),
            cell(state, row.id(), "arc_b", paper),
            within,
        ]
    });
    Table {
        head: [
            marking::FEATURE,
            marking::FROM_A,
            marking::FROM_B,
            marking::WITHIN,
        ]
        .map(|phrase| tongue.say(phrase).to_owned())
        .to_vec(),
        rows: rows.collect(),
    }
}
