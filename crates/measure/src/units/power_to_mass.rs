//! Power for each unit of mass: the base unit is the watt per kilogram.

use crate::System;
use crate::unit::{Powers, Unit};
use crate::units::mass::{LONG_TON, SHORT_TON};
use crate::units::power::{HORSEPOWER, METRIC_HORSEPOWER};

const DIMS: Powers = [2, 0, -3, 0];

/// Kilowatt per tonne, `kW/t`: 1 W/kg.
pub static KILOWATT_PER_TONNE: Unit = Unit::new(
    "kW/t",
    &["kw/t", "kw/tonne", "w/kg"],
    1.0,
    DIMS,
    "1000 W to 1000 kg",
);

/// Metric horsepower per tonne, `PS/t`.
pub static METRIC_HORSEPOWER_PER_TONNE: Unit = Unit::new(
    "PS/t",
    &["ps/t", "ps/tonne"],
    METRIC_HORSEPOWER.factor / 1000.0,
    DIMS,
    "1 PS to 1000 kg",
);

/// Horsepower per long ton, `hp/long ton`.
pub static HORSEPOWER_PER_LONG_TON: Unit = Unit::new(
    "hp/long ton",
    &["hp/longton", "hp/ton", "bhp/ton"],
    HORSEPOWER.factor / LONG_TON.factor,
    DIMS,
    "1 hp to 2240 lb: NIST SP 811 B.8",
)
.in_system(System::Imperial);

/// Horsepower per short ton, `hp/short ton`.
pub static HORSEPOWER_PER_SHORT_TON: Unit = Unit::new(
    "hp/short ton",
    &["hp/shortton", "hp/ton", "bhp/ton"],
    HORSEPOWER.factor / SHORT_TON.factor,
    DIMS,
    "1 hp to 2000 lb: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);
