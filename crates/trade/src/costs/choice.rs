//! Two ways of paying for the same thing: hire or buy, send out or do here, and where they cost the same.

use measure::{Decimal, Money, MoneyExpr, MoneyWorking, Rounding};

use super::{Reckoned, Terms, money_line, rounded_formula};
use crate::TradeError;

/// Decimals a break-even count is shown with.
const BREAK_EVEN_PLACES: u32 = 3;

/// One way of paying: so much at once, and so much for each day, piece or hour.
#[derive(Debug, Clone, PartialEq)]
pub struct Course {
    /// At once.
    pub fixed: Reckoned,
    /// For each.
    pub each: Reckoned,
}

/// Which of two ways costs less.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The first: hire, or send out.
    First,
    /// The second: buy, or do here.
    Second,
    /// Both cost the same.
    Alike,
}

/// Where two ways cost the same.
#[derive(Debug, Clone, PartialEq)]
pub enum BreakEven {
    /// At this count; the side given costs less beyond it.
    At {
        /// The count, to three decimals.
        count: Decimal,
        /// The first whole count at which the other side costs less.
        from: Decimal,
        /// Which costs less beyond it.
        beyond: Side,
        /// How the count came about.
        working: MoneyWorking,
    },
    /// Nowhere: one side costs less, or both cost the same, at every count.
    Never(Side),
}

/// The answer to a choice between two ways of paying.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// The first way: hire, or send out.
    pub first: Course,
    /// The second way: buy, or do here.
    pub second: Course,
    /// What the first costs for the count wanted, where one is.
    pub first_total: Option<Reckoned>,
    /// What the second costs.
    pub second_total: Option<Reckoned>,
    /// Which costs less, and by how much.
    pub cheaper: Option<(Side, Money)>,
    /// Where they cost the same.
    pub break_even: BreakEven,
}

/// The first way against the second, for a count.
///
/// `total = fixed + each * n`; `n = (fixed_2 - fixed_1) / (each_1 - each_2)`
///
/// # Valid range
/// A count of nothing or more.
///
/// # Errors
/// [`TradeError::Money`] on overflow or mixed currencies.
///
/// # Source
/// Panneerselvam, Engineering Economics, chapter 1 (break-even analysis) and the make-or-buy examples beside the
/// checks.
pub fn choice(
    first: Course,
    second: Course,
    count: Option<Decimal>,
    terms: &Terms,
) -> Result<Choice, TradeError> {
    let total = |course: &Course| -> Result<Option<Reckoned>, TradeError> {
        count
            .map(|count| course_total(course, count, terms))
            .transpose()
    };
    let first_total = total(&first)?;
    let second_total = total(&second)?;
    let cheaper = match (&first_total, &second_total) {
        (Some(one), Some(two)) => {
            let gap = two.money.minus(&one.money)?;
            let side = if gap.is_zero() {
                Side::Alike
            } else if gap.is_negative() {
                Side::Second
            } else {
                Side::First
            };
            Some((
                side,
                if gap.is_negative() {
                    gap.negated()
                } else {
                    gap
                },
            ))
        }
        _ => None,
    };
    let break_even = break_even(&first, &second)?;
    Ok(Choice {
        first,
        second,
        first_total,
        second_total,
        cheaper,
        break_even,
    })
}

/// What a way costs for a count.
fn course_total(course: &Course, count: Decimal, terms: &Terms) -> Result<Reckoned, TradeError> {
    let mut working = MoneyWorking::default();
    working
        .lines
        .extend(course.fixed.working.lines.iter().cloned());
    working
        .lines
        .extend(course.each.working.lines.iter().cloned());
    let sum = MoneyExpr::Sum(vec![
        (false, MoneyExpr::amount("fixed", course.fixed.money)),
        (
            false,
            MoneyExpr::Product(vec![
                MoneyExpr::amount("each", course.each.money),
                MoneyExpr::number("count", count),
            ]),
        ),
    ]);
    let currency = course.fixed.money.currency();
    course.fixed.money.compared(&course.each.money)?;
    let money = money_line(
        &mut working,
        "total",
        rounded_formula(sum, currency, terms.rounding),
        currency,
    )?;
    Ok(Reckoned { money, working })
}

