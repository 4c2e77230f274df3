//! A column, or several, pasted into a list: shown before it is taken, with what cannot be read marked.

use crate::desk::{use_desk, use_settings};
use crate::shown::reading_of;
use crate::state::{Action, State};
use crate::words::{self, filled, frame};
use buildbook::{Field, Form, Key, Spec, row_of};
use yew::prelude::*;

/// The most rows that one paste adds.
const MOST: usize = 400;

/// The props of [`Paste`].
#[derive(Properties, PartialEq)]
pub struct PasteProps {
    /// The list.
    pub list: AttrValue,
    /// Called when the rows are in.
    pub done: Callback<()>,
}

/// One row of what was pasted: for each field its text.
type PastedRow = Vec<(&'static str, String)>;

/// Lines into rows: columns parted by tabs or semicolons, in the order of the row's fields. Blank lines are left out.
pub fn rows_of(text: &str, spec: &'static Spec) -> Vec<PastedRow> {
    let fields: Vec<&'static str> = spec
        .items
        .iter()
        .filter(|item| item.field.is_some())
        .map(|item| item.name)
        .collect();
    lines(text)
        .take(MOST)
        .map(|line| {
            let cells = line.split(['\t', ';']).map(|cell| cell.trim().to_owned());
            fields
                .iter()
                .copied()
                .zip(cells)
                .filter(|(_, cell)| !cell.is_empty())
                .collect()
        })
        .collect()
}

fn lines(text: &str) -> impl Iterator<Item = &str> {
    text.lines().filter(|line| !line.trim().is_empty())
}

/// Whether a cell can be read by its field.
fn legible(state: &State, list: &Key, field: &'static Field, text: &str) -> bool {
    let key = list.under("0").under(field.name);
    match field.form {
        Form::Number(_) => reading_of(field, &state.entry_of(&key, text)).is_some(),
        Form::Choice(choices) => choices.contains(&text),
        _ => true,
    }
}

/// Where a column is pasted, what it will become, and the key that takes it.
#[component]
pub fn Paste(props: &PasteProps) -> Html {
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let pasted = use_state(String::new);
    let list = Key::from(&*props.list);
    let (Some(desk), Some(spec)) = (desk, row_of(&list)) else {
        return html! {};
    };
    let rows = rows_of(&pasted, spec);
    let state = desk.state();
    let preview = rows.iter().map(|row| {
        let cells = row.iter().map(|(name, text)| {
            let sound = spec
                .item(name)
                .and_then(|item| item.field)
                .is_some_and(|f| legible(&state, &list, f, text));
            html! {
                <td class="num">
                    { text }
                    if !sound { <span class="held">{ " " }{ tongue.say(frame::PASTE_BAD) }</span> }
                </td>
            }
        });
        html! { <tr>{ cells.collect::<Html>() }</tr> }
    });
    let heads = spec.items.iter().filter(|item| item.field.is_some()).map(|item| {
        html! { <th scope="col">{ words::label(list.under("0").under(item.name).as_str(), tongue) }</th> }
    });
    let input = {
        let pasted = pasted.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(area) = event.target_dyn_into::<web_sys::HtmlTextAreaElement>() {
                pasted.set(area.value());
            }
        })
    };
    let take = {
        let (rows, list, done) = (rows.clone(), list.clone(), props.done.clone());
        Callback::from(move |_: MouseEvent| {
            desk.send(Action::AddRows(list.clone(), rows.clone()));
            done.emit(());
        })
    };
    let left = lines(&pasted).count().saturating_sub(MOST);
    let said = match rows.len() {
        1 => tongue.say(frame::PASTE_TAKE_ONE).to_owned(),
        count => filled(tongue.say(frame::PASTE_TAKE), &[count.to_string()]),
    };
    html! {
        <div class="paste">
            <label>
                { tongue.say(frame::PASTE_SAID) }
                <textarea data-do={format!("column {list}")} value={(*pasted).clone()} oninput={input} />
            </label>
            if !rows.is_empty() {
                <div class="table-hold" tabindex="0">
                    <table class="table"><thead><tr>{ heads.collect::<Html>() }</tr></thead><tbody>{ preview.collect::<Html>() }</tbody></table>
                </div>
                if left > 0 {
                    <p class="error" role="status">{ filled(tongue.say(frame::PASTE_LEFT), &[MOST.to_string(), left.to_string()]) }</p>
                }
                <button type="button" class="key main tall" data-do={format!("take {list}")} onclick={take}>{ said }</button>
            }
        </div>
    }
}
