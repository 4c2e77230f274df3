//! The conversion sheet: steering, pedals, cables and pipes of a driving position that changes sides, and the list of all
//! that changes sides with the driver.

use std::rc::Rc;

use measure::{Angle, Force, Kind, Length, Ratio, Tool};

use super::vehicle::VehicleFindings;
use crate::field::{choice, count, date, number, text};
use crate::reader::AtLeastOne;
use crate::{Date, Found, Given, Read, SheetFindings, sheet};

mod changes;
mod pedals;
mod remarks;
mod routes;
mod setup;
mod steering;
#[cfg(test)]
mod tests;

pub use changes::{STANDARD, SideChange, Standing};
pub use setup::SetUp;

/// How the steering gear lies.
pub const GEARS: &[&str] = &["across", "along", "upright", "rack"];
/// What runs along a route.
pub const ROUTES: &[&str] = &[
    "throttle",
    "clutch",
    "handbrake",
    "choke",
    "speedometer",
    "brake_pipe",
    "other_pipe",
];
/// How the end of a pipe is made.
pub const FLARES: &[&str] = &["single", "double", "bubble", "olive"];
/// How a change stands.
pub const STATES: &[&str] = &["to_do", "done", "does_not_apply"];

sheet! {
    /// What is entered of the conversion.
    pub struct ConversionSheet = "conversion" {
        /// The steering as it was.
        was: AtLeastOne<SteeringEntry>,
        /// The steering on the new side.
        now: AtLeastOne<SteeringEntry>,

        /// Between the king pins, middle to middle.
        pivots: Given<Length> = number("c", Kind::Length).between(0.6, 2.5).measured_with(Tool::Tape),
        /// From the vehicle's middle to the king pin, at the height of the steering arm's ball; half of the above while it is blank.
        pin_out: Given<Length> = number("y_p", Kind::Length).between(0.3, 1.3).measured_with(Tool::Tape),
        /// The king pin at that height, forward of the axle.
        pin_x: Given<Length> = number("x_p", Kind::Length).between(-0.2, 0.2).measured_with(Tool::Tape).assumed("0 mm"),
        /// How far the king pin's top leans in, towards the vehicle's middle.
        inclination: Given<Angle> = number("κ", Kind::Angle).between(-0.1, 0.4).measured_with(Tool::Protractor).assumed("0° exact"),
        /// How far the king pin's top leans back.
        castor: Given<Angle> = number("τ_c", Kind::Angle).between(-0.2, 0.3).measured_with(Tool::Protractor).assumed("0° exact"),
        /// From the king pin's line to the tyre's middle, on the ground, outward; by track, pins and lean while it is blank.
        scrub: Given<Length> = number("s", Kind::Length).between(-0.2, 0.4).measured_with(Tool::Tape),
        /// Which eye of the front spring is fixed.
        fixed_eye: Given<&'static str> = choice(&["front", "rear"]),
        /// From the fixed eye to the axle, along the main leaf.
        half_spring: Given<Length> = number("l", Kind::Length).between(0.15, 1.5).measured_with(Tool::Tape),
        /// How far the axle's seat lies above the fixed eye.
        seat_above_eye: Given<Length> = number("h", Kind::Length).between(-0.3, 0.3).measured_with(Tool::Tape),
        /// How far the axle can rise.
        rise: Given<Length> = number("z_up", Kind::Length).between(0.005, 0.3).assumed("60 mm exact"),
        /// How far it can fall.
        fall: Given<Length> = number("z_dn", Kind::Length).between(0.005, 0.3).assumed("60 mm exact"),
        /// The drag link to hand at its shortest, ball to ball.
        link_least: Given<Length> = number("L_1", Kind::Length).between(0.05, 3.0).measured_with(Tool::Rule),
        /// At its longest, with threads enough still in.
        link_most: Given<Length> = number("L_2", Kind::Length).between(0.05, 3.0).measured_with(Tool::Rule),
        /// The track rod's arm, pin to ball.
        track_arm: Given<Length> = number("r_t", Kind::Length).between(0.05, 0.5).measured_with(Tool::Rule),
        /// How far that arm stands inward behind the axle, or outward before it.
        track_arm_angle: Given<Angle> = number("τ", Kind::Angle).between(-0.8, 0.8).measured_with(Tool::Protractor),
        /// Where the track rod runs.
        track_rod: Given<&'static str> = choice(&["behind", "front"]).assumed("behind"),
        /// What the axle's stop lets the inner wheel turn.
        stop: Given<Angle> = number("δ_max", Kind::Angle).between(0.1, 0.9).measured_with(Tool::Protractor),

        /// The brake pedal as the maker had it.
        brake_was: AtLeastOne<PedalEntry>,
        /// The brake pedal on the new side.
        brake_now: AtLeastOne<PedalEntry>,
        /// The foot's force for full braking as it was, by the maker or a balance.
        foot: Given<Force> = number("F", Kind::Force).between(20.0, 2_000.0).measured_with(Tool::Scale),
        /// The foot's force that must do by the rules.
        foot_limit: Given<Force> = number("F_max", Kind::Force).between(100.0, 1_500.0),
        /// The force of a frightened foot, which everything must carry.
        panic: Given<Force> = number("F_p", Kind::Force).between(500.0, 5_000.0).assumed("1500 N exact"),
        /// The wheel cylinders or calipers that the master fills.
        pistons: Vec<PistonEntry>,

        /// The clutch pedal as it was.
        clutch_was: AtLeastOne<ClutchEntry>,
        /// The clutch pedal on the new side.
        clutch_now: AtLeastOne<ClutchEntry>,
        /// The force at the clutch fork's end that frees the clutch.
        fork_force: Given<Force> = number("F_g", Kind::Force).between(20.0, 10_000.0).measured_with(Tool::Scale),
        /// The travel of the fork's end that frees it, by the maker.
        fork_travel: Given<Length> = number("s_g", Kind::Length).between(0.001, 0.1),

        /// Cables and pipes.
        routes: Vec<RouteEntry>,
        /// What changes sides with the driver, by the names in `STANDARD`.
        changes: Vec<ChangeEntry>,
        /// What else does, by its owner.
        others: Vec<ChangeEntry>,
    }
    /// One set-up of the steering. Along: forward of the axle. Out: from the vehicle's middle. Up: from the ground or any level.
    pub struct SteeringEntry {
        /// Which way the arm's end goes when the steering wheel is turned to the right.
        arm_swings: Given<&'static str> = choice(&["forward", "backward", "left", "right"]),
        /// Where the steering arm's ball stands, seen from its king pin.
        ball_stands: Given<&'static str> = choice(&["front", "behind", "inside", "outside"]),
        /// On which side the driver sits; as the vehicle sheet says while it is blank.
        side: Given<&'static str> = choice(&["left", "right"]),
        /// How the steering gear lies.
        gear: Given<&'static str> = choice(GEARS).assumed("across"),
        /// The gear's shaft at the drop arm, or the rack's end, forward of the axle.
        box_x: Given<Length> = number("x_b", Kind::Length).between(-3.0, 3.0).measured_with(Tool::Tape),
        /// Out from the vehicle's middle, the driver's side.
        box_out: Given<Length> = number("y_b", Kind::Length).between(-1.0, 1.5).measured_with(Tool::Tape),
        /// Height.
        box_z: Given<Length> = number("z_b", Kind::Length).between(-0.5, 2.5).measured_with(Tool::Tape),
        /// The drop arm, shaft to ball.
        drop_arm: Given<Length> = number("r", Kind::Length).between(0.03, 0.5).measured_with(Tool::Rule),
        /// The drop arm with the box on centre: from straight down forward or outward, from straight back outward.
        at_centre: Given<Angle> = number("φ_0", Kind::Angle).between(-1.2, 1.2).measured_with(Tool::Protractor).assumed("0°"),
        /// What a turn of the steering wheel makes of the rack.
        rack_turn: Given<Length> = number("s_z", Kind::Length).between(0.01, 0.3).measured_with(Tool::Rule),
        /// The box's own ratio.
        box_ratio: Given<Ratio> = number("i_b", Kind::Ratio).between(4.0, 40.0).measured_with(Tool::Share(0.02)),
        /// How far the drop arm swings from centre to the box's own end, each way.
        swing: Given<Angle> = number("φ", Kind::Angle).between(0.1, 1.2).measured_with(Tool::Protractor),
        /// Which wheel carries the steering arm.
        arm_wheel: Given<&'static str> = choice(&["near", "far"]).assumed("near"),
        /// The steering arm's ball, forward of the axle.
        ball_x: Given<Length> = number("x", Kind::Length).between(-1.0, 1.0).measured_with(Tool::Tape),
        /// Out from the vehicle's middle, the side of its wheel.
        ball_out: Given<Length> = number("y", Kind::Length).between(0.05, 1.5).measured_with(Tool::Tape),
        /// Height.
        ball_z: Given<Length> = number("z", Kind::Length).between(-0.5, 2.0).measured_with(Tool::Tape),
    }
    /// A brake pedal and its master cylinder.
    pub struct PedalEntry {
        /// From pivot to pad.
        pad_arm: Given<Length> = number("l_1", Kind::Length).between(0.05, 0.8).measured_with(Tool::Rule),
        /// From pivot to push rod.
        rod_arm: Given<Length> = number("l_2", Kind::Length).between(0.01, 0.3).measured_with(Tool::Rule),
        /// The master cylinder's bore.
        master: Given<Length> = number("d_m", Kind::Length).between(0.008, 0.06).measured_with(Tool::Caliper),
        /// What a servo makes of the push; 1 without one.
        servo: Given<Ratio> = number("i_s", Kind::Ratio).between(1.0, 10.0).assumed("1"),
        /// Free play at the push rod.
        free_play: Given<Length> = number("s_0", Kind::Length).between(0.0, 0.02).assumed("1 ± 0.5 mm"),
        /// The master piston's whole stroke.
        stroke: Given<Length> = number("s_m", Kind::Length).between(0.005, 0.1).measured_with(Tool::Rule),
    }
    /// Like pistons at the wheels.
    pub struct PistonEntry {
        /// Where they are.
        name: Given<Rc<str>> = text(),
        /// Their bore.
        bore: Given<Length> = number("d_w", Kind::Length).between(0.008, 0.12).measured_with(Tool::Caliper),
        /// How many.
        count: Given<Ratio> = count("n").between(1.0, 16.0).assumed("2"),
        /// What each travels until the lining bears.
        travel: Given<Length> = number("s_w", Kind::Length).between(0.0, 0.02).measured_with(Tool::Within(0.0002)),
    }
    /// A clutch pedal.
    pub struct ClutchEntry {
        /// What works the fork.
        by: Given<&'static str> = choice(&["cable", "slave"]).assumed("slave"),
        /// From pivot to pad.
        pad_arm: Given<Length> = number("l_1", Kind::Length).between(0.05, 0.8).measured_with(Tool::Rule),
        /// From pivot to push rod or cable.
        rod_arm: Given<Length> = number("l_2", Kind::Length).between(0.01, 0.3).measured_with(Tool::Rule),
        /// The pad's travel to the floor.
        pad_travel: Given<Length> = number("s_p", Kind::Length).between(0.02, 0.4).measured_with(Tool::Rule),
        /// Free play at the push rod or cable.
        free_play: Given<Length> = number("s_0", Kind::Length).between(0.0, 0.02).assumed("2 ± 1 mm"),
        /// The master cylinder's bore.
        master: Given<Length> = number("d_m", Kind::Length).between(0.008, 0.06).measured_with(Tool::Caliper),
        /// The slave cylinder's bore.
        slave: Given<Length> = number("d_s", Kind::Length).between(0.008, 0.06).measured_with(Tool::Caliper),
        /// How much of the pull comes out of the cable; by its route while it is blank.
        efficiency: Given<Ratio> = number("η", Kind::Percent).between(0.2, 1.0).measured_with(Tool::Within(0.05)),
    }
    /// A cable or a pipe.
    pub struct RouteEntry {
        /// What it is called.
        name: Given<Rc<str>> = text(),
        /// What it is.
        kind: Given<&'static str> = choice(ROUTES),
        /// Its length by a string laid along the way; goes before straights and bends.
        string: Given<Length> = number("L_s", Kind::Length).between(0.02, 12.0).measured_with(Tool::Within(0.01)),
        /// The straight pieces.
        straights: Vec<StraightEntry>,
        /// The bends.
        bends: Vec<BendEntry>,
        /// The least radius that it may be bent to, by its maker or the bending tool's.
        least_radius: Given<Length> = number("r_min", Kind::Length).between(0.005, 1.0),
        /// Friction in the cable's sheath: lined 0.05, dry 0.3.
        friction: Given<Ratio> = number("μ", Kind::Ratio).between(0.01, 0.6).measured_with(Tool::Share(0.3)).assumed("0.15"),
        /// Free play in the cable.
        free_play: Given<Length> = number("s_0", Kind::Length).between(0.0, 0.05).assumed("1 ± 0.5 mm"),
        /// The lever at the driver's end: pivot to cable.
        arm: Given<Length> = number("r_1", Kind::Length).between(0.005, 0.6).measured_with(Tool::Rule),
        /// How far it swings.
        swing: Given<Angle> = number("θ_1", Kind::Angle).between(0.02, 2.6).measured_with(Tool::Protractor),
        /// The lever at the far end.
        far_arm: Given<Length> = number("r_2", Kind::Length).between(0.005, 0.6).measured_with(Tool::Rule),
        /// How far that must swing.
        far_swing: Given<Angle> = number("θ_2", Kind::Angle).between(0.02, 2.6).measured_with(Tool::Protractor),
        /// What the tool takes of the pipe for a flare.
        flare_takes: Given<Length> = number("e", Kind::Length).between(0.0, 0.03).assumed("3 ± 1 mm"),
        /// The union's thread at one end: `M10x1`, `3/8 UNF`.
        union_1: Given<Rc<str>> = text(),
        /// How that end is made.
        flare_1: Given<&'static str> = choice(FLARES),
        /// The union's thread at the other end.
        union_2: Given<Rc<str>> = text(),
        /// How that end is made.
        flare_2: Given<&'static str> = choice(FLARES),
    }
    /// A straight piece.
    pub struct StraightEntry {
        /// Its length.
        length: Given<Length> = number("a", Kind::Length).between(0.0, 8.0).measured_with(Tool::Tape),
    }
    /// A bend.
    pub struct BendEntry {
        /// The radius of its middle line.
        radius: Given<Length> = number("r", Kind::Length).between(0.003, 3.0).measured_with(Tool::Within(0.005)),
        /// How far it turns.
        angle: Given<Angle> = number("θ", Kind::Angle).between(0.02, 6.4).measured_with(Tool::Protractor),
    }
    /// Something that changes sides with the driver.
    pub struct ChangeEntry {
        /// What it is, where its owner added it.
        name: Given<Rc<str>> = text(),
        /// How it stands; to do while it is blank.
        state: Given<&'static str> = choice(STATES),
        /// Anything to remember.
        note: Given<Rc<str>> = text(),
        /// The day it was done.
        on: Given<Date> = date(),
    }
}

