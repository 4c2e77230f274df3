//! What stands in the pack, section by section, as plain text.

use super::record::{entries, entry_said, remarks, told, with_money};
use super::results::results;
use super::{Leaf, Piece};
use crate::drawings::handover::ROUND;
use crate::drawings::{
    Plate, Table, conversion, final_drive, gearing, marking, springs, torque, vehicle,
};
use crate::pages;
use crate::pages::handover::{ages, open_said, planned};
use crate::pages::marking::readings;
use crate::pages::tightening::tightening_record;
use crate::state::State;
use crate::widgets::before_and_now_text;
use crate::words::{self, frame, handover};
use buildbook::{Key, SHEETS};

/// The drawings that go into the pack.
const PLATES: &[(&str, &[&Plate])] = &[
    ("vehicle", &[&vehicle::SIDE]),
    ("marking", &[&marking::PATTERN]),
    ("conversion", &[&conversion::ABOVE, &conversion::BUMP]),
    ("gearing", &[&gearing::SPEEDS]),
    ("springs", &[&springs::SIDE]),
    ("final_drive", &[&final_drive::MARKS]),
    ("torque", &[&torque::ORDER]),
];

/// What stands side by side, before and now; of other sheets their headlines.
const COMPARED: &[(&str, &[&str])] = &[
    ("vehicle", pages::vehicle::RESULTS),
    ("gearing", pages::gearing::COMPARED),
    ("springs", pages::springs::COMPARED),
    ("paint", pages::paint::COMPARED),
    ("costs", pages::costs::COMPARED),
];

const ROUND_ALONE: &[&Plate] = &[&ROUND];

/// What the first page says of the vehicle and the day.
pub fn front(state: &State) -> Vec<(String, String)> {
    let fields = [
        "frame_number",
        "engine_number",
        "axle_number",
        "registration",
        "handed_on",
        "handed_by",
        "handed_to",
        "odometer",
    ];
    let keys = fields.map(|field| Key::from(format!("handover/{field}")));
    keys.iter().filter_map(|key| pair(state, key)).collect()
}

/// An entry with its label, where it was made.
pub fn pair(state: &State, key: &Key) -> Option<(String, String)> {
    let entry = state
        .book
        .entry(key.as_str())
        .filter(|entry| !entry.is_blank() && told(state, key))?;
    Some((
        words::label(key.as_str(), state.settings.tongue),
        entry_said(state, key, entry),
    ))
}

/// Every section that has something to say.
pub fn leaves(state: &State) -> Vec<Leaf> {
    let tongue = state.settings.tongue;
    let of_handover = |id: &'static str, group: &str, pieces: Vec<Piece>| Leaf {
        id,
        title: words::group(group, tongue),
        pieces,
        plates: &[],
        follows: id != "checks",
    };
    let mut leaves = vec![
        Leaf {
            id: "handover",
            title: tongue.say(handover::FOUND_AND_DONE).to_owned(),
            pieces: sheet(state, "handover", &["checks", "again", "approvals"]),
            plates: &[],
            follows: false,
        },
        Leaf {
            plates: ROUND_ALONE,
            ..of_handover("checks", "handover/checks", checks(state))
        },
        of_handover("approvals", "handover/approvals", approvals(state)),
        of_handover("open", "handover/open", open(state)),
        of_handover("again", "handover/plan", vec![Piece::Table(planned(state))]),
    ];
    let money = with_money(state);
    for name in SHEETS {
        let begun = state.findings.found(name).is_some_and(|found| found.begun);
        if !begun || name == "handover" || (name == "costs" && !money) {
            continue;
        }
        let mut pieces = Vec::new();
        // These lists stand as records of their own.
        let own: &[&str] = match name {
            "torque" => {
                pieces.push(Piece::Heading(words::group("torque/record", tongue)));
                pieces.push(Piece::Table(tightening_record(state)));
                &["joints"]
            }
            "conversion" => {
                pieces.push(Piece::Heading(words::group("conversion/changes", tongue)));
                pieces.push(Piece::Table(side_changes(state)));
                &["changes", "others"]
            }
            _ => &[],
        };
        pieces.extend(sheet(state, name, own));
        leaves.push(Leaf {
            id: name,
            title: words::page_name(name, tongue),
            pieces,
            plates: PLATES
                .iter()
                .find(|(known, _)| *known == name)
                .map_or(&[], |(_, plates)| *plates),
            follows: false,
        });
    }
    let lines = [
        handover::SIGN_GIVES,
        handover::SIGN_TAKES,
        handover::SIGN_INSPECTS,
    ];
    leaves.push(Leaf {
        id: "signatures",
        title: tongue.say(handover::SIGNATURES).to_owned(),
        pieces: vec![
            Piece::Text(tongue.say(handover::SIGN_SAID).to_owned()),
            Piece::Signatures(lines.map(|line| tongue.say(line).to_owned()).to_vec()),
        ],
        plates: &[],
        follows: false,
    });
    leaves.retain(|leaf| leaf.pieces.iter().any(says_something));
    leaves
}

/// Whether there is anything in a piece: a section of nothing but empty lists is left out.
fn says_something(piece: &Piece) -> bool {
    match piece {
        Piece::Pairs(all) => !all.is_empty(),
        Piece::Table(table) | Piece::Results(table) => !table.rows.is_empty(),
        _ => true,
    }
}

