//! Any sheet as a record: its entries with their ±, its results, its remarks.

use super::Piece;
use super::leaves::pair;
use crate::drawings::Table;
use crate::shown::{self, NBSP, answer_of};
use crate::state::State;
use crate::widgets::{rank_word, remark_said};
use crate::words::{self, filled};
use buildbook::{Entry, Form, Key, Spec, field_of, sheets::spec_of};

/// A list with more columns than this stands row by row.
const MOST_COLUMNS: usize = 8;

/// Results of more rows than this stand with a line for each row.
const MOST_ROWS_ACROSS: usize = 5;

/// An entry as it was typed, with its unit, and the ± of the tool where none was typed.
pub fn entry_said(state: &State, key: &Key, entry: &Entry) -> String {
    let tail = shown::tail(state, key);
    let money = field_of(key).is_some_and(|field| matches!(field.form, Form::Money(_)));
    match (tail.pm, tail.unit) {
        (None, Some(currency)) if money => format!("{}{NBSP}{currency}", entry.text),
        (Some(pm), unit) => {
            let parts = [Some(entry.text.to_string()), Some(pm), unit];
            let parts: Vec<String> = parts.into_iter().flatten().collect();
            parts.join(&NBSP.to_string())
        }
        _ => shown::entry_said(&state.book, key, entry, state.settings.tongue),
    }
}

/// What a field holds, or what is assumed while it is blank, by the name it is kept under.
pub fn entry_or_assumed(state: &State, key: &str) -> String {
    let entry = state.book.entry(key).map(|entry| entry.text.to_string());
    let assumed = || field_of(&Key::from(key))?.assumed_in(state.book.defaults_version());
    entry.unwrap_or_else(|| assumed().unwrap_or_default().to_owned())
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
            .filter(|entry| !entry.is_blank());
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
    // A row that is alone may be called as its list is.
    let title = title.filter(|title| rows.len() > 1 || name(rows[0]) != *title);
    pieces.extend(title.map(Piece::Heading));
    if nested || used.len() > MOST_COLUMNS {
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

/// The results of a sheet: those of the whole as pairs, those of rows as a table with a column a row. What rows within rows come to
/// is left to the sheet itself.
pub fn results(state: &State, sheet: &str) -> Vec<Piece> {
    let (Some(found), Some(words)) = (state.findings.found(sheet), words::subject(sheet)) else {
        return Vec::new();
    };
    let tongue = state.settings.tongue;
    let mut pairs = Vec::new();
    let mut tables = Vec::new();
    let ids = found
        .results()
        .map(|(id, _)| id)
        .chain(found.amounts().map(|(id, _)| id));
    for id in ids {
        let Some(Ok(written)) = answer_of(state, id) else {
            continue;
        };
        let (Some(told), said) = (words.result(id), written.shortly()) else {
            continue;
        };
        let stars = told.pattern.matches('*').count();
        match told.rows {
            [] if stars == 0 => pairs.push((words::result(&state.book, id, tongue), said)),
            // The plan tells these.
            [_] if told.pattern.contains("due_at") => {}
            [list] if stars == 1 && told.pattern.ends_with('*') => {
                let row = id.rsplit('/').next().unwrap_or_default();
                put(&mut tables, list, row, &bare(tongue.say(told.phrase)), said);
            }
            _ => {}
        }
    }
    let mut pieces = Vec::new();
    if !pairs.is_empty() {
        pieces.push(Piece::Heading(words::group("handover/results", tongue)));
        pieces.push(Piece::Pairs(pairs));
    }
    for OfRows {
        list,
        columns,
        lines,
    } in tables
    {
        let list = Key::from(list);
        let names = columns
            .iter()
            .map(|id| words::row_name(&state.book, &list, id, tongue));
        let table = Table {
            head: std::iter::once(String::new()).chain(names).collect(),
            rows: lines,
        };
        if columns.len() > MOST_ROWS_ACROSS {
            pieces.extend(parted(&flipped(&table)).map(Piece::Table));
        } else {
            pieces.push(Piece::Results(table));
        }
    }
    pieces
}

/// Columns for lines and lines for columns.
fn flipped(table: &Table) -> Table {
    let column = |at: usize| {
        let cells = table.rows.iter().map(|row| row.get(at).cloned());
        let head = table.head.get(at).cloned().unwrap_or_default();
        let cells = cells.map(Option::unwrap_or_default);
        std::iter::once(head).chain(cells).collect::<Vec<_>>()
    };
    Table {
        head: column(0),
        rows: (1..table.head.len()).map(column).collect(),
    }
}

/// A wide table as several that fit the page, each with the first column before its own.
fn parted(table: &Table) -> impl Iterator<Item = Table> {
    let columns: Vec<usize> = (1..table.head.len()).collect();
    let part = |columns: &[usize]| {
        let of = |row: &Vec<String>| {
            let cells = columns.iter().map(|at| row[*at].clone());
            std::iter::once(row[0].clone()).chain(cells).collect()
        };
        Table {
            head: of(&table.head),
            rows: table.rows.iter().map(of).collect(),
        }
    };
    let parts: Vec<Table> = columns.chunks(MOST_COLUMNS - 1).map(part).collect();
    parts.into_iter()
}

/// The results of a list's rows: a line for what they tell, a column for each row.
struct OfRows<'a> {
    list: &'a str,
    columns: Vec<&'a str>,
    lines: Vec<Vec<String>>,
}

/// Puts a result of a row into the table of its list.
fn put<'a>(tables: &mut Vec<OfRows<'a>>, list: &'a str, row: &'a str, told: &str, said: String) {
    let at = tables.iter().position(|known| known.list == list);
    let at = at.unwrap_or_else(|| {
        tables.push(OfRows {
            list,
            columns: Vec::new(),
            lines: Vec::new(),
        });
        tables.len() - 1
    });
    let OfRows { columns, lines, .. } = &mut tables[at];
    let column = columns.iter().position(|known| *known == row);
    let column = column.unwrap_or_else(|| {
        columns.push(row);
        columns.len() - 1
    });
    let line = lines.iter().position(|line| line[0] == told);
    let line = line.unwrap_or_else(|| {
        lines.push(vec![told.to_owned()]);
        lines.len() - 1
    });
    let wide = (columns.len() + 1).max(lines[line].len());
    lines[line].resize(wide, String::new());
    lines[line][column + 1] = said;
}

/// What a result of a row tells, without the row: "Rate: {0}" is "Rate".
fn bare(phrase: &str) -> String {
    let said = filled(phrase, &["…".to_owned()]);
    let said = said.trim_end_matches([':', ',', ' ', '…']);
    said.trim_start_matches([':', ',', ' ', '…']).to_owned()
}

/// The remarks of a sheet, the gravest first.
pub fn remarks(state: &State, sheet: &str) -> Vec<Piece> {
    let Some(found) = state.findings.found(sheet) else {
        return Vec::new();
    };
    let mut all: Vec<_> = found.remarks.iter().collect();
    all.sort_by_key(|remark| std::cmp::Reverse(remark.rank));
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
