//! The springs sheet, from typed text to findings.

use measure::unit::{MILLIMETRE, NEWTON_PER_MILLIMETRE};
use measure::{Manner, Unit};

use crate::{Book, Entry, Findings, Key, Lack, Rank, State, evaluate, example, work_back};

/// One spring of three leaves on the axle, loaded by hand.
const PLAIN: &[(&str, &str)] = &[
    ("springs/springs/1/leaves/1/width", "60 exact"),
    ("springs/springs/1/leaves/1/thickness", "8 exact"),
    ("springs/springs/1/leaves/1/length", "1200 exact"),
    ("springs/springs/1/leaves/2/thickness", "8 exact"),
    ("springs/springs/1/leaves/2/length", "800 exact"),
    ("springs/springs/1/leaves/3/thickness", "8 exact"),
    ("springs/springs/1/leaves/3/length", "400 exact"),
    ("springs/springs/1/stiffening", "1 exact"),
    ("springs/springs/1/load", "1500 N exact"),
    ("springs/springs/1/free_arch", "120 exact"),
    ("springs/springs/1/pad", "40 exact"),
];

fn book(more: &[(&str, &str)]) -> Book {
    let entries = PLAIN.iter().chain(more);
    Book::of(
        "b",
        entries.map(|(key, text)| (Key::from(*key), Entry::new(*text))),
    )
}

fn found(more: &[(&str, &str)]) -> Findings {
    evaluate(&book(more), None)
}

fn value(findings: &Findings, id: &str, unit: &'static Unit) -> f64 {
    match findings.result(id) {
        Some(Ok(figure)) => figure.in_unit(unit),
        other => panic!("{id}: {other:?}"),
    }
}

fn facts(findings: &Findings) -> Vec<&'static str> {
    let found = findings.found("springs").expect("the sheet");
    let mut facts: Vec<_> = found
        .remarks
        .iter()
        .filter(|remark| !remark.standing)
        .map(|remark| remark.fact)
        .collect();
    facts.sort_unstable();
    facts
}

#[test]
fn three_leaves_and_a_load_give_rate_and_height() {
    // 8 E n b t³ / (3 S³) = 8 × 200000 × 3 × 60 × 512 / (3 × 1200³) = 28.444 N/mm; 1500 / 28.444 = 52.734 mm.
    let findings = found(&[]);
    let rate = value(&findings, "springs/rate/1", &NEWTON_PER_MILLIMETRE);
    assert!((rate - 28.4444).abs() < 1e-3, "{rate}");
    let arch = value(&findings, "springs/arch/1", &MILLIMETRE);
    assert!((arch - (120.0 - 52.734_375)).abs() < 1e-3, "{arch}");
    // Pad 40, three leaves of 8, arch.
    let height = value(&findings, "springs/height/1", &MILLIMETRE);
    assert!((height - (64.0 + arch)).abs() < 1e-9, "{height}");
    assert_eq!(
        findings.found("springs").map(crate::Found::state),
        Some(State::Ready)
    );
}

#[test]
fn an_empty_sheet_asks_for_the_first_leaf() {
    let findings = evaluate(&Book::new("b"), None);
    let Some(Err(lack)) = findings.result("springs/rate/1") else {
        panic!("needs entries");
    };
    let keys = lack.needed().expect("needs entries");
    let keys: Vec<_> = keys.iter().map(Key::as_str).collect();
    assert_eq!(
        keys,
        [
            "springs/springs/1/leaves/1/width",
            "springs/springs/1/leaves/1/thickness",
            "springs/springs/1/leaves/1/length"
        ]
    );
}

#[test]
fn a_block_under_the_axle_lowers_and_on_it_lifts() {
    let height = |more: &[(&str, &str)]| value(&found(more), "springs/height/1", &MILLIMETRE);
    let block = ("springs/springs/1/block", "25 exact");
    let under = ("springs/springs/1/mounting", "spring_under_axle");
    assert!((height(&[block]) - height(&[]) - 25.0).abs() < 1e-9);
    assert!((height(&[block, under]) - height(&[under]) + 25.0).abs() < 1e-9);
}

