//! Area: the base unit is the square metre.

use crate::unit::{Powers, Unit};
use crate::units::length::{FOOT, INCH, YARD};

const DIMS: Powers = [2, 0, 0, 0];

/// Square metre, `m²`: SI coherent unit: SI Brochure table 5.
pub static SQUARE_METRE: Unit = Unit::new(
    "m²",
    &[
        "m2",
        "sqm",
        "sqmetre",
        "sqmetres",
        "squaremetre",
        "squaremetres",
        "squaremeter",
        "squaremeters",
    ],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 5",
);

/// Square millimetre, `mm²`: (0.001 m)².
pub static SQUARE_MILLIMETRE: Unit = Unit::new("mm²", &["mm2", "sqmm"], 1.0e-6, DIMS, "(0.001 m)²");

/// Square centimetre, `cm²`: (0.01 m)².
pub static SQUARE_CENTIMETRE: Unit = Unit::new("cm²", &["cm2", "sqcm"], 1.0e-4, DIMS, "(0.01 m)²");

/// Square inch, `in²`: (25.4 mm)²: NIST SP 811 B.8.
pub static SQUARE_INCH: Unit = Unit::new(
    "in²",
    &[
        "in2",
        "sqin",
        "sqins",
        "sqinch",
        "squareinch",
        "squareinches",
    ],
    INCH.factor * INCH.factor,
    DIMS,
    "(25.4 mm)²: NIST SP 811 B.8",
);

/// Square foot, `ft²`: (12 in)²: NIST SP 811 B.8.
pub static SQUARE_FOOT: Unit = Unit::new(
    "ft²",
    &[
        "ft2",
        "sqft",
        "sqfoot",
        "sqfeet",
        "squarefoot",
        "squarefeet",
    ],
    FOOT.factor * FOOT.factor,
    DIMS,
    "(12 in)²: NIST SP 811 B.8",
);

/// Square yard, `yd²`: (3 ft)²: NIST SP 811 B.8.
pub static SQUARE_YARD: Unit = Unit::new(
    "yd²",
    &["yd2", "sqyd", "sqyds", "squareyard", "squareyards"],
    YARD.factor * YARD.factor,
    DIMS,
    "(3 ft)²: NIST SP 811 B.8",
);
