//! From a keystroke to an entry: the text as typed, with what is needed to read it again in the same way under any settings.

use measure::{Ambiguous, Ask, Doubt, Manner, Mark, MoneyAsk, System};

use crate::field::{Field, Form, Number};
use crate::{Book, Edit, Entry, Key, field_of};

/// The entry that a text typed into a field makes, when the page shows this manner.
#[must_use]
pub fn typed(field: &Field, text: &str, manner: &Manner) -> Entry {
    let entry = Entry::new(text);
    match &field.form {
        Form::Number(number) => typed_number(number, entry, manner),
        Form::Money(_) => {
            // Whether a mark is in doubt depends on no currency: the line's may be finer than the book's.
            let ask = MoneyAsk::price(measure::Currency::GBP, manner.mark);
            let doubtful =
                measure::read_money(text, &ask).is_ok_and(|reading| reading.otherwise.is_some());
            with_mark(entry, doubtful, manner.mark)
        }
        Form::Decimal(places) => {
            let reading = measure::read_decimal(text, manner.mark, None, *places);
            with_mark(
                entry,
                reading.is_ok_and(|reading| reading.otherwise.is_some()),
                manner.mark,
            )
        }
        _ => entry,
    }
}

fn with_mark(entry: Entry, doubtful: bool, mark: Mark) -> Entry {
    if doubtful {
        entry.with_mark(mark)
    } else {
        entry
    }
}

fn typed_number(number: &Number, entry: Entry, manner: &Manner) -> Entry {
    let shown = number
        .units
        .map_or_else(|| manner.unit(number.kind), |_| number.unit(manner.units));
    let metric = number.unit(System::Metric);
    let ask = Ask {
        bare: shown,
        system: manner.units,
        usual: manner.mark,
        ..asked(number)
    };
    let bare_entry = |entry: Entry| {
        if shown == metric {
            entry
        } else {
            entry.in_unit(shown.symbol)
        }
    };
    let Ok(reading) = measure::read(&entry.text, &ask) else {
        return bare_entry(entry);
    };
    let entry = if reading.bare {
        bare_entry(entry)
    } else {
        entry
    };
    let entry = match reading.mark {
        Some(mark) => entry.with_mark(mark),
        None => entry,
    };
    // What is still in doubt is kept in doubt: it is read as in a metric book, and asked about.
    let in_doubt = reading
        .ambiguous
        .is_some_and(|two| matches!(two.doubt, Doubt::Unit { .. }));
    match reading.shared.filter(|_| !in_doubt) {
        Some(unit) => entry.in_unit(unit.symbol),
        None => entry,
    }
}

/// Whether an entry names no unit, as far as it is typed.
fn is_bare(number: &Number, entry: &Entry) -> bool {
    measure::read(&entry.text, &crate::ask(number, entry)).map_or(true, |reading| reading.bare)
}

/// What a number field asks, in metric units and with nothing settled.
fn asked(number: &Number) -> Ask {
    crate::ask(number, &Entry::default())
}

/// The other way in which an entry could be understood, for the page to ask; `None` when there is none.
#[must_use]
pub fn doubt(field: &Field, entry: &Entry) -> Option<Ambiguous> {
    let number = field.number()?;
    let ask = Ask {
        mark: None,
        usual: entry.mark.unwrap_or_default(),
        ..crate::ask(number, entry)
    };
    measure::read(&entry.text, &ask).ok()?.ambiguous
}

impl Book {
    /// The edit that a text typed into a field makes. A bare number that is put right keeps the unit that stands beside it.
    #[must_use]
    pub fn typing(&self, key: &Key, text: &str, manner: &Manner) -> Edit {
        let Some(field) = field_of(key) else {
            return self.setting(key.clone(), Some(Entry::new(text)));
        };
        let mut entry = typed(field, text, manner);
        if let (Some(number), Some(old)) = (field.number(), self.entry(key.as_str()))
            && is_bare(number, old)
            && is_bare(number, &entry)
        {
            entry.unit.clone_from(&old.unit);
        }
        self.setting(key.clone(), Some(entry))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Sheet, sheets::vehicle::VehicleSheet};

    fn value_of(key: &str, text: &str, manner: &Manner) -> (Entry, f64) {
        let book = Book::new("b");
        let book = book.with(&book.typing(&key.into(), text, manner));
        let entry = book.entry(key).cloned().unwrap_or_default();
        let read = VehicleSheet::read(&book);
        assert_eq!(read.errors, []);
        (
            entry,
            read.sheet
                .wheelbase
                .value()
                .map_or(f64::NAN, measure::Quantity::value),
        )
    }

