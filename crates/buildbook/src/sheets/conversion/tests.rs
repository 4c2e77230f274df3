//! The conversion sheet from typed entries.

use std::rc::Rc;

use ::trade::TradeError;
use measure::unit;

use super::{ConversionFindings, ConversionSheet, STANDARD, Standing, findings};
use crate::sheets::vehicle::{self, VehicleSheet};
use crate::{Book, Key, Lack, Rank, Sheet};

/// A left-hand steering whose drag link is the long side of a 3-4-5 triangle: 400 mm along, 300 mm across, level.
const LEFT: [(&str, &str); 15] = [
    ("now/1/arm_swings", "backward"),
    ("now/1/ball_stands", "inside"),
    ("now/1/side", "left"),
    ("now/1/box_x", "-400"),
    ("now/1/box_out", "300"),
    ("now/1/box_z", "600"),
    ("now/1/drop_arm", "200"),
    ("now/1/ball_x", "0"),
    ("now/1/ball_out", "600"),
    ("now/1/ball_z", "400"),
    ("now/1/box_ratio", "20 exact"),
    ("pivots", "1500"),
    ("fixed_eye", "front"),
    ("half_spring", "600"),
    ("seat_above_eye", "0"),
];

fn found(entries: &[(&str, &str)]) -> ConversionFindings {
    let own = entries.iter().map(|(key, text)| {
        (
            Key::from(format!("conversion/{key}").as_str()),
            (*text).into(),
        )
    });
    let vehicle = [
        ("vehicle/wheelbase", "3000"),
        ("vehicle/track_front", "1600"),
    ];
    let vehicle = vehicle.map(|(key, text)| (Key::from(key), text.into()));
    let book = Book::of("b", own.chain(vehicle));
    let vehicle = Rc::new(vehicle::findings(&VehicleSheet::read(&book)));
    findings(&ConversionSheet::read(&book), &vehicle)
}

/// The left-hand steering with these entries in place of its own, or besides.
fn left(changed: &[(&str, &str)]) -> ConversionFindings {
    let kept = LEFT
        .iter()
        .filter(|(key, _)| changed.iter().all(|(other, _)| other != key));
    let entries: Vec<_> = kept.chain(changed).copied().collect();
    found(&entries)
}

fn figure(found: &ConversionFindings, id: &str) -> f64 {
    let id = format!("conversion/{id}");
    let figure = found.found.figure(&id);
    figure
        .unwrap_or_else(|| panic!("{id}: {:?}", found.found.result(&id)))
        .value()
}

fn lack(found: &ConversionFindings, id: &str) -> Lack {
    let result = found.found.result(&format!("conversion/{id}"));
    result.expect("a result").clone().expect_err("no answer")
}

fn remark_at(found: &ConversionFindings, fact: &str) -> Option<(Rank, Key)> {
    let remark = found
        .found
        .remarks
        .iter()
        .find(|remark| remark.fact == fact)?;
    Some((remark.rank, remark.key.clone()?))
}

#[test]
fn nothing_is_said_of_the_direction_before_the_side_is_known_that_decides_it() {
    let unknown = |stands| {
        let kept = LEFT.iter().filter(|(key, _)| *key != "now/1/side");
        let kept = kept.filter(|(key, _)| *key != "now/1/ball_stands");
        let stands = [("now/1/ball_stands", stands)];
        found(&kept.chain(&stands).copied().collect::<Vec<_>>())
    };
    // A ball inside steers true on the left and backwards on the right.
    let inside = unknown("inside");
    let Some(Err(lack)) = inside.found.result("conversion/link/now") else {
        panic!("the side is asked for")
    };
    let side = Key::from("conversion/now/1/side");
    assert!(lack.needed().is_some_and(|keys| keys.contains(&side)));
    assert!(remark_at(&inside, "steers_backwards").is_none());
    // One in front, pushed and pulled, steers not at all on either.
    assert!(remark_at(&unknown("front"), "steers_not_at_all").is_some());
}

