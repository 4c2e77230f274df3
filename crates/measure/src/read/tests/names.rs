//! The names of units, and the examples of fields.

use super::understood;
use crate::kind::Kind;
use crate::manner::{Manner, System};
use crate::mark::Mark;
use crate::read::characters::spell;
use crate::read::{Ask, read};

fn unit_spelling(written: &[char]) -> String {
    let mut spelling = String::new();
    spell(&mut spelling, written);
    spelling
}

#[test]
fn every_unit_is_known_by_its_symbol_and_spelt_names() {
    for kind in Kind::all() {
        for unit in kind.units() {
            assert_eq!(unit.dims, kind.dims(), "{}", unit.symbol);
            let symbol: Vec<char> = unit.symbol.chars().collect();
            assert!(
                unit.symbol.is_empty() || unit.names.contains(&unit_spelling(&symbol).as_str()),
                "{}",
                unit.symbol
            );
            for name in unit.names {
                let spelt: Vec<char> = name.chars().collect();
                assert_eq!(&unit_spelling(&spelt), name, "{} in {}", name, unit.symbol);
            }
        }
        for system in [System::Metric, System::Imperial, System::UnitedStates] {
            assert!(
                kind.units().contains(&kind.default_unit(system)),
                "{kind:?}"
            );
        }
    }
}

#[test]
fn no_two_units_of_a_kind_share_a_name_except_those_of_two_countries() {
    for kind in Kind::all() {
        for (place, one) in kind.units().iter().enumerate() {
            for other in &kind.units()[place + 1..] {
                let shared = one.names.iter().any(|name| other.names.contains(name));
                assert!(
                    !shared || (one.system.is_some() && other.system.is_some()),
                    "{} {}",
                    one.symbol,
                    other.symbol
                );
            }
        }
    }
}

#[test]
fn every_kind_reads_its_own_example_in_every_book() {
    for kind in Kind::all() {
        for units in [System::Metric, System::Imperial, System::UnitedStates] {
            for mark in [Mark::Point, Mark::Comma] {
                let ask = Ask::of(
                    kind,
                    &Manner {
                        mark,
                        ..Manner::of(units)
                    },
                );
                let error = read("?", &ask).unwrap_err();
                let reading = understood(&error.example, &ask);
                assert_eq!(reading.ambiguous, None, "{kind:?} {}", error.example);
            }
        }
    }
}
