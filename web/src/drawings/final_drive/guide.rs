//! The guide to the tooth marks: where they may lie, and what to move first.

use super::tooth::Flank;
use crate::drawings::parts::{Fill, Lean, text};
use crate::drawings::{Drawing, Paper, Plate, Point, Span, Table};
use crate::state::State;
use crate::words::{filled, final_drive};
use trade::final_drive::{Height, Lengthwise, TrialMark, advice};
use yew::{Html, html};

/// Always there: it needs no entry.
pub static GUIDE: Plate = Plate::new("final_drive/guide", 1.4, guide);

const fn seen(drive: Lengthwise, coast: Lengthwise, height: Height) -> TrialMark {
    TrialMark {
        drive,
        coast,
        height,
    }
}

/// The marks that are shown, in the order of their words.
const SEEN: [TrialMark; 7] = [
    seen(Lengthwise::TowardsToe, Lengthwise::Middle, Height::Middle),
    seen(Lengthwise::Middle, Lengthwise::Middle, Height::Face),
    seen(Lengthwise::Middle, Lengthwise::Middle, Height::Flank),
    seen(Lengthwise::Heel, Lengthwise::Heel, Height::Middle),
    seen(Lengthwise::Toe, Lengthwise::Toe, Height::Middle),
    seen(Lengthwise::Heel, Lengthwise::Toe, Height::Middle),
    seen(Lengthwise::Toe, Lengthwise::Heel, Height::Middle),
];

fn guide(_: &State, paper: &Paper) -> Option<Drawing> {
    let tongue = paper.tongue;
    let rows: Vec<Vec<String>> = SEEN
        .iter()
        .zip(final_drive::PATTERNS)
        .map(|(marks, named)| {
            let first = final_drive::advice(advice(*marks));
            vec![tongue.say(named).to_owned(), tongue.say(first).to_owned()]
        })
        .collect();
    let (wide, tall) = (paper.width / 2.0, paper.height / 4.0);
    let corner = |place: usize| (wide * (place % 2) as f64, tall * (place / 2) as f64);
    let pictures = SEEN
        .iter()
        .enumerate()
        .map(|(at, marks)| picture(*marks, corner(at + 1), (wide, tall), paper));
    Some(Drawing {
        title: tongue.say(final_drive::GUIDE_TITLE).to_owned(),
        description: filled(tongue.say(final_drive::GUIDE_SAID), &[]),
        marks: html! { <>{ key((wide, tall), paper) }{ pictures.collect::<Html>() }</> },
        table: Table {
            head: vec![
                tongue.say(final_drive::WHERE).to_owned(),
                tongue.say(final_drive::FIRST).to_owned(),
            ],
            rows,
        },
    })
}

/// One tooth with the names of its parts.
fn key((wide, tall): Point, paper: &Paper) -> Html {
    let tongue = paper.tongue;
    let flank = Flank {
        across: Span {
            lowest: 14.0,
            highest: wide - 14.0,
        },
        down: Span {
            lowest: 12.0,
            highest: tall - 30.0,
        },
    };
    let middle = wide / 2.0;
    html! {
        <>
            { flank.drawn() }
            { text((middle, 46.0), Lean::Middle, tongue.say(final_drive::FACE)) }
            { text((middle, tall - 38.0), Lean::Middle, tongue.say(final_drive::FLANK)) }
            { text((14.0, tall - 10.0), Lean::Start, tongue.say(final_drive::TOE)) }
            { text((wide - 14.0, tall - 10.0), Lean::End, tongue.say(final_drive::HEEL)) }
        </>
    }
}

/// Drive and coast side by side with the marks, and under them what to move first.
fn picture(marks: TrialMark, (x, y): Point, (wide, tall): Point, paper: &Paper) -> Html {
    let tongue = paper.tongue;
    let half = wide / 2.0;
    let flank = |place: f64, along: f64, name| {
        let flank = Flank {
            across: Span {
                lowest: x + 14.0 + (half - 4.0) * place,
                highest: x + half - 6.0 + (half - 4.0) * place,
            },
            down: Span {
                lowest: y + 30.0,
                highest: y + tall - 30.0,
            },
        };
        html! {
            <>
                { text((flank.across.lowest, y + 22.0), Lean::Start, tongue.say(name)) }
                { flank.drawn() }
                { flank.marked(along, marks.height.number(), Fill::Now) }
            </>
        }
    };
    html! {
        <>
            { flank(0.0, marks.drive.number(), final_drive::DRIVE_SHORT) }
            { flank(1.0, marks.coast.number(), final_drive::COAST_SHORT) }
            { text((x + half + 4.0, y + tall - 10.0), Lean::Middle, tongue.say(final_drive::advice_short(advice(marks)))) }
        </>
    }
}
