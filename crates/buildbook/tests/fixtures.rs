//! Books, envelopes and links of every version are read for ever; damaged ones are refused by their name.

use std::fs;
use std::path::PathBuf;

use buildbook::link::received;
use buildbook::store::{MemoryStore, Shelf, Store};
use buildbook::{Book, BookError, Entry, Key, book_of_file};
use measure::Mark;

fn path(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("../../tests/fixtures")
        .join(name)
}

fn bytes(name: &str) -> Vec<u8> {
    fs::read(path(name)).unwrap_or_else(|error| panic!("{name}: {error}"))
}

fn text(name: &str) -> String {
    String::from_utf8(bytes(name)).unwrap()
}

fn hop_lorry() -> Book {
    let entries: [(&str, Entry); 13] = [
        ("book/name", "Hop lorry".into()),
        ("book/defaults", "1".into()),
        ("book/currency", "EUR".into()),
        ("vehicle/wheelbase", "3185".into()),
        ("vehicle/width", "6 ft 6 in".into()),
        (
            "vehicle/payload",
            Entry::new("1,250").with_mark(Mark::Comma),
        ),
        ("vehicle/bore", Entry::new("3 7/16").in_unit("in")),
        ("gearing/gears/2/rank", "1".into()),
        ("gearing/gears/2/ratio", "3.09".into()),
        ("gearing/gears/1/rank", "2".into()),
        ("gearing/gears/1/ratio", "1.71".into()),
        ("before/gearing/gearing/final_drive", "5.86".into()),
        ("hovering/skirts/1/air", "3 bar".into()),
    ];
    Book::of(
        "hop-lorry-1967",
        entries.map(|(key, entry)| (Key::from(key), entry)),
    )
}

#[test]
fn a_file_of_version_1_is_read() {
    let book = book_of_file(&bytes("books/format-1.json")).unwrap();
    assert_eq!(book, hop_lorry());
    assert_eq!(
        book.rows(&"gearing/gears".into())
            .iter()
            .map(|id| &**id)
            .collect::<Vec<_>>(),
        ["2", "1"]
    );
}

#[test]
fn an_envelope_of_version_1_is_opened_with_its_log() {
    let shelf = Shelf::new(MemoryStore::new());
    shelf
        .store()
        .write(
            "rebuild-reckoner/book/hop-lorry-1967/b",
            &text("books/envelope-1.txt"),
        )
        .unwrap();
    let mut opened = shelf.open("hop-lorry-1967").unwrap();
    assert_eq!(
        (&opened.book, opened.revision, opened.saved_ms),
        (&hop_lorry(), 12, 1_764_000_000_000.0)
    );
    let before = opened.log.undo(&opened.book).unwrap();
    assert_eq!(before.entry("vehicle/wheelbase"), Some(&"3180".into()));
}

#[test]
fn a_link_of_version_1_is_read() {
    let received = received(&text("links/sheet-1.txt")).unwrap();
    assert_eq!(received.sheet.as_deref(), Some("vehicle"));
    assert_eq!(received.book.name(), "Hop lorry");
    assert_eq!(
        received.book.entry("vehicle/wheelbase"),
        Some(&"3185".into())
    );
    assert_eq!(
        received.book.entry("vehicle/bore"),
        Some(&Entry::new("3 7/16").in_unit("in"))
    );
    let headline = &received.headlines[0];
    assert_eq!(
        (&*headline.id, headline.value, headline.plus),
        ("vehicle/unladen", 1875.0, 28.0)
    );
}

/// The book whose entries were written down beside a link.
fn written_down(name: &str) -> Book {
    let table: toml::Table = text(name).parse().unwrap();
    let entries = table["entries"].as_table().unwrap();
    let entries = entries.iter().map(|(key, said)| {
        let entry = Entry::new(said["text"].as_str().unwrap());
        let entry = match said.get("unit") {
            Some(unit) => entry.in_unit(unit.as_str().unwrap()),
            None => entry,
        };
        let entry = match said.get("mark").map(|mark| mark.as_str().unwrap()) {
            Some("comma") => entry.with_mark(Mark::Comma),
            Some("point") => entry.with_mark(Mark::Point),
            Some(other) => panic!("{name}: no mark is called {other}"),
            None => entry,
        };
        (Key::from(key.as_str()), entry)
    });
    Book::of(table["id"].as_str().unwrap(), entries)
}

#[test]
fn a_link_of_a_whole_book_of_version_1_holds_the_same_entries_for_ever() {
    for (name, count) in [("book-1", 29), ("odd-book-1", 15)] {
        let book = written_down(&format!("links/{name}.toml"));
        assert_eq!(book.len(), count, "{name}");
        let received = received(&text(&format!("links/{name}.txt"))).unwrap();
        assert_eq!(received.sheet, None, "{name}");
        assert_eq!(received.book, book, "{name}");
    }
}

#[test]
fn every_damaged_or_hostile_link_is_refused_for_its_reason() {
    let reasons = [
        ("bomb-1.txt", BookError::TooLarge),
        ("many-rows-1.txt", BookError::TooLarge),
        ("newer.txt", BookError::Newer),
        ("future-field-1.txt", BookError::Newer),
        ("future-defaults-1.txt", BookError::Newer),
        ("cut-1.txt", BookError::Damaged("link")),
        ("wrong-sum-1.txt", BookError::Damaged("checksum")),
    ];
    for (name, reason) in &reasons {
        assert_eq!(
            received(&text(&format!("links/{name}"))).as_ref(),
            Err(reason),
            "{name}"
        );
    }
    let files = fs::read_dir(path("links")).unwrap().count();
    // One of a sheet, and two of a book with their entries beside them.
    let read = 1 + 2 * 2;
    assert_eq!(
        files,
        reasons.len() + read,
        "each link of the folder is tried"
    );
}

#[test]
fn every_damaged_file_is_refused_for_its_reason() {
    let reasons = [
        ("newer-format.json", BookError::Newer),
        ("cut.json", BookError::NotOurs),
        ("someone-elses.json", BookError::NotOurs),
        ("not-text.json", BookError::NotOurs),
        ("no-entries.json", BookError::Damaged("entries")),
        ("entry-of-the-wrong-sort.json", BookError::Damaged("entry")),
        ("path-up.json", BookError::Damaged("identity")),
    ];
    for (name, reason) in &reasons {
        assert_eq!(
            book_of_file(&bytes(&format!("damaged/{name}"))).as_ref(),
            Err(reason),
            "{name}"
        );
    }
    let envelopes = [
        ("envelope-wrong-sum.txt", BookError::Damaged("book")),
        ("envelope-newer.txt", BookError::Newer),
    ];
    for (name, reason) in &envelopes {
        let shelf = Shelf::new(MemoryStore::new());
        shelf
            .store()
            .write(
                "rebuild-reckoner/book/hop-lorry-1967/a",
                &text(&format!("damaged/{name}")),
            )
            .unwrap();
        assert_eq!(shelf.open("hop-lorry-1967").as_ref(), Err(reason), "{name}");
    }
    let files = fs::read_dir(path("damaged")).unwrap().count();
    assert_eq!(
        files,
        reasons.len() + envelopes.len(),
        "each file of the folder is tried"
    );
}
