//! Which shims?

use crate::drawings::Plate;
use crate::drawings::final_drive::MARKS;
use crate::widgets::{BeforeNowTable, EntryList, EntryRow, Group, ResultTable, SheetPage};
use yew::prelude::*;

const ANSWERS: &[&str] = &[
    "final_drive/shim",
    "final_drive/pack",
    "final_drive/backlash",
    "final_drive/move",
    "final_drive/pull",
    "final_drive/next_shim",
];
const PLATES: &[&Plate] = &[&MARKS];
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
        ],
        &["shims"],
    ),
    (
        "final_drive/preload",
        &[
            "preload",
            "bearings_are",
            "spacer",
            "flange",
            "cord",
            "pull",
            "side_drag",
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
            "moved_by",
            "adjuster_pitch",
            "notches",
        ],
        &[],
    ),
    ("final_drive/trials", &[], &["trials"]),
    (
        "final_drive/closing",
        &[
            "side_gear_play",
            "side_gear_limit",
            "end_float",
            "end_float_limit",
            "oil",
            "bronze",
            "breather",
            "run_in",
        ],
        &[],
    ),
];

/// The final-drive sheet.
#[component]
pub fn FinalDrive() -> Html {
    let groups = GROUPS.iter().map(|(id, fields, lists)| {
        let rows = fields
            .iter()
            .map(|field| html! { <EntryRow key={*field} at={format!("final_drive/{field}")} /> });
        let lists = lists
            .iter()
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
