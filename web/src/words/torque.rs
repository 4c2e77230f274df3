//! The words of the torque sheet.

use super::{Subject, list, pair, same, told, told_of};

const JOINTS: &[&str] = &["torque/joints"];

/// The words of the torque sheet.
pub static WORDS: Subject = Subject {
    name: pair("Torque settings", "Torque specs"),
    asks: same("How tight?"),
    tells: same(
        "What the wrench is set to, joint by joint: the maker's figure, or a computed one that says so.",
    ),
    fields: &[
        ("torque/wrench_name", same("Wrench, called")),
        ("torque/wrench_low", same("Wrench, lowest setting")),
        ("torque/wrench_high", same("Wrench, highest setting")),
        ("torque/wrench_kind", same("Wrench, kind")),
        ("torque/wrench_length", same("Wrench, grip to square")),
        ("torque/wrench_error", same("Wrench, certified error")),
        ("torque/wrenches/*/name", same("Called")),
        ("torque/wrenches/*/low", same("Lowest setting")),
        ("torque/wrenches/*/high", same("Highest setting")),
        ("torque/wrenches/*/kind", same("Kind")),
        ("torque/wrenches/*/length", same("Grip to square")),
        ("torque/wrenches/*/error", same("Certified error")),
        ("torque/joints/*/name", same("What it is")),
        ("torque/joints/*/purpose", same("What it holds")),
        ("torque/joints/*/fixing", same("Fixing")),
        ("torque/joints/*/figure", same("Maker's figure")),
        ("torque/joints/*/figure_to", same("… up to")),
        ("torque/joints/*/turn", same("Then turn by")),
        ("torque/joints/*/page", same("Manual and page")),
        ("torque/joints/*/threads", same("Threads")),
        ("torque/joints/*/stages", same("Stages")),
        ("torque/joints/*/pattern", same("Bolts lie")),
        ("torque/joints/*/bolts", same("Bolts on the circle")),
        ("torque/joints/*/rows", same("Rows")),
        ("torque/joints/*/columns", same("Columns")),
        (
            "torque/joints/*/prevailing",
            same("Prevailing torque of the nut"),
        ),
        ("torque/joints/*/wrench", same("Wrench")),
        (
            "torque/joints/*/extension",
            same("Extension, square to square"),
        ),
        ("torque/joints/*/extension_angle", same("Extension's angle")),
        ("torque/joints/*/hand", same("Tightens")),
        ("torque/joints/*/thread", same("Thread")),
        ("torque/joints/*/grade", same("Class or grade on the head")),
        (
            "torque/joints/*/friction_thread",
            same("Friction in the thread"),
        ),
        (
            "torque/joints/*/friction_head",
            same("Friction under the head"),
        ),
        ("torque/joints/*/head", same("Head or nut")),
        ("torque/joints/*/into", same("Screws into")),
        ("torque/joints/*/engaged", same("Thread engaged")),
        (
            "torque/joints/*/bearing",
            same("Face under the head, across"),
        ),
        ("torque/joints/*/hole", same("Hole it passes")),
        ("torque/joints/*/shank", same("Reduced shank")),
        ("torque/joints/*/yield_share", same("Share of yield to use")),
        ("torque/joints/*/method", same("Tightened by")),
        ("torque/joints/*/new_price", same("New ones, price of one")),
        ("torque/joints/*/new_count", same("New ones, how many")),
        ("torque/joints/*/check_after", same("Check again after")),
        ("torque/joints/*/done", same("Done")),
        ("torque/joints/*/marked", same("Marked with paint")),
        ("torque/joints/*/by", same("By")),
        ("torque/joints/*/on", same("On")),
    ],
    hints: &[
        (
            "torque/wrench_length",
            same("From the middle of the grip to the middle of the square."),
        ),
        (
            "torque/wrench_kind",
            same(
                "By ISO 6789 it may be out by 4\u{a0}%; to 10\u{a0}N·m, a beam or a screwdriver by 6\u{a0}%.",
            ),
        ),
        (
            "torque/wrenches/*/kind",
            same(
                "By ISO 6789 it may be out by 4\u{a0}%; to 10\u{a0}N·m, a beam or a screwdriver by 6\u{a0}%.",
            ),
        ),
        (
            "torque/wrench_error",
            same("From its certificate. Blank, what its class may be out by."),
        ),
        (
            "torque/wrenches/*/high",
            same("In the unit of its scale: what it is set to is told in that."),
        ),
        (
            "torque/wrenches/*/length",
            same("From the middle of the grip to the middle of the square."),
        ),
        (
            "torque/wrenches/*/error",
            same("From its certificate. Blank, what its class may be out by."),
        ),
        (
            "torque/joints/*/wrench",
            same("Unless chosen, the smallest that holds its class at the setting."),
        ),
        (
            "torque/joints/*/new_price",
            same("Bolts or nuts that do not go back. With a price they stand in Costs."),
        ),
        (
            "torque/joints/*/figure",
            same("As the manual prints it: 26 lb ft, 3.6 kgf m, 35 N m."),
        ),
        (
            "torque/joints/*/thread",
            same("Where the manual is silent: M10x1.25, 3/8 UNF, 5/16 BSF, 2 BA."),
        ),
        (
            "torque/joints/*/grade",
            same("8.8, 10.9; grade 5, grade 8; R, S, T for old British bolts."),
        ),
        (
            "torque/joints/*/friction_thread",
            same("Light oil 0.12, dry zinc 0.14, cleaned rust 0.18, molybdenum grease 0.09."),
        ),
        (
            "torque/joints/*/prevailing",
            same("What a self-locking nut takes by itself, turned freely on its thread."),
        ),
        (
            "torque/joints/*/extension_angle",
            same("In line is 0°, square across is 90°."),
        ),
    ],
    choices: &[
        ("other", same("Anything else")),
        ("steering", same("Steering")),
        ("brakes", same("Brakes")),
        ("wheels", same("Wheels")),
        ("spring_u_bolts", same("Spring U-bolts")),
        ("bolt", same("Bolt")),
        ("stud", same("Stud and nut")),
        ("self_locking", same("Self-locking nut")),
        (
            "clamping_castle",
            pair("Clamping nut, split pin", "Clamping nut, cotter pin"),
        ),
        (
            "adjusting_castle",
            pair("Adjusting nut, split pin", "Adjusting nut, cotter pin"),
        ),
        ("stretch", same("Stretch bolt")),
        ("setting", same("Click, set beforehand")),
        ("dial", same("Dial or display")),
        ("beam", same("Beam with a pointer")),
        ("screwdriver", same("Screwdriver")),
        ("plain", same("Plain hexagon")),
        ("flanged", same("Flanged")),
        ("nut", same("A nut")),
        ("steel", same("Steel")),
        ("iron", same("Cast iron")),
        ("aluminium", pair("Aluminium", "Aluminum")),
        ("one", same("Single")),
        ("circle", same("On a circle")),
        ("rectangle", same("In a rectangle")),
        ("dry", same("Dry")),
        ("oiled", same("Oiled")),
        ("sealant", same("Sealant")),
        ("right", same("Clockwise")),
        ("left", pair("Anticlockwise", "Counterclockwise")),
        ("feel", same("Feel")),
        ("wrench", same("Torque wrench")),
        ("angle", same("Torque and angle")),
    ],
    groups: &[
        ("torque/wrench", same("The wrenches")),
        ("torque/joints", same("Joints in the order of work")),
        ("torque/results", same("What comes of it")),
        ("torque/record", same("Tightening record")),
    ],
    lists: &[
        (
            "torque/wrenches",
            list(
                same("Other wrenches"),
                same("wrench"),
                same("Other wrench {0}"),
            ),
        ),
        (
            "torque/joints",
            list(same("Joints"), same("joint"), same("Joint {0}")),
        ),
    ],
    results: &[
        told("torque/next", same("Next joint: set the wrench to")),
        told("torque/left", same("Joints still to do")),
        told_of("torque/figure/*", JOINTS, same("Torque at the joint: {0}")),
        told_of("torque/setting/*", JOINTS, same("Set the wrench to: {0}")),
        told_of(
            "torque/wrench_error/*",
            JOINTS,
            same("Wrench may be out by: {0}"),
        ),
        told_of("torque/stage/*/*", JOINTS, same("{0}: stage {1}")),
        told_of("torque/clamp/*", JOINTS, same("Clamp load: {0}")),
        told_of(
            "torque/least_clamp/*",
            JOINTS,
            same("Least clamp load by the method: {0}"),
        ),
        told_of(
            "torque/engagement/*",
            JOINTS,
            same("Thread to engage, at least: {0}"),
        ),
        told_of(
            "torque/share_of_yield/*",
            JOINTS,
            same("Tension as a share of yield: {0}"),
        ),
    ],
    remarks: &[
        (
            "wrench_out_of_range",
            same(
                "{3}: {0} lies outside what the wrench holds to, {1} to {2} (checked from a fifth of its end on, ISO 6789). Use another wrench.",
            ),
        ),
        (
            "outside_every_wrench",
            same(
                "{3}: {0} lies outside every wrench entered. The nearest holds to {1} to {2} (checked from a fifth of its end on, ISO 6789).",
            ),
        ),
        (
            "makers_figure_only",
            same(
                "{0}: for steering, brakes and wheels only the vehicle maker's figure serves. Nothing is computed here.",
            ),
        ),
        (
            "computed_figure",
            same(
                "{0}: this figure is computed, not the maker's. It rests on friction that nobody has measured; look for the maker's figure first.",
            ),
        ),
        (
            "thread_engagement",
            pair(
                "A computed figure needs thread enough: once the diameter in steel, one and a half times in cast iron, twice in aluminium.",
                "A computed figure needs thread enough: once the diameter in steel, one and a half times in cast iron, twice in aluminum.",
            ),
        ),
        (
            "engaged_too_little",
            same("{2}: {0} of thread engaged is less than the {1} it takes. It would strip."),
        ),
        (
            "never_back_off",
            pair(
                "{0}: a clamping nut is never backed off to fit the split pin. Go on to the next slot, or change the washer.",
                "{0}: a clamping nut is never backed off to fit the cotter pin. Go on to the next slot, or change the washer.",
            ),
        ),
        (
            "back_off_to_end_float",
            same("{0}: an adjusting nut is backed off to the maker's end float, then pinned."),
        ),
        (
            "stretch_bolts_new",
            same("{0}: stretch bolts are used once. Fit new ones."),
        ),
        (
            "measure_prevailing",
            same(
                "{0}: measure what the nut takes by itself and enter it; it is added to the figure.",
            ),
        ),
        (
            "left_hand_thread",
            pair(
                "{0}: left-hand thread, tightens anticlockwise.",
                "{0}: left-hand thread, tightens counterclockwise.",
            ),
        ),
        (
            "wheel_nuts_again",
            same("Wheel nuts are tightened again after 50 to 80 km. A lost wheel kills."),
        ),
        (
            "safety_joints",
            same(
                "Steering and brakes: maker's figure, new locking parts, and a second pair of eyes before the road.",
            ),
        ),
        (
            "u_bolts_new_and_again",
            same(
                "Spring U-bolts are fitted new, tightened under load, and again after 50 to 80 km.",
            ),
        ),
        (
            "clean_threads",
            same(
                "Figures are for clean threads, dry unless the manual says oiled. No paint on the faces that clamp.",
            ),
        ),
    ],
    plates: &[(
        "torque/order",
        same(
            "Enter a joint with its bolts on a circle or in a rectangle to see the order of tightening.",
        ),
    )],
    words: &[("torque/wrenches/first", same("First wrench"))],
};

