//! The backlash as read, and how the crown wheel has to move.

use ::trade::TradeError;
use ::trade::final_drive as trade;
use measure::{Kind, Length, Ratio, Standing};

use super::set::Pair;
use super::{FinalDriveSheet, pinion};
use crate::{All, BookError, Found, Key, Lack, Rank, Remark};

/// A slope of trials whose ± is a greater share of it than this tells less than the teeth do.
const SLOPE_MAY_BE_OUT: f64 = 0.35;

/// What the readings and the trials come to.
pub(super) struct Backlashes {
    /// Backlash for a unit of the crown wheel's move.
    pub factor: Result<Ratio, Lack>,
    /// Backlash for a unit of the pinion's move towards the crown wheel.
    pub pinion_factor: Result<Ratio, Lack>,
    /// What is aimed at: the middle of the maker's band.
    pub wanted: Result<Length, Lack>,
    /// How far the crown wheel has to move away from the pinion.
    pub away: Result<Length, Lack>,
}

/// Puts in the least, greatest and spread, the factor, the move and the notches.
pub(super) fn show(sheet: &FinalDriveSheet, pair: &Pair, found: &mut Found) -> Backlashes {
    let read = readings(sheet);
    let part = |of: fn(&trade::Backlash) -> &Length| {
        read.as_ref().map(|b| of(b).clone()).map_err(Clone::clone)
    };
    let least = part(|b| &b.least);
    found.headline("final_drive/backlash", Kind::Thickness, &least);
    found.show(
        "final_drive/backlash_greatest",
        Kind::Thickness,
        &part(|b| &b.greatest),
    );
    let spread = part(|b| &b.spread);
    found.show("final_drive/run_out", Kind::Thickness, &spread);
    let pinion_factor = by_teeth(sheet, pair, trade::pinion_factor);
    let factor = factor(sheet, pair, pinion_factor.as_ref().ok(), found);
    found.show("final_drive/backlash_factor", Kind::Ratio, &factor);
    let wanted = wanted(sheet);
    let away = (wanted.clone(), least.clone(), factor.clone())
        .all()
        .and_then(|(wanted, least, factor)| Ok(trade::crown_move(&least, &wanted, &factor)?.away));
    found.headline("final_drive/move", Kind::Thickness, &away);
    notches(sheet, &away, &factor, found);
    usual(sheet, pair, found);
    remark(sheet, &least, &spread, found);
    Backlashes {
        factor,
        pinion_factor,
        wanted,
        away,
    }
}

fn readings(sheet: &FinalDriveSheet) -> Result<trade::Backlash, Lack> {
    if let Some(bad) = sheet.readings.iter().find(|row| row.reading.is_bad()) {
        return Err(Lack::entry(bad.reading.key().clone()));
    }
    let readings: Vec<Length> = sheet
        .readings
        .iter()
        .filter_map(|row| row.reading.value().cloned())
        .collect();
    if readings.is_empty() {
        return Err(Lack::needs([Key::from("final_drive/readings/1/reading")]));
    }
    let dial = match (sheet.dial_radius.is_blank(), sheet.heel_radius.is_blank()) {
        (true, true) => None,
        _ => Some((sheet.heel_radius.ask(), sheet.dial_radius.ask()).all()?),
    };
    Ok(trade::backlash_readings(&readings, dial)?)
}

/// A factor from the teeth's angles.
fn by_teeth(
    sheet: &FinalDriveSheet,
    pair: &Pair,
    factor: fn(&measure::Angle, &measure::Angle, &Ratio) -> Ratio,
) -> Result<Ratio, Lack> {
    let (pressure, spiral, ratio) = (
        sheet.pressure_angle.ask(),
        sheet.spiral_angle.ask(),
        pair.ratio.clone(),
    )
        .all()?;
    Ok(factor(pressure, spiral, &ratio))
}

/// The axle's own slope where its trials tell it well enough, else the pitch cone's.
fn factor(
    sheet: &FinalDriveSheet,
    pair: &Pair,
    pinion_factor: Option<&Ratio>,
    found: &mut Found,
) -> Result<Ratio, Lack> {
    if let Ok(slope) = trade::slope_of_trials(&positions(sheet, pinion_factor)) {
        let good = (0.2..=1.5).contains(&slope.value())
            && slope.plus() <= SLOPE_MAY_BE_OUT * slope.value();
        let fact = if good {
            "slope_of_trials"
        } else {
            "trials_tell_no_slope"
        };
        let rank = if good { Rank::Remark } else { Rank::Caution };
        let remark = Remark::new(rank, fact).at("final_drive/trials");
        found.remark(remark.with(slope.figure(Kind::Ratio)));
        if good {
            return Ok(slope);
        }
    }
    by_teeth(sheet, pair, trade::backlash_factor)
}

