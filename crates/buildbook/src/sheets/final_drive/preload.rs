//! The preload of the pinion's bearings: the pull that tells it, and what a shim more does.

use ::trade::TradeError;
use ::trade::final_drive as trade;
use measure::{Force, Kind, Length, Standing, Torque};

use super::FinalDriveSheet;
use crate::{All, BookError, Found, Given, Lack, Rank, Remark};

/// What a shim more does is told for this much more, metres.
const STEP: f64 = 1e-5;

/// Puts in the pull for the wanted preload, the torque behind a pull that was read, and what the trials of packs tell.
pub(super) fn show(sheet: &FinalDriveSheet, found: &mut Found) {
    let radius = radius(sheet);
    let pull = |wanted: &Given<Torque>| {
        (wanted.ask(), radius.clone())
            .all()
            .and_then(|(preload, radius)| Ok(trade::pull_for_torque(preload, &radius)?))
    };
    found.show("final_drive/pull", Kind::Force, &pull(&sheet.preload));
    if !sheet.preload_most.is_blank() {
        found.show(
            "final_drive/pull_most",
            Kind::Force,
            &pull(&sheet.preload_most),
        );
    }
    let measured = (sheet.pull.ask(), radius.clone())
        .all()
        .map(|(pull, radius)| torque(pull, &radius));
    found.show("final_drive/preload", Kind::Torque, &measured);
    judge(sheet, measured.as_ref().ok(), found);
    packs(sheet, &radius, found);
}

/// Where the balance is hooked on, else the middle of the cord on the flange.
pub(super) fn radius(sheet: &FinalDriveSheet) -> Result<Length, Lack> {
    if !sheet.pull_radius.is_blank() {
        return sheet.pull_radius.ask().cloned();
    }
    (sheet.flange.ask(), sheet.cord.ask())
        .all()
        .map(|(flange, cord)| trade::cord_radius(flange, cord))
}

pub(super) fn torque(pull: &Force, radius: &Length) -> Torque {
    (pull * radius).called("M").of_kind(Kind::Torque)
}

/// Says at the field when the wanted preload is above what the bearings may have, and beside it when the measured one is.
fn judge(sheet: &FinalDriveSheet, measured: Option<&Torque>, found: &mut Found) {
    let (wanted, most) = (sheet.preload.value(), sheet.preload_most.value());
    if let (Some(wanted), Some(most)) = (wanted, most)
        && most.value() < wanted.value()
    {
        let key = sheet.preload_most.key().clone();
        found
            .errors
            .push((key, BookError::Trade(TradeError::UpsideDown)));
        return;
    }
    let Some(measured) = measured else { return };
    let at = |rank, fact| {
        Remark::new(rank, fact)
            .at(sheet.pull.key().clone())
            .with(measured.figure(Kind::Torque))
    };
    if most
        .or(wanted)
        .is_some_and(|most| measured.standing(most) == Standing::Above)
    {
        found.remark(at(Rank::Warning, "preload_too_high"));
    } else if wanted.is_some_and(|wanted| measured.standing(wanted) == Standing::Below) {
        found.remark(at(Rank::Caution, "preload_too_low"));
    }
    if sheet.bearings_are.value() == Some(&"used") {
        let remark = Remark::standing(Rank::Caution, "used_bearings");
        found.remark(remark.at(sheet.bearings_are.key().clone()));
    }
}

/// What a pack 0.01 mm thicker does to the turning torque, and the pack for the wanted one; a crush sleeve has none.
fn packs(sheet: &FinalDriveSheet, radius: &Result<Length, Lack>, found: &mut Found) {
    let rows: Vec<_> = sheet
        .preload_trials
        .iter()
        .filter(|row| !(row.pack.is_blank() && row.pull.is_blank()))
        .collect();
    if rows.is_empty() || sheet.spacer.value() == Some(&"crush") {
        return;
    }
    let trials: Result<Vec<(Length, Torque)>, Lack> = rows
        .iter()
        .map(|row| {
            let (pack, pull, radius) = (row.pack.ask(), row.pull.ask(), radius.clone()).all()?;
            Ok((pack.clone(), torque(pull, &radius)))
        })
        .collect();
    let slope = trials
        .clone()
        .and_then(|trials| Ok(trade::torque_for_thickness(&trials)?));
    let step = slope.map(|slope| {
        (slope * Length::exact(STEP))
            .called("ΔM")
            .of_kind(Kind::Torque)
    });
    found.show("final_drive/preload_per_shim", Kind::Torque, &step);
    let wanted = (sheet.preload.ask().cloned(), middle_most(sheet)).all();
    let pack = (trials, wanted).all().and_then(|(trials, (least, most))| {
        let wanted = match most {
            Some(most) => ((least + most) / 2.0).called("M_w").of_kind(Kind::Torque),
            None => least,
        };
        Ok(trade::pack_for_preload(&trials, &wanted)?)
    });
    if let (Ok(pack), true) = (&pack, rows.len() > 1) {
        far(
            pack,
            &rows
                .iter()
                .filter_map(|row| row.pack.value())
                .collect::<Vec<_>>(),
            found,
        );
    }
    found.show("final_drive/preload_pack", Kind::Thickness, &pack);
}

/// The most that is allowed, where it was typed.
fn middle_most(sheet: &FinalDriveSheet) -> Result<Option<Torque>, Lack> {
    if sheet.preload_most.is_blank() {
        return Ok(None);
    }
    sheet.preload_most.ask().cloned().map(Some)
}

/// A pack further from those tried than they lie apart is a guess.
fn far(pack: &Length, tried: &[&Length], found: &mut Found) {
    let values = || tried.iter().map(|pack| pack.value());
    let (least, most) = (
        values().fold(f64::MAX, f64::min),
        values().fold(f64::MIN, f64::max),
    );
    let beyond = (least - pack.value()).max(pack.value() - most);
    if beyond > most - least {
        found.remark(
            Remark::new(Rank::Caution, "pack_far_from_trials").at("final_drive/preload_trials"),
        );
    }
}
