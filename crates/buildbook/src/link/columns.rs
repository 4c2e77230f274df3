//! The columns of a link: entries put together by field, so that equal things stand beside each other and deflate well.
//!
//! In turn: the sheet sent (empty: the whole book), the book's identity, the version of the defaults, whether ranks are left out; how
//! many fields there are, and for each its place in the table of fields (how far after the one before; 0 for one that is spelled out), its
//! rows, and whether units or marks follow; then all texts, the units and marks, and the headline figures. Numbers are written in sevens
//! of bits, the lowest first.

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use measure::Mark;

use super::{Received, fields};
use crate::{Book, DEFAULTS_VERSION, Entry, Key, RANK, field_of};

/// The entries of one field.
#[derive(Default)]
struct Column<'a> {
    entries: Vec<(Vec<&'a str>, &'a Key, &'a Entry)>,
}

impl Column<'_> {
    /// Whether no entry has a unit or a mark of its own.
    fn is_plain(&self) -> bool {
        let mut entries = self.entries.iter();
        entries.all(|(_, _, entry)| entry.unit.is_none() && entry.mark.is_none())
    }
}

/// Stands for the field's default, and at the end of any other text. Neither byte is found in UTF-8.
pub(super) const DEFAULT: u8 = 0xFE;
pub(super) const END: u8 = 0xFF;

pub(super) fn written(sent: &Received) -> Vec<u8> {
    let mut out = Writer(Vec::new());
    out.text(sent.sheet.as_deref().unwrap_or_default());
    out.text(sent.book.id());
    let without = without_ranks(&sent.book);
    out.number(u64::from(DEFAULTS_VERSION));
    out.number(u64::from(without.is_some()));
    let book = without.as_ref().unwrap_or(&sent.book);
    // Known fields in the order of their table, then those that are spelled out.
    let mut columns: BTreeMap<(usize, String, bool), Column<'_>> = BTreeMap::new();
    for (key, entry) in book.entries() {
        let (pattern, ids) = cut(key);
        let place = fields::place(&pattern).unwrap_or(usize::MAX);
        let column = columns
            .entry((place, pattern, !ids.is_empty()))
            .or_default();
        column.entries.push((ids, key, entry));
    }
    out.number(columns.len() as u64);
    let mut last = 0;
    let mut rows_before: Vec<&[&str]> = Vec::new();
    for ((place, pattern, _), column) in &columns {
        if *place == usize::MAX {
            out.number(0);
            out.text(pattern);
        } else {
            out.number((place + 1 - last) as u64);
            last = *place;
        }
        let rows: Vec<&[&str]> = column
            .entries
            .iter()
            .map(|(ids, ..)| ids.as_slice())
            .collect();
        out.rows(&rows, &rows_before);
        rows_before = rows;
        out.number(u64::from(!column.is_plain()));
    }
    // The texts stand together, apart from what says where they belong: each deflates better among its like.
    for column in columns.values() {
        out.texts(column);
    }
    for column in columns.values().filter(|column| !column.is_plain()) {
        out.units_and_marks(column);
    }
    out.number(sent.headlines.len() as u64);
    for headline in &sent.headlines {
        out.text(&headline.id);
        for value in [headline.value, headline.plus, headline.minus] {
            out.text(&format!("{value:e}"));
        }
    }
    out.0
}

/// The key's pattern and its rows' ids; a key that holds a `*` of its own stands for itself.
fn cut(key: &Key) -> (String, Vec<&str>) {
    if key.as_str().split('/').any(|part| part == "*") {
        return (key.to_string(), Vec::new());
    }
    let pattern = key.pattern();
    let parts = key.as_str().split('/').zip(pattern.split('/'));
    let ids = parts
        .filter(|(_, star)| *star == "*")
        .map(|(id, _)| id)
        .collect();
    (pattern, ids)
}

/// All rows that any entry stands in.
fn rows(book: &Book) -> BTreeSet<Key> {
    let mut rows = BTreeSet::new();
    for (key, _) in book.entries() {
        let mut row = key.row();
        while let Some(here) = row {
            row = here.parent().and_then(|list| list.row());
            rows.insert(here);
        }
    }
    rows
}

/// The book without the ranks that say no more than the row's id, where they can be put back just as they were.
fn without_ranks(book: &Book) -> Option<Book> {
    let implied = |key: &Key, entry: &Entry| {
        key.field() == RANK
            && *entry
                == Entry::new(
                    key.row()
                        .map_or_else(String::new, |row| row.field().to_owned()),
                )
    };
    let kept = book
        .entries()
        .filter(|(key, entry)| !implied(key, entry))
        .map(|(key, entry)| (key.clone(), entry.clone()));
    let without = Book::of(Rc::clone(book.id()), kept);
    (with_ranks(&without) == *book).then_some(without)
}

pub(super) fn with_ranks(book: &Book) -> Book {
    let mut entries = BTreeMap::new();
    entries.extend(
        book.entries()
            .map(|(key, entry)| (key.clone(), entry.clone())),
    );
    for row in rows(book) {
        entries
            .entry(row.under(RANK))
            .or_insert_with(|| Entry::new(row.field()));
    }
    Book::of(Rc::clone(book.id()), entries)
}

/// What a field assumes when it is blank, in a version of the defaults: the text that a link need not spell out.
pub(super) fn assumed(key: &Key, defaults: u32) -> Option<&'static str> {
    field_of(key)?.assumed_in(defaults)
}

struct Writer(Vec<u8>);

impl Writer {
    fn number(&mut self, mut number: u64) {
        while number >= 0x80 {
            self.0.push((number & 0x7F) as u8 | 0x80);
            number >>= 7;
        }
        self.0.push(number as u8);
    }

    fn text(&mut self, text: &str) {
        self.number(text.len() as u64);
        self.0.extend_from_slice(text.as_bytes());
    }

    /// The rows of a field's entries: 0 for those of the field before, else how many ids each has, how many there are, and the ids.
    fn rows(&mut self, rows: &[&[&str]], before: &[&[&str]]) {
        if rows == before {
            self.number(0);
            return;
        }
        let ids = rows.first().map_or(0, |row| row.len());
        self.number(ids as u64 + 1);
        self.number(rows.len() as u64);
        for place in 0..ids {
            for row in rows {
                self.id(row[place]);
            }
        }
    }

    fn texts(&mut self, column: &Column<'_>) {
        for (_, key, entry) in &column.entries {
            if assumed(key, DEFAULTS_VERSION) == Some(&*entry.text) {
                self.0.push(DEFAULT);
            } else {
                self.0.extend_from_slice(entry.text.as_bytes());
                self.0.push(END);
            }
        }
    }

    fn units_and_marks(&mut self, column: &Column<'_>) {
        for (_, _, entry) in &column.entries {
            let mark = match entry.mark {
                None => 0,
                Some(Mark::Point) => 1,
                Some(Mark::Comma) => 2,
            };
            self.number(mark + 4 * u64::from(entry.unit.is_some()));
            if let Some(unit) = &entry.unit {
                self.text(unit);
            }
        }
    }

    /// A counter as twice its number, any other id as twice its length + 1 and its bytes.
    fn id(&mut self, id: &str) {
        match id.parse::<u32>() {
            Ok(counter) if counter.to_string() == id => self.number(2 * u64::from(counter)),
            _ => {
                self.number(2 * id.len() as u64 + 1);
                self.0.extend_from_slice(id.as_bytes());
            }
        }
    }
}
