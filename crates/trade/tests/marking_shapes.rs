//! Shapes that are marked out: outlines, how far apart they are, what is drilled, and what closes the old holes.

use std::f64::consts::PI;

use measure::{Length, Ratio};
use proptest::prelude::*;
use trade::TradeError;
use trade::marking::*;

fn mm(millimetres: f64) -> Length {
    Length::exact(millimetres / 1000.0)
}

fn near(a: f64, b: f64, within: f64) -> bool {
    (a - b).abs() <= within
}

fn placed(shape: Shape, x: f64, y: f64, degrees: f64) -> Placed {
    Placed::new(
        shape,
        Point::exact(x / 1000.0, y / 1000.0),
        Ratio::exact(degrees.to_radians()),
    )
}

/// One of each kind that is cut, of sizes from three numbers between 0 and 1.
fn shapes(a: f64, b: f64, c: f64) -> Vec<Shape> {
    let (long, wide) = (20.0 + 60.0 * a, 5.0 + 14.0 * b);
    let made = [
        Shape::round(mm(long)),
        Shape::slot(mm(long), mm(wide)),
        Shape::rectangle(mm(long), mm(wide), mm(wide * 0.49 * c)),
        Shape::d_hole(mm(long), mm(long * (0.2 + 0.7 * c))),
        Shape::free(
            [
                [0.0, 0.0],
                [long, 0.0],
                [long, wide],
                [long * 0.5 * c + 1.0, wide * 0.5],
                [0.0, wide],
            ]
            .map(|at| at.map(mm))
            .to_vec(),
        ),
    ];
    made.into_iter()
        .map(|shape| shape.expect("makes a shape"))
        .collect()
}

#[test]
fn the_areas_of_round_slot_and_rectangle_are_those_of_the_handbook() {
    let round = Shape::round(mm(60.0)).unwrap().outline();
    assert!(near(round.area_m2() * 1e6, PI * 900.0, 1e-6));
    assert!(near(round.length_m() * 1e3, PI * 60.0, 1e-9));
    let slot = Shape::slot(mm(50.0), mm(10.0)).unwrap().outline();
    assert!(near(slot.area_m2() * 1e6, 40.0 * 10.0 + PI * 25.0, 1e-6));
    let window = Shape::rectangle(mm(80.0), mm(40.0), mm(5.0))
        .unwrap()
        .outline();
    assert!(near(
        window.area_m2() * 1e6,
        3200.0 - (4.0 - PI) * 25.0,
        1e-6
    ));
    assert!(near(
        window.length_m() * 1e3,
        70.0 * 2.0 + 30.0 * 2.0 + PI * 10.0,
        1e-9
    ));
}

#[test]
fn half_a_circle_is_a_d_hole_whose_flat_goes_through_the_middle() {
    let half = Shape::d_hole(mm(40.0), mm(20.0)).unwrap().outline();
    assert!(near(half.area_m2() * 1e6, PI * 200.0, 1e-6));
    let [least, most] = half.bounds();
    assert!(
        near(most[0], 0.0, 1e-12) && near(least[0], -0.02, 1e-12) && near(most[1], 0.02, 1e-12)
    );
}

#[test]
fn sizes_that_make_no_shape_are_refused_by_name() {
    let refused = |made: Result<Shape, TradeError>| match made {
        Err(TradeError::OutOfRange { entry, .. }) => entry,
        other => panic!("{other:?}"),
    };
    assert_eq!(refused(Shape::round(mm(0.0))), "diameter");
    assert_eq!(refused(Shape::slot(mm(10.0), mm(12.0))), "width");
    assert_eq!(
        refused(Shape::rectangle(mm(40.0), mm(20.0), mm(11.0))),
        "corner"
    );
    assert_eq!(refused(Shape::d_hole(mm(20.0), mm(21.0))), "across");
    let bow = [[0.0, 0.0], [10.0, 10.0], [10.0, 0.0], [0.0, 10.0]].map(|at| at.map(mm));
    assert!(matches!(
        Shape::free(bow.to_vec()),
        Err(TradeError::OutlineCrosses { .. })
    ));
    assert!(matches!(
        Shape::free(bow[..2].to_vec()),
        Err(TradeError::TooFew { .. })
    ));
}

#[test]
fn an_offset_that_leaves_nothing_is_refused() {
    let window = Shape::rectangle(mm(80.0), mm(40.0), mm(0.0)).unwrap();
    assert!(window.offset(&mm(-19.9)).is_ok());
    for too_far in [-20.1, -41.0] {
        assert!(matches!(
            window.offset(&mm(too_far)),
            Err(TradeError::OutOfRange { entry: "kerf", .. })
        ));
    }
    assert!(Shape::round(mm(3.0)).unwrap().offset(&mm(-1.5)).is_err());
    assert!(
        Shape::slot(mm(30.0), mm(8.0))
            .unwrap()
            .offset(&mm(-4.1))
            .is_err()
    );
    assert!(
        Shape::bracket(mm(30.0), mm(8.0))
            .unwrap()
            .offset(&mm(1.0))
            .is_err()
    );
}

