//! The lines that other sheets price: what they come to, how they stand, and the key that pins them.

use crate::desk::{use_desk, use_settings, use_slice};
use crate::shown::money;
use crate::state::{Action, State, more_of};
use crate::widgets::{EntryRow, Icon, icon};
use crate::words::costs::word;
use crate::words::{self, Tongue, filled, frame};
use buildbook::sheets::costs::{LineFinding, PricedFrom};
use buildbook::{Edit, Key};
use measure::{Decimal, Money, shown_decimal};
use trade::costs::LineState;
use yew::prelude::*;

const MORE: &[&str] = &[
    "state",
    "paid_so_far",
    "payer",
    "day",
    "supplier",
    "tax_basis",
    "tax",
    "rate",
    "rate_day",
    "note",
];

#[derive(Clone, PartialEq)]
struct Shown {
    key: String,
    name: String,
    total: String,
    said: String,
    now: Option<String>,
    pinned: bool,
    more: bool,
    edit: Edit,
}

fn times(quantity: Decimal, price: &Money, state: &State) -> String {
    let count = shown_decimal(quantity.normalize(), state.settings.manner().mark);
    filled(
        state.settings.tongue.say(word("times")),
        &[count, money(price, state)],
    )
}

fn standing(from: &PricedFrom, tongue: Tongue) -> String {
    let sheet = words::subject(from.sheet).map_or(from.sheet, |words| tongue.say(words.name));
    match (&from.now, from.pinned) {
        (None, _) => tongue.say(word("gone")).to_owned(),
        (Some(_), true) => tongue.say(word("pinned")).to_owned(),
        (Some(_), false) => filled(tongue.say(word("follows")), &[sheet.to_owned()]),
    }
}

fn state_name(state: LineState) -> &'static str {
    match state {
        LineState::Planned => "planned",
        LineState::Committed => "committed",
        LineState::Paid => "paid",
    }
}

/// What a purchase is called: as it was typed on its sheet, else in the reader's language.
pub(super) fn called(line: &LineFinding, tongue: Tongue) -> String {
    if line.what.is_empty() {
        words::choice("costs/priced/1/pinned_sheet", line.key.field(), tongue)
    } else {
        line.what.to_string()
    }
}

fn shown(line: &LineFinding, state: &State) -> Option<Shown> {
    let from = line.from.as_ref()?;
    let tongue = state.settings.tongue;
    let each = line
        .unit_price
        .map(|price| times(line.quantity, &price, state));
    let standing = standing(from, tongue);
    let stands =
        words::choice("costs/priced/1/state", state_name(line.state), tongue).to_ascii_lowercase();
    let otherwise = from.now.filter(|now| {
        from.pinned && Some(*now) != line.unit_price.map(|price| (line.quantity, price))
    });
    let pack = from
        .pack
        .as_ref()
        .map_or_else(String::new, |pack| format!(", {pack}"));
    Some(Shown {
        key: line.key.to_string(),
        name: called(line, tongue) + &pack,
        total: line
            .amounts
            .as_ref()
            .map_or_else(|_| "—".to_owned(), |amounts| money(&amounts.total, state)),
        said: each
            .into_iter()
            .chain([standing, stands])
            .collect::<Vec<_>>()
            .join(" · "),
        now: otherwise.map(|(quantity, price)| {
            filled(
                tongue.say(word("sheet_says")),
                &[times(quantity, &price, state)],
            )
        }),
        pinned: from.pinned,
        more: state.is_open(&more_of(&line.key)),
        edit: if from.pinned {
            line.following(&state.book)
        } else {
            line.pinning(&state.book)
        },
    })
}

/// Every line that another sheet prices.
#[component]
pub fn PricedLines() -> Html {
    let lines = use_slice(|state| {
        state
            .findings
            .costs
            .lines
            .iter()
            .filter_map(|line| shown(line, state))
            .collect::<Vec<_>>()
    });
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let lines = lines.unwrap_or_default();
    if lines.is_empty() {
        return html! { <p class="muted">{ tongue.say(word("nothing_priced")) }</p> };
    }
    let rows = lines.into_iter().map(|line| {
        let pin = {
            let (desk, edit) = (desk.clone(), line.edit.clone());
            Callback::from(move |_: MouseEvent| {
                if let Some(desk) = &desk {
                    desk.send(Action::Change(edit.clone()));
                }
            })
        };
        let more = {
            let (desk, at) = (desk.clone(), more_of(&Key::from(line.key.as_str())));
            Callback::from(move |_: MouseEvent| {
                if let Some(desk) = &desk {
                    desk.send(Action::Fold(at.clone()));
                }
            })
        };
        let fields: Html = MORE
            .iter()
            .map(|field| html! { <EntryRow key={*field} at={format!("{}/{field}", line.key)} /> })
            .collect();
        let (name, said) = if line.pinned { ("unpin", "unpin") } else { ("pin", "pin") };
        html! {
            <div class="list-row" key={line.key.clone()} data-row={line.key.clone()}>
                <div class="priced-head">
                    <span class="name">{ &line.name }<small>{ &line.said }</small>
                        if let Some(now) = &line.now { <small class="held">{ now }</small> }
                    </span>
                    <span class="num" data-result={line.key.clone()}>{ &line.total }</span>
                    <button type="button" class="key quiet" data-do={format!("more {}", line.key)} aria-expanded={if line.more { "true" } else { "false" }} onclick={more}>
                        { icon(if line.more { Icon::Open } else { Icon::Close }) }{ tongue.say(if line.more { frame::LESS } else { frame::MORE }) }
                    </button>
                    <button type="button" class="key quiet" data-do={format!("{name} {}", line.key)} aria-pressed={if line.pinned { "true" } else { "false" }} onclick={pin}>
                        { icon(Icon::Before) }{ tongue.say(word(said)) }
                    </button>
                </div>
                if line.more { <div class="list-body"><div class="rows">{ fields }</div></div> }
            </div>
        }
    });
    html! { <section class="list" data-list="costs/priced"><div class="rows">{ rows.collect::<Html>() }</div></section> }
}
