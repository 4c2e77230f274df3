//! Money: rounding, splitting, reading, showing, and that sums equal their parts.

use std::str::FromStr;

use proptest::prelude::*;

use super::*;
use crate::Mark;

fn d(text: &str) -> Decimal {
    Decimal::from_str(text).unwrap()
}

fn gbp(text: &str) -> Money {
    Money::new(d(text), Currency::GBP)
}

fn read(text: &str, usual: Mark) -> Result<MoneyReading, MoneyEntryError> {
    read_money(text, &MoneyAsk::amount(Currency::GBP, usual))
}

fn understood(text: &str) -> String {
    read(text, Mark::Point).unwrap().money.to_string()
}

#[test]
fn every_currency_has_a_code_of_three_capitals_and_stands_once() {
    let mut codes: Vec<_> = Currency::all().map(Currency::code).collect();
    assert!(codes.len() > 150);
    assert!(
        codes
            .iter()
            .all(|c| c.len() == 3 && c.chars().all(|c| c.is_ascii_uppercase()))
    );
    codes.sort_unstable();
    let count = codes.len();
    codes.dedup();
    assert_eq!(codes.len(), count);
}

#[test]
fn amounts_are_read_as_people_type_them() {
    for (typed, saved) in [
        ("£1,234.50", "1234.50 GBP"),
        ("1.234,50 €", "1234.50 EUR"),
        ("1234", "1234.00 GBP"),
        ("-12.50", "-12.50 GBP"),
        ("\u{2212}12.50", "-12.50 GBP"),
        ("- £ 12.50", "-12.50 GBP"),
        ("£-12.50", "-12.50 GBP"),
        ("12 500 Ft", "12500.00 HUF"),
        ("12\u{a0}500,5 Ft", "12500.50 HUF"),
        ("EUR 7", "7.00 EUR"),
        ("7 eur", "7.00 EUR"),
        ("¥1,234,567", "1234567 JPY"),
        ("1'234.55 CHF", "1234.55 CHF"),
        ("1’234’567", "1234567.00 GBP"),
        (".5", "0.50 GBP"),
        ("12.", "12.00 GBP"),
        ("100,-", "100.00 GBP"),
        ("0,250 KWD", "0.250 KWD"),
        ("99 kr.", "99.00 DKK"),
    ] {
        let usual = match typed.chars().find(|c| matches!(c, '¥' | 'k')) {
            Some('¥') => "JPY",
            Some(_) => "DKK",
            None => "GBP",
        };
        let ask = MoneyAsk::amount(Currency::of_code(usual).unwrap(), Mark::Point);
        let reading = read_money(typed, &ask).unwrap_or_else(|e| panic!("{typed}: {e}"));
        assert_eq!(reading.money.to_string(), saved, "{typed}");
        assert_eq!(reading.otherwise, None, "{typed}");
    }
}

#[test]
fn a_mark_before_three_digits_is_asked_about_and_understood_by_the_locale() {
    let reading = read("1,250", Mark::Point).unwrap();
    assert_eq!(reading.money, gbp("1250"));
    assert_eq!(reading.otherwise.map(|m| m.amount()), Some(d("1.25")));
    let reading = read("1.250", Mark::Comma).unwrap();
    assert_eq!(reading.money.amount(), d("1250"));
    assert_eq!(reading.otherwise.map(|m| m.amount()), Some(d("1.25")));
    let ask = MoneyAsk {
        mark: Some(Mark::Comma),
        ..MoneyAsk::amount(Currency::GBP, Mark::Point)
    };
    let settled = read_money("1,250", &ask).unwrap();
    assert_eq!(
        (settled.money.amount(), settled.otherwise),
        (d("1.25"), None)
    );
    // 1.255 cannot be pounds and pence, so only the thousands make sense of it.
    let reading = read("1.255", Mark::Point).unwrap();
    assert_eq!(
        (reading.money.amount(), reading.otherwise),
        (d("1255"), None)
    );
}

#[test]
fn what_cannot_be_read_is_pointed_at() {
    use MoneyFault::*;
    for (typed, at, why) in [
        ("", 0..0, Empty),
        ("  ", 0..2, Empty),
        ("£", 0..1, NoDigits),
        ("12,34,567", 2..3, Thousands),
        ("1.2.3", 1..2, Thousands),
        ("1,2.3,4", 3..4, Thousands),
        ("12.3456", 5..7, TooFine { places: 2 }),
        ("12 quid", 3..7, UnknownCurrency),
        ("12 kr", 3..5, SharedSign),
        ("--3", 1..2, Twice('-')),
        ("1234567890123", 0..13, TooLong),
    ] {
        let error = read(typed, Mark::Point).unwrap_err();
        assert_eq!((error.at, error.why), (at, why), "{typed}");
        assert_eq!(error.example, "£1,234.50");
    }
    // 12.345 is no sum of pounds and pence: it can only be twelve thousand.
    assert_eq!(understood("12.345 "), "12345.00 GBP");
}

#[test]
fn money_is_shown_by_locale_with_its_sign() {
    let nbsp = '\u{a0}';
    assert_eq!(gbp("1234.5").shown(Mark::Point, Currency::GBP), "£1,234.50");
    assert_eq!(
        gbp("-1234567.5").shown(Mark::Point, Currency::GBP),
        "\u{2212}£1,234,567.50"
    );
    let euro = Money::new(d("1234.5"), Currency::EUR);
    assert_eq!(
        euro.shown(Mark::Comma, Currency::EUR),
        format!("1.234,50{nbsp}€")
    );
    assert_eq!(euro.shown(Mark::Point, Currency::GBP), "€1,234.50");
    let cad = Money::new(d("5"), Currency::of_code("CAD").unwrap());
    assert_eq!(
        cad.shown(Mark::Point, Currency::USD),
        format!("5.00{nbsp}CAD")
    );
    assert_eq!(cad.shown(Mark::Point, cad.currency()), "$5.00");
    let yen = Money::new(d("1234"), Currency::of_code("JPY").unwrap());
    assert_eq!(yen.shown(Mark::Point, Currency::GBP), "¥1,234");
    assert_eq!(gbp("0.12345").shown(Mark::Point, Currency::GBP), "£0.12345");
}