#[test]
fn lengths_taken_clear_of_the_seat_are_not_cut_again() {
    let clamped = ("springs/springs/1/clamped", "100 exact");
    let clear = ("springs/springs/1/lengths", "clear");
    let rate =
        |more: &[(&str, &str)]| value(&found(more), "springs/rate/1", &NEWTON_PER_MILLIMETRE);
    assert!((rate(&[clamped, clear]) - rate(&[])).abs() < 1e-9);
    let shorter = (1200.0_f64 / 1100.0).powi(3);
    assert!((rate(&[clamped]) / rate(&[]) - shorter).abs() < 1e-9);
    let dead = value(&found(&[clamped]), "springs/dead/1", &MILLIMETRE);
    assert_eq!(dead.round(), 100.0);
}

#[test]
fn leaves_that_cannot_exist_are_refused_at_their_field_and_the_rest_stays() {
    let findings = found(&[
        ("springs/springs/1/clamped", "420"),
        ("springs/springs/2/load", "5 kN"),
        ("springs/springs/2/leaves/1/width", "60"),
        ("springs/springs/2/leaves/1/thickness", "-7"),
        ("springs/springs/2/leaves/1/length", "1200"),
    ]);
    assert!(matches!(
        findings.result("springs/rate/1"),
        Some(Err(lack)) if lack.refusal().is_some()
    ));
    assert!(findings.result("springs/load/1").is_some_and(Result::is_ok));
    let sheet = findings.found("springs").expect("the sheet");
    let swallowed = sheet
        .remarks
        .iter()
        .find(|remark| remark.fact == "leaf_within_seat")
        .expect("a remark");
    assert_eq!(swallowed.rank, Rank::Warning);
    assert_eq!(
        swallowed.key.as_ref().map(Key::as_str),
        Some("springs/springs/1/leaves/3/length")
    );
    assert_eq!(sheet.errors.len(), 1);
    assert_eq!(
        sheet.errors[0].0.as_str(),
        "springs/springs/2/leaves/1/thickness"
    );
    assert_eq!(
        findings.result("springs/rate/2"),
        Some(&Err(Lack::entry(
            "springs/springs/2/leaves/1/thickness".into()
        )))
    );
}

#[test]
fn a_wrapper_may_be_longer_than_the_main_leaf_and_others_should_not() {
    let longer = ("springs/springs/1/leaves/2/length", "1210");
    let kind = ("springs/springs/1/leaves/2/kind", "wrapper");
    assert!(facts(&found(&[longer, kind])).contains(&"wrapper_longer"));
    assert!(facts(&found(&[longer])).contains(&"longer_than_main"));
}

#[test]
fn rust_costs_rate_and_height() {
    let new = [1, 2, 3].map(|leaf| format!("springs/springs/1/leaves/{leaf}/new_thickness"));
    let new: Vec<_> = new.iter().map(|key| (key.as_str(), "10 exact")).collect();
    let findings = found(&new);
    let left = findings.result("springs/rate_left/1");
    let left = left
        .and_then(|finding| finding.as_ref().ok())
        .expect("a share");
    assert!((left.value() - 0.512).abs() < 1e-12);
    let lost = value(&findings, "springs/height_lost/1", &MILLIMETRE);
    assert!((lost - 52.734_375 * 0.488).abs() < 1e-6, "{lost}");
    assert!(facts(&findings).contains(&"badly_worn"));
}

#[test]
fn a_press_test_wins_over_the_handbook() {
    let point = |n: u8, x: &'static str, f: &'static str| {
        [
            (format!("springs/springs/1/points/{n}/travel"), x),
            (format!("springs/springs/1/points/{n}/load"), f),
        ]
    };
    let points = [point(1, "0", "0 N"), point(2, "40", "1200 N")].concat();
    let points: Vec<_> = points
        .iter()
        .map(|(key, text)| (key.as_str(), *text))
        .collect();
    let findings = found(&points);
    let rate = value(&findings, "springs/rate/1", &NEWTON_PER_MILLIMETRE);
    assert!((rate - 30.0).abs() < 1e-9);
    let mut chosen = points.clone();
    chosen.push(("springs/springs/1/rate_by", "handbook"));
    let rate = value(&found(&chosen), "springs/rate/1", &NEWTON_PER_MILLIMETRE);
    assert!((rate - 28.4444).abs() < 1e-3);
}

