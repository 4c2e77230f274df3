//! Torque: the base unit is the newton metre.

use crate::unit::{Powers, Unit};
use crate::units::force::{KILOGRAM_FORCE, OUNCE_FORCE, POUND_FORCE};
use crate::units::length::{FOOT, INCH};

const DIMS: Powers = [2, 1, -2, 0];

/// Newton metre, `N·m`: SI coherent unit: SI Brochure table 6.
pub static NEWTON_METRE: Unit = Unit::new(
    "N·m",
    &[
        "nm",
        "newtonmetre",
        "newtonmetres",
        "newtonmeter",
        "newtonmeters",
        "mn",
    ],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 6",
);

/// Kilonewton metre, `kN·m`: 1000 N·m: SI Brochure table 7.
pub static KILONEWTON_METRE: Unit = Unit::new(
    "kN·m",
    &["knm"],
    1.0e3,
    DIMS,
    "1000 N·m: SI Brochure table 7",
);

/// Decanewton metre, `daN·m`: 10 N·m: SI Brochure table 7.
pub static DECANEWTON_METRE: Unit = Unit::new(
    "daN·m",
    &["danm", "mdan"],
    10.0,
    DIMS,
    "10 N·m: SI Brochure table 7",
);

/// Newton centimetre, `N·cm`: 0.01 N·m: SI Brochure table 7.
pub static NEWTON_CENTIMETRE: Unit = Unit::new(
    "N·cm",
    &["ncm"],
    1.0e-2,
    DIMS,
    "0.01 N·m: SI Brochure table 7",
);

/// Pound foot, `lbf·ft`: 1 lbf at 1 ft: NIST SP 811 B.8.
pub static POUND_FOOT: Unit = Unit::new(
    "lbf·ft",
    &[
        "lbfft",
        "lbft",
        "ftlb",
        "ftlbf",
        "ftlbs",
        "lbsft",
        "poundfoot",
        "poundfeet",
        "footpound",
        "footpounds",
        "poundsfeet",
        "lbfeet",
        "lbsfeet",
        "lb/ft",
        "lbs/ft",
        "lbf/ft",
        "ft/lb",
        "ft/lbs",
        "poundsft",
        "ftpounds",
    ],
    POUND_FORCE.factor * FOOT.factor,
    DIMS,
    "1 lbf at 1 ft: NIST SP 811 B.8",
);

/// Pound inch, `lbf·in`: 1 lbf at 1 in: NIST SP 811 B.8.
pub static POUND_INCH: Unit = Unit::new(
    "lbf·in",
    &[
        "lbfin",
        "lbin",
        "inlb",
        "inlbf",
        "inlbs",
        "lbsin",
        "poundinch",
        "poundinches",
        "inchpound",
        "inchpounds",
        "lbinch",
        "lbsinch",
    ],
    POUND_FORCE.factor * INCH.factor,
    DIMS,
    "1 lbf at 1 in: NIST SP 811 B.8",
);

/// Ounce inch, `ozf·in`: 1 ozf at 1 in: NIST SP 811 B.8.
pub static OUNCE_INCH: Unit = Unit::new(
    "ozf·in",
    &["ozfin", "ozin", "inoz", "inozf"],
    OUNCE_FORCE.factor * INCH.factor,
    DIMS,
    "1 ozf at 1 in: NIST SP 811 B.8",
);

/// Kilogram metre, `kgf·m`: 1 kgf at 1 m: NIST SP 811 B.8.
pub static KILOGRAM_METRE: Unit = Unit::new(
    "kgf·m",
    &["kgfm", "kgm", "mkg", "mkgf", "mkp", "kpm"],
    KILOGRAM_FORCE.factor,
    DIMS,
    "1 kgf at 1 m: NIST SP 811 B.8",
);

/// Kilogram centimetre, `kgf·cm`: 1 kgf at 1 cm.
pub static KILOGRAM_CENTIMETRE: Unit = Unit::new(
    "kgf·cm",
    &["kgfcm", "kgcm", "cmkg", "cmkgf", "cmkp", "kpcm"],
    1.0e-2 * KILOGRAM_FORCE.factor,
    DIMS,
    "1 kgf at 1 cm",
);
