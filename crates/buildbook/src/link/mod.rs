//! Links: a whole book, or one sheet with what it reads of others, in the fragment of an address.
//!
//! A link is a version mark, then base64url of: a checksum, then the deflated columns (see `columns`).

mod base64;
mod columns;
mod fields;
mod read;

use std::rc::Rc;

use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::decompress_to_vec_with_limit;

use crate::crc::crc32;
use crate::{Book, BookError, Differing, Entry, Findings, Key, differences, reads, reads_entry};

/// The mark of the version that this program writes.
const VERSION: char = '1';

/// The longest link that is looked at, in characters. The longest that addresses carry anywhere is far shorter.
const LONGEST_LINK: usize = 2 << 20;

/// The most bytes that a link may inflate to.
const LARGEST_PLAIN: usize = 4 << 20;

/// Links beyond this are cut by some chat programs: offer the file instead.
pub const SAFE_LENGTH: usize = 2_000;

/// A main result as the sender saw it.
#[derive(Debug, Clone, PartialEq)]
pub struct Headline {
    /// The result's name.
    pub id: Rc<str>,
    /// Its value (SI), to seven digits.
    pub value: f64,
    /// How far above it the truth can lie (SI, 95 %), to two digits.
    pub plus: f64,
    /// How far below it the truth can lie (SI, 95 %), to two digits.
    pub minus: f64,
}

/// What a link holds.
#[derive(Debug, Clone, PartialEq)]
pub struct Received {
    /// The entries, under the sender's identity of the book.
    pub book: Book,
    /// The sheet that was sent; `None` for a whole book.
    pub sheet: Option<Rc<str>>,
    /// The main results as the sender saw them.
    pub headlines: Vec<Headline>,
}

impl Received {
    /// What differs from a book of the receiver's, value by value. Of a sheet's link, only the sheets that were sent are compared.
    #[must_use]
    pub fn differences(&self, mine: &Book) -> Vec<Differing> {
        let mine = match &self.sheet {
            Some(sheet) => part(mine, sheet),
            None => mine.clone(),
        };
        differences(&mine, &self.book)
    }
}

/// The entries that a sheet's link carries: its own, those it reads of other sheets, and what the book says of itself.
#[must_use]
pub fn part(book: &Book, sheet: &str) -> Book {
    let sheets = [sheet, "book"]
        .into_iter()
        .chain(reads(sheet).iter().copied());
    // How many features are marked out matters to costs only where one of their questions follows it.
    let features = Key::from("marking/features");
    let follows =
        |(key, entry): (&Key, &Entry)| key.field() == "follows" && &*entry.text == "marking";
    let counted = book.sheet("costs").iter().any(follows);
    let mut entries = Vec::new();
    for name in sheets {
        let of_sheet = book.sheet(name);
        let read = of_sheet.iter().filter(|(key, _)| {
            name == sheet
                || reads_entry(sheet, name, &of_sheet, key) && (counted || !key.is_under(&features))
        });
        entries.extend(read.map(|(key, entry)| (key.clone(), entry.clone())));
    }
    Book::of(Rc::clone(book.id()), entries)
}

/// The link of a whole book.
#[must_use]
pub fn link_of_book(book: &Book) -> String {
    let sent = Received {
        book: book.clone(),
        sheet: None,
        headlines: Vec::new(),
    };
    link(&sent)
}

/// The link of one sheet.
#[must_use]
pub fn link_of_sheet(book: &Book, sheet: &str, findings: &Findings) -> String {
    let found = findings.found(sheet);
    let headlines = found.into_iter().flat_map(|found| {
        found.headlines.iter().filter_map(|id| {
            let figure = found.figure(id)?;
            let (plus, minus) = (rounded(figure.plus(), 2), rounded(figure.minus(), 2));
            Some(Headline {
                id: Rc::clone(id),
                value: rounded(figure.value(), 7),
                plus,
                minus,
            })
        })
    });
    link(&Received {
        book: part(book, sheet),
        sheet: Some(sheet.into()),
        headlines: headlines.collect(),
    })
}

fn rounded(value: f64, digits: usize) -> f64 {
    format!("{value:.*e}", digits - 1).parse().unwrap_or(value)
}

fn link(sent: &Received) -> String {
    let plain = columns::written(sent);
    let mut bytes = crc32(&plain).to_le_bytes().to_vec();
    bytes.extend(compress_to_vec(&plain, 10));
    let mut link = String::from(VERSION);
    base64::encode(&bytes, &mut link);
    link
}

