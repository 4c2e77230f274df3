//! What was done and measured? The sheet; the pack is a page of its own.

mod calendar;
mod open;
mod plan;
mod tyres;

use crate::desk::use_tongue;
use crate::drawings::Plate;
use crate::drawings::handover::ROUND;
use crate::route::Route;
use crate::state::State;
use crate::widgets::{EntryList, EntryRow, Group, PresetList, Presets, ResultTable, SheetPage};
use crate::words::handover;
use buildbook::Key;
use buildbook::sheets::handover::called_for;
use calendar::CalendarKey;
pub use calendar::vehicle_name;
use open::OpenItems;
pub use open::said as open_said;
use plan::PlanTable;
pub use plan::planned;
pub use tyres::ages;
use tyres::{Ages, TYRES};
use yew::prelude::*;

const ANSWERS: &[&str] = &[
    "handover/checks_left",
    "handover/joints_left",
    "handover/weighed",
    "handover/toe",
    "handover/brake_efficiency",
    "handover/parking_efficiency",
];
const PLATES: &[&Plate] = &[&ROUND];
const RESULTS: &[&str] = &[
    "handover/weighed",
    "handover/weight_change",
    "handover/front_of_limit",
    "handover/rear_of_limit",
    "handover/toe",
    "handover/imbalance/*",
    "handover/brake_efficiency",
    "handover/parking_efficiency",
];

static CHECKS: Presets = Presets {
    list: "handover/checks",
    lead: "state",
    more: &["note", "by", "on"],
    said: note,
    numbered: true,
};
static AGAIN: Presets = Presets {
    list: "handover/again",
    lead: "",
    more: &["after", "within", "done", "by", "note"],
    said: plan::due_of,
    numbered: false,
};
static APPROVALS: Presets = Presets {
    list: "handover/approvals",
    lead: "state",
    more: &["office", "reference", "on", "note"],
    said: called,
    numbered: false,
};

fn rows(fields: &'static [&'static str]) -> Html {
    fields
        .iter()
        .map(|field| html! { <EntryRow key={*field} at={format!("handover/{field}")} /> })
        .collect()
}

/// The note of a check, by whom it was made.
fn note(state: &State, row: &Key) -> Option<String> {
    let text = |field: &str| {
        let entry = state.book.entry(row.under(field).as_str())?;
        Some(entry.text.trim().to_owned()).filter(|text| !text.is_empty())
    };
    let said: Vec<String> = ["note", "office", "reference", "by", "on"]
        .into_iter()
        .filter_map(text)
        .collect();
    (!said.is_empty()).then(|| said.join(" · "))
}

/// What is said of an approval; where nothing is, whether other sheets call for it.
fn called(state: &State, row: &Key) -> Option<String> {
    note(state, row).or_else(|| {
        let open = state.book.entry(row.under("state").as_str()).is_none();
        (open && called_for(&state.findings).contains(&row.field()))
            .then(|| state.settings.tongue.say(handover::CALLED_FOR).to_owned())
    })
}

/// The handover sheet.
#[component]
pub fn Handover() -> Html {
    let tongue = use_tongue();
    let below = html! {
        <>
            <Group id="handover/open" card={false}><OpenItems /></Group>
            <Group id="handover/plan" card={false}><PlanTable /></Group>
            <Group id="handover/results" card={false}><ResultTable sheet="handover" results={RESULTS} /></Group>
        </>
    };
    html! {
        <SheetPage sheet="handover" answers={ANSWERS} plates={PLATES} {below}>
            <div class="book-keys">

                <a class="key tall main" href={Route::Pack.fragment()} data-do="pack">{ tongue.say(handover::PACK) }</a>
                <CalendarKey />
            </div>
            <Group id="handover/day">{ rows(&["handed_on", "handed_by", "handed_to", "odometer", "per_week"]) }</Group>
            <Group id="handover/checks" card={false}>
                <div class="rows">{ rows(&["checked_by", "checked_on"]) }</div>
                <PresetList of={&CHECKS} />
            </Group>
            <Group id="handover/identity">{ rows(&["frame_number", "engine_number", "axle_number", "registration"]) }</Group>
            <Group id="handover/changes" card={false}><EntryList list="handover/changes" titled={false} /></Group>
            <Group id="handover/weights">{ rows(&[
                "front_weighed", "rear_weighed", "weighed_as", "toe_ahead", "toe_behind", "toe_least", "toe_most",
                "camber_left", "camber_right", "castor_left", "castor_right",
            ]) }</Group>
            <Group id="handover/brakes" card={false}>
                <EntryList list="handover/brakes" found="handover/imbalance" titled={false} />
                <div class="rows">{ rows(&["parking", "brake_mass"]) }</div>
            </Group>
            <Group id="handover/tyres" card={false}><EntryList list="handover/tyres" placing={&TYRES} titled={false} /><Ages /></Group>
            <Group id="handover/fluids" card={false}><EntryList list="handover/fluids" titled={false} /></Group>
            <Group id="handover/again" card={false}>
                <PresetList of={&AGAIN} />
            </Group>
            <Group id="handover/approvals" card={false}>
                <PresetList of={&APPROVALS} />
            </Group>
            <Group id="handover/more">{ rows(&["notes"]) }</Group>
        </SheetPage>
    }
}
