//! The springs sheet: its entries and what it finds.

use std::rc::Rc;

use measure::{Angle, Force, Kind, Length, Pressure, Ratio, SpringRate, Stress, Tool};
use trade::springs::{Going, LeafEnds, LeafKind, Mounting, SeatRule, SpringLie, defaults};

use super::vehicle::VehicleFindings;
use crate::field::{choice, count, number, text, yes_no};
use crate::reader::AtLeastOne;
use crate::{Found, Given, Read, SheetFindings, sheet};

mod axles;
mod one;
mod pack;
mod picture;
mod plan;
mod remarks;
mod show;
#[cfg(test)]
mod tests;

/// Where the springs stand.
pub const PLACES: &[&str] = &["front_left", "front_right", "rear_left", "rear_right"];
/// What the heights and stresses are worked out for.
pub const LOADS: &[&str] = &["laden", "unladen"];
/// Where the rate comes from that the heights are worked out with.
pub const RATES: &[&str] = &["press", "handbook", "beam"];
/// How the lengths of the leaves were taken.
pub const LENGTHS: &[&str] = &["whole", "clear"];
/// How the leaves rub on one another.
pub const CONDITIONS: &[&str] = &["dry", "greased"];

sheet! {
    /// What is entered on the springs sheet.
    pub struct SpringsSheet = "springs" {
        /// Which axle loads of the vehicle the springs stand under; laden while it is blank and known.
        under: Given<&'static str> = choice(LOADS),
        /// Between the front springs, middle to middle.
        base_front: Given<Length> = number("s_f", Kind::Length).between(0.2, 2.5).measured_with(Tool::Tape),
        /// Between the rear springs, middle to middle.
        base_rear: Given<Length> = number("s_r", Kind::Length).between(0.2, 2.5).measured_with(Tool::Tape),
        /// Castor of the front axle as it stands, top of the king-pin to the rear positive.
        castor: Given<Angle> = number("castor", Kind::Angle).between(-0.3, 0.5).measured_with(Tool::Protractor),
        /// Slope of the rear axle's pinion as it stands, nose up positive.
        pinion: Given<Angle> = number("pinion", Kind::Angle).between(-0.5, 0.5).measured_with(Tool::Protractor),
        /// The springs.
        springs: AtLeastOne<SpringEntry>,
        /// Anything else.
        notes: Given<Rc<str>> = text(),
    }
    /// One spring.
    pub struct SpringEntry {
        /// Where it stands.
        place: Given<&'static str> = choice(PLACES),
        /// Its leaves, from the top of the pile.
        leaves: AtLeastOne<LeafEntry>,
        /// How the lengths were taken: whole leaves, or clear of the seat so that nothing more is deducted.
        lengths: Given<&'static str> = choice(LENGTHS).assumed("whole"),
        /// How long the seat holds the spring: the band's width, or from U-bolt to U-bolt.
        clamped: Given<Length> = number("l_c", Kind::Length).between(0.0, 0.6).measured_with(Tool::Rule).assumed("0 mm exact"),
        /// How much of that does not bend.
        seat_rule: Given<&'static str> = choice(SeatRule::IDS).assumed("whole"),
        /// How the tips of the leaves are cut.
        ends: Given<&'static str> = choice(LeafEnds::IDS).assumed("thinned"),
        /// The handbook's stiffening factor, where it is known better than by the cut of the tips.
        stiffening: Given<Ratio> = number("SF", Kind::Ratio).between(0.8, 1.6).measured_with(Tool::Within(0.03)),
        /// What the leaves are made of.
        steel: Given<&'static str> = choice(defaults::STEEL_IDS).assumed("silicon_manganese"),
        /// Young's modulus of the leaves.
        modulus: Given<Stress> = number("E", Kind::Stress).between(150e9, 230e9).measured_with(Tool::Share(0.02)).assumed(defaults::MODULUS.text),
        /// Stress that the steel may stand under the load.
        allowed: Given<Stress> = number("σ_zul", Kind::Stress).between(50e6, 1.5e9).measured_with(Tool::Share(0.05)),
        /// Stress that the steel may stand at full bump.
        allowed_bump: Given<Stress> = number("σ_zul,b", Kind::Stress).between(50e6, 2.0e9).measured_with(Tool::Share(0.05)),

        /// Load on this spring, where it was weighed; else it comes from the vehicle's axle loads.
        load: Given<Force> = number("F", Kind::Force).between(50.0, 200_000.0).measured_with(Tool::Scale),
        /// This spring's share of what its axle carries.
        share: Given<Ratio> = number("p", Kind::Percent).between(0.2, 0.8).measured_with(Tool::Within(0.01)).assumed("50 %"),
        /// Arch of the assembled spring off the vehicle: line of the eye centres to the upper face of the main leaf at the seat.
        free_arch: Given<Length> = number("h_0", Kind::Length).between(-0.3, 0.6).measured_with(Tool::Tape),
        /// How far the eyes' centres lie above the middle line of the main leaf's ends.
        eye_rise: Given<Length> = number("e", Kind::Length).between(-0.06, 0.06).measured_with(Tool::Rule).assumed("0 mm exact"),
        /// On which side of the axle the spring lies.
        mounting: Given<&'static str> = choice(Mounting::IDS).assumed("spring_over_axle"),
        /// From the centre of the axle to the face that the spring or its block sits on.
        pad: Given<Length> = number("p_a", Kind::Length).between(0.0, 0.4).measured_with(Tool::Rule),
        /// Block between the axle and the spring.
        block: Given<Length> = number("b_0", Kind::Length).between(0.0, 0.3).measured_with(Tool::Rule).assumed("0 mm exact"),
        /// From the line of the eyes up to the mark on the frame that heights are taken at.
        mark: Given<Length> = number("m", Kind::Length).between(-0.6, 0.6).measured_with(Tool::Tape).assumed("0 mm exact"),
        /// Travel that is left to the bump stop as it stands.
        bump: Given<Length> = number("c", Kind::Length).between(0.0, 0.4).measured_with(Tool::Tape),
        /// How the leaves rub.
        condition: Given<&'static str> = choice(CONDITIONS).assumed("dry"),
        /// Friction as a share of the load.
        friction: Given<Ratio> = number("μ", Kind::Percent).between(0.0, 0.4).measured_with(Tool::Share(0.3)),
        /// Which rate the heights are worked out with; the press test where there is one, else the handbook.
        rate_by: Given<&'static str> = choice(RATES),

        /// Between the centres of the shackle's pins.
        shackle: Given<Length> = number("s", Kind::Length).between(0.02, 0.4).measured_with(Tool::Rule),
        /// Level distance from the fixed eye's pin to the shackle's pin on the frame.
        pins_apart: Given<Length> = number("D", Kind::Length).between(0.2, 3.0).measured_with(Tool::Tape),
        /// How much higher the shackle's pin on the frame lies than the fixed eye's pin.
        pin_higher: Given<Length> = number("v", Kind::Length).between(-0.4, 0.4).measured_with(Tool::Tape).assumed("0 mm exact"),

        /// The press test, point by point.
        points: Vec<PointEntry>,
        /// Bore of the ram, where its gauge was read instead of a load.
        ram_bore: Given<Length> = number("d", Kind::Length).between(0.005, 0.3).measured_with(Tool::Caliper),

        /// Height of the mark above the centre of the axle that is wanted.
        wanted: Given<Length> = number("H", Kind::Length).between(-0.5, 1.2),
        /// To be fitted: leaves as thick as new.
        plan_as_new: Given<bool> = yes_no(),
        /// To be taken out: the leaf of this number, counted from the top.
        plan_remove: Given<Ratio> = count("n").between(1.0, 30.0).chosen(),
        /// To be added: a leaf of this thickness, as wide as the main leaf.
        plan_add: Given<Length> = number("t_+", Kind::Thickness).between(0.002, 0.04).chosen(),
        /// Length of that leaf, tip to tip.
        plan_add_length: Given<Length> = number("l_+", Kind::Length).between(0.1, 3.0).measured_with(Tool::Rule).chosen(),
        /// To be re-arched: the new free arch.
        plan_arch: Given<Length> = number("h_new", Kind::Length).between(-0.3, 0.6).measured_with(Tool::Tape).chosen(),
        /// To be fitted: a block of this thickness.
        plan_block: Given<Length> = number("b_new", Kind::Length).between(0.0, 0.3).measured_with(Tool::Caliper).chosen(),
        /// To be fitted: a wedge of this angle, thick end so that the nose of the axle comes up positive.
        plan_wedge: Given<Angle> = number("w", Kind::Angle).between(-0.2, 0.2).measured_with(Tool::Within(0.002)).chosen(),
        /// How far a new or re-arched spring settles in its first miles.
        settling: Given<Length> = number("z", Kind::Length).between(0.0, 0.1).assumed(defaults::SETTLING.text),
    }
    /// One leaf.
    pub struct LeafEntry {
        /// What it does; the first one is the main leaf, the others graduated, while it is blank.
        kind: Given<&'static str> = choice(LeafKind::IDS),
        /// Width; as the leaf above while it is blank.
        width: Given<Length> = number("b", Kind::Length).between(0.015, 0.2).measured_with(Tool::Caliper),
        /// Thickness at the worst pit.
        thickness: Given<Length> = number("t", Kind::Thickness).between(0.001, 0.04).measured_with(Tool::Caliper),
        /// Thickness as it was when new: at the tip under the clip, or from the maker's list.
        new_thickness: Given<Length> = number("t_new", Kind::Thickness).between(0.001, 0.04).measured_with(Tool::Caliper),
        /// Length along the leaf, tip to tip; of the main leaf, eye centre to eye centre.
        length: Given<Length> = number("l", Kind::Length).between(0.05, 3.0).measured_with(Tool::Rule),
        /// Of that, from the front tip to the centre bolt; half, or in the main leaf's proportion, while it is blank.
        front: Given<Length> = number("l_f", Kind::Length).between(0.02, 2.5).measured_with(Tool::Rule),
        /// Arch lying loose: chord of the tips to the upper face at the centre bolt.
        arch: Given<Length> = number("a", Kind::Length).between(-0.2, 0.6).measured_with(Tool::Rule),
        /// Of a helper: the clear gap above its tip when the spring is free.
        gap: Given<Length> = number("g", Kind::Length).between(0.0, 0.2).measured_with(Tool::Within(0.001)),
    }
    /// One point of the press test.
    pub struct PointEntry {
        /// How far the spring was pressed down from the first mark.
        travel: Given<Length> = number("x", Kind::Length).between(-0.5, 0.5).measured_with(Tool::Rule),
        /// Load of the ram.
        load: Given<Force> = number("F", Kind::Force).between(-5_000.0, 300_000.0).measured_with(Tool::Scale),
        /// The ram's gauge, where the load was not read.
        pressure: Given<Pressure> = number("p", Kind::Pressure).between(0.0, 1e8).measured_with(Tool::PressureGauge),
        /// Whether the load was going up or coming off.
        going: Given<&'static str> = choice(Going::IDS).assumed("up"),
    }
}

