//! The saved form of a book: JSON, written out member by member, so that no change elsewhere changes it by accident.

use measure::Mark;
use serde_json::{Map, Value, json};

use crate::{Book, BookError, Change, Edit, Entry, Key, Log};

/// The version of the saved form that this program writes.
pub const FORMAT: u32 = 1;

/// What a file of ours says it is.
const WHAT: &str = "rebuild reckoner build book";

/// The largest file that is read, in bytes.
const LARGEST_FILE: usize = 8 << 20;

/// The most entries a book may have.
pub(crate) const MOST_ENTRIES: usize = 50_000;

/// The longest text of one entry, in bytes.
pub(crate) const LONGEST_TEXT: usize = 20_000;

/// Makes a book of one version into one of the next.
type Migration = fn(&mut Map<String, Value>) -> Result<(), BookError>;

/// The migrations, the one from version 1 to version 2 first. A new version of the saved form adds one, and a fixture of the old.
const MIGRATIONS: &[Migration] = &[];

/// A book as the text of a file.
#[must_use]
pub fn file(book: &Book) -> String {
    let text = serde_json::to_string_pretty(&book_value(book));
    text.expect("a value of texts and maps can always be written")
}

/// A book from the text of a file, of this version or an older one.
///
/// # Errors
/// [`BookError::TooLarge`], [`BookError::NotOurs`], [`BookError::Newer`], [`BookError::Damaged`], [`BookError::Key`].
pub fn book_of_file(bytes: &[u8]) -> Result<Book, BookError> {
    if bytes.len() > LARGEST_FILE {
        return Err(BookError::TooLarge);
    }
    let value: Value = serde_json::from_slice(bytes).map_err(|_| BookError::NotOurs)?;
    book_of_value(value)
}

/// A book as a value of JSON.
pub(crate) fn book_value(book: &Book) -> Value {
    let entries: Map<String, Value> = book
        .entries()
        .map(|(key, entry)| (key.to_string(), entry_value(entry)))
        .collect();
    json!({ "what": WHAT, "format": FORMAT, "id": &**book.id(), "entries": entries })
}

/// A book from a value of JSON.
pub(crate) fn book_of_value(value: Value) -> Result<Book, BookError> {
    let map = migrated(value, MIGRATIONS)?;
    let id = map
        .get("id")
        .and_then(Value::as_str)
        .filter(|id| sound_id(id))
        .ok_or(BookError::Damaged("identity"))?;
    let entries = map
        .get("entries")
        .and_then(Value::as_object)
        .ok_or(BookError::Damaged("entries"))?;
    if entries.len() > MOST_ENTRIES {
        return Err(BookError::TooLarge);
    }
    let read = entries
        .iter()
        .map(|(key, value)| Ok((Key::checked(key)?, entry_of_value(value)?)));
    Ok(Book::of(id, read.collect::<Result<Vec<_>, BookError>>()?))
}

/// The members of a book, brought up to this version step by step.
fn migrated(value: Value, migrations: &[Migration]) -> Result<Map<String, Value>, BookError> {
    let Value::Object(mut map) = value else {
        return Err(BookError::NotOurs);
    };
    if map.get("what").and_then(Value::as_str) != Some(WHAT) {
        return Err(BookError::NotOurs);
    }
    let format = map
        .get("format")
        .and_then(Value::as_u64)
        .ok_or(BookError::Damaged("format"))?;
    let newest = migrations.len() as u64 + 1;
    if format > newest {
        return Err(BookError::Newer);
    }
    let done = usize::try_from(format)
        .ok()
        .and_then(|format| format.checked_sub(1));
    for migration in &migrations[done.ok_or(BookError::Damaged("format"))?..] {
        migration(&mut map)?;
    }
    Ok(map)
}

/// Whether a text can be a book's identity.
pub(crate) fn sound_id(id: &str) -> bool {
    (1..=40).contains(&id.len())
        && id
            .bytes()
            .all(|byte| byte.is_ascii_alphanumeric() || byte == b'-')
}

fn entry_value(entry: &Entry) -> Value {
    if entry.unit.is_none() && entry.mark.is_none() {
        return Value::from(&*entry.text);
    }
    let mut map = Map::new();
    map.insert("text".into(), Value::from(&*entry.text));
    if let Some(unit) = &entry.unit {
        map.insert("unit".into(), Value::from(&**unit));
    }
    if let Some(mark) = entry.mark {
        map.insert("mark".into(), Value::from(mark.sign().to_string()));
    }
    Value::Object(map)
}

fn entry_of_value(value: &Value) -> Result<Entry, BookError> {
    let text = |text: &str| {
        if text.len() > LONGEST_TEXT {
            Err(BookError::TooLarge)
        } else {
            Ok(Entry::new(text))
        }
    };
    match value {
        Value::String(typed) => text(typed),
        Value::Object(map) => {
            let typed = map
                .get("text")
                .and_then(Value::as_str)
                .ok_or(BookError::Damaged("text"))?;
            let mut entry = text(typed)?;
            if let Some(unit) = map.get("unit") {
                let unit = unit
                    .as_str()
                    .filter(|unit| unit.len() <= 40)
                    .ok_or(BookError::Damaged("unit"))?;
                entry = entry.in_unit(unit);
            }
            match map.get("mark").map(Value::as_str) {
                None => {}
                Some(Some(".")) => entry.mark = Some(Mark::Point),
                Some(Some(",")) => entry.mark = Some(Mark::Comma),
                Some(_) => return Err(BookError::Damaged("mark")),
            }
            Ok(entry)
        }
        _ => Err(BookError::Damaged("entry")),
    }
}

