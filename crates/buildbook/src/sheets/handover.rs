//! The handover sheet: what was measured at the end, what was looked at before the road, what is looked at again, and what is still open.

use std::rc::Rc;

use measure::{Angle, Force, Kind, Length, Mass, Pressure, Time, Tool, Volume};

use crate::field::{choice, date, number, text, yes_no};
use crate::sheets::torque::TorqueFindings;
use crate::sheets::vehicle::VehicleFindings;
use crate::{Date, Found, Given, Preset, Read, SheetFindings, WithPresets, sheet};

mod again;
mod figures;
mod open;
mod remarks;
#[cfg(test)]
mod tests;
mod tyres;

pub use again::Due;
pub use open::{Open, called_for, open_items};
pub use tyres::TyreMade;

sheet! {
    /// What is entered when the vehicle is handed over.
    pub struct HandoverSheet = "handover" {
        /// The day it is handed over and goes on the road: the plan of checks begins here.
        handed_on: Given<Date> = date(),
        /// Who did the work.
        handed_by: Given<Rc<str>> = text(),
        /// Who takes it over.
        handed_to: Given<Rc<str>> = text(),
        /// What the odometer shows on that day.
        odometer: Given<Length> = number("s_0", Kind::Distance).between(0.0, 5.0e9),
        /// How far it is driven in a week.
        per_week: Given<Length> = number("w", Kind::Distance).between(1_000.0, 1.0e7).assumed("150 km"),
        /// The number stamped into the frame.
        frame_number: Given<Rc<str>> = text(),
        /// The number on the engine.
        engine_number: Given<Rc<str>> = text(),
        /// The number on the axle, after its rebuild.
        axle_number: Given<Rc<str>> = text(),
        /// The registration mark.
        registration: Given<Rc<str>> = text(),
        /// What was found and what was done about it.
        changes: Vec<ChangeEntry>,

        /// On the front axle, as weighed when it was finished.
        front_weighed: Given<Mass> = number("m_f", Kind::Mass).between(20.0, 20_000.0).measured_with(Tool::Weighbridge),
        /// On the rear axle, as weighed when it was finished.
        rear_weighed: Given<Mass> = number("m_r", Kind::Mass).between(20.0, 20_000.0).measured_with(Tool::Weighbridge),
        /// How it was loaded on the scales.
        weighed_as: Given<&'static str> = choice(&["unladen", "laden"]).assumed("unladen"),
        /// Between the rims ahead of the axle, at hub height.
        toe_ahead: Given<Length> = number("a", Kind::Length).between(0.5, 3.0).measured_with(Tool::Trammel),
        /// Between the rims behind the axle.
        toe_behind: Given<Length> = number("b", Kind::Length).between(0.5, 3.0).measured_with(Tool::Trammel),
        /// The maker's least toe-in; below zero is toe-out.
        toe_least: Given<Length> = number("toe_min", Kind::Thickness).between(-0.03, 0.03),
        /// The maker's greatest toe-in.
        toe_most: Given<Length> = number("toe_max", Kind::Thickness).between(-0.03, 0.03),
        /// Camber of the left front wheel.
        camber_left: Given<Angle> = number("γ_l", Kind::Angle).between(-0.2, 0.2).measured_with(Tool::Protractor),
        /// Camber of the right front wheel.
        camber_right: Given<Angle> = number("γ_r", Kind::Angle).between(-0.2, 0.2).measured_with(Tool::Protractor),
        /// Castor on the left.
        castor_left: Given<Angle> = number("τ_l", Kind::Angle).between(-0.3, 0.3).measured_with(Tool::Protractor),
        /// Castor on the right.
        castor_right: Given<Angle> = number("τ_r", Kind::Angle).between(-0.3, 0.3).measured_with(Tool::Protractor),
        /// The service brake on the tester, axle by axle.
        brakes: Vec<BrakeEntry>,
        /// The parking brake on the tester, all its wheels together.
        parking: Given<Force> = number("F_p", Kind::Force).between(0.0, 300_000.0).measured_with(Tool::Share(0.03)),
        /// What it weighed on the tester, where that is not what was weighed above.
        brake_mass: Given<Mass> = number("m_b", Kind::Mass).between(50.0, 40_000.0).measured_with(Tool::Weighbridge),
        /// The tyres, wheel by wheel.
        tyres: Vec<TyreEntry>,
        /// What was filled in.
        fluids: Vec<FluidEntry>,

        /// Who looked it over.
        checked_by: Given<Rc<str>> = text(),
        /// On which day.
        checked_on: Given<Date> = date(),
        /// What was looked at before the road.
        checks: WithPresets<CheckEntry>,
        /// What is looked at again, and when.
        again: WithPresets<AgainEntry>,
        /// What has to be approved or inspected where the vehicle is registered.
        approvals: WithPresets<ApprovalEntry>,
        /// Anything else.
        notes: Given<Rc<str>> = text(),

        /// Which paper the pack is printed on; while it is blank, that of the country whose words are shown.
        paper: Given<&'static str> = choice(&["a4", "letter"]),
        /// Whether the leaves are printed on one side or on two.
        sides: Given<&'static str> = choice(&["one", "two"]).assumed("one"),
        /// Whether the pack tells what it cost.
        with_money: Given<bool> = yes_no().assumed("no"),
    }
    /// Something that was found and what was done about it.
    pub struct ChangeEntry {
        /// The part.
        name: Given<Rc<str>> = text(),
        /// What was found.
        found: Given<Rc<str>> = text(),
        /// What was done.
        changed: Given<Rc<str>> = text(),
        /// By whom.
        by: Given<Rc<str>> = text(),
        /// On which day.
        on: Given<Date> = date(),
    }
    /// An axle on the brake tester.
    pub struct BrakeEntry {
        /// Which axle.
        name: Given<Rc<str>> = text(),
        /// The left side's force.
        left: Given<Force> = number("F_l", Kind::Force).between(0.0, 100_000.0).measured_with(Tool::Share(0.03)),
        /// The right side's force.
        right: Given<Force> = number("F_r", Kind::Force).between(0.0, 100_000.0).measured_with(Tool::Share(0.03)),
    }
    /// A tyre.
    pub struct TyreEntry {
        /// Where it stands.
        name: Given<Rc<str>> = text(),
        /// What stands on it.
        size: Given<Rc<str>> = text(),
        /// The date code: `2319` is the 23rd week of 2019.
        code: Given<Rc<str>> = text(),
        /// The decade of a code of three figures, which does not tell it.
        decade: Given<&'static str> = choice(&["1990", "1980", "1970"]),
        /// The day on which it was read; that of handing over while it is blank.
        read_on: Given<Date> = date(),
        /// The least depth of its tread.
        tread: Given<Length> = number("d", Kind::Thickness).between(0.0, 0.05).measured_with(Tool::Rule),
        /// Its pressure, cold.
        pressure: Given<Pressure> = number("p", Kind::Pressure).between(50_000.0, 1_200_000.0).measured_with(Tool::PressureGauge),
    }
    /// Something that was filled in.
    pub struct FluidEntry {
        /// Where it went.
        name: Given<Rc<str>> = text(),
        /// What it is, as its can says.
        grade: Given<Rc<str>> = text(),
        /// How much.
        amount: Given<Volume> = number("V", Kind::Volume).between(1.0e-5, 0.5).measured_with(Tool::Jug),
        /// On which day.
        on: Given<Date> = date(),
    }
    /// Something that was looked at.
    pub struct CheckEntry {
        /// What it is, where it is not of the usual ones.
        name: Given<Rc<str>> = text(),
        /// What was seen.
        state: Given<&'static str> = choice(&["good", "put_right", "not_there"]),
        /// What there is to say.
        note: Given<Rc<str>> = text(),
        /// By whom, where it was not the one named above.
        by: Given<Rc<str>> = text(),
        /// On which day, where it was not the day above.
        on: Given<Date> = date(),
    }
    /// Something that is looked at again.
    pub struct AgainEntry {
        /// What it is, where it is not of the usual ones.
        name: Given<Rc<str>> = text(),
        /// After how far.
        after: Given<Length> = number("s", Kind::Distance).between(1_000.0, 1.0e9),
        /// After how many days at the latest.
        within: Given<Time> = number("t", Kind::Days).between(86_400.0, 1.0e9),
        /// The day on which it was done.
        done: Given<Date> = date(),
        /// By whom.
        by: Given<Rc<str>> = text(),
        /// What was seen.
        note: Given<Rc<str>> = text(),
    }
    /// Something that has to be approved or inspected.
    pub struct ApprovalEntry {
        /// What it is, where it is not of the usual ones.
        name: Given<Rc<str>> = text(),
        /// How it stands.
        state: Given<&'static str> = choice(&["not_needed", "to_ask", "asked", "granted"]),
        /// Who decides.
        office: Given<Rc<str>> = text(),
        /// The number of the paper.
        reference: Given<Rc<str>> = text(),
        /// On which day.
        on: Given<Date> = date(),
        /// What there is to say.
        note: Given<Rc<str>> = text(),
    }
}

