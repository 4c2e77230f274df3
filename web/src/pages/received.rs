//! A link that was received: only shown, until a copy is kept or a value is taken into a book of one's own.

use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::route::Route;
use crate::settings::Settings;
use crate::shown::{entry_said, written};
use crate::state::Action;
use crate::storage::keeper;
use crate::words::{self, Tongue, books, filled, frame};
use buildbook::link::{Received, received};
use buildbook::store::ROUGH;
use buildbook::{
    Book, BookError, Differing, Edit, Entry, Findings, Key, RANK, SHEETS, UNITS_KEY, evaluate,
    example, field_of, frozen_key,
};
use std::rc::Rc;
use yew::prelude::*;

/// The props of [`ReceivedLink`].
#[derive(Properties, PartialEq)]
pub struct ReceivedLinkProps {
    /// What follows `#/link/` in the address.
    pub payload: String,
}

/// The page of a received link.
#[component]
pub fn ReceivedLink(props: &ReceivedLinkProps) -> Html {
    let tongue = use_settings().tongue;
    let read = use_memo(props.payload.clone(), |payload| received(payload));
    match &*read {
        Ok(received) => {
            html! { <Shown key={props.payload.as_str()} received={Rc::new(received.clone())} /> }
        }
        Err(error) => refused(error, tongue),
    }
}

fn refused(error: &BookError, tongue: Tongue) -> Html {
    html! {
        <main id="page" class="plain" data-page="link">
            <h1 class="ruled" tabindex="-1">{ tongue.say(frame::RECEIVED) }</h1>
            <p class="error" role="alert" data-fault="link">{ books::not_opened(error, tongue) }</p>
            <p><a class="key main" href={Route::Questions.fragment()} data-do="questions">{ tongue.say(books::OWN_BOOKS) }</a></p>
        </main>
    }
}

#[derive(Properties, PartialEq)]
struct ShownProps {
    received: Rc<Received>,
}

fn name_of(received: &Received, tongue: Tongue) -> String {
    let name = received.book.name();
    let name = if name.is_empty() {
        tongue.say(books::NO_NAME)
    } else {
        name
    };
    let sheet = received.sheet.as_deref().and_then(words::subject);
    match sheet {
        Some(words) => filled(
            tongue.say(books::RECEIVED_SHEET),
            &[name.to_owned(), tongue.say(words.name).to_owned()],
        ),
        None => filled(tongue.say(books::RECEIVED_BOOK), &[name.to_owned()]),
    }
}

/// What was received, and what can be done with it.
#[component]
fn Shown(props: &ShownProps) -> Html {
    let mut settings = Settings::clone(&use_settings());
    let tongue = settings.tongue;
    let received = Rc::clone(&props.received);
    // A book is shown in its own units; whoever has others may look at it in theirs.
    let mine = use_state(|| false);
    settings.open(&received.book);
    let others = settings.units != settings.usual;
    if *mine {
        settings.units = settings.usual;
    }
    let fault = use_state(|| None::<BookError>);
    let findings = use_memo(Rc::as_ptr(&received) as usize, {
        let received = Rc::clone(&received);
        move |_| evaluate(&received.book, None)
    });
    let keep = {
        let (fault, received) = (fault.clone(), Rc::clone(&received));
        Callback::from(move |_: MouseEvent| {
            let kept = keeper()
                .ok_or(BookError::Off)
                .and_then(|keeper| keeper.take_in(&received.book));
            if kept.is_ok() {
                let route = received
                    .sheet
                    .as_deref()
                    .map_or(Route::Questions, Route::of_key);
                crate::route::go(&route);
            }
            fault.set(kept.err());
        })
    };
    html! {
        <main id="page" class="plain" data-page="link">
            <h1 class="ruled" tabindex="-1">{ name_of(&received, tongue) }</h1>
            <p class="muted">{ tongue.say(books::ONLY_SHOWN) }</p>
            if let Some(error) = &*fault {
                <p class="error" role="alert">{ books::not_kept(error, tongue) }</p>
            }
            <div class="book-keys">
                <button type="button" class="key main" data-do="keep-copy" onclick={keep}>{ tongue.say(books::KEEP_COPY) }</button>
                <span class="muted">{ tongue.say(books::KEEP_SAID) }</span>
            </div>
            { figures(&received, &findings, &settings, others.then(|| units(&mine, &settings))) }
            <Against received={Rc::clone(&received)} />
            { all_entries(&received.book, tongue) }
        </main>
    }
}

