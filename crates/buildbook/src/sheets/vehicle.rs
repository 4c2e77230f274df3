//! The vehicle sheet: what the vehicle is, weighs and measures. Gearing, springs and paint read it.

use std::rc::Rc;

use measure::{Kind, Length, Mass, Power, Pressure, Ratio, Rotation, Tool, Torque};

use crate::field::{choice, count, number, text};
use crate::{Found, Given, Read, SheetFindings, sheet};

mod reckon;
mod wheel;

pub use wheel::Wheel;

/// The sorts of vehicle.
pub const SORTS: &[&str] = &["car", "van", "pickup", "lorry", "bus", "tractor", "other"];

sheet! {
    /// What the vehicle is, as its plates, the tape and the weighbridge say.
    pub struct VehicleSheet = "vehicle" {
        /// What it is called.
        name: Given<Rc<str>> = text(),
        /// The year it was built.
        year: Given<Ratio> = count("y").between(1885.0, 2100.0),
        /// What sort of vehicle it is.
        sort: Given<&'static str> = choice(SORTS),
        /// Which wheels drive.
        drive: Given<&'static str> = choice(&["rear", "front", "all"]).assumed("rear"),
        /// On which side it steers now, seen by the driver.
        steering_now: Given<&'static str> = choice(&["right", "left"]),
        /// On which side it shall steer.
        steering_wanted: Given<&'static str> = choice(&["right", "left"]),

        /// From axle to axle.
        wheelbase: Given<Length> = number("l", Kind::Length).between(0.8, 10.0).measured_with(Tool::Tape),
        /// Between the middles of the front tyres.
        track_front: Given<Length> = number("t_f", Kind::Length).between(0.5, 3.0).measured_with(Tool::Tape),
        /// Between the middles of the rear tyres; of twin wheels, between the middles of the pairs.
        track_rear: Given<Length> = number("t_r", Kind::Length).between(0.5, 3.0).measured_with(Tool::Tape),
        /// Over all, bumper to tail.
        length: Given<Length> = number("L", Kind::Length).between(1.0, 20.0).measured_with(Tool::Tape),
        /// Over all, without mirrors.
        width: Given<Length> = number("w", Kind::Length).between(0.5, 4.0).measured_with(Tool::Tape),
        /// Over all, unladen.
        height: Given<Length> = number("h", Kind::Length).between(0.5, 5.0).measured_with(Tool::Tape),
        /// Of the load bed, inside.
        bed_length: Given<Length> = number("L_b", Kind::Length).between(0.2, 15.0).measured_with(Tool::Tape),
        /// Of the load bed, inside.
        bed_width: Given<Length> = number("w_b", Kind::Length).between(0.2, 4.0).measured_with(Tool::Tape),
        /// Height of the centre of gravity above the ground, laden.
        centre_height: Given<Length> = number("h_g", Kind::Length).between(0.1, 3.0).measured_with(Tool::Share(0.1)),
        /// The share of width by height that meets the wind.
        frontal_share: Given<Ratio> = number("f_A", Kind::Ratio).between(0.3, 1.0).measured_with(Tool::Within(0.05)).assumed("0.85"),

        /// On the front axle, unladen, as weighed.
        front_unladen: Given<Mass> = number("m_f", Kind::Mass).between(20.0, 20_000.0).measured_with(Tool::Weighbridge),
        /// On the rear axle, unladen, as weighed.
        rear_unladen: Given<Mass> = number("m_r", Kind::Mass).between(20.0, 20_000.0).measured_with(Tool::Weighbridge),
        /// On the front axle, laden, where it was weighed.
        front_laden: Given<Mass> = number("m_fl", Kind::Mass).between(20.0, 20_000.0).measured_with(Tool::Weighbridge),
        /// On the rear axle, laden, where it was weighed.
        rear_laden: Given<Mass> = number("m_rl", Kind::Mass).between(20.0, 20_000.0).measured_with(Tool::Weighbridge),
        /// The load on the bed, where the laden axles were not weighed.
        payload: Given<Mass> = number("m_p", Kind::Mass).between(0.0, 20_000.0).measured_with(Tool::Share(0.05)),
        /// How far the middle of that load lies ahead of the rear axle; below zero behind it.
        payload_ahead: Given<Length> = number("a", Kind::Length).between(-5.0, 10.0).measured_with(Tool::Share(0.05)),
        /// The front axle's limit, from the plate.
        front_limit: Given<Mass> = number("m_f,max", Kind::Mass).between(50.0, 20_000.0),
        /// The rear axle's limit, from the plate.
        rear_limit: Given<Mass> = number("m_r,max", Kind::Mass).between(50.0, 20_000.0),
        /// The whole vehicle's limit, from the plate.
        gross_limit: Given<Mass> = number("m_max", Kind::Mass).between(100.0, 40_000.0),
        /// What of the front axle's load does not rest on its springs: axle, hubs, wheels.
        unsprung_front: Given<Mass> = number("m_uf", Kind::Mass).between(0.0, 2_000.0).measured_with(Tool::Share(0.1)),
        /// What of the rear axle's load does not rest on its springs.
        unsprung_rear: Given<Mass> = number("m_ur", Kind::Mass).between(0.0, 2_000.0).measured_with(Tool::Share(0.1)),

        /// What stands on the front tyres: `6.50-16`.
        tyre_front: Given<Rc<str>> = text(),
        /// What stands on the rear tyres.
        tyre_rear: Given<Rc<str>> = text(),
        /// How the rear wheels stand.
        rear_wheels: Given<&'static str> = choice(&["single", "twin"]).assumed("single"),
        /// How far the front wheels roll in the turns counted: straight, at working pressure, laden.
        roll_out_front: Given<Length> = number("s_f", Kind::Length).between(0.5, 100.0).measured_with(Tool::Within(0.01)),
        /// Over how many turns the front roll-out was taken.
        roll_out_front_turns: Given<Ratio> = count("n_f").between(1.0, 20.0).assumed("1"),
        /// How far the rear wheels roll in the turns counted.
        roll_out_rear: Given<Length> = number("s_r", Kind::Length).between(0.5, 100.0).measured_with(Tool::Within(0.01)),
        /// Over how many turns the rear roll-out was taken.
        roll_out_rear_turns: Given<Ratio> = count("n_r").between(1.0, 20.0).assumed("1"),
        /// Rolling circumference by overall diameter; blank, the usual share for a radial or diagonal tyre.
        rolling_factor: Given<Ratio> = number("F", Kind::Ratio).between(2.7, 3.2).measured_with(Tool::Within(0.03)),
        /// Pressure of the front tyres, cold.
        pressure_front: Given<Pressure> = number("p_f", Kind::Pressure).between(50_000.0, 1_200_000.0).measured_with(Tool::PressureGauge),
        /// Pressure of the rear tyres, cold.
        pressure_rear: Given<Pressure> = number("p_r", Kind::Pressure).between(50_000.0, 1_200_000.0).measured_with(Tool::PressureGauge),

        /// What the engine burns.
        fuel: Given<&'static str> = choice(&["petrol", "diesel"]).assumed("petrol"),
        /// How the engine gets its air.
        breathing: Given<&'static str> = choice(&["natural", "blown"]).assumed("natural"),
        /// How many cylinders.
        cylinders: Given<Ratio> = count("z").between(1.0, 16.0),
        /// Of each cylinder.
        bore: Given<Length> = number("b", Kind::Length).between(0.03, 0.2).measured_with(Tool::Caliper),
        /// Of each piston.
        stroke: Given<Length> = number("h_k", Kind::Length).between(0.03, 0.25).measured_with(Tool::Rule),
        /// At idle.
        idle: Given<Rotation> = number("n_0", Kind::Rotation).between(3.0, 30.0).measured_with(Tool::Dial).assumed("600 rpm"),
        /// Not to be passed.
        red_line: Given<Rotation> = number("n_max", Kind::Rotation).between(10.0, 200.0),
        /// The engine's greatest torque, by its maker.
        peak_torque: Given<Torque> = number("M_max", Kind::Torque).between(10.0, 3_000.0).measured_with(Tool::DataSheet),
        /// The engine speed of that torque.
        peak_torque_at: Given<Rotation> = number("n_M", Kind::Rotation).between(5.0, 150.0).measured_with(Tool::Dial),
        /// The engine's greatest power, by its maker.
        peak_power: Given<Power> = number("P_max", Kind::Power).between(2_000.0, 600_000.0).measured_with(Tool::DataSheet),
        /// The engine speed of that power.
        peak_power_at: Given<Rotation> = number("n_P", Kind::Rotation).between(8.0, 200.0).measured_with(Tool::Dial),
        /// How the maker measured: gross on a bare bench, net or DIN with all that the engine drives.
        power_basis: Given<&'static str> = choice(&["gross", "net", "din"]).assumed("net"),
        /// Anything else.
        notes: Given<Rc<str>> = text(),
    }
}

