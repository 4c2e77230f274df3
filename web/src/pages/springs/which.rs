//! The springs side by side: which one is worked on, another one like it, the other side's, a new one.

use super::SPRINGS;
use crate::desk::{Desk, use_desk, use_slice, use_tongue};
use crate::drawings::springs::{chosen, opening, springs};
use crate::shown::written;
use crate::state::{Action, CallTo, State};
use crate::widgets::{Icon, icon};
use crate::words::{self, frame, springs as said};
use buildbook::{Change, Entry, Key};
use std::rc::Rc;
use yew::prelude::*;

#[derive(Clone, PartialEq)]
struct Tab {
    id: Rc<str>,
    name: String,
    height: Option<String>,
    chosen: bool,
}

#[derive(Clone, PartialEq, Default)]
struct Slice {
    tabs: Vec<Tab>,
    kept: bool,
    read_only: bool,
}

fn slice(state: &State) -> Slice {
    let list = Key::from(SPRINGS);
    let at = chosen(state);
    let tabs = springs(state).into_iter().map(|id| {
        let height = state.findings.result(&format!("springs/height/{id}"));
        Tab {
            name: words::row_name(&state.book, &list, &id, state.settings.tongue),
            height: height
                .and_then(|height| height.as_ref().ok())
                .map(|height| written(height, &state.settings.manner()).whole()),
            chosen: id == at,
            id,
        }
    });
    Slice {
        tabs: tabs.collect(),
        kept: state.book.below(&list).next().is_some(),
        read_only: state.read_only,
    }
}

/// The place on the other side of the same axle.
fn other_side(place: &str) -> Option<&'static str> {
    Some(match place {
        "front_left" => "front_right",
        "front_right" => "front_left",
        "rear_left" => "rear_right",
        "rear_right" => "rear_left",
        _ => return None,
    })
}

/// The spring of the other side: a copy of this one, put there. The press test and the load that was weighed stay behind.
fn copy_across(state: &State, id: &str) -> Vec<Action> {
    let list = Key::from(SPRINGS);
    let (new, mut edit) = state.book.copying_row(&list, id, &state.log);
    let row = list.under(&new);
    let (place, points, load) = (row.under("place"), row.under("points"), row.under("load"));
    let here = state.book.entry(list.under(id).under("place").as_str());
    let there = here.and_then(|here| other_side(here.text.trim()));
    edit.0.retain(|change| {
        change.key != place && change.key != load && !change.key.is_under(&points)
    });
    if let Some(there) = there {
        edit.0.push(Change {
            key: place,
            old: None,
            new: Some(Entry::new(there)),
        });
    }
    vec![Action::Change(edit), Action::Call(CallTo::Row(row))]
}

/// The keys of the springs.
#[component]
pub fn Which() -> Html {
    let found = use_slice(slice).unwrap_or_default();
    let (desk, tongue) = (use_desk(), use_tongue());
    let Some(desk) = desk else { return html! {} };
    let tabs = found.tabs.iter().map(|tab| tab_key(&desk, tab));
    let chosen = found
        .tabs
        .iter()
        .find(|tab| tab.chosen)
        .map(|tab| Rc::clone(&tab.id));
    let acts = chosen.filter(|_| !found.read_only).map(|id| {
        let row = Key::from(SPRINGS).under(&id);
        let across = key(
            &desk,
            format!("other-side {row}"),
            Icon::Copy,
            tongue.say(said::OTHER_SIDE),
            {
                let id = Rc::clone(&id);
                move |state| copy_across(state, &id)
            },
        );
        let add = key(
            &desk,
            format!("add {SPRINGS}"),
            Icon::Add,
            tongue.say(said::ADD_SPRING),
            |_| vec![Action::AddRow(Key::from(SPRINGS))],
        );
        let remove = key(
            &desk,
            format!("remove {row}"),
            Icon::Remove,
            tongue.say(frame::REMOVE),
            {
                let id = Rc::clone(&id);
                move |_| vec![Action::RemoveRow(Key::from(SPRINGS), Rc::clone(&id))]
            },
        );
        html! { <div class="keys list-keys">if found.kept { { across }{ add }{ remove } }</div> }
    });
    html! {
        <div class="group">
            <nav class="keys list-keys" aria-label={tongue.say(said::WHICH)}>{ tabs.collect::<Html>() }</nav>
            { acts.unwrap_or_default() }
        </div>
    }
}

fn tab_key(desk: &Desk, tab: &Tab) -> Html {
    let (desk, id) = (desk.clone(), Rc::clone(&tab.id));
    let open = Callback::from(move |_: MouseEvent| {
        let actions = opening(&desk.state(), &id);
        actions.into_iter().for_each(|action| desk.send(action));
    });
    html! {
        <button key={tab.id.to_string()} type="button" class="key tall" data-do={format!("spring {}", tab.id)}
            aria-pressed={if tab.chosen { "true" } else { "false" }} onclick={open}>
            { &tab.name }
            if let Some(height) = &tab.height { <span class="num">{ height }</span> }
        </button>
    }
}

fn key(
    desk: &Desk,
    name: String,
    picture: Icon,
    said: &'static str,
    act: impl Fn(&State) -> Vec<Action> + 'static,
) -> Html {
    let desk = desk.clone();
    let press = Callback::from(move |_: MouseEvent| {
        let actions = act(&desk.state());
        actions.into_iter().for_each(|action| desk.send(action));
    });
    html! { <button type="button" class="key quiet tall" data-do={name} onclick={press}>{ icon(picture) }{ said }</button> }
}
