//! Final drive: depth, shims, preload, backlash, marks.

use measure::{Force, Length, Ratio, Torque, unit};
use proptest::prelude::*;
use trade::TradeError;
use trade::final_drive::*;

fn mm(value: f64) -> Length {
    Length::of(value, &unit::MILLIMETRE)
}

fn near(a: f64, b: f64, within: f64) -> bool {
    (a - b).abs() <= within
}

#[test]
fn both_flags_of_the_head_mark_turn_the_sign() {
    let shim = |sense, place| {
        shim_by_marks(&mm(0.60), &mm(0.05), &mm(-0.03), sense, place).in_unit(&unit::MILLIMETRE)
    };
    // A plus further out, thicker shim in: new = old + old mark - new mark.
    assert!(near(
        shim(MarkSense::PlusIsFurther, ShimPlace::HeadToCone),
        0.68,
        1e-9
    ));
    assert!(near(
        shim(MarkSense::PlusIsNearer, ShimPlace::HeadToCone),
        0.52,
        1e-9
    ));
    assert!(near(
        shim(MarkSense::PlusIsFurther, ShimPlace::CarrierFlange),
        0.52,
        1e-9
    ));
    assert!(near(
        shim(MarkSense::PlusIsNearer, ShimPlace::CarrierFlange),
        0.68,
        1e-9
    ));
}

#[test]
fn the_preload_pack_follows_a_shim_behind_the_cup_only() {
    let change = mm(0.05);
    assert!(near(
        preload_pack_change(&change, ShimPlace::BehindCup).value(),
        0.00005,
        1e-12
    ));
    assert_eq!(
        preload_pack_change(&change, ShimPlace::HeadToCone).value(),
        0.0
    );
}

#[test]
fn the_dial_at_another_radius_is_corrected_and_the_least_reading_counts() {
    let readings = [mm(0.20), mm(0.15), mm(0.18)];
    let plain = backlash_readings(&readings, None).expect("readings");
    assert!(near(plain.least.in_unit(&unit::MILLIMETRE), 0.15, 1e-9));
    assert!(near(plain.spread.in_unit(&unit::MILLIMETRE), 0.05, 1e-9));
    let corrected = backlash_readings(&readings, Some((&mm(110.0), &mm(100.0)))).expect("readings");
    assert!(near(
        corrected.least.in_unit(&unit::MILLIMETRE),
        0.165,
        1e-9
    ));
    let refused = backlash_readings(&[mm(-0.1)], None);
    assert!(matches!(
        refused,
        Err(TradeError::OutOfRange {
            entry: "backlash",
            ..
        })
    ));
}

#[test]
fn two_trials_give_the_axles_own_slope() {
    let slope = slope_of_trials(&[(mm(0.0), mm(0.10)), (mm(0.10), mm(0.18))]).expect("a slope");
    assert!(near(slope.value(), 0.8, 1e-9));
    assert!(slope_of_trials(&[(mm(0.1), mm(0.10)), (mm(0.1), mm(0.18))]).is_err());
}

#[test]
fn marks_tell_what_to_move() {
    let seen = |drive, coast, height| {
        advice(TrialMark {
            drive,
            coast,
            height,
        })
    };
    assert_eq!(
        seen(Lengthwise::Middle, Lengthwise::Middle, Height::Middle),
        Advice::Good
    );
    assert_eq!(
        seen(Lengthwise::Heel, Lengthwise::Heel, Height::Middle),
        Advice::CrownIn
    );
    assert_eq!(
        seen(Lengthwise::Toe, Lengthwise::Toe, Height::Middle),
        Advice::CrownOut
    );
    assert_eq!(
        seen(Lengthwise::Heel, Lengthwise::Toe, Height::Middle),
        Advice::PinionIn
    );
    assert_eq!(
        seen(Lengthwise::Middle, Lengthwise::Middle, Height::Face),
        Advice::PinionIn
    );
    assert_eq!(
        seen(Lengthwise::Middle, Lengthwise::Middle, Height::Flank),
        Advice::PinionOut
    );
}

