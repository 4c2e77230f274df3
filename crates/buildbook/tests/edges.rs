//! Vehicles at the edge of what the sheets reckon with: low range, hub reduction, helpers, one axle alone.

use buildbook::{Book, Entry, Findings, Key, evaluate};

fn found(texts: &[&[(&str, &str)]]) -> Findings {
    let entries = texts.iter().flat_map(|texts| texts.iter());
    let book = Book::of(
        "b",
        entries.map(|(key, text)| (Key::from(*key), Entry::new(*text))),
    );
    evaluate(&book, None)
}

fn value(findings: &Findings, id: &str) -> f64 {
    match findings.result(id) {
        Some(Ok(figure)) => figure.value(),
        other => panic!("{id}: {other:?}"),
    }
}

/// A light vehicle with a transfer box in low range: in first gear it pulls more than it weighs.
const LOW_RANGE: &[(&str, &str)] = &[
    ("vehicle/drive", "all"),
    ("vehicle/wheelbase", "2235 mm exact"),
    ("vehicle/width", "1.67 m"),
    ("vehicle/height", "1.95 m"),
    ("vehicle/centre_height", "0.75 m exact"),
    ("vehicle/front_laden", "600 kg exact"),
    ("vehicle/rear_laden", "800 kg exact"),
    ("vehicle/roll_out_rear", "2.18 m exact"),
    ("vehicle/peak_torque", "170 N·m exact"),
    ("vehicle/peak_torque_at", "2000 rpm"),
    ("vehicle/peak_power", "52 kW"),
    ("vehicle/peak_power_at", "4000 rpm"),
    ("gearing/gears/1/ratio", "3.68"),
    ("gearing/gears/2/ratio", "1.5"),
    ("gearing/transfer_low", "2.35"),
    ("gearing/transfer_in", "low"),
    ("gearing/axle", "47/10"),
    ("gearing/grip", "0.7 exact"),
    ("gearing/rolling", "0.018 exact"),
    ("gearing/start", "0.3 m/s² exact"),
    ("gearing/candidates/1/teeth", "43/10"),
];

#[test]
fn in_low_range_the_tyres_alone_limit_hill_and_restart() {
    let findings = found(&[LOW_RANGE]);
    // Four driven wheels hold mu - f = 0.682; a start at 0.3 m/s² leaves 64.56 % (forces along the slope, by hand).
    for (id, slope) in [
        ("gearing/steepest", 0.682),
        ("gearing/candidate_hill/1", 0.682),
        ("gearing/restart", 0.645_587),
    ] {
        assert!((value(&findings, id) - slope).abs() < 1e-5, "{id}");
        let figure = findings.result(id).unwrap().as_ref().unwrap();
        assert_eq!(figure.governing(), Some("grip"), "{id}");
    }
}

#[test]
fn an_axle_with_reduction_in_the_hubs_gets_real_pairs_of_its_own() {
    let hubs: &[(&str, &str)] = &[
        ("gearing/hubs", "3.46 exact"),
        ("gearing/transfer_in", "high"),
        ("gearing/wanted_revs", "1700 rpm"),
        ("gearing/wanted_speed", "60 km/h"),
    ];
    let findings = found(&[LOW_RANGE, hubs]);
    let wanted = value(&findings, "gearing/axle_for_speed");
    let nearest = value(&findings, "gearing/speed_pair_ratio/1");
    assert!(
        wanted < 1.2 && (nearest / wanted - 1.0).abs() < 0.02,
        "{nearest} for {wanted}"
    );
}

#[test]
fn the_time_from_rest_is_as_uncertain_as_the_engine() {
    let high: &[(&str, &str)] = &[
        ("gearing/transfer_in", "high"),
        ("vehicle/peak_power_at", "3600 rpm"),
    ];
    let error = |texts: &[(&str, &str)]| {
        let findings = found(&[LOW_RANGE, high, texts]);
        findings
            .result("gearing/time")
            .unwrap()
            .as_ref()
            .unwrap()
            .plus()
    };
    let vague: &[(&str, &str)] = &[("vehicle/peak_torque", "170 ± 30 N·m")];
    assert!(error(vague) > 1.5 * error(&[]));
}

