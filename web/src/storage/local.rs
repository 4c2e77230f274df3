//! The browser's local storage as a store of books, and the store in memory that takes its place where it is off.

use buildbook::BookError;
use buildbook::store::{MemoryStore, Store};
use js_sys::Reflect;
use wasm_bindgen::JsValue;
use web_sys::Storage;

/// What browsers give one site, in characters of names and texts. They do not say it; five million is what they share.
const USUAL_CAPACITY: usize = 5_000_000;

/// The browser's local storage.
pub struct LocalStore;

fn storage() -> Result<Storage, BookError> {
    let window = web_sys::window().ok_or(BookError::Off)?;
    window.local_storage().ok().flatten().ok_or(BookError::Off)
}

/// Why the browser refused. Names and codes of a full store differ between browsers.
fn refusal(error: &JsValue) -> BookError {
    let told = |name: &str| Reflect::get(error, &JsValue::from_str(name)).unwrap_or_default();
    let name = told("name").as_string().unwrap_or_default();
    let code = told("code").as_f64().unwrap_or_default();
    let full = name.contains("Quota") || name.contains("QUOTA") || code == 22.0 || code == 1014.0;
    if full {
        BookError::Full
    } else {
        BookError::Off
    }
}

impl Store for LocalStore {
    fn read(&self, name: &str) -> Result<Option<String>, BookError> {
        storage()?.get_item(name).map_err(|error| refusal(&error))
    }

    fn write(&self, name: &str, text: &str) -> Result<(), BookError> {
        storage()?
            .set_item(name, text)
            .map_err(|error| refusal(&error))
    }

    fn remove(&self, name: &str) -> Result<(), BookError> {
        storage()?
            .remove_item(name)
            .map_err(|error| refusal(&error))
    }

    fn names(&self) -> Result<Vec<String>, BookError> {
        let storage = storage()?;
        let length = storage.length().map_err(|error| refusal(&error))?;
        Ok((0..length)
            .filter_map(|place| storage.key(place).ok().flatten())
            .collect())
    }

    fn capacity(&self) -> Option<usize> {
        Some(USUAL_CAPACITY)
    }
}

/// The store that serves here.
pub enum AnyStore {
    /// The browser's own.
    Browser(LocalStore),
    /// In memory, until the page closes.
    Memory(MemoryStore),
}

impl AnyStore {
    /// The browser's store where it works, else one in memory.
    pub fn found() -> Self {
        const PROBE: &str = "rebuild-reckoner/probe";
        let works = match LocalStore.write(PROBE, "1") {
            // A full store is a store: what is in it can be read, and deleting makes room.
            Err(BookError::Full) => true,
            Ok(()) => LocalStore.remove(PROBE).is_ok(),
            Err(_) => false,
        };
        if works {
            Self::Browser(LocalStore)
        } else {
            Self::Memory(MemoryStore::new())
        }
    }

    /// Whether what is kept here is gone when the page closes.
    pub fn is_memory(&self) -> bool {
        matches!(self, Self::Memory(_))
    }

    fn store(&self) -> &dyn Store {
        match self {
            Self::Browser(store) => store,
            Self::Memory(store) => store,
        }
    }
}

impl Store for AnyStore {
    fn read(&self, name: &str) -> Result<Option<String>, BookError> {
        self.store().read(name)
    }
    fn write(&self, name: &str, text: &str) -> Result<(), BookError> {
        self.store().write(name, text)
    }
    fn remove(&self, name: &str) -> Result<(), BookError> {
        self.store().remove(name)
    }
    fn names(&self) -> Result<Vec<String>, BookError> {
        self.store().names()
    }
    fn capacity(&self) -> Option<usize> {
        self.store().capacity()
    }
}

/// Asks the browser not to clear what is kept when it wants room.
pub fn ask_to_persist() {
    let asked = || -> Result<JsValue, JsValue> {
        let navigator = web_sys::window().ok_or(JsValue::UNDEFINED)?.navigator();
        let storage = Reflect::get(&navigator, &"storage".into())?;
        let persist: js_sys::Function = Reflect::get(&storage, &"persist".into())?.into();
        persist.call0(&storage)
    };
    // Where the browser knows no such thing, or says no, the list of books still shows when a file copy was last made.
    let _ = asked();
}
