//! The gearing sheet: gearbox, axle, pull, speedometer, propeller shaft, candidate axle sets and wishes.

use std::rc::Rc;

use measure::{
    Acceleration, Inertia, Kind, Length, Money, PerLength, Ratio, Rotation, Speed, Temperature,
    Time, Tool, Torque,
};

use super::vehicle::VehicleFindings;
use crate::field::{choice, count, money, number, text, yes_no};
use crate::{Found, Given, Read, SheetFindings, sheet};

mod axle_ratio;
mod candidates;
mod dial;
mod engine;
mod gears;
mod pull;
mod remarks;
mod shaft;
mod sketch;
#[cfg(test)]
mod tests;
mod wishes;

pub use axle_ratio::AxleRatio;
pub use candidates::CandidateFound;
pub use gears::GearFound;
pub use sketch::{EffortLine, Sketch};
pub use wishes::PairFound;

use gears::teeth;

/// Where the vehicle stands or drives: it decides what rolls off as resistance and what the tyres hold.
pub const GROUNDS: &[&str] = &["dry", "wet", "track", "field"];

sheet! {
    /// What stands between the engine and the road, and what is wished of it.
    pub struct GearingSheet = "gearing" {
        /// The gears of the gearbox, the lowest first.
        gears: Vec<GearRow>,
        /// The ratio of an overdrive, when it is in.
        overdrive: Given<Ratio> = number("i_o", Kind::Ratio).between(0.4, 1.5).measured_with(Tool::Within(0.005)),
        /// The gears that it works in.
        overdrive_with: Given<&'static str> = choice(&["top", "top_two", "all"]).assumed("top"),
        /// The ratio of a transfer box on the road.
        transfer_high: Given<Ratio> = number("i_t", Kind::Ratio).between(0.5, 5.0).measured_with(Tool::Within(0.005)),
        /// Its low ratio.
        transfer_low: Given<Ratio> = number("i_t", Kind::Ratio).between(0.5, 8.0).measured_with(Tool::Within(0.005)),
        /// Which of the two is in.
        transfer_in: Given<&'static str> = choice(&["high", "low"]).assumed("high"),
        /// Crown wheel by pinion: teeth, or the ratio.
        axle: Given<AxleRatio> = number("i_f", Kind::Ratio).between(1.0, 20.0).measured_with(Tool::Within(0.005)).chosen(),
        /// What sort of gears they are.
        axle_kind: Given<&'static str> = choice(&["bevel", "worm"]).assumed("bevel"),
        /// What the second speed of a two-speed axle multiplies it by.
        axle_second: Given<Ratio> = number("i_2", Kind::Ratio).between(0.5, 3.0).measured_with(Tool::Within(0.005)),
        /// Whether that is in.
        axle_second_in: Given<bool> = yes_no().assumed("no"),
        /// The ratio of reduction gears in the hubs.
        hubs: Given<Ratio> = number("i_h", Kind::Ratio).between(0.9, 8.0).measured_with(Tool::Within(0.005)),

        /// The share of power that reaches the wheels in direct drive.
        efficiency_direct: Given<Ratio> = number("η", Kind::Ratio).between(0.3, 1.0).measured_with(Tool::Within(0.03)).assumed("0.90 ± 0.03"),
        /// The same through gears.
        efficiency_gears: Given<Ratio> = number("η", Kind::Ratio).between(0.3, 1.0).measured_with(Tool::Within(0.04)).assumed("0.85 ± 0.04"),
        /// The same with a worm axle.
        efficiency_worm: Given<Ratio> = number("η", Kind::Ratio).between(0.3, 1.0).measured_with(Tool::Within(0.06)).assumed("0.85 ± 0.06"),

        /// The engine speed at which speeds are told.
        engine_speed: Given<Rotation> = number("n", Kind::Rotation).between(3.0, 250.0).chosen(),
        /// The road speed at which engine speeds are told: the usual cruise.
        road_speed: Given<Speed> = number("v", Kind::Speed).between(1.0, 90.0).assumed("80 km/h").chosen(),

        /// Points of the torque curve, where there is one; else the vehicle's peaks serve.
        torque: Vec<TorqueRow>,
        /// What the vehicle carries.
        load: Given<&'static str> = choice(&["laden", "unladen"]).assumed("laden"),
        /// What it stands on.
        ground: Given<&'static str> = choice(GROUNDS).assumed("dry"),
        /// Rolling resistance by weight; blank, the usual one for tyre and ground.
        rolling: Given<Ratio> = number("f", Kind::Ratio).between(0.003, 0.5).measured_with(Tool::Share(0.2)),
        /// Grip of the driven tyres; blank, the usual one for the ground.
        grip: Given<Ratio> = number("μ", Kind::Ratio).between(0.05, 1.2).measured_with(Tool::Within(0.1)),
        /// Drag coefficient.
        drag: Given<Ratio> = number("C_d", Kind::Ratio).between(0.15, 1.5).measured_with(Tool::Within(0.1)).assumed("0.8"),
        /// Height above the sea.
        altitude: Given<Length> = number("z", Kind::Altitude).between(-450.0, 5500.0).measured_with(Tool::Within(20.0)).assumed("100 m"),
        /// Temperature of the air.
        temperature: Given<Temperature> = number("t", Kind::Temperature).between(233.15, 328.15).measured_with(Tool::Thermometer).assumed("15 °C"),
        /// The mean piston speed that is kept to.
        piston_limit: Given<Speed> = number("c_p", Kind::SurfaceSpeed).between(4.0, 30.0).assumed("12.7 m/s"),
        /// What the clutch holds.
        clutch: Given<Torque> = number("T_c", Kind::Torque).between(10.0, 6000.0).measured_with(Tool::DataSheet),
        /// How briskly a start on a hill is to be made.
        start: Given<Acceleration> = number("a_s", Kind::Acceleration).between(0.02, 3.0).assumed("0.3 m/s²"),
        /// The speed to which the time from rest is told.
        target: Given<Speed> = number("v_t", Kind::Speed).between(1.0, 70.0).assumed("50 km/h"),
        /// Inertia of engine, flywheel and clutch; blank, the rule for cars.
        inertia: Given<Inertia> = number("I_e", Kind::Inertia).between(0.01, 50.0).measured_with(Tool::Share(0.2)),
        /// The time of one change of gear.
        change_time: Given<Time> = number("t_c", Kind::Seconds).between(0.1, 20.0).measured_with(Tool::Within(0.5)).assumed("1.5 s"),

        /// The axle that the speedometer was right with.
        dial_axle: Given<AxleRatio> = number("i_d", Kind::Ratio).between(1.0, 20.0).measured_with(Tool::Within(0.005)),
        /// The tyre that it was right with; blank, the one on the vehicle.
        dial_tyre: Given<Rc<str>> = text(),
        /// What it showed then...
        dial_showed: Given<Speed> = number("v_d", Kind::Speed).between(2.0, 90.0).measured_with(Tool::Within(0.3)),
        /// ... at this true speed.
        dial_true: Given<Speed> = number("v_0", Kind::Speed).between(2.0, 90.0).measured_with(Tool::Within(0.3)),
        /// The dial's constant: turns of its cable in a distance.
        dial_constant: Given<PerLength> = number("K", Kind::TurnsPerDistance).between(0.1, 5.0),
        /// Cable turns for one turn of the propeller shaft, as starts by teeth: 3/11.
        cable_drive: Given<Ratio> = number("i_c", Kind::Ratio).between(0.02, 3.0),
        /// Cable turns counted over a distance, in place of the drive's teeth.
        cable_counted: Given<PerLength> = number("N_c", Kind::TurnsPerDistance).between(0.1, 5.0).measured_with(Tool::Share(0.01)),

        /// Outside diameter of the propeller shaft's tube.
        shaft_outside: Given<Length> = number("D_s", Kind::Length).between(0.015, 0.3).measured_with(Tool::Caliper),
        /// Thickness of its wall.
        shaft_wall: Given<Length> = number("s_s", Kind::Thickness).between(0.0005, 0.15).measured_with(Tool::Caliper),
        /// Between the centres of its joints, or of a joint and a middle bearing.
        shaft_length: Given<Length> = number("L_s", Kind::Length).between(0.15, 4.0).measured_with(Tool::Tape),

        /// Other crown wheels and pinions that could be had.
        candidates: Vec<CandidateRow>,

        /// An engine speed that is wished for...
        wanted_revs: Given<Rotation> = number("n_w", Kind::Rotation).between(5.0, 250.0),
        /// ... at this road speed.
        wanted_speed: Given<Speed> = number("v_w", Kind::Speed).between(2.0, 90.0),
        /// A hill to be climbed.
        wanted_hill: Given<Ratio> = number("s_w", Kind::Slope).between(0.01, 1.0),
        /// In which gear, counted from the lowest; blank, the lowest.
        wanted_hill_gear: Given<Ratio> = count("g").between(1.0, 16.0),
    }

    /// One gear of the gearbox.
    pub struct GearRow {
        /// Its ratio.
        ratio: Given<Ratio> = number("i_g", Kind::Ratio).between(0.3, 20.0).measured_with(Tool::Within(0.005)),
    }

    /// One point of the torque curve.
    pub struct TorqueRow {
        /// Engine speed.
        at: Given<Rotation> = number("n_i", Kind::Rotation).between(3.0, 250.0),
        /// Torque at full load.
        torque: Given<Torque> = number("T_i", Kind::Torque).between(1.0, 6000.0).measured_with(Tool::DataSheet),
    }

    /// A crown wheel and pinion that could be had.
    pub struct CandidateRow {
        /// Where it comes from.
        name: Given<Rc<str>> = text(),
        /// Teeth, or the ratio.
        teeth: Given<AxleRatio> = number("i_f", Kind::Ratio).between(1.0, 20.0).measured_with(Tool::Within(0.005)),
        /// What it costs.
        price: Given<Money> = money(),
        /// Whether the pinion's splines are the same.
        splines: Given<bool> = yes_no(),
        /// Whether stem and bearings are the same.
        bearings: Given<bool> = yes_no(),
        /// Whether the hypoid offset is the same.
        offset: Given<bool> = yes_no(),
        /// Whether it goes on the carrier there is: series of ratios differ in height of the flange.
        carrier: Given<bool> = yes_no(),
        /// Whether the crown-wheel bolts are the same.
        bolts: Given<bool> = yes_no(),
        /// Whether it bears the torque.
        strength: Given<bool> = yes_no(),
        /// Whether it is to be bought.
        chosen: Given<bool> = yes_no().assumed("no"),
    }
}

