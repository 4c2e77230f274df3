//! Springs behave as every spring maker knows they do, whatever the figures.

use measure::{Force, Kind, Length, Mass, Ratio, Reading, SpringRate, Stress};
use proptest::prelude::*;

use super::*;
use crate::TradeError;

fn mm(value: f64) -> Length {
    Length::of(value, &measure::unit::MILLIMETRE)
}

fn measured(key: &'static str, value_mm: f64, error_mm: f64) -> Length {
    let reading = Reading {
        plus: error_mm / 1000.0,
        minus: error_mm / 1000.0,
        stated: measure::Stated::Typed,
        ..Reading::exact(value_mm / 1000.0, &measure::unit::MILLIMETRE)
    };
    Length::entry(key, "t", Kind::Thickness, &reading)
}

fn leaf(kind: LeafKind, thickness_mm: f64, front_mm: f64, rear_mm: f64) -> Leaf {
    Leaf {
        kind,
        width: mm(60.0),
        thickness: mm(thickness_mm),
        front: mm(front_mm),
        rear: mm(rear_mm),
        arch: None,
        gap: None,
    }
}

/// Leaves of one thickness that step down evenly.
fn stepped(leaves: u8, thickness_mm: f64, front_mm: f64, rear_mm: f64) -> Vec<Leaf> {
    (0..leaves)
        .map(|i| {
            let share = 1.0 - f64::from(i) / f64::from(leaves);
            let kind = if i == 0 {
                LeafKind::Main
            } else {
                LeafKind::Graduated
            };
            leaf(kind, thickness_mm, front_mm * share, rear_mm * share)
        })
        .collect()
}

fn pack(leaves: Vec<Leaf>) -> Pack {
    Pack::new(Stress::exact(2e11), Length::exact(0.0), leaves).expect("a pack that can exist")
}

fn handbook(pack: &Pack) -> SpringRate {
    rate_of(pack, pack.carrying(), &Ratio::exact(1.1))
}

fn newtons(value: f64) -> Force {
    Force::exact(value)
}