/// What the vehicle sheet finds. Other sheets take its entries from here, so that an entry they share counts once in a ±.
#[derive(Debug, Clone)]
pub struct VehicleFindings {
    /// The entries as they were read.
    pub sheet: Rc<VehicleSheet>,
    /// Results, remarks and errors.
    pub found: Found,
    /// On the front axle, unladen, as weighed; then laden, as weighed or from the load.
    pub front: [Result<Mass, crate::Lack>; 2],
    /// On the rear axle, unladen, then laden.
    pub rear: [Result<Mass, crate::Lack>; 2],
    /// What a front wheel rolls on.
    pub front_wheel: Wheel,
    /// What a rear wheel rolls on.
    pub rear_wheel: Wheel,
}

impl SheetFindings for VehicleFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the vehicle sheet come to.
#[must_use]
pub fn findings(read: &Read<VehicleSheet>) -> VehicleFindings {
    let mut found = Found::of(read);
    let sheet = Rc::clone(&read.sheet);
    let loads = reckon::AxleLoads::of(&sheet);
    loads.show(&mut found, &sheet);
    reckon::show_limits(&mut found, &sheet, &loads);
    reckon::show_engine(&mut found, &sheet, &loads);
    reckon::remark(&mut found, &sheet, &loads);
    let front_wheel = Wheel::front(&sheet, &mut found);
    let rear_wheel = Wheel::rear(&sheet, &mut found);
    VehicleFindings {
        front_wheel,
        rear_wheel,
        front: [loads.front_unladen, loads.front_laden],
        rear: [loads.rear_unladen, loads.rear_laden],
        sheet,
        found,
    }
}
