//! Links as addresses: this page's own address with a book or a sheet in its fragment, which no server is sent.

use crate::route::{Route, WHOLE_BOOK};
use buildbook::link::{link_of_book, link_of_sheet};
use buildbook::{Book, Findings};

/// The address that opens this page on a book, or on one sheet of it.
pub fn address(book: &Book, what: &str, findings: &Findings) -> String {
    let payload = if what == WHOLE_BOOK {
        link_of_book(book)
    } else {
        link_of_sheet(book, what, findings)
    };
    format!("{}{}", here(), Route::Link(payload).fragment())
}

/// This page's address without its fragment.
fn here() -> String {
    let address = web_sys::window().and_then(|window| window.location().href().ok());
    let address = address.unwrap_or_default();
    address.split('#').next().unwrap_or_default().to_owned()
}
