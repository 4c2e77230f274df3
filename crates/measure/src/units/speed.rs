//! Speed: the base unit is the metre per second.

use crate::unit::{Powers, Unit};
use crate::units::length::{FOOT, MILE};

const DIMS: Powers = [1, 0, -1, 0];

/// Metre per second, `m/s`: SI coherent unit: SI Brochure table 5.
pub static METRE_PER_SECOND: Unit = Unit::new(
    "m/s",
    &["m/s", "m/sec", "mps", "ms1"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 5",
);

/// Kilometre per hour, `km/h`: 1000 m in 3600 s: NIST SP 811 B.8.
pub static KILOMETRE_PER_HOUR: Unit = Unit::new(
    "km/h",
    &[
        "km/h", "kmh", "kph", "km/hr", "kmph", "km/hour", "km/std", "kmhr",
    ],
    1.0e3 / 3600.0,
    DIMS,
    "1000 m in 3600 s: NIST SP 811 B.8",
);

/// Metre per minute, `m/min`: 1 m in 60 s.
pub static METRE_PER_MINUTE: Unit =
    Unit::new("m/min", &["m/min", "m/mn"], 1.0 / 60.0, DIMS, "1 m in 60 s");

/// Mile per hour, `mph`: 1 mile in 3600 s: NIST SP 811 B.8.
pub static MILE_PER_HOUR: Unit = Unit::new(
    "mph",
    &[
        "mph",
        "mi/h",
        "mile/h",
        "miles/h",
        "mi/hr",
        "miles/hour",
        "mile/hour",
        "miles/hr",
        "mile/hr",
    ],
    MILE.factor / 3600.0,
    DIMS,
    "1 mile in 3600 s: NIST SP 811 B.8",
);

/// Foot per minute, `ft/min`: 1 ft in 60 s: NIST SP 811 B.8.
pub static FOOT_PER_MINUTE: Unit = Unit::new(
    "ft/min",
    &["ft/min", "fpm", "feet/min", "ft/mn", "feet/minute"],
    FOOT.factor / 60.0,
    DIMS,
    "1 ft in 60 s: NIST SP 811 B.8",
);

/// Foot per second, `ft/s`: 1 ft in 1 s: NIST SP 811 B.8.
pub static FOOT_PER_SECOND: Unit = Unit::new(
    "ft/s",
    &["ft/s", "fps", "ft/sec", "feet/s", "feet/sec"],
    FOOT.factor,
    DIMS,
    "1 ft in 1 s: NIST SP 811 B.8",
);
