//! The few things asked of the browser: the cursor, the title, the look of the page, time, printing.

mod files;
pub mod paper;

pub use files::{
    can_share, day_and_time, file_bytes, hand_out, megabytes, share, time_or_day, to_clipboard,
};

use crate::settings::{Look, Settings, Thumb};
use crate::state::{CallTo, Stand};
use gloo_timers::callback::Timeout;
use wasm_bindgen::JsCast;
use web_sys::{Document, Element, HtmlElement, HtmlInputElement};

/// The page, where there is one.
pub fn document() -> Option<Document> {
    web_sys::window().and_then(|window| window.document())
}

/// Does something after a while.
pub fn after(milliseconds: u32, deed: impl FnOnce() + 'static) {
    Timeout::new(milliseconds, deed).forget();
}

/// Sets the title of the page.
pub fn title(said: &str) {
    if let Some(document) = document() {
        document.set_title(said);
    }
}

/// Puts look, thumb side and language on the page's root.
pub fn dress(settings: &Settings) {
    let Some(root) = document().and_then(|d| d.document_element()) else {
        return;
    };
    let look = match settings.look {
        Look::Auto => None,
        Look::Light => Some("light"),
        Look::Dark => Some("dark"),
        Look::Sun => Some("sun"),
    };
    // The root takes any attribute; there is nothing to do if it does not.
    let _ = match look {
        Some(look) => root.set_attribute("data-look", look),
        None => root.remove_attribute("data-look"),
    };
    let thumb = if settings.thumb == Thumb::Left {
        "left"
    } else {
        "right"
    };
    let _ = root.set_attribute("data-thumb", thumb);
    let _ = root.set_attribute("lang", settings.tongue.tag());
}

/// The language the browser asks for.
pub fn language() -> String {
    web_sys::window()
        .and_then(|w| w.navigator().language())
        .unwrap_or_default()
}

/// One and a half as the browser writes it in the language it asks for.
pub fn one_and_a_half() -> String {
    js_sys::Object::to_locale_string(&js_sys::Number::from(1.5)).into()
}

/// Whether fingers are the pointer, on a screen that has room for keys beside or below an entry.
pub fn touched() -> bool {
    matches("(pointer: coarse) and (min-height: 521px)")
}

fn matches(query: &str) -> bool {
    web_sys::window()
        .and_then(|w| w.match_media(query).ok().flatten())
        .is_some_and(|query| query.matches())
}

/// An address that is the picture itself (RFC 2397), of a drawing in SVG.
pub fn picture_address(svg: &str) -> String {
    let drawing = js_sys::encode_uri_component(svg);
    format!("data:image/svg+xml,{}", String::from(drawing))
}

/// Prints the page.
pub fn print() {
    if let Some(window) = web_sys::window() {
        // A browser that cannot print says so itself.
        let _ = window.print();
    }
}

fn found(selector: &str) -> Option<HtmlElement> {
    document()?
        .query_selector(selector)
        .ok()
        .flatten()?
        .dyn_into()
        .ok()
}

/// An attribute selector that holds any text.
fn selector(attribute: &str, how: &str, value: &str) -> String {
    let escaped = value.replace('\\', "\\\\").replace('"', "\\\"");
    format!("[{attribute}{how}=\"{escaped}\"]")
}

/// The field of an entry.
pub fn field(key: &str) -> Option<HtmlElement> {
    found(&selector("data-key", "", key))
}

/// The text field of an entry.
pub fn text_field(key: &str) -> Option<HtmlInputElement> {
    field(key)?.dyn_into().ok()
}

fn focus(element: Option<HtmlElement>) -> bool {
    match element {
        Some(element) => {
            element.scroll_into_view_with_scroll_into_view_options(&scrolled(
                web_sys::ScrollLogicalPosition::Center,
            ));
            element.focus().is_ok()
        }
        None => false,
    }
}

