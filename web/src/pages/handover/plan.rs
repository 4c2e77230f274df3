//! When to look again: the soonest first, by odometer and day.

use crate::desk::use_slice;
use crate::drawings::Table;
use crate::shown::{answer_of, plain};
use crate::state::State;
use crate::widgets::table;
use crate::words::{self, filled, handover};
use buildbook::Key;
use buildbook::sheets::handover::Due;
use measure::Kind;
use yew::prelude::*;

/// What a row of the plan is about.
pub fn name(state: &State, row: &Key) -> String {
    words::row_names(&state.book, &row.under("name"), state.settings.tongue).join(": ")
}

/// What the odometer shows when it is due, or after how far that is.
pub fn odometer(state: &State, due: &Due) -> Option<String> {
    let known = due.at.as_ref().and_then(|at| answer_of(state, at)?.ok());
    let after = || {
        let far = plain(due.after?, Kind::Distance, &state.settings.manner());
        Some(filled(state.settings.tongue.say(handover::AFTER), &[far]))
    };
    known.map(|written| written.shortly()).or_else(after)
}

/// What is said below a row's name: when it is due, or that it was done.
pub fn due_of(state: &State, row: &Key) -> Option<String> {
    let due = state
        .findings
        .handover
        .plan
        .iter()
        .find(|due| due.row == *row)?;
    let tongue = state.settings.tongue;
    if let Some(done) = due.done {
        return Some(format!("{} {done}", tongue.say(handover::DONE)));
    }
    let parts: Vec<String> = due
        .on
        .map(|day| day.to_string())
        .into_iter()
        .chain(odometer(state, due))
        .collect();
    Some(parts.join(" · "))
}

/// The plan as a table.
pub fn planned(state: &State) -> Table {
    let tongue = state.settings.tongue;
    let head = [
        handover::DAY,
        handover::ODOMETER,
        handover::WHAT,
        handover::DONE,
    ];
    let row = |due: &Due| {
        vec![
            due.on.map_or_else(|| "—".into(), |day| day.to_string()),
            odometer(state, due).unwrap_or_else(|| "—".into()),
            name(state, &due.row),
            due.done.map(|day| day.to_string()).unwrap_or_default(),
        ]
    };
    Table {
        head: head.map(|phrase| tongue.say(phrase).to_owned()).to_vec(),
        rows: state.findings.handover.plan.iter().map(row).collect(),
    }
}

/// The plan.
#[component]
pub fn PlanTable() -> Html {
    let plan = use_slice(planned).unwrap_or_default();
    html! { <div class="plan">{ table(&plan) }</div> }
}
