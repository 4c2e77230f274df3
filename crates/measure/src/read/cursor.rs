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

    pub(super) fn take_digits(&mut self) -> String {
        let start = self.at;
        while self.digit_at(0) {
            self.at += 1;
        }
        self.chars[start..self.at].iter().collect()
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
