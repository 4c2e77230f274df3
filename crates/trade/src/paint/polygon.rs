//! A panel traced corner by corner.

use measure::{Area, Kind, Length, Traced};

use super::sources::GEOMETRY;
use crate::TradeError;

/// The corners of a traced outline, in order, either way round; the last joins the first.
#[derive(Debug, Clone)]
pub struct Corners(Vec<(Length, Length)>);

impl Corners {
    /// Takes the corners of an outline.
    ///
    /// # Errors
    /// [`TradeError::TooFew`] below three corners, [`TradeError::OutlineCrosses`] where two edges cross or touch.
    pub fn new(corners: Vec<(Length, Length)>) -> Result<Self, TradeError> {
        if corners.len() < 3 {
            return Err(TradeError::TooFew {
                entry: "corners",
                least: 3,
            });
        }
        let points: Vec<_> = corners
            .iter()
            .map(|(x, y)| [x.value(), y.value()])
            .collect();
        match outline_crosses(&points) {
            Some((first, second)) => Err(TradeError::OutlineCrosses { first, second }),
            None => Ok(Self(corners)),
        }
    }

    /// The area inside a traced outline.
    ///
    /// `A = |Σ (x_i y_(i+1) - x_(i+1) y_i)| / 2`
    ///
    /// # Units
    /// Lengths in, area out.
    /// # Valid range
    /// An outline that does not cross itself.
    /// # Source
    /// Geometry (the surveyor's rule).
    #[must_use]
    pub fn area(&self) -> Area {
        let inputs: Vec<&dyn Traced> = self
            .0
            .iter()
            .flat_map(|(x, y)| [x as &dyn Traced, y as &dyn Traced])
            .collect();
        Area::tabled("A_corners", &inputs, |flat| {
            let corner = |i: usize| (flat[2 * i], flat[2 * i + 1]);
            let count = flat.len() / 2;
            let twice: f64 = (0..count)
                .map(|i| (corner(i), corner((i + 1) % count)))
                .map(|((x0, y0), (x1, y1))| x0 * y1 - x1 * y0)
                .sum();
            twice.abs() / 2.0
        })
        .called("A")
        .of_kind(Kind::Area)
        .cited(&GEOMETRY)
    }
}

/// The first two edges of an outline that cross or touch, by their places in it; edge 0 runs from the first corner to the second. A
/// corner given twice in a row is one corner.
#[must_use]
pub fn outline_crosses(points: &[[f64; 2]]) -> Option<(usize, usize)> {
    let edge = |i: usize| (points[i], points[(i + 1) % points.len()]);
    let mut edges: Vec<usize> = (0..points.len()).collect();
    edges.retain(|&i| edge(i).0 != edge(i).1);
    for (at, &first) in edges.iter().enumerate() {
        for (ahead, &second) in edges.iter().enumerate().skip(at + 2) {
            let neighbours = at == 0 && ahead == edges.len() - 1;
            if !neighbours && edges_meet(edge(first), edge(second)) {
                return Some((first, second));
            }
        }
    }
    None
}

type Edge = ([f64; 2], [f64; 2]);

/// Whether two edges have a point in common: neither lies wholly beside the line of the other, nor beyond its ends.
fn edges_meet((a, b): Edge, (c, d): Edge) -> bool {
    let side = |p: [f64; 2], q: [f64; 2], r: [f64; 2]| {
        (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
    };
    let level = |i: usize| a[i].max(b[i]) >= c[i].min(d[i]) && c[i].max(d[i]) >= a[i].min(b[i]);
    level(0)
        && level(1)
        && side(a, b, c) * side(a, b, d) <= 0.0
        && side(c, d, a) * side(c, d, b) <= 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn corners(points: &[(f64, f64)]) -> Result<Corners, TradeError> {
        Corners::new(
            points
                .iter()
                .map(|&(x, y)| (Length::exact(x), Length::exact(y)))
                .collect(),
        )
    }

    #[test]
    fn either_way_round_gives_the_same_area() {
        let there = corners(&[(0.0, 0.0), (4.0, 0.0), (4.0, 3.0)])
            .unwrap()
            .area();
        let back = corners(&[(4.0, 3.0), (4.0, 0.0), (0.0, 0.0)])
            .unwrap()
            .area();
        assert_eq!((there.value(), back.value()), (6.0, 6.0));
    }

    #[test]
    fn an_outline_that_crosses_itself_is_refused() {
        let bow = corners(&[(0.0, 0.0), (1.0, 1.0), (1.0, 0.0), (0.0, 1.0)]);
        assert_eq!(
            bow.err(),
            Some(TradeError::OutlineCrosses {
                first: 0,
                second: 2
            })
        );
    }

    #[test]
    fn an_outline_that_crosses_itself_in_one_of_its_corners_is_refused() {
        // A bow whose knot is a corner, and one whose knot is named on both ways through it: no area is left of either.
        let (a, b) = ((0.0, 0.0), (1.0, 1.0));
        for bow in [
            vec![a, b, (2.0, 2.0), (2.0, 0.0), (0.0, 2.0)],
            vec![a, b, (2.0, 2.0), (2.0, 0.0), b, (0.0, 2.0)],
        ] {
            let refused = corners(&bow);
            assert!(matches!(refused, Err(TradeError::OutlineCrosses { .. })));
        }
    }

    #[test]
    fn a_corner_between_two_in_line_and_the_first_one_named_again_at_the_end_are_no_fault() {
        let panel = [(0.0, 0.0), (2.0, 0.0), (4.0, 0.0), (4.0, 3.0), (0.0, 3.0)];
        assert_eq!(corners(&panel).unwrap().area().value(), 12.0);
        let closed = [&panel[..], &panel[..1]].concat();
        assert_eq!(corners(&closed).unwrap().area().value(), 12.0);
    }

    #[test]
    fn two_corners_are_too_few() {
        let few = corners(&[(0.0, 0.0), (1.0, 1.0)]);
        assert_eq!(
            few.err(),
            Some(TradeError::TooFew {
                entry: "corners",
                least: 3
            })
        );
    }
}
