//! Time: the base unit is the second.

use crate::unit::{Powers, Unit};

const DIMS: Powers = [0, 0, 1, 0];

/// Second, `s`: SI base unit: SI Brochure 2.3.1.
pub static SECOND: Unit = Unit::new(
    "s",
    &["s", "sec", "secs", "second", "seconds", "\""],
    1.0,
    DIMS,
    "SI base unit: SI Brochure 2.3.1",
);

/// Minute, `min`: 60 s: SI Brochure table 8.
pub static MINUTE: Unit = Unit::new(
    "min",
    &["min", "mins", "minute", "minutes", "mn", "m", "'"],
    60.0,
    DIMS,
    "60 s: SI Brochure table 8",
);

/// Hour, `h`: 3600 s: SI Brochure table 8.
pub static HOUR: Unit = Unit::new(
    "h",
    &["h", "hr", "hrs", "hour", "hours", "std"],
    3600.0,
    DIMS,
    "3600 s: SI Brochure table 8",
);

/// Day, `d`: 86 400 s: SI Brochure table 8.
pub static DAY: Unit = Unit::new(
    "d",
    &["d", "day", "days"],
    86_400.0,
    DIMS,
    "86 400 s: SI Brochure table 8",
);

/// Week, `wk`: 7 days.
pub static WEEK: Unit = Unit::new(
    "wk",
    &["wk", "week", "weeks", "wks", "w"],
    7.0 * DAY.factor,
    DIMS,
    "7 days",
);
