//! Which axle ratio?

mod beside;
mod by_gear;
mod wishes;

use beside::BesideTable;
use by_gear::GearTable;
use wishes::Pairs;

use crate::drawings::Plate;
use crate::drawings::gearing::{PULL, SPEEDS};
use crate::state::{Action, State};
use crate::widgets::{
    BeforeNowTable, EntryList, EntryRow, Group, ResultRow, ResultTable, RowKey, SheetPage,
};
use crate::words::gearing as words;
use buildbook::Key;
use yew::prelude::*;

const ANSWERS: &[&str] = &[
    "gearing/cruise",
    "gearing/per_1000",
    "gearing/top_speed",
    "gearing/steepest",
    "gearing/restart",
    "gearing/time",
    "gearing/adapter",
    "gearing/shaft_share",
];
const PLATES: &[&Plate] = &[&SPEEDS, &PULL];
/// What stands side by side, before and now.
pub const COMPARED: &[&str] = &[
    "gearing/cruise",
    "gearing/per_1000",
    "gearing/speed/*",
    "gearing/top_speed",
    "gearing/steepest",
    "gearing/restart",
    "gearing/time",
    "gearing/piston_cruise",
    "gearing/dial_shown",
    "gearing/shaft_share",
];
const BESIDES: &[&str] = &[
    "gearing/top_speed",
    "gearing/steepest",
    "gearing/restart",
    "gearing/time",
    "gearing/circumference",
    "gearing/power",
    "gearing/piston_speed",
    "gearing/piston_cruise",
    "gearing/mass",
    "gearing/rolling",
    "gearing/grip_slope",
    "gearing/air_factor",
    "gearing/air_density",
    "gearing/dial_shown",
    "gearing/dial_most",
    "gearing/cable_turns",
    "gearing/adapter",
    "gearing/shaft_critical",
    "gearing/shaft_highest",
    "gearing/shaft_share",
    "gearing/overall/*",
    "gearing/shaft/*",
    "gearing/turns/*",
    "gearing/effort/*",
];

/// The groups of plain entries, in the order of the job; the first few tell the speeds.
const WHEELS: &[&str] = &[
    "vehicle/tyre_rear",
    "vehicle/roll_out_rear",
    "vehicle/roll_out_rear_turns",
    "vehicle/drive",
];
const AXLE: &[&str] = &["gearing/axle"];
const SPEEDS_TOLD: &[&str] = &["gearing/engine_speed", "gearing/road_speed"];
const MORE_GEARS: &[&str] = &[
    "gearing/axle_kind",
    "gearing/overdrive",
    "gearing/overdrive_with",
    "gearing/transfer_high",
    "gearing/transfer_low",
    "gearing/transfer_in",
    "gearing/axle_second",
    "gearing/axle_second_in",
    "gearing/hubs",
    "gearing/efficiency_direct",
    "gearing/efficiency_gears",
    "gearing/efficiency_worm",
];
const ENGINE: &[&str] = &[
    "vehicle/peak_torque",
    "vehicle/peak_torque_at",
    "vehicle/peak_power",
    "vehicle/peak_power_at",
    "vehicle/power_basis",
    "vehicle/red_line",
    "vehicle/stroke",
    "gearing/piston_limit",
    "vehicle/front_unladen",
    "vehicle/rear_unladen",
    "vehicle/payload",
    "vehicle/payload_ahead",
    "vehicle/wheelbase",
    "vehicle/centre_height",
    "vehicle/width",
    "vehicle/height",
];
const ROAD: &[&str] = &[
    "gearing/load",
    "gearing/ground",
    "gearing/rolling",
    "gearing/grip",
    "gearing/drag",
    "gearing/altitude",
    "gearing/temperature",
];
const STARTING: &[&str] = &[
    "gearing/clutch",
    "gearing/start",
    "gearing/target",
    "gearing/inertia",
    "gearing/change_time",
];
const DIAL: &[&str] = &[
    "gearing/dial_axle",
    "gearing/dial_tyre",
    "gearing/dial_showed",
    "gearing/dial_true",
    "gearing/dial_constant",
    "gearing/cable_drive",
    "gearing/cable_counted",
];
const SHAFT: &[&str] = &[
    "gearing/shaft_outside",
    "gearing/shaft_wall",
    "gearing/shaft_length",
];

/// Puts a candidate's teeth in as the fitted axle; undo takes them out again.
static FIT: RowKey = RowKey {
    name: "fit",
    said: words::FIT_THIS,
    act: fit,
};

fn fit(state: &State, list: &Key, id: &str) -> Option<Action> {
    let teeth = state
        .book
        .entry(list.under(id).under("teeth").as_str())?
        .clone();
    Some(Action::Put(Key::from("gearing/axle"), Some(teeth)))
}

fn rows(id: &'static str, keys: &[&'static str]) -> Html {
    let rows = keys
        .iter()
        .map(|key| html! { <EntryRow key={*key} at={*key} /> });
    html! { <Group {id}>{ rows.collect::<Html>() }</Group> }
}

/// The gearing sheet.
#[component]
pub fn Gearing() -> Html {
    html! {
        <SheetPage sheet="gearing" answers={ANSWERS} plates={PLATES} below={below()}>
            { rows("gearing/wheels", WHEELS) }
            <Group id="gearing/gears" card={false}>
                <EntryList list="gearing/gears" found="gearing/per_1000" titled={false} />
            </Group>
            { rows("gearing/axle", AXLE) }
            { rows("gearing/speeds", SPEEDS_TOLD) }
            { wish_for_speed() }
            <Group id="gearing/candidates" card={false}>
                <EntryList list="gearing/candidates" found="gearing/candidate_revs" titled={false} keys={std::slice::from_ref(&FIT)} />
            </Group>
            { rows("gearing/engine", ENGINE) }
            <Group id="gearing/torque" card={false}>
                <EntryList list="gearing/torque" titled={false} />
            </Group>
            { rows("gearing/road", ROAD) }
            { wish_for_hill() }
            { rows("gearing/start", STARTING) }
            { rows("gearing/dial", DIAL) }
            { rows("gearing/shaft", SHAFT) }
            { rows("gearing/more_gears", MORE_GEARS) }
        </SheetPage>
    }
}

fn wish_for_speed() -> Html {
    html! {
        <Group id="gearing/wish_speed">
            <EntryRow at="gearing/wanted_revs" />
            <EntryRow at="gearing/wanted_speed" />
            <ResultRow id="gearing/axle_for_speed" />
            <Pairs hill={false} />
        </Group>
    }
}

fn wish_for_hill() -> Html {
    html! {
        <Group id="gearing/wish_hill">
            <EntryRow at="gearing/wanted_hill" />
            <EntryRow at="gearing/wanted_hill_gear" />
            <ResultRow id="gearing/axle_for_hill" />
            <Pairs hill={true} />
        </Group>
    }
}

fn below() -> Html {
    html! {
        <>
            <Group id="gearing/by_gear" card={false}><GearTable /></Group>
            <Group id="gearing/beside" card={false}><BesideTable /></Group>
            <BeforeNowTable sheet="gearing" results={COMPARED} />
            <Group id="gearing/all" card={false}><ResultTable sheet="gearing" results={BESIDES} /></Group>
        </>
    }
}
