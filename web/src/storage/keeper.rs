//! Who keeps what is entered: opens books, saves them, holds the lock of the one that is open and follows other tabs.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use buildbook::store::{Opened, ROUGH, Shelf, Shelved, book_at};
use buildbook::{Book, BookError, Entry, Log, NAME_KEY, book_of_file, example, file};
use gloo_timers::callback::Timeout;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};

use super::channel::{Channel, Said};
use super::local::{AnyStore, ask_to_persist};
use super::locks::{self, Held, How};
use crate::desk::Desk;
use crate::settings::Settings;
use crate::state::{Action, Saved};
use crate::words::{books, filled, frame};

/// How long a tab that wishes to edit waits for the one that holds the book before it takes the lock, in milliseconds.
const PATIENCE: u32 = 3_000;

/// How often, and how many times, a new writer looks for the revision that was handed over to it.
const LOOKS: (u32, u32) = (50, 60);

/// The names that settings are kept under.
const SETTINGS: &str = "settings";
const OPEN: &str = "open";

thread_local! {
    static KEEPER: RefCell<Option<Rc<Keeper>>> = const { RefCell::new(None) };
}

/// The keeper of this tab, once the app has started.
pub fn keeper() -> Option<Rc<Keeper>> {
    KEEPER.with(|kept| kept.borrow().clone())
}

/// Who keeps what is entered.
pub struct Keeper {
    shelf: Shelf<AnyStore>,
    desk: RefCell<Option<Desk>>,
    /// The book that is open, and the revision of it that this tab has seen.
    id: RefCell<Rc<str>>,
    seen: Cell<u64>,
    held: RefCell<Option<Held>>,
    /// The revision that another tab let go of.
    handed: Cell<u64>,
    channel: RefCell<Option<Channel>>,
}

fn now_ms() -> f64 {
    js_sys::Date::now()
}

/// An identity that no other book has.
fn fresh_id() -> Rc<str> {
    let mut id = String::from("b");
    while id.len() < 13 {
        let digit = (js_sys::Math::random() * 36.0) as u32;
        id.extend(char::from_digit(digit.min(35), 36));
    }
    id.into()
}

fn lock_name(id: &str) -> String {
    format!("rebuild-reckoner/book/{id}")
}

impl Keeper {
    /// The keeper, and what is open at first: the book that was open last, else the rough book.
    pub fn start() -> (Rc<Self>, Opened, Option<BookError>) {
        let shelf = Shelf::new(AnyStore::found());
        let last = shelf
            .settings()
            .ok()
            .and_then(|settings| settings.get(OPEN).cloned());
        let last = last.unwrap_or_else(|| ROUGH.to_owned());
        let mut fault = shelf.store().is_memory().then_some(BookError::Off);
        let opened = shelf.open(&last).or_else(|error| {
            if error != BookError::Missing {
                fault = Some(error);
            }
            if last == ROUGH {
                Err(BookError::Missing)
            } else {
                shelf.open(ROUGH)
            }
        });
        let opened = opened.unwrap_or_else(|_| Opened {
            book: Book::begun(ROUGH),
            log: Log::default(),
            revision: 0,
            saved_ms: 0.0,
            aside: Vec::new(),
        });
        let keeper = Rc::new(Self {
            shelf,
            desk: RefCell::default(),
            id: RefCell::new(Rc::clone(opened.book.id())),
            seen: Cell::new(opened.revision),
            held: RefCell::default(),
            handed: Cell::new(0),
            channel: RefCell::default(),
        });
        KEEPER.with(|kept| *kept.borrow_mut() = Some(Rc::clone(&keeper)));
        (keeper, opened, fault)
    }

    /// Ties the keeper to the desk: takes the lock of the open book and follows what other tabs do.
    pub fn tie(self: &Rc<Self>, desk: &Desk) {
        *self.desk.borrow_mut() = Some(desk.clone());
        let heard = Rc::clone(self);
        let channel = Channel::open(move |said| heard.hear(said));
        *self.channel.borrow_mut() = Some(channel);
        self.follow_other_tabs();
        self.take_lock();
    }

    fn send(&self, action: Action) {
        let desk = self.desk.borrow().clone();
        if let Some(desk) = desk {
            desk.send(action);
        }
    }

    /// Keeps the open book if anything was entered since it was kept last.
    pub fn keep(&self) {
        let Some(desk) = self.desk.borrow().clone() else {
            return;
        };
        let state = desk.state();
        if state.saved != Saved::Pending || state.read_only {
            return;
        }
        if &*self.open_id() == ROUGH && !state.book.name().is_empty() {
            self.keep_named_rough(&state.book, &state.log);
            return;
        }
        match self
            .shelf
            .save(&state.book, &state.log, self.seen.get(), now_ms())
        {
            Ok(revision) => {
                self.seen.set(revision);
                self.tell_saved();
            }
            Err(BookError::Stale { .. }) => self.keep_both(&state.book, &state.log),
            Err(error) => desk.send(Action::Saved(Saved::Fault(error))),
        }
    }