#[test]
fn marks_part_of_the_way_ask_for_half_the_step() {
    let marks = |drive, coast, height| TrialMark {
        drive,
        coast,
        height,
    };
    // Unloaded marks may lie from the middle to the toe.
    let good = marks(
        Lengthwise::TowardsToe,
        Lengthwise::TowardsToe,
        Height::Middle,
    );
    assert_eq!(advice(good), Advice::Good);
    assert_eq!(first_step(good), 0.0);
    let high = marks(Lengthwise::Middle, Lengthwise::Middle, Height::High);
    assert_eq!(advice(high), Advice::PinionIn);
    assert!(near(first_step(high), 5e-5, 1e-12));
    let heel = marks(
        Lengthwise::TowardsHeel,
        Lengthwise::TowardsHeel,
        Height::Middle,
    );
    assert_eq!(advice(heel), Advice::CrownIn);
    assert!(near(first_step(heel), 5e-5, 1e-12));
    let opposite = marks(Lengthwise::Toe, Lengthwise::Heel, Height::Middle);
    assert_eq!(advice(opposite), Advice::PinionOut);
    assert!(near(first_step(opposite), 1e-4, 1e-12));
}

#[test]
fn the_next_shim_lies_where_the_trials_cross_the_middle() {
    let trial = |shim: f64, height: Height| (mm(shim), Ratio::exact(height.number()));
    let next = next_shim(&[trial(0.5, Height::Face), trial(0.9, Height::Flank)]).expect("a trend");
    assert!(near(next.in_unit(&unit::MILLIMETRE), 0.7, 1e-9));
    let three = [
        trial(0.5, Height::Face),
        trial(0.7, Height::High),
        trial(0.9, Height::Flank),
    ];
    // Heights 1, 0.5, -1: slope -5 a millimetre, mean 1/6 at 0.7: the middle at 0.7333.
    let next = next_shim(&three).expect("a trend");
    assert!(near(next.in_unit(&unit::MILLIMETRE), 0.7333, 1e-4));
    assert!(next_shim(&[trial(0.5, Height::Face)]).is_err());
    assert!(matches!(
        next_shim(&[trial(0.5, Height::Face), trial(0.6, Height::Face)]),
        Err(TradeError::Undetermined { .. })
    ));
}

#[test]
fn trials_of_the_preload_tell_what_a_shim_does() {
    let trials = [
        (mm(1.00), Torque::exact(0.4)),
        (mm(0.95), Torque::exact(1.4)),
    ];
    // 1.0 N·m for 0.05 mm less.
    let slope = torque_for_thickness(&trials).expect("a slope");
    assert!(near(slope.value(), -20_000.0, 1e-6));
    let pack = pack_for_preload(&trials, &Torque::exact(1.2)).expect("a pack");
    assert!(near(pack.in_unit(&unit::MILLIMETRE), 0.96, 1e-9));
    assert!(torque_for_thickness(&trials[..1]).is_err());
}

#[test]
fn a_pull_times_its_radius_is_the_torque() {
    // 12 lbf·in at 1.5 in: 8 lbf.
    let torque = Torque::of(12.0, &unit::POUND_INCH);
    let pull = pull_for_torque(&torque, &Length::of(1.5, &unit::INCH)).expect("a radius");
    assert!(near(Force::in_unit(&pull, &unit::POUND_FORCE), 8.0, 1e-9));
    assert!(near(
        cord_radius(&mm(80.0), &mm(3.0)).in_unit(&unit::MILLIMETRE),
        41.5,
        1e-9
    ));
}

/// Every pack of up to `most` shims, by counting in a base: slow and plain.
fn brute_force(target: f64, tolerance: f64, shims: &[Shim], most: usize) -> Option<usize> {
    let base = most + 1;
    (0..base.pow(shims.len() as u32))
        .filter_map(|mut code| {
            let counts: Vec<usize> = shims
                .iter()
                .map(|_| {
                    let n = code % base;
                    code /= base;
                    n
                })
                .collect();
            let fits = counts
                .iter()
                .zip(shims)
                .all(|(n, shim)| shim.count.is_none_or(|have| *n <= have));
            let sum: f64 = counts
                .iter()
                .zip(shims)
                .map(|(n, shim)| *n as f64 * shim.thickness)
                .sum();
            let number: usize = counts.iter().sum();
            (fits && number <= most && (sum - target).abs() <= tolerance + 1e-12).then_some(number)
        })
        .min()
}

