//! The one error of this crate: what was wrong, where, and what would be right.

use thiserror::Error;

/// Why an entry, a book, a link, a file or the store could not serve.
#[derive(Debug, Clone, PartialEq, Error)]
#[non_exhaustive]
pub enum BookError {
    /// A number field whose text is not a number, not of its kind or beyond its limits.
    #[error("{0}")]
    Entry(measure::EntryError),
    /// A money or decimal field whose text is neither.
    #[error("{0}")]
    Money(measure::MoneyEntryError),
    /// An amount or decimal number beyond what makes sense in its field.
    #[error("must lie between {lowest} and {highest}")]
    Limits {
        /// The lowest that makes sense.
        lowest: f64,
        /// The highest that makes sense.
        highest: f64,
    },
    /// A word that the field does not know.
    #[error("`{text}` is none of {choices:?}")]
    Choice {
        /// What stood there.
        text: String,
        /// What could stand there.
        choices: &'static [&'static str],
    },
    /// A text that is of the right sort, but that the trade has no use for: a tyre's designation without a rim.
    #[error("{0}")]
    Trade(trade::TradeError),
    /// A text that is no day.
    #[error("`{0}` is no day; a right one is 2026-03-14")]
    Date(String),
    /// A path that no entry can have.
    #[error("`{0}` is no path of an entry")]
    Key(String),
    /// The store has no room for it.
    #[error("the store is full")]
    Full,
    /// There is no store: it is switched off, or forbidden here.
    #[error("the store is switched off")]
    Off,
    /// The store holds another revision than the writer has seen.
    #[error("revision {seen} was seen, revision {stored} is stored")]
    Stale {
        /// The revision that the writer has seen.
        seen: u64,
        /// The revision that is stored.
        stored: u64,
    },
    /// There is no such book.
    #[error("there is no such book")]
    Missing,
    /// It is not whole.
    #[error("it is damaged: its {0} cannot be read")]
    Damaged(&'static str),
    /// A newer version of the program made it.
    #[error("a newer version of the program made it")]
    Newer,
    /// It is nothing that this program makes.
    #[error("it is no build book")]
    NotOurs,
    /// It is larger than anything this program makes.
    #[error("it is too large")]
    TooLarge,
}

impl From<measure::EntryError> for BookError {
    fn from(error: measure::EntryError) -> Self {
        Self::Entry(error)
    }
}

impl From<measure::MoneyEntryError> for BookError {
    fn from(error: measure::MoneyEntryError) -> Self {
        Self::Money(error)
    }
}

impl From<trade::TradeError> for BookError {
    fn from(error: trade::TradeError) -> Self {
        Self::Trade(error)
    }
}
