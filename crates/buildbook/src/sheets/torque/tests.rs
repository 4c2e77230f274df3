//! The torque sheet from typed entries.

use crate::sheets::torque::{FIRST_WRENCH, TorqueFindings, TorqueSheet, findings};
use crate::{Book, BookError, Lack, Sheet, SheetFindings, State};
use measure::unit;
use trade::TradeError;

fn found(entries: &[(&str, &str)]) -> TorqueFindings {
    let book = Book::of(
        "b",
        entries
            .iter()
            .map(|(key, text)| ((*key).into(), (*text).into())),
    );
    findings(&TorqueSheet::read(&book))
}

fn newton_metres(found: &TorqueFindings, id: &str) -> f64 {
    found
        .found
        .figure(id)
        .unwrap_or_else(|| panic!("{id}: {:?}", found.found.result(id)))
        .in_unit(&unit::NEWTON_METRE)
}

fn facts(found: &TorqueFindings) -> Vec<&'static str> {
    found
        .found()
        .remarks
        .iter()
        .map(|remark| remark.fact)
        .collect()
}

#[test]
fn the_makers_figure_passes_through_as_printed() {
    let found = found(&[
        ("torque/joints/1/name", "Half-shaft nuts"),
        ("torque/joints/1/figure", "26 lb ft"),
    ]);
    let figure = found.found.figure("torque/setting/1").expect("a figure");
    assert!((figure.in_unit(&unit::POUND_FOOT) - 26.0).abs() < 1e-9);
    assert!(figure.is_exact());
    assert_eq!(found.found.state(), State::Ready);
}

#[test]
fn a_silent_manual_gives_a_computed_figure_that_says_so() {
    // The published figure for M12x1.25, 8.8, at friction 0.12 and 90 % of yield is 90 N·m (VDI 2230, 2001).
    let found = found(&[
        ("torque/joints/1/thread", "M12x1.25"),
        ("torque/joints/1/grade", "8.8"),
        ("torque/joints/1/bearing", "16.63"),
        ("torque/joints/1/hole", "13.5"),
        ("torque/joints/1/yield_share", "90 %"),
    ]);
    assert!((newton_metres(&found, "torque/figure/1") - 90.0).abs() < 0.75);
    assert!(facts(&found).contains(&"computed_figure"));
    assert!(found.joints[0].computed);
}

#[test]
fn nothing_is_computed_for_steering_brakes_and_wheels() {
    for (purpose, grade) in [("steering", "8.8"), ("brakes", "8.8"), ("wheels", "")] {
        let found = found(&[
            ("torque/joints/1/purpose", purpose),
            ("torque/joints/1/thread", "M12x1.25"),
            ("torque/joints/1/grade", grade),
        ]);
        assert_eq!(
            found.found.result("torque/figure/1"),
            Some(&Err(Lack::refused(TradeError::MakersFigureOnly)))
        );
        assert!(facts(&found).contains(&"makers_figure_only"));
        assert_eq!(found.found.state(), State::Warning);
    }
}

#[test]
fn an_unknown_class_points_at_its_entry_and_other_joints_stay() {
    let found = found(&[
        ("torque/joints/1/thread", "M10"),
        ("torque/joints/1/grade", "8.9"),
        ("torque/joints/2/figure", "45 N m"),
        ("torque/joints/3/thread", "M10.5"),
    ]);
    let told: Vec<(&str, &BookError)> = found
        .found
        .errors
        .iter()
        .map(|(key, why)| (key.as_str(), why))
        .collect();
    assert_eq!(
        told,
        [
            (
                "torque/joints/1/grade",
                &BookError::Trade(TradeError::UnknownGrade)
            ),
            (
                "torque/joints/3/thread",
                &BookError::Trade(TradeError::UnknownThread)
            ),
        ]
    );
    assert_eq!(
        found.found.result("torque/figure/1"),
        Some(&Err(Lack::entry("torque/joints/1/grade".into())))
    );
    assert!((newton_metres(&found, "torque/figure/2") - 45.0).abs() < 1e-9);
}

#[test]
fn an_extension_lowers_the_setting_and_asks_for_the_wrench() {
    let entries = [
        ("torque/joints/1/figure", "20 lb ft"),
        ("torque/joints/1/extension", "3 in exact"),
    ];
    assert_eq!(
        found(&entries).found.result("torque/setting/1"),
        Some(&Err(Lack::needs(["torque/wrench_length".into()])))
    );
    let found = found(&[
        entries[0],
        entries[1],
        ("torque/wrench_length", "12 in exact"),
    ]);
    let setting = found.found.figure("torque/setting/1").expect("a setting");
    assert!((setting.in_unit(&unit::POUND_FOOT) - 16.0).abs() < 1e-9);
}

