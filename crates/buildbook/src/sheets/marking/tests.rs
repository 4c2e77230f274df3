//! What the marking-out sheet makes of entries.

use super::{MarkingFindings, MarkingSheet, findings};
use crate::sheets::vehicle;
use crate::{Book, BookError, Entry, Key, Lack, Sheet, evaluate, example, link};
use ::trade::TradeError;
use ::trade::marking::Check;

mod there;

fn of(entries: &[(&str, &str)]) -> MarkingFindings {
    let entries = entries
        .iter()
        .map(|(key, text)| (Key::from(format!("marking/{key}").as_str()), (*text).into()));
    found(&Book::of("b", entries))
}

fn found(book: &Book) -> MarkingFindings {
    findings(
        &MarkingSheet::read(book),
        &vehicle::findings(&vehicle::VehicleSheet::read(book)),
    )
}

/// The example with some entries changed.
fn example_with(changes: &[(&str, &str)]) -> MarkingFindings {
    let mut book = example::book();
    for (key, text) in changes {
        let key = Key::from(format!("marking/{key}").as_str());
        let entry = (!text.is_empty()).then(|| Entry::new(*text));
        book = book.with(&book.setting(key, entry));
    }
    found(&book)
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
        Some(&Err(Lack::needs(["marking/features/1/b".into()])))
    );
    let nothing = of(&[("features/1/a", "300")]);
    assert_eq!(
        nothing.found.result("marking/arc_a/1"),
        Some(&Err(Lack::needs(["marking/ab".into()])))
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

/// A hole of 20 mm at 180 along and 240 above, mirrored.
fn with_an_edge(edge: &[(&'static str, &'static str)]) -> MarkingFindings {
    let mut entries = TRIANGLE.to_vec();
    entries.push(("features/1/diameter", "20 exact"));
    entries.extend(edge.iter().copied());
    of(&entries)
}

fn facts(found: &MarkingFindings) -> Vec<&'static str> {
    let remarks = found.found.remarks.iter();
    remarks.map(|remark| remark.fact).collect()
}

#[test]
fn an_edge_is_given_by_offsets_from_the_line_and_the_land_is_reckoned_to_it() {
    // 280 above the line: 280 - 240 - 10 left.
    let level = with_an_edge(&[("edges/1/off_a", "280 exact")]);
    assert!((mm(&level, "edge/1") - 30.0).abs() < 1e-6);
    assert!(!facts(&level).contains(&"edge_short"));
    // It rises from 240 at A' to 615 at B', 3 in 4: at 180 along it stands at 375, so the centre lies 135 * 4 / 5 off it.
    let slanted = with_an_edge(&[
        ("edges/1/off_a", "240 exact"),
        ("edges/1/off_b", "615 exact"),
    ]);
    assert!((mm(&slanted, "edge/1") - 98.0).abs() < 1e-6);
    // 255 above: 5 are left, and one diameter should be.
    let short = with_an_edge(&[("edges/1/off_a", "255 exact")]);
    assert!((mm(&short, "edge/1") - 5.0).abs() < 1e-6);
    assert!(facts(&short).contains(&"edge_short"));
    // 245 above, the hole hangs out; 100 above, it lies beyond. Both are warned of.
    for (off, left) in [("245 exact", -5.0), ("100 exact", -150.0)] {
        let over = with_an_edge(&[("edges/1/off_a", off)]);
        assert!((mm(&over, "edge/1") - left).abs() < 1e-6);
        assert!(facts(&over).contains(&"over_the_edge"));
    }
    // Below the line it is far from a hole above.
    let below = with_an_edge(&[("edges/1/off_a", "60 exact"), ("edges/1/side", "below")]);
    assert!((mm(&below, "edge/1") - 290.0).abs() < 1e-6);
}

#[test]
fn an_edge_is_given_by_two_of_its_points_and_of_two_edges_the_nearer_one_counts() {
    // The line of 280 above again, by its points at 0 and 500 along: 280, 573.06 and 573.06, 280.
    let two: &[(&str, &str)] = &[
        ("edges/1/by", "two_points"),
        ("edges/1/one_a", "280 exact"),
        ("edges/1/one_b", "573.062824 exact"),
        ("edges/1/two_a", "573.062824 exact"),
        ("edges/1/two_b", "280 exact"),
    ];
    assert!((mm(&with_an_edge(two), "edge/1") - 30.0).abs() < 1e-3);
    // A nearer one besides, 263 above: 13 are left. And what was measured at the hole itself, 21, is nearer still.
    let nearer: Vec<_> = two
        .iter()
        .copied()
        .chain([("edges/2/off_a", "263 exact")])
        .collect();
    assert!((mm(&with_an_edge(&nearer), "edge/1") - 13.0).abs() < 1e-3);
    let typed: Vec<_> = nearer
        .into_iter()
        .chain([("features/1/edge", "21 exact")])
        .collect();
    assert!((mm(&with_an_edge(&typed), "edge/1") - 11.0).abs() < 1e-3);
}

