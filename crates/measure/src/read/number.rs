//! Numbers as people write them: decimals, thousands, fractions, mixed numbers.

use std::ops::Range;

use super::characters::vulgar_fraction;
use super::cursor::{Cursor, Fault};
use super::error::EntryProblem;
use crate::mark::Mark;

/// A number as written, before it is known which mark is the decimal one.
#[derive(Debug, Clone)]
pub(super) struct Number {
    pub(super) written: Written,
    /// The decimal mark that the way of writing gives away: `412,5`, `1,250,000`.
    pub(super) reveals: Option<Mark>,
    /// The number below the stroke, of a fraction.
    pub(super) denominator: Option<u32>,
    pub(super) at: Range<usize>,
}

#[derive(Debug, Clone, Copy)]
pub(super) enum Written {
    Plain(f64),
    /// One mark before exactly three digits.
    Doubtful {
        decimal: f64,
        thousands: f64,
        sign: Mark,
    },
}

impl Number {
    /// The value, with this decimal mark where it is in doubt.
    pub(super) fn value(&self, mark: Mark) -> f64 {
        match self.written {
            Written::Plain(value) => value,
            Written::Doubtful { decimal, sign, .. } if sign == mark => decimal,
            Written::Doubtful { thousands, .. } => thousands,
        }
    }

    /// The mark before three digits that may be decimal or not.
    pub(super) fn doubtful(&self) -> Option<Mark> {
        match self.written {
            Written::Plain(_) => None,
            Written::Doubtful { sign, .. } => Some(sign),
        }
    }
}

fn mark_of(c: char) -> Option<Mark> {
    match c {
        '.' => Some(Mark::Point),
        ',' => Some(Mark::Comma),
        _ => None,
    }
}

/// A text of digits alone, with a point among them at most: what most entries are. None where it takes a closer look, as three
/// digits behind the point do.
pub(super) fn plain(text: &str) -> Option<Number> {
    let bytes = text.as_bytes();
    let point = bytes.iter().position(|byte| *byte == b'.');
    let behind = point.map_or(0, |point| bytes.len() - point - 1);
    let open = point.is_some_and(|point| point == 0 || behind == 0 || behind == 3);
    if open || bytes.is_empty() || bytes.len() > EXACT {
        return None;
    }
    let mut whole = 0u64;
    for (place, byte) in bytes.iter().enumerate() {
        match byte {
            b'0'..=b'9' => whole = whole * 10 + u64::from(byte - b'0'),
            _ if Some(place) == point => {}
            _ => return None,
        }
    }
    Some(Number {
        written: Written::Plain(shifted(whole, behind)),
        reveals: point.map(|_| Mark::Point),
        denominator: None,
        at: 0..bytes.len(),
    })
}

/// Digits alone, with a point among them at most, before the end, a letter or a sign that cannot belong to the number: what most
/// numbers are. Nothing is taken where it takes a closer look.
fn plain_here(cursor: &mut Cursor<'_>) -> Option<Number> {
    let start = cursor.at;
    let (mut whole, mut point, mut end) = (0u64, None, start);
    while let Some(c) = cursor.chars.get(end) {
        match c {
            '0'..='9' => whole = whole.wrapping_mul(10) + u64::from(*c as u32 - '0' as u32),
            '.' if point.is_none() && end > start => point = Some(end),
            _ => break,
        }
        end += 1;
    }
    let behind = point.map_or(0, |point| end - point - 1);
    let open = end == start || end - start > EXACT || point.is_some() && matches!(behind, 0 | 3);
    let gap = usize::from(cursor.chars.get(end) == Some(&' '));
    let ends = match cursor.chars.get(end + gap) {
        None => gap == 0,
        Some('e' | 'E') => gap == 1,
        Some('a'..='z' | 'A'..='Z' | '±' | '%' | 'µ' | '°' | ')' | '"' | '\'') => true,
        Some(_) => false,
    };
    if open || !ends {
        return None;
    }
    cursor.at = end;
    Some(Number {
        written: Written::Plain(shifted(whole, behind)),
        reveals: point.map(|_| Mark::Point),
        denominator: None,
        at: start..end,
    })
}

/// Up to so many characters whole number and power of ten are both exact, and so is the rounding of their quotient.
const EXACT: usize = 15;

/// A whole number with its last digits behind the decimal mark.
fn shifted(whole: u64, behind: usize) -> f64 {
    let power = (0..behind).fold(1u64, |power, _| power * 10);
    #[allow(clippy::cast_precision_loss, reason = "both are below 2^53")]
    {
        whole as f64 / power as f64
    }
}