#[test]
fn the_drag_link_is_the_distance_between_the_balls() {
    let found = left(&[]);
    let link = found.found.figure("conversion/link/now").expect("a link");
    assert!((link.in_unit(&unit::MILLIMETRE) - 500.0).abs() < 1e-9);
}

#[test]
fn a_set_up_that_steers_backwards_stops_every_result_of_the_steering_and_nothing_else() {
    let found = left(&[
        ("now/1/arm_swings", "forward"),
        ("brake_now/1/pad_arm", "300"),
        ("brake_now/1/rod_arm", "60"),
    ]);
    let (rank, key) = remark_at(&found, "steers_backwards").expect("it is said");
    assert_eq!(
        (rank, key.as_str()),
        (Rank::Danger, "conversion/now/1/arm_swings")
    );
    for id in [
        "link/now",
        "ratio/now",
        "bump_up/now",
        "least/box_up",
        "circle_left/now",
    ] {
        assert_eq!(
            lack(&found, id),
            Lack::refused(TradeError::SteersBackwards),
            "{id}"
        );
    }
    assert!(found.found.result("conversion/moved_link/up").is_none());
    assert!((figure(&found, "pedal_ratio/now") - 5.0).abs() < 1e-12);
}

#[test]
fn a_link_that_pulls_along_its_arm_steers_nothing() {
    let found = left(&[("now/1/ball_stands", "front")]);
    assert_eq!(
        lack(&found, "link/now"),
        Lack::refused(TradeError::SteersNotAtAll)
    );
}

#[test]
fn measures_that_belie_the_answers_stop_it_as_well() {
    // Answered: inside the king pin. Measured: 80 mm outside of it.
    let found = left(&[("now/1/ball_out", "830")]);
    assert!(remark_at(&found, "measures_steer_backwards").is_some());
    assert_eq!(
        lack(&found, "link/now"),
        Lack::refused(TradeError::SteersBackwards)
    );
}

#[test]
fn the_direction_comes_first_among_what_is_needed() {
    let found = left(&[("now/1/arm_swings", ""), ("now/1/ball_z", "")]);
    let lack = lack(&found, "link/now");
    let keys = lack.needed().expect("it needs entries");
    let keys: Vec<&str> = keys.iter().map(Key::as_str).collect();
    assert_eq!(
        keys,
        ["conversion/now/1/arm_swings", "conversion/now/1/ball_z"]
    );
}

#[test]
fn a_mirrored_steering_is_the_same_steering() {
    let mut entries = LEFT.to_vec();
    entries.extend([("inclination", "7"), ("castor", "3")]);
    let keys: Vec<String> = LEFT
        .iter()
        .map(|(key, _)| key.replace("now/", "was/"))
        .collect();
    let mirrored = LEFT
        .iter()
        .zip(&keys)
        .filter(|((key, _), _)| key.starts_with("now/"));
    entries.extend(mirrored.map(|((_, text), key)| match *text {
        "backward" => (key.as_str(), "forward"),
        "left" => (key.as_str(), "right"),
        same => (key.as_str(), same),
    }));
    let found = found(&entries);
    for id in ["link", "ratio", "bump_up", "bump_down"] {
        assert!(
            figure(&found, &format!("{id}/change")).abs() < 1e-12,
            "{id}"
        );
        assert!(figure(&found, &format!("{id}/now")) != 0.0);
    }
}

#[test]
fn the_link_and_the_ratio_ask_for_no_spring_and_bump_steer_does() {
    for spring in ["", "soft"] {
        let found = left(&[("half_spring", spring)]);
        assert!((figure(&found, "link/now") - 0.5).abs() < 1e-9);
        assert!((figure(&found, "ratio/now") - 15.0).abs() < 1e-9);
        for id in ["bump_up/now", "least/box_up", "moved_bump/up"] {
            let key = Key::from("conversion/half_spring");
            let expected = match spring {
                "" => Lack::needs_one(&key),
                _ => Lack::entry(key),
            };
            assert_eq!(lack(&found, id), expected, "{id}");
        }
    }
}