#[test]
fn an_edge_that_is_none_is_told_at_its_entry_and_leaves_the_rest() {
    let through = with_an_edge(&[("edges/1/off_a", "0 exact")]);
    assert_eq!(through.found.errors[0].0, "marking/edges/1/off_a");
    let point = with_an_edge(&[
        ("edges/1/by", "two_points"),
        ("edges/1/one_a", "280 exact"),
        ("edges/1/one_b", "400 exact"),
        ("edges/1/two_a", "280 exact"),
        ("edges/1/two_b", "400 exact"),
    ]);
    assert_eq!(point.found.errors[0].0, "marking/edges/1/two_b");
    for found in [through, point] {
        assert!((mm(&found, "arc_a/1") - 300.0).abs() < 1e-6);
        assert!(found.edges.is_empty());
    }
}

#[test]
fn all_datums_of_the_new_side_stand_on_the_template() {
    let others = |changes: &[(&str, &str)]| {
        let found = example_with(changes);
        let others = found.moved.others.iter().map(|at| at.values());
        others.collect::<Vec<_>>()
    };
    // As measured on the new side, and on the other hand: C stands 520.5 from B', above the line, which is below nothing.
    let measured = others(&[]);
    assert_eq!(measured.len(), 2);
    assert!(measured.iter().all(|at| at[1] < 0.0));
    let from_a = measured[0][0].hypot(measured[0][1]);
    assert!((from_a - 0.793).abs() < 0.000_5, "{from_a}");
    // Where the new side was not measured, where the move takes them.
    let blank = ["new_ab", "new_ac", "new_bc", "new_ad", "new_bd", "new_cd"];
    let blank: Vec<_> = blank.into_iter().map(|key| (key, "")).collect();
    let moved = others(&blank);
    assert_eq!(moved.len(), 2);
    assert!((moved[0][0] - measured[0][0]).abs() < 0.01);
}

#[test]
fn costs_follow_the_template_and_the_count_of_features() {
    let follow = |changes: &[(&str, &str)]| {
        let mut entries = vec![
            ("marking/ab", "500"),
            ("marking/features/1/a", "300"),
            ("marking/features/2/a", "310"),
            ("marking/features/3/a", "320"),
            ("marking/template_got", "hired"),
            ("marking/template_hire", "12.50"),
            ("marking/template_days", "3"),
            ("marking/template_buy", "90"),
            ("costs/hour_rate", "20"),
            ("costs/hire/1/follows", "marking"),
            ("costs/send/1/follows", "marking"),
            ("costs/send/1/send_each", "40"),
            ("costs/send/1/here_each", "0"),
            ("costs/send/1/hours_each", "1"),
        ];
        entries.extend_from_slice(changes);
        let entries = entries
            .into_iter()
            .map(|(key, text)| (key.into(), text.into()));
        let book = Book::of("b", entries);
        let found = evaluate(&book, None);
        // Whoever is sent the costs alone reads the same of them.
        let sent = evaluate(&link::part(&book, "costs"), None);
        assert_eq!(sent.costs.lines, found.costs.lines);
        assert_eq!(sent.costs.send, found.costs.send);
        [
            "costs/priced/marking-template",
            "costs/hire/1/first",
            "costs/hire/1/second",
            "costs/send/1/first",
            "costs/send/1/second",
        ]
        .map(|id| {
            let money = found.costs.found.money(id);
            money.map(|money| money.as_ref().expect(id).money.to_string())
        })
    };
    let said =
        |texts: [&str; 5]| texts.map(|text| (!text.is_empty()).then(|| format!("{text} GBP")));
    // Three days of 12.50; three features at 40 or at an hour of 20.
    assert_eq!(
        follow(&[]),
        said(["37.50", "37.50", "90.00", "120.00", "60.00"])
    );
    let more = [
        ("marking/features/4/a", "330"),
        ("marking/template_days", "8"),
    ];
    assert_eq!(
        follow(&more),
        said(["100.00", "100.00", "90.00", "160.00", "80.00"])
    );
    let bought = follow(&[("marking/template_got", "bought")]);
    assert_eq!(bought[0].as_deref(), Some("90.00 GBP"));
    assert_eq!(follow(&[("marking/template_got", "here")])[0], None);
}

#[test]
fn up_is_turned_by_as_much_as_the_datum_line_leans() {
    let up = |by: &str, lean: &str| {
        let mut entries = TRIANGLE.to_vec();
        entries.extend([
            ("features/1/diameter", "20 exact"),
            ("move_by", by),
            ("shift_along", "0 exact"),
            ("datum_lean", lean),
        ]);
        let found = of(&entries);
        let said = super::Said {
            title: String::new(),
            lines: Vec::new(),
            datum_line: &|_| String::new(),
            name: &|_| String::new(),
            size: &|_| String::new(),
        };
        super::template(&found, said)
            .expect("drawn")
            .up
            .to_degrees()
    };
    // The line rises by 10 degrees to the right: what stands upright stands 80 from it. On the other hand it runs to the left, and
    // upright is to its right.
    for (by, lean, wanted) in [
        ("shift", "0", 90.0),
        ("shift", "10°", 80.0),
        ("shift", "-90°", 180.0),
        ("mirror", "0", -90.0),
        ("mirror", "10°", -80.0),
    ] {
        assert!((up(by, lean) - wanted).abs() < 1e-9, "{by} {lean}");
    }
}
