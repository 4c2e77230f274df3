//! Why a quantity could not be found.

use thiserror::Error;

/// Why a quantity could not be found. Errors of typed text are [`EntryError`](crate::EntryError)s.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
#[non_exhaustive]
pub enum MeasureError {
    /// Nothing between the bounds gives the wanted answer.
    #[error("no value gives the wanted answer; {nearest} comes nearest (SI)")]
    NoRoot {
        /// The value that comes nearest (SI).
        nearest: f64,
        /// What remains there between the answer and the wanted one (SI).
        remainder: f64,
    },
    /// The calculation leaves the numbers: a division by nothing, a root of less than nothing.
    #[error("the calculation has no finite answer")]
    NotFinite,
}
