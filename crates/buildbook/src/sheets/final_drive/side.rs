//! The preload of the side bearings: as a spread, or as the drag that shows in a rise of the pinion's turning torque.

use ::trade::TradeError;
use ::trade::final_drive as trade;
use measure::{Kind, Length, Quantity, Standing, Torque};

use super::set::Pair;
use super::{FinalDriveSheet, preload};
use crate::{All, BookError, Found, Given, Lack, Rank, Remark};

/// Puts in what the drag comes to at the pinion and back, and how the shims of both sides have to change.
pub(super) fn show(
    sheet: &FinalDriveSheet,
    pair: &Pair,
    away: &Result<Length, Lack>,
    found: &mut Found,
) {
    drag(sheet, pair, found);
    if !(sheet.spread_wanted.is_blank() && sheet.spread_now.is_blank()) {
        spread(sheet, away, found);
    }
}

fn drag(sheet: &FinalDriveSheet, pair: &Pair, found: &mut Found) {
    let ratio = || pair.ratio.clone();
    if !sheet.side_drag.is_blank() {
        let at_pinion = (sheet.side_drag.ask(), ratio())
            .all()
            .map(|(drag, ratio)| trade::side_drag(drag, &ratio));
        found.show("final_drive/side_drag", Kind::Torque, &at_pinion);
    }
    let upside_down = upside_down(sheet, found);
    let behind = (!sheet.side_pull.is_blank()).then(|| {
        let rise = (
            sheet.side_pull.ask(),
            sheet.pull.ask(),
            preload::radius(sheet),
        )
            .all()
            .map(|(with, without, radius)| preload::torque(&(with - without), &radius));
        found.show("final_drive/side_rise", Kind::Torque, &rise);
        if let (Some(with), Some(without)) = (sheet.side_pull.value(), sheet.pull.value())
            && with.standing(without) == Standing::Below
        {
            let remark = Remark::new(Rank::Warning, "side_pull_below");
            let remark = remark.at(sheet.side_pull.key().clone());
            found.remark(
                remark
                    .with(with.figure(Kind::Force))
                    .with(without.figure(Kind::Force)),
            );
        }
        let behind = (rise, ratio())
            .all()
            .map(|(rise, ratio)| trade::drag_behind_rise(&rise, &ratio));
        found.show("final_drive/side_drag_behind", Kind::Torque, &behind);
        behind
    });
    if !sheet.side_drag_wanted.is_blank() {
        let pinion = if sheet.pull.is_blank() {
            sheet.preload.ask().cloned()
        } else {
            (sheet.pull.ask(), preload::radius(sheet))
                .all()
                .map(|(pull, radius)| preload::torque(pull, &radius))
        };
        let pull = (
            pinion,
            sheet.side_drag_wanted.ask(),
            ratio(),
            preload::radius(sheet),
        )
            .all()
            .and_then(|(pinion, drag, ratio, radius)| {
                let with = trade::turning_torque_with_carrier(&pinion, drag, &ratio);
                Ok(trade::pull_for_torque(&with, &radius)?)
            });
        found.show("final_drive/side_pull", Kind::Force, &pull);
    }
    if upside_down {
        return;
    }
    match (sheet.side_drag.value(), behind) {
        (Some(drag), _) => judge(
            drag,
            sheet.side_drag.key(),
            limits(sheet),
            Kind::Torque,
            found,
        ),
        (None, Some(Ok(drag))) if drag.value() >= 0.0 => judge(
            &drag,
            sheet.side_pull.key(),
            limits(sheet),
            Kind::Torque,
            found,
        ),
        _ => {}
    }
}

fn limits(sheet: &FinalDriveSheet) -> [Option<&Torque>; 2] {
    let least = sheet.side_drag_wanted.value();
    [least, sheet.side_drag_most.value().or(least)]
}

/// Says at its field when the most that the drag may be lies below the least.
fn upside_down(sheet: &FinalDriveSheet, found: &mut Found) -> bool {
    let (least, most) = (&sheet.side_drag_wanted, &sheet.side_drag_most);
    let wrong = least
        .value()
        .zip(most.value())
        .is_some_and(|(least, most)| most.value() < least.value());
    if wrong {
        let why = BookError::Trade(TradeError::UpsideDown);
        found.errors.push((most.key().clone(), why));
    }
    wrong
}

/// A remark where what was measured lies clearly below the least, or above the most.
fn judge<D: measure::Dimension>(
    measured: &Quantity<D>,
    at: &crate::Key,
    [least, most]: [Option<&Quantity<D>>; 2],
    kind: Kind,
    found: &mut Found,
) {
    let stands = |limit: Option<&Quantity<D>>, side| {
        limit.is_some_and(|limit| measured.standing(limit) == side)
    };
    let (rank, fact) = if stands(least, Standing::Below) {
        (Rank::Caution, "side_preload_too_low")
    } else if stands(most, Standing::Above) {
        (Rank::Warning, "side_preload_too_high")
    } else {
        return;
    };
    let remark = Remark::new(rank, fact).at(at.clone());
    found.remark(remark.with(measured.figure(kind)));
}

/// What is to be added in all and on each side; with shims and a move of the crown wheel, what each side then gets; with adjusters,
/// how many notches each goes in.
fn spread(sheet: &FinalDriveSheet, away: &Result<Length, Lack>, found: &mut Found) {
    let to_add = (sheet.spread_wanted.ask(), sheet.spread_now.ask())
        .all()
        .map(|(wanted, now)| trade::spread_to_add(wanted, now));
    found.show("final_drive/spread_to_add", Kind::Thickness, &to_add);
    let half = to_add.as_ref().map(trade::spread_each_side);
    let half = half.map_err(Clone::clone);
    found.show("final_drive/spread_each", Kind::Thickness, &half);
    if sheet.moved_by.value() == Some(&"adjusters") {
        let notches = (half, sheet.adjuster_pitch.ask(), sheet.notches.ask())
            .all()
            .and_then(|(half, pitch, notches)| Ok(trade::notches_for(&half, pitch, notches)?));
        found.show("final_drive/spread_notches", Kind::Ratio, &notches);
    } else {
        let both = (to_add, away.clone())
            .all()
            .map(|(to_add, away)| trade::shims_of_both_sides(&to_add, &away));
        for (side, id) in ["final_drive/crown_shims", "final_drive/other_shims"]
            .into_iter()
            .enumerate()
        {
            let change = both.as_ref().map(|both| both[side].clone());
            found.show(id, Kind::Thickness, &change.map_err(Clone::clone));
        }
    }
    let wanted: &Given<Length> = &sheet.spread_wanted;
    if let (Some(now), Some(wanted)) = (sheet.spread_now.value(), wanted.value()) {
        let limits = [Some(wanted), Some(wanted)];
        judge(now, sheet.spread_now.key(), limits, Kind::Thickness, found);
    }
}
