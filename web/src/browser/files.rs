//! Files out and in, the clipboard, and how the browser writes days and sizes.

use buildbook::BookError;
use js_sys::{Array, Date, Function, Object, Promise, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, HtmlAnchorElement, HtmlInputElement, Url};

/// The largest file that is read, in bytes: beyond what the reckoner makes.
const LARGEST: f64 = 8_388_608.0;

/// Hands a text out as a file.
pub fn hand_out(name: &str, text: &str) {
    let parts = Array::of1(&JsValue::from_str(text));
    let Ok(blob) = Blob::new_with_str_sequence(&parts) else {
        return;
    };
    let Ok(address) = Url::create_object_url_with_blob(&blob) else {
        return;
    };
    let anchor = super::document()
        .and_then(|document| document.create_element("a").ok())
        .and_then(|element| element.dyn_into::<HtmlAnchorElement>().ok());
    if let Some(anchor) = anchor {
        anchor.set_href(&address);
        anchor.set_download(name);
        anchor.click();
    }
    // Some browsers take the file only after the press is over.
    super::after(10_000, move || {
        let _ = Url::revoke_object_url(&address);
    });
}

/// The bytes of the file that was chosen in a field; the field is emptied, so that the same file can be chosen again.
pub fn file_bytes(
    field: &HtmlInputElement,
    then: impl FnOnce(Result<Vec<u8>, BookError>) + 'static,
) {
    let chosen = field.files().and_then(|files| files.get(0));
    field.set_value("");
    let Some(file) = chosen else { return };
    if file.size() > LARGEST {
        then(Err(BookError::TooLarge));
        return;
    }
    let reading = file.array_buffer();
    spawn_local(async move {
        let read = JsFuture::from(reading).await;
        then(
            read.map(|buffer| Uint8Array::new(&buffer).to_vec())
                .map_err(|_| BookError::Missing),
        );
    });
}

/// The browser's navigator as a plain object: not every browser has all of it.
fn navigator() -> JsValue {
    web_sys::window().map_or(JsValue::UNDEFINED, |window| window.navigator().into())
}

fn ability(owner: &JsValue, name: &str) -> Result<Function, JsValue> {
    Reflect::get(owner, &name.into())?.dyn_into()
}

/// Calls what promises something, and tells whether it was kept, or else why not.
fn promised(
    owner: &JsValue,
    name: &str,
    what: &JsValue,
    then: impl FnOnce(Result<JsValue, JsValue>) + 'static,
) {
    let asked =
        ability(owner, name).and_then(|call| call.call1(owner, what)?.dyn_into::<Promise>());
    match asked {
        Ok(promise) => spawn_local(async move { then(JsFuture::from(promise).await) }),
        Err(why) => then(Err(why)),
    }
}

/// Puts a text on the clipboard and tells whether it is there.
pub fn to_clipboard(text: &str, then: impl FnOnce(bool) + 'static) {
    let clipboard = Reflect::get(&navigator(), &"clipboard".into()).unwrap_or_default();
    promised(&clipboard, "writeText", &text.into(), move |done| {
        then(done.is_ok());
    });
}

/// Whether the browser can hand a link to another program.
pub fn can_share() -> bool {
    ability(&navigator(), "share").is_ok()
}

/// Hands a link with its name to the program that the user chooses, and tells whether the browser did. Who thinks better of it was
/// served as well. Bound by hand: web-sys keeps the call behind an unstable flag.
pub fn share(title: &str, address: &str, then: impl FnOnce(bool) + 'static) {
    let what = Object::new();
    // A plain object takes any member.
    let _ = Reflect::set(&what, &"title".into(), &title.into());
    let _ = Reflect::set(&what, &"url".into(), &address.into());
    promised(&navigator(), "share", &what, move |done| {
        let name = |why: JsValue| Reflect::get(&why, &"name".into()).ok()?.as_string();
        then(done.map_or_else(|why| name(why).as_deref() == Some("AbortError"), |_| true));
    });
}

/// A day with its time, as the language writes it.
pub fn day_and_time(time_ms: f64, language: &str) -> String {
    let options = Object::new();
    // A plain object takes any member.
    let _ = Reflect::set(&options, &"dateStyle".into(), &"medium".into());
    let _ = Reflect::set(&options, &"timeStyle".into(), &"short".into());
    Date::new(&time_ms.into())
        .to_locale_string(language, &options)
        .into()
}

/// The time of a moment of today (`16:05`), the day of any other.
pub fn time_or_day(time_ms: f64, language: &str) -> String {
    let date = Date::new(&time_ms.into());
    if date.to_date_string() == Date::new_0().to_date_string() {
        let time = String::from(date.to_locale_time_string("en-GB"));
        return time.chars().take(5).collect();
    }
    let options = Object::new();
    // A plain object takes any member.
    let _ = Reflect::set(&options, &"dateStyle".into(), &"medium".into());
    date.to_locale_date_string(language, &options).into()
}

/// A number of characters as megabytes, as the language writes it.
pub fn megabytes(characters: usize, language: &str) -> String {
    // Two decimals are enough to see a book come or go.
    let rounded = js_sys::Number::from((characters as f64 / 1e4).round() / 1e2);
    let shown: String = rounded.to_locale_string(language).into();
    format!("{shown}\u{a0}MB")
}
