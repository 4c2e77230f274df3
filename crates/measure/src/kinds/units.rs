//! The units that each quantity may be typed in.

use crate::unit::{self, Unit};

pub(super) static LENGTHS: &[&Unit] = &[
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
    &unit::HUNDREDTH,
];
pub(super) static AREAS: &[&Unit] = &[
    &unit::SQUARE_METRE,
    &unit::SQUARE_MILLIMETRE,
    &unit::SQUARE_CENTIMETRE,
    &unit::SQUARE_INCH,
    &unit::SQUARE_FOOT,
    &unit::SQUARE_YARD,
];
pub(super) static VOLUMES: &[&Unit] = &[
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
pub(super) static MASSES: &[&Unit] = &[
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
pub(super) static FORCES: &[&Unit] = &[
    &unit::NEWTON,
    &unit::KILONEWTON,
    &unit::DECANEWTON,
    &unit::KILOGRAM_FORCE,
    &unit::POUND_FORCE,
    &unit::OUNCE_FORCE,
    &unit::HUNDREDWEIGHT_FORCE,
    &unit::TON_FORCE,
];
pub(super) static TORQUES: &[&Unit] = &[
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
pub(super) static ENERGIES: &[&Unit] = &[
    &unit::JOULE,
    &unit::KILOJOULE,
    &unit::KILOWATT_HOUR,
    &unit::FOOT_POUND_FORCE,
    &unit::KILOGRAM_FORCE_METRE,
];
pub(super) static PRESSURES: &[&Unit] = &[
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
pub(super) static ANGLES: &[&Unit] = &[
    &unit::RADIAN,
    &unit::MILLIRADIAN,
    &unit::DEGREE,
    &unit::ARC_MINUTE,
    &unit::ARC_SECOND,
    &unit::TURN,
];
pub(super) static SPEEDS: &[&Unit] = &[
    &unit::METRE_PER_SECOND,
    &unit::KILOMETRE_PER_HOUR,
    &unit::METRE_PER_MINUTE,
    &unit::MILE_PER_HOUR,
    &unit::FOOT_PER_MINUTE,
    &unit::FOOT_PER_SECOND,
];
pub(super) static ROTATIONS: &[&Unit] = &[
    &unit::TURN_PER_SECOND,
    &unit::HERTZ,
    &unit::REVOLUTION_PER_MINUTE,
    &unit::CYCLE_PER_MINUTE,
    &unit::RADIAN_PER_SECOND,
];
pub(super) static SPRING_RATES: &[&Unit] = &[
    &unit::NEWTON_PER_METRE,
    &unit::NEWTON_PER_MILLIMETRE,
    &unit::KILOGRAM_PER_MILLIMETRE,
    &unit::KILOGRAM_PER_CENTIMETRE,
    &unit::POUND_PER_INCH,
];
pub(super) static POWERS_TO_MASS: &[&Unit] = &[
    &unit::KILOWATT_PER_TONNE,
    &unit::METRIC_HORSEPOWER_PER_TONNE,
    &unit::HORSEPOWER_PER_LONG_TON,
    &unit::HORSEPOWER_PER_SHORT_TON,
];
pub(super) static POWERS: &[&Unit] = &[
    &unit::WATT,
    &unit::KILOWATT,
    &unit::HORSEPOWER,
    &unit::METRIC_HORSEPOWER,
];
pub(super) static TEMPERATURES: &[&Unit] = &[&unit::KELVIN, &unit::CELSIUS, &unit::FAHRENHEIT];
pub(super) static TEMPERATURE_STEPS: &[&Unit] =
    &[&unit::KELVIN, &unit::CELSIUS_STEP, &unit::FAHRENHEIT_STEP];
pub(super) static TIMES: &[&Unit] = &[
    &unit::SECOND,
    &unit::MINUTE,
    &unit::HOUR,
    &unit::DAY,
    &unit::WEEK,
];
pub(super) static DENSITIES: &[&Unit] = &[
    &unit::KILOGRAM_PER_CUBIC_METRE,
    &unit::KILOGRAM_PER_LITRE,
    &unit::GRAM_PER_CUBIC_CENTIMETRE,
    &unit::GRAM_PER_LITRE,
    &unit::POUND_PER_CUBIC_FOOT,
    &unit::POUND_PER_IMPERIAL_GALLON,
    &unit::POUND_PER_US_GALLON,
];
pub(super) static RATIOS: &[&Unit] = &[&unit::ONE, &unit::PERCENT, &unit::PER_MILLE];
pub(super) static SPREADING_RATES: &[&Unit] = &[
    &unit::SQUARE_METRE_PER_LITRE,
    &unit::SQUARE_FOOT_PER_IMPERIAL_GALLON,
    &unit::SQUARE_FOOT_PER_US_GALLON,
];
pub(super) static TURNS_PER_DISTANCE: &[&Unit] = &[
    &unit::TURN_PER_METRE,
    &unit::TURN_PER_KILOMETRE,
    &unit::TURN_PER_MILE,
];
pub(super) static ACCELERATIONS: &[&Unit] = &[
    &unit::METRE_PER_SECOND_SQUARED,
    &unit::GRAVITY,
    &unit::FOOT_PER_SECOND_SQUARED,
];
pub(super) static SECOND_MOMENTS: &[&Unit] = &[
    &unit::METRE_FOURTH,
    &unit::MILLIMETRE_FOURTH,
    &unit::CENTIMETRE_FOURTH,
    &unit::INCH_FOURTH,
];
pub(super) static SECTION_MODULI: &[&Unit] = &[
    &unit::MILLIMETRE_CUBED,
    &unit::CENTIMETRE_CUBED,
    &unit::INCH_CUBED,
];
pub(super) static FLOWS: &[&Unit] = &[
    &unit::CUBIC_METRE_PER_SECOND,
    &unit::CUBIC_METRE_PER_HOUR,
    &unit::LITRE_PER_MINUTE,
    &unit::MILLILITRE_PER_MINUTE,
    &unit::CUBIC_FOOT_PER_MINUTE,
    &unit::IMPERIAL_GALLON_PER_MINUTE,
    &unit::US_GALLON_PER_MINUTE,
];
pub(super) static INERTIAS: &[&Unit] = &[
    &unit::KILOGRAM_SQUARE_METRE,
    &unit::POUND_SQUARE_FOOT,
    &unit::POUND_SQUARE_INCH,
];
pub(super) static COUNTS: &[&Unit] = &[&unit::ONE];
