//! The columns of a link: entries put together by field, so that equal things stand beside each other and deflate well.
//!
//! In turn: the sheet sent (empty: the whole book), the book's identity, the version of the defaults, whether ranks are left out, then for each field its pattern
//! (what it shares with the one before, and the rest), how many rows' ids it has, how many entries, the ids, the texts, the units and
//! marks; then the headline figures. Numbers are written in sevens of bits, the lowest first. A text that is the field's default is
//! written as 0, any other as its length + 1 and its bytes.

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use measure::Mark;

use super::{Headline, Received};
use crate::saved::{LONGEST_TEXT, MOST_ENTRIES, sound_id};
use crate::{Book, BookError, DEFAULTS_VERSION, Entry, Key, RANK, field_of};

const DAMAGED: BookError = BookError::Damaged("link");

/// The entries of one field.
#[derive(Default)]
struct Column<'a> {
    entries: Vec<(Vec<&'a str>, &'a Key, &'a Entry)>,
}

pub(super) fn written(sent: &Received) -> Vec<u8> {
    let mut out = Writer(Vec::new());
    out.text(sent.sheet.as_deref().unwrap_or_default());
    out.text(sent.book.id());
    let without = without_ranks(&sent.book);
    out.number(u64::from(DEFAULTS_VERSION));
    out.number(u64::from(without.is_some()));
    let book = without.as_ref().unwrap_or(&sent.book);
    let mut columns: BTreeMap<(String, bool), Column<'_>> = BTreeMap::new();
    for (key, entry) in book.entries() {
        let (pattern, ids) = cut(key);
        let starred = !ids.is_empty();
        columns
            .entry((pattern, starred))
            .or_default()
            .entries
            .push((ids, key, entry));
    }
    out.number(columns.len() as u64);
    let mut before = String::new();
    for ((pattern, _), column) in &columns {
        let shared = pattern
            .bytes()
            .zip(before.bytes())
            .take_while(|(a, b)| a == b)
            .count();
        let shared = (0..=shared)
            .rev()
            .find(|at| pattern.is_char_boundary(*at))
            .unwrap_or(0);
        out.number(shared as u64);
        out.text(&pattern[shared..]);
        before.clone_from(pattern);
        out.column(column);
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

fn with_ranks(book: &Book) -> Book {
    let mut entries: BTreeMap<Key, Entry> = book
        .entries()
        .map(|(key, entry)| (key.clone(), entry.clone()))
        .collect();
    for row in rows(book) {
        entries
            .entry(row.under(RANK))
            .or_insert_with(|| Entry::new(row.field()));
    }
    Book::of(Rc::clone(book.id()), entries)
}

/// What a field assumes when it is blank, in a version of the defaults: the text that a link need not spell out.
fn assumed(key: &Key, defaults: u32) -> Option<&'static str> {
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

    fn column(&mut self, column: &Column<'_>) {
        let stars = column.entries.first().map_or(0, |(ids, ..)| ids.len());
        self.number(stars as u64);
        self.number(column.entries.len() as u64);
        for place in 0..stars {
            for (ids, ..) in &column.entries {
                self.id(ids[place]);
            }
        }
        for (_, key, entry) in &column.entries {
            if assumed(key, DEFAULTS_VERSION) == Some(&*entry.text) {
                self.number(0);
            } else {
                self.number(entry.text.len() as u64 + 1);
                self.0.extend_from_slice(entry.text.as_bytes());
            }
        }
        let plain = column
            .entries
            .iter()
            .all(|(_, _, entry)| entry.unit.is_none() && entry.mark.is_none());
        self.number(u64::from(!plain));
        if plain {
            return;
        }
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

pub(super) fn read(plain: &[u8]) -> Result<Received, BookError> {
    let mut from = Columns {
        rest: plain,
        defaults: 0,
        entries: Vec::new(),
    };
    let sheet = from.text()?;
    let id = from.text()?;
    if !sound_id(&id) {
        return Err(DAMAGED);
    }
    from.defaults = u32::try_from(from.number()?).map_err(|_| DAMAGED)?;
    if from.defaults > DEFAULTS_VERSION {
        return Err(BookError::Newer);
    }
    let ranks_left_out = from.number()? == 1;
    let mut pattern = String::new();
    for _ in 0..from.number()? {
        let shared = usize::try_from(from.number()?).map_err(|_| DAMAGED)?;
        let kept = pattern.get(..shared).ok_or(DAMAGED)?.to_owned();
        pattern = kept + &from.text()?;
        from.column(&pattern)?;
    }
    let mut headlines = Vec::new();
    for _ in 0..from.number()? {
        headlines.push(from.headline()?);
    }
    if !from.rest.is_empty() {
        return Err(DAMAGED);
    }
    let count = from.entries.len();
    let book = Book::of(id, from.entries);
    if book.len() != count {
        return Err(DAMAGED);
    }
    let book = if ranks_left_out {
        with_ranks(&book)
    } else {
        book
    };
    let sheet = (!sheet.is_empty()).then(|| sheet.into());
    Ok(Received {
        book,
        sheet,
        headlines,
    })
}

struct Columns<'a> {
    rest: &'a [u8],
    defaults: u32,
    entries: Vec<(Key, Entry)>,
}

impl Columns<'_> {
    fn number(&mut self) -> Result<u64, BookError> {
        let mut number = 0_u64;
        for place in 0..9 {
            let (byte, rest) = self.rest.split_first().ok_or(DAMAGED)?;
            self.rest = rest;
            number |= u64::from(byte & 0x7F) << (7 * place);
            if byte & 0x80 == 0 {
                return Ok(number);
            }
        }
        Err(DAMAGED)
    }

    fn bytes(&mut self, length: u64) -> Result<String, BookError> {
        let length = usize::try_from(length).map_err(|_| DAMAGED)?;
        let (text, rest) = self.rest.split_at_checked(length).ok_or(DAMAGED)?;
        self.rest = rest;
        String::from_utf8(text.to_vec()).map_err(|_| DAMAGED)
    }

    fn text(&mut self) -> Result<String, BookError> {
        let length = self.number()?;
        self.bytes(length)
    }

    fn id(&mut self) -> Result<String, BookError> {
        let number = self.number()?;
        if number % 2 == 0 {
            Ok((number / 2).to_string())
        } else {
            self.bytes(number / 2)
        }
    }

    fn headline(&mut self) -> Result<Headline, BookError> {
        let id = self.text()?.into();
        let mut value = || {
            self.text()?
                .parse::<f64>()
                .ok()
                .filter(|value| value.is_finite())
                .ok_or(DAMAGED)
        };
        Ok(Headline {
            id,
            value: value()?,
            plus: value()?,
            minus: value()?,
        })
    }

    fn column(&mut self, pattern: &str) -> Result<(), BookError> {
        let stars = self.number()?;
        let count = usize::try_from(self.number()?).map_err(|_| DAMAGED)?;
        let known = pattern.split('/').filter(|part| *part == "*").count() as u64;
        if stars != 0 && stars != known {
            return Err(DAMAGED);
        }
        if self.entries.len() + count > MOST_ENTRIES {
            return Err(BookError::TooLarge);
        }
        let mut ids: Vec<Vec<String>> = vec![Vec::new(); count];
        for _ in 0..stars {
            for ids in &mut ids {
                ids.push(self.id()?);
            }
        }
        let first = self.entries.len();
        for ids in ids {
            let key = Key::checked(&filled(pattern, &ids))?;
            let text = match self.number()? {
                0 => assumed(&key, self.defaults)
                    .ok_or(BookError::Newer)?
                    .to_owned(),
                length => self.bytes(length - 1)?,
            };
            if text.len() > LONGEST_TEXT {
                return Err(BookError::TooLarge);
            }
            self.entries.push((key, Entry::new(text)));
        }
        if self.number()? == 1 {
            for place in first..first + count {
                let flags = self.number()?;
                let mark = match flags % 4 {
                    0 => None,
                    1 => Some(Mark::Point),
                    2 => Some(Mark::Comma),
                    _ => return Err(DAMAGED),
                };
                let unit = if flags >= 4 {
                    Some(self.text()?.into())
                } else {
                    None
                };
                let entry = &mut self.entries[place].1;
                entry.mark = mark;
                entry.unit = unit;
            }
        }
        Ok(())
    }
}

/// The pattern with its stars filled in, where there are ids for them.
fn filled(pattern: &str, ids: &[String]) -> String {
    let mut ids = ids.iter();
    let parts: Vec<&str> = pattern
        .split('/')
        .map(|part| {
            if part == "*" {
                ids.next().map_or("*", String::as_str)
            } else {
                part
            }
        })
        .collect();
    parts.join("/")
}
