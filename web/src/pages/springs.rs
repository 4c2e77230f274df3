//! How high will it sit?

mod tables;
mod which;

use crate::desk::{use_desk, use_slice, use_tongue};
use crate::drawings::Plate;
use crate::drawings::springs::{LINE, PLANNED, SIDE, STANCE, chosen, opening, showing};
use crate::state::{Action, CallTo, State, more_of};
use crate::widgets::{
    BeforeNowTable, EntryList, EntryRow, Group, Icon, Placing, ResultRow, ResultTable, SheetPage,
    Spot, icon,
};
use crate::words::{frame, springs as phrases};
use buildbook::Key;
use std::rc::Rc;
use tables::{Methods, Stresses, Work};
use which::Which;
use yew::prelude::*;

/// The list of springs.
const SPRINGS: &str = "springs/springs";
const ANSWERS: &[&str] = &["springs/height/*", "springs/rate/*"];

/// The drawings by what there is to show besides the first, which always stands there, if only to say what to measure.
const PLATES: [&[&Plate]; 8] = [
    &[&SIDE],
    &[&SIDE, &STANCE],
    &[&SIDE, &LINE],
    &[&SIDE, &LINE, &STANCE],
    &[&SIDE, &PLANNED],
    &[&SIDE, &PLANNED, &STANCE],
    &[&SIDE, &PLANNED, &LINE],
    &[&SIDE, &PLANNED, &LINE, &STANCE],
];
/// What stands side by side, before and now.
pub const COMPARED: &[&str] = &[
    "springs/height/*",
    "springs/rate/*",
    "springs/arch/*",
    "springs/load/*",
    "springs/worst/*",
    "springs/load_allowed/*",
    "springs/frequency/*",
    "springs/rake",
];
const TOGETHER: &[&str] = &[
    "springs/rake",
    "springs/rake_after",
    "springs/rake_change",
    "springs/lean_front",
    "springs/lean_front_after",
    "springs/lean_rear",
    "springs/lean_rear_after",
    "springs/castor_change",
    "springs/castor_after",
    "springs/pinion_change",
    "springs/pinion_after",
    "springs/axle_load_front",
    "springs/axle_room_front",
    "springs/axle_allowed_front",
    "springs/axle_load_rear",
    "springs/axle_room_rear",
    "springs/axle_allowed_rear",
];

/// The fields of a spring in their groups, in the order one works through them.
const STAND: &[&str] = &[
    "load",
    "share",
    "free_arch",
    "mounting",
    "pad",
    "block",
    "mark",
    "bump",
];
const SEAT: &[&str] = &["clamped", "seat_rule", "lengths"];
const PLAN: &[&str] = &[
    "plan_arch",
    "plan_as_new",
    "plan_remove",
    "plan_add",
    "plan_add_length",
    "plan_block",
    "plan_wedge",
    "settling",
];
const STEEL: &[&str] = &[
    "ends",
    "stiffening",
    "steel",
    "modulus",
    "allowed",
    "allowed_bump",
    "condition",
    "friction",
    "rate_by",
    "eye_rise",
];
const SHACKLE: &[&str] = &["shackle", "pins_apart", "pin_higher"];
const VEHICLE: &[&str] = &[
    "under",
    "base_front",
    "base_rear",
    "castor",
    "pinion",
    "notes",
];

/// What the shape of a spring rests on, leaf by leaf.
static LEAVES: Placing = Placing {
    name: "springs/leaves",
    spot: |state, row, field| {
        let usual = matches!(field, "thickness" | "length")
            || (field == "kind" && typed(state, &row.under(field)));
        let first = || {
            row.parent()
                .and_then(|list| state.book.rows(&list).into_iter().next())
        };
        let opens = usual
            || (field == "width" && typed(state, &row.under(field)))
            || (field == "width" && first().is_none_or(|first| *first == *row.field()))
            || (field == "gap" && is_helper(state, row));
        if opens { Spot::Open } else { Spot::More }
    },
    found: |row| {
        let leaf = row.field();
        let spring = row.parent()?.parent()?;
        Some(format!("springs/stress/{}/{leaf}", spring.field()))
    },
};

/// A point of the press test: a load, or the gauge where the ram's bore is known.
static POINTS: Placing = Placing {
    name: "springs/points",
    spot: |state, row, field| {
        let spring = row.parent().and_then(|list| list.parent());
        let gauge = spring.is_some_and(|spring| typed(state, &spring.under("ram_bore")));
        let shown = match field {
            "load" => !gauge || typed(state, &row.under("load")),
            "pressure" => gauge || typed(state, &row.under("pressure")),
            _ => true,
        };
        if shown { Spot::Open } else { Spot::Nowhere }
    },
    found: |_| None,
};

fn typed(state: &State, key: &Key) -> bool {
    state
        .book
        .entry(key.as_str())
        .is_some_and(|entry| !entry.is_blank())
}

fn is_helper(state: &State, row: &Key) -> bool {
    let kind = state.book.entry(row.under("kind").as_str());
    kind.is_some_and(|kind| kind.text.trim() == "helper")
}

/// What the page needs to know.
#[derive(Clone, PartialEq)]
struct Slice {
    spring: Rc<str>,
    more: bool,
    wanted: bool,
    /// Whether there is something to draw: before and after, the load line, the stance.
    drawn: [bool; 3],
    call: u32,
    /// The spring whose figure stands in the band.
    answered: Option<Rc<str>>,
    /// The spring that the cursor was called to, and where in it.
    called: Option<(Rc<str>, CallTo)>,
}

