//! Properties that hold for any book, any edits and any bytes.

use buildbook::link::{link_of_book, received};
use buildbook::{
    Book, BookError, Edit, Entry, Key, Log, Place, Sheet, book_of_file, differences, evaluate,
    example, field_of, file, work_back,
};
use measure::{Manner, Mark};
use proptest::collection::vec;
use proptest::prelude::*;

fn key() -> impl Strategy<Value = Key> {
    prop_oneof![
        Just("vehicle/wheelbase".to_owned()),
        Just("vehicle/payload".to_owned()),
        Just("vehicle/frontal_share".to_owned()),
        "gearing/gears/[1-4]/ratio",
        "gearing/gears/[1-4]/rank",
        "springs/springs/[12]/leaves/[1-5]/thickness",
        "[a-z]{1,5}/[a-zé*]{1,5}(/[a-z0-9*]{1,3}/[a-z]{1,4}){0,2}",
        "before/gearing/gearing/gears/[12]/ratio",
    ]
    .prop_map(Key::from)
}

fn entry() -> impl Strategy<Value = Entry> {
    let text = prop_oneof!["[0-9]{1,4}", Just("0.85".to_owned()), "[^\\s].{0,20}"];
    let unit = proptest::option::of(prop_oneof![Just("in".to_owned()), Just("US qt".to_owned())]);
    let mark = proptest::option::of(prop_oneof![Just(Mark::Point), Just(Mark::Comma)]);
    (text, unit, mark).prop_map(|(text, unit, mark)| Entry {
        text: text.into(),
        unit: unit.map(Into::into),
        mark,
    })
}

fn book() -> impl Strategy<Value = Book> {
    vec((key(), entry()), 0..40).prop_map(|entries| Book::of("b-1", entries))
}

fn edits() -> impl Strategy<Value = Vec<(Key, Option<Entry>)>> {
    vec((key(), proptest::option::of(entry())), 0..30)
}

proptest! {
    #[test]
    fn a_book_comes_back_from_its_file(book in book()) {
        prop_assert_eq!(book_of_file(file(&book).as_bytes()), Ok(book));
    }

    #[test]
    fn a_book_comes_back_from_its_link(book in book()) {
        prop_assert_eq!(received(&link_of_book(&book)).map(|received| received.book), Ok(book));
    }

    #[test]
    fn undoing_all_gives_the_first_book_and_redoing_all_the_last(first in book(), edits in edits()) {
        let mut log = Log::default();
        let mut book = first.clone();
        for (key, entry) in edits {
            let edit = book.setting(key, entry);
            book = book.with(&edit);
            log.record(edit, false);
        }
        let last = book.clone();
        while let Some(back) = log.undo(&book) {
            book = back;
        }
        prop_assert_eq!(&book, &first);
        while let Some(again) = log.redo(&book) {
            book = again;
        }
        prop_assert_eq!(book, last);
    }

    #[test]
    fn taking_every_difference_makes_the_books_equal(mine in book(), theirs in book()) {
        let changes = differences(&mine, &theirs).iter().map(buildbook::Differing::taking_theirs).collect();
        prop_assert_eq!(mine.with(&Edit(changes)), theirs);
    }

    #[test]
    fn merging_an_edit_of_the_same_state_is_making_it(base in book(), next in book()) {
        let edit = base.edit_to(&next);
        let merged = base.merging(&edit, &Log::default());
        prop_assert_eq!(merged.conflicts, []);
        prop_assert_eq!(base.with(&merged.edit), next);
    }

    #[test]
    fn any_book_at_all_is_evaluated_without_a_panic(book in book()) {
        let findings = evaluate(&book, None);
        for sheet in buildbook::SHEETS {
            let found = findings.found(sheet).unwrap();
            let _ = found.state();
            for (_, finding) in found.results() {
                if let Ok(figure) = finding {
                    prop_assert!(figure.value().is_finite() && figure.plus() >= 0.0 && figure.minus() >= 0.0);
                }
            }
        }
    }

    #[test]
    fn any_text_in_any_field_of_the_example_is_taken_without_a_panic(place in any::<prop::sample::Index>(), text in ".{0,40}") {
        let book = example::book();
        let keys: Vec<Key> = book.entries().map(|(key, _)| key.clone()).collect();
        let key = place.get(&keys);
        let before = evaluate(&book, None);
        let after = evaluate(&book.with(&book.typing(key, &text, &Manner::default())), Some(&before));
        prop_assert!(after.found("vehicle").is_some());
    }

    #[test]
    fn any_bytes_as_a_file_give_a_book_or_an_error(bytes in vec(any::<u8>(), 0..400)) {
        prop_assert!(book_of_file(&bytes).is_err());
    }

    #[test]
    fn any_text_as_a_link_gives_an_error(text in "1?[A-Za-z0-9_-]{0,300}") {
        prop_assert!(received(&text).is_err());
    }

    #[test]
    fn a_link_with_one_character_changed_is_never_taken_for_another_book(place in any::<prop::sample::Index>(), to in "[A-Za-z0-9_-]") {
        let book = example::book();
        let link = link_of_book(&book);
        let place = place.index(link.len() - 1) + 1;
        let mut changed = link.clone();
        changed.replace_range(place..=place, &to);
        match received(&changed) {
            Ok(received) => prop_assert_eq!(received.book, book),
            Err(error) => prop_assert!(matches!(error, BookError::Damaged(_) | BookError::TooLarge), "{:?}", error),
        }
    }

    #[test]
    fn rows_keep_their_order_through_any_moves(moves in vec((0_usize..6, 0_usize..7), 0..60)) {
        let list = Key::from("gearing/gears");
        let mut book = Book::new("b");
        let mut expected: Vec<String> = Vec::new();
        for _ in 0..6 {
            let (id, edit) = book.adding_row(&list, Place::Last, &Log::default(), &[]);
            book = book.with(&edit);
            expected.push(id.to_string());
        }
        for (from, to) in moves {
            let id = expected.remove(from);
            let to = to.min(expected.len());
            let place = if to == 0 { Place::First } else { Place::After(&expected[to - 1]) };
            book = book.with(&book.moving_row(&list, &id, place));
            expected.insert(to, id);
            let rows: Vec<String> = book.rows(&list).iter().map(ToString::to_string).collect();
            prop_assert_eq!(&rows, &expected);
        }
    }
}