const SPRING: &[(&str, &str)] = &[
    ("springs/springs/1/place", "rear_left"),
    ("springs/springs/1/leaves/1/width", "60 exact"),
    ("springs/springs/1/leaves/1/thickness", "8 exact"),
    ("springs/springs/1/leaves/1/length", "1200 exact"),
    ("springs/springs/1/leaves/2/thickness", "8 exact"),
    ("springs/springs/1/leaves/2/length", "800 exact"),
    ("springs/springs/1/leaves/3/thickness", "8 exact"),
    ("springs/springs/1/leaves/3/length", "500 exact"),
    ("springs/springs/1/load", "1500 N exact"),
    ("springs/springs/1/free_arch", "120 exact"),
    ("springs/springs/1/pad", "40 exact"),
    ("springs/springs/1/points/1/travel", "0 exact"),
    ("springs/springs/1/points/1/load", "0 N exact"),
    ("springs/springs/1/points/2/travel", "50 exact"),
    ("springs/springs/1/points/2/load", "1300 N exact"),
];

#[test]
fn a_worked_back_leaf_gives_the_wanted_height_whatever_the_heights_rest_on() {
    for by in ["handbook", "beam", "press"] {
        let rate: &[(&str, &str)] = &[("springs/springs/1/rate_by", by)];
        let wanted = value(&found(&[SPRING, rate]), "springs/height/1") + 0.02;
        let text = format!("{} mm", wanted * 1e3);
        let asked: &[(&str, &str)] = &[("springs/springs/1/wanted", &text)];
        let leaf = value(&found(&[SPRING, rate, asked]), "springs/leaf_for/1");
        let leaf = format!("{:.6} mm", leaf * 1e3);
        let fitted: &[(&str, &str)] = &[
            ("springs/springs/1/plan_add", &leaf),
            ("springs/springs/1/plan_add_length", "600 mm exact"),
        ];
        let height = value(&found(&[SPRING, rate, fitted]), "springs/height_after/1");
        assert!(
            (height - wanted).abs() < 1e-6,
            "{by}: {height} for {wanted}"
        );
    }
}

#[test]
fn with_one_axle_entered_a_block_turns_the_pinion_by_the_frame_s_own_rake() {
    let block: &[(&str, &str)] = &[
        ("springs/springs/1/plan_block", "30 exact"),
        ("springs/pinion", "3° exact"),
        ("vehicle/wheelbase", "3000 mm exact"),
    ];
    let findings = found(&[SPRING, block]);
    // The rear goes up by 30 mm on a wheelbase of 3 m: the nose goes down by atan(0.01).
    let change = value(&findings, "springs/pinion_change").to_degrees();
    assert!((change + 0.572_939).abs() < 1e-5, "{change}");
    assert!((value(&findings, "springs/pinion_after").to_degrees() - 3.0 - change).abs() < 1e-9);
}

#[test]
fn both_methods_are_held_against_each_other_with_the_helper_bearing_in_both() {
    let helper: &[(&str, &str)] = &[
        ("springs/springs/1/leaves/4/kind", "helper"),
        ("springs/springs/1/leaves/4/thickness", "10 exact"),
        ("springs/springs/1/leaves/4/length", "500 exact"),
        ("springs/springs/1/leaves/4/gap", "2 exact"),
    ];
    let findings = found(&[SPRING, helper]);
    let [beam, handbook] =
        ["springs/rate_beam/1", "springs/rate_helper/1"].map(|id| value(&findings, id));
    let differ = value(&findings, "springs/methods_differ/1");
    assert!((differ - (beam / handbook - 1.0)).abs() < 1e-12, "{differ}");
}

#[test]
fn a_press_test_whose_load_falls_is_refused_at_its_point_and_the_handbook_carries_on() {
    let falls: &[(&str, &str)] = &[
        ("springs/springs/1/points/1/load", "2300 N exact"),
        ("springs/springs/1/points/2/load", "100 N exact"),
        ("springs/springs/1/plan_remove", "7"),
    ];
    let findings = found(&[SPRING, falls]);
    let springs = findings.found("springs").unwrap();
    let at: Vec<&str> = springs.errors.iter().map(|(key, _)| key.as_str()).collect();
    assert_eq!(
        at,
        [
            "springs/springs/1/points/2/load",
            "springs/springs/1/plan_remove"
        ]
    );
    let [rate, handbook] =
        ["springs/rate/1", "springs/rate_handbook/1"].map(|id| value(&findings, id));
    assert!(rate > 0.0 && (rate - handbook).abs() < 1e-9);
}

#[test]
fn a_red_line_below_idle_is_told_as_such() {
    let low: &[(&str, &str)] = &[
        ("vehicle/idle", "1500 rpm"),
        ("vehicle/red_line", "1200 rpm"),
    ];
    let findings = found(&[LOW_RANGE, low]);
    let Some(Err(lack)) = findings.result("gearing/top_speed") else {
        panic!("there is no top speed");
    };
    let refusal = lack.refusal();
    assert!(
        matches!(
            refusal,
            Some(trade::TradeError::OutOfRange {
                entry: "red line",
                ..
            })
        ),
        "{refusal:?}"
    );
}
