//! Turns per distance: the base unit is the turn per metre.

use crate::unit::{Powers, Unit};
use crate::units::length::MILE;

const DIMS: Powers = [-1, 0, 0, 0];

/// Turn per metre, `turns/m`: one turn in 1 m.
pub static TURN_PER_METRE: Unit = Unit::new(
    "turns/m",
    &["turns/m", "turn/m", "rev/m", "revs/m", "t/m"],
    1.0,
    DIMS,
    "one turn in 1 m",
);

/// Turn per kilometre, `turns/km`: one turn in 1 km.
pub static TURN_PER_KILOMETRE: Unit = Unit::new(
    "turns/km",
    &[
        "turns/km", "turn/km", "rev/km", "revs/km", "r/km", "tr/km", "u/km", "w", "tpk", "1/km",
    ],
    1.0e-3,
    DIMS,
    "one turn in 1 km",
);

/// Turn per mile, `turns/mi`: one turn in 1 mile.
pub static TURN_PER_MILE: Unit = Unit::new(
    "turns/mi",
    &[
        "turns/mi",
        "turn/mi",
        "turn/mile",
        "turns/mile",
        "rev/mi",
        "rev/mile",
        "revs/mile",
        "revs/mi",
        "tpm",
        "1/mi",
        "1/mile",
    ],
    1.0 / MILE.factor,
    DIMS,
    "one turn in 1 mile",
);
