//! Costs: sums equal parts, shares equal the whole, tables come back as they went.

use std::rc::Rc;
use std::str::FromStr;

use measure::{Currency, Decimal, Money, Rounding};
use proptest::prelude::*;

use super::csv::{Separator, TableFault, table, table_text};
use super::line::line_amounts;
use super::settle::settlement;
use super::standing::{left_to_spend, limit_that_leaves, room_to_plan, standing};
use super::*;

const TERMS: Terms = Terms {
    home: Currency::GBP,
    rounding: Rounding::HalfEven,
    tax_counts: true,
};

fn d(text: &str) -> Decimal {
    Decimal::from_str(text).unwrap()
}

fn gbp(text: &str) -> Money {
    Money::new(d(text), Currency::GBP)
}

fn plain(quantity: &str, price: &str, state: LineState) -> LineTerms {
    LineTerms::plain("costs/lines/1", d(quantity), gbp(price), state)
}

fn placed(key: &str, group: &str, payer: Option<&str>, line: &LineTerms) -> PlacedLine {
    PlacedLine {
        key: key.into(),
        group: group.into(),
        payer: payer.map(Rc::from),
        state: line.state,
        amounts: line_amounts(line, &TERMS).unwrap(),
    }
}

#[test]
fn a_line_with_carriage_duty_and_tax_on_top_is_summed_in_the_order_of_the_customs() {
    let mut line = plain("2", "300", LineState::Planned);
    line.carriage = gbp("45.50");
    line.duty_percent = d("2.5");
    line.tax = Some(Tax {
        percent: d("20"),
        basis: TaxBasis::Out,
    });
    let amounts = line_amounts(&line, &TERMS).unwrap();
    // 645.50; duty 16.1375 -> 16.14; tax 0.2 * 661.64 = 132.328 -> 132.33.
    assert_eq!(amounts.net, gbp("645.50"));
    assert_eq!(amounts.duty, gbp("16.14"));
    assert_eq!(amounts.tax, gbp("132.33"));
    assert_eq!(amounts.total, gbp("793.97"));
    assert_eq!(amounts.unpaid, amounts.total);
}

#[test]
fn money_that_comes_in_is_negative_and_a_part_payment_is_taken_off() {
    let mut sold = plain("1", "80", LineState::Paid);
    sold.kind = LineKind::Sold;
    assert_eq!(line_amounts(&sold, &TERMS).unwrap().paid, gbp("-80"));
    let mut ordered = plain("1", "1000", LineState::Committed);
    ordered.paid_so_far = gbp("200");
    let amounts = line_amounts(&ordered, &TERMS).unwrap();
    assert_eq!((amounts.paid, amounts.unpaid), (gbp("200"), gbp("800")));
    ordered.paid_so_far = gbp("1000.01");
    assert_eq!(line_amounts(&ordered, &TERMS), Err(TradeError::PaidTooMuch));
}

#[test]
fn a_deposit_counts_until_it_comes_back() {
    let mut line = plain("1", "450", LineState::Paid);
    line.deposit = gbp("150");
    for (state, total, to_come) in [
        (DepositState::Out, "600", "150"),
        (DepositState::Back, "450", "0"),
        (DepositState::Kept, "600", "0"),
    ] {
        line.deposit_state = state;
        let amounts = line_amounts(&line, &TERMS).unwrap();
        assert_eq!(amounts.total, gbp(total));
        assert_eq!(amounts.to_come_back, gbp(to_come));
    }
}

#[test]
fn a_line_in_another_currency_needs_its_rate_and_keeps_its_parts_together() {
    let euro = |text| Money::new(d(text), Currency::EUR);
    let mut line = LineTerms::plain("l", d("3"), euro("33.35"), LineState::Paid);
    assert!(matches!(
        line_amounts(&line, &TERMS),
        Err(TradeError::Money(_))
    ));
    line.exchange_rate = Some(d("0.8571"));
    line.tax = Some(Tax {
        percent: d("21"),
        basis: TaxBasis::In,
    });
    let amounts = line_amounts(&line, &TERMS).unwrap();
    // 100.05 EUR * 0.8571 = 85.752855.
    assert_eq!(amounts.total, gbp("85.75"));
    assert_eq!(amounts.net.plus(&amounts.tax).unwrap(), amounts.total);
}

