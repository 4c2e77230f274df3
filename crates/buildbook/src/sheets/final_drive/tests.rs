//! The final-drive sheet from typed entries.

mod nonsense;
mod sides_and_buying;

use ::trade::TradeError;
use ::trade::final_drive::Advice;
use measure::unit;

use crate::sheets::final_drive::FinalDriveFindings;
use crate::{Book, BookError, Lack, evaluate};

/// Entries of this sheet; one that begins with `gearing/` is of that one.
fn found(entries: &[(&str, &str)]) -> FinalDriveFindings {
    let keyed = entries.iter().map(|(key, text)| {
        let key = if key.starts_with("gearing/") {
            (*key).to_owned()
        } else {
            format!("final_drive/{key}")
        };
        (key.as_str().into(), (*text).into())
    });
    (*evaluate(&Book::of("b", keyed), None).final_drive).clone()
}

fn millimetres(found: &FinalDriveFindings, id: &str) -> f64 {
    let id = format!("final_drive/{id}");
    let figure = found
        .found
        .figure(&id)
        .unwrap_or_else(|| panic!("{id}: {:?}", found.found.result(&id)));
    figure.in_unit(&unit::MILLIMETRE)
}

fn facts(found: &FinalDriveFindings) -> Vec<&'static str> {
    found
        .found
        .remarks
        .iter()
        .map(|remark| remark.fact)
        .collect()
}

const MARKS: [(&str, &str); 5] = [
    ("plus_means", "further"),
    ("shim_sits", "head_to_cone"),
    ("old_shim", "0.60"),
    ("old_mark", "0.05 mm"),
    ("new_mark", "-3"),
];

#[test]
fn the_shim_follows_from_both_marks_and_the_pack_from_what_is_to_hand() {
    let mut entries = MARKS.to_vec();
    for (row, thickness) in ["0.05", "0.10", "0.25", "0.50"].iter().enumerate() {
        entries.push((
            [
                "shims/1/thickness",
                "shims/2/thickness",
                "shims/3/thickness",
                "shims/4/thickness",
            ][row],
            thickness,
        ));
    }
    let found = found(&entries);
    // old + old mark - new mark = 0.60 + 0.05 + 0.03.
    assert!((millimetres(&found, "shim") - 0.68).abs() < 1e-9);
    // Within 0.015 mm no sum of these comes to 0.68: multiples of 0.05 miss it by 0.02 or 0.03.
    assert_eq!(
        found.pack,
        Err(Lack::refused(TradeError::NoPack { nearest: 0.0007 }))
    );
}

#[test]
fn inch_shims_mix_with_millimetre_ones() {
    let mut entries = MARKS.to_vec();
    entries.extend([
        ("shims/1/thickness", "0.020 in"),
        ("shims/2/thickness", "0.003 in"),
        ("shims/3/thickness", "0.10"),
    ]);
    let found = found(&entries);
    // 0.508 + 0.076 + 0.10 = 0.684.
    assert!((millimetres(&found, "pinion_pack") - 0.6842).abs() < 1e-6);
}

#[test]
fn what_plus_means_is_asked_and_never_guessed() {
    let found = found(&MARKS[1..]);
    assert_eq!(
        found.found.result("final_drive/shim"),
        Some(&Err(Lack::needs(["final_drive/plus_means".into()])))
    );
}

#[test]
fn backlash_is_judged_on_its_least_and_the_move_aims_at_the_middle_of_the_band() {
    let found = found(&[
        ("crown", "41"),
        ("pinion", "10"),
        ("spiral_angle", "0"),
        ("backlash_least", "0.15"),
        ("backlash_most", "0.20"),
        ("readings/1/reading", "0.14"),
        ("readings/2/reading", "0.105"),
        ("readings/3/reading", "0.12"),
    ]);
    assert!((millimetres(&found, "backlash") - 0.105).abs() < 1e-9);
    // To 0.175 at 0.7072: 0.07 / 0.7072 = 0.0990 mm (pitch-cone geometry, straight teeth at 20°).
    assert!((millimetres(&found, "move") - 0.0990).abs() < 0.0001);
    assert!(facts(&found).contains(&"backlash_too_small"));
}

