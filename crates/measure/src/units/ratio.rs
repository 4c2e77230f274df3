//! Ratios, shares and counts: plain numbers.

use crate::unit::{Powers, Unit};

const DIMS: Powers = [0, 0, 0, 0];

/// One, one (a plain number): the number one: SI Brochure 2.3.3.
pub static ONE: Unit = Unit::new("", &[], 1.0, DIMS, "the number one: SI Brochure 2.3.3");

/// Percent, `%`: 0.01: SI Brochure 5.4.7.
pub static PERCENT: Unit = Unit::new(
    "%",
    &["%", "pc", "pct", "percent", "/cent"],
    1.0e-2,
    DIMS,
    "0.01: SI Brochure 5.4.7",
);

/// Per mille, `‰`: 0.001.
pub static PER_MILLE: Unit = Unit::new("‰", &["‰", "permille", "permil"], 1.0e-3, DIMS, "0.001");
