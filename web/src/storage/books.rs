//! The books of this browser: opening, beginning, naming, copying, deleting, and in and out as files.

use std::rc::Rc;

use buildbook::store::{Opened, ROUGH, Shelved};
use buildbook::{Book, BookError, Entry, Log, NAME_KEY, book_of_file, example, file};

use super::keeper::{Keeper, fresh_id, now_ms};
use super::local::ask_to_persist;
use crate::state::{Action, Saved};

impl Keeper {
    /// All that stands on the shelf.
    ///
    /// # Errors
    /// [`BookError::Off`].
    pub fn shelved(&self) -> Result<Shelved, BookError> {
        self.shelf.shelved()
    }

    /// Whether a book stands on the shelf.
    pub fn has(&self, id: &str) -> bool {
        self.shelf.open(id).is_ok()
    }

    /// Whether what is kept is gone when the page closes.
    pub fn forgets(&self) -> bool {
        self.shelf.store().is_memory()
    }

    /// Opens a book of the shelf; what was entered in the one that is open is kept first.
    ///
    /// # Errors
    /// Why it cannot be opened; the other one stays open.
    pub fn open(self: &Rc<Self>, id: &str) -> Result<(), BookError> {
        self.kept()?;
        self.go_to(id)
    }

    fn go_to(self: &Rc<Self>, id: &str) -> Result<(), BookError> {
        let opened = match self.shelf.open(id) {
            Err(BookError::Missing) if id == ROUGH => self.put_rough()?,
            other => other?,
        };
        self.show(opened);
        Ok(())
    }

    fn put_rough(&self) -> Result<Opened, BookError> {
        let book = Book::begun(ROUGH);
        let revision = self.shelf.save(&book, &Log::default(), 0, now_ms())?;
        Ok(Opened {
            book,
            log: Log::default(),
            revision,
            saved_ms: now_ms(),
            aside: Vec::new(),
        })
    }

    fn show(self: &Rc<Self>, opened: Opened) {
        *self.held.borrow_mut() = None;
        *self.id.borrow_mut() = Rc::clone(opened.book.id());
        self.seen.set(opened.revision);
        self.handed.set(0);
        self.note_open();
        self.send(Action::ReadOnly(false));
        self.send(Action::Open(Rc::new(opened.book), Rc::new(opened.log)));
        self.tell_kept(opened.saved_ms);
        self.send(Action::Shelved);
        self.take_lock();
    }

    /// Keeps a book that is new here under a fresh identity, or under its own where that is free, and opens it.
    ///
    /// # Errors
    /// As saving.
    pub fn take_in(self: &Rc<Self>, book: &Book) -> Result<(), BookError> {
        self.kept()?;
        let own = ![ROUGH, example::ID].contains(&&**book.id())
            && self.shelf.open(book.id()) == Err(BookError::Missing);
        let book = if own {
            book.clone()
        } else {
            book.known_as(fresh_id())
        };
        let revision = self.shelf.save(&book, &Log::default(), 0, now_ms())?;
        ask_to_persist();
        self.show(Opened {
            book,
            log: Log::default(),
            revision,
            saved_ms: now_ms(),
            aside: Vec::new(),
        });
        Ok(())
    }

    /// Begins a new book and opens it.
    ///
    /// # Errors
    /// As saving.
    pub fn begin(self: &Rc<Self>, name: &str) -> Result<(), BookError> {
        self.take_in(&self.named(&Book::begun(fresh_id()), name))
    }

    /// A copy of a book of the shelf, under another name; it is opened.
    ///
    /// # Errors
    /// As opening and saving.
    pub fn copy(self: &Rc<Self>, id: &str, name: &str) -> Result<(), BookError> {
        self.keep();
        let opened = self.shelf.open(id)?;
        self.take_in(&self.named(&opened.book.known_as(fresh_id()), name))
    }

    /// Gives a book of the shelf another name.
    ///
    /// # Errors
    /// As opening and saving.
    pub fn rename(&self, id: &str, name: &str) -> Result<(), BookError> {
        if *id == *self.open_id() {
            self.send(Action::Put(NAME_KEY.into(), Some(Entry::new(name))));
            self.keep();
        } else {
            let opened = self.shelf.open(id)?;
            let edit = opened.book.setting(NAME_KEY, Some(Entry::new(name)));
            let mut log = opened.log;
            let book = opened.book.with(&edit);
            log.record(edit, false);
            self.shelf.save(&book, &log, opened.revision, now_ms())?;
        }
        self.send(Action::Shelved);
        Ok(())
    }