/// Two trials 0.20 mm of shim and 0.10 mm of crown wheel apart.
const TWO_TRIALS: [(&str, &str); 12] = [
    ("trials/1/shim", "0.50"),
    ("trials/1/moved", "0"),
    ("trials/1/backlash", "0.10 exact"),
    ("trials/1/drive", "middle"),
    ("trials/1/coast", "middle"),
    ("trials/1/height", "face"),
    ("trials/2/shim", "0.70"),
    ("trials/2/moved", "0.10"),
    ("trials/2/backlash", "0.18 exact"),
    ("trials/2/drive", "middle"),
    ("trials/2/coast", "middle"),
    ("trials/2/height", "flank"),
];

#[test]
fn two_trials_tell_the_axles_own_slope_and_the_next_shim() {
    let mut entries = TWO_TRIALS.to_vec();
    entries.extend([("backlash_least", "0.15"), ("readings/1/reading", "0.10")]);
    let without_place = found(&entries);
    // Where the shim sits is not known: the backlash is taken as it was read. 0.08 / 0.10.
    let factor = without_place.found.figure("final_drive/backlash_factor");
    assert!((factor.expect("a slope").value() - 0.8).abs() < 1e-9);
    assert!((millimetres(&without_place, "move") - 0.0625).abs() < 1e-9);
    assert!(facts(&without_place).contains(&"slope_of_trials"));
    entries.push(("shim_sits", "head_to_cone"));
    let found = found(&entries);
    // From face to flank with 0.20 mm: the middle lies half way. Each height is read to a quarter, so at the half way
    // between them to 0.25/sqrt 2 of the half height, which is 0.10 mm of shim: 0.0177 mm.
    assert!((millimetres(&found, "next_shim") - 0.60).abs() < 1e-9);
    let next = found.found.figure("final_drive/next_shim").expect("a shim");
    assert!((next.plus() - 0.0177e-3).abs() < 1e-7, "{}", next.plus());
    let proposal = found.proposal.expect("a proposal");
    assert_eq!(proposal.advice, Advice::PinionOut);
    assert!(proposal.by_trend);
    assert!((proposal.shim_change.expect("a change") + 0.0001).abs() < 1e-9);
}

#[test]
fn a_pinion_that_moved_between_trials_is_taken_out_of_the_slope() {
    let mut entries = TWO_TRIALS.to_vec();
    entries.extend([
        ("shim_sits", "head_to_cone"),
        ("crown", "41"),
        ("pinion", "10"),
        ("backlash_least", "0.15"),
        ("readings/1/reading", "0.18"),
    ]);
    let found = found(&entries);
    // The pinion went 0.20 mm in, which took 0.2106 × 0.20 = 0.0421 mm: without it the backlash would be 0.2221; 1.221 a unit.
    let factor = found.found.figure("final_drive/backlash_factor");
    assert!((factor.expect("a slope").value() - 1.221).abs() < 0.001);
    // Next: 0.10 mm out again gives 0.02106 mm back: 0.2011, of which 0.0511 too much; / 1.221 = 0.0418 mm nearer.
    assert!((millimetres(&found, "next_moved") - (0.10 - 0.0418)).abs() < 0.0002);
    assert!((millimetres(&found, "next_backlash") - 0.15).abs() < 1e-9);
}

#[test]
fn trials_too_near_together_leave_the_slope_to_the_teeth() {
    let found = found(&[
        ("crown", "41"),
        ("pinion", "10"),
        ("spiral_angle", "0"),
        ("trials/1/moved", "0"),
        ("trials/1/backlash", "0.10"),
        ("trials/2/moved", "0.02"),
        ("trials/2/backlash", "0.12"),
    ]);
    let factor = found.found.figure("final_drive/backlash_factor");
    // 20°, straight teeth, 41/10: 0.7072 (pitch-cone geometry).
    assert!((factor.expect("a factor").value() - 0.7072).abs() < 0.0001);
    assert!(facts(&found).contains(&"trials_tell_no_slope"));
}

#[test]
fn the_first_step_is_a_tenth_of_a_millimetre_the_right_way_for_where_the_shim_sits() {
    let step = |sits| {
        let found = found(&[
            ("shim_sits", sits),
            ("trials/1/shim", "0.50"),
            ("trials/1/drive", "middle"),
            ("trials/1/coast", "middle"),
            ("trials/1/height", "face"),
        ]);
        millimetres(&found, "next_shim")
    };
    assert!((step("head_to_cone") - 0.60).abs() < 1e-9);
    assert!((step("carrier_flange") - 0.40).abs() < 1e-9);
}

