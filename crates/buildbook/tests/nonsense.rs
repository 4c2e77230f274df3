//! Nonsense in any field of any sheet, filled in any order: no panic, no figure that is no number, and every other result stays.

use buildbook::sheets::spec_of;
use buildbook::{Book, Entry, Field, Findings, Form, Key, SHEETS, evaluate, example};
use measure::{Figure, Manner, System, show, show_working};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::Index;

/// Every field that there is; a star stands for a row.
fn fields() -> Vec<(String, &'static Field)> {
    let of = |sheet: &&str| spec_of(sheet).map(|spec| spec.fields(sheet));
    SHEETS.iter().filter_map(of).flatten().collect()
}

const NONSENSE: &[&str] = &[
    "0",
    "-1",
    "1e9",
    "1e-9",
    "1e300",
    "-1e18",
    "0 ± 0",
    "1 ± 1e9",
    "5 ± 100 %",
    "1 ± 1e17",
    "0/0",
    "1/0",
    "0/9",
    "9/0",
    "NaN",
    "inf",
    "∞",
    "½",
    "1,250",
    "1.250,5",
    "12 thou",
    "1 in 1",
    "90°",
    "-90°",
    "185/80 R 14",
    "34x7",
    "7.50-16",
    "0x0",
    "30x3 1/0",
    "text",
    "é\u{202e}",
    "0.0001",
    "99999",
    "1 mm",
    "1 m",
    "1 kg",
    "1 N",
    "100 %",
    "0 %",
    "exact",
    "1 exact",
    "1 +0 -0",
    "2026-02-30",
    "12.50",
    "EUR 1",
    "main",
    "helper",
    "rebound",
    "up",
    "down",
    "yes",
    "no",
];

/// What is typed: nonsense, an end of the field's limits, or something between them.
fn text(field: &Field, (what, place, share): (u8, Index, f64)) -> String {
    let nonsense = || (*place.get(NONSENSE)).to_owned();
    match field.form {
        _ if what < 40 => nonsense(),
        Form::Choice(of) => (*place.get(of)).to_owned(),
        Form::YesNo => "yes".to_owned(),
        Form::Number(number) => {
            let (lowest, highest) = (number.lowest, number.highest.min(1e6));
            let si = match what {
                40..50 => lowest,
                50..60 => highest,
                _ if lowest > 0.0 => lowest * (highest / lowest).powf(share),
                _ => lowest + (highest - lowest) * share,
            };
            let unit = number.unit(System::Metric);
            let value = unit.from_si(si);
            let value = if number.whole { value.round() } else { value };
            let error = ["", " exact", " ± 90 %"][usize::from(what) % 3];
            format!("{value} {}{error}", unit.symbol)
        }
        _ => nonsense(),
    }
}

fn is_sound(id: &str, figure: &Figure) -> Result<(), TestCaseError> {
    let numbers = [figure.value(), figure.plus(), figure.minus()];
    prop_assert!(
        numbers.iter().all(|number| number.is_finite()) && numbers[1] >= 0.0 && numbers[2] >= 0.0,
        "{id}: {numbers:?}"
    );
    let manner = Manner::default();
    let told = show(figure, &manner).to_string();
    prop_assert!(
        !told.contains("NaN") && !told.contains("inf"),
        "{id}: {told}"
    );
    let _ = show_working(&figure.working(), &manner);
    Ok(())
}

fn are_sound(findings: &Findings) -> Result<(), TestCaseError> {
    for sheet in SHEETS {
        let Some(found) = findings.found(sheet) else {
            continue;
        };
        for (id, finding) in found.results() {
            if let Ok(figure) = finding {
                is_sound(id, figure)?;
            }
        }
        for remark in &found.remarks {
            for figure in &remark.figures {
                is_sound(remark.fact, figure)?;
            }
        }
    }
    Ok(())
}

fn typings() -> impl Strategy<Value = Vec<(Index, u8, (u8, Index, f64))>> {
    vec(
        (
            any::<Index>(),
            1_u8..5,
            (0_u8..100, any::<Index>(), 0.0..1.0),
        ),
        1..60,
    )
}

proptest! {
    // Each case evaluates a book of ten sheets several times.
    #![proptest_config(ProptestConfig::with_cases(32))]

    #[test]
    fn any_nonsense_in_any_fields_gives_numbers_or_reasons(typings in typings(), from_example in any::<bool>(), sheet in any::<Index>()) {
        let all = fields();
        // Half of the typings meet on one sheet, so that its results come about.
        let one = *sheet.get(&SHEETS);
        let of_one: Vec<_> = all.iter().filter(|(pattern, _)| pattern.starts_with(one)).cloned().collect();
        let mut book = if from_example { example::book() } else { Book::new("b") };
        let mut before = evaluate(&book, None);
        for (n, (which, row, what)) in typings.into_iter().enumerate() {
            let (pattern, field) = which.get(if n % 2 == 0 { &all } else { &of_one });
            let key = Key::from(pattern.replace('*', &row.to_string()));
            book = book.with(&book.setting(key, Some(Entry::new(text(field, what)))));
            if n % 8 == 0 {
                before = evaluate(&book, Some(&before));
                are_sound(&before)?;
            }
        }
        are_sound(&evaluate(&book, None))?;
    }
}
