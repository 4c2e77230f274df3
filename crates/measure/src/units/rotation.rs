//! Rotation and frequency: the base unit is the turn per second (not the radian per second).

use std::f64::consts::PI;

use crate::unit::{Powers, Unit};

const DIMS: Powers = [0, 0, -1, 0];

/// Turn per second, `1/s`: one turn in 1 s.
pub static TURN_PER_SECOND: Unit = Unit::new(
    "1/s",
    &["1/s", "rps", "rev/s", "turn/s", "turns/s", "rev/sec", "s1"],
    1.0,
    DIMS,
    "one turn in 1 s",
);

/// Hertz, `Hz`: one cycle in 1 s: SI Brochure table 4.
pub static HERTZ: Unit = Unit::new(
    "Hz",
    &["hz", "hertz", "cps"],
    1.0,
    DIMS,
    "one cycle in 1 s: SI Brochure table 4",
);

/// Revolution per minute, `rpm`: one turn in 60 s: NIST SP 811 B.8.
pub static REVOLUTION_PER_MINUTE: Unit = Unit::new(
    "rpm",
    &[
        "rpm",
        "1/min",
        "min1",
        "rev/min",
        "revs/min",
        "r/min",
        "u/min",
        "upm",
        "tr/min",
        "t/min",
        "g/min",
        "revs",
        "revs/minute",
        "turn/min",
        "turns/min",
        "/min",
        "tr/mn",
        "turns/minute",
        "rev/minute",
        "1/minute",
        "/minute",
    ],
    1.0 / 60.0,
    DIMS,
    "one turn in 60 s: NIST SP 811 B.8",
);

/// Cycle per minute, `cpm`: one cycle in 60 s.
pub static CYCLE_PER_MINUTE: Unit = Unit::new(
    "cpm",
    &["cpm", "cycles/min", "cycle/min"],
    1.0 / 60.0,
    DIMS,
    "one cycle in 60 s",
);

/// Radian per second, `rad/s`: 1/(2π) turn in 1 s: NIST SP 811 B.8.
pub static RADIAN_PER_SECOND: Unit = Unit::new(
    "rad/s",
    &["rad/s", "rad/sec"],
    1.0 / (2.0 * PI),
    DIMS,
    "1/(2π) turn in 1 s: NIST SP 811 B.8",
);
