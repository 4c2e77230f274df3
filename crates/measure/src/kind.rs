//! The kinds of quantity: what a field holds or a finding tells, which units serve it and which one a book shows.
//!
//! Dimensions alone do not tell torque from energy, or a paint film from a wheelbase; the kind does.

use crate::manner::System;
use crate::unit::{self, Powers, Unit};

/// What sort of quantity a field or a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[non_exhaustive]
pub enum Kind {
    /// A length on the vehicle, in millimetres or inches.
    Length,
    /// Thickness of sheet, plate or leaf; gauge numbers are understood.
    Thickness,
    /// Thickness of a film of paint, or a shim.
    Film,
    /// A distance on the road.
    Distance,
    /// Height above the sea, or a length in a building.
    Altitude,
    /// An area to cover.
    Area,
    /// A cross-section.
    Section,
    /// A volume of paint, oil, fuel or swept by pistons.
    Volume,
    /// A volume in the cup or syringe.
    SmallVolume,
    /// A mass, or a load on a scale.
    Mass,
    /// A mass on the bench scale.
    SmallMass,
    /// A force.
    Force,
    /// A torque.
    Torque,
    /// An energy.
    Energy,
    /// A pressure in a tyre, line or hose.
    Pressure,
    /// A stress in steel.
    Stress,
    /// An angle.
    Angle,
    /// A speed on the road.
    Speed,
    /// The speed of a surface, a piston or air.
    SurfaceSpeed,
    /// Turns of a shaft in a time.
    Rotation,
    /// Swings in a time.
    Frequency,
    /// The rate of a spring.
    SpringRate,
    /// A power.
    Power,
    /// A temperature.
    Temperature,
    /// A difference of two temperatures.
    TemperatureStep,
    /// A short time, in seconds.
    Seconds,
    /// A time at the bench, in minutes.
    Time,
    /// Hours of work.
    Duration,
    /// Days of waiting or hire.
    Days,
    /// A density.
    Density,
    /// Mass of one substance in a volume, such as solvent.
    Concentration,
    /// A ratio: teeth to teeth, turns to turns.
    Ratio,
    /// A share in per cent.
    Percent,
    /// A slope: rise to run.
    Slope,
    /// Area covered by a volume of paint.
    SpreadingRate,
    /// Turns of a shaft or cable in a distance.
    TurnsPerDistance,
    /// An acceleration.
    Acceleration,
    /// Second moment of area of a section.
    SecondMoment,
    /// Section modulus.
    SectionModulus,
    /// A flow of air, oil or paint.
    Flow,
    /// Moment of inertia of something that turns.
    Inertia,
    /// A count: teeth, leaves, coats.
    Count,
}

/// One row of the table of kinds.
struct Row {
    kind: Kind,
    name: &'static str,
    units: &'static [&'static Unit],
    shown: [&'static Unit; 3],
    examples: [&'static str; 3],
}

impl Kind {
    /// Every kind, in the order of the enum.
    #[must_use]
    pub fn all() -> impl ExactSizeIterator<Item = Self> {
        KINDS.iter().map(|row| row.kind)
    }

    fn row(self) -> &'static Row {
        &KINDS[self as usize]
    }

    /// A short English name, for messages to developers and for `data-kind` hooks.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.row().name
    }

    /// Powers of length, mass, time and temperature in SI base units. Angles, ratios and counts are plain numbers.
    #[must_use]
    pub fn dims(self) -> Powers {
        self.row().shown[0].dims
    }

    /// The kind that a dimension without one is shown as.
    #[must_use]
    pub fn usual(dims: Powers) -> Option<Self> {
        if dims == [0; 4] {
            return Some(Self::Ratio);
        }
        Self::all().find(|kind| kind.dims() == dims)
    }

    /// The units that this kind may be typed in.
    #[must_use]
    pub fn units(self) -> &'static [&'static Unit] {
        self.row().units
    }

    /// The unit that a book of this system shows.
    #[must_use]
    pub fn default_unit(self, system: System) -> &'static Unit {
        self.row().shown[system as usize]
    }

    /// A right example of an entry, as such a book's owner would type it with a decimal point.
    #[must_use]
    pub fn example(self, system: System) -> &'static str {
        self.row().examples[system as usize]
    }
}