/// Brings the field of an entry into sight once the page is laid out.
pub fn bring_into_sight(key: &str) {
    let key = key.to_owned();
    into_sight(move || field(&key));
}

/// Brings what has the cursor into sight once a page is laid out on which the drawing stands above the entries: it is there again,
/// and they have moved.
pub fn bring_cursor_into_sight() {
    if matches("(max-width: 999px)") {
        into_sight(|| found("main :is(input, button):focus"));
    }
}

fn into_sight(what: impl FnOnce() -> Option<HtmlElement> + 'static) {
    after(0, || {
        if let Some(element) = what() {
            element.scroll_into_view_with_scroll_into_view_options(&scrolled(
                web_sys::ScrollLogicalPosition::Nearest,
            ));
        }
    });
}

fn scrolled(to: web_sys::ScrollLogicalPosition) -> web_sys::ScrollIntoViewOptions {
    let options = web_sys::ScrollIntoViewOptions::new();
    options.set_block(to);
    options
}

/// Scrolls to the top of the page.
pub fn to_top() {
    if let Some(window) = web_sys::window() {
        window.scroll_to_with_x_and_y(0.0, 0.0);
    }
}

/// Where one is on the page: how far down, and which field or key of it has the cursor.
pub fn stand() -> Stand {
    let active = document().and_then(|document| document.active_element());
    let told = active.and_then(|active| {
        ["data-key", "data-do"].into_iter().find_map(|name| {
            let value = active.get_attribute(name)?;
            Some(format!("main {}", selector(name, "", &value)))
        })
    });
    Stand {
        down: web_sys::window().map_or(0.0, |window| window.scroll_y().unwrap_or_default()),
        focus: told,
    }
}

/// Puts one where one was. What a page draws by the size of its place may still push the rest down, so it is done again.
fn stand_at(stood: Stand) {
    let at = stood.focus.as_deref().and_then(found);
    if let Some(element) = at.or_else(|| found("h1[tabindex]")) {
        let _ = element.focus();
    }
    let down = move || {
        if let Some(window) = web_sys::window() {
            window.scroll_to_with_x_and_y(0.0, stood.down);
        }
    };
    down();
    after(60, down);
}

/// Puts the cursor where it was wished for, as soon as the page is drawn.
pub fn answer_call(to: CallTo) {
    after(0, move || match to {
        CallTo::Nowhere => {}
        CallTo::Heading => {
            to_top();
            if let Some(heading) = found("h1[tabindex]") {
                let _ = heading.focus();
            }
        }
        CallTo::Entry(key) => {
            focus(field(key.as_str()).or_else(|| found(&selector("data-row", "", key.as_str()))));
        }
        CallTo::Row(row) => {
            let under = format!("{row}/");
            focus(
                found(&format!("input{}", selector("data-key", "^", &under)))
                    .or_else(|| found(&selector("data-key", "^", &under))),
            );
        }
        CallTo::Panel => {
            let panel = found(".panel input, .panel [tabindex]").or_else(|| found(".panel button"));
            if let Some(panel) = panel {
                let _ = panel.focus();
            }
        }
        CallTo::Back(stood) => stand_at(stood),
        CallTo::Drawer => {
            if let Some(first) = found(".drawer a, .drawer button") {
                let _ = first.focus();
            }
        }
    });
}

/// The field after an entry's, and whether the two belong to different rows of a list.
pub struct After {
    /// The next field on the page.
    pub next: Option<HtmlElement>,
    /// The list and the row's id that end with the entry's field, when it is the last one of the last row.
    pub ends: Option<(String, String)>,
    /// Whether every field of that row is blank.
    pub blank: bool,
}

