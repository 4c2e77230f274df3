//! Which unit a typed name means, for a kind of quantity and a country's system.

use std::ops::Range;

use super::characters::spell;
use super::cursor::{Cursor, Fault};
use super::error::EntryProblem;
use crate::kind::Kind;
use crate::manner::System;
use crate::unit::{self, Unit};

/// The longest name of a unit, in characters as typed, that is looked for.
const LONGEST: usize = 32;

/// A unit that was typed.
#[derive(Debug, Clone)]
pub(super) struct Named {
    pub(super) unit: &'static Unit,
    /// Another country has a unit of this name.
    pub(super) is_shared: bool,
    /// The unit of the same name in another country, where the book's own system does not settle it.
    pub(super) other: Option<&'static Unit>,
    pub(super) at: Range<usize>,
}

/// The units a slope may be given in as the angle it makes.
static ANGLES_OF_SLOPES: [&Unit; 3] = [&unit::DEGREE, &unit::ARC_MINUTE, &unit::RADIAN];

/// The units a field of this kind may be typed in.
fn units_of(kind: Kind) -> impl Iterator<Item = &'static Unit> {
    let angles: &'static [&'static Unit] = if kind == Kind::Slope {
        &ANGLES_OF_SLOPES
    } else {
        &[]
    };
    kind.units().iter().chain(angles).copied()
}

/// Takes the longest name of a unit that stands here; the place stays where there is none.
pub(super) fn unit_here(cursor: &mut Cursor<'_>, kind: Kind, system: System) -> Option<Named> {
    let mut found = None;
    let end = longest(cursor, &mut |spelling| {
        let mut named = units_of(kind).filter(|unit| is_called(unit, spelling));
        let first = named.next();
        found = first.map(|first| match named.next() {
            None => (first, None, false),
            Some(next) => {
                let all: Vec<_> = [first, next].into_iter().chain(named).collect();
                let (unit, other) = meant(&all, system);
                (unit, other, true)
            }
        });
        found.is_some()
    })?;
    let (unit, other, is_shared) = found?;
    let at = cursor.at..end;
    cursor.at = end;
    Some(Named {
        unit,
        is_shared,
        other,
        at,
    })
}

fn is_called(unit: &Unit, spelling: &str) -> bool {
    !spelling.is_empty() && unit.names.contains(&spelling)
}

/// The end of the longest run of characters from here whose spelling `is_known` accepts.
fn longest(cursor: &Cursor<'_>, is_known: &mut dyn FnMut(&str) -> bool) -> Option<usize> {
    let (start, end) = (cursor.at, run(cursor));
    if end == start {
        return None;
    }
    let mut spelling = String::with_capacity(LONGEST);
    (start + 1..=end).rev().find(|end| {
        let end = *end;
        let (last, next) = (cursor.chars[end - 1], cursor.chars.get(end));
        let cuts_word = last.is_alphabetic()
            && next.is_some_and(|c| c.is_alphabetic() || matches!(c, '²' | '³' | '⁴'));
        let cuts_number = last.is_ascii_digit() && next.is_some_and(char::is_ascii_digit);
        let loose_end = matches!(last, ' ' | '-' | '*' | '/');
        if cuts_word || cuts_number || loose_end {
            return false;
        }
        // `per` is spoken between words: the space before it belongs to it, also where the name begins with it.
        let from = if start > 0 && cursor.chars[start - 1] == ' ' {
            start - 1
        } else {
            start
        };
        spell(&mut spelling, &cursor.chars[from..end]);
        is_known(&spelling)
    })
}

/// The end of the characters from here that can stand in one name of a unit. Digits stand in it only as powers and in `1/min`.
fn run(cursor: &Cursor<'_>) -> usize {
    let furthest = cursor.chars.len().min(cursor.at + LONGEST);
    let mut end = cursor.at;
    while end < furthest {
        let c = cursor.chars[end];
        let before = if end > cursor.at {
            cursor.chars[end - 1]
        } else {
            '/'
        };
        let ends = match c {
            '0'..='9' => !(before.is_alphabetic() || matches!(before, '^' | '/' | '-')),
            '+' | '±' | ',' | ';' | ':' | '(' | ')' | '=' => true,
            _ => super::characters::vulgar_fraction(c).is_some(),
        };
        if ends {
            break;
        }
        end += 1;
    }
    end
}

/// Of units that share a name, the one that the book's system means; and the other one where the system is neither.
fn meant(named: &[&'static Unit], system: System) -> (&'static Unit, Option<&'static Unit>) {
    let of = |wanted: System| {
        named
            .iter()
            .copied()
            .find(|unit| unit.system == Some(wanted))
    };
    match (of(system), of(System::Imperial), of(System::UnitedStates)) {
        (Some(own), _, _) => (own, None),
        (None, Some(british), american) => (british, american),
        (None, None, _) => (named[0], None),
    }
}

/// What to say of a word that is no unit of this kind: a unit of something else, or no unit at all.
pub(super) fn not_a_unit(cursor: &Cursor<'_>) -> Fault {
    let mut found = None;
    let end = longest(cursor, &mut |spelling| {
        let mut all = Kind::all().flat_map(Kind::units).copied();
        found = all.find(|unit| is_called(unit, spelling));
        found.is_some()
    });
    if let (Some(end), Some(unit)) = (end, found) {
        return (cursor.at..end, EntryProblem::WrongUnit(unit));
    }
    let letters = cursor.chars[cursor.at..]
        .iter()
        .take_while(|c| c.is_alphabetic())
        .take(LONGEST)
        .count();
    if letters == 0 {
        let c = cursor.peek().unwrap_or(' ');
        return (cursor.at..cursor.at + 1, EntryProblem::Character(c));
    }
    let end = cursor.at + letters;
    (
        cursor.at..end,
        EntryProblem::UnknownUnit(cursor.chars[cursor.at..end].iter().collect()),
    )
}
