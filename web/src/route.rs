//! The address after the `#`, as an enum. A damaged address opens the questions; it never stops the app.

use crate::browser;
use crate::state::Stand;
use buildbook::SHEETS;
use std::cell::RefCell;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};

/// What stands for the whole book where a sheet is asked for.
pub const WHOLE_BOOK: &str = "book";

/// A page of the reckoner.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub enum Route {
    /// The front page: what do you need to know?
    #[default]
    Questions,
    /// What have I got?
    Vehicle,
    /// Where do the holes go?
    Marking,
    /// Will it steer and stop true from the other side?
    Conversion,
    /// Which axle ratio?
    Gearing,
    /// How high will it sit?
    Springs,
    /// Which shims?
    FinalDrive,
    /// How tight?
    Torque,
    /// The joints one after another, at the vehicle.
    TickOff,
    /// How many litres?
    Paint,
    /// What is left to spend?
    Costs,
    /// What was done and measured?
    Handover,
    /// The record of every sheet, to print and bind.
    Pack,
    /// All build books in this browser.
    Books,
    /// Units, language, look, thumb side.
    Settings,
    /// A link of a sheet, or of the whole book, to send.
    Send(&'static str),
    /// A book or a sheet that came in a link; the text is what follows `#/link/`.
    Link(String),
}

impl Route {
    /// The page that an address names.
    pub fn of_fragment(fragment: &str) -> Self {
        let path = fragment.trim_start_matches('#').trim_start_matches('/');
        if let Some(payload) = path.strip_prefix("link/") {
            return Self::Link(payload.to_owned());
        }
        if let Some(what) = path.strip_prefix("send/") {
            let sheet = SHEETS.into_iter().find(|sheet| *sheet == what);
            return Self::Send(sheet.unwrap_or(WHOLE_BOOK));
        }
        match path.split(['/', '?']).next().unwrap_or_default() {
            "vehicle" => Self::Vehicle,
            "marking" => Self::Marking,
            "conversion" => Self::Conversion,
            "gearing" => Self::Gearing,
            "springs" => Self::Springs,
            "final_drive" => Self::FinalDrive,
            "torque" => Self::Torque,
            "tick-off" => Self::TickOff,
            "paint" => Self::Paint,
            "costs" => Self::Costs,
            "handover" => Self::Handover,
            "pack" => Self::Pack,
            "books" => Self::Books,
            "settings" => Self::Settings,
            _ => Self::Questions,
        }
    }

    /// The address of the page, with its `#`.
    pub fn fragment(&self) -> String {
        match self {
            Self::Questions => "#/".to_owned(),
            Self::Link(payload) => format!("#/link/{payload}"),
            Self::Send(what) => format!("#/send/{what}"),
            other => format!("#/{}", other.name()),
        }
    }

    /// The page's name in the address and in the words.
    pub fn name(&self) -> &'static str {
        match self {
            Self::Questions => "questions",
            Self::Vehicle => "vehicle",
            Self::Marking => "marking",
            Self::Conversion => "conversion",
            Self::Gearing => "gearing",
            Self::Springs => "springs",
            Self::FinalDrive => "final_drive",
            Self::Torque => "torque",
            Self::TickOff => "tick-off",
            Self::Paint => "paint",
            Self::Costs => "costs",
            Self::Handover => "handover",
            Self::Pack => "pack",
            Self::Books => "books",
            Self::Settings => "settings",
            Self::Link(_) => "link",
            Self::Send(_) => "send",
        }
    }

    /// The sheet that the page shows, if it is a sheet's.
    pub fn sheet(&self) -> Option<&'static str> {
        let name = self.name();
        SHEETS.into_iter().find(|sheet| *sheet == name)
    }

    /// The page of a sheet, by the first part of an entry's or a result's key.
    pub fn of_key(key: &str) -> Self {
        Self::of_fragment(key)
    }
}

/// The page that the browser's address names now.
pub fn route_now() -> Route {
    let hash = web_sys::window().and_then(|w| w.location().hash().ok());
    Route::of_fragment(hash.as_deref().unwrap_or_default())
}

/// The way that was taken through the pages. The browser keeps with each page how many lie before it; a page that it knows no number
/// of was not seen yet.
#[derive(Default)]
struct Way {
    stands: Vec<Option<Stand>>,
    here: usize,
    seen: Route,
    noted: bool,
}

