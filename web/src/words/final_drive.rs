//! The words of the final-drive sheet.

use super::{Subject, list, pair, same, told};

mod drawn;
mod fields;

pub use drawn::*;
use fields::{FIELDS, HINTS};

/// The words of the final-drive sheet.
pub static WORDS: Subject = Subject {
    name: same("Final drive"),
    asks: same("Which shims?"),
    tells: pair(
        "The pinion's shims, the pull for its preload, and how far the crown wheel has to move.",
        "The pinion's shims, the pull for its preload, and how far the ring gear has to move.",
    ),
    fields: FIELDS,
    hints: HINTS,
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
        ("towards_toe", same("Nearer the toe")),
        ("middle", same("Middle")),
        ("towards_heel", same("Nearer the heel")),
        ("heel", same("Heel")),
        ("flank", same("Flank (root)")),
        ("low", same("Low")),
        ("high", same("High")),
        ("face", same("Face (tip)")),
        ("crown_side", pair("Crown wheel's side", "Ring gear's side")),
        ("other_side", same("Other side")),
    ],
    groups: &[
        ("final_drive/set", same("The set")),
        ("final_drive/depth", same("Pinion position")),
        ("final_drive/preload", same("Pinion preload")),
        ("final_drive/side", same("Side bearings' preload")),
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
            "final_drive/parts",
            list(
                pair(
                    "New parts (crush sleeve, seals, split pins)",
                    "New parts (crush sleeve, seals, cotter pins)",
                ),
                same("part"),
                same("Part {0}"),
            ),
        ),
        (
            "final_drive/preload_trials",
            list(
                same("Packs tried (shims, or spacer and shims together)"),
                same("pack"),
                same("Pack {0}"),
            ),
        ),
        (
            "final_drive/side_shims",
            list(
                same("Shims at the side bearings now"),
                same("side shim"),
                same("Side shim {0}"),
            ),
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
        told(
            "final_drive/meeting",
            pair(
                "Crown wheel turns until the same teeth meet",
                "Ring gear turns until the same teeth meet",
            ),
        ),
        told("final_drive/shim", same("Pinion shim wanted")),
        told(
            "final_drive/preload_pack_change",
            same("Preload pack changes by as much"),
        ),
        told(
            "final_drive/pinion_pack",
            same("Pack from the shims to hand"),
        ),
        told("final_drive/pinion_count", same("Shims in the pack")),
        told("final_drive/pull", same("Pull on the balance")),
        told("final_drive/pull_most", same("Pull at most")),
        told("final_drive/preload", same("Turning torque as pulled")),
        told(
            "final_drive/preload_per_shim",
            same("What 0.01\u{a0}mm (0.0004\u{a0}in) more of pack does to it"),
        ),
        told(
            "final_drive/preload_pack",
            same("Pack for the torque wanted"),
        ),
        told(
            "final_drive/side_drag",
            same("Side bearings' drag at the pinion"),
        ),
        told(
            "final_drive/side_rise",
            same("Rise of the turning torque with the carrier in"),
        ),
        told(
            "final_drive/side_drag_behind",
            pair(
                "Side bearings' drag at the crown wheel by that rise",
                "Side bearings' drag at the ring gear by that rise",
            ),
        ),
        told(
            "final_drive/side_pull",
            same("Pull to read at the pinion with the carrier in"),
        ),
        told(
            "final_drive/spread_to_add",
            same("Side bearings: spread to add (minus: take)"),
        ),
        told(
            "final_drive/spread_each",
            same("… on each side, so that the backlash stays"),
        ),
        told(
            "final_drive/spread_notches",
            same("Notches in on each side, so that the backlash stays (minus: out)"),
        ),
        told(
            "final_drive/crown_shims",
            pair(
                "With the move: shims to add at the crown wheel's side (minus: take)",
                "With the move: shims to add at the ring gear's side (minus: take)",
            ),
        ),
        told(
            "final_drive/other_shims",
            same("With the move: shims to add at the other side (minus: take)"),
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
        told("final_drive/usual_least", same("Usual backlash, least")),
        told("final_drive/usual_most", same("Usual backlash, most")),
        told(
            "final_drive/move",
            pair(
                "Move the crown wheel out by (minus: in)",
                "Move the ring gear out by (minus: in)",
            ),
        ),
        told(
            "final_drive/notches",
            pair(
                "Notches: slacken at the crown wheel, tighten at the other side (minus: reverse)",
                "Notches: slacken at the ring gear, tighten at the other side (minus: reverse)",
            ),
        ),
        told(
            "final_drive/backlash_per_notch",
            same("Backlash by a notch"),
        ),
        told(
            "final_drive/side_pack",
            pair(
                "Shims from the crown wheel's side to the other (after a minus: back)",
                "Shims from the ring gear's side to the other (after a minus: back)",
            ),
        ),
        told("final_drive/side_count", same("Shims that change sides")),
        told("final_drive/next_shim", same("Next trial: pinion shim")),
        told(
            "final_drive/next_moved",
            pair(
                "Next trial: crown wheel moved out by",
                "Next trial: ring gear moved out by",
            ),
        ),
        told(
            "final_drive/next_backlash",
            same("Next trial: backlash to expect"),
        ),
        told(
            "final_drive/side_gear_left",
            same("Side gears: play to the limit"),
        ),
        told(
            "final_drive/end_float_change",
            pair(
                "Half-shafts: end float to add (minus: take)",
                "Axle shafts: end play to add (minus: take)",
            ),
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
            "marks_of_set",
            same(
                "Enter the matching number, and line up the maker's marks when the set goes together.",
            ),
        ),
        (
            "set_from_gearing",
            same(
                "The set is the one chosen on Gearing: {0}, {1}. Teeth typed here would go before it.",
            ),
        ),
        (
            "set_differs",
            same(
                "{0} is typed here, but {1} is chosen on Gearing ({2}). One of the two is wrong, or the set was changed.",
            ),
        ),
        (
            "mark_tiny",
            pair(
                "The mark was understood as {0}. If it was meant in millimetres, type the unit: 0.03 mm.",
                "The mark was understood as {0}. If it was meant in millimeters, type the unit: 0.03 mm.",
            ),
        ),
        (
            "shim_below_nought",
            same(
                "A shim of {0} cannot be: look at what a plus means, at where the shim sits and at the measurements.",
            ),
        ),
        (
            "used_bearings",
            same(
                "The figure has to be the one for bearings that have run: new ones take more. Mixed, the maker's advice goes first.",
            ),
        ),
        (
            "preload_too_low",
            same("The preload is {0}, less than wanted: the pinion will wander under load."),
        ),
        (
            "side_pull_below",
            same(
                "The pull with the carrier in, {0}, lies below the pinion's own, {1}: one of the two was misread, or hooked on elsewhere.",
            ),
        ),
        (
            "side_preload_too_low",
            pair(
                "The side bearings have {0}, less than wanted: the crown wheel will give way under load.",
                "The side bearings have {0}, less than wanted: the ring gear will give way under load.",
            ),
        ),
        (
            "side_preload_too_high",
            same("The side bearings have {0}, more than wanted: they will run hot."),
        ),
        (
            "pack_far_from_trials",
            same(
                "The pack lies further from those tried than they lie apart: try one between before trusting it.",
            ),
        ),
        (
            "slope_of_trials",
            same("Backlash changes by {0} for a unit of move, as the trials of this axle show."),
        ),
        (
            "trials_tell_no_slope",
            same(
                "The trials give {0} for a unit of move, which is too uncertain; the angles of the teeth serve until they lie further apart.",
            ),
        ),
        (
            "end_float_too_small",
            pair(
                "The half-shafts have {0} of end float, less than they need when warm.",
                "The axle shafts have {0} of end play, less than they need when warm.",
            ),
        ),
        (
            "breather_blocked",
            same("A blocked breather pushes the oil past the seals: clear it before filling."),
        ),
        (
            "run_in_gently",
            same(
                "Run in for {0}: light load, no towing, let it cool after the first 20 to 30 minutes; then fresh oil.",
            ),
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
            same("The side gears have {0} of play, more than they may."),
        ),
        (
            "end_float_too_great",
            pair(
                "The half-shafts have {0} of end float, more than they may.",
                "The axle shafts have {0} of end play, more than they may.",
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
        "final_drive/pack",
        same("Enter what the shim is found by, and the shims to hand, to see the pack."),
    )],
    words: &[],
};
