//! What changes sides with the driver: a list to work through, kept in the book.

use crate::desk::{use_desk, use_slice, use_tongue};
use crate::state::{Action, State, more_of};
use crate::widgets::{Choices, EntryList, EntryRow, Group, Icon, ResultFigure, icon, id_of};
use crate::words::{conversion as said, filled};
use buildbook::Key;
use buildbook::sheets::conversion::Standing;
use yew::prelude::*;

/// One thing as the page shows it.
#[derive(Clone, PartialEq)]
struct Thing {
    row: Key,
    name: String,
    standing: Standing,
    note: String,
    open: bool,
}

fn things(state: &State) -> Vec<Thing> {
    let changes = state.findings.conversion.changes.iter();
    let usual = changes.filter_map(|change| {
        let name = said::change_name(change.id(), state.settings.tongue)?;
        let on = change.on.as_ref().map(ToString::to_string);
        let note = [on.as_deref(), change.note.as_deref()];
        let note: Vec<&str> = note.into_iter().flatten().collect();
        Some(Thing {
            name: name.to_owned(),
            standing: change.standing,
            note: note.join(" · "),
            open: state.is_open(&more_of(&change.key)),
            row: change.key.clone(),
        })
    });
    usual.collect()
}

/// The list.
#[component]
pub fn Sides() -> Html {
    let things = use_slice(things).unwrap_or_default();
    let tongue = use_tongue();
    let only_open = use_state(|| false);
    let all = things.len();
    let shown: Vec<Thing> = things
        .into_iter()
        .filter(|thing| !*only_open || thing.standing == Standing::ToDo)
        .collect();
    let turn = {
        let only_open = only_open.clone();
        Callback::from(move |_: MouseEvent| only_open.set(!*only_open))
    };
    let filter = if *only_open {
        filled(tongue.say(said::SHOW_ALL), &[all.to_string()])
    } else {
        tongue.say(said::SHOW_OPEN).to_owned()
    };
    let rows = shown
        .into_iter()
        .map(|thing| html! { <ThingRow key={thing.row.to_string()} thing={thing.clone()} /> });
    html! {
        <>
            <Group id="conversion/changes" card={false}>
                <div class="keys parts">
                    <p>{ tongue.say(said::STILL_OPEN) }{ " " }<ResultFigure id="conversion/open" /></p>
                    <button type="button" class="key quiet tall" data-do="only-open" aria-pressed={if *only_open { "true" } else { "false" }}
                        onclick={turn}>{ filter }</button>
                </div>
                <div class="rows things">{ rows.collect::<Html>() }</div>
            </Group>
            <Group id="conversion/own" card={false}><EntryList list="conversion/others" titled={false} /></Group>
        </>
    }
}

#[derive(Properties, PartialEq)]
struct ThingProps {
    thing: Thing,
}

/// One thing: its name, its state, and behind a key its note and day.
#[component]
fn ThingRow(props: &ThingProps) -> Html {
    let (desk, tongue) = (use_desk(), use_tongue());
    let thing = &props.thing;
    let at = thing.row.under("state");
    let more = more_of(&thing.row);
    let press = Callback::from(move |_: MouseEvent| {
        if let Some(desk) = &desk {
            desk.send(Action::Fold(more.clone()));
        }
    });
    let standing = match thing.standing {
        Standing::ToDo => "open",
        Standing::Done => "done",
        Standing::DoesNotApply => "none",
    };
    html! {
        <div class="thing" data-thing={standing}>
            <div class="row wide">
                <span class="row-label" id={format!("{}-label", id_of(&at))}>
                    { &thing.name }
                    if !thing.note.is_empty() && !thing.open { <small>{ &thing.note }</small> }
                </span>
                <div class="row-value">
                    <Choices at={at.to_string()} />
                    <button type="button" class="key quiet more" data-do={format!("note {}", thing.row)}
                        aria-expanded={if thing.open { "true" } else { "false" }} onclick={press}>
                        { icon(if thing.open { Icon::Open } else { Icon::Close }) }{ tongue.say(said::NOTE) }
                    </button>
                </div>
            </div>
            if thing.open {
                <EntryRow at={thing.row.under("note").to_string()} />
                <EntryRow at={thing.row.under("on").to_string()} />
            }
        </div>
    }
}
