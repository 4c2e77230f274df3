//! How tight?

use crate::desk::use_settings;
use crate::drawings::Plate;
use crate::drawings::torque::ORDER;
use crate::pages::tightening::TighteningRecord;
use crate::route::Route;
use crate::widgets::{
    BeforeNowTable, EntryList, EntryRow, Group, Placing, ResultTable, SheetPage, Spot,
};
use crate::words::torque;
use buildbook::Given;
use buildbook::sheets::torque::JointEntry;
use yew::prelude::*;

const ANSWERS: &[&str] = &["torque/next", "torque/left", "torque/setting/*"];
const PLATES: &[&Plate] = &[&ORDER];
const WRENCH: &[&str] = &[
    "wrench_name",
    "wrench_low",
    "wrench_high",
    "wrench_kind",
    "wrench_length",
    "wrench_error",
];
/// The settings stand in the joints' headings and in the record.
const RESULTS: &[&str] = &[
    "torque/stage/*/*",
    "torque/clamp/*",
    "torque/least_clamp/*",
    "torque/share_of_yield/*",
    "torque/engagement/*",
    "torque/wrench_error/*",
];

/// A joint: what nearly every one needs, and what its answers call for; the rest behind "More".
static JOINTS: Placing = Placing {
    name: "torque/joints",
    spot: |state, row, field| {
        let joints = &state.findings.torque.sheet.joints;
        let joint = joints.iter().find(|joint| joint.key == *row);
        if field == "wrench" {
            // A choice only where there are several; one that was made stays to be seen.
            let several = !state.findings.torque.sheet.wrenches.is_empty();
            let made = state.book.entry(row.under(field).as_str()).is_some();
            return if several || made {
                Spot::Open
            } else {
                Spot::Nowhere
            };
        }
        joint.map_or(Spot::More, |joint| spot(joint, field))
    },
    found: |row| Some(format!("torque/setting/{}", row.field())),
};

fn spot(joint: &JointEntry, field: &str) -> Spot {
    let chosen = |given: &Given<&'static str>, word: &str| given.value() == Some(&word);
    let silent = joint.figure.is_blank();
    let makers_only = ["steering", "brakes", "wheels"]
        .iter()
        .any(|purpose| chosen(&joint.purpose, purpose));
    let open_if = |wanted: bool, blank: bool| match (wanted, blank) {
        (true, _) => Spot::Open,
        (false, true) => Spot::Nowhere,
        (false, false) => Spot::More,
    };
    match field {
        "name" | "purpose" | "fixing" | "figure" | "page" | "stages" | "pattern" => Spot::Open,
        "bolts" => open_if(chosen(&joint.pattern, "circle"), joint.bolts.is_blank()),
        "rows" => open_if(chosen(&joint.pattern, "rectangle"), joint.rows.is_blank()),
        "columns" => open_if(
            chosen(&joint.pattern, "rectangle"),
            joint.columns.is_blank(),
        ),
        "prevailing" => open_if(
            chosen(&joint.fixing, "self_locking"),
            joint.prevailing.is_blank(),
        ),
        "new_count" if joint.new_price.is_blank() && joint.new_count.is_blank() => Spot::Nowhere,
        "new_price" | "new_count" if chosen(&joint.fixing, "stretch") => Spot::Open,
        "extension_angle" if joint.extension.is_blank() => Spot::Nowhere,
        // Where the manual is silent the thread tells a figure; for what steers and stops nothing but the maker does.
        "thread" | "grade" if silent && !makers_only => Spot::Open,
        "thread" | "grade" if makers_only && joint.thread.is_blank() => Spot::Nowhere,
        "engaged" if chosen(&joint.into, "nut") && joint.engaged.is_blank() => Spot::Nowhere,
        "friction_thread" | "friction_head" | "head" | "into" | "bearing" | "hole" | "shank"
        | "yield_share" | "method"
            if joint.thread.is_blank() =>
        {
            Spot::Nowhere
        }
        _ => Spot::More,
    }
}

/// The torque sheet.
#[component]
pub fn Torque() -> Html {
    let tongue = use_settings().tongue;
    let wrench = WRENCH
        .iter()
        .map(|field| html! { <EntryRow key={*field} at={format!("torque/{field}")} /> });
    let below = html! {
        <>
            <Group id="torque/record" card={false}><TighteningRecord /></Group>
            <Group id="torque/results" card={false}><ResultTable sheet="torque" results={RESULTS} /></Group>
            <BeforeNowTable sheet="torque" />
        </>
    };
    html! {
        <SheetPage sheet="torque" answers={ANSWERS} plates={PLATES} {below}>
            <a class="key tall tick-key" href={Route::TickOff.fragment()} data-do="tick-off">{ tongue.say(torque::TICK_OFF) }</a>
            <Group id="torque/joints" card={false}>
                <EntryList list="torque/joints" found="torque/setting" placing={Some(&JOINTS)} titled={false} />
            </Group>
            <div>
                <Group id="torque/wrench">{ wrench.collect::<Html>() }</Group>
                <EntryList list="torque/wrenches" />
            </div>
        </SheetPage>
    }
}
