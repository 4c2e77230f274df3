//! What is reckoned again after an edit is what would be reckoned from nothing.

use std::collections::BTreeSet;

use buildbook::sheets::spec_of;
use buildbook::{Book, Entry, Form, Key, SHEETS, evaluate, example, field_of, reads};

/// Every entry and blank field of a sheet that others read, in the first row of each list.
fn keys(book: &Book, sheet: &str) -> BTreeSet<Key> {
    let first = |key: &Key| Key::from(key.pattern().replace('*', "1"));
    let entries = book.sheet(sheet);
    let fields = spec_of(sheet).map(|spec| spec.fields(sheet));
    let blank = fields.into_iter().flatten();
    entries
        .keys()
        .map(first)
        .chain(blank.map(|(pattern, _)| Key::from(pattern.replace('*', "1"))))
        .collect()
}

/// Something else that could stand in a field.
fn otherwise(book: &Book, key: &Key) -> Option<Entry> {
    let old = book.entry(key.as_str()).map(|entry| &*entry.text);
    let text = match field_of(key).map(|field| field.form) {
        Some(Form::Number(number)) => {
            let [lowest, highest] = [number.lowest, number.highest.min(1e4)];
            format!(
                "{} exact",
                number
                    .unit(measure::System::Metric)
                    .from_si(0.6 * lowest + 0.4 * highest)
                    .round()
            )
        }
        Some(Form::Choice(choices)) => choices
            .iter()
            .find(|choice| old != Some(**choice))?
            .to_string(),
        Some(Form::YesNo) if old == Some("yes") => "no".to_owned(),
        Some(Form::YesNo) => "yes".to_owned(),
        _ => format!("{}7", old.unwrap_or_default()),
    };
    Some(Entry::new(text))
}

#[test]
fn a_sheet_that_keeps_its_findings_would_find_the_same_from_nothing() {
    let book = example::book();
    // Shims are bought once they have a price.
    let book = book.with(&book.setting("final_drive/shim_price", Some("4".into())));
    let before = evaluate(&book, None);
    let mut kept = 0;
    for changed in [
        "vehicle",
        "marking",
        "gearing",
        "final_drive",
        "torque",
        "costs",
    ] {
        for key in keys(&book, changed) {
            let Some(entry) = otherwise(&book, &key) else {
                continue;
            };
            let after = book.with(&book.setting(key.clone(), Some(entry)));
            let again = evaluate(&after, Some(&before));
            let mut anew = None;
            for sheet in SHEETS
                .iter()
                .filter(|sheet| reads(sheet).contains(&changed))
            {
                let [old, new] = [&before, &again].map(|findings| findings.found(sheet));
                if old.map(std::ptr::from_ref) == new.map(std::ptr::from_ref) {
                    let anew = anew.get_or_insert_with(|| evaluate(&after, None));
                    assert!(new == anew.found(sheet), "{sheet} rests on {key}");
                    kept += 1;
                }
            }
        }
    }
    assert!(kept > 300, "only {kept} findings were kept");
}
