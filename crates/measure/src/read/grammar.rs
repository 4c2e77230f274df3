//! The grammar of an entry: what was typed, cut into a value and its tolerance; nothing is reckoned here.
//!
//! ```text
//! entry     = [ "exact" ] ( "(" amount tolerance ")" [ unit ] | amount tolerance ) [ "exact" ]
//! amount    = [ sign ] ( gauge | number "in" number | number ":" number | number unit { number unit } [ number ] | number )
//! tolerance = [ "±" bound | "+" bound "-" bound | "-" bound "+" bound ]
//! bound     = number [ unit | "%" ]
//! number    = digits [ mark digits ] | [ whole ] fraction
//! ```

use std::ops::Range;

use super::cursor::{Cursor, Fault};
use super::error::EntryProblem;
use super::gauge::Gauge;
use super::name::{Named, not_a_unit, unit_here};
use super::number::{Number, number};
use super::tolerance::{Tolerance, tolerance};
use crate::kind::Kind;
use crate::manner::System;
use crate::unit::{self, Unit};

/// A number and the unit behind it.
#[derive(Debug, Clone)]
pub(super) struct Term {
    pub(super) number: Number,
    pub(super) unit: Option<Named>,
}

#[derive(Debug, Clone)]
pub(super) enum Amount {
    /// One value, in one part or several: `412.5 mm`, `12 cwt 2 qr 14 lb`.
    Parts(Parts),
    /// `18 SWG`.
    Gauge { gauge: Gauge, number: i32 },
    /// `1/7` as a slope.
    Fraction(Number),
    /// `1 in 40` or `4.11:1`.
    Quotient {
        over: Number,
        under: Number,
        is_slope: bool,
    },
}

/// The parts of one value. Most have one, which needs no room of its own.
#[derive(Debug, Clone)]
pub(super) enum Parts {
    One([Term; 1]),
    Several(Vec<Term>),
}

impl std::ops::Deref for Parts {
    type Target = [Term];
    fn deref(&self) -> &[Term] {
        match self {
            Self::One(one) => one,
            Self::Several(several) => several,
        }
    }
}

impl std::ops::DerefMut for Parts {
    fn deref_mut(&mut self) -> &mut [Term] {
        match self {
            Self::One(one) => one,
            Self::Several(several) => several,
        }
    }
}

impl Parts {
    /// The same, with one more.
    fn and(self, term: Term) -> Self {
        let mut several = match self {
            Self::One(one) => one.into(),
            Self::Several(several) => several,
        };
        several.push(term);
        Self::Several(several)
    }
}

#[derive(Debug, Clone)]
pub(super) struct Entry {
    pub(super) negative: bool,
    pub(super) amount: Amount,
    pub(super) tolerance: Tolerance,
    pub(super) at: Range<usize>,
}

/// Reads a whole entry.
pub(super) fn entry(cursor: &mut Cursor<'_>, kind: Kind, system: System) -> Result<Entry, Fault> {
    cursor.skip_gap();
    if cursor.at_end() {
        return Err((0..cursor.chars.len(), EntryProblem::Empty));
    }
    let exact_before = cursor.take_word("exact");
    cursor.skip_gap();
    let bracket = cursor.at;
    let opened = cursor.take('(');
    cursor.skip_gap();
    let start = cursor.at;
    let negative = sign(cursor);
    let amount = amount(cursor, kind, system)?;
    let at = start..cursor.at;
    let mut tolerance = tolerance(cursor, kind, system)?;
    let mut entry_amount = amount;
    cursor.skip_gap();
    if opened && !cursor.take(')') {
        return Err((bracket..bracket + 1, EntryProblem::Brackets));
    }
    if opened || !matches!(tolerance, Tolerance::Blank) {
        cursor.skip_gap();
        unit_for_all(cursor, kind, system, &mut entry_amount, &mut tolerance);
        cursor.skip_gap();
    }
    let exact = exact_before || cursor.take_word("exact");
    cursor.skip_gap();
    if !cursor.at_end() {
        return Err(left_over(cursor, kind, &entry_amount));
    }
    if exact {
        if let Tolerance::Both(bound) | Tolerance::Sides { plus: bound, .. } = &tolerance {
            return Err((bound.term.number.at.clone(), EntryProblem::NotOneValue));
        }
        tolerance = Tolerance::Exact;
    }
    Ok(Entry {
        negative,
        amount: entry_amount,
        tolerance,
        at,
    })
}