proptest! {
    // Each case evaluates the book a hundred times.
    #![proptest_config(ProptestConfig::with_cases(32))]

    #[test]
    fn a_worked_back_entry_reproduces_the_wanted_result(share in 0.0_f64..1.0, which in 0_usize..4) {
        let (id, key, lowest, highest) = [
            ("vehicle/unladen", "vehicle/rear_unladen", 1_200.0, 9_000.0),
            ("vehicle/swept_volume", "vehicle/bore", 0.5e-3, 8e-3),
            ("vehicle/front_share_laden", "vehicle/payload_ahead", 0.25, 0.60),
            ("vehicle/load_room", "vehicle/gross_limit", 200.0, 1_500.0),
        ][which];
        let wanted = lowest + share * (highest - lowest);
        let book = example::book();
        let findings = evaluate(&book, None);
        let back = work_back(&book, &findings, id, &key.into(), wanted, &Manner::default()).unwrap();
        let after = evaluate(&book.with(&back.edit), None);
        let reached = after.result(id).unwrap().as_ref().unwrap();
        prop_assert_eq!(reached.value(), back.result.value());
        // The text is rounded to what still gives the wanted answer within a fiftieth of its ±.
        let allowed = (1e-6 * wanted).max(0.02 * reached.plus());
        prop_assert!((reached.value() - wanted).abs() <= allowed * 1.001, "{} for {}", reached.value(), wanted);
    }

    #[test]
    fn a_result_never_gains_certainty_from_a_less_certain_entry(small in 1.0_f64..50.0, more in 0.0_f64..200.0) {
        let with = |error: f64| {
            let book = example::book();
            let entry = Entry::new(format!("1080 ± {error} kg"));
            let book = book.with(&book.setting("vehicle/front_unladen", Some(entry)));
            let findings = evaluate(&book, None);
            let found = findings.found("vehicle").unwrap();
            found.results().filter_map(|(id, finding)| Some((id.to_string(), finding.as_ref().ok()?.plus()))).collect::<Vec<_>>()
        };
        for ((id, less), (_, greater)) in with(small).into_iter().zip(with(small + more)) {
            prop_assert!(greater >= less * (1.0 - 1e-12), "{}: {} then {}", id, less, greater);
        }
    }
}

