//! Where the formulas and figures of gearing come from.

use measure::{Held, Source};

macro_rules! sources {
    ($($(#[$doc:meta])* $name:ident = $title:literal, $place:literal, $held:ident;)*) => {
        $($(#[$doc])* pub static $name: Source = Source { title: $title, place: $place, held: Held::$held };)*
    };
}

sources! {
    /// Diameter from a metric designation.
    R30_DIAMETER = "UN Regulation No. 30 (and No. 54)", "paragraph 6.1.2, D = d + 2H; limits of H in 6.1.4", Memory;
    /// Diameters of sizes without an aspect ratio.
    R30_TABLE = "UN Regulation No. 30 (and No. 54)", "annex 5, listed sizes", Memory;
    /// Diameters of inch sizes that no table at hand holds.
    INCH_RULE = "Rule of the trade", "section height about the section width", CommonPractice;
    /// Rolling circumference from the diameter.
    ROLLING = "ETRTO Engineering Design Information", "C = 3.05 D radial, 2.99 D diagonal, at 60 km/h", Memory;
    /// Distance by turns.
    ROLL_OUT = "Definition", "distance rolled by turns of the wheel", Computed;
    /// Speeds along a train of gears.
    KINEMATICS = "Kinematics of a gear train", "turns by ratio", Computed;
    /// Mean piston speed.
    PISTON = "Kinematics of the crank", "two strokes a turn", Computed;
    /// Power from torque.
    POWER = "Mechanics", "P = 2 pi n T", Computed;
    /// Monotone cubic interpolation.
    MONOTONE = "F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984)", "pages 300-304", Memory;
    /// A torque curve from its two peaks.
    PEAKS = "Cubic between the peaks", "slope nil at peak torque, -T/n at peak power", Computed;
    /// Standard atmosphere.
    ATMOSPHERE = "ISO 2533, standard atmosphere", "troposphere: 288.15 K, 101 325 Pa, 6.5 K/km", Seen;
    /// Power of a carburettor engine in thin or hot air.
    SPARK_AIR = "SAE J1349 (June 1990)", "correction factor, inverted", Seen;
    /// Power of an unblown diesel in thin or hot air.
    DIESEL_AIR = "ISO 1585", "atmospheric factor of unblown diesels, to the power 0.7", Memory;
    /// Rolling resistance, air drag and slope.
    ROAD_LOAD = "T. D. Gillespie, Fundamentals of Vehicle Dynamics", "chapter 4, road loads", Memory;
    /// Tractive effort.
    EFFORT = "T. D. Gillespie, Fundamentals of Vehicle Dynamics", "chapter 2, tractive effort", Memory;
    /// Grip with load transfer.
    GRIP = "Statics of a vehicle on a slope", "moments about the tyre contacts", Computed;
    /// Rotating masses of cars.
    MASS_FACTOR = "J. Y. Wong, Theory of Ground Vehicles, 2nd ed.", "page 211: 1.04 + 0.0025 i^2, cars", Memory;
    /// Rotating masses from a known inertia.
    INERTIA = "Mechanics", "I i^2 / r^2 beside the mass, wheels 4 %", CommonPractice;
    /// Speedometer readings allowed at approval.
    R39 = "UN Regulation No. 39", "paragraph 5.3", Seen;
    /// Turns of a speedometer cable.
    CABLE = "Kinematics of the speedometer drive", "the cable turns with the propeller shaft", Computed;
    /// Whirling of a propeller shaft.
    WHIRL = "Euler-Bernoulli beam on pinned ends", "first bending frequency of a steel tube", Computed;
    /// Usual efficiencies, grip and resistances.
    USUAL = "Usual practice", "no source", CommonPractice;
}