/// `(412.5 ± 0.5) mm`, `412.5 (± 0.5) mm`: the unit behind the bracket serves whatever has none.
fn unit_for_all(
    cursor: &mut Cursor<'_>,
    kind: Kind,
    system: System,
    amount: &mut Amount,
    tolerance: &mut Tolerance,
) {
    let Some(named) = unit_here(cursor, kind, system) else {
        return;
    };
    let give = |term: &mut Term| {
        term.unit.get_or_insert_with(|| named.clone());
    };
    if let Amount::Parts(parts) = amount {
        parts.iter_mut().for_each(give);
    }
    match tolerance {
        Tolerance::Both(bound) if !bound.is_percent => give(&mut bound.term),
        Tolerance::Sides { plus, minus } => {
            for bound in [plus, minus] {
                if !bound.is_percent {
                    give(&mut bound.term);
                }
            }
        }
        _ => {}
    }
}

/// Says what is wrong with what stands behind a complete entry.
fn left_over(cursor: &Cursor<'_>, kind: Kind, amount: &Amount) -> Fault {
    let here = cursor.at..cursor.at + 1;
    // `26 lb ft` in a field for mass: `lb` was a unit, `lb ft` is what was meant.
    if let Amount::Parts(parts) = amount
        && let Some(named) = parts.last().and_then(|part| part.unit.as_ref())
    {
        let from_unit = Cursor {
            chars: cursor.chars,
            at: named.at.start,
        };
        if let (at, EntryProblem::WrongUnit(unit)) = not_a_unit(&from_unit)
            && at.end > cursor.at
            && !kind.units().contains(&unit)
        {
            return (at, EntryProblem::WrongUnit(unit));
        }
    }
    let mut range = Cursor {
        chars: cursor.chars,
        at: cursor.at,
    };
    if range.take_word("to") || range.take_word("or") {
        return (cursor.at..range.at, EntryProblem::NotOneValue);
    }
    match cursor.peek() {
        Some('+' | '-' | '±' | '/' | ':' | '×' | '*') => (here, EntryProblem::NotOneValue),
        Some('x' | 'X')
            if cursor
                .peek_at(1)
                .is_some_and(|c| c == ' ' || c.is_ascii_digit()) =>
        {
            (here, EntryProblem::NotOneValue)
        }
        Some('(' | ')') => (here, EntryProblem::Brackets),
        Some(_) if cursor.at_number() => {
            let bare = matches!(amount, Amount::Parts(parts) if parts.iter().all(|part| part.unit.is_none()));
            (
                here,
                if bare {
                    EntryProblem::NotOneValue
                } else {
                    EntryProblem::UnitMissing
                },
            )
        }
        _ => not_a_unit(cursor),
    }
}

/// Takes a sign; true for a minus.
fn sign(cursor: &mut Cursor<'_>) -> bool {
    let negative = cursor.peek() == Some('-');
    if negative || cursor.peek() == Some('+') {
        cursor.at += 1;
        cursor.skip_gap();
    }
    negative
}

fn amount(cursor: &mut Cursor<'_>, kind: Kind, system: System) -> Result<Amount, Fault> {
    if has_gauges(kind)
        && let Some(gauge) = gauge(cursor)?
    {
        return Ok(gauge);
    }
    if !cursor.at_number() {
        return Err(no_number(cursor));
    }
    let first = number(cursor)?;
    let back = cursor.at;
    cursor.skip_gap();
    let is_slope = matches!(kind, Kind::Slope | Kind::Angle) && cursor.take_word("in");
    if is_slope || (is_plain(kind) && (cursor.take(':') || cursor.take_word("to"))) {
        cursor.skip_gap();
        if !cursor.at_number() {
            return Err(no_number(cursor));
        }
        return Ok(Amount::Quotient {
            over: first,
            under: number(cursor)?,
            is_slope,
        });
    }
    cursor.at = back;
    let amount = parts(cursor, first, kind, system)?;
    Ok(match amount {
        // `1/7` of a slope is its rise to its run, whatever the unit of a bare number.
        Amount::Parts(parts) if kind == Kind::Slope && is_bare_fraction(&parts) => {
            Amount::Fraction(parts[0].number.clone())
        }
        amount => amount,
    })
}

fn is_bare_fraction(parts: &[Term]) -> bool {
    matches!(parts, [only] if only.unit.is_none() && only.number.denominator.is_some())
}

pub(super) fn no_number(cursor: &Cursor<'_>) -> Fault {
    let Some(c) = cursor.peek() else {
        return (cursor.at..cursor.at, EntryProblem::NoNumber);
    };
    let here = cursor.at..cursor.at + 1;
    match not_a_unit(cursor).1 {
        EntryProblem::Character(_) if !matches!(c, '+' | '-' | '±' | '(' | ')' | '/' | ':') => {
            (here, EntryProblem::Character(c))
        }
        _ => (here, EntryProblem::NoNumber),
    }
}

