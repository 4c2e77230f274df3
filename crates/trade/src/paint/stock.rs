//! Back from the litres in stock: the film or the coats they give.

use measure::{Area, Kind, Length, Ratio, Volume};

use super::sources::{ALLOWANCES, SPREADING};

/// The dry film a coat that a volume in stock gives, spread over so many coats.
///
/// `t = (V / (1 + r) - n c) VS η / (A k)`
///
/// # Units
/// Volumes ready to spray, area, pure numbers; a length out.
/// # Valid range
/// More paint than stays in the cups; below that the film is negative, and there is no coat.
/// # Source
/// The spreading rate turned round, and the allowances of common practice.
#[must_use]
pub fn film_from_stock(
    stock: &Volume,
    area: &Area,
    coats: &Ratio,
    solids: &Ratio,
    transfer: &Ratio,
    left_in_cups: &Volume,
    reserve: &Ratio,
) -> Length {
    let sprayed = (stock / (1.0 + reserve) - left_in_cups)
        .called("V_sprayed")
        .cited(&ALLOWANCES);
    let film = sprayed * (solids * transfer) / (area * coats);
    film.called("t").of_kind(Kind::Film).cited(&SPREADING)
}

/// How many coats a volume in stock gives, in whole coats and the part of the next.
///
/// `k = (V / (1 + r) - n c) / V_coat`
///
/// # Units
/// Volumes ready to spray; a pure number out.
/// # Source
/// As [`film_from_stock`].
#[must_use]
pub fn coats_from_stock(
    stock: &Volume,
    coat: &Volume,
    left_in_cups: &Volume,
    reserve: &Ratio,
) -> Ratio {
    let sprayed = (stock / (1.0 + reserve) - left_in_cups)
        .called("V_sprayed")
        .cited(&ALLOWANCES);
    (sprayed / coat)
        .called("k")
        .of_kind(Kind::Ratio)
        .cited(&SPREADING)
}
