//! The side bearings' preload, and what is bought for the axle.

use std::rc::Rc;

use ::trade::TradeError;
use measure::unit;

use super::{MARKS, facts, found, millimetres};
use crate::{Book, BookError, Lack, evaluate};

/// What the spread and the drag of the side bearings rest on.
const SIDES: [(&str, &str); 9] = [
    ("crown", "41"),
    ("pinion", "10"),
    ("pull_radius", "50 exact"),
    ("pull", "20 N exact"),
    ("preload", "1 N m"),
    ("spread_wanted", "0.25"),
    ("spread_now", "-0.05 exact"),
    ("side_drag_wanted", "2.05 N m"),
    ("side_drag_most", "4.1 N m"),
];

#[test]
fn the_side_bearings_get_shims_in_pairs_so_that_the_backlash_stays() {
    let found = found(&SIDES);
    // 0.05 of end float is taken up, then 0.25 put on: 0.30 in all, half on each side (workshop manuals).
    assert!((millimetres(&found, "spread_to_add") - 0.30).abs() < 1e-9);
    assert!((millimetres(&found, "spread_each") - 0.15).abs() < 1e-9);
    assert!(facts(&found).contains(&"side_preload_too_low"));
}

#[test]
fn a_move_of_the_crown_wheel_goes_with_the_pairs_and_keeps_their_sum() {
    let move_wanted = [
        ("spiral_angle", "0"),
        ("backlash_least", "0.175"),
        ("readings/1/reading", "0.105 exact"),
    ];
    let found = found(&[&SIDES[..], &move_wanted].concat());
    let (crown, other) = (
        millimetres(&found, "crown_shims"),
        millimetres(&found, "other_shims"),
    );
    assert!((crown + other - 0.30).abs() < 1e-9);
    assert!(((other - crown) / 2.0 - millimetres(&found, "move")).abs() < 1e-9);
    assert!(
        other > crown,
        "away from the pinion the crown wheel's side gives"
    );
}

#[test]
fn adjusters_go_in_by_notches_on_both_sides() {
    let adjusters = [
        ("moved_by", "adjusters"),
        ("adjuster_pitch", "1.5"),
        ("notches", "20"),
    ];
    let found = found(&[&SIDES[..], &adjusters].concat());
    // 0.15 mm at 1.5 / 20 = 0.075 mm a notch.
    let notches = found.found.figure("final_drive/spread_notches");
    assert!((notches.expect("notches").value() - 2.0).abs() < 1e-9);
    assert_eq!(found.found.result("final_drive/crown_shims"), None);
}

#[test]
fn the_drag_of_the_side_bearings_shows_in_the_rise_at_the_pinion() {
    let looked = found(&[&SIDES[..], &[("side_pull", "35 N exact")]].concat());
    let newton_metres = |id: &str| {
        let figure = looked.found.figure(id).expect("a torque");
        figure.in_unit(&unit::NEWTON_METRE)
    };
    // 15 N more at 50 mm are 0.75 N·m, times 4.1; and to reach 2.05 N·m it takes 0.5 N·m, 10 N, more than the pinion's 20 N.
    assert!((newton_metres("final_drive/side_rise") - 0.75).abs() < 1e-9);
    assert!((newton_metres("final_drive/side_drag_behind") - 3.075).abs() < 1e-9);
    let pull = looked
        .found
        .figure("final_drive/side_pull")
        .expect("a pull");
    assert!((pull.in_unit(&unit::NEWTON) - 30.0).abs() < 1e-9);
    assert!(!facts(&looked).contains(&"side_preload_too_high"));
    let mut tight = SIDES.to_vec();
    tight.push(("side_pull", "45 N exact"));
    let tight = found(&tight);
    assert!(facts(&tight).contains(&"side_preload_too_high"));
}

#[test]
fn a_pull_with_the_carrier_in_that_is_less_than_the_pinions_own_is_doubted() {
    let looked = found(&[&SIDES[..], &[("side_pull", "12 N exact")]].concat());
    assert!(facts(&looked).contains(&"side_pull_below"));
    let judged = facts(&looked)
        .iter()
        .filter(|fact| **fact == "side_preload_too_low")
        .count();
    // The one is of the spread; nothing is said of a drag that cannot be.
    assert_eq!(judged, 1);
}

#[test]
fn a_drag_wanted_upside_down_is_told_at_its_field_and_the_rest_stays() {
    let mut entries = SIDES.to_vec();
    entries[8].1 = "1 N m";
    let found = found(&entries);
    assert!(found.found.errors.iter().any(|(key, why)| {
        key.as_str() == "final_drive/side_drag_most"
            && *why == BookError::Trade(TradeError::UpsideDown)
    }));
    assert!((millimetres(&found, "spread_to_add") - 0.30).abs() < 1e-9);
}

