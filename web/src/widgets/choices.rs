//! One of several words, as keys side by side: a choice is a press, never a list that unfolds.

use super::icon::{Icon, icon};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::shown;
use crate::state::{Action, State};
use crate::words;
use buildbook::{Entry, Form, Key, Place, field_of};
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;
use yew::prelude::*;

/// The keys of a choice.
#[derive(Properties, PartialEq)]
pub struct ChoicesProps {
    /// The entry's key.
    pub at: AttrValue,
}

/// What can be chosen: the name it is kept under and the word for it.
pub type Options = Vec<(Rc<str>, String)>;

/// What can be chosen for an entry; `None` where it is no choice.
pub fn options(state: &State, key: &Key) -> Option<Options> {
    let tongue = state.settings.tongue;
    match field_of(key)?.form {
        Form::Choice(choices) => Some(
            choices
                .iter()
                .map(|choice| {
                    (
                        Rc::from(*choice),
                        words::choice(key.as_str(), choice, tongue),
                    )
                })
                .collect(),
        ),
        Form::YesNo => Some(vec![
            ("yes".into(), tongue.say(words::frame::YES).to_owned()),
            ("no".into(), tongue.say(words::frame::NO).to_owned()),
        ]),
        Form::OneOf(list) => {
            let list = Key::from(list);
            let apart = words::row_apart(&list).map(|(id, _)| Rc::from(id));
            let rows = state.book.rows(&list);
            Some(
                apart
                    .into_iter()
                    .chain(rows)
                    .map(|id| {
                        (
                            Rc::clone(&id),
                            words::row_name(&state.book, &list, &id, tongue),
                        )
                    })
                    .collect(),
            )
        }
        _ => None,
    }
}

/// What the keys show of the state.
#[derive(Clone, PartialEq, Default)]
struct Slice {
    options: Options,
    chosen: Option<String>,
    assumed: bool,
    read_only: bool,
    /// Where the options are the rows of a list: the list, and what stands on the key that makes a new one.
    new: Option<(&'static str, String)>,
}

/// The list whose rows an entry chooses among, and the words for a new one.
fn new_row(state: &State, key: &Key) -> Option<(&'static str, String)> {
    let Form::OneOf(list) = field_of(key)?.form else {
        return None;
    };
    let tongue = state.settings.tongue;
    let one = words::list_words(list)
        .map_or("", |words| tongue.say(words.one))
        .to_owned();
    Some((
        list,
        words::filled(tongue.say(words::frame::ADD_ONE), &[one]),
    ))
}

/// What stands in the book, and what is assumed while nothing does.
fn slice(state: &State, key: &Key) -> Slice {
    let options = options(state, key).unwrap_or_default();
    let read_only = state.read_only;
    let new = new_row(state, key);
    if let Some(entry) = state.book.entry(key.as_str()) {
        return Slice {
            options,
            chosen: Some(entry.text.trim().to_owned()),
            assumed: false,
            read_only,
            new,
        };
    }
    let assumed = shown::assumed(state, key);
    Slice {
        options,
        chosen: assumed.map(str::to_owned),
        assumed: true,
        read_only,
        new,
    }
}

/// Keys for a choice: arrows move along, a press chooses, a press on the chosen one takes it back.
#[component]
pub fn Choices(props: &ChoicesProps) -> Html {
    let key = Key::from(&*props.at);
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let Slice {
        options,
        chosen: now,
        assumed,
        read_only,
        new,
    } = {
        let key = key.clone();
        use_slice(move |state| slice(state, &key)).unwrap_or_default()
    };
    let at_hand = now
        .clone()
        .filter(|now| options.iter().any(|(known, _)| **known == **now))
        .or_else(|| options.first().map(|(first, _)| first.to_string()));
    let put = {
        let (desk, key, now) = (desk.clone(), key.clone(), now.clone());
        Callback::from(move |choice: Rc<str>| {
            let Some(desk) = &desk else { return };
            let taken_back = !assumed && now.as_deref() == Some(&*choice);
            desk.send(Action::Put(
                key.clone(),
                (!taken_back).then(|| Entry::new(choice)),
            ));
        })
    };
    let add = new
        .filter(|_| !read_only)
        .map(|(list, said)| new_key(desk.as_ref(), &key, list, &said));
    let keys = options.iter().map(|(choice, word)| {
        let checked = now.as_deref() == Some(&**choice);
        let (put, chosen) = (put.clone(), Rc::clone(choice));
        html! {
            <button key={choice.to_string()} type="button" role="radio" data-choice={choice.to_string()}
                class={classes!("choice", (checked && assumed).then_some("assumed"))}
                aria-checked={if checked { "true" } else { "false" }} disabled={read_only && !checked}
                tabindex={if at_hand.as_deref() == Some(&**choice) { "0" } else { "-1" }}
                onclick={Callback::from(move |_| put.emit(Rc::clone(&chosen)))}>
                { word }
            </button>
        }
    });
    html! {
        <>
            <div class="choices" role="radiogroup" data-key={props.at.clone()}
                aria-labelledby={format!("{}-label", super::entry_row::id_of(&key))} onkeydown={along()}>
                { keys.collect::<Html>() }
                { add.unwrap_or_default() }
            </div>
            if assumed && now.is_some() {
                <span class="tag">{ tongue.say(words::frame::ASSUMED) }</span>
            }
        </>
    }
}

/// The key that makes a new row of the list and chooses it, in one edit.
fn new_key(desk: Option<&Desk>, key: &Key, list: &'static str, said: &str) -> Html {
    let (desk, to) = (desk.cloned(), key.clone());
    let add = Callback::from(move |_: MouseEvent| {
        let Some(desk) = &desk else { return };
        let state = desk.state();
        let (id, edit) = state
            .book
            .adding_row(&Key::from(list), Place::Last, &state.log, &[]);
        let chosen = state.book.setting(to.clone(), Some(Entry::new(id)));
        desk.send(Action::Change(edit.then(chosen)));
    });
    html! { <button type="button" class="key quiet" data-do={format!("new {key}")} onclick={add}>{ icon(Icon::Add) }{ said }</button> }
}

/// Arrow keys move the cursor along the choices.
fn along() -> Callback<KeyboardEvent> {
    Callback::from(|event: KeyboardEvent| {
        let forward = match event.key().as_str() {
            "ArrowRight" | "ArrowDown" => true,
            "ArrowLeft" | "ArrowUp" => false,
            _ => return,
        };
        event.prevent_default();
        let here = event.target_dyn_into::<HtmlElement>();
        let beside = here.and_then(|here| {
            if forward {
                here.next_element_sibling()
            } else {
                here.previous_element_sibling()
            }
        });
        if let Some(beside) = beside.and_then(|beside| beside.dyn_into::<HtmlElement>().ok()) {
            let _ = beside.focus();
        }
    })
}
