//! A list of rows: each row under a heading that shows its own result when folded; short rows on one line.

use super::entry_row::EntryRow;
use super::icon::{Icon, icon};
use super::paste::Paste;
use super::placing::{Placing, Spot};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::shown::{answer_of, is_money};
use crate::state::{Action, State, more_of};
use crate::words::{self, Phrase, Tongue, filled, frame};
use buildbook::{Field, Form, Key, Spec, row_of};
use std::cell::Cell;
use std::rc::Rc;
use yew::prelude::*;

/// A repeat of Add or Remove within this time is a trembling hand, not a wish.
const TREMBLE: f64 = 250.0;

/// The props of [`EntryList`].
#[derive(Properties, PartialEq)]
pub struct EntryListProps {
    /// The list's path: `gearing/gears`.
    pub list: AttrValue,
    /// The result a row shows: its id without the row's own, `gearing/speed_per_1000` for `gearing/speed_per_1000/3`.
    #[prop_or_default]
    pub found: AttrValue,
    /// A remark of the page's own on keys that a row has besides the usual ones: see [`RowKey`].
    #[prop_or_default]
    pub keys: &'static [RowKey],
    /// Which fields its rows show, and where: see [`Placing`]. Without it, all of them.
    #[prop_or_default]
    pub placing: Option<&'static Placing>,
    /// Whether the list shows its heading.
    #[prop_or(true)]
    pub titled: bool,
}

/// A key that a subject adds to the rows of a list: `Other side`, `Opening`.
pub struct RowKey {
    /// Its name for tests: `data-do="other-side springs/springs/1"`.
    pub name: &'static str,
    /// What stands on it.
    pub said: Phrase,
    /// What it does: the action for a row.
    pub act: fn(&State, &Key, &str) -> Option<Action>,
}

impl PartialEq for RowKey {
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name
    }
}

/// A list of rows, with keys to add one, to paste a column, and for each row to copy, move and remove it.
#[component]
pub fn EntryList(props: &EntryListProps) -> Html {
    let list = Key::from(&*props.list);
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let rows = {
        let list = list.clone();
        use_slice(move |state| state.book.rows(&list)).unwrap_or_default()
    };
    let read_only = use_slice(|state| state.read_only).unwrap_or(false);
    let pasting = use_state(|| false);
    let calm = use_calm();
    let Some(spec) = row_of(&list) else {
        return html! {};
    };
    let words = words::list_words(&props.list);
    let short = is_short(spec);
    let count = rows.len();
    let shown = rows.into_iter().enumerate().map(|(at, id)| {
        html! {
            <ListRow key={id.to_string()} list={props.list.clone()} id={AttrValue::from(id.to_string())}
                found={props.found.clone()} placing={props.placing} keys={props.keys} {short} first={at == 0} last={at + 1 == count} />
        }
    });
    let add = {
        let list = list.clone();
        Callback::from(move |_: MouseEvent| {
            if let (Some(desk), true) = (&desk, calm()) {
                desk.send(Action::AddRow(list.clone()));
            }
        })
    };
    let paste = {
        let pasting = pasting.clone();
        Callback::from(move |_: MouseEvent| pasting.set(!*pasting))
    };
    let one = words.map_or("", |w| tongue.say(w.one)).to_owned();
    html! {
        <section class="list" data-list={props.list.clone()}>
            if props.titled {
                <h3 class="list-title">{ words.map_or("", |w| tongue.say(w.title)) }</h3>
            }
            <div class="rows">
                { shown.collect::<Html>() }
                if !read_only {
                    <div class="list-keys">
                        <button type="button" class="key tall" data-do={format!("add {list}")} onclick={add}>
                            { icon(Icon::Add) }{ filled(tongue.say(frame::ADD_ONE), &[one]) }
                        </button>
                        <button type="button" class="key quiet tall" data-do={format!("paste {list}")}
                            aria-expanded={if *pasting { "true" } else { "false" }} onclick={paste}>
                            { icon(Icon::Paste) }{ tongue.say(frame::PASTE_COLUMN) }
                        </button>
                    </div>
                }
                if *pasting { <Paste list={props.list.clone()} done={{ let p = pasting.clone(); Callback::from(move |()| p.set(false)) }} /> }
            </div>
        </section>
    }
}

/// Whether a row is so short that it stands on one line: one or two fields, neither a choice nor a list.
fn is_short(spec: &Spec) -> bool {
    let plain = |field: &Field| {
        matches!(
            field.form,
            Form::Number(_) | Form::Money(_) | Form::Decimal(_)
        )
    };
    spec.items.len() <= 2 && spec.items.iter().all(|item| item.field.is_some_and(plain))
}