/// What the drawing of one spring needs.
#[derive(Debug, Clone)]
pub struct SpringPicture {
    /// The row of the spring.
    pub id: Rc<str>,
    /// Where it stands.
    pub place: Option<&'static str>,
    /// On which side of the axle it lies.
    pub mounting: Mounting,
    /// Off the vehicle.
    pub free: Option<SpringLie>,
    /// Under its load.
    pub loaded: Option<SpringLie>,
    /// At full bump.
    pub bump: Option<SpringLie>,
    /// Under its load after the planned work.
    pub planned: Option<SpringLie>,
    /// From the centre of the axle to the seat, and the block between, in metres.
    pub seat_m: Option<(f64, f64)>,
    /// The block after the planned work, in metres.
    pub planned_block_m: Option<f64>,
    /// The shackle's pin on the frame, level and up from the fixed eye, and its length, in metres.
    pub shackle_m: Option<(f64, f64, f64)>,
    /// Load against travel: points of the line that heights are worked out with, in metres and newtons.
    pub line: Vec<(f64, f64)>,
    /// Friction as a share of the load.
    pub friction: f64,
    /// Points of the press test: travel, load, and whether the load was going up.
    pub points: Vec<(f64, f64, bool)>,
    /// How many leaves there are, and where in the pile each entry of the list came to lie.
    pub leaf_ids: Vec<Rc<str>>,
}