    fn tell_saved(&self) {
        if self.shelf.store().is_memory() {
            self.send(Action::Saved(Saved::Fault(BookError::Off)));
            return;
        }
        let time = String::from(js_sys::Date::new_0().to_locale_time_string("en-GB"));
        self.send(Action::Saved(Saved::At(
            time.chars().take(5).collect::<String>().into(),
        )));
        self.send(Action::Shelved);
    }

    /// A rough book that was given a name becomes a book of its own, and an empty rough book takes its place.
    fn keep_named_rough(&self, book: &Book, log: &Log) {
        let book = book.known_as(fresh_id());
        let kept = self
            .shelf
            .save(&book, log, 0, now_ms())
            .and_then(|revision| {
                self.shelf.save(
                    &Book::begun(ROUGH),
                    &Log::default(),
                    self.seen.get(),
                    now_ms(),
                )?;
                Ok(revision)
            });
        match kept {
            Ok(revision) => {
                ask_to_persist();
                self.swap(&book, log, revision);
                self.tell_saved();
            }
            Err(error) => self.send(Action::Saved(Saved::Fault(error))),
        }
    }

    /// Another tab saved this book meanwhile, unseen: what was entered here is kept as a book of its own.
    fn keep_both(&self, book: &Book, log: &Log) {
        let stale = BookError::Stale {
            seen: self.seen.get(),
            stored: 0,
        };
        let copy = named(&book.known_as(fresh_id()), &self.name_of_copy(book));
        match self.shelf.save(&copy, log, 0, now_ms()) {
            Ok(revision) => {
                self.swap(&copy, log, revision);
                self.send(Action::Saved(Saved::Fault(stale)));
                self.send(Action::Shelved);
            }
            Err(error) => self.send(Action::Saved(Saved::Fault(error))),
        }
    }

    /// A name that tells a copy from the book it was made of.
    fn name_of_copy(&self, book: &Book) -> String {
        let desk = self.desk.borrow();
        let tongue = desk
            .as_ref()
            .map(|desk| desk.state().settings.tongue)
            .unwrap_or_default();
        let name = match book.name() {
            "" => tongue.say(frame::ROUGH_BOOK),
            name => name,
        };
        filled(tongue.say(books::COPY_OF), &[name.to_owned()])
    }

    /// The open book goes on under another identity.
    fn swap(&self, book: &Book, log: &Log, revision: u64) {
        *self.held.borrow_mut() = None;
        *self.id.borrow_mut() = Rc::clone(book.id());
        self.seen.set(revision);
        self.note_open();
        self.send(Action::Follow(Rc::new(book.clone()), Rc::new(log.clone())));
        if let Some(me) = keeper() {
            me.take_lock();
        }
    }

    fn open_id(&self) -> Rc<str> {
        Rc::clone(&self.id.borrow())
    }

    fn note_open(&self) {
        if let Ok(mut settings) = self.shelf.settings() {
            settings.insert(OPEN.to_owned(), self.open_id().to_string());
            // Where this cannot be kept, the rough book opens next time.
            let _ = self.shelf.keep_settings(&settings);
        }
    }

    /// The settings as they were kept.
    pub fn settings(&self) -> Option<Settings> {
        let settings = self.shelf.settings().ok()?;
        settings.get(SETTINGS).map(|text| Settings::read(text))
    }

    /// Keeps the settings; where the browser refuses, they last until the page closes.
    pub fn keep_settings(&self, settings: &Settings) {
        let mut all = self.shelf.settings().unwrap_or_default();
        all.insert(SETTINGS.to_owned(), settings.written());
        let _ = self.shelf.keep_settings(&all);
    }

