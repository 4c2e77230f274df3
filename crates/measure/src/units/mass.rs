//! Mass: the base unit is the kilogram.

use crate::manner::System;
use crate::unit::{Powers, Unit};

const DIMS: Powers = [0, 1, 0, 0];

/// Kilogram, `kg`: SI base unit: SI Brochure 2.3.1.
pub static KILOGRAM: Unit = Unit::new(
    "kg",
    &[
        "kg",
        "kilogram",
        "kilograms",
        "kilogramme",
        "kilogrammes",
        "kilo",
        "kilos",
        "kgs",
    ],
    1.0,
    DIMS,
    "SI base unit: SI Brochure 2.3.1",
);

/// Gram, `g`: 0.001 kg: SI Brochure table 7.
pub static GRAM: Unit = Unit::new(
    "g",
    &["g", "gram", "grams", "gramme", "grammes", "gm", "gms", "gr"],
    1.0e-3,
    DIMS,
    "0.001 kg: SI Brochure table 7",
);

/// Tonne, `t`: 1000 kg: SI Brochure table 8.
pub static TONNE: Unit = Unit::new(
    "t",
    &[
        "t",
        "tonne",
        "tonnes",
        "metricton",
        "metrictons",
        "metrictonne",
    ],
    1.0e3,
    DIMS,
    "1000 kg: SI Brochure table 8",
);

/// Pound, `lb`: 0.45359237 kg: NIST SP 811 B.8.
pub static POUND: Unit = Unit::new(
    "lb",
    &["lb", "lbs", "pound", "pounds", "lbm", "#"],
    0.45359237,
    DIMS,
    "0.45359237 kg: NIST SP 811 B.8",
);

/// Ounce, `oz`: 1/16 lb: NIST SP 811 B.8.
pub static OUNCE: Unit = Unit::new(
    "oz",
    &["oz", "ounce", "ounces", "ozs"],
    POUND.factor / 16.0,
    DIMS,
    "1/16 lb: NIST SP 811 B.8",
);

/// Stone, `st`: 14 lb: UK Weights and Measures Act 1985 sch. 1.
pub static STONE: Unit = Unit::new(
    "st",
    &["st", "stone", "stones"],
    14.0 * POUND.factor,
    DIMS,
    "14 lb: UK Weights and Measures Act 1985 sch. 1",
);

/// Quarter, `qr`: 28 lb, a quarter of the hundredweight: UK Weights and Measures Act 1985 sch. 1.
pub static QUARTER: Unit = Unit::new(
    "qr",
    &["qr", "qrs", "qtr", "qtrs", "quarter", "quarters"],
    28.0 * POUND.factor,
    DIMS,
    "28 lb, a quarter of the hundredweight: UK Weights and Measures Act 1985 sch. 1",
);

/// Hundredweight, `cwt`: 112 lb: NIST SP 811 B.8, as long hundredweight.
pub static HUNDREDWEIGHT: Unit = Unit::new(
    "cwt",
    &[
        "cwt",
        "cwts",
        "hundredweight",
        "hundredweights",
        "longcwt",
        "impcwt",
        "longhundredweight",
    ],
    112.0 * POUND.factor,
    DIMS,
    "112 lb: NIST SP 811 B.8, as long hundredweight",
)
.in_system(System::Imperial);

/// Short hundredweight, `short cwt`: 100 lb: NIST SP 811 B.8.
pub static SHORT_HUNDREDWEIGHT: Unit = Unit::new(
    "short cwt",
    &[
        "shortcwt",
        "cwt",
        "cwts",
        "hundredweight",
        "hundredweights",
        "uscwt",
        "shorthundredweight",
    ],
    100.0 * POUND.factor,
    DIMS,
    "100 lb: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);

/// Long ton, `long ton`: 2240 lb: NIST SP 811 B.8.
pub static LONG_TON: Unit = Unit::new(
    "long ton",
    &[
        "longton",
        "ton",
        "tons",
        "longtons",
        "impton",
        "imptons",
        "imperialton",
        "ukton",
        "uktons",
    ],
    2240.0 * POUND.factor,
    DIMS,
    "2240 lb: NIST SP 811 B.8",
)
.in_system(System::Imperial);

/// Short ton, `short ton`: 2000 lb: NIST SP 811 B.8.
pub static SHORT_TON: Unit = Unit::new(
    "short ton",
    &["shortton", "ton", "tons", "shorttons", "uston", "ustons"],
    2000.0 * POUND.factor,
    DIMS,
    "2000 lb: NIST SP 811 B.8",
)
.in_system(System::UnitedStates);
