//! The costs sheet from typed text to sums worked out by hand.

use measure::{Currency, Decimal, Manner, Mark, Money, Rounding};
use trade::costs::{BreakEven, LineState, Side, Terms};

use super::lines::lines;
use super::*;
use crate::{Befores, Book, Findings, Key, Lack, Purchase, Sheet, State, evaluate};

pub(super) fn book(entries: &[(&str, &str)]) -> Book {
    let entries = entries
        .iter()
        .map(|(key, text)| (Key::from(format!("costs/{key}")), (*text).into()));
    Book::of("b", entries)
}

fn found(book: &Book) -> Findings {
    evaluate(book, None)
}

pub(super) fn money(findings: &Findings, id: &str) -> String {
    match findings.costs.found.money(id) {
        Some(Ok(reckoned)) => reckoned.money.to_string(),
        other => panic!("{id}: {other:?}"),
    }
}

pub(super) const JOB: &[(&str, &str)] = &[
    ("limit", "£12,000"),
    ("contingency_percent", "10"),
    ("tax", "20"),
    ("hour_rate", "25"),
    ("value_done", "16000"),
    ("payers/1/name", "Workshop"),
    ("payers/2/name", "Partner"),
    ("payers/2/share", "2"),
    ("lines/1/what", "The lorry"),
    ("lines/1/price", "3,450.00"),
    ("lines/1/state", "paid"),
    ("lines/1/payer", "2"),
    ("lines/1/sheet", "vehicle"),
    ("lines/2/what", "Gearbox, exchange"),
    ("lines/2/price", "450"),
    ("lines/2/state", "paid"),
    ("lines/2/deposit", "150"),
    ("lines/2/payer", "1"),
    ("lines/2/job", "Gearbox"),
    ("lines/3/what", "Steering box from abroad"),
    ("lines/3/price", "€380"),
    ("lines/3/carriage", "42.50"),
    ("lines/3/duty", "4.5"),
    ("lines/3/tax_basis", "out"),
    ("lines/3/rate", "0.8571"),
    ("lines/3/rate_day", "2026-03-02"),
    ("lines/3/state", "committed"),
    ("lines/3/paid_so_far", "100"),
    ("lines/3/payer", "1"),
    ("lines/4/what", "Old seats"),
    ("lines/4/kind", "sold"),
    ("lines/4/price", "80"),
    ("lines/4/state", "paid"),
    ("lines/4/payer", "1"),
    ("lines/5/what", "Tyres"),
    ("lines/5/quantity", "4"),
    ("lines/5/price", "118.75"),
    ("hours/1/what", "Cab floor"),
    ("hours/1/hours", "36.5"),
    ("hours/2/what", "Wiring"),
    ("hours/2/hours", "20"),
    ("hours/2/rate", "30"),
];

#[test]
fn a_whole_job_comes_to_what_the_pencil_says() {
    let found = found(&book(JOB));
    assert_eq!(found.costs.found.errors, []);
    // 380 + 42.50 = 422.50; duty 19.0125 -> 19.01; tax 0.2 * 441.51 = 88.302 -> 88.30; 529.81 EUR * 0.8571 = 454.10 GBP.
    assert_eq!(money(&found, "costs/lines/3"), "454.10 GBP");
    // Paid 3450 + 600 + 85.71 (100 EUR) - 80.
    assert_eq!(money(&found, "costs/paid"), "4055.71 GBP");
    assert_eq!(money(&found, "costs/committed"), "368.39 GBP");
    assert_eq!(money(&found, "costs/planned"), "475.00 GBP");
    // A tenth of 843.39 is 84.339.
    assert_eq!(money(&found, "costs/contingency"), "84.34 GBP");
    assert_eq!(money(&found, "costs/left"), "7016.56 GBP");
    // 7016.56 / 1.1 = 6378.69...
    assert_eq!(money(&found, "costs/room"), "6378.69 GBP");
    assert_eq!(money(&found, "costs/to_come_back"), "150.00 GBP");
    assert_eq!(money(&found, "costs/group/Gearbox"), "600.00 GBP");
    // 36.5 * 25 = 912.50, 20 * 30 = 600.
    assert_eq!(money(&found, "costs/hours_value"), "1512.50 GBP");
    // 16000 - 4899.10; / 56.5 h.
    assert_eq!(money(&found, "costs/over_cash"), "11100.90 GBP");
    assert_eq!(money(&found, "costs/over_all"), "9588.40 GBP");
    assert_eq!(money(&found, "costs/each_hour"), "196.48 GBP");
    assert_eq!(found.costs.found.state(), State::Ready);
}

