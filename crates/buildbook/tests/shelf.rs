//! The shelf: nothing is lost, whatever happens to the store.

use buildbook::store::{MemoryStore, ROUGH, Shelf, Store, WhyAside};
use buildbook::{Book, BookError, Entry, Log, NAME_KEY, example};
use proptest::prelude::*;

fn shelf() -> Shelf<MemoryStore> {
    Shelf::new(MemoryStore::new())
}

fn book(id: &str, name: &str) -> Book {
    Book::of(
        id,
        [
            (NAME_KEY.into(), name.into()),
            ("vehicle/wheelbase".into(), "3 m".into()),
        ],
    )
}

fn changed(book: &Book, text: &str) -> Book {
    book.with(&book.setting("vehicle/wheelbase", Some(text.into())))
}

#[test]
fn a_saved_book_is_found_again_with_its_log() {
    let shelf = shelf();
    let before = book("b1", "Lorry");
    let mut log = Log::default();
    let edit = before.setting("vehicle/wheelbase", Some("3.2 m".into()));
    let after = before.with(&edit);
    log.record(edit, false);
    assert_eq!(shelf.save(&after, &log, 0, 5.0), Ok(1));
    let mut opened = shelf.open("b1").unwrap();
    assert_eq!(
        (&opened.book, opened.revision, opened.saved_ms),
        (&after, 1, 5.0)
    );
    assert_eq!(
        opened.log.undo(&opened.book),
        Some(before),
        "undo survives a reload"
    );
}

#[test]
fn a_writer_that_has_not_seen_the_last_revision_is_refused() {
    let shelf = shelf();
    let first = book("b1", "Lorry");
    shelf.save(&first, &Log::default(), 0, 1.0).unwrap();
    shelf
        .save(&changed(&first, "3.1 m"), &Log::default(), 1, 2.0)
        .unwrap();
    let stale = shelf.save(&changed(&first, "3.2 m"), &Log::default(), 1, 3.0);
    assert_eq!(stale, Err(BookError::Stale { seen: 1, stored: 2 }));
    assert_eq!(shelf.open("b1").unwrap().book, changed(&first, "3.1 m"));
}

#[test]
fn a_saving_that_is_cut_off_leaves_the_revision_before() {
    let shelf = shelf();
    let first = book("b1", "Lorry");
    shelf.save(&first, &Log::default(), 0, 1.0).unwrap();
    shelf
        .save(&changed(&first, "3.1 m"), &Log::default(), 1, 2.0)
        .unwrap();
    shelf.store().cut_writes(true);
    let cut = shelf.save(&changed(&first, "3.2 m"), &Log::default(), 2, 3.0);
    assert_eq!(cut, Err(BookError::Damaged("saving")));
    shelf.store().cut_writes(false);
    let opened = shelf.open("b1").unwrap();
    assert_eq!(
        (opened.revision, opened.book),
        (2, changed(&first, "3.1 m"))
    );
    assert_eq!(opened.aside.len(), 1, "the cut slot is shown");
    // The next saving goes into a free slot: the damaged one stays for download.
    let damaged = shelf.aside_text(&opened.aside[0].slot).unwrap();
    assert_eq!(
        shelf.save(&changed(&first, "3.3 m"), &Log::default(), 2, 4.0),
        Ok(3)
    );
    assert_eq!(
        shelf.save(&changed(&first, "3.4 m"), &Log::default(), 3, 5.0),
        Ok(4)
    );
    assert_eq!(
        shelf.save(&changed(&first, "3.5 m"), &Log::default(), 4, 6.0),
        Ok(5)
    );
    let opened = shelf.open("b1").unwrap();
    assert_eq!(opened.book, changed(&first, "3.5 m"));
    assert_eq!(shelf.aside_text(&opened.aside[0].slot), Ok(damaged));
}

#[test]
fn a_damaged_book_is_set_aside_and_the_others_open_as_ever() {
    let shelf = shelf();
    shelf
        .save(&book("b1", "Lorry"), &Log::default(), 0, 1.0)
        .unwrap();
    shelf
        .save(&book("b2", "Van"), &Log::default(), 0, 2.0)
        .unwrap();
    let name = shelf
        .store()
        .names()
        .unwrap()
        .into_iter()
        .find(|name| name.contains("b1"))
        .unwrap();
    let text = shelf
        .store()
        .read(&name)
        .unwrap()
        .unwrap()
        .replace("3 m", "4 m");
    shelf.store().write(&name, &text).unwrap();
    assert_eq!(shelf.open("b1"), Err(BookError::Damaged("book")));
    assert_eq!(shelf.open("b2").unwrap().book, book("b2", "Van"));
    let shelved = shelf.shelved().unwrap();
    assert_eq!(shelved.books.len(), 1);
    assert_eq!(
        (shelved.aside.len(), shelved.aside[0].why),
        (1, WhyAside::Damaged)
    );
    assert_eq!(shelf.aside_text(&shelved.aside[0].slot), Ok(text.clone()));
    // A new book under the same identity does not touch it.
    assert_eq!(
        shelf.save(&book("b1", "Lorry again"), &Log::default(), 0, 3.0),
        Ok(1)
    );
    assert_eq!(shelf.aside_text(&shelved.aside[0].slot), Ok(text));
}

