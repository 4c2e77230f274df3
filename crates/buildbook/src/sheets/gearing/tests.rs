//! The gearing sheet from typed text to results, against figures worked out outside.

use measure::{Kind, Manner, unit};

use crate::{Book, BookError, Finding, Findings, Key, Lack, Rank, State, evaluate, work_back};

fn book(entries: &[(&str, &str)]) -> Book {
    Book::of(
        "b",
        entries
            .iter()
            .map(|(key, text)| (Key::from(*key), (*text).into())),
    )
}

fn with(entries: &[(&str, &str)], more: &[(&str, &str)]) -> Book {
    let all: Vec<_> = entries.iter().chain(more).copied().collect();
    book(&all)
}

fn value(findings: &Findings, id: &str) -> f64 {
    match findings.result(id) {
        Some(Ok(figure)) => figure.value(),
        other => panic!("{id}: {other:?}"),
    }
}

fn facts(findings: &Findings) -> Vec<&'static str> {
    findings
        .gearing
        .found
        .remarks
        .iter()
        .map(|remark| remark.fact)
        .collect()
}

/// Tyre, four gears, axle, engine speed.
const SEVEN: &[(&str, &str)] = &[
    ("vehicle/tyre_rear", "185/80 R 14"),
    ("gearing/gears/1/ratio", "3.78"),
    ("gearing/gears/2/ratio", "2.12"),
    ("gearing/gears/3/ratio", "1.46"),
    ("gearing/gears/4/ratio", "1"),
    ("gearing/axle", "4.11"),
    ("gearing/engine_speed", "4000"),
];

const LORRY: &[(&str, &str)] = &[
    ("vehicle/roll_out_rear", "2412 mm exact"),
    ("vehicle/width", "2.2 m exact"),
    ("vehicle/height", "2.4 m exact"),
    ("vehicle/frontal_share", "0.871212121212 exact"),
    ("vehicle/front_laden", "1976 kg exact"),
    ("vehicle/rear_laden", "3224 kg exact"),
    ("vehicle/wheelbase", "3150 mm exact"),
    ("vehicle/centre_height", "900 mm exact"),
    ("vehicle/breathing", "blown"),
    ("gearing/gears/1/ratio", "5.87 exact"),
    ("gearing/gears/2/ratio", "3.21 exact"),
    ("gearing/gears/3/ratio", "1.83 exact"),
    ("gearing/gears/4/ratio", "1 exact"),
    ("gearing/axle", "37/6"),
    ("gearing/rolling", "0.018 exact"),
    ("gearing/altitude", "0 m exact"),
    ("gearing/temperature", "15 °C exact"),
    ("gearing/torque/1/at", "800"),
    ("gearing/torque/1/torque", "214"),
    ("gearing/torque/2/at", "1200"),
    ("gearing/torque/2/torque", "241"),
    ("gearing/torque/3/at", "1600"),
    ("gearing/torque/3/torque", "255"),
    ("gearing/torque/4/at", "2000"),
    ("gearing/torque/4/torque", "252"),
    ("gearing/torque/5/at", "2400"),
    ("gearing/torque/5/torque", "243"),
    ("gearing/torque/6/at", "2800"),
    ("gearing/torque/6/torque", "229"),
    ("gearing/torque/7/at", "3200"),
    ("gearing/torque/7/torque", "210"),
    ("gearing/torque/8/at", "3600"),
    ("gearing/torque/8/torque", "181"),
];

#[test]
fn seven_entries_from_an_empty_book_tell_the_speeds_of_a_ratio() {
    assert_eq!(SEVEN.len(), 7);
    let findings = evaluate(&book(SEVEN), None);
    let km_h = |id: &str| unit::KILOMETRE_PER_HOUR.from_si(value(&findings, id));
    // By hand: C = 3.05 x 0.6516 m; v = n C / i (reference checks speed-1000 and revs-100).
    assert!((km_h("gearing/per_1000/4") - 29.013).abs() < 0.0005);
    assert!((km_h("gearing/speed/4") - 116.052).abs() < 0.005);
    assert!((km_h("gearing/speed/1") - 30.702).abs() < 0.005);
    assert!((value(&findings, "gearing/cruise") * 60.0 - 2757.4).abs() < 0.1);
    assert_eq!(findings.gearing.found.state(), State::Ready);
}

