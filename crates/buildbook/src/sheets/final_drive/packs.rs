//! Packs made up from the shims that are there: the pinion's, and what goes from one side bearing to the other.

use ::trade::TradeError;
use ::trade::final_drive as trade;
use measure::{Kind, Length, Ratio};

use super::FinalDriveSheet;
use crate::{Found, Given, Key, Lack};

/// A pack of shims: how many of which, by their rows.
#[derive(Debug, Clone, PartialEq)]
pub struct Packed {
    /// Rows of the shims used, and how many of each.
    pub shims: Vec<(Key, usize)>,
    /// What they come to, metres.
    pub thickness: f64,
}

/// A shim that can be had, by its row.
struct Stock<'a> {
    row: &'a Key,
    thickness: &'a Given<Length>,
    count: Option<usize>,
}

/// The fewest of these shims that come within the tolerance.
fn packed(target: f64, sheet: &FinalDriveSheet, stock: &[Stock<'_>]) -> Result<Packed, Lack> {
    let within = sheet.pack_within.ask()?;
    if let Some(bad) = stock.iter().find(|shim| shim.thickness.is_bad()) {
        return Err(Lack::entry(bad.thickness.key().clone()));
    }
    let usable: Vec<(&Key, trade::Shim)> = stock
        .iter()
        .filter_map(|shim| {
            let thickness = shim.thickness.value()?.value();
            let count = shim.count;
            Some((shim.row, trade::Shim { thickness, count }))
        })
        .collect();
    let shims: Vec<trade::Shim> = usable.iter().map(|(_, shim)| *shim).collect();
    let pack = trade::shim_pack(target, within.value(), &shims)?;
    let used = usable.iter().zip(&pack.of_each).filter(|(_, n)| **n > 0);
    Ok(Packed {
        shims: used.map(|((row, _), n)| ((*row).clone(), *n)).collect(),
        thickness: pack.thickness,
    })
}

/// The pinion's pack, from the shims to hand; where they do not come near enough and shims have a price, more of them may be bought.
pub(super) fn pinion(sheet: &FinalDriveSheet, shim: &Length) -> Result<Packed, Lack> {
    let stock = |bought: bool| {
        let rows = sheet.shims.iter();
        let stock: Vec<Stock<'_>> = rows
            .filter(|row| !row.thickness.is_blank())
            .map(|row| Stock {
                row: &row.key,
                thickness: &row.thickness,
                count: row
                    .count
                    .value()
                    .filter(|_| !bought)
                    .map(|count| count.value() as usize),
            })
            .collect();
        stock
    };
    let to_hand = stock(false);
    if to_hand.is_empty() {
        return Err(Lack::needs([Key::from("final_drive/shims/1/thickness")]));
    }
    match packed(shim.value(), sheet, &to_hand) {
        Err(lack)
            if matches!(lack.refusal(), Some(TradeError::NoPack { .. }))
                && sheet.shim_price.value().is_some() =>
        {
            packed(shim.value(), sheet, &stock(true))
        }
        pack => pack,
    }
}

/// Puts in what goes from one side bearing to the other, where shims set them: as much as the crown wheel has to move, so that
/// the preload of both stays. None with adjusters, or while no shim of the sides was entered.
pub(super) fn side(
    sheet: &FinalDriveSheet,
    away: &Result<Length, Lack>,
    found: &mut Found,
) -> Option<Result<Packed, Lack>> {
    let there = sheet.side_shims.iter().any(|row| !row.thickness.is_blank());
    if sheet.moved_by.value() != Some(&"shims") || !there {
        return None;
    }
    let pack = away.clone().and_then(|away| {
        let from = if away.value() >= 0.0 {
            "crown_side"
        } else {
            "other_side"
        };
        let rows = sheet.side_shims.iter();
        let stock: Vec<Stock<'_>> = rows
            .filter(|row| row.side.value() == Some(&from))
            .map(|row| Stock {
                row: &row.key,
                thickness: &row.thickness,
                count: row.count.value().map(|count| count.value() as usize),
            })
            .collect();
        packed(away.value().abs(), sheet, &stock)
    });
    put(found, "side", &pack);
    Some(pack)
}

/// Puts a pack in: what it comes to, and how many shims it has.
pub(super) fn put(found: &mut Found, name: &str, pack: &Result<Packed, Lack>) {
    let of = |value: fn(&Packed) -> f64| pack.as_ref().map(value).map_err(Clone::clone);
    let thickness = of(|pack| pack.thickness).map(Length::exact);
    let count = of(|pack| pack.shims.iter().map(|(_, n)| *n).sum::<usize>() as f64);
    found.show(
        format!("final_drive/{name}_pack"),
        Kind::Thickness,
        &thickness,
    );
    found.show(
        format!("final_drive/{name}_count"),
        Kind::Count,
        &count.map(Ratio::exact),
    );
}
