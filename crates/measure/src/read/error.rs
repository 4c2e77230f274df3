//! What was wrong with an entry, where in the text, and what would be right.

use std::ops::Range;

use crate::unit::Unit;

/// An entry that cannot be understood. The text itself is kept as it was typed.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("at {}..{}: {why}; for example {example}", at.start, at.end)]
pub struct EntryError {
    /// The characters at fault, counted in characters (not bytes) from the start of the text. For something that is
    /// missing the range is empty and stands where it should be.
    pub at: Range<usize>,
    /// What is wrong there.
    pub why: EntryProblem,
    /// A right entry for this very field.
    pub example: String,
}

/// What can be wrong with an entry.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum EntryProblem {
    /// Nothing was typed.
    #[error("nothing was typed")]
    Empty,
    /// More was typed than any entry needs.
    #[error("more than {longest} characters")]
    TooLong {
        /// The most characters that are read.
        longest: usize,
    },
    /// A number is expected here.
    #[error("a number is expected")]
    NoNumber,
    /// A character that has no meaning in an entry.
    #[error("`{0}` has no meaning here")]
    Character(char),
    /// Marks that split a number into groups that are not of three digits, or two decimal marks.
    #[error("the marks do not split the number into thousands")]
    Thousands,
    /// A fraction without a whole number above and below, or with nought below.
    #[error("not a fraction")]
    Fraction,
    /// A mixed number whose fraction is one or more: `1 5/4`.
    #[error("the fraction of a mixed number must be less than one")]
    ImproperFraction,
    /// A word that is no unit.
    #[error("`{0}` is not a known unit")]
    UnknownUnit(String),
    /// A unit of something else.
    #[error("`{}` does not measure this", .0.symbol)]
    WrongUnit(&'static Unit),
    /// A unit is expected: the number before it has one and this has none that follows.
    #[error("a unit is expected")]
    UnitMissing,
    /// Parts of one value that do not go from large units to small ones: `3 in 4 ft`.
    #[error("the parts do not go from large units to small ones")]
    PartsNotDescending,
    /// A part that is one or more of the unit before it: `4 ft 15 in`.
    #[error("this part makes one or more of the unit before it")]
    PartTooLarge,
    /// A part with decimals in front of smaller parts: `4.5 ft 3 in`.
    #[error("only the last part may have decimals")]
    PartNotWhole,
    /// A sum, a difference, a range or a tyre: `5.60-15`, `3+4`.
    #[error("this is not one value: sums and ranges are not read")]
    NotOneValue,
    /// `+0.1` without the `-` that belongs to it, or the other way about.
    #[error("a + or a - alone is no tolerance: both are needed, or ±")]
    OneSided,
    /// A tolerance with a sign of its own: `± -0.5`.
    #[error("a tolerance has no sign of its own")]
    SignedTolerance,
    /// A tolerance that would bring the value to nought or below, where the field's least value is above it.
    #[error("the tolerance is as large as the value itself")]
    ToleranceTooLarge,
    /// A tolerance in per cent of something whose nought is arbitrary: a temperature in degrees.
    #[error("a temperature has no tolerance in per cent")]
    PercentOfDegrees,
    /// A bracket that is not closed or not opened.
    #[error("the brackets do not match")]
    Brackets,
    /// A gauge number that the gauge does not have.
    #[error("there is no such gauge number")]
    UnknownGauge,
    /// A gauge number without its series: `16 gauge` is one thickness in Britain (SWG) and another in America (ga).
    #[error("`gauge` alone may be SWG or ga")]
    GaugeSeries,
    /// A value below nought where none can be.
    #[error("the value cannot be negative")]
    Negative,
    /// A count with a fraction.
    #[error("the value must be a whole number")]
    NotWhole,
    /// Below the least value the field takes.
    #[error("less than {lowest} {}", unit.symbol)]
    TooSmall {
        /// The least value, in `unit`.
        lowest: f64,
        /// The field's unit.
        unit: &'static Unit,
    },
    /// Above the greatest value the field takes.
    #[error("more than {highest} {}", unit.symbol)]
    TooLarge {
        /// The greatest value, in `unit`.
        highest: f64,
        /// The field's unit.
        unit: &'static Unit,
    },
    /// A number beyond all reckoning: `1e308`.
    #[error("the number is beyond all reckoning")]
    Boundless,
}
