//! Where books are kept: what a store must do, and the one in memory.

mod envelope;
mod memory;
mod shelf;

pub use memory::MemoryStore;
pub use shelf::{Listed, Opened, ROUGH, SetAside, Shelf, Shelved, WhyAside, book_at};

use crate::BookError;

/// A store of texts by name: the browser's, or one in memory.
pub trait Store {
    /// The text kept under a name.
    ///
    /// # Errors
    /// [`BookError::Off`].
    fn read(&self, name: &str) -> Result<Option<String>, BookError>;

    /// Keeps a text under a name.
    ///
    /// # Errors
    /// [`BookError::Full`], [`BookError::Off`].
    fn write(&self, name: &str, text: &str) -> Result<(), BookError>;

    /// Removes what is kept under a name, if anything is.
    ///
    /// # Errors
    /// [`BookError::Off`].
    fn remove(&self, name: &str) -> Result<(), BookError>;

    /// The names of all that is kept.
    ///
    /// # Errors
    /// [`BookError::Off`].
    fn names(&self) -> Result<Vec<String>, BookError>;

    /// How many characters the store takes in all, where that is known.
    fn capacity(&self) -> Option<usize>;
}

impl<S: Store + ?Sized> Store for std::rc::Rc<S> {
    fn read(&self, name: &str) -> Result<Option<String>, BookError> {
        (**self).read(name)
    }
    fn write(&self, name: &str, text: &str) -> Result<(), BookError> {
        (**self).write(name, text)
    }
    fn remove(&self, name: &str) -> Result<(), BookError> {
        (**self).remove(name)
    }
    fn names(&self) -> Result<Vec<String>, BookError> {
        (**self).names()
    }
    fn capacity(&self) -> Option<usize> {
        (**self).capacity()
    }
}
