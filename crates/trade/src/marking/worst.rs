//! How far off a hole can come, and how far off its part lets it be.

use measure::{Held, Kind, Length, Source};

use super::{Point, error_ellipse};

static ISO_273: Source = Source {
    title: "ISO 273:1979, Fasteners: clearance holes for bolts and screws",
    place: "table; fine, medium and coarse series; quoted by NBK, technical article 20, diameter of clearance holes (2015)",
    held: Held::Seen,
};

/// Thread, and the clearance holes of the fine, medium and coarse series; millimetres.
const CLEARANCE: [[f64; 4]; 11] = [
    [3.0, 3.2, 3.4, 3.6],
    [4.0, 4.3, 4.5, 4.8],
    [5.0, 5.3, 5.5, 5.8],
    [6.0, 6.4, 6.6, 7.0],
    [8.0, 8.4, 9.0, 10.0],
    [10.0, 10.5, 11.0, 12.0],
    [12.0, 13.0, 13.5, 14.5],
    [14.0, 15.0, 15.5, 16.5],
    [16.0, 17.0, 17.5, 18.5],
    [20.0, 21.0, 22.0, 24.0],
    [24.0, 25.0, 26.0, 28.0],
];

/// A series of clearance holes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Series {
    /// Fine.
    Fine = 1,
    /// Medium, which is usual.
    Medium,
    /// Coarse.
    Coarse,
}

/// The clearance hole for a metric bolt, where the standard has one.
///
/// # Units
/// Metres.
///
/// # Source
/// ISO 273:1979.
#[must_use]
pub fn clearance_hole(bolt: &Length, series: Series) -> Option<Length> {
    let row = CLEARANCE
        .iter()
        .find(|row| (row[0] / 1000.0 - bolt.value()).abs() < 1e-6)?;
    Some(Length::exact(row[series as usize] / 1000.0).cited(&ISO_273))
}

/// The metric bolt that a round hole is the clearance hole of, in any series.
///
/// # Source
/// ISO 273:1979.
#[must_use]
pub fn bolt_through(hole: &Length) -> Option<Length> {
    let at = |row: &&[f64; 4]| {
        row[1..]
            .iter()
            .any(|size| (size / 1000.0 - hole.value()).abs() < 1e-6)
    };
    let row = CLEARANCE.iter().find(at)?;
    Some(Length::exact(row[0] / 1000.0).cited(&ISO_273))
}

/// How far off its place a hole may lie and its bolt still pass, where the bolt's own place is right: (d_h - d_b) / 2.
///
/// # Units
/// Metres.
///
/// # Source
/// Plane geometry: two circles, one inside the other.
#[must_use]
pub fn tolerated(hole: &Length, bolt: &Length) -> Length {
    ((hole - bolt) / 2.0).of_kind(Kind::Length)
}

/// Hundredths of a millimetre in a metre.
const PER_METRE: f64 = 1e5;

/// How far off a hole can come at worst: half the long axis of its 95 % ellipse, and the error of punching and drilling on top of
/// it, as though both fell the same way. The half axis is rounded up to a hundredth of a millimetre: finer than any punch.
///
/// # Units
/// Metres.
///
/// # Source
/// JCGM 102:2011, 6.5.2.4 for the ellipse, from memory; that errors of work are added whole is common practice, no source.
#[must_use]
pub fn worst_error(at: &Point, drilling: &Length) -> Length {
    let place = Length::exact((error_ellipse(at).long * PER_METRE).ceil() / PER_METRE)
        .of_kind(Kind::Length)
        .called("e");
    (place + drilling).of_kind(Kind::Length)
}
