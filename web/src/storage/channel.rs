//! What the tabs of this browser say to each other about a book: one wishes to edit it, the other hands it over.

use js_sys::{Array, Function, Reflect};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};

const NAME: &str = "rebuild-reckoner";

/// What one tab says to the others.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Said {
    /// A tab would like to edit this book.
    Wish(String),
    /// A tab has let go of this book, at this revision, which the next writer must have seen.
    Given(String, u64),
}

impl Said {
    fn written(&self) -> String {
        match self {
            Self::Wish(id) => format!("wish {id}"),
            Self::Given(id, revision) => format!("given {id} {revision}"),
        }
    }

    fn read(text: &str) -> Option<Self> {
        let words: Vec<&str> = text.split(' ').collect();
        match words[..] {
            ["wish", id] => Some(Self::Wish(id.to_owned())),
            ["given", id, revision] => Some(Self::Given(id.to_owned(), revision.parse().ok()?)),
            _ => None,
        }
    }
}

/// The tabs' common channel, where the browser has one.
pub struct Channel(Option<JsValue>);

impl Channel {
    /// Opens the channel; `heard` is told what other tabs say.
    pub fn open(heard: impl Fn(Said) + 'static) -> Self {
        let channel = web_sys::window()
            .and_then(|window| Reflect::get(&window, &"BroadcastChannel".into()).ok())
            .and_then(|constructor| constructor.dyn_into::<Function>().ok())
            .and_then(|constructor| {
                Reflect::construct(&constructor, &Array::of1(&NAME.into())).ok()
            });
        if let Some(channel) = &channel {
            let listener = Closure::<dyn Fn(JsValue)>::new(move |event: JsValue| {
                let data = Reflect::get(&event, &"data".into()).unwrap_or_default();
                if let Some(said) = data.as_string().as_deref().and_then(Said::read) {
                    heard(said);
                }
            });
            // A channel takes a listener; where it does not, the tab that wishes takes the lock after a while.
            let _ = Reflect::set(channel, &"onmessage".into(), listener.as_ref());
            listener.forget();
        }
        Self(channel)
    }

    /// Says something to the other tabs.
    pub fn say(&self, said: &Said) {
        let Some(channel) = &self.0 else { return };
        let post = Reflect::get(channel, &"postMessage".into())
            .ok()
            .and_then(|post| post.dyn_into::<Function>().ok());
        if let Some(post) = post {
            // Nobody need be listening.
            let _ = post.call1(channel, &said.written().into());
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_said_is_understood() {
        for said in [Said::Wish("b1".into()), Said::Given("b1".into(), 42)] {
            assert_eq!(Said::read(&said.written()), Some(said));
        }
        assert_eq!(Said::read("given b1 often"), None);
        assert_eq!(Said::read(""), None);
    }
}
