//! What is still open in every sheet, each with the way to it.

use crate::desk::{use_slice, use_tongue};
use crate::route::Route;
use crate::state::State;
use crate::widgets::{Icon, icon, remark_said};
use crate::words::{self, filled, handover};
use buildbook::Key;
use buildbook::sheets::handover::{Open, open_items};
use yew::prelude::*;

/// What is open, and the sheet where it is closed.
#[derive(Clone, PartialEq)]
pub struct OpenItem {
    /// The sheet.
    pub sheet: String,
    /// What is to be said of it.
    pub said: String,
}

/// Everything that is open, in words.
pub fn said(state: &State) -> Vec<OpenItem> {
    let (book, tongue) = (&state.book, state.settings.tongue);
    let named = |row: &Key| words::row_names(book, &row.under("name"), tongue).join(": ");
    let item = |open: Open<'_>| {
        let (sheet, said) = match open {
            Open::Joint(row) => (
                "torque",
                filled(tongue.say(handover::JOINT_OPEN), &[named(row)]),
            ),
            Open::PutRight(row) => (
                "handover",
                filled(tongue.say(handover::PUT_RIGHT), &[named(row)]),
            ),
            Open::Unseen(count) => (
                "handover",
                filled(tongue.say(handover::UNSEEN), &[count.to_string()]),
            ),
            Open::SideChanges(count) => (
                "conversion",
                filled(tongue.say(handover::SIDES_OPEN), &[count.to_string()]),
            ),
            Open::Approval(row, stands) => {
                let stands = words::choice("handover/approvals/x/state", stands, tongue);
                (
                    "handover",
                    format!("{}: {}", named(&row), stands.to_ascii_lowercase()),
                )
            }
            Open::Remark(sheet, remark) => (sheet, remark_said(state, sheet, remark)),
            Open::Entry(key) => {
                let named = words::entry_name(book, key, tongue);
                (
                    key.sheet(),
                    filled(tongue.say(handover::CANNOT_USE), &[named]),
                )
            }
        };
        OpenItem {
            sheet: sheet.to_owned(),
            said,
        }
    };
    open_items(&state.findings).into_iter().map(item).collect()
}

/// The open items as a list.
#[component]
pub fn OpenItems() -> Html {
    let open = use_slice(said).unwrap_or_default();
    let tongue = use_tongue();
    if open.is_empty() {
        return html! { <p>{ tongue.say(handover::NOTHING_OPEN) }</p> };
    }
    let items = open.iter().map(|item| {
        let sheet = words::page_name(&item.sheet, tongue);
        html! {
            <li>
                <span>{ &item.said }</span>
                <a class="key quiet" href={Route::of_key(&item.sheet).fragment()}>{ sheet }{ icon(Icon::Next) }</a>
            </li>
        }
    });
    html! { <ol class="rows open-items">{ items.collect::<Html>() }</ol> }
}
