//! Volume flow: the base unit is the cubic metre per second.

use crate::manner::System;
use crate::unit::{Powers, Unit};
use crate::units::volume::{CUBIC_FOOT, IMPERIAL_GALLON, LITRE, US_GALLON};

const DIMS: Powers = [3, 0, -1, 0];

/// Cubic metre per second, `m³/s`: SI coherent unit.
pub static CUBIC_METRE_PER_SECOND: Unit =
    Unit::new("m³/s", &["m3/s"], 1.0, DIMS, "SI coherent unit");

/// Cubic metre per hour, `m³/h`: 1 m³ in 3600 s.
pub static CUBIC_METRE_PER_HOUR: Unit = Unit::new(
    "m³/h",
    &["m3/h", "m3/hr"],
    1.0 / 3600.0,
    DIMS,
    "1 m³ in 3600 s",
);

/// Litre per minute, `L/min`: 1 L in 60 s.
pub static LITRE_PER_MINUTE: Unit = Unit::new(
    "L/min",
    &["l/min", "l/mn", "ltr/min", "lpm", "litre/min", "litres/min"],
    LITRE.factor / 60.0,
    DIMS,
    "1 L in 60 s",
);

/// Millilitre per minute, `mL/min`: 1 mL in 60 s.
pub static MILLILITRE_PER_MINUTE: Unit = Unit::new(
    "mL/min",
    &["ml/min", "cc/min"],
    1.0e-3 * LITRE.factor / 60.0,
    DIMS,
    "1 mL in 60 s",
);

/// Cubic foot per minute, `ft³/min`: 1 ft³ in 60 s: NIST SP 811 B.8.
pub static CUBIC_FOOT_PER_MINUTE: Unit = Unit::new(
    "ft³/min",
    &["ft3/min", "cfm", "cuft/min"],
    CUBIC_FOOT.factor / 60.0,
    DIMS,
    "1 ft³ in 60 s: NIST SP 811 B.8",
);

/// Imperial gallon per minute, `imp gal/min`: 1 imperial gallon in 60 s.
pub static IMPERIAL_GALLON_PER_MINUTE: Unit = Unit::new(
    "imp gal/min",
    &["impgal/min", "gal/min", "gpm", "impgpm"],
    IMPERIAL_GALLON.factor / 60.0,
    DIMS,
    "1 imperial gallon in 60 s",
)
.in_system(System::Imperial);

/// Us gallon per minute, `US gal/min`: 1 US gallon in 60 s: NIST SP 811 B.8.
pub static US_GALLON_PER_MINUTE: Unit = Unit::new(
    "US gal/min",
    &["usgal/min", "gal/min", "gpm", "usgpm"],
    US_GALLON.factor / 60.0,
    DIMS,
    "1 US gallon in 60 s: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);
