//! The backlash as read, and how the crown wheel has to move.

use ::trade::final_drive as trade;
use measure::{Kind, Length, Ratio, Standing};

use super::FinalDriveSheet;
use super::pinion::ratio;
use crate::{All, Found, Key, Lack, Rank, Remark};

/// Puts in the least, greatest and spread, the factor, the move and the notches.
pub(super) fn show(sheet: &FinalDriveSheet, found: &mut Found) {
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
    let factor = factor(sheet);
    found.show("final_drive/backlash_factor", Kind::Ratio, &factor);
    let moved = adjustment(sheet, &least, &factor);
    let away = moved
        .as_ref()
        .map(|moved| moved.away.clone())
        .map_err(Clone::clone);
    found.headline("final_drive/move", Kind::Thickness, &away);
    if sheet.moved_by.value() == Some(&"adjusters") {
        let notches = (away, sheet.adjuster_pitch.ask(), sheet.notches.ask())
            .all()
            .and_then(|(away, pitch, notches)| Ok(trade::notches_for(&away, pitch, notches)?));
        found.show("final_drive/notches", Kind::Ratio, &notches);
    }
    remark(sheet, &least, &spread, found);
}

fn readings(sheet: &FinalDriveSheet) -> Result<trade::Backlash, Lack> {
    if let Some(bad) = sheet.readings.iter().find(|row| row.reading.is_bad()) {
        return Err(Lack::Entry(bad.reading.key().clone()));
    }
    let readings: Vec<Length> = sheet
        .readings
        .iter()
        .filter_map(|row| row.reading.value().cloned())
        .collect();
    if readings.is_empty() {
        return Err(Lack::Needs(vec![Key::from(
            "final_drive/readings/1/reading",
        )]));
    }
    let dial = match (sheet.dial_radius.is_blank(), sheet.heel_radius.is_blank()) {
        (true, true) => None,
        _ => Some((sheet.heel_radius.ask(), sheet.dial_radius.ask()).all()?),
    };
    Ok(trade::backlash_readings(&readings, dial)?)
}

/// The axle's own slope where two trials or more tell it, else the pitch cone's.
fn factor(sheet: &FinalDriveSheet) -> Result<Ratio, Lack> {
    let trials: Vec<(Length, Length)> = sheet
        .trials
        .iter()
        .filter_map(|trial| {
            trial
                .moved
                .value()
                .cloned()
                .zip(trial.backlash.value().cloned())
        })
        .collect();
    if let Ok(slope) = trade::slope_of_trials(&trials)
        && (0.2..=1.5).contains(&slope.value())
    {
        return Ok(slope);
    }
    let (pressure, spiral, ratio) = (
        sheet.pressure_angle.ask(),
        sheet.spiral_angle.ask(),
        ratio(sheet),
    )
        .all()?;
    Ok(trade::backlash_factor(pressure, spiral, &ratio))
}

/// To the middle of the maker's band.
fn adjustment(
    sheet: &FinalDriveSheet,
    least: &Result<Length, Lack>,
    factor: &Result<Ratio, Lack>,
) -> Result<trade::Adjustment, Lack> {
    let (low, least, factor) = (sheet.backlash_least.ask(), least.clone(), factor.clone()).all()?;
    let wanted = match sheet.backlash_most.value() {
        Some(high) => ((low + high) / 2.0).called("j_w").of_kind(Kind::Thickness),
        None => low.clone(),
    };
    Ok(trade::crown_move(&least, &wanted, &factor)?)
}

fn remark(
    sheet: &FinalDriveSheet,
    least: &Result<Length, Lack>,
    spread: &Result<Length, Lack>,
    found: &mut Found,
) {
    if let (Ok(spread), Some(limit)) = (spread, sheet.run_out_limit.value())
        && spread.standing(limit) == Standing::Above
    {
        let remark =
            Remark::new(Rank::Warning, "run_out_over_limit").at(sheet.run_out_limit.key().clone());
        found.remark(remark.with(spread.figure(Kind::Thickness)));
    }
    if let (Ok(least), Some(low)) = (least, sheet.backlash_least.value())
        && least.standing(low) == Standing::Below
    {
        let remark =
            Remark::new(Rank::Warning, "backlash_too_small").at(sheet.backlash_least.key().clone());
        found.remark(remark.with(least.figure(Kind::Thickness)));
    }
    if let (Ok(least), Some(high)) = (least, sheet.backlash_most.value())
        && least.standing(high) == Standing::Above
    {
        let remark =
            Remark::new(Rank::Caution, "backlash_too_great").at(sheet.backlash_most.key().clone());
        found.remark(remark.with(least.figure(Kind::Thickness)));
    }
    if sheet.readings.len() == 1 {
        found.remark(Remark::new(Rank::Caution, "one_reading_only").at("final_drive/readings"));
    }
}
