//! What the marking-out sheet makes of entries.

use super::{MarkingFindings, MarkingSheet, findings};
use crate::{Book, BookError, Entry, Key, Lack, Sheet, evaluate, example, link};
use ::trade::TradeError;
use ::trade::marking::Check;

fn of(entries: &[(&str, &str)]) -> MarkingFindings {
    let entries = entries
        .iter()
        .map(|(key, text)| (Key::from(format!("marking/{key}").as_str()), (*text).into()));
    findings(&MarkingSheet::read(&Book::of("b", entries)))
}

/// The example with some entries changed.
fn example_with(changes: &[(&str, &str)]) -> MarkingFindings {
    let mut book = example::book();
    for (key, text) in changes {
        let key = Key::from(format!("marking/{key}").as_str());
        let entry = (!text.is_empty()).then(|| Entry::new(*text));
        book = book.with(&book.setting(key, entry));
    }
    findings(&MarkingSheet::read(&book))
}

fn mm(found: &MarkingFindings, id: &str) -> f64 {
    let figure = found.found.figure(&format!("marking/{id}"));
    figure.map_or(f64::NAN, |figure| figure.value() * 1000.0)
}

/// A 3-4-5 triangle: 300 and 400 over 500.
const TRIANGLE: [(&str, &str); 3] = [
    ("ab", "500 exact"),
    ("features/1/a", "300 exact"),
    ("features/1/b", "400 exact"),
];

#[test]
fn two_distances_place_a_hole_and_its_image_is_struck_with_the_same_two() {
    let found = of(&TRIANGLE);
    assert!((mm(&found, "x/1") - 180.0).abs() < 1e-6);
    assert!((mm(&found, "y/1") - 240.0).abs() < 1e-6);
    assert!((mm(&found, "arc_a/1") - 300.0).abs() < 1e-6);
    assert!((mm(&found, "arc_b/1") - 400.0).abs() < 1e-6);
    assert!((mm(&found, "along/1") - 180.0).abs() < 1e-6);
    assert!((mm(&found, "across/1") - 240.0).abs() < 1e-6);
}

#[test]
fn a_hole_below_the_line_is_set_out_below_it() {
    let mut entries = TRIANGLE.to_vec();
    entries.push(("features/1/side", "below"));
    let found = of(&entries);
    assert!((mm(&found, "y/1") + 240.0).abs() < 1e-6);
    assert!((mm(&found, "across/1") + 240.0).abs() < 1e-6);
}

#[test]
fn the_pattern_of_the_example_is_found_where_it_was_made_up() {
    // The places from which its readings were made, with an error of a third of a millimetre, and rounded as a tape is read.
    let places = [
        (352.0, 236.0),
        (296.0, 300.0),
        (408.0, 300.0),
        (296.0, 176.0),
        (408.0, 176.0),
        (214.0, 118.0),
        (330.0, 76.0),
        (486.0, 128.0),
        (150.0, 392.0),
        (470.0, 412.0),
        (196.0, 262.0),
        (196.0, 190.0),
    ];
    let found = example_with(&[]);
    for (i, (x, y)) in places.into_iter().enumerate() {
        let fix = found.taken.features[i].fix.as_ref().expect("fixed");
        assert_eq!(fix.check, Check::Agree);
        for (wanted, is) in [(x, &fix.at.x), (y, &fix.at.y)] {
            let (off, within) = (is.value() * 1000.0 - wanted, is.plus() * 1000.0);
            assert!(off.abs() < within && within < 1.5, "{i}: {off} ± {within}");
        }
    }
}

#[test]
fn a_reading_that_is_spoiled_is_named_at_its_field_with_what_it_is_out_by() {
    // The fourth hole, from B: 369.1 was read.
    let found = example_with(&[("features/4/b", "379.1")]);
    let remark = found
        .found
        .remarks
        .iter()
        .find(|remark| remark.fact == "spoiled")
        .expect("named");
    assert_eq!(remark.key, Some("marking/features/4/b".into()));
    assert_eq!(&*remark.names[0], "B");
    let by = remark.figures[0].value() * 1000.0;
    assert!((by - 10.0).abs() < 1.0, "{by}");
    let told = |(key, error): &(Key, BookError)| {
        *key == "marking/features/4/b"
            && matches!(error, BookError::Trade(TradeError::ReadingSpoils { .. }))
    };
    assert!(found.found.errors.iter().any(told));
    // The others stay as they were.
    assert!((mm(&found, "x/5") - mm(&example_with(&[]), "x/5")).abs() < 1e-9);
}

