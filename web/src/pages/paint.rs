//! How many litres?

mod rows;
mod tables;

use self::rows::PLACING;
use self::tables::{BuyingTable, ClockTable, LayerTable, MixingTables};
use crate::desk::use_slice;
use crate::drawings::Plate;
use crate::drawings::paint::{ELEVATIONS, FILMS};
use crate::state::State;
use crate::widgets::{BeforeNowTable, EntryList, EntryRow, Group, ResultTable, SheetPage};
use yew::prelude::*;

const ANSWERS: &[&str] = &[
    "paint/litres",
    "paint/area",
    "paint/system_litres/*",
    "paint/layer_litres/*/*",
];
const PLATES: &[&Plate] = &[&ELEVATIONS, &FILMS];
const STOCK: &[&str] = &[
    "paint/stock_coats/*/*",
    "paint/stock_film/*/*",
    "paint/dew_point",
    "paint/least_metal",
    "paint/air_load",
    "paint/air_time",
];
/// What stands side by side, before and now.
pub const COMPARED: &[&str] = &[
    "paint/litres",
    "paint/area",
    "paint/layer_litres/*/*",
    "paint/whole_film/*/*",
    "paint/product_litres/*",
];

const BODY: &[&str] = &["body_length", "body_width", "body_height"];
const BODY_MORE: &[&str] = &["body_share", "body_edges"];
const GUN: &[&str] = &["gun", "transfer", "cup", "left_in_cup", "reserve", "flow"];
const DAY: &[&str] = &["temperature", "humidity", "metal", "reference", "slower"];
const AIR: &[&str] = &[
    "gun_air",
    "free_air",
    "swept",
    "efficiency",
    "receiver",
    "cut_out",
    "least_air",
];
const MONEY: &[&str] = &["quote", "sundries", "hours", "hour_rate"];

fn rows(names: &[&'static str]) -> Html {
    let row = |name: &&'static str| html! { <EntryRow key={*name} at={format!("paint/{name}")} /> };
    names.iter().map(row).collect()
}

/// What the groups of the page depend on.
fn circumstances(state: &State) -> (bool, bool) {
    let sheet = &state.findings.paint.sheet;
    let from_vehicle =
        sheet.body_height.is_blank() && state.findings.vehicle.sheet.height.value().is_some();
    (from_vehicle, sheet.systems.len() > 1)
}

/// The paint sheet.
#[component]
pub fn Paint() -> Html {
    let (from_vehicle, systems) = use_slice(circumstances).unwrap_or_default();
    html! {
        <SheetPage sheet="paint" answers={ANSWERS} plates={PLATES} below={below()}>
            <Group id="paint/body">
                { rows(BODY) }
                if from_vehicle { { rows(&["sill"]) } }
                { rows(BODY_MORE) }
                if systems { { rows(&["body_system"]) } }
            </Group>
            <Group id="paint/systems" card={false}>
                <EntryList list="paint/systems" placing={&PLACING} titled={false} />
            </Group>
            <Group id="paint/panels" card={false}>
                <EntryList list="paint/panels" placing={&PLACING} titled={false} />
            </Group>
            <Group id="paint/gun">{ rows(GUN) }</Group>
            <Group id="paint/products" card={false}>
                <EntryList list="paint/products" placing={&PLACING} titled={false} />
            </Group>
            <Group id="paint/day">{ rows(DAY) }</Group>
            <Group id="paint/air">{ rows(AIR) }</Group>
            <Group id="paint/money">{ rows(MONEY) }</Group>
        </SheetPage>
    }
}

/// The tables, across both columns.
fn below() -> Html {
    html! {
        <>
            <Group id="paint/layers" card={false}><LayerTable /></Group>
            <Group id="paint/mixing" card={false}><MixingTables /></Group>
            <Group id="paint/buying" card={false}><BuyingTable /></Group>
            <Group id="paint/clock" card={false}><ClockTable /></Group>
            <Group id="paint/results" card={false}><ResultTable sheet="paint" results={STOCK} /></Group>
            <BeforeNowTable sheet="paint" results={COMPARED} />
        </>
    }
}
