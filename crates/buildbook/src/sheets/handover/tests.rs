//! The handover sheet: dates that come out, what is open, what is refused.

use super::{Open, called_for, open_items};
use crate::{Book, BookError, Date, Findings, Rank, State, evaluate, example, field_of};
use trade::TradeError;

fn found(entries: &[(&str, &str)]) -> Findings {
    let entries = entries
        .iter()
        .map(|(key, text)| ((*key).into(), (*text).into()));
    evaluate(&Book::of("b", entries), None)
}

fn day(year: u16, month: u8, day: u8) -> Option<Date> {
    Date::new(year, month, day)
}

#[test]
fn a_check_is_due_when_the_first_of_distance_and_days_is_over() {
    let findings = found(&[
        ("handover/handed_on", "2024-02-26"),
        ("handover/odometer", "1000 km"),
        ("handover/per_week", "70 km"),
        // 30 km at 10 km a day are three days: 29 February, since 2024 has one.
        ("handover/again/wheel_nuts/after", "30 km"),
        ("handover/again/hoses/after", "700 km"),
        ("handover/again/hoses/within", "2 d"),
    ]);
    let plan = &findings.handover.plan;
    let due = |id: &str| plan.iter().find(|due| due.row.field() == id).unwrap();
    assert_eq!(due("wheel_nuts").on, day(2024, 2, 29));
    assert!(!due("wheel_nuts").by_date);
    assert_eq!(due("hoses").on, day(2024, 2, 28));
    assert!(due("hoses").by_date);
    let at = findings.handover.found.figure("handover/due_at/wheel_nuts");
    assert!((at.unwrap().value() - 1_030_000.0).abs() < 1e-6);
    assert!(plan.windows(2).all(|pair| pair[0].on <= pair[1].on));
}

#[test]
fn a_joint_that_asks_for_it_is_in_the_plan_and_open_until_it_is_ticked() {
    let joint = [
        ("torque/joints/1/name", "Wheel nuts"),
        ("torque/joints/1/purpose", "wheels"),
        ("torque/joints/1/figure", "150 N m"),
        ("torque/joints/1/check_after", "50 km"),
    ];
    let findings = found(&joint);
    let plan = &findings.handover.plan;
    assert!(
        plan.iter()
            .any(|due| due.row == *"torque/joints/1" && due.after == Some(50_000.0))
    );
    let open = |findings: &Findings| {
        let joints =
            |open: &Open<'_>| matches!(open, Open::Joint(row) if **row == *"torque/joints/1");
        open_items(findings).iter().any(joints)
    };
    assert!(open(&findings));
    let warned = findings
        .handover
        .found
        .remarks
        .iter()
        .any(|remark| remark.fact == "joint_open");
    assert!(warned, "wheels hold lives");
    let done = found(&[&joint[..], &[("torque/joints/1/done", "yes")]].concat());
    assert!(!open(&done));
}

#[test]
fn a_day_that_does_not_exist_and_a_distance_below_nought_are_errors_at_their_fields() {
    let findings = found(&[
        ("handover/handed_on", "31 June 2026"),
        ("handover/per_week", "-100 km"),
        ("handover/tyres/1/code", "5426"),
        ("handover/tyres/2/code", "2319"),
    ]);
    let found = &findings.handover.found;
    let error = |key: &str| {
        found
            .errors
            .iter()
            .find(|(at, _)| *at == *key)
            .map(|(_, error)| error)
    };
    assert!(matches!(
        error("handover/handed_on"),
        Some(BookError::Date(_))
    ));
    assert!(matches!(
        error("handover/per_week"),
        Some(BookError::Entry(_))
    ));
    assert_eq!(
        error("handover/tyres/1/code"),
        Some(&BookError::Trade(TradeError::TyreDate))
    );
    assert_eq!(error("handover/tyres/2/code"), None);
    assert_eq!(found.state(), State::Warning);
    // The plan stands by its distances all the same.
    assert!(findings.handover.plan.iter().all(|due| due.on.is_none()));
    assert!(!findings.handover.plan.is_empty());
}