#[test]
fn of_three_readings_one_is_called_bad_and_two_are_said_to_be_unchecked() {
    let three = example_with(&[("features/4/b", "379.1"), ("features/4/d", "")]);
    let bad = three.found.remarks.iter().find(|r| r.fact == "one_is_bad");
    assert!(bad.is_some());
    let two = example_with(&[("features/4/c", ""), ("features/4/d", "")]);
    let unchecked = two
        .found
        .remarks
        .iter()
        .find(|r| r.fact == "nothing_checks");
    assert_eq!(unchecked.expect("said").figures[0].value(), 1.0);
}

#[test]
fn distances_that_cannot_meet_are_told_at_their_field_and_spoil_nothing_else() {
    let mut entries = TRIANGLE.to_vec();
    entries.extend([("features/2/a", "100"), ("features/2/b", "250")]);
    let found = of(&entries);
    let (key, error) = &found.found.errors[0];
    assert_eq!(*key, "marking/features/2/b");
    assert!(
        matches!(error, BookError::Trade(TradeError::CannotMeet { gap }) if (gap - 0.15).abs() < 1e-9)
    );
    assert!((mm(&found, "arc_a/1") - 300.0).abs() < 1e-6);
}

#[test]
fn a_third_datum_that_makes_no_triangle_is_told_and_the_first_two_serve_on() {
    let mut entries = TRIANGLE.to_vec();
    entries.extend([("ac", "100"), ("bc", "200")]);
    let found = of(&entries);
    assert_eq!(found.found.errors[0].0, "marking/bc");
    assert!((mm(&found, "arc_b/1") - 400.0).abs() < 1e-6);
}

#[test]
fn a_hole_without_readings_asks_for_them() {
    let found = of(&[("ab", "500"), ("features/1/a", "300")]);
    assert_eq!(
        found.found.result("marking/arc_a/1"),
        Some(&Err(Lack::Needs(vec!["marking/features/1/b".into()])))
    );
    let nothing = of(&[("features/1/a", "300")]);
    assert_eq!(
        nothing.found.result("marking/arc_a/1"),
        Some(&Err(Lack::Needs(vec!["marking/ab".into()])))
    );
}

#[test]
fn edges_are_read_to_the_middle_by_the_diameter() {
    // Near edge of a 20 mm hole: its centre lies 10 mm further.
    let found = of(&[
        ("ab", "500 exact"),
        ("features/1/a", "290 exact"),
        ("features/1/b", "390 exact"),
        ("features/1/read_to", "near_edge"),
        ("features/1/diameter", "20 exact"),
    ]);
    assert!((mm(&found, "arc_a/1") - 300.0).abs() < 1e-6);
    assert!((mm(&found, "arc_b/1") - 400.0).abs() < 1e-6);
}

#[test]
fn a_handed_part_keeps_its_own_hand_about_its_first_hole() {
    // Holes 6, 11 and 12 are one part: 11 lies 18 mm to the left of 6, and stays there, where a mirrored one would lie to the right.
    let found = example_with(&[]);
    let (first, upper) = (mm(&found, "along/6"), mm(&found, "along/11"));
    // The new side's line runs to the left.
    assert!((upper - first - 18.0).abs() < 1.5, "{first} {upper}");
    let mirrored = example_with(&[("features/11/part", "")]);
    let upper = mm(&mirrored, "along/11");
    assert!((upper - first + 18.0).abs() < 1.5, "{first} {upper}");
}

#[test]
fn what_is_on_the_new_side_already_is_kept_clear_of() {
    // The heater pipe measured just where the speedometer cable goes.
    let found = example_with(&[("there/1/a", "419.5"), ("there/1/b", "612.5")]);
    let mut remarks = found.found.remarks.iter();
    let clash = remarks.find(|remark| remark.fact == "clash_with_there");
    assert_eq!(clash.map(|remark| &*remark.names[0]), Some("Heater pipe"));
}

#[test]
fn the_whole_pattern_of_the_example_goes_into_one_link() {
    let book = example::book();
    let link = link::link_of_sheet(&book, "marking", &evaluate(&book, None));
    assert!(link.len() < link::SAFE_LENGTH / 2, "{}", link.len());
}

#[test]
fn distances_are_as_good_as_the_tool_they_are_said_to_be_taken_with() {
    let plus = |with: &str| {
        let found = of(&[("taken_with", with), ("ab", "500")]);
        found.sheet.ab.value().map(measure::Quantity::plus)
    };
    assert_eq!(plus("tape"), Some(0.001));
    assert_eq!(plus("rule"), Some(0.0005));
    assert_eq!(plus("trammel"), Some(0.0003));
}
