//! The words of the springs sheet.

mod told;

use super::{ListWords, Phrase, Subject, list, pair, same};

/// The words of the springs sheet.
pub static WORDS: Subject = Subject {
    name: same("Springs"),
    asks: same("How high will it sit?"),
    tells: same("Rate, arch and ride height of each spring, and the stress in its leaves."),
    fields: FIELDS,
    hints: HINTS,
    choices: CHOICES,
    groups: GROUPS,
    lists: LISTS,
    results: told::RESULTS,
    remarks: told::REMARKS,
    plates: &[
        (
            "springs/side",
            same(
                "Measure the main leaf first: width, thickness, length from eye to eye along the leaf.",
            ),
        ),
        (
            "springs/planned",
            same(
                "Plan some work, or keep the figures as before: the spring is drawn before and after.",
            ),
        ),
        (
            "springs/line",
            same("The load line appears once the leaves and the load are known."),
        ),
        (
            "springs/stance",
            same("The stance appears once a front and a rear spring have their heights."),
        ),
    ],
    words: &[],
};

/// Of the drawing from the side.
pub const SIDE_TITLE: Phrase = same("{0}: free and under its load");
/// What is to be seen in it.
pub const SIDE_SAID: Phrase = same(
    "The spring from the side, to scale, front to the left: under its load in solid, free in dashes. {0}.",
);
/// Of the drawing after the work.
pub const PLANNED_TITLE: Phrase = same("{0}: before and after the work");
/// What is to be seen in it.
pub const PLANNED_SAID: Phrase = same(
    "The spring under its load, to scale: as it stands in dashes, after the work in solid, both on the same axle. {0}.",
);
/// Of the drawing against what was kept as before.
pub const BEFORE_TITLE: Phrase = same("{0}: before and now");
/// What is to be seen in it.
pub const BEFORE_SAID: Phrase = same(
    "The spring under its load, to scale: as it was kept in dashes, as it is now in solid, both on the same axle. {0}.",
);
/// Of the load line.
pub const LINE_TITLE: Phrase = same("{0}: load and travel");
/// What is to be seen in it.
pub const LINE_SAID: Phrase = same(
    "Load on the spring over its travel from free, with a band for what friction holds, and the points of the press test. {0}.",
);
/// Across the load line.
pub const TRAVEL_AXIS: Phrase = same("Travel from free, {0}");
/// Up the load line.
pub const LOAD_AXIS: Phrase = same("Load, {0}");
/// On the load line.
pub const AT_LOAD: Phrase = same("under its load");
/// On the load line.
pub const AT_BUMP: Phrase = same("full bump");
/// On the load line.
pub const HELPER_TOUCHES: Phrase = same("helper touches");
/// On the load line.
pub const PRESSED: Phrase = same("press, load going up");
/// On the load line.
pub const LET_UP: Phrase = same("press, load coming off");
/// Of the stance.
pub const STANCE_TITLE: Phrase = same("Stance");
/// What is to be seen in it.
pub const STANCE_SAID: Phrase = same(
    "The marks on the frame over the axles, heights drawn larger than lengths: as it stands in dashes, after the work in solid. {0}.",
);
/// In a drawing.
pub const FREE: Phrase = same("free");
/// In a drawing.
pub const ARCH: Phrase = same("arch {0}");
/// In a table.
pub const AS_IT_STANDS: Phrase = same("As it stands");
/// In a table.
pub const AFTER: Phrase = same("After the work");
/// In a table.
pub const CHANGE: Phrase = same("Change");
/// In a table.
pub const LEAF: Phrase = same("Leaf");
/// In a table.
pub const NIP: Phrase = same("Nip");
/// In a table.
pub const UNDER_LOAD: Phrase = same("Under load");
/// In a table.
pub const BUMP: Phrase = same("At bump");
/// In a table.
pub const USED: Phrase = same("Of allowed");
/// In a table.
pub const USED_BUMP: Phrase = same("Of allowed, bump");
/// In a table.
pub const BY_HANDBOOK: Phrase = same("Handbook");
/// In a table.
pub const BY_BEAM: Phrase = same("Leaf by leaf");
/// In a table.
pub const BY_WHAT: Phrase = same("By");
/// In a table.
pub const RATE: Phrase = same("Rate");
/// In a table.
pub const BY_PRESS: Phrase = same("Press test");
/// In a table.
pub const BY_TIGHT: Phrase = same("Leaves sharing one curve");
/// In a table.
pub const BY_FREE: Phrase = same("Handbook, off the seat");
/// In a table.
pub const DIFFER: Phrase = same("Leaf by leaf against the handbook");
/// Beside the methods.
pub const METHODS_SAID: Phrase = same(
    "The handbook takes the pack as one beam of even stress and a factor for its tips. Leaf by leaf, each leaf is a \
     beam of its own that touches its neighbour at the tip. They part where leaves do not step down evenly.",
);
/// Beside the stresses.
pub const STRESS_SAID: Phrase = same(
    "Upper face in tension is positive; nip is what bolting the pack together locks in. The shares are of the stress by \
     the handbook. Leaf by leaf the tips carry all, so the main leaf and the shortest come out higher there.",
);
/// On a key.
pub const OTHER_SIDE: Phrase = same("Other side");
/// On a key.
pub const ADD_SPRING: Phrase = same("Add spring");
/// A heading.
pub const METHODS: Phrase = same("Rate, by each method");
/// A heading.
pub const STRESSES: Phrase = same("Stress in each leaf");
/// A heading.
pub const WORK: Phrase = same("What the work does");
/// On the key that brings what is seldom needed.
pub const SELDOM: Phrase = same("Press test, steel, shackle");
/// Names the keys of the springs.
pub const WHICH: Phrase = same("Which spring");

