//! What the steering comes to, as it was and on the new side.

use ::trade::TradeError;
use ::trade::conversion::{
    Steering, ackermann_error, ground_offset, kerb_circle, other_wheel, other_wheel_in_front, trail,
};
use measure::{Angle, Dimension, Kind, Length, Quantity, Ratio, Standing};

use super::{ConversionSheet, SetUp, SteeringEntry};
use crate::key::joined;
use crate::sheets::vehicle::VehicleFindings;
use crate::{All, Found, Lack, Rank, Remark};

/// Full lock one way: the angle of the inner and the outer wheel, and of the wheel that carries the steering arm.
struct Lock {
    inner: Angle,
    outer: Angle,
    steer: Angle,
}

/// A result as it was, on the new side, and the change of it.
pub(super) fn pair<D: Dimension>(
    found: &mut Found,
    name: &str,
    kind: Kind,
    [was, now]: [Result<Quantity<D>, Lack>; 2],
) {
    let id = |state: &str| joined(&["conversion", name, state]);
    found.show(id("was"), kind, &was);
    found.show(id("now"), kind, &now);
    if let (Ok(was), Ok(now)) = (was, now) {
        let change = &now - &was;
        // What does not change at all is nothing, whatever the last binary digits of its ± say.
        let nothing = change.value() == 0.0 && change.plus() <= 1e-12 * now.value().abs();
        let change = if nothing {
            Quantity::exact(0.0)
        } else {
            change
        };
        found.show(id("change"), kind, &Ok(change));
    }
}

/// Puts in what both set-ups come to.
pub(super) fn show(
    sheet: &ConversionSheet,
    set_ups: &mut [SetUp; 2],
    vehicle: &VehicleFindings,
    found: &mut Found,
) {
    for headline in ["link/now", "ratio/now", "bump_up/now"] {
        found
            .headlines
            .push(format!("conversion/{headline}").into());
    }
    let entries = [&sheet.was[0], &sheet.now[0]];
    for (at, set_up) in set_ups.iter_mut().enumerate() {
        set_up.locks = [1.0, -1.0].map(|way| {
            let lock = lock(sheet, set_up, entries[at], way).ok()?;
            Some((lock.inner.value(), lock.outer.value()))
        });
    }
    let set_ups = &*set_ups;
    let both = |of: &dyn Fn(&SetUp, &SteeringEntry) -> Result<Ratio, Lack>| {
        [of(&set_ups[0], entries[0]), of(&set_ups[1], entries[1])]
    };
    let links = [0, 1].map(|at: usize| Ok(set_ups[at].usable()?.drag_link().called("L")));
    pair(found, "link", Kind::Length, links);
    pair(
        found,
        "ratio",
        Kind::Ratio,
        both(&|set_up, entry| ratio_at(set_up, entry, &Ratio::exact(0.0))),
    );
    for (name, by) in [("bump_up", 1.0), ("bump_down", -1.0)] {
        let rise = if by > 0.0 { &sheet.rise } else { &sheet.fall };
        pair(
            found,
            name,
            Kind::Angle,
            both(&|set_up, _| {
                let (steering, rise) = (set_up.on_spring(), rise.ask()).all()?;
                // Counted towards the driver's side, so that a mirrored steering has the same.
                Ok(steering.bump_steer(&(rise * by))? * set_up.side)
            }),
        );
    }
    for (way, side) in [("left", 1.0), ("right", -1.0)] {
        let locks = [0, 1].map(|at: usize| lock(sheet, &set_ups[at], entries[at], side));
        show_lock(vehicle, sheet, way, &locks, found);
        pair(
            found,
            &format!("ratio_{way}"),
            Kind::Ratio,
            [0, 1].map(|at: usize| {
                let lock = locks[at].as_ref().map_err(Clone::clone)?;
                ratio_at(&set_ups[at], entries[at], &lock.steer)
            }),
        );
    }
    pair(
        found,
        "turns",
        Kind::Ratio,
        both(&|set_up, entry| turns(sheet, set_up, entry)),
    );
    show_least(&set_ups[1].on_spring(), found);
    show_moved(sheet, &set_ups[1], found);
    remark(sheet, set_ups, found);
}

