//! The final-drive sheet: ratio set, pinion shims, preload, backlash, tooth marks and the trials made.

use std::rc::Rc;

use measure::{Angle, Force, Kind, Length, Money, Ratio, Tool, Torque, Volume, unit};

use super::gearing::GearingFindings;
use crate::field::{choice, count, number, price, text, yes_no};
use crate::{Found, Given, Lack, Read, SheetFindings, sheet};

mod backlash;
mod buying;
mod closing;
mod packs;
mod pinion;
mod preload;
mod set;
mod side;
#[cfg(test)]
mod tests;
mod trials;

pub use packs::Packed;
pub use set::Fitted;
pub use trials::{Proposal, trial_marks};

/// Where marks lie along a tooth, from the small end to the large one.
pub const ALONG: &[&str] = &["toe", "towards_toe", "middle", "towards_heel", "heel"];
/// Where marks lie up a tooth, from the root to the tip.
pub const UP: &[&str] = &["flank", "low", "middle", "high", "face"];
/// The side bearings: behind the crown wheel, and the other one.
pub const SIDES: &[&str] = &["crown_side", "other_side"];

sheet! {
    /// What is entered of the axle.
    pub struct FinalDriveSheet = "final_drive" {
        /// Teeth of the crown wheel; blank, those of the set that was chosen on the gearing sheet.
        crown: Given<Ratio> = count("z_2").between(10.0, 120.0),
        /// Teeth of the pinion; blank, those of the set that was chosen on the gearing sheet.
        pinion: Given<Ratio> = count("z_1").between(3.0, 40.0),
        /// The matching number on both, so that the set stays together.
        set_number: Given<Rc<str>> = text(),

        /// How the pinion's shim is found.
        depth_by: Given<&'static str> = choice(&["marks", "depth"]).assumed("marks"),
        /// What a plus on the head means, by the maker's manual.
        plus_means: Given<&'static str> = choice(&["further", "nearer"]),
        /// Where the shim sits.
        shim_sits: Given<&'static str> = choice(&["head_to_cone", "behind_cup", "carrier_flange"]),
        /// The shim that was in.
        old_shim: Given<Length> = number("s_0", Kind::Thickness).between(0.0, 0.01).measured_with(Tool::Micrometer),
        /// The mark on the old head: a bare number is hundredths of a millimetre, in an inch book thousandths of an inch.
        old_mark: Given<Length> = number("m_0", Kind::Thickness).in_units(&unit::HUNDREDTH, &unit::THOU, &unit::THOU).between(-0.001, 0.001),
        /// The mark on the new head.
        new_mark: Given<Length> = number("m_1", Kind::Thickness).in_units(&unit::HUNDREDTH, &unit::THOU, &unit::THOU).between(-0.001, 0.001),
        /// From the crown wheel's axis to the bearing's seat in the housing.
        depth: Given<Length> = number("D", Kind::Thickness).between(0.02, 0.5).measured_with(Tool::Within(0.00003)),
        /// The height of the bearing.
        bearing: Given<Length> = number("B", Kind::Thickness).between(0.005, 0.1).measured_with(Tool::Micrometer),
        /// The mounting distance without mark, by the gear maker.
        nominal: Given<Length> = number("A", Kind::Thickness).between(0.01, 0.45),
        /// How near the pack must come.
        pack_within: Given<Length> = number("e", Kind::Thickness).between(0.001e-3, 0.2e-3).assumed("0.015 mm"),
        /// The shims to hand.
        shims: Vec<ShimEntry>,
        /// What shims are called where they are bought.
        shim_name: Given<Rc<str>> = text(),
        /// What one shim costs: with a price, a pack may take more than are to hand.
        shim_price: Given<Money> = price(),

        /// The turning torque wanted of the pinion's bearings; of a band the least.
        preload: Given<Torque> = number("M_v", Kind::Torque).between(0.05, 20.0),
        /// The most that it may be, by the maker of axle or bearings.
        preload_most: Given<Torque> = number("M_max", Kind::Torque).between(0.05, 20.0),
        /// For new or used bearings: the figures differ.
        bearings_are: Given<&'static str> = choice(&["new", "used"]).assumed("new"),
        /// What sets the preload.
        spacer: Given<&'static str> = choice(&["solid", "crush"]).assumed("solid"),
        /// The radius at which a spring balance is hooked on, where there is no cord.
        pull_radius: Given<Length> = number("r", Kind::Length).between(0.01, 0.5).measured_with(Tool::Rule),
        /// The flange that a cord is wound on.
        flange: Given<Length> = number("d_f", Kind::Length).between(0.02, 0.4).measured_with(Tool::Caliper),
        /// The cord's thickness.
        cord: Given<Length> = number("d_c", Kind::Length).between(0.0, 0.02).measured_with(Tool::Caliper).assumed("0 mm exact"),
        /// The pull read on the balance while it turns.
        pull: Given<Force> = number("F", Kind::Force).between(0.1, 2_000.0).measured_with(Tool::Share(0.05)),
        /// Packs of the preload that were tried, each with its pull: what a shim more does is then known.
        preload_trials: Vec<PreloadTrial>,
        /// The drag of the side bearings, measured at the crown wheel.
        side_drag: Given<Torque> = number("M_s", Kind::Torque).between(0.0, 50.0).measured_with(Tool::Share(0.1)),
        /// The drag wanted of them; of a band the least.
        side_drag_wanted: Given<Torque> = number("M_sw", Kind::Torque).between(0.0, 50.0),
        /// The most that it may be.
        side_drag_most: Given<Torque> = number("M_sm", Kind::Torque).between(0.0, 50.0),
        /// The pull read at the pinion with the carrier in, hooked on as for the pinion alone.
        side_pull: Given<Force> = number("F_s", Kind::Force).between(0.1, 2_000.0).measured_with(Tool::Share(0.05)),
        /// The preload wanted as a spread of both side bearings together.
        spread_wanted: Given<Length> = number("p_w", Kind::Thickness).between(0.0, 0.002),
        /// The spread measured; end float is below nothing.
        spread_now: Given<Length> = number("p_0", Kind::Thickness).between(-0.003, 0.002).measured_with(Tool::DialGauge),

        /// The least backlash wanted, by the maker.
        backlash_least: Given<Length> = number("j_min", Kind::Thickness).between(0.0, 0.001),
        /// The greatest backlash allowed.
        backlash_most: Given<Length> = number("j_max", Kind::Thickness).between(0.0, 0.0015),
        /// Backlash round the wheel, by dial gauge at the heel, square to the tooth.
        readings: Vec<ReadingEntry>,
        /// The radius at which the dial stood, where it was not the heel.
        dial_radius: Given<Length> = number("r_d", Kind::Length).between(0.02, 0.4).measured_with(Tool::Rule),
        /// The radius of the heel.
        heel_radius: Given<Length> = number("r_h", Kind::Length).between(0.02, 0.4).measured_with(Tool::Rule),
        /// The most that the readings may differ.
        run_out_limit: Given<Length> = number("u", Kind::Thickness).between(0.0, 0.001).assumed("0.10 mm"),
        /// The teeth's pressure angle.
        pressure_angle: Given<Angle> = number("α", Kind::Angle).between(0.2, 0.5).assumed("20°"),
        /// The teeth's spiral angle; none for straight teeth.
        spiral_angle: Given<Angle> = number("β", Kind::Angle).between(0.0, 0.95).assumed("35°"),
        /// The crown wheel's pitch diameter, which tells the usual backlash where the maker's figure is not known.
        crown_across: Given<Length> = number("d_2", Kind::Length).between(0.05, 0.8).measured_with(Tool::Rule),
        /// How the crown wheel is moved.
        moved_by: Given<&'static str> = choice(&["shims", "adjusters"]).assumed("shims"),
        /// The adjusters' thread pitch.
        adjuster_pitch: Given<Length> = number("P", Kind::Thickness).between(0.5e-3, 5e-3),
        /// The adjusters' notches.
        notches: Given<Ratio> = count("k").between(1.0, 100.0),
        /// The shims at the side bearings as they are now.
        side_shims: Vec<SideShim>,

        /// The trials, oldest first.
        trials: Vec<TrialEntry>,

        /// Play of a side gear in the differential.
        side_gear_play: Given<Length> = number("c", Kind::Thickness).between(0.0, 0.003).measured_with(Tool::FeelerGauge),
        /// The most that it may be.
        side_gear_limit: Given<Length> = number("c_max", Kind::Thickness).between(0.0, 0.003),
        /// End float of the half-shafts.
        end_float: Given<Length> = number("x", Kind::Thickness).between(0.0, 0.005).measured_with(Tool::DialGauge),
        /// The least that it should be.
        end_float_least: Given<Length> = number("x_min", Kind::Thickness).between(0.0, 0.005),
        /// The most that it may be.
        end_float_limit: Given<Length> = number("x_max", Kind::Thickness).between(0.0, 0.005),
        /// Oil to fill in.
        oil: Given<Volume> = number("V", Kind::Volume).between(0.0002, 0.02),
        /// The oil's grade and name.
        oil_name: Given<Rc<str>> = text(),
        /// What a can of it holds; blank, it is sold by the litre.
        oil_can: Given<Volume> = number("V_can", Kind::Volume).between(0.0001, 0.21),
        /// What a can costs, or a litre.
        oil_price: Given<Money> = price(),
        /// Parts that go in new.
        parts: Vec<PartEntry>,
        /// The axle has worm gears of bronze.
        bronze: Given<bool> = yes_no(),
        /// The breather is clear.
        breather: Given<bool> = yes_no(),
        /// To be run in gently for so far.
        run_in: Given<Length> = number("s_r", Kind::Distance).between(10_000.0, 3_000_000.0).assumed("500 km"),
    }
    /// A shim to hand.
    pub struct ShimEntry {
        /// Its thickness, as marked or measured.
        thickness: Given<Length> = number("t", Kind::Thickness).between(0.02e-3, 5e-3),
        /// How many there are; blank for as many as wanted.
        count: Given<Ratio> = count("n").between(0.0, 50.0),
    }
    /// A part that goes in new.
    pub struct PartEntry {
        /// What it is: `Crush sleeve`, `Pinion seal`.
        name: Given<Rc<str>> = text(),
        /// How many.
        count: Given<Ratio> = count("n").between(0.0, 999.0).assumed("1"),
        /// What one costs.
        price: Given<Money> = price(),
    }
    /// A pack of the preload that was tried.
    pub struct PreloadTrial {
        /// The thickness of the pack, or of spacer and shims together.
        pack: Given<Length> = number("s", Kind::Thickness).between(0.0, 0.1).measured_with(Tool::Micrometer),
        /// The pull read while it turned; the torque at the radius above.
        pull: Given<Force> = number("F", Kind::Force).between(0.1, 2_000.0).measured_with(Tool::Share(0.05)),
    }
    /// A shim at a side bearing.
    pub struct SideShim {
        /// On which side it sits.
        side: Given<&'static str> = choice(SIDES),
        /// Its thickness.
        thickness: Given<Length> = number("t", Kind::Thickness).between(0.02e-3, 5e-3),
        /// How many of these there are; blank is one.
        count: Given<Ratio> = count("n").between(0.0, 50.0).assumed("1"),
    }
    /// A reading of the backlash.
    pub struct ReadingEntry {
        /// What the dial said.
        reading: Given<Length> = number("j", Kind::Thickness).between(0.0, 0.003).measured_with(Tool::DialGauge),
    }
    /// A trial.
    pub struct TrialEntry {
        /// The pinion's shim.
        shim: Given<Length> = number("s", Kind::Thickness).between(0.0, 0.01),
        /// How far the crown wheel was moved away from where it stood first; towards the pinion is below nothing.
        moved: Given<Length> = number("v", Kind::Thickness).between(-0.003, 0.003),
        /// The least backlash then.
        backlash: Given<Length> = number("j", Kind::Thickness).between(0.0, 0.003).measured_with(Tool::DialGauge),
        /// Marks along the drive flank.
        drive: Given<&'static str> = choice(ALONG),
        /// Marks along the coast flank.
        coast: Given<&'static str> = choice(ALONG),
        /// Marks up the tooth.
        height: Given<&'static str> = choice(UP),
        /// Anything else.
        note: Given<Rc<str>> = text(),
    }
}

