//! The ratio set, the pinion's shim and pack, and the preload of its bearings.

use ::trade::final_drive as trade;
use measure::{Kind, Length, Ratio};

use super::FinalDriveSheet;
use crate::{All, Found, Key, Lack, Rank, Remark};

/// A pack of shims: how many of which, by their rows.
#[derive(Debug, Clone, PartialEq)]
pub struct Packed {
    /// Rows of the shims used, and how many of each.
    pub shims: Vec<(Key, usize)>,
    /// What they come to, metres.
    pub thickness: f64,
}

/// Puts in the ratio, the shim wanted and the pack.
pub(super) fn show(sheet: &FinalDriveSheet, found: &mut Found) -> Result<Packed, Lack> {
    let ratio = ratio(sheet);
    found.show("final_drive/ratio", Kind::Ratio, &ratio);
    let shim = shim(sheet);
    found.headline("final_drive/shim", Kind::Thickness, &shim);
    let pack = shim.and_then(|shim| packed(sheet, &shim));
    let thickness = pack
        .as_ref()
        .map(|pack| Length::exact(pack.thickness))
        .map_err(Clone::clone);
    found.show("final_drive/pack", Kind::Thickness, &thickness);
    let count = pack
        .as_ref()
        .map_err(Clone::clone)
        .map(|pack| Ratio::exact(pack.shims.iter().map(|(_, count)| *count).sum::<usize>() as f64));
    found.show("final_drive/pack_count", Kind::Count, &count);
    pack
}

/// Crown wheel's teeth over pinion's: exact.
pub(super) fn ratio(sheet: &FinalDriveSheet) -> Result<Ratio, Lack> {
    let (crown, pinion) = (sheet.crown.ask(), sheet.pinion.ask()).all()?;
    Ok((crown / pinion).called("i").of_kind(Kind::Ratio))
}

fn shim(sheet: &FinalDriveSheet) -> Result<Length, Lack> {
    let (plus, sits) = (sheet.plus_means.ask(), sheet.shim_sits.ask());
    let flags = (plus, sits).all().map(|(plus, sits)| {
        let sense = match *plus {
            "nearer" => trade::MarkSense::PlusIsNearer,
            _ => trade::MarkSense::PlusIsFurther,
        };
        let place = match *sits {
            "behind_cup" => trade::ShimPlace::BehindCup,
            "carrier_flange" => trade::ShimPlace::CarrierFlange,
            _ => trade::ShimPlace::HeadToCone,
        };
        (sense, place)
    });
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

fn packed(sheet: &FinalDriveSheet, shim: &Length) -> Result<Packed, Lack> {
    let within = sheet.pack_within.ask()?;
    let rows: Vec<_> = sheet
        .shims
        .iter()
        .filter(|row| row.thickness.value().is_some())
        .collect();
    if rows.is_empty() {
        return Err(Lack::Needs(vec![Key::from(
            "final_drive/shims/1/thickness",
        )]));
    }
    let to_hand: Vec<trade::Shim> = rows
        .iter()
        .filter_map(|row| {
            Some(trade::Shim {
                thickness: row.thickness.value()?.value(),
                count: row.count.value().map(|count| count.value() as usize),
            })
        })
        .collect();
    let pack = trade::shim_pack(shim.value(), within.value(), &to_hand)?;
    let used = rows
        .iter()
        .zip(&pack.of_each)
        .filter(|(_, count)| **count > 0);
    Ok(Packed {
        shims: used.map(|(row, count)| (row.key.clone(), *count)).collect(),
        thickness: pack.thickness,
    })
}

/// Puts in the pull for the wanted preload, and the torque behind a pull that was read.
pub(super) fn show_preload(sheet: &FinalDriveSheet, found: &mut Found) {
    let radius = (sheet.flange.ask(), sheet.cord.ask())
        .all()
        .map(|(flange, cord)| trade::cord_radius(flange, cord));
    let pull = (sheet.preload.ask(), radius.clone())
        .all()
        .and_then(|(preload, radius)| Ok(trade::pull_for_torque(preload, &radius)?));
    found.show("final_drive/pull", Kind::Force, &pull);
    let measured = (sheet.pull.ask(), radius)
        .all()
        .map(|(pull, radius)| (pull * radius).called("M").of_kind(Kind::Torque));
    if let (Ok(measured), Some(wanted)) = (&measured, sheet.preload.value())
        && measured.standing(wanted) == measure::Standing::Above
    {
        let remark = Remark::new(Rank::Warning, "preload_too_high").at(sheet.pull.key().clone());
        found.remark(remark.with(measured.figure(Kind::Torque)));
    }
    found.show("final_drive/preload", Kind::Torque, &measured);
    let drag = (sheet.side_drag.ask(), ratio(sheet))
        .all()
        .map(|(drag, ratio)| trade::side_drag(drag, &ratio));
    found.show("final_drive/side_drag", Kind::Torque, &drag);
}
