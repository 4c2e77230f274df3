//! The shelf: the books of a store, each in two slots that take turns.

use std::collections::BTreeMap;
use std::rc::Rc;

use serde_json::Value;

use super::Store;
use super::envelope::{Label, inside, label, sealed};
use crate::{Book, BookError, Entry, Log, NAME_KEY};

/// The identity of the rough book, which is always there.
pub const ROUGH: &str = "rough";

// All names of ours in the store begin so: an origin may be shared with other programs.
const BOOKS: &str = "rebuild-reckoner/book/";
const BIN: &str = "rebuild-reckoner/bin/";
const COPIED: &str = "rebuild-reckoner/copied/";
const SETTINGS: &str = "rebuild-reckoner/settings";

/// A book takes turns between two slots. Those that are damaged stay as they are, and the next free one serves in their place.
const SLOTS: [char; 12] = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k', 'l'];

/// The books of a store.
#[derive(Debug, Clone)]
pub struct Shelf<S> {
    store: S,
}

/// A book as the list shows it.
#[derive(Debug, Clone, PartialEq)]
pub struct Listed {
    /// Its identity.
    pub id: Rc<str>,
    /// Its name; empty when it has none.
    pub name: Rc<str>,
    /// When it was last saved (ms since 1970).
    pub saved_ms: f64,
    /// When a file copy was last made of it (ms since 1970).
    pub copied_ms: Option<f64>,
    /// How many characters it takes in the store.
    pub size: usize,
}

/// Why something is set aside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WhyAside {
    /// It is not whole: its checksum is wrong or it cannot be read.
    Damaged,
    /// A newer version of the program made it.
    Newer,
}

/// Something in the store that is left as it is: offered for download, never overwritten.
#[derive(Debug, Clone, PartialEq)]
pub struct SetAside {
    /// Its name in the store.
    pub slot: String,
    /// The book it belongs to.
    pub id: Rc<str>,
    /// Why it is set aside.
    pub why: WhyAside,
    /// How many characters it takes.
    pub size: usize,
}

/// What stands on the shelf.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Shelved {
    /// The books that can be opened, the one saved last first.
    pub books: Vec<Listed>,
    /// Books that were deleted and can be brought back.
    pub deleted: Vec<Listed>,
    /// What is left as it is.
    pub aside: Vec<SetAside>,
    /// How many characters are kept in all.
    pub used: usize,
    /// How many characters there is room for, where that is known.
    pub room: Option<usize>,
}

impl Shelved {
    /// How many characters the store takes in all, where that is known.
    #[must_use]
    pub fn capacity(&self) -> Option<usize> {
        self.room.map(|room| room + self.used)
    }
}

/// A book that was opened.
#[derive(Debug, Clone, PartialEq)]
pub struct Opened {
    /// The book.
    pub book: Book,
    /// The edits that can be undone.
    pub log: Log,
    /// The revision that was read: a saving must have seen it.
    pub revision: u64,
    /// When it was saved (ms since 1970).
    pub saved_ms: f64,
    /// Slots of this book that are damaged and were passed over.
    pub aside: Vec<SetAside>,
}

/// One slot of a book, as it was found.
struct Slot {
    name: String,
    text: String,
    label: Result<Label, BookError>,
}

impl<S: Store> Shelf<S> {
    /// The shelf of a store.
    #[must_use]
    pub fn new(store: S) -> Self {
        Self { store }
    }

    /// The store.
    pub fn store(&self) -> &S {
        &self.store
    }

    fn slots(&self, id: &str) -> Result<Vec<Slot>, BookError> {
        let mut slots = Vec::new();
        for letter in SLOTS {
            let name = format!("{BOOKS}{id}/{letter}");
            if let Some(text) = self.store.read(&name)? {
                slots.push(slot(name, text, id));
            }
        }
        Ok(slots)
    }

    /// Opens a book: the newest revision that is whole.
    ///
    /// # Errors
    /// [`BookError::Missing`], [`BookError::Newer`] where a newer version of the program wrote it, [`BookError::Damaged`] where no slot
    /// is whole, [`BookError::Off`].
    pub fn open(&self, id: &str) -> Result<Opened, BookError> {
        let mut slots = self.slots(id)?;
        if slots.is_empty() {
            return Err(BookError::Missing);
        }
        if slots.iter().any(|slot| slot.label == Err(BookError::Newer)) {
            return Err(BookError::Newer);
        }
        measure::sort_by_key(&mut slots, |slot| {
            std::cmp::Reverse(slot.label.as_ref().map_or(0, |label| label.revision))
        });
        let mut aside = Vec::new();
        let mut opened = None;
        for slot in &slots {
            let read = label(&slot.text).and_then(|(label, rest)| Ok((label, inside(rest)?)));
            match read {
                Ok((label, (book, log))) if opened.is_none() && *label.id == *id => {
                    let (revision, saved_ms) = (label.revision, label.time_ms);
                    opened = Some(Opened {
                        book,
                        log,
                        revision,
                        saved_ms,
                        aside: Vec::new(),
                    });
                }
                Err(BookError::Newer) => return Err(BookError::Newer),
                Err(_) => aside.push(slot.aside(id, WhyAside::Damaged)),
                Ok(_) => {}
            }
        }
        let opened = opened.map(|opened| Opened { aside, ..opened });
        opened.ok_or(BookError::Damaged("book"))
    }

