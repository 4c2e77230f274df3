//! Bolts and nuts that do not go back: bought new where a price was typed.

use super::{JointEntry, TorqueSheet};
use crate::{Found, Purchase};

/// Puts the purchases in, a line a joint.
pub(super) fn buy(sheet: &TorqueSheet, found: &mut Found) {
    for entry in &sheet.joints {
        if entry.new_count.is_blank() && !entry.new_price.is_blank() {
            found.stands_in(entry.new_count.key(), fixings(entry).to_string());
        }
        let count = match entry.new_count.value() {
            Some(count) => count.value() as u32,
            None if entry.new_count.is_bad() => continue,
            None => fixings(entry),
        };
        if let Some(price) = entry.new_price.value() {
            let name = entry.name.value().filter(|name| !name.is_empty()).cloned();
            let id = format!("joint-new-{}", entry.id());
            let what = name.unwrap_or_else(|| entry.id().into());
            found
                .purchases
                .push(Purchase::packs("torque", id, what, count, *price));
        }
    }
}

/// How many bolts or nuts a joint has, by its pattern.
fn fixings(entry: &JointEntry) -> u32 {
    let whole = |given: &crate::Given<measure::Ratio>| given.value().map(|n| n.value() as u32);
    match entry.pattern.value() {
        Some(&"circle") => whole(&entry.bolts),
        Some(&"rectangle") => whole(&entry.rows)
            .zip(whole(&entry.columns))
            .map(|(rows, columns)| rows * columns),
        _ => None,
    }
    .unwrap_or(1)
}
