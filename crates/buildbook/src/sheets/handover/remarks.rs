//! What has to be said at handing over.

use std::rc::Rc;

use measure::{Kind, Length, Ratio, unit};

use super::HandoverSheet;
use crate::key::joined;
use crate::sheets::torque::TorqueFindings;
use crate::sheets::vehicle::VehicleFindings;
use crate::{Found, Rank, Remark};

/// How uneven an axle may brake where tests follow Directive 2010/48/EU: no wheel below 70 % of the other.
const UNEVEN: f64 = 0.30;
/// What many tests ask of service and parking brake at least.
const EFFICIENCY: [(&str, f64, &str, &str); 2] = [
    (
        "handover/brake_efficiency",
        0.50,
        "weak_brake",
        "handover/brakes",
    ),
    (
        "handover/parking_efficiency",
        0.16,
        "weak_parking_brake",
        "handover/parking",
    ),
];
/// A tread that is down to the legal least of most countries, in metres.
const LEAST_TREAD: f64 = 0.0016;

pub(super) fn remark(
    found: &mut Found,
    sheet: &HandoverSheet,
    vehicle: &VehicleFindings,
    torque: &TorqueFindings,
) {
    for check in sheet.checks.iter() {
        if check.state.value() == Some(&"put_right") {
            found.remark(Remark::new(Rank::Warning, "put_right").at(check.state.key().clone()));
        }
    }
    for joint in &torque.sheet.joints {
        let holds = joint.purpose.value().copied().unwrap_or_default();
        if joint.done.value() != Some(&true) && ["steering", "brakes", "wheels"].contains(&holds) {
            let name = joint.name.value().cloned().unwrap_or_else(|| Rc::from(""));
            found.remark(
                Remark::new(Rank::Warning, "joint_open")
                    .at(joint.done.key().clone())
                    .naming(name),
            );
        }
    }
    weights(found, sheet, vehicle);
    toe(found, sheet);
    brakes(found, sheet);
    treads(found, sheet);
    if found.begun && sheet.handed_on.is_blank() {
        found.remark(Remark::new(Rank::Remark, "no_day").at(sheet.handed_on.key().clone()));
    }
    if let Some(day) = sheet.handed_on.value() {
        for entry in sheet.again.iter() {
            if entry.done.value().is_some_and(|done| done < day) {
                found.remark(
                    Remark::new(Rank::Warning, "done_too_early").at(entry.done.key().clone()),
                );
            }
        }
    }
    found.remark(Remark::standing(Rank::Caution, "record_only"));
    found.remark(Remark::standing(Rank::Warning, "rules_first"));
    found.remark(Remark::standing(Rank::Danger, "stop_and_look"));
}

fn weights(found: &mut Found, sheet: &HandoverSheet, vehicle: &VehicleFindings) {
    let axles = [
        (&sheet.front_weighed, &vehicle.sheet.front_limit),
        (&sheet.rear_weighed, &vehicle.sheet.rear_limit),
    ];
    for (weighed, limit) in axles {
        if let (Some(weighed_mass), Some(limit)) = (weighed.value(), limit.value())
            && weighed_mass.value() > limit.value()
        {
            found.remark(
                Remark::new(Rank::Danger, "axle_over_limit")
                    .at(weighed.key().clone())
                    .with(weighed_mass.figure(Kind::Mass))
                    .with(limit.figure(Kind::Mass)),
            );
        }
    }
}

/// Toe outside the maker's figures, or figures that stand upside down.
fn toe(found: &mut Found, sheet: &HandoverSheet) {
    let (least, most) = (sheet.toe_least.value(), sheet.toe_most.value());
    if let (Some(least), Some(most)) = (least, most)
        && least.value() > most.value()
    {
        found
            .remark(Remark::new(Rank::Warning, "toe_upside_down").at(sheet.toe_most.key().clone()));
        return;
    }
    let Some(toe) = found.figure("handover/toe").cloned() else {
        return;
    };
    let beyond = least.is_some_and(|least| toe.value() < least.value())
        || most.is_some_and(|most| toe.value() > most.value());
    if beyond {
        let remark = Remark::new(Rank::Warning, "toe_outside");
        found.remark(remark.at(sheet.toe_behind.key().clone()).with(toe));
    }
}

fn brakes(found: &mut Found, sheet: &HandoverSheet) {
    for axle in &sheet.brakes {
        let id = joined(&["handover/imbalance", axle.id()]);
        if let Some(imbalance) = found.figure(&id).cloned()
            && imbalance.value() > UNEVEN
        {
            found.remark(
                Remark::new(Rank::Warning, "uneven_brakes")
                    .at(axle.left.key().clone())
                    .with(imbalance),
            );
        }
    }
    for (id, least, fact, key) in EFFICIENCY {
        if let Some(efficiency) = found.figure(id).cloned()
            && efficiency.value() < least
        {
            let usual = Ratio::exact(least).figure(Kind::Percent);
            found.remark(
                Remark::new(Rank::Warning, fact)
                    .at(key)
                    .with(efficiency)
                    .with(usual),
            );
        }
    }
}

fn treads(found: &mut Found, sheet: &HandoverSheet) {
    for tyre in &sheet.tyres {
        if let Some(tread) = tyre.tread.value()
            && tread.value() < LEAST_TREAD
        {
            let least = Length::of(LEAST_TREAD, &unit::METRE).figure(Kind::Thickness);
            found.remark(
                Remark::new(Rank::Warning, "tread_worn")
                    .at(tyre.tread.key().clone())
                    .with(tread.figure(Kind::Thickness))
                    .with(least),
            );
        }
    }
}