/// What the final-drive sheet finds.
#[derive(Debug, Clone)]
pub struct FinalDriveFindings {
    /// The entries as they were read.
    pub sheet: Rc<FinalDriveSheet>,
    /// Results, remarks and errors.
    pub found: Found,
    /// The set in hand: as typed here, or as chosen on the gearing sheet.
    pub fitted: Option<Fitted>,
    /// The pack for the pinion, from the shims to hand.
    pub pack: Result<Packed, Lack>,
    /// The shims that go from one side bearing to the other, from those that are there.
    pub side: Option<Result<Packed, Lack>>,
    /// What the last trial's marks ask for, and what to try next.
    pub proposal: Option<Proposal>,
}

impl SheetFindings for FinalDriveFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the final-drive sheet come to.
#[must_use]
pub fn findings(read: &Read<FinalDriveSheet>, gearing: &GearingFindings) -> FinalDriveFindings {
    let mut found = Found::of(read);
    let sheet = Rc::clone(&read.sheet);
    let fitted = set::fitted(&sheet, gearing);
    let teeth = set::Pair::of(&sheet, fitted.as_ref());
    set::show(&sheet, &teeth, fitted.as_ref(), gearing, &mut found);
    let pack = pinion::show(&sheet, &mut found);
    preload::show(&sheet, &mut found);
    let read = backlash::show(&sheet, &teeth, &mut found);
    side::show(&sheet, &teeth, &read.away, &mut found);
    let side = packs::side(&sheet, &read.away, &mut found);
    let proposal = trials::show(&sheet, &read, &mut found);
    closing::show(&sheet, &mut found);
    buying::buy(&sheet, pack.as_ref().ok(), &mut found);
    FinalDriveFindings {
        sheet,
        found,
        fitted,
        pack,
        side,
        proposal,
    }
}
