//! The build book: what was typed, the sheets that read it, and what they find.
//!
//! # How a sheet is made
//!
//! A sheet is one declaration, one struct of findings and one function from the one to the other. The declaration says what each field
//! takes; from it come the reader, the limits, the messages and the rows of the page:
//!
//! ```
//! use std::rc::Rc;
//! use buildbook::field::{choice, count, number};
//! use buildbook::{All, Book, Found, Given, Key, Lack, Rank, Read, Remark, Sheet, State, sheet};
//! use measure::{Kind, Length, Ratio, Rotation, Tool};
//!
//! sheet! {
//!     /// What the example sheet is told.
//!     pub struct DemoSheet = "demo" {
//!         /// How far the wheel rolls in one turn. Measured with the tape: a blank ± is 1 mm.
//!         roll_out: Given<Length> = number("C", Kind::Length).between(0.5, 8.0).measured_with(Tool::Tape),
//!         /// Share of the power that reaches the road. Assumed while it is blank.
//!         efficiency: Given<Ratio> = number("η", Kind::Ratio).between(0.3, 1.0).assumed("0.90"),
//!         /// How the tyre is built.
//!         build: Given<&'static str> = choice(&["radial", "diagonal"]).assumed("radial"),
//!         /// The gears, first gear first: entries `demo/gears/1/ratio`, `demo/gears/2/ratio` ...
//!         gears: Vec<DemoGear>,
//!     }
//!     /// One gear.
//!     pub struct DemoGear {
//!         /// Its ratio: exact, since teeth are counted.
//!         ratio: Given<Ratio> = number("i", Kind::Ratio).between(0.3, 12.0),
//!         /// The teeth of its wheels.
//!         teeth: Given<Ratio> = count("z").between(6.0, 120.0),
//!     }
//! }
//!
//! fn findings(read: Read<DemoSheet>) -> Found {
//!     let mut found = Found::of(&read); // errors of entries, and whether there is any entry
//!     let sheet = &read.sheet;
//!     for gear in &sheet.gears {
//!         // All that is missing is named at once, so that the page can say "needs 2".
//!         let travel = (sheet.roll_out.ask(), gear.ratio.ask())
//!             .all()
//!             .map(|(roll_out, ratio)| (roll_out / ratio).called("s"));
//!         // Ids of results of a row end in the row's id.
//!         found.headline(format!("demo/travel/{}", gear.id()), Kind::Length, &travel);
//!     }
//!     if sheet.gears.len() > 6 {
//!         found.remark(Remark::new(Rank::Remark, "many_gears").at("demo/gears"));
//!     }
//!     found
//! }
//!
//! let book = Book::of("b1", [
//!     (Key::from("demo/roll_out"), "2000 ± 10 mm".into()),
//!     (Key::from("demo/gears/1/ratio"), "4".into()),
//!     (Key::from("demo/gears/2/teeth"), "five".into()),
//! ]);
//! let read = DemoSheet::read(&book);
//! assert!(read.sheet.efficiency.is_assumed());
//! let found = findings(read);
//! assert!((found.figure("demo/travel/1").unwrap().value() - 0.5).abs() < 1e-12);
//! assert!((found.figure("demo/travel/1").unwrap().plus() - 0.0025).abs() < 1e-12);
//! assert_eq!(
//!     found.result("demo/travel/2"),
//!     Some(&Err(Lack::needs(["demo/gears/2/ratio".into()])))
//! );
//! assert_eq!(found.errors[0].0, "demo/gears/2/teeth");
//! assert_eq!(found.state(), State::Warning); // an entry that cannot be read
//! ```
//!
//! Then the sheet is named in `sheets/mod.rs` (its table of fields) in `evaluate.rs` (who reads it) and in `reads.rs` (what it reads).

mod book;
mod calendar;
mod compare;
mod crc;
mod date;
mod declare;
mod edit;
mod entry;
mod error;
mod evaluate;
pub mod example;
pub mod field;
mod finding;
mod given;
mod here;
mod key;
pub mod link;
mod merge;
mod money_back;
mod names;
mod purchase;
mod qr;
mod reader;
mod reads;
mod rows;
mod saved;
pub mod sheets;
pub mod store;
pub mod templates;
mod typing;
mod work_back;

pub use book::{
    Book, BookSheet, CURRENCY_KEY, DEFAULTS_KEY, DEFAULTS_VERSION, Entries, NAME_KEY, UNITS,
    UNITS_KEY,
};
pub use calendar::{Event, Moment, calendar};
pub use compare::{
    BeforeNow, Befores, Difference, before_and_now, before_and_now_of, change, frozen_key,
};
pub use date::Date;
pub use edit::{Change, Edit, Log};
pub use entry::{Entry, Typed};
pub use error::BookError;
pub use evaluate::{Findings, SHEETS, evaluate};
pub use field::{Field, Form, Item, Spec, always_a_row, field_of, preset_rows, row_of};
pub use finding::{
    All, Finding, Found, Lack, MoneyFinding, Rank, Remark, SheetFindings, State, Why,
};
pub use given::{Given, Spot};
pub use key::{Key, RANK};
pub use merge::{Differing, Merged, differences};
pub use money_back::{MoneyWorkedBack, money_back, money_entries};
pub use purchase::Purchase;
pub use qr::{Qr, qr_code};
pub use reader::{
    Answer, Asking, AtLeastOne, Part, Preset, Read, Reader, Row, Sheet, WithPresets, ask,
};
pub use reads::{reads, reads_entry, reads_only};
pub use rows::Place;
pub use saved::{FORMAT, book_of_file, file};
pub use typing::{doubt, typed};
pub use work_back::{WorkBackError, WorkedBack, work_back};
