//! The old side's measures: folded away, and taken over to the new side where they serve as well.

use crate::desk::{use_desk, use_slice, use_tongue};
use crate::state::{Action, State, more_of};
use crate::widgets::{Icon, icon};
use crate::words::{self, conversion as said};
use buildbook::{Change, Edit, Key};
use yew::prelude::*;

/// The props of [`Old`].
#[derive(Properties, PartialEq)]
pub struct OldProps {
    /// The list whose one row holds the old side's entries.
    pub list: &'static str,
    /// Whether they are shown.
    pub open: bool,
    /// The entries.
    pub children: Html,
}

/// The old side's entries behind a key.
#[component]
pub fn Old(props: &OldProps) -> Html {
    let (desk, tongue) = (use_desk(), use_tongue());
    let (list, open) = (props.list, props.open);
    let at = more_of(&Key::from(list).under("1"));
    let press = Callback::from(move |_: MouseEvent| {
        if let Some(desk) = &desk {
            desk.send(Action::Fold(at.clone()));
        }
    });
    html! {
        <section class="group">
            <button type="button" class="key quiet tall more" data-do={format!("old {list}")}
                aria-expanded={if open { "true" } else { "false" }} onclick={press}>
                { icon(if open { Icon::Open } else { Icon::Close }) }
                { words::group(list, tongue) }
            </button>
            if open { { props.children.clone() } }
        </section>
    }
}

/// The props of [`TakeOver`].
#[derive(Properties, PartialEq)]
pub struct TakeOverProps {
    /// The old side's list.
    pub from: &'static str,
    /// The new side's.
    pub to: &'static str,
}

/// What is not taken over: it has to be looked at on the new side.
const LOOKED_AT: &[&str] = &["arm_swings", "side"];

/// The edit that fills what is blank on the new side with the old side's entries.
fn taking_over(state: &State, from: &str, to: &str) -> Edit {
    let (from, to) = (Key::from(from).under("1"), Key::from(to).under("1"));
    let below = state.book.below(&from);
    let changes = below
        .filter(|(key, _)| !LOOKED_AT.contains(&key.field()))
        .filter_map(|(key, entry)| {
            let key = to.under(key.field());
            let blank = state
                .book
                .entry(key.as_str())
                .is_none_or(buildbook::Entry::is_blank);
            blank.then(|| Change {
                old: state.book.entry(key.as_str()).cloned(),
                key,
                new: Some(entry.clone()),
            })
        });
    Edit(changes.collect())
}

/// The key that takes the old side's measures over, where there is anything to take.
#[component]
pub fn TakeOver(props: &TakeOverProps) -> Html {
    let (from, to) = (props.from, props.to);
    let there =
        use_slice(move |state| !state.read_only && !taking_over(state, from, to).0.is_empty())
            .unwrap_or(false);
    let (desk, tongue) = (use_desk(), use_tongue());
    let press = Callback::from(move |_: MouseEvent| {
        if let Some(desk) = &desk {
            let edit = taking_over(&desk.state(), from, to);
            desk.send(Action::Change(edit));
        }
    });
    html! {
        if there {
            <div class="keys parts">
                <button type="button" class="key quiet tall" data-do={format!("take-over {to}")} onclick={press}>
                    { icon(Icon::Copy) }{ tongue.say(said::TAKE_OVER) }
                </button>
                if to == "conversion/now" { <p class="muted">{ tongue.say(said::TAKE_OVER_SAID) }</p> }
            </div>
        }
    }
}
