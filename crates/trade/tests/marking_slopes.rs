//! Marking out: slopes that are told by formula are those that one finds by changing a reading and reckoning again.

use measure::{Kind, Length, Reading, Stated, unit};
use trade::marking::*;

/// A length whose key is its place among the readings; one of them is changed by a little.
fn reading(place: usize, metres: f64, changed: (usize, f64)) -> Length {
    let by = if place == changed.0 { changed.1 } else { 0.0 };
    let reading = Reading {
        plus: 0.0005,
        minus: 0.0005,
        stated: Stated::Typed,
        ..Reading::exact(metres + by, &unit::METRE)
    };
    Length::entry(place.to_string().as_str(), "l", Kind::Length, &reading)
}

/// Compares the slopes of every coordinate by every reading.
fn slopes_hold(count: usize, points: impl Fn((usize, f64)) -> Vec<Point>) {
    let step = 1e-5;
    let here = points((count, 0.0));
    for place in 0..count {
        let (above, below) = (points((place, step)), points((place, -step)));
        for ((here, above), below) in here.iter().zip(&above).zip(&below) {
            let coordinates = [(&here.x, &above.x, &below.x), (&here.y, &above.y, &below.y)];
            for (told, above, below) in coordinates {
                let told = told.figure(Kind::Length).slope(&place.to_string());
                let found = (above.value() - below.value()) / (2.0 * step);
                // The square of the step, and rounding over the step.
                assert!(
                    (told - found).abs() < 1e-6,
                    "{place}: {told} told, {found} found"
                );
            }
        }
    }
}

#[test]
fn the_slopes_of_four_datums_that_do_not_quite_fit_are_those_of_the_least_squares() {
    let lengths = [1.0, 1.304, 0.709, 0.606, 1.255, 1.207];
    let pairs = [(0, 1), (0, 2), (1, 2), (0, 3), (1, 3), (2, 3)];
    slopes_hold(6, |changed| {
        let distances: Vec<_> = pairs
            .iter()
            .enumerate()
            .map(|(i, (a, b))| (*a, *b, reading(i, lengths[i], changed)))
            .collect();
        frame(&[Side::Left, Side::Left], &distances).expect("four datums")
    });
}

#[test]
fn the_slopes_of_a_place_from_readings_that_do_not_quite_fit_are_those_of_the_least_squares() {
    let datums = [[0.0, 0.0], [1.0, 0.01], [1.1, 0.7]];
    let distances = [0.503, 0.806, 0.765];
    slopes_hold(11, |changed| {
        let mut sights: Vec<Sight> = datums
            .iter()
            .zip(distances)
            .enumerate()
            .map(|(i, ([x, y], distance))| Sight::From {
                datum: Point {
                    x: reading(3 * i, *x, changed),
                    y: reading(3 * i + 1, *y, changed),
                },
                distance: reading(3 * i + 2, distance, changed),
            })
            .collect();
        sights.push(Sight::Along(reading(9, 0.401, changed)));
        sights.push(Sight::Across(reading(10, 0.304, changed)));
        vec![fix(&sights, Side::Left).expect("a place").at]
    });
}

#[test]
fn a_mirror_line_leaves_less_than_any_line_near_by() {
    let pairs = [
        ([0.1, 0.2], [1.92, 0.21]),
        ([0.0, 0.9], [2.01, 0.88]),
        ([0.4, -0.3], [1.605, -0.31]),
    ];
    let point = |at: [f64; 2]| Point::exact(at[0], at[1]);
    let pairs = pairs.map(|(a, b)| (point(a), point(b)));
    let line = mirror_line(&pairs).expect("a line");
    let left = |normal: f64, offset: f64| -> f64 {
        let line = MirrorLine {
            normal: measure::Ratio::exact(normal),
            offset: Length::exact(offset),
            residuals: Vec::new(),
        };
        let left = pairs.iter();
        left.map(|(a, b)| mirrored(a, &line).distance(b).value().powi(2))
            .sum()
    };
    let (normal, offset) = (line.normal.value(), line.offset.value());
    for (turn, shift) in [(1e-4, 0.0), (-1e-4, 0.0), (0.0, 1e-4), (0.0, -1e-4)] {
        assert!(left(normal, offset) < left(normal + turn, offset + shift));
    }
}
