//! The words of the paint sheet.

use super::{Subject, pair, same};

/// The words of the paint sheet.
pub static WORDS: Subject = Subject {
    name: same("Paint"),
    asks: pair("How many litres?", "How many gallons?"),
    tells: same("Litres of every product, the tins to buy, and a timetable of the coats."),
    fields: &[("paint/name", same("Name"))],
    hints: &[],
    choices: &[],
    groups: &[],
    lists: &[],
    results: &[],
    remarks: &[],
    plates: &[],
    words: &[],
};
