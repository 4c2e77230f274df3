//! Setting a pattern out: arcs to strike, offsets to measure, the land left between holes.

use measure::{Kind, Length, Ratio, Standing};

use super::Point;

/// The distances to strike as arcs from two datums.
#[must_use]
pub fn arcs(from: &[Point; 2], to: &Point) -> [Length; 2] {
    [from[0].distance(to), from[1].distance(to)]
}

/// Along the line from the first datum to the second, and across it (to the left is above nothing).
///
/// # Units
/// Metres.
#[must_use]
pub fn offsets(from: &[Point; 2], to: &Point) -> [Length; 2] {
    let base = from[0].distance(&from[1]);
    let (ux, uy) = (
        (&from[1].x - &from[0].x) / &base,
        (&from[1].y - &from[0].y) / &base,
    );
    let (dx, dy) = (&to.x - &from[0].x, &to.y - &from[0].y);
    let along = (&dx * &ux + &dy * &uy).of_kind(Kind::Length);
    let across = (&dy * &ux - &dx * &uy).of_kind(Kind::Length);
    [along, across]
}

/// The angle at which two arcs cross at a point, in radians: near nothing or half a turn they place it badly.
#[must_use]
pub fn swing(from: &[Point; 2], to: &Point) -> Ratio {
    let direction = |datum: &Point| {
        let (dx, dy) = (&to.x - &datum.x, &to.y - &datum.y);
        Ratio::tabled("direction", &[&dx, &dy], |d| d[1].atan2(d[0]))
    };
    (direction(&from[0]) - direction(&from[1]))
        .abs()
        .of_kind(Kind::Angle)
}

/// The metal left between two round holes, or a hole and an edge.
#[derive(Debug, Clone)]
pub struct Land {
    /// How much is left.
    pub left: Length,
    /// How that stands to the minimum.
    pub verdict: LandVerdict,
}

/// How a land stands to its minimum.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LandVerdict {
    /// Enough.
    Enough,
    /// Within the ± of the minimum: measure better or move it.
    Doubtful,
    /// Less than the minimum.
    Short,
    /// The two run into each other.
    Clash,
}

/// The land between two round features (or a feature and a point of an edge with no diameter) against a minimum.
///
/// # Units
/// Metres.
#[must_use]
pub fn land(a: (&Point, &Length), b: (&Point, &Length), least: &Length) -> Land {
    let left = (a.0.distance(b.0) - a.1 / 2.0 - b.1 / 2.0).of_kind(Kind::Length);
    judged(left, least)
}

/// What is left, judged against the least that may be.
#[must_use]
pub fn judged(left: Length, least: &Length) -> Land {
    let verdict = if left.value() <= 0.0 {
        LandVerdict::Clash
    } else {
        match left.standing(least) {
            Standing::Above => LandVerdict::Enough,
            Standing::Below => LandVerdict::Short,
            Standing::TooCloseToCall if left.value() == least.value() => LandVerdict::Enough,
            Standing::TooCloseToCall => LandVerdict::Doubtful,
        }
    };
    Land { left, verdict }
}
