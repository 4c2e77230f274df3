//! Use without a network: what the page's boot script knows about it, and the user's yes to a new version.
//!
//! The boot script registers the worker, so that a new version gets through even when the program does not start. It
//! leaves what it knows in an attribute of the page and says when that changes.

use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{Document, Event};

const CHANGED: &str = "offlinestate";
const ACCEPTED: &str = "acceptnewversion";

/// How far the pages can do without a network.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Offline {
    /// They cannot: opened from a file or without https, or the browser keeps nothing.
    Unavailable,
    /// The files are being fetched.
    Fetching,
    /// Every file of this version is kept: the page opens without a network.
    Ready,
    /// A new version is kept whole and waits for the user's yes.
    NewVersion,
    /// Another tab has changed to a new version; this one should be opened again.
    Replaced,
}

/// How far it is now.
#[must_use]
pub fn now() -> Offline {
    let state = document()
        .and_then(|document| document.document_element())
        .and_then(|page| page.get_attribute("data-offline"));
    match state.as_deref() {
        Some("fetching") => Offline::Fetching,
        Some("ready") => Offline::Ready,
        Some("waiting") => Offline::NewVersion,
        Some("replaced") => Offline::Replaced,
        _ => Offline::Unavailable,
    }
}

/// Listens for changes until it is dropped.
pub struct Watch {
    told: Closure<dyn FnMut()>,
}

impl Watch {
    /// Tells every change, and how it is now to begin with.
    #[must_use]
    pub fn new(tell: impl Fn(Offline) + 'static) -> Self {
        tell(now());
        let told = Closure::<dyn FnMut()>::new(move || tell(now()));
        if let Some(document) = document() {
            // The only failure is a wrong name; the state is then simply not told.
            let _ =
                document.add_event_listener_with_callback(CHANGED, told.as_ref().unchecked_ref());
        }
        Self { told }
    }
}

impl Drop for Watch {
    fn drop(&mut self) {
        if let Some(document) = document() {
            let _ = document
                .remove_event_listener_with_callback(CHANGED, self.told.as_ref().unchecked_ref());
        }
    }
}

/// The user's yes to the new version. The page is loaded again, so everything must be saved before.
pub fn accept_new_version() {
    if let (Some(document), Ok(accepted)) = (document(), Event::new(ACCEPTED)) {
        let _ = document.dispatch_event(&accepted);
    }
}

fn document() -> Option<Document> {
    web_sys::window().and_then(|window| window.document())
}