#[test]
fn a_step_of_the_crown_wheel_stays_within_the_makers_band() {
    let found = found(&[
        ("crown", "41"),
        ("pinion", "10"),
        ("spiral_angle", "0"),
        ("backlash_least", "0.15"),
        ("backlash_most", "0.20"),
        ("trials/1/shim", "0.50"),
        ("trials/1/moved", "0"),
        ("trials/1/backlash", "0.17"),
        ("trials/1/drive", "heel"),
        ("trials/1/coast", "heel"),
        ("trials/1/height", "middle"),
    ]);
    // Towards the pinion, but only until 0.15 mm are left: 0.02 / 0.7072.
    assert!((millimetres(&found, "next_moved") + 0.0283).abs() < 0.0001);
    assert!((millimetres(&found, "next_backlash") - 0.15).abs() < 1e-9);
    assert!((millimetres(&found, "next_shim") - 0.50).abs() < 1e-9);
}

#[test]
fn the_set_is_the_one_chosen_on_the_gearing_sheet_until_teeth_are_typed_here() {
    let chosen = [
        ("gearing/candidates/1/name", "Breaker's"),
        ("gearing/candidates/1/teeth", "41/9"),
        ("gearing/candidates/1/chosen", "yes"),
    ];
    let read = found(&chosen);
    let ratio =
        |found: &FinalDriveFindings| found.found.figure("final_drive/ratio").map(|r| r.value());
    assert_eq!(ratio(&read), Some(41.0 / 9.0));
    assert!(facts(&read).contains(&"set_from_gearing"));
    let mut entries = chosen.to_vec();
    entries.extend([("crown", "39"), ("pinion", "8")]);
    let typed = found(&entries);
    assert_eq!(ratio(&typed), Some(39.0 / 8.0));
    assert!(facts(&typed).contains(&"set_differs"));
    entries[1].1 = "39/8";
    assert!(!facts(&found(&entries)).contains(&"set_differs"));
}

#[test]
fn the_shim_follows_from_the_measured_housing() {
    let found = found(&[
        ("depth_by", "depth"),
        ("plus_means", "further"),
        ("shim_sits", "behind_cup"),
        ("depth", "122.50 ± 0.03"),
        ("bearing", "1.000 in exact"),
        ("nominal", "96.00"),
        ("new_mark", "2 thou"),
    ]);
    // 122.50 - 25.40 - (96.00 + 0.0508).
    assert!((millimetres(&found, "shim") - 1.0492).abs() < 1e-9);
}

#[test]
fn a_mark_of_a_fraction_of_a_hundredth_is_asked_about() {
    let mut entries = MARKS.to_vec();
    entries[4].1 = "0.03";
    assert!(facts(&found(&entries)).contains(&"mark_tiny"));
    assert!(!facts(&found(&MARKS)).contains(&"mark_tiny"));
}

#[test]
fn two_packs_tell_what_a_shim_more_does_to_the_preload() {
    let entries = [
        ("preload", "1.2 N m"),
        ("pull_radius", "40 exact"),
        ("preload_trials/1/pack", "1.00 exact"),
        ("preload_trials/1/pull", "10 N exact"),
        ("preload_trials/2/pack", "0.95 exact"),
        ("preload_trials/2/pull", "35 N exact"),
    ];
    let solid = found(&entries);
    // 0.4 N·m at 1.00 mm, 1.4 N·m at 0.95: 0.2 N·m less for 0.01 mm more; 1.2 N·m at 0.96 mm.
    let more = solid.found.figure("final_drive/preload_per_shim");
    assert!((more.expect("a slope").value() + 0.2).abs() < 1e-9);
    assert!((millimetres(&solid, "preload_pack") - 0.96).abs() < 1e-9);
    let mut crush = entries.to_vec();
    crush.push(("spacer", "crush"));
    assert!(
        found(&crush)
            .found
            .result("final_drive/preload_pack")
            .is_none()
    );
}