/// A sheet as a record: entries, results, remarks. Lists that stand elsewhere in the pack are left out.
fn sheet(state: &State, name: &str, without: &[&str]) -> Vec<Piece> {
    let tongue = state.settings.tongue;
    let mut pieces = entries(state, name, without);
    let (heading, table) = match name {
        "marking" => (words::group("marking/readings", tongue), readings(state)),
        "handover" => (tongue.say(handover::AGES).to_owned(), ages(state)),
        _ => (String::new(), Table::default()),
    };
    if !table.rows.is_empty() {
        pieces.push(Piece::Heading(heading));
        pieces.push(Piece::Table(table));
    }
    pieces.extend(results(state, name));
    let compared = COMPARED.iter().find(|(known, _)| *known == name);
    let compared = compared.map_or(&[] as &[&str], |(_, results)| results);
    if let Some(table) = before_and_now_text(state, name, compared, with_money(state)) {
        let heading = tongue.say(frame::BEFORE_AND_NOW);
        pieces.push(Piece::Heading(heading.to_owned()));
        pieces.push(Piece::Results(table));
    }
    pieces.extend(remarks(state, name));
    pieces
}

/// What a field of a row says; blank where nothing was entered.
fn cell(state: &State, row: &Key, field: &str) -> String {
    let key = row.under(field);
    let entry = state.book.entry(key.as_str());
    entry.map_or_else(String::new, |entry| entry_said(state, &key, entry))
}

/// A table of a list: the name of each row, then its fields.
fn listed(
    state: &State,
    list: &str,
    what: &str,
    fields: &[&str],
    keep: impl Fn(&Key) -> bool,
) -> Table {
    let tongue = state.settings.tongue;
    let list = Key::from(list);
    let mut head = vec![what.to_owned()];
    head.extend(
        fields
            .iter()
            .map(|field| words::label(list.under("x").under(field).as_str(), tongue)),
    );
    let rows = state.book.rows(&list);
    let rows = rows.iter().filter(|id| keep(&list.under(id))).map(|id| {
        let row = list.under(id);
        let mut cells = vec![words::row_name(&state.book, &list, id, tongue)];
        cells.extend(fields.iter().map(|field| cell(state, &row, field)));
        cells
    });
    Table {
        head,
        rows: rows.collect(),
    }
}

/// The list from before the road; what was not looked at has room for a tick in ink.
fn checks(state: &State) -> Vec<Piece> {
    let tongue = state.settings.tongue;
    let heads = ["checked_by", "checked_on"].map(|field| Key::from(format!("handover/{field}")));
    let pairs = heads.iter().filter_map(|key| pair(state, key)).collect();
    let mut table = listed(
        state,
        "handover/checks",
        tongue.say(handover::WHAT),
        &["state", "note", "by", "on"],
        |_| true,
    );
    for row in &mut table.rows {
        if row[1].is_empty() {
            row[1] = "☐".to_owned();
        }
    }
    // The numbers are those of the drawing.
    for (at, row) in table.rows.iter_mut().enumerate() {
        row[0].insert_str(0, &format!("{}  ", at + 1));
    }
    vec![Piece::Pairs(pairs), Piece::Table(table)]
}

/// The approvals that were entered or that other sheets call for.
fn approvals(state: &State) -> Vec<Piece> {
    let tongue = state.settings.tongue;
    let called = buildbook::sheets::handover::called_for(&state.findings);
    let entered =
        |row: &Key| state.book.below(row).next().is_some() || called.contains(&row.field());
    let fields = ["state", "office", "reference", "on", "note"];
    let mut table = listed(
        state,
        "handover/approvals",
        tongue.say(handover::WHAT),
        &fields,
        entered,
    );
    for row in &mut table.rows {
        if row[1].is_empty() {
            row[1] = words::choice("handover/approvals/x/state", "to_ask", tongue);
        }
    }
    vec![Piece::Table(table)]
}

fn open(state: &State) -> Vec<Piece> {
    let tongue = state.settings.tongue;
    let said = open_said(state);
    if said.is_empty() {
        return vec![Piece::Text(tongue.say(handover::NOTHING_OPEN).to_owned())];
    }
    let rows = said.into_iter().map(|item| {
        vec![
            format!("☐  {}", item.said),
            words::page_name(&item.sheet, tongue),
        ]
    });
    vec![Piece::Table(Table {
        head: [handover::WHAT, handover::SHEET]
            .map(|word| tongue.say(word).to_owned())
            .to_vec(),
        rows: rows.collect(),
    })]
}

/// What changes sides with the driver, with how each thing stands.
fn side_changes(state: &State) -> Table {
    let tongue = state.settings.tongue;
    let fields = ["state", "note", "on"];
    let at = "conversion/changes/x";
    let mut head = vec![tongue.say(handover::WHAT).to_owned()];
    head.extend(fields.map(|field| words::label(&format!("{at}/{field}"), tongue)));
    let rows = state.findings.conversion.changes.iter().map(|change| {
        let list = change.key.parent().unwrap_or_else(|| change.key.clone());
        let mut cells = vec![words::row_name(&state.book, &list, change.id(), tongue)];
        cells.extend(fields.map(|field| cell(state, &change.key, field)));
        if cells[1].is_empty() {
            cells[1].push('☐');
        }
        cells
    });
    Table {
        head,
        rows: rows.collect(),
    }
}
