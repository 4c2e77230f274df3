//! The words of the vehicle sheet.

use super::{Subject, same};

/// The words of the vehicle sheet.
pub static WORDS: Subject = Subject {
    name: same("Vehicle"),
    asks: same("What have I got?"),
    tells: same("What the other sheets need to know of the vehicle, entered once."),
    fields: &[],
    hints: &[],
    choices: &[],
    groups: &[],
    lists: &[],
    results: &[],
    remarks: &[],
    plates: &[],
    words: &[],
};
