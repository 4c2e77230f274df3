//! What can go wrong with money: in reckoning, and in what was typed.

use std::ops::Range;

use thiserror::Error;

use super::Currency;

/// Why a reckoning of money has no answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum MoneyError {
    /// Two currencies met where one was needed; an exchange rate would be right.
    #[error("{left} and {right} cannot be reckoned together without an exchange rate")]
    Mixed {
        /// The currency that was there.
        left: Currency,
        /// The currency that came.
        right: Currency,
    },
    /// The result has more digits than can be kept exactly.
    #[error("the amount has more digits than can be kept exactly")]
    Overflow,
    /// A division by nothing.
    #[error("an amount cannot be divided by nothing")]
    DividedByNothing,
    /// Parts of a minor unit where whole ones are needed; rounding first would be right.
    #[error("the amount holds parts of the currency's smallest unit")]
    Fraction,
    /// No shares to split by, a share below nothing, or shares that are all nothing.
    #[error("shares must be nothing or more, and not all nothing")]
    Shares,
    /// Not a saved amount such as `12.50 GBP`.
    #[error("not a saved amount such as 12.50 GBP")]
    Unreadable,
    /// A measured quantity that is no number, or far too large to price.
    #[error("the measured quantity cannot be priced")]
    Quantity,
}

/// What was wrong with the money typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum MoneyFault {
    /// Nothing was typed.
    Empty,
    /// No digits at all.
    NoDigits,
    /// A character that has no place in an amount.
    Unexpected(char),
    /// A thousands mark that does not stand before three digits.
    Thousands,
    /// Two decimal marks, or more than one sign.
    Twice(char),
    /// A word or sign of a currency that is not known.
    UnknownCurrency,
    /// A sign that several currencies share; the three letters would be right.
    SharedSign,
    /// More decimals than the currency, or the field, has.
    TooFine {
        /// How many decimals there may be.
        places: u32,
    },
    /// More digits than can be kept.
    TooLong,
}

/// What was wrong with the money typed, where, and what would be right.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{why:?} at {at:?}; write it like {example}")]
pub struct MoneyEntryError {
    /// The characters at fault (counted in characters, not bytes).
    pub at: Range<usize>,
    /// What is wrong with them.
    pub why: MoneyFault,
    /// A right example.
    pub example: String,
}
