//! Figures turned round: by a search over the book with the entry changed.

use super::{Outcome, Slice};
use crate::shown::{plain, written};
use crate::state::State;
use crate::words::{self, filled, frame};
use buildbook::{Key, WorkBackError, field_of};
use measure::{Ask, Figure, Kind};

/// How many entries are offered to change.
const OFFERED: usize = 6;

/// The number entries that a figure rests on, those with the greatest say first.
pub(super) fn entries(now: &Figure) -> Vec<Key> {
    let mut parts: Vec<(f64, Key)> = now
        .contributions()
        .iter()
        .map(|part| ((part.slope * part.value).abs(), Key::from(&*part.key)))
        .filter(|(_, key)| field_of(key).is_some_and(|field| field.number().is_some()))
        .collect();
    // The few that are offered are picked out one by one: a sort of the library would be ten times this code.
    let mut entries = Vec::with_capacity(OFFERED);
    while let Some(most) = most_telling(&parts).filter(|_| entries.len() < OFFERED) {
        entries.push(parts.remove(most).1);
    }
    entries
}

/// Where the entry with the greatest say stands, the first of equals.
fn most_telling(parts: &[(f64, Key)]) -> Option<usize> {
    let mut most: Option<usize> = None;
    for (at, (say, _)) in parts.iter().enumerate() {
        if most.is_none_or(|known| *say > parts[known].0) {
            most = Some(at);
        }
    }
    most
}

/// The wanted figure as a number; what is wrong with it as a sentence.
fn wanted(state: &State, text: &str, kind: Kind) -> Result<f64, String> {
    let manner = state.settings.manner();
    let ask = Ask {
        whole: false,
        signed: true,
        ..Ask::of(kind, &manner)
    };
    measure::read(text, &ask)
        .map(|reading| reading.value)
        .map_err(|error| words::entry::fault(&error.into(), &manner, state.settings.tongue).said)
}

/// What the entry must be for the wanted figure.
pub(super) fn outcome(state: &State, found: &Slice, now: &Figure, key: &Key) -> Outcome {
    let result = &found.back.result;
    let kind = now.kind();
    let aim = match wanted(state, &found.back.wanted, kind) {
        Ok(aim) => aim,
        Err(why) => return Outcome::Open(Some(why)),
    };
    let manner = state.settings.manner();
    match buildbook::work_back(&state.book, &state.findings, result, key, aim, &manner) {
        Ok(back) => {
            let entry_kind = field_of(key)
                .and_then(|field| field.number())
                .map(|number| number.kind);
            let value =
                |si: f64| entry_kind.map_or_else(String::new, |kind| plain(si, kind, &manner));
            Outcome::Found {
                said: back.figure.as_ref().map_or_else(
                    || value(back.value),
                    |figure| written(figure, &manner).whole(),
                ),
                reached: (!back.met).then(|| written(&back.result, &manner).whole()),
                others: back.others.iter().map(|other| value(*other)).collect(),
                edit: back.edit,
            }
        }
        Err(WorkBackError::NoRoot { reached, .. }) => {
            let nearest = plain(reached, kind, &manner);
            let said = state.settings.tongue.say(frame::CANNOT_REACH);
            Outcome::Missed(filled(said, &[nearest]))
        }
        Err(_) => Outcome::Missed(state.settings.tongue.say(frame::NO_ANSWER).to_owned()),
    }
}