#[test]
fn two_currencies_never_mix_and_lost_digits_are_refused() {
    let euro = Money::new(d("1"), Currency::EUR);
    let mixed = MoneyError::Mixed {
        left: Currency::GBP,
        right: Currency::EUR,
    };
    assert_eq!(gbp("1").plus(&euro), Err(mixed));
    assert_eq!(gbp("1").compared(&euro), Err(mixed));
    assert_eq!(gbp("1").over(&euro, 2, Rounding::HalfEven), Err(mixed));
    let most = Money::new(Decimal::MAX, Currency::GBP);
    assert_eq!(most.plus(&gbp("1")), Err(MoneyError::Overflow));
    assert_eq!(most.plus(&gbp("0.01")), Err(MoneyError::Overflow));
    assert_eq!(most.times(d("1.5")), Err(MoneyError::Overflow));
    assert_eq!(
        gbp("0.00000000000001").times(d("0.000000000000001")),
        Err(MoneyError::Overflow)
    );
    assert_eq!(
        gbp("1").over(&gbp("0"), 2, Rounding::HalfEven),
        Err(MoneyError::DividedByNothing)
    );
    assert_eq!(gbp("0.005").minor_units(), Err(MoneyError::Fraction));
    assert_eq!(gbp("0.005").split(&[d("1")]), Err(MoneyError::Fraction));
}

#[test]
fn a_measured_quantity_is_rounded_half_even_to_three_decimals() {
    for (value, priced) in [
        (2.0005, "2.000"),
        (2.0015, "2.002"),
        (12.345_678, "12.346"),
        (-0.0005, "0.000"),
        (1e-30, "0"),
    ] {
        assert_eq!(measured_decimal(value).unwrap(), d(priced), "{value}");
    }
    for value in [f64::NAN, f64::INFINITY, 1e12] {
        assert_eq!(measured_decimal(value), Err(MoneyError::Quantity));
    }
}

#[test]
fn a_working_gives_its_value_and_reads_as_a_formula() {
    let mut working = MoneyWorking::default();
    let price = MoneyExpr::amount("costs/lines/1/price", gbp("1.255"));
    let count = MoneyExpr::number("costs/lines/1/quantity", d("3"));
    let formula = MoneyExpr::Rounded {
        of: Box::new(MoneyExpr::Product(vec![count, price])),
        places: 2,
        rounding: Rounding::HalfEven,
    };
    assert_eq!(formula.plain(), "round_half_even(3 * 1.255, 2)");
    assert_eq!(working.line("line", formula), Ok(d("3.76")));
}

proptest! {
    #[test]
    fn the_parts_of_a_split_add_up_to_the_whole(total in -10_000_000_i64..10_000_000, shares in prop::collection::vec(0_u32..1000, 1..9), places in 0_u32..3) {
        let total = Money::of_minor_units(total.into(), Currency::GBP).unwrap();
        let shares: Vec<_> = shares.iter().map(|s| Decimal::new((*s).into(), places)).collect();
        let parts = total.split(&shares);
        if shares.iter().all(Decimal::is_zero) {
            prop_assert_eq!(parts, Err(MoneyError::Shares));
        } else {
            let parts = parts.unwrap();
            prop_assert_eq!(Money::sum(&parts, Currency::GBP).unwrap(), total);
            // No part is further than one penny from its exact share.
            let sum: Decimal = shares.iter().sum();
            for (part, share) in parts.iter().zip(&shares) {
                let gap = part.amount() * sum - total.amount() * share;
                prop_assert!(gap.abs() < sum * Decimal::new(1, 2));
            }
        }
    }

    #[test]
    fn what_is_shown_is_read_back_as_the_same_amount(minor in -1_000_000_000_i64..1_000_000_000, which in 0_usize..157, comma: bool) {
        let currency = Currency::all().nth(which).unwrap_or(Currency::GBP);
        let money = Money::of_minor_units(minor.into(), currency).unwrap();
        let mark = if comma { Mark::Comma } else { Mark::Point };
        let ask = MoneyAsk::amount(currency, mark);
        prop_assert_eq!(read_money(&money.shown(mark, currency), &ask).unwrap().money, money);
        prop_assert_eq!(read_money(&money.figures(mark), &MoneyAsk { mark: Some(mark), ..ask }).unwrap().money, money);
        prop_assert_eq!(Money::from_str(&money.to_string()).unwrap(), money);
    }

    #[test]
    fn no_text_stops_the_reader(text in "\\PC{0,12}", marks in "[0-9.,' £€-]{0,10}") {
        let _ = read(&text, Mark::Point);
        if let Err(error) = read(&marks, Mark::Comma) {
            prop_assert!(error.at.end <= marks.chars().count());
            prop_assert!(error.at.start <= error.at.end);
        }
    }

    #[test]
    fn a_quotient_is_the_nearest_there_is(over in -1_000_000_i64..1_000_000, under in 1_i64..5000, places in 0_u32..6) {
        let quotient = Money::new(over.into(), Currency::GBP)
            .over(&Money::new(under.into(), Currency::GBP), places, Rounding::HalfUp)
            .unwrap();
        let gap = quotient * Decimal::from(under) - Decimal::from(over);
        prop_assert!((gap * Decimal::from(2)).abs() <= Decimal::from(under) * Decimal::new(1, places));
    }
}
