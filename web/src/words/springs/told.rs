//! What the results of the springs sheet tell, and its remarks.

use crate::words::{Phrase, Told, pair, same, told, told_of};

/// A spring as a row.
const SPRING: &[&str] = &["springs/springs"];
/// A leaf of a spring as a row.
const LEAF: &[&str] = &["springs/springs", "springs/springs/*/leaves"];

pub(super) const RESULTS: &[Told] = &[
    told_of(
        "springs/height/*",
        SPRING,
        same("{0}: height over the axle"),
    ),
    told_of("springs/rate/*", SPRING, same("{0}: rate")),
    told_of(
        "springs/rate_handbook/*",
        SPRING,
        same("{0}: rate by the handbook"),
    ),
    told_of(
        "springs/rate_free/*",
        SPRING,
        same("{0}: rate off its seat"),
    ),
    told_of(
        "springs/rate_beam/*",
        SPRING,
        same("{0}: rate leaf by leaf"),
    ),
    told_of(
        "springs/rate_tight/*",
        SPRING,
        same("{0}: rate of leaves sharing one curve"),
    ),
    told_of(
        "springs/rate_press/*",
        SPRING,
        same("{0}: rate on the press"),
    ),
    told_of(
        "springs/rate_helper/*",
        SPRING,
        same("{0}: rate with the helper"),
    ),
    told_of(
        "springs/helper_load/*",
        SPRING,
        same("{0}: load when the helper touches"),
    ),
    told_of(
        "springs/methods_differ/*",
        SPRING,
        same("{0}: leaf by leaf against the handbook"),
    ),
    told_of(
        "springs/stiffening/*",
        SPRING,
        same("{0}: stiffening factor"),
    ),
    told_of("springs/dead/*", SPRING, same("{0}: dead length deducted")),
    told_of(
        "springs/press_friction/*",
        SPRING,
        same("{0}: friction on the press"),
    ),
    told_of(
        "springs/press_friction_share/*",
        SPRING,
        same("{0}: friction on the press, of the load"),
    ),
    told_of("springs/load/*", SPRING, same("{0}: load on it")),
    told_of("springs/free_arch/*", SPRING, same("{0}: free arch")),
    told_of("springs/travel/*", SPRING, same("{0}: travel from free")),
    told_of("springs/arch/*", SPRING, same("{0}: arch under load")),
    told_of("springs/pile/*", SPRING, same("{0}: thickness of the pile")),
    told_of(
        "springs/frequency/*",
        SPRING,
        same("{0}: natural frequency"),
    ),
    told_of(
        "springs/friction_height/*",
        SPRING,
        same("{0}: friction can hold it up or down by"),
    ),
    told_of(
        "springs/bump_load/*",
        SPRING,
        same("{0}: load at full bump"),
    ),
    told_of(
        "springs/bump_arch/*",
        SPRING,
        same("{0}: arch at full bump"),
    ),
    told_of("springs/eyes_free/*", SPRING, same("{0}: eye to eye, free")),
    told_of(
        "springs/eyes_loaded/*",
        SPRING,
        same("{0}: eye to eye, under load"),
    ),
    told_of(
        "springs/eyes_bump/*",
        SPRING,
        same("{0}: eye to eye, at bump"),
    ),
    told_of(
        "springs/shackle_free/*",
        SPRING,
        same("{0}: shackle leans, free"),
    ),
    told_of(
        "springs/shackle_loaded/*",
        SPRING,
        same("{0}: shackle leans, under load"),
    ),
    told_of(
        "springs/shackle_bump/*",
        SPRING,
        same("{0}: shackle leans, at bump"),
    ),
    told_of(
        "springs/allowed/*",
        SPRING,
        same("{0}: stress allowed under load"),
    ),
    told_of(
        "springs/allowed_bump/*",
        SPRING,
        same("{0}: stress allowed at bump"),
    ),
    told_of(
        "springs/load_allowed/*",
        SPRING,
        same("{0}: load that its leaves allow"),
    ),
    told_of(
        "springs/bolt_pull/*",
        SPRING,
        pair(
            "{0}: pull in the centre bolt, free",
            "{0}: pull in the center bolt, free",
        ),
    ),
    told_of(
        "springs/even_nip/*",
        SPRING,
        same("{0}: nip that would make full and graduated leaves share evenly"),
    ),
    told_of("springs/nip/*/*", LEAF, same("{0}, {1}: nip stress")),
    told_of(
        "springs/stress/*/*",
        LEAF,
        same("{0}, {1}: stress under load"),
    ),
    told_of(
        "springs/stress_bump/*/*",
        LEAF,
        same("{0}, {1}: stress at bump"),
    ),
    told_of(
        "springs/used/*/*",
        LEAF,
        same("{0}, {1}: share of the allowed stress"),
    ),
    told_of(
        "springs/used_bump/*/*",
        LEAF,
        same("{0}, {1}: share of the allowed stress at bump"),
    ),
    told_of(
        "springs/nip_beam/*/*",
        LEAF,
        same("{0}, {1}: nip stress, leaf by leaf"),
    ),
    told_of(
        "springs/stress_beam/*/*",
        LEAF,
        same("{0}, {1}: stress under load, leaf by leaf"),
    ),
    told_of(
        "springs/stress_beam_bump/*/*",
        LEAF,
        same("{0}, {1}: stress at bump, leaf by leaf"),
    ),
    told_of("springs/rate_new/*", SPRING, same("{0}: rate when new")),
    told_of(
        "springs/rate_left/*",
        SPRING,
        same("{0}: rate that rust has left"),
    ),
    told_of(
        "springs/height_lost/*",
        SPRING,
        same("{0}: height that rust has cost"),
    ),
    told_of(
        "springs/worst/*",
        SPRING,
        same("{0}: greatest stress under load"),
    ),
    told_of(
        "springs/rate_after/*",
        SPRING,
        same("{0}: rate after the work"),
    ),
    told_of("springs/rate_change/*", SPRING, same("{0}: change of rate")),
    told_of(
        "springs/height_after/*",
        SPRING,
        same("{0}: height after the work"),
    ),
    told_of(
        "springs/height_change/*",
        SPRING,
        same("{0}: change of height"),
    ),
    told_of(
        "springs/arch_after/*",
        SPRING,
        same("{0}: arch after the work"),
    ),
    told_of("springs/arch_change/*", SPRING, same("{0}: change of arch")),
    told_of(
        "springs/worst_after/*",
        SPRING,
        same("{0}: greatest stress after the work"),
    ),
    told_of(
        "springs/worst_change/*",
        SPRING,
        same("{0}: change of greatest stress"),
    ),
    told_of(
        "springs/frequency_after/*",
        SPRING,
        same("{0}: frequency after the work"),
    ),
    told_of(
        "springs/frequency_change/*",
        SPRING,
        same("{0}: change of frequency"),
    ),
    told_of(
        "springs/load_allowed_after/*",
        SPRING,
        same("{0}: load allowed after the work"),
    ),
    told_of(
        "springs/load_allowed_change/*",
        SPRING,
        same("{0}: change of the load allowed"),
    ),
    told_of(
        "springs/seat_turn/*",
        SPRING,
        same("{0}: turn of the seat, nose up"),
    ),
    told_of(
        "springs/block_for/*",
        SPRING,
        same("{0}: block for the wanted height; below nought no block does it"),
    ),
    told_of(
        "springs/arch_for/*",
        SPRING,
        same("{0}: free arch for the wanted height"),
    ),
    told_of(
        "springs/leaf_for/*",
        SPRING,
        same("{0}: one more leaf for the wanted height, half as long, thickness"),
    ),
    told("springs/rake", same("Rake, nose up")),
    told("springs/rake_after", same("Rake after the work")),
    told("springs/rake_change", same("Change of rake")),
    told(
        "springs/lean_front",
        same("Lean at the front, left side high"),
    ),
    told(
        "springs/lean_rear",
        same("Lean at the rear, left side high"),
    ),
    told(
        "springs/lean_front_after",
        same("Lean at the front after the work"),
    ),
    told(
        "springs/lean_rear_after",
        same("Lean at the rear after the work"),
    ),
    told(
        "springs/castor_change",
        pair("Change of castor", "Change of caster"),
    ),
    told(
        "springs/castor_after",
        pair("Castor after the work", "Caster after the work"),
    ),
    told(
        "springs/pinion_change",
        same("Change of the pinion's angle"),
    ),
    told(
        "springs/pinion_after",
        same("Pinion after the work, nose up"),
    ),
    told("springs/axle_load_front", same("On the front axle")),
    told("springs/axle_load_rear", same("On the rear axle")),
    told(
        "springs/axle_room_front",
        same("Left to the front axle's limit"),
    ),
    told(
        "springs/axle_room_rear",
        same("Left to the rear axle's limit"),
    ),
    told(
        "springs/axle_allowed_front",
        same("Front axle load that the leaves allow"),
    ),
    told(
        "springs/axle_allowed_rear",
        same("Rear axle load that the leaves allow"),
    ),
];

