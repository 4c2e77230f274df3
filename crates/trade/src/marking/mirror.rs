//! Mirroring about the vehicle's centre line, found from pairs of points that lie alike on both sides.

use measure::{Held, Kind, Length, Ratio, Source, Table, Traced};

use super::Point;
use crate::TradeError;

static REFLECTION: Source = Source {
    title: "Plane geometry: reflection in a line",
    place: "p' = p - 2 (n·p - c) n",
    held: Held::Computed,
};

/// A line to mirror in: all points whose distance along the normal is `offset`.
#[derive(Debug, Clone)]
pub struct MirrorLine {
    /// From the x axis to the normal of the line, radians.
    pub normal: Ratio,
    /// How far the line lies from the origin along its normal.
    pub offset: Length,
    /// What remains at each pair: how far the mirrored point lies from its partner.
    pub residuals: Vec<Length>,
}

impl MirrorLine {
    /// The line through two points.
    ///
    /// # Errors
    /// [`TradeError::Undetermined`] where the two coincide.
    pub fn through(a: &Point, b: &Point) -> Result<Self, TradeError> {
        if a.distance(b).value() <= 1e-6 {
            return Err(TradeError::Undetermined {
                entry: "centre line",
            });
        }
        let (dx, dy) = (&b.x - &a.x, &b.y - &a.y);
        let normal = Ratio::tabled("direction of the normal", &[&dx, &dy], |d| {
            d[0].atan2(-d[1])
        });
        let offset = &a.x * normal.cos() + &a.y * normal.sin();
        Ok(Self {
            normal: normal.of_kind(Kind::Angle),
            offset,
            residuals: Vec::new(),
        })
    }
}

/// The line in which the left points come nearest to the right ones when mirrored, by least squares over all pairs.
///
/// # Units
/// Metres, radians.
///
/// # Valid range
/// Two pairs or more; one pair is mirrored in its own bisector, and nothing checks it.
///
/// # Errors
/// [`TradeError::Undetermined`] without a pair, or with a pair whose points coincide.
///
/// # Source
/// Plane geometry; least squares as JCGM 100:2008, H.3.
pub fn mirror_line(pairs: &[(Point, Point)]) -> Result<MirrorLine, TradeError> {
    if pairs.is_empty() || pairs.iter().any(|(a, b)| a.distance(b).value() <= 1e-6) {
        return Err(TradeError::Undetermined {
            entry: "pairs of points",
        });
    }
    let inputs: Vec<&dyn Traced> = pairs
        .iter()
        .flat_map(|(a, b)| {
            [
                &a.x as &dyn Traced,
                &a.y as &dyn Traced,
                &b.x as &dyn Traced,
                &b.y as &dyn Traced,
            ]
        })
        .collect();
    let table = Table::new("centre line by least squares", &inputs, best_line);
    let mut line = MirrorLine {
        normal: table
            .output::<measure::NoDim>(0)
            .of_kind(Kind::Angle)
            .cited(&REFLECTION),
        offset: table.output(1).of_kind(Kind::Length).cited(&REFLECTION),
        residuals: Vec::new(),
    };
    line.residuals = pairs
        .iter()
        .map(|(a, b)| mirrored(a, &line).distance(b))
        .collect();
    Ok(line)
}

/// A point mirrored in a line: p' = p - 2 (n·p - c) n.
///
/// # Source
/// Plane geometry.
#[must_use]
pub fn mirrored(point: &Point, line: &MirrorLine) -> Point {
    let (nx, ny) = (line.normal.cos(), line.normal.sin());
    let over = (&point.x * &nx + &point.y * &ny - &line.offset) * 2.0;
    Point {
        x: (&point.x - &over * &nx)
            .of_kind(Kind::Length)
            .cited(&REFLECTION),
        y: (&point.y - &over * &ny)
            .of_kind(Kind::Length)
            .cited(&REFLECTION),
    }
}

/// The line goes through the mean of the middles, and the best direction of its normal n has the least Σ (n·a)(n·b) of the points
/// less that mean: a reflection keeps lengths, so that only this is left of the squares.
fn best_line(numbers: &[f64]) -> Vec<f64> {
    let pairs = || numbers.chunks_exact(4);
    let mean = |i: usize| {
        let sum: f64 = pairs().map(|n| n[i] + n[i + 2]).sum();
        sum / (2 * pairs().count()) as f64
    };
    let (x, y) = (mean(0), mean(1));
    let (mut along, mut both) = (0.0, 0.0);
    let (mut nx, mut ny) = (0.0, 0.0);
    for n in pairs() {
        let [ax, ay, bx, by] = [n[0] - x, n[1] - y, n[2] - x, n[3] - y];
        along += ax * bx - ay * by;
        both += ax * by + ay * bx;
        (nx, ny) = (nx + bx - ax, ny + by - ay);
    }
    let normal = 0.5 * (-both).atan2(-along);
    // Of the two ways that the normal can point, the one from the first points to their partners.
    let normal = if normal.cos() * nx + normal.sin() * ny < 0.0 {
        normal + std::f64::consts::PI
    } else {
        normal
    };
    let normal = normal.sin().atan2(normal.cos());
    vec![normal, x * normal.cos() + y * normal.sin()]
}