proptest! {
    // Each case evaluates every sheet, and working back does so a hundred times.
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn any_figure_is_reached_by_working_back_any_entry_that_it_rests_on(which in any::<prop::sample::Index>(), by in any::<prop::sample::Index>(), times in 0.95_f64..1.05) {
        let book = example::book();
        let findings = evaluate(&book, None);
        let found = buildbook::SHEETS.iter().filter_map(|sheet| findings.found(sheet));
        let results = found.flat_map(|found| found.results());
        let doubtful = |(id, finding): (_, &buildbook::Finding)| {
            let figure = finding.as_ref().ok().filter(|figure| !figure.shares().is_empty())?;
            Some((std::rc::Rc::clone(id), figure.clone()))
        };
        let figures: Vec<_> = results.filter_map(doubtful).collect();
        let (id, figure) = which.get(&figures);
        let key = Key::from(&*by.get(&figure.shares()).key);
        prop_assume!(field_of(&key).and_then(buildbook::Field::number).is_some_and(|number| !number.whole));
        let wanted = figure.value() * times;
        match work_back(&book, &findings, id, &key, wanted, &Manner::default()) {
            Ok(back) => {
                let after = evaluate(&book.with(&back.edit), None);
                let reached = after.result(id).unwrap().as_ref().unwrap();
                prop_assert_eq!(reached.value(), back.result.value());
                // A fiftieth of the ±, which the rounding of the entry moves a little too.
                let allowed = (1e-6 * wanted.abs()).max(0.021 * reached.plus().min(reached.minus()));
                prop_assert!(!back.met || (reached.value() - wanted).abs() <= allowed, "{} by {}: {} for {}", id, key, reached.value(), wanted);
            }
            // Limits of the entry, and results that change by steps, are said; what is not there is never given.
            Err(error) => prop_assert!(!matches!(error, buildbook::WorkBackError::NotANumber(_)), "{} by {}: {:?}", id, key, error),
        }
    }

    #[test]
    fn no_result_of_any_sheet_gains_certainty_from_a_less_certain_entry(place in any::<prop::sample::Index>(), small in 0.0001_f64..0.02, more in 1.0_f64..4.0) {
        let book = example::book();
        // A fit by weights moves when a weight does, and what is read off it with it: marking out has its own tests.
        let measured = |key: &&Key| !key.as_str().starts_with("marking/") && field_of(key).and_then(buildbook::Field::number).is_some_and(|number| !number.whole);
        let keys: Vec<&Key> = book.entries().map(|(key, _)| key).filter(measured).collect();
        let key = *place.get(&keys);
        let number = field_of(key).and_then(buildbook::Field::number).unwrap();
        let entry = book.entry(key.as_str()).unwrap();
        let value = measure::read(&entry.text, &buildbook::ask(number, entry)).unwrap().value;
        let value = number.unit(measure::System::Metric).from_si(value);
        let with = |share: f64| {
            let text = format!("{value} ± {}", share * value.abs());
            evaluate(&book.with(&book.setting(key.clone(), Some(Entry::new(text)))), None)
        };
        let (less, more) = (with(small), with(small * more));
        for sheet in buildbook::SHEETS {
            let (less, more) = (less.found(sheet).unwrap(), more.found(sheet).unwrap());
            for (id, finding) in less.results() {
                let (Ok(before), Some(after)) = (finding, more.figure(id)) else { continue };
                let grown = |before: f64, after: f64| after >= before * (1.0 - 1e-9) - 1e-15;
                prop_assert!(grown(before.plus(), after.plus()) && grown(before.minus(), after.minus()), "{} by {}: {} then {}", id, key, before.plus(), after.plus());
            }
        }
    }
}

#[test]
fn every_default_of_every_sheet_can_be_read_from_a_blank_book() {
    fn errors<S: Sheet>() -> usize {
        let read = S::read(&Book::new("b"));
        let mut seen = 0;
        for (pattern, field) in S::SPEC.fields(S::NAME) {
            for version in 0..=buildbook::DEFAULTS_VERSION {
                let Some(text) = field.assumed_in(version) else {
                    continue;
                };
                seen += 1;
                let Some(number) = field.number() else {
                    continue;
                };
                let reading = measure::read(text, &buildbook::ask(number, &Entry::new(text)));
                assert!(reading.is_ok(), "{pattern}: {reading:?}");
            }
        }
        assert_eq!(read.errors, []);
        seen
    }
    use buildbook::sheets::{costs, gearing, paint, springs, vehicle};
    assert!(errors::<vehicle::VehicleSheet>() > 5);
    let others = errors::<gearing::GearingSheet>()
        + errors::<springs::SpringsSheet>()
        + errors::<paint::PaintSheet>()
        + errors::<costs::CostsSheet>();
    println!("{others} defaults of the other sheets were read");
}

#[test]
fn main_results_of_every_measured_sheet_can_be_worked_back() {
    let book = example::book();
    let findings = evaluate(&book, None);
    for (id, key) in [
        ("gearing/per_1000", "gearing/axle"),
        ("springs/height/1", "springs/springs/1/free_arch"),
        (
            "springs/rate_handbook/1",
            "springs/springs/1/leaves/1/thickness",
        ),
        ("paint/litres", "paint/reserve"),
    ] {
        let figure = findings.result(id).unwrap().as_ref().unwrap();
        let wanted = 1.02 * figure.value();
        let back = work_back(
            &book,
            &findings,
            id,
            &key.into(),
            wanted,
            &Manner::default(),
        )
        .unwrap_or_else(|error| panic!("{id} by {key}: {error:?}"));
        let after = evaluate(&book.with(&back.edit), None);
        let reached = after.result(id).unwrap().as_ref().unwrap();
        let allowed = (1e-6 * wanted).max(0.02 * reached.plus());
        assert!(
            (reached.value() - wanted).abs() <= 1.001 * allowed,
            "{id}: {} for {wanted}",
            reached.value()
        );
        assert!(back.met && back.figure.is_some(), "{id}");
    }
}
