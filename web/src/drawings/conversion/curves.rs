//! Bump steer over the axle's travel, and the Ackermann error over the lock.

use super::{about, compared};
use crate::drawings::parts::{Fill, Line, dot, line, polyline};
use crate::drawings::{Axis, Drawing, Labels, Paper, Plate, Plot, Span};
use crate::shown::plain;
use crate::state::State;
use crate::words::{Phrase, conversion as said, filled};
use measure::Kind;
use yew::{Html, html};

/// Bump steer, before and now.
pub static BUMP: Plate = Plate::new("conversion/bump", 0.72, bump);

/// The Ackermann error of the outer wheel.
pub static ACKERMANN: Plate = Plate::new("conversion/ackermann", 0.62, ackermann);

const POINTS: usize = 41;

/// A pair of axes for values that are already in the shown units.
fn axes(paper: &Paper, plot: &Plot, x: (Phrase, Kind), y: (Phrase, Kind)) -> Html {
    let axis = |(phrase, kind): (Phrase, Kind), span: Span| {
        let unit = paper.manner.unit(kind);
        let name = filled(paper.tongue.say(phrase), &[unit.symbol.to_owned()]);
        let show = |v: f64| {
            let said = plain(unit.to_si(v), kind, &paper.manner);
            said.trim_end_matches(unit.symbol).trim_end().to_owned()
        };
        Axis::round(name, span, 5, show)
    };
    plot.axes(&axis(x, plot.x), &axis(y, plot.y))
}

fn bump(state: &State, paper: &Paper) -> Option<Drawing> {
    let findings = &state.findings.conversion;
    let (rise, fall) = (
        findings.sheet.rise.value()?.value(),
        findings.sheet.fall.value()?.value(),
    );
    let (angle, length) = (
        paper.manner.unit(Kind::Angle),
        paper.manner.unit(Kind::Length),
    );
    let curve = |at: usize| -> Vec<(f64, f64)> {
        let Ok(steering) = findings.set_ups[at].on_spring() else {
            return Vec::new();
        };
        let side = findings.set_ups[at].side;
        let points = steering.bump_curve(-fall, rise, POINTS).into_iter();
        points
            .map(|(rise, steer)| (side * angle.from_si(steer), length.from_si(rise)))
            .collect()
    };
    let (was, now) = (curve(0), curve(1));
    let all = || was.iter().chain(&now);
    let x = Span::of(all().map(|p| p.0))?;
    let y = Span::of(all().map(|p| p.1))?;
    // Never so fine that a hair's breadth of steer looks like a fault.
    let least = angle.from_si(0.5_f64.to_radians());
    let x = Span {
        lowest: x.lowest.min(-least),
        highest: x.highest.max(least),
    };
    let plot = Plot::with_room(paper, x.widened(0.06), y.widened(0.04), 70.0, 24.0);
    let mut labels = Labels::new(paper);
    for (curve, phrase) in [(&now, said::NOW), (&was, said::WAS)] {
        if let Some(end) = curve.last() {
            labels.add(plot.at(end.0, end.1), paper.tongue.say(phrase));
        }
    }
    let ends = |curve: &[(f64, f64)], fill: Fill| -> Html {
        let ends = curve.first().into_iter().chain(curve.last());
        ends.map(|end| dot(plot.at(end.0, end.1), fill)).collect()
    };
    let marks = html! {
        <>
            { axes(paper, &plot, (said::STEER_AXIS, Kind::Angle), (said::RISE_AXIS, Kind::Length)) }
            { line(plot.at(0.0, plot.y.lowest), plot.at(0.0, plot.y.highest), Line::Centre) }
            { line(plot.at(plot.x.lowest, 0.0), plot.at(plot.x.highest, 0.0), Line::Centre) }
            { polyline(&plot.all(&was), Line::Before) }
            { ends(&was, Fill::Before) }
            { polyline(&plot.all(&now), Line::Now) }
            { ends(&now, Fill::Now) }
            { labels.placed() }
        </>
    };
    let (table, sentence) = compared(state, &["bump_up", "bump_down"], paper);
    Some(Drawing {
        title: paper.tongue.say(said::BUMP_TITLE).to_owned(),
        description: filled(paper.tongue.say(said::BUMP_SAID), &[sentence]),
        marks,
        table,
    })
}

fn ackermann(state: &State, paper: &Paper) -> Option<Drawing> {
    let findings = &state.findings.conversion;
    let angle = paper.manner.unit(Kind::Angle);
    let curve = findings.ackermann_curve(state.findings.vehicle.sheet.wheelbase.value());
    let curve = curve
        .into_iter()
        .map(|(x, y)| (angle.from_si(x), angle.from_si(y)));
    let curve: Vec<(f64, f64)> = curve.collect();
    let x = Span::of(curve.iter().map(|p| p.0))?.with_nought();
    let y = Span::of(curve.iter().map(|p| p.1))?.with_nought();
    let plot = Plot::with_room(paper, x, y.widened(0.1), 70.0, 24.0);
    let end = curve.last().copied()?;
    let mut labels = Labels::new(paper);
    labels.add(
        plot.at(end.0, end.1),
        about(angle.to_si(end.1), 0.01, paper),
    );
    labels.add(
        plot.at(plot.x.highest * 0.35, 0.0),
        paper.tongue.say(said::NO_SCRUB),
    );
    let marks = html! {
        <>
            { axes(paper, &plot, (said::INNER_AXIS, Kind::Angle), (said::ERROR_AXIS, Kind::Angle)) }
            { line(plot.at(plot.x.lowest, 0.0), plot.at(plot.x.highest, 0.0), Line::Centre) }
            { polyline(&plot.all(&curve), Line::Now) }
            { dot(plot.at(end.0, end.1), Fill::Now) }
            { labels.placed() }
        </>
    };
    let (table, sentence) = compared(
        state,
        &["error_left", "error_right", "lock_left", "lock_right"],
        paper,
    );
    Some(Drawing {
        title: paper.tongue.say(said::ACKERMANN_TITLE).to_owned(),
        description: filled(paper.tongue.say(said::ACKERMANN_SAID), &[sentence]),
        marks,
        table,
    })
}
