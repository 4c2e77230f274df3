//! What was measured at the end: weights, toe, brakes; and how much is still to be looked at.

use ::trade::handover as trade;
use measure::{Force, Kind, Mass, Ratio};

use super::HandoverSheet;
use crate::key::joined;
use crate::sheets::torque::TorqueFindings;
use crate::sheets::vehicle::VehicleFindings;
use crate::{All, Found, Lack};

/// Puts the results of the sheet in.
pub(super) fn show(
    found: &mut Found,
    sheet: &HandoverSheet,
    vehicle: &VehicleFindings,
    torque: &TorqueFindings,
) {
    let left = |count: usize| Ok(Ratio::exact(count as f64));
    let unseen = sheet.checks.iter().filter(|check| check.state.is_blank());
    found.headline("handover/checks_left", Kind::Count, &left(unseen.count()));
    let joints = torque.sheet.joints.iter();
    let undone = joints.filter(|joint| joint.done.value() != Some(&true));
    found.headline("handover/joints_left", Kind::Count, &left(undone.count()));
    weights(found, sheet, vehicle);
    let toe = (sheet.toe_ahead.ask(), sheet.toe_behind.ask())
        .all()
        .map(|(ahead, behind)| trade::toe_in(ahead, behind));
    found.headline("handover/toe", Kind::Thickness, &toe);
    brakes(found, sheet);
}

/// The whole as weighed, what that is more than before, and each axle's share of its limit.
fn weights(found: &mut Found, sheet: &HandoverSheet, vehicle: &VehicleFindings) {
    let total = total(sheet);
    found.headline("handover/weighed", Kind::Mass, &total);
    let unladen = sheet.weighed_as.value() == Some(&"unladen");
    if unladen {
        let before = (vehicle.front[0].clone(), vehicle.rear[0].clone())
            .all()
            .map(|(front, rear)| (front + rear).called("before"));
        let change = (total, before)
            .all()
            .map(|(now, before)| (now - before).called("change").of_kind(Kind::Mass));
        found.show("handover/weight_change", Kind::Mass, &change);
    }
    let limits = [
        (
            "handover/front_of_limit",
            &sheet.front_weighed,
            &vehicle.sheet.front_limit,
        ),
        (
            "handover/rear_of_limit",
            &sheet.rear_weighed,
            &vehicle.sheet.rear_limit,
        ),
    ];
    for (id, weighed, limit) in limits {
        let share = (weighed.ask(), limit.ask())
            .all()
            .map(|(weighed, limit)| (weighed / limit).called("share").of_kind(Kind::Percent));
        found.show(id, Kind::Percent, &share);
    }
}

fn total(sheet: &HandoverSheet) -> Result<Mass, Lack> {
    let axles = (sheet.front_weighed.ask(), sheet.rear_weighed.ask()).all();
    axles.map(|(front, rear)| (front + rear).called("m").of_kind(Kind::Mass))
}

/// Imbalance axle by axle, and what service and parking brake come to together.
fn brakes(found: &mut Found, sheet: &HandoverSheet) {
    let mut forces: Vec<Result<Force, Lack>> = Vec::new();
    for axle in &sheet.brakes {
        let sides = (axle.left.ask(), axle.right.ask()).all();
        let imbalance = sides
            .clone()
            .and_then(|(left, right)| Ok(trade::brake_imbalance(left, right)?));
        let id = joined(&["handover/imbalance", axle.id()]);
        found.show(id, Kind::Percent, &imbalance);
        forces.push(sides.map(|(left, right)| left + right));
    }
    let mass = || {
        if sheet.brake_mass.is_blank() {
            total(sheet)
        } else {
            sheet.brake_mass.ask().cloned()
        }
    };
    let efficiency = |force: Result<Force, Lack>| {
        (force, mass())
            .all()
            .and_then(|(force, mass)| Ok(trade::brake_efficiency(&force, &mass)?))
    };
    let all: Result<Vec<Force>, Lack> = forces.into_iter().collect();
    let service = match all {
        Ok(all) if all.is_empty() => Err(Lack::needs(["handover/brakes/1/left".into()])),
        Ok(all) => Ok(Force::sum_of(&all)),
        Err(lack) => Err(lack),
    };
    let service = efficiency(service);
    found.headline("handover/brake_efficiency", Kind::Percent, &service);
    let parking = efficiency(sheet.parking.ask().cloned());
    found.show("handover/parking_efficiency", Kind::Percent, &parking);
}
