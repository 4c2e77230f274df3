//! The words of the costs sheet.

use super::{Subject, same};

/// The words of the costs sheet.
pub static WORDS: Subject = Subject {
    name: same("Costs"),
    asks: same("What is left to spend?"),
    tells: same("What is paid, committed and planned, and what is left of the budget."),
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
