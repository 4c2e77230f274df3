//! The manner of a book: which units it shows, which decimal mark it writes.

use std::collections::BTreeMap;

use crate::kind::Kind;
use crate::mark::Mark;
use crate::unit::Unit;

/// The family of units a book is kept in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub enum System {
    /// Millimetres, kilograms, litres, bar, kilowatts.
    #[default]
    Metric,
    /// British inches, pounds, imperial gallons, long tons.
    Imperial,
    /// United States inches, pounds, US gallons, short tons.
    UnitedStates,
}

/// How figures are written: units, decimal mark, and units chosen for single kinds.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Manner {
    /// The family of units.
    pub units: System,
    /// The decimal mark.
    pub mark: Mark,
    /// Lengths in inches as binary fractions (`4 5/16`) wherever the ± allows it.
    pub fractions: bool,
    /// Units that the owner of the book chose for single kinds; they win over `units`.
    pub own: BTreeMap<Kind, &'static Unit>,
}

impl Manner {
    /// A manner in one family of units, with a decimal point.
    #[must_use]
    pub fn of(units: System) -> Self {
        Self {
            units,
            ..Self::default()
        }
    }

    /// The unit this book shows a kind of quantity in.
    #[must_use]
    pub fn unit(&self, kind: Kind) -> &'static Unit {
        self.own
            .get(&kind)
            .copied()
            .unwrap_or_else(|| kind.default_unit(self.units))
    }
}