/// The whole ratio at a steer angle: the linkage's and the box's, or the rack's.
fn ratio_at(set_up: &SetUp, entry: &SteeringEntry, at: &Angle) -> Result<Ratio, Lack> {
    let (steering, gear) = (set_up.usable(), box_ratio(entry)).all()?;
    Ok((steering.ratio(at)? * gear)
        .called("i")
        .of_kind(Kind::Ratio))
}

fn box_ratio(entry: &SteeringEntry) -> Result<Ratio, Lack> {
    if entry.gear.value() == Some(&"rack") {
        // A rack's travel for a radian stands for the arm, so its linkage counts turns of the wheel already.
        return Ok(Ratio::exact(1.0));
    }
    entry.box_ratio.ask().cloned()
}

/// How far the other wheel turns when one is turned outward or inward.
fn other(sheet: &ConversionSheet, turned: &Angle) -> Result<Angle, Lack> {
    let (pivots, arm, angle) = (
        sheet.pivots.ask(),
        sheet.track_arm.ask(),
        sheet.track_arm_angle.ask(),
    )
        .all()?;
    let (castor, inclination) = (sheet.castor.ask(), sheet.inclination.ask()).all()?;
    let lean = [castor, inclination];
    Ok(if sheet.track_rod.value() == Some(&"front") {
        other_wheel_in_front(turned, pivots, arm, angle, lean)?
    } else {
        other_wheel(turned, pivots, arm, angle, lean)?
    })
}

/// Full lock to the left (1) or right (-1): by the axle's stop or the end of the box's swing, whichever comes first.
fn lock(
    sheet: &ConversionSheet,
    set_up: &SetUp,
    entry: &SteeringEntry,
    way: f64,
) -> Result<Lock, Lack> {
    let steering = set_up.usable()?;
    let inside = way * set_up.arm_side > 0.0;
    let of_inner = |inner: Angle| -> Result<Lock, Lack> {
        let outer = other(sheet, &inner)?;
        let steer = if inside { &inner * way } else { &outer * way };
        Ok(Lock {
            inner,
            outer,
            steer,
        })
    };
    let stop = match sheet.stop.value() {
        Some(stop) => Some(of_inner(stop.clone())?),
        None => None,
    };
    match (stop, entry.swing.value()) {
        (None, None) => Err(Lack::needs([sheet.stop.key().clone()])),
        (Some(stop), None) => Ok(stop),
        (Some(stop), Some(swing)) if stop_comes_first(steering, &stop, swing) => Ok(stop),
        (_, Some(swing)) => {
            let first = steering.linkage().ratio(0.0).map_or(1.0, f64::signum);
            let outward = steering.steer(&(swing * (way * first)))? * set_up.arm_side;
            of_inner(if inside {
                outward
            } else {
                -other(sheet, &outward)?
            })
        }
    }
}

/// Whether the arm brings the wheels to the axle's stop before the box is at its own end.
fn stop_comes_first(steering: &Steering, stop: &Lock, swing: &Angle) -> bool {
    let to_stop = steering.linkage().swing(stop.steer.value());
    to_stop.is_some_and(|to_stop| to_stop.abs() <= swing.value())
}

/// The front wheel's radius as it rolls; not asked for while the pins stand upright.
fn radius(leans: &Angle, vehicle: &VehicleFindings) -> Result<Length, Lack> {
    if leans.value() == 0.0 && leans.plus() == 0.0 {
        return Ok(Length::exact(0.0));
    }
    let circumference = vehicle.front_wheel.circumference.clone()?;
    Ok((circumference / std::f64::consts::TAU).called("r"))
}

/// How far outward of the king pin's line the tyre's middle stands on the ground: as it was measured, else by track, pins and lean.
fn offset(sheet: &ConversionSheet, vehicle: &VehicleFindings) -> Result<Length, Lack> {
    if !sheet.scrub.is_blank() {
        return sheet.scrub.ask().cloned();
    }
    let lean = sheet.inclination.ask()?;
    let (track, pivots, radius) = (
        vehicle.sheet.track_front.ask(),
        sheet.pivots.ask(),
        radius(lean, vehicle),
    )
        .all()?;
    Ok(ground_offset(track, pivots, &radius, lean))
}

