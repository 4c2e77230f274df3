//! The table by gear: speeds, hills and top speed of each.

use crate::desk::{use_settings, use_slice};
use crate::state::State;
use crate::widgets::ResultFigure;
use crate::words::{self, filled, gearing};
use buildbook::sheets::gearing::GearFound;
use yew::prelude::*;

/// The columns: a result of each gear, and the words at its head.
const COLUMNS: [(&str, words::Phrase); 5] = [
    ("per_1000", gearing::PER_1000_HEAD),
    ("speed", gearing::SPEED_HEAD),
    ("revs", gearing::REVS_HEAD),
    ("top", gearing::TOP_HEAD),
    ("hill", gearing::HILL_HEAD),
];

fn gears(state: &State) -> Vec<(GearFound, String)> {
    let tongue = state.settings.tongue;
    let named = |gear: &GearFound| {
        let row = words::row_name(&state.book, &"gearing/gears".into(), &gear.id, tongue);
        if gear.overdrive {
            filled(tongue.say(gearing::WITH_OVERDRIVE), &[row])
        } else {
            row
        }
    };
    state
        .findings
        .gearing
        .gears
        .iter()
        .map(|gear| (gear.clone(), named(gear)))
        .collect()
}

/// Every gear's figures, a row a gear.
#[component]
pub fn GearTable() -> Html {
    let gears = use_slice(gears).unwrap_or_default();
    let tongue = use_settings().tongue;
    let head = COLUMNS
        .iter()
        .map(|(_, said)| html! { <th scope="col">{ tongue.say(*said) }</th> });
    let rows = gears.iter().map(|(gear, name)| {
        let cells = COLUMNS.iter().map(|(what, _)| {
            html! { <td><ResultFigure id={AttrValue::from(gear.result(what))} /></td> }
        });
        html! { <tr key={gear.result("row")}><th scope="row" class="nowrap">{ name }</th>{ cells.collect::<Html>() }</tr> }
    });
    if gears.is_empty() {
        return html! { <p class="muted">{ tongue.say(gearing::GEARS_FIRST) }</p> };
    }
    html! {
        <div class="table-hold" tabindex="0" role="group" aria-label={tongue.say(gearing::WIDE_TABLE)}>
            <table class="table" data-table="gearing/by_gear">
                <thead><tr><th scope="col">{ tongue.say(gearing::GEARS) }</th>{ head.collect::<Html>() }</tr></thead>
                <tbody>{ rows.collect::<Html>() }</tbody>
            </table>
        </div>
    }
}