    /// Puts a book in the bin; when it is the open one, the rough book is opened.
    ///
    /// # Errors
    /// [`BookError::Full`], [`BookError::Off`].
    pub fn delete(self: &Rc<Self>, id: &str) -> Result<(), BookError> {
        self.keep();
        self.shelf.delete(id, now_ms())?;
        if *id == *self.open_id() {
            self.go_to(ROUGH)?;
        }
        self.send(Action::Shelved);
        Ok(())
    }

    /// Brings a book back from the bin.
    ///
    /// # Errors
    /// [`BookError::Off`].
    pub fn undelete(&self, id: &str) -> Result<(), BookError> {
        self.shelf.undelete(id)?;
        self.send(Action::Shelved);
        Ok(())
    }

    /// The example book, as it was left, or new.
    ///
    /// # Errors
    /// As opening and saving.
    pub fn open_example(self: &Rc<Self>) -> Result<(), BookError> {
        self.kept()?;
        let binned = self
            .shelf
            .shelved()?
            .deleted
            .iter()
            .any(|listed| &*listed.id == example::ID);
        match self.shelf.open(example::ID) {
            Ok(opened) if !binned => self.show(opened),
            found => {
                let seen = found.map_or(0, |opened| opened.revision);
                let (book, log) = (example::book(), Log::default());
                // An example that the store does not take is shown all the same.
                let kept = self.shelf.save(&book, &log, seen, now_ms());
                self.shelf.undelete(example::ID)?;
                self.show(Opened {
                    book,
                    log,
                    revision: kept.as_ref().copied().unwrap_or(seen),
                    saved_ms: now_ms(),
                    aside: Vec::new(),
                });
                if let Err(error) = kept {
                    self.send(Action::Saved(Saved::Fault(error)));
                }
            }
        }
        Ok(())
    }

    /// A book of the shelf as a file: a name for it, and its text.
    ///
    /// # Errors
    /// As opening.
    pub fn file_copy(&self, id: &str) -> Result<(String, String), BookError> {
        self.keep();
        // What is open may be on no shelf: the store may be off or full.
        let open = self.desk.borrow().as_ref().map(|desk| desk.state());
        let book = match open.filter(|state| *id == **state.book.id()) {
            Some(state) => self.carrying(&state.book),
            None => self.carrying(&self.shelf.open(id)?.book),
        };
        // A full store does not keep the time; the copy itself is what counts.
        let _ = self.shelf.note_copied(id, now_ms());
        self.send(Action::Shelved);
        Ok((file_name(&book), file(&book)))
    }

    /// The text of what is set aside.
    ///
    /// # Errors
    /// [`BookError::Missing`], [`BookError::Off`].
    pub fn aside_text(&self, slot: &str) -> Result<String, BookError> {
        self.shelf.aside_text(slot)
    }

    /// Removes for good what is set aside.
    ///
    /// # Errors
    /// [`BookError::Off`].
    pub fn discard_aside(&self, slot: &str) -> Result<(), BookError> {
        self.shelf.discard_aside(slot)?;
        self.send(Action::Shelved);
        Ok(())
    }

    /// Takes in a book from the bytes of a file, beside all others, and opens it.
    ///
    /// # Errors
    /// Why the file is no book of ours, or as saving.
    pub fn import(self: &Rc<Self>, bytes: &[u8]) -> Result<(), BookError> {
        self.take_in(&book_of_file(bytes)?)
    }
}

/// A name for the file of a book: letters, digits and hyphens only.
fn file_name(book: &Book) -> String {
    let words = book.name().split(|c: char| !c.is_alphanumeric());
    let words: Vec<&str> = words.filter(|word| !word.is_empty()).collect();
    let name = measure::small_letters(&words.join("-"));
    let name = if name.is_empty() {
        "build-book".to_owned()
    } else {
        name
    };
    format!("{name}.json")
}
