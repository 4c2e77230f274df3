//! The words of the final-drive sheet.

use super::{Phrase, Subject, list, pair, same, told};

/// The title of the drawing of the tooth marks.
pub const MARKS_TITLE: Phrase = same("Tooth marks");
/// What is to be seen in it.
pub const MARKS_SAID: Phrase = pair(
    "A tooth of the crown wheel, drive flank and coast flank, with the marks of the last trial: {0}. {1}",
    "A tooth of the ring gear, drive flank and coast flank, with the marks of the last trial: {0}. {1}",
);
/// The drive flank.
pub const DRIVE: Phrase = same("Drive");
/// The coast flank.
pub const COAST: Phrase = same("Coast");
/// The small end.
pub const TOE: Phrase = same("toe");
/// The large end.
pub const HEEL: Phrase = same("heel");
/// The tip.
pub const FACE: Phrase = same("face");
/// The root.
pub const FLANK: Phrase = same("flank");
/// The heading of where.
pub const WHERE: Phrase = same("Marks");

/// What the marks ask for.
pub fn advice(advice: trade::final_drive::Advice) -> Phrase {
    use trade::final_drive::Advice;
    match advice {
        Advice::Good => same("The marks lie well. Nothing is to be changed."),
        Advice::PinionIn => pair(
            "First move the pinion towards the crown wheel.",
            "First move the pinion toward the ring gear.",
        ),
        Advice::PinionOut => pair(
            "First move the pinion away from the crown wheel.",
            "First move the pinion away from the ring gear.",
        ),
        Advice::CrownIn => pair(
            "Move the crown wheel towards the pinion; backlash falls.",
            "Move the ring gear toward the pinion; backlash falls.",
        ),
        Advice::CrownOut => pair(
            "Move the crown wheel away from the pinion; backlash grows.",
            "Move the ring gear away from the pinion; backlash grows.",
        ),
    }
}

