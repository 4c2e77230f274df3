//! The tightening record: a joint a line, to be printed and kept.

use crate::desk::use_slice;
use crate::drawings::Table;
use crate::joints::{figure_printed, set_to, wrench_name};
use crate::shown::{answer_of, entry_said, written};
use crate::state::State;
use crate::widgets::table;
use crate::words::{self, torque};
use buildbook::Key;
use buildbook::sheets::torque::JointFindings;
use measure::Kind;
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
    let findings = &state.findings.torque;
    let manner = state.settings.manner();
    let joints = findings.joints.iter().zip(&findings.sheet.joints);
    let rows = joints.map(|(joint, entry)| {
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
            // As the manual prints it; a computed one as reckoned.
            figure_printed(state, entry).unwrap_or_else(|| result("figure")),
            page,
            setting_said(state, joint),
            mark("done"),
            mark("marked"),
            cell(&joint.key, "by"),
            cell(&joint.key, "on"),
            entry
                .check_after
                .value()
                .map(|after| written(&after.figure(Kind::Distance), &manner).shortly())
                .unwrap_or_default(),
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

/// What the wrench was set to, and which one where there are several: `43 lbf·ft, Small wrench`.
fn setting_said(state: &State, joint: &JointFindings) -> String {
    let Ok(setting) = &joint.setting else {
        return String::new();
    };
    let wrench = wrench_name(state, joint);
    let said = set_to(state, joint, setting).0;
    wrench.map_or(said.clone(), |wrench| format!("{said}, {wrench}"))
}

/// The record on the page.
#[component]
pub fn TighteningRecord() -> Html {
    let record = use_slice(tightening_record).unwrap_or_default();
    html! { <div class="record">{ table(&record) }</div> }
}
