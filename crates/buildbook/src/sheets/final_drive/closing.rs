//! What is looked at before the axle is closed, and the cautions that stand there always.

use ::trade::TradeError;
use measure::{Kind, Length, Standing};

use super::FinalDriveSheet;
use crate::{All, BookError, Found, Given, Rank, Remark};

/// Puts in what is left of the side gears' play and how the half-shafts' shims have to change, and the remarks.
pub(super) fn show(sheet: &FinalDriveSheet, found: &mut Found) {
    if !sheet.side_gear_play.is_blank() {
        let left = (sheet.side_gear_limit.ask(), sheet.side_gear_play.ask())
            .all()
            .map(|(limit, play)| (limit - play).called("left").of_kind(Kind::Thickness));
        found.show("final_drive/side_gear_left", Kind::Thickness, &left);
    }
    if !sheet.end_float.is_blank() && !sheet.end_float_least.is_blank() {
        let change = (
            sheet.end_float.ask(),
            sheet.end_float_least.ask(),
            sheet.end_float_limit.ask(),
        )
            .all()
            .map(|(float, least, most)| {
                ((least + most) / 2.0 - float)
                    .called("Δx")
                    .of_kind(Kind::Thickness)
            });
        found.show("final_drive/end_float_change", Kind::Thickness, &change);
    }
    limits(sheet, found);
    remark(sheet, found);
}

fn limits(sheet: &FinalDriveSheet, found: &mut Found) {
    let (least, most) = (&sheet.end_float_least, &sheet.end_float_limit);
    if let (Some(low), Some(high)) = (least.value(), most.value())
        && high.value() < low.value()
    {
        let why = BookError::Trade(TradeError::UpsideDown);
        found.errors.push((most.key().clone(), why));
    }
    let mut judge = |measured: &Given<Length>, limit: &Given<Length>, side, fact| {
        if let (Some(value), Some(limit)) = (measured.value(), limit.value())
            && value.standing(limit) == side
        {
            let remark = Remark::new(Rank::Warning, fact).at(measured.key().clone());
            found.remark(remark.with(value.figure(Kind::Thickness)));
        }
    };
    judge(
        &sheet.side_gear_play,
        &sheet.side_gear_limit,
        Standing::Above,
        "side_gear_worn",
    );
    judge(
        &sheet.end_float,
        most,
        Standing::Above,
        "end_float_too_great",
    );
    judge(
        &sheet.end_float,
        least,
        Standing::Below,
        "end_float_too_small",
    );
}

fn remark(sheet: &FinalDriveSheet, found: &mut Found) {
    if sheet.spacer.value() == Some(&"crush") {
        let remark = Remark::standing(Rank::Warning, "crush_sleeve");
        found.remark(remark.at(sheet.spacer.key().clone()));
    }
    if sheet.bronze.value() == Some(&true) {
        let remark = Remark::standing(Rank::Caution, "bronze_oil");
        found.remark(remark.at(sheet.bronze.key().clone()));
    }
    if sheet.breather.value() == Some(&false) {
        let remark = Remark::new(Rank::Caution, "breather_blocked");
        found.remark(remark.at(sheet.breather.key().clone()));
    }
    if let (true, Some(run_in)) = (found.begun, sheet.run_in.value()) {
        let remark = Remark::standing(Rank::Remark, "run_in_gently");
        found.remark(remark.with(run_in.figure(Kind::Distance)));
    }
    found.remark(Remark::standing(Rank::Remark, "order_of_setting"));
    found.remark(Remark::standing(Rank::Remark, "again_after_shim"));
}