/// Reads a number: decimal, fraction or mixed.
pub(super) fn number(cursor: &mut Cursor<'_>) -> Result<Number, Fault> {
    let start = cursor.at;
    if let Some(plain) = plain_here(cursor) {
        return Ok(plain);
    }
    if let Some(fraction) = vulgar(cursor) {
        return Ok(fraction);
    }
    let figures = Figures::take(cursor)?;
    if cursor.peek() == Some('/') && cursor.digit_at(1) {
        let numerator = figures
            .plain_whole()
            .ok_or((cursor.at..cursor.at + 1, EntryProblem::Fraction))?;
        let (value, below) = over(cursor, numerator)?;
        return Ok(fraction_of(value, below, start..cursor.at));
    }
    if let Some((value, below, at)) = mixed_part(cursor)? {
        let whole = figures
            .whole_before_fraction()
            .ok_or((at.clone(), EntryProblem::Fraction))?;
        if value >= 1.0 {
            return Err((at, EntryProblem::ImproperFraction));
        }
        return Ok(fraction_of(whole + value, below, start..cursor.at));
    }
    figures.number(start..cursor.at)
}

fn fraction_of(value: f64, below: u32, at: Range<usize>) -> Number {
    Number {
        written: Written::Plain(value),
        reveals: None,
        denominator: Some(below),
        at,
    }
}

fn vulgar(cursor: &mut Cursor<'_>) -> Option<Number> {
    let (above, below) = vulgar_fraction(cursor.peek()?)?;
    let start = cursor.at;
    cursor.at += 1;
    Some(fraction_of(
        f64::from(above) / f64::from(below),
        below,
        start..cursor.at,
    ))
}

/// The stroke and the number below it.
fn over(cursor: &mut Cursor<'_>, numerator: f64) -> Result<(f64, u32), Fault> {
    cursor.at += 1;
    let start = cursor.at;
    let below = cursor
        .take_whole()
        .and_then(|below| u32::try_from(below).ok());
    // `5/16.5` is neither a fraction nor a decimal.
    let more = cursor.peek().and_then(mark_of).is_some() && cursor.digit_at(1);
    match below.filter(|below| *below > 0 && !more) {
        Some(below) => Ok((numerator / f64::from(below), below)),
        None => Err((start..cursor.at, EntryProblem::Fraction)),
    }
}

/// The fraction of a mixed number: ` 1/4`, `-1/4`, `¾`, ` ¾`; nothing is taken where there is none.
fn mixed_part(cursor: &mut Cursor<'_>) -> Result<Option<(f64, u32, Range<usize>)>, Fault> {
    let back = cursor.at;
    if cursor.take(' ') {
        cursor.skip_gap();
    } else {
        cursor.take('-');
    }
    let start = cursor.at;
    if let Some(fraction) = vulgar(cursor) {
        let below = fraction.denominator.unwrap_or(1);
        return Ok(Some((fraction.value(Mark::Point), below, fraction.at)));
    }
    if start > back
        && let Some(numerator) = cursor.take_whole()
        && cursor.peek() == Some('/')
        && cursor.digit_at(1)
    {
        #[allow(
            clippy::cast_precision_loss,
            reason = "a fraction of so many parts is refused as improper"
        )]
        let (value, below) = over(cursor, numerator as f64)?;
        return Ok(Some((value, below, start..cursor.at)));
    }
    cursor.at = back;
    Ok(None)
}

/// Digits with their marks.
struct Figures {
    /// Digits and marks, spaces between thousands dropped.
    text: Vec<(usize, char)>,
    /// Thousands were set apart with spaces.
    spaced: bool,
    exponent: Option<i32>,
}

impl Figures {
    fn take(cursor: &mut Cursor<'_>) -> Result<Self, Fault> {
        let mut figures = Self {
            text: Vec::with_capacity(8),
            spaced: false,
            exponent: None,
        };
        while let Some(c) = cursor.peek() {
            let first = figures.text.is_empty();
            if c.is_ascii_digit() || (mark_of(c).is_some() && cursor.digit_at(1)) {
                figures.text.push((cursor.at, c));
                cursor.at += 1;
            } else if c == ' ' && figures.takes_group(cursor) {
                figures.spaced = true;
                cursor.at += 1;
            } else {
                // A mark with nothing behind it yet, as while typing: `412.`
                if mark_of(c).is_some() && !first && !matches!(cursor.peek_at(1), Some('.' | ',')) {
                    cursor.at += 1;
                }
                break;
            }
        }
        if figures.text.is_empty() {
            return Err((cursor.at..cursor.at, EntryProblem::NoNumber));
        }
        figures.take_exponent(cursor);
        Ok(figures)
    }

    /// Whether a space here is followed by just three digits that belong to this number.
    fn takes_group(&self, cursor: &Cursor<'_>) -> bool {
        let marks = self.text.iter().any(|(_, c)| mark_of(*c).is_some());
        let head = self.text.len();
        let head_fits = self.spaced || (1..=3).contains(&head);
        let starts_with_nought = self.text.first().is_some_and(|(_, c)| *c == '0');
        let three = (1..=3).all(|ahead| cursor.digit_at(ahead));
        let stroke = cursor.peek_at(4) == Some('/') && cursor.digit_at(5);
        !marks && head_fits && !starts_with_nought && three && !cursor.digit_at(4) && !stroke
    }

