//! Films: dry, wet, and how far a litre goes.

use measure::{Kind, Length, PerLength, Ratio};

use super::sources::{SPREADING, WET_FILM};

/// How much panel a litre covers if nothing is lost.
///
/// `s = VS / t`
///
/// # Units
/// Volume solids as a pure number, dry film as a length; area per volume out (1 m²/L is 1000 per metre).
/// # Valid range
/// Solids above 0 up to 1, a film above 0.
/// # Source
/// Coating makers' guides: 10 x % / µm in m²/L; 1604 x VS / mil in ft² per US gallon.
/// # Example
/// 65 % at 125 µm: 5.2 m²/L.
#[must_use]
pub fn spreading_rate(solids: &Ratio, dry: &Length) -> PerLength {
    (solids / dry)
        .called("s")
        .of_kind(Kind::SpreadingRate)
        .cited(&SPREADING)
}

/// What the wet comb should show for a dry film.
///
/// `w = t / VS`
///
/// # Units
/// Lengths; solids as a pure number, of the paint as it is sprayed.
/// # Source
/// R. Joseph, October 2003.
/// # Example
/// 1.5 mil dry at 42 %: 3.57 mil wet.
#[must_use]
pub fn wet_film(dry: &Length, solids: &Ratio) -> Length {
    (dry / solids)
        .called("w")
        .of_kind(Kind::Film)
        .cited(&WET_FILM)
}

/// What a wet film dries down to.
///
/// `t = w VS`
///
/// # Units
/// Lengths; solids as a pure number, of the paint as it is sprayed.
/// # Source
/// R. Joseph, October 2003.
#[must_use]
pub fn dry_film(wet: &Length, solids: &Ratio) -> Length {
    (wet * solids)
        .called("t")
        .of_kind(Kind::Film)
        .cited(&WET_FILM)
}
