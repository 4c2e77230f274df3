//! The wrench: whether it is one, what it is set to, and how far it may be out.

use ::trade::TradeError;
use ::trade::torque as trade;
use measure::{Kind, Torque};

use super::{JointEntry, TorqueSheet};
use crate::{All, BookError, Found, Lack, Rank, Remark};

/// Says at its field when the wrench's scale ends below where it begins.
pub(super) fn check(sheet: &TorqueSheet, found: &mut Found) {
    if let (Some(low), Some(high)) = (sheet.wrench_low.value(), sheet.wrench_high.value())
        && high.value() <= low.value()
    {
        let why = BookError::Trade(TradeError::UpsideDown);
        found.errors.push((sheet.wrench_high.key().clone(), why));
    }
}

/// The wrench, once both ends of its scale are known and in order.
fn wrench(sheet: &TorqueSheet) -> Option<trade::WrenchClass> {
    let (low, high) = (sheet.wrench_low.value()?, sheet.wrench_high.value()?);
    let kind = match sheet.wrench_kind.value().copied() {
        Some("dial") => trade::WrenchKind::Dial,
        Some("beam") => trade::WrenchKind::Beam,
        Some("screwdriver") => trade::WrenchKind::Screwdriver,
        _ => trade::WrenchKind::Setting,
    };
    (high.value() > low.value()).then_some(trade::WrenchClass {
        kind,
        lowest: low.value(),
        highest: high.value(),
    })
}

/// The wrench's setting: figure, what the nut takes by itself, and what the extension changes.
pub(super) fn setting(
    entry: &JointEntry,
    sheet: &TorqueSheet,
    torque: &Result<Torque, Lack>,
) -> Result<Torque, Lack> {
    let mut setting = torque.clone()?;
    if entry.prevailing.is_bad() {
        return Err(Lack::Entry(entry.prevailing.key().clone()));
    }
    if let Some(prevailing) = entry.prevailing.value() {
        setting = trade::with_prevailing(&setting, prevailing);
    }
    if entry.extension.is_blank() {
        return Ok(setting);
    }
    let (wrench, extension, angle) = (
        sheet.wrench_length.ask(),
        entry.extension.ask(),
        entry.extension_angle.ask(),
    )
        .all()?;
    Ok(trade::extension_setting(
        &setting, wrench, extension, angle,
    )?)
}

/// Puts in how far the wrench may be out at the setting, and warns of a setting beyond what it holds to.
pub(super) fn judge(
    entry: &JointEntry,
    sheet: &TorqueSheet,
    setting: &Result<Torque, Lack>,
    found: &mut Found,
) -> Option<Remark> {
    let (Ok(setting), Some(wrench)) = (setting, wrench(sheet)) else {
        return None;
    };
    found.show(
        format!("torque/wrench_error/{}", entry.id()),
        Kind::Torque,
        &Ok(trade::wrench_error(setting, wrench)),
    );
    let Err(TradeError::OutOfRange {
        lowest, highest, ..
    }) = trade::in_range(setting, wrench)
    else {
        return None;
    };
    let limit = |newton_metres| Torque::exact(newton_metres).figure(Kind::Torque);
    let remark = Remark::new(Rank::Warning, "wrench_out_of_range").at(entry.figure.key().clone());
    Some(
        remark
            .with(setting.figure(Kind::Torque))
            .with(limit(lowest))
            .with(limit(highest)),
    )
}