pub(super) const REMARKS: &[(&str, Phrase)] = &[
    (
        "stored_energy",
        pair(
            "A bolted pack is a loaded spring. Clamp the leaves in a press or with two strong clamps before the centre bolt comes out, and ease them off together.",
            "A bolted pack is a loaded spring. Clamp the leaves in a press or with two strong clamps before the center bolt comes out, and ease them off together.",
        ),
    ),
    (
        "never_weld_or_heat",
        same(
            "Leaves are never welded, brazed or heated with a torch: they break without warning. Re-arching is work for a \
             spring maker who hardens and tempers again.",
        ),
    ),
    (
        "full_drop",
        pair(
            "A changed spring changes the reach: let the axle hang at full drop and look at the brake hose, the brake cable \
             and the spline of the propeller shaft.",
            "A changed spring changes the reach: let the axle hang at full drop and look at the brake hose, the brake cable \
             and the slip spline of the driveshaft.",
        ),
    ),
    (
        "new_u_bolts",
        pair(
            "U-bolts are fitted new, with new nuts, to the maker's torque, and tightened again after 50 to 80 km. Dampers, \
             spring pins and shackles are looked at on the way.",
            "U-bolts are fitted new, with new nuts, to the maker's torque, and tightened again after 30 to 50 miles. Shock \
             absorbers, spring pins and shackles are looked at on the way.",
        ),
    ),
    (
        "replace_in_pairs",
        same(
            "Springs of an axle are renewed in pairs; a maker may have set the driver's side higher. The maker's figures and \
             the local rules on ride height come first.",
        ),
    ),
    (
        "no_main_leaf",
        same("{row}: no leaf is the main leaf: one needs the eyes."),
    ),
    (
        "leaf_within_seat",
        same(
            "{row}: this leaf ends within the clamped length: nothing of it would bend. Look at its length and at the clamped length.",
        ),
    ),
    (
        "leaf_has_no_body",
        same("{row}: a leaf has no width or no thickness."),
    ),
    (
        "helper_without_gap",
        same(
            "{row}: nobody can say when this helper bears: it needs its gap, or its loose arch and those of the other leaves.",
        ),
    ),
    (
        "thicker_than_new",
        same("{row}: this leaf is thicker than it is said to have been when new: look at both."),
    ),
    (
        "badly_worn",
        same(
            "{row}: this leaf has {0} of its thickness left: rust pits start cracks. Plan to renew it.",
        ),
    ),
    (
        "two_main_leaves",
        same("{row}: two leaves are called the main leaf; the first is taken."),
    ),
    (
        "wrapper_longer",
        same(
            "{row}: this wrapper is longer than the main leaf, as wrappers that go round the eye are.",
        ),
    ),
    (
        "longer_than_main",
        same(
            "{row}: this leaf is longer than the main leaf: look at both lengths, or call it a wrapper.",
        ),
    ),
    (
        "methods_differ",
        same(
            "{row}: handbook and leaf by leaf differ by {0}: the leaves do not step down evenly, or touch late. A press test settles it.",
        ),
    ),
    (
        "overstressed",
        same("{row}: leaf {1} stands at {0} of what its steel may bear under the load."),
    ),
    (
        "overstressed_leaf_by_leaf",
        same(
            "{row}: reckoned leaf by leaf, leaf {2} comes to {0} under the load, above the {1} allowed, though not by the handbook. Look at its loose arch.",
        ),
    ),
    (
        "near_its_stress",
        same("{row}: leaf {1} stands at {0} of what its steel may bear under the load."),
    ),
    (
        "overstressed_at_bump",
        same("{row}: leaf {1} comes to {0} of what its steel may bear at full bump."),
    ),
    (
        "near_its_stress_at_bump",
        same("{row}: leaf {1} comes to {0} of what its steel may bear at full bump."),
    ),
    (
        "reversed",
        same("{row}: under its load the spring curves the other way: its arch is {0}."),
    ),
    (
        "helper_bears",
        same("{row}: the helper bears from {0} on: the rate is that with the helper."),
    ),
    (
        "shackle_cannot_reach",
        same(
            "{row}: with these pins the shackle cannot reach the eye: measure the frame pins and the shackle again.",
        ),
    ),
    (
        "shackle_lies_down",
        same(
            "{row}: the shackle comes to lean {0}: it may lie on the spring or the frame, or turn over.",
        ),
    ),
    (
        "block_on_steering_axle",
        same(
            "{row}: a block on the axle that steers works loose under braking, and many rules forbid it. Re-arch the spring instead.",
        ),
    ),
    (
        "tall_block",
        same(
            "{row}: so tall a block lets the axle wind the spring up: an anti-wind link or a re-arch is better.",
        ),
    ),
    (
        "block_lifts",
        same("{row}: the spring lies on the axle: the block lifts the vehicle."),
    ),
    (
        "block_lowers",
        same("{row}: the spring hangs under the axle: the block lowers the vehicle."),
    ),
];
