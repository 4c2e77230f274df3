//! A right example for a field: the trade's everyday one where it fits the limits, else one made from the limits.

use super::{Ask, understood};
use crate::manner::System;
use crate::mark::Mark;

/// A right entry for this field, in the book's own way of writing.
pub(super) fn example(ask: &Ask) -> String {
    let mark = ask.mark.unwrap_or(ask.usual);
    let everyday = with_mark(ask.kind.example(country(ask)), mark);
    if understood(&everyday, ask).is_ok() {
        return everyday;
    }
    (0..=9)
        .map(|digits| with_mark(&written(between(ask), digits, ask), mark))
        .find(|text| understood(text, ask).is_ok())
        .unwrap_or(everyday)
}

/// The country whose everyday example fits the unit of a bare number.
fn country(ask: &Ask) -> System {
    let shows_bare = |system: &System| ask.kind.default_unit(*system) == ask.bare;
    [ask.system, System::Imperial, System::UnitedStates]
        .into_iter()
        .find(shows_bare)
        .unwrap_or(ask.system)
}

/// A value between the limits, in the unit of a bare number.
fn between(ask: &Ask) -> f64 {
    let bare = |si| ask.bare.from_si(si);
    match (ask.lowest.map(bare), ask.highest.map(bare)) {
        (Some(lowest), Some(highest)) if lowest > 0.0 && !ask.whole => (lowest * highest).sqrt(),
        (Some(lowest), Some(highest)) => (lowest + highest) / 2.0,
        (Some(lowest), None) if lowest > 0.0 => lowest * 1.5,
        (Some(lowest), None) => lowest + 1.0,
        (None, Some(highest)) if highest > 0.0 => highest / 2.0,
        (None, Some(highest)) => highest - 1.0,
        (None, None) => 1.0,
    }
}

/// The value with its first figures, `digits` of them behind the one or two that lead; three behind the mark are avoided,
/// for they could be thousands.
fn written(value: f64, digits: usize, ask: &Ask) -> String {
    let unit = ask.bare.symbol;
    let gap = if unit.is_empty() { "" } else { " " };
    if ask.whole {
        return format!("{}{gap}{unit}", value.round());
    }
    #[allow(
        clippy::cast_possible_truncation,
        reason = "a decimal exponent fits easily"
    )]
    let size = if value == 0.0 {
        0
    } else {
        value.abs().log10().floor() as i32
    };
    let step = 10f64.powi(size - i32::try_from(digits).unwrap_or(0) - 1);
    let rounded = (value / step).round() * step;
    let behind = usize::try_from(1 + i32::try_from(digits).unwrap_or(0) - size).unwrap_or(0);
    let text = format!("{rounded:.behind$}");
    let text = if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    };
    let doubtful = text
        .split_once('.')
        .is_some_and(|(_, decimals)| decimals.len() == 3);
    format!("{text}{}{gap}{unit}", if doubtful { "0" } else { "" })
}

fn with_mark(text: &str, mark: Mark) -> String {
    match mark {
        Mark::Point => text.to_owned(),
        Mark::Comma => text.replace('.', ","),
    }
}
