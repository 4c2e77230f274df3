//! What have I got?

use crate::drawings::Plate;
use crate::drawings::vehicle::SIDE;
use crate::widgets::{BeforeNowTable, EntryRow, Group, ResultTable, SheetPage};
use yew::prelude::*;

const PLATES: &[&Plate] = &[&SIDE];
/// What stands side by side, before and now.
pub const RESULTS: &[&str] = &["vehicle/*"];

/// The groups of the sheet with their entries, in the order one walks round a vehicle.
const GROUPS: &[(&str, &[&str])] = &[
    (
        "vehicle/what",
        &[
            "name",
            "year",
            "sort",
            "drive",
            "steering_now",
            "steering_wanted",
        ],
    ),
    (
        "vehicle/sizes",
        &[
            "wheelbase",
            "track_front",
            "track_rear",
            "length",
            "width",
            "height",
            "bed_length",
            "bed_width",
            "centre_height",
            "frontal_share",
        ],
    ),
    (
        "vehicle/weights",
        &[
            "front_unladen",
            "rear_unladen",
            "front_laden",
            "rear_laden",
            "payload",
            "payload_ahead",
            "unsprung_front",
            "unsprung_rear",
        ],
    ),
    (
        "vehicle/limits",
        &["front_limit", "rear_limit", "gross_limit"],
    ),
    (
        "vehicle/tyres",
        &[
            "tyre_front",
            "tyre_rear",
            "rear_wheels",
            "roll_out_front",
            "roll_out_front_turns",
            "roll_out_rear",
            "roll_out_rear_turns",
            "rolling_factor",
            "pressure_front",
            "pressure_rear",
        ],
    ),
    (
        "vehicle/engine",
        &[
            "fuel",
            "breathing",
            "cylinders",
            "bore",
            "stroke",
            "idle",
            "red_line",
            "peak_torque",
            "peak_torque_at",
            "peak_power",
            "peak_power_at",
            "power_basis",
        ],
    ),
    ("vehicle/more", &["notes"]),
];

/// The vehicle sheet.
#[component]
pub fn Vehicle() -> Html {
    let groups = GROUPS.iter().map(|(id, fields)| {
        let rows = fields
            .iter()
            .map(|field| html! { <EntryRow key={*field} at={format!("vehicle/{field}")} /> });
        html! { <Group key={*id} id={*id}>{ rows.collect::<Html>() }</Group> }
    });
    let below = html! {
        <>
            <Group id="vehicle/results" card={false}><ResultTable sheet="vehicle" results={RESULTS} /></Group>
            <BeforeNowTable sheet="vehicle" results={RESULTS} />
        </>
    };
    html! { <SheetPage sheet="vehicle" plates={PLATES} {below}>{ groups.collect::<Html>() }</SheetPage> }
}
