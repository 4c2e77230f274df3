//! The build books of this browser: open, begin, rename, copy, delete and bring back, in and out as files, and the room left.

use crate::browser;
use crate::desk::{use_settings, use_slice};
use crate::route::Route;
use crate::storage::{Keeper, keeper};
use crate::words::{Phrase, Tongue, books, filled, frame};
use buildbook::BookError;
use buildbook::store::{Listed, ROUGH, SetAside, Shelved, WhyAside};
use std::rc::Rc;
use yew::prelude::*;

/// What a page asks of the keeper, and what it says where that fails.
type Deed = Rc<dyn Fn(&Rc<Keeper>) -> Result<(), BookError>>;

/// Tells the page why something was not done.
#[derive(Clone, PartialEq)]
struct Tell(Callback<Option<BookError>>);

impl Tell {
    /// A press that does a deed, then opens a page where one is named.
    fn press(
        &self,
        then: Option<Route>,
        deed: impl Fn(&Rc<Keeper>) -> Result<(), BookError> + 'static,
    ) -> Callback<MouseEvent> {
        let (tell, deed): (Self, Deed) = (self.clone(), Rc::new(deed));
        Callback::from(move |_| {
            let Some(keeper) = keeper() else { return };
            let done = deed(&keeper);
            if let (Ok(()), Some(route)) = (&done, &then) {
                crate::route::go(route);
            }
            tell.0.emit(done.err());
        })
    }
}

/// The page of all books.
#[component]
pub fn Books() -> Html {
    // The number changes whenever something happens to the books.
    let _ = use_slice(|state| (state.shelf, state.book.name().to_owned()));
    let open = use_slice(|state| Rc::clone(state.book.id())).unwrap_or_default();
    let tongue = use_settings().tongue;
    let fault = use_state(|| None::<BookError>);
    let tell = {
        let fault = fault.clone();
        Tell(Callback::from(move |error| fault.set(error)))
    };
    let shelved = keeper().map(|keeper| keeper.shelved());
    let shelved = match shelved {
        Some(Ok(shelved)) => shelved,
        _ => Shelved::default(),
    };
    // The rough book is always there, kept or not.
    let blank = Listed {
        id: ROUGH.into(),
        name: "".into(),
        saved_ms: 0.0,
        copied_ms: None,
        size: 0,
    };
    let rough = shelved.books.iter().find(|listed| &*listed.id == ROUGH);
    let rough = rough.or(Some(&blank)).into_iter();
    let named = shelved.books.iter().filter(|listed| &*listed.id != ROUGH);
    let cards = rough.chain(named).map(|listed| {
        html! { <BookCard key={listed.id.to_string()} listed={listed.clone()} open={listed.id == open} tell={tell.clone()} /> }
    });
    html! {
        <main id="page" class="plain" data-page="books">
            <h1 class="ruled" tabindex="-1">{ tongue.say(frame::BOOKS) }</h1>
            <p class="muted">{ tongue.say(books::SAID) }</p>
            if let Some(error) = &*fault {
                <p class="error" role="alert" data-fault="books">{ books::not_opened(error, tongue) }</p>
            }
            <Ways tell={tell.clone()} />
            <div class="book-list">{ cards.collect::<Html>() }</div>
            { deleted(&shelved.deleted, &tell, tongue) }
            { aside(&shelved.aside, &tell, tongue) }
            { room(&shelved, tongue) }
        </main>
    }
}

#[derive(Properties, PartialEq)]
struct WaysProps {
    tell: Tell,
}