impl Preset for CheckEntry {
    const IDS: &'static [&'static str] = &[
        "steering_play",
        "steering_joints",
        "steering_lock",
        "column",
        "pedal",
        "brake_lines",
        "parking_brake",
        "brakes_even",
        "wheel_fixings",
        "hub_bearings",
        "tyres",
        "springs",
        "propeller_shaft",
        "oil_leaks",
        "fuel",
        "exhaust",
        "throttle",
        "head_lamps",
        "rear_lamps",
        "horn_wipers",
        "mirrors_glass",
        "seats_belts",
        "battery_wiring",
        "levels",
        "bed_doors",
        "loose_parts",
        "road_test",
    ];
}

impl Preset for AgainEntry {
    const IDS: &'static [&'static str] = &[
        "wheel_nuts",
        "u_bolts",
        "leaks",
        "steering_joints",
        "hub_bearings",
        "brakes",
        "heights",
        "hoses",
        "engine_oil",
        "axle_oil",
        "valve_clearance",
        "toe",
        "underside",
        "brake_fluid",
        "coolant",
    ];
}

impl Preset for ApprovalEntry {
    const IDS: &'static [&'static str] = &[
        "steering_side",
        "lamps",
        "speedometer",
        "axle_ratio",
        "springs",
        "weights",
        "tyres",
        "brakes",
        "fuel_system",
        "seat_belts",
        "papers",
        "insurance",
    ];
}

/// What the handover sheet finds.
#[derive(Debug, Clone)]
pub struct HandoverFindings {
    /// The entries as they were read.
    pub sheet: Rc<HandoverSheet>,
    /// Results, remarks and errors.
    pub found: Found,
    /// What is looked at again, the soonest first.
    pub plan: Vec<Due>,
    /// What the tyres' date codes tell.
    pub tyres: Vec<TyreMade>,
}

impl SheetFindings for HandoverFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the handover sheet come to.
#[must_use]
pub fn findings(
    read: &Read<HandoverSheet>,
    vehicle: &VehicleFindings,
    torque: &TorqueFindings,
) -> HandoverFindings {
    let mut found = Found::of(read);
    let sheet = Rc::clone(&read.sheet);
    figures::show(&mut found, &sheet, vehicle, torque);
    let plan = again::plan(&mut found, &sheet, torque);
    let tyres = tyres::made(&mut found, &sheet);
    remarks::remark(&mut found, &sheet, vehicle, torque);
    HandoverFindings {
        sheet,
        found,
        plan,
        tyres,
    }
}
