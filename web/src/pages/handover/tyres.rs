//! How old the tyres are: the week each was made in, the day it was read, and the years and months between.

use crate::desk::use_slice;
use crate::drawings::Table;
use crate::state::State;
use crate::widgets::{Placing, Spot, table};
use crate::words::{self, Phrase, Tongue, filled, handover};
use buildbook::Key;
use buildbook::sheets::handover::TyreMade;
use yew::prelude::*;

/// The decade is asked for where the code leaves it open.
pub static TYRES: Placing = Placing {
    name: "handover/tyres",
    spot: |state, row, field| {
        let open = state
            .findings
            .handover
            .tyres
            .iter()
            .any(|tyre| tyre.row == *row && !tyre.code.sure);
        let chosen = || state.book.entry(row.under("decade").as_str()).is_some();
        match field {
            "decade" if open || chosen() => Spot::Open,
            "decade" => Spot::Nowhere,
            "read_on" => Spot::More,
            _ => Spot::Open,
        }
    },
    found: |_| None,
};

fn counted(number: u16, of: [Phrase; 2], tongue: Tongue) -> String {
    let phrase = of[usize::from(number != 1)];
    filled(tongue.say(phrase), &[number.to_string()])
}

fn age_said(age: (u16, u16), tongue: Tongue) -> String {
    let (years, months) = age;
    [
        counted(years, handover::YEARS, tongue),
        counted(months, handover::MONTHS, tongue),
    ]
    .join(" ")
}

/// The ages of the tyres as a table; empty while no date code was entered.
pub fn ages(state: &State) -> Table {
    let tongue = state.settings.tongue;
    let unknown = || "—".to_owned();
    let row = |tyre: &TyreMade| {
        let list = tyre.row.parent().unwrap_or_else(|| Key::from(""));
        let (made, year) = if tyre.code.sure {
            (handover::IN_WEEK, tyre.code.year.to_string())
        } else {
            (handover::DECADE_OPEN, String::new())
        };
        vec![
            words::row_name(&state.book, &list, tyre.row.field(), tongue),
            filled(tongue.say(made), &[tyre.code.week.to_string(), year]),
            tyre.read_on.map_or_else(unknown, |day| day.to_string()),
            tyre.age.map_or_else(unknown, |age| age_said(age, tongue)),
        ]
    };
    let head = [
        handover::TYRE,
        handover::MADE,
        handover::READ_ON,
        handover::AGE,
    ];
    Table {
        head: head.map(|phrase| tongue.say(phrase).to_owned()).to_vec(),
        rows: state.findings.handover.tyres.iter().map(row).collect(),
    }
}

/// The ages of the tyres.
#[component]
pub fn Ages() -> Html {
    let ages = use_slice(ages).unwrap_or_default();
    if ages.rows.is_empty() {
        return html! {};
    }
    html! { <div class="ages" data-table="handover/ages">{ table(&ages) }</div> }
}