/// Which units the figures are shown in, and the key that shows the others.
fn units(mine: &UseStateHandle<bool>, settings: &Settings) -> Html {
    let tongue = settings.tongue;
    let (said, key) = if **mine {
        (books::IN_OWN_UNITS, books::SHOW_IN_BOOKS)
    } else {
        (books::IN_BOOKS_UNITS, books::SHOW_IN_OWN)
    };
    let family = words::choice(UNITS_KEY, settings.value("book-units"), tongue);
    let press = {
        let mine = mine.clone();
        Callback::from(move |_: MouseEvent| mine.set(!*mine))
    };
    html! {
        <div class="book-keys">
            <span class="muted">{ filled(tongue.say(said), &[family]) }</span>
            <button type="button" class="key" data-do="other-units" onclick={press}>{ tongue.say(key) }</button>
        </div>
    }
}

/// The main results of what was sent, reckoned here; and what the sender saw where that is not the same.
fn figures(
    received: &Received,
    findings: &Findings,
    settings: &Settings,
    units: Option<Html>,
) -> Html {
    let (tongue, manner) = (settings.tongue, settings.manner());
    let sheets = SHEETS
        .into_iter()
        .filter(|sheet| received.sheet.as_deref().is_none_or(|sent| sent == *sheet));
    let rows = sheets.filter_map(|sheet| findings.found(sheet)).flat_map(|found| {
        found.headlines.iter().filter_map(|id| {
            let told = words::result(&received.book, id, tongue);
            let amount = || {
                let amount = found.money(id)?.as_ref().ok()?;
                Some((amount.money.shown(manner.mark, amount.money.currency()), None))
            };
            let figure = || {
                let figure = found.figure(id)?;
                let sent = received.headlines.iter().find(|headline| headline.id == *id);
                let differs = sent.filter(|sent| (sent.value - figure.value()).abs() > 1e-5 * figure.value().abs());
                let as_sent = differs.map(|sent| crate::shown::plain(sent.value, figure.kind(), &manner));
                Some((written(figure, &manner).whole(), as_sent))
            };
            let (shown, as_sent) = figure().or_else(amount)?;
            Some(html! {
                <tr key={id.to_string()}>
                    <th scope="row">{ told }</th>
                    <td data-sent={id.to_string()}>{ shown }{ as_sent.map(|sent| html! { <p class="error">{ filled(tongue.say(books::AS_SENT), &[sent]) }</p> }) }</td>
                </tr>
            })
        })
    });
    let mut rows = rows.peekable();
    if rows.peek().is_none() {
        return html! {};
    }
    html! {
        <section class="book-more">
            <h2 class="ruled">{ tongue.say(books::FIGURES) }</h2>
            { units }
            <table class="values"><tbody>{ rows.collect::<Html>() }</tbody></table>
        </section>
    }
}

/// What an entry is called, whichever sheet it is of.
fn entry_called(book: &Book, key: &Key, tongue: Tongue) -> String {
    if let Some(kept) = frozen_key(key) {
        return format!(
            "{}: {}",
            tongue.say(books::BEFORE_OF),
            entry_called(book, &kept, tongue)
        );
    }
    if key.field() == RANK {
        let mut names = words::row_names(book, key, tongue);
        names.push(tongue.say(books::PLACE).to_owned());
        return names.join(": ");
    }
    if key.sheet() == "book" {
        return match key.field() {
            "name" => tongue.say(books::NAME).to_owned(),
            "currency" => tongue.say(frame::CURRENCY).to_owned(),
            "units" => tongue.say(frame::UNITS).to_owned(),
            _ => key.field().to_owned(),
        };
    }
    let name = words::entry_name(book, key, tongue);
    if field_of(key).is_some() {
        name
    } else {
        format!("{}: {name}", tongue.say(books::UNKNOWN))
    }
}