    // The list of books.

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
        self.keep();
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
        self.send(Action::Shelved);
        self.take_lock();
    }

    /// Keeps a book that is new here under a fresh identity, or under its own where that is free, and opens it.
    ///
    /// # Errors
    /// As saving.
    pub fn take_in(self: &Rc<Self>, book: &Book) -> Result<(), BookError> {
        self.keep();
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
        self.take_in(&named(&Book::begun(fresh_id()), name))
    }

    /// A copy of a book of the shelf, under another name; it is opened.
    ///
    /// # Errors
    /// As opening and saving.
    pub fn copy(self: &Rc<Self>, id: &str, name: &str) -> Result<(), BookError> {
        self.keep();
        let opened = self.shelf.open(id)?;
        self.take_in(&named(&opened.book.known_as(fresh_id()), name))
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
            self.open(ROUGH)?;
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
        self.keep();
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
                let revision = self.shelf.save(&book, &log, seen, now_ms())?;
                self.shelf.undelete(example::ID)?;
                self.show(Opened {
                    book,
                    log,
                    revision,
                    saved_ms: now_ms(),
                    aside: Vec::new(),
                });
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
            Some(state) => (*state.book).clone(),
            None => self.shelf.open(id)?.book,
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

    // Other tabs.

    /// Takes the lock of the open book if it is free; else this tab only shows the book.
    fn take_lock(self: &Rc<Self>) {
        if !locks::supported() || self.forgets() {
            return;
        }
        let id = self.open_id();
        let (me, wanted) = (Rc::clone(self), Rc::clone(&id));
        let (loser, lost) = (Rc::clone(self), Rc::clone(&id));
        let granted = move |held: Option<Held>| {
            // Another book may have been opened since.
            if wanted != me.open_id() {
                return;
            }
            me.send(Action::ReadOnly(held.is_none()));
            *me.held.borrow_mut() = held;
        };
        locks::ask(&lock_name(&id), How::IfFree, granted, move || {
            loser.lose(&lost);
        });
    }

    /// Another tab took the lock of a book.
    fn lose(&self, id: &str) {
        if *id == *self.open_id() {
            *self.held.borrow_mut() = None;
            self.send(Action::ReadOnly(true));
        }
    }

    /// Asks the tab that edits the open book to hand it over, and edits here.
    pub fn edit_here(self: &Rc<Self>) {
        if !locks::supported() {
            self.reopen();
            self.send(Action::ReadOnly(false));
            return;
        }
        let id = self.open_id();
        self.say(&Said::Wish(id.to_string()));
        self.ask_for(&id, How::Wait);
        let me = Rc::clone(self);
        Timeout::new(PATIENCE, move || {
            if *me.open_id() == *id && me.held.borrow().is_none() {
                me.ask_for(&id, How::Steal);
            }
        })
        .forget();
    }

    fn ask_for(self: &Rc<Self>, id: &Rc<str>, how: How) {
        let (me, wanted) = (Rc::clone(self), Rc::clone(id));
        let (loser, lost) = (Rc::clone(self), Rc::clone(id));
        let granted = move |held: Option<Held>| {
            if let (Some(held), true) = (held, wanted == me.open_id()) {
                *me.held.borrow_mut() = Some(held);
                me.edit_from_handed(LOOKS.1);
            }
        };
        locks::ask(&lock_name(id), how, granted, move || loser.lose(&lost));
    }

    /// Edits from the revision that was handed over, which may take a moment to reach this tab's view of the store.
    fn edit_from_handed(self: &Rc<Self>, looks: u32) {
        let there = self
            .shelf
            .open(&self.open_id())
            .is_ok_and(|opened| opened.revision >= self.handed.get());
        if there || looks == 0 {
            self.reopen();
            self.send(Action::ReadOnly(false));
            return;
        }
        let me = Rc::clone(self);
        Timeout::new(LOOKS.0, move || me.edit_from_handed(looks - 1)).forget();
    }

    fn say(&self, said: &Said) {
        if let Some(channel) = &*self.channel.borrow() {
            channel.say(said);
        }
    }

    fn hear(&self, said: Said) {
        match said {
            Said::Wish(id) if *id == *self.open_id() && self.held.borrow().is_some() => {
                self.keep();
                self.send(Action::ReadOnly(true));
                self.say(&Said::Given(id, self.seen.get()));
                *self.held.borrow_mut() = None;
            }
            Said::Given(id, revision) if *id == *self.open_id() => self.handed.set(revision),
            _ => {}
        }
    }

    /// Shows the open book as the store holds it.
    fn reopen(&self) {
        if let Ok(opened) = self.shelf.open(&self.open_id())
            && opened.revision > self.seen.get()
        {
            self.seen.set(opened.revision);
            self.send(Action::Follow(Rc::new(opened.book), Rc::new(opened.log)));
        }
    }

    fn follow_other_tabs(self: &Rc<Self>) {
        let me = Rc::clone(self);
        let changed = Closure::<dyn Fn(JsValue)>::new(move |event: JsValue| {
            let name = js_sys::Reflect::get(&event, &"key".into()).unwrap_or_default();
            let id = name
                .as_string()
                .and_then(|name| book_at(&name).map(str::to_owned));
            let open = id.is_some_and(|id| *id == *me.open_id());
            let desk = me.desk.borrow().clone();
            // Where something entered here is not kept yet, saving it will find out and keep both.
            if open && desk.is_some_and(|desk| desk.state().saved != Saved::Pending) {
                me.reopen();
            }
            me.send(Action::Shelved);
        });
        if let Some(window) = web_sys::window() {
            let _ = window
                .add_event_listener_with_callback("storage", changed.as_ref().unchecked_ref());
        }
        changed.forget();
    }
}

fn named(book: &Book, name: &str) -> Book {
    book.with(&book.setting(NAME_KEY, Some(Entry::new(name))))
}

/// A name for the file of a book: letters, digits and hyphens only.
fn file_name(book: &Book) -> String {
    let name: String = book
        .name()
        .chars()
        .map(|c| if c.is_alphanumeric() { c } else { '-' })
        .collect();
    let name = name.trim_matches('-').to_lowercase();
    let name = if name.is_empty() {
        "build-book".to_owned()
    } else {
        name
    };
    format!("{name}.json")
}
