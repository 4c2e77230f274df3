//! Angle: the base unit is the radian.

use std::f64::consts::PI;

use crate::unit::{Powers, Unit};

const DIMS: Powers = [0, 0, 0, 0];

/// Radian, `rad`: SI coherent unit: SI Brochure table 4.
pub static RADIAN: Unit = Unit::new(
    "rad",
    &["rad", "radian", "radians"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 4",
);

/// Milliradian, `mrad`: 0.001 rad: SI Brochure table 7.
pub static MILLIRADIAN: Unit = Unit::new(
    "mrad",
    &["mrad", "milliradian", "milliradians"],
    1.0e-3,
    DIMS,
    "0.001 rad: SI Brochure table 7",
);

/// Degree, `°`: π/180 rad: SI Brochure table 8.
pub static DEGREE: Unit = Unit::new(
    "°",
    &["°", "deg", "degs", "degree", "degrees"],
    PI / 180.0,
    DIMS,
    "π/180 rad: SI Brochure table 8",
);

/// Arc minute, `′`: 1/60°: SI Brochure table 8.
pub static ARC_MINUTE: Unit = Unit::new(
    "′",
    &["'", "min", "arcmin", "mins", "minute", "minutes"],
    DEGREE.factor / 60.0,
    DIMS,
    "1/60°: SI Brochure table 8",
);

/// Arc second, `″`: 1/3600°: SI Brochure table 8.
pub static ARC_SECOND: Unit = Unit::new(
    "″",
    &["\"", "sec", "arcsec", "s", "second", "seconds"],
    DEGREE.factor / 3600.0,
    DIMS,
    "1/3600°: SI Brochure table 8",
);

/// Turn, `turn`: 360°: NIST SP 811 B.8, as revolution.
pub static TURN: Unit = Unit::new(
    "turn",
    &["turn", "turns", "rev", "revs", "revolution", "revolutions"],
    2.0 * PI,
    DIMS,
    "360°: NIST SP 811 B.8, as revolution",
);
