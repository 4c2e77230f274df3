//! Own hours at a rate, apart from cash, and what the vehicle is worth when it is done.

use std::rc::Rc;

use measure::{Decimal, Money, MoneyExpr, MoneyWorking};

use super::{Reckoned, Terms, money_line, rounded_formula};
use crate::TradeError;

/// Own hours on one job.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnHours {
    /// Where the entries stand, such as `costs/hours/2`.
    pub key: Rc<str>,
    /// How many.
    pub hours: Decimal,
    /// What an hour is reckoned at.
    pub rate: Money,
}

/// The hours of all jobs together.
///
/// # Errors
/// [`TradeError::Money`] on overflow.
pub fn hours_in_all(jobs: &[OwnHours]) -> Result<Decimal, TradeError> {
    let formula = MoneyExpr::Sum(
        jobs.iter()
            .map(|job| {
                (
                    false,
                    MoneyExpr::number(format!("{}/hours", job.key), job.hours),
                )
            })
            .collect(),
    );
    Ok(formula.value()?)
}

/// What own hours come to at their rates: each job rounded, then summed.
///
/// # Errors
/// [`TradeError::Money`] on overflow or a rate in another currency.
pub fn value_of_hours(jobs: &[OwnHours], terms: &Terms) -> Result<Reckoned, TradeError> {
    let mut working = MoneyWorking::default();
    let mut parts = Vec::with_capacity(jobs.len());
    for job in jobs {
        job.rate.compared(&Money::zero(terms.home))?;
        let product = MoneyExpr::Product(vec![
            MoneyExpr::number(format!("{}/hours", job.key), job.hours),
            MoneyExpr::amount(format!("{}/rate", job.key), job.rate),
        ]);
        parts.push((false, rounded_formula(product, terms.home, terms.rounding)));
    }
    let money = money_line(
        &mut working,
        "hours_value",
        MoneyExpr::Sum(parts),
        terms.home,
    )?;
    Ok(Reckoned { money, working })
}

/// What the finished vehicle leaves over.
#[derive(Debug, Clone, PartialEq)]
pub struct WorthWhenDone {
    /// Value when done less all cash: paid, committed and planned.
    pub over_cash: Reckoned,
    /// That, less own hours at their rate.
    pub over_all: Reckoned,
    /// What is left over cash, for each own hour.
    pub each_hour: Option<Reckoned>,
}

/// What the finished vehicle leaves over.
///
/// `over cash = value - cash`; `over all = over cash - own hours`; `each hour = over cash / hours`
///
/// # Errors
/// [`TradeError::Money`] on overflow or mixed currencies.
///
/// # Source
/// Common practice, no source.
pub fn worth_when_done(
    value: &Money,
    cash: &Money,
    hours: Decimal,
    hours_value: &Money,
    terms: &Terms,
) -> Result<WorthWhenDone, TradeError> {
    value.compared(cash)?;
    value.compared(hours_value)?;
    let mut working = MoneyWorking::default();
    let over_cash = money_line(
        &mut working,
        "over_cash",
        MoneyExpr::Sum(vec![
            (false, MoneyExpr::amount("costs/value_done", *value)),
            (true, MoneyExpr::amount("cash", *cash)),
        ]),
        terms.home,
    )?;
    let mut all_working = working.clone();
    let over_all = money_line(
        &mut all_working,
        "over_all",
        MoneyExpr::Sum(vec![
            (false, MoneyExpr::amount("over_cash", over_cash)),
            (true, MoneyExpr::amount("hours_value", *hours_value)),
        ]),
        terms.home,
    )?;
    let each_hour = if hours.is_zero() {
        None
    } else {
        let mut working = working.clone();
        let formula = MoneyExpr::Quotient {
            over: Box::new(MoneyExpr::amount("over_cash", over_cash)),
            under: Box::new(MoneyExpr::number("hours", hours)),
            places: terms.home.minor_units(),
            rounding: terms.rounding,
        };
        let money = money_line(&mut working, "each_hour", formula, terms.home)?;
        Some(Reckoned { money, working })
    };
    Ok(WorthWhenDone {
        over_cash: Reckoned {
            money: over_cash,
            working,
        },
        over_all: Reckoned {
            money: over_all,
            working: all_working,
        },
        each_hour,
    })
}
