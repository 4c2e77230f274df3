//! Second moment of area and section modulus: the base units are m⁴ and m³.

use crate::unit::{Powers, Unit};
use crate::units::length::INCH;

const DIMS: Powers = [4, 0, 0, 0];
const MODULUS: Powers = [3, 0, 0, 0];

/// Metre fourth, `m⁴`: (1 m)⁴.
pub static METRE_FOURTH: Unit = Unit::new("m⁴", &["m4"], 1.0, DIMS, "(1 m)⁴");

/// Millimetre fourth, `mm⁴`: (0.001 m)⁴.
pub static MILLIMETRE_FOURTH: Unit = Unit::new("mm⁴", &["mm4"], 1.0e-12, DIMS, "(0.001 m)⁴");

/// Centimetre fourth, `cm⁴`: (0.01 m)⁴.
pub static CENTIMETRE_FOURTH: Unit = Unit::new("cm⁴", &["cm4"], 1.0e-8, DIMS, "(0.01 m)⁴");

/// Inch fourth, `in⁴`: (25.4 mm)⁴: NIST SP 811 B.8.
pub static INCH_FOURTH: Unit = Unit::new(
    "in⁴",
    &["in4"],
    INCH.factor * INCH.factor * INCH.factor * INCH.factor,
    DIMS,
    "(25.4 mm)⁴: NIST SP 811 B.8",
);

/// Millimetre cubed, `mm³`, as a section modulus: (0.001 m)³.
pub static MILLIMETRE_CUBED: Unit = Unit::new("mm³", &["mm3"], 1.0e-9, MODULUS, "(0.001 m)³");

/// Centimetre cubed, `cm³`, as a section modulus: (0.01 m)³.
pub static CENTIMETRE_CUBED: Unit = Unit::new("cm³", &["cm3"], 1.0e-6, MODULUS, "(0.01 m)³");

/// Inch cubed, `in³`, as a section modulus: (25.4 mm)³: NIST SP 811 B.8.
pub static INCH_CUBED: Unit = Unit::new(
    "in³",
    &["in3"],
    INCH.factor * INCH.factor * INCH.factor,
    MODULUS,
    "(25.4 mm)³: NIST SP 811 B.8",
);
