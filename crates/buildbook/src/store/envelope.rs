//! The envelope a book is kept in: which book, which revision, when, a checksum over all of it, the entries and the log of edits.

use serde_json::{Value, json};

use crate::crc::crc32;
use crate::saved::{book_of_value, book_value, log_of_value, log_value, sound_id};
use crate::{Book, BookError, Log};

/// The mark an envelope begins with, and the version of the envelope.
const MARK: &str = "reckoner-";
const VERSION: u32 = 1;

/// What an envelope says on its outside.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Label {
    pub id: String,
    pub name: String,
    /// Counts up with each saving; the greater one is the newer.
    pub revision: u64,
    /// When it was saved, in milliseconds since 1970, as it was given.
    pub time_ms: f64,
}

/// The text of an envelope: mark, checksum, label, a line break, the book and its log. The checksum covers all that follows it.
pub(super) fn sealed(label: &Label, book: &Book, log: &Log) -> String {
    let outside = json!({ "id": label.id, "name": label.name, "revision": label.revision, "time": label.time_ms });
    let inside = json!({ "book": book_value(book), "log": log_value(log) });
    let covered = format!("{outside}\n{inside}");
    format!(
        "{MARK}{VERSION} {:08x} {covered}",
        crc32(covered.as_bytes())
    )
}

/// The label of an envelope that is whole, and what is inside, not yet read.
pub(super) fn label(text: &str) -> Result<(Label, &str), BookError> {
    let damaged = BookError::Damaged("envelope");
    let rest = text.strip_prefix(MARK).ok_or_else(|| damaged.clone())?;
    let (version, rest) = rest.split_once(' ').ok_or_else(|| damaged.clone())?;
    let version: u32 = version.parse().map_err(|_| damaged.clone())?;
    if version > VERSION {
        return Err(BookError::Newer);
    }
    let (check, covered) = rest.split_once(' ').ok_or_else(|| damaged.clone())?;
    if u32::from_str_radix(check, 16).ok() != Some(crc32(covered.as_bytes())) || check.len() != 8 {
        return Err(BookError::Damaged("checksum"));
    }
    let (outside, inside) = covered.split_once('\n').ok_or_else(|| damaged.clone())?;
    let outside: Value = serde_json::from_str(outside).map_err(|_| damaged.clone())?;
    let text_of = |name: &str| outside.get(name).and_then(Value::as_str).map(str::to_owned);
    let label = Label {
        id: text_of("id")
            .filter(|id| sound_id(id))
            .ok_or_else(|| damaged.clone())?,
        name: text_of("name").unwrap_or_default(),
        revision: outside
            .get("revision")
            .and_then(Value::as_u64)
            .ok_or_else(|| damaged.clone())?,
        time_ms: outside.get("time").and_then(Value::as_f64).unwrap_or(0.0),
    };
    Ok((label, inside))
}

/// What is inside an envelope: the book and its log.
pub(super) fn inside(text: &str) -> Result<(Book, Log), BookError> {
    let mut value: Value = serde_json::from_str(text).map_err(|_| BookError::Damaged("book"))?;
    let log = value.get("log").map(log_of_value).unwrap_or_default();
    let book = value
        .get_mut("book")
        .map(Value::take)
        .ok_or(BookError::Damaged("book"))?;
    Ok((book_of_value(book)?, log))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::example;

    fn sample() -> String {
        let label = Label {
            id: "example".into(),
            name: "Hop lorry".into(),
            revision: 7,
            time_ms: 1.7e12,
        };
        sealed(&label, &example::book(), &Log::default())
    }

    #[test]
    fn what_is_sealed_comes_out_again() {
        let text = sample();
        let (label, rest) = label(&text).unwrap();
        assert_eq!((label.revision, label.name.as_str()), (7, "Hop lorry"));
        assert_eq!(inside(rest).unwrap().0, example::book());
    }

    #[test]
    fn one_changed_character_anywhere_is_noticed() {
        let text = sample();
        for place in (0..text.len()).step_by(37) {
            if text.is_char_boundary(place) && text.is_char_boundary(place + 1) {
                let mut bytes = text.clone().into_bytes();
                bytes[place] ^= 1;
                if let Ok(changed) = String::from_utf8(bytes) {
                    assert!(label(&changed).is_err(), "a change at {place} passed");
                }
            }
        }
        assert!(label(&text[..text.len() - 1]).is_err());
    }

    #[test]
    fn an_envelope_of_a_newer_version_is_called_newer() {
        assert_eq!(label("reckoner-2 whatever").err(), Some(BookError::Newer));
        assert_eq!(label("").err(), Some(BookError::Damaged("envelope")));
    }
}
