//! Hire a template or measure it oneself: the questions that costs answers, begun with what is known here.

use crate::desk::{use_desk, use_tongue};
use crate::state::{Action, CallTo, State};
use crate::words::{Phrase, marking as said};
use buildbook::{Entry, Key, Place};
use std::rc::Rc;
use yew::prelude::*;

/// The keys that bring the questions to costs.
#[component]
pub fn AskCosts() -> Html {
    let (desk, tongue) = (use_desk(), use_tongue());
    let key = |list: &'static str, phrase: Phrase| {
        let desk = desk.clone();
        let press = Callback::from(move |_: MouseEvent| {
            if let Some(desk) = &desk {
                asked(&desk.state(), list)
                    .into_iter()
                    .for_each(|action| desk.send(action));
            }
        });
        html! { <button type="button" class="key tall" data-do={format!("ask {list}")} onclick={press}>{ tongue.say(phrase) }</button> }
    };
    html! {
        <div class="list-keys">
            { key("costs/send", said::ASK_SEND) }
            { key("costs/hire", said::ASK_HIRE) }
        </div>
    }
}

/// A row in costs for the question, begun with its name and how many features there are; and the way to it. A question that was
/// asked before is gone to, not asked twice.
fn asked(state: &State, list: &str) -> Vec<Action> {
    let tongue = state.settings.tongue;
    let named = if list == "costs/send" {
        said::SETTING_OUT
    } else {
        said::TEMPLATE
    };
    let what = tongue.say(named);
    let list = Key::from(list);
    let known = |id: &&Rc<str>| {
        let entry = state.book.entry(list.under(id).under("what").as_str());
        entry.is_some_and(|entry| &*entry.text == what)
    };
    let rows = state.book.rows(&list);
    if let Some(id) = rows.iter().find(known) {
        return vec![Action::Call(CallTo::Row(list.under(id)))];
    }
    // Both follow this sheet from then on: how many features there are, and what a template costs.
    let mut with = vec![
        ("what", Entry::new(what)),
        ("follows", Entry::new("marking")),
    ];
    if list.field() == "send" {
        // The hire is paid once; the hours at home go by the feature.
        with.extend(["send_each", "here_each"].map(|field| (field, Entry::new("0"))));
    }
    let (id, edit) = state.book.adding_row(&list, Place::Last, &state.log, &with);
    vec![
        Action::Change(edit),
        Action::Call(CallTo::Row(list.under(&id))),
    ]
}