#[test]
fn who_owes_whom_follows_the_shares() {
    let found = found(&book(JOB));
    // The workshop paid 600 + 85.71 - 80 = 605.71, the partner 3450; a third of 4055.71 is 1351.90.
    let settled = found.costs.settlement.as_ref().unwrap();
    assert_eq!(settled.fair[0].to_string(), "1351.90 GBP");
    assert_eq!(settled.transfers.len(), 1);
    let transfer = settled.transfers[0];
    assert_eq!((transfer.from, transfer.to), (0, 1));
    assert_eq!(transfer.amount.to_string(), "746.19 GBP");
    let alone = evaluate(&book(&[("payers/1/name", "Workshop")]), None);
    assert!(alone.costs.settlement.as_ref().is_err_and(Lack::is_blank));
}

#[test]
fn three_entries_tell_what_is_left() {
    let found = found(&book(&[
        ("limit", "500"),
        ("lines/1/what", "Hoses"),
        ("lines/1/price", "60"),
    ]));
    assert_eq!(money(&found, "costs/left"), "434.00 GBP");
}

#[test]
fn an_impossible_entry_is_told_at_its_field_and_every_other_sum_stays() {
    let mut entries = JOB.to_vec();
    entries.extend([
        ("lines/2/quantity", "-1"),
        ("lines/5/price", "12 quid"),
        ("lines/3/paid_so_far", "£10"),
        ("hire/1/hire_day", "35"),
        ("hire/1/buy_price", "480"),
        ("hire/1/days", "some"),
    ]);
    let found = found(&book(&entries));
    let errors: Vec<_> = found
        .costs
        .found
        .errors
        .iter()
        .map(|(key, _)| key.as_str())
        .collect();
    assert_eq!(
        errors,
        [
            "costs/lines/2/quantity",
            "costs/lines/5/price",
            "costs/hire/1/days"
        ]
    );
    // Lines 1 and 4 are left: 3450 - 80.
    assert_eq!(money(&found, "costs/paid"), "3370.00 GBP");
    assert_eq!(money(&found, "costs/left"), "8630.00 GBP");
    let facts: Vec<_> = found
        .costs
        .found
        .remarks
        .iter()
        .map(|remark| remark.fact)
        .collect();
    assert!(facts.contains(&"line_refused"), "{facts:?}");
    assert_eq!(found.costs.found.state(), State::Warning);
}

#[test]
fn without_a_rate_of_exchange_a_line_is_named_and_not_counted() {
    let found = found(&book(&[
        ("limit", "500"),
        ("lines/1/what", "Seal"),
        ("lines/1/price", "€12"),
    ]));
    assert_eq!(money(&found, "costs/left"), "500.00 GBP");
    assert_eq!(found.costs.found.remarks[0].fact, "line_without_rate");
    let lack = found.costs.lines[0].amounts.as_ref().unwrap_err();
    assert_eq!(*lack, Lack::needs(["costs/lines/1/rate".into()]));
}

