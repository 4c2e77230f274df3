//! One of several words, as keys side by side: a choice is a press, never a list that unfolds.

use crate::desk::{use_desk, use_settings, use_slice};
use crate::state::Action;
use crate::words;
use buildbook::{Entry, Key, field_of};
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;
use yew::prelude::*;

/// The keys of a choice.
#[derive(Properties, PartialEq)]
pub struct ChoicesProps {
    /// The entry's key.
    pub at: AttrValue,
    /// What can be chosen, by the names it is kept under.
    pub choices: &'static [&'static str],
}

/// What stands in the book, and what is assumed while nothing does.
fn chosen(state: &crate::state::State, key: &Key) -> (Option<String>, bool) {
    if let Some(entry) = state.book.entry(key.as_str()) {
        return (Some(entry.text.trim().to_owned()), false);
    }
    let assumed = field_of(key).and_then(|field| field.assumed_in(state.book.defaults_version()));
    (assumed.map(str::to_owned), true)
}

/// The word for a choice; yes and no are the frame's.
fn word(key: &Key, choice: &str, tongue: words::Tongue) -> String {
    match choice {
        "yes" => tongue.say(words::frame::YES).to_owned(),
        "no" => tongue.say(words::frame::NO).to_owned(),
        other => words::choice(key.as_str(), other, tongue),
    }
}

/// Keys for a choice: arrows move along, a press chooses, a press on the chosen one takes it back.
#[component]
pub fn Choices(props: &ChoicesProps) -> Html {
    let key = Key::from(&*props.at);
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let (now, assumed) = {
        let key = key.clone();
        use_slice(move |state| chosen(state, &key)).unwrap_or_default()
    };
    let first = props.choices.first().copied().unwrap_or_default();
    let at_hand = now.clone().unwrap_or_else(|| first.to_owned());
    let put = {
        let key = key.clone();
        let now = now.clone();
        Callback::from(move |choice: &'static str| {
            let Some(desk) = &desk else { return };
            let taken_back = !assumed && now.as_deref() == Some(choice);
            desk.send(Action::Put(
                key.clone(),
                (!taken_back).then(|| Entry::new(choice)),
            ));
        })
    };
    let choices = props.choices.iter().map(|choice| {
        let choice: &'static str = choice;
        let checked = now.as_deref() == Some(choice);
        let put = put.clone();
        html! {
            <button key={choice} type="button" role="radio" data-choice={choice}
                class={classes!("choice", (checked && assumed).then_some("assumed"))}
                aria-checked={if checked { "true" } else { "false" }}
                tabindex={if at_hand == choice { "0" } else { "-1" }}
                onclick={Callback::from(move |_| put.emit(choice))}>
                { word(&key, choice, tongue) }
            </button>
        }
    });
    html! {
        <>
            <div class="choices" role="radiogroup" data-key={props.at.clone()}
                aria-labelledby={format!("{}-label", super::entry_row::id_of(&key))} onkeydown={along()}>
                { choices.collect::<Html>() }
            </div>
            if assumed && now.is_some() {
                <span class="tag">{ tongue.say(words::frame::ASSUMED) }</span>
            }
        </>
    }
}

/// The keys of a choice among the rows of a list.
#[derive(Properties, PartialEq)]
pub struct RowChoicesProps {
    /// The entry's key.
    pub at: AttrValue,
    /// The list whose rows can be chosen.
    pub list: &'static str,
}

/// What a choice among rows shows.
#[derive(Clone, Default, PartialEq)]
struct RowsToChoose {
    rows: Vec<(std::rc::Rc<str>, String)>,
    chosen: Option<String>,
    add: String,
}

fn rows_to_choose(state: &crate::state::State, key: &Key, list: &str) -> RowsToChoose {
    let tongue = state.settings.tongue;
    let at = Key::from(list);
    let name = |id: &std::rc::Rc<str>| words::row_name(&state.book, &at, id, tongue);
    let one = words::list_words(list).map_or("", |words| tongue.say(words.one));
    RowsToChoose {
        rows: state
            .book
            .rows(&at)
            .iter()
            .map(|id| (std::rc::Rc::clone(id), name(id)))
            .collect(),
        chosen: state
            .book
            .entry(key.as_str())
            .map(|entry| entry.text.trim().to_owned()),
        add: words::filled(tongue.say(words::frame::ADD_ONE), &[one.to_owned()]),
    }
}

/// Keys for the rows of a list: a press chooses, a press on the chosen one takes it back; the last key makes a new row and
/// chooses it.
#[component]
pub fn RowChoices(props: &RowChoicesProps) -> Html {
    let key = Key::from(&*props.at);
    let desk = use_desk();
    let shown = {
        let (key, list) = (key.clone(), props.list);
        use_slice(move |state| rows_to_choose(state, &key, list)).unwrap_or_default()
    };
    let put = {
        let (desk, key, chosen) = (desk.clone(), key.clone(), shown.chosen.clone());
        Callback::from(move |id: std::rc::Rc<str>| {
            let Some(desk) = &desk else { return };
            let taken_back = chosen.as_deref() == Some(&*id);
            desk.send(Action::Put(
                key.clone(),
                (!taken_back).then(|| Entry::new(&*id)),
            ));
        })
    };
    let add = {
        let (key, list) = (key.clone(), props.list);
        Callback::from(move |_: MouseEvent| {
            let Some(desk) = &desk else { return };
            let state = desk.state();
            let (id, mut edit) =
                state
                    .book
                    .adding_row(&Key::from(list), buildbook::Place::Last, &state.log, &[]);
            edit.0
                .extend(state.book.setting(key.clone(), Some(Entry::new(&*id))).0);
            desk.send(Action::Change(edit));
        })
    };
    let keys = shown.rows.iter().enumerate().map(|(place, (id, name))| {
        let checked = shown.chosen.as_deref() == Some(&**id);
        let (put, to) = (put.clone(), std::rc::Rc::clone(id));
        let at_hand = checked || (shown.chosen.is_none() && place == 0);
        html! {
            <button key={id.to_string()} type="button" role="radio" class="choice" data-choice={id.to_string()}
                aria-checked={if checked { "true" } else { "false" }} tabindex={if at_hand { "0" } else { "-1" }}
                onclick={Callback::from(move |_| put.emit(std::rc::Rc::clone(&to)))}>{ name }</button>
        }
    });
    html! {
        <div class="choices" role="radiogroup" data-key={props.at.clone()}
            aria-labelledby={format!("{}-label", super::entry_row::id_of(&key))} onkeydown={along()}>
            { keys.collect::<Html>() }
            <button type="button" class="choice" data-do={format!("new {key}")} onclick={add}>{ &shown.add }</button>
        </div>
    }
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
