//! Reading what people type: from the text of an entry to a value with its ±, or to the character that is wrong.
//!
//! A hand-written reader with one character of look-ahead: it needs places in characters, two readings of one text
//! and an answer for every slip, which is most of its code; a parser library would carry the rest only.

mod characters;
mod cursor;
mod error;
mod example;
mod gauge;
mod grammar;
mod name;
mod number;
mod reckon;
#[cfg(test)]
mod tests;
mod tolerance;

pub use error::{EntryError, EntryProblem};
pub use gauge::Gauge;

use cursor::{Cursor, Fault};
use grammar::{Amount, Entry};
use tolerance::Tolerance;

use crate::kind::Kind;
use crate::manner::{Manner, System};
use crate::mark::Mark;
use crate::reading::{Ambiguous, Doubt, Reading, Tool};
use crate::unit::Unit;

/// The most characters an entry may have.
const LONGEST: usize = 200;

/// What a field asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ask {
    /// What is measured.
    pub kind: Kind,
    /// The unit of a bare number.
    pub bare: &'static Unit,
    /// What it is measured with: its usual error stands in for a ± that was not typed. None: exact.
    pub tool: Option<Tool>,
    /// The country's system: which gallon, hundredweight, ton or gauge a bare name means.
    pub system: System,
    /// The decimal mark of the book: how a doubtful number is understood until it is settled.
    pub usual: Mark,
    /// The decimal mark where the person has settled it for this entry.
    pub mark: Option<Mark>,
    /// The least value the field takes, SI.
    pub lowest: Option<f64>,
    /// The greatest value the field takes, SI.
    pub highest: Option<f64>,
    /// Only whole numbers.
    pub whole: bool,
    /// Values below nought are possible.
    pub signed: bool,
}

impl Ask {
    /// A field of this kind in a book of this manner: bare numbers in the book's unit, no limits, nothing below nought
    /// except temperatures, counts whole, and exact when no ± is typed.
    #[must_use]
    pub fn of(kind: Kind, manner: &Manner) -> Self {
        Self {
            kind,
            bare: manner.unit(kind),
            tool: None,
            system: manner.units,
            usual: manner.mark,
            mark: None,
            lowest: None,
            highest: None,
            whole: kind == Kind::Count,
            signed: kind == Kind::Temperature,
        }
    }
}

/// Reads an entry.
///
/// A blank ± is the usual error of the field's tool, and the reading says that it is assumed; a typed ± is taken at 95 %.
/// The text itself is never changed.
///
/// # Errors
/// [`EntryError`] with the characters at fault, what is wrong with them, and a right example for this field.
///
/// # Example
/// ```
/// use measure::{read, Ask, Kind, Manner, Stated, System, Tool};
/// let mut ask = Ask::of(Kind::Length, &Manner::of(System::Metric));
/// ask.tool = Some(Tool::Tape);
/// let reading = read("4'3 1/2\"", &ask).unwrap();
/// assert!((reading.value - 1.3081).abs() < 1e-12);
/// assert_eq!((reading.plus, reading.stated), (0.001, Stated::Assumed));
/// let error = read("41x mm", &ask).unwrap_err();
/// assert_eq!((error.at, error.example.as_str()), (2..3, "412.5 mm"));
/// ```
pub fn read(text: &str, ask: &Ask) -> Result<Reading, EntryError> {
    understood(text, ask).map_err(|(at, why)| EntryError {
        at,
        why,
        example: example::example(ask),
    })
}

fn understood(text: &str, ask: &Ask) -> Result<Reading, Fault> {
    if let Some(number) = number::plain(text) {
        let mark = ask.mark.or(number.reveals).unwrap_or(ask.usual);
        return reckon::reading(&Entry::of(number), ask, mark);
    }
    let mut chars = Vec::with_capacity(text.len().min(LONGEST + 1));
    chars.extend(text.chars().take(LONGEST + 1).map(characters::plain));
    if chars.len() > LONGEST {
        return Err((
            LONGEST..LONGEST + 1,
            EntryProblem::TooLong { longest: LONGEST },
        ));
    }
    let mut cursor = Cursor {
        chars: &chars,
        at: 0,
    };
    read_as(&grammar::entry(&mut cursor, ask.kind, ask.system)?, ask)
}

fn read_as(entry: &Entry, ask: &Ask) -> Result<Reading, Fault> {
    let revealed = entry.numbers().find_map(|number| number.reveals);
    let doubtful = entry.numbers().find_map(number::Number::doubtful);
    let (Some(sign), None) = (doubtful, ask.mark.or(revealed)) else {
        let mark = ask.mark.or(revealed).unwrap_or(ask.usual);
        let mut reading = reckon::reading(entry, ask, mark)?;
        reading.mark = doubtful.map(|_| mark);
        reading.ambiguous = reckon::other_unit(entry, ask, mark, reading.value);
        return Ok(reading);
    };
    either_mark(entry, ask, sign)
}

/// The reading of an entry in which one mark may be decimal or part thousands.
fn either_mark(entry: &Entry, ask: &Ask, sign: Mark) -> Result<Reading, Fault> {
    let as_usual = reckon::reading(entry, ask, ask.usual);
    let as_other = reckon::reading(entry, ask, ask.usual.other());
    let (mut reading, mark, otherwise) = match (as_usual, as_other) {
        (Ok(usual), other) => (usual, ask.usual, other.ok()),
        // The field's limits leave one way only.
        (Err(_), Ok(other)) => (other, ask.usual.other(), None),
        (Err(fault), Err(_)) => return Err(fault),
    };
    reading.mark = Some(mark);
    reading.ambiguous = reckon::other_unit(entry, ask, mark, reading.value);
    // The book's own decimal mark is taken at its word: `1.250` is an everyday reading where the point is the mark.
    if let Some(otherwise) = otherwise.filter(|_| sign != ask.usual) {
        reading.ambiguous = Some(Ambiguous {
            doubt: Doubt::Mark {
                understood: mark,
                otherwise: mark.other(),
            },
            understood: reading.value,
            otherwise: otherwise.value,
        });
    }
    Ok(reading)
}

impl Entry {
    /// A bare number.
    fn of(number: number::Number) -> Self {
        let at = number.at.clone();
        Self {
            negative: false,
            amount: Amount::Parts(grammar::Parts::One([grammar::Term { number, unit: None }])),
            tolerance: Tolerance::Blank,
            at,
        }
    }

    /// Every number in the entry.
    fn numbers(&self) -> impl Iterator<Item = &number::Number> {
        let (parts, two): (&[grammar::Term], [Option<&number::Number>; 2]) = match &self.amount {
            Amount::Parts(parts) => (parts, [None, None]),
            Amount::Gauge { .. } => (&[], [None, None]),
            Amount::Fraction(number) => (&[], [Some(number), None]),
            Amount::Quotient { over, under, .. } => (&[], [Some(over), Some(under)]),
        };
        let bounds = match &self.tolerance {
            Tolerance::Blank | Tolerance::Exact => [None, None],
            Tolerance::Both(bound) => [Some(bound), None],
            Tolerance::Sides { plus, minus } => [Some(plus), Some(minus)],
        };
        let of_parts = parts.iter().map(|part| &part.number);
        let of_bounds = bounds.into_iter().flatten().map(|bound| &bound.term.number);
        of_parts.chain(two.into_iter().flatten()).chain(of_bounds)
    }
}
