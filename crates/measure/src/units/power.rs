//! Power: the base unit is the watt.

use crate::unit::{Powers, Unit};
use crate::units::force::{KILOGRAM_FORCE, POUND_FORCE};
use crate::units::length::FOOT;

const DIMS: Powers = [2, 1, -3, 0];

/// Watt, `W`: SI coherent unit: SI Brochure table 4.
pub static WATT: Unit = Unit::new(
    "W",
    &["w", "watt", "watts"],
    1.0,
    DIMS,
    "SI coherent unit: SI Brochure table 4",
);

/// Kilowatt, `kW`: 1000 W: SI Brochure table 7.
pub static KILOWATT: Unit = Unit::new(
    "kW",
    &["kw", "kilowatt", "kilowatts", "kws"],
    1.0e3,
    DIMS,
    "1000 W: SI Brochure table 7",
);

/// Horsepower, `hp`: 550 ft·lbf/s: NIST SP 811 B.8.
pub static HORSEPOWER: Unit = Unit::new(
    "hp",
    &[
        "hp",
        "horsepower",
        "horsepowers",
        "bhp",
        "shp",
        "mechanicalhp",
        "mechanicalhorsepower",
        "hpmech",
        "hps",
        "saehp",
        "hpsae",
        "saebhp",
        "bhpsae",
        "horses",
    ],
    550.0 * FOOT.factor * POUND_FORCE.factor,
    DIMS,
    "550 ft·lbf/s: NIST SP 811 B.8",
);

/// Metric horsepower, `PS`: 75 kgf·m/s: NIST SP 811 B.8, as horsepower (metric).
pub static METRIC_HORSEPOWER: Unit = Unit::new(
    "PS",
    &[
        "ps",
        "cv",
        "ch",
        "pk",
        "hk",
        "metrichp",
        "metrichorsepower",
        "hpmetric",
        "hpm",
        "horsepowermetric",
        "dinhp",
        "hpdin",
        "dinps",
        "psdin",
    ],
    75.0 * KILOGRAM_FORCE.factor,
    DIMS,
    "75 kgf·m/s: NIST SP 811 B.8, as horsepower (metric)",
);