#[test]
fn bare_amounts_beside_a_price_are_as_fine_as_its_currency() {
    // 2.012 dinars of carriage on 100, and 6.15 dollars on 10 in a book of krónur, which know no smaller coin.
    for (home, price, carriage, rate, total) in [
        ("GBP", "100 KWD", "2.012", "2", "204.02 GBP"),
        ("ISK", "10 USD", "6.15", "100", "1615 ISK"),
    ] {
        for mark in [Mark::Point, Mark::Comma] {
            let manner = Manner {
                mark,
                ..Manner::default()
            };
            let typed = match mark {
                Mark::Point => carriage.to_owned(),
                Mark::Comma => carriage.replace('.', ","),
            };
            let book = book(&[("lines/1/price", price), ("lines/1/rate", rate)]);
            let book = book.with(&book.setting("book/currency", Some(home.into())));
            let carriage = Key::from("costs/lines/1/carriage");
            let book = book.with(&book.typing(&carriage, &typed, &manner));
            let found = found(&book);
            assert_eq!(found.costs.found.errors, []);
            assert_eq!(money(&found, "costs/lines/1"), total);
        }
    }
}

#[test]
fn an_overrun_is_a_warning() {
    let found = found(&book(&[("limit", "50"), ("lines/1/price", "60")]));
    assert_eq!(money(&found, "costs/left"), "-16.00 GBP");
    assert_eq!(found.costs.found.state(), State::Warning);
}

#[test]
fn an_empty_sheet_says_what_it_needs() {
    assert_eq!(found(&book(&[])).costs.found.state(), State::Empty);
    assert_eq!(
        found(&book(&[("lines/1/price", "60")])).costs.found.state(),
        State::Needs(1)
    );
}

fn tins(count: u32, price: &str) -> Purchase {
    let price = Money::new(price.parse().unwrap(), Currency::GBP);
    Purchase::packs("paint", "paint-tins-1", "Colour", count, price).in_packs_of("2.5 L")
}

const TERMS: Terms = Terms {
    home: Currency::GBP,
    rounding: Rounding::HalfEven,
    tax_counts: true,
};

fn priced(entries: &[(&str, &str)], purchase: Option<&Purchase>) -> Vec<LineFinding> {
    let sheet = CostsSheet::read(&book(entries)).sheet;
    let purchases: Vec<_> = purchase.into_iter().collect();
    lines(&sheet, &purchases, &TERMS)
}

#[test]
fn a_line_priced_from_a_sheet_follows_it_until_it_is_pinned() {
    let total = |lines: &[LineFinding]| lines[0].amounts.as_ref().unwrap().total.to_string();
    assert_eq!(total(&priced(&[], Some(&tins(3, "52")))), "156.00 GBP");
    assert_eq!(total(&priced(&[], Some(&tins(4, "52")))), "208.00 GBP");
    let pinned = [
        ("priced/paint-tins-1/pinned_quantity", "3"),
        ("priced/paint-tins-1/pinned_price", "49.90"),
        ("priced/paint-tins-1/pinned_what", "Colour"),
        ("priced/paint-tins-1/pinned_sheet", "paint"),
        ("priced/paint-tins-1/state", "paid"),
    ];
    let lines = priced(&pinned, Some(&tins(4, "52")));
    assert_eq!(total(&lines), "149.70 GBP");
    assert_eq!(lines[0].state, LineState::Paid);
    let from = lines[0].from.as_ref().unwrap();
    assert!(from.pinned && from.now.is_some());
    // The sheet asks for it no more: what was paid stays paid.
    let gone = priced(&pinned, None);
    assert_eq!(total(&gone), "149.70 GBP");
    assert_eq!(gone[0].group, Group::Sheet("paint"));
    assert_eq!(priced(&[("priced/paint-tins-1/note", "x")], None), []);
}

#[test]
fn a_line_is_pinned_to_what_it_is_and_let_go_again_by_an_edit() {
    let purchase = tins(3, "52.125");
    let free = priced(&[], Some(&purchase));
    let empty = book(&[]);
    let pinned = empty.with(&free[0].pinning(&empty));
    let sheet = CostsSheet::read(&pinned);
    assert_eq!(sheet.errors, []);
    let lines_then = lines(&sheet.sheet, &[&tins(9, "1")], &TERMS);
    assert_eq!(lines_then[0].amounts, free[0].amounts);
    let again = pinned.with(&lines_then[0].following(&pinned));
    assert_eq!(again.entries().count(), 0);
    // Whatever sheet a line comes from, what is pinned of it can be read.
    let example = crate::example::book();
    let before = evaluate(&example, None).costs;
    let pin = |book: Book, line: &LineFinding| book.with(&line.pinning(&book));
    let pinned = before.lines.iter().fold(example, pin);
    assert_eq!(evaluate(&pinned, None).costs.found.errors, []);
}