/// The log as a value of JSON: each change as key, old, new.
pub(crate) fn log_value(log: &Log) -> Value {
    let entry = |entry: &Option<Entry>| entry.as_ref().map_or(Value::Null, entry_value);
    let edits = |edits: &[Edit]| -> Vec<Value> {
        let change =
            |change: &Change| json!([change.key.as_str(), entry(&change.old), entry(&change.new)]);
        edits
            .iter()
            .map(|edit| edit.0.iter().map(change).collect())
            .collect()
    };
    json!({ "done": edits(log.done()), "undone": edits(log.undone()) })
}

/// A log from a value of JSON. A log that cannot be read is an empty one: what was typed is in the entries.
pub(crate) fn log_of_value(value: &Value) -> Log {
    let edits = |name: &str| -> Option<Vec<Edit>> {
        value
            .get(name)?
            .as_array()?
            .iter()
            .map(edit_of_value)
            .collect()
    };
    match (edits("done"), edits("undone")) {
        (Some(done), Some(undone)) => Log::of(done, undone),
        _ => Log::default(),
    }
}

fn edit_of_value(value: &Value) -> Option<Edit> {
    let entry = |value: &Value| -> Option<Option<Entry>> {
        if value.is_null() {
            Some(None)
        } else {
            entry_of_value(value).ok().map(Some)
        }
    };
    let change = |value: &Value| -> Option<Change> {
        let [key, old, new] = value.as_array()?.as_slice() else {
            return None;
        };
        Some(Change {
            key: Key::checked(key.as_str()?).ok()?,
            old: entry(old)?,
            new: entry(new)?,
        })
    };
    value
        .as_array()?
        .iter()
        .map(change)
        .collect::<Option<Vec<_>>>()
        .map(Edit)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::example;

    #[test]
    fn a_book_comes_back_from_its_file_value_by_value() {
        let book = example::book();
        assert_eq!(book_of_file(file(&book).as_bytes()), Ok(book));
    }

    #[test]
    fn units_and_marks_come_back_from_a_file() {
        let entry = Entry::new("1,250").in_unit("lb").with_mark(Mark::Comma);
        let book = Book::of(
            "b",
            [
                ("vehicle/payload".into(), entry),
                ("vehicle/name".into(), "Łódź \"3\"\n".into()),
            ],
        );
        assert_eq!(book_of_file(file(&book).as_bytes()), Ok(book));
    }

    #[test]
    fn keys_of_newer_versions_survive() {
        let text = r#"{"what":"rebuild reckoner build book","format":1,"id":"b","entries":{"hovering/skirts/1/air":"3 bar"}}"#;
        let book = book_of_file(text.as_bytes()).unwrap();
        assert_eq!(book.entry("hovering/skirts/1/air"), Some(&"3 bar".into()));
        assert_eq!(book_of_file(file(&book).as_bytes()), Ok(book));
    }

    #[test]
    fn a_newer_book_is_refused_as_newer() {
        let text = r#"{"what":"rebuild reckoner build book","format":2,"id":"b","pages":[]}"#;
        assert_eq!(book_of_file(text.as_bytes()), Err(BookError::Newer));
    }

    #[test]
    fn an_older_book_is_brought_up_step_by_step() {
        // Steps of a future version, to prove the path that they will take.
        let second: Migration = |map| {
            let id = map
                .remove("identity")
                .ok_or(BookError::Damaged("identity"))?;
            map.insert("id".into(), id);
            Ok(())
        };
        let third: Migration = |map| {
            map.insert("entries".into(), json!({ "vehicle/name": "Lorry" }));
            Ok(())
        };
        let old = json!({ "what": WHAT, "format": 1, "identity": "b" });
        let map = migrated(old, &[second, third]).unwrap();
        assert_eq!(map["id"], "b");
        assert_eq!(map["entries"]["vehicle/name"], "Lorry");
        let half_old = json!({ "what": WHAT, "format": 2, "id": "b" });
        assert_eq!(
            migrated(half_old, &[second, third]).unwrap()["entries"]["vehicle/name"],
            "Lorry"
        );
        let newer = json!({ "what": WHAT, "format": 4, "id": "b" });
        assert_eq!(migrated(newer, &[second, third]), Err(BookError::Newer));
    }

    #[test]
    fn a_log_that_cannot_be_read_costs_the_undo_only() {
        assert_eq!(
            log_of_value(&json!({ "done": [[["no key", null, "x"]]], "undone": [] })),
            Log::default()
        );
        assert_eq!(log_of_value(&json!(7)), Log::default());
    }
}