#[test]
fn a_shape_inside_another_clashes_though_their_edges_are_far_apart() {
    let around = placed(
        Shape::rectangle(mm(200.0), mm(100.0), mm(0.0)).unwrap(),
        0.0,
        0.0,
        0.0,
    );
    let inside = placed(Shape::slot(mm(20.0), mm(8.0)).unwrap(), 10.0, 5.0, 30.0);
    for (a, b) in [(&around, &inside), (&inside, &around)] {
        assert_eq!(land_between(a, b, &mm(5.0)).verdict, LandVerdict::Clash);
    }
}

#[test]
fn a_move_that_mirrors_takes_a_d_hole_to_its_mirror_image_and_a_handed_part_keeps_its_hand() {
    let line = MirrorLine::through(&Point::exact(0.9, -0.1), &Point::exact(0.95, 1.0)).unwrap();
    let bracket = placed(
        Shape::bracket(mm(30.0), mm(20.0)).unwrap(),
        120.0,
        80.0,
        25.0,
    );
    let moved = bracket.moved(&line.as_move());
    let corners = |outline: Outline| outline.corners.into_iter().map(|corner| corner.at);
    for (from, to) in corners(bracket.outline()).zip(corners(moved.outline())) {
        let over = mirrored(&Point::exact(from[0], from[1]), &line).values();
        assert!(near(over[0], to[0], 1e-12) && near(over[1], to[1], 1e-12));
    }
    let kept = bracket.kept_in_hand(&line.as_move());
    assert!(!kept.mirrored);
    assert_eq!(kept.at.values(), moved.at.values());
}

proptest! {
    #[test]
    fn area_and_length_stay_however_a_shape_is_placed(
        a in 0.0..1.0, b in 0.0..1.0, c in 0.01..1.0, x in -900.0..900.0, y in -900.0..900.0, turn in -180.0..180.0,
        over in any::<bool>(),
    ) {
        for shape in shapes(a, b, c) {
            let own = shape.outline();
            let there = Placed { mirrored: over, ..placed(shape, x, y, turn) }.outline();
            prop_assert!(near(own.area_m2(), there.area_m2(), 1e-10));
            prop_assert!(near(own.length_m(), there.length_m(), 1e-10));
        }
    }

    #[test]
    fn mirrored_twice_a_shape_lies_where_it_lay(
        a in 0.0..1.0, b in 0.0..1.0, c in 0.01..1.0, turn in -180.0..180.0, x in -2.0..2.0, y in -2.0..2.0,
    ) {
        let line = MirrorLine::through(&Point::exact(x, -0.5), &Point::exact(y, 0.7)).unwrap().as_move();
        for shape in shapes(a, b, c) {
            let here = placed(shape, 100.0, 50.0, turn);
            let back = here.moved(&line).moved(&line);
            for (p, q) in here.outline().corners.iter().zip(&back.outline().corners) {
                prop_assert!(near(p.at[0], q.at[0], 1e-9) && near(p.at[1], q.at[1], 1e-9));
                prop_assert!(near(p.bulge, q.bulge, 1e-12));
            }
        }
    }

    #[test]
    fn an_offset_outwards_grows_area_by_edge_times_step_and_length_by_no_more_than_a_circle(
        a in 0.0..1.0, b in 0.0..1.0, c in 0.01..1.0, by in 0.001..0.02,
    ) {
        for shape in shapes(a, b, c) {
            let own = shape.outline();
            let out = shape.offset(&mm(by)).unwrap();
            let by = by / 1000.0;
            // A closed curve offset by e gains L e and at most so much more as a few sharp corners hold.
            let gained = out.area_m2() - own.area_m2();
            prop_assert!(near(gained, own.length_m() * by, 40.0 * by * by));
            prop_assert!(out.length_m() > own.length_m());
        }
    }

    #[test]
    fn land_between_is_the_same_from_either_side_and_for_round_holes_as_by_their_centres(
        a in 0.0..1.0, b in 0.0..1.0, c in 0.01..1.0, far in 0.0..200.0, turn in -180.0..180.0,
    ) {
        let least = mm(5.0);
        let fixed = placed(Shape::slot(mm(40.0), mm(12.0)).unwrap(), far, 30.0, 17.0);
        for shape in shapes(a, b, c) {
            let other = placed(shape, 0.0, 0.0, turn);
            let (there, back) = (land_between(&fixed, &other, &least), land_between(&other, &fixed, &least));
            prop_assert!(near(there.left.value(), back.left.value(), 1e-12));
            prop_assert_eq!(there.verdict, back.verdict);
        }
        // A slot as long as it is wide is a round hole.
        let round = placed(Shape::round(mm(30.0)).unwrap(), 0.0, 0.0, 0.0);
        let stub = placed(Shape::slot(mm(12.0), mm(12.0)).unwrap(), far, 30.0, turn);
        let hole = placed(Shape::round(mm(12.0)).unwrap(), far, 30.0, 0.0);
        prop_assert!(near(
            land_between(&round, &stub, &least).left.value(),
            land_between(&round, &hole, &least).left.value(),
            1e-12,
        ));
    }
}
