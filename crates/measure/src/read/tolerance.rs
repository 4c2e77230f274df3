//! The tolerance behind a value: `± 0.5`, `+0.1 -0.3`, `± 2 %`, with or without brackets.

use super::cursor::{Cursor, Fault};
use super::error::EntryProblem;
use super::grammar::{Term, no_number, unit_behind};
use super::number::number;
use crate::kind::Kind;
use crate::manner::System;

/// One side of a tolerance.
#[derive(Debug, Clone)]
pub(super) struct Bound {
    pub(super) term: Term,
    pub(super) is_percent: bool,
}

#[derive(Debug, Clone)]
pub(super) enum Tolerance {
    Blank,
    Exact,
    Both(Bound),
    Sides { plus: Bound, minus: Bound },
}

/// Takes the tolerance that stands here; the place stays where there is none.
pub(super) fn tolerance(
    cursor: &mut Cursor<'_>,
    kind: Kind,
    system: System,
) -> Result<Tolerance, Fault> {
    let back = cursor.at;
    cursor.skip_gap();
    let bracket = cursor.at;
    // `412.5 mm (± 0.5)`
    let opened = cursor.take('(');
    cursor.skip_gap();
    let found = if both_signs(cursor) {
        Tolerance::Both(bound(cursor, kind, system)?)
    } else if let Some(sign @ ('+' | '-')) = cursor.peek() {
        sides(cursor, sign, kind, system)?
    } else {
        cursor.at = back;
        return Ok(Tolerance::Blank);
    };
    if opened {
        cursor.skip_gap();
        if !cursor.take(')') {
            return Err((bracket..bracket + 1, EntryProblem::Brackets));
        }
    }
    Ok(found)
}

/// `+0.1 -0.3`, in either order.
fn sides(
    cursor: &mut Cursor<'_>,
    first_sign: char,
    kind: Kind,
    system: System,
) -> Result<Tolerance, Fault> {
    let start = cursor.at;
    let not_one = |why| Err((start..start + 1, why));
    cursor.at += 1;
    let Ok(mut first) = bound(cursor, kind, system) else {
        return not_one(EntryProblem::NotOneValue);
    };
    cursor.skip_gap();
    if cursor.take('/') || cursor.take(',') || cursor.take(';') {
        cursor.skip_gap();
    }
    match cursor.peek() {
        Some(second @ ('+' | '-')) if second != first_sign => {}
        None if first_sign == '+' => return not_one(EntryProblem::OneSided),
        _ => return not_one(EntryProblem::NotOneValue),
    }
    cursor.at += 1;
    let mut second = bound(cursor, kind, system)?;
    share_unit(&mut first, &mut second);
    let (plus, minus) = if first_sign == '+' {
        (first, second)
    } else {
        (second, first)
    };
    Ok(Tolerance::Sides { plus, minus })
}

/// A unit behind one side serves the other side too.
fn share_unit(first: &mut Bound, second: &mut Bound) {
    if first.is_percent || second.is_percent {
        return;
    }
    match (&first.term.unit, &second.term.unit) {
        (None, Some(_)) => first.term.unit.clone_from(&second.term.unit),
        (Some(_), None) => second.term.unit.clone_from(&first.term.unit),
        _ => {}
    }
}

/// `±`, `+/-`, `+-`.
fn both_signs(cursor: &mut Cursor<'_>) -> bool {
    if cursor.take('±') {
        return true;
    }
    let ahead = match (cursor.peek(), cursor.peek_at(1), cursor.peek_at(2)) {
        (Some('+'), Some('/'), Some('-')) => 3,
        (Some('+'), Some('-'), _) => 2,
        _ => return false,
    };
    cursor.at += ahead;
    true
}

fn bound(cursor: &mut Cursor<'_>, kind: Kind, system: System) -> Result<Bound, Fault> {
    cursor.skip_gap();
    if let Some('+' | '-' | '±') = cursor.peek() {
        return Err((cursor.at..cursor.at + 1, EntryProblem::SignedTolerance));
    }
    if !cursor.at_number() {
        return Err(no_number(cursor));
    }
    let number = number(cursor)?;
    let unit = unit_behind(cursor, kind, system);
    let mut is_percent = false;
    if unit.is_none() {
        let back = cursor.at;
        cursor.skip_gap();
        is_percent = cursor.take('%');
        if !is_percent {
            cursor.at = back;
        }
    }
    Ok(Bound {
        term: Term { number, unit },
        is_percent,
    })
}