/// New book, a file, the example.
#[component]
fn Ways(props: &WaysProps) -> Html {
    let tongue = use_settings().tongue;
    let name = use_state(String::new);
    let typed = {
        let name = name.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
                name.set(field.value());
            }
        })
    };
    let begin = {
        let name = name.clone();
        props.tell.press(Some(Route::Questions), move |keeper| {
            keeper.begin(name.trim())
        })
    };
    let chosen = {
        let tell = props.tell.clone();
        Callback::from(move |event: Event| {
            let Some(field) = event.target_dyn_into::<web_sys::HtmlInputElement>() else {
                return;
            };
            let tell = tell.clone();
            browser::file_bytes(&field, move |bytes| {
                let done = bytes.and_then(|bytes| keeper().ok_or(BookError::Off)?.import(&bytes));
                if done.is_ok() {
                    crate::route::go(&Route::Questions);
                }
                tell.0.emit(done.err());
            });
        })
    };
    let look = props
        .tell
        .press(Some(Route::Questions), |keeper| keeper.open_example());
    html! {
        <div class="book-ways card">
            <div class="new-book">
                <label class="unseen" for="new-book">{ tongue.say(books::NEW_NAME) }</label>
                <input id="new-book" class="field words" type="text" maxlength="120" autocomplete="off" placeholder={tongue.say(books::NEW_NAME)}
                    value={(*name).clone()} oninput={typed} data-key="new-book" />
                <button type="button" class="key main" data-do="new-book" onclick={begin}>{ tongue.say(books::BEGIN) }</button>
            </div>
            <div class="new-book">
                <label class="key" for="import">{ tongue.say(books::IMPORT) }</label>
                <input id="import" class="unseen" type="file" accept=".json,application/json" data-do="import" onchange={chosen} />
                <button type="button" class="key" data-do="example" onclick={look}>{ tongue.say(frame::EXAMPLE) }</button>
            </div>
            <p class="muted">{ tongue.say(books::IMPORT_SAID) }</p>
        </div>
    }
}

#[derive(Properties, PartialEq)]
struct BookCardProps {
    listed: Listed,
    open: bool,
    tell: Tell,
}

/// What a book is called in the list.
fn called(listed: &Listed, tongue: Tongue) -> String {
    match (&*listed.id, &*listed.name) {
        (ROUGH, _) => tongue.say(frame::ROUGH_BOOK).to_owned(),
        (_, "") => tongue.say(books::NO_NAME).to_owned(),
        (_, name) => name.to_owned(),
    }
}

/// Whether it was never kept, so that there is nothing of it to copy.
fn is_blank(listed: &Listed) -> bool {
    listed.saved_ms == 0.0
}

fn times(listed: &Listed, tongue: Tongue) -> String {
    if is_blank(listed) {
        return tongue.say(frame::ROUGH_SAID).to_owned();
    }
    let copied = match listed.copied_ms {
        Some(time) => filled(
            tongue.say(books::COPIED),
            &[browser::day_and_time(time, tongue.tag())],
        ),
        None => tongue.say(books::NEVER_COPIED).to_owned(),
    };
    let saved = filled(
        tongue.say(books::SAVED),
        &[browser::day_and_time(listed.saved_ms, tongue.tag())],
    );
    format!("{saved} · {copied}")
}

/// One book with its keys.
#[component]
fn BookCard(props: &BookCardProps) -> Html {
    let tongue = use_settings().tongue;
    let renaming = use_state(|| None::<String>);
    let (listed, tell) = (&props.listed, &props.tell);
    let (id, name) = (Rc::clone(&listed.id), called(listed, tongue));
    let rough = &*id == ROUGH;
    let key = |deed: &str, said: Phrase, main: bool, press: Callback<MouseEvent>| {
        let class = if main { "key main" } else { "key" };
        html! { <button type="button" {class} data-do={format!("{deed} {id}")} onclick={press}>{ tongue.say(said) }</button> }
    };
    let open = {
        let id = Rc::clone(&id);
        tell.press(Some(Route::Questions), move |keeper| keeper.open(&id))
    };
    let copy = {
        let (id, name) = (
            Rc::clone(&id),
            filled(tongue.say(books::COPY_OF), std::slice::from_ref(&name)),
        );
        tell.press(None, move |keeper| keeper.copy(&id, &name))
    };
    let file = {
        let id = Rc::clone(&id);
        tell.press(None, move |keeper| {
            keeper
                .file_copy(&id)
                .map(|(name, text)| browser::hand_out(&name, &text))
        })
    };
    let delete = {
        let id = Rc::clone(&id);
        tell.press(None, move |keeper| keeper.delete(&id))
    };
    let rename = {
        let (renaming, now) = (renaming.clone(), listed.name.to_string());
        Callback::from(move |_| {
            renaming.set(if renaming.is_some() {
                None
            } else {
                Some(now.clone())
            });
        })
    };
    html! {
        <section class="book-card card" data-book={id.to_string()} aria-current={props.open.then_some("true")}>
            <div>
                <h2>{ name }{ props.open.then(|| html! { <small class="muted">{ " · " }{ tongue.say(books::OPEN_NOW) }</small> }) }</h2>
                <p class="muted">{ times(listed, tongue) }</p>
            </div>
            <div class="book-keys">
                if !props.open { { key("open-book", books::OPEN, true, open) } }
                if !rough { { key("rename-book", books::RENAME, false, rename) } }
                if !is_blank(listed) {
                    { key("copy-book", books::COPY, false, copy) }
                    { key("file-copy", books::FILE_COPY, false, file) }
                }
                if !rough { { key("delete-book", books::DELETE, false, delete) } }
            </div>
            { (*renaming).clone().map(|name| html! { <Rename {id} {name} tell={tell.clone()} done={renaming.setter()} /> }).unwrap_or_default() }
        </section>
    }
}

