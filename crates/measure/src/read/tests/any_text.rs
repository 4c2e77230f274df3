//! Properties that hold for any text and any field.

use proptest::prelude::*;

use super::metric;
use crate::kind::Kind;
use crate::manner::{Manner, System};
use crate::mark::Mark;
use crate::read::{Ask, read};

proptest! {
    #[test]
    fn no_text_stops_the_reader(text in "\\PC{0,40}", kind in 0..Kind::all().len()) {
        let kind = Kind::all().nth(kind).unwrap();
        let _ = read(&text, &metric(kind));
    }

    #[test]
    fn no_text_of_the_trades_characters_stops_the_reader(
        text in "[0-9 .,/'\"±+°%:()eE-]{0,12}[a-z²·]{0,4}[0-9 .,/'\"±+%-]{0,8}",
        kind in 0..Kind::all().len(),
    ) {
        let kind = Kind::all().nth(kind).unwrap();
        let ask = metric(kind);
        match read(&text, &ask) {
            Ok(reading) => {
                prop_assert!(reading.value.is_finite() && reading.plus >= 0.0 && reading.minus >= 0.0);
                prop_assert!(reading.plus.is_finite() && reading.minus.is_finite());
            }
            Err(error) => {
                prop_assert!(error.at.start <= error.at.end && error.at.end <= text.chars().count());
                prop_assert!(read(&error.example, &ask).is_ok(), "{}", error.example);
            }
        }
    }

    #[test]
    fn an_example_is_always_right_for_its_field(
        kind in 0..Kind::all().len(), low in -3.0..6.0f64, width in 0.02..5.0f64, us in any::<bool>(), comma in any::<bool>(),
    ) {
        let kind = Kind::all().nth(kind).unwrap();
        prop_assume!(kind != Kind::Temperature);
        let manner = Manner {
            mark: if comma { Mark::Comma } else { Mark::Point },
            ..Manner::of(if us { System::UnitedStates } else { System::Metric })
        };
        let plain = Ask::of(kind, &manner);
        let lowest = plain.bare.to_si(10f64.powf(low));
        let highest = plain.bare.to_si(10f64.powf(low + width) + if plain.whole { 2.0 } else { 0.0 });
        let ask = Ask { lowest: Some(lowest), highest: Some(highest), ..plain };
        let error = read("", &ask).unwrap_err();
        let reading = read(&error.example, &ask);
        prop_assert!(reading.as_ref().is_ok_and(|r| r.ambiguous.is_none()), "{} {reading:?}", error.example);
    }

    #[test]
    fn a_conversion_comes_back(kind in 0..Kind::all().len(), value in -1e6..1e6f64) {
        for unit in Kind::all().nth(kind).unwrap().units() {
            let back = unit.from_si(unit.to_si(value));
            prop_assert!((back - value).abs() <= 1e-12 * (value.abs() + unit.offset.abs()), "{} {value} {back}", unit.symbol);
        }
    }
}