proptest! {
    #[test]
    fn a_trend_finds_the_shim_that_the_marks_were_made_with(middle in 0.3..1.2f64, slope in 2.0..20.0f64, apart in 0.03..0.3f64) {
        let trial = |shim: f64| (mm(shim), Ratio::exact((shim - middle) * slope));
        let next = next_shim(&[trial(0.5), trial(0.5 + apart), trial(0.5 - apart)]).expect("a trend");
        prop_assert!(near(next.in_unit(&unit::MILLIMETRE), middle, 1e-6));
    }

    #[test]
    fn the_pinions_way_is_taken_out_of_the_slope(factor in 0.5..1.2f64, pinion in 0.1..0.3f64, shims in prop::collection::vec(-0.2..0.2f64, 3)) {
        let places = [0.0, 0.08, 0.15];
        let trials: Vec<(Length, Length)> = places.iter().zip(&shims).map(|(moved, shim)| {
            let backlash = mm(0.2 + factor * moved - pinion * shim);
            (mm(*moved), without_pinion(&backlash, &mm(*shim), &Ratio::exact(pinion)))
        }).collect();
        prop_assert!(near(slope_of_trials(&trials).expect("a slope").value(), factor, 1e-9));
    }

    #[test]
    fn shim_packs_are_minimal_and_within_tolerance(target in 0.05..1.6f64, kept in prop::collection::vec(0usize..4, 4)) {
        let sizes = [0.05, 0.10, 0.25, 0.50];
        let shims: Vec<Shim> = sizes.iter().zip(&kept).map(|(mm, count)| Shim { thickness: mm / 1000.0, count: Some(*count) }).collect();
        let (target, tolerance) = (target / 1000.0, 0.000_012);
        match (shim_pack(target, tolerance, &shims), brute_force(target, tolerance, &shims, 5)) {
            (Ok(pack), Some(fewest)) => {
                prop_assert_eq!(pack.shims(), fewest);
                prop_assert!((pack.thickness - target).abs() <= tolerance + 1e-12);
                prop_assert!(pack.of_each.iter().zip(&kept).all(|(n, have)| n <= have));
            }
            // Brute force looks at five shims, the search at ten.
            (Ok(pack), None) => prop_assert!(pack.shims() > 5),
            (Err(TradeError::NoPack { .. }), None) => {}
            (found, expected) => prop_assert!(false, "{:?} against {:?}", found, expected),
        }
    }

    #[test]
    fn moving_the_wheel_as_told_gives_the_wanted_backlash(least in 0.0..0.4f64, wanted in 0.05..0.4f64, factor in 0.5..1.0f64) {
        let factor = Ratio::exact(factor);
        let adjustment = crown_move(&mm(least), &mm(wanted), &factor).expect("a move");
        let after = mm(least) + &adjustment.away * &factor;
        prop_assert!(near(after.in_unit(&unit::MILLIMETRE), wanted, 1e-9));
    }

    #[test]
    fn both_sides_together_get_the_spread_and_their_difference_is_the_move(wanted in 0.0..0.5f64, measured in -0.4..0.4f64, away in -0.3..0.3f64) {
        let to_add = spread_to_add(&mm(wanted), &mm(measured));
        let [crown, other] = shims_of_both_sides(&to_add, &mm(away)).map(|side| side.in_unit(&unit::MILLIMETRE));
        // After it the bearings stand at what was wanted, and the wheel at where it was to go: one side gives what the other gains.
        prop_assert!(near(measured + crown + other, wanted, 1e-9));
        prop_assert!(near((other - crown) / 2.0, away, 1e-9));
        let each = spread_each_side(&to_add).in_unit(&unit::MILLIMETRE);
        let held = shims_of_both_sides(&to_add, &mm(0.0));
        prop_assert!(held.iter().all(|side| near(side.in_unit(&unit::MILLIMETRE), each, 1e-9)));
    }

    #[test]
    fn the_drag_of_the_side_bearings_comes_back_from_the_rise_it_makes(pinion in 0.1..5.0f64, drag in 0.0..10.0f64, ratio in 2.0..10.0f64) {
        let (pinion, drag, ratio) = (Torque::exact(pinion), Torque::exact(drag), Ratio::exact(ratio));
        let rise = turning_torque_with_carrier(&pinion, &drag, &ratio) - pinion;
        prop_assert!(near(drag_behind_rise(&rise, &ratio).value(), drag.value(), 1e-9));
    }
}