/// The words of the final-drive sheet.
pub static WORDS: Subject = Subject {
    name: same("Final drive"),
    asks: same("Which shims?"),
    tells: pair(
        "The pinion's shims, the pull for its preload, and how far the crown wheel has to move.",
        "The pinion's shims, the pull for its preload, and how far the ring gear has to move.",
    ),
    fields: &[
        (
            "final_drive/crown",
            pair("Crown wheel, teeth", "Ring gear, teeth"),
        ),
        ("final_drive/pinion", same("Pinion, teeth")),
        ("final_drive/set_number", same("Matching number on both")),
        ("final_drive/depth_by", same("Shim found by")),
        ("final_drive/plus_means", same("A plus on the head means")),
        ("final_drive/shim_sits", same("The shim sits")),
        ("final_drive/old_shim", same("Shim that was in")),
        ("final_drive/old_mark", same("Mark on the old head")),
        ("final_drive/new_mark", same("Mark on the new head")),
        ("final_drive/depth", same("Axis to bearing seat")),
        ("final_drive/bearing", same("Bearing height")),
        ("final_drive/nominal", same("Mounting distance, unmarked")),
        ("final_drive/pack_within", same("Pack must come within")),
        ("final_drive/shims/*/thickness", same("Thickness")),
        ("final_drive/shims/*/count", same("How many")),
        ("final_drive/preload", same("Turning torque wanted")),
        ("final_drive/bearings_are", same("For bearings that are")),
        ("final_drive/spacer", same("Spacer")),
        ("final_drive/flange", same("Flange, across")),
        ("final_drive/cord", same("Cord, thickness")),
        ("final_drive/pull", same("Pull read while turning")),
        ("final_drive/side_drag", same("Drag of the side bearings")),
        ("final_drive/backlash_least", same("Backlash wanted, least")),
        ("final_drive/backlash_most", same("Backlash wanted, most")),
        ("final_drive/readings/*/reading", same("Backlash")),
        (
            "final_drive/dial_radius",
            pair(
                "Radius where the dial stood",
                "Radius where the indicator stood",
            ),
        ),
        ("final_drive/heel_radius", same("Radius of the heel")),
        ("final_drive/run_out_limit", same("Readings may differ by")),
        ("final_drive/pressure_angle", same("Pressure angle")),
        ("final_drive/spiral_angle", same("Spiral angle")),
        ("final_drive/moved_by", same("Moved by")),
        ("final_drive/adjuster_pitch", same("Adjuster, thread pitch")),
        ("final_drive/notches", same("Adjuster, notches")),
        ("final_drive/trials/*/shim", same("Pinion shim")),
        (
            "final_drive/trials/*/moved",
            pair("Crown wheel moved out by", "Ring gear moved out by"),
        ),
        ("final_drive/trials/*/backlash", same("Least backlash")),
        (
            "final_drive/trials/*/drive",
            same("Drive flank, marks at the"),
        ),
        (
            "final_drive/trials/*/coast",
            same("Coast flank, marks at the"),
        ),
        (
            "final_drive/trials/*/height",
            same("Up the tooth, marks at the"),
        ),
        ("final_drive/trials/*/note", same("Note")),
        ("final_drive/side_gear_play", same("Side gears, play")),
        ("final_drive/side_gear_limit", same("… at most")),
        (
            "final_drive/end_float",
            pair("Half-shafts, end float", "Axle shafts, end play"),
        ),
        ("final_drive/end_float_limit", same("… at most")),
        ("final_drive/oil", same("Oil to fill in")),
        ("final_drive/bronze", same("Worm gear with bronze")),
        ("final_drive/breather", same("Breather is clear")),
        ("final_drive/run_in", same("Run in gently for")),
    ],
    hints: &[
        (
            "final_drive/plus_means",
            same("The maker's manual says which. It is never guessed here."),
        ),
        (
            "final_drive/shim_sits",
            same("It decides which way a thicker shim moves the pinion."),
        ),
        (
            "final_drive/old_mark",
            pair(
                "In hundredths of a millimetre or thousandths of an inch: 0.05 mm, 2 thou.",
                "In hundredths of a millimeter or thousandths of an inch: 0.05 mm, 2 thou.",
            ),
        ),
        (
            "final_drive/cord",
            same("Nothing with a balance hooked to the flange."),
        ),
        (
            "final_drive/pull",
            same("The steady pull while it turns, oiled, without seal; not the breakaway."),
        ),
        (
            "final_drive/readings/*/reading",
            same("At the heel, square to the tooth; at four places or more."),
        ),
        ("final_drive/spiral_angle", same("0° for straight teeth.")),
        (
            "final_drive/trials/*/moved",
            same("From where it stood at the first trial; inward is below nought."),
        ),
    ],
    choices: &[
        ("marks", same("Old shim and marks")),
        ("depth", same("Measured housing")),
        ("further", same("Further from the axis")),
        ("nearer", same("Nearer to the axis")),
        ("head_to_cone", same("Between head and bearing")),
        ("behind_cup", same("Behind the bearing cup")),
        ("carrier_flange", same("Under the carrier's flange")),
        ("new", same("New")),
        ("used", same("Used")),
        ("solid", same("Solid")),
        ("crush", pair("Collapsible", "Crush sleeve")),
        ("shims", same("Shims")),
        ("adjusters", same("Adjuster nuts")),
        ("toe", same("Toe")),
        ("middle", same("Middle")),
        ("heel", same("Heel")),
        ("flank", same("Flank")),
        ("face", same("Face")),
    ],
    groups: &[
        ("final_drive/set", same("The set")),
        ("final_drive/depth", same("Pinion position")),
        ("final_drive/preload", same("Pinion preload")),
        ("final_drive/backlash", same("Backlash")),
        (
            "final_drive/moving",
            pair("Moving the crown wheel", "Moving the ring gear"),
        ),
        ("final_drive/trials", same("Trials and tooth marks")),
        ("final_drive/closing", same("Before closing")),
        ("final_drive/results", same("What comes of it")),
    ],
    lists: &[
        (
            "final_drive/shims",
            list(same("Shims to hand"), same("shim"), same("Shim {0}")),
        ),
        (
            "final_drive/readings",
            list(
                same("Readings round the wheel"),
                same("reading"),
                same("Reading {0}"),
            ),
        ),
        (
            "final_drive/trials",
            list(same("Trials"), same("trial"), same("Trial {0}")),
        ),
    ],
    results: &[
        told("final_drive/ratio", same("Ratio")),
        told("final_drive/shim", same("Pinion shim wanted")),
        told("final_drive/pack", same("Pack from the shims to hand")),
        told("final_drive/pack_count", same("Shims in the pack")),
        told("final_drive/pull", same("Pull on the balance")),
        told("final_drive/preload", same("Turning torque as pulled")),
        told(
            "final_drive/side_drag",
            same("Side bearings' drag at the pinion"),
        ),
        told("final_drive/backlash", same("Backlash, least reading")),
        told(
            "final_drive/backlash_greatest",
            same("Backlash, greatest reading"),
        ),
        told("final_drive/run_out", same("Readings differ by")),
        told(
            "final_drive/backlash_factor",
            same("Backlash for a unit of move"),
        ),
        told(
            "final_drive/move",
            pair(
                "Move the crown wheel out by (minus: in)",
                "Move the ring gear out by (minus: in)",
            ),
        ),
        told(
            "final_drive/notches",
            same("Notches, one side out, the other in"),
        ),
        told(
            "final_drive/next_shim",
            same("Next pinion shim by the trend"),
        ),
    ],
    remarks: &[
        (
            "hunting",
            same(
                "The teeth hunt: every tooth meets every other, and the set may be fitted in any position.",
            ),
        ),
        (
            "not_hunting",
            same("The same teeth meet again and again: fit the set on its marks."),
        ),
        (
            "crush_sleeve",
            pair(
                "A collapsible spacer taken too far is replaced, never slackened.",
                "A crush sleeve taken too far is replaced, never slackened.",
            ),
        ),
        (
            "bronze_oil",
            same("Oils with active extreme-pressure additives attack bronze. Use the maker's oil."),
        ),
        (
            "preload_too_high",
            same("The preload is {0}, more than wanted: the bearings will run hot."),
        ),
        (
            "run_out_over_limit",
            pair(
                "The readings differ by {0}, more than they may: look for dirt under the crown wheel before moving anything.",
                "The readings differ by {0}, more than they may: look for dirt under the ring gear before moving anything.",
            ),
        ),
        (
            "backlash_too_small",
            same("The least backlash is {0}, less than wanted: the teeth will bind when warm."),
        ),
        (
            "backlash_too_great",
            same("The least backlash is {0}, more than allowed."),
        ),
        (
            "one_reading_only",
            same("One reading does not show run-out: take four or more round the wheel."),
        ),
        (
            "side_gear_worn",
            same("The side gears have more play than they may."),
        ),
        (
            "end_float_too_great",
            pair(
                "The half-shafts have more end float than they may.",
                "The axle shafts have more end play than they may.",
            ),
        ),
        (
            "order_of_setting",
            same(
                "Order: seat the bearings, pinion depth under light preload, pinion preload, side preload, backlash, tooth marks.",
            ),
        ),
        (
            "again_after_shim",
            same("After any change of the pinion's shim the backlash is set and read again."),
        ),
    ],
    plates: &[(
        "final_drive/marks",
        same("Enter a trial with its marks to see where they lie and what to move first."),
    )],
    words: &[],
};
