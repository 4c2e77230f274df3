//! Energy: the base unit is the joule.

use crate::unit::{Powers, Unit};
use crate::units::force::{KILOGRAM_FORCE, POUND_FORCE};
use crate::units::length::FOOT;

const DIMS: Powers = [2, 1, -2, 0];

/// Joule, `J`: SI coherent unit: SI Brochure table 4.
pub static JOULE: Unit = Unit::new(
    "J",
    &["j", "joule", "joules", "nm", "newtonmetre", "newtonmetres"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 4",
);

/// Kilojoule, `kJ`: 1000 J: SI Brochure table 7.
pub static KILOJOULE: Unit = Unit::new(
    "kJ",
    &["kj", "kilojoule", "kilojoules"],
    1.0e3,
    DIMS,
    "1000 J: SI Brochure table 7",
);

/// Kilowatt hour, `kWh`: 1 kW for 3600 s: NIST SP 811 B.8.
pub static KILOWATT_HOUR: Unit = Unit::new(
    "kWh",
    &["kwh", "kwhr"],
    3.6e6,
    DIMS,
    "1 kW for 3600 s: NIST SP 811 B.8",
);

/// Foot pound force, `ft·lbf`: 1 lbf over 1 ft: NIST SP 811 B.8.
pub static FOOT_POUND_FORCE: Unit = Unit::new(
    "ft·lbf",
    &[
        "ftlbf",
        "ftlb",
        "ftlbs",
        "lbft",
        "lbfft",
        "footpound",
        "footpounds",
    ],
    FOOT.factor * POUND_FORCE.factor,
    DIMS,
    "1 lbf over 1 ft: NIST SP 811 B.8",
);

/// Kilogram force metre, `kgf·m`: 1 kgf over 1 m: NIST SP 811 B.8.
pub static KILOGRAM_FORCE_METRE: Unit = Unit::new(
    "kgf·m",
    &["kgfm", "kgm", "mkg", "mkp", "kpm"],
    KILOGRAM_FORCE.factor,
    DIMS,
    "1 kgf over 1 m: NIST SP 811 B.8",
);
