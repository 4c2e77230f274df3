//! Marking out: what is taken off, moved and set out again.

use measure::{Kind, Length, Reading, Stated, unit};
use proptest::prelude::*;
use trade::TradeError;
use trade::marking::*;

fn length(key: &str, metres: f64, either: f64) -> Length {
    let reading = Reading {
        plus: either,
        minus: either,
        stated: Stated::Typed,
        ..Reading::exact(metres, &unit::METRE)
    };
    Length::entry(key, "l", Kind::Length, &reading)
}

fn from(datum: &Point, key: &str, metres: f64) -> Sight {
    Sight::From {
        datum: datum.clone(),
        distance: length(key, metres, 0.0005),
    }
}

fn near(a: f64, b: f64, within: f64) -> bool {
    (a - b).abs() <= within
}

fn datums() -> Vec<Point> {
    vec![
        Point::exact(0.0, 0.0),
        Point::exact(1.0, 0.0),
        Point::exact(1.1, 0.7),
        Point::exact(-0.1, 0.6),
    ]
}

fn sights_to(at: &Point) -> Vec<Sight> {
    datums()
        .iter()
        .enumerate()
        .map(|(i, datum)| from(datum, &format!("reading/{i}"), datum.distance(at).value()))
        .collect()
}

#[test]
fn two_distances_fix_a_point_and_check_nothing() {
    // A 3-4-5 triangle: 600 and 800 over 1000.
    let (a, b) = (Point::exact(0.0, 0.0), Point::exact(1.0, 0.0));
    let fixed = fix(&[from(&a, "a", 0.6), from(&b, "b", 0.8)], Side::Left).expect("meets");
    assert!(near(fixed.at.x.value(), 0.36, 1e-9) && near(fixed.at.y.value(), 0.48, 1e-9));
    assert_eq!(fixed.check, Check::Nothing);
    let below = fix(&[from(&a, "a", 0.6), from(&b, "b", 0.8)], Side::Right).expect("meets");
    assert!(near(below.at.y.value(), -0.48, 1e-9));
}

#[test]
fn distances_that_cannot_meet_are_refused_and_say_by_how_much() {
    let (a, b) = (Point::exact(0.0, 0.0), Point::exact(1.0, 0.0));
    let refused = fix(&[from(&a, "a", 0.3), from(&b, "b", 0.5)], Side::Left);
    let Err(TradeError::CannotMeet { gap }) = refused else {
        panic!("{refused:?}")
    };
    assert!(near(gap, 0.2, 1e-9));
}

#[test]
fn three_readings_detect_a_bad_one_and_four_name_it() {
    let at = Point::exact(0.4, 0.35);
    let good = sights_to(&at);
    assert_eq!(fix(&good, Side::Left).expect("fixes").check, Check::Agree);
    let spoil = |mut sights: Vec<Sight>, which: usize| {
        if let Sight::From { distance, .. } = &mut sights[which] {
            *distance = length("spoiled", distance.value() + 0.012, 0.0005);
        }
        sights
    };
    let three = fix(&spoil(good[..3].to_vec(), 1), Side::Left).expect("fixes");
    assert_eq!(three.check, Check::OneIsBad);
    for which in 0..4 {
        let four = fix(&spoil(good.clone(), which), Side::Left).expect("fixes");
        let Check::Spoiled { reading, .. } = four.check else {
            panic!("{:?}", four.check)
        };
        assert_eq!(reading, which);
    }
}

#[test]
fn datums_in_one_line_with_the_feature_do_not_fix_it_across() {
    let line = [Point::exact(0.0, 0.0), Point::exact(0.0, 0.0)];
    let refused = fix(
        &[from(&line[0], "a", 0.6), from(&line[1], "b", 0.6)],
        Side::Left,
    );
    assert!(refused.is_err(), "{refused:?}");
}

#[test]
fn a_frame_of_three_datums_is_a_triangle() {
    let d = |a, b, l| (a, b, length(&format!("{a}-{b}"), l, 0.001));
    let datums =
        frame(&[Side::Left], &[d(0, 1, 5.0), d(0, 2, 4.0), d(1, 2, 3.0)]).expect("a triangle");
    assert!(near(datums[2].x.value(), 3.2, 1e-9) && near(datums[2].y.value(), 2.4, 1e-9));
    let refused = frame(&[Side::Left], &[d(0, 1, 5.0), d(0, 2, 1.0), d(1, 2, 3.0)]);
    assert!(matches!(refused, Err(TradeError::CannotMeet { .. })));
    let missing = frame(&[Side::Left], &[d(0, 1, 5.0), d(0, 2, 4.0)]);
    assert!(matches!(missing, Err(TradeError::Undetermined { .. })));
}