#[test]
fn a_leaning_king_pin_asks_for_the_tyre_and_a_measured_offset_goes_before_it() {
    let axle = [
        ("stop", "34 exact"),
        ("track_arm", "165"),
        ("track_arm_angle", "17"),
        ("inclination", "7"),
    ];
    let lacking = lack(&left(&axle), "circle_left/now");
    let Some(keys) = lacking.needed() else {
        panic!("it needs an entry")
    };
    assert_eq!(keys, [Key::from("vehicle/tyre_front")]);
    let with = |scrub: &str| {
        let more = [("scrub", scrub)];
        let found = left(&[&axle[..], &more].concat());
        figure(&found, "circle_left/now")
    };
    // On both sides of the circle the tyre stands as much further out.
    assert!((with("100 exact") - with("40 exact") - 0.120).abs() < 1e-9);
}

#[test]
fn a_box_raised_as_advised_leaves_little_bump_steer_for_a_small_rise() {
    let upset = left(&[("rise", "5 exact"), ("now/1/box_z", "640")]);
    // The axle's seat is level with the eye, so the link has to lie level: 40 mm lower again.
    assert!((figure(&upset, "least/box_up") + 0.04).abs() < 1e-9);
    let (before, after) = (
        figure(&upset, "bump_up/now"),
        figure(&left(&[("rise", "5 exact")]), "bump_up/now"),
    );
    assert!(after.abs() < 0.2 * before.abs(), "{after} against {before}");
}

#[test]
fn full_lock_ends_at_the_axles_stop_or_at_the_boxs_own_end_whichever_comes_first() {
    let rod = [
        ("track_arm", "160"),
        ("track_arm_angle", "15"),
        ("stop", "35"),
    ];
    let by_stop = left(&[rod[0], rod[1], rod[2], ("now/1/swing", "50")]);
    assert!((figure(&by_stop, "lock_left/now").to_degrees() - 35.0).abs() < 1e-9);
    let by_box = left(&[rod[0], rod[1], rod[2], ("now/1/swing", "10")]);
    assert!(figure(&by_box, "lock_left/now").to_degrees() < 25.0);
    assert!(figure(&by_box, "circle_left/now") > figure(&by_stop, "circle_left/now"));
}

#[test]
fn a_drag_link_to_hand_that_is_too_short_is_told_at_its_entry() {
    let found = left(&[("link_least", "420"), ("link_most", "480")]);
    let (_, key) = remark_at(&found, "link_cannot_reach").expect("it is said");
    assert_eq!(key.as_str(), "conversion/link_least");
    assert!(remark_at(&left(&[("link_most", "520")]), "link_cannot_reach").is_none());
}

const MAKERS: [(&str, &str); 3] = [("pad_arm", "300"), ("rod_arm", "60"), ("master", "20")];

fn brakes(now: &[(&str, &str)]) -> ConversionFindings {
    let mut entries: Vec<(String, &str)> = Vec::new();
    for (field, text) in MAKERS {
        entries.push((format!("brake_was/1/{field}"), text));
        let now = now.iter().find(|(own, _)| *own == field);
        entries.push((
            format!("brake_now/1/{field}"),
            now.map_or(text, |(_, text)| text),
        ));
    }
    entries.push(("foot".to_owned(), "500 N exact"));
    let entries: Vec<_> = entries
        .iter()
        .map(|(key, text)| (key.as_str(), *text))
        .collect();
    found(&entries)
}

#[test]
fn back_at_the_makers_values_the_foot_finds_no_difference() {
    let found = brakes(&[]);
    assert!(figure(&found, "foot/change").abs() < 1e-9);
    assert!(figure(&found, "pressure/change").abs() < 1e-6);
    // 500 N at 5:1 on 20 mm: 2500 N over 314.159 mm².
    assert!((figure(&found, "pressure/now") - 7.957_747e6).abs() < 1.0);
    // 1500 N at 5:1.
    assert!((figure(&found, "bulkhead/now") - 7500.0).abs() < 1e-9);
}

