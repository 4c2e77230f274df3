//! Spring rate: the base unit is the newton per metre.

use crate::unit::{Powers, Unit};
use crate::units::force::{KILOGRAM_FORCE, POUND_FORCE};
use crate::units::length::INCH;

const DIMS: Powers = [0, 1, -2, 0];

/// Newton per metre, `N/m`: SI coherent unit.
pub static NEWTON_PER_METRE: Unit = Unit::new("N/m", &["n/m"], 1.0, DIMS, "SI coherent unit");

/// Newton per millimetre, `N/mm`: 1 N over 1 mm.
pub static NEWTON_PER_MILLIMETRE: Unit = Unit::new(
    "N/mm",
    &["n/mm", "kn/m", "newton/mm"],
    1.0e3,
    DIMS,
    "1 N over 1 mm",
);

/// Kilogram per millimetre, `kgf/mm`: 1 kgf over 1 mm.
pub static KILOGRAM_PER_MILLIMETRE: Unit = Unit::new(
    "kgf/mm",
    &["kgf/mm", "kg/mm", "kp/mm"],
    1.0e3 * KILOGRAM_FORCE.factor,
    DIMS,
    "1 kgf over 1 mm",
);

/// Kilogram per centimetre, `kgf/cm`: 1 kgf over 1 cm.
pub static KILOGRAM_PER_CENTIMETRE: Unit = Unit::new(
    "kgf/cm",
    &["kgf/cm", "kg/cm", "kp/cm"],
    1.0e2 * KILOGRAM_FORCE.factor,
    DIMS,
    "1 kgf over 1 cm",
);

/// Pound per inch, `lbf/in`: 1 lbf over 1 in: NIST SP 811 B.8.
pub static POUND_PER_INCH: Unit = Unit::new(
    "lbf/in",
    &[
        "lbf/in", "lb/in", "lbs/in", "lb/inch", "lbs/inch", "lbf/inch", "lbsf/in", "lb/\"", "ppi",
    ],
    POUND_FORCE.factor / INCH.factor,
    DIMS,
    "1 lbf over 1 in: NIST SP 811 B.8",
);
