//! The final-drive sheet from typed entries.

use ::trade::TradeError;
use ::trade::final_drive::Advice;
use measure::unit;

use crate::sheets::final_drive::{FinalDriveFindings, FinalDriveSheet, findings};
use crate::{Book, Lack, Sheet};

fn found(entries: &[(&str, &str)]) -> FinalDriveFindings {
    let keyed = entries
        .iter()
        .map(|(key, text)| (format!("final_drive/{key}").as_str().into(), (*text).into()));
    findings(FinalDriveSheet::read(&Book::of("b", keyed)))
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
    ("old_mark", "0.05"),
    ("new_mark", "-0.03"),
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
        Err(Lack::Refused(TradeError::NoPack { nearest: 0.0007 }))
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
    assert!((millimetres(&found, "pack") - 0.6842).abs() < 1e-6);
}

#[test]
fn what_plus_means_is_asked_and_never_guessed() {
    let found = found(&MARKS[1..]);
    assert_eq!(
        found.found.result("final_drive/shim"),
        Some(&Err(Lack::Needs(vec!["final_drive/plus_means".into()])))
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

#[test]
fn two_trials_tell_the_axles_own_slope_and_the_next_shim() {
    let found = found(&[
        ("backlash_least", "0.15"),
        ("readings/1/reading", "0.10"),
        ("trials/1/shim", "0.50"),
        ("trials/1/moved", "0"),
        ("trials/1/backlash", "0.10"),
        ("trials/1/drive", "middle"),
        ("trials/1/coast", "middle"),
        ("trials/1/height", "face"),
        ("trials/2/shim", "0.70"),
        ("trials/2/moved", "0.10"),
        ("trials/2/backlash", "0.18"),
        ("trials/2/drive", "middle"),
        ("trials/2/coast", "middle"),
        ("trials/2/height", "flank"),
    ]);
    let factor = found
        .found
        .figure("final_drive/backlash_factor")
        .expect("a slope");
    assert!((factor.value() - 0.8).abs() < 1e-9);
    assert!((millimetres(&found, "move") - 0.0625).abs() < 1e-9);
    assert!((millimetres(&found, "next_shim") - 0.60).abs() < 1e-9);
    assert_eq!(
        found.proposal.map(|proposal| proposal.advice),
        Some(Advice::PinionOut)
    );
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
        Some(&Err(Lack::Entry("final_drive/readings/1/reading".into())))
    );
    assert!(found.found.figure("final_drive/ratio").is_some());
    assert_eq!(found.found.errors.len(), 1);
}