    #[test]
    fn a_bare_number_stays_in_the_unit_it_was_typed_in() {
        let key = "vehicle/wheelbase";
        let metric = Manner::of(System::Metric);
        let imperial = Manner::of(System::Imperial);
        let (entry, value) = value_of(key, "3000", &metric);
        assert_eq!((entry.unit, value), (None, 3.0));
        let (entry, value) = value_of(key, "120", &imperial);
        assert_eq!(entry.unit.as_deref(), Some("in"));
        // 25.4 mm to the inch: NIST SP 811, B.8.
        assert!((value - 3.048).abs() < 1e-12);
        let (entry, value) = value_of(key, "3 m", &imperial);
        assert_eq!((entry.unit, value), (None, 3.0));
    }

    #[test]
    fn a_bare_number_that_is_put_right_keeps_the_unit_beside_it() {
        let key = Key::from("vehicle/wheelbase");
        let manners = [System::Metric, System::Imperial].map(Manner::of);
        let [metric, imperial] = &manners;
        let after = |book: &Book, texts: &[&str], manner: &Manner| {
            let book = texts.iter().fold(book.clone(), |book, text| {
                book.with(&book.typing(&key, text, manner))
            });
            let entry = book.entry(key.as_str()).cloned().unwrap_or_default();
            (book, entry.unit.as_deref().map(str::to_owned))
        };
        let (inches, unit) = after(&Book::new("b"), &["120"], imperial);
        assert_eq!(unit.as_deref(), Some("in"));
        // Letter by letter, also where the text cannot be read on the way.
        let (_, unit) = after(&inches, &["12", "120", "120 1/", "120 1/2"], metric);
        assert_eq!(unit.as_deref(), Some("in"));
        // What names its unit, or begins anew, is no such number.
        assert_eq!(after(&inches, &["3000 mm"], metric).1, None);
        assert_eq!(after(&inches, &["", "3000"], metric).1, None);
        let (millimetres, _) = after(&Book::new("b"), &["3000"], metric);
        assert_eq!(after(&millimetres, &["3001"], imperial).1, None);
    }

    #[test]
    fn a_ton_stays_the_ton_of_the_country_it_was_typed_in() {
        for (system, pounds) in [
            (System::UnitedStates, 2000.0),
            (System::Imperial, 2240.0),
            (System::Metric, 2240.0),
        ] {
            let manner = Manner::of(system);
            let book = Book::new("b");
            let book = book.with(&book.typing(&"vehicle/payload".into(), "1 ton", &manner));
            let payload = VehicleSheet::read(&book).sheet.payload.clone();
            let kilograms = payload.value().map_or(f64::NAN, measure::Quantity::value);
            // 0.453 592 37 kg to the pound: NIST SP 811, B.8.
            assert!((kilograms - pounds * 0.453_592_37).abs() < 1e-9);
            let entry = book.entry("vehicle/payload").cloned().unwrap_or_default();
            let field = field_of(&"vehicle/payload".into()).unwrap();
            let asked = doubt(field, &entry).is_some();
            assert_eq!(asked, system == System::Metric, "{system:?}");
            let settled = doubt(field, &entry.in_unit("short ton"));
            assert!(settled.is_none());
        }
    }

    #[test]
    fn a_doubtful_mark_is_settled_by_the_manner_and_stays_so() {
        let key = Key::from("vehicle/payload");
        let load = |text: &str, mark: Mark| {
            let manner = Manner {
                mark,
                ..Manner::default()
            };
            let book = Book::new("b");
            let book = book.with(&book.typing(&key, text, &manner));
            let entry = book.entry(key.as_str()).cloned().unwrap_or_default();
            let read = VehicleSheet::read(&book);
            (
                entry,
                read.sheet
                    .payload
                    .value()
                    .map_or(f64::NAN, measure::Quantity::value),
            )
        };
        let (entry, value) = load("1,250", Mark::Point);
        assert_eq!((entry.mark, value), (Some(Mark::Point), 1250.0));
        let (entry, value) = load("1,250", Mark::Comma);
        assert_eq!((entry.mark, value), (Some(Mark::Comma), 1.25));
        let field = field_of(&key).unwrap();
        assert!(
            doubt(field, &entry).is_none(),
            "where the comma is the mark it is taken at its word"
        );
        let (entry, _) = load("1,250", Mark::Point);
        assert!(doubt(field, &entry).is_some());
        assert!(doubt(field, &Entry::new("1250")).is_none());
    }
}
