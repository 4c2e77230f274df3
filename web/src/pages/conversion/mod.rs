//! Will it steer and stop true from the other side?

mod parts;
mod sides;
mod tables;
mod take_over;

use crate::desk::{use_desk, use_slice};
use crate::drawings::Plate;
use crate::drawings::conversion::{ABOVE, ACKERMANN, BUMP, LOCK, PEDAL, WAY};
use crate::state::{Action, CallTo, State, more_of};
use crate::widgets::{
    BeforeNowTable, EntryList, EntryRow, Group, Placing, ResultTable, SheetPage, Spot,
};
use buildbook::Key;
use parts::{PARTS, Parts, opening, part, part_of};
use sides::Sides;
use tables::{Compared, Moving};
use take_over::TakeOver;
use yew::prelude::*;

const ANSWERS: &[&str] = &[
    "conversion/link/now",
    "conversion/ratio/now",
    "conversion/bump_up/now",
    "conversion/foot/now",
    "conversion/bulkhead/now",
    "conversion/open",
];
const STEERING: &[&Plate] = &[&ABOVE, &BUMP, &LOCK, &ACKERMANN];
const PEDAL_PLATES: &[&Plate] = &[&PEDAL];
const FROM_ABOVE: &[&Plate] = &[&ABOVE];
const STRETCHED: &[&Plate] = &[&WAY];

const DIRECTION: &[&str] = &["arm_swings", "ball_stands"];
/// A box's measures, in the order one takes them.
const GEAR: &[&str] = &[
    "gear",
    "box_x",
    "box_out",
    "box_z",
    "drop_arm",
    "at_centre",
    "box_ratio",
    "swing",
    "ball_x",
    "ball_out",
    "ball_z",
    "arm_wheel",
    "side",
];
const RACK: &[&str] = &[
    "gear",
    "box_x",
    "box_out",
    "box_z",
    "rack_turn",
    "swing",
    "ball_x",
    "ball_out",
    "ball_z",
    "arm_wheel",
    "side",
];
const AXLE: &[&str] = &[
    "pivots",
    "fixed_eye",
    "half_spring",
    "seat_above_eye",
    "rise",
    "fall",
    "track_arm",
    "track_arm_angle",
    "track_rod",
    "stop",
    "pin_out",
    "pin_x",
    "inclination",
    "castor",
    "scrub",
    "link_least",
    "link_most",
];
const BRAKE: &[&str] = &[
    "pad_arm",
    "rod_arm",
    "master",
    "stroke",
    "servo",
    "free_play",
];
const FEET: &[&str] = &["foot", "foot_limit", "panic"];
const BY_SLAVE: &[&str] = &[
    "by",
    "pad_arm",
    "rod_arm",
    "pad_travel",
    "free_play",
    "master",
    "slave",
];
const BY_CABLE: &[&str] = &[
    "by",
    "pad_arm",
    "rod_arm",
    "pad_travel",
    "free_play",
    "efficiency",
];
const FORK: &[&str] = &["fork_force", "fork_travel"];

const STEERING_RESULTS: &[&str] = &[
    "link",
    "ratio",
    "ratio_left",
    "ratio_right",
    "turns",
    "lock_left",
    "outer_left",
    "lock_right",
    "outer_right",
    "circle_left",
    "circle_right",
    "error_left",
    "error_right",
    "bump_up",
    "bump_down",
];
const PEDAL_RESULTS: &[&str] = &[
    "pedal_ratio",
    "bulkhead",
    "pressure",
    "foot",
    "stroke",
    "stroke_share",
    "pad_travel",
    "brake_play",
    "clutch_travel",
    "clutch_play",
    "clutch_foot",
];
/// What stands side by side, before and now, part by part.
const KEPT_STEERING: &[&str] = &[
    "conversion/link/now",
    "conversion/ratio/now",
    "conversion/ratio_left/now",
    "conversion/ratio_right/now",
    "conversion/turns/now",
    "conversion/lock_left/now",
    "conversion/lock_right/now",
    "conversion/circle_left/now",
    "conversion/circle_right/now",
    "conversion/bump_up/now",
    "conversion/bump_down/now",
];
const KEPT_PEDALS: &[&str] = &[
    "conversion/pedal_ratio/now",
    "conversion/bulkhead/now",
    "conversion/pressure/now",
    "conversion/foot/now",
    "conversion/stroke/now",
    "conversion/pad_travel/now",
    "conversion/clutch_travel/now",
    "conversion/clutch_foot/now",
];
const KEPT_ROUTES: &[&str] = &[
    "conversion/cut/*",
    "conversion/travel/*",
    "conversion/lever/*",
];
const KEPT_SIDES: &[&str] = &["conversion/open", "conversion/done"];
const LEAST: &[&str] = &["conversion/least/*"];
const PISTONS: &[&str] = &["conversion/piston/*"];
const ROUTES: &[&str] = &[
    "conversion/cut/*",
    "conversion/bend_at/*/*",
    "conversion/efficiency/*",
    "conversion/travel/*",
    "conversion/travel_wanted/*",
    "conversion/lever/*",
];

