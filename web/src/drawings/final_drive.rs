//! The tooth marks of the last trial, on the drive and the coast flank.

use super::parts::{Fill, Lean, Line, area, outline, text};
use super::{Drawing, Paper, Plate, Point, Table};
use crate::state::State;
use crate::words::{self, Tongue, filled, final_drive};
use buildbook::sheets::final_drive::TrialEntry;
use yew::{Html, html};

/// Marks on both flanks.
pub static MARKS: Plate = Plate {
    id: "final_drive/marks",
    shape: 0.72,
    draw: marks,
};

fn marks(state: &State, paper: &Paper) -> Option<Drawing> {
    let findings = &state.findings.final_drive;
    let proposal = findings.proposal?;
    let whole = |trial: &&TrialEntry| {
        trial
            .drive
            .value()
            .and(trial.coast.value())
            .and(trial.height.value())
            .is_some()
    };
    let trial = findings.sheet.trials.iter().rev().find(whole)?;
    let tongue = paper.tongue;
    let word = |key: &str, chosen: Option<&&'static str>| {
        chosen
            .map(|chosen| words::choice(key, chosen, tongue))
            .unwrap_or_default()
    };
    let rows = vec![
        vec![
            tongue.say(final_drive::DRIVE).to_owned(),
            word("final_drive/trials/1/drive", trial.drive.value()),
        ],
        vec![
            tongue.say(final_drive::COAST).to_owned(),
            word("final_drive/trials/1/coast", trial.coast.value()),
        ],
        vec![
            words::label("final_drive/trials/1/height", tongue),
            word("final_drive/trials/1/height", trial.height.value()),
        ],
    ];
    let said: Vec<String> = rows.iter().map(|row| row.join(" ")).collect();
    let advice = tongue.say(final_drive::advice(proposal.advice)).to_owned();
    Some(Drawing {
        title: tongue.say(final_drive::MARKS_TITLE).to_owned(),
        description: filled(
            tongue.say(final_drive::MARKS_SAID),
            &[said.join(", "), advice.clone()],
        ),
        marks: html! {
            <>
                { flank(trial.drive.value(), trial.height.value(), 0, final_drive::DRIVE, paper) }
                { flank(trial.coast.value(), trial.height.value(), 1, final_drive::COAST, paper) }
                { text((paper.width / 2.0, paper.height - 14.0), Lean::Middle, &advice) }
            </>
        },
        table: Table {
            head: vec![
                tongue.say(final_drive::MARKS_TITLE).to_owned(),
                tongue.say(final_drive::WHERE).to_owned(),
            ],
            rows,
        },
    })
}

/// A flank seen square on: the toe, lower, to the left; the heel, taller, to the right; the mark an oval on it.
fn flank(
    along: Option<&&'static str>,
    up: Option<&&'static str>,
    place: usize,
    name: words::Phrase,
    paper: &Paper,
) -> Html {
    let tongue: Tongue = paper.tongue;
    let margin = 70.0;
    let tall = (paper.height - 150.0) / 2.0;
    let (left, right) = (margin, paper.width - margin);
    let top = 30.0 + place as f64 * (tall + 44.0);
    let low = top + tall;
    let tooth: Vec<Point> = vec![
        (left, low),
        (left, top + tall * 0.38),
        (right, top),
        (right, low),
    ];
    let across = match along.copied() {
        Some("toe") => 0.2,
        Some("heel") => 0.8,
        _ => 0.47,
    };
    let height = match up.copied() {
        Some("flank") => 0.22,
        Some("face") => 0.76,
        _ => 0.5,
    };
    let x = left + (right - left) * across;
    let crest = top + tall * 0.38 * (1.0 - across);
    let y = low - (low - crest) * height;
    let (wide, high) = ((right - left) * 0.15, (low - crest) * 0.2);
    let oval: Vec<Point> = (0..32)
        .map(|i| {
            let angle = std::f64::consts::TAU * f64::from(i) / 32.0;
            (x + wide * angle.cos(), y + high * angle.sin())
        })
        .collect();
    let middle = (top + low) / 2.0;
    html! {
        <>
            { area(&tooth, Fill::Metal) }
            { outline(&tooth, Line::Outline) }
            { area(&oval, Fill::Now) }
            { text((left - 10.0, middle + 24.0), Lean::End, tongue.say(final_drive::TOE)) }
            { text((right + 10.0, middle + 6.0), Lean::Start, tongue.say(final_drive::HEEL)) }
            { text(((left + right) / 2.0, top + 4.0), Lean::Middle, tongue.say(name)) }
            { text((right - 8.0, top + 24.0), Lean::End, tongue.say(final_drive::FACE)) }
            { text((right - 8.0, low - 8.0), Lean::End, tongue.say(final_drive::FLANK)) }
        </>
    }
}
