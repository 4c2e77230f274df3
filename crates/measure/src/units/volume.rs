//! Volume: the base unit is the cubic metre.

use crate::manner::System;
use crate::unit::{Powers, Unit};
use crate::units::length::{FOOT, INCH};

const DIMS: Powers = [3, 0, 0, 0];

/// Cubic metre, `m³`: SI coherent unit: SI Brochure table 5.
pub static CUBIC_METRE: Unit = Unit::new(
    "m³",
    &["m3", "cubicmetre", "cubicmetres", "cum"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 5",
);

/// Litre, `L`: 1 dm³: SI Brochure table 8.
pub static LITRE: Unit = Unit::new(
    "L",
    &[
        "l", "ltr", "ltrs", "lt", "litre", "litres", "liter", "liters",
    ],
    1.0e-3,
    DIMS,
    "1 dm³: SI Brochure table 8",
);

/// Millilitre, `mL`: 0.001 L: SI Brochure tables 7 and 8.
pub static MILLILITRE: Unit = Unit::new(
    "mL",
    &[
        "ml",
        "millilitre",
        "millilitres",
        "milliliter",
        "milliliters",
        "mls",
    ],
    1.0e-6,
    DIMS,
    "0.001 L: SI Brochure tables 7 and 8",
);

/// Centilitre, `cL`: 0.01 L: SI Brochure tables 7 and 8.
pub static CENTILITRE: Unit = Unit::new(
    "cL",
    &["cl", "centilitre", "centilitres"],
    1.0e-5,
    DIMS,
    "0.01 L: SI Brochure tables 7 and 8",
);

/// Cubic centimetre, `cm³`: (0.01 m)³.
pub static CUBIC_CENTIMETRE: Unit =
    Unit::new("cm³", &["cm3", "cc", "ccm"], 1.0e-6, DIMS, "(0.01 m)³");

/// Cubic inch, `in³`: (25.4 mm)³: NIST SP 811 B.8.
pub static CUBIC_INCH: Unit = Unit::new(
    "in³",
    &["in3", "cuin", "cuins", "cid", "cubicinch", "cubicinches"],
    INCH.factor * INCH.factor * INCH.factor,
    DIMS,
    "(25.4 mm)³: NIST SP 811 B.8",
);

/// Cubic foot, `ft³`: (12 in)³: NIST SP 811 B.8.
pub static CUBIC_FOOT: Unit = Unit::new(
    "ft³",
    &["ft3", "cuft", "cubicfoot", "cubicfeet"],
    FOOT.factor * FOOT.factor * FOOT.factor,
    DIMS,
    "(12 in)³: NIST SP 811 B.8",
);

/// Imperial gallon, `imp gal`: 4.54609 L: NIST SP 811 B.8.
pub static IMPERIAL_GALLON: Unit = Unit::new(
    "imp gal",
    &[
        "impgal",
        "gal",
        "gals",
        "gallon",
        "gallons",
        "impgals",
        "impgallon",
        "impgallons",
        "imperialgallon",
        "imperialgallons",
        "ukgal",
        "ukgallon",
        "ukgallons",
        "galuk",
        "galimp",
    ],
    4.54609e-3,
    DIMS,
    "4.54609 L: NIST SP 811 B.8",
)
.in_system(System::Imperial);

/// Imperial quart, `imp qt`: a quarter of the imperial gallon: UK Weights and Measures Act 1985 sch. 1.
pub static IMPERIAL_QUART: Unit = Unit::new(
    "imp qt",
    &[
        "impqt",
        "qt",
        "qts",
        "quart",
        "quarts",
        "impqts",
        "impquart",
        "impquarts",
        "imperialquart",
        "imperialquarts",
        "ukqt",
        "ukquart",
    ],
    IMPERIAL_GALLON.factor / 4.0,
    DIMS,
    "a quarter of the imperial gallon: UK Weights and Measures Act 1985 sch. 1",
)
.in_system(System::Imperial);

/// Imperial pint, `imp pt`: an eighth of the imperial gallon: UK Weights and Measures Act 1985 sch. 1.
pub static IMPERIAL_PINT: Unit = Unit::new(
    "imp pt",
    &[
        "imppt",
        "pt",
        "pts",
        "pint",
        "pints",
        "imppts",
        "imppint",
        "imppints",
        "imperialpint",
        "imperialpints",
        "ukpt",
        "ukpint",
        "ukpints",
    ],
    IMPERIAL_GALLON.factor / 8.0,
    DIMS,
    "an eighth of the imperial gallon: UK Weights and Measures Act 1985 sch. 1",
)
.in_system(System::Imperial);

/// Imperial gill, `imp gill`: a quarter of the imperial pint: NIST SP 811 B.8.
pub static IMPERIAL_GILL: Unit = Unit::new(
    "imp gill",
    &["impgill", "gill", "gills", "impgills"],
    IMPERIAL_GALLON.factor / 32.0,
    DIMS,
    "a quarter of the imperial pint: NIST SP 811 B.8",
)
.in_system(System::Imperial);

/// Imperial fluid ounce, `imp fl oz`: 1/160 of the imperial gallon: NIST SP 811 B.8.
pub static IMPERIAL_FLUID_OUNCE: Unit = Unit::new(
    "imp fl oz",
    &[
        "impfloz",
        "floz",
        "fluidounce",
        "fluidounces",
        "imperialfloz",
        "imperialfluidounce",
        "imperialfluidounces",
        "ukfloz",
        "oz",
        "ozs",
        "ounce",
        "ounces",
    ],
    IMPERIAL_GALLON.factor / 160.0,
    DIMS,
    "1/160 of the imperial gallon: NIST SP 811 B.8",
)
.in_system(System::Imperial);

/// Us gallon, `US gal`: 231 in³: NIST SP 811 B.8.
pub static US_GALLON: Unit = Unit::new(
    "US gal",
    &[
        "usgal",
        "gal",
        "gals",
        "gallon",
        "gallons",
        "usgals",
        "usgallon",
        "usgallons",
        "galus",
    ],
    231.0 * CUBIC_INCH.factor,
    DIMS,
    "231 in³: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);

/// Us quart, `US qt`: a quarter of the US gallon: NIST SP 811 B.8.
pub static US_QUART: Unit = Unit::new(
    "US qt",
    &[
        "usqt", "qt", "qts", "quart", "quarts", "usqts", "usquart", "usquarts",
    ],
    US_GALLON.factor / 4.0,
    DIMS,
    "a quarter of the US gallon: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);

/// Us pint, `US pt`: an eighth of the US gallon: NIST SP 811 B.8.
pub static US_PINT: Unit = Unit::new(
    "US pt",
    &[
        "uspt", "pt", "pts", "pint", "pints", "uspts", "uspint", "uspints",
    ],
    US_GALLON.factor / 8.0,
    DIMS,
    "an eighth of the US gallon: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);

/// Us gill, `US gill`: a quarter of the US pint: NIST SP 811 B.8.
pub static US_GILL: Unit = Unit::new(
    "US gill",
    &["usgill", "gill", "gills", "usgills"],
    US_GALLON.factor / 32.0,
    DIMS,
    "a quarter of the US pint: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);

/// Us fluid ounce, `US fl oz`: 1/128 of the US gallon: NIST SP 811 B.8.
pub static US_FLUID_OUNCE: Unit = Unit::new(
    "US fl oz",
    &[
        "usfloz",
        "floz",
        "fluidounce",
        "fluidounces",
        "usfluidounce",
        "usfluidounces",
        "oz",
        "ozs",
        "ounce",
        "ounces",
    ],
    US_GALLON.factor / 128.0,
    DIMS,
    "1/128 of the US gallon: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);
