//! What the axle has to have bought: oil, the shims that are not to hand, parts that go in new; each only with a price.

use std::rc::Rc;

use measure::{Kind, Length, Manner, Money, Volume, show};

use super::{FinalDriveSheet, Packed};
use crate::{Found, Given, Purchase};

/// The sheet's name in its purchases.
const SHEET: &str = "final_drive";

/// More cans than this is a slip.
const MOST_CANS: f64 = 1e4;

/// Puts the purchases in.
pub(super) fn buy(sheet: &FinalDriveSheet, pack: Option<&Packed>, found: &mut Found) {
    if let (Some(oil), Some(price)) = (sheet.oil.value(), sheet.oil_price.value()) {
        found.purchases.extend(oil_bought(sheet, oil, *price));
    }
    if let (Some(pack), Some(price)) = (pack, sheet.shim_price.value()) {
        found.purchases.extend(shims_bought(sheet, pack, *price));
    }
    let parts = sheet.parts.iter().filter_map(|part| {
        let count = part.count.value()?.value() as u32;
        let id = format!("axle-part-{}", part.id());
        let name = named(&part.name).unwrap_or_else(|| part.id().into());
        let price = *part.price.value()?;
        (count > 0).then(|| Purchase::packs(SHEET, id, name, count, price))
    });
    found.purchases.extend(parts);
}

fn named(given: &Given<Rc<str>>) -> Option<Rc<str>> {
    given.value().filter(|name| !name.is_empty()).cloned()
}

fn shown<D: measure::Dimension>(quantity: &measure::Quantity<D>, kind: Kind) -> String {
    show(&quantity.figure(kind), &Manner::default()).without_error()
}

/// Whole cans, or so much by the litre where no can was entered.
fn oil_bought(sheet: &FinalDriveSheet, oil: &Volume, price: Money) -> Option<Purchase> {
    let name = named(&sheet.oil_name).unwrap_or_else(|| shown(oil, Kind::Volume).into());
    let id = "axle-oil";
    if sheet.oil_can.is_bad() {
        return None;
    }
    let Some(can) = sheet.oil_can.value() else {
        let litres = Purchase::measured(SHEET, id, name, oil.value() * 1e3, price).ok()?;
        return Some(litres.in_packs_of("1 L"));
    };
    // A hair over whole cans is the rounding of a conversion.
    let cans = (oil.value() / can.value() - 1e-9).ceil();
    let cans = (cans <= MOST_CANS).then_some(cans.max(0.0) as u32)?;
    Some(Purchase::packs(SHEET, id, name, cans, price).in_packs_of(shown(can, Kind::Volume)))
}

/// What the pinion's pack takes of each thickness beyond what is to hand. Of a thickness without a count there is enough.
fn shims_bought(sheet: &FinalDriveSheet, pack: &Packed, price: Money) -> Vec<Purchase> {
    let bought = pack.shims.iter().filter_map(|(row, used)| {
        let shim = sheet.shims.iter().find(|shim| shim.key == *row)?;
        let to_hand = shim.count.value()?.value() as usize;
        let missing = used.checked_sub(to_hand).filter(|missing| *missing > 0)?;
        let thickness: &Length = shim.thickness.value()?;
        let thickness = shown(thickness, Kind::Thickness);
        let name =
            named(&sheet.shim_name).map_or(thickness.clone(), |name| format!("{name} {thickness}"));
        let id = format!("axle-shim-{}", shim.id());
        Some(Purchase::packs(SHEET, id, name, missing as u32, price))
    });
    bought.collect()
}