/// What the gearing sheet finds.
#[derive(Debug, Clone)]
pub struct GearingFindings {
    /// The entries as they were read.
    pub sheet: Rc<GearingSheet>,
    /// Results, remarks and errors.
    pub found: Found,
    /// The gears as they can be driven, those with the overdrive in among them, the lowest first.
    pub gears: Vec<GearFound>,
    /// The candidates, in the order of their rows.
    pub candidates: Vec<CandidateFound>,
    /// Real pairs of teeth near the axle that gives the wished engine speed.
    pub pairs_for_speed: Vec<PairFound>,
    /// Real pairs of teeth near the axle that climbs the wished hill.
    pub pairs_for_hill: Vec<PairFound>,
    /// Lines for the drawings, in SI units.
    pub sketch: Sketch,
}

impl SheetFindings for GearingFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the gearing sheet come to.
#[must_use]
pub fn findings(read: &Read<GearingSheet>, vehicle: &Rc<VehicleFindings>) -> GearingFindings {
    let mut found = Found::of(read);
    let sheet = Rc::clone(&read.sheet);
    let line = gears::Line::of(&sheet, vehicle);
    let gears = line.show_speeds(&mut found);
    let pull = pull::Pulling::of(&mut found, &line, vehicle);
    pull.show(&mut found, &gears);
    let dial = dial::Dial::of(&mut found, &line, vehicle);
    dial::show(&mut found, &line, &dial);
    shaft::show(&mut found, &line, &pull);
    let candidates = candidates::show(&mut found, &line, &pull, &dial);
    let pairs_for_speed = wishes::for_speed(&mut found, &line);
    let pairs_for_hill = wishes::for_hill(&mut found, &line, &pull);
    remarks::remark(&mut found, &line, &pull, vehicle);
    let sketch = Sketch::of(&line, &pull);
    GearingFindings {
        gears,
        candidates,
        pairs_for_speed,
        pairs_for_hill,
        sketch,
        found,
        sheet,
    }
}

/// An entry that stands in with a usual value, under the key where a better one can be typed.
fn usual(key: &crate::Key, symbol: &'static str, (value, off): trade::gearing::Usual) -> Ratio {
    let reading = measure::Reading {
        plus: off,
        minus: off,
        stated: measure::Stated::Assumed,
        ..measure::Reading::exact(value, &measure::unit::ONE)
    };
    Ratio::entry(key.shared(), symbol, Kind::Ratio, &reading)
}
