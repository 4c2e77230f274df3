//! The words of the springs sheet.

use super::{Subject, same};

/// The words of the springs sheet.
pub static WORDS: Subject = Subject {
    name: same("Springs"),
    asks: same("How high will it sit?"),
    tells: same("Rate, arch and ride height of each spring, and the stress in its leaves."),
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
