//! A place in the typed text.

use std::ops::Range;

use super::error::EntryProblem;

/// What is wrong and where, before the example for the field is known.
pub(super) type Fault = (Range<usize>, EntryProblem);

/// A place in the typed text; the characters are in their plain spelling.
pub(super) struct Cursor<'a> {
    pub(super) chars: &'a [char],
    pub(super) at: usize,
}

impl Cursor<'_> {
    pub(super) fn peek(&self) -> Option<char> {
        self.chars.get(self.at).copied()
    }

    pub(super) fn peek_at(&self, ahead: usize) -> Option<char> {
        self.chars.get(self.at + ahead).copied()
    }

    pub(super) fn digit_at(&self, ahead: usize) -> bool {
        self.peek_at(ahead).is_some_and(|c| c.is_ascii_digit())
    }

    pub(super) fn at_end(&self) -> bool {
        self.at >= self.chars.len()
    }

    pub(super) fn skip_gap(&mut self) {
        while self.peek() == Some(' ') {
            self.at += 1;
        }
    }

    /// Takes the character if it comes next.
    pub(super) fn take(&mut self, wanted: char) -> bool {
        let found = self.peek() == Some(wanted);
        self.at += usize::from(found);
        found
    }

    /// Takes a word in small or capital letters if it comes next and ends there.
    pub(super) fn take_word(&mut self, wanted: &str) -> bool {
        let mut end = self.at;
        for letter in wanted.chars() {
            match self.chars.get(end) {
                Some(c) if c.eq_ignore_ascii_case(&letter) => end += 1,
                _ => return false,
            }
        }
        if self.chars.get(end).is_some_and(|c| c.is_alphanumeric()) {
            return false;
        }
        self.at = end;
        true
    }

    /// Takes digits as a whole number, the greatest there is where they are too many; none where there is no digit.
    pub(super) fn take_whole(&mut self) -> Option<u64> {
        let start = self.at;
        let mut whole = 0u64;
        while let Some(digit) = self.peek().and_then(|c| c.to_digit(10)) {
            whole = whole.saturating_mul(10).saturating_add(u64::from(digit));
            self.at += 1;
        }
        (self.at > start).then_some(whole)
    }

    /// Whether a number begins here.
    pub(super) fn at_number(&self) -> bool {
        match self.peek() {
            Some('.' | ',') => self.digit_at(1),
            Some(c) => c.is_ascii_digit() || super::characters::vulgar_fraction(c).is_some(),
            None => false,
        }
    }
}
