//! What the fields of the conversion sheet are called, what advice stands by them, and their choices.

use crate::words::{Phrase, pair, same};

pub(super) const FIELDS: &[(&str, Phrase)] = &[
    (
        "conversion/*/*/arm_swings",
        pair(
            "Wheel turned right, the drop arm's end goes",
            "Wheel turned right, the pitman arm's end goes",
        ),
    ),
    (
        "conversion/*/*/ball_stands",
        same("Ball of the steering arm, seen from its king pin"),
    ),
    ("conversion/*/*/side", same("Driver sits on the")),
    ("conversion/*/*/gear", same("Steering gear")),
    ("conversion/*/*/box_x", same("Box end, forward of the axle")),
    (
        "conversion/*/*/box_out",
        same("Box end, out from the middle"),
    ),
    ("conversion/*/*/box_z", same("Box end, height")),
    (
        "conversion/*/*/drop_arm",
        pair("Drop arm, shaft to ball", "Pitman arm, shaft to ball"),
    ),
    (
        "conversion/*/*/at_centre",
        pair("Drop arm's lean at centre", "Pitman arm's lean at center"),
    ),
    ("conversion/*/*/rack_turn", same("Rack travel for a turn")),
    ("conversion/*/*/box_ratio", same("Ratio of the box itself")),
    (
        "conversion/*/*/swing",
        pair("Drop arm's swing each way", "Pitman arm's swing each way"),
    ),
    ("conversion/*/*/arm_wheel", same("Steering arm on")),
    (
        "conversion/*/*/ball_x",
        same("Arm's ball, forward of the axle"),
    ),
    (
        "conversion/*/*/ball_out",
        same("Arm's ball, out from the middle"),
    ),
    ("conversion/*/*/ball_z", same("Arm's ball, height")),
    ("conversion/pivots", same("Between the king pins")),
    (
        "conversion/pin_out",
        same("King pin at the ball's height, out"),
    ),
    (
        "conversion/pin_x",
        same("King pin there, forward of the axle"),
    ),
    (
        "conversion/inclination",
        same("King pin's top leans inward"),
    ),
    (
        "conversion/castor",
        pair(
            "King pin's top leans back (castor)",
            "King pin's top leans back (caster)",
        ),
    ),
    (
        "conversion/scrub",
        pair(
            "King pin's line to tyre's middle, on the ground",
            "King pin's line to tire's middle, on the ground",
        ),
    ),
    (
        "conversion/fixed_eye",
        same("Fixed eye of the front spring"),
    ),
    (
        "conversion/half_spring",
        same("Fixed eye to axle, along the leaf"),
    ),
    (
        "conversion/seat_above_eye",
        same("Axle seat above the fixed eye"),
    ),
    ("conversion/rise", same("Axle can rise by")),
    ("conversion/fall", same("Axle can fall by")),
    ("conversion/link_least", same("Drag link to hand, shortest")),
    ("conversion/link_most", same("Drag link to hand, longest")),
    (
        "conversion/track_arm",
        pair("Track-rod arm, pin to ball", "Tie-rod arm, pin to ball"),
    ),
    (
        "conversion/track_arm_angle",
        pair("Track-rod arm's angle", "Tie-rod arm's angle"),
    ),
    (
        "conversion/track_rod",
        pair("Track rod runs", "Tie rod runs"),
    ),
    (
        "conversion/stop",
        same("Axle stop lets the inner wheel turn"),
    ),
    ("conversion/*/*/pad_arm", same("Pivot to pad")),
    ("conversion/*/*/rod_arm", same("Pivot to push rod")),
    ("conversion/*/*/master", same("Master cylinder, bore")),
    (
        "conversion/*/*/servo",
        pair("Servo multiplies by", "Booster multiplies by"),
    ),
    ("conversion/*/*/free_play", same("Free play at the rod")),
    (
        "conversion/*/*/stroke",
        same("Master cylinder, whole stroke"),
    ),
    (
        "conversion/foot",
        same("Foot force for full braking, as it was"),
    ),
    ("conversion/foot_limit", same("Foot force that must do")),
    ("conversion/panic", same("Panic force on the pedal")),
    ("conversion/pistons/*/name", same("Where")),
    ("conversion/pistons/*/bore", same("Bore")),
    ("conversion/pistons/*/count", same("How many pistons")),
    (
        "conversion/pistons/*/travel",
        same("Travel until the lining bears"),
    ),
    ("conversion/*/*/by", same("Clutch worked by")),
    (
        "conversion/*/*/pad_travel",
        same("Pad's travel to the floor"),
    ),
    ("conversion/*/*/slave", same("Slave cylinder, bore")),
    (
        "conversion/*/*/efficiency",
        same("Pull that comes out of the cable"),
    ),
    (
        "conversion/fork_force",
        same("Force at the fork that frees it"),
    ),
    (
        "conversion/fork_travel",
        same("Travel at the fork that frees it"),
    ),
    ("conversion/routes/*/name", same("Name")),
    ("conversion/routes/*/kind", same("What it is")),
    ("conversion/routes/*/string", same("Length by a string")),
    ("conversion/routes/*/straights/*/length", same("Length")),
    ("conversion/routes/*/bends/*/radius", same("Radius")),
    ("conversion/routes/*/bends/*/angle", same("Angle")),
    (
        "conversion/routes/*/least_radius",
        same("Least bend radius allowed"),
    ),
    (
        "conversion/routes/*/friction",
        same("Friction in the sheath"),
    ),
    ("conversion/routes/*/free_play", same("Free play")),
    (
        "conversion/routes/*/arm",
        same("Driver's lever, pivot to cable"),
    ),
    ("conversion/routes/*/swing", same("It swings by")),
    (
        "conversion/routes/*/far_arm",
        same("Far lever, pivot to cable"),
    ),
    ("conversion/routes/*/far_swing", same("It must swing by")),
    ("conversion/routes/*/flare_takes", same("A flare takes")),
    ("conversion/routes/*/union_1", same("First end, union")),
    ("conversion/routes/*/flare_1", same("First end, flare")),
    ("conversion/routes/*/union_2", same("Second end, union")),
    ("conversion/routes/*/flare_2", same("Second end, flare")),
    ("conversion/changes/*/name", same("What")),
    ("conversion/others/*/name", same("What")),
    ("conversion/*/*/state", same("It is")),
    ("conversion/*/*/note", same("Note")),
    ("conversion/*/*/on", same("Done on")),
];

