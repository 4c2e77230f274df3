//! What the entries of the final-drive sheet are called, and the hints beside them.

use crate::words::{Phrase, pair, same};

pub(super) const FIELDS: &[(&str, Phrase)] = &[
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
    ("final_drive/preload_most", same("… at most")),
    ("final_drive/bearings_are", same("For bearings that are")),
    ("final_drive/spacer", same("Spacer")),
    (
        "final_drive/pull_radius",
        same("Balance hooked on at radius"),
    ),
    ("final_drive/flange", same("Flange under a cord, across")),
    ("final_drive/cord", same("Cord, thickness")),
    ("final_drive/pull", same("Pull read while turning")),
    ("final_drive/preload_trials/*/pack", same("Pack")),
    ("final_drive/preload_trials/*/pull", same("Pull")),
    ("final_drive/shim_name", same("Shims to buy, called")),
    ("final_drive/shim_price", same("… price of one")),
    (
        "final_drive/side_drag",
        pair(
            "Drag measured at the crown wheel",
            "Drag measured at the ring gear",
        ),
    ),
    (
        "final_drive/side_drag_wanted",
        pair(
            "Drag wanted at the crown wheel",
            "Drag wanted at the ring gear",
        ),
    ),
    ("final_drive/side_drag_most", same("… at most")),
    (
        "final_drive/side_pull",
        same("Pull at the pinion with the carrier in"),
    ),
    (
        "final_drive/spread_wanted",
        same("Preload wanted as a spread"),
    ),
    ("final_drive/spread_now", same("Spread measured")),
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
    (
        "final_drive/crown_across",
        pair("Crown wheel, pitch diameter", "Ring gear, pitch diameter"),
    ),
    ("final_drive/moved_by", same("Moved by")),
    ("final_drive/side_shims/*/side", same("Sits on")),
    ("final_drive/side_shims/*/thickness", same("Thickness")),
    ("final_drive/side_shims/*/count", same("How many")),
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
    ("final_drive/end_float_least", same("… at least")),
    ("final_drive/end_float_limit", same("… at most")),
    ("final_drive/oil", same("Oil to fill in")),
    ("final_drive/oil_name", same("Oil, grade and name")),
    ("final_drive/oil_can", same("Oil, a can holds")),
    ("final_drive/oil_price", same("Oil, price")),
    ("final_drive/parts/*/name", same("What it is")),
    ("final_drive/parts/*/count", same("How many")),
    ("final_drive/parts/*/price", same("Price of one")),
    ("final_drive/bronze", same("Worm gear with bronze")),
    ("final_drive/breather", same("Breather is clear")),
    ("final_drive/run_in", same("Run in gently for")),
];

pub(super) const HINTS: &[(&str, Phrase)] = &[
    (
        "final_drive/plus_means",
        same("The maker's manual says which. It is never guessed here."),
    ),
    (
        "final_drive/shim_sits",
        same("It decides which way a thicker shim moves the pinion."),
    ),
    (
        "final_drive/crown",
        same("Blank, the set chosen on Gearing serves."),
    ),
    (
        "final_drive/old_mark",
        pair(
            "As it stands there: 5 is 0.05 mm in a metric book, five thou in an inch one. 2 thou is 2 thou anywhere.",
            "As it stands there: 5 is 0.05 mm in a metric book, five thou in an inch one. 2 thou is 2 thou anywhere.",
        ),
    ),
    (
        "final_drive/new_mark",
        same("A mark without a sign is a plus."),
    ),
    (
        "final_drive/depth",
        same(
            "Of the housing, by a depth micrometer over a bar in the bearings' bores, half the bar added.",
        ),
    ),
    (
        "final_drive/bearings_are",
        same("Makers give more for new ones."),
    ),
    (
        "final_drive/crown_across",
        same("Only where the maker's backlash is not known."),
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
        "final_drive/shim_price",
        same(
            "With it, a pack may take more than are to hand, and they stand in Costs. Enter 0 as the count of a size that is not there.",
        ),
    ),
    (
        "final_drive/side_drag",
        same("The steady torque that turns the carrier alone, oiled, pinion out."),
    ),
    (
        "final_drive/side_pull",
        same("Hooked on as for the pinion alone, whose pull is taken off."),
    ),
    (
        "final_drive/spread_wanted",
        same(
            "Of both together, by the maker: as shims beyond no play, or as the housing opens under a dial.",
        ),
    ),
    (
        "final_drive/spread_now",
        pair(
            "End float is below nought: -0.05. A dial gauge over the caps shows only a part of each shim: add in steps, measure again.",
            "End play is below zero: -0.05. A dial indicator over the caps shows only a part of each shim: add in steps, measure again.",
        ),
    ),
    (
        "final_drive/oil_can",
        pair(
            "Blank, the price is for a litre. With a price it stands in Costs.",
            "Blank, the price is for a liter. With a price it stands in Costs.",
        ),
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
];
