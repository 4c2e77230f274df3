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

#[test]
fn the_schedule_marks_and_pilots_everything_before_it_opens_anything_and_small_before_large() {
    let column = Shape::round(mm(62.0)).unwrap();
    let bolt = Shape::round(mm(9.0)).unwrap();
    let slot = Shape::slot(mm(30.0), mm(9.0)).unwrap();
    let stud = Shape::stud(mm(8.0)).unwrap();
    let foot = Shape::bracket(mm(40.0), mm(30.0)).unwrap();
    let steps = drill_schedule(&[&column, &bolt, &slot, &stud, &foot], &mm(1.2), &mm(3.0));
    let plan: Vec<(Tool, Vec<(usize, usize)>)> = steps
        .iter()
        .map(|step| (step.tool, step.at.clone()))
        .collect();
    assert_eq!(
        plan,
        [
            (Tool::Scriber, vec![(4, 1)]),
            (Tool::CentrePunch, vec![(0, 1), (1, 1), (2, 2), (3, 1)]),
            (Tool::Pilot, vec![(0, 1), (1, 1), (2, 2)]),
            (Tool::StepDrill, vec![(1, 1), (2, 2)]),
            (Tool::HoleSaw, vec![(0, 1)]),
            (Tool::Cutter, vec![(2, 1)]),
            (Tool::File, vec![(2, 1)]),
            (Tool::Finish, vec![(0, 1), (1, 1), (2, 1)]),
        ]
    );
    let sizes: Vec<f64> = steps
        .iter()
        .filter_map(|step| step.size.as_ref())
        .map(|size| size.value() * 1e3)
        .collect();
    assert!(near(sizes[0], 3.0, 1e-9) && near(sizes[1], 9.0, 1e-9) && near(sizes[2], 62.0, 1e-9));
}

#[test]
fn in_plate_a_twist_drill_serves_to_13_mm_and_a_hole_that_no_saw_makes_is_cut_and_filed() {
    assert_eq!(round_tool(&mm(11.0), &mm(6.0)), Tool::Drill);
    assert_eq!(round_tool(&mm(11.0), &mm(1.2)), Tool::StepDrill);
    assert_eq!(round_tool(&mm(25.0), &mm(6.0)), Tool::HoleSaw);
    let huge = Shape::round(mm(200.0)).unwrap();
    let tools: Vec<Tool> = drill_schedule(&[&huge], &mm(1.0), &mm(3.0))
        .iter()
        .map(|step| step.tool)
        .collect();
    assert_eq!(
        tools,
        [
            Tool::CentrePunch,
            Tool::Pilot,
            Tool::Cutter,
            Tool::File,
            Tool::Finish
        ]
    );
}

#[test]
fn a_plate_for_a_round_hole_is_the_disc_for_it() {
    let (disc, plate) = (
        patch(&mm(62.0), &mm(0.8)).unwrap(),
        plate(&Shape::round(mm(62.0)).unwrap(), &mm(0.8)).unwrap(),
    );
    assert!(near(disc.sheet.value(), plate.sheet.value(), 1e-12));
    assert!(near(disc.weld.value(), plate.weld.value(), 1e-12));
}

#[test]
fn a_gap_that_leaves_no_plate_and_what_is_no_hole_get_none() {
    assert!(plate(&Shape::slot(mm(30.0), mm(4.0)).unwrap(), &mm(2.1)).is_err());
    assert!(plate(&Shape::stud(mm(30.0)).unwrap(), &mm(0.8)).is_err());
}

#[test]
fn a_slug_of_a_hole_of_the_same_size_is_too_small_by_its_kerf_and_from_a_larger_hole_it_fills() {
    let hole = Shape::round(mm(60.0)).unwrap();
    let same = swap(&hole, &mm(1.6), &hole, &mm(0.8), &mm(1.2));
    assert!(matches!(same, Swap::TooSmall(gap) if near(gap.value(), 0.0016, 1e-12)));
    let larger = Shape::round(mm(61.5)).unwrap();
    assert!(
        matches!(swap(&larger, &mm(1.6), &hole, &mm(0.8), &mm(1.2)), Swap::Fills(gap) if near(gap.value(), 0.00085, 1e-12))
    );
    let tight = Shape::round(mm(62.5)).unwrap();
    assert!(matches!(
        swap(&tight, &mm(1.6), &hole, &mm(0.8), &mm(1.2)),
        Swap::Dress(_)
    ));
    let huge = Shape::round(mm(90.0)).unwrap();
    assert!(matches!(
        swap(&huge, &mm(1.6), &hole, &mm(0.8), &mm(1.2)),
        Swap::TooLarge(_)
    ));
    let slot = Shape::slot(mm(62.0), mm(10.0)).unwrap();
    assert!(matches!(
        swap(&slot, &mm(1.6), &hole, &mm(0.8), &mm(1.2)),
        Swap::NotAlike
    ));
}

#[test]
fn a_thinner_cut_from_the_same_shape_fills_it() {
    // A thin cut-off disc, or a laser, leaves no more than the weld wants anyway.
    let opening = Shape::rectangle(mm(120.0), mm(60.0), mm(6.0)).unwrap();
    assert!(matches!(
        swap(&opening, &mm(1.0), &opening, &mm(0.8), &mm(1.2)),
        Swap::Fills(_)
    ));
}

#[test]
fn a_hole_can_be_off_by_its_ellipse_and_the_drilling_and_a_bolt_tolerates_half_its_clearance() {
    assert!(near(
        worst_error(&Point::exact(0.3, 0.2), &mm(0.5)).value(),
        0.0005,
        1e-12
    ));
    let bolt = bolt_through(&mm(9.0)).unwrap();
    assert!(near(bolt.value(), 0.008, 1e-12));
    assert!(near(tolerated(&mm(9.0), &bolt).value(), 0.0005, 1e-12));
    assert!(bolt_through(&mm(62.0)).is_none());
}

#[test]
fn the_land_to_an_edge_is_that_to_its_line_and_less_than_nothing_beyond_it() {
    // The edge rises by 3 in 4, through the origin; the metal lies below it. By hand: the point (100, 0) lies 60 off it.
    let edge = [Point::exact(0.0, 0.0), Point::exact(0.04, 0.03)];
    let metal = Point::exact(0.3, 0.0);
    let left = |x: f64, y: f64| {
        let hole = placed(Shape::round(mm(20.0)).unwrap(), x, y, 0.0);
        land_to_edge(&hole, &edge, &metal, &mm(5.0))
    };
    let inside = left(100.0, 0.0);
    assert!(near(inside.left.value(), 0.050, 1e-12));
    assert_eq!(inside.verdict, LandVerdict::Enough);
    // As far along as one likes, the edge goes on: (900, 600) lies 60 below it as well.
    assert!(near(left(900.0, 600.0).left.value(), 0.050, 1e-12));
    // On the edge half of the hole hangs out, beyond it all of it.
    assert!(near(left(0.0, 0.0).left.value(), -0.010, 1e-12));
    let beyond = left(-100.0, 0.0);
    assert!(near(beyond.left.value(), -0.070, 1e-12));
    assert_eq!(beyond.verdict, LandVerdict::Clash);
    // A rectangle's corner: 40 by 20 about (100, 0), whose corner (80, 10) lies (3 * 80 - 4 * 10) / 5 = 40 off.
    let window = placed(
        Shape::rectangle(mm(40.0), mm(20.0), mm(0.0)).unwrap(),
        100.0,
        0.0,
        0.0,
    );
    let land = land_to_edge(&window, &edge, &metal, &mm(5.0));
    assert!(near(land.left.value(), 0.040, 1e-12));
}
