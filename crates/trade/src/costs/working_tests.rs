//! Each working of money, read as text by an evaluator of its own, gives the amount displayed.

use std::collections::HashMap;
use std::rc::Rc;

use measure::{Currency, Decimal, Money, MoneyExpr, MoneyWorking, Rounding};
use proptest::prelude::*;

use super::choice::{hire_or_buy, send_or_do};
use super::line::line_amounts;
use super::standing::{left_to_spend, room_to_plan, standing};
use super::tests::any_line;
use super::worth::{value_of_hours, worth_when_done};
use super::*;

/// Evaluates `(1 + 2) * 3 / 4` and `round_half_even(…, 2)` by descent, in fractions of whole numbers, so that it shares
/// neither code nor arithmetic with what it checks.
struct Evaluator<'a> {
    rest: &'a str,
}

#[derive(Clone, Copy)]
struct Fraction {
    over: i128,
    under: i128,
}

impl Fraction {
    fn of(over: i128, under: i128) -> Self {
        let (mut a, mut b) = (over.unsigned_abs(), under.unsigned_abs());
        while b != 0 {
            (a, b) = (b, a % b);
        }
        let by = i128::try_from(a.max(1)).unwrap() * under.signum();
        Self {
            over: over / by,
            under: under / by,
        }
    }

    fn rounded(self, places: u32, half_up: bool) -> Self {
        let scale = 10_i128.pow(places);
        let top = self.over.abs() * scale;
        let (whole, rest) = (top / self.under, top % self.under);
        let up = match (rest * 2).cmp(&self.under) {
            std::cmp::Ordering::Less => 0,
            std::cmp::Ordering::Greater => 1,
            std::cmp::Ordering::Equal if half_up => 1,
            std::cmp::Ordering::Equal => whole % 2,
        };
        Self::of((whole + up) * self.over.signum(), scale)
    }
}

impl Evaluator<'_> {
    fn value(text: &str) -> Fraction {
        let mut evaluator = Evaluator { rest: text };
        let value = evaluator.sum();
        assert_eq!(evaluator.rest.trim(), "", "left over in {text}");
        value
    }

    fn takes(&mut self, token: &str) -> bool {
        match self.rest.trim_start().strip_prefix(token) {
            Some(rest) => {
                self.rest = rest;
                true
            }
            None => false,
        }
    }

    fn sum(&mut self) -> Fraction {
        let mut sum = self.product();
        loop {
            let sign = if self.takes("+") {
                1
            } else if self.takes("-") {
                -1
            } else {
                return sum;
            };
            let next = self.product();
            sum = Fraction::of(
                sum.over * next.under + sign * next.over * sum.under,
                sum.under * next.under,
            );
        }
    }

    fn product(&mut self) -> Fraction {
        let mut product = self.factor();
        loop {
            if self.takes("*") {
                let next = self.factor();
                product = Fraction::of(product.over * next.over, product.under * next.under);
            } else if self.takes("/") {
                let next = self.factor();
                product = Fraction::of(product.over * next.under, product.under * next.over);
            } else {
                return product;
            }
        }
    }

    fn factor(&mut self) -> Fraction {
        for (name, half_up) in [("round_half_even(", false), ("round_half_up(", true)] {
            if self.takes(name) {
                let value = self.sum();
                assert!(self.takes(","));
                let places = self.factor();
                assert!(self.takes(")"));
                return value.rounded(u32::try_from(places.over).unwrap(), half_up);
            }
        }
        if self.takes("(") {
            let value = self.sum();
            assert!(self.takes(")"), "no closing bracket before {}", self.rest);
            return value;
        }
        let text = self.rest.trim_start();
        let end = text
            .find(|c: char| !c.is_ascii_digit() && c != '.')
            .unwrap_or(text.len());
        let (figures, rest) = text.split_at(end);
        self.rest = rest;
        let (whole, decimals) = figures.split_once('.').unwrap_or((figures, ""));
        let digits: i128 = format!("{whole}{decimals}").parse().unwrap();
        Fraction::of(digits, 10_i128.pow(u32::try_from(decimals.len()).unwrap()))
    }
}

/// Every line gives its value, and whatever names an earlier line carries that line's value.
fn holds(working: &MoneyWorking, result: Decimal) {
    let mut known: HashMap<Rc<str>, Decimal> = HashMap::new();
    for line in &working.lines {
        let plain = line.formula.plain();
        let value = Evaluator::value(&plain);
        let shown = line.value.normalize();
        let shown = Fraction::of(shown.mantissa(), 10_i128.pow(shown.scale()));
        assert_eq!(
            (value.over, value.under),
            (shown.over, shown.under),
            "{plain}"
        );
        names(&line.formula, &mut |name, value| {
            if let Some(earlier) = known.get(name) {
                assert_eq!(*earlier, value, "{name} in {plain}");
            }
        });
        known.insert(line.symbol.clone(), line.value);
    }
    assert_eq!(working.lines.last().map(|line| line.value), Some(result));
}

