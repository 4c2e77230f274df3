//! The brake pedal from the side: as the maker had it and on the new side, with what it does to foot, rod and bulkhead.

use super::compared;
use crate::drawings::parts::{Fill, Lean, Line, arrow_head, circle, dot, line, polyline, text_on};
use crate::drawings::{Drawing, Fit, Labels, Paper, Plate, Span};
use crate::shown::written;
use crate::state::State;
use crate::words::{Phrase, conversion as said, filled};
use buildbook::sheets::conversion::PedalEntry;
use yew::{Html, html};

/// The pedal and its forces.
pub static PEDAL: Plate = Plate::new("conversion/pedal", 0.72, draw);

/// How far the push rod is drawn, metres; and how far the pedal leans back, as sine and cosine.
const ROD: f64 = 0.16;
const LEAN: (f64, f64) = (0.26, 0.966);

fn arms(pedal: &PedalEntry) -> Option<(f64, f64)> {
    Some((
        pedal.pad_arm.value()?.value(),
        pedal.rod_arm.value()?.value(),
    ))
}

/// The pedal hung from its pivot, leaning towards the driver on the left, the rod to the right.
fn pedal(fit: &Fit, (pad, rod): (f64, f64), drawn: Line, fill: Fill) -> Html {
    let at = |down: f64| fit.at(-down * LEAN.0, -down * LEAN.1);
    let (pivot, push, foot) = (at(0.0), at(rod), at(pad));
    let end = (push.0 + ROD * fit.scale, push.1);
    html! {
        <>
            { polyline(&[pivot, foot], drawn) }
            { line((foot.0 - 14.0, foot.1 - 10.0), (foot.0 + 6.0, foot.1 + 18.0), drawn) }
            { polyline(&[push, end], drawn) }
            { arrow_head(end, push) }
            { dot(push, fill) }
        </>
    }
}

fn draw(state: &State, paper: &Paper) -> Option<Drawing> {
    let sheet = &state.findings.conversion.sheet;
    let (was, now) = (arms(&sheet.brake_was[0]), arms(&sheet.brake_now[0]));
    let longest = was.iter().chain(&now).map(|arms| arms.0).reduce(f64::max)?;
    let across = Span {
        lowest: -longest * LEAN.0 - 0.05,
        highest: ROD,
    };
    let down = Span {
        lowest: -longest * LEAN.1,
        highest: 0.0,
    };
    let fit = Fit::new(paper, across, down, 52.0);
    let pivot = fit.at(0.0, 0.0);
    let mut labels = Labels::new(paper);
    let figure = |id: &str| {
        let figure = state
            .findings
            .result(&format!("conversion/{id}/now"))?
            .as_ref()
            .ok()?;
        Some(written(figure, &paper.manner).whole())
    };
    let said_of = |phrase: Phrase, id: &str| {
        filled(paper.tongue.say(phrase), &[figure(id).unwrap_or_default()])
    };
    let mut beside_rod = html! {};
    if let Some((pad, rod)) = now {
        let foot = fit.at(-pad * LEAN.0, -pad * LEAN.1);
        labels.add(foot, said_of(said::AT_FOOT, "foot"));
        // The rod's two texts stand over and under it, whatever the paper's width.
        let (x, y) = fit.at(-rod * LEAN.0, -rod * LEAN.1);
        beside_rod = html! {
            <>
                { text_on((x + 26.0, y - 14.0), Lean::Start, &said_of(said::AT_LINE, "pressure")) }
                { text_on((x + 26.0, y + 28.0), Lean::Start, &said_of(said::AT_BULKHEAD, "bulkhead")) }
            </>
        };
    }
    labels.add(pivot, paper.tongue.say(said::PIVOT));
    if let Some((pad, _)) = was.filter(|was| Some(*was) != now) {
        labels.add(
            fit.at(-pad * LEAN.0, -pad * LEAN.1),
            paper.tongue.say(said::WAS),
        );
    }
    let old = was.map(|arms| pedal(&fit, arms, Line::Before, Fill::Before));
    let new = now.map(|arms| pedal(&fit, arms, Line::Now, Fill::Now));
    let marks = html! {
        <>
            { old.unwrap_or_default() }
            { new.unwrap_or_default() }
            { circle(pivot, 9.0, Line::Outline) }
            { beside_rod }
            { labels.placed() }
        </>
    };
    let names = [
        "pedal_ratio",
        "bulkhead",
        "pressure",
        "foot",
        "stroke",
        "pad_travel",
    ];
    let (table, sentence) = compared(state, &names, paper);
    Some(Drawing {
        title: paper.tongue.say(said::PEDAL_TITLE).to_owned(),
        description: filled(paper.tongue.say(said::PEDAL_SAID), &[sentence]),
        marks,
        table,
    })
}
