//! What the last trial's marks ask for, and what to try next.

use ::trade::final_drive::{self as trade, Advice, Height, Lengthwise, TrialMark};
use measure::{Kind, Length, Ratio, Reading, Stated, unit};

use super::backlash::Backlashes;
use super::{FinalDriveSheet, TrialEntry, pinion};
use crate::{Found, Lack};

/// Marks are read to half of the way from one name to the next.
const MARKS_READ_TO: f64 = 0.25;

/// A trend that leads further from the last shim than so many times the way already tried is no trend.
const TREND_REACHES: f64 = 3.0;

/// What to try next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Proposal {
    /// What to change first.
    pub advice: Advice,
    /// Thicker (above nothing) or thinner the pinion's shim, metres; none where that cannot be said.
    pub shim_change: Option<f64>,
    /// Away from the pinion (above nothing) or towards it the crown wheel, metres; none where that cannot be said.
    pub crown_change: Option<f64>,
    /// Whether the shim follows from the trend of the trials, and not from the first rule of thumb.
    pub by_trend: bool,
}

/// Puts in what to try next, from the trials whose marks were entered whole.
pub(super) fn show(
    sheet: &FinalDriveSheet,
    backlash: &Backlashes,
    found: &mut Found,
) -> Option<Proposal> {
    let (last, marks) = sheet
        .trials
        .iter()
        .rev()
        .find_map(|trial| Some((trial, trial_marks(trial)?)))?;
    let advice = trade::advice(marks);
    let (shim, by_trend) = next_shim(sheet, last, marks);
    found.show("final_drive/next_shim", Kind::Thickness, &shim);
    let moved = next_position(sheet, last, marks, &shim, backlash);
    let position = moved.as_ref().map(|(position, _)| position.clone());
    found.show(
        "final_drive/next_moved",
        Kind::Thickness,
        &position.map_err(Clone::clone),
    );
    let expected = moved.as_ref().map(|(_, expected)| expected.clone());
    found.show(
        "final_drive/next_backlash",
        Kind::Thickness,
        &expected.map_err(Clone::clone),
    );
    let change =
        |next: Option<f64>, from: &crate::Given<Length>| Some(next? - from.value()?.value());
    Some(Proposal {
        advice,
        shim_change: change(shim.ok().map(|shim| shim.value()), &last.shim),
        crown_change: change(moved.ok().map(|(moved, _)| moved.value()), &last.moved),
        by_trend,
    })
}

/// The next shim, and whether the trend of the trials tells it.
fn next_shim(
    sheet: &FinalDriveSheet,
    last: &TrialEntry,
    marks: TrialMark,
) -> (Result<Length, Lack>, bool) {
    let in_there = match last.shim.ask() {
        Ok(shim) => shim,
        Err(lack) => return (Err(lack), false),
    };
    let sign = match trade::advice(marks) {
        Advice::PinionIn => 1.0,
        Advice::PinionOut => -1.0,
        Advice::Good | Advice::CrownIn | Advice::CrownOut => return (Ok(in_there.clone()), false),
    };
    let inward = match pinion::place(sheet) {
        Ok(place) => place.inward(),
        Err(lack) => return (Err(lack), false),
    };
    let tried: Vec<(Length, Ratio)> = sheet
        .trials
        .iter()
        .filter_map(|trial| Some((trial.shim.value()?.clone(), height_read(trial)?)))
        .collect();
    let reach = tried
        .iter()
        .map(|(shim, _)| (shim.value() - in_there.value()).abs())
        .fold(0.0, f64::max);
    if let Ok(trend) = trade::next_shim(&tried) {
        let change = trend.value() - in_there.value();
        // It has to lead where the last marks ask to go, and not to the other end of the shop.
        if change * sign * inward > 0.0 && change.abs() <= TREND_REACHES * reach {
            return (Ok(trend), true);
        }
    }
    let step = Length::exact(trade::first_step(marks) * sign * inward);
    let next = (in_there + step).called("s").of_kind(Kind::Thickness);
    (Ok(next), false)
}

/// Where the crown wheel goes for the next trial, and the backlash to expect there. After a change of the pinion's shim it
/// goes where the wanted backlash is; for its own sake it goes a step, but never out of the maker's band.
fn next_position(
    sheet: &FinalDriveSheet,
    last: &TrialEntry,
    marks: TrialMark,
    shim: &Result<Length, Lack>,
    backlash: &Backlashes,
) -> Result<(Length, Length), Lack> {
    let (moved, read) = (last.moved.ask()?, last.backlash.ask()?);
    let away = match trade::advice(marks) {
        Advice::Good => return Ok((moved.clone(), read.clone())),
        Advice::PinionIn | Advice::PinionOut => {
            let inward = pinion::place(sheet)?.inward();
            let pinion_in = (shim.clone()? - last.shim.ask()?) * inward;
            let after = read - pinion_in * backlash.pinion_factor.clone()?;
            let wanted = backlash.wanted.clone()?;
            let away = (&wanted - after) / backlash.factor.clone()?;
            return Ok(((moved + away).called("v").of_kind(Kind::Thickness), wanted));
        }
        Advice::CrownIn => -trade::first_step(marks),
        Advice::CrownOut => trade::first_step(marks),
    };
    let factor = backlash.factor.clone()?;
    let (low, high) = (&sheet.backlash_least, &sheet.backlash_most);
    let until = |limit: &crate::Given<Length>| {
        let limit = limit.value()?;
        Some((limit.value() - read.value()) / factor.value())
    };
    let held = if away < 0.0 {
        until(low).map_or(away, |most| away.max(most.min(0.0)))
    } else {
        until(high).map_or(away, |most| away.min(most.max(0.0)))
    };
    let away = Length::exact(held);
    let expected = (read + &away * factor).called("j").of_kind(Kind::Thickness);
    Ok((
        (moved + away).called("v").of_kind(Kind::Thickness),
        expected,
    ))
}

/// The marks of a trial; none until all three were entered.
#[must_use]
pub fn trial_marks(trial: &TrialEntry) -> Option<TrialMark> {
    let along = |word: &str| match word {
        "toe" => Lengthwise::Toe,
        "towards_toe" => Lengthwise::TowardsToe,
        "towards_heel" => Lengthwise::TowardsHeel,
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
        "low" => Height::Low,
        "high" => Height::High,
        "face" => Height::Face,
        _ => Height::Middle,
    })
}

/// The height of a trial's marks as a number with the ± of reading it.
fn height_read(trial: &TrialEntry) -> Option<Ratio> {
    let reading = Reading {
        plus: MARKS_READ_TO,
        minus: MARKS_READ_TO,
        stated: Stated::Assumed,
        ..Reading::exact(height(trial)?.number(), &unit::ONE)
    };
    let key = trial.height.key().shared();
    Some(Ratio::entry(key, "h", Kind::Ratio, &reading))
}