/// How far the tyre's middle stands behind the king pin's line on the ground.
fn trailing(sheet: &ConversionSheet, vehicle: &VehicleFindings) -> Result<Length, Lack> {
    let castor = sheet.castor.ask()?;
    Ok(trail(&radius(castor, vehicle)?, castor))
}

/// The distance of the king pins' lines on the ground, about which the wheels turn. Upright pins stand there as they do above.
pub(super) fn on_ground(
    sheet: &ConversionSheet,
    vehicle: &VehicleFindings,
) -> Result<Length, Lack> {
    let upright = sheet
        .inclination
        .value()
        .is_some_and(|lean| lean.value() == 0.0);
    if upright && sheet.scrub.is_blank() {
        return sheet.pivots.ask().cloned();
    }
    let (track, offset) = (vehicle.sheet.track_front.ask(), offset(sheet, vehicle)).all()?;
    Ok((track - offset * 2.0).called("c").of_kind(Kind::Length))
}

fn show_lock(
    vehicle: &VehicleFindings,
    sheet: &ConversionSheet,
    way: &str,
    locks: &[Result<Lock, Lack>; 2],
    found: &mut Found,
) {
    let each = |of: &dyn Fn(&Lock) -> Result<Ratio, Lack>| {
        [0, 1].map(|at: usize| of(locks[at].as_ref().map_err(Clone::clone)?))
    };
    pair(
        found,
        &format!("lock_{way}"),
        Kind::Angle,
        each(&|lock| Ok(lock.inner.clone())),
    );
    let outers =
        [0, 1].map(|at: usize| Ok(locks[at].as_ref().map_err(Clone::clone)?.outer.clone()));
    pair(found, &format!("outer_{way}"), Kind::Angle, outers);
    let base = (on_ground(sheet, vehicle), vehicle.sheet.wheelbase.ask()).all();
    pair(
        found,
        &format!("error_{way}"),
        Kind::Angle,
        each(&|lock| {
            let (pivots, wheelbase) = base.clone()?;
            Ok(ackermann_error(
                &lock.outer,
                &lock.inner,
                &pivots,
                wheelbase,
            ))
        }),
    );
    let place = (
        vehicle.sheet.wheelbase.ask(),
        offset(sheet, vehicle),
        trailing(sheet, vehicle),
    );
    let place = place.all();
    let circle = |at: usize| -> Result<Length, Lack> {
        let lock = locks[at].as_ref().map_err(Clone::clone)?;
        let (wheelbase, offset, trail) = place.clone()?;
        Ok(kerb_circle(&lock.outer, wheelbase, &offset, &trail))
    };
    pair(
        found,
        &format!("circle_{way}"),
        Kind::Altitude,
        [circle(0), circle(1)],
    );
}

/// Turns of the steering wheel from lock to lock.
fn turns(sheet: &ConversionSheet, set_up: &SetUp, entry: &SteeringEntry) -> Result<Ratio, Lack> {
    let (steering, gear) = (set_up.usable(), box_ratio(entry)).all()?;
    let swing = |way: f64| -> Result<Angle, Lack> {
        Ok(steering.swing(&lock(sheet, set_up, entry, way)?.steer)?)
    };
    let swept = (swing(1.0)? - swing(-1.0)?).abs();
    Ok((swept * gear / std::f64::consts::TAU).of_kind(Kind::Ratio))
}

/// What would upset the steering least as the axle rises.
fn show_least(now: &Result<&Steering, Lack>, found: &mut Found) {
    let height = now.clone().and_then(|now| Ok(now.best_box_height()?));
    found.show("conversion/least/box_up", Kind::Length, &height);
    found.show("conversion/least/ball_lower", Kind::Length, &height);
    let arm = now.clone().and_then(|now| Ok(now.best_drop_arm()?));
    found.show("conversion/least/drop_arm", Kind::Length, &arm);
}