/// What the conversion sheet finds.
#[derive(Debug, Clone)]
pub struct ConversionFindings {
    /// The entries as they were read.
    pub sheet: Rc<ConversionSheet>,
    /// Results, remarks and errors.
    pub found: Found,
    /// The steering as it was, and on the new side.
    pub set_ups: [SetUp; 2],
    /// All that changes sides, the usual things first, with how each stands.
    pub changes: Vec<SideChange>,
    /// The distance of the king pins' lines on the ground, where it is known.
    pub pins_on_ground: Option<Length>,
}

impl ConversionFindings {
    /// How far the outer wheel stands from correct steering, over the inner wheel's angle up to full lock or 40 degrees;
    /// empty while the track rod is not known. Reckoned when it is drawn.
    #[must_use]
    pub fn ackermann_curve(&self, wheelbase: Option<&Length>) -> Vec<(f64, f64)> {
        let base = self.pins_on_ground.as_ref().zip(wheelbase);
        base.map_or_else(Vec::new, |(pins, wheelbase)| {
            steering::ackermann_curve(&self.sheet, &self.set_ups[1], pins, wheelbase)
        })
    }

    /// What is still to do before the conversion is whole: read by whoever hands the vehicle over.
    pub fn open_changes(&self) -> impl Iterator<Item = &SideChange> {
        let open = |change: &&SideChange| change.standing == Standing::ToDo;
        self.changes.iter().filter(open)
    }
}

impl SheetFindings for ConversionFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the conversion sheet come to.
#[must_use]
pub fn findings(read: &Read<ConversionSheet>, vehicle: &Rc<VehicleFindings>) -> ConversionFindings {
    let mut found = Found::of(read);
    let sheet = Rc::clone(&read.sheet);
    let mut set_ups = setup::both(&sheet, vehicle, &mut found);
    steering::show(&sheet, &mut set_ups, vehicle, &mut found);
    pedals::show(&sheet, vehicle, &mut found);
    routes::show(&sheet, &mut found);
    let changes = changes::of(&sheet, &mut found);
    remarks::remark(&sheet, &mut found);
    ConversionFindings {
        pins_on_ground: steering::on_ground(&sheet, vehicle).ok(),
        sheet,
        found,
        set_ups,
        changes,
    }
}
