//! The unit: a symbol, the spellings people type for it, and its exact relation to the SI base units.

use crate::manner::System;

pub use crate::units::acceleration::*;
pub use crate::units::angle::*;
pub use crate::units::area::*;
pub use crate::units::density::*;
pub use crate::units::energy::*;
pub use crate::units::flow::*;
pub use crate::units::force::*;
pub use crate::units::inertia::*;
pub use crate::units::length::*;
pub use crate::units::mass::*;
pub use crate::units::power::*;
pub use crate::units::power_to_mass::*;
pub use crate::units::pressure::*;
pub use crate::units::ratio::*;
pub use crate::units::rotation::*;
pub use crate::units::section::*;
pub use crate::units::speed::*;
pub use crate::units::spreading_rate::*;
pub use crate::units::spring_rate::*;
pub use crate::units::temperature::*;
pub use crate::units::time::*;
pub use crate::units::torque::*;
pub use crate::units::turns_per_distance::*;
pub use crate::units::volume::*;

/// The powers of length, mass, time and temperature in a unit.
pub type Powers = [i8; 4];

/// A unit of measurement, exact by definition.
///
/// A value `x` in this unit is `(x + offset) * factor` in SI base units. Only temperatures have an offset.
#[derive(Debug, Clone, Copy)]
pub struct Unit {
    /// How the unit is written.
    pub symbol: &'static str,
    /// Other spellings that people type, in lower case, without spaces, dots or hyphens.
    pub names: &'static [&'static str],
    /// SI base units in one of this unit.
    pub factor: f64,
    /// What is added to a value in this unit before the factor applies.
    pub offset: f64,
    /// Powers of length, mass, time and temperature.
    pub dims: Powers,
    /// The definition that the factor follows from, and where it is published.
    pub definition: &'static str,
    /// The country's system that the bare name belongs to, where two systems share a name (`gal`).
    pub system: Option<System>,
}

impl Unit {
    pub(crate) const fn new(
        symbol: &'static str,
        names: &'static [&'static str],
        factor: f64,
        dims: Powers,
        definition: &'static str,
    ) -> Self {
        Self {
            symbol,
            names,
            factor,
            offset: 0.0,
            dims,
            definition,
            system: None,
        }
    }

    pub(crate) const fn with_offset(self, offset: f64) -> Self {
        Self { offset, ..self }
    }

    pub(crate) const fn in_system(self, system: System) -> Self {
        Self {
            system: Some(system),
            ..self
        }
    }

    /// A value in this unit, in SI base units.
    #[must_use]
    pub fn to_si(&self, value: f64) -> f64 {
        (value + self.offset) * self.factor
    }

    /// A value in SI base units, in this unit.
    #[must_use]
    pub fn from_si(&self, si: f64) -> f64 {
        si / self.factor - self.offset
    }

    /// A difference or a ± in SI base units, in this unit: the zero point plays no part.
    #[must_use]
    pub fn step_from_si(&self, si: f64) -> f64 {
        si / self.factor
    }
}

/// Two units are the same when they are written the same, measure the same dimension and count from the same nought.
impl PartialEq for Unit {
    fn eq(&self, other: &Self) -> bool {
        self.symbol == other.symbol && self.dims == other.dims && self.offset == other.offset
    }
}
