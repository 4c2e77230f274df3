//! Temperature: the base unit is the kelvin.

use crate::manner::System;
use crate::unit::{Powers, Unit};

const DIMS: Powers = [0, 0, 0, 1];

/// Kelvin, `K`: SI base unit: SI Brochure 2.3.1.
pub static KELVIN: Unit = Unit::new(
    "K",
    &["k", "kelvin", "kelvins", "°k"],
    1.0,
    DIMS,
    "SI base unit: SI Brochure 2.3.1",
);

/// Celsius, `°C`: the kelvin less 273.15: SI Brochure 2.3.1.
pub static CELSIUS: Unit = Unit::new(
    "°C",
    &[
        "°c",
        "c",
        "celsius",
        "degc",
        "degreec",
        "degreesc",
        "degreescelsius",
        "centigrade",
        "degree",
        "degrees",
        "deg",
        "°",
    ],
    1.0,
    DIMS,
    "the kelvin less 273.15: SI Brochure 2.3.1",
)
.with_offset(273.15)
.in_system(System::Metric);

/// Fahrenheit, `°F`: (°F + 459.67)/1.8 K: NIST SP 811 B.8.
pub static FAHRENHEIT: Unit = Unit::new(
    "°F",
    &[
        "°f",
        "f",
        "fahrenheit",
        "degf",
        "degreef",
        "degreesf",
        "degreesfahrenheit",
        "°",
        "deg",
        "degree",
        "degrees",
    ],
    5.0 / 9.0,
    DIMS,
    "(°F + 459.67)/1.8 K: NIST SP 811 B.8",
)
.with_offset(459.67)
.in_system(System::UnitedStates);

/// Difference of one degree Celsius, `°C`: a kelvin: SI Brochure 2.3.1.
pub static CELSIUS_STEP: Unit = Unit::new(
    "°C",
    &[
        "°c", "c", "degc", "celsius", "degree", "degrees", "deg", "°",
    ],
    1.0,
    DIMS,
    "a kelvin: SI Brochure 2.3.1",
)
.in_system(System::Metric);

/// Difference of one degree Fahrenheit, `°F`: 5/9 of a kelvin: NIST SP 811 B.8.
pub static FAHRENHEIT_STEP: Unit = Unit::new(
    "°F",
    &[
        "°f",
        "f",
        "degf",
        "fahrenheit",
        "degree",
        "degrees",
        "deg",
        "°",
    ],
    5.0 / 9.0,
    DIMS,
    "5/9 K: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);
