//! Which shims?

use crate::desk::use_slice;
use crate::drawings::Plate;
use crate::drawings::final_drive::{GUIDE, MARKS, PACK};
use crate::state::State;
use crate::widgets::{BeforeNowTable, EntryList, EntryRow, Group, ResultTable, SheetPage};
use buildbook::Given;
use yew::prelude::*;

const ANSWERS: &[&str] = &[
    "final_drive/shim",
    "final_drive/pinion_pack",
    "final_drive/backlash",
    "final_drive/move",
    "final_drive/notches",
    "final_drive/pull",
    "final_drive/preload_pack",
    "final_drive/next_shim",
    "final_drive/next_moved",
];
const PLATES: &[&Plate] = &[&PACK, &MARKS, &GUIDE];
const RESULTS: &[&str] = &["final_drive/*"];

/// The groups with their entries and lists, in the order of the work; a name with a slash before it is a list.
const GROUPS: &[(&str, &[&str], &[&str])] = &[
    ("final_drive/set", &["crown", "pinion", "set_number"], &[]),
    (
        "final_drive/depth",
        &[
            "depth_by",
            "plus_means",
            "shim_sits",
            "old_shim",
            "old_mark",
            "new_mark",
            "depth",
            "bearing",
            "nominal",
            "pack_within",
            "shim_name",
            "shim_price",
        ],
        &["shims"],
    ),
    (
        "final_drive/preload",
        &[
            "bearings_are",
            "preload",
            "preload_most",
            "spacer",
            "pull_radius",
            "flange",
            "cord",
            "pull",
        ],
        &["preload_trials"],
    ),
    (
        "final_drive/side",
        &[
            "spread_wanted",
            "spread_now",
            "side_drag_wanted",
            "side_drag_most",
            "side_drag",
            "side_pull",
        ],
        &[],
    ),
    (
        "final_drive/backlash",
        &["backlash_least", "backlash_most", "run_out_limit"],
        &["readings"],
    ),
    (
        "final_drive/moving",
        &[
            "dial_radius",
            "heel_radius",
            "pressure_angle",
            "spiral_angle",
            "crown_across",
            "moved_by",
            "adjuster_pitch",
            "notches",
        ],
        &["side_shims"],
    ),
    ("final_drive/trials", &[], &["trials"]),
    (
        "final_drive/closing",
        &[
            "side_gear_play",
            "side_gear_limit",
            "end_float",
            "end_float_least",
            "end_float_limit",
            "oil",
            "oil_name",
            "oil_can",
            "oil_price",
            "bronze",
            "breather",
            "run_in",
        ],
        &["parts"],
    ),
];

/// Entries and lists that the choices made leave without a use; what was entered is always shown.
fn idle(state: &State) -> Vec<&'static str> {
    let sheet = &state.findings.final_drive.sheet;
    let chosen = |given: &Given<&'static str>, word: &str| given.value() == Some(&word);
    let mut idle = Vec::new();
    let mut leave = |unused: bool, blank: bool, field: &'static str| {
        if unused && blank {
            idle.push(field);
        }
    };
    let (by_depth, by_adjusters) = (
        chosen(&sheet.depth_by, "depth"),
        chosen(&sheet.moved_by, "adjusters"),
    );
    leave(by_depth, sheet.old_mark.is_blank(), "old_mark");
    leave(!by_depth, sheet.depth.is_blank(), "depth");
    leave(!by_depth, sheet.bearing.is_blank(), "bearing");
    leave(!by_depth, sheet.nominal.is_blank(), "nominal");
    leave(
        !by_adjusters,
        sheet.adjuster_pitch.is_blank(),
        "adjuster_pitch",
    );
    leave(!by_adjusters, sheet.notches.is_blank(), "notches");
    leave(by_adjusters, sheet.side_shims.is_empty(), "side_shims");
    let no_shims = sheet.shims.is_empty();
    leave(no_shims, sheet.shim_name.is_blank(), "shim_name");
    leave(no_shims, sheet.shim_price.is_blank(), "shim_price");
    let no_oil = sheet.oil.is_blank();
    leave(no_oil, sheet.oil_name.is_blank(), "oil_name");
    leave(no_oil, sheet.oil_can.is_blank(), "oil_can");
    leave(no_oil, sheet.oil_price.is_blank(), "oil_price");
    let no_drag = sheet.side_drag_wanted.is_blank();
    leave(no_drag, sheet.side_drag_most.is_blank(), "side_drag_most");
    let crush = chosen(&sheet.spacer, "crush");
    leave(crush, sheet.preload_trials.is_empty(), "preload_trials");
    idle
}

/// The final-drive sheet.
#[component]
pub fn FinalDrive() -> Html {
    let idle = use_slice(idle).unwrap_or_default();
    let groups = GROUPS.iter().map(|(id, fields, lists)| {
        let rows = fields
            .iter()
            .filter(|field| !idle.contains(*field))
            .map(|field| html! { <EntryRow key={*field} at={format!("final_drive/{field}")} /> });
        let lists = lists
            .iter()
            .filter(|list| !idle.contains(*list))
            .map(|list| html! { <EntryList key={*list} list={format!("final_drive/{list}")} titled={!fields.is_empty()} /> });
        html! {
            <div key={*id}>
                <Group id={*id} card={!fields.is_empty()}>{ rows.collect::<Html>() }</Group>
                { lists.collect::<Html>() }
            </div>
        }
    });
    let below = html! {
        <>
            <Group id="final_drive/results" card={false}><ResultTable sheet="final_drive" results={RESULTS} /></Group>
            <BeforeNowTable sheet="final_drive" />
        </>
    };
    html! { <SheetPage sheet="final_drive" answers={ANSWERS} plates={PLATES} {below}>{ groups.collect::<Html>() }</SheetPage> }
}
