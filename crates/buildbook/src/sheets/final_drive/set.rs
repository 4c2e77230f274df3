//! The crown wheel and pinion in hand: typed here, or the set that was chosen on the gearing sheet.

use std::rc::Rc;

use ::trade::gearing::Teeth;
use measure::{Kind, Ratio};

use super::FinalDriveSheet;
use crate::sheets::gearing::GearingFindings;
use crate::{All, Found, Key, Lack, Rank, Remark};

/// The set in hand.
#[derive(Debug, Clone, PartialEq)]
pub struct Fitted {
    /// Its teeth.
    pub teeth: Teeth,
    /// What the gearing sheet calls it, where it was chosen there and not typed here.
    pub chosen: Option<Rc<str>>,
}

/// The two counts of teeth as they go into the formulas.
pub(super) struct Pair {
    /// Crown wheel's teeth over pinion's.
    pub ratio: Result<Ratio, Lack>,
    /// The crown wheel's.
    pub crown: Result<Ratio, Lack>,
}

/// The candidate chosen on the gearing sheet, with the key of its teeth.
fn chosen(gearing: &GearingFindings) -> Option<(Key, Teeth, Rc<str>)> {
    let row = gearing
        .sheet
        .candidates
        .iter()
        .find(|row| row.chosen.value() == Some(&true))?;
    let teeth = row.teeth.value()?.teeth?;
    let name = row.name.value().filter(|name| !name.is_empty()).cloned();
    let name = name.unwrap_or_else(|| said(teeth));
    Some((row.teeth.key().clone(), teeth, name))
}

fn said(teeth: Teeth) -> Rc<str> {
    format!("{}/{}", teeth.crown, teeth.pinion).into()
}

fn typed(sheet: &FinalDriveSheet) -> Option<Teeth> {
    let (crown, pinion) = (sheet.crown.value()?, sheet.pinion.value()?);
    Teeth::new(crown.value() as u32, pinion.value() as u32).ok()
}

/// Nothing was typed of the teeth, and nothing that cannot be read.
fn left_to_gearing(sheet: &FinalDriveSheet) -> bool {
    sheet.crown.is_blank() && sheet.pinion.is_blank()
}

/// The set in hand; none where neither sheet tells of one.
pub(super) fn fitted(sheet: &FinalDriveSheet, gearing: &GearingFindings) -> Option<Fitted> {
    if left_to_gearing(sheet) {
        let (_, teeth, name) = chosen(gearing)?;
        return Some(Fitted {
            teeth,
            chosen: Some(name),
        });
    }
    Some(Fitted {
        teeth: typed(sheet)?,
        chosen: None,
    })
}

impl Pair {
    /// The counts that were typed here, else those of the set in hand.
    pub(super) fn of(sheet: &FinalDriveSheet, fitted: Option<&Fitted>) -> Self {
        let own = (sheet.crown.ask(), sheet.pinion.ask()).all();
        let (crown, pinion) = match (own, fitted) {
            (Err(_), Some(fitted)) => {
                let count = |symbol: &'static str, teeth: u32| {
                    Ok(Ratio::exact(f64::from(teeth))
                        .called(symbol)
                        .of_kind(Kind::Count))
                };
                (
                    count("z_2", fitted.teeth.crown),
                    count("z_1", fitted.teeth.pinion),
                )
            }
            (Ok((crown, pinion)), _) => (Ok(crown.clone()), Ok(pinion.clone())),
            (Err(lack), None) => (Err(lack.clone()), Err(lack)),
        };
        let ratio = (crown.clone(), pinion)
            .all()
            .map(|(crown, pinion)| (crown / pinion).called("i").of_kind(Kind::Ratio));
        Self { ratio, crown }
    }
}

/// Puts in the ratio, how the teeth meet, and where the set comes from.
pub(super) fn show(
    sheet: &FinalDriveSheet,
    pair: &Pair,
    fitted: Option<&Fitted>,
    gearing: &GearingFindings,
    found: &mut Found,
) {
    found.show("final_drive/ratio", Kind::Ratio, &pair.ratio);
    let Some(fitted) = fitted else { return };
    let meeting = fitted.teeth.meeting();
    let turns = Ok(Ratio::exact(f64::from(meeting.crown_turns)));
    found.show("final_drive/meeting", Kind::Count, &turns);
    let fact = if meeting.hunting() {
        "hunting"
    } else {
        "not_hunting"
    };
    found.remark(Remark::standing(Rank::Remark, fact).at(sheet.crown.key().clone()));
    if !meeting.hunting() && sheet.set_number.is_blank() {
        found.remark(Remark::new(Rank::Caution, "marks_of_set").at(sheet.set_number.key().clone()));
    }
    if fitted.chosen.is_some() {
        for (given, teeth) in [
            (&sheet.crown, fitted.teeth.crown),
            (&sheet.pinion, fitted.teeth.pinion),
        ] {
            found.stands_in(given.key(), teeth.to_string());
        }
    }
    match (&fitted.chosen, chosen(gearing)) {
        (Some(name), Some((key, teeth, _))) => {
            let remark = Remark::standing(Rank::Remark, "set_from_gearing").at(key);
            found.remark(remark.naming(said(teeth)).naming(Rc::clone(name)));
        }
        (None, Some((_, teeth, name))) if teeth != fitted.teeth => {
            let remark = Remark::new(Rank::Caution, "set_differs").at(sheet.crown.key().clone());
            let remark = remark.naming(said(fitted.teeth)).naming(said(teeth));
            found.remark(remark.naming(name));
        }
        _ => {}
    }
}
