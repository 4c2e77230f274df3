//! Why a result is not there yet, or cannot be.

use super::{Phrase, Tongue, entry_name, filled, frame, pair, same};
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
    if let Some((phrase, parts)) = refused(error) {
        return filled(tongue.say(phrase), &parts);
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

/// Refusals that speak of an entry or a length: the length in both units, since nobody has asked for either.
fn refused(error: &TradeError) -> Option<(Phrase, Vec<String>)> {
    let both = |metres: f64, places: usize| {
        let (mm, inches) = (metres * 1000.0, metres / 0.0254);
        format!("{mm:.places$} mm ({inches:.0$} in)", places + 2)
    };
    Some(match error {
        TradeError::OutOfRange { entry, .. } => (
            same("The {0} is beyond what the calculation can use."),
            vec![(*entry).to_owned()],
        ),
        TradeError::CannotMeet { gap } => (
            same("The distances cannot meet: they miss each other by {0}. Measure them again."),
            vec![both(*gap, 1)],
        ),
        TradeError::ShackleCannotReach { shortest, longest } => (
            same("The shackle cannot reach: it spans eyes from {0} to {1} apart."),
            vec![both(*shortest, 0), both(*longest, 0)],
        ),
        TradeError::NoPack { nearest } => (
            same("No pack of these shims comes near enough; the nearest comes to {0}."),
            vec![both(*nearest, 2)],
        ),
        TradeError::TyreDate => (
            pair(
                "A tyre's date code is four figures, the week and the year. A right one: 2319",
                "A tire's date code is four figures, the week and the year. A right one: 2319",
            ),
            Vec::new(),
        ),
        TradeError::CannotReach { link } => (
            same(
                "The {0} cannot reach so far: look at the measures, and at how far the arm swings.",
            ),
            vec![(*link).to_owned()],
        ),
        TradeError::SteersBackwards | TradeError::SteersNotAtAll => (
            pair(
                "Stopped: it would steer backwards, or not at all. Mend the direction first.",
                "Stopped: it would steer backward, or not at all. Mend the direction first.",
            ),
            Vec::new(),
        ),
        TradeError::UpsideDown => (
            same(
                "The upper figure lies below the lower one: the lower one comes first, as in 0.15 to 0.20.",
            ),
            Vec::new(),
        ),
        TradeError::UnknownThread => (
            same(
                "No thread here is called that. Right ones are M10x1.25, 3/8 UNF, 5/16 BSF and 2 BA.",
            ),
            Vec::new(),
        ),
        TradeError::UnknownGrade => (
            same(
                "No class or grade of this size is called that. Right ones are 8.8, 10.9, grade 5 and R.",
            ),
            Vec::new(),
        ),
        TradeError::MakersFigureOnly => (
            same("Only the vehicle maker's figure serves here."),
            Vec::new(),
        ),
        _ => return None,
    })
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
