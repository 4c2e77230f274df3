//! The tooth marks of the trials on the drive and the coast flank: the last one filled, those before it hollow.

use super::tooth::Flank;
use crate::drawings::parts::{Fill, Lean, text};
use crate::drawings::{Drawing, Paper, Plate, Span, Table};
use crate::shown;
use crate::state::State;
use crate::words::{self, Phrase, filled, final_drive};
use buildbook::sheets::final_drive::{FinalDriveFindings, Proposal, TrialEntry, trial_marks};
use measure::Kind;
use trade::final_drive::{Advice, TrialMark};
use yew::{Html, html};

/// Marks on both flanks; before any trial, the parts of a tooth by their names.
pub static MARKS: Plate = Plate::new("final_drive/marks", 1.05, marks);

fn marks(state: &State, paper: &Paper) -> Option<Drawing> {
    let findings = &state.findings.final_drive;
    let tongue = paper.tongue;
    let trials: Vec<(&TrialEntry, TrialMark)> = findings
        .sheet
        .trials
        .iter()
        .filter_map(|trial| Some((trial, trial_marks(trial)?)))
        .collect();
    let told = findings
        .proposal
        .map(|proposal| advice(&proposal, paper))
        .unwrap_or_default();
    let curved = findings
        .sheet
        .spiral_angle
        .value()
        .is_some_and(|angle| angle.value() > 0.0);
    let [drive, coast] = if curved {
        [final_drive::DRIVE_CURVED, final_drive::COAST_CURVED]
    } else {
        [final_drive::DRIVE, final_drive::COAST]
    };
    let seen: Vec<TrialMark> = trials.iter().map(|(_, marks)| *marks).collect();
    let table = table(&trials, paper);
    Some(Drawing {
        title: tongue.say(final_drive::MARKS_TITLE).to_owned(),
        description: description(findings, &table, &told, paper),
        marks: html! {
            <>
                { flank(&seen, |marks| marks.drive.number(), 0, drive, paper) }
                { flank(&seen, |marks| marks.coast.number(), 1, coast, paper) }
                { told.iter().enumerate().map(|(line, said)| {
                    text((paper.width / 2.0, paper.height - 36.0 + 24.0 * line as f64), Lean::Middle, said)
                }).collect::<Html>() }
            </>
        },
        table,
    })
}

fn description(
    findings: &FinalDriveFindings,
    table: &Table,
    told: &[String],
    paper: &Paper,
) -> String {
    if findings.proposal.is_none() {
        return paper.tongue.say(final_drive::TOOTH_SAID).to_owned();
    }
    let last = table.rows.last().map(|row| row[1..].join(", "));
    filled(
        paper.tongue.say(final_drive::MARKS_SAID),
        &[last.unwrap_or_default(), told.join(": ")],
    )
}

/// The trials with their marks, in words.
fn table(trials: &[(&TrialEntry, TrialMark)], paper: &Paper) -> Table {
    let tongue = paper.tongue;
    let word = |key: &str, chosen: Option<&&'static str>| {
        chosen
            .map(|chosen| words::choice(key, chosen, tongue))
            .unwrap_or_default()
    };
    let rows = trials.iter().map(|(trial, _)| {
        vec![
            trial.id().to_owned(),
            word("final_drive/trials/1/drive", trial.drive.value()),
            word("final_drive/trials/1/coast", trial.coast.value()),
            word("final_drive/trials/1/height", trial.height.value()),
        ]
    });
    Table {
        head: ["note", "drive", "coast", "height"]
            .iter()
            .enumerate()
            .map(|(at, field)| match at {
                0 => words::list_words("final_drive/trials")
                    .map(|words| tongue.say(words.title).to_owned())
                    .unwrap_or_default(),
                _ => words::label(&format!("final_drive/trials/1/{field}"), tongue),
            })
            .collect(),
        rows: rows.collect(),
    }
}

/// What to move first, and by how much: two short lines.
fn advice(proposal: &Proposal, paper: &Paper) -> Vec<String> {
    let tongue = paper.tongue;
    let size = |metres: f64| shown::plain(metres.abs(), Kind::Thickness, &paper.manner);
    let mut lines = vec![tongue.say(final_drive::advice(proposal.advice)).to_owned()];
    let change = match proposal.advice {
        Advice::Good => None,
        Advice::PinionIn | Advice::PinionOut => proposal.shim_change.map(|change| {
            let phrase = if change > 0.0 {
                final_drive::THICKER
            } else {
                final_drive::THINNER
            };
            (phrase, change)
        }),
        Advice::CrownIn | Advice::CrownOut => proposal
            .crown_change
            .map(|change| (final_drive::BY, change)),
    };
    if let Some((phrase, change)) = change.filter(|(_, change)| change.abs() > 1e-9) {
        let said = filled(tongue.say(phrase), &[size(round(change))]);
        lines.push(if proposal.by_trend {
            filled(tongue.say(final_drive::BY_TREND), &[said])
        } else {
            said
        });
    }
    lines
}

/// To a hundredth of a millimetre: no shim is finer.
fn round(metres: f64) -> f64 {
    (metres * 1e5).round() / 1e5
}

/// One flank with the names of its parts, and the marks of the trials.
fn flank(
    seen: &[TrialMark],
    along: fn(&TrialMark) -> f64,
    place: usize,
    name: Phrase,
    paper: &Paper,
) -> Html {
    let tongue = paper.tongue;
    let margin = 24.0;
    // Above each flank its name, below it the names of the ends; below both the advice.
    let room = (paper.height - 66.0) / 2.0;
    let top = 34.0 + room * place as f64;
    let flank = Flank {
        across: Span {
            lowest: margin,
            highest: paper.width - margin,
        },
        down: Span {
            lowest: top,
            highest: top + room - 66.0,
        },
    };
    let low = flank.down.highest;
    let last = seen.len().saturating_sub(1);
    let marks = seen.iter().enumerate().map(|(at, marks)| {
        let fill = if at == last { Fill::Now } else { Fill::Before };
        let (x, y) = flank.middle(along(marks), marks.height.number());
        // The number of the trial, so that the way the marks have taken can be followed.
        let number = if at < last {
            text((x, y + 6.0), Lean::Middle, &(at + 1).to_string())
        } else {
            html! {}
        };
        html! { <>{ flank.marked(along(marks), marks.height.number(), fill) }{ number }</> }
    });
    html! {
        <>
            { text((margin, top - 8.0), Lean::Start, tongue.say(name)) }
            { flank.drawn() }
            { marks.collect::<Html>() }
            { text((paper.width - margin - 8.0, top + 22.0), Lean::End, tongue.say(final_drive::FACE)) }
            { text((margin, low + 22.0), Lean::Start, tongue.say(final_drive::TOE_INSIDE)) }
            { text((paper.width / 2.0, low + 22.0), Lean::Middle, tongue.say(final_drive::FLANK)) }
            { text((paper.width - margin, low + 22.0), Lean::End, tongue.say(final_drive::HEEL_OUTSIDE)) }
        </>
    }
}