#[test]
fn what_is_left_is_the_limit_less_paid_committed_planned_and_held_back() {
    let mut ordered = plain("1", "1000", LineState::Committed);
    ordered.paid_so_far = gbp("200");
    let lines = [
        placed(
            "a",
            "paint",
            Some("one"),
            &plain("4", "52", LineState::Paid),
        ),
        placed("b", "springs", Some("two"), &ordered),
        placed("c", "paint", None, &plain("1", "99.99", LineState::Planned)),
    ];
    let standing = standing(&lines, &Contingency::Percent(d("10")), &TERMS).unwrap();
    assert_eq!(standing.paid.money, gbp("408"));
    assert_eq!(standing.committed.money, gbp("800"));
    assert_eq!(standing.planned.money, gbp("99.99"));
    assert_eq!(standing.contingency.money, gbp("90.00")); // 89.999
    let left = left_to_spend(&gbp("5000"), &standing, &TERMS).unwrap();
    assert_eq!(left.money, gbp("3602.01"));
    assert_eq!(
        left.working.lines.last().unwrap().value,
        left.money.amount()
    );
    let groups: Vec<_> = standing
        .by_group
        .iter()
        .map(|(n, s)| (&**n, s.total))
        .collect();
    assert_eq!(groups, [("paint", gbp("307.99")), ("springs", gbp("1000"))]);
}

#[test]
fn hiring_is_dearer_from_the_fourteenth_day() {
    let question = HireOrBuy {
        key: "costs/hire/1".into(),
        hire_each_day: gbp("35"),
        hire_once: gbp("0"),
        buy_price: gbp("480"),
        resale: gbp("0"),
        upkeep_each_day: gbp("0"),
        days: Some(d("14")),
    };
    let answer = choice::hire_or_buy(&question, &TERMS).unwrap();
    let BreakEven::At {
        count,
        from,
        beyond,
        ..
    } = answer.break_even
    else {
        panic!("{:?}", answer.break_even)
    };
    assert_eq!((count, from, beyond), (d("13.714"), d("14"), Side::Second));
    assert_eq!(answer.cheaper, Some((Side::Second, gbp("10"))));
}

#[test]
fn a_meeting_at_a_whole_count_is_passed_only_at_the_next() {
    let course = |fixed, each| Course {
        fixed: Reckoned {
            money: gbp(fixed),
            working: MoneyWorking::default(),
        },
        each: Reckoned {
            money: gbp(each),
            working: MoneyWorking::default(),
        },
    };
    let met = |one: Course, two: Course| choice::choice(one, two, None, &TERMS).unwrap().break_even;
    let BreakEven::At {
        count,
        from,
        beyond,
        ..
    } = met(course("0", "8"), course("40000", "5.5"))
    else {
        panic!("no meeting")
    };
    assert_eq!(
        (count, from, beyond),
        (d("16000"), d("16001"), Side::Second)
    );
    let BreakEven::At {
        count,
        from,
        beyond,
        ..
    } = met(course("10", "1"), course("0", "3.5"))
    else {
        panic!("no meeting")
    };
    assert_eq!((count, from, beyond), (d("4"), d("5"), Side::First));
    assert_eq!(
        met(course("0", "1"), course("5", "2")),
        BreakEven::Never(Side::First)
    );
    assert_eq!(
        met(course("9", "1"), course("5", "1")),
        BreakEven::Never(Side::Second)
    );
    assert_eq!(
        met(course("5", "1"), course("5", "1")),
        BreakEven::Never(Side::Alike)
    );
    assert_eq!(
        met(course("5", "3"), course("5", "1")),
        BreakEven::Never(Side::Second)
    );
}

#[test]
fn doing_it_here_earns_what_the_outside_trade_would_have_charged() {
    let question = SendOrDo {
        key: "costs/send/1".into(),
        send_once: gbp("40"),
        send_each: gbp("90"),
        here_once: gbp("60"),
        here_each: gbp("10"),
        hours_once: d("2"),
        hours_each: d("3"),
        rate: gbp("25"),
        count: Some(d("4")),
    };
    let answer = choice::send_or_do(&question, &TERMS).unwrap();
    // Send 40 + 360 = 400; here 60 + 40 = 100 in cash, 14 h, 450 with hours at 25.
    assert_eq!(answer.cash.cheaper, Some((Side::Second, gbp("300"))));
    assert_eq!(answer.with_hours.cheaper, Some((Side::First, gbp("50"))));
    assert_eq!(answer.earned_each_hour.unwrap().money, gbp("21.43"));
}

