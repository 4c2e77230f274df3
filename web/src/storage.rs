//! What is kept in this browser. Only this file touches its storage.

use crate::settings::Settings;
use buildbook::{Book, Entry, Key, Log};
use std::rc::Rc;

/// What the pages ask of whatever keeps books.
pub trait Keeper {
    /// The book that was open last, with its edits; an empty rough book the first time.
    fn open(&self) -> (Book, Log);
    /// Keeps the book; gives the time it was kept at, as the browser writes it.
    ///
    /// # Errors
    /// Why the browser does not keep it, in the browser's words.
    fn keep(&self, book: &Book, log: &Log) -> Result<Rc<str>, Rc<str>>;
    /// The settings as they were kept.
    fn settings(&self) -> Option<Settings>;
    /// Keeps the settings; where the browser refuses, they last until the page closes.
    fn keep_settings(&self, settings: &Settings);
}

const BOOK: &str = "reckoner/rough";
const SETTINGS: &str = "reckoner/settings";

/// The browser's local storage.
pub struct LocalStorage;

fn store() -> Option<web_sys::Storage> {
    web_sys::window()?.local_storage().ok().flatten()
}

impl Keeper for LocalStorage {
    fn open(&self) -> (Book, Log) {
        let kept = store()
            .and_then(|store| store.get_item(BOOK).ok().flatten())
            .unwrap_or_default();
        let entries = kept.lines().filter_map(|line| {
            let mut parts = line.split('\t');
            let (key, text) = (parts.next()?, parts.next()?);
            let unit = parts.next().filter(|unit| !unit.is_empty());
            let entry = Entry::new(text);
            Some((
                Key::checked(key).ok()?,
                unit.map_or(entry.clone(), |unit| entry.in_unit(unit)),
            ))
        });
        (Book::of("rough", entries), Log::default())
    }

    fn keep(&self, book: &Book, _: &Log) -> Result<Rc<str>, Rc<str>> {
        let lines: Vec<String> = book
            .entries()
            .map(|(key, entry)| {
                format!(
                    "{key}\t{}\t{}",
                    entry.text.replace(['\t', '\n'], " "),
                    entry.unit.as_deref().unwrap_or_default()
                )
            })
            .collect();
        let store = store().ok_or("")?;
        store
            .set_item(BOOK, &lines.join("\n"))
            .map_err(|_| Rc::from(""))?;
        let time = js_sys::Date::new_0().to_locale_time_string("en-GB");
        Ok(String::from(time)
            .chars()
            .take(5)
            .collect::<String>()
            .into())
    }

    fn settings(&self) -> Option<Settings> {
        store()?
            .get_item(SETTINGS)
            .ok()
            .flatten()
            .map(|kept| Settings::read(&kept))
    }

    fn keep_settings(&self, settings: &Settings) {
        if let Some(store) = store() {
            // A full store says so when the book is kept, which happens far more often.
            let _ = store.set_item(SETTINGS, &settings.written());
        }
    }
}
