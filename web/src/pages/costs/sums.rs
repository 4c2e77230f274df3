//! What is paid, committed and planned, by sheet and by job; the rows add up to the last.

use crate::desk::{use_settings, use_slice};
use crate::shown::money;
use crate::state::State;
use crate::words::costs::word;
use crate::words::{self, Tongue, costs};
use buildbook::sheets::costs::Group as Belongs;
use trade::costs::GroupSum;
use yew::prelude::*;

#[derive(Clone, PartialEq)]
struct Row {
    id: Option<String>,
    name: String,
    amounts: [String; 4],
}

fn named(group: &Belongs, tongue: Tongue) -> String {
    match group {
        Belongs::Job(job) => job.to_string(),
        Belongs::Sheet(sheet) => words::choice("costs/lines/1/sheet", sheet, tongue),
    }
}

fn amounts(sum: &GroupSum, state: &State) -> [String; 4] {
    [sum.paid, sum.committed, sum.planned, sum.total].map(|amount| money(&amount, state))
}

fn rows(state: &State) -> Vec<Row> {
    let found = &state.findings.costs;
    let tongue = state.settings.tongue;
    let mut rows: Vec<Row> = found
        .groups
        .iter()
        .map(|(group, sum)| Row {
            id: Some(format!("costs/group/{}", group.name())),
            name: named(group, tongue),
            amounts: amounts(sum, state),
        })
        .collect();
    if let (Ok(standing), false) = (&found.standing, rows.is_empty()) {
        rows.push(Row {
            id: Some("costs/total".to_owned()),
            name: tongue.say(word("all")).to_owned(),
            amounts: amounts(&standing.sums, state),
        });
    }
    rows
}

/// The sums by sheet and job.
#[component]
pub fn GroupSums() -> Html {
    let rows = use_slice(rows).unwrap_or_default();
    let tongue = use_settings().tongue;
    if rows.is_empty() {
        return html! {};
    }
    let last = rows.len() - 1;
    let body = rows.iter().enumerate().map(|(at, row)| {
        let cells = row.amounts.iter().enumerate().map(|(column, amount)| {
            let id = row.id.clone().filter(|_| column == 3);
            html! { <td class="num" data-result={id}>{ amount }</td> }
        });
        html! { <tr class={(at == last).then_some("sum")}><th scope="row">{ &row.name }</th>{ cells.collect::<Html>() }</tr> }
    });
    let head = ["group", "paid", "committed", "planned", "all"]
        .map(|name| html! { <th scope="col">{ tongue.say(word(name)) }</th> });
    html! {
        <section class="panel" aria-labelledby="g-costs-by-group">
            <h2 class="ruled" id="g-costs-by-group">{ words::group("costs/by_group", tongue) }</h2>
            <div class="table-hold" tabindex="0">
                <table class="table sums"><thead><tr>{ head.into_iter().collect::<Html>() }</tr></thead><tbody>{ body.collect::<Html>() }</tbody></table>
            </div>
            <p class="muted">{ tongue.say(costs::EXACT_SUMS) }</p>
        </section>
    }
}
