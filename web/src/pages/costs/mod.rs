//! What is left to spend?

mod owes;
mod priced;
mod sums;
mod table;
mod verdicts;

use crate::drawings::Plate;
use crate::drawings::costs::{BUDGET, HIRE, SEND};
use crate::state::State;
use crate::widgets::{
    BeforeNowTable, EntryList, EntryRow, Group, Placing, ResultTable, SheetPage, Spot,
};
use buildbook::Key;
use owes::WhoOwes;
use priced::PricedLines;
use sums::GroupSums;
use table::CostsTable;
use verdicts::{HireVerdicts, QuoteRunsOut, SendVerdicts};
use yew::prelude::*;

const ANSWERS: &[&str] = &[
    "costs/left",
    "costs/room",
    "costs/paid",
    "costs/committed",
    "costs/planned",
    "costs/contingency",
    "costs/hours_value",
    "costs/over_cash",
    "costs/each_hour",
];
const PLATES: &[&Plate] = &[&BUDGET, &HIRE, &SEND];
/// What stands side by side, before and now.
pub const COMPARED: &[&str] = &[
    "costs/left",
    "costs/paid",
    "costs/committed",
    "costs/planned",
    "costs/contingency",
    "costs/total",
    "costs/hours_value",
    "costs/over_cash",
    "costs/over_all",
];
/// A line by hand: few fields at once, the others behind "More".
static LINES: Placing = Placing {
    name: "costs/lines",
    spot: |_, _, field| spot(field, &["what", "price", "state"]),
    found: |row| Some(row.to_string()),
};
static HIRES: Placing = Placing {
    name: "costs/hire",
    spot: |state, row, field| {
        followed(state, row, field, &["hire_day", "buy_price", "days"])
            .unwrap_or_else(|| spot(field, &["what", "hire_day", "buy_price", "days"]))
    },
    found: |_| None,
};
static SENDS: Placing = Placing {
    name: "costs/send",
    spot: |state, row, field| {
        followed(state, row, field, &["count"]).unwrap_or_else(|| {
            spot(
                field,
                &["what", "count", "send_each", "here_each", "hours_each"],
            )
        })
    },
    found: |_| None,
};

fn spot(field: &str, open: &[&str]) -> Spot {
    if open.contains(&field) {
        Spot::Open
    } else {
        Spot::More
    }
}

/// A question that follows another sheet says so, and has no use for what that sheet says.
fn followed(state: &State, row: &Key, field: &str, said: &[&str]) -> Option<Spot> {
    let follows = state.book.entry(row.under("follows").as_str())?;
    let follows = !follows.is_blank() && &*follows.text != "nothing";
    match field {
        "follows" if follows => Some(Spot::Open),
        _ => (follows && said.contains(&field)).then_some(Spot::Nowhere),
    }
}

const DONE: &[&str] = &[
    "costs/over_cash",
    "costs/hours_value",
    "costs/over_all",
    "costs/each_hour",
    "costs/to_come_back",
];

fn rows(fields: &'static [&'static str]) -> Html {
    fields
        .iter()
        .map(|field| html! { <EntryRow key={*field} at={format!("costs/{field}")} /> })
        .collect()
}

/// The costs sheet: few fields of a line first, the rest folded away.
#[component]
pub fn Costs() -> Html {
    let below = html! {
        <>
            <GroupSums />
            <Group id="costs/owes" card={false}><WhoOwes /></Group>
            <BeforeNowTable sheet="costs" results={COMPARED} />
            <Group id="costs/table" card={false}><CostsTable /></Group>
        </>
    };
    html! {
        <SheetPage sheet="costs" answers={ANSWERS} plates={PLATES} {below}>
            <Group id="costs/budget">{ rows(&["limit", "contingency_percent", "contingency_sum"]) }</Group>
            <QuoteRunsOut />
            <Group id="costs/lines" card={false}>
                <EntryList list="costs/lines" placing={Some(&LINES)} titled={false} />
            </Group>
            <Group id="costs/priced" card={false}><PricedLines /></Group>
            <Group id="costs/payers" card={false}><EntryList list="costs/payers" titled={false} /></Group>
            <Group id="costs/hours" card={false}>
                <div class="rows">{ rows(&["hour_rate"]) }</div>
                <EntryList list="costs/hours" titled={false} />
            </Group>
            <Group id="costs/hire" card={false}>
                <HireVerdicts />
                <EntryList list="costs/hire" placing={Some(&HIRES)} titled={false} />
            </Group>
            <Group id="costs/send" card={false}>
                <SendVerdicts />
                <EntryList list="costs/send" placing={Some(&SENDS)} titled={false} />
            </Group>
            <Group id="costs/done" card={false}>
                <div class="rows">{ rows(&["value_done"]) }</div>
                <ResultTable sheet="costs" results={DONE} />
            </Group>
            <Group id="costs/tax_and_rounding">{ rows(&["tax", "tax_counts", "rounding"]) }</Group>
        </SheetPage>
    }
}
