//! Who keeps what is entered: the book that is open at first, saving it, and the settings.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use buildbook::store::{Opened, ROUGH, Shelf};
use buildbook::{Book, BookError, Entry, Log, NAME_KEY};

use super::channel::Channel;
use super::local::{AnyStore, ask_to_persist};
use super::locks::Held;
use crate::browser;
use crate::desk::Desk;
use crate::settings::Settings;
use crate::state::{Action, Saved};
use crate::words::{books, filled, frame};

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
    pub(super) shelf: Shelf<AnyStore>,
    pub(super) desk: RefCell<Option<Desk>>,
    /// The book that is open, and the revision of it that this tab has seen.
    pub(super) id: RefCell<Rc<str>>,
    pub(super) seen: Cell<u64>,
    pub(super) held: RefCell<Option<Held>>,
    /// The revision that another tab let go of.
    pub(super) handed: Cell<u64>,
    pub(super) channel: RefCell<Option<Channel>>,
}

pub(super) fn now_ms() -> f64 {
    js_sys::Date::now()
}

/// An identity that no other book has.
pub(super) fn fresh_id() -> Rc<str> {
    let mut id = String::from("b");
    while id.len() < 13 {
        let digit = (js_sys::Math::random() * 36.0) as u32;
        id.extend(char::from_digit(digit.min(35), 36));
    }
    id.into()
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

    pub(super) fn send(&self, action: Action) {
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
        let unkept = matches!(state.saved, Saved::Pending | Saved::Fault(BookError::Full));
        if !unkept || state.read_only {
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

    /// Keeps the open book before it gives way to another.
    ///
    /// # Errors
    /// [`BookError::Full`]: what was entered in it would be lost.
    pub(super) fn kept(&self) -> Result<(), BookError> {
        self.keep();
        let state = self.desk.borrow().as_ref().map(Desk::state);
        let lost = state.is_some_and(|state| {
            state.saved == Saved::Fault(BookError::Full) && !state.log.done().is_empty()
        });
        if lost { Err(BookError::Full) } else { Ok(()) }
    }

    fn tell_saved(&self) {
        if self.shelf.store().is_memory() {
            self.send(Action::Saved(Saved::Fault(BookError::Off)));
            return;
        }
        self.tell_kept(now_ms());
        self.send(Action::Shelved);
    }

    /// Says when the open book was kept last.
    pub fn tell_kept(&self, saved_ms: f64) {
        let desk = self.desk.borrow().clone();
        if let Some(desk) = desk.filter(|_| saved_ms > 0.0 && !self.forgets()) {
            let tongue = desk.state().settings.tongue;
            let time = browser::time_or_day(saved_ms, tongue.tag());
            desk.send(Action::Saved(Saved::At(time.into())));
        }
    }

    /// The book as it is handed on: it carries the units that books without any are shown in here.
    pub(super) fn carrying(&self, book: &Book) -> Book {
        let desk = self.desk.borrow();
        let settings = desk.as_ref().map(|desk| Rc::clone(&desk.state().settings));
        book.carrying(settings.unwrap_or_default().value("units"))
    }

    pub(super) fn named(&self, book: &Book, name: &str) -> Book {
        let book = self.carrying(book);
        book.with(&book.setting(NAME_KEY, Some(Entry::new(name))))
    }

    /// A rough book that was given a name becomes a book of its own, and an empty rough book takes its place.
    fn keep_named_rough(&self, book: &Book, log: &Log) {
        let book = self.carrying(&book.known_as(fresh_id()));
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
        let copy = self.named(&book.known_as(fresh_id()), &self.name_of_copy(book));
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

    pub(super) fn open_id(&self) -> Rc<str> {
        Rc::clone(&self.id.borrow())
    }

    pub(super) fn note_open(&self) {
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
}
