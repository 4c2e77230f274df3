//! Figures turned round: by a search over the book with the entry changed.

use super::{Outcome, Slice};
use crate::shown::{plain, written};
use crate::state::State;
use crate::words::{self, filled, frame};
use buildbook::{Key, WorkBackError, field_of};
use measure::{Ask, Figure, Kind};

/// How many entries are offered to change.
const OFFERED: usize = 6;

/// The number entries that a figure rests on: what a person decides before what is exact, and that before what is measured;
/// among these those with the greatest say first.
pub(super) fn entries(now: &Figure) -> Vec<Key> {
    let mut parts: Vec<(u8, f64, Key)> = now
        .contributions()
        .iter()
        .filter_map(|part| {
            let key = Key::from(&*part.key);
            let field = field_of(&key)?;
            let wish = match (field.chosen, field.number()?.tool) {
                (true, _) => 2,
                (false, None) => 1,
                (false, Some(_)) => 0,
            };
            Some((wish, (part.slope * part.value).abs(), key))
        })
        .collect();
    // The few that are offered are picked out one by one: a sort of the library would be ten times this code.
    let mut entries = Vec::with_capacity(OFFERED);
    while let Some(most) = most_telling(&parts).filter(|_| entries.len() < OFFERED) {
        entries.push(parts.remove(most).2);
    }
    entries
}

/// Where the entry stands that is offered first, the first of equals.
fn most_telling(parts: &[(u8, f64, Key)]) -> Option<usize> {
    let mut most: Option<usize> = None;
    for (at, (wish, say, _)) in parts.iter().enumerate() {
        let more = |known: usize| {
            *wish > parts[known].0 || *wish == parts[known].0 && *say > parts[known].1
        };
        if most.is_none_or(more) {
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

#[cfg(test)]
mod tests {
    use super::*;
    use buildbook::{evaluate, example};

    #[test]
    fn the_axle_ratio_is_offered_before_the_gear_and_the_wheel() {
        let findings = evaluate(&example::book(), None);
        let found = findings.gearing.found.figure("gearing/cruise");
        let offered = found.map(entries).unwrap_or_default();
        let place = |key: &str| offered.iter().position(|offered| *offered == key);
        assert_eq!(
            offered
                .first()
                .map(|key| field_of(key).is_some_and(|field| field.chosen)),
            Some(true)
        );
        let (axle, gear) = (place("gearing/axle"), place("gearing/gears/4/ratio"));
        assert!(axle.is_some(), "{offered:?}");
        assert!(gear.is_none() || axle < gear, "{offered:?}");
    }
}
