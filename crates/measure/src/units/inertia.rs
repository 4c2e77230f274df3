//! Moment of inertia: the base unit is the kilogram metre squared.

use crate::unit::{Powers, Unit};
use crate::units::length::{FOOT, INCH};
use crate::units::mass::POUND;

const DIMS: Powers = [2, 1, 0, 0];

/// Kilogram square metre, `kg·m²`: SI coherent unit: SI Brochure table 6.
pub static KILOGRAM_SQUARE_METRE: Unit = Unit::new(
    "kg·m²",
    &["kgm2"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 6",
);

/// Pound square foot, `lb·ft²`: 1 lb at 1 ft: NIST SP 811 B.8.
pub static POUND_SQUARE_FOOT: Unit = Unit::new(
    "lb·ft²",
    &["lbft2", "lbsqft"],
    POUND.factor * FOOT.factor * FOOT.factor,
    DIMS,
    "1 lb at 1 ft: NIST SP 811 B.8",
);

/// Pound square inch, `lb·in²`: 1 lb at 1 in: NIST SP 811 B.8.
pub static POUND_SQUARE_INCH: Unit = Unit::new(
    "lb·in²",
    &["lbin2", "lbsqin"],
    POUND.factor * INCH.factor * INCH.factor,
    DIMS,
    "1 lb at 1 in: NIST SP 811 B.8",
);