fn slice(state: &State) -> Slice {
    let spring = chosen(state);
    let list = Key::from(SPRINGS);
    let row = list.under(&spring);
    let to = &state.view.call.to;
    let called = match to {
        CallTo::Entry(key) | CallTo::Row(key) if key.is_under(&list) => {
            let rest = &key.as_str()[list.as_str().len()..];
            let id = rest.trim_start_matches('/').split('/').next();
            id.map(|id| (Rc::from(id), to.clone()))
        }
        _ => None,
    };
    let answer = state.view.answers.get("springs");
    let answered = answer
        .and_then(|answer| answer.split('/').nth(2))
        .map(Rc::from);
    Slice {
        answered,
        more: state.is_open(&more_of(&row)),
        drawn: drawn(state, &spring),
        wanted: typed(state, &row.under("wanted")),
        spring,
        call: state.view.call.number,
        called,
    }
}

/// Which drawings have something to show.
fn drawn(state: &State, spring: &str) -> [bool; 3] {
    let pictures = &state.findings.springs.pictures;
    let picture = pictures.iter().find(|picture| &*picture.id == spring);
    let planned = picture.is_some_and(|picture| picture.planned.is_some())
        || state.befores.sheet("springs").is_some();
    let line = picture.is_some_and(|picture| picture.line.len() > 1);
    let stance = state
        .findings
        .result("springs/rake")
        .is_some_and(Result::is_ok);
    [planned, line, stance]
}

/// The springs sheet.
#[component]
pub fn Springs() -> Html {
    let found = use_slice(slice);
    let (desk, tongue) = (use_desk(), use_tongue());
    {
        // The cursor was called into a spring that is not shown: show it, and call again.
        let (found, desk) = (found.clone(), desk.clone());
        let call = found.as_ref().map(|found| found.call);
        use_effect_with(call, move |_| {
            if let (Some(found), Some(desk)) = (found, desk)
                && let Some((spring, to)) = found.called
                && spring != found.spring
            {
                opening(&desk.state(), &spring)
                    .into_iter()
                    .for_each(|action| desk.send(action));
                desk.send(Action::Call(to));
            }
        });
    }
    {
        // Another spring's figure was brought into the band: work on that spring.
        let (found, desk) = (found.clone(), desk.clone());
        let answered = found.as_ref().and_then(|found| found.answered.clone());
        use_effect_with(answered, move |answered| {
            if let (Some(found), Some(desk), Some(spring)) = (found, desk, answered)
                && *spring != found.spring
            {
                showing(&desk.state(), spring)
                    .into_iter()
                    .for_each(|action| desk.send(action));
            }
        });
    }
    let (Some(found), Some(desk)) = (found, desk) else {
        return html! {};
    };
    let [planned, line, stance] = found.drawn.map(usize::from);
    let plates = PLATES[planned * 4 + line * 2 + stance];
    let row = Key::from(SPRINGS).under(&found.spring);
    let spring: AttrValue = found.spring.to_string().into();
    let more = {
        let (desk, at) = (desk.clone(), more_of(&row));
        Callback::from(move |_: MouseEvent| desk.send(Action::Fold(at.clone())))
    };
    let list = |name: &str| AttrValue::from(row.under(name).to_string());
    let id = |result: &str| AttrValue::from(format!("springs/{result}/{spring}"));
    let below = html! {
        <>
            <Group id="springs/together" card={false}><ResultTable sheet="springs" results={TOGETHER} /></Group>
            <Work spring={spring.clone()} />
            <Methods spring={spring.clone()} />
            <Stresses spring={spring.clone()} />
            <BeforeNowTable sheet="springs" results={COMPARED} />
        </>
    };
    html! {
        <SheetPage sheet="springs" answers={ANSWERS} {plates} {below}>
            <Which />
            <Group key="which" id="springs/which">{ rows(&row, &["place"]) }</Group>
            <Group key="leaves" id="springs/leaves" card={false}>
                <EntryList key={list("leaves").to_string()} list={list("leaves")} placing={&LEAVES} titled={false} />
            </Group>
            <Group key="seat" id="springs/seat">{ rows(&row, SEAT) }</Group>
            <Group key="stand" id="springs/stand">{ rows(&row, STAND) }</Group>
            <Group key="plan" id="springs/plan">{ rows(&row, PLAN) }</Group>
            <Group key="wanted" id="springs/wanted">
                { rows(&row, &["wanted"]) }
                if found.wanted {
                    <ResultRow id={id("arch_for")} /><ResultRow id={id("block_for")} /><ResultRow id={id("leaf_for")} />
                }
            </Group>
            <section key="more" class="group">
            <button type="button" class="key quiet tall" data-do={format!("more {row}")}
                aria-expanded={if found.more { "true" } else { "false" }} onclick={more}>
                { icon(if found.more { Icon::Open } else { Icon::Close }) }
                { tongue.say(if found.more { frame::LESS } else { phrases::SELDOM }) }
            </button>
            </section>
            if found.more {
                <Group key="press" id="springs/press" card={false}>
                <div class="rows">{ rows(&row, &["ram_bore"]) }</div>
                <EntryList key={list("points").to_string()} list={list("points")} placing={&POINTS} titled={false} />
            </Group>
                <Group key="steel" id="springs/steel">{ rows(&row, STEEL) }</Group>
                <Group key="shackle" id="springs/shackle">{ rows(&row, SHACKLE) }</Group>
            }
            <Group key="vehicle" id="springs/vehicle">{ rows(&Key::from("springs"), VEHICLE) }</Group>
        </SheetPage>
    }
}

/// Rows of entries.
fn rows(above: &Key, fields: &[&'static str]) -> Html {
    fields
        .iter()
        .map(|field| {
            let at = above.under(field).to_string();
            html! { <EntryRow key={at.clone()} at={AttrValue::from(at.clone())} /> }
        })
        .collect()
}
