//! What has to be said of the axle.

use ::trade::gearing::Teeth;
use measure::Standing;

use super::FinalDriveSheet;
use crate::{Found, Rank, Remark};

pub(super) fn remark(sheet: &FinalDriveSheet, found: &mut Found) {
    if let (Some(crown), Some(pinion)) = (sheet.crown.value(), sheet.pinion.value()) {
        let teeth = Teeth::new(crown.value() as u32, pinion.value() as u32);
        let fact = match teeth.map(|teeth| teeth.meeting().hunting()) {
            Ok(false) => "not_hunting",
            _ => "hunting",
        };
        found.remark(Remark::standing(Rank::Remark, fact).at(sheet.crown.key().clone()));
    }
    if sheet.spacer.value() == Some(&"crush") {
        found
            .remark(Remark::standing(Rank::Warning, "crush_sleeve").at(sheet.spacer.key().clone()));
    }
    if sheet.bronze.value() == Some(&true) {
        found.remark(Remark::standing(Rank::Caution, "bronze_oil").at(sheet.bronze.key().clone()));
    }
    for (measured, limit, fact) in [
        (
            &sheet.side_gear_play,
            &sheet.side_gear_limit,
            "side_gear_worn",
        ),
        (
            &sheet.end_float,
            &sheet.end_float_limit,
            "end_float_too_great",
        ),
    ] {
        if let (Some(value), Some(most)) = (measured.value(), limit.value())
            && value.standing(most) == Standing::Above
        {
            found.remark(Remark::new(Rank::Warning, fact).at(measured.key().clone()));
        }
    }
    found.remark(Remark::standing(Rank::Remark, "order_of_setting"));
    found.remark(Remark::standing(Rank::Remark, "again_after_shim"));
}
