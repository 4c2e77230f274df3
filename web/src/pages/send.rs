//! A link to send: of one sheet or of the whole book, as text and as a QR code; and the file where a link is too long.

use crate::browser;
use crate::desk::{use_settings, use_slice};
use crate::drawings::qr_drawing;
use crate::link;
use crate::route::{Route, WHOLE_BOOK};
use crate::storage::keeper;
use crate::words::{self, Phrase, Tongue, books, filled, frame};
use buildbook::link::SAFE_LENGTH;
use buildbook::{Book, SHEETS, qr_code};
use std::rc::Rc;
use yew::prelude::*;

/// The props of [`Send`].
#[derive(Properties, PartialEq)]
pub struct SendProps {
    /// The sheet to send, or [`WHOLE_BOOK`].
    pub what: &'static str,
}

/// The page of a link to send.
#[component]
pub fn Send(props: &SendProps) -> Html {
    let what = props.what;
    let settings = use_settings();
    let tongue = settings.tongue;
    let known = use_slice(|state| (Rc::clone(&state.book), Rc::as_ptr(&state.findings)));
    let desk = crate::desk::use_desk();
    let (Some((book, _)), Some(desk)) = (known, desk) else {
        return html! {};
    };
    let carried = book.carrying(settings.value("book-units"));
    let address = link::address(&carried, what, &desk.state().findings);
    let copied = html! { <PassOn name={name_of(&book, what, tongue)} address={address.clone()} /> };
    let id = Rc::clone(book.id());
    let file = Callback::from(move |_: MouseEvent| {
        if let Some(Ok((name, text))) = keeper().map(|keeper| keeper.file_copy(&id)) {
            browser::hand_out(&name, &text);
        }
    });
    let long = address.len() > SAFE_LENGTH;
    html! {
        <main id="page" class="plain" data-page="send">
            <h1 class="ruled" tabindex="-1">{ tongue.say(frame::SEND) }</h1>
            { chooser(what, tongue) }
            <p class="muted">{ tongue.say(books::SEND_SAID) }</p>
            <div class="send card">
                <div class="send-link">
                    <label for="link-text">{ tongue.say(books::LINK) }</label>
                    <textarea id="link-text" class="field words" readonly=true rows="6" data-link="" value={address.clone()} />
                    <p class="muted">{ filled(tongue.say(books::LENGTH), &[address.len().to_string()]) }</p>
                    if long {
                        <p class="error" role="status" data-notice="long-link">{ filled(tongue.say(books::LONG), &[SAFE_LENGTH.to_string()]) }</p>
                    }
                    <div class="book-keys">
                        { copied }
                        <button type="button" class={if long { "key main" } else { "key" }} data-do="send-file" onclick={file}>{ tongue.say(books::FILE_COPY) }</button>
                    </div>
                </div>
                { code(&address, tongue) }
            </div>
        </main>
    }
}

/// The sheets, and the whole book, to choose from.
fn chooser(what: &'static str, tongue: Tongue) -> Html {
    let all = SHEETS.into_iter().chain([WHOLE_BOOK]).map(|one| {
        let name = match words::subject(one) {
            Some(words) => tongue.say(words.name),
            None => tongue.say(books::WHOLE_BOOK),
        };
        html! {
            <a key={one} class={if one == what { "key main" } else { "key" }} href={Route::Send(one).fragment()} data-do={format!("send {one}")}
                aria-current={(one == what).then_some("page")}>{ name }</a>
        }
    });
    html! { <nav class="send-choices" aria-label={tongue.say(books::SEND_WHAT)}>{ all.collect::<Html>() }</nav> }
}

fn code(address: &str, tongue: Tongue) -> Html {
    match qr_code(address) {
        Some(code) => html! {
            <figure class="qr">
                { qr_drawing(&code, tongue.say(books::QR)) }
                <figcaption class="muted">{ tongue.say(books::QR_SAID) }</figcaption>
            </figure>
        },
        None => html! { <p class="muted">{ tongue.say(books::NO_QR) }</p> },
    }
}

/// What is sent, by name: the book, and the sheet where it is one.
fn name_of(book: &Book, what: &'static str, tongue: Tongue) -> String {
    let sheet = words::subject(what).map(|words| tongue.say(words.name));
    let name = Some(book.name()).filter(|name| !name.is_empty());
    let parts = [Some(tongue.say(frame::RECKONER)), name, sheet];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

#[derive(Properties, PartialEq)]
struct PassOnProps {
    name: String,
    address: String,
}

/// Puts the link on the clipboard or hands it to another program, and says what came of it.
#[component]
fn PassOn(props: &PassOnProps) -> Html {
    let tongue = use_settings().tongue;
    let said = use_state(|| None::<Phrase>);
    let copy = {
        let (said, address) = (said.setter(), props.address.clone());
        Callback::from(move |_: MouseEvent| {
            let said = said.clone();
            browser::to_clipboard(&address, move |copied| {
                said.set(Some(if copied {
                    books::COPIED_LINK
                } else {
                    books::NOT_COPIED
                }));
            });
        })
    };
    let share = {
        let (said, name, address) = (said.setter(), props.name.clone(), props.address.clone());
        Callback::from(move |_: MouseEvent| {
            let said = said.clone();
            browser::share(&name, &address, move |shared| {
                said.set((!shared).then_some(books::NOT_SHARED));
            });
        })
    };
    html! {
        <>
            <button type="button" class="key main" data-do="copy-link" onclick={copy}>{ tongue.say(books::COPY_LINK) }</button>
            if browser::can_share() {
                <button type="button" class="key" data-do="share-link" onclick={share}>{ tongue.say(books::SHARE) }</button>
            }
            <span role="status">{ said.map(|said| tongue.say(said)).unwrap_or_default() }</span>
        </>
    }
}