proptest! {
    #[test]
    fn the_rate_rises_with_the_thickness_by_either_method(
        leaves in 1u8..9, thin in 4.0..9.0, more in 0.1..3.0, front in 300.0..700.0, rear in 300.0..700.0,
    ) {
        let thinner = pack(stepped(leaves, thin, front, rear));
        let thicker = pack(stepped(leaves, thin + more, front, rear));
        prop_assert!(handbook(&thinner).value() < handbook(&thicker).value());
        let load = newtons(1000.0);
        let by_beam = |pack: &Pack| Beam::new(pack, &load, &load).rate().value();
        prop_assert!(by_beam(&thinner) < by_beam(&thicker));
        let cubed = f64::powi((thin + more) / thin, 3);
        prop_assert!((handbook(&thicker).value() / handbook(&thinner).value() / cubed - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_spring_turned_end_for_end_is_the_same_spring(
        leaves in 1u8..9, front in 300.0..700.0, rear in 300.0..700.0, load in 100.0..9000.0,
    ) {
        let (one, other) = (pack(stepped(leaves, 7.0, front, rear)), pack(stepped(leaves, 7.0, rear, front)));
        prop_assert!((handbook(&one).value() / handbook(&other).value() - 1.0).abs() < 1e-9);
        let load = newtons(load);
        let (one, other) = (Beam::new(&one, &load, &load), Beam::new(&other, &load, &load));
        prop_assert!((one.rate().value() / other.rate().value() - 1.0).abs() < 1e-9);
        prop_assert!((one.unequal_drop().value() + other.unequal_drop().value()).abs() < 1e-9);
    }

    #[test]
    fn a_seat_half_way_does_not_turn(leaves in 1u8..9, half in 300.0..700.0, load in 100.0..9000.0) {
        let spring = pack(stepped(leaves, 7.0, half, half));
        let beam = Beam::new(&spring, &newtons(load), &newtons(load));
        prop_assert!(beam.unequal_drop().value().abs() < 1e-12);
        prop_assert_eq!(seat_turn(&spring, &mm(80.0)).value(), 0.0);
    }

    #[test]
    fn leaves_that_touch_only_at_their_tips_are_no_stiffer_than_leaves_that_share_one_curve(
        leaves in 1u8..9, front in 300.0..700.0, rear in 300.0..700.0,
    ) {
        let spring = pack(stepped(leaves, 7.0, front, rear));
        let load = newtons(1000.0);
        let tips = Beam::new(&spring, &load, &load).rate().value();
        prop_assert!(tips <= tight_rate(&spring).value() * (1.0 + 1e-9));
    }

    #[test]
    fn nip_stresses_hold_each_other_in_balance(arches in proptest::collection::vec(5.0..150.0f64, 2..8)) {
        let mut leaves = stepped(u8::try_from(arches.len()).unwrap_or(2), 7.0, 600.0, 600.0);
        for (leaf, arch) in leaves.iter_mut().zip(&arches) {
            leaf.arch = Some(mm(*arch * leaf.front.value() / 0.6));
        }
        let spring = pack(leaves);
        let sum: f64 = spring
            .carrying()
            .filter_map(|leaf| Some(nip_stress(&spring, leaf)?.value() * leaf.section_modulus().value()))
            .sum();
        prop_assert!(sum.abs() < 1e-3, "{sum} N m left over");
    }

    #[test]
    fn the_load_at_a_stress_brings_the_worst_leaf_to_that_stress(
        leaves in 1u8..9, allowed in 200.0..900.0,
    ) {
        let spring = pack(stepped(leaves, 7.0, 600.0, 650.0));
        let allowed = Stress::of(allowed, &measure::unit::NEWTON_PER_SQUARE_MILLIMETRE);
        let load = load_at_stress(&spring, &allowed);
        let line = LoadLine::straight(handbook(&spring));
        let bending = Bending::of(&spring, &load, &line);
        let worst = spring
            .carrying()
            .map(|leaf| bending.stress(&spring, leaf).value())
            .fold(0.0, f64::max);
        prop_assert!((worst / allowed.value() - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_worked_back_arch_gives_the_height_that_was_wanted(
        wanted in 50.0..400.0, travel in 10.0..200.0, under in any::<bool>(), block in 0.0..60.0,
    ) {
        let mounting = if under { Mounting::SpringUnderAxle } else { Mounting::SpringOverAxle };
        let seat = Seat { mounting, pad: mm(45.0), block: mm(block), pile: mm(56.0) };
        let travel = mm(travel);
        let free = free_arch_for(&seat, &mm(wanted), &travel, &mm(0.0));
        let height = seat.eye_line_height(&loaded_arch(&free, &travel));
        prop_assert!((height.in_unit(&measure::unit::MILLIMETRE) - wanted).abs() < 1e-9);
    }

    #[test]
    fn a_worked_back_leaf_lifts_by_what_was_wanted(lift in 5.0..40.0) {
        let spring = pack(stepped(5, 7.0, 600.0, 600.0));
        let factor = Ratio::exact(1.1);
        let load = newtons(6000.0);
        let like = spring.working()[2].clone();
        let travel = |pack: &Pack| &load / rate_of(pack, pack.carrying(), &factor);
        let thickness = leaf_thickness_for(&spring, &like, &|pack| Ok(travel(pack)), &mm(lift), Mounting::SpringOverAxle);
        if let Ok(thickness) = thickness {
            let extra = Leaf { thickness: thickness.clone(), ..like };
            let with = with_leaf(&spring, extra).expect("one leaf more");
            let lifted = (travel(&spring) - travel(&with)).value() + thickness.value();
            prop_assert!((lifted * 1000.0 - lift).abs() < 1e-6);
        }
    }

    #[test]
    fn the_press_finds_the_rate_and_friction_it_was_fed(
        rate in 20.0..200.0, friction in 0.0..500.0, preload in -200.0..500.0,
    ) {
        let point = |travel: f64, going: Going, sign: f64| PressPoint {
            travel: mm(travel),
            load: newtons(preload + rate * travel + sign * friction),
            going,
        };
        let points: Vec<_> = [0.0, 20.0, 40.0, 60.0]
            .into_iter()
            .flat_map(|x| [point(x, Going::Up, 1.0), point(x, Going::Down, -1.0)])
            .collect();
        let test = press_test(&points).expect("two branches");
        prop_assert!(f64::abs(test.rate.value() / 1000.0 - rate) < 1e-6);
        prop_assert!(f64::abs(test.friction.expect("two branches").value() - friction) < 1e-6);
    }

    #[test]
    fn the_uncertainty_of_the_rate_never_shrinks_when_a_thickness_is_known_worse(
        error in 0.01..0.5, worse in 0.0..0.5,
    ) {
        let of = |error: f64| {
            let mut leaves = stepped(4, 7.0, 600.0, 600.0);
            leaves[1].thickness = measured("springs/thickness", 7.0, error);
            let spring = pack(leaves);
            let load = newtons(1000.0);
            let beam = Beam::new(&spring, &load, &load);
            [handbook(&spring), beam.rate()].map(|rate| rate.figure(Kind::SpringRate).plus())
        };
        let (known, known_worse) = (of(error), of(error + worse));
        for (known, known_worse) in known.into_iter().zip(known_worse) {
            prop_assert!(known > 0.0 && known_worse >= known * (1.0 - 1e-9));
        }
    }
}

#[test]
fn a_block_lifts_a_spring_over_the_axle_and_lowers_one_under_it() {
    let height = |mounting: Mounting, block: f64| {
        let spring = pack(stepped(5, 8.0, 600.0, 600.0));
        let seat = Seat::of(&spring, mounting, mm(40.0), mm(block));
        seat.eye_line_height(&mm(60.0)).value()
    };
    assert!(height(Mounting::SpringOverAxle, 25.0) > height(Mounting::SpringOverAxle, 0.0));
    assert!(height(Mounting::SpringUnderAxle, 25.0) < height(Mounting::SpringUnderAxle, 0.0));
}

#[test]
fn a_helper_adds_nothing_until_it_touches() {
    let mut leaves = stepped(4, 7.0, 600.0, 600.0);
    let without = pack(leaves.clone());
    leaves.push(Leaf {
        gap: Some(mm(2.0)),
        ..leaf(LeafKind::Helper, 10.0, 140.0, 140.0)
    });
    let with = pack(leaves);
    let factor = Ratio::exact(1.1);
    let (plain, helped) = (
        load_line(&without, &factor).expect("no helper"),
        load_line(&with, &factor).expect("a gap"),
    );
    let touch = helped.helper.as_ref().expect("a helper").load.value();
    let (light, heavy) = (newtons(touch * 0.5), newtons(touch * 2.0));
    assert_eq!(plain.travel(&light).value(), helped.travel(&light).value());
    assert!(helped.travel(&heavy).value() < plain.travel(&heavy).value());
    assert!(helped.rate_at(&heavy).value() > helped.rate_at(&light).value());
    let beam = |load: &Force| Beam::new(&with, load, load).rate().value();
    assert!(beam(&heavy) > beam(&newtons(10.0)));
}

#[test]
fn the_load_at_bump_follows_the_helper_in() {
    let line = LoadLine {
        rate: SpringRate::exact(50_000.0),
        helper: Some(HelperStep {
            load: newtons(5000.0),
            rate: SpringRate::exact(80_000.0),
        }),
    };
    // 20 mm to the touch, 30 mm beyond it.
    let bump = line.load_after(&newtons(4000.0), &mm(50.0));
    assert!((bump.value() - (5000.0 + 80.0 * 30.0)).abs() < 1e-9);
    let travel = line.travel(&bump).value() - line.travel(&newtons(4000.0)).value();
    assert!((travel - 0.05).abs() < 1e-12);
}

#[test]
fn rebound_leaves_carry_nothing_and_stand_above_the_main_leaf() {
    let mut leaves = stepped(4, 7.0, 600.0, 600.0);
    let rate = handbook(&pack(leaves.clone())).value();
    leaves.insert(2, leaf(LeafKind::Rebound, 7.0, 500.0, 500.0));
    let with = pack(leaves);
    assert_eq!(with.leaves()[0].kind, LeafKind::Rebound);
    assert_eq!(handbook(&with).value(), rate);
    assert_eq!(with.pile().value(), 4.0 * mm(7.0).value());
}

#[test]
fn the_dead_length_is_taken_off_once() {
    let leaves = stepped(1, 8.0, 600.0, 600.0);
    let dead = dead_length(&mm(90.0), SeatRule::TwoThirds);
    let clamped = Pack::new(Stress::exact(2e11), dead, leaves).expect("a pack");
    let short = pack(stepped(1, 8.0, 570.0, 570.0));
    assert!((handbook(&clamped).value() / handbook(&short).value() - 1.0).abs() < 1e-12);
}

#[test]
fn what_cannot_exist_is_refused_with_its_number() {
    let refused = |leaves: Vec<Leaf>, dead: f64| {
        Pack::new(Stress::exact(2e11), mm(dead), leaves).expect_err("refused")
    };
    assert_eq!(
        refused(vec![leaf(LeafKind::Graduated, 7.0, 500.0, 500.0)], 0.0),
        TradeError::NoMainLeaf
    );
    let mut leaves = stepped(3, 7.0, 600.0, 600.0);
    leaves[2].front = mm(40.0);
    assert_eq!(
        refused(leaves.clone(), 100.0),
        TradeError::LeafWithinSeat { leaf: 3 }
    );
    leaves[1].thickness = mm(-1.0);
    assert_eq!(refused(leaves, 0.0), TradeError::LeafHasNoBody { leaf: 2 });
    let spring = pack(stepped(3, 7.0, 600.0, 600.0));
    assert_eq!(
        without_leaf(&spring, 4).expect_err("refused"),
        TradeError::NoSuchLeaf {
            number: 4,
            count: 3
        }
    );
    assert_eq!(
        without_leaf(&spring, 1).expect_err("refused"),
        TradeError::NoMainLeaf
    );
}

#[test]
fn before_equals_now_when_nothing_changes() {
    let spring = pack(stepped(6, 7.0, 600.0, 640.0));
    let same = as_new(&spring, &[]).expect("the same leaves");
    assert_eq!(handbook(&spring).value(), handbook(&same).value());
    let there_and_back = without_leaf(
        &with_leaf(&spring, leaf(LeafKind::Graduated, 7.0, 450.0, 450.0)).expect("one more"),
        3,
    )
    .expect("one fewer");
    let ratio = handbook(&there_and_back).value() / handbook(&spring).value();
    assert!((ratio - 1.0).abs() < 1e-12);
}

#[test]
fn the_drawing_stands_on_its_seat_and_its_eyes_on_the_arch() {
    let spring = pack(stepped(5, 8.0, 600.0, 600.0));
    let shape = SpringLie {
        pack: spring.clone(),
        arch_m: 0.110,
        eye_rise_m: 0.0,
    }
    .shape();
    let (_, front) = shape.front_eye;
    let (_, rear) = shape.rear_eye;
    assert!((front - 0.110).abs() < 1e-6 && (rear - 0.110).abs() < 1e-6);
    let middle = &shape.leaves[0].upper[24];
    assert!(middle.0.abs() < 1e-12 && middle.1.abs() < 1e-12);
    let lowest = shape.leaves[4].lower[24].1;
    assert!(
        (lowest + 0.040).abs() < 1e-12,
        "five leaves of 8 mm hang below"
    );
}

#[test]
fn a_share_of_the_axle_becomes_a_load() {
    let half = Ratio::exact(0.5);
    let load = spring_load(&Mass::exact(1840.0), &Mass::exact(310.0), &half);
    assert!((load.value() - 765.0 * 9.806_65).abs() < 1e-9);
}

#[test]
fn a_load_that_falls_with_the_travel_or_grows_when_it_comes_off_is_no_spring() {
    let points = |rate: f64, coming_off: f64| {
        let point = |travel: f64, going: Going, more: f64| PressPoint {
            travel: mm(travel),
            load: newtons(1000.0 + rate * travel + more),
            going,
        };
        [0.0, 50.0].map(|x| [point(x, Going::Up, 0.0), point(x, Going::Down, coming_off)])
    };
    let refused = |rate, coming_off| press_test(points(rate, coming_off).as_flattened()).err();
    assert_eq!(refused(-10.0, -50.0), Some(TradeError::PressFalls));
    assert_eq!(refused(10.0, 50.0), Some(TradeError::PressFalls));
    assert_eq!(refused(10.0, -50.0), None);
}
