//! The datums of a side, placed from the distances between them.

use measure::{Held, Kind, Length, Source, Table};

use super::Point;
use super::fix::deviation_m;
use super::normal::{settle, solve};
use crate::TradeError;

/// Which side of the datum line, as one looks from the first datum to the second.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// To the left: y above nothing.
    Left,
    /// To the right: y below nothing.
    Right,
}

impl Side {
    /// 1 to the left, -1 to the right.
    #[must_use]
    pub fn sign(self) -> f64 {
        match self {
            Self::Left => 1.0,
            Self::Right => -1.0,
        }
    }
}

pub(super) static TWO_CIRCLES: Source = Source {
    title: "Plane trigonometry: two sides and the base fix a triangle",
    place: "law of cosines",
    held: Held::Computed,
};

/// Where two circles meet, to the given side of the line between their centres:
/// a = (r₁² - r₂² + d²)/(2d), h = sqrt(r₁² - a²).
pub(super) fn meeting(
    one: [f64; 2],
    r1: f64,
    two: [f64; 2],
    r2: f64,
    side: f64,
) -> Option<[f64; 2]> {
    let (dx, dy) = (two[0] - one[0], two[1] - one[1]);
    let d = dx.hypot(dy);
    let a = (r1 * r1 - r2 * r2 + d * d) / (2.0 * d);
    let h2 = r1 * r1 - a * a;
    // Circles that just fail to meet touch, as far as a first guess goes; how far they fail is judged elsewhere.
    let h = side * h2.max(0.0).sqrt();
    let at = [
        one[0] + (a * dx - h * dy) / d,
        one[1] + (a * dy + h * dx) / d,
    ];
    at.iter().all(|v| v.is_finite()).then_some(at)
}

/// Datums placed from the distances between them: the first at the origin, the second on the x axis, every further one
/// by its distances to those two, with the side asked, and by any further distances, by least squares.
///
/// `distances` names two datums and how far apart they are; `sides` gives the side of the third and further datums.
///
/// # Units
/// Lengths in metres.
///
/// # Errors
/// [`TradeError::Undetermined`] where a datum lacks a distance to the first or the second;
/// [`TradeError::CannotMeet`] where three distances make no triangle.
///
/// # Source
/// Law of cosines.
pub fn frame(
    sides: &[Side],
    distances: &[(usize, usize, Length)],
) -> Result<Vec<Point>, TradeError> {
    let count = sides.len() + 2;
    let known = |i: usize, j: usize| {
        let pair = distances
            .iter()
            .position(|(a, b, _)| (*a, *b) == (i, j) || (*a, *b) == (j, i));
        pair.ok_or(TradeError::Undetermined {
            entry: "distance between datums",
        })
    };
    let base = distances[known(0, 1)?].2.clone();
    if base.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "distance between datums",
            lowest: 0.0,
            highest: 100.0,
        });
    }
    for third in 2..count {
        let (a, b) = (
            &distances[known(0, third)?].2,
            &distances[known(1, third)?].2,
        );
        meets(&base, a, b)?;
    }
    if count == 2 {
        return Ok(vec![
            Point::exact(0.0, 0.0),
            Point {
                x: base,
                y: Length::exact(0.0),
            },
        ]);
    }
    let pairs: Vec<(usize, usize)> = distances.iter().map(|(a, b, _)| (*a, *b)).collect();
    let weights: Vec<f64> = distances.iter().map(|(_, _, d)| weight(d)).collect();
    let signs: Vec<f64> = sides.iter().map(|side| side.sign()).collect();
    let inputs: Vec<&dyn measure::Traced> = distances
        .iter()
        .map(|(_, _, d)| d as &dyn measure::Traced)
        .collect();
    let name = "datums by least squares";
    let lengths: Vec<f64> = distances.iter().map(|(_, _, d)| d.value()).collect();
    let at = placed(&signs, &pairs, &weights, &lengths);
    let slopes = match count {
        3 => slopes::<3>(&at, &pairs, &weights, &lengths),
        4 => slopes::<5>(&at, &pairs, &weights, &lengths),
        _ => None,
    };
    let table = match slopes {
        Some(slopes) => Table::known(name, &inputs, at, slopes),
        None => Table::new(name, &inputs, move |lengths| {
            placed(&signs, &pairs, &weights, lengths)
        }),
    };
    let coordinate = |i: usize| table.output(i).of_kind(Kind::Length).cited(&TWO_CIRCLES);
    let mut points = vec![
        Point::exact(0.0, 0.0),
        Point {
            x: coordinate(0),
            y: Length::exact(0.0),
        },
    ];
    points.extend((0..sides.len()).map(|i| Point {
        x: coordinate(1 + 2 * i),
        y: coordinate(2 + 2 * i),
    }));
    Ok(points)
}

/// A reading's weight: one over its standard deviation squared (k = 2), with a floor for readings called exact.
pub(super) fn weight(length: &Length) -> f64 {
    deviation_m(length).max(1e-6).powi(-2)
}

/// Three lengths must make a triangle, within what their ± allows.
pub(super) fn meets(base: &Length, a: &Length, b: &Length) -> Result<(), TradeError> {
    let longest =
        Length::greatest_of(&[("base", base.clone()), ("a", a.clone()), ("b", b.clone())]);
    let gap = &longest * 2.0 - (base + a + b);
    // Up to twice the ± of the gap is taken for error of measurement; beyond it the readings contradict each other.
    if gap.value() > 0.0 && gap.value() > 2.0 * gap.minus() {
        return Err(TradeError::CannotMeet { gap: gap.value() });
    }
    Ok(())
}

