//! What is looked at again: by distance and by date.

use ::trade::handover as trade;
use measure::{Kind, Length, Time, unit};

use super::HandoverSheet;
use crate::sheets::torque::TorqueFindings;
use crate::{Date, Found, Given, Key};

/// After how far and how many days each of the usual checks comes: common practice, no source. The vehicle maker's figures go before.
const USUAL: &[(&str, &str, &str)] = &[
    ("wheel_nuts", "80 km", ""),
    ("u_bolts", "80 km", ""),
    ("leaks", "80 km", ""),
    ("steering_joints", "500 km", ""),
    ("hub_bearings", "500 km", ""),
    ("brakes", "500 km", ""),
    ("heights", "500 km", ""),
    ("hoses", "500 km", ""),
    ("engine_oil", "800 km", ""),
    ("axle_oil", "800 km", ""),
    ("valve_clearance", "800 km", ""),
    ("toe", "1000 km", ""),
    ("underside", "", "365 d"),
    ("brake_fluid", "", "730 d"),
    ("coolant", "", "730 d"),
];

/// Something that is looked at again.
#[derive(Debug, Clone, PartialEq)]
pub struct Due {
    /// The row it stands in: of this sheet, or a joint of the torque sheet.
    pub row: Key,
    /// The result that tells what the odometer shows then.
    pub at: Option<String>,
    /// After how far, in metres.
    pub after: Option<f64>,
    /// The day it comes to.
    pub on: Option<Date>,
    /// Whether the calendar brings it, not the odometer.
    pub by_date: bool,
    /// The day on which it was done.
    pub done: Option<Date>,
}

/// What is looked at again, the soonest first; what has no day comes last, by its distance.
pub(super) fn plan(found: &mut Found, sheet: &HandoverSheet, torque: &TorqueFindings) -> Vec<Due> {
    let mut plan: Vec<Due> = Vec::new();
    for entry in sheet.again.iter() {
        let usual = USUAL.iter().find(|(id, ..)| *id == entry.id());
        let (mut after, mut within) = (entry.after.clone(), entry.within.clone());
        // What is entered of either stands for both: who says "every year" does not want 80 km besides.
        if let (Some((_, far, long)), true, true) = (usual, after.is_blank(), within.is_blank()) {
            after = found.assume(&after, far);
            within = found.assume(&within, long);
        }
        let id = format!("handover/due_at/{}", entry.id());
        if let Some(mut due) = due(found, sheet, &after, within.value(), id) {
            due.row = entry.key.clone();
            due.done = entry.done.value().copied();
            plan.push(due);
        }
    }
    for joint in &torque.sheet.joints {
        let id = format!("handover/joint_due_at/{}", joint.id());
        if let Some(mut due) = due(found, sheet, &joint.check_after, None, id) {
            due.row = joint.key.clone();
            plan.push(due);
        }
    }
    let order = |due: &Due| {
        let day = due.on.map_or(i64::MAX, Date::number);
        (due.done.is_some(), day, due.after.unwrap_or(0.0) as i64)
    };
    measure::sort_by_key(&mut plan, order);
    plan
}

/// One check: what the odometer shows when it is due, and the day, whichever of distance and time comes first.
fn due(
    found: &mut Found,
    sheet: &HandoverSheet,
    after: &Given<Length>,
    within: Option<&Time>,
    id: String,
) -> Option<Due> {
    let after = after.value();
    if after.is_none() && within.is_none() {
        return None;
    }
    if let Some(after) = after {
        let at = sheet
            .odometer
            .ask()
            .map(|odometer| trade::due_at(odometer, after));
        found.show(id.clone(), Kind::Distance, &at);
    }
    let driven = after.and_then(|after| {
        let per_week = sheet.per_week.value()?;
        trade::due_after(after, per_week).ok()
    });
    let days = |time: &Time| time.in_unit(&unit::DAY).floor() as i64;
    let (driven, within) = (driven.as_ref().map(days), within.map(days));
    let by_date = within.is_some_and(|within| driven.is_none_or(|driven| within < driven));
    let soonest = [driven, within].into_iter().flatten().min();
    let begin = sheet.handed_on.value().copied();
    Some(Due {
        row: Key::from(""),
        at: after.map(|_| id),
        after: after.map(measure::Quantity::value),
        on: begin
            .zip(soonest)
            .and_then(|(begin, days)| begin.plus_days(days)),
        by_date,
        done: None,
    })
}
