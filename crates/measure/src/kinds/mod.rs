//! The table of kinds: name, units, the unit each system shows, and an everyday example. In the order of the enum.

mod units;

use units::*;

use crate::kind::Kind;
use crate::unit::{self, Unit};

/// One row of the table of kinds.
pub(crate) struct Row {
    pub(crate) kind: Kind,
    pub(crate) name: &'static str,
    pub(crate) units: &'static [&'static Unit],
    /// In metric, imperial and United States books.
    pub(crate) shown: [&'static Unit; 3],
    /// In the same books.
    pub(crate) examples: [&'static str; 3],
}

pub(crate) static KINDS: &[Row] = &[
    Row {
        kind: Kind::Length,
        name: "length",
        units: LENGTHS,
        shown: [&unit::MILLIMETRE, &unit::INCH, &unit::INCH],
        examples: ["412.5 mm", "4 5/16 in", "4 5/16 in"],
    },
    Row {
        kind: Kind::Thickness,
        name: "thickness",
        units: LENGTHS,
        shown: [&unit::MILLIMETRE, &unit::INCH, &unit::INCH],
        examples: ["1.2 mm", "18 SWG", "16 ga"],
    },
    Row {
        kind: Kind::Film,
        name: "film",
        units: LENGTHS,
        shown: [&unit::MICROMETRE, &unit::THOU, &unit::MIL],
        examples: ["50 µm", "2 thou", "2 mil"],
    },
    Row {
        kind: Kind::Distance,
        name: "distance",
        units: LENGTHS,
        shown: [&unit::KILOMETRE, &unit::MILE, &unit::MILE],
        examples: ["120 km", "75 mi", "75 mi"],
    },
    Row {
        kind: Kind::Altitude,
        name: "altitude",
        units: LENGTHS,
        shown: [&unit::METRE, &unit::FOOT, &unit::FOOT],
        examples: ["450 m", "1500 ft", "1500 ft"],
    },
    Row {
        kind: Kind::Area,
        name: "area",
        units: AREAS,
        shown: [&unit::SQUARE_METRE, &unit::SQUARE_FOOT, &unit::SQUARE_FOOT],
        examples: ["2.4 m²", "26 ft²", "26 ft²"],
    },
    Row {
        kind: Kind::Section,
        name: "section",
        units: AREAS,
        shown: [
            &unit::SQUARE_MILLIMETRE,
            &unit::SQUARE_INCH,
            &unit::SQUARE_INCH,
        ],
        examples: ["490 mm²", "0.76 in²", "0.76 in²"],
    },
    Row {
        kind: Kind::Volume,
        name: "volume",
        units: VOLUMES,
        shown: [&unit::LITRE, &unit::IMPERIAL_PINT, &unit::US_QUART],
        examples: ["1.5 L", "2.5 imp pt", "1.5 US qt"],
    },
    Row {
        kind: Kind::SmallVolume,
        name: "small volume",
        units: VOLUMES,
        shown: [
            &unit::MILLILITRE,
            &unit::IMPERIAL_FLUID_OUNCE,
            &unit::US_FLUID_OUNCE,
        ],
        examples: ["250 mL", "9 imp fl oz", "8 US fl oz"],
    },
    Row {
        kind: Kind::Mass,
        name: "mass",
        units: MASSES,
        shown: [&unit::KILOGRAM, &unit::POUND, &unit::POUND],
        examples: ["640 kg", "12 cwt 2 qr", "1400 lb"],
    },
    Row {
        kind: Kind::SmallMass,
        name: "small mass",
        units: MASSES,
        shown: [&unit::GRAM, &unit::OUNCE, &unit::OUNCE],
        examples: ["250 g", "9 oz", "9 oz"],
    },
    Row {
        kind: Kind::Force,
        name: "force",
        units: FORCES,
        shown: [&unit::NEWTON, &unit::POUND_FORCE, &unit::POUND_FORCE],
        examples: ["450 N", "100 lbf", "100 lbf"],
    },
    Row {
        kind: Kind::Torque,
        name: "torque",
        units: TORQUES,
        shown: [&unit::NEWTON_METRE, &unit::POUND_FOOT, &unit::POUND_FOOT],
        examples: ["35 N·m", "26 lb ft", "26 lb ft"],
    },
    Row {
        kind: Kind::Energy,
        name: "energy",
        units: ENERGIES,
        shown: [
            &unit::JOULE,
            &unit::FOOT_POUND_FORCE,
            &unit::FOOT_POUND_FORCE,
        ],
        examples: ["120 J", "90 ft lbf", "90 ft lbf"],
    },
    Row {
        kind: Kind::Pressure,
        name: "pressure",
        units: PRESSURES,
        shown: [
            &unit::BAR,
            &unit::POUND_PER_SQUARE_INCH,
            &unit::POUND_PER_SQUARE_INCH,
        ],
        examples: ["2.4 bar", "35 psi", "35 psi"],
    },
    Row {
        kind: Kind::Stress,
        name: "stress",
        units: PRESSURES,
        shown: [
            &unit::NEWTON_PER_SQUARE_MILLIMETRE,
            &unit::TON_PER_SQUARE_INCH,
            &unit::KIP_PER_SQUARE_INCH,
        ],
        examples: ["500 N/mm²", "32 tsi", "70 ksi"],
    },
    Row {
        kind: Kind::Angle,
        name: "angle",
        units: ANGLES,
        shown: [&unit::DEGREE, &unit::DEGREE, &unit::DEGREE],
        examples: ["12.5°", "12°30'", "12°30'"],
    },
    Row {
        kind: Kind::Speed,
        name: "speed",
        units: SPEEDS,
        shown: [
            &unit::KILOMETRE_PER_HOUR,
            &unit::MILE_PER_HOUR,
            &unit::MILE_PER_HOUR,
        ],
        examples: ["80 km/h", "50 mph", "50 mph"],
    },
    Row {
        kind: Kind::SurfaceSpeed,
        name: "surface speed",
        units: SPEEDS,
        shown: [
            &unit::METRE_PER_SECOND,
            &unit::FOOT_PER_MINUTE,
            &unit::FOOT_PER_MINUTE,
        ],
        examples: ["12.7 m/s", "2500 ft/min", "2500 ft/min"],
    },
    Row {
        kind: Kind::Rotation,
        name: "rotation",
        units: ROTATIONS,
        shown: [
            &unit::REVOLUTION_PER_MINUTE,
            &unit::REVOLUTION_PER_MINUTE,
            &unit::REVOLUTION_PER_MINUTE,
        ],
        examples: ["2400 rpm", "2400 rpm", "2400 rpm"],
    },
    Row {
        kind: Kind::Frequency,
        name: "frequency",
        units: ROTATIONS,
        shown: [&unit::HERTZ, &unit::HERTZ, &unit::HERTZ],
        examples: ["1.6 Hz", "1.6 Hz", "1.6 Hz"],
    },
    Row {
        kind: Kind::SpringRate,
        name: "spring rate",
        units: SPRING_RATES,
        shown: [
            &unit::NEWTON_PER_MILLIMETRE,
            &unit::POUND_PER_INCH,
            &unit::POUND_PER_INCH,
        ],
        examples: ["35 N/mm", "200 lb/in", "200 lb/in"],
    },
    Row {
        kind: Kind::Power,
        name: "power",
        units: POWERS,
        shown: [&unit::KILOWATT, &unit::HORSEPOWER, &unit::HORSEPOWER],
        examples: ["55 kW", "74 hp", "74 hp"],
    },
    Row {
        kind: Kind::PowerToMass,
        name: "power to mass",
        units: POWERS_TO_MASS,
        shown: [
            &unit::KILOWATT_PER_TONNE,
            &unit::HORSEPOWER_PER_LONG_TON,
            &unit::HORSEPOWER_PER_SHORT_TON,
        ],
        examples: ["9 kW/t", "12 hp/ton", "11 hp/ton"],
    },
    Row {
        kind: Kind::Temperature,
        name: "temperature",
        units: TEMPERATURES,
        shown: [&unit::CELSIUS, &unit::CELSIUS, &unit::FAHRENHEIT],
        examples: ["20 °C", "20 °C", "68 °F"],
    },
    Row {
        kind: Kind::TemperatureStep,
        name: "temperature step",
        units: TEMPERATURE_STEPS,
        shown: [
            &unit::CELSIUS_STEP,
            &unit::CELSIUS_STEP,
            &unit::FAHRENHEIT_STEP,
        ],
        examples: ["5 °C", "5 °C", "9 °F"],
    },
    Row {
        kind: Kind::Seconds,
        name: "seconds",
        units: TIMES,
        shown: [&unit::SECOND, &unit::SECOND, &unit::SECOND],
        examples: ["18 s", "18 s", "18 s"],
    },
    Row {
        kind: Kind::Time,
        name: "time",
        units: TIMES,
        shown: [&unit::MINUTE, &unit::MINUTE, &unit::MINUTE],
        examples: ["45 min", "45 min", "45 min"],
    },
    Row {
        kind: Kind::Duration,
        name: "duration",
        units: TIMES,
        shown: [&unit::HOUR, &unit::HOUR, &unit::HOUR],
        examples: ["1 h 30 min", "1 h 30 min", "1 h 30 min"],
    },
    Row {
        kind: Kind::Days,
        name: "days",
        units: TIMES,
        shown: [&unit::DAY, &unit::DAY, &unit::DAY],
        examples: ["14 d", "14 d", "14 d"],
    },
    Row {
        kind: Kind::Density,
        name: "density",
        units: DENSITIES,
        shown: [
            &unit::KILOGRAM_PER_LITRE,
            &unit::POUND_PER_IMPERIAL_GALLON,
            &unit::POUND_PER_US_GALLON,
        ],
        examples: ["1.2 kg/L", "12 lb/imp gal", "10 lb/US gal"],
    },
    Row {
        kind: Kind::AirDensity,
        name: "density of air",
        units: DENSITIES,
        shown: [
            &unit::KILOGRAM_PER_CUBIC_METRE,
            &unit::POUND_PER_CUBIC_FOOT,
            &unit::POUND_PER_CUBIC_FOOT,
        ],
        examples: ["1.2 kg/m³", "0.075 lb/ft³", "0.075 lb/ft³"],
    },
    Row {
        kind: Kind::Concentration,
        name: "concentration",
        units: DENSITIES,
        shown: [
            &unit::GRAM_PER_LITRE,
            &unit::GRAM_PER_LITRE,
            &unit::POUND_PER_US_GALLON,
        ],
        examples: ["420 g/L", "420 g/L", "3.5 lb/US gal"],
    },
    Row {
        kind: Kind::Ratio,
        name: "ratio",
        units: RATIOS,
        shown: [&unit::ONE, &unit::ONE, &unit::ONE],
        examples: ["4.11", "4.11", "4.11"],
    },
    Row {
        kind: Kind::Percent,
        name: "percent",
        units: RATIOS,
        shown: [&unit::PERCENT, &unit::PERCENT, &unit::PERCENT],
        examples: ["45 %", "45 %", "45 %"],
    },
    Row {
        kind: Kind::Slope,
        name: "slope",
        units: RATIOS,
        shown: [&unit::PERCENT, &unit::PERCENT, &unit::PERCENT],
        examples: ["1 in 40", "1 in 40", "1 in 40"],
    },
    Row {
        kind: Kind::SpreadingRate,
        name: "spreading rate",
        units: SPREADING_RATES,
        shown: [
            &unit::SQUARE_METRE_PER_LITRE,
            &unit::SQUARE_FOOT_PER_IMPERIAL_GALLON,
            &unit::SQUARE_FOOT_PER_US_GALLON,
        ],
        examples: ["9 m²/L", "440 ft²/imp gal", "370 ft²/US gal"],
    },
    Row {
        kind: Kind::TurnsPerDistance,
        name: "turns per distance",
        units: TURNS_PER_DISTANCE,
        shown: [
            &unit::TURN_PER_KILOMETRE,
            &unit::TURN_PER_MILE,
            &unit::TURN_PER_MILE,
        ],
        examples: ["640 turns/km", "1000 turns/mi", "1000 turns/mi"],
    },
    Row {
        kind: Kind::Acceleration,
        name: "acceleration",
        units: ACCELERATIONS,
        shown: [
            &unit::METRE_PER_SECOND_SQUARED,
            &unit::FOOT_PER_SECOND_SQUARED,
            &unit::FOOT_PER_SECOND_SQUARED,
        ],
        examples: ["1.2 m/s²", "4 ft/s²", "4 ft/s²"],
    },
    Row {
        kind: Kind::SecondMoment,
        name: "second moment",
        units: SECOND_MOMENTS,
        shown: [
            &unit::MILLIMETRE_FOURTH,
            &unit::INCH_FOURTH,
            &unit::INCH_FOURTH,
        ],
        examples: ["2700 mm⁴", "0.0065 in⁴", "0.0065 in⁴"],
    },
    Row {
        kind: Kind::SectionModulus,
        name: "section modulus",
        units: SECTION_MODULI,
        shown: [
            &unit::MILLIMETRE_CUBED,
            &unit::INCH_CUBED,
            &unit::INCH_CUBED,
        ],
        examples: ["670 mm³", "0.041 in³", "0.041 in³"],
    },
    Row {
        kind: Kind::Flow,
        name: "flow",
        units: FLOWS,
        shown: [
            &unit::LITRE_PER_MINUTE,
            &unit::CUBIC_FOOT_PER_MINUTE,
            &unit::CUBIC_FOOT_PER_MINUTE,
        ],
        examples: ["280 L/min", "10 cfm", "10 cfm"],
    },
    Row {
        kind: Kind::Inertia,
        name: "inertia",
        units: INERTIAS,
        shown: [
            &unit::KILOGRAM_SQUARE_METRE,
            &unit::POUND_SQUARE_FOOT,
            &unit::POUND_SQUARE_FOOT,
        ],
        examples: ["0.25 kg·m²", "6 lb ft²", "6 lb ft²"],
    },
    Row {
        kind: Kind::Count,
        name: "count",
        units: COUNTS,
        shown: [&unit::ONE, &unit::ONE, &unit::ONE],
        examples: ["9", "9", "9"],
    },
];
