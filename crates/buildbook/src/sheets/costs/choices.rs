//! Hire or buy, send out or do here: from the entries to the questions.

use std::rc::Rc;

use measure::{Decimal, Money, MoneyError};
use trade::costs::choice::{hire_or_buy, send_or_do};
use trade::costs::{Choice, HireOrBuy, Reckoned, SendOrDo, SendOrDoAnswer, Terms};

use super::{CostHire, CostSend, CostsSheet};
use crate::sheets::marking::MarkingSheet;
use crate::{All, Found, Given, Key, Lack};

/// A question and its answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked<T> {
    /// Where its entries stand.
    pub key: Key,
    /// What it is about.
    pub what: Rc<str>,
    /// The answer, or what it lacks.
    pub answer: Result<T, Lack>,
}

/// "Hire or buy?", answered.
pub type HireFinding = Asked<Choice>;
/// "Send out or do here?", answered.
pub type SendFinding = Asked<SendOrDoAnswer>;

fn what(given: &Given<Rc<str>>) -> Rc<str> {
    given.value().cloned().unwrap_or_default()
}

/// An amount of the book's currency.
fn home(given: &Given<Money>, terms: &Terms) -> Result<Money, Lack> {
    let money = *given.ask()?;
    if money.currency() == terms.home {
        Ok(money)
    } else {
        let mixed = MoneyError::Mixed {
            left: terms.home,
            right: money.currency(),
        };
        Err(mixed.into())
    }
}

fn or_none(given: &Given<Decimal>) -> Result<Option<Decimal>, Lack> {
    given.ask_or_none().map(Option::<&Decimal>::copied)
}

pub(super) fn hire(row: &CostHire, marking: &MarkingSheet, terms: &Terms) -> HireFinding {
    let (hire_day, buy_price, days) = match row.follows.value() {
        Some(&"marking") => (
            &marking.template_hire,
            &marking.template_buy,
            &marking.template_days,
        ),
        _ => (&row.hire_day, &row.buy_price, &row.days),
    };
    let answer = (
        home(hire_day, terms),
        home(&row.hire_once, terms),
        home(buy_price, terms),
        home(&row.resale, terms),
        home(&row.upkeep_day, terms),
        or_none(days),
    )
        .all()
        .and_then(
            |(hire_each_day, hire_once, buy_price, resale, upkeep_each_day, days)| {
                let question = HireOrBuy {
                    key: row.key.to_string(),
                    hire_each_day,
                    hire_once,
                    buy_price,
                    resale,
                    upkeep_each_day,
                    days,
                };
                Ok(hire_or_buy(&question, terms)?)
            },
        );
    Asked {
        key: row.key.clone(),
        what: what(&row.what),
        answer,
    }
}

pub(super) fn send(
    row: &CostSend,
    (sheet, marking): (&CostsSheet, &MarkingSheet),
    terms: &Terms,
) -> SendFinding {
    let count = match row.follows.value() {
        Some(&"marking") => {
            // A feature counts from its first reading on.
            let features = marking.features.iter();
            let begun = features.filter(|one| !(one.a.is_blank() && one.along.is_blank()));
            Ok(Some(begun.count().into()))
        }
        _ => or_none(&row.count),
    };
    let money = (
        home(&row.send_each, terms),
        home(&row.send_once, terms),
        home(&row.here_each, terms),
        home(&row.here_once, terms),
        home(&sheet.hour_rate, terms),
    )
        .all();
    let counts = (
        row.hours_each.ask().copied(),
        row.hours_once.ask().copied(),
        count,
    )
        .all();
    let answer = (money, counts).all().and_then(
        |((send_each, send_once, here_each, here_once, rate), (hours_each, hours_once, count))| {
            let question = SendOrDo {
                key: row.key.to_string(),
                send_once,
                send_each,
                here_once,
                here_each,
                hours_once,
                hours_each,
                rate,
                count,
            };
            Ok(send_or_do(&question, terms)?)
        },
    );
    Asked {
        key: row.key.clone(),
        what: what(&row.what),
        answer,
    }
}

/// Puts the totals of a choice in under its row: `costs/hire/2/first`.
pub(super) fn put_choice(found: &mut Found, at: &str, choice: Result<&Choice, &Lack>, needs: &Key) {
    let total = |pick: fn(&Choice) -> Option<&Reckoned>| match choice {
        Ok(choice) => pick(choice)
            .cloned()
            .ok_or_else(|| Lack::needs([needs.clone()])),
        Err(lack) => Err(lack.clone()),
    };
    found.put_money(
        format!("{at}/first"),
        total(|choice| choice.first_total.as_ref()),
    );
    found.put_money(
        format!("{at}/second"),
        total(|choice| choice.second_total.as_ref()),
    );
}
