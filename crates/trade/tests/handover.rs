//! Handing over: brakes on the tester, toe, date codes, days that a distance takes.

use measure::{Force, Length, Mass, unit};
use proptest::prelude::*;
use trade::TradeError;
use trade::handover::*;

fn newton(value: f64) -> Force {
    Force::of(value, &unit::NEWTON)
}

#[test]
fn a_date_code_is_read_with_or_without_the_letters_before_it() {
    // 49 CFR 574.5, and the examples of tests/reference/handover.toml.
    let code = DateCode::read(" DOT 4B9R FLM 3500 ").unwrap();
    assert_eq!((code.week, code.year, code.sure), (35, 2000, true));
    let old = DateCode::read("439").unwrap();
    assert_eq!((old.week, old.year, old.sure), (43, 1999, false));
    for text in ["", "5426", "0019", "19", "23W9", "+319", "23190", "-23"] {
        assert_eq!(DateCode::read(text), Err(TradeError::TyreDate), "{text}");
    }
}

#[test]
fn a_vehicle_that_stands_still_reaches_no_distance() {
    let (far, none) = (Length::exact(80_000.0), Length::exact(0.0));
    assert!(matches!(
        due_after(&far, &none),
        Err(TradeError::OutOfRange {
            entry: "per_week",
            ..
        })
    ));
}

proptest! {
    #[test]
    fn sides_may_be_told_in_either_order(left in 1.0..9e4, right in 1.0..9e4) {
        let (left, right) = (newton(left), newton(right));
        let one = brake_imbalance(&left, &right).unwrap().value();
        let other = brake_imbalance(&right, &left).unwrap().value();
        prop_assert!((one - other).abs() < 1e-12 && (0.0..1.0).contains(&one));
        prop_assert!((toe_in(&Length::exact(1.0), &Length::exact(1.0 + one)).value() - one).abs() < 1e-12);
    }

    #[test]
    fn an_axle_at_its_limit_of_imbalance_has_the_weaker_side_at_seven_tenths(strong in 1.0..9e4) {
        let imbalance = brake_imbalance(&newton(strong), &newton(0.7 * strong)).unwrap();
        prop_assert!((imbalance.value() - 0.3).abs() < 1e-12);
    }

    #[test]
    fn a_brake_that_pulls_its_own_weight_is_a_hundred_per_cent(mass in 50.0..4e4) {
        let weight = Force::of(mass, &unit::KILOGRAM_FORCE);
        let efficiency = brake_efficiency(&weight, &Mass::exact(mass)).unwrap();
        prop_assert!((efficiency.value() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn half_the_distance_takes_half_the_days(after in 1e3..1e8, week in 1e3..1e7) {
        let (after, week) = (Length::exact(after), Length::exact(week));
        let whole = due_after(&after, &week).unwrap().value();
        let half = due_after(&(&after / 2.0), &week).unwrap().value();
        prop_assert!((whole - 2.0 * half).abs() <= 1e-9 * whole);
        prop_assert!((due_at(&after, &week).value() - after.value() - week.value()).abs() < 1e-6);
    }
}
