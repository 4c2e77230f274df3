//! A list that begins with preset rows: a line a row, what was seen beside its name, the rest behind a press on the name.

use super::choices::Choices;
use super::entry_row::{EntryRow, id_of};
use super::icon::{Icon, icon};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::state::{Action, State};
use crate::words::{self, filled, frame};
use buildbook::{Key, preset_rows};
use yew::prelude::*;

/// A list that begins with preset rows, and what its lines show.
pub struct Presets {
    /// The list's path: `handover/checks`.
    pub list: &'static str,
    /// The choice that stands on the line; empty: none.
    pub lead: &'static str,
    /// The fields behind a press.
    pub more: &'static [&'static str],
    /// What stands below a row's name.
    pub said: fn(&State, &Key) -> Option<String>,
    /// Whether its rows are numbered, as they are in the drawing.
    pub numbered: bool,
}

impl PartialEq for Presets {
    fn eq(&self, other: &Self) -> bool {
        self.list == other.list
    }
}

/// The props of [`PresetList`].
#[derive(Properties, PartialEq)]
pub struct PresetListProps {
    /// The list.
    pub of: &'static Presets,
}

#[derive(Clone, PartialEq)]
struct Line {
    row: Key,
    name: String,
    said: Option<String>,
    open: bool,
    own: bool,
}

fn lines(state: &State, list: &Key, said: fn(&State, &Key) -> Option<String>) -> Vec<Line> {
    let preset = preset_rows(list);
    let line = |id: &str| {
        let row = list.under(id);
        Line {
            name: words::row_name(&state.book, list, id, state.settings.tongue),
            said: said(state, &row),
            open: state.is_open(&row),
            own: !preset.contains(&id),
            row,
        }
    };
    state.book.rows(list).iter().map(|id| line(id)).collect()
}

/// The list, with a key to add a row of one's own.
#[component]
pub fn PresetList(props: &PresetListProps) -> Html {
    let presets = props.of;
    let list = Key::from(presets.list);
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let read_only = use_slice(|state| state.read_only).unwrap_or(false);
    let lines = {
        let list = list.clone();
        use_slice(move |state| lines(state, &list, presets.said)).unwrap_or_default()
    };
    let Some(desk) = desk else { return html! {} };
    let shown = lines
        .iter()
        .enumerate()
        .map(|(at, line)| shown(at, line, presets, &desk));
    let one = words::list_words(presets.list).map_or("", |words| tongue.say(words.one));
    html! {
        <section class="list preset" data-list={presets.list}>
            <div class="rows">
                { shown.collect::<Html>() }
                if !read_only {
                    <div class="list-keys">
                        <button type="button" class="key tall" data-do={format!("add {list}")} onclick={send(&desk, Action::AddRow(list.clone()))}>
                            { icon(Icon::Add) }{ filled(tongue.say(frame::ADD_ONE), &[one.to_owned()]) }
                        </button>
                    </div>
                }
            </div>
        </section>
    }
}

fn send(desk: &Desk, action: Action) -> Callback<MouseEvent> {
    let desk = desk.clone();
    Callback::from(move |_| desk.send(action.clone()))
}

fn shown(at: usize, line: &Line, presets: &Presets, desk: &Desk) -> Html {
    let row = &line.row;
    let lead = row.under(presets.lead);
    let fields = line
        .own
        .then_some("name")
        .into_iter()
        .chain(presets.more.iter().copied());
    let fields =
        fields.map(|field| html! { <EntryRow key={field} at={row.under(field).to_string()} /> });
    let tongue = desk.state().settings.tongue;
    html! {
        <div key={row.to_string()} class="list-row" data-row={row.to_string()}>
            <div class="preset-line">
                <button type="button" class="fold" data-do={format!("fold {row}")} aria-expanded={if line.open { "true" } else { "false" }}
                    onclick={send(desk, Action::Fold(row.clone()))}>
                    { icon(if line.open { Icon::Open } else { Icon::Close }) }
                    if presets.numbered { <span class="preset-number">{ at + 1 }</span> }
                    <span class="preset-name">
                        <span id={format!("{}-label", id_of(&lead))}>{ &line.name }</span>
                        <small>{ line.said.clone().unwrap_or_default() }</small>
                    </span>
                </button>
                if !presets.lead.is_empty() { <Choices at={lead.to_string()} /> }
            </div>
            if line.open {
                <div class="list-body">
                    <div class="rows">{ fields.collect::<Html>() }</div>
                    if line.own {
                        <div class="row-keys"><button type="button" class="key quiet" data-do={format!("remove {row}")}
                            onclick={send(desk, Action::RemoveRow(Key::from(presets.list), row.field().into()))}>
                            { icon(Icon::Remove) }{ tongue.say(frame::REMOVE) }
                        </button></div>
                    }
                </div>
            }
        </div>
    }
}
