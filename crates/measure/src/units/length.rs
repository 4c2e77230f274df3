//! Length: the base unit is the metre.

use crate::unit::{Powers, Unit};

const DIMS: Powers = [1, 0, 0, 0];

/// Metre, `m`: SI base unit: SI Brochure 2.3.1.
pub static METRE: Unit = Unit::new(
    "m",
    &["m", "metre", "metres", "meter", "meters", "mtr"],
    1.0,
    DIMS,
    "SI base unit: SI Brochure 2.3.1",
);

/// Millimetre, `mm`: 0.001 m: SI Brochure table 7.
pub static MILLIMETRE: Unit = Unit::new(
    "mm",
    &[
        "mm",
        "millimetre",
        "millimetres",
        "millimeter",
        "millimeters",
    ],
    1.0e-3,
    DIMS,
    "0.001 m: SI Brochure table 7",
);

/// Centimetre, `cm`: 0.01 m: SI Brochure table 7.
pub static CENTIMETRE: Unit = Unit::new(
    "cm",
    &[
        "cm",
        "centimetre",
        "centimetres",
        "centimeter",
        "centimeters",
    ],
    1.0e-2,
    DIMS,
    "0.01 m: SI Brochure table 7",
);

/// Kilometre, `km`: 1000 m: SI Brochure table 7.
pub static KILOMETRE: Unit = Unit::new(
    "km",
    &[
        "km",
        "kilometre",
        "kilometres",
        "kilometer",
        "kilometers",
        "kms",
    ],
    1.0e3,
    DIMS,
    "1000 m: SI Brochure table 7",
);

/// Micrometre, `µm`: 1e-6 m: SI Brochure table 7.
pub static MICROMETRE: Unit = Unit::new(
    "µm",
    &[
        "um",
        "micron",
        "microns",
        "micrometre",
        "micrometres",
        "micrometer",
        "micrometers",
        "mu",
        "u",
    ],
    1.0e-6,
    DIMS,
    "1e-6 m: SI Brochure table 7",
);

/// Inch, `in`: 25.4 mm: NIST SP 811 B.6.
pub static INCH: Unit = Unit::new(
    "in",
    &["in", "inch", "inches", "ins", "\""],
    0.0254,
    DIMS,
    "25.4 mm: NIST SP 811 B.6",
);

/// Foot, `ft`: 12 in: NIST SP 811 B.6.
pub static FOOT: Unit = Unit::new(
    "ft",
    &["ft", "foot", "feet", "'"],
    0.3048,
    DIMS,
    "12 in, 304.8 mm: NIST SP 811 B.6",
);

/// Yard, `yd`: 3 ft: NIST SP 811 B.6.
pub static YARD: Unit = Unit::new(
    "yd",
    &["yd", "yard", "yards", "yds"],
    0.9144,
    DIMS,
    "3 ft, 914.4 mm: NIST SP 811 B.6",
);

/// Mile, `mi`: 5280 ft: NIST SP 811 B.6.
pub static MILE: Unit = Unit::new(
    "mi",
    &["mi", "mile", "miles"],
    1609.344,
    DIMS,
    "5280 ft, 1609.344 m: NIST SP 811 B.6",
);

/// Thou, `thou`: 0.001 in: NIST SP 811 B.6, as mil.
pub static THOU: Unit = Unit::new(
    "thou",
    &["thou", "thous", "thousandth", "thousandths"],
    1.0e-3 * INCH.factor,
    DIMS,
    "0.001 in: NIST SP 811 B.6, as mil",
);

/// Hundredth of a millimetre, `hundredths`: 0.01 mm: SI Brochure table 7.
pub static HUNDREDTH: Unit = Unit::new(
    "hundredths",
    &["hundredths", "hundredth"],
    1.0e-5,
    DIMS,
    "0.01 mm: SI Brochure table 7",
);

/// Mil, `mil`: 0.001 in: NIST SP 811 B.6.
pub static MIL: Unit = Unit::new(
    "mil",
    &["mil", "mils"],
    1.0e-3 * INCH.factor,
    DIMS,
    "0.001 in: NIST SP 811 B.6",
);
