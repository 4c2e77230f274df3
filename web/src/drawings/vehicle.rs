//! The vehicle from the side: wheelbase, length, height, and where its weight stands.

use super::parts::{Fill, Lean, Line, area, circle, dimension, line, outline, text_on, text_width};
use super::{Drawing, Fit, NARROW, Paper, Plate, Point, Span, Table};
use crate::shown::written;
use crate::state::State;
use crate::words::{self, filled, vehicle};
use buildbook::Given;
use measure::{Figure, Kind, Length};
use yew::{Html, html};

/// The vehicle from the side.
pub static SIDE: Plate = Plate::new("vehicle/side", 0.62, side);

/// The lengths that the drawing needs, in metres; what is missing is drawn in proportion and bears no dimension.
struct Sizes {
    wheelbase: f64,
    length: f64,
    height: f64,
    bed: f64,
}

fn metres(given: &Given<Length>) -> Option<f64> {
    given.value().map(measure::Quantity::value)
}

fn side(state: &State, paper: &Paper) -> Option<Drawing> {
    let sheet = &state.findings.vehicle.sheet;
    let wheelbase = metres(&sheet.wheelbase)?;
    let length = metres(&sheet.length)
        .unwrap_or(wheelbase * 1.6)
        .max(wheelbase * 1.1);
    let height = metres(&sheet.height).unwrap_or(wheelbase * 0.6);
    let bed = metres(&sheet.bed_length)
        .unwrap_or(length * 0.58)
        .min(length * 0.8);
    let sizes = Sizes {
        wheelbase,
        length,
        height,
        bed,
    };
    let rows: Vec<(String, String)> = [
        ("vehicle/wheelbase", &sheet.wheelbase),
        ("vehicle/length", &sheet.length),
        ("vehicle/height", &sheet.height),
        ("vehicle/bed_length", &sheet.bed_length),
    ]
    .into_iter()
    .filter_map(|(key, given)| {
        let figure = given.value()?.figure(Kind::Length);
        Some((words::label(key, paper.tongue), said(&figure, paper)))
    })
    .collect();
    let description = filled(
        paper.tongue.say(vehicle::SIDE_SAID),
        &[rows
            .iter()
            .map(|(name, value)| format!("{name} {value}"))
            .collect::<Vec<_>>()
            .join(", ")],
    );
    Some(Drawing {
        title: paper.tongue.say(vehicle::SIDE_TITLE).to_owned(),
        description,
        marks: marks(state, &sizes, paper),
        table: Table {
            head: vec![
                paper.tongue.say(words::frame::QUANTITY).to_owned(),
                paper.tongue.say(vehicle::MEASURED).to_owned(),
            ],
            rows: rows
                .into_iter()
                .map(|(name, value)| vec![name, value])
                .collect(),
        },
    })
}

fn said(figure: &Figure, paper: &Paper) -> String {
    written(figure, &paper.manner).whole()
}

fn marks(state: &State, sizes: &Sizes, paper: &Paper) -> Html {
    let sheet = &state.findings.vehicle.sheet;
    // The front stands to the left; the overhangs share what the wheelbase leaves, a third of it in front.
    let overhang = (sizes.length - sizes.wheelbase).max(0.0);
    let front = -overhang * 0.36;
    let rear = front + sizes.length;
    let wheel = (sizes.wheelbase * 0.135).min(sizes.height * 0.24);
    let label = |given: &Given<Length>| {
        given
            .value()
            .map(|length| said(&length.figure(Kind::Length), paper))
    };
    let tall = label(&sheet.height);
    // The height stands behind the tail; where that takes too much of the paper, above it.
    let narrow = paper.width < NARROW;
    let room = match &tall {
        None => 0.0,
        Some(_) if narrow => 12.0,
        Some(said) => text_width(said) + 12.0,
    };
    let fit = Fit::new(
        &Paper {
            width: paper.width - room,
            ..paper.clone()
        },
        Span {
            lowest: front,
            highest: rear,
        },
        Span {
            lowest: -sizes.height * 0.30,
            highest: sizes.height * 1.12,
        },
        28.0,
    );
    let at = |x: f64, y: f64| fit.at(x, y);
    let all = |points: &[(f64, f64)]| -> Vec<Point> { fit.all(points) };
    let floor = wheel * 1.25;
    let bed_top = floor + sizes.height * 0.12;
    let bed_front = rear - sizes.bed;
    let cab = all(&[
        (front, floor),
        (front, sizes.height * 0.55),
        (front + (bed_front - front) * 0.34, sizes.height * 0.60),
        (front + (bed_front - front) * 0.46, sizes.height),
        (bed_front - sizes.wheelbase * 0.02, sizes.height),
        (bed_front - sizes.wheelbase * 0.02, floor),
    ]);
    let deck = all(&[
        (bed_front, floor),
        (bed_front, bed_top),
        (rear, bed_top),
        (rear, floor),
    ]);
    let wheels = [0.0, sizes.wheelbase].map(|x| {
        let centre = at(x, wheel);
        html! {
            <>
                { circle(centre, wheel * fit.scale, Line::Outline) }
                { circle(centre, wheel * fit.scale * 0.52, Line::Outline) }
                { line(at(x, -sizes.height * 0.03), at(x, wheel * 2.3), Line::Centre) }
            </>
        }
    });
    html! {
        <>
            { line(at(front, 0.0), at(rear, 0.0), Line::Fine) }
            { outline(&cab, Line::Outline) }
            { area(&deck, Fill::Metal) }
            { wheels.into_iter().collect::<Html>() }
            { label(&sheet.wheelbase).map(|said| dimension(at(0.0, 0.0), at(sizes.wheelbase, 0.0), -30.0, &said)).unwrap_or_default() }
            { label(&sheet.length).map(|said| dimension(at(front, 0.0), at(rear, 0.0), -62.0, &said)).unwrap_or_default() }
            { label(&sheet.bed_length).map(|said| dimension(at(bed_front, bed_top), at(rear, bed_top), 30.0, &said)).unwrap_or_default() }
            { tall.map(|said| high(at(rear, 0.0), at(rear, sizes.height), &said, narrow)).unwrap_or_default() }
        </>
    }
}

/// The height, behind the tail: what it is stands beside its dimension, or above it.
fn high(foot: Point, top: Point, said: &str, narrow: bool) -> Html {
    if !narrow {
        return dimension(foot, top, -18.0, said);
    }
    html! {
        <>
            { dimension(foot, top, -18.0, "") }
            { text_on((top.0 + 22.0, top.1 - 10.0), Lean::End, said) }
        </>
    }
}