#[test]
fn an_empty_sheet_names_what_it_needs() {
    let findings = evaluate(&book(&[("gearing/engine_speed", "3000")]), None);
    let Some(Err(lack)) = findings.result("gearing/cruise") else {
        panic!("nothing is known")
    };
    let keys = lack.needed().expect("nothing but entries is missing");
    let mut keys: Vec<_> = keys.iter().map(Key::as_str).collect();
    keys.sort_unstable();
    assert_eq!(
        keys,
        ["gearing/axle", "gearing/gears/1/ratio", "vehicle/tyre_rear"]
    );
    assert_eq!(findings.gearing.found.state(), State::Needs(3));
}

#[test]
fn a_roll_out_always_wins_over_the_designation() {
    let more = [
        ("vehicle/roll_out_rear", "19.92 m"),
        ("vehicle/roll_out_rear_turns", "10"),
    ];
    let findings = evaluate(&with(SEVEN, &more), None);
    assert!((value(&findings, "gearing/circumference") - 1.992).abs() < 1e-12);
}

#[test]
fn teeth_are_exact_and_a_printed_ratio_is_not() {
    let of = |axle: &str| {
        let more = [("gearing/axle", axle), ("gearing/engine_speed", "4000")];
        let findings = evaluate(&with(&SEVEN[..5], &more), None);
        findings
            .gearing
            .found
            .figure("gearing/overall/4")
            .cloned()
            .unwrap()
    };
    assert_eq!(of("37/8").value(), 4.625);
    assert_eq!(of("8/37").value(), 4.625);
    assert!(of("37/8").is_exact());
    assert!((of("4.11").value() - 4.11).abs() < 1e-12);
    assert!((of("4.11").plus() - 0.005).abs() < 1e-9);
}

#[test]
fn an_impossible_entry_is_told_at_its_field_and_every_other_result_stays() {
    for (key, text) in [
        ("gearing/gears/2/ratio", "0"),
        ("gearing/gears/2/ratio", "88"),
        ("gearing/dial_axle", "41/0"),
        ("gearing/candidates/1/teeth", "0/8"),
        ("gearing/overdrive", "seven"),
    ] {
        let mut entries: Vec<_> = SEVEN
            .iter()
            .copied()
            .filter(|(other, _)| *other != key)
            .collect();
        entries.push((key, text));
        let findings = evaluate(&book(&entries), None);
        let errors = &findings.gearing.found.errors;
        assert!(
            errors.iter().any(|(at, _)| *at == *key),
            "{key} {text}: {errors:?}"
        );
        assert!(
            findings.result("gearing/per_1000/4").unwrap().is_ok(),
            "{key} {text}"
        );
        assert!(
            findings.result("gearing/speed/1").unwrap().is_ok(),
            "{key} {text}"
        );
    }
}

#[test]
fn a_tyre_that_is_none_is_told_at_its_field() {
    let mut entries = SEVEN.to_vec();
    entries[0].1 = "7.50";
    let findings = evaluate(&book(&entries), None);
    let errors = &findings.vehicle.found.errors;
    assert!(
        matches!(errors.as_slice(), [(key, BookError::Trade(trade::TradeError::Tyre(_)))] if *key == "vehicle/tyre_rear")
    );
    assert_eq!(
        findings.result("gearing/per_1000/4"),
        Some(&Err(Lack::entry("vehicle/tyre_rear".into())))
    );
    assert!(findings.result("gearing/overall/4").unwrap().is_ok());
}

