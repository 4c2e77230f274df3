//! Reading the columns of a link, whatever bytes they are.

use std::rc::Rc;

use measure::Mark;

use super::columns::{DEFAULT, END, assumed, with_ranks};
use super::{Headline, Received, fields};
use crate::saved::{LONGEST_TEXT, MOST_ENTRIES, sound_id};
use crate::{Book, BookError, DEFAULTS_VERSION, Entry, Key};

const DAMAGED: BookError = BookError::Damaged("link");

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
    let columns = from.columns()?;
    let mut marked = Vec::new();
    for column in &columns {
        let first = from.entries.len();
        from.texts(column)?;
        if column.marked {
            marked.push(first..from.entries.len());
        }
    }
    for place in marked.into_iter().flatten() {
        from.unit_and_mark(place)?;
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

/// A field and the rows that it has entries in.
struct Column {
    pattern: String,
    rows: Rc<[Vec<String>]>,
    marked: bool,
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

    fn columns(&mut self) -> Result<Vec<Column>, BookError> {
        let mut columns = Vec::new();
        let mut place = 0_usize;
        let mut rows: Rc<[Vec<String>]> = Rc::new([]);
        let mut entries = 0;
        for _ in 0..self.number()? {
            let pattern = match self.number()? {
                0 => self.text()?,
                step => {
                    let step = usize::try_from(step).map_err(|_| DAMAGED)?;
                    place = place.checked_add(step - 1).ok_or(DAMAGED)?;
                    // A field that this program's table does not hold yet.
                    fields::at(place).ok_or(BookError::Newer)?.to_owned()
                }
            };
            if let Some(new) = self.rows(&pattern)? {
                rows = new.into();
            }
            entries += rows.len();
            if entries > MOST_ENTRIES {
                return Err(BookError::TooLarge);
            }
            let marked = self.number()? == 1;
            columns.push(Column {
                pattern,
                rows: Rc::clone(&rows),
                marked,
            });
        }
        Ok(columns)
    }

    /// The rows of a field, each as its ids; `None` for those of the field before.
    fn rows(&mut self, pattern: &str) -> Result<Option<Vec<Vec<String>>>, BookError> {
        let Some(ids) = self.number()?.checked_sub(1) else {
            return Ok(None);
        };
        let known = pattern.split('/').filter(|part| *part == "*").count() as u64;
        if ids != 0 && ids != known {
            return Err(DAMAGED);
        }
        let count = usize::try_from(self.number()?).map_err(|_| DAMAGED)?;
        if count > MOST_ENTRIES {
            return Err(BookError::TooLarge);
        }
        let mut rows: Vec<Vec<String>> = vec![Vec::new(); count];
        for _ in 0..ids {
            for row in &mut rows {
                row.push(self.id()?);
            }
        }
        Ok(Some(rows))
    }

    fn texts(&mut self, column: &Column) -> Result<(), BookError> {
        for ids in column.rows.iter() {
            let key = Key::checked(&filled(&column.pattern, ids))?;
            let text = if self.rest.first() == Some(&DEFAULT) {
                self.rest = &self.rest[1..];
                assumed(&key, self.defaults)
                    .ok_or(BookError::Newer)?
                    .to_owned()
            } else {
                let length = self
                    .rest
                    .iter()
                    .position(|byte| *byte == END)
                    .ok_or(DAMAGED)?;
                let text = self.bytes(length as u64)?;
                self.rest = &self.rest[1..];
                text
            };
            if text.len() > LONGEST_TEXT {
                return Err(BookError::TooLarge);
            }
            self.entries.push((key, Entry::new(text)));
        }
        Ok(())
    }

    fn unit_and_mark(&mut self, place: usize) -> Result<(), BookError> {
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
        let entry = &mut self.entries.get_mut(place).ok_or(DAMAGED)?.1;
        (entry.mark, entry.unit) = (mark, unit);
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