#[test]
fn a_code_of_three_figures_asks_for_its_decade_and_a_tyre_is_as_old_as_on_the_day_it_was_read() {
    let read = |more: &[(&str, &str)]| {
        let tyre = [
            ("handover/tyres/1/code", "439"),
            ("handover/handed_on", "2026-06-06"),
        ];
        found(&[&tyre[..], more].concat())
    };
    let said = |findings: &Findings, fact: &str| {
        let mut remarks = findings.handover.found.remarks.iter();
        remarks.any(|remark| remark.fact == fact)
    };
    let open = read(&[]);
    assert!(said(&open, "tyre_decade"));
    assert_eq!(open.handover.tyres[0].age, None);
    // Whichever decade it was, it is too old.
    assert!(said(&open, "tyre_too_old"));
    let closed = read(&[("handover/tyres/1/decade", "1990")]);
    assert!(!said(&closed, "tyre_decade"));
    let tyre = &closed.handover.tyres[0];
    // The 43rd week of 1999 began on Sunday 24 October, 1999 having begun on a Friday.
    assert_eq!((tyre.age, tyre.read_on), (Some((26, 7)), day(2026, 6, 6)));
    let earlier = read(&[
        ("handover/tyres/1/decade", "1990"),
        ("handover/tyres/1/read_on", "2026-04-23"),
    ]);
    assert_eq!(earlier.handover.tyres[0].age, Some((26, 5)));
    let future = read(&[
        ("handover/tyres/1/code", "2327"),
        ("handover/tyres/1/decade", "1980"),
    ]);
    assert!(said(&future, "tyre_of_the_future") && !said(&future, "tyre_decade"));
    assert_eq!(future.handover.tyres[0].age, None);
}

#[test]
fn what_is_measured_beyond_its_limit_is_warned_of_where_it_was_entered() {
    let findings = found(&[
        ("vehicle/front_limit", "1000 kg"),
        ("handover/front_weighed", "1100 kg"),
        ("handover/rear_weighed", "900 kg"),
        ("handover/toe_ahead", "1400 mm"),
        ("handover/toe_behind", "1399 mm"),
        ("handover/toe_least", "0"),
        ("handover/brakes/1/left", "3000 N"),
        ("handover/brakes/1/right", "1800 N"),
        ("handover/parking", "2000 N"),
        ("handover/tyres/1/tread", "1 mm"),
        ("handover/tyres/1/code", "2315"),
        ("handover/handed_on", "2026-06-06"),
    ]);
    let remarks = &findings.handover.found.remarks;
    for (fact, rank, at) in [
        ("axle_over_limit", Rank::Danger, "handover/front_weighed"),
        ("toe_outside", Rank::Warning, "handover/toe_behind"),
        ("uneven_brakes", Rank::Warning, "handover/brakes/1/left"),
        ("weak_brake", Rank::Warning, "handover/brakes"),
        ("weak_parking_brake", Rank::Warning, "handover/parking"),
        ("tread_worn", Rank::Warning, "handover/tyres/1/tread"),
        ("tyre_too_old", Rank::Warning, "handover/tyres/1/code"),
    ] {
        let there = remarks.iter().find(|remark| remark.fact == fact);
        let there = there.unwrap_or_else(|| panic!("{fact} is not said"));
        assert_eq!(
            (there.rank, there.key.as_ref().unwrap().as_str()),
            (rank, at)
        );
    }
}

#[test]
fn steering_that_changes_sides_calls_for_approval_until_it_is_granted() {
    let sides = [
        ("vehicle/steering_now", "right"),
        ("vehicle/steering_wanted", "left"),
    ];
    let findings = found(&sides);
    assert!(called_for(&findings).contains(&"steering_side"));
    let asked = |findings: &Findings| {
        let side = |open: &Open<'_>| matches!(open, Open::Approval(row, _) if row.field() == "steering_side");
        open_items(findings).iter().any(side)
    };
    assert!(asked(&findings));
    let granted = [("handover/approvals/steering_side/state", "granted")];
    assert!(!asked(&found(&[&sides[..], &granted].concat())));
    assert!(called_for(&found(&[])).is_empty());
}

#[test]
fn preset_rows_stand_in_their_list_before_anything_is_entered_and_own_rows_after_them() {
    let list = "handover/again".into();
    let empty = Book::of("b", []);
    assert_eq!(&*empty.rows(&list)[0], "wheel_nuts");
    let (id, edit) = empty.adding_row(
        &list,
        crate::Place::Last,
        &crate::Log::default(),
        &[("name", "Bed bolts".into())],
    );
    let book = empty
        .with(&edit)
        .with(&empty.setting("handover/again/coolant/note", Some("x".into())));
    let rows = book.rows(&list);
    assert_eq!(rows.last(), Some(&id));
    assert_eq!(rows.iter().filter(|row| &***row == "coolant").count(), 1);
    assert!(field_of(&"handover/again/wheel_nuts/after".into()).is_some());
}

#[test]
fn the_example_shows_a_plan_with_dates_and_some_open_items() {
    let findings = evaluate(&example::book(), None);
    let handover = &findings.handover;
    assert!(handover.plan.iter().all(|due| due.on.is_some()));
    assert!(handover.found.results().all(|(_, finding)| finding.is_ok()));
    let open = open_items(&findings);
    assert!(open.iter().any(|open| matches!(open, Open::PutRight(_))));
    assert!(open.iter().any(|open| matches!(open, Open::Unseen(4))));
}
