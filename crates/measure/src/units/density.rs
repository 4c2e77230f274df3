//! Density and concentration: the base unit is the kilogram per cubic metre.

use crate::manner::System;
use crate::unit::{Powers, Unit};
use crate::units::length::FOOT;
use crate::units::mass::POUND;
use crate::units::volume::{IMPERIAL_GALLON, US_GALLON};

const DIMS: Powers = [-3, 1, 0, 0];

/// Kilogram per cubic metre, `kg/m³`: SI coherent unit: SI Brochure table 5.
pub static KILOGRAM_PER_CUBIC_METRE: Unit = Unit::new(
    "kg/m³",
    &["kg/m3"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 5",
);

/// Kilogram per litre, `kg/L`: 1 kg in 1 L.
pub static KILOGRAM_PER_LITRE: Unit = Unit::new(
    "kg/L",
    &["kg/l", "kg/ltr", "kg/litre"],
    1.0e3,
    DIMS,
    "1 kg in 1 L",
);

/// Gram per cubic centimetre, `g/cm³`: 1 g in 1 cm³.
pub static GRAM_PER_CUBIC_CENTIMETRE: Unit = Unit::new(
    "g/cm³",
    &["g/cm3", "g/cc", "g/ccm", "g/ml"],
    1.0e3,
    DIMS,
    "1 g in 1 cm³",
);

/// Gram per litre, `g/L`: 1 g in 1 L.
pub static GRAM_PER_LITRE: Unit =
    Unit::new("g/L", &["g/l", "g/ltr", "g/litre"], 1.0, DIMS, "1 g in 1 L");

/// Pound per cubic foot, `lb/ft³`: 1 lb in 1 ft³: NIST SP 811 B.8.
pub static POUND_PER_CUBIC_FOOT: Unit = Unit::new(
    "lb/ft³",
    &["lb/ft3", "lb/cuft", "pcf"],
    POUND.factor / (FOOT.factor * FOOT.factor * FOOT.factor),
    DIMS,
    "1 lb in 1 ft³: NIST SP 811 B.8",
);

/// Pound per imperial gallon, `lb/imp gal`: 1 lb in 1 imperial gallon: NIST SP 811 B.8.
pub static POUND_PER_IMPERIAL_GALLON: Unit = Unit::new(
    "lb/imp gal",
    &[
        "lb/impgal",
        "lb/gal",
        "lbs/gal",
        "lb/gallon",
        "lbs/impgal",
        "lb/ukgal",
    ],
    POUND.factor / IMPERIAL_GALLON.factor,
    DIMS,
    "1 lb in 1 imperial gallon: NIST SP 811 B.8",
)
.in_system(System::Imperial);

/// Pound per us gallon, `lb/US gal`: 1 lb in 1 US gallon: NIST SP 811 B.8.
pub static POUND_PER_US_GALLON: Unit = Unit::new(
    "lb/US gal",
    &["lb/usgal", "lb/gal", "lbs/gal", "lb/gallon", "lbs/usgal"],
    POUND.factor / US_GALLON.factor,
    DIMS,
    "1 lb in 1 US gallon: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);
