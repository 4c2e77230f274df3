//! The one kind of edit there is, and the log that undoes and redoes it.

use crate::{Book, Entry, Key};

/// One entry's change; `None` is "no entry".
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    /// Where.
    pub key: Key,
    /// What stood there before.
    pub old: Option<Entry>,
    /// What stands there after.
    pub new: Option<Entry>,
}

impl Change {
    /// The change that takes this one back.
    #[must_use]
    pub fn reversed(&self) -> Self {
        Self {
            key: self.key.clone(),
            old: self.new.clone(),
            new: self.old.clone(),
        }
    }
}

/// Changes that were made together, and are undone together.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Edit(pub Vec<Change>);

impl Edit {
    /// The edit that takes this one back.
    #[must_use]
    pub fn reversed(&self) -> Self {
        Self(self.0.iter().rev().map(Change::reversed).collect())
    }

    /// Whether it changes nothing.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.iter().all(|change| change.old == change.new)
    }

    /// The one key it changes, when it changes just one.
    #[must_use]
    pub fn only_key(&self) -> Option<&Key> {
        match self.0.as_slice() {
            [change] => Some(&change.key),
            _ => None,
        }
    }

    /// Two edits as one, the second made after the first.
    #[must_use]
    pub fn then(mut self, next: Self) -> Self {
        self.0.extend(next.0);
        self
    }
}

/// How many edits are kept to be undone.
const KEPT: usize = 200;

/// The edits that can be undone and redone.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Log {
    pub(crate) done: Vec<Edit>,
    pub(crate) undone: Vec<Edit>,
}

impl Log {
    /// A log from its two parts, oldest first; the older ones beyond the bound are dropped.
    #[must_use]
    pub fn of(mut done: Vec<Edit>, mut undone: Vec<Edit>) -> Self {
        done.drain(..done.len().saturating_sub(KEPT));
        undone.drain(..undone.len().saturating_sub(KEPT));
        Self { done, undone }
    }

    /// The edits that can be undone, oldest first.
    #[must_use]
    pub fn done(&self) -> &[Edit] {
        &self.done
    }

    /// The edits that can be redone, the next one last.
    #[must_use]
    pub fn undone(&self) -> &[Edit] {
        &self.undone
    }

    /// Whether there is an edit to undo.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        !self.done.is_empty()
    }

    /// Whether there is an edit to redo.
    #[must_use]
    pub fn can_redo(&self) -> bool {
        !self.undone.is_empty()
    }

    /// Notes an edit that was made. With `continuing`, an edit of the same single entry joins the last one, so that the letters of
    /// one word are undone together.
    pub fn record(&mut self, edit: Edit, continuing: bool) {
        self.undone.clear();
        if continuing
            && let (Some(last), Some(key)) = (self.done.last_mut(), edit.only_key())
            && last.only_key() == Some(key)
        {
            last.0[0].new.clone_from(&edit.0[0].new);
            if last.is_empty() {
                self.done.pop();
            }
            return;
        }
        self.done.push(edit);
        if self.done.len() > KEPT {
            self.done.remove(0);
        }
    }

    /// Takes the last edit back: the book as it then is, or `None` when there is nothing to undo.
    pub fn undo(&mut self, book: &Book) -> Option<Book> {
        let edit = self.done.pop()?;
        let back = book.with(&edit.reversed());
        self.undone.push(edit);
        Some(back)
    }

    /// Takes the last edit back for good: the book as it then is. It will not be made again.
    pub fn forget_last(&mut self, book: &Book) -> Option<Book> {
        let edit = self.done.pop()?;
        Some(book.with(&edit.reversed()))
    }

    /// Makes the edit that was last taken back once more.
    pub fn redo(&mut self, book: &Book) -> Option<Book> {
        let edit = self.undone.pop()?;
        let again = book.with(&edit);
        self.done.push(edit);
        Some(again)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn undo_and_redo_give_back_the_same_books() {
        let empty = Book::new("b1");
        let mut log = Log::default();
        let edit = empty.setting("vehicle/wheelbase", Some("3.2 m".into()));
        let one = empty.with(&edit);
        log.record(edit, false);
        assert_eq!(log.undo(&one), Some(empty.clone()));
        assert_eq!(log.redo(&empty), Some(one));
        assert!(!log.can_redo());
    }

    #[test]
    fn letters_of_one_entry_are_undone_together() {
        let mut book = Book::new("b1");
        let mut log = Log::default();
        for (text, continuing) in [("4", false), ("4.", true), ("4.1", true)] {
            let edit = book.setting("gearing/final_drive", Some(text.into()));
            book = book.with(&edit);
            log.record(edit, continuing);
        }
        assert_eq!(log.done().len(), 1);
        assert_eq!(log.undo(&book), Some(Book::new("b1")));
    }

    #[test]
    fn the_log_is_bounded() {
        let mut book = Book::new("b1");
        let mut log = Log::default();
        for n in 0..(KEPT + 50) {
            let edit = book.setting("a/b", Some(n.to_string().into()));
            book = book.with(&edit);
            log.record(edit, false);
        }
        assert_eq!(log.done().len(), KEPT);
    }
}
