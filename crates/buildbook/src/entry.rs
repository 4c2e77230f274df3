//! What was typed in one field, kept as it was typed.

use std::rc::Rc;

use measure::Mark;

/// One entry: the text as typed, and what is needed to read it again in the same way.
///
/// A bare number whose `unit` is `None` is in the field's metric unit, whatever the reader's settings are, so that a change of
/// settings never changes an entry. A bare number typed while another unit was shown carries that unit's symbol.
#[derive(Debug, Clone, PartialEq, Eq, Default, Hash)]
pub struct Entry {
    /// The text as typed.
    pub text: Rc<str>,
    /// The unit of a bare number, by its symbol, where it is not the field's metric unit.
    pub unit: Option<Rc<str>>,
    /// Which mark was the decimal one, where the text alone could mean two things.
    pub mark: Option<Mark>,
}

impl Entry {
    /// An entry of plain text in the field's metric unit.
    #[must_use]
    pub fn new(text: impl Into<Rc<str>>) -> Self {
        Self {
            text: text.into(),
            unit: None,
            mark: None,
        }
    }

    /// The same entry, with the unit a bare number is in.
    #[must_use]
    pub fn in_unit(mut self, unit: impl Into<Rc<str>>) -> Self {
        self.unit = Some(unit.into());
        self
    }

    /// The same entry, with the decimal mark it is to be read with.
    #[must_use]
    pub fn with_mark(mut self, mark: Mark) -> Self {
        self.mark = Some(mark);
        self
    }

    /// Whether nothing was typed.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        // As a rule the first character tells.
        let first = self.text.as_bytes().first();
        !first.is_some_and(u8::is_ascii_graphic) && self.text.trim().is_empty()
    }
}

/// An entry as it is read: what was typed, or the text that is assumed of a blank field.
#[derive(Debug, Clone, Copy)]
pub struct Typed<'a> {
    /// The text.
    pub text: &'a str,
    /// The unit of a bare number, as [`Entry::unit`].
    pub unit: Option<&'a str>,
    /// The decimal mark, as [`Entry::mark`].
    pub mark: Option<Mark>,
}

impl<'a> Typed<'a> {
    /// Plain text in the field's metric unit.
    #[must_use]
    pub fn plain(text: &'a str) -> Self {
        Self {
            text,
            unit: None,
            mark: None,
        }
    }
}

impl<'a> From<&'a Entry> for Typed<'a> {
    fn from(entry: &'a Entry) -> Self {
        Self {
            text: &entry.text,
            unit: entry.unit.as_deref(),
            mark: entry.mark,
        }
    }
}

impl From<&str> for Entry {
    fn from(text: &str) -> Self {
        Self::new(text)
    }
}

impl From<String> for Entry {
    fn from(text: String) -> Self {
        Self::new(text)
    }
}
