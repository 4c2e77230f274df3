//! The tightening record: a joint a line, to be printed and kept.

use crate::desk::use_slice;
use crate::drawings::Table;
use crate::shown::{answer_of, entry_said};
use crate::state::State;
use crate::widgets::table;
use crate::words::{self, torque};
use buildbook::Key;
use yew::prelude::*;

/// The tightening record: joint by joint the figure, what the wrench was set to, and who has done it.
pub fn tightening_record(state: &State) -> Table {
    let tongue = state.settings.tongue;
    let list = Key::from("torque/joints");
    let label = |field: &str| words::label(list.under("x").under(field).as_str(), tongue);
    let cell = |row: &Key, field: &str| {
        let key = row.under(field);
        let entry = state.book.entry(key.as_str());
        entry.map_or_else(String::new, |entry| {
            entry_said(&state.book, &key, entry, tongue)
        })
    };
    let rows = state.findings.torque.joints.iter().map(|joint| {
        let result = |name: &str| {
            let id = format!("torque/{name}/{}", joint.key.field());
            answer_of(state, &id)
                .and_then(Result::ok)
                .map(|written| written.shortly())
                .unwrap_or_default()
        };
        let page = if joint.computed {
            tongue.say(torque::COMPUTED).to_owned()
        } else {
            cell(&joint.key, "page")
        };
        let mark = |field: &str| {
            Some(cell(&joint.key, field))
                .filter(|said| !said.is_empty())
                .unwrap_or_else(|| "☐".to_owned())
        };
        vec![
            words::row_name(&state.book, &list, joint.key.field(), tongue),
            result("figure"),
            page,
            result("setting"),
            mark("done"),
            mark("marked"),
            cell(&joint.key, "by"),
            cell(&joint.key, "on"),
            cell(&joint.key, "check_after"),
        ]
    });
    let heads = ["page", "done", "marked", "by", "on", "check_after"].map(label);
    let [page, done, marked, by, on, again] = heads;
    let head = vec![
        label("name"),
        tongue.say(torque::FIGURE).to_owned(),
        page,
        tongue.say(torque::SET_TO).to_owned(),
        done,
        marked,
        by,
        on,
        again,
    ];
    Table {
        head,
        rows: rows.collect(),
    }
}

/// The record on the page.
#[component]
pub fn TighteningRecord() -> Html {
    let record = use_slice(tightening_record).unwrap_or_default();
    html! { <div class="record">{ table(&record) }</div> }
}