#[test]
fn a_mirrored_copy_is_not_taken_for_a_turn() {
    let left = [
        Point::exact(0.0, 0.0),
        Point::exact(0.5, 0.1),
        Point::exact(0.2, 0.4),
    ];
    let right: Vec<Point> = left
        .iter()
        .map(|p| Point {
            x: p.x.clone(),
            y: -&p.y,
        })
        .collect();
    let plain = rigid_fit(&left, &right, false).expect("fits");
    assert!(plain.rms > 0.05, "{}", plain.rms);
    let mirrored = rigid_fit(&left, &right, true).expect("fits");
    assert!(mirrored.rms < 1e-12);
}

#[test]
fn the_ellipse_is_long_where_the_arcs_cross_flat() {
    let (a, b) = (Point::exact(0.0, 0.0), Point::exact(1.0, 0.0));
    let low = Point::exact(0.5, 0.05);
    let fixed = fix(
        &[
            from(&a, "a", a.distance(&low).value()),
            from(&b, "b", b.distance(&low).value()),
        ],
        Side::Left,
    )
    .expect("meets");
    let ellipse = error_ellipse(&fixed.at);
    assert!(ellipse.long > 5.0 * ellipse.short);
    assert!(near(ellipse.angle.abs(), std::f64::consts::FRAC_PI_2, 1e-6));
}

#[test]
fn a_patch_and_a_slug_are_smaller_than_their_hole() {
    let hole = length("hole", 0.040, 0.0);
    let disc = patch(&hole, &length("gap", 0.0008, 0.0)).expect("a disc");
    assert!(near(disc.diameter.value(), 0.0384, 1e-12));
    let slug = slug_diameter(&hole, &length("kerf", 0.002, 0.0)).expect("a slug");
    assert!(near(slug.value(), 0.036, 1e-12));
    assert!(patch(&hole, &length("gap", 0.03, 0.0)).is_err());
}

proptest! {
    #[test]
    fn mirroring_twice_is_the_identity(x in -2.0..2.0f64, y in -2.0..2.0f64, ax in -1.0..1.0f64, bx in 1.5..3.0f64, by in -1.0..1.0f64) {
        let line = MirrorLine::through(&Point::exact(ax, 0.1), &Point::exact(bx, by)).expect("apart");
        let point = Point::exact(x, y);
        let back = mirrored(&mirrored(&point, &line), &line);
        prop_assert!(near(back.x.value(), x, 1e-12) && near(back.y.value(), y, 1e-12));
    }

    #[test]
    fn a_pattern_measured_without_error_is_recovered_exactly(x in -0.5..1.5f64, y in 0.05..1.2f64) {
        let at = Point::exact(x, y);
        prop_assume!(datums().iter().all(|datum| datum.distance(&at).value() > 0.02));
        let fixed = fix(&sights_to(&at), Side::Left).expect("fixes");
        prop_assert!(near(fixed.at.x.value(), x, 1e-8) && near(fixed.at.y.value(), y, 1e-8), "{:?}", fixed.at);
        prop_assert_eq!(fixed.check, Check::Agree);
    }

    #[test]
    fn a_fit_recovers_the_move_that_was_made(turn in -3.0..3.0f64, dx in -1.0..1.0f64, dy in -1.0..1.0f64, flip: bool) {
        let from = [Point::exact(0.0, 0.0), Point::exact(0.5, 0.1), Point::exact(0.2, 0.4)];
        let by = Move { mirrored: flip, turn: measure::Ratio::exact(turn), dx: Length::exact(dx), dy: Length::exact(dy) };
        let to: Vec<Point> = from.iter().map(|p| by.of(p)).collect();
        let fit = rigid_fit(&from, &to, flip).expect("fits");
        prop_assert!(fit.rms < 1e-9);
    }

    #[test]
    fn the_centre_line_of_mirrored_pairs_is_found(nx in -0.4..0.4f64, offset in 0.2..0.9f64) {
        let line = MirrorLine { normal: measure::Ratio::exact(nx), offset: Length::exact(offset), residuals: Vec::new() };
        let pairs: Vec<(Point, Point)> = [[0.0, 0.0], [0.1, 0.6], [-0.2, 1.1]]
            .iter()
            .map(|p| { let p = Point::exact(p[0], p[1]); let q = mirrored(&p, &line); (p, q) })
            .collect();
        prop_assume!(pairs.iter().all(|(a, b)| a.distance(b).value() > 0.01));
        let found = mirror_line(&pairs).expect("a line");
        let probe = Point::exact(0.3, 0.2);
        prop_assert!(mirrored(&probe, &found).distance(&mirrored(&probe, &line)).value() < 1e-8);
    }

    #[test]
    fn one_more_reading_never_makes_a_position_less_certain(x in 0.0..1.0f64, y in 0.1..1.0f64) {
        let at = Point::exact(x, y);
        prop_assume!(datums().iter().all(|datum| datum.distance(&at).value() > 0.05));
        let sights = sights_to(&at);
        let area = |count: usize| {
            let ellipse = error_ellipse(&fix(&sights[..count], Side::Left).expect("fixes").at);
            ellipse.long * ellipse.short
        };
        prop_assert!(area(3) <= area(2) * (1.0 + 1e-6));
        prop_assert!(area(4) <= area(3) * (1.0 + 1e-6));
    }
}
