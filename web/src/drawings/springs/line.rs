//! Load over travel: the line that heights rest on, what friction holds, and the points of the press test.

use super::{name_of, picture, said, told};
use crate::drawings::parts::{Fill, Line, band, dot, polyline};
use crate::drawings::{Axis, Drawing, Labels, Paper, Plate, Plot, Span};
use crate::shown::plain;
use crate::state::State;
use crate::words::springs as phrases;
use measure::Kind;
use yew::{Html, html};

/// Load and travel of the spring.
pub static LINE: Plate = Plate::new("springs/line", 0.62, draw);

fn draw(state: &State, paper: &Paper) -> Option<Drawing> {
    let picture = picture(state)?;
    if picture.line.len() < 2 {
        return None;
    }
    let (across, up) = (
        paper.manner.unit(Kind::Length),
        paper.manner.unit(Kind::Force),
    );
    let shown = |(x, f): (f64, f64)| (across.from_si(x), up.from_si(f));
    let line: Vec<(f64, f64)> = picture.line.iter().map(|point| shown(*point)).collect();
    let edge =
        |share: f64| -> Vec<(f64, f64)> { line.iter().map(|(x, f)| (*x, f * share)).collect() };
    let (upper, lower) = (edge(1.0 + picture.friction), edge(1.0 - picture.friction));
    let points: Vec<((f64, f64), bool)> = picture
        .points
        .iter()
        .map(|(x, f, going)| (shown((*x, *f)), *going))
        .collect();
    let x = Span::of(line.iter().map(|p| p.0).chain(points.iter().map(|p| p.0.0)))?;
    let y = Span::of(
        upper
            .iter()
            .map(|p| p.1)
            .chain(points.iter().map(|p| p.0.1)),
    )?;
    let room = 78.0;
    let plot = Plot::with_room(
        paper,
        x.with_nought(),
        y.with_nought().widened(0.04),
        room,
        24.0,
    );
    let axis = |phrase, unit: &str, span: Span, kind: Kind, si: &dyn Fn(f64) -> f64| {
        let name = said(paper, phrase, unit);
        Axis::round(name, span, 5, |v| bare(&plain(si(v), kind, &paper.manner)))
    };
    let x_axis = axis(
        phrases::TRAVEL_AXIS,
        across.symbol,
        plot.x,
        Kind::Length,
        &|v| across.to_si(v),
    );
    let y_axis = axis(phrases::LOAD_AXIS, up.symbol, plot.y, Kind::Force, &|v| {
        up.to_si(v)
    });
    let mut labels = Labels::new(paper);
    for (place, said) in named(state, &picture.id) {
        let at = shown(place);
        labels.add(plot.at(at.0, at.1), paper.tongue.say(said));
    }
    for (going, phrase) in [(true, phrases::PRESSED), (false, phrases::LET_UP)] {
        let branch: Vec<_> = points.iter().filter(|(_, up)| *up == going).collect();
        if let Some((at, _)) = branch.get(branch.len() / 2) {
            labels.add(plot.at(at.0, at.1), paper.tongue.say(phrase));
        }
    }
    let named: Vec<(f64, f64)> = named(state, &picture.id)
        .into_iter()
        .map(|(place, _)| shown(place))
        .collect();
    let (table, sentence) = told(
        state,
        &[
            "rate",
            "load",
            "travel",
            "bump_load",
            "helper_load",
            "rate_helper",
            "press_friction",
            "friction_height",
        ],
        &picture.id,
        paper,
    );
    let marks = html! {
        <>
            { plot.axes(&x_axis, &y_axis) }
            { band(&plot.all(&upper), &plot.all(&lower)) }
            { polyline(&plot.all(&line), Line::Now) }
            { points.iter().map(|((x, f), going)| dot(plot.at(*x, *f), if *going { Fill::Now } else { Fill::Before })).collect::<Html>() }
            { named.iter().map(|(x, f)| dot(plot.at(*x, *f), Fill::Metal)).collect::<Html>() }
            { labels.placed() }
        </>
    };
    Some(Drawing {
        title: said(paper, phrases::LINE_TITLE, &name_of(state, &picture.id)),
        description: said(paper, phrases::LINE_SAID, &sentence),
        marks,
        table,
    })
}

/// The number of a tick without its unit, which stands at the end of the axis.
fn bare(said: &str) -> String {
    said.split('\u{a0}').next().unwrap_or(said).to_owned()
}

/// The places on the line that have a name.
fn named(state: &State, spring: &str) -> Vec<((f64, f64), crate::words::Phrase)> {
    let value = |result: &str| {
        let id = format!("springs/{result}/{spring}");
        let figure = state.findings.result(&id)?.as_ref().ok()?;
        Some(figure.value())
    };
    let mut named = Vec::new();
    if let (Some(travel), Some(load)) = (value("travel"), value("load")) {
        named.push(((travel, load), phrases::AT_LOAD));
        if let (Some(bump), Some(arch), Some(low)) =
            (value("bump_load"), value("arch"), value("bump_arch"))
        {
            named.push(((travel + arch - low, bump), phrases::AT_BUMP));
        }
    }
    if let (Some(touch), Some(rate)) = (value("helper_load"), value("rate_handbook")) {
        named.push(((touch / rate, touch), phrases::HELPER_TOUCHES));
    }
    named
}