fn all_entries(book: &Book, tongue: Tongue) -> Html {
    let sheets = SHEETS
        .into_iter()
        .filter(|sheet| !book.sheet(sheet).is_empty())
        .map(|sheet| {
            let entries = book.sheet(sheet);
            let rows = entries.iter().filter(|(key, _)| key.field() != RANK).map(|(key, entry)| {
            html! {
                <tr key={key.to_string()}>
                    <th scope="row">{ entry_called(book, key, tongue) }</th>
                    <td data-received={key.to_string()}>{ entry_said(book, key, entry, tongue) }</td>
                </tr>
            }
        });
            let name = words::subject(sheet).map_or(sheet, |words| tongue.say(words.name));
            html! {
                <details class="card received" key={sheet} data-sheet={sheet}>
                    <summary>{ name }</summary>
                    <table class="values"><tbody>{ rows.collect::<Html>() }</tbody></table>
                </details>
            }
        });
    html! {
        <section class="book-more">
            <h2 class="ruled">{ tongue.say(books::ALL_ENTRIES) }</h2>
            { sheets.collect::<Html>() }
        </section>
    }
}

/// What differs from the receiver's own book of the same identity, to be taken value by value.
#[component]
fn Against(props: &ShownProps) -> Html {
    let tongue = use_settings().tongue;
    let (received, desk) = (Rc::clone(&props.received), use_desk());
    let mine = use_slice(|state| (Rc::clone(&state.book), state.read_only));
    let (Some((mine, read_only)), Some(desk)) = (mine, desk) else {
        return html! {};
    };
    let id = received.book.id();
    // Every browser has a rough book and an example under the same identity: those are not the same book.
    if [ROUGH, example::ID].contains(&&**id) {
        return html! {};
    }
    let inner = if mine.id() == id {
        differences(&received, &mine, (!read_only).then_some(desk), tongue)
    } else if keeper().is_some_and(|keeper| keeper.has(id)) {
        let id = Rc::clone(id);
        let open = Callback::from(move |_: MouseEvent| {
            if let Some(keeper) = keeper() {
                // Where it cannot be opened, the page stays as it is and nothing is compared.
                let _ = keeper.open(&id);
            }
        });
        html! { <button type="button" class="key" data-do="open-mine" onclick={open}>{ tongue.say(books::OPEN_MINE) }</button> }
    } else {
        return html! {};
    };
    html! {
        <section class="book-more" data-against="">
            <h2 class="ruled">{ tongue.say(books::DIFFERENCE) }</h2>
            { inner }
        </section>
    }
}

fn differences(received: &Received, mine: &Book, desk: Option<Desk>, tongue: Tongue) -> Html {
    let all = received.differences(mine);
    if all.is_empty() {
        return html! { <p data-same="">{ tongue.say(books::SAME) }</p> };
    }
    let take = |edit: Edit| {
        let desk = desk.clone();
        Callback::from(move |_: MouseEvent| {
            if let Some(desk) = &desk {
                desk.send(Action::Change(edit.clone()));
            }
        })
    };
    let rows = all.iter().map(|one| {
        let said = |book: &Book, entry: &Option<Entry>| entry.as_ref().map_or_else(|| tongue.say(books::NOTHING).to_owned(), |entry| entry_said(book, &one.key, entry, tongue));
        let shown = if one.theirs.is_some() { &received.book } else { mine };
        html! {
            <tr key={one.key.to_string()} data-differs={one.key.to_string()}>
                <th scope="row">{ entry_called(shown, &one.key, tongue) }{ one.same_value.then(|| html! { <small class="muted">{ " " }{ tongue.say(books::SAME_VALUE) }</small> }) }</th>
                <td>{ said(mine, &one.mine) }</td>
                <td>{ said(&received.book, &one.theirs) }</td>
                <td>
                    if desk.is_some() {
                        <button type="button" class="key" data-do={format!("take {}", one.key)} onclick={take(Edit(vec![one.taking_theirs()]))}>{ tongue.say(books::TAKE) }</button>
                    }
                </td>
            </tr>
        }
    });
    let whole = Edit(all.iter().map(Differing::taking_theirs).collect());
    html! {
        <>
            <table class="values">
                <thead><tr>
                    <th scope="col">{ tongue.say(books::ENTRY) }</th>
                    <th scope="col">{ tongue.say(books::MINE) }</th>
                    <th scope="col">{ tongue.say(books::THEIRS) }</th>
                    <td></td>
                </tr></thead>
                <tbody>{ rows.collect::<Html>() }</tbody>
            </table>
            if desk.is_some() && all.len() > 1 {
                <button type="button" class="key take-all" data-do="take-all" onclick={take(whole)}>{ filled(tongue.say(books::TAKE_ALL), &[all.len().to_string()]) }</button>
            }
        </>
    }
}