#[test]
fn hire_or_buy_and_send_out_or_do_here_are_answered_with_their_break_even() {
    let found = found(&book(&[
        ("hour_rate", "25"),
        ("hire/1/what", "Engine crane"),
        ("hire/1/hire_day", "35"),
        ("hire/1/buy_price", "480"),
        ("hire/1/days", "14"),
        ("send/1/what", "Blast the wheels"),
        ("send/1/count", "4"),
        ("send/1/send_each", "90"),
        ("send/1/send_once", "40"),
        ("send/1/here_each", "10"),
        ("send/1/here_once", "60"),
        ("send/1/hours_each", "3"),
        ("send/1/hours_once", "2"),
    ]));
    let hire = found.costs.hire[0].answer.as_ref().unwrap();
    let BreakEven::At {
        count,
        from,
        beyond,
        ..
    } = &hire.break_even
    else {
        panic!("{hire:?}")
    };
    assert_eq!(
        (count.to_string(), *from, *beyond),
        ("13.714".to_owned(), Decimal::from(14), Side::Second)
    );
    assert_eq!(money(&found, "costs/hire/1/first"), "490.00 GBP");
    assert_eq!(money(&found, "costs/hire/1/second"), "480.00 GBP");
    assert_eq!(money(&found, "costs/send/1/first"), "400.00 GBP");
    assert_eq!(money(&found, "costs/send/1/second"), "450.00 GBP");
    assert_eq!(money(&found, "costs/send/1/cash/second"), "100.00 GBP");
    assert_eq!(money(&found, "costs/send/1/earned_each_hour"), "21.43 GBP");
}

#[test]
fn a_worked_back_amount_reproduces_the_wanted_one() {
    let book = book(JOB);
    let findings = found(&book);
    let entries = crate::money_entries(&findings, "costs/left");
    for key in [
        "costs/limit",
        "costs/lines/5/price",
        "costs/lines/3/price",
        "costs/lines/3/carriage",
    ] {
        assert!(
            entries.contains(&key.into()),
            "{key} is not among {entries:?}"
        );
        for wanted in ["7000", "6999.99", "-12.34", "9000.01"] {
            let wanted: Money = format!("{wanted} GBP").parse().unwrap();
            let Ok(back) = crate::money_back(&book, &findings, "costs/left", &key.into(), &wanted)
            else {
                // A price below nothing cannot be entered: the field says so.
                assert_ne!(key, "costs/limit", "{wanted}");
                continue;
            };
            let after = evaluate(&book.with(&back.edit), None);
            assert_eq!(
                money(&after, "costs/left"),
                back.result.to_string(),
                "{key}"
            );
            // Four tyres and their contingency move in steps of a few pence.
            let gap = back.result.minus(&wanted).unwrap().amount();
            assert!(
                gap >= Decimal::ZERO && gap < Decimal::new(6, 2),
                "{key} {wanted}: {gap}"
            );
            assert!(back.met || key != "costs/limit");
        }
    }
    let part = crate::money_back(
        &book,
        &findings,
        "costs/paid",
        &"costs/limit".into(),
        &"1 GBP".parse().unwrap(),
    );
    assert!(part.is_err());
}

#[test]
fn before_equals_now_when_nothing_changes() {
    let book = book(JOB);
    let book = book.with(&book.keeping_as_before("costs"));
    let now = evaluate(&book, None);
    let befores = Befores::of(&book, None);
    let (_, before) = befores.sheet("costs").unwrap();
    let amounts = |findings: &Findings| {
        findings
            .costs
            .found
            .amounts()
            .map(|(id, m)| (id.clone(), m.clone()))
            .collect::<Vec<_>>()
    };
    assert_eq!(amounts(before), amounts(&now));
    assert!(amounts(&now).len() > 12);
}
