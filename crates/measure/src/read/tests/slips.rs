//! Slips: where they are pointed at, and what is said of them.

use super::{metric, understood};
use crate::kind::Kind;
use crate::read::{Ask, EntryProblem, read};
use crate::unit;

#[test]
fn slips_are_pointed_at() {
    use EntryProblem as P;
    let length = Kind::Length;
    for (kind, text, at, why) in [
        (length, "", 0..0, P::Empty),
        (length, "   ", 0..3, P::Empty),
        (length, "mm", 0..1, P::NoNumber),
        (length, "± 5", 0..1, P::NoNumber),
        (length, "'12", 0..1, P::NoNumber),
        (length, "2 x 4", 2..3, P::NotOneValue),
        (Kind::Mass, "12-2-14", 2..3, P::NotOneValue),
        (length, "12 mm (± 0.1", 6..7, P::Brackets),
        (length, "12 quid", 3..7, P::UnknownUnit("quid".into())),
        (length, "12 kg", 3..5, P::WrongUnit(&unit::KILOGRAM)),
        (
            Kind::Mass,
            "26 lb ft",
            3..8,
            P::WrongUnit(&unit::POUND_FOOT),
        ),
        (length, "12 ! mm", 3..4, P::Character('!')),
        (length, "12 mm !", 6..7, P::Character('!')),
        (length, "5.60-15", 4..5, P::NotOneValue),
        (length, "3 + 4", 2..3, P::OneSided),
        (length, "3 - 4", 2..3, P::NotOneValue),
        (length, "3 * 4", 2..3, P::NotOneValue),
        (length, "3 to 4 mm", 2..4, P::NotOneValue),
        (length, "3 +4 +5", 2..3, P::NotOneValue),
        (length, "3 ± -4", 4..5, P::SignedTolerance),
        (length, "3 ±", 3..3, P::NoNumber),
        (length, "3 ± 4 5", 6..7, P::NotOneValue),
        (length, "12 34", 3..4, P::NotOneValue),
        (length, "12 mm 5", 7..7, P::UnitMissing),
        (length, "3 in 4 ft", 7..9, P::PartsNotDescending),
        (length, "4 ft 15 in", 5..7, P::PartTooLarge),
        (length, "4.5 ft 3 in", 0..3, P::PartNotWhole),
        (length, "1/0", 2..3, P::Fraction),
        (length, "1.5/4", 3..4, P::Fraction),
        (length, "1 5/4", 2..5, P::ImproperFraction),
        (length, "12,34,567", 2..3, P::Thousands),
        (length, "1.2.3", 1..2, P::Thousands),
        (length, "1,250.5,3", 7..8, P::Thousands),
        (length, "(3 ± 1 mm", 0..1, P::Brackets),
        (length, "3 ± 1) mm", 5..6, P::Brackets),
        (length, "-3", 0..2, P::Negative),
        (length, "1e308", 0..5, P::Boundless),
        (length, "1e99999999999", 0..13, P::Boundless),
        (length, "999999999999999999999", 0..21, P::Boundless),
        (Kind::Count, "37.5", 0..4, P::NotWhole),
        (Kind::Ratio, "4:0", 2..3, P::Fraction),
        (Kind::Temperature, "20 ± 2 %", 5..6, P::PercentOfDegrees),
        (Kind::Slope, "90°", 0..3, P::Boundless),
    ] {
        let error = read(text, &metric(kind)).unwrap_err();
        assert_eq!((error.at, error.why), (at, why), "{text}");
        understood(&error.example, &metric(kind));
    }
    let long = "1".repeat(300);
    assert_eq!(
        read(&long, &metric(length)).unwrap_err().why,
        P::TooLong { longest: 200 }
    );
}

#[test]
fn limits_are_told_in_the_unit_of_the_field() {
    let ask = Ask {
        lowest: Some(0.5),
        highest: Some(2.0),
        bare: &unit::INCH,
        ..metric(Kind::Length)
    };
    let error = read("3 m", &ask).unwrap_err();
    assert_eq!(error.at, 0..3);
    assert_eq!(
        error.why,
        EntryProblem::TooLarge {
            highest: 2.0 / 0.0254,
            unit: &unit::INCH
        }
    );
    assert!(matches!(
        read("3", &ask).unwrap_err().why,
        EntryProblem::TooSmall { .. }
    ));
    let reading = understood(&error.example, &ask);
    assert!((0.5..=2.0).contains(&reading.value), "{}", error.example);
    // A limit typed in another unit is still within it.
    assert!(read("6.5616797900262469 ft", &ask).is_ok());
}

#[test]
fn an_example_is_in_the_unit_of_the_field() {
    let ask = Ask {
        bare: &unit::INCH,
        ..metric(Kind::Length)
    };
    assert_eq!(read("", &ask).unwrap_err().example, "4 5/16 in");
}

#[test]
fn a_tolerance_that_leaves_nothing_of_a_value_above_nought_is_pointed_at() {
    let above = Ask {
        lowest: Some(0.001),
        ..metric(Kind::Length)
    };
    for (text, at) in [
        ("8 ± 20 mm", 4..6),
        ("8 +1 -8 mm", 6..7),
        ("8 mm ± 100 %", 7..10),
    ] {
        let error = read(text, &above).unwrap_err();
        assert_eq!(
            (error.at, error.why),
            (at, EntryProblem::ToleranceTooLarge),
            "{text}"
        );
    }
    assert!(read("8 +20 -7.9 mm", &above).is_ok());
    // Where nought is possible, so is any tolerance: a block of 0 ± 1 mm.
    assert!(read("0 ± 1 mm", &metric(Kind::Length)).is_ok());
}