/// What a link holds. Nothing but its text is looked at, and nothing is changed.
///
/// # Errors
/// [`BookError::Newer`] for a link of a newer version, [`BookError::TooLarge`] for one that is or becomes too large, [`BookError::NotOurs`]
/// for a text that is no link, [`BookError::Damaged`] for one that was cut or changed on its way.
pub fn received(link: &str) -> Result<Received, BookError> {
    if link.len() > LONGEST_LINK {
        return Err(BookError::TooLarge);
    }
    let mut rest = link.trim().chars();
    match rest.next() {
        Some(VERSION) => {}
        Some('2'..='9') => return Err(BookError::Newer),
        _ => return Err(BookError::NotOurs),
    }
    let bytes = base64::decode(rest.as_str()).ok_or(BookError::Damaged("link"))?;
    let (check, deflated) = bytes
        .split_first_chunk::<4>()
        .ok_or(BookError::Damaged("link"))?;
    let plain = decompress_to_vec_with_limit(deflated, LARGEST_PLAIN).map_err(|error| {
        let too_large = error.status == miniz_oxide::inflate::TINFLStatus::HasMoreOutput;
        if too_large {
            BookError::TooLarge
        } else {
            BookError::Damaged("link")
        }
    })?;
    if crc32(&plain) != u32::from_le_bytes(*check) {
        return Err(BookError::Damaged("checksum"));
    }
    read::read(&plain)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Entry, Log, Place, SHEETS, evaluate, example};
    use measure::Mark;

    #[test]
    fn a_book_comes_back_from_its_link_value_by_value() {
        let book = example::book();
        let link = link_of_book(&book);
        assert!(
            link.bytes()
                .all(|byte| byte.is_ascii_alphanumeric() || byte == b'-' || byte == b'_')
        );
        assert_eq!(received(&link).unwrap().book, book);
    }

    #[test]
    fn every_sheet_of_the_example_fits_a_link_that_chat_programs_do_not_cut() {
        let book = example::book();
        let findings = evaluate(&book, None);
        for sheet in SHEETS {
            let link = link_of_sheet(&book, sheet, &findings);
            // An address of the pages stands before it.
            let room = SAFE_LENGTH - "https://workshop.example.org/reckoner/#/link/".len();
            assert!(link.len() < room, "{sheet}: {}", link.len());
            let received = received(&link).unwrap();
            assert_eq!(received.book, part(&book, sheet), "{sheet}");
            assert_eq!(received.differences(&book), [], "{sheet}");
            assert_eq!(received.sheet.as_deref(), Some(sheet));
        }
    }

    #[test]
    fn a_sheet_that_was_sent_finds_what_it_found_at_its_sender() {
        let book = example::book();
        let findings = evaluate(&book, None);
        for sheet in SHEETS {
            let received = received(&link_of_sheet(&book, sheet, &findings)).unwrap();
            let there = evaluate(&received.book, None);
            let (sent, there) = (findings.found(sheet).unwrap(), there.found(sheet).unwrap());
            assert!(
                sent.results().count() + sent.amounts().count() > 3,
                "{sheet}"
            );
            assert!(sent.results().eq(there.results()), "{sheet}");
            assert!(sent.amounts().eq(there.amounts()), "{sheet}");
            assert_eq!(sent.remarks, there.remarks, "{sheet}");
        }
    }

    #[test]
    fn headline_figures_go_along() {
        let book = example::book();
        let findings = evaluate(&book, None);
        let received = received(&link_of_sheet(&book, "vehicle", &findings)).unwrap();
        let unladen = &received.headlines[0];
        assert_eq!(&*unladen.id, "vehicle/unladen");
        assert!((unladen.value - 1875.0).abs() < 1e-9 && unladen.plus > 0.0);
    }

    #[test]
    fn ranks_units_marks_defaults_and_unknown_keys_come_back() {
        let list = Key::from("gearing/gears");
        let mut book = Book::of(
            "b",
            [
                (
                    "vehicle/payload".into(),
                    Entry::new("1,250").in_unit("lb").with_mark(Mark::Comma),
                ),
                ("vehicle/frontal_share".into(), "0.85".into()),
                ("hovering/skirts/x7/*".into(), "3".into()),
                ("hovering/skirts/4294967296/air".into(), "3".into()),
                ("hovering/skirts/007/air".into(), "".into()),
            ],
        );
        for place in [Place::Last, Place::Last, Place::First] {
            let (_, edit) =
                book.adding_row(&list, place, &Log::default(), &[("ratio", "2".into())]);
            book = book.with(&edit);
        }
        assert_eq!(received(&link_of_book(&book)).unwrap().book, book);
        // A row that has no rank stays so, too.
        let book = book.with(&book.setting("gearing/gears/9/ratio", Some("1".into())));
        assert_eq!(received(&link_of_book(&book)).unwrap().book, book);
    }

    #[test]
    fn a_cut_link_is_damaged_and_a_newer_one_is_newer() {
        let book = example::book();
        let link = link_of_book(&book);
        let findings = evaluate(&book, None);
        let of_sheets = SHEETS
            .iter()
            .map(|sheet| link_of_sheet(&book, sheet, &findings));
        for link in of_sheets.chain([link.clone()]) {
            for length in 1..link.len() {
                let cut = received(&link[..length]);
                assert!(
                    matches!(cut, Err(BookError::Damaged(_))),
                    "{length}: {cut:?}"
                );
            }
        }
        assert_eq!(received(&link.replacen('1', "2", 1)), Err(BookError::Newer));
        assert_eq!(received(""), Err(BookError::NotOurs));
        assert_eq!(received("hello"), Err(BookError::NotOurs));
    }

    #[test]
    fn a_link_that_would_inflate_without_end_is_refused() {
        let mut link = String::from(VERSION);
        let mut bytes = vec![0; 4];
        bytes.extend(compress_to_vec(&vec![b'a'; 64 << 20], 10));
        base64::encode(&bytes, &mut link);
        assert_eq!(received(&link), Err(BookError::TooLarge));
        assert_eq!(
            received(&"1".repeat(LONGEST_LINK + 1)),
            Err(BookError::TooLarge)
        );
    }
}