/// Reference checks top-lorry, hill-lorry and grip-rear-0.7, found by SciPy. The rating's share of 1 and a blown engine leave the
/// points as they are.
#[test]
fn the_lorry_pulls_as_reckoned_outside() {
    let findings = evaluate(&book(LORRY), None);
    let km_h = |id: &str| value(&findings, id) * 3.6;
    for (gear, top) in [
        (1, 14.392_707),
        (2, 26.319_374),
        (3, 46.166_77),
        (4, 84.485_189),
    ] {
        assert!(
            (km_h(&format!("gearing/top/{gear}")) - top).abs() < 0.001,
            "{gear}"
        );
    }
    assert!((km_h("gearing/top_speed") - 84.485_189).abs() < 0.001);
    assert!((value(&findings, "gearing/grip_slope") - 0.52).abs() < 5e-6);
    for (gear, hill) in [
        (1, 41.593_465),
        (2, 20.527_031),
        (3, 10.622_11),
        (4, 4.979_435_5),
    ] {
        let slope = 100.0 * value(&findings, &format!("gearing/hill/{gear}"));
        assert!((slope - hill).abs() < 0.001, "{gear}: {slope}");
    }
}

#[test]
fn what_limits_is_named() {
    let governing = |more: &[(&str, &str)], id: &str| {
        let findings = evaluate(&with(LORRY, more), None);
        findings
            .gearing
            .found
            .figure(id)
            .and_then(measure::Figure::governing)
    };
    assert_eq!(governing(&[], "gearing/top_speed"), Some("revs"));
    assert_eq!(
        governing(&[("vehicle/stroke", "120")], "gearing/top_speed"),
        Some("piston speed")
    );
    assert_eq!(governing(&[], "gearing/steepest"), Some("torque"));
    assert_eq!(
        governing(&[("gearing/ground", "field")], "gearing/steepest"),
        Some("grip")
    );
    assert_eq!(
        governing(&[("gearing/clutch", "120")], "gearing/restart"),
        Some("clutch")
    );
}

#[test]
fn an_overdrive_is_a_gear_of_its_own() {
    let findings = evaluate(&with(LORRY, &[("gearing/overdrive", "0.78 exact")]), None);
    let tops: Vec<_> = findings
        .gearing
        .gears
        .iter()
        .map(|gear| gear.result("top"))
        .collect();
    assert_eq!(
        (&*tops[3], &*tops[4], tops.len()),
        ("gearing/top/4", "gearing/top_overdrive/4", 5)
    );
    let (top, over) = (
        value(&findings, "gearing/revs/4"),
        value(&findings, "gearing/revs_overdrive/4"),
    );
    assert!((over / top - 0.78).abs() < 1e-12);
    assert_eq!(value(&findings, "gearing/cruise"), over);
}

#[test]
fn a_candidate_stands_beside_the_fitted_set() {
    let more = [
        ("gearing/dial_axle", "37/6"),
        ("gearing/road_speed", "60 km/h"),
        ("gearing/candidates/1/teeth", "41/8"),
        ("gearing/candidates/1/price", "240"),
        ("gearing/candidates/1/splines", "yes"),
        ("gearing/candidates/1/offset", "no"),
        ("gearing/candidates/1/chosen", "yes"),
    ];
    let findings = evaluate(&with(LORRY, &more), None);
    // By hand: 60 km/h is 1000 m a minute; 1000/2.412 x 41/8 = 2124.8 rpm, and x 37/6 = 2556.7.
    assert!((value(&findings, "gearing/candidate_revs/1") * 60.0 - 2124.79).abs() < 0.01);
    assert!((value(&findings, "gearing/candidate_change/1") * 60.0 + 431.87).abs() < 0.01);
    // Reference check dial-after: 49.8649 km/h shown at 60.
    assert!((value(&findings, "gearing/candidate_dial/1") * 3.6 - 49.8649).abs() < 1e-4);
    let candidate = &findings.gearing.candidates[0];
    assert_eq!(candidate.goes_in(), Some(false));
    assert!(candidate.meeting.unwrap().hunting());
    assert!(facts(&findings).contains(&"candidate_does_not_fit"));
    let purchases = &findings.gearing.found.purchases;
    assert_eq!((purchases.len(), &*purchases[0].what), (1, "41/8"));
}

