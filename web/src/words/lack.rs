//! Why a result is not there yet, or cannot be.

use super::{Phrase, Tongue, entry_name, filled, frame, same};
use buildbook::{Book, Lack};
use measure::MeasureError;
use trade::TradeError;

/// How many entries, in words.
pub fn entries(count: usize, tongue: Tongue) -> String {
    if count == 1 {
        tongue.say(frame::ONE_ENTRY).to_owned()
    } else {
        filled(tongue.say(frame::ENTRIES), &[count.to_string()])
    }
}

fn no_answer(error: &MeasureError) -> Phrase {
    match error {
        MeasureError::NoRoot { .. } => same("No value within the limits gives that."),
        _ => same("There is no answer with these entries."),
    }
}

/// Why a calculation refuses, in a sentence.
pub fn refusal(error: &TradeError, tongue: Tongue) -> String {
    if let Some(phrase) = super::gearing::refusal(error) {
        return tongue.say(phrase).to_owned();
    }
    let said = error.to_string();
    let mut letters = said.chars();
    match letters.next() {
        Some(first) => format!(
            "{}{}.",
            first.to_uppercase(),
            letters.as_str().trim_end_matches('.')
        ),
        None => String::new(),
    }
}

/// Why a result is not there, in a sentence.
pub fn said(lack: &Lack, book: &Book, tongue: Tongue) -> String {
    match lack {
        Lack::Needs(keys) => filled(tongue.say(frame::ANSWER_IN), &[entries(keys.len(), tongue)]),
        Lack::Entry(key) => filled(
            tongue.say(frame::LOOK_AT_ENTRY),
            &[entry_name(book, key, tongue)],
        ),
        Lack::Refused(error) => refusal(error, tongue),
        Lack::NoAnswer(error) => tongue.say(no_answer(error)).to_owned(),
        _ => tongue.say(frame::NO_ANSWER).to_owned(),
    }
}