#[test]
fn stages_rise_to_the_setting_and_the_next_joint_is_the_first_undone() {
    let found = found(&[
        ("torque/joints/1/figure", "40"),
        ("torque/joints/1/done", "yes"),
        ("torque/joints/2/figure", "60"),
        ("torque/joints/2/stages", "3"),
        ("torque/joints/2/pattern", "circle"),
        ("torque/joints/2/bolts", "6"),
    ]);
    assert_eq!(found.next, Some(1));
    assert!((newton_metres(&found, "torque/stage/2/1") - 20.0).abs() < 1e-9);
    assert!((newton_metres(&found, "torque/stage/2/3") - 60.0).abs() < 1e-9);
    assert_eq!(found.joints[1].order[..2], [1, 4]);
    assert_eq!(
        found
            .found
            .figure("torque/left")
            .map(measure::Figure::value),
        Some(1.0)
    );
}

#[test]
fn a_setting_beyond_the_wrench_is_warned_of() {
    let found = found(&[
        ("torque/wrench_low", "40"),
        ("torque/wrench_high", "200"),
        ("torque/joints/1/figure", "260"),
    ]);
    assert!(facts(&found).contains(&"wrench_out_of_range"));
}

#[test]
fn a_printed_range_is_set_to_its_middle_and_one_upside_down_is_told_at_its_field() {
    let range = |to| {
        found(&[
            ("torque/joints/1/figure", "100 N m"),
            ("torque/joints/1/figure_to", to),
        ])
    };
    assert!((newton_metres(&range("120 N m"), "torque/setting/1") - 110.0).abs() < 1e-9);
    let wrong = range("90 N m");
    assert_eq!(wrong.found.errors[0].0, "torque/joints/1/figure_to");
    assert_eq!(
        wrong.found.errors[0].1,
        BookError::Trade(TradeError::UpsideDown)
    );
}

#[test]
fn the_wrench_tells_how_far_it_may_be_out() {
    // ISO 6789: 4 % for a setting wrench above 10 N·m, 6 % for a bending bar.
    for (kind, error) in [("setting", 4.0), ("dial", 4.0), ("beam", 6.0)] {
        let found = found(&[
            ("torque/wrench_low", "40 N m"),
            ("torque/wrench_high", "200 N m"),
            ("torque/wrench_kind", kind),
            ("torque/joints/1/figure", "100 N m"),
        ]);
        assert!((newton_metres(&found, "torque/wrench_error/1") - error).abs() < 1e-9);
    }
    let upside_down = found(&[
        ("torque/wrench_low", "200 N m"),
        ("torque/wrench_high", "40 N m"),
    ]);
    assert_eq!(upside_down.found.errors[0].0, "torque/wrench_high");
}

#[test]
fn wheels_and_u_bolts_are_tightened_again_even_if_nobody_said_so() {
    let found = found(&[
        ("torque/joints/1/purpose", "wheels"),
        ("torque/joints/1/figure", "100 N m"),
        ("torque/joints/2/figure", "50 N m"),
        ("torque/joints/3/figure", "50 N m"),
        ("torque/joints/3/check_after", "500 km"),
    ]);
    let again: Vec<(&str, f64)> = found
        .again()
        .map(|(joint, after)| (joint.id(), after.value()))
        .collect();
    assert_eq!(again, [("1", 80_000.0), ("3", 500_000.0)]);
}

/// A book from before there were several wrenches: the keys of that time, and what they came to then.
#[test]
fn a_book_with_the_keys_of_one_wrench_finds_what_it_found_then() {
    let entries = [
        ("torque/wrench_low", "30 lb ft"),
        ("torque/wrench_high", "150 lb ft"),
        ("torque/wrench_kind", "beam"),
        ("torque/wrench_length", "12 in exact"),
        ("torque/joints/1/figure", "20 lb ft"),
        ("torque/joints/1/extension", "3 in exact"),
        ("torque/joints/2/figure", "100 lb ft"),
    ];
    let found = found(&entries);
    let pound_feet = |id: &str| newton_metres(&found, id) / 1.355_817_948_331_400_4;
    // 20 × 12 / 15; a bending bar may be out by 6 %; 16 lbf·ft lie below the 30 that the wrench begins at.
    assert!((pound_feet("torque/setting/1") - 16.0).abs() < 1e-9);
    assert!((pound_feet("torque/wrench_error/2") - 6.0).abs() < 1e-9);
    assert_eq!(
        facts(&found)
            .iter()
            .filter(|fact| **fact == "wrench_out_of_range")
            .count(),
        1
    );
    assert!(
        found
            .joints
            .iter()
            .all(|joint| &*joint.wrench == FIRST_WRENCH)
    );
    // Nothing is put in place of a choice that such a book cannot have made.
    assert_eq!(
        found.found.assumption(&"torque/joints/1/wrench".into()),
        None
    );
}

const TWO_WRENCHES: [(&str, &str); 7] = [
    ("torque/wrench_low", "40"),
    ("torque/wrench_high", "200"),
    ("torque/wrench_length", "500 exact"),
    ("torque/wrenches/1/low", "5"),
    ("torque/wrenches/1/high", "50"),
    ("torque/wrenches/1/length", "250 exact"),
    ("torque/wrenches/1/error", "1.5 %"),
];