/// What the springs sheet finds.
#[derive(Debug, Clone)]
pub struct SpringsFindings {
    /// The entries as they were read.
    pub sheet: Rc<SpringsSheet>,
    /// Results, remarks and errors.
    pub found: Found,
    /// What the drawings need, spring by spring.
    pub pictures: Vec<SpringPicture>,
    /// Whether the loads are those of the laden vehicle.
    pub laden: bool,
}

impl SheetFindings for SpringsFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the springs sheet come to.
#[must_use]
pub fn findings(read: &Read<SpringsSheet>, vehicle: &Rc<VehicleFindings>) -> SpringsFindings {
    let mut found = Found::of(read);
    let sheet = Rc::clone(&read.sheet);
    let laden = axles::laden(&sheet, vehicle);
    let springs: Vec<one::Spring> = sheet
        .springs
        .iter()
        .map(|entry| one::Spring::of(entry, vehicle, laden, &mut found))
        .collect();
    for spring in &springs {
        spring.show(&mut found);
        plan::show(spring, &mut found);
    }
    axles::show(&sheet, vehicle, &springs, laden, &mut found);
    remarks::remark(&springs, &mut found);
    SpringsFindings {
        pictures: springs.iter().map(one::Spring::picture).collect(),
        sheet,
        found,
        laden,
    }
}

/// The rate of the spring and where it comes from, or why there is none: shared by the parts of this sheet.
type Rated = Result<SpringRate, crate::Lack>;
