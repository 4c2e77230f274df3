//! Where do the holes go?

mod costs;
mod making;
mod placing;
mod tables;
mod templates;

use crate::drawings::Plate;
use crate::drawings::marking::PATTERN;
use crate::widgets::{BeforeNowTable, EntryList, EntryRow, Group, ResultTable, SheetPage};
use costs::AskCosts;
use making::{OldHoles, Schedule};
use placing::PLACING;
pub use tables::readings;
use tables::{Readings, Strike};
use templates::Templates;
use yew::prelude::*;

const ANSWERS: &[&str] = &["marking/arc_a/*", "marking/arc_b/*"];
const PLATES: &[&Plate] = &[&PATTERN];
const RESULTS: &[&str] = &["marking/centre", "marking/pair/*", "marking/edge/*"];

const DATUMS: &[&str] = &[
    "seen_from",
    "ab",
    "ac",
    "bc",
    "c_side",
    "ad",
    "bd",
    "d_side",
    "cd",
    "taken_with",
];
const ABOUT: &[&str] = &[
    "a_is",
    "b_is",
    "c_is",
    "d_is",
    "datum_diameter",
    "taken",
    "panel_radius",
];
const MOVE: &[&str] = &["move_by", "shift_along", "shift_across"];
const NEW: &[&str] = &["new_ab", "new_ac", "new_bc", "new_ad", "new_bd", "new_cd"];
const METAL: &[&str] = &["land", "sheet", "weld_gap", "saw_kerf", "pilot", "drilling"];
const TEMPLATE: &[&str] = &[
    "template_for",
    "template_seen",
    "goes_on",
    "overlap",
    "bar_along",
    "bar_up",
    "cutter_kerf",
];

/// The marking-out sheet.
#[component]
pub fn Marking() -> Html {
    let below = html! {
        <>
            <Strike />
            <Readings />
            <Schedule />
            <Templates />
            <OldHoles />
            <Group id="marking/results" card={false}><ResultTable sheet="marking" results={RESULTS} /></Group>
            <AskCosts />
            <BeforeNowTable sheet="marking" />
        </>
    };
    html! {
        <SheetPage sheet="marking" answers={ANSWERS} plates={PLATES} {below}>
            <Group id="marking/datums">{ rows(DATUMS) }</Group>
            <Group id="marking/features" card={false}>
                <EntryList list="marking/features" placing={&PLACING} titled={false} />
            </Group>
            <Group id="marking/move">{ rows(MOVE) }</Group>
            <Group id="marking/new_side">{ rows(NEW) }</Group>
            <Group id="marking/pairs" card={false}>
                <EntryList list="marking/pairs" placing={&PLACING} titled={false} />
            </Group>
            <Group id="marking/there" card={false}>
                <EntryList list="marking/there" placing={&PLACING} titled={false} />
            </Group>
            <Group id="marking/metal">{ rows(METAL) }</Group>
            <Group id="marking/about">{ rows(ABOUT) }</Group>
            <Group id="marking/template">{ rows(TEMPLATE) }</Group>
        </SheetPage>
    }
}

fn rows(fields: &'static [&'static str]) -> Html {
    fields
        .iter()
        .map(|field| html! { <EntryRow key={*field} at={format!("marking/{field}")} /> })
        .collect()
}
