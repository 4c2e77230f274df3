//! Files: a text handed to the user to keep, and a text read from a file of the user's choice. Nothing leaves the browser.

use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, HtmlInputElement, Url};

/// Hands a text to the user as a file. `false` where the browser will not.
pub fn save(name: &str, kind: &str, text: &str) -> bool {
    offered(name, kind, text).is_some()
}

fn offered(name: &str, kind: &str, text: &str) -> Option<()> {
    let parts = js_sys::Array::of1(&JsValue::from_str(text));
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let blob = Blob::new_with_str_sequence_and_options(&parts, &options).ok()?;
    let address = Url::create_object_url_with_blob(&blob).ok()?;
    let document = crate::browser::document()?;
    let anchor: HtmlAnchorElement = document.create_element("a").ok()?.dyn_into().ok()?;
    anchor.set_href(&address);
    anchor.set_download(name);
    anchor.click();
    // The browser has taken hold of the text by the time the press is over.
    let _ = Url::revoke_object_url(&address);
    Some(())
}

/// The file that was chosen in a field, if any.
pub fn chosen(field: &HtmlInputElement) -> Option<File> {
    field.files()?.get(0)
}

/// Reads a file as text and then calls `heard`; `None` where it cannot be read.
pub fn read(file: File, heard: impl FnOnce(Option<String>) + 'static) {
    spawn_local(async move {
        let text = JsFuture::from(file.text()).await.ok();
        heard(text.and_then(|text| text.as_string()));
    });
}