/// Points of the curve over the lock.
const POINTS: u32 = 33;

pub(super) fn ackermann_curve(
    sheet: &ConversionSheet,
    now: &SetUp,
    pivots: &Length,
    wheelbase: &Length,
) -> Vec<(f64, f64)> {
    let lock = now
        .locks
        .iter()
        .flatten()
        .map(|lock| lock.0)
        .fold(0.0, f64::max);
    let most = if lock > 0.0 { lock } else { 0.7 };
    let error = |at: u32| {
        let inner = Angle::exact(most * f64::from(at) / f64::from(POINTS));
        let outer = other(sheet, &inner).ok()?;
        Some((
            inner.value(),
            ackermann_error(&outer, &inner, pivots, wheelbase).value(),
        ))
    };
    (1..=POINTS).filter_map(error).collect()
}

/// How far the end of the box is moved to see what that does.
const STEP: f64 = 0.01;

/// What moving the end of the box does to drag link, ratio and bump steer.
fn show_moved(sheet: &ConversionSheet, set_up: &SetUp, found: &mut Found) {
    let Ok(now) = set_up.usable() else { return };
    let side = set_up.side;
    for (way, by) in [
        ("forward", [STEP, 0.0, 0.0]),
        ("out", [0.0, side * STEP, 0.0]),
        ("up", [0.0, 0.0, STEP]),
    ] {
        let moved = now.moved(by);
        let link = Ok(moved.drag_link() - now.drag_link());
        found.show(joined(&["conversion/moved_link", way]), Kind::Length, &link);
        let centre = Ratio::exact(0.0);
        let ratio = (|| Ok((moved.ratio(&centre)? / now.ratio(&centre)?) - 1.0))();
        found.show(
            joined(&["conversion/moved_ratio", way]),
            Kind::Percent,
            &ratio,
        );
        let bump = (|| {
            let (_, rise) = (set_up.on_spring(), sheet.rise.ask()).all()?;
            Ok((moved.bump_steer(rise)? - now.bump_steer(rise)?) * side)
        })();
        found.show(joined(&["conversion/moved_bump", way]), Kind::Angle, &bump);
    }
}

/// Steer by the axle alone beyond which a driver fights the wheel on every bump: common practice, no source.
const MUCH_BUMP_STEER: f64 = 1.0 / 57.3;

fn remark(sheet: &ConversionSheet, set_ups: &[SetUp; 2], found: &mut Found) {
    for (way, entry) in [("was", &sheet.was[0]), ("now", &sheet.now[0])] {
        let locks = ["left", "right"].map(|side| format!("conversion/lock_{side}/{way}"));
        let refused =
            |id: &String| matches!(found.refusal(id), Some(TradeError::CannotReach { .. }));
        if locks.iter().any(refused) {
            found.remark(
                Remark::new(Rank::Warning, "link_cannot_follow").at(entry.swing.key().clone()),
            );
        }
    }
    if let Ok(link) = set_ups[1].usable().map(Steering::drag_link) {
        for (limit, wrong) in [
            (&sheet.link_least, Standing::Below),
            (&sheet.link_most, Standing::Above),
        ] {
            if let Some(limit) = limit.value().filter(|limit| link.standing(limit) == wrong) {
                let remark = Remark::new(Rank::Warning, "link_cannot_reach")
                    .at(sheet.link_least.key().clone());
                found.remark(
                    remark
                        .with(link.figure(Kind::Length))
                        .with(limit.figure(Kind::Length)),
                );
            }
        }
    }
    let bumps = ["conversion/bump_up/now", "conversion/bump_down/now"];
    let worst = bumps.into_iter().filter_map(|id| found.figure(id).cloned());
    let worst = worst.max_by(|a, b| a.value().abs().total_cmp(&b.value().abs()));
    if let Some(worst) = worst.filter(|worst| worst.value().abs() > MUCH_BUMP_STEER) {
        let remark = Remark::new(Rank::Caution, "much_bump_steer");
        found.remark(remark.at(sheet.now[0].box_z.key().clone()).with(worst));
    }
}