fn is_plain(kind: Kind) -> bool {
    matches!(kind, Kind::Ratio | Kind::Percent | Kind::Slope)
}

fn has_gauges(kind: Kind) -> bool {
    matches!(kind, Kind::Length | Kind::Thickness)
}

/// `4 ft 3 1/2 in`: the first number is read; units and further parts follow.
fn parts(
    cursor: &mut Cursor<'_>,
    first: Number,
    kind: Kind,
    system: System,
) -> Result<Amount, Fault> {
    let mut parts = Parts::One([Term {
        number: first,
        unit: unit_behind(cursor, kind, system),
    }]);
    while let Some(above) = parts.last().and_then(|part| part.unit.clone()) {
        let back = cursor.at;
        cursor.skip_gap();
        // `4'-3"`, as drawings have it.
        let joined = cursor.at == back
            && above.unit == &unit::FOOT
            && cursor.peek() == Some('-')
            && cursor.digit_at(1);
        cursor.at += usize::from(joined);
        if !cursor.at_number() {
            cursor.at = back;
            break;
        }
        let number = number(cursor)?;
        let at = number.at.clone();
        let unit = match unit_behind(cursor, kind, system) {
            Some(named) => named,
            None => {
                let unit =
                    part_of(above.unit).ok_or((at.end..at.end, EntryProblem::UnitMissing))?;
                Named {
                    unit,
                    is_shared: false,
                    other: None,
                    at: at.end..at.end,
                }
            }
        };
        parts = parts.and(Term {
            number,
            unit: Some(unit),
        });
    }
    Ok(Amount::Parts(parts))
}

/// The unit of a bare number behind a number in this unit: `4 ft 3`, `1 h 30`.
pub(super) fn part_of(unit: &Unit) -> Option<&'static Unit> {
    let parts: [(&Unit, &'static Unit); 7] = [
        (&unit::FOOT, &unit::INCH),
        (&unit::HOUR, &unit::MINUTE),
        (&unit::MINUTE, &unit::SECOND),
        (&unit::DEGREE, &unit::ARC_MINUTE),
        (&unit::ARC_MINUTE, &unit::ARC_SECOND),
        (&unit::STONE, &unit::POUND),
        (&unit::POUND, &unit::OUNCE),
    ];
    parts
        .into_iter()
        .find(|(whole, _)| *whole == unit)
        .map(|(_, part)| part)
}

pub(super) fn unit_behind(cursor: &mut Cursor<'_>, kind: Kind, system: System) -> Option<Named> {
    let back = cursor.at;
    cursor.skip_gap();
    let named = unit_here(cursor, kind, system);
    if named.is_none() {
        cursor.at = back;
    }
    named
}

/// A gauge number: `18 SWG`, `SWG 18`, `2/0 SWG`, `16 ga`; nothing is taken where there is none.
fn gauge(cursor: &mut Cursor<'_>) -> Result<Option<Amount>, Fault> {
    let back = cursor.at;
    let mut series = gauge_name(cursor)?;
    cursor.skip_gap();
    let start = cursor.at;
    let digits = cursor.take_whole();
    let noughts =
        cursor.peek() == Some('/') && cursor.peek_at(1) == Some('0') && !cursor.digit_at(2);
    cursor.at += 2 * usize::from(noughts);
    let end = cursor.at;
    cursor.skip_gap();
    if series.is_none() && digits.is_some() {
        series = gauge_name(cursor)?;
    }
    let (Some(gauge), Some(digits)) = (series, digits) else {
        cursor.at = back;
        return Ok(None);
    };
    let number = i32::try_from(digits)
        .ok()
        .map(|number| if noughts { 1 - number } else { number });
    match number.filter(|number| gauge.thickness(*number).is_some()) {
        Some(number) => Ok(Some(Amount::Gauge { gauge, number })),
        None => Err((start..end, EntryProblem::UnknownGauge)),
    }
}

/// The series a gauge word means. `gauge` alone is said of both and is refused.
fn gauge_name(cursor: &mut Cursor<'_>) -> Result<Option<Gauge>, Fault> {
    let start = cursor.at;
    if !matches!(cursor.peek(), Some('s' | 'S' | 'm' | 'M' | 'g' | 'G')) {
        return Ok(None);
    }
    if cursor.take_word("swg") || cursor.take_word("s.w.g.") {
        return Ok(Some(Gauge::StandardWire));
    }
    if cursor.take_word("msg") || cursor.take_word("ga") {
        return Ok(Some(Gauge::ManufacturersStandard));
    }
    if cursor.take_word("gauge") || cursor.take_word("g") {
        return Err((start..cursor.at, EntryProblem::GaugeSeries));
    }
    Ok(None)
}
