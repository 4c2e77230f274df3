//! Nonsense in any entry of the axle or of a joint is told at its field, and spoils only what rests on it.

use std::collections::BTreeSet;

use crate::evaluate::evaluate_only;
use crate::{Entry, Found, Key, Why, evaluate, example, field_of};

/// What a tired hand, a torn page or a cat on the keys may put in.
const NONSENSE: [&str; 9] = [
    "abc",
    "-5",
    "0",
    "1e300",
    "inf",
    "0,15 mm",
    "12 parsnips",
    "1/0",
    "99999999999999999999999999999999999999999999",
];

/// The results of a sheet that there are.
fn known(found: &Found) -> BTreeSet<&str> {
    let there = found.results().filter(|(_, finding)| finding.is_ok());
    there.map(|(id, _)| &**id).collect()
}

#[test]
fn nonsense_is_told_at_its_field_and_other_results_stay() {
    let whole = example::book();
    let before = evaluate(&whole, None);
    for sheet in ["final_drive", "torque"] {
        let sound = known(before.found(sheet).expect("a sheet"));
        for key in whole.sheet(sheet).keys() {
            for text in NONSENSE {
                let entry = Entry::new(text);
                let book = whole.with(&whole.setting(key.clone(), Some(entry.clone())));
                let findings = evaluate_only(&book, &before, sheet);
                let found = findings.found(sheet).expect("a sheet");
                let told = |key: &Key| found.errors.iter().any(|(at, _)| at == key);
                if let Some(number) = field_of(key).and_then(|field| field.number()) {
                    let read = measure::read(text, &crate::ask(number, &entry));
                    assert!(read.is_ok() || told(key), "`{text}` at {key} is not told");
                }
                for (id, finding) in found.results() {
                    match finding {
                        Ok(figure) => {
                            assert!(figure.value().is_finite(), "{id}: `{text}` at {key}");
                        }
                        Err(lack) => {
                            if let Why::Entry(at) = lack.why() {
                                assert!(
                                    told(at),
                                    "{id} blames {at}, which nobody tells: `{text}` at {key}"
                                );
                            }
                        }
                    }
                }
                // Most of the sheet stands, whatever one entry holds.
                let left = known(found).intersection(&sound).count();
                assert!(
                    left * 2 > sound.len(),
                    "{left} of {}: `{text}` at {key}",
                    sound.len()
                );
            }
        }
    }
}
