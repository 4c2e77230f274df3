//! Any sheet as a record: its entries with their ±, its results, its remarks.

use super::Piece;
use super::leaves::pair;
use crate::drawings::Table;
use crate::shown::{self, NBSP};
use crate::state::State;
use crate::widgets::{rank_word, remark_said};
use crate::words;
use buildbook::{Entry, Form, Key, Spec, field_of, sheets::spec_of};

/// A list with more columns than this stands row by row.
pub const MOST_COLUMNS: usize = 8;

/// An entry as it was typed, with its unit, and the ± of the tool where none was typed.
pub fn entry_said(state: &State, key: &Key, entry: &Entry) -> String {
    let tail = shown::tail(state, key);
    let money = field_of(key).is_some_and(|field| matches!(field.form, Form::Money(_)));
    match (tail.pm, tail.unit) {
        (None, Some(currency)) if money => format!("{}{NBSP}{currency}", entry.text),
        (Some(pm), unit) => {
            let parts = [Some(in_one_piece(entry)), Some(pm), unit];
            let parts: Vec<String> = parts.into_iter().flatten().collect();
            parts.join(&NBSP.to_string())
        }
        _ => shown::entry_said(&state.book, key, entry, state.settings.tongue),
    }
}

/// A number as it was typed, in one piece.
fn in_one_piece(entry: &Entry) -> String {
    entry.text.replace(' ', &NBSP.to_string())
}

/// What a field holds, or what is assumed while it is blank, by the name it is kept under.
pub fn entry_or_assumed(state: &State, key: &str) -> String {
    let entry = state.book.entry(key).map(|entry| entry.text.to_string());
    let assumed = || shown::assumed(state, &Key::from(key)).unwrap_or_default();
    entry.unwrap_or_else(|| assumed().to_owned())
}

/// Whether the pack tells what anything cost.
pub fn with_money(state: &State) -> bool {
    entry_or_assumed(state, "handover/with_money") == "yes"
}

/// Whether the pack tells an entry: money only where that is wanted.
pub fn told(state: &State, key: &Key) -> bool {
    let money = field_of(key).is_some_and(|field| matches!(field.form, Form::Money(_)));
    !money || with_money(state)
}

/// The entries of a sheet, without the lists named.
pub fn entries(state: &State, sheet: &str, without: &[&str]) -> Vec<Piece> {
    let mut pieces = Vec::new();
    if let Some(spec) = spec_of(sheet) {
        below(state, &Key::from(sheet), spec, without, &mut pieces);
    }
    pieces
}

/// The fields below a key as pairs, then its lists.
fn below(state: &State, at: &Key, spec: &Spec, without: &[&str], pieces: &mut Vec<Piece>) {
    let fields = spec.items.iter().filter(|item| item.field.is_some());
    let unseen = ["paper", "sides", "with_money"];
    let pairs: Vec<(String, String)> = fields
        .filter(|item| !unseen.contains(&item.name) && !without.contains(&item.name))
        .filter_map(|item| pair(state, &at.under(item.name)))
        .collect();
    if !pairs.is_empty() {
        pieces.push(Piece::Pairs(pairs));
    }
    for item in spec.items {
        if let (Some(row), false) = (item.row, without.contains(&item.name)) {
            list(state, &at.under(item.name), row, pieces);
        }
    }
}

/// A list: a table where its rows are short, else row by row.
fn list(state: &State, list: &Key, spec: &Spec, pieces: &mut Vec<Piece>) {
    let tongue = state.settings.tongue;
    let rows: Vec<Key> = state
        .book
        .rows(list)
        .iter()
        .map(|id| list.under(id))
        .collect();
    let filled_in = |row: &&Key| {
        state
            .book
            .below(row)
            .any(|(key, _)| key.field() != buildbook::RANK)
    };
    let rows: Vec<&Key> = rows.iter().filter(filled_in).collect();
    if rows.is_empty() {
        return;
    }
    let cell = |row: &Key, field: &str| {
        let key = row.under(field);
        let entry = state
            .book
            .entry(key.as_str())
            .filter(|entry| !entry.is_blank() && told(state, &key));
        entry.map(|entry| entry_said(state, &key, entry))
    };
    let name = |row: &Key| words::row_name(&state.book, list, row.field(), tongue);
    let used: Vec<&str> = spec
        .items
        .iter()
        .filter(|item| item.field.is_some() && !["name", "what", "place"].contains(&item.name))
        .map(|item| item.name)
        .filter(|field| rows.iter().any(|row| cell(row, field).is_some()))
        .collect();
    let nested = spec.items.iter().any(|item| item.row.is_some());
    let title = words::list_words(list.as_str()).map(|words| tongue.say(words.title).to_owned());
    // A row that is alone may be called as its list is. Of rows within a row, whose names stand as headings, the row above is enough.
    let by_row = nested || used.len() > MOST_COLUMNS;
    let title = title.filter(|title| rows.len() > 1 || name(rows[0]) != *title);
    let title = title.filter(|_| !by_row || list.row().is_none());
    pieces.extend(title.map(Piece::Heading));
    if by_row {
        for row in rows {
            pieces.push(Piece::Heading(name(row)));
            below(state, row, spec, &["name", "what", "place"], pieces);
        }
        return;
    }
    let mut head = vec![String::new()];
    head.extend(
        used.iter()
            .map(|field| words::label(list.under("x").under(field).as_str(), tongue)),
    );
    let rows = rows.iter().map(|row| {
        let mut cells = vec![name(row)];
        cells.extend(
            used.iter()
                .map(|field| cell(row, field).unwrap_or_default()),
        );
        cells
    });
    pieces.push(Piece::Table(Table {
        head,
        rows: rows.collect(),
    }));
}

/// The remarks of a sheet, the gravest first.
pub fn remarks(state: &State, sheet: &str) -> Vec<Piece> {
    let Some(found) = state.findings.found(sheet) else {
        return Vec::new();
    };
    let mut all: Vec<_> = found.remarks.iter().collect();
    measure::sort_by_key(&mut all, |remark| std::cmp::Reverse(remark.rank));
    let said = all.iter().map(|remark| {
        let word = state.settings.tongue.say(rank_word(remark.rank));
        (word, remark_said(state, sheet, remark))
    });
    let said: Vec<_> = said.collect();
    if said.is_empty() {
        return Vec::new();
    }
    vec![Piece::Remarks(said)]
}
