//! From what the tape reads to the hole's centre: edges, slanted tubes, curved panels, circles through three points.

use measure::{Held, Kind, Length, Ratio, Source};

use super::Point;
use crate::TradeError;

static CIRCLE_GEOMETRY: Source = Source {
    title: "Plane geometry of the circle",
    place: "chord, sagitta and arc",
    held: Held::Computed,
};

static SLANTED: Source = Source {
    title: "Solid geometry: a round tube through a plate at an angle",
    place: "long axis d / cos a + t tan a",
    held: Held::Computed,
};

/// What a tape reading runs between.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reach {
    /// Centre to centre.
    Centres,
    /// Between the edges that face each other: inside.
    Inside,
    /// Between the edges that face away: outside.
    Outside,
    /// From the datum's centre to the near edge of the hole.
    NearEdge,
    /// From the datum's centre to the far edge of the hole.
    FarEdge,
    /// Left edge to left edge, or right to right: the radii differ.
    SameEdges,
}

/// The distance from centre to centre behind a tape reading.
///
/// Inside adds both radii, outside takes both away; a near edge adds the hole's own, a far edge takes it away;
/// like edges add half the difference of the diameters, hole less datum, when both are read at the edge nearer the datum.
///
/// # Units
/// Metres.
///
/// # Source
/// Plane geometry.
#[must_use]
pub fn centre_distance(reading: &Length, reach: Reach, datum: &Length, hole: &Length) -> Length {
    match reach {
        Reach::Centres => reading.clone(),
        Reach::Inside => reading + datum / 2.0 + hole / 2.0,
        Reach::Outside => reading - datum / 2.0 - hole / 2.0,
        Reach::NearEdge => reading + hole / 2.0,
        Reach::FarEdge => reading - hole / 2.0,
        Reach::SameEdges => reading + hole / 2.0 - datum / 2.0,
    }
}

/// The long axis of the hole that a round tube needs where it passes a plate at an angle from square:
/// d / cos a + t tan a.
///
/// # Units
/// Metres, radians.
///
/// # Valid range
/// 0 to 75 degrees from square.
///
/// # Errors
/// [`TradeError::OutOfRange`] beyond it.
///
/// # Source
/// Solid geometry.
pub fn slanted_length(tube: &Length, sheet: &Length, angle: &Ratio) -> Result<Length, TradeError> {
    let highest = 75_f64.to_radians();
    if !(0.0..=highest).contains(&angle.value().abs()) {
        return Err(TradeError::OutOfRange {
            entry: "slant",
            lowest: 0.0,
            highest,
        });
    }
    Ok((tube / angle.cos() + sheet * angle.abs().tan())
        .of_kind(Kind::Length)
        .cited(&SLANTED))
}

/// The straight distance between two points whose distance was taken over a curved panel: 2 r sin(s / 2r).
///
/// # Units
/// Metres.
///
/// # Source
/// Plane geometry of the circle.
#[must_use]
pub fn chord_of_arc(arc: &Length, radius: &Length) -> Length {
    (radius * (arc / (radius * 2.0)).sin() * 2.0)
        .of_kind(Kind::Length)
        .cited(&CIRCLE_GEOMETRY)
}

/// The distance over a curved panel between two points whose straight distance is known: 2 r asin(c / 2r).
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::OutOfRange`] where the chord is longer than the diameter.
///
/// # Source
/// Plane geometry of the circle.
pub fn arc_over_chord(chord: &Length, radius: &Length) -> Result<Length, TradeError> {
    if chord.value() > 2.0 * radius.value() || radius.value() <= 0.0 {
        let highest = 2.0 * radius.value();
        return Err(TradeError::OutOfRange {
            entry: "chord",
            lowest: 0.0,
            highest,
        });
    }
    Ok((radius * (chord / (radius * 2.0)).asin() * 2.0)
        .of_kind(Kind::Length)
        .cited(&CIRCLE_GEOMETRY))
}

/// A circle.
#[derive(Debug, Clone)]
pub struct Circle {
    /// Its centre.
    pub centre: Point,
    /// Its radius.
    pub radius: Length,
}

/// The circle through three points: the centre is where the bisectors of two chords meet.
///
/// # Units
/// Metres.
///
/// # Errors
/// [`TradeError::Undetermined`] where the three lie in one line.
///
/// # Source
/// Plane geometry.
pub fn circle_through(a: &Point, b: &Point, c: &Point) -> Result<Circle, TradeError> {
    let (bx, by) = (&b.x - &a.x, &b.y - &a.y);
    let (cx, cy) = (&c.x - &a.x, &c.y - &a.y);
    let twice = (&bx * &cy - &by * &cx) * 2.0;
    let longest = a.distance(b).value().max(a.distance(c).value());
    if twice.value().abs() <= 1e-6 * longest.powi(2) || longest == 0.0 {
        return Err(TradeError::Undetermined {
            entry: "three points in one line",
        });
    }
    let (b2, c2) = (bx.squared() + by.squared(), cx.squared() + cy.squared());
    let ux: Length = (&cy * &b2 - &by * &c2) / &twice;
    let uy: Length = (&bx * &c2 - &cx * &b2) / &twice;
    let radius = (ux.squared() + uy.squared())
        .sqrt()
        .of_kind(Kind::Length)
        .cited(&CIRCLE_GEOMETRY);
    Ok(Circle {
        centre: a.shifted(&ux, &uy),
        radius,
    })
}
