//! Acceleration: the base unit is the metre per second squared.

use crate::unit::{Powers, Unit};
use crate::units::length::FOOT;

const DIMS: Powers = [1, 0, -2, 0];

/// Standard gravity, exact: NIST SP 811 B.8 and the third CGPM (1901).
pub const STANDARD_GRAVITY: f64 = 9.80665;

/// Metre per second squared, `m/s²`: SI coherent unit: SI Brochure table 5.
pub static METRE_PER_SECOND_SQUARED: Unit = Unit::new(
    "m/s²",
    &["m/s2", "m/sec2"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 5",
);

/// Gravity, `g`: standard gravity, 9.80665 m/s²: NIST SP 811 B.8.
pub static GRAVITY: Unit = Unit::new(
    "g",
    &["g", "gn", "g0", "gee"],
    STANDARD_GRAVITY,
    DIMS,
    "standard gravity, 9.80665 m/s²: NIST SP 811 B.8",
);

/// Foot per second squared, `ft/s²`: 1 ft/s in 1 s: NIST SP 811 B.8.
pub static FOOT_PER_SECOND_SQUARED: Unit = Unit::new(
    "ft/s²",
    &["ft/s2", "ft/sec2"],
    FOOT.factor,
    DIMS,
    "1 ft/s in 1 s: NIST SP 811 B.8",
);