#[derive(Properties, PartialEq)]
struct RenameProps {
    id: Rc<str>,
    name: String,
    tell: Tell,
    done: UseStateSetter<Option<String>>,
}

/// A field for another name.
#[component]
fn Rename(props: &RenameProps) -> Html {
    let tongue = use_settings().tongue;
    let name = use_state(|| props.name.clone());
    let typed = {
        let name = name.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
                name.set(field.value());
            }
        })
    };
    let take = {
        let (id, name, done) = (Rc::clone(&props.id), name.clone(), props.done.clone());
        props.tell.press(None, move |keeper| {
            done.set(None);
            keeper.rename(&id, name.trim())
        })
    };
    let field = format!("rename-{}", props.id);
    html! {
        <div class="new-book">
            <label class="unseen" for={field.clone()}>{ tongue.say(books::NAME) }</label>
            <input id={field} class="field words" type="text" maxlength="120" autocomplete="off" value={(*name).clone()} oninput={typed} data-key="book-name" />
            <button type="button" class="key main" data-do="take-name" onclick={take}>{ tongue.say(books::RENAME) }</button>
        </div>
    }
}

fn deleted(listed: &[Listed], tell: &Tell, tongue: Tongue) -> Html {
    if listed.is_empty() {
        return html! {};
    }
    let rows = listed.iter().map(|listed| {
        let id = Rc::clone(&listed.id);
        let back = tell.press(None, move |keeper| keeper.undelete(&id));
        html! {
            <li key={listed.id.to_string()}>
                <span>{ called(listed, tongue) }</span>
                <button type="button" class="key" data-do={format!("bring-back {}", listed.id)} onclick={back}>{ tongue.say(books::BRING_BACK) }</button>
            </li>
        }
    });
    html! {
        <section class="book-more">
            <h2 class="ruled">{ tongue.say(books::DELETED) }</h2>
            <p class="muted">{ tongue.say(books::DELETED_SAID) }</p>
            <ul>{ rows.collect::<Html>() }</ul>
        </section>
    }
}

fn aside(aside: &[SetAside], tell: &Tell, tongue: Tongue) -> Html {
    if aside.is_empty() {
        return html! {};
    }
    let rows = aside.iter().map(|one| {
        let said = if one.why == WhyAside::Newer { books::ASIDE_NEWER } else { books::ASIDE_DAMAGED };
        let (slot, gone) = (one.slot.clone(), one.slot.clone());
        let take = tell.press(None, move |keeper| {
            let text = keeper.aside_text(&slot)?;
            browser::hand_out(&format!("{}.txt", slot.replace('/', "-")), &text);
            Ok(())
        });
        let discard = tell.press(None, move |keeper| keeper.discard_aside(&gone));
        html! {
            <li key={one.slot.clone()} data-aside={one.slot.clone()}>
                <span>{ tongue.say(said) }</span>
                <button type="button" class="key" data-do={format!("take-file {}", one.slot)} onclick={take}>{ tongue.say(books::TAKE_FILE) }</button>
                <button type="button" class="key" data-do={format!("discard {}", one.slot)} onclick={discard}>{ tongue.say(books::REMOVE_FOR_GOOD) }</button>
            </li>
        }
    });
    html! {
        <section class="book-more">
            <h2 class="ruled">{ tongue.say(books::ASIDE) }</h2>
            <ul>{ rows.collect::<Html>() }</ul>
        </section>
    }
}

/// How much of the store is used.
fn room(shelved: &Shelved, tongue: Tongue) -> Html {
    let Some(capacity) = shelved.capacity() else {
        return html! {};
    };
    let used = shelved.used;
    let parts = [used, capacity].map(|characters| browser::megabytes(characters, tongue.tag()));
    html! {
        <section class="book-more">
            <h2 class="ruled">{ tongue.say(books::ROOM_LEFT) }</h2>
            <p data-room="">
                <progress max={capacity.to_string()} value={used.to_string()} aria-label={tongue.say(books::ROOM_LEFT)}></progress>
                { " " }{ filled(tongue.say(books::ROOM), &parts) }
            </p>
        </section>
    }
}
