//! What the marks of the last trial ask for, and the next shim by the trend of all.

use ::trade::final_drive::{self as trade, Advice, Height, Lengthwise, TrialMark};
use measure::{Kind, Length};

use super::{FinalDriveSheet, TrialEntry};
use crate::{Found, Lack};

/// What to try next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Proposal {
    /// What to change first.
    pub advice: Advice,
    /// The next shim by the trend, metres, where the trials show one.
    pub shim: Option<f64>,
}

/// The proposal from the trials whose marks were entered whole.
pub(super) fn proposal(sheet: &FinalDriveSheet, found: &mut Found) -> Option<Proposal> {
    let last = sheet.trials.iter().rev().find_map(marks)?;
    let trend: Vec<(f64, Height)> = sheet
        .trials
        .iter()
        .filter_map(|trial| Some((trial.shim.value()?.value(), height(trial)?)))
        .collect();
    let shim = trade::next_shim(&trend);
    let shown: Result<Length, Lack> = match shim {
        Some(shim) => Ok(Length::exact(shim)),
        None => Err(Lack::Needs(vec![sheet.key.under("trials")])),
    };
    found.show("final_drive/next_shim", Kind::Thickness, &shown);
    Some(Proposal {
        advice: trade::advice(last),
        shim,
    })
}

fn marks(trial: &TrialEntry) -> Option<TrialMark> {
    let along = |word: &str| match word {
        "toe" => Lengthwise::Toe,
        "heel" => Lengthwise::Heel,
        _ => Lengthwise::Middle,
    };
    Some(TrialMark {
        drive: along(trial.drive.value()?),
        coast: along(trial.coast.value()?),
        height: height(trial)?,
    })
}

fn height(trial: &TrialEntry) -> Option<Height> {
    Some(match *trial.height.value()? {
        "flank" => Height::Flank,
        "face" => Height::Face,
        _ => Height::Middle,
    })
}