/// What is bought: what it is, the pack, how many and for how much each.
fn bought(entries: &[(&str, &str)]) -> Vec<String> {
    let found = found(entries);
    let lines = found.found.purchases.iter().map(|line| {
        let pack = line.pack.as_deref().unwrap_or("-");
        let (quantity, price) = (line.quantity.normalize(), line.unit_price.amount());
        format!("{}: {quantity} of {pack} at {price}", line.what)
    });
    lines.collect()
}

#[test]
fn oil_is_bought_by_the_litre_or_in_whole_cans_and_only_with_a_price() {
    let oil = [("oil", "5 1/2 imp pt"), ("oil_name", "EP 90")];
    assert!(bought(&oil).is_empty());
    // An imperial pint is 568.26125 mL: 5 1/2 of them are 3.125 436 875 L.
    let price = ("oil_price", "7.40");
    assert_eq!(
        bought(&[&oil[..], &[price]].concat()),
        ["EP 90: 3.125 of 1 L at 7.40"]
    );
    let cans = |can: &'static str| bought(&[&oil[..], &[price, ("oil_can", can)]].concat());
    assert_eq!(cans("1 L"), ["EP 90: 4 of 1\u{a0}L at 7.40"]);
    assert_eq!(cans("5.5 imp pt").len(), 1);
    assert!(cans("5.5 imp pt")[0].starts_with("EP 90: 1 of"));
    assert!(cans("nonsense").is_empty());
}

#[test]
fn shims_are_bought_where_those_to_hand_do_not_come_near_and_have_a_price() {
    let mut entries = MARKS.to_vec();
    entries.extend([
        ("shims/1/thickness", "0.10"),
        ("shims/1/count", "2"),
        ("shims/2/thickness", "0.50"),
        ("shims/2/count", "0"),
        ("shims/3/thickness", "0.08"),
        ("shims/3/count", "1"),
    ]);
    assert!(matches!(
        found(&entries).pack.as_ref().err().and_then(Lack::refusal),
        Some(TradeError::NoPack { .. })
    ));
    // 0.68 is 0.50 + 0.10 + 0.08: the first has to be bought.
    entries.extend([("shim_name", "Shim"), ("shim_price", "1.20")]);
    assert!((millimetres(&found(&entries), "pinion_pack") - 0.68).abs() < 1e-9);
    assert_eq!(bought(&entries), ["Shim 0.5\u{a0}mm: 1 of - at 1.20"]);
}

#[test]
fn parts_that_go_in_new_are_bought_with_a_price() {
    let parts = [
        ("parts/1/name", "Crush sleeve"),
        ("parts/1/price", "9.50"),
        ("parts/2/name", "Side bearing"),
        ("parts/2/count", "2"),
        ("parts/3/name", "Pinion seal"),
        ("parts/3/count", "2"),
        ("parts/3/price", "4"),
    ];
    assert_eq!(
        bought(&parts),
        ["Crush sleeve: 1 of - at 9.50", "Pinion seal: 2 of - at 4"]
    );
}

#[test]
fn a_link_of_the_costs_carries_what_is_bought_for_axle_and_joints_and_little_else() {
    let entries = [
        ("final_drive/plus_means", "further"),
        ("final_drive/shim_sits", "head_to_cone"),
        ("final_drive/old_shim", "0.60"),
        ("final_drive/old_mark", "0"),
        ("final_drive/new_mark", "0"),
        ("final_drive/shims/1/thickness", "0.60"),
        ("final_drive/shims/1/count", "0"),
        ("final_drive/shim_price", "1.20"),
        ("final_drive/oil", "3 L"),
        ("final_drive/oil_price", "7.40"),
        ("final_drive/parts/1/name", "Crush sleeve"),
        ("final_drive/parts/1/price", "9.50"),
        ("final_drive/backlash_least", "0.15"),
        ("torque/joints/1/name", "Flywheel bolts"),
        ("torque/joints/1/pattern", "circle"),
        ("torque/joints/1/bolts", "8"),
        ("torque/joints/1/new_price", "1.85"),
        ("torque/joints/2/name", "Hub nuts"),
    ];
    let book = Book::of("b", entries.map(|(key, text)| (key.into(), text.into())));
    let part = crate::link::part(&book, "costs");
    let spent = |book: &Book| {
        let costs = Rc::clone(&evaluate(book, None).costs);
        let lines = costs.lines.iter();
        lines
            .map(|line| (line.what.to_string(), line.amounts.clone().map(|a| a.total)))
            .collect::<Vec<_>>()
    };
    assert_eq!(spent(&part), spent(&book));
    assert_eq!(spent(&book).len(), 4);
    assert_eq!(part.entry("final_drive/backlash_least"), None);
    assert_eq!(part.entry("torque/joints/2/name"), None);
}
