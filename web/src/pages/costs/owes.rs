//! Who owes whom: what each has paid, what each should bear, and the fewest payments that settle it.

use crate::desk::{use_settings, use_slice};
use crate::drawings::Table;
use crate::shown::money;
use crate::state::State;
use crate::widgets::table;
use crate::words::costs::word;
use crate::words::{self, filled};
use buildbook::Key;
use yew::prelude::*;

#[derive(Clone, Default, PartialEq)]
struct Settled {
    transfers: Vec<(String, String)>,
    even: bool,
    table: Table,
}

fn settled(state: &State) -> Option<Settled> {
    let costs = &state.findings.costs;
    let tongue = state.settings.tongue;
    let settlement = costs.settlement.as_ref().ok()?;
    let list = Key::from("costs/payers");
    let name = |at: usize| {
        let id = costs
            .payers
            .get(at)
            .map(|payer| &*payer.id)
            .unwrap_or_default();
        words::row_name(&state.book, &list, id, tongue)
    };
    let transfers = settlement.transfers.iter().map(|transfer| {
        let parts = [
            name(transfer.from),
            money(&transfer.amount, state),
            name(transfer.to),
        ];
        (
            format!("costs/owes/{}/{}", transfer.from + 1, transfer.to + 1),
            filled(tongue.say(word("owes")), &parts),
        )
    });
    let mut rows: Vec<Vec<String>> = (0..costs.payers.len())
        .map(|at| {
            let amount = |amounts: &[measure::Money]| {
                amounts
                    .get(at)
                    .map_or_else(String::new, |amount| money(amount, state))
            };
            vec![
                name(at),
                money(&costs.payers[at].paid, state),
                amount(&settlement.fair),
                amount(&settlement.ahead),
            ]
        })
        .collect();
    if !costs.unassigned.is_zero() {
        rows.push(vec![
            tongue.say(word("unassigned")).to_owned(),
            money(&costs.unassigned, state),
            String::new(),
            String::new(),
        ]);
    }
    Some(Settled {
        even: settlement.transfers.is_empty(),
        transfers: transfers.collect(),
        table: Table {
            head: ["payer", "payer_paid", "payer_fair", "payer_ahead"]
                .map(|name| tongue.say(word(name)).to_owned())
                .to_vec(),
            rows,
        },
    })
}

/// Who owes whom, in a sentence each and as a table.
#[component]
pub fn WhoOwes() -> Html {
    let found = use_slice(settled).flatten();
    let tongue = use_settings().tongue;
    let Some(found) = found else {
        return html! { <p class="muted">{ tongue.say(word("needs_payers")) }</p> };
    };
    let said = found
        .transfers
        .iter()
        .map(|(id, said)| html! { <p class="lead" key={id.clone()} data-result={id.clone()}>{ said }</p> });
    html! {
        <>
            { said.collect::<Html>() }
            if found.even { <p class="lead" data-result="costs/owes">{ tongue.say(word("even")) }</p> }
            { table(&found.table) }
        </>
    }
}
