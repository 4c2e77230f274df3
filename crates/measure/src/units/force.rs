//! Force: the base unit is the newton.

use crate::unit::{Powers, Unit};
use crate::units::acceleration::STANDARD_GRAVITY;
use crate::units::mass::{HUNDREDWEIGHT, LONG_TON, OUNCE, POUND};

const DIMS: Powers = [1, 1, -2, 0];

/// Newton, `N`: SI coherent unit: SI Brochure table 4.
pub static NEWTON: Unit = Unit::new(
    "N",
    &["n", "newton", "newtons"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 4",
);

/// Kilonewton, `kN`: 1000 N: SI Brochure table 7.
pub static KILONEWTON: Unit = Unit::new(
    "kN",
    &["kn", "kilonewton", "kilonewtons"],
    1.0e3,
    DIMS,
    "1000 N: SI Brochure table 7",
);

/// Decanewton, `daN`: 10 N: SI Brochure table 7.
pub static DECANEWTON: Unit = Unit::new(
    "daN",
    &["dan", "decanewton", "decanewtons"],
    10.0,
    DIMS,
    "10 N: SI Brochure table 7",
);

/// Kilogram force, `kgf`: 1 kg at standard gravity: NIST SP 811 B.8.
pub static KILOGRAM_FORCE: Unit = Unit::new(
    "kgf",
    &[
        "kgf",
        "kp",
        "kilopond",
        "kiloponds",
        "kg",
        "kgs",
        "kilo",
        "kilos",
    ],
    STANDARD_GRAVITY,
    DIMS,
    "1 kg at standard gravity: NIST SP 811 B.8",
);

/// Pound force, `lbf`: 1 lb at standard gravity: NIST SP 811 B.8.
pub static POUND_FORCE: Unit = Unit::new(
    "lbf",
    &["lbf", "lb", "lbs", "pound", "pounds", "poundforce", "lbsf"],
    POUND.factor * STANDARD_GRAVITY,
    DIMS,
    "1 lb at standard gravity: NIST SP 811 B.8",
);

/// Ounce force, `ozf`: 1 oz at standard gravity: NIST SP 811 B.8.
pub static OUNCE_FORCE: Unit = Unit::new(
    "ozf",
    &["ozf", "oz", "ounce", "ounces"],
    OUNCE.factor * STANDARD_GRAVITY,
    DIMS,
    "1 oz at standard gravity: NIST SP 811 B.8",
);

/// Hundredweight force, `cwtf`: 1 long hundredweight at standard gravity: NIST SP 811 B.8.
pub static HUNDREDWEIGHT_FORCE: Unit = Unit::new(
    "cwtf",
    &["cwtf", "cwt", "cwts", "hundredweight", "hundredweights"],
    HUNDREDWEIGHT.factor * STANDARD_GRAVITY,
    DIMS,
    "1 long hundredweight at standard gravity: NIST SP 811 B.8",
);

/// Ton force, `tonf`: 1 long ton at standard gravity: NIST SP 811 B.8.
pub static TON_FORCE: Unit = Unit::new(
    "tonf",
    &["tonf", "ton", "tons", "longton", "longtons"],
    LONG_TON.factor * STANDARD_GRAVITY,
    DIMS,
    "1 long ton at standard gravity: NIST SP 811 B.8",
);