#[test]
fn a_table_from_a_spreadsheet_is_read_whatever_its_separator() {
    let rows = table("\u{feff}what;price\r\n\"say \"\"hop\"\";\n bar\";12,50\r\n\r\nlast;\n").rows;
    assert_eq!(
        rows,
        [
            vec!["what", "price"],
            vec!["say \"hop\";\n bar", "12,50"],
            vec!["last", ""]
        ]
    );
    assert_eq!(table("a\tb\n1,5\t2").rows[1], ["1,5", "2"]);
    let odd = table("a,b\n\"x\" y,\"open");
    assert_eq!(odd.rows[1], ["xy", "open"]);
    assert_eq!(
        odd.faults,
        [
            TableFault::AfterQuote { line: 2 },
            TableFault::OpenQuote { line: 2 }
        ]
    );
}

#[test]
fn a_cell_that_a_spreadsheet_would_run_is_guarded_and_a_negative_price_is_not() {
    let cells = ["=1+1", "@here", "+44 1", "-12.50", "'=x", "-see note"].map(str::to_owned);
    let text = table_text(&[cells.to_vec()], Separator::Comma);
    assert_eq!(
        text,
        "\u{feff}'=1+1,'@here,'+44 1,-12.50,''=x,'-see note\r\n"
    );
    assert_eq!(table(&text).rows, [cells.to_vec()]);
}

pub(super) fn any_line() -> impl Strategy<Value = LineTerms> {
    let money =
        |most: i64| (0..most).prop_map(|minor| Money::new(Decimal::new(minor, 2), Currency::EUR));
    (
        (
            0_i64..20_000,
            0_i64..1_000_000,
            0..3_usize,
            0..3_usize,
            0..3_usize,
        ),
        (
            money(50_000),
            0_i64..300,
            0_i64..2_700,
            any::<bool>(),
            money(20_000),
        ),
        (1_i64..30_000, 0_i64..101),
    )
        .prop_map(
            |(
                (quantity, price, kind, state, deposit_state),
                (carriage, duty, tax, basis, deposit),
                (rate, part),
            )| {
                let price = Money::new(Decimal::new(price, 3), Currency::EUR);
                let mut line =
                    LineTerms::plain("l", Decimal::new(quantity, 3), price, LineState::Planned);
                line.kind = [LineKind::Bought, LineKind::Returned, LineKind::Sold][kind];
                line.state = [LineState::Planned, LineState::Committed, LineState::Paid][state];
                line.deposit_state =
                    [DepositState::Out, DepositState::Back, DepositState::Kept][deposit_state];
                line.carriage = carriage;
                line.duty_percent = Decimal::new(duty, 1);
                let basis = if basis { TaxBasis::In } else { TaxBasis::Out };
                line.tax = Some(Tax {
                    percent: Decimal::new(tax, 2),
                    basis,
                });
                line.deposit = deposit;
                line.exchange_rate = Some(Decimal::new(rate, 4));
                // Part of the goods at most, so that never more is paid than the line comes to.
                let goods = Money::new(line.quantity * line.unit_price.amount(), Currency::EUR);
                line.paid_so_far = goods
                    .times(Decimal::new(part.min(99), 2))
                    .unwrap()
                    .rounded(Rounding::HalfEven);
                line
            },
        )
}

