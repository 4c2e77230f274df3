//! The pinion's position: the shim that is wanted, and the pack for it.

use ::trade::final_drive as trade;
use measure::{Kind, Length};

use super::packs::{self, Packed};
use super::{FinalDriveSheet, Given};
use crate::{All, Found, Lack, Rank, Remark};

/// Less than this (metres) is on no pinion's head: hundredths are whole.
const FINEST_MARK: f64 = 4e-6;

/// Puts in the shim wanted, the pack, and what changes behind the bearing's cup.
pub(super) fn show(sheet: &FinalDriveSheet, found: &mut Found) -> Result<Packed, Lack> {
    let shim = shim(sheet);
    found.headline("final_drive/shim", Kind::Thickness, &shim);
    if place(sheet) == Ok(trade::ShimPlace::BehindCup) && !sheet.old_shim.is_blank() {
        let change = (shim.clone(), sheet.old_shim.ask())
            .all()
            .map(|(new, old)| {
                let change = (new - old).of_kind(Kind::Thickness);
                trade::preload_pack_change(&change, trade::ShimPlace::BehindCup).called("Δs")
            });
        found.show("final_drive/preload_pack_change", Kind::Thickness, &change);
    }
    for mark in [&sheet.old_mark, &sheet.new_mark] {
        tiny(mark, found);
    }
    if let Ok(shim) = &shim
        && shim.value() < 0.0
    {
        let remark = Remark::new(Rank::Warning, "shim_below_nought");
        found.remark(remark.with(shim.figure(Kind::Thickness)));
    }
    let pack = shim.and_then(|shim| packs::pinion(sheet, &shim));
    packs::put(found, "pinion", &pack);
    pack
}

/// A mark of a fraction of a hundredth was meant in another unit.
fn tiny(mark: &Given<Length>, found: &mut Found) {
    if let Some(value) = mark.value()
        && value.value() != 0.0
        && value.value().abs() < FINEST_MARK
    {
        let remark = Remark::new(Rank::Warning, "mark_tiny").at(mark.key().clone());
        found.remark(remark.with(value.figure(Kind::Film)));
    }
}

/// Where the shim sits.
pub(super) fn place(sheet: &FinalDriveSheet) -> Result<trade::ShimPlace, Lack> {
    sheet.shim_sits.ask().map(|sits| match *sits {
        "behind_cup" => trade::ShimPlace::BehindCup,
        "carrier_flange" => trade::ShimPlace::CarrierFlange,
        _ => trade::ShimPlace::HeadToCone,
    })
}

fn shim(sheet: &FinalDriveSheet) -> Result<Length, Lack> {
    let sense = sheet.plus_means.ask().map(|plus| match *plus {
        "nearer" => trade::MarkSense::PlusIsNearer,
        _ => trade::MarkSense::PlusIsFurther,
    });
    let flags = (sense, place(sheet)).all();
    if sheet.depth_by.value() == Some(&"depth") {
        let (depth, bearing, nominal, mark, (sense, place)) = (
            sheet.depth.ask(),
            sheet.bearing.ask(),
            sheet.nominal.ask(),
            sheet.new_mark.ask(),
            flags,
        )
            .all()?;
        return Ok(trade::shim_by_depth(
            depth, bearing, nominal, mark, sense, place,
        ));
    }
    let (old, old_mark, new_mark, (sense, place)) = (
        sheet.old_shim.ask(),
        sheet.old_mark.ask(),
        sheet.new_mark.ask(),
        flags,
    )
        .all()?;
    Ok(trade::shim_by_marks(old, old_mark, new_mark, sense, place))
}