fn names(formula: &MoneyExpr, seen: &mut impl FnMut(&str, Decimal)) {
    match formula {
        MoneyExpr::Amount { name, money } => seen(name, money.amount()),
        MoneyExpr::Number { name, value } => seen(name, *value),
        MoneyExpr::Sum(parts) => parts.iter().for_each(|(_, part)| names(part, seen)),
        MoneyExpr::Product(parts) => parts.iter().for_each(|part| names(part, seen)),
        MoneyExpr::Quotient { over, under, .. } => {
            names(over, seen);
            names(under, seen);
        }
        MoneyExpr::Rounded { of, .. } => names(of, seen),
    }
}

#[test]
fn the_evaluator_itself_follows_the_rules() {
    for (text, over, under) in [
        ("1 + 2 * 3", 7, 1),
        ("(1 + 2) * 3 / 4", 9, 4),
        ("0 - 1.25 - (2 - 3)", -1, 4),
        ("round_half_even(0.125, 2)", 3, 25),
        ("round_half_up(0 - 0.125, 2)", -13, 100),
    ] {
        let value = Evaluator::value(text);
        assert_eq!((value.over, value.under), (over, under), "{text}");
    }
}

proptest! {
    #[test]
    fn the_working_of_a_line_and_of_what_is_left_give_what_is_displayed(lines in prop::collection::vec(any_line(), 1..5), tenths in 0_i64..500, half_up: bool) {
        let rounding = if half_up { Rounding::HalfUp } else { Rounding::HalfEven };
        let terms = Terms { home: Currency::GBP, rounding, tax_counts: true };
        let placed: Vec<_> = lines
            .iter()
            .enumerate()
            .filter_map(|(i, line)| {
                let amounts = line_amounts(line, &terms).ok()?;
                holds(&amounts.working, amounts.total.amount());
                Some(PlacedLine { key: format!("costs/lines/{i}").into(), group: "g".into(), payer: None, state: line.state, amounts })
            })
            .collect();
        let stands = standing(&placed, &Contingency::Percent(Decimal::new(tenths, 1)), &terms).unwrap();
        for part in [&stands.paid, &stands.committed, &stands.planned, &stands.contingency, &stands.total, &stands.to_come_back] {
            holds(&part.working, part.money.amount());
        }
        let limit = Money::new(Decimal::from(10_000), Currency::GBP);
        let left = left_to_spend(&limit, &stands, &terms).unwrap();
        holds(&left.working, left.money.amount());
        let room = room_to_plan(&left.money, &Contingency::Percent(Decimal::new(tenths, 1)), &terms).unwrap();
        holds(&room.working, room.money.amount());
    }

    #[test]
    fn the_workings_of_choices_and_hours_give_what_is_displayed(figures in prop::collection::vec(0_i64..100_000, 9), count in 0_i64..400) {
        let terms = Terms { home: Currency::GBP, rounding: Rounding::HalfEven, tax_counts: true };
        let money = |at: usize| Money::new(Decimal::new(figures[at], 2), Currency::GBP);
        let hours = |at: usize| Decimal::new(figures[at], 2);
        let hire = HireOrBuy {
            key: "costs/hire/1".into(),
            hire_each_day: money(0),
            hire_once: money(1),
            buy_price: money(2),
            resale: money(3),
            upkeep_each_day: money(4),
            days: Some(Decimal::new(count, 1)),
        };
        let send = SendOrDo {
            key: "costs/send/1".into(),
            send_once: money(0),
            send_each: money(1),
            here_once: money(2),
            here_each: money(3),
            hours_once: hours(4),
            hours_each: hours(5),
            rate: money(6),
            count: Some(count.into()),
        };
        let sent = send_or_do(&send, &terms).unwrap();
        for choice in [hire_or_buy(&hire, &terms).unwrap(), sent.cash, sent.with_hours] {
            for total in [choice.first_total.unwrap(), choice.second_total.unwrap()] {
                holds(&total.working, total.money.amount());
            }
            if let BreakEven::At { count, working, .. } = choice.break_even {
                holds(&working, count);
            }
        }
        if let Some(earned) = sent.earned_each_hour {
            holds(&earned.working, earned.money.amount());
        }
        let jobs = [OwnHours { key: "costs/hours/1".into(), hours: hours(7), rate: money(6) }];
        let value = value_of_hours(&jobs, &terms).unwrap();
        holds(&value.working, value.money.amount());
        let worth = worth_when_done(&money(8), &money(2), hours(7), &value.money, &terms).unwrap();
        for part in [Some(worth.over_cash), Some(worth.over_all), worth.each_hour].into_iter().flatten() {
            holds(&part.working, part.money.amount());
        }
    }
}