/// What of a cable's or a pipe's entries it has a use for.
static ROUTE: Placing = Placing {
    name: "conversion/routes",
    spot: |state, row, field| {
        let kind = state.book.entry(row.under("kind").as_str());
        let kind = kind.map_or("", |entry| entry.text.trim());
        let pipe = kind.ends_with("_pipe");
        match field {
            "name" | "kind" | "string" => Spot::Open,
            "straights" | "bends" | "least_radius" if kind.is_empty() => Spot::More,
            "straights" | "bends" | "least_radius" | "length" | "radius" | "angle" => Spot::Open,
            "union_1" | "flare_1" | "union_2" | "flare_2" if pipe => Spot::Open,
            "flare_takes" if pipe => Spot::More,
            "union_1" | "flare_1" | "union_2" | "flare_2" | "flare_takes" => Spot::Nowhere,
            _ if pipe || kind == "speedometer" => Spot::Nowhere,
            "friction" | "free_play" => Spot::More,
            _ => Spot::Open,
        }
    },
    found: |row| {
        let list = row.parent()?;
        (list.field() == "routes").then(|| format!("conversion/cut/{}", row.field()))
    },
};

#[derive(Clone, PartialEq)]
struct Slice {
    part: &'static str,
    /// Whether the old side's measures are open: steering, brake, clutch.
    old: [bool; 3],
    racks: [bool; 2],
    cables: [bool; 2],
    /// The number of the last call of the cursor, and the part it went to where another one is shown.
    call: u32,
    called: Option<(&'static str, CallTo)>,
}

fn chosen(state: &State, key: &str, choice: &str) -> bool {
    let entry = state.book.entry(key);
    entry.is_some_and(|entry| entry.text.trim() == choice)
}

fn slice(state: &State) -> Slice {
    let shown = part(state);
    let call = &state.view.call;
    let called = match &call.to {
        CallTo::Entry(key) | CallTo::Row(key) => part_of(key),
        _ => None,
    };
    let open = |list: &str| state.is_open(&more_of(&Key::from(list).under("1")));
    let both = |name: &str, field: &str, choice: &str| {
        ["was", "now"]
            .map(|way| chosen(state, &format!("conversion/{name}{way}/1/{field}"), choice))
    };
    Slice {
        part: shown,
        old: [
            "conversion/was",
            "conversion/brake_was",
            "conversion/clutch_was",
        ]
        .map(open),
        racks: both("", "gear", "rack"),
        cables: both("clutch_", "by", "cable"),
        call: call.number,
        called: called
            .filter(|part| *part != shown)
            .map(|part| (part, call.to.clone())),
    }
}

/// Rows of entries.
fn rows(above: &str, fields: &[&'static str]) -> Html {
    fields
        .iter()
        .map(|field| html! { <EntryRow key={*field} at={format!("{above}/{field}")} /> })
        .collect()
}

/// The old side's entries, folded until they are wanted.
fn old(list: &'static str, open: bool, fields: &[&'static str]) -> Html {
    html! {
        <take_over::Old key={list} {list} {open}>
            <Group id={list}>{ rows(&format!("{list}/1"), fields) }</Group>
        </take_over::Old>
    }
}

/// The conversion sheet.
#[component]
pub fn Conversion() -> Html {
    let found = use_slice(slice);
    let desk = use_desk();
    {
        // The cursor was called into a part that is not shown: show it, and call again.
        let (found, desk) = (found.clone(), desk.clone());
        let call = found.as_ref().map(|found| found.call);
        use_effect_with(call, move |_| {
            if let (Some((part, to)), Some(desk)) = (found.and_then(|found| found.called), desk) {
                opening(&desk.state(), part)
                    .into_iter()
                    .for_each(|action| desk.send(action));
                desk.send(Action::Call(to));
            }
        });
    }
    let Some(found) = found else { return html! {} };
    let (entries, below, plates, cautions, kept) = match found.part {
        "pedals" => (
            pedals(&found),
            pedal_tables(),
            PEDAL_PLATES,
            "conversion/brake_now",
            KEPT_PEDALS,
        ),
        "routes" => (
            routes(),
            route_tables(),
            STRETCHED,
            "conversion/routes",
            KEPT_ROUTES,
        ),
        "sides" => (
            html! { <Sides key="sides" /> },
            html! {},
            FROM_ABOVE,
            "conversion/changes",
            KEPT_SIDES,
        ),
        _ => (
            steering(&found),
            steering_tables(),
            STEERING,
            "conversion/now",
            KEPT_STEERING,
        ),
    };
    let below =
        html! { <>{ below }<BeforeNowTable key="kept" sheet="conversion" results={kept} /></> };
    html! {
        <SheetPage sheet="conversion" answers={ANSWERS} {plates} {cautions} {below}>
            <Parts key="parts" parts={PARTS} />
            <div key={found.part}>{ entries }</div>
        </SheetPage>
    }
}

fn steering(found: &Slice) -> Html {
    let gear = |rack: bool| if rack { RACK } else { GEAR };
    html! {
        <>
            <Group key="direction" id="conversion/direction">{ rows("conversion/now/1", DIRECTION) }</Group>
            <TakeOver key="take" from="conversion/was" to="conversion/now" />
            <Group key="now" id="conversion/now">{ rows("conversion/now/1", gear(found.racks[1])) }</Group>
            <Group key="axle" id="conversion/axle">{ rows("conversion", AXLE) }</Group>
            { old("conversion/was", found.old[0], gear(found.racks[0])) }
        </>
    }
}

fn steering_tables() -> Html {
    html! {
        <>
            <Compared key="steering" id="conversion/steering" results={STEERING_RESULTS} />
            <Group key="least" id="conversion/least" card={false}><ResultTable sheet="conversion" results={LEAST} /></Group>
            <Moving key="moving" />
        </>
    }
}

fn pedals(found: &Slice) -> Html {
    let clutch = |cable: bool| if cable { BY_CABLE } else { BY_SLAVE };
    html! {
        <>
            <TakeOver key="take" from="conversion/brake_was" to="conversion/brake_now" />
            <Group key="brake" id="conversion/brake_now">{ rows("conversion/brake_now/1", BRAKE) }</Group>
            <Group key="feet" id="conversion/feet">{ rows("conversion", FEET) }</Group>
            <Group key="pistons" id="conversion/pistons" card={false}>
                <EntryList list="conversion/pistons" found="conversion/piston" titled={false} />
            </Group>
            { old("conversion/brake_was", found.old[1], BRAKE) }
            <TakeOver key="take-clutch" from="conversion/clutch_was" to="conversion/clutch_now" />
            <Group key="clutch" id="conversion/clutch_now">{ rows("conversion/clutch_now/1", clutch(found.cables[1])) }</Group>
            <Group key="fork" id="conversion/fork">{ rows("conversion", FORK) }</Group>
            { old("conversion/clutch_was", found.old[2], clutch(found.cables[0])) }
        </>
    }
}

fn pedal_tables() -> Html {
    html! {
        <>
            <Compared key="pedals" id="conversion/pedals" results={PEDAL_RESULTS} />
            <Group key="pistons" id="conversion/forces" card={false}><ResultTable sheet="conversion" results={PISTONS} /></Group>
        </>
    }
}

fn routes() -> Html {
    html! {
        <>
            <Group key="routes" id="conversion/routes" card={false}>
                <EntryList list="conversion/routes" placing={&ROUTE} titled={false} />
            </Group>
        </>
    }
}

fn route_tables() -> Html {
    html! { <Group key="cut" id="conversion/results" card={false}><ResultTable sheet="conversion" results={ROUTES} /></Group> }
}