#[test]
fn a_newer_versions_book_is_refused_and_left_untouched() {
    let shelf = shelf();
    let name = "rebuild-reckoner/book/b1/a";
    shelf
        .store()
        .write(name, "reckoner-2 something new")
        .unwrap();
    assert_eq!(shelf.open("b1"), Err(BookError::Newer));
    assert_eq!(
        shelf.save(&book("b1", "Lorry"), &Log::default(), 0, 1.0),
        Err(BookError::Newer)
    );
    let shelved = shelf.shelved().unwrap();
    assert_eq!(
        (shelved.books.len(), shelved.aside[0].why),
        (0, WhyAside::Newer)
    );
    assert_eq!(
        shelf.store().read(name).unwrap().as_deref(),
        Some("reckoner-2 something new")
    );
}

#[test]
fn a_full_store_says_so_and_loses_nothing() {
    let shelf = shelf();
    let first = book("b1", "Lorry");
    shelf.save(&first, &Log::default(), 0, 1.0).unwrap();
    shelf
        .store()
        .bound(Some(shelf.shelved().unwrap().used + 10));
    assert_eq!(
        shelf.save(&changed(&first, "3.1 m"), &Log::default(), 1, 2.0),
        Err(BookError::Full)
    );
    assert_eq!(shelf.open("b1").unwrap().book, first);
}

#[test]
fn deleted_books_make_room_when_the_store_is_full() {
    let shelf = shelf();
    shelf
        .save(&example::book(), &Log::default(), 0, 1.0)
        .unwrap();
    let first = book("b1", "Lorry");
    shelf.save(&first, &Log::default(), 0, 1.0).unwrap();
    shelf.delete(example::ID, 2.0).unwrap();
    shelf
        .store()
        .bound(Some(shelf.shelved().unwrap().used + 10));
    assert_eq!(
        shelf.save(&changed(&first, "3.1 m"), &Log::default(), 1, 3.0),
        Ok(2)
    );
    assert_eq!(shelf.open(example::ID), Err(BookError::Missing));
}

#[test]
fn a_store_that_is_off_says_so() {
    let shelf = shelf();
    shelf.store().switch_off(true);
    assert_eq!(shelf.shelved(), Err(BookError::Off));
    assert_eq!(shelf.open("b1"), Err(BookError::Off));
    assert_eq!(
        shelf.save(&book("b1", "x"), &Log::default(), 0, 1.0),
        Err(BookError::Off)
    );
}

#[test]
fn a_deleted_book_can_be_brought_back() {
    let shelf = shelf();
    shelf
        .save(&book("b1", "Lorry"), &Log::default(), 0, 1.0)
        .unwrap();
    shelf.delete("b1", 2.0).unwrap();
    let shelved = shelf.shelved().unwrap();
    assert_eq!((shelved.books.len(), shelved.deleted.len()), (0, 1));
    shelf.undelete("b1").unwrap();
    assert_eq!(shelf.shelved().unwrap().books.len(), 1);
    assert_eq!(shelf.open("b1").unwrap().book, book("b1", "Lorry"));
}

#[test]
fn keeping_the_rough_book_leaves_an_empty_one() {
    let shelf = shelf();
    let rough = Book::of(ROUGH, [("paint/name".into(), "x".into())]);
    shelf.save(&rough, &Log::default(), 0, 1.0).unwrap();
    let kept = shelf.keep_rough("b9", "Hop lorry", 2.0).unwrap();
    assert_eq!(kept.book.name(), "Hop lorry");
    assert_eq!(
        shelf.open("b9").unwrap().book.entry("paint/name"),
        Some(&Entry::new("x"))
    );
    assert_eq!(shelf.open(ROUGH).unwrap().book, Book::begun(ROUGH));
}

#[test]
fn settings_and_file_copies_are_remembered() {
    let shelf = shelf();
    let settings = [("units".to_owned(), "imperial".to_owned())].into();
    shelf.keep_settings(&settings).unwrap();
    assert_eq!(shelf.settings(), Ok(settings));
    shelf.note_copied("b1", 12.0).unwrap();
    assert_eq!(shelf.copied("b1"), Ok(Some(12.0)));
    shelf
        .store()
        .write("rebuild-reckoner/settings", "{{{")
        .unwrap();
    assert!(shelf.settings().unwrap().is_empty());
}

#[test]
fn what_others_keep_in_the_same_store_is_left_alone() {
    let shelf = shelf();
    shelf.store().write("someone-elses", "data").unwrap();
    assert_eq!(shelf.shelved().unwrap().books, []);
    shelf.empty_bin().unwrap();
    assert_eq!(
        shelf.store().read("someone-elses").unwrap().as_deref(),
        Some("data")
    );
}

proptest! {
    #[test]
    fn any_text_in_a_slot_is_set_aside_without_a_panic(text in ".{0,300}", good in any::<bool>()) {
        let shelf = shelf();
        if good {
            shelf.save(&book("b1", "Lorry"), &Log::default(), 0, 1.0).unwrap();
        }
        shelf.store().write("rebuild-reckoner/book/b1/b", &text).unwrap();
        let shelved = shelf.shelved().unwrap();
        prop_assert_eq!(shelved.aside.len(), 1);
        match shelf.open("b1") {
            Ok(opened) => prop_assert!(good && opened.book == book("b1", "Lorry")),
            Err(error) => prop_assert!(!good || error == BookError::Newer),
        }
        prop_assert_eq!(shelf.store().read("rebuild-reckoner/book/b1/b").unwrap(), Some(text));
    }
}