/// Where two ways cost the same.
fn break_even(first: &Course, second: &Course) -> Result<BreakEven, TradeError> {
    let fixed_gap = second.fixed.money.minus(&first.fixed.money)?;
    let each_gap = first.each.money.minus(&second.each.money)?;
    let less = |gap: &Money, below: Side, above: Side| {
        if gap.is_zero() {
            Side::Alike
        } else if gap.is_negative() {
            below
        } else {
            above
        }
    };
    if each_gap.is_zero() {
        return Ok(BreakEven::Never(less(
            &fixed_gap,
            Side::Second,
            Side::First,
        )));
    }
    // Meeting at a count below nothing, or at nothing, is no meeting: one side is dearer from the start.
    let opposed = fixed_gap.is_negative() != each_gap.is_negative();
    if fixed_gap.is_zero() || opposed {
        return Ok(BreakEven::Never(less(&each_gap, Side::First, Side::Second)));
    }
    let mut working = MoneyWorking::default();
    for part in [&first.fixed, &first.each, &second.fixed, &second.each] {
        working.lines.extend(part.working.lines.iter().cloned());
    }
    let gap = |over: &'static str, over_money, under: &'static str, under_money| {
        MoneyExpr::Sum(vec![
            (false, MoneyExpr::amount(over, over_money)),
            (true, MoneyExpr::amount(under, under_money)),
        ])
    };
    let count = working.line(
        "break_even",
        MoneyExpr::Quotient {
            over: Box::new(gap(
                "fixed_second",
                second.fixed.money,
                "fixed_first",
                first.fixed.money,
            )),
            under: Box::new(gap(
                "each_first",
                first.each.money,
                "each_second",
                second.each.money,
            )),
            places: BREAK_EVEN_PLACES,
            rounding: Rounding::HalfEven,
        },
    )?;
    let whole = fixed_gap.over(&each_gap, 0, Rounding::HalfEven)?;
    // The first whole count at which n * each_gap exceeds fixed_gap.
    let beyond_whole = each_gap.times(whole)?.minus(&fixed_gap)?;
    let passed = !beyond_whole.is_zero() && beyond_whole.is_negative() == each_gap.is_negative();
    let from = if passed { whole } else { whole + Decimal::ONE };
    let beyond = if each_gap.is_negative() {
        Side::First
    } else {
        Side::Second
    };
    Ok(BreakEven::At {
        count,
        from,
        beyond,
        working,
    })
}

/// Hire or buy: what is typed.
#[derive(Debug, Clone, PartialEq)]
pub struct HireOrBuy {
    /// Where the entries stand, such as `costs/hire/2`.
    pub key: String,
    /// Hire for a day.
    pub hire_each_day: Money,
    /// Delivery, collection and the like, once.
    pub hire_once: Money,
    /// The price.
    pub buy_price: Money,
    /// What it fetches afterwards.
    pub resale: Money,
    /// Upkeep for a day of use when it is one's own.
    pub upkeep_each_day: Money,
    /// Days it is needed.
    pub days: Option<Decimal>,
}

/// Hire against buy.
///
/// `hire = once + day * n`; `buy = price - resale + upkeep * n`
///
/// # Errors
/// As [`choice`].
pub fn hire_or_buy(question: &HireOrBuy, terms: &Terms) -> Result<Choice, TradeError> {
    let entry = |field: &str| format!("{}/{field}", question.key);
    let hire = Course {
        fixed: put_in("fixed_first", &entry("hire_once"), question.hire_once)?,
        each: put_in("each_first", &entry("hire_day"), question.hire_each_day)?,
    };
    let mut working = MoneyWorking::default();
    question.buy_price.compared(&question.resale)?;
    let bought = money_line(
        &mut working,
        "fixed_second",
        MoneyExpr::Sum(vec![
            (
                false,
                MoneyExpr::amount(entry("buy_price"), question.buy_price),
            ),
            (true, MoneyExpr::amount(entry("resale"), question.resale)),
        ]),
        question.buy_price.currency(),
    )?;
    let buy = Course {
        fixed: Reckoned {
            money: bought,
            working,
        },
        each: put_in(
            "each_second",
            &entry("upkeep_day"),
            question.upkeep_each_day,
        )?,
    };
    choice(hire, buy, question.days, terms)
}

fn put_in(symbol: &'static str, key: &str, money: Money) -> Result<Reckoned, TradeError> {
    let mut working = MoneyWorking::default();
    let formula = MoneyExpr::Sum(vec![(false, MoneyExpr::amount(key, money))]);
    let money = money_line(&mut working, symbol, formula, money.currency())?;
    Ok(Reckoned { money, working })
}

