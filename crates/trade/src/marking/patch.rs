//! Discs and plates that close the old holes.

use measure::{Area, Held, Kind, Length, Source};

use crate::TradeError;

static DISC: Source = Source {
    title: "Plane geometry of the circle",
    place: "area and circumference",
    held: Held::Computed,
};

/// A disc that closes a round hole.
#[derive(Debug, Clone)]
pub struct Patch {
    /// The disc's diameter.
    pub diameter: Length,
    /// The sheet metal in it.
    pub sheet: Area,
    /// The edge to weld: the middle of the gap.
    pub weld: Length,
}

/// The disc for a hole, less the weld gap all round: d - 2 g.
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::OutOfRange`] where the gap leaves no disc.
///
/// # Source
/// Plane geometry.
pub fn patch(hole: &Length, gap: &Length) -> Result<Patch, TradeError> {
    let diameter = (hole - gap * 2.0).of_kind(Kind::Length);
    if diameter.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "weld gap",
            lowest: 0.0,
            highest: hole.value() / 2.0,
        });
    }
    let sheet = (diameter.squared() * (std::f64::consts::PI / 4.0))
        .of_kind(Kind::Section)
        .cited(&DISC);
    let weld = ((hole - gap) * std::f64::consts::PI)
        .of_kind(Kind::Length)
        .cited(&DISC);
    Ok(Patch {
        diameter,
        sheet,
        weld,
    })
}

/// The diameter of the slug that a hole saw leaves: the hole less two kerfs. It also has the pilot's hole in it.
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::OutOfRange`] where the kerf takes all of it.
///
/// # Source
/// Plane geometry; that a slug never fills a hole of its own size is common practice, no source.
pub fn slug_diameter(hole: &Length, kerf: &Length) -> Result<Length, TradeError> {
    let slug = (hole - kerf * 2.0).of_kind(Kind::Length);
    if slug.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "kerf",
            lowest: 0.0,
            highest: hole.value() / 2.0,
        });
    }
    Ok(slug)
}
