//! Costs as a table, out and in again.

use measure::{Currency, Mark};
use proptest::prelude::*;

use super::tests::{JOB, book, money};
use super::*;
use crate::{Book, Key, Log, evaluate};

/// A purchase by the name that was typed on its sheet.
fn typed_name(line: &LineFinding) -> String {
    line.what.to_string()
}

/// What each line says and comes to, with payers by name.
fn said(book: &Book, findings: &CostsFindings) -> Vec<Vec<String>> {
    let rows = findings.lines.iter().map(|line| {
        let mut row: Vec<String> = CostLine::field_names()
            .map(|name| match name {
                "payer" => findings
                    .payers
                    .iter()
                    .find(|payer| Some(&payer.id) == line.payer.as_ref())
                    .map(|payer| payer.name.to_string())
                    .unwrap_or_default(),
                name => book
                    .entry(line.key.under(name).as_str())
                    .map(|e| e.text.trim().to_owned())
                    .unwrap_or_default(),
            })
            .collect();
        row.push(format!(
            "{:?}",
            line.amounts.as_ref().map(|amounts| amounts.total)
        ));
        row
    });
    rows.collect()
}

impl CostLine {
    fn field_names() -> impl Iterator<Item = &'static str> {
        <Self as crate::Row>::SPEC
            .items
            .iter()
            .map(|item| item.name)
    }
}

#[test]
fn a_table_that_went_out_comes_in_as_the_same_lines() {
    let book_out = book(JOB);
    let out = evaluate(&book_out, None);
    for mark in [Mark::Point, Mark::Comma] {
        let text = costs_table(&book_out, &out.costs, mark, &typed_name);
        let preview = preview(&text, Currency::GBP, mark);
        assert_eq!(preview.problems, []);
        let other = book(&[("payers/7/name", "partner"), ("tax", "20")]);
        let other = other.with(&preview.edit(&other, &Log::default()));
        let back = evaluate(&other, None);
        assert_eq!(
            back.costs.payers.len(),
            2,
            "the partner is known, the workshop is new"
        );
        let (mut sent, mut came) = (said(&book_out, &out.costs), said(&other, &back.costs));
        for row in sent.iter_mut().chain(&mut came) {
            for cell in row {
                *cell = cell.to_lowercase();
            }
        }
        assert_eq!(sent, came);
    }
}

#[test]
fn a_price_that_a_comma_makes_doubtful_comes_back_as_what_it_was_meant_to_be() {
    let priced = |text: &str, mark: Mark| {
        let entry = crate::Entry::new(text).with_mark(mark);
        Book::of("b", [(Key::from("costs/lines/1/price"), entry)])
    };
    for (text, typed_with, comes_to) in [
        ("1,250", Mark::Comma, "1.25 GBP"),
        ("1.250", Mark::Comma, "1250.00 GBP"),
        ("1,250", Mark::Point, "1250.00 GBP"),
    ] {
        for mark in [Mark::Point, Mark::Comma] {
            let sent = priced(text, typed_with);
            let table = costs_table(&sent, &evaluate(&sent, None).costs, mark, &typed_name);
            let came = Book::new("c");
            let came =
                came.with(&preview(&table, Currency::GBP, mark).edit(&came, &Log::default()));
            let planned = money(&evaluate(&came, None), "costs/planned");
            assert_eq!(planned, comes_to, "{text} of {typed_with:?} by {mark:?}");
        }
    }
}

#[test]
fn a_table_of_a_book_in_another_currency_keeps_its_currency() {
    let yen = Book::of(
        "b",
        [
            ("book/currency".into(), "JPY".into()),
            ("costs/lines/1/price".into(), "45000".into()),
            ("costs/lines/2/price".into(), "12 EUR".into()),
        ],
    );
    let table = costs_table(&yen, &evaluate(&yen, None).costs, Mark::Point, &typed_name);
    let rows = preview(&table, Currency::GBP, Mark::Point).rows;
    let prices: Vec<_> = rows.iter().map(|row| row[0].1.as_str()).collect();
    assert_eq!(prices, ["45000 JPY", "12 EUR"]);
}

#[test]
fn a_strange_table_is_shown_with_its_problems_and_nothing_of_it_is_lost() {
    let text =
        "What;Price;STATE;Colour;when\nHoses;12,50;Planned;red;soon\nBelt;lots;paid;;;extra\n";
    let preview = preview(text, Currency::EUR, Mark::Point);
    let odd: Vec<_> = preview
        .problems
        .iter()
        .map(|p| (p.row, p.column.as_str(), p.text.as_str()))
        .collect();
    assert_eq!(
        odd,
        [
            (0, "Colour", "Colour"),
            (0, "when", "when"),
            (2, "Price", "lots"),
            (2, "", "extra")
        ]
    );
    let empty = Book::of("b", [("book/currency".into(), "EUR".into())]);
    let book = empty.with(&preview.edit(&empty, &Log::default()));
    let text = |key: &str| {
        book.entry(key)
            .map(|entry| entry.text.to_string())
            .unwrap_or_default()
    };
    assert_eq!(text("costs/lines/1/note"), "Colour: red; when: soon");
    assert_eq!(text("costs/lines/2/price"), "lots");
    assert_eq!(text("costs/lines/2/note"), "extra");
    let found = evaluate(&book, None);
    assert_eq!(money(&found, "costs/planned"), "12.50 EUR");
    assert_eq!(found.costs.found.errors[0].0, "costs/lines/2/price");
}

#[test]
fn cells_without_a_heading_are_taken_as_what_price_and_state() {
    let preview = preview("Hoses,12.50\nBelt,8,paid\n", Currency::GBP, Mark::Point);
    assert_eq!(
        preview.rows[1],
        [
            ("what", "Belt".to_owned()),
            ("price", "8".to_owned()),
            ("state", "paid".to_owned())
        ]
    );
    assert_eq!(preview.problems[0].why, Problem::NoHeading);
}

proptest! {
    #[test]
    fn any_texts_go_out_and_come_in_unchanged(texts in prop::collection::vec(("[ -~€£\"';,\n]{0,12}", "[ -~€]{0,8}", 0_i64..100_000), 1..6)) {
        let mut entries = Vec::new();
        for (at, (what, note, price)) in texts.iter().enumerate() {
            entries.push((format!("costs/lines/{}/what", at + 1), what.clone()));
            entries.push((format!("costs/lines/{}/note", at + 1), note.clone()));
            entries.push((format!("costs/lines/{}/price", at + 1), format!("{}.{:02}", price / 100, price % 100)));
        }
        let sent = Book::of("b", entries.into_iter().map(|(key, text)| (Key::from(key), text.as_str().into())));
        let found = evaluate(&sent, None);
        let preview = preview(&costs_table(&sent, &found.costs, Mark::Point, &typed_name), Currency::GBP, Mark::Point);
        prop_assert_eq!(&preview.problems, &vec![]);
        let came = Book::new("c");
        let came = came.with(&preview.edit(&came, &Log::default()));
        let back = evaluate(&came, None);
        prop_assert_eq!(said(&sent, &found.costs), said(&came, &back.costs));
        prop_assert_eq!(found.costs.found.money("costs/planned").map(|m| m.as_ref().map(|m| m.money)), back.costs.found.money("costs/planned").map(|m| m.as_ref().map(|m| m.money)));
    }
}