#[test]
fn a_larger_master_asks_for_more_of_the_foot_up_to_what_the_rules_allow() {
    let found = brakes(&[("master", "25")]);
    // (25/20)² of 500 N.
    assert!((figure(&found, "foot/now") - 781.25).abs() < 1e-9);
    let (rank, key) = remark_at(&found, "foot_over_limit").expect("it is said");
    assert_eq!(
        (rank, key.as_str()),
        (Rank::Warning, "conversion/brake_now/1/master")
    );
}

#[test]
fn a_bore_of_nothing_spoils_what_rests_on_it_and_nothing_else() {
    let found = brakes(&[("master", "0")]);
    let key: Key = "conversion/brake_now/1/master".into();
    assert_eq!(found.found.errors.first().map(|(at, _)| at), Some(&key));
    assert_eq!(lack(&found, "pressure/now"), Lack::entry(key));
    assert!((figure(&found, "bulkhead/now") - 7500.0).abs() < 1e-9);
    assert!(figure(&found, "pressure/was") > 0.0);
}

#[test]
fn a_bend_tighter_than_allowed_is_told_at_that_bend() {
    let found = found(&[
        ("routes/1/kind", "throttle"),
        ("routes/1/straights/1/length", "400"),
        ("routes/1/bends/1/radius", "150 exact"),
        ("routes/1/bends/1/angle", "90"),
        ("routes/1/bends/2/radius", "60 exact"),
        ("routes/1/bends/2/angle", "90"),
        ("routes/1/least_radius", "100"),
    ]);
    let (_, key) = remark_at(&found, "bend_too_tight").expect("it is said");
    assert_eq!(key.as_str(), "conversion/routes/1/bends/2/radius");
    // 400 + π/2 (150 + 60).
    assert!((figure(&found, "cut/1") - 0.729_867).abs() < 1e-6);
}

#[test]
fn a_string_goes_before_straights_and_bends_and_flares_are_added_to_a_pipe() {
    let found = found(&[
        ("routes/1/kind", "brake_pipe"),
        ("routes/1/string", "800"),
        ("routes/1/straights/1/length", "400"),
        ("routes/1/flare_takes", "4"),
    ]);
    assert!((figure(&found, "cut/1") - 0.808).abs() < 1e-12);
}

#[test]
fn all_that_changes_sides_is_open_until_it_is_done_or_does_not_apply() {
    let usual = STANDARD.len() as f64;
    assert!((figure(&found(&[]), "open") - usual).abs() < 1e-12);
    let found = found(&[
        ("changes/dip/state", "done"),
        ("changes/dip/on", "2026-03-01"),
        ("changes/column_lock/state", "does_not_apply"),
        ("changes/wipers/note", "arms from the other side"),
        ("others/1/name", "Step"),
    ]);
    assert!((figure(&found, "open") - (usual - 2.0 + 1.0)).abs() < 1e-12);
    assert!((figure(&found, "done") - 1.0).abs() < 1e-12);
    let open: Vec<&str> = found.open_changes().map(super::SideChange::id).collect();
    assert!(open.contains(&"wipers") && !open.contains(&"dip") && !open.contains(&"column_lock"));
    let own = found.changes.last().expect("its owner's");
    assert_eq!(
        (own.name.as_deref(), own.standing),
        (Some("Step"), Standing::ToDo)
    );
}

#[test]
fn bends_begin_where_the_pieces_before_them_end() {
    let found = found(&[
        ("routes/1/kind", "brake_pipe"),
        ("routes/1/flare_takes", "5"),
        ("routes/1/straights/1/length", "100"),
        ("routes/1/straights/2/length", "200"),
        ("routes/1/bends/1/radius", "20"),
        ("routes/1/bends/1/angle", "90"),
        ("routes/1/bends/2/radius", "30"),
        ("routes/1/bends/2/angle", "90"),
    ]);
    // 5 + 100; then a quarter turn of 20 mm, 31.416, and 200 more.
    assert!((figure(&found, "bend_at/1/1") - 0.105).abs() < 1e-12);
    assert!((figure(&found, "bend_at/1/2") - 0.336_416).abs() < 1e-6);
}