#[test]
fn a_gauge_and_a_bore_stand_in_for_the_load() {
    let findings = found(&[
        ("springs/springs/1/ram_bore", "50 exact"),
        ("springs/springs/1/points/1/travel", "0"),
        ("springs/springs/1/points/1/pressure", "0 bar"),
        ("springs/springs/1/points/2/travel", "50"),
        ("springs/springs/1/points/2/pressure", "10 bar"),
    ]);
    // 1 N/mm² on π 25² mm² is 1963.5 N; over 50 mm 39.27 N/mm.
    let rate = value(&findings, "springs/rate_press/1", &NEWTON_PER_MILLIMETRE);
    assert!((rate - 39.27).abs() < 0.005, "{rate}");
}

#[test]
fn a_wanted_height_works_back_to_arch_block_and_leaf() {
    let before = found(&[]);
    let now = value(&before, "springs/height/1", &MILLIMETRE);
    let wanted = format!("{} exact", now + 10.0);
    let settled = ("springs/springs/1/settling", "0 exact");
    let findings = found(&[("springs/springs/1/wanted", wanted.as_str()), settled]);
    let block = value(&findings, "springs/block_for/1", &MILLIMETRE);
    assert!((block - 10.0).abs() < 1e-9);
    let arch = value(&findings, "springs/arch_for/1", &MILLIMETRE);
    assert!((arch - 130.0).abs() < 1e-9);
    let leaf = value(&findings, "springs/leaf_for/1", &MILLIMETRE);
    let leaf = format!("{leaf} exact");
    let fitted = found(&[
        ("springs/springs/1/plan_add", leaf.as_str()),
        ("springs/springs/1/plan_add_length", "600 exact"),
    ]);
    let after = value(&fitted, "springs/height_after/1", &MILLIMETRE);
    assert!((after - now - 10.0).abs() < 1e-6, "{after}");
}

#[test]
fn the_free_arch_can_be_asked_for_by_the_general_work_back() {
    let book = book(&[]);
    let findings = evaluate(&book, None);
    let key = Key::from("springs/springs/1/free_arch");
    let back = work_back(
        &book,
        &findings,
        "springs/height/1",
        &key,
        0.150,
        &Manner::default(),
    )
    .expect("an arch");
    let again = evaluate(&book.with(&back.edit), None);
    assert!((value(&again, "springs/height/1", &MILLIMETRE) - 150.0).abs() < 0.1);
}

#[test]
fn planned_work_that_changes_nothing_changes_nothing() {
    let findings = found(&[("springs/springs/1/plan_block", "0 exact")]);
    for result in [
        "rate",
        "height",
        "arch",
        "worst",
        "frequency",
        "load_allowed",
    ] {
        let of = |id: String| match findings.result(&id) {
            Some(Ok(figure)) => figure.value(),
            other => panic!("{id}: {other:?}"),
        };
        let before = of(format!("springs/{result}/1"));
        let after = of(format!("springs/{result}_after/1"));
        assert!((after - before).abs() <= 1e-12 * before.abs(), "{result}");
    }
}

#[test]
fn the_example_is_complete_and_tells_its_story() {
    let findings = evaluate(&example::book(), None);
    let sheet = findings.found("springs").expect("the sheet");
    let lacking: Vec<_> = sheet
        .results()
        .filter(|(_, finding)| finding.is_err())
        .collect();
    assert!(lacking.is_empty(), "{lacking:?}");
    let facts = facts(&findings);
    assert!(facts.contains(&"overstressed"), "{facts:?}");
    assert!(facts.contains(&"wrapper_longer"), "{facts:?}");
    let (now, after) = (
        value(&findings, "springs/height/4", &MILLIMETRE),
        value(&findings, "springs/height_after/4", &MILLIMETRE),
    );
    assert!(
        after > now + 10.0,
        "the re-arched spring stands higher: {now} {after}"
    );
    for id in [
        "springs/rake_after",
        "springs/castor_after",
        "springs/pinion_after",
    ] {
        assert!(sheet.figure(id).is_some(), "{id}");
    }
    let springs = &findings.springs.pictures;
    assert_eq!(springs.len(), 4);
    assert!(springs.iter().all(|spring| spring.planned.is_some()));
}
