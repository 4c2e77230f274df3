//! Amounts of money turned round: exactly, to the coin.

use super::{Outcome, Slice};
use crate::shown::money;
use crate::state::State;
use crate::words::{self, frame};
use buildbook::{BookError, Key, money_back, money_entries};
use measure::MoneyAsk;

/// The most entries that are offered.
const MOST: usize = 8;

/// The prices and limits that an amount rests on.
pub(super) fn entries(state: &State, result: &str) -> Vec<Key> {
    let entries = money_entries(&state.findings, result);
    entries.into_iter().take(MOST).collect()
}

/// What the entry must be for the wanted amount.
pub(super) fn outcome(state: &State, found: &Slice, key: &Key) -> Outcome {
    let manner = state.settings.manner();
    let ask = MoneyAsk::amount(state.book.currency(), manner.mark);
    let aim = match measure::read_money(found.back.wanted.trim(), &ask) {
        Ok(reading) => reading.money,
        Err(error) => {
            let fault =
                words::entry::fault(&BookError::Money(error), &manner, state.settings.tongue);
            return Outcome::Open(Some(fault.said));
        }
    };
    match money_back(&state.book, &state.findings, &found.back.result, key, &aim) {
        Ok(back) => Outcome::Found {
            said: money(&back.value, state),
            reached: (!back.met).then(|| format!("{}: {}", found.told, money(&back.result, state))),
            edit: back.edit,
            others: Vec::new(),
        },
        Err(_) => Outcome::Missed(state.settings.tongue.say(frame::NO_ANSWER).to_owned()),
    }
}
