//! Areas: a body from its overall sizes, and panels by shape.

use std::f64::consts::PI;

use measure::{Area, Kind, Length, Ratio};

use super::sources::{BODY_BOX, GEOMETRY};
use crate::TradeError;

/// Which faces of a panel are painted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Faces {
    /// The outside only.
    #[default]
    One,
    /// Inside and outside.
    Both,
}

fn pi() -> Ratio {
    Ratio::constant("π", PI, Kind::Ratio, &GEOMETRY)
}

/// The painted outside of a body, from the box that encloses its sheet metal: two sides, two ends and the roof,
/// times the share of the box that is painted (glass, arches and lamps taken off). The floor is not counted.
///
/// `A = s (2 (L + W) H + L W)`
///
/// # Units
/// Lengths in, area out; the share is a pure number.
/// # Valid range
/// Any positive sizes. The share is a guess of the trade and should carry its ±.
/// # Source
/// Common practice; the box itself is geometry.
#[must_use]
pub fn box_area(length: &Length, width: &Length, height: &Length, share: &Ratio) -> Area {
    let sides = 2.0 * ((length + width) * height);
    let whole = (sides + length * width).called("A_box").cited(&GEOMETRY);
    (share * whole)
        .called("A_body")
        .of_kind(Kind::Area)
        .cited(&BODY_BOX)
}

/// A rectangle.
///
/// `A = a h`
///
/// # Units
/// Lengths in, area out.
/// # Source
/// Geometry.
#[must_use]
pub fn rectangle_area(length: &Length, height: &Length) -> Area {
    (length * height)
        .called("A")
        .of_kind(Kind::Area)
        .cited(&GEOMETRY)
}

/// A trapezium, from its two parallel edges and the distance between them.
///
/// `A = (a + b) / 2 h`
///
/// # Units
/// Lengths in, area out.
/// # Source
/// Geometry.
/// # Example
/// Edges 1.2 m and 0.9 m, 0.6 m apart: 0.63 m².
#[must_use]
pub fn trapezium_area(length: &Length, top: &Length, height: &Length) -> Area {
    ((length + top) / 2.0 * height)
        .called("A")
        .of_kind(Kind::Area)
        .cited(&GEOMETRY)
}

/// A disc.
///
/// `A = π d² / 4`
///
/// # Units
/// Length in, area out.
/// # Source
/// Geometry.
#[must_use]
pub fn disc_area(diameter: &Length) -> Area {
    (pi() * diameter.squared() / 4.0)
        .called("A")
        .of_kind(Kind::Area)
        .cited(&GEOMETRY)
}

/// The outside of a round tube or drum, ends not counted.
///
/// `A = π d a`
///
/// # Units
/// Lengths in, area out.
/// # Source
/// Geometry.
#[must_use]
pub fn tube_area(diameter: &Length, length: &Length) -> Area {
    (pi() * diameter * length)
        .called("A")
        .of_kind(Kind::Area)
        .cited(&GEOMETRY)
}

/// A panel rolled to part of a cylinder, from what a straight edge and a rule can take: the chord across, the rise in
/// its middle, and the length along.
///
/// `φ = 4 atan(2 s / c)`, `r = (c² + 4 s²) / (8 s)`, `A = φ r a`
///
/// # Units
/// Lengths in, area out.
/// # Valid range
/// A rise above zero; half the chord makes a half-round, more than that goes on round to a closed tube.
/// # Errors
/// [`TradeError::OutOfRange`] where the rise is not above zero.
/// # Source
/// Geometry.
pub fn curved_area(chord: &Length, rise: &Length, length: &Length) -> Result<Area, TradeError> {
    if rise.value() <= 0.0 || chord.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "rise",
            lowest: 0.0,
            highest: f64::INFINITY,
        });
    }
    let angle = (4.0 * (2.0 * rise / chord).atan()).called("φ");
    let radius = ((chord.squared() + 4.0 * rise.squared()) / (8.0 * rise)).called("r");
    Ok((angle * radius * length)
        .called("A")
        .of_kind(Kind::Area)
        .cited(&GEOMETRY))
}