/// The x of the second datum, then x and y of each further one, alternately refined until nothing moves.
fn placed(signs: &[f64], pairs: &[(usize, usize)], weights: &[f64], lengths: &[f64]) -> Vec<f64> {
    let length = |i: usize, j: usize| {
        let pair = pairs
            .iter()
            .position(|(a, b)| (*a, *b) == (i, j) || (*a, *b) == (j, i));
        pair.map_or(f64::NAN, |pair| lengths[pair])
    };
    let base = length(0, 1);
    let mut at: Vec<[f64; 2]> = vec![[0.0, 0.0], [base, 0.0]];
    for (i, sign) in signs.iter().enumerate() {
        let third = i + 2;
        let met = meeting(at[0], length(0, third), at[1], length(1, third), *sign);
        at.push(met.unwrap_or([f64::NAN; 2]));
    }
    // With no spare distance the triangles are the answer.
    if pairs.len() > 1 + 2 * signs.len() {
        if let [_, _, c, d] = at[..] {
            at = four(base, c, d, pairs, weights, lengths).unwrap_or(at);
        } else {
            refine(&mut at, pairs, weights, lengths);
        }
    }
    let mut out = vec![at[1][0]];
    out.extend(at[2..].iter().flatten());
    out
}

/// The datums of a place: the first lies at the origin, the second on the x axis.
fn points(x: &[f64]) -> Vec<[f64; 2]> {
    let mut at = vec![[0.0, 0.0], [x[0], 0.0]];
    at.extend(x[1..].chunks_exact(2).map(|x| [x[0], x[1]]));
    at
}

/// A distance as the datums give it, its slopes by their coordinates, and the same across the way between them.
fn stretch<const N: usize>(at: &[[f64; 2]], (a, b): (usize, usize)) -> (f64, [f64; N], [f64; N]) {
    let (dx, dy) = (at[b][0] - at[a][0], at[b][1] - at[a][1]);
    let far = dx.hypot(dy).max(1e-9);
    let (mut along, mut across) = ([0.0; N], [0.0; N]);
    for (datum, sign) in [(b, 1.0 / far), (a, -1.0 / far)] {
        match datum {
            0 => {}
            1 => (along[0], across[0]) = (along[0] + sign * dx, across[0] - sign * dy),
            _ => {
                let x = 2 * datum - 3;
                (along[x], across[x]) = (sign * dx, -sign * dy);
                (along[x + 1], across[x + 1]) = (sign * dy, sign * dx);
            }
        }
    }
    (far, along, across)
}

/// Four datums with all their distances: the five unknowns at once.
fn four(
    base: f64,
    c: [f64; 2],
    d: [f64; 2],
    pairs: &[(usize, usize)],
    weights: &[f64],
    lengths: &[f64],
) -> Option<Vec<[f64; 2]>> {
    let rows = |x: &[f64; 5]| {
        let at = points(x);
        let with = pairs.iter().zip(weights).zip(lengths);
        with.map(|((pair, weight), length)| {
            let (far, along, _) = stretch(&at, *pair);
            (along, far - length, *weight)
        })
        .collect::<Vec<_>>()
    };
    let x = settle([base, c[0], c[1], d[0], d[1]], rows)?;
    Some(points(&x))
}

/// Slopes of the unknowns by every distance, which keep the slope of the squares at nothing (the theorem on implicit functions): the
/// second derivative of a distance d is that of a circle, one over d across the way.
fn slopes<const N: usize>(
    x: &[f64],
    pairs: &[(usize, usize)],
    weights: &[f64],
    lengths: &[f64],
) -> Option<Vec<f64>> {
    let at = points(x);
    let mut whole = [[0.0; N]; N];
    let mut steep = Vec::new();
    for ((pair, weight), length) in pairs.iter().zip(weights).zip(lengths) {
        let (far, along, across) = stretch::<N>(&at, *pair);
        let bend = (far - length) / far;
        for i in 0..N {
            for j in 0..N {
                whole[i][j] += weight * (along[i] * along[j] + bend * across[i] * across[j]);
            }
        }
        steep.push(along.map(|slope| weight * slope));
    }
    let mut slopes = Vec::with_capacity(N * steep.len());
    for steep in steep {
        slopes.extend(solve(whole, steep)?);
    }
    Some(slopes)
}

/// One datum after another, the others held, a few hundred times: slow, plain, and sure to come down.
fn refine(at: &mut [[f64; 2]], pairs: &[(usize, usize)], weights: &[f64], lengths: &[f64]) {
    for _ in 0..400 {
        let mut moved = 0.0_f64;
        for which in 1..at.len() {
            let fixed: Vec<[f64; 2]> = at.to_vec();
            let rows = |x: &[f64; 2]| {
                let near = pairs.iter().zip(weights).zip(lengths);
                near.filter(|(((a, b), _), _)| *a == which || *b == which)
                    .map(|(((a, b), weight), length)| {
                        let other = fixed[if *a == which { *b } else { *a }];
                        let (dx, dy) = (x[0] - other[0], x[1] - other[1]);
                        let d = dx.hypot(dy);
                        ([dx / d, dy / d], d - length, *weight)
                    })
                    .collect::<Vec<_>>()
            };
            let next = if which == 1 {
                // The second datum stays on the axis.
                let along = |x: &[f64; 1]| {
                    rows(&[x[0], 0.0])
                        .into_iter()
                        .map(|(s, r, w)| ([s[0]], r, w))
                        .collect::<Vec<_>>()
                };
                settle([fixed[1][0]], along).map(|x| [x[0], 0.0])
            } else {
                settle(fixed[which], rows)
            };
            if let Some(next) = next {
                moved = moved.max((next[0] - at[which][0]).hypot(next[1] - at[which][1]));
                at[which] = next;
            }
        }
        if moved < 1e-12 {
            break;
        }
    }
}
