//! How far a wheel travels in one turn.

use measure::{Kind, Length, PerLength, Ratio};

use super::super::sources;
use super::designation::Construction;

/// The usual share of rolling circumference to diameter, and how far that can be off (95 %).
///
/// # Source
/// ETRTO Engineering Design Information: 3.05 radial, 2.99 diagonal (from memory); six sizes that a maker lists with their
/// turns per mile lie within 0.1 % of 3.05, an older list within 1.7 %.
#[must_use]
pub fn rolling_factor(construction: Construction) -> (f64, f64) {
    match construction {
        Construction::Radial => (3.05, 0.05),
        Construction::Diagonal => (2.99, 0.06),
    }
}

/// The rolling circumference from the overall diameter: C = F D.
///
/// # Units
/// Metres.
///
/// # Valid range
/// Rated load and pressure, about 60 km/h.
///
/// # Source
/// ETRTO Engineering Design Information (from memory).
#[must_use]
pub fn rolling_circumference(overall_diameter: &Length, factor: &Ratio) -> Length {
    (factor * overall_diameter)
        .of_kind(Kind::Length)
        .cited(&sources::ROLLING)
        .called("C")
}

/// The rolling circumference from a roll-out: C = s / N. It always wins over the designation.
///
/// # Units
/// Metres.
///
/// # Source
/// Definition.
#[must_use]
pub fn rolled_out(distance: &Length, turns: &Ratio) -> Length {
    (distance / turns)
        .of_kind(Kind::Length)
        .cited(&sources::ROLL_OUT)
        .called("C")
}

/// The rolling circumference from listed turns in a distance: C = 1 / N.
///
/// # Source
/// Definition.
#[must_use]
pub fn circumference_of_turns(turns: &PerLength) -> Length {
    (1.0 / turns)
        .of_kind(Kind::Length)
        .cited(&sources::ROLL_OUT)
        .called("C")
}
