//! A store in memory: for tests, and for when the browser's is switched off.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

use super::Store;
use crate::BookError;

/// A store in memory.
#[derive(Debug, Clone, Default)]
pub struct MemoryStore {
    texts: RefCell<BTreeMap<String, String>>,
    capacity: Cell<Option<usize>>,
    off: Cell<bool>,
    cut: Cell<bool>,
}

impl MemoryStore {
    /// An empty store without a bound.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Bounds what the store takes, in characters.
    pub fn bound(&self, capacity: Option<usize>) {
        self.capacity.set(capacity);
    }

    /// Switches the store off, or on again.
    pub fn switch_off(&self, off: bool) {
        self.off.set(off);
    }

    /// Makes the store keep only half of what is written, as a machine does that loses power.
    pub fn cut_writes(&self, cut: bool) {
        self.cut.set(cut);
    }

    fn usable(&self) -> Result<(), BookError> {
        if self.off.get() {
            Err(BookError::Off)
        } else {
            Ok(())
        }
    }
}

impl Store for MemoryStore {
    fn read(&self, name: &str) -> Result<Option<String>, BookError> {
        self.usable()?;
        Ok(self.texts.borrow().get(name).cloned())
    }

    fn write(&self, name: &str, text: &str) -> Result<(), BookError> {
        self.usable()?;
        let mut texts = self.texts.borrow_mut();
        let others: usize = texts
            .iter()
            .filter(|(other, _)| *other != name)
            .map(|(name, text)| name.len() + text.len())
            .sum();
        if self
            .capacity
            .get()
            .is_some_and(|capacity| others + name.len() + text.len() > capacity)
        {
            return Err(BookError::Full);
        }
        let kept = if self.cut.get() {
            text.chars().take(text.chars().count() / 2).collect()
        } else {
            text.to_owned()
        };
        texts.insert(name.to_owned(), kept);
        Ok(())
    }

    fn remove(&self, name: &str) -> Result<(), BookError> {
        self.usable()?;
        self.texts.borrow_mut().remove(name);
        Ok(())
    }

    fn names(&self) -> Result<Vec<String>, BookError> {
        self.usable()?;
        Ok(self.texts.borrow().keys().cloned().collect())
    }

    fn capacity(&self) -> Option<usize> {
        self.capacity.get()
    }
}
