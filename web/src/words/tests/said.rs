//! Whatever a sheet can find has words: the example is walked, each of its entries changed in turn, and the sources are read.

use crate::words::*;
use buildbook::{Entry, Findings, Form, SHEETS, evaluate, example, field_of, sheets::spec_of};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// What has no words among the findings, of those sheets that found something else than before.
fn unsaid(
    findings: &Findings,
    before: Option<&Findings>,
    missing: &mut BTreeSet<String>,
    seen: &mut BTreeSet<String>,
) {
    for sheet in SHEETS {
        let (Some(found), Some(words)) = (findings.found(sheet), subject(sheet)) else {
            panic!("{sheet} has no findings or no words");
        };
        let before = before.and_then(|before| before.found(sheet));
        if before.is_some_and(|before| std::ptr::eq(before, found)) {
            continue;
        }
        let ids = found
            .results()
            .map(|(id, _)| id)
            .chain(found.amounts().map(|(id, _)| id));
        for id in ids {
            // Looked up once: most changes find what was found before.
            if !seen.contains(&**id) && seen.insert(id.to_string()) && words.result(id).is_none() {
                missing.insert(format!("result {id}"));
            }
        }
        for remark in &found.remarks {
            let new = seen.insert(format!("{sheet}: {}", remark.fact));
            if new && crate::words::found(words.remarks, remark.fact).is_none() {
                missing.insert(format!("remark of {sheet}: {}", remark.fact));
            }
        }
    }
}

/// What may stand in a field besides what stands there: nothing, its limits, every other choice.
fn otherwise(key: &Key) -> Vec<Option<Entry>> {
    let mut texts: Vec<String> = match field_of(key).map(|field| field.form) {
        Some(Form::Number(number)) => {
            let unit = number.unit(measure::System::Metric);
            [number.lowest, number.highest]
                .iter()
                .filter(|limit| limit.abs() < 1e12)
                .map(|limit| format!("{} {} exact", unit.from_si(*limit), unit.symbol))
                .collect()
        }
        Some(Form::Choice(choices)) => choices.iter().map(ToString::to_string).collect(),
        Some(Form::YesNo) => vec!["yes".to_owned(), "no".to_owned()],
        _ => Vec::new(),
    };
    texts.push(String::new());
    texts
        .into_iter()
        .map(|text| (!text.is_empty()).then(|| Entry::new(text)))
        .collect()
}

#[test]
fn whatever_the_example_comes_to_with_any_entry_changed_has_words() {
    let book = example::book();
    let findings = evaluate(&book, None);
    let (mut missing, mut seen) = (BTreeSet::new(), BTreeSet::new());
    unsaid(&findings, None, &mut missing, &mut seen);
    let mut keys: BTreeSet<Key> = book.entries().map(|(key, _)| key.clone()).collect();
    // And the fields that the example leaves blank, in the first row of their list.
    for sheet in SHEETS {
        let fields = spec_of(sheet).map(|spec| spec.fields(sheet));
        for (pattern, _) in fields.unwrap_or_default() {
            keys.insert(Key::from(pattern.replace('*', "1").as_str()));
        }
    }
    // What a field provokes in two rows of its list it provokes in any.
    let mut tried: BTreeMap<String, u32> = BTreeMap::new();
    for key in keys {
        let times = tried.entry(key.pattern()).or_default();
        *times += 1;
        if *times > 2 {
            continue;
        }
        for entry in otherwise(&key) {
            if entry.is_none() && book.entry(key.as_str()).is_none() {
                continue;
            }
            let changed = book.with(&book.setting(key.clone(), entry));
            unsaid(
                &evaluate(&changed, Some(&findings)),
                Some(&findings),
                &mut missing,
                &mut seen,
            );
        }
    }
    assert!(missing.is_empty(), "no words for {missing:#?}");
    let remarks = seen.iter().filter(|said| said.contains(": ")).count();
    assert!(remarks > 60, "only {remarks} remarks were provoked");
}

/// The sources of a sheet: `sheets/x.rs` and what stands in `sheets/x/`, without its tests.
fn sources(sheet: &str) -> String {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../crates/buildbook/src/sheets");
    let mut files = vec![folder.join(format!("{sheet}.rs"))];
    if let Ok(inner) = std::fs::read_dir(folder.join(sheet)) {
        files.extend(inner.flatten().map(|entry| entry.path()));
    }
    files
        .iter()
        .filter(|path| path.file_name().is_some_and(|name| name != "tests.rs"))
        .filter_map(|path| std::fs::read_to_string(path).ok())
        .collect()
}

#[test]
fn every_remark_that_a_sheet_names_has_words() {
    let mut missing = Vec::new();
    let mut count = 0;
    for sheet in SHEETS {
        let Some(words) = subject(sheet) else {
            panic!("{sheet} has no words")
        };
        let source = sources(sheet);
        for made in ["Remark::new(", "Remark::standing("] {
            for part in source.split(made).skip(1) {
                // The rank, a comma, and the fact between quotes; a fact that is a variable is provoked by the other test.
                let arguments = part.split(')').next().unwrap_or_default();
                let Some(fact) = arguments.split('"').nth(1) else {
                    continue;
                };
                count += 1;
                if found(words.remarks, fact).is_none() {
                    missing.push(format!("{sheet}: {fact}"));
                }
            }
        }
    }
    assert!(count > 80, "only {count} remarks were found");
    assert!(missing.is_empty(), "no words for {missing:#?}");
}