pub(super) const HINTS: &[(&str, Phrase)] = &[
    (
        "conversion/*/*/arm_swings",
        same("Turn the wheel and watch the box itself: boxes are handed."),
    ),
    (
        "conversion/*/*/side",
        same("As the Vehicle sheet says while it is blank."),
    ),
    (
        "conversion/*/*/box_x",
        same("The middle of the shaft at the arm; below nought behind the axle."),
    ),
    (
        "conversion/*/*/box_z",
        same("All heights from one level: the ground, laden as it drives."),
    ),
    (
        "conversion/*/*/at_centre",
        same("From straight down: forward or outward is more than nought."),
    ),
    (
        "conversion/*/*/box_ratio",
        same("Turns of the wheel for a turn of the arm."),
    ),
    (
        "conversion/*/*/ball_out",
        same("On the side of its own wheel."),
    ),
    (
        "conversion/pin_out",
        same("Half the distance between the pins while it is blank."),
    ),
    (
        "conversion/inclination",
        same("Upright is assumed. A few degrees change the turning circle and the bump steer."),
    ),
    (
        "conversion/scrub",
        same("Blank: by track, king pins and their lean. Outward is more than nought."),
    ),
    (
        "conversion/pivots",
        same(
            "At the height of the hubs; 20 mm higher or lower changes nothing that can be measured.",
        ),
    ),
    (
        "conversion/track_arm_angle",
        pair(
            "Inward behind the axle, outward in front of it.",
            "Inward behind the axle, outward in front of it.",
        ),
    ),
    (
        "conversion/foot",
        same("By the maker, or with a balance on the pad."),
    ),
    (
        "conversion/foot_limit",
        same(
            "Approval allows 500 N in a car, 700 N in any other (Directive 70/311/EEC, UN R13). Local rules come first.",
        ),
    ),
    (
        "conversion/pistons/*/travel",
        same("Lining clearance, as each piston moves."),
    ),
    (
        "conversion/*/*/efficiency",
        same("By the clutch cable's route while it is blank."),
    ),
    (
        "conversion/routes/*/string",
        same(
            "Lay a string along the way with its bends, then measure the string: the best way there is.",
        ),
    ),
    (
        "conversion/routes/*/union_1",
        same("As stamped or measured: M10x1, 3/8 UNF. Threads are never mixed."),
    ),
];

pub(super) const CHOICES: &[(&str, Phrase)] = &[
    ("forward", same("Forward")),
    ("backward", same("Backward")),
    ("left", same("Left")),
    ("right", same("Right")),
    ("conversion/*/*/ball_stands=front", same("In front")),
    ("conversion/*/*/ball_stands=behind", same("Behind")),
    ("inside", same("Inside, to the middle")),
    ("outside", same("Outside")),
    ("across", same("Box, arm swings fore and aft")),
    ("along", same("Box, arm hangs, swings sideways")),
    ("upright", same("Box, arm lies flat to the rear")),
    ("rack", same("Rack")),
    ("near", same("The driver's side")),
    ("far", same("The other side")),
    ("front", same("Front")),
    ("rear", same("Rear")),
    ("behind", same("Behind the axle")),
    ("conversion/track_rod=front", same("In front of the axle")),
    ("cable", same("Cable")),
    ("slave", same("Slave cylinder")),
    ("throttle", same("Throttle")),
    ("clutch", same("Clutch cable")),
    ("handbrake", pair("Handbrake", "Parking brake")),
    ("choke", same("Choke")),
    ("speedometer", same("Speedometer")),
    ("brake_pipe", pair("Brake pipe", "Brake line")),
    ("other_pipe", same("Other pipe")),
    ("single", same("Single")),
    ("double", same("Double")),
    ("bubble", same("Bubble")),
    ("olive", same("Olive")),
    ("to_do", same("To do")),
    ("done", same("Done")),
    ("does_not_apply", same("Not here")),
];