/// What comes after the field of an entry, in the order of the page.
pub fn after_field(key: &str) -> After {
    let nothing = After {
        next: None,
        ends: None,
        blank: false,
    };
    let (Some(document), Some(here)) = (document(), field(key)) else {
        return nothing;
    };
    let Ok(all) =
        document.query_selector_all("main input[data-key], main [role=radiogroup][data-key]")
    else {
        return nothing;
    };
    let fields: Vec<Element> = (0..all.length())
        .filter_map(|i| all.get(i)?.dyn_into::<Element>().ok())
        .collect();
    let place = fields.iter().position(|f| f.is_same_node(Some(&here)));
    let next = place.and_then(|place| fields.get(place + 1));
    let row = here.closest("[data-row]").ok().flatten();
    let ends = row.as_ref().and_then(|row| {
        let leaves = next.is_none_or(|next| !row.contains(Some(next)));
        let last = row
            .next_element_sibling()
            .is_none_or(|s| !s.has_attribute("data-row"));
        let whole = row.get_attribute("data-row")?;
        let (list, id) = whole.rsplit_once('/')?;
        (leaves && last).then(|| (list.to_owned(), id.to_owned()))
    });
    let blank = row.is_some_and(|row| {
        fields
            .iter()
            .filter(|f| row.contains(Some(f)))
            .filter_map(|f| f.dyn_ref::<HtmlInputElement>())
            .all(|f| f.value().trim().is_empty())
    });
    let next = next.and_then(|next| {
        next.clone().dyn_into::<HtmlElement>().ok().map(|group| {
            // A group of choices takes the cursor at the chosen one.
            group
                .query_selector("[tabindex=\"0\"]")
                .ok()
                .flatten()
                .and_then(|chosen| chosen.dyn_into::<HtmlElement>().ok())
                .unwrap_or(group)
        })
    });
    After { next, ends, blank }
}

/// Puts the cursor into an element and brings it into sight.
pub fn focus_on(element: HtmlElement) {
    focus(Some(element));
}

/// The day on the browser's calendar.
pub fn today() -> Option<buildbook::Date> {
    let now = js_sys::Date::new_0();
    let year = u16::try_from(now.get_full_year()).ok()?;
    let month = u8::try_from(now.get_month() + 1).ok()?;
    buildbook::Date::new(year, month, u8::try_from(now.get_date()).ok()?)
}

/// The moment of world time.
pub fn moment() -> Option<buildbook::Moment> {
    let now = js_sys::Date::new_0();
    let year = u16::try_from(now.get_utc_full_year()).ok()?;
    let month = u8::try_from(now.get_utc_month() + 1).ok()?;
    Some(buildbook::Moment {
        day: buildbook::Date::new(year, month, u8::try_from(now.get_utc_date()).ok()?)?,
        seconds: now.get_utc_hours() * 3600 + now.get_utc_minutes() * 60 + now.get_utc_seconds(),
    })
}

/// Keeps the screen on for as long as it lives. Bound by hand: web-sys keeps the call behind an unstable flag.
pub struct Awake {
    asked: js_sys::Promise,
}

impl Awake {
    /// Asks the browser to keep the screen on; `None` where it cannot.
    pub fn asked() -> Option<Self> {
        let navigator = web_sys::window()?.navigator();
        let lock = js_sys::Reflect::get(&navigator, &"wakeLock".into()).ok()?;
        let request = js_sys::Reflect::get(&lock, &"request".into()).ok()?;
        let request: js_sys::Function = request.dyn_into().ok()?;
        let asked = request
            .call1(&lock, &"screen".into())
            .ok()?
            .dyn_into()
            .ok()?;
        Some(Self { asked })
    }
}

impl Drop for Awake {
    fn drop(&mut self) {
        let asked = wasm_bindgen_futures::JsFuture::from(self.asked.clone());
        wasm_bindgen_futures::spawn_local(async move {
            // A lock that was refused needs no release.
            let Ok(sentinel) = asked.await else { return };
            let release = js_sys::Reflect::get(&sentinel, &"release".into());
            if let Ok(Ok(release)) = release.map(JsCast::dyn_into::<js_sys::Function>) {
                let _ = release.call0(&sentinel);
            }
        });
    }
}
