//! The plan as a calendar file.

use super::plan::{name, odometer};
use crate::browser;
use crate::desk::{use_desk, use_slice, use_tongue};
use crate::files;
use crate::state::State;
use crate::words::{filled, handover};
use buildbook::{Event, calendar};
use yew::prelude::*;

/// What is not done yet and has a day, as events. An event keeps its identity while book and row keep theirs.
fn events(state: &State) -> Vec<Event> {
    let tongue = state.settings.tongue;
    let due = state
        .findings
        .handover
        .plan
        .iter()
        .filter(|due| due.done.is_none());
    due.filter_map(|due| {
        let odometer = odometer(state, due).filter(|_| !due.by_date);
        let description = match odometer {
            Some(odometer) => filled(tongue.say(handover::AT_ODOMETER), &[odometer]),
            None => tongue.say(handover::ON_THIS_DAY).to_owned(),
        };
        Some(Event {
            uid: format!(
                "{}.{}@rebuild-reckoner",
                due.row.as_str().replace('/', "-"),
                state.book.id()
            ),
            day: due.on?,
            summary: name(state, &due.row),
            description,
        })
    })
    .collect()
}

/// The vehicle's name, else the book's.
pub fn vehicle_name(state: &State) -> String {
    let named = state.findings.vehicle.sheet.name.value();
    named.map_or_else(|| state.book.name().to_owned(), ToString::to_string)
}

/// The key that hands the file out; in its place what it needs, while nothing has a day.
#[component]
pub fn CalendarKey() -> Html {
    let (desk, tongue) = (use_desk(), use_tongue());
    let ready = use_slice(|state| !events(state).is_empty()).unwrap_or(false);
    let save = Callback::from(move |_: MouseEvent| {
        let (Some(desk), Some(now)) = (&desk, browser::moment()) else {
            return;
        };
        let state = desk.state();
        let file = calendar(&vehicle_name(&state), now, &events(&state));
        files::save("look-again.ics", "text/calendar;charset=utf-8", &file);
    });
    if ready {
        html! { <button type="button" class="key tall" data-do="calendar" onclick={save}>{ tongue.say(handover::CALENDAR) }</button> }
    } else {
        html! { <span class="muted">{ tongue.say(handover::CALENDAR_NEEDS) }</span> }
    }
}
