//! No refusal falls through to a sentence that says nothing: the trade's own list of reasons is read, and each has its words.

use super::limits;
use super::refusal::{no_answer, refusal};
use crate::words::{Tongue, frame};
use measure::{Currency, MeasureError, MoneyError};
use std::collections::BTreeSet;
use std::path::Path;
use trade::TradeError;
use trade::gearing::TyreFault;

/// One of each reason.
fn one_of_each() -> Vec<TradeError> {
    vec![
        TradeError::OutOfRange {
            entry: "kerf",
            lowest: 0.0,
            highest: 0.005,
        },
        TradeError::Money(MoneyError::Shares),
        TradeError::PaidTooMuch,
        TradeError::TooFew {
            entry: "corners",
            least: 3,
        },
        TradeError::OutlineCrosses {
            first: 0,
            second: 2,
        },
        TradeError::Undetermined { entry: "readings" },
        TradeError::CannotMeet { gap: 0.01 },
        TradeError::ReadingSpoils { by: -0.01 },
        TradeError::Tyre(TyreFault::NoRim),
        TradeError::Teeth,
        TradeError::TorquePoints,
        TradeError::TorquePeaks,
        TradeError::NoPull,
        TradeError::NoAxle,
        TradeError::NoLimit,
        TradeError::NoMainLeaf,
        TradeError::LeafHasNoBody { leaf: 2 },
        TradeError::LeafWithinSeat { leaf: 2 },
        TradeError::HelperWithoutGap { leaf: 2 },
        TradeError::NoSuchLeaf {
            number: 9,
            count: 5,
        },
        TradeError::ShackleCannotReach {
            shortest: 0.5,
            longest: 0.7,
        },
        TradeError::TooFewPoints { have: 1, need: 2 },
        TradeError::PressFalls,
        TradeError::Measure(MeasureError::NotFinite),
        TradeError::MakersFigureOnly,
        TradeError::NoPack { nearest: 0.0007 },
        TradeError::TyreDate,
        TradeError::CannotReach { link: "track rod" },
        TradeError::SteersBackwards,
        TradeError::SteersNotAtAll,
        TradeError::UpsideDown,
        TradeError::UnknownThread,
        TradeError::UnknownGrade,
    ]
}

/// The first word of a value as it is printed for developers: the name of its variant.
fn variant(error: &impl std::fmt::Debug) -> String {
    let said = format!("{error:?}");
    said.split(|c: char| !c.is_alphanumeric())
        .next()
        .unwrap_or_default()
        .to_owned()
}

/// The variants that a source file gives an enum.
fn variants(source: &str, name: &str) -> BTreeSet<String> {
    let start = source.find(&format!("enum {name}")).expect("the enum");
    let body = source[start..].split("\n}").next().unwrap_or_default();
    body.lines()
        .filter_map(|line| line.strip_prefix("    "))
        .filter(|line| line.starts_with(|c: char| c.is_ascii_uppercase()))
        .map(|line| {
            let end = line.find(|c: char| !c.is_alphanumeric());
            line[..end.unwrap_or(line.len())].to_owned()
        })
        .collect()
}

fn trade_sources() -> Vec<String> {
    fn read(folder: &Path, all: &mut Vec<String>) {
        for entry in std::fs::read_dir(folder).expect("a folder").flatten() {
            let path = entry.path();
            if path.is_dir() {
                read(&path, all);
            } else if path.extension().is_some_and(|ext| ext == "rs") {
                all.push(std::fs::read_to_string(&path).expect("a source file"));
            }
        }
    }
    let mut all = Vec::new();
    read(
        &Path::new(env!("CARGO_MANIFEST_DIR")).join("../crates/trade/src"),
        &mut all,
    );
    all
}

#[test]
fn the_samples_are_one_of_each_reason() {
    let source = include_str!("../../../../crates/trade/src/error.rs");
    let sampled: BTreeSet<String> = one_of_each().iter().map(variant).collect();
    assert_eq!(sampled, variants(source, "TradeError"));
}

#[test]
fn every_reason_has_a_sentence_of_its_own_in_both_kinds_of_english() {
    for tongue in [Tongue::British, Tongue::American] {
        let mut said = BTreeSet::new();
        for error in one_of_each() {
            let sentence = refusal(&error, tongue);
            let library = error.to_string().to_lowercase();
            assert_ne!(sentence, tongue.say(frame::NO_ANSWER), "{error:?}");
            assert_ne!(
                sentence.trim_end_matches('.').to_lowercase(),
                library.trim_end_matches('.'),
                "{error:?} says the library's text"
            );
            assert!(!sentence.contains('{'), "{error:?}: {sentence}");
            said.insert(sentence);
        }
        // Steering backwards and not at all are one sentence: mend the direction.
        assert_eq!(said.len(), one_of_each().len() - 1);
    }
}

#[test]
fn every_reason_of_measure_and_money_has_one_too() {
    let measure = include_str!("../../../../crates/measure/src/error.rs");
    let answers = [
        MeasureError::NoRoot {
            nearest: 1.0,
            remainder: 0.1,
        },
        MeasureError::NotFinite,
    ];
    let sampled: BTreeSet<String> = answers.iter().map(variant).collect();
    assert_eq!(sampled, variants(measure, "MeasureError"));
    assert_ne!(no_answer(&answers[0]), no_answer(&answers[1]));
    let money = include_str!("../../../../crates/measure/src/money/error.rs");
    let errors = [
        MoneyError::Mixed {
            left: Currency::EUR,
            right: Currency::GBP,
        },
        MoneyError::Overflow,
        MoneyError::DividedByNothing,
        MoneyError::Fraction,
        MoneyError::Shares,
        MoneyError::Unreadable,
        MoneyError::Quantity,
    ];
    let sampled: BTreeSet<String> = errors.iter().map(variant).collect();
    assert_eq!(sampled, variants(money, "MoneyError"));
    let said: BTreeSet<String> = errors
        .iter()
        .map(|error| refusal(&TradeError::Money(*error), Tongue::British))
        .collect();
    assert_eq!(said.len(), errors.len());
}

#[test]
fn every_entry_that_a_calculation_names_has_words() {
    let mut unsaid = BTreeSet::new();
    let mut named = 0;
    for source in trade_sources() {
        for mark in ["entry: \"", "link: \"", "within(\""] {
            for part in source.split(mark).skip(1) {
                let name = part.split('"').next().unwrap_or_default();
                named += 1;
                if limits::entry(name, Tongue::British).is_none() {
                    unsaid.insert(name.to_owned());
                }
            }
        }
    }
    assert!(named > 40, "only {named} names were found");
    assert!(unsaid.is_empty(), "no words for {unsaid:?}");
}

#[test]
fn a_refusal_ends_in_what_would_be_right_in_both_units() {
    let range = |entry, lowest, highest| {
        refusal(
            &TradeError::OutOfRange {
                entry,
                lowest,
                highest,
            },
            Tongue::British,
        )
        .replace('\u{a0}', " ")
    };
    assert_eq!(
        range("wrench length", 0.0508, 2.54),
        "The wrench's length must lie between 50.8 mm (2 in) and 2540 mm (100 in)."
    );
    assert_eq!(
        range("thread friction", 0.04, 0.4),
        "The friction in the thread must lie between 0.04 and 0.4."
    );
    assert_eq!(
        range("rise", 0.0, f64::INFINITY),
        "The rise of the arc must be more than 0 mm (0 in)."
    );
    assert_eq!(
        refusal(
            &TradeError::CannotReach { link: "track rod" },
            Tongue::American
        ),
        "The tie rod cannot reach so far: look at the measures, and at how far the arm swings."
    );
}