/// Tells whether enough time has passed since the last press.
#[hook]
fn use_calm() -> Rc<dyn Fn() -> bool> {
    let last = use_memo((), |()| Cell::new(f64::NEG_INFINITY));
    Rc::new(move || {
        let now = js_sys::Date::now();
        let calm = now - last.get() >= TREMBLE;
        if calm {
            last.set(now);
        }
        calm
    })
}

#[derive(Properties, PartialEq)]
struct ListRowProps {
    list: AttrValue,
    id: AttrValue,
    found: AttrValue,
    placing: Option<&'static Placing>,
    keys: &'static [RowKey],
    short: bool,
    first: bool,
    last: bool,
}

#[derive(Clone, PartialEq, Default)]
struct RowSlice {
    name: String,
    found: Option<String>,
    result: Option<String>,
    folded: bool,
    more: bool,
    spots: Vec<Spot>,
    keys: bool,
    read_only: bool,
}

fn row_slice(
    state: &State,
    list: &Key,
    id: &str,
    found: &str,
    placing: Option<&'static Placing>,
) -> RowSlice {
    let row = list.under(id);
    let own = placing.and_then(|placing| (placing.found)(&row));
    let result = own.or_else(|| (!found.is_empty()).then(|| format!("{found}/{id}")));
    let items = row_of(list).map_or(&[] as &[_], |spec| spec.items);
    let spot = |name: &str| placing.map_or(Spot::Open, |placing| (placing.spot)(state, &row, name));
    let spots = items.iter().map(|item| spot(item.name)).collect();
    let written = result.as_ref().and_then(|result| {
        let written = answer_of(state, result)?.ok()?;
        // That money is exact goes without saying in a row.
        let exact = is_money(state, result);
        Some(if exact {
            written.value
        } else {
            written.whole()
        })
    });
    RowSlice {
        name: words::row_name(&state.book, list, id, state.settings.tongue),
        found: written,
        result,
        folded: !state.is_open(&row),
        more: state.is_open(&more_of(&row)),
        spots,
        keys: state.view.row_keys.as_ref() == Some(&row),
        read_only: state.read_only,
    }
}

/// One row of a list.
#[component]
fn ListRow(props: &ListRowProps) -> Html {
    let list = Key::from(&*props.list);
    let row = list.under(&props.id);
    let found = {
        let (list, id, found) = (list.clone(), props.id.clone(), props.found.clone());
        let placing = props.placing;
        use_slice(move |state| row_slice(state, &list, &id, &found, placing)).unwrap_or_default()
    };
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let (Some(desk), Some(spec)) = (desk, row_of(&list)) else {
        return html! {};
    };
    let result = found.result.clone();
    let number = found
        .found
        .as_ref()
        .map(|said| html! { <span class="num found" data-result={result}>{ said }</span> })
        .unwrap_or_default();
    let dots = if found.read_only {
        html! {}
    } else {
        dots(&desk, &row, found.keys, &found.name, tongue)
    };
    let keys = html! {
        if found.keys {
            <RowKeys list={props.list.clone()} id={props.id.clone()} keys={props.keys} first={props.first} last={props.last} />
        }
    };
    if props.short {
        return html! {
            <div class="list-row" data-row={row.to_string()}>
                <div class={classes!("line", (spec.items.len() == 1).then_some("lone"))}>
                    <span class="line-name">{ &found.name }</span>
                    { fields(&row, at_spot(spec, &found.spots, Spot::Open, false)) }{ number }{ dots }
                </div>
                { keys }
            </div>
        };
    }
    html! {
        <div class="list-row" data-row={row.to_string()}>
            <div class="list-head">{ fold(&desk, &row, &found, number) }{ dots }</div>
            { keys }
            if !found.folded {
                <div class="list-body">
                    <div class="rows">{ fields(&row, at_spot(spec, &found.spots, Spot::Open, false)) }</div>
                    { inner_lists(&row, props.placing, at_spot(spec, &found.spots, Spot::Open, true)) }
                    if found.spots.contains(&Spot::More) {
                        { more_key(&desk, &row, found.more, tongue) }
                        if found.more {
                            <div class="rows">{ fields(&row, at_spot(spec, &found.spots, Spot::More, false)) }</div>
                            { inner_lists(&row, props.placing, at_spot(spec, &found.spots, Spot::More, true)) }
                        }
                    }
                </div>
            }
        </div>
    }
}

/// The row's heading: a press folds it up or opens it.
fn fold(desk: &Desk, row: &Key, found: &RowSlice, number: Html) -> Html {
    let (desk, at) = (desk.clone(), row.clone());
    html! {
        <button type="button" class="fold" data-do={format!("fold {row}")}
            aria-expanded={if found.folded { "false" } else { "true" }}
            onclick={Callback::from(move |_| desk.send(Action::Fold(at.clone())))}>
            { icon(if found.folded { Icon::Close } else { Icon::Open }) }
            <span class="name">{ &found.name }</span>
            { number }
        </button>
    }
}

