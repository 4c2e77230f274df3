//! What is on the new side already, and which side that is.

use super::*;

/// A hole of 20 mm in the corner of the triangle, 180 mm along and 240 mm up, and something that is there.
fn beside(thing: &[(&str, &str)]) -> MarkingFindings {
    let mut entries = TRIANGLE.to_vec();
    entries.push(("features/1/diameter", "20 exact"));
    entries.extend(thing);
    of(&entries)
}

/// A rib of 30 mm that runs 300 mm above the line, from above A to above B.
const RIB: [(&str, &str); 7] = [
    ("there/1/kind", "strip"),
    ("there/1/name", "Rib"),
    ("there/1/a", "300 exact"),
    ("there/1/b", "583.0952 exact"),
    ("there/1/two_a", "583.0952 exact"),
    ("there/1/two_b", "300 exact"),
    ("there/1/diameter", "30 exact"),
];

#[test]
fn a_strip_is_kept_clear_of_along_all_its_length() {
    let found = beside(&RIB);
    // Its lower edge runs 285 mm up, the hole reaches to 250 mm.
    assert!((mm(&found, "land/1") - 35.0).abs() < 1e-3);
    let mut wide = RIB.to_vec();
    wide.push(("there/1/diameter", "102 exact"));
    assert!(facts(&beside(&wide)).contains(&"clash_with_there"));
    // As measured with a tape, half a millimetre of room is none to be sure of.
    let mut close = RIB.to_vec();
    close.extend([("there/1/diameter", "99 exact"), ("land", "0 exact")]);
    close.extend([("there/1/a", "300"), ("there/1/two_b", "300")]);
    let close = beside(&close);
    assert!(facts(&close).contains(&"land_doubtful"));
    let left = close.found.figure("marking/land/1").expect("reckoned");
    assert!((left.value() * 1e3 - 0.5).abs() < 1e-3 && left.plus() > 0.5e-3);
}

#[test]
fn a_rectangle_is_turned_anticlockwise_as_it_is_seen_on_either_side() {
    let mut entries = vec![
        ("there/1/kind", "rectangle"),
        ("there/1/a", "360.5551 exact"),
        ("there/1/b", "282.8427 exact"),
        ("there/1/length", "200 exact"),
        ("there/1/diameter", "2 exact"),
        ("there/1/turn", "30° exact"),
    ];
    // On the other hand A' stands to the right: from the rectangle's middle the hole lies 120 mm to the right and 40 mm up, which is
    // 123.92 mm along it and 25.36 mm beside it.
    let far = (23.923_f64).hypot(24.359) - 10.0;
    assert!((mm(&beside(&entries), "land/1") - far).abs() < 1e-2);
    // Fitted without a mirror it lies 120 mm to the left and 40 mm up: within the length, 94.64 mm beside it.
    entries.extend([("move_by", "fit_plain"), ("new_ab", "500 exact")]);
    assert!((mm(&beside(&entries), "land/1") - (94.641 - 1.0 - 10.0)).abs() < 1e-2);
}

#[test]
fn a_long_thing_near_by_does_not_hide_the_hole_that_is_nearer() {
    let mut entries = RIB.to_vec();
    entries.extend([
        ("features/2/a", "322.2188 exact"),
        ("features/2/b", "372.5923 exact"),
        ("features/2/diameter", "20 exact"),
    ]);
    // The second hole's middle lies 35 mm beside the first one's.
    assert!((mm(&beside(&entries), "land/1") - 15.0).abs() < 1e-3);
}

#[test]
fn a_strip_without_length_and_one_that_cannot_meet_are_told_at_the_end_that_is_wrong() {
    let told = |changes: &[(&'static str, &'static str)]| {
        let mut entries = RIB.to_vec();
        entries.extend(changes);
        let found = beside(&entries);
        let mut errors = found.found.errors.iter().map(|(key, _)| key.to_string());
        (errors.next(), mm(&found, "arc_a/1"))
    };
    let nowhere = told(&[
        ("there/1/two_a", "300 exact"),
        ("there/1/two_b", "583.0952 exact"),
    ]);
    assert_eq!(nowhere.0.as_deref(), Some("marking/there/1/two_b"));
    let apart = told(&[("there/1/a", "100 exact")]);
    assert_eq!(apart.0, None);
    let apart = told(&[("there/1/a", "50 exact")]);
    assert_eq!(apart.0.as_deref(), Some("marking/there/1/b"));
    assert!((apart.1 - 300.0).abs() < 1e-6);
}

#[test]
fn a_template_goes_on_the_side_that_the_vehicle_shall_steer_on_unless_another_is_chosen() {
    let of = |version: &str, entries: &[(&str, &str)]| {
        let version = [("book/defaults", version)];
        let entries = version.iter().chain(entries);
        let entries = entries.map(|(key, text)| (Key::from(*key), (*text).into()));
        found(&Book::of("b", entries.collect::<Vec<(Key, Entry)>>()))
    };
    let right = ("vehicle/steering_wanted", "right");
    assert_eq!(of("2", &[]).goes_on, None);
    let follows = of("2", &[right]);
    let key = Key::from("marking/goes_on");
    assert_eq!(follows.goes_on, Some("right"));
    assert_eq!(follows.found.assumption(&key), Some("right"));
    let chosen = of("2", &[right, ("marking/goes_on", "left")]);
    assert_eq!(chosen.goes_on, Some("left"));
    assert!(!facts(&chosen).contains(&"goes_on_other"));
    // An old book keeps what it took for granted, and says so where that is doubtful.
    let old = of("1", &[right]);
    assert_eq!(old.goes_on, Some("left"));
    assert!(facts(&old).contains(&"goes_on_other"));
    assert!(!facts(&of("1", &[("vehicle/steering_wanted", "left")])).contains(&"goes_on_other"));
}

#[test]
fn a_new_side_that_can_be_no_image_of_the_old_one_is_doubted() {
    let far = |ab| facts(&beside(&[("new_ab", ab)])).contains(&"fit_far");
    assert!(!far("497 exact") && !far("515 exact"));
    // Half of what the datums' distances differ by remains at each.
    assert!(far("530 exact") && far("50 exact"));
    assert!(!facts(&example_with(&[])).contains(&"fit_far"));
}
