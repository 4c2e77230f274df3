//! The example book: an invented 1967 flatbed lorry that carried hops on a farm, right-hand drive, going to left-hand drive for a
//! vineyard abroad. Maker, places and figures are made up.

mod before;
mod conversion;
mod costs;
mod final_drive;
mod gearing;
mod handover;
mod marking;
mod paint;
mod springs;
mod torque;
mod vehicle;

use crate::{Book, Entry, Key, NAME_KEY};

/// The identity of the example book.
pub const ID: &str = "example";

/// Entries of the example book as they would be typed, in metric units where bare.
type Typed = &'static [(&'static str, &'static str)];

const BOOK: Typed = &[
    (NAME_KEY, "Hop lorry (example)"),
    ("book/defaults", "2"),
    ("book/currency", "GBP"),
    ("book/units", "metric"),
];

/// The example book.
#[must_use]
pub fn book() -> Book {
    let sheets = [
        BOOK,
        vehicle::ENTRIES,
        marking::ENTRIES,
        conversion::ENTRIES,
        gearing::ENTRIES,
        final_drive::ENTRIES,
        springs::ENTRIES,
        torque::ENTRIES,
        paint::ENTRIES,
        costs::ENTRIES,
        handover::ENTRIES,
    ];
    let entries = sheets.into_iter().flatten();
    before::kept(Book::of(
        ID,
        entries.map(|(key, text)| (Key::from(*key), Entry::new(*text))),
    ))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        Befores, Findings, Lack, RANK, SHEETS, State, before_and_now_of, evaluate, field_of,
        frozen_key,
    };

    #[test]
    fn every_entry_of_the_example_stands_in_a_field_and_can_be_read() {
        let book = book();
        for (key, _) in book.entries() {
            let key = frozen_key(key).unwrap_or_else(|| key.clone());
            assert!(
                field_of(&key).is_some() || key.field() == RANK,
                "{key} is no field"
            );
        }
        let befores = Befores::of(&book, None);
        let before = SHEETS.into_iter().filter_map(|sheet| befores.sheet(sheet));
        let before: Vec<&Findings> = before.map(|(_, findings)| findings).collect();
        let now = evaluate(&book, None);
        for findings in before.into_iter().chain([&now]) {
            for sheet in SHEETS {
                assert_eq!(
                    findings.found(sheet).map(|found| found.errors.as_slice()),
                    Some([].as_slice()),
                    "{sheet}"
                );
            }
        }
    }

    #[test]
    fn the_example_keeps_what_it_was_bought_as_and_what_has_changed_since() {
        let book = book();
        let (now, befores) = (evaluate(&book, None), Befores::of(&book, None));
        for (sheet, result) in [
            ("gearing", "gearing/cruise"),
            ("springs", "springs/rate/4"),
            ("conversion", "conversion/link/now"),
        ] {
            let (_, before) = befores.sheet(sheet).unwrap();
            let row = before_and_now_of(
                result,
                before.found(sheet).unwrap(),
                now.found(sheet).unwrap(),
            );
            assert!(row.change.is_some_and(|change| change.clear), "{result}");
        }
    }

    #[test]
    fn the_example_is_complete_on_the_vehicle_sheet() {
        let findings = evaluate(&book(), None);
        let found = findings.found("vehicle").unwrap();
        assert_eq!(found.state(), State::Ready);
        let lacking: Vec<_> = found
            .results()
            .filter(|(_, finding)| finding.as_ref().is_err_and(Lack::is_blank))
            .collect();
        assert!(lacking.is_empty(), "{lacking:?}");
    }

    #[test]
    fn the_example_is_complete_on_the_conversion_the_axle_and_its_joints() {
        let findings = evaluate(&book(), None);
        for sheet in ["conversion", "final_drive", "torque"] {
            let found = findings.found(sheet).unwrap();
            let lacking: Vec<_> = found
                .results()
                .filter(|(_, finding)| finding.is_err())
                .collect();
            assert!(lacking.is_empty(), "{lacking:?}");
        }
    }

    #[test]
    fn the_example_is_complete_on_the_costs_sheet() {
        let findings = evaluate(&book(), None);
        let costs = &findings.costs;
        assert_eq!(costs.found.state(), State::Ready);
        let lacking: Vec<_> = costs
            .found
            .amounts()
            .filter(|(_, finding)| finding.is_err())
            .collect();
        assert!(lacking.is_empty(), "{lacking:?}");
        assert!(costs.settlement.is_ok() && costs.worth.is_ok());
    }
}