/// The figure of a joint, as a heading.
pub const FIGURE: super::Phrase = same("Figure");
/// In place of the page: the figure is not the maker's.
pub const COMPUTED: super::Phrase = same("computed");

/// The title of the drawing of the order.
pub const ORDER_TITLE: super::Phrase = same("Order of tightening");
/// What is to be seen in it.
pub const ORDER_SAID: super::Phrase =
    same("{0}: the bolts in the order {1}, counted from the top, or from the top left.");
/// The heading of the place of a bolt.
pub const ORDER_PLACE: super::Phrase = same("Turn");
/// The heading of a bolt.
pub const ORDER_BOLT: super::Phrase = same("Bolt");
/// The key that opens the page for the vehicle.
pub const TICK_OFF: super::Phrase = same("Tick off at the vehicle");
/// The key that goes back to the entries.
pub const BACK_TO_ENTRIES: super::Phrase = same("Back to the entries");
/// Marks the joint done and shows the next.
pub const DONE_NEXT: super::Phrase = same("Done, next joint");
/// Marks the last joint done.
pub const DONE_LAST: super::Phrase = same("Done, that was the last");
/// Passes over a joint.
pub const LATER: super::Phrase = same("Later");
/// The paint across nut and thread is on.
pub const MARKED: super::Phrase = same("Marked with paint");
/// All are done.
pub const ALL_DONE: super::Phrase = same("Every joint is done.");
/// How far one is: `3 of 12`.
pub const SO_FAR: super::Phrase = same("{0} of {1} done");
/// The wrench's setting, as a heading.
pub const SET_TO: super::Phrase = same("Set the wrench to");
/// The same, where there are several wrenches.
pub const SET_WRENCH_TO: super::Phrase = same("Set the wrench “{0}” to");
/// The extension that the setting is for.
pub const THROUGH_EXTENSION: super::Phrase = same("With the extension of {0}, at {1}");
/// The figure as the manual prints it.
pub const AS_PRINTED: super::Phrase = same("Printed: {0}");
/// A figure that was computed here.
pub const COMPUTED_HERE: super::Phrase = same("Computed, not the maker's");
/// Stages, as a line.
pub const IN_STAGES: super::Phrase = same("In stages: {0}");
/// An angle after the torque.
pub const THEN_TURN: super::Phrase = same("Then turn by {0}");
/// What stands on the tick-off page for a left-hand thread.
pub const LEFT_HAND: super::Phrase = pair(
    "Left-hand thread: anticlockwise",
    "Left-hand thread: counterclockwise",
);
/// The heading of the joints that are done.
pub const DONE_SO_FAR: super::Phrase = same("Done so far");
/// Takes a tick back.
pub const NOT_DONE: super::Phrase = same("Not done");
/// The screen is kept on.
pub const SCREEN_STAYS: super::Phrase = same("The screen stays on while this page is open.");
/// The screen cannot be kept on.
pub const SCREEN_MAY_SLEEP: super::Phrase = same("This browser cannot keep the screen on.");
/// There is nothing to tick off yet.
pub const NO_JOINTS: super::Phrase = same("No joint has been entered yet.");
