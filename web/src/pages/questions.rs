//! The front page: what do you need to know? Each question opens its sheet; what is known already stands on it.

use crate::desk::{use_desk, use_settings, use_slice};
use crate::route::Route;
use crate::shown::answer_of;
use crate::state::{Action, CallTo, Saved, State};
use crate::storage::keeper;
use crate::widgets::{Icon, OfflineReady, icon, motif, standing};
use crate::words::{self, filled, frame};
use buildbook::store::ROUGH;
use buildbook::{Entry, Key, NAME_KEY, SHEETS, State as Standing};
use yew::prelude::*;

#[derive(Clone, PartialEq)]
struct Asked {
    sheet: &'static str,
    standing: Standing,
    known: Option<(String, String)>,
}

/// How each sheet stands, with its first headline where that is known.
fn asked(state: &State) -> Vec<Asked> {
    let all = SHEETS.into_iter().filter_map(|sheet| {
        let found = state.findings.found(sheet)?;
        let known = found.begun.then(|| {
            found.headlines.iter().find_map(|id| {
                let written = answer_of(state, id)?.ok()?;
                let told = words::result(&state.book, id, state.settings.tongue);
                Some((written.shortly(), told))
            })
        });
        Some(Asked {
            sheet,
            standing: found.state(),
            known: known.flatten(),
        })
    });
    all.collect()
}

/// The front page.
#[component]
pub fn Questions() -> Html {
    let questions = use_slice(asked).unwrap_or_default();
    let tongue = use_settings().tongue;
    let keys = questions.iter().filter_map(|asked| {
        let words = words::subject(asked.sheet)?;
        Some(html! {
            <a key={asked.sheet} class="question" href={Route::of_key(asked.sheet).fragment()} data-do={format!("open {}", asked.sheet)}>
                <span class="asks">{ tongue.say(words.asks) }</span>
                <span class="known">
                    if let Some((figure, told)) = &asked.known {
                        <small>{ told }</small>{ figure }
                    } else {
                        <small class="tells">{ tongue.say(words.tells) }</small>
                    }
                </span>
                { motif(asked.sheet) }
                <span class="sheet-name"><span>{ tongue.say(words.name) }</span>{ standing(asked.standing, tongue) }</span>
            </a>
        })
    });
    html! {
        <main id="page" class="front" data-page="questions">
            <div class="front-head">
                <h1 class="ruled" tabindex="-1">{ tongue.say(frame::WHAT_TO_KNOW) }</h1>
                <BookName />
            </div>
            <nav class="questions" aria-label={tongue.say(frame::ALL_SHEETS)}>{ keys.collect::<Html>() }<Foot /></nav>
        </main>
    }
}

/// The open book's name, which is entered here, and when it was kept.
#[component]
fn BookName() -> Html {
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let (name, saved) =
        use_slice(|state| (state.book.name().to_owned(), state.saved.clone())).unwrap_or_default();
    let input = Callback::from(move |event: InputEvent| {
        if let (Some(desk), Some(field)) =
            (&desk, event.target_dyn_into::<web_sys::HtmlInputElement>())
        {
            desk.send(Action::Put(
                Key::from(NAME_KEY),
                Some(Entry::new(field.value())),
            ));
        }
    });
    html! {
        <div class="front-book">
            <label class="unseen" for="book-name">{ tongue.say(frame::NAME_IT) }</label>
            <input id="book-name" class="field words name" type="text" maxlength="120" autocomplete="off" data-key={NAME_KEY}
                value={name} placeholder={tongue.say(frame::ROUGH_BOOK)} oninput={input} />
            <span class="muted saved" data-saved="">{ saved_said(&saved, tongue) }</span>
        </div>
    }
}

fn saved_said(saved: &Saved, tongue: words::Tongue) -> String {
    match saved {
        Saved::At(time) => filled(tongue.say(frame::SAVED_AT), &[time.to_string()]),
        Saved::Pending => tongue.say(frame::NOT_SAVED).to_owned(),
        Saved::Untouched | Saved::Fault(_) => String::new(),
    }
}

/// Build books, and the example to look at.
#[component]
fn Foot() -> Html {
    let tongue = use_settings().tongue;
    let (begun, named) = use_slice(|state| {
        let found = |sheet| state.findings.found(sheet);
        let mut all = SHEETS.into_iter().filter_map(found);
        let begun = all.any(|found| found.state() != Standing::Empty);
        (begun, &**state.book.id() != ROUGH)
    })
    .unwrap_or_default();
    let said = match (begun, named) {
        (false, _) => frame::EXAMPLE_SAID,
        (true, true) => frame::BOOK_SAID,
        (true, false) => frame::ROUGH_SAID,
    };
    let desk = use_desk();
    let look = Callback::from(move |_: MouseEvent| {
        // A store that is switched off says so in the notice above; there is nothing to add here.
        let opened = keeper().is_some_and(|keeper| keeper.open_example().is_ok());
        // The key stands at the foot of the page: another book is read from its top.
        if let Some(desk) = desk.as_ref().filter(|_| opened) {
            desk.send(Action::Call(CallTo::Heading));
        }
    });
    html! {
        <div class="front-foot">
            <p>{ tongue.say(said) }</p>
            <OfflineReady />
            if !begun {
                <button type="button" class="key tall main" data-do="example" onclick={look}>{ tongue.say(frame::EXAMPLE) }</button>
            }
            <a class="key tall" href={Route::Books.fragment()} data-do="books">{ icon(Icon::Books) }{ tongue.say(frame::BOOKS) }</a>
        </div>
    }
}
