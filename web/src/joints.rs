//! What the pages say of a joint: its figure as printed, and what the wrench is set to.

use crate::shown::{NBSP, entry_said, in_unit, reading_of, written};
use crate::state::State;
use crate::words;
use buildbook::sheets::torque::{FIRST_WRENCH, JointEntry, JointFindings};
use buildbook::{Key, field_of};
use measure::{Kind, Torque, Unit};

/// The unit that an entry was typed in; none where it was bare.
fn unit_typed(state: &State, key: &Key) -> Option<&'static Unit> {
    let reading = reading_of(field_of(key)?, state.book.entry(key.as_str())?)?;
    (!reading.bare).then_some(reading.unit)
}

/// What the unit of a wrench's scale is told by: its highest setting.
fn scale_of(wrench: &str) -> Key {
    if wrench == FIRST_WRENCH {
        return Key::from("torque/wrench_high");
    }
    Key::from("torque/wrenches").under(wrench).under("high")
}

/// The name of the wrench that a joint takes, where there are several.
pub fn wrench_name(state: &State, joint: &JointFindings) -> Option<String> {
    let list = Key::from("torque/wrenches");
    let several = !state.findings.torque.sheet.wrenches.is_empty();
    several.then(|| words::row_name(&state.book, &list, &joint.wrench, state.settings.tongue))
}

/// A torque as the scale of the joint's wrench shows it, to three digits, which is finer than any wrench; and in the book's unit, where
/// that is another one.
pub fn set_to(state: &State, joint: &JointFindings, torque: &Torque) -> (String, Option<String>) {
    let manner = state.settings.manner();
    let usual = manner.unit(Kind::Torque);
    let scale = unit_typed(state, &scale_of(&joint.wrench)).unwrap_or(usual);
    let in_it = |unit: &'static Unit| {
        let value = torque.in_unit(unit);
        let step = 10_f64.powf(value.abs().log10().floor() - 2.0);
        let rounded = if value == 0.0 {
            0.0
        } else {
            (value / step).round() * step
        };
        format!(
            "{}{NBSP}{}",
            in_unit(unit.to_si(rounded), unit, &manner),
            unit.symbol
        )
    };
    let also = (scale.symbol != usual.symbol).then(|| in_it(usual));
    (in_it(scale), also)
}

/// The maker's figure as it was typed, and whether the threads are dry: `58 lb ft, Dry`.
pub fn figure_printed(state: &State, entry: &JointEntry) -> Option<String> {
    let manner = state.settings.manner();
    let typed = |field: &str| {
        let entry = state.book.entry(entry.key.under(field).as_str())?;
        Some(entry.text.trim().to_owned()).filter(|text| !text.is_empty())
    };
    let with_unit = |field: &str| {
        let text = typed(field)?;
        let bare = text.chars().all(|c| !c.is_alphabetic());
        Some(if bare {
            let torque = match field {
                "figure" => entry.figure.value(),
                _ => entry.figure_to.value(),
            };
            written(&torque?.figure(Kind::Torque), &manner).shortly()
        } else {
            text.replace(' ', "\u{a0}")
        })
    };
    let mut said = with_unit("figure")?;
    if let Some(to) = with_unit("figure_to") {
        said.push('–');
        said.push_str(&to);
    }
    let threads = entry.threads.value().map(|threads| {
        let key = entry.key.under("threads");
        words::choice(key.as_str(), threads, state.settings.tongue)
    });
    if let Some(threads) = threads {
        said.push_str(", ");
        said.push_str(&threads);
    }
    Some(said)
}

/// A number field of a joint as it was typed, with its unit: `4 in`.
pub fn number_typed(state: &State, entry: &JointEntry, field: &str) -> Option<String> {
    let key = entry.key.under(field);
    let typed = state.book.entry(key.as_str())?;
    let said = entry_said(&state.book, &key, typed, state.settings.tongue);
    (!typed.is_blank()).then_some(said)
}

/// The same with the manual's page: `58 lb ft, Dry, Axle 12`.
pub fn as_printed(state: &State, entry: &JointEntry) -> Option<String> {
    let said = figure_printed(state, entry)?;
    let page = state.book.entry(entry.key.under("page").as_str());
    Some(match page.map(|page| page.text.trim()) {
        Some(page) if !page.is_empty() => format!("{said}, {page}"),
        _ => said,
    })
}