proptest! {
    #[test]
    fn the_total_of_a_line_is_the_sum_of_its_parts(line in any_line(), tax_counts: bool, half_up: bool) {
        let rounding = if half_up { Rounding::HalfUp } else { Rounding::HalfEven };
        let terms = Terms { rounding, tax_counts, ..TERMS };
        match line_amounts(&line, &terms) {
            Err(error) => prop_assert_eq!(error, TradeError::PaidTooMuch),
            Ok(a) => {
                let tax = if tax_counts { a.tax } else { Money::zero(terms.home) };
                let parts = Money::sum([&a.net, &a.duty, &tax, &a.deposit], terms.home).unwrap();
                prop_assert_eq!(parts, a.total);
                prop_assert_eq!(a.paid.plus(&a.unpaid).unwrap(), a.total);
                let shown = a.working.lines.last().unwrap().value;
                prop_assert_eq!(shown, a.total.amount());
            }
        }
    }

    #[test]
    fn the_sums_by_group_by_payer_and_by_state_are_one_sum(lines in prop::collection::vec((any_line(), 0..4_usize, 0..3_usize), 0..12)) {
        let lines: Vec<_> = lines
            .iter()
            .enumerate()
            .filter(|(_, (line, ..))| line_amounts(line, &TERMS).is_ok())
            .map(|(i, (line, group, payer))| placed(&i.to_string(), &group.to_string(), [None, Some("a"), Some("b")][*payer], line))
            .collect();
        let s = standing(&lines, &Contingency::Percent(d("7.5")), &TERMS).unwrap();
        let home = TERMS.home;
        let sum = |parts: &mut dyn Iterator<Item = Money>| Money::sum(&parts.collect::<Vec<_>>(), home).unwrap();
        prop_assert_eq!(sum(&mut [s.sums.paid, s.sums.committed, s.sums.planned].into_iter()), s.sums.total);
        prop_assert_eq!(sum(&mut lines.iter().map(|l| l.amounts.total)), s.sums.total);
        prop_assert_eq!(sum(&mut s.by_group.iter().map(|g| g.1.total)), s.sums.total);
        prop_assert_eq!(sum(&mut s.by_payer.iter().map(|p| p.1)), s.sums.paid);
        prop_assert_eq!((s.paid.money, s.committed.money, s.planned.money), (s.sums.paid, s.sums.committed, s.sums.planned));
        let limit = gbp("10000");
        let left = left_to_spend(&limit, &s, &TERMS).unwrap().money;
        prop_assert_eq!(sum(&mut [left, s.sums.total, s.contingency.money].into_iter()), limit);
    }

    #[test]
    fn planning_the_room_leaves_less_than_a_coin_and_its_contingency(left in 0_i64..5_000_000, tenths in 0_i64..1000, wanted in -9999_i64..99_999) {
        let contingency = Contingency::Percent(Decimal::new(tenths, 1));
        let limit = Money::new(Decimal::new(left, 2), Currency::GBP);
        let room = room_to_plan(&limit, &contingency, &TERMS).unwrap().money;
        let left_after = |limit: &Money, more: &str| {
            let price = room.plus(&gbp(more)).unwrap();
            let line = LineTerms::plain("l", Decimal::ONE, price, LineState::Planned);
            let stands = standing(&[placed("l", "g", None, &line)], &contingency, &TERMS).unwrap();
            left_to_spend(limit, &stands, &TERMS).unwrap().money
        };
        prop_assert!(!left_after(&limit, "0").is_negative());
        prop_assert!(left_after(&limit, "0.01").is_negative());
        // Worked back: the limit that leaves what is wanted does leave it.
        let wanted = Money::new(Decimal::new(wanted, 2), Currency::GBP);
        let other = limit_that_leaves(&wanted, &limit, &left_after(&limit, "0")).unwrap();
        prop_assert_eq!(left_after(&other, "0"), wanted);
    }

    #[test]
    fn a_settlement_leaves_everybody_even(payers in prop::collection::vec((0_u32..100, -50_000_i64..200_000), 1..8)) {
        prop_assume!(payers.iter().any(|p| p.0 > 0));
        let payers: Vec<_> = payers
            .iter()
            .map(|(share, paid)| Payer { share: (*share).into(), paid: gbp("0.01").times((*paid).into()).unwrap() })
            .collect();
        let settled = settlement(&payers).unwrap();
        let mut ahead = settled.ahead.clone();
        for transfer in &settled.transfers {
            prop_assert!(!transfer.amount.is_negative() && !transfer.amount.is_zero());
            // Nobody pays who is not behind, and nobody is paid who is not ahead.
            prop_assert!(settled.ahead[transfer.from].is_negative());
            prop_assert!(settled.ahead[transfer.to].negated().is_negative());
            ahead[transfer.from] = ahead[transfer.from].plus(&transfer.amount).unwrap();
            ahead[transfer.to] = ahead[transfer.to].minus(&transfer.amount).unwrap();
        }
        prop_assert!(ahead.iter().all(Money::is_zero));
        prop_assert!(settled.transfers.len() < payers.len());
        let paid: Vec<_> = payers.iter().map(|p| p.paid).collect();
        prop_assert_eq!(Money::sum(&settled.fair, TERMS.home), Money::sum(&paid, TERMS.home));
    }

    #[test]
    fn a_table_comes_back_as_it_went(rows in prop::collection::vec(prop::collection::vec("[-=+@'\" ,;\t\r\na-c0-9.€\u{feff}]{0,8}|\\PC{0,6}", 1..5), 0..6), which in 0..3_usize) {
        let separator = [Separator::Comma, Separator::Semicolon, Separator::Tab][which];
        let width = rows.iter().map(Vec::len).max().unwrap_or(1);
        let rows: Vec<Vec<String>> = rows.into_iter().map(|mut row| { row.resize(width, String::new()); row }).collect();
        let text = table_text(&rows, separator);
        let back = table(&text);
        prop_assert_eq!(back.faults, vec![]);
        // The separator is told by the first line, which needs at least two cells to show it.
        if width > 1 || which == 0 {
            prop_assert_eq!(back.rows, rows);
        }
    }

    #[test]
    fn no_text_stops_the_reader_of_tables(text in "[\",;\t\r\na'=]{0,30}") {
        let _ = table(&text);
    }
}