    /// Saves a book over the revision that its writer has seen (0 for a new book); gives the new revision. It counts only after it was
    /// read back whole. Where the store is full, deleted books make room.
    ///
    /// # Errors
    /// [`BookError::Stale`] where the store holds another revision than the one seen, [`BookError::Full`], [`BookError::Off`],
    /// [`BookError::Newer`], [`BookError::Damaged`] where what was written does not read back.
    pub fn save(&self, book: &Book, log: &Log, seen: u64, now_ms: f64) -> Result<u64, BookError> {
        match self.save_once(book, log, seen, now_ms) {
            Err(BookError::Full) if self.empty_bin()? > 0 => {
                self.save_once(book, log, seen, now_ms)
            }
            other => other,
        }
    }

    fn save_once(&self, book: &Book, log: &Log, seen: u64, now_ms: f64) -> Result<u64, BookError> {
        let slots = self.slots(book.id())?;
        if slots.iter().any(|slot| slot.label == Err(BookError::Newer)) {
            return Err(BookError::Newer);
        }
        let mut whole: Vec<(u64, &Slot)> = slots
            .iter()
            .filter_map(|slot| Some((slot.label.as_ref().ok()?.revision, slot)))
            .collect();
        measure::sort_by_key(&mut whole, |(revision, _)| *revision);
        let stored = whole.last().map_or(0, |(revision, _)| *revision);
        if stored != seen {
            return Err(BookError::Stale { seen, stored });
        }
        let name = match whole.as_slice() {
            [(_, older), .., _] => older.name.clone(),
            _ => self.free_slot(book.id(), &slots).ok_or(BookError::Full)?,
        };
        let label = Label {
            id: book.id().to_string(),
            name: book.name().to_owned(),
            revision: seen + 1,
            time_ms: now_ms,
        };
        let text = sealed(&label, book, log);
        self.store.write(&name, &text)?;
        let back = self.store.read(&name)?;
        if back.as_deref() == Some(text.as_str()) {
            Ok(seen + 1)
        } else {
            Err(BookError::Damaged("saving"))
        }
    }

    fn free_slot(&self, id: &str, slots: &[Slot]) -> Option<String> {
        let names = SLOTS.iter().map(|letter| format!("{BOOKS}{id}/{letter}"));
        names
            .into_iter()
            .find(|name| slots.iter().all(|slot| slot.name != *name))
    }

    /// All that stands on the shelf.
    ///
    /// # Errors
    /// [`BookError::Off`].
    pub fn shelved(&self) -> Result<Shelved, BookError> {
        let mut shelved = Shelved::default();
        let mut ids: BTreeMap<Rc<str>, Vec<Slot>> = BTreeMap::new();
        for name in self.store.names()? {
            let Some(text) = self.store.read(&name)? else {
                continue;
            };
            shelved.used += name.len() + text.len();
            let Some((id, _)) = name
                .strip_prefix(BOOKS)
                .and_then(|rest| rest.rsplit_once('/'))
            else {
                continue;
            };
            let id: Rc<str> = id.into();
            let slot = slot(name, text, &id);
            ids.entry(id).or_default().push(slot);
        }
        for (id, slots) in ids {
            let size = slots
                .iter()
                .map(|slot| slot.name.len() + slot.text.len())
                .sum();
            for slot in &slots {
                match &slot.label {
                    Err(BookError::Newer) => shelved.aside.push(slot.aside(&id, WhyAside::Newer)),
                    Err(_) => shelved.aside.push(slot.aside(&id, WhyAside::Damaged)),
                    Ok(_) => {}
                }
            }
            let newest = slots
                .iter()
                .filter_map(|slot| slot.label.as_ref().ok())
                .max_by_key(|label| label.revision);
            let newer = slots.iter().any(|slot| slot.label == Err(BookError::Newer));
            let (Some(newest), false) = (newest, newer) else {
                continue;
            };
            let listed = Listed {
                name: newest.name.as_str().into(),
                saved_ms: newest.time_ms,
                copied_ms: self.copied(&id)?,
                size,
                id: Rc::clone(&id),
            };
            if self.store.read(&format!("{BIN}{id}"))?.is_some() {
                shelved.deleted.push(listed);
            } else {
                shelved.books.push(listed);
            }
        }
        measure::sort_by(&mut shelved.books, |a, b| b.saved_ms.total_cmp(&a.saved_ms));
        shelved.room = self
            .store
            .capacity()
            .map(|capacity| capacity.saturating_sub(shelved.used));
        Ok(shelved)
    }

