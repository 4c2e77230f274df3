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
        self.text.trim().is_empty()
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
