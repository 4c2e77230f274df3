//! Where the formulas of costs come from, by the name of the line in their working.

use measure::{Held, Source};

const TAX: Source = Source {
    title: "Directive 2006/112/EC on value added tax",
    place: "articles 73, 78 and 85",
    held: Held::Memory,
};
const MINOR_UNITS: Source = Source {
    title: "ISO 4217, list one of 1 January 2026",
    place: "minor units",
    held: Held::Seen,
};
const BREAK_EVEN: Source = Source {
    title: "Panneerselvam, Engineering Economics",
    place: "break-even analysis, example 1.1",
    held: Held::Seen,
};
const PRACTICE: Source = Source {
    title: "What is left is what nothing else has claimed",
    place: "",
    held: Held::CommonPractice,
};

/// The source of a line of a working, where there is more to say than arithmetic.
#[must_use]
pub fn source_of(symbol: &str) -> Option<&'static Source> {
    match symbol {
        "tax" | "net" | "duty" => Some(&TAX),
        "goods" => Some(&MINOR_UNITS),
        "break_even" => Some(&BREAK_EVEN),
        "left" | "contingency" => Some(&PRACTICE),
        _ => None,
    }
}
