//! The drawing of the pattern and its image.

use super::ground::{Place, View, centre, panel};
use crate::drawings::parts::{Fill, Lean, Line, line, outline, px, shape, shape_line, text_on};
use crate::drawings::{Drawing, Fit, Labels, Paper, Plate, Point, Span, Table};
use crate::shown::written;
use crate::state::State;
use crate::words::{self, filled, marking};
use buildbook::Key;
use buildbook::sheets::marking::MarkingFindings;
use measure::{Kind, Length};
use trade::marking::{Outline, Placed, error_ellipse};
use yew::{Html, html};

/// The pattern and its image.
pub static PATTERN: Plate = Plate {
    id: "marking/pattern",
    shape: 0.68,
    draw: pattern,
};

/// Everything in one view, metres.
struct Scene<'a> {
    marking: &'a MarkingFindings,
    view: View,
    old: Vec<Place>,
    /// The feature that is worked at.
    chosen: Option<usize>,
    fit: Fit,
}

fn pattern(state: &State, paper: &Paper) -> Option<Drawing> {
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
    let (low, high) = (y.lowest - room, y.highest + room);
    let from_above = marking.sheet.seen_from.value() == Some(&"above");
    let body = panel(from_above, &middle, half, low, high);
    let fit = Fit::new(
        paper,
        Span::of(body.iter().map(|at| at[0]))?,
        Span::of(body.iter().map(|at| at[1]))?,
        12.0,
    );
    let scene = Scene {
        chosen: chosen(state),
        marking,
        view,
        old,
        fit,
    };
    let body: Vec<Point> = body.iter().map(|at| scene.on(*at)).collect();
    let end = |y: f64| {
        let far = y - middle.foot[1];
        scene.on([
            middle.foot[0] + middle.up[0] * far,
            middle.foot[1] + middle.up[1] * far,
        ])
    };
    let (top, foot) = (end(high + 0.05 * (high - low)), end(low));
    let named = if middle.measured {
        marking::CENTRE
    } else {
        marking::CENTRE_GUESSED
    };
    let tongue = paper.tongue;
    Some(Drawing {
        title: tongue.say(marking::PATTERN_TITLE).to_owned(),
        description: filled(
            tongue.say(marking::PATTERN_SAID),
            &[features.len().to_string()],
        ),
        marks: html! {
            <>
                { outline(&body, Line::Outline) }
                { line(top, foot, Line::Centre) }
                { scene.struck(paper) }
                { scene.features() }
                { scene.bands() }
                { scene.datums(paper) }
                { text_on((foot.0, paper.height - 8.0), Lean::Middle, tongue.say(named)) }
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

impl Scene<'_> {
    fn on(&self, at: Place) -> Point {
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

    /// The ± of where each feature goes, drawn larger where it would not be seen.
    fn bands(&self) -> Html {
        html! {}
    }

    /// The datums of both sides, by their letters.
    fn datums(&self, paper: &Paper) -> Html {
        let mut labels = Labels::new(paper);
        let mut crosses = Vec::new();
        let mut mark = |at: Place, said: String| {
            let at = self.on(at);
            labels.add(at, said);
            crosses.push(cross(at));
        };
        for (at, letter) in self.old.iter().zip(["A", "B", "C", "D"]) {
            mark(*at, letter.to_owned());
        }
        if let (Ok(from), true) = (&self.marking.moved.from, self.marking.moved.mirrors) {
            for (at, letter) in from.iter().zip(["A′", "B′"]) {
                mark(self.view.at(at.values()), letter.to_owned());
            }
        }
        html! { <>{ crosses.into_iter().collect::<Html>() }{ labels.placed() }</> }
    }

    /// The arcs that place the chosen feature, with how far they are struck.
    fn struck(&self, paper: &Paper) -> Html {
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
                let said = length(&datum.distance(at), paper);
                let middle = ((here.0 + there.0) / 2.0, (here.1 + there.1) / 2.0);
                html! {
                    <>
                        { line(there, here, Line::Hidden) }
                        { shape_line(arc(there, here), Line::Now) }
                        { text_on(middle, Lean::Middle, &said) }
                    </>
                }
            })
            .collect()
    }
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

fn cross(at: Point) -> Html {
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

fn length(length: &Length, paper: &Paper) -> String {
    written(&length.figure(Kind::Length), &paper.manner).whole()
}

fn table(state: &State, paper: &Paper) -> Table {
    let marking = &state.findings.marking;
    let tongue = paper.tongue;
    let list = Key::from("marking/features");
    let rows = marking.sheet.features.iter().zip(&marking.moved.features);
    let rows = rows.map(|(row, goes)| {
        let figure = |name: &str| {
            let id = format!("marking/{name}/{}", row.id());
            let figure = marking.found.figure(&id);
            figure.map_or_else(
                || "—".to_owned(),
                |figure| written(figure, &paper.manner).whole(),
            )
        };
        let within = goes.at.as_ref().map_or_else(
            |_| "—".to_owned(),
            |at| length(&Length::exact(error_ellipse(at).long), paper),
        );
        vec![
            words::row_name(&state.book, &list, row.id(), tongue),
            figure("arc_a"),
            figure("arc_b"),
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
