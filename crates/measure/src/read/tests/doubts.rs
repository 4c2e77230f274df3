//! Entries that could mean two things.

use super::{close, metric, understood};
use crate::kind::Kind;
use crate::manner::{Manner, System};
use crate::mark::Mark;
use crate::read::Ask;
use crate::reading::Doubt;
use crate::unit;

#[test]
fn a_mark_before_three_digits_is_understood_by_the_book_and_asked() {
    let point = metric(Kind::Length);
    let reading = understood("1,250", &point);
    assert!(close(reading.value, 1.25));
    let doubt = reading.ambiguous.unwrap();
    assert_eq!(
        doubt.doubt,
        Doubt::Mark {
            understood: Mark::Point,
            otherwise: Mark::Comma
        }
    );
    assert!(close(doubt.understood, 1.25) && close(doubt.otherwise, 1.25e-3));
    let settled = understood(
        "1,250",
        &Ask {
            mark: Some(Mark::Comma),
            ..point
        },
    );
    assert!(close(settled.value, 1.25e-3) && settled.ambiguous.is_none());

    let comma = Ask {
        usual: Mark::Comma,
        ..point
    };
    let reading = understood("1.250", &comma);
    assert!(close(reading.value, 1.25));
    assert!(close(reading.ambiguous.unwrap().otherwise, 1.25e-3));
}

#[test]
fn the_books_own_decimal_mark_is_not_asked_about_but_is_to_be_kept() {
    let point = metric(Kind::Length);
    let reading = understood("1.250", &point);
    assert!(close(reading.value, 1.25e-3) && reading.ambiguous.is_none());
    assert_eq!(reading.mark, Some(Mark::Point));
    assert_eq!(understood("1.25", &point).mark, None);
    assert_eq!(understood("0,250", &point).ambiguous, None);
}

#[test]
fn the_limits_of_the_field_settle_a_mark() {
    let ask = Ask {
        lowest: Some(0.5),
        highest: Some(20.0),
        ..metric(Kind::Ratio)
    };
    let reading = understood("4,111", &ask);
    assert!(close(reading.value, 4.111) && reading.ambiguous.is_none());
    assert_eq!(reading.mark, Some(Mark::Comma));
    // A count is whole: there can be no comma for decimals in it.
    let count = understood("1.250", &metric(Kind::Count));
    assert!(close(count.value, 1250.0) && count.ambiguous.is_none());
}

#[test]
fn a_bare_gallon_is_that_of_the_book_and_asked_in_a_metric_one() {
    let british = Ask::of(Kind::Volume, &Manner::of(System::Imperial));
    let american = Ask::of(Kind::Volume, &Manner::of(System::UnitedStates));
    assert!(close(understood("2 gal", &british).value, 9.092_18e-3));
    assert!(close(
        understood("2 gal", &american).value,
        7.570_823_568e-3
    ));
    assert_eq!(understood("2 gal", &american).ambiguous, None);
    assert_eq!(
        understood("2 gal", &american).shared,
        Some(&unit::US_GALLON)
    );
    assert_eq!(understood("2 US gal", &american).shared, None);
    let doubt = understood("2 gal", &metric(Kind::Volume))
        .ambiguous
        .unwrap();
    assert_eq!(
        doubt.doubt,
        Doubt::Unit {
            understood: &unit::IMPERIAL_GALLON,
            otherwise: &unit::US_GALLON
        }
    );
    assert!(close(doubt.understood, 9.092_18e-3) && close(doubt.otherwise, 7.570_823_568e-3));
    let parts = understood("2 gal 3 pt", &metric(Kind::Volume))
        .ambiguous
        .unwrap();
    assert!(close(parts.otherwise, (16.0 + 3.0) * 0.473_176_473e-3));
}

#[test]
fn a_bare_fraction_in_millimetres_is_asked_about() {
    let reading = understood("5/16", &metric(Kind::Length));
    assert!(close(reading.value, 0.3125e-3));
    assert!(close(reading.ambiguous.unwrap().otherwise, 7.9375e-3));
}

#[test]
fn a_bare_value_with_an_error_in_another_unit_is_asked_about() {
    let reading = understood("12 ± 5 thou", &metric(Kind::Length));
    assert!(close(reading.value, 12.0 * 25.4e-6) && close(reading.plus, 5.0 * 25.4e-6));
    assert!(close(reading.ambiguous.unwrap().otherwise, 0.012));
}

#[test]
fn a_bare_degree_is_that_of_the_book() {
    let american = Ask::of(Kind::Temperature, &Manner::of(System::UnitedStates));
    let reading = understood("68°", &american);
    assert!(close(reading.value, 293.15));
    assert_eq!(
        (reading.shared, reading.ambiguous),
        (Some(&unit::FAHRENHEIT), None)
    );
    let british = Ask::of(Kind::Temperature, &Manner::of(System::Imperial));
    for ask in [british, metric(Kind::Temperature)] {
        let reading = understood("20°", &ask);
        assert!(close(reading.value, 293.15) && reading.ambiguous.is_none());
    }
}

#[test]
fn a_bare_fraction_in_per_cent_is_asked_about() {
    let reading = understood("1/4", &metric(Kind::Percent));
    assert!(close(reading.value, 0.0025) && close(reading.ambiguous.unwrap().otherwise, 0.25));
}
