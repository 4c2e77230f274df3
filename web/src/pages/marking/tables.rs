//! The tables of the pattern: what each feature is struck with, and how its readings agree.

use crate::desk::{use_slice, use_tongue};
use crate::drawings::Table;
use crate::shown::{Written, written};
use crate::state::State;
use crate::widgets::{ResultFigure, table};
use crate::words::{self, Phrase, Tongue, filled, marking as said};
use buildbook::Key;
use buildbook::sheets::marking::Fixed;
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
    let tongue = use_tongue();
    if rows.is_empty() {
        return html! {};
    }
    let heads = columns
        .iter()
        .map(|at| html! { <th scope="col">{ tongue.say(COLUMNS[*at].1) }</th> });
    let body = rows.iter().map(|(row, name)| {
        let cells = columns.iter().map(|at| {
            let id = AttrValue::from(format!("marking/{}/{row}", COLUMNS[*at].0));
            html! { <td class="num"><ResultFigure {id} /></td> }
        });
        html! { <tr key={row.to_string()}><th scope="row">{ name }</th>{ cells.collect::<Html>() }</tr> }
    });
    let title = words::group("marking/strike", tongue);
    panel(
        "marking-strike",
        title.clone(),
        said::STRIKE_SAID,
        tongue,
        html! {
            <div class="table-hold" tabindex="0" role="region" aria-label={title}>
                <table class="table">
                    <thead><tr><th scope="col">{ tongue.say(said::FEATURE) }</th>{ heads.collect::<Html>() }</tr></thead>
                    <tbody>{ body.collect::<Html>() }</tbody>
                </table>
            </div>
        },
    )
}

fn panel(id: &'static str, title: String, below: Phrase, tongue: Tongue, body: Html) -> Html {
    html! {
        <section class="panel" aria-labelledby={id}>
            <div class="panel-head"><h2 class="ruled" {id}>{ title }</h2></div>
            { body }
            <p class="muted">{ tongue.say(below) }</p>
        </section>
    }
}

/// What is left of each reading once the place is found.
#[component]
pub fn Readings() -> Html {
    let found = use_slice(readings);
    let tongue = use_tongue();
    let Some(found) = found.filter(|found| !found.rows.is_empty()) else {
        return html! {};
    };
    let title = words::group("marking/readings", tongue);
    panel(
        "marking-readings",
        title,
        said::RESIDUALS_SAID,
        tongue,
        table(&found),
    )
}

/// What each feature's readings come to, and what is left of each.
pub fn readings(state: &State) -> Table {
    let tongue = state.settings.tongue;
    let list = Key::from(LIST);
    let marking = &state.findings.marking;
    let letters = ["a", "b", "c", "d"];
    let count = marking.taken.datums.as_ref().map_or(2, Vec::len);
    let shown = |length: &Length| Written {
        pm: None,
        ..written(&length.figure(Kind::Length), &state.settings.manner())
    };
    let rows = marking.sheet.features.iter().zip(&marking.taken.features);
    let rows = rows.filter_map(|(row, fixed)| {
        let fix = fixed.fix.as_ref().ok()?;
        let name = words::row_name(&state.book, &list, row.id(), tongue);
        let mut cells = vec![name, of_check(&fix.check, fixed, tongue)];
        let whole = |length: &Length| {
            written(&length.figure(Kind::Length), &state.settings.manner()).whole()
        };
        cells.extend([whole(&fix.at.x), whole(&fix.at.y)]);
        for letter in &letters[..count] {
            let at = fixed
                .readings
                .iter()
                .position(|key| *key == row.key.under(letter));
            let rest = at.and_then(|at| fix.residuals.get(at));
            cells.push(rest.map_or_else(|| "—".to_owned(), |rest| shown(rest).whole()));
        }
        Some(cells)
    });
    let mut head: Vec<String> = [said::FEATURE, said::SAYS, said::WAS_ALONG, said::WAS_ABOVE]
        .map(|phrase| tongue.say(phrase).to_owned())
        .to_vec();
    head.extend(
        letters[..count]
            .iter()
            .map(|letter| words::label(&format!("marking/features/1/{letter}"), tongue)),
    );
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
