//! The words of the gearing sheet.

use super::{Subject, same};

/// The words of the gearing sheet.
pub static WORDS: Subject = Subject {
    name: same("Gearing"),
    asks: same("Which axle ratio?"),
    tells: same("Road speed in each gear, the hill it will climb, and the ratio to fit."),
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