/// Send out or do here: what is typed.
#[derive(Debug, Clone, PartialEq)]
pub struct SendOrDo {
    /// Where the entries stand, such as `costs/send/1`.
    pub key: String,
    /// The outside trade's charge once: setting up, carriage both ways.
    pub send_once: Money,
    /// Its charge for each piece.
    pub send_each: Money,
    /// Tools and materials bought to do it here, once.
    pub here_once: Money,
    /// Materials for each piece here.
    pub here_each: Money,
    /// Own hours at once: setting up, learning.
    pub hours_once: Decimal,
    /// Own hours for each piece.
    pub hours_each: Decimal,
    /// What an own hour is reckoned at.
    pub rate: Money,
    /// How many pieces.
    pub count: Option<Decimal>,
}

/// The answer to "send out or do here?".
#[derive(Debug, Clone, PartialEq)]
pub struct SendOrDoAnswer {
    /// In cash alone: own hours cost nothing.
    pub cash: Choice,
    /// With own hours at their rate.
    pub with_hours: Choice,
    /// What an own hour earns by doing it here: the rate at which both cost the same.
    pub earned_each_hour: Option<Reckoned>,
}

/// Send out against doing it here, in cash and with own hours at their rate.
///
/// `send = once + each * n`; `here = once + each * n + (hours once + hours each * n) rate`;
/// `an hour earns (send - here in cash) / hours`
///
/// # Errors
/// As [`choice`].
pub fn send_or_do(question: &SendOrDo, terms: &Terms) -> Result<SendOrDoAnswer, TradeError> {
    let entry = |field: &str| format!("{}/{field}", question.key);
    let send = Course {
        fixed: put_in("fixed_first", &entry("send_once"), question.send_once)?,
        each: put_in("each_first", &entry("send_each"), question.send_each)?,
    };
    let here_cash = Course {
        fixed: put_in("fixed_second", &entry("here_once"), question.here_once)?,
        each: put_in("each_second", &entry("here_each"), question.here_each)?,
    };
    let with_rate = |symbol: &'static str, cash: (&str, Money), hours: (&str, Decimal)| {
        cash.1.compared(&question.rate)?;
        let mut working = MoneyWorking::default();
        let formula = MoneyExpr::Sum(vec![
            (false, MoneyExpr::amount(entry(cash.0), cash.1)),
            (
                false,
                MoneyExpr::Product(vec![
                    MoneyExpr::number(entry(hours.0), hours.1),
                    MoneyExpr::amount("costs/hour_rate", question.rate),
                ]),
            ),
        ]);
        let money = money_line(&mut working, symbol, formula, cash.1.currency())?;
        Ok::<_, TradeError>(Reckoned { money, working })
    };
    let here_hours = Course {
        fixed: with_rate(
            "fixed_second",
            ("here_once", question.here_once),
            ("hours_once", question.hours_once),
        )?,
        each: with_rate(
            "each_second",
            ("here_each", question.here_each),
            ("hours_each", question.hours_each),
        )?,
    };
    let cash = choice(send.clone(), here_cash, question.count, terms)?;
    let with_hours = choice(send, here_hours, question.count, terms)?;
    let earned_each_hour = earned_each_hour(question, &cash, terms)?;
    Ok(SendOrDoAnswer {
        cash,
        with_hours,
        earned_each_hour,
    })
}

/// What an own hour earns by doing the work here.
fn earned_each_hour(
    question: &SendOrDo,
    cash: &Choice,
    terms: &Terms,
) -> Result<Option<Reckoned>, TradeError> {
    let (Some(send), Some(here), Some(count)) =
        (&cash.first_total, &cash.second_total, question.count)
    else {
        return Ok(None);
    };
    let entry = |field: &str| format!("{}/{field}", question.key);
    let mut working = MoneyWorking::default();
    let hours = MoneyExpr::Sum(vec![
        (
            false,
            MoneyExpr::number(entry("hours_once"), question.hours_once),
        ),
        (
            false,
            MoneyExpr::Product(vec![
                MoneyExpr::number(entry("hours_each"), question.hours_each),
                MoneyExpr::number(entry("count"), count),
            ]),
        ),
    ]);
    let hours_value = working.line("hours", hours)?;
    if hours_value.is_zero() {
        return Ok(None);
    }
    let saved = MoneyExpr::Sum(vec![
        (false, MoneyExpr::amount("send_total", send.money)),
        (true, MoneyExpr::amount("here_total", here.money)),
    ]);
    let currency = send.money.currency();
    let formula = MoneyExpr::Quotient {
        over: Box::new(saved),
        under: Box::new(MoneyExpr::number("hours", hours_value)),
        places: currency.minor_units(),
        rounding: terms.rounding,
    };
    let money = money_line(&mut working, "earned_each_hour", formula, currency)?;
    Ok(Some(Reckoned { money, working }))
}