const FIELDS: &[(&str, Phrase)] = &[
    ("springs/under", same("Stands under")),
    ("springs/base_front", same("Between the front springs")),
    ("springs/base_rear", same("Between the rear springs")),
    (
        "springs/castor",
        pair("Castor as it stands", "Caster as it stands"),
    ),
    ("springs/pinion", same("Pinion, nose up, as it stands")),
    ("springs/notes", same("Notes")),
    ("springs/springs/*/place", same("Where it stands")),
    ("springs/springs/*/lengths", same("Lengths were taken")),
    ("springs/springs/*/clamped", same("Clamped length")),
    ("springs/springs/*/seat_rule", same("Of that, dead")),
    ("springs/springs/*/ends", same("Tips of the leaves")),
    ("springs/springs/*/stiffening", same("Stiffening factor")),
    ("springs/springs/*/steel", same("Steel")),
    ("springs/springs/*/modulus", same("Young's modulus")),
    ("springs/springs/*/allowed", same("Allowed under load")),
    ("springs/springs/*/allowed_bump", same("Allowed at bump")),
    ("springs/springs/*/load", same("Load on it, weighed")),
    ("springs/springs/*/share", same("Share of its axle")),
    ("springs/springs/*/free_arch", same("Free arch")),
    ("springs/springs/*/eye_rise", same("Eyes above the leaf")),
    ("springs/springs/*/mounting", same("Axle and spring")),
    (
        "springs/springs/*/pad",
        pair("Axle centre to pad", "Axle center to pad"),
    ),
    ("springs/springs/*/block", same("Block")),
    ("springs/springs/*/mark", same("Mark above the eyes")),
    ("springs/springs/*/bump", same("Travel left to the stop")),
    ("springs/springs/*/condition", same("Leaves are")),
    ("springs/springs/*/friction", same("Friction")),
    ("springs/springs/*/rate_by", same("Heights rest on")),
    ("springs/springs/*/shackle", same("Shackle, pin to pin")),
    ("springs/springs/*/pins_apart", same("Frame pins apart")),
    (
        "springs/springs/*/pin_higher",
        same("Shackle pin higher by"),
    ),
    ("springs/springs/*/ram_bore", same("Bore of the ram")),
    ("springs/springs/*/wanted", same("Height that is wanted")),
    ("springs/springs/*/plan_as_new", same("Fit leaves as new")),
    (
        "springs/springs/*/plan_remove",
        same("Take out leaf number"),
    ),
    ("springs/springs/*/plan_add", same("Add a leaf, thickness")),
    (
        "springs/springs/*/plan_add_length",
        same("Length of that leaf"),
    ),
    ("springs/springs/*/plan_arch", same("Re-arch to")),
    ("springs/springs/*/plan_block", same("Block of")),
    ("springs/springs/*/plan_wedge", same("Wedge of")),
    ("springs/springs/*/settling", same("It will settle by")),
    ("springs/springs/*/leaves/*/kind", same("Kind")),
    ("springs/springs/*/leaves/*/width", same("Width")),
    ("springs/springs/*/leaves/*/thickness", same("Thickness")),
    (
        "springs/springs/*/leaves/*/new_thickness",
        same("Thickness when new"),
    ),
    ("springs/springs/*/leaves/*/length", same("Length")),
    (
        "springs/springs/*/leaves/*/front",
        pair("Front tip to centre bolt", "Front tip to center bolt"),
    ),
    ("springs/springs/*/leaves/*/arch", same("Loose arch")),
    ("springs/springs/*/leaves/*/gap", same("Gap at the tip")),
    ("springs/springs/*/points/*/travel", same("Pressed down")),
    ("springs/springs/*/points/*/load", same("Load")),
    ("springs/springs/*/points/*/pressure", same("Ram gauge")),
    ("springs/springs/*/points/*/going", same("Load is")),
];