#[test]
fn a_preload_above_the_bearings_is_told_at_the_field() {
    let found = found(&[("preload", "3 N m"), ("preload_most", "2 N m")]);
    let at = |key: &str| found.found.errors.iter().find(|(at, _)| at == key);
    assert_eq!(
        at("final_drive/preload_most").map(|(_, why)| why),
        Some(&BookError::Trade(TradeError::UpsideDown))
    );
}

#[test]
fn side_shims_change_sides_and_the_preload_of_both_stays() {
    let found = found(&[
        ("crown", "41"),
        ("pinion", "10"),
        ("spiral_angle", "0"),
        ("backlash_least", "0.20"),
        ("readings/1/reading", "0.10"),
        ("side_shims/1/side", "crown_side"),
        ("side_shims/1/thickness", "0.10"),
        ("side_shims/1/count", "3"),
        ("side_shims/2/side", "crown_side"),
        ("side_shims/2/thickness", "0.05"),
        ("side_shims/3/side", "other_side"),
        ("side_shims/3/thickness", "0.14"),
    ]);
    // 0.10 / 0.7072 = 0.1414 away from the pinion: 0.10 + 0.05 come off the crown wheel's side; the 0.14 lies on the other one.
    let side = found.side.expect("shims at the sides").expect("a pack");
    let moved: Vec<(&str, usize)> = side
        .shims
        .iter()
        .map(|(row, n)| (row.as_str(), *n))
        .collect();
    assert_eq!(
        moved,
        [
            ("final_drive/side_shims/1", 1),
            ("final_drive/side_shims/2", 1)
        ]
    );
}

#[test]
fn adjusters_move_by_notches_that_say_what_they_do() {
    let found = found(&[
        ("crown", "41"),
        ("pinion", "10"),
        ("spiral_angle", "0"),
        ("backlash_least", "0.20"),
        ("readings/1/reading", "0.10 exact"),
        ("moved_by", "adjusters"),
        ("adjuster_pitch", "1.5"),
        ("notches", "20"),
    ]);
    let notches = found.found.figure("final_drive/notches").expect("notches");
    // 0.1414 mm at 0.075 mm a notch: 1.885; each does 0.075 × 0.7072 = 0.0530 mm.
    assert!((notches.value() - 1.885).abs() < 0.001);
    assert!((millimetres(&found, "backlash_per_notch") - 0.0530).abs() < 0.0001);
}

#[test]
fn the_usual_backlash_stands_in_for_a_maker_who_is_silent() {
    let found = found(&[("crown", "41"), ("pinion", "9"), ("crown_across", "213")]);
    // Module 5.195, diametral pitch 4.89: 0.006 to 0.008 in (AGMA).
    assert!((millimetres(&found, "usual_least") - 0.1524).abs() < 1e-9);
    assert!((millimetres(&found, "usual_most") - 0.2032).abs() < 1e-9);
}

#[test]
fn half_shafts_are_shimmed_to_the_middle_of_their_end_float() {
    let found = found(&[
        ("end_float", "0.02"),
        ("end_float_least", "0.10"),
        ("end_float_limit", "0.20"),
    ]);
    assert!((millimetres(&found, "end_float_change") - 0.13).abs() < 1e-9);
    assert!(facts(&found).contains(&"end_float_too_small"));
}

#[test]
fn a_balance_reads_the_preload_through_the_cord() {
    let found = found(&[
        ("preload", "1.5 N m"),
        ("flange", "77 mm exact"),
        ("cord", "3 mm exact"),
        ("pull", "50 N exact"),
    ]);
    // 1.5 N·m at 40 mm is 37.5 N; 50 N at 40 mm is 2.0 N·m, more than wanted.
    let pull = found.found.figure("final_drive/pull").expect("a pull");
    assert!((pull.value() - 37.5).abs() < 1e-9);
    assert!(facts(&found).contains(&"preload_too_high"));
}

#[test]
fn a_negative_backlash_is_refused_at_its_field_and_the_rest_stays() {
    let found = found(&[
        ("readings/1/reading", "-0.1"),
        ("crown", "41"),
        ("pinion", "9"),
    ]);
    assert_eq!(
        found.found.result("final_drive/backlash"),
        Some(&Err(Lack::entry("final_drive/readings/1/reading".into())))
    );
    assert!(found.found.figure("final_drive/ratio").is_some());
    assert_eq!(found.found.errors.len(), 1);
}
