//! The wrenches: whether each is one, which one a joint takes, what it is set to, and how far it may be out.

use ::trade::TradeError;
use ::trade::torque as trade;
use measure::{Kind, Length, Ratio, Torque};

use super::{FIRST_WRENCH, JointEntry, TorqueSheet};
use crate::{All, BookError, Found, Given, Lack, Rank, Remark};

/// A wrench: the first one of the sheet itself, or a row of the others.
#[derive(Clone, Copy)]
pub(super) struct Wrench<'a> {
    /// Its row's id, or that of the first one.
    pub id: &'a str,
    low: &'a Given<Torque>,
    high: &'a Given<Torque>,
    kind: &'a Given<&'static str>,
    length: &'a Given<Length>,
    error: &'a Given<Ratio>,
}

/// All wrenches, the sheet's own first.
pub(super) fn all(sheet: &TorqueSheet) -> Vec<Wrench<'_>> {
    let first = Wrench {
        id: FIRST_WRENCH,
        low: &sheet.wrench_low,
        high: &sheet.wrench_high,
        kind: &sheet.wrench_kind,
        length: &sheet.wrench_length,
        error: &sheet.wrench_error,
    };
    let others = sheet.wrenches.iter().map(|row| Wrench {
        id: row.id(),
        low: &row.low,
        high: &row.high,
        kind: &row.kind,
        length: &row.length,
        error: &row.error,
    });
    std::iter::once(first).chain(others).collect()
}

/// Says at its field when a wrench's scale ends below where it begins.
pub(super) fn check(wrenches: &[Wrench<'_>], found: &mut Found) {
    for wrench in wrenches {
        if let (Some(low), Some(high)) = (wrench.low.value(), wrench.high.value())
            && high.value() <= low.value()
        {
            let why = BookError::Trade(TradeError::UpsideDown);
            found.errors.push((wrench.high.key().clone(), why));
        }
    }
}

impl Wrench<'_> {
    /// The wrench with its class, once both ends of its scale are known and in order.
    fn class(&self) -> Option<trade::WrenchClass> {
        let (low, high) = (self.low.value()?, self.high.value()?);
        let kind = match self.kind.value().copied() {
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

    /// Its setting: figure, what the nut takes by itself, and what the extension changes.
    fn setting(&self, entry: &JointEntry, torque: &Result<Torque, Lack>) -> Result<Torque, Lack> {
        let mut setting = torque.clone()?;
        if entry.prevailing.is_bad() {
            return Err(Lack::entry(entry.prevailing.key().clone()));
        }
        if let Some(prevailing) = entry.prevailing.value() {
            setting = trade::with_prevailing(&setting, prevailing);
        }
        if entry.extension.is_blank() {
            return Ok(setting);
        }
        let (wrench, extension, angle) = (
            self.length.ask(),
            entry.extension.ask(),
            entry.extension_angle.ask(),
        )
            .all()?;
        Ok(trade::extension_setting(
            &setting, wrench, extension, angle,
        )?)
    }
}

/// The wrench that a joint takes, and its setting: the one that was chosen, while it is there; else the suitable one; where none can be
/// judged, the first.
pub(super) fn taken<'w, 'a>(
    entry: &JointEntry,
    wrenches: &'w [Wrench<'a>],
    torque: &Result<Torque, Lack>,
) -> (&'w Wrench<'a>, Result<Torque, Lack>) {
    let chosen = entry.wrench.value();
    let chosen = chosen.and_then(|id| wrenches.iter().find(|wrench| wrench.id == &**id));
    let proposed = || {
        let judged: Vec<_> = wrenches
            .iter()
            .filter_map(|wrench| {
                let setting = wrench.setting(entry, torque).ok()?;
                Some((wrench, (wrench.class()?, setting)))
            })
            .collect();
        let (judged, classes): (Vec<_>, Vec<_>) = judged.into_iter().unzip();
        Some(judged[trade::wrench_for(&classes)?])
    };
    // The first one is always there.
    let wrench = chosen.or_else(proposed).unwrap_or(&wrenches[0]);
    (wrench, wrench.setting(entry, torque))
}

/// Puts in how far the wrench may be out at the setting, and warns of a setting beyond what it holds to: of one that was chosen, or is
/// the only one; of several, that none of them does.
pub(super) fn judge(
    entry: &JointEntry,
    wrench: &Wrench<'_>,
    wrenches: usize,
    setting: &Result<Torque, Lack>,
    found: &mut Found,
) -> Option<Remark> {
    let (Ok(setting), Some(class)) = (setting, wrench.class()) else {
        return None;
    };
    let error = wrench.error.ask_or_none();
    found.show(
        format!("torque/wrench_error/{}", entry.id()),
        Kind::TorqueError,
        &error.map(|certified| trade::wrench_error(setting, class, certified)),
    );
    let Err(TradeError::OutOfRange {
        lowest, highest, ..
    }) = trade::in_range(setting, class)
    else {
        return None;
    };
    let limit = |newton_metres| Torque::exact(newton_metres).figure(Kind::Torque);
    let fact = if wrenches > 1 && entry.wrench.is_blank() {
        "outside_every_wrench"
    } else {
        "wrench_out_of_range"
    };
    let remark = Remark::new(Rank::Warning, fact).at(entry.figure.key().clone());
    Some(
        remark
            .with(setting.figure(Kind::Torque))
            .with(limit(lowest))
            .with(limit(highest)),
    )
}