const HINTS: &[(&str, Phrase)] = &[
    (
        "springs/springs/*/leaves/*/width",
        same("Blank: as the leaf above."),
    ),
    (
        "springs/springs/*/leaves/*/thickness",
        same("At the worst pit, scale off."),
    ),
    (
        "springs/springs/*/leaves/*/new_thickness",
        same("Under the clip or the tip of the leaf above, where no rust came."),
    ),
    (
        "springs/springs/*/leaves/*/length",
        same("Along the leaf; the main leaf from eye to eye."),
    ),
    (
        "springs/springs/*/leaves/*/front",
        same("Blank: half, or in the proportion of the main leaf."),
    ),
    (
        "springs/springs/*/leaves/*/arch",
        same("Lying loose: string across the tips, down to the upper face at the bolt."),
    ),
    (
        "springs/springs/*/clamped",
        same(
            "From U-bolt to U-bolt, or the width of the band. Nothing is deducted while it is nought.",
        ),
    ),
    (
        "springs/springs/*/lengths",
        same("Clear of the seat: the clamped length is off already and is not taken off again."),
    ),
    (
        "springs/springs/*/free_arch",
        pair(
            "Off the vehicle: string through the eye centres, down to the upper face of the main leaf at the seat. Blank: from the loose arches.",
            "Off the vehicle: string through the eye centers, down to the upper face of the main leaf at the seat. Blank: from the loose arches.",
        ),
    ),
    (
        "springs/springs/*/load",
        same("Blank: from the axle loads of the vehicle sheet, less what rides below the springs."),
    ),
    (
        "springs/springs/*/pad",
        same("To the face that the spring, or its block, sits on."),
    ),
    (
        "springs/springs/*/mark",
        same("From the line of the eyes up to the mark that heights are taken at."),
    ),
    (
        "springs/springs/*/eye_rise",
        same("Nought for eyes rolled on the middle of the leaf; upturned eyes lie above it."),
    ),
    (
        "springs/springs/*/bump",
        same("As it stands, axle to stop."),
    ),
    (
        "springs/springs/*/plan_remove",
        same("Counted from the top of the pile."),
    ),
    (
        "springs/springs/*/plan_wedge",
        same("Positive where it brings the nose of the axle up."),
    ),
    (
        "springs/springs/*/settling",
        same("A new or re-arched spring settles in its first miles."),
    ),
    (
        "springs/springs/*/ram_bore",
        same(
            "Where the ram's gauge is read instead of a load. Eyes free on rollers, travel from the first mark.",
        ),
    ),
    (
        "springs/springs/*/stiffening",
        same("Blank: from the tips of the leaves."),
    ),
];

const CHOICES: &[(&str, Phrase)] = &[
    (
        "springs/under=laden",
        pair("Laden vehicle", "Loaded vehicle"),
    ),
    (
        "springs/under=unladen",
        pair("Unladen vehicle", "Empty vehicle"),
    ),
    ("front_left", same("Front left")),
    ("front_right", same("Front right")),
    ("rear_left", same("Rear left")),
    ("rear_right", same("Rear right")),
    ("whole", same("Whole leaves")),
    ("clear", same("Clear of the seat")),
    ("springs/springs/*/seat_rule=whole", same("All of it")),
    ("springs/springs/*/seat_rule=two_thirds", same("Two thirds")),
    ("springs/springs/*/seat_rule=half", same("Half")),
    ("springs/springs/*/seat_rule=none", same("None")),
    ("thinned", same("Thinned")),
    ("square", same("Cut square")),
    ("counted", same("By count of full leaves")),
    ("carbon", same("Plain carbon")),
    ("silicon_manganese", same("Silicon-manganese")),
    ("chrome_vanadium", same("Chrome-vanadium")),
    ("chrome_molybdenum", same("Chrome-molybdenum")),
    ("spring_over_axle", same("Spring on the axle")),
    ("spring_under_axle", same("Spring under the axle")),
    ("dry", same("Dry or rusty")),
    ("greased", same("Clean and greased")),
    ("press", same("Press test")),
    ("handbook", same("Handbook")),
    ("beam", same("Leaf by leaf")),
    ("main", same("Main")),
    ("wrapper", same("Wrapper")),
    ("graduated", same("Graduated")),
    ("full_length", same("Full length")),
    ("helper", same("Helper")),
    ("rebound", same("Rebound")),
    ("springs/springs/*/points/*/going=up", same("Going up")),
    ("springs/springs/*/points/*/going=down", same("Coming off")),
    ("springs/springs/*/plan_as_new=yes", same("Yes")),
    ("springs/springs/*/plan_as_new=no", same("No")),
];

const GROUPS: &[(&str, Phrase)] = &[
    ("springs/which", same("Which spring")),
    ("springs/leaves", same("Leaves, from the top of the pile")),
    ("springs/stand", same("Load and height")),
    ("springs/seat", same("Seat")),
    ("springs/steel", same("Steel, tips, friction")),
    ("springs/press", same("Press test")),
    ("springs/shackle", same("Shackle")),
    ("springs/plan", same("Work that is planned")),
    ("springs/wanted", same("A height that is wanted")),
    ("springs/vehicle", same("The vehicle on its springs")),
    ("springs/more", same("More of this spring")),
    ("springs/together", same("Front and rear together")),
];

const LISTS: &[(&str, ListWords)] = &[
    (
        "springs/springs",
        list(same("Springs"), same("spring"), same("Spring {0}")),
    ),
    (
        "springs/springs/*/leaves",
        list(same("Leaves"), same("leaf"), same("Leaf {0}")),
    ),
    (
        "springs/springs/*/points",
        list(same("Points"), same("point"), same("Point {0}")),
    ),
];