/// The key that brings a row's keys.
fn dots(desk: &Desk, row: &Key, shown: bool, name: &str, tongue: Tongue) -> Html {
    let (desk, at) = (desk.clone(), row.clone());
    html! {
        <button type="button" class="dots" data-do={format!("keys {row}")}
            aria-label={format!("{} {name}", tongue.say(frame::ROW_KEYS))}
            aria-expanded={if shown { "true" } else { "false" }}
            onclick={Callback::from(move |_| desk.send(Action::RowKeys(at.clone())))}>
            { icon(Icon::More) }
        </button>
    }
}

/// The fields or the lists of a row that stand at a spot.
fn at_spot<'a>(
    spec: &'static Spec,
    spots: &'a [Spot],
    wanted: Spot,
    lists: bool,
) -> impl Iterator<Item = &'static str> + 'a {
    let items = spec.items.iter().zip(spots);
    items
        .filter(move |(item, spot)| item.row.is_some() == lists && **spot == wanted)
        .map(|(item, _)| item.name)
}

fn fields(row: &Key, names: impl Iterator<Item = &'static str>) -> Html {
    names
        .map(|name| html! { <EntryRow key={name} at={AttrValue::from(row.under(name).to_string())} /> })
        .collect()
}

fn inner_lists(
    row: &Key,
    placing: Option<&'static Placing>,
    names: impl Iterator<Item = &'static str>,
) -> Html {
    let list = |name: &'static str| AttrValue::from(row.under(name).to_string());
    names
        .map(|name| html! { <EntryList key={name} list={list(name)} {placing} /> })
        .collect()
}

/// The key that shows or hides the entries that are seldom needed.
fn more_key(desk: &Desk, row: &Key, open: bool, tongue: Tongue) -> Html {
    let (desk, at) = (desk.clone(), more_of(row));
    let said = if open { frame::LESS } else { frame::MORE };
    html! {
        <button type="button" class="key quiet more" data-do={format!("more {row}")}
            aria-expanded={if open { "true" } else { "false" }}
            onclick={Callback::from(move |_| desk.send(Action::Fold(at.clone())))}>
            { icon(if open { Icon::Open } else { Icon::Close }) }{ tongue.say(said) }
        </button>
    }
}

#[derive(Properties, PartialEq)]
struct RowKeysProps {
    list: AttrValue,
    id: AttrValue,
    keys: &'static [RowKey],
    first: bool,
    last: bool,
}

/// Same again, Up, Down, Remove, and what the subject adds.
#[component]
fn RowKeys(props: &RowKeysProps) -> Html {
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let calm = use_calm();
    let Some(desk) = desk else { return html! {} };
    let list = Key::from(&*props.list);
    let row = list.under(&props.id);
    let id: Rc<str> = (&*props.id).into();
    let key = |name: &str, said: &'static str, picture: Icon, action: Action| {
        let (desk, calm) = (desk.clone(), Rc::clone(&calm));
        html! {
            <button type="button" class="key quiet" data-do={format!("{name} {row}")}
                onclick={Callback::from(move |_| if calm() { desk.send(action.clone()); })}>
                { icon(picture) }{ said }
            </button>
        }
    };
    let own = props.keys.iter().map(|own| {
        let (desk, list, id) = (desk.clone(), list.clone(), props.id.clone());
        let (calm, act) = (Rc::clone(&calm), own.act);
        html! {
            <button key={own.name} type="button" class="key quiet" data-do={format!("{} {row}", own.name)}
                onclick={Callback::from(move |_| {
                    if let (true, Some(action)) = (calm(), act(&desk.state(), &list, &id)) { desk.send(action); }
                })}>
                { tongue.say(own.said) }
            </button>
        }
    });
    html! {
        <div class="row-keys">
            { key("same", tongue.say(frame::SAME_AGAIN), Icon::Copy, Action::CopyRow(list.clone(), Rc::clone(&id))) }
            { own.collect::<Html>() }
            if !props.first { { key("up", tongue.say(frame::MOVE_UP), Icon::Up, Action::MoveRow(list.clone(), Rc::clone(&id), true)) } }
            if !props.last { { key("down", tongue.say(frame::MOVE_DOWN), Icon::Down, Action::MoveRow(list.clone(), Rc::clone(&id), false)) } }
            { key("remove", tongue.say(frame::REMOVE), Icon::Remove, Action::RemoveRow(list.clone(), Rc::clone(&id))) }
        </div>
    }
}