#[test]
fn a_wish_for_engine_speed_gives_an_axle_and_real_teeth() {
    let more = [
        ("gearing/wanted_revs", "2500"),
        ("gearing/wanted_speed", "70 km/h"),
    ];
    let findings = evaluate(&with(LORRY, &more), None);
    // Reference check ratio-for-revs.
    assert!((value(&findings, "gearing/axle_for_speed") - 5.168_57).abs() < 1e-5);
    let pairs = &findings.gearing.pairs_for_speed;
    assert_eq!(pairs.len(), 5);
    for pair in pairs {
        let revs = value(&findings, &format!("gearing/speed_pair_revs/{}", pair.id)) * 60.0;
        assert!((revs / 2500.0 - 1.0).abs() < 0.02, "{pair:?}: {revs}");
    }
    assert!(findings.result("gearing/axle_for_hill").unwrap().is_err());
}

#[test]
fn a_wished_hill_is_climbed_with_the_axle_it_gives() {
    let wished = evaluate(&with(LORRY, &[("gearing/wanted_hill", "30 %")]), None);
    let axle = value(&wished, "gearing/axle_for_hill");
    let mut entries: Vec<_> = LORRY
        .iter()
        .copied()
        .filter(|(key, _)| *key != "gearing/axle")
        .collect();
    let typed = format!("{axle} exact");
    entries.push(("gearing/axle", &typed));
    let findings = evaluate(&book(&entries), None);
    assert!((value(&findings, "gearing/hill/1") - 0.30).abs() < 1e-6);
}

#[test]
fn worked_back_the_fitted_axle_gives_the_wanted_cruise() {
    let book = book(LORRY);
    let findings = evaluate(&book, None);
    let wanted = 2600.0 / 60.0;
    let back = work_back(
        &book,
        &findings,
        "gearing/cruise",
        &"gearing/axle".into(),
        wanted,
        &Manner::default(),
    )
    .unwrap();
    let found = back
        .findings
        .result("gearing/cruise")
        .and_then(|found: &Finding| found.as_ref().ok())
        .unwrap();
    assert!((found.value() / wanted - 1.0).abs() < 1e-3);
}

#[test]
fn the_dial_is_judged_and_the_adapter_puts_it_right() {
    let more = [
        ("gearing/dial_axle", "41/8"),
        ("gearing/road_speed", "60 km/h"),
    ];
    let findings = evaluate(&with(LORRY, &more), None);
    // The fitted 37/6 makes a dial that was right with 41/8 read 60 x 37/6 x 8/41 = 72.195 km/h: more than 60 x 1.1 + 4.
    let shown = value(&findings, "gearing/dial_shown") * 3.6;
    assert!((shown - 72.195).abs() < 0.001);
    assert!((value(&findings, "gearing/adapter") * shown - 60.0).abs() < 1e-9);
    assert!(facts(&findings).contains(&"dial_reads_high"));
}

#[test]
fn a_shaft_near_its_critical_speed_warns() {
    let more = [
        ("gearing/shaft_outside", "76.2 mm exact"),
        ("gearing/shaft_wall", "1.65 mm exact"),
        ("gearing/shaft_length", "1.5 m exact"),
    ];
    let findings = evaluate(&with(LORRY, &more), None);
    // Reference check shaft-75: 5657.1 rpm; the engine's 3600 rpm in direct drive is 0.636 of it.
    assert!((value(&findings, "gearing/shaft_critical") * 60.0 - 5657.1).abs() < 1.0);
    assert!((value(&findings, "gearing/shaft_share") - 0.6364).abs() < 0.0002);
    assert!(!facts(&findings).contains(&"shaft_near_critical"));
    let longer = evaluate(
        &with(
            LORRY,
            &[more[0], more[1], ("gearing/shaft_length", "1.7 m exact")],
        ),
        None,
    );
    let warned = longer
        .gearing
        .found
        .remarks
        .iter()
        .find(|remark| remark.fact == "shaft_near_critical");
    assert_eq!(warned.map(|remark| remark.rank), Some(Rank::Warning));
}

