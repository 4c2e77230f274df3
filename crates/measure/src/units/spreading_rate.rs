//! Spreading rate of paint: the base unit is the square metre per cubic metre, 1/m.

use crate::manner::System;
use crate::unit::{Powers, Unit};
use crate::units::area::SQUARE_FOOT;
use crate::units::volume::{IMPERIAL_GALLON, LITRE, US_GALLON};

const DIMS: Powers = [-1, 0, 0, 0];

/// Square metre per litre, `m²/L`: 1 m² from 1 L.
pub static SQUARE_METRE_PER_LITRE: Unit = Unit::new(
    "m²/L",
    &["m2/l", "sqm/l", "sqm/ltr", "m2/ltr", "m2/litre"],
    1.0 / LITRE.factor,
    DIMS,
    "1 m² from 1 L",
);

/// Square foot per imperial gallon, `ft²/imp gal`: 1 ft² from 1 imperial gallon.
pub static SQUARE_FOOT_PER_IMPERIAL_GALLON: Unit = Unit::new(
    "ft²/imp gal",
    &[
        "ft2/impgal",
        "ft2/gal",
        "sqft/gal",
        "sqft/gallon",
        "sqft/impgal",
        "ft2/ukgal",
        "sqft/ukgal",
    ],
    SQUARE_FOOT.factor / IMPERIAL_GALLON.factor,
    DIMS,
    "1 ft² from 1 imperial gallon",
)
.in_system(System::Imperial);

/// Square foot per us gallon, `ft²/US gal`: 1 ft² from 1 US gallon.
pub static SQUARE_FOOT_PER_US_GALLON: Unit = Unit::new(
    "ft²/US gal",
    &[
        "ft2/usgal",
        "ft2/gal",
        "sqft/gal",
        "sqft/gallon",
        "sqft/usgal",
    ],
    SQUARE_FOOT.factor / US_GALLON.factor,
    DIMS,
    "1 ft² from 1 US gallon",
)
.in_system(System::UnitedStates);
