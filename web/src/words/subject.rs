//! What a subject's file of words holds.

use super::phrase::{Phrase, matches};

/// Phrases by a field pattern, an id or a name.
pub type Table = &'static [(&'static str, Phrase)];

/// The words of one sheet.
pub struct Subject {
    /// The sheet's name.
    pub name: Phrase,
    /// The question it answers, as the front page asks it.
    pub asks: Phrase,
    /// What it tells, in a sentence.
    pub tells: Phrase,
    /// Labels by field pattern.
    pub fields: Table,
    /// Advice by field pattern: how to measure, what to look at.
    pub hints: Table,
    /// Words for choices: by the choice, or by `pattern=choice` where one word would mislead.
    pub choices: Table,
    /// Headings of groups by their ids.
    pub groups: Table,
    /// Lists by list pattern.
    pub lists: &'static [(&'static str, ListWords)],
    /// Results by result pattern.
    pub results: &'static [Told],
    /// Remarks by fact; `{0}` ... are the numbers and then the names they speak of.
    pub remarks: Table,
    /// Drawings by their ids: what to enter for them to appear.
    pub plates: Table,
    /// Anything else the page says, by a name of its own.
    pub words: Table,
}

/// The words of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ListWords {
    /// The heading: `Gears`.
    pub title: Phrase,
    /// One row, after "Add": `gear`.
    pub one: Phrase,
    /// A row without a name of its own, by its place: `Gear {0}`.
    pub nth: Phrase,
}

/// The words of a list: its heading, one row, a row by its place.
pub const fn list(title: Phrase, one: Phrase, nth: Phrase) -> ListWords {
    ListWords { title, one, nth }
}

/// The words of a result.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Told {
    /// Its id, with a star for each row.
    pub pattern: &'static str,
    /// For each star the list whose row it is; `{0}` ... in the phrase are the rows' names. Empty: the star itself is put in.
    pub rows: &'static [&'static str],
    /// What it tells.
    pub phrase: Phrase,
}

/// A result that belongs to no row.
pub const fn told(pattern: &'static str, phrase: Phrase) -> Told {
    Told {
        pattern,
        rows: &[],
        phrase,
    }
}

/// A result of a row: the lists whose rows its stars stand for.
pub const fn told_of(pattern: &'static str, rows: &'static [&'static str], phrase: Phrase) -> Told {
    Told {
        pattern,
        rows,
        phrase,
    }
}

impl Subject {
    /// The words of a result, the exact id before a pattern.
    pub fn result(&self, id: &str) -> Option<&'static Told> {
        let exact = self.results.iter().find(|told| told.pattern == id);
        exact.or_else(|| self.results.iter().find(|told| matches(told.pattern, id)))
    }

    /// A word of its own.
    pub fn word(&self, name: &str) -> Option<Phrase> {
        self.words
            .iter()
            .find(|(known, _)| *known == name)
            .map(|(_, phrase)| *phrase)
    }
}