#[test]
fn tyres_are_told_when_they_carry_or_run_too_much() {
    let more = [
        ("vehicle/tyre_rear", "185 R 14 C 102/100 D"),
        ("vehicle/tyre_front", "185 R 14 C 120 N"),
    ];
    let findings = evaluate(&with(LORRY, &more), None);
    let facts = facts(&findings);
    assert!(
        facts.contains(&"tyre_overloaded") && facts.contains(&"faster_than_its_tyres"),
        "{facts:?}"
    );
}

#[test]
fn the_drawing_has_a_line_for_each_gear_and_one_for_each_slope() {
    let findings = evaluate(&book(LORRY), None);
    let sketch = &findings.gearing.sketch;
    assert_eq!(
        (sketch.gears.len(), sketch.effort.len(), sketch.loads.len()),
        (4, 4, 6)
    );
    assert_eq!(sketch.saw_tooth.len(), 8);
    let top = sketch.saw_tooth.last().unwrap().1 * 3.6;
    assert!((top - 84.485).abs() < 0.01);
    let bare = evaluate(&book(SEVEN), None);
    assert_eq!(
        (
            bare.gearing.sketch.gears.len(),
            bare.gearing.sketch.effort.len()
        ),
        (4, 0)
    );
    assert_eq!(
        bare.gearing
            .found
            .figure("gearing/per_1000/4")
            .unwrap()
            .kind(),
        Kind::Speed
    );
}

#[test]
fn the_example_lorry_is_complete_on_the_gearing_sheet() {
    let findings = evaluate(&crate::example::book(), None);
    let found = &findings.gearing.found;
    let lacking: Vec<_> = found
        .results()
        .filter(|(_, finding)| finding.is_err())
        .collect();
    assert!(lacking.is_empty(), "{lacking:?}");
    assert_eq!(found.state(), State::Ready, "{:?}", found.remarks);
}

#[test]
fn what_is_assumed_is_what_the_trade_holds_usual() {
    use super::pull::{usual_grip, usual_rolling};
    use trade::gearing::{EFFICIENCY_DIRECT, EFFICIENCY_INDIRECT, EFFICIENCY_WORM, Ground};
    let told = |text: &str| {
        let (value, off) = text.split_once(" ± ").unwrap();
        (value.parse::<f64>().unwrap(), off.parse::<f64>().unwrap())
    };
    for ground in [Ground::Dry, Ground::Wet, Ground::Track, Ground::Field] {
        assert_eq!(told(usual_grip(ground)), ground.grip());
        for radial in [true, false] {
            assert_eq!(told(usual_rolling(ground, radial)), ground.rolling(radial));
        }
    }
    let assumed = |key: &str| told(crate::field_of(&key.into()).unwrap().assumed.unwrap());
    assert_eq!(assumed("gearing/efficiency_direct"), EFFICIENCY_DIRECT);
    assert_eq!(assumed("gearing/efficiency_gears"), EFFICIENCY_INDIRECT);
    assert_eq!(assumed("gearing/efficiency_worm"), EFFICIENCY_WORM);
}

#[test]
fn a_default_that_follows_from_other_entries_is_told_to_the_page() {
    let findings = evaluate(&with(SEVEN, &[("gearing/ground", "track")]), None);
    let assumption = |key: &str| findings.gearing.found.assumption(&key.into());
    assert_eq!(assumption("gearing/rolling"), Some("0.040 ± 0.015"));
    assert_eq!(assumption("gearing/grip"), Some("0.4 ± 0.1"));
    assert_eq!(
        findings
            .vehicle
            .found
            .assumption(&"vehicle/rolling_factor".into()),
        Some("3.05 ± 0.05")
    );
}