#[test]
fn a_joint_takes_the_smallest_wrench_that_holds_its_class_at_the_setting() {
    for (figure, wrench, error) in [
        ("48", "1", 0.72),
        ("10", "1", 0.15),
        ("51", FIRST_WRENCH, 2.04),
        ("200", FIRST_WRENCH, 8.0),
    ] {
        let found = found(&[&TWO_WRENCHES[..], &[("torque/joints/1/figure", figure)]].concat());
        assert_eq!(&*found.joints[0].wrench, wrench, "{figure} N·m");
        assert!((newton_metres(&found, "torque/wrench_error/1") - error).abs() < 1e-9);
        let proposed = found.found.assumption(&"torque/joints/1/wrench".into());
        assert_eq!(proposed, Some(wrench));
        assert!(!facts(&found).contains(&"outside_every_wrench"));
    }
}

#[test]
fn a_wrench_that_was_chosen_is_taken_and_judged() {
    let chosen = [
        ("torque/joints/1/figure", "20"),
        ("torque/joints/1/wrench", FIRST_WRENCH),
    ];
    let found = found(&[&TWO_WRENCHES[..], &chosen].concat());
    assert_eq!(&*found.joints[0].wrench, FIRST_WRENCH);
    assert!(facts(&found).contains(&"wrench_out_of_range"));
}

#[test]
fn a_setting_outside_every_wrench_is_warned_of_and_a_wrench_that_is_gone_gives_way() {
    for figure in ["240", "4"] {
        let joint = [
            ("torque/joints/1/figure", figure),
            ("torque/joints/1/wrench", ""),
        ];
        let found = found(&[&TWO_WRENCHES[..], &joint].concat());
        assert!(facts(&found).contains(&"outside_every_wrench"), "{figure}");
    }
    let gone = [
        ("torque/joints/1/figure", "48"),
        ("torque/joints/1/wrench", "7"),
    ];
    let found = found(&[&TWO_WRENCHES[..], &gone].concat());
    assert_eq!(&*found.joints[0].wrench, "1");
}

#[test]
fn an_extension_counts_with_the_length_of_the_wrench_that_is_taken() {
    // 60 N·m through 250 mm straight on: 30 on the small wrench (250 / 500), which holds it; the large one would be set to 40.
    let joint = [
        ("torque/joints/1/figure", "60"),
        ("torque/joints/1/extension", "250 exact"),
    ];
    let found = found(&[&TWO_WRENCHES[..], &joint].concat());
    assert_eq!(&*found.joints[0].wrench, "1");
    assert!((newton_metres(&found, "torque/setting/1") - 30.0).abs() < 1e-9);
}

#[test]
fn a_wrench_upside_down_is_told_at_its_field_and_the_other_serves() {
    let mut entries = TWO_WRENCHES.to_vec();
    entries[4].1 = "4";
    entries.push(("torque/joints/1/figure", "45"));
    let found = found(&entries);
    assert_eq!(found.found.errors[0].0, "torque/wrenches/1/high");
    assert_eq!(&*found.joints[0].wrench, FIRST_WRENCH);
    assert!(newton_metres(&found, "torque/setting/1") > 44.0);
}

#[test]
fn thread_that_is_engaged_too_little_is_warned_of() {
    let joint = |engaged: &'static str| {
        found(&[
            ("torque/joints/1/thread", "M10"),
            ("torque/joints/1/into", "aluminium"),
            ("torque/joints/1/engaged", engaged),
            ("torque/joints/1/figure", "30"),
        ])
    };
    // Twice the diameter in aluminium (common practice).
    let least = joint("").found.figure("torque/engagement/1").cloned();
    assert!((least.expect("a length").in_unit(&unit::MILLIMETRE) - 20.0).abs() < 1e-9);
    assert!(facts(&joint("14")).contains(&"engaged_too_little"));
    assert!(!facts(&joint("22")).contains(&"engaged_too_little"));
}

#[test]
fn a_flanged_head_bears_further_out_and_takes_more_torque() {
    let figure = |head: &'static str| {
        let found = found(&[
            ("torque/joints/1/thread", "3/8 BSF"),
            ("torque/joints/1/grade", "R"),
            ("torque/joints/1/head", head),
        ]);
        newton_metres(&found, "torque/figure/1")
    };
    assert!(figure("flanged") > figure("plain"));
}

#[test]
fn bolts_that_do_not_go_back_are_bought_only_with_a_price() {
    let joint = [
        ("torque/joints/1/name", "Flywheel bolts"),
        ("torque/joints/1/fixing", "stretch"),
        ("torque/joints/1/figure", "50"),
        ("torque/joints/1/pattern", "circle"),
        ("torque/joints/1/bolts", "8"),
    ];
    assert!(found(&joint).found.purchases.is_empty());
    let bought = |more: &[(&'static str, &'static str)]| {
        let found = found(&[&joint[..], more].concat());
        let line = &found.found.purchases[0];
        (line.what.to_string(), line.quantity.to_string())
    };
    let price = ("torque/joints/1/new_price", "1.85");
    assert_eq!(bought(&[price]), ("Flywheel bolts".into(), "8".into()));
    let count = ("torque/joints/1/new_count", "10");
    assert_eq!(
        bought(&[price, count]),
        ("Flywheel bolts".into(), "10".into())
    );
}