    /// Puts a book in the bin, from where it can be brought back until room is needed.
    ///
    /// # Errors
    /// [`BookError::Full`], [`BookError::Off`].
    pub fn delete(&self, id: &str, now_ms: f64) -> Result<(), BookError> {
        self.store.write(&format!("{BIN}{id}"), &now_ms.to_string())
    }

    /// Brings a book back from the bin.
    ///
    /// # Errors
    /// [`BookError::Off`].
    pub fn undelete(&self, id: &str) -> Result<(), BookError> {
        self.store.remove(&format!("{BIN}{id}"))
    }

    /// Removes for good what is in the bin, save what is damaged or newer; gives how many books went.
    ///
    /// # Errors
    /// [`BookError::Off`].
    pub fn empty_bin(&self) -> Result<usize, BookError> {
        let mut gone = 0;
        for name in self.store.names()? {
            let Some(id) = name.strip_prefix(BIN) else {
                continue;
            };
            for slot in self.slots(id)?.iter().filter(|slot| slot.label.is_ok()) {
                self.store.remove(&slot.name)?;
            }
            self.store.remove(&format!("{COPIED}{id}"))?;
            self.store.remove(&name)?;
            gone += 1;
        }
        Ok(gone)
    }

    /// The text of what is set aside, for download.
    ///
    /// # Errors
    /// [`BookError::Missing`], [`BookError::Off`].
    pub fn aside_text(&self, slot: &str) -> Result<String, BookError> {
        self.store.read(slot)?.ok_or(BookError::Missing)
    }

    /// Removes for good what is set aside: the owner's explicit choice.
    ///
    /// # Errors
    /// [`BookError::Off`].
    pub fn discard_aside(&self, slot: &str) -> Result<(), BookError> {
        if slot.starts_with(BOOKS) {
            self.store.remove(slot)
        } else {
            Ok(())
        }
    }

    /// Keeps the rough book's entries as a book of its own under a name, and leaves an empty rough book.
    ///
    /// # Errors
    /// As [`Shelf::save`].
    pub fn keep_rough(&self, id: &str, name: &str, now_ms: f64) -> Result<Opened, BookError> {
        let rough = self.open(ROUGH)?;
        let book = rough.book.known_as(id);
        let book = book.with(&book.setting(NAME_KEY, Some(Entry::new(name))));
        let revision = self.save(&book, &rough.log, 0, now_ms)?;
        self.save(&Book::begun(ROUGH), &Log::default(), rough.revision, now_ms)?;
        Ok(Opened {
            book,
            log: rough.log,
            revision,
            saved_ms: now_ms,
            aside: Vec::new(),
        })
    }

    /// Notes that a file copy of a book was made.
    ///
    /// # Errors
    /// [`BookError::Full`], [`BookError::Off`].
    pub fn note_copied(&self, id: &str, now_ms: f64) -> Result<(), BookError> {
        self.store
            .write(&format!("{COPIED}{id}"), &now_ms.to_string())
    }

    /// When a file copy of a book was last made (ms since 1970).
    ///
    /// # Errors
    /// [`BookError::Off`].
    pub fn copied(&self, id: &str) -> Result<Option<f64>, BookError> {
        let text = self.store.read(&format!("{COPIED}{id}"))?;
        Ok(text.and_then(|text| text.parse().ok()))
    }

    /// The reader's settings, by name. Settings that cannot be read are none.
    ///
    /// # Errors
    /// [`BookError::Off`].
    pub fn settings(&self) -> Result<BTreeMap<String, String>, BookError> {
        let text = self.store.read(SETTINGS)?.unwrap_or_default();
        let value: Value = serde_json::from_str(&text).unwrap_or_default();
        let members = value.as_object().into_iter().flatten();
        let mut settings = BTreeMap::new();
        settings.extend(
            members.filter_map(|(name, value)| Some((name.clone(), value.as_str()?.to_owned()))),
        );
        Ok(settings)
    }

    /// Keeps the reader's settings.
    ///
    /// # Errors
    /// [`BookError::Full`], [`BookError::Off`].
    pub fn keep_settings(&self, settings: &BTreeMap<String, String>) -> Result<(), BookError> {
        let value: Value = settings
            .iter()
            .map(|(name, value)| (name.clone(), Value::from(value.as_str())))
            .collect();
        self.store.write(SETTINGS, &value.to_string())
    }
}

/// The book that a name in the store belongs to, for a page that is told of changes by name.
#[must_use]
pub fn book_at(name: &str) -> Option<&str> {
    name.strip_prefix(BOOKS)?.rsplit_once('/').map(|(id, _)| id)
}

fn slot(name: String, text: String, id: &str) -> Slot {
    let label = match label(&text) {
        Ok((label, _)) if label.id == id => Ok(label),
        Ok(_) => Err(BookError::Damaged("identity")),
        Err(error) => Err(error),
    };
    Slot { name, text, label }
}

impl Slot {
    fn aside(&self, id: &str, why: WhyAside) -> SetAside {
        SetAside {
            slot: self.name.clone(),
            id: id.into(),
            why,
            size: self.text.len(),
        }
    }
}