/// The trials as positions of the crown wheel and backlash, less what the pinion's shims have done to it meanwhile.
fn positions(sheet: &FinalDriveSheet, pinion_factor: Option<&Ratio>) -> Vec<(Length, Length)> {
    let first = sheet.trials.iter().find_map(|trial| trial.shim.value());
    let inward = pinion::place(sheet).map(trade::ShimPlace::inward).ok();
    sheet
        .trials
        .iter()
        .filter_map(|trial| {
            let (moved, backlash) = (trial.moved.value()?, trial.backlash.value()?);
            let shims = first.zip(trial.shim.value());
            let backlash = match (shims, inward, pinion_factor) {
                (Some((first, shim)), Some(inward), Some(factor))
                    if first.value() != shim.value() =>
                {
                    trade::without_pinion(backlash, &((shim - first) * inward), factor)
                }
                _ => backlash.clone(),
            };
            Some((moved.clone(), backlash))
        })
        .collect()
}

/// The middle of the maker's band, or the one figure there is.
fn wanted(sheet: &FinalDriveSheet) -> Result<Length, Lack> {
    let low = sheet.backlash_least.ask()?;
    if sheet.backlash_most.is_bad() {
        return Err(Lack::entry(sheet.backlash_most.key().clone()));
    }
    Ok(match sheet.backlash_most.value() {
        Some(high) => ((low + high) / 2.0).called("j_w").of_kind(Kind::Thickness),
        None => low.clone(),
    })
}

/// With adjusters: the notches for the move, and what one of them does.
fn notches(
    sheet: &FinalDriveSheet,
    away: &Result<Length, Lack>,
    factor: &Result<Ratio, Lack>,
    found: &mut Found,
) {
    if sheet.moved_by.value() != Some(&"adjusters") {
        return;
    }
    let adjuster = (sheet.adjuster_pitch.ask(), sheet.notches.ask()).all();
    let notches = (away.clone(), adjuster.clone())
        .all()
        .and_then(|(away, (pitch, notches))| Ok(trade::notches_for(&away, pitch, notches)?));
    found.show("final_drive/notches", Kind::Ratio, &notches);
    let one = (adjuster, factor.clone())
        .all()
        .and_then(|((pitch, notches), factor)| {
            Ok(trade::backlash_of_a_notch(pitch, notches, &factor)?)
        });
    found.show("final_drive/backlash_per_notch", Kind::Thickness, &one);
}

/// The usual backlash of teeth of this size, for axles whose maker's figure is not known.
fn usual(sheet: &FinalDriveSheet, pair: &Pair, found: &mut Found) {
    if sheet.crown_across.is_blank() {
        return;
    }
    let band = (sheet.crown_across.ask(), pair.crown.clone())
        .all()
        .and_then(|(across, teeth)| Ok(trade::agma_backlash(&(across / teeth))?));
    let of = |pick: fn((f64, f64)) -> f64| band.clone().map(pick).map(Length::exact);
    found.show(
        "final_drive/usual_least",
        Kind::Thickness,
        &of(|band| band.0),
    );
    found.show(
        "final_drive/usual_most",
        Kind::Thickness,
        &of(|band| band.1),
    );
}

fn remark(
    sheet: &FinalDriveSheet,
    least: &Result<Length, Lack>,
    spread: &Result<Length, Lack>,
    found: &mut Found,
) {
    let (low, high) = (&sheet.backlash_least, &sheet.backlash_most);
    if let (Some(low), Some(most)) = (low.value(), high.value())
        && most.value() < low.value()
    {
        let why = BookError::Trade(TradeError::UpsideDown);
        found.errors.push((high.key().clone(), why));
        return;
    }
    let mut judge =
        |rank, fact, value: &Result<Length, Lack>, limit: &crate::Given<Length>, side| {
            if let (Ok(value), Some(limit_value)) = (value, limit.value())
                && value.standing(limit_value) == side
            {
                let remark = Remark::new(rank, fact).at(limit.key().clone());
                found.remark(remark.with(value.figure(Kind::Thickness)));
            }
        };
    judge(
        Rank::Warning,
        "run_out_over_limit",
        spread,
        &sheet.run_out_limit,
        Standing::Above,
    );
    judge(
        Rank::Warning,
        "backlash_too_small",
        least,
        low,
        Standing::Below,
    );
    judge(
        Rank::Caution,
        "backlash_too_great",
        least,
        high,
        Standing::Above,
    );
    if sheet.readings.len() == 1 {
        found.remark(Remark::new(Rank::Caution, "one_reading_only").at("final_drive/readings"));
    }
}