static LENGTHS: &[&Unit] = &[
    &unit::METRE,
    &unit::MILLIMETRE,
    &unit::CENTIMETRE,
    &unit::KILOMETRE,
    &unit::MICROMETRE,
    &unit::INCH,
    &unit::FOOT,
    &unit::YARD,
    &unit::MILE,
    &unit::THOU,
    &unit::MIL,
];
static AREAS: &[&Unit] = &[
    &unit::SQUARE_METRE,
    &unit::SQUARE_MILLIMETRE,
    &unit::SQUARE_CENTIMETRE,
    &unit::SQUARE_INCH,
    &unit::SQUARE_FOOT,
    &unit::SQUARE_YARD,
];
static VOLUMES: &[&Unit] = &[
    &unit::CUBIC_METRE,
    &unit::LITRE,
    &unit::MILLILITRE,
    &unit::CENTILITRE,
    &unit::CUBIC_CENTIMETRE,
    &unit::CUBIC_INCH,
    &unit::CUBIC_FOOT,
    &unit::IMPERIAL_GALLON,
    &unit::IMPERIAL_QUART,
    &unit::IMPERIAL_PINT,
    &unit::IMPERIAL_GILL,
    &unit::IMPERIAL_FLUID_OUNCE,
    &unit::US_GALLON,
    &unit::US_QUART,
    &unit::US_PINT,
    &unit::US_GILL,
    &unit::US_FLUID_OUNCE,
];
static MASSES: &[&Unit] = &[
    &unit::KILOGRAM,
    &unit::GRAM,
    &unit::TONNE,
    &unit::POUND,
    &unit::OUNCE,
    &unit::STONE,
    &unit::QUARTER,
    &unit::HUNDREDWEIGHT,
    &unit::SHORT_HUNDREDWEIGHT,
    &unit::LONG_TON,
    &unit::SHORT_TON,
];
static FORCES: &[&Unit] = &[
    &unit::NEWTON,
    &unit::KILONEWTON,
    &unit::DECANEWTON,
    &unit::KILOGRAM_FORCE,
    &unit::POUND_FORCE,
    &unit::OUNCE_FORCE,
    &unit::TON_FORCE,
];
static TORQUES: &[&Unit] = &[
    &unit::NEWTON_METRE,
    &unit::KILONEWTON_METRE,
    &unit::DECANEWTON_METRE,
    &unit::NEWTON_CENTIMETRE,
    &unit::POUND_FOOT,
    &unit::POUND_INCH,
    &unit::OUNCE_INCH,
    &unit::KILOGRAM_METRE,
    &unit::KILOGRAM_CENTIMETRE,
];
static ENERGIES: &[&Unit] = &[
    &unit::JOULE,
    &unit::KILOJOULE,
    &unit::KILOWATT_HOUR,
    &unit::FOOT_POUND_FORCE,
    &unit::KILOGRAM_FORCE_METRE,
];
static PRESSURES: &[&Unit] = &[
    &unit::PASCAL,
    &unit::HECTOPASCAL,
    &unit::KILOPASCAL,
    &unit::MEGAPASCAL,
    &unit::NEWTON_PER_SQUARE_MILLIMETRE,
    &unit::GIGAPASCAL,
    &unit::BAR,
    &unit::ATMOSPHERE,
    &unit::KILOGRAM_PER_SQUARE_CENTIMETRE,
    &unit::KILOGRAM_PER_SQUARE_MILLIMETRE,
    &unit::POUND_PER_SQUARE_INCH,
    &unit::KIP_PER_SQUARE_INCH,
    &unit::TON_PER_SQUARE_INCH,
    &unit::INCH_OF_MERCURY,
    &unit::MILLIMETRE_OF_MERCURY,
];
static ANGLES: &[&Unit] = &[
    &unit::RADIAN,
    &unit::MILLIRADIAN,
    &unit::DEGREE,
    &unit::ARC_MINUTE,
    &unit::ARC_SECOND,
    &unit::TURN,
];
static SPEEDS: &[&Unit] = &[
    &unit::METRE_PER_SECOND,
    &unit::KILOMETRE_PER_HOUR,
    &unit::METRE_PER_MINUTE,
    &unit::MILE_PER_HOUR,
    &unit::FOOT_PER_MINUTE,
    &unit::FOOT_PER_SECOND,
];
static ROTATIONS: &[&Unit] = &[
    &unit::TURN_PER_SECOND,
    &unit::HERTZ,
    &unit::REVOLUTION_PER_MINUTE,
    &unit::CYCLE_PER_MINUTE,
    &unit::RADIAN_PER_SECOND,
];
static SPRING_RATES: &[&Unit] = &[
    &unit::NEWTON_PER_METRE,
    &unit::NEWTON_PER_MILLIMETRE,
    &unit::KILOGRAM_PER_MILLIMETRE,
    &unit::KILOGRAM_PER_CENTIMETRE,
    &unit::POUND_PER_INCH,
];
static POWERS: &[&Unit] = &[
    &unit::WATT,
    &unit::KILOWATT,
    &unit::HORSEPOWER,
    &unit::METRIC_HORSEPOWER,
];
static TEMPERATURES: &[&Unit] = &[&unit::KELVIN, &unit::CELSIUS, &unit::FAHRENHEIT];
static TEMPERATURE_STEPS: &[&Unit] = &[&unit::KELVIN, &unit::CELSIUS_STEP, &unit::FAHRENHEIT_STEP];
static TIMES: &[&Unit] = &[
    &unit::SECOND,
    &unit::MINUTE,
    &unit::HOUR,
    &unit::DAY,
    &unit::WEEK,
];
static DENSITIES: &[&Unit] = &[
    &unit::KILOGRAM_PER_CUBIC_METRE,
    &unit::KILOGRAM_PER_LITRE,
    &unit::GRAM_PER_CUBIC_CENTIMETRE,
    &unit::GRAM_PER_LITRE,
    &unit::POUND_PER_CUBIC_FOOT,
    &unit::POUND_PER_IMPERIAL_GALLON,
    &unit::POUND_PER_US_GALLON,
];
static RATIOS: &[&Unit] = &[&unit::ONE, &unit::PERCENT, &unit::PER_MILLE];
static SPREADING_RATES: &[&Unit] = &[
    &unit::SQUARE_METRE_PER_LITRE,
    &unit::SQUARE_FOOT_PER_IMPERIAL_GALLON,
    &unit::SQUARE_FOOT_PER_US_GALLON,
];
static TURNS_PER_DISTANCE: &[&Unit] = &[
    &unit::TURN_PER_METRE,
    &unit::TURN_PER_KILOMETRE,
    &unit::TURN_PER_MILE,
];
static ACCELERATIONS: &[&Unit] = &[
    &unit::METRE_PER_SECOND_SQUARED,
    &unit::GRAVITY,
    &unit::FOOT_PER_SECOND_SQUARED,
];
static SECOND_MOMENTS: &[&Unit] = &[
    &unit::METRE_FOURTH,
    &unit::MILLIMETRE_FOURTH,
    &unit::CENTIMETRE_FOURTH,
    &unit::INCH_FOURTH,
];
static SECTION_MODULI: &[&Unit] = &[
    &unit::MILLIMETRE_CUBED,
    &unit::CENTIMETRE_CUBED,
    &unit::INCH_CUBED,
];
static FLOWS: &[&Unit] = &[
    &unit::CUBIC_METRE_PER_SECOND,
    &unit::CUBIC_METRE_PER_HOUR,
    &unit::LITRE_PER_MINUTE,
    &unit::MILLILITRE_PER_MINUTE,
    &unit::CUBIC_FOOT_PER_MINUTE,
    &unit::IMPERIAL_GALLON_PER_MINUTE,
    &unit::US_GALLON_PER_MINUTE,
];
static INERTIAS: &[&Unit] = &[
    &unit::KILOGRAM_SQUARE_METRE,
    &unit::POUND_SQUARE_FOOT,
    &unit::POUND_SQUARE_INCH,
];
static COUNTS: &[&Unit] = &[&unit::ONE];

static KINDS: &[Row] = &[
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
