//! The tables of the pattern: what each feature is struck with, and how its readings agree.

use crate::desk::{use_settings, use_slice, use_tongue};
use crate::drawings::Table;
use crate::shown::{NBSP, written};
use crate::state::State;
use crate::widgets::{column_cell, column_head, table};
use crate::words::{self, Phrase, Tongue, filled, marking as said};
use buildbook::sheets::marking::{FeatureEntry, Fixed};
use buildbook::{Given, Key};
use measure::{Kind, Length};
use std::rc::Rc;
use trade::marking::Check;
use yew::prelude::*;

const LIST: &str = "marking/features";

/// The columns of the table to set out from; one that no feature has is left out.
const COLUMNS: [(&str, Phrase); 7] = [
    ("arc_a", said::FROM_A),
    ("arc_b", said::FROM_B),
    ("along", said::ALONG),
    ("across", said::ABOVE),
    ("differs", said::DIFFERS),
    ("land", said::LAND),
    ("worst", said::WORST),
];

type Rows = (Vec<(Rc<str>, String)>, Vec<usize>);

fn rows(state: &State) -> Rows {
    let list = Key::from(LIST);
    let marking = &state.findings.marking;
    let features = marking.sheet.features.iter();
    let rows: Vec<(Rc<str>, String)> = features
        .zip(&marking.moved.features)
        .filter(|(_, goes)| goes.at.is_ok())
        .map(|(row, _)| {
            let name = words::row_name(&state.book, &list, row.id(), state.settings.tongue);
            (row.id().into(), name)
        })
        .collect();
    let has = |name: &str, row: &str| {
        let result = state.findings.result(&format!("marking/{name}/{row}"));
        result.is_some_and(Result::is_ok)
    };
    let columns = (0..COLUMNS.len())
        .filter(|at| rows.iter().any(|(row, _)| has(COLUMNS[*at].0, row)))
        .collect();
    (rows, columns)
}

/// What each feature is struck with on the new side.
#[component]
pub fn Strike() -> Html {
    let (rows, columns) = use_slice(rows).unwrap_or_default();
    let settings = use_settings();
    let tongue = settings.tongue;
    if rows.is_empty() {
        return html! {};
    }
    // All are lengths: the unit stands in the headings, or the table would not fit a tablet.
    let unit = settings.manner().unit(Kind::Length).symbol;
    let heads = columns
        .iter()
        .map(|at| column_head(tongue.say(COLUMNS[*at].1), Some(unit)));
    let body = rows.iter().map(|(row, name)| {
        let cells = columns
            .iter()
            .map(|at| column_cell(format!("marking/{}/{row}", COLUMNS[*at].0), true));
        html! { <tr key={row.to_string()}><th scope="row">{ name }</th>{ cells.collect::<Html>() }</tr> }
    });
    let title = words::group("marking/strike", tongue);
    panel(
        tongue.say(said::STRIKE_SAID),
        html! {
            <div class="table-hold" tabindex="0" role="group" aria-label={title}>
                <table class="table">
                    <thead><tr><th scope="col">{ tongue.say(said::FEATURE) }</th>{ heads.collect::<Html>() }</tr></thead>
                    <tbody>{ body.collect::<Html>() }</tbody>
                </table>
            </div>
        },
    )
}

/// What stands under a heading of its own, and a sentence on it.
pub fn panel(below: &'static str, body: Html) -> Html {
    html! { <div class="panel">{ body }<p class="muted">{ below }</p></div> }
}

/// What is left of each reading once the place is found.
#[component]
pub fn Readings() -> Html {
    let found = use_slice(readings);
    let tongue = use_tongue();
    let Some(found) = found.filter(|found| !found.rows.is_empty()) else {
        return html! {};
    };
    panel(tongue.say(said::RESIDUALS_SAID), table(&found))
}

/// The readings that every feature can have, in the order of the columns.
const READINGS: [&str; 6] = ["a", "b", "c", "d", "along", "across"];

/// What remains of a reading, with no more digits than the reading's own ± supports.
fn remains(rest: &Length, reading: Option<&Length>, state: &State) -> String {
    let manner = state.settings.manner();
    let within = reading.map_or((0.0, 0.0), |reading| (reading.plus(), reading.minus()));
    let unit = manner.unit(Kind::Length);
    let shown = measure::shown_no_finer(rest.value(), within, unit, &manner);
    format!("{}{NBSP}{}", shown.value, shown.unit)
}

/// What each feature's readings come to, and what is left of each.
pub fn readings(state: &State) -> Table {
    let tongue = state.settings.tongue;
    let list = Key::from(LIST);
    let marking = &state.findings.marking;
    let features = || marking.sheet.features.iter().zip(&marking.taken.features);
    let has = |field: &str| {
        let holds = |(row, fixed): (&FeatureEntry, &Fixed)| {
            fixed.fix.is_ok() && fixed.readings.contains(&row.key.under(field))
        };
        features().any(holds)
    };
    let columns: Vec<(usize, &str)> = READINGS
        .into_iter()
        .enumerate()
        .filter(|(_, field)| has(field))
        .collect();
    let more = features().any(|(row, fixed)| {
        let more = row.key.under("more");
        fixed.fix.is_ok() && fixed.readings.iter().any(|key| key.is_under(&more))
    });
    let rows =
        features().filter_map(|(row, fixed)| {
            let fix = fixed.fix.as_ref().ok()?;
            let name = words::row_name(&state.book, &list, row.id(), tongue);
            let mut cells = vec![name, of_check(&fix.check, fixed, tongue)];
            let whole = |length: &Length| {
                written(&length.figure(Kind::Length), &state.settings.manner()).whole()
            };
            cells.extend([whole(&fix.at.x), whole(&fix.at.y)]);
            let rest = |key: &Key, reading: &Given<Length>| {
                let at = fixed.readings.iter().position(|known| known == key)?;
                Some(remains(fix.residuals.get(at)?, reading.value(), state))
            };
            let typed = [&row.a, &row.b, &row.c, &row.d, &row.along, &row.across];
            cells.extend(columns.iter().map(|(at, _)| {
                rest(typed[*at].key(), typed[*at]).unwrap_or_else(|| "—".to_owned())
            }));
            if more {
                let rests = row.more.iter();
                let rests = rests.filter_map(|one| rest(one.reading.key(), &one.reading));
                cells.push(rests.collect::<Vec<_>>().join("; "));
            }
            Some(cells)
        });
    let mut head: Vec<String> = [said::FEATURE, said::SAYS, said::WAS_ALONG, said::WAS_ABOVE]
        .map(|phrase| tongue.say(phrase).to_owned())
        .to_vec();
    let labels = columns.iter();
    head.extend(labels.map(|(_, field)| words::label(&format!("{LIST}/1/{field}"), tongue)));
    head.extend(more.then(|| tongue.say(said::MORE_READINGS).to_owned()));
    Table {
        head,
        rows: rows.collect(),
    }
}

/// What the readings of a feature say of each other.
fn of_check(check: &Check, fixed: &Fixed, tongue: Tongue) -> String {
    match check {
        Check::Agree => tongue.say(said::AGREE).to_owned(),
        Check::Nothing => tongue.say(said::UNCHECKED).to_owned(),
        Check::OneIsBad => tongue.say(said::ONE_IS_BAD).to_owned(),
        Check::SeveralAreBad => tongue.say(said::SEVERAL).to_owned(),
        Check::Spoiled { reading, .. } => {
            let key = fixed.readings.get(*reading);
            let name = key.map_or_else(String::new, |key| words::label(key.as_str(), tongue));
            filled(tongue.say(said::NAMED), &[name])
        }
    }
}
