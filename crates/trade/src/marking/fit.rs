//! The best rigid fit of one set of points on another, with or without mirroring.

use measure::{Held, Kind, Length, Ratio, Source, Table, Traced};

use super::Point;
use crate::TradeError;

static KABSCH: Source = Source {
    title: "W. Kabsch, A solution for the best rotation to relate two sets of vectors, Acta Cryst. A32 (1976)",
    place: "p. 922, in the plane; the sign of the determinant is asked, not found",
    held: Held::Memory,
};

/// A rigid move in the plane: mirrored in the x axis first where asked, then turned, then shifted.
#[derive(Debug, Clone)]
pub struct Move {
    /// Whether y changes sign first.
    pub mirrored: bool,
    /// The turn, anticlockwise, radians.
    pub turn: Ratio,
    /// The shift along x.
    pub dx: Length,
    /// The shift along y.
    pub dy: Length,
}

impl Move {
    /// A shift alone.
    #[must_use]
    pub fn shift(dx: Length, dy: Length) -> Self {
        Self {
            mirrored: false,
            turn: Ratio::exact(0.0),
            dx,
            dy,
        }
    }

    /// Where the move takes a point.
    #[must_use]
    pub fn of(&self, point: &Point) -> Point {
        let point = if self.mirrored {
            Point {
                x: point.x.clone(),
                y: -&point.y,
            }
        } else {
            point.clone()
        };
        point.turned(&self.turn).shifted(&self.dx, &self.dy)
    }
}

/// A fit and how well it fits.
#[derive(Debug, Clone)]
pub struct Fit {
    /// The move.
    pub by: Move,
    /// What remains at each pair: how far the moved point lies from its partner.
    pub residuals: Vec<Length>,
    /// The root of the mean square of what remains, metres.
    pub rms: f64,
}

/// The rigid move of `from` that comes nearest to `to`, pair by pair, in the sense of least squares.
///
/// turn = atan2(Σ(p × q), Σ(p · q)) of the points less their means; the shift takes mean to mean.
/// A mirrored fit mirrors `from` in the x axis first; a plain fit never mirrors, however well that would fit.
///
/// # Units
/// Metres, radians.
///
/// # Valid range
/// Two pairs or more that do not all coincide.
///
/// # Errors
/// [`TradeError::Undetermined`] with fewer than two pairs, or all points in one place.
///
/// # Source
/// Kabsch (1976), in the plane.
pub fn rigid_fit(from: &[Point], to: &[Point], mirrored: bool) -> Result<Fit, TradeError> {
    let pairs = from.len().min(to.len());
    let spread = |points: &[Point]| {
        points[..pairs]
            .iter()
            .any(|p| points[0].distance(p).value() > 1e-6)
    };
    if pairs < 2 || !spread(from) || !spread(to) {
        return Err(TradeError::Undetermined {
            entry: "pairs of points",
        });
    }
    let inputs: Vec<&dyn Traced> = from[..pairs]
        .iter()
        .chain(&to[..pairs])
        .flat_map(|point| [&point.x as &dyn Traced, &point.y as &dyn Traced])
        .collect();
    let table = Table::new("rigid fit by least squares", &inputs, move |numbers| {
        turn_and_shift(numbers, pairs, mirrored)
    });
    let by = Move {
        mirrored,
        turn: table
            .output::<measure::NoDim>(0)
            .of_kind(Kind::Angle)
            .cited(&KABSCH),
        dx: table.output(1).of_kind(Kind::Length).cited(&KABSCH),
        dy: table.output(2).of_kind(Kind::Length).cited(&KABSCH),
    };
    let residuals: Vec<Length> = from[..pairs]
        .iter()
        .zip(to)
        .map(|(p, q)| by.of(p).distance(q))
        .collect();
    let mean = residuals.iter().map(|r| r.value().powi(2)).sum::<f64>() / pairs as f64;
    Ok(Fit {
        by,
        residuals,
        rms: mean.sqrt(),
    })
}

fn turn_and_shift(numbers: &[f64], pairs: usize, mirrored: bool) -> Vec<f64> {
    let sign = if mirrored { -1.0 } else { 1.0 };
    let from: Vec<[f64; 2]> = (0..pairs)
        .map(|i| [numbers[2 * i], sign * numbers[2 * i + 1]])
        .collect();
    let to: Vec<[f64; 2]> = (pairs..2 * pairs)
        .map(|i| [numbers[2 * i], numbers[2 * i + 1]])
        .collect();
    let (p, q) = (mean(&from), mean(&to));
    let (mut dot, mut cross) = (0.0, 0.0);
    for (a, b) in from.iter().zip(&to) {
        let (ax, ay, bx, by) = (a[0] - p[0], a[1] - p[1], b[0] - q[0], b[1] - q[1]);
        dot += ax * bx + ay * by;
        cross += ax * by - ay * bx;
    }
    let turn = cross.atan2(dot);
    let (sin, cos) = turn.sin_cos();
    vec![
        turn,
        q[0] - (cos * p[0] - sin * p[1]),
        q[1] - (sin * p[0] + cos * p[1]),
    ]
}

fn mean(points: &[[f64; 2]]) -> [f64; 2] {
    let n = points.len() as f64;
    [
        points.iter().map(|p| p[0]).sum::<f64>() / n,
        points.iter().map(|p| p[1]).sum::<f64>() / n,
    ]
}
