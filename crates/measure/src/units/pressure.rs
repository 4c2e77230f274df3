//! Pressure and stress: the base unit is the pascal.

use crate::unit::{Powers, Unit};
use crate::units::acceleration::STANDARD_GRAVITY;
use crate::units::area::SQUARE_INCH;
use crate::units::force::{POUND_FORCE, TON_FORCE};

const DIMS: Powers = [-1, 1, -2, 0];

/// Pascal, `Pa`: SI coherent unit: SI Brochure table 4.
pub static PASCAL: Unit = Unit::new(
    "Pa",
    &["pa", "pascal", "pascals", "n/m2"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 4",
);

/// Hectopascal, `hPa`: 100 Pa: SI Brochure table 7.
pub static HECTOPASCAL: Unit = Unit::new(
    "hPa",
    &["hpa", "hectopascal", "mbar", "millibar", "millibars"],
    100.0,
    DIMS,
    "100 Pa: SI Brochure table 7",
);

/// Kilopascal, `kPa`: 1000 Pa: SI Brochure table 7.
pub static KILOPASCAL: Unit = Unit::new(
    "kPa",
    &["kpa", "kilopascal", "kilopascals", "kn/m2"],
    1.0e3,
    DIMS,
    "1000 Pa: SI Brochure table 7",
);

/// Megapascal, `MPa`: 1e6 Pa: SI Brochure table 7.
pub static MEGAPASCAL: Unit = Unit::new(
    "MPa",
    &["mpa", "megapascal", "megapascals"],
    1.0e6,
    DIMS,
    "1e6 Pa: SI Brochure table 7",
);

/// Newton per square millimetre, `N/mm²`: 1 N on 1 mm².
pub static NEWTON_PER_SQUARE_MILLIMETRE: Unit =
    Unit::new("N/mm²", &["n/mm2", "n/sqmm"], 1.0e6, DIMS, "1 N on 1 mm²");

/// Gigapascal, `GPa`: 1e9 Pa: SI Brochure table 7.
pub static GIGAPASCAL: Unit = Unit::new(
    "GPa",
    &["gpa", "gigapascal", "gigapascals"],
    1.0e9,
    DIMS,
    "1e9 Pa: SI Brochure table 7",
);

/// Bar, `bar`: 100 kPa: NIST SP 811 B.8.
pub static BAR: Unit = Unit::new(
    "bar",
    &["bar", "bars"],
    1.0e5,
    DIMS,
    "100 kPa: NIST SP 811 B.8",
);

/// Atmosphere, `atm`: 101 325 Pa: NIST SP 811 B.8.
pub static ATMOSPHERE: Unit = Unit::new(
    "atm",
    &["atm", "atmosphere", "atmospheres"],
    101_325.0,
    DIMS,
    "101 325 Pa: NIST SP 811 B.8",
);

/// Kilogram per square centimetre, `kgf/cm²`: 1 kgf on 1 cm²: NIST SP 811 B.8.
pub static KILOGRAM_PER_SQUARE_CENTIMETRE: Unit = Unit::new(
    "kgf/cm²",
    &[
        "kgf/cm2", "kg/cm2", "kp/cm2", "at", "ksc", "atü", "ata", "kg/sqcm", "kgf/sqcm",
    ],
    1.0e4 * STANDARD_GRAVITY,
    DIMS,
    "1 kgf on 1 cm²: NIST SP 811 B.8",
);

/// Kilogram per square millimetre, `kgf/mm²`: 1 kgf on 1 mm²: NIST SP 811 B.8.
pub static KILOGRAM_PER_SQUARE_MILLIMETRE: Unit = Unit::new(
    "kgf/mm²",
    &["kgf/mm2", "kg/mm2", "kp/mm2", "kg/sqmm", "kgf/sqmm"],
    1.0e6 * STANDARD_GRAVITY,
    DIMS,
    "1 kgf on 1 mm²: NIST SP 811 B.8",
);

/// Pound per square inch, `psi`: 1 lbf on 1 in²: NIST SP 811 B.8.
pub static POUND_PER_SQUARE_INCH: Unit = Unit::new(
    "psi",
    &[
        "psi",
        "lbf/in2",
        "lb/in2",
        "lbs/in2",
        "lb/sqin",
        "lbs/sqin",
        "lbf/sqin",
        "lbsqin",
        "psig",
        "lb",
        "lbs",
        "pound",
        "pounds",
        "lb/squareinch",
        "lbs/squareinch",
        "pounds/squareinch",
        "pound/squareinch",
        "pounds/sqin",
        "lbf/squareinch",
        "lb/sqinch",
        "lbs/sqinch",
    ],
    POUND_FORCE.factor / SQUARE_INCH.factor,
    DIMS,
    "1 lbf on 1 in²: NIST SP 811 B.8",
);

/// Kip per square inch, `ksi`: 1000 lbf on 1 in²: NIST SP 811 B.8.
pub static KIP_PER_SQUARE_INCH: Unit = Unit::new(
    "ksi",
    &["ksi", "kip/in2"],
    1.0e3 * POUND_PER_SQUARE_INCH.factor,
    DIMS,
    "1000 lbf on 1 in²: NIST SP 811 B.8",
);

/// Ton per square inch, `tonf/in²`: 1 long ton-force on 1 in².
pub static TON_PER_SQUARE_INCH: Unit = Unit::new(
    "tonf/in²",
    &[
        "tonf/in2",
        "tsi",
        "ton/in2",
        "tons/in2",
        "ton/sqin",
        "tons/sqin",
        "ton",
        "tons",
        "ton/squareinch",
        "tons/squareinch",
        "tonf/squareinch",
        "tonf/sqin",
        "ton/sqinch",
        "tons/sqinch",
    ],
    TON_FORCE.factor / SQUARE_INCH.factor,
    DIMS,
    "1 long ton-force on 1 in²",
);

/// Inch of mercury, `inHg`: 3386.389 Pa, conventional: NIST SP 811 B.8.
pub static INCH_OF_MERCURY: Unit = Unit::new(
    "inHg",
    &["inhg", "\"hg"],
    3386.389,
    DIMS,
    "3386.389 Pa, conventional: NIST SP 811 B.8",
);

/// Millimetre of mercury, `mmHg`: 133.3224 Pa, conventional: NIST SP 811 B.8.
pub static MILLIMETRE_OF_MERCURY: Unit = Unit::new(
    "mmHg",
    &["mmhg"],
    133.3224,
    DIMS,
    "133.3224 Pa, conventional: NIST SP 811 B.8",
);