    fn take_exponent(&mut self, cursor: &mut Cursor<'_>) {
        if !matches!(cursor.peek(), Some('e' | 'E')) {
            return;
        }
        let signed = matches!(cursor.peek_at(1), Some('+' | '-'));
        if !cursor.digit_at(1 + usize::from(signed)) {
            return;
        }
        let negative = cursor.peek_at(1) == Some('-');
        cursor.at += 1 + usize::from(signed);
        let size = cursor
            .take_whole()
            .and_then(|size| i32::try_from(size).ok())
            .unwrap_or(i32::MAX / 2);
        self.exponent = Some(if negative { -size } else { size });
    }

    fn marks(&self) -> impl DoubleEndedIterator<Item = (usize, Mark)> + '_ {
        self.text
            .iter()
            .enumerate()
            .filter_map(|(place, (_, c))| mark_of(*c).map(|mark| (place, mark)))
    }

    /// Digits only, no marks at all.
    fn plain_whole(&self) -> Option<f64> {
        let plain = self.marks().next().is_none() && self.exponent.is_none();
        plain.then(|| self.decimal(None))
    }

    /// The whole number before a fraction: marks in it can only part the thousands.
    fn whole_before_fraction(&self) -> Option<f64> {
        let thousands = self.grouped_well(self.text.len()).is_ok();
        (self.exponent.is_none() && thousands).then(|| self.decimal(None))
    }

    /// The number with this place in `text` as its decimal mark, all other marks dropped.
    fn decimal(&self, place: Option<usize>) -> f64 {
        let digits = || self.text.iter().filter_map(|(_, c)| c.to_digit(10));
        let behind = place.map_or(0, |place| self.text.len() - place - 1);
        if self.text.len() <= EXACT && self.exponent.is_none() {
            let whole = digits().fold(0u64, |whole, digit| whole * 10 + u64::from(digit));
            return shifted(whole, behind);
        }
        let mut plain: String = digits()
            .filter_map(|digit| char::from_digit(digit, 10))
            .collect();
        plain.insert(plain.len() - behind, '.');
        if let Some(exponent) = self.exponent {
            plain.push_str(&format!("e{exponent}"));
        }
        plain.parse().unwrap_or(f64::INFINITY)
    }

    /// Whether the marks before `end` part whole thousands.
    fn grouped_well(&self, end: usize) -> Result<(), Fault> {
        let mut group = 0;
        let mut first = true;
        let mut last_mark = 0;
        for (place, c) in self.text[..end].iter().copied() {
            if c.is_ascii_digit() {
                group += 1;
                continue;
            }
            if !first && group != 3 {
                return Err((last_mark..last_mark + 1, EntryProblem::Thousands));
            }
            if group == 0 || group > 3 {
                return Err((place..place + 1, EntryProblem::Thousands));
            }
            (first, group, last_mark) = (false, 0, place);
        }
        if first || group == 3 {
            Ok(())
        } else {
            Err((last_mark..last_mark + 1, EntryProblem::Thousands))
        }
    }

    fn number(&self, at: Range<usize>) -> Result<Number, Fault> {
        let plain = |value, reveals| {
            Ok(Number {
                written: Written::Plain(value),
                reveals,
                denominator: None,
                at: at.clone(),
            })
        };
        let Some((last, mark)) = self.marks().next_back() else {
            return plain(self.decimal(None), None);
        };
        let of_this = self.marks().filter(|(_, m)| *m == mark).count();
        let of_other = self.marks().count() - of_this;
        if of_this > 1 {
            // The same mark twice parts thousands; the other one has no place before it.
            if of_other > 0 {
                let stray = self.text[last].0;
                return Err((stray..stray + 1, EntryProblem::Thousands));
            }
            self.grouped_well(self.text.len())?;
            return plain(self.decimal(None), Some(mark.other()));
        }
        if of_other > 0 {
            self.grouped_well(last)?;
            return plain(self.decimal(Some(last)), Some(mark));
        }
        let decimal = self.decimal(Some(last));
        let three_behind = self.text.len() - last == 4;
        let head_fits = (1..=3).contains(&last) && self.text[0].1 != '0';
        if three_behind && head_fits && !self.spaced && self.exponent.is_none() {
            let written = Written::Doubtful {
                decimal,
                thousands: self.decimal(None),
                sign: mark,
            };
            return Ok(Number {
                written,
                reveals: None,
                denominator: None,
                at,
            });
        }
        plain(decimal, Some(mark))
    }
}