/// What of a panel is painted: its shape less its openings, on one face or both, with edges and returns as a share
/// on top, so many times.
///
/// `A = n f (A_shape - Σ A_opening) (1 + e)`
///
/// # Units
/// Areas in, area out; share and count are pure numbers.
/// # Errors
/// [`TradeError::OutOfRange`] naming `opening` where the openings are larger than the panel.
/// # Source
/// Geometry; the share for edges and returns is common practice.
pub fn painted_area(
    shape: &Area,
    openings: &[Area],
    faces: Faces,
    edges: &Ratio,
    count: &Ratio,
) -> Result<Area, TradeError> {
    let net = if openings.is_empty() {
        shape.clone()
    } else {
        let taken = Area::sum_of(openings);
        if taken.value() > shape.value() * (1.0 + 1e-9) {
            let highest = shape.value();
            return Err(TradeError::OutOfRange {
                entry: "opening",
                lowest: 0.0,
                highest,
            });
        }
        (shape - taken).called("A_net")
    };
    let faced = match faces {
        Faces::One => net,
        Faces::Both => 2.0 * net,
    };
    let area = count * faced * (1.0 + edges);
    Ok(area.called("A_panel").of_kind(Kind::Area).cited(&GEOMETRY))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn mm(value: f64) -> Length {
        Length::exact(value / 1000.0)
    }

    fn near(a: &Area, b: f64) {
        assert!(
            (a.value() - b).abs() < 1e-9 * b.abs().max(1.0),
            "{} is not {b}",
            a.value()
        );
    }

    #[test]
    fn a_half_round_panel_is_half_a_tube() {
        let panel = curved_area(&mm(600.0), &mm(300.0), &mm(1000.0)).unwrap();
        near(&panel, tube_area(&mm(600.0), &mm(1000.0)).value() / 2.0);
    }

    #[test]
    fn a_rise_of_nothing_is_refused() {
        assert!(curved_area(&mm(600.0), &mm(0.0), &mm(1000.0)).is_err());
    }

    #[test]
    fn both_faces_double_the_panel_and_its_openings() {
        let shape = rectangle_area(&mm(1000.0), &mm(1000.0));
        let opening = rectangle_area(&mm(500.0), &mm(400.0));
        let (edges, count) = (Ratio::exact(0.1), Ratio::exact(2.0));
        let one = painted_area(
            &shape,
            std::slice::from_ref(&opening),
            Faces::One,
            &edges,
            &count,
        );
        let both = painted_area(&shape, &[opening], Faces::Both, &edges, &count);
        near(&one.unwrap(), 2.0 * 0.8 * 1.1);
        near(&both.unwrap(), 4.0 * 0.8 * 1.1);
    }

    #[test]
    fn an_opening_larger_than_its_panel_is_refused() {
        let shape = rectangle_area(&mm(1000.0), &mm(500.0));
        let opening = rectangle_area(&mm(1000.0), &mm(501.0));
        let zero = Ratio::exact(0.0);
        let refused = painted_area(&shape, &[opening], Faces::One, &zero, &Ratio::exact(1.0));
        assert!(matches!(
            refused,
            Err(TradeError::OutOfRange {
                entry: "opening",
                ..
            })
        ));
    }

    proptest! {
        #[test]
        fn a_panel_cut_in_two_has_the_area_of_its_halves(
            length in 50.0_f64..3000.0, height in 50.0_f64..2000.0, cut in 0.05_f64..0.95,
        ) {
            let whole = rectangle_area(&mm(length), &mm(height)).value();
            let left = rectangle_area(&mm(length * cut), &mm(height)).value();
            let right = rectangle_area(&mm(length * (1.0 - cut)), &mm(height)).value();
            prop_assert!((left + right - whole).abs() < 1e-12);
            // A slanting cut makes two trapezia.
            let (low, high) = (length * cut, length * cut * 0.8);
            let left = trapezium_area(&mm(low), &mm(high), &mm(height)).value();
            let right = trapezium_area(&mm(length - low), &mm(length - high), &mm(height)).value();
            prop_assert!((left + right - whole).abs() < 1e-12);
        }

        #[test]
        fn what_an_opening_takes_away_is_what_it_would_have_been(
            length in 500.0_f64..3000.0, height in 500.0_f64..2000.0, share in 0.01_f64..0.99,
        ) {
            let shape = rectangle_area(&mm(length), &mm(height));
            let opening = rectangle_area(&mm(length * share), &mm(height));
            let (none, once) = (Ratio::exact(0.0), Ratio::exact(1.0));
            let all = painted_area(&shape, &[], Faces::Both, &none, &once).unwrap().value();
            let cut = painted_area(&shape, std::slice::from_ref(&opening), Faces::Both, &none, &once);
            let taken = painted_area(&opening, &[], Faces::Both, &none, &once).unwrap().value();
            prop_assert!((cut.unwrap().value() + taken - all).abs() < 1e-9);
        }
    }
}
