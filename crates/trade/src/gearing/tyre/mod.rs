//! Tyres: the designation, the overall diameter it stands for, and the rolling circumference.

mod designation;
mod diameter;
mod rolling;
mod service;

pub use designation::{Construction, Designation, Form};
pub use diameter::{Basis, TyreDiameter, tyre_diameter};
pub use rolling::*;
pub use service::{load_of_index, speed_of_symbol};

#[cfg(test)]
mod tests;

use thiserror::Error;

/// Why a tyre's designation is refused.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum TyreFault {
    /// Nothing is written.
    #[error("no designation")]
    Empty,
    /// A character that no designation has.
    #[error("character {at} belongs to no designation")]
    Unread {
        /// Its place, counted in characters from 0.
        at: usize,
    },
    /// No width at the front.
    #[error("no section width")]
    NoWidth,
    /// No rim diameter behind the width.
    #[error("no rim diameter")]
    NoRim,
    /// A width that no road tyre has.
    #[error("no tyre has this width")]
    Width,
    /// An aspect ratio that no road tyre has.
    #[error("no tyre has this aspect ratio")]
    Aspect,
    /// A rim that no road wheel has.
    #[error("no wheel has this rim")]
    Rim,
    /// A printed overall diameter that does not fit the rim.
    #[error("no tyre on this rim has this diameter")]
    Overall,
    /// A letter size of the 1970s, which gives a load and no width.
    #[error("a letter size gives a load, not a width")]
    LetterSize,
}