thread_local! {
    static WAY: RefCell<Way> = RefCell::default();
}

/// The number that the browser keeps with the page that is seen.
fn kept_number() -> Option<usize> {
    let kept = web_sys::window()?.history().ok()?.state().ok()?;
    // A number of pages: what is cut off is nothing.
    kept.as_f64().map(|number| number as usize)
}

fn keep_number(number: usize) {
    if let Some(history) = web_sys::window().and_then(|window| window.history().ok()) {
        // Without it one comes back to the top of a page.
        let _ = history.replace_state(&JsValue::from(number), "");
    }
}

impl Way {
    /// Notes where one is on the page that is being left; once, since what comes after may have moved it.
    fn leave(&mut self) {
        if !std::mem::replace(&mut self.noted, true) {
            let ways = self.stands.len().max(self.here + 1);
            self.stands.resize(ways, None);
            self.stands[self.here] = Some(browser::stand());
        }
    }

    /// Another page is there; where one stood on it, when one has been there.
    fn arrive(&mut self) -> Option<Stand> {
        self.leave();
        self.noted = false;
        self.seen = route_now();
        let known = kept_number();
        self.here = known.unwrap_or(self.here + 1);
        if known.is_none() {
            self.stands.truncate(self.here);
            keep_number(self.here);
        }
        self.stands.get(self.here).cloned().flatten()
    }
}

/// Puts a page into the address; the listener of [`on_route`] then hears of it.
pub fn go(route: &Route) {
    if let Some(window) = web_sys::window()
        && route_now() != *route
    {
        WAY.with_borrow_mut(Way::leave);
        // A refused address leaves the page where it is, which is all that can be done.
        let _ = window.location().set_hash(&route.fragment());
    }
}

/// Calls `heard` whenever the address changes, for as long as the page lives; with where one stood, when one comes back.
pub fn on_route(heard: impl Fn(Route, Option<Stand>) + 'static) {
    WAY.with_borrow_mut(|way| {
        way.here = kept_number().unwrap_or_default();
        way.seen = route_now();
        keep_number(way.here);
    });
    // A link to the page that is seen takes its number away and opens nothing.
    let again = Closure::<dyn Fn()>::new(|| {
        WAY.with_borrow(|way| {
            if way.seen == route_now() {
                keep_number(way.here);
            }
        });
    });
    let listener = Closure::<dyn Fn()>::new(move || {
        let stood = WAY.with_borrow_mut(Way::arrive);
        heard(route_now(), stood);
    });
    if let Some(window) = web_sys::window() {
        // The pages are drawn after the browser would have put one back.
        if let Ok(history) = window.history() {
            let _ = history.set_scroll_restoration(web_sys::ScrollRestoration::Manual);
        }
        for (event, heard) in [("hashchange", &listener), ("popstate", &again)] {
            let _ = window.add_event_listener_with_callback(event, heard.as_ref().unchecked_ref());
        }
    }
    listener.forget();
    again.forget();
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_page_is_found_again_by_its_own_address() {
        for route in [
            Route::Questions,
            Route::Vehicle,
            Route::Marking,
            Route::Conversion,
            Route::Gearing,
            Route::Springs,
            Route::FinalDrive,
            Route::Torque,
            Route::TickOff,
            Route::Paint,
            Route::Costs,
            Route::Books,
            Route::Settings,
            Route::Send("paint"),
            Route::Send(WHOLE_BOOK),
            Route::Link("1.abc-_".to_owned()),
        ] {
            assert_eq!(Route::of_fragment(&route.fragment()), route);
        }
    }

    #[test]
    fn a_damaged_address_opens_the_questions() {
        for bad in [
            "",
            "#",
            "#gear ing",
            "#/%%%",
            "#//",
            "#/nothing/here",
            "#\u{0}",
        ] {
            assert_eq!(Route::of_fragment(bad), Route::Questions, "{bad:?}");
        }
    }

    #[test]
    fn an_entry_belongs_to_the_page_its_key_begins_with() {
        assert_eq!(Route::of_key("gearing/gears/2/ratio"), Route::Gearing);
    }
}
