//! The way round the vehicle before the road: where each check is, and how it stands.

use super::parts::{Fill, Lean, Line, area, circle, line, outline, polyline, text_on};
use super::{Drawing, Paper, Plate, Point, Table};
use crate::state::State;
use crate::words::{self, filled, handover};
use buildbook::Key;
use yew::{Html, html};

/// The vehicle from above, its front to the left, with a numbered mark for each check.
pub static ROUND: Plate = Plate::new("handover/round", 0.74, round);

/// Where each of the usual checks is: along the vehicle from its front, and across from its middle, in shares of length and half width.
const PLACES: &[(&str, f64, f64)] = &[
    ("steering_play", 0.33, 0.62),
    ("steering_joints", 0.13, 0.62),
    ("steering_lock", 0.13, -0.62),
    ("column", 0.33, 0.0),
    ("pedal", 0.23, 0.32),
    ("brake_lines", 0.60, 0.62),
    ("parking_brake", 0.42, 0.32),
    ("brakes_even", 0.80, -0.32),
    ("wheel_fixings", 0.27, 1.32),
    ("hub_bearings", 0.27, -1.32),
    ("tyres", 0.69, 1.32),
    ("springs", 0.80, 0.32),
    ("propeller_shaft", 0.60, 0.0),
    ("oil_leaks", 0.23, -0.32),
    ("fuel", 0.60, -0.62),
    ("exhaust", 0.70, -0.32),
    ("throttle", 0.13, 0.0),
    ("head_lamps", 0.03, -0.80),
    ("rear_lamps", 0.98, 0.80),
    ("horn_wipers", 0.03, 0.0),
    ("mirrors_glass", 0.42, -1.32),
    ("seats_belts", 0.42, -0.32),
    ("battery_wiring", 0.51, 0.62),
    ("levels", 0.03, 0.80),
    ("bed_doors", 0.90, 0.0),
    ("loose_parts", 0.70, 0.32),
    ("road_test", 0.98, -0.80),
];

/// A mark's radius.
const MARK: f64 = 16.0;

fn round(state: &State, paper: &Paper) -> Option<Drawing> {
    let sheet = &state.findings.handover.sheet;
    let list = Key::from("handover/checks");
    let tongue = paper.tongue;
    let stands = |id: &str| {
        let check = sheet.checks.iter().find(|check| check.id() == id)?;
        check.state.value().copied()
    };
    let word = |state: Option<&str>| match state {
        Some(state) => words::choice("handover/checks/x/state", state, tongue),
        None => tongue.say(handover::NOT_SEEN).to_owned(),
    };
    let count = |wanted: Option<&str>| {
        let all = sheet.checks.iter();
        let same = all.filter(|check| check.state.value().copied() == wanted);
        same.count().to_string()
    };
    let rows = PLACES.iter().enumerate().map(|(at, (id, ..))| {
        vec![
            (at + 1).to_string(),
            words::row_name(&state.book, &list, id, tongue),
            word(stands(id)),
        ]
    });
    let marks = PLACES
        .iter()
        .enumerate()
        .map(|(at, (id, along, across))| mark(place(paper, *along, *across), at + 1, stands(id)));
    Some(Drawing {
        title: filled(
            tongue.say(handover::ROUND_TITLE),
            &[count(None), count(Some("put_right"))],
        ),
        description: tongue.say(handover::ROUND_SAID).to_owned(),
        marks: html! { <>{ vehicle(paper) }{ marks.collect::<Html>() }</> },
        table: Table {
            head: vec![
                tongue.say(handover::NUMBER).to_owned(),
                tongue.say(handover::WHAT).to_owned(),
                words::label("handover/checks/x/state", tongue),
            ],
            rows: rows.collect(),
        },
    })
}

/// A place on the vehicle, on the paper.
fn place(paper: &Paper, along: f64, across: f64) -> Point {
    let (length, half) = (paper.width - 48.0, paper.height * 0.30);
    (24.0 + along * length, paper.height / 2.0 + across * half)
}

/// The vehicle in a few strokes: cab, bed and wheels.
fn vehicle(paper: &Paper) -> Html {
    let at = |along: f64, across: f64| place(paper, along, across);
    let shape = |points: &[(f64, f64)]| points.iter().map(|(x, y)| at(*x, *y)).collect::<Vec<_>>();
    let cab = shape(&[
        (0.0, -0.6),
        (0.06, -1.0),
        (0.40, -1.0),
        (0.40, 1.0),
        (0.06, 1.0),
        (0.0, 0.6),
    ]);
    let bed = shape(&[(0.43, -1.0), (1.0, -1.0), (1.0, 1.0), (0.43, 1.0)]);
    let wheels = [(0.12, -1.0), (0.12, 1.0), (0.76, -1.0), (0.76, 1.0)].map(|(along, across)| {
        let (near, far) = (across * 1.03, across * 1.20);
        let tyre = [
            (along, near),
            (along + 0.11, near),
            (along + 0.11, far),
            (along, far),
        ];
        area(&shape(&tyre), Fill::Metal)
    });
    html! {
        <>
            { wheels.into_iter().collect::<Html>() }
            { outline(&cab, Line::Fine) }
            { outline(&bed, Line::Fine) }
            { polyline(&shape(&[(0.20, -0.88), (0.18, 0.0), (0.20, 0.88)]), Line::Fine) }
            { line(at(-0.03, 0.0), at(1.03, 0.0), Line::Centre) }
        </>
    }
}

/// A check's number: a heavy ring when it is good, two rings when it has to be put right, dashed while nobody has looked.
fn mark(at: Point, number: usize, stands: Option<&str>) -> Html {
    let (ring, second) = match stands {
        Some("good") => (Line::Now, None),
        Some("put_right") => (Line::Against, Some(Line::Against)),
        Some(_) => (Line::Fine, None),
        None => (Line::Before, None),
    };
    html! {
        <g>
            <circle class="paper" cx={super::parts::px(at.0)} cy={super::parts::px(at.1)} r="16" />
            { circle(at, MARK, ring) }
            { second.map(|line| circle(at, MARK + 5.0, line)).unwrap_or_default() }
            { text_on((at.0, at.1 + 6.5), Lean::Middle, &number.to_string()) }
        </g>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use buildbook::preset_rows;

    #[test]
    fn every_usual_check_has_a_place_round_the_vehicle_in_its_order() {
        let ids: Vec<&str> = PLACES.iter().map(|(id, ..)| *id).collect();
        assert_eq!(ids, preset_rows(&Key::from("handover/checks")));
    }

    #[test]
    fn no_mark_covers_another_on_a_phone() {
        let paper = Paper {
            width: 340.0,
            height: 252.0,
            manner: measure::Manner::default(),
            tongue: words::Tongue::British,
            near: crate::drawings::Near::default(),
        };
        let at: Vec<Point> = PLACES
            .iter()
            .map(|(_, x, y)| place(&paper, *x, *y))
            .collect();
        for (first, a) in at.iter().enumerate() {
            for b in &at[first + 1..] {
                assert!((a.0 - b.0).hypot(a.1 - b.1) > 24.0, "{a:?} and {b:?}");
            }
        }
    }
}
