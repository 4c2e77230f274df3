//! Discs and plates that close the old holes.

use measure::{Area, Held, Kind, Length, Source, Traced};

use super::shape::outline_of;
use super::{Form, Shape};
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

/// A plate that closes a hole of any shape.
#[derive(Debug, Clone)]
pub struct Plate {
    /// The sheet metal in it.
    pub sheet: Area,
    /// The edge to weld: along the middle of the gap.
    pub weld: Length,
}

/// The plate for a hole of any shape, less the weld gap all round. Its outline is that of [`Shape::offset`] by the gap inwards.
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::OutOfRange`] where the gap leaves no plate, or for what is no hole.
///
/// # Source
/// Plane geometry: the surveyor's rule with the segments of arcs.
pub fn plate(hole: &Shape, gap: &Length) -> Result<Plate, TradeError> {
    let form = hole.form();
    let inputs: Vec<&dyn Traced> = std::iter::once(gap as &dyn Traced)
        .chain(hole.sizes().iter().map(|size| size as &dyn Traced))
        .collect();
    let sheet = Area::tabled("area inside the gap", &inputs, move |n| {
        outline_of(form, &n[1..], -n[0]).map_or(f64::NAN, |outline| outline.area_m2())
    });
    if !hole.is_cut() || sheet.value().is_nan() {
        return Err(TradeError::OutOfRange {
            entry: "weld gap",
            lowest: 0.0,
            highest: f64::INFINITY,
        });
    }
    let weld = Length::tabled("edge along the middle of the gap", &inputs, move |n| {
        outline_of(form, &n[1..], -0.5 * n[0]).map_or(f64::NAN, |outline| outline.length_m())
    });
    Ok(Plate {
        sheet: sheet.of_kind(Kind::Section).cited(&DISC),
        weld: weld.of_kind(Kind::Length).cited(&DISC),
    })
}

/// Whether the piece that is cut from one side's new hole closes an old hole of the other side.
#[derive(Debug, Clone)]
pub enum Swap {
    /// It fills the hole, with this gap all round at the widest.
    Fills(Length),
    /// It fits once its edge is dressed: this gap at the narrowest is less than the weld wants.
    Dress(Length),
    /// It is larger than the hole by more than dressing takes off: at the narrowest the gap is this far below nothing.
    TooLarge(Length),
    /// The kerf has made it too small: this gap at the widest is more than can be welded.
    TooSmall(Length),
    /// The two are not of one kind, so it would have to be cut anew.
    NotAlike,
}

/// What the dressing of an edge takes off a piece all round at most, metres. Common practice, no source.
const DRESSED_M: f64 = 0.001;

/// The swap of a piece against a hole: how wide the gap is all round, (hole - piece) / 2 + kerf, against the gap that the weld
/// wants and the widest that can be welded.
///
/// # Units
/// Metres; the kerf is the whole width of the cut, which lies inside the new hole.
///
/// # Source
/// Plane geometry; that a piece is smaller than the hole it came from is common practice, no source.
#[must_use]
pub fn swap(
    piece_from: &Shape,
    kerf: &Length,
    hole: &Shape,
    gap: &Length,
    widest: &Length,
) -> Swap {
    let (form, sizes) = (hole.form(), hole.sizes());
    let same_count = sizes.len() == piece_from.sizes().len();
    if piece_from.form() != form || !hole.is_cut() || !same_count {
        return Swap::NotAlike;
    }
    // A radius of corners makes no gap at the sides; corners of a free outline must be the same.
    let pairs = sizes.iter().zip(piece_from.sizes());
    let gaps: Vec<Length> = if form == Form::Free {
        if pairs
            .into_iter()
            .any(|(a, b)| (a.value() - b.value()).abs() > 1e-6)
        {
            return Swap::NotAlike;
        }
        vec![kerf.clone()]
    } else {
        pairs
            .take(2)
            .map(|(a, b)| ((a - b) / 2.0 + kerf).of_kind(Kind::Length))
            .collect()
    };
    let by = |a: &&Length, b: &&Length| a.value().total_cmp(&b.value());
    let (Some(least), Some(most)) = (gaps.iter().min_by(by), gaps.iter().max_by(by)) else {
        return Swap::NotAlike;
    };
    if most.value() > widest.value() {
        Swap::TooSmall(most.clone())
    } else if least.value() < gap.value() - DRESSED_M {
        Swap::TooLarge(least.clone())
    } else if least.value() < gap.value() {
        Swap::Dress(least.clone())
    } else {
        Swap::Fills(most.clone())
    }
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
