//! Why a result is not there yet, or cannot be.

mod limits;
mod refusal;
#[cfg(test)]
mod tests;

pub use refusal::refusal;

use super::{Tongue, entry_name, filled, frame};
use buildbook::{Book, Lack, Why};

/// How many entries, in words.
pub fn entries(count: usize, tongue: Tongue) -> String {
    if count == 1 {
        tongue.say(frame::ONE_ENTRY).to_owned()
    } else {
        filled(tongue.say(frame::ENTRIES), &[count.to_string()])
    }
}

/// Why a result is not there, in a sentence.
pub fn said(lack: &Lack, book: &Book, tongue: Tongue) -> String {
    match lack.why() {
        Why::Needs(keys) => filled(tongue.say(frame::ANSWER_IN), &[entries(keys.len(), tongue)]),
        Why::Entry(key) => filled(
            tongue.say(frame::LOOK_AT_ENTRY),
            &[entry_name(book, key, tongue)],
        ),
        Why::Refused(error) => refusal(error, tongue),
        Why::NoAnswer(error) => tongue.say(refusal::no_answer(error)).to_owned(),
        _ => tongue.say(frame::NO_ANSWER).to_owned(),
    }
}
