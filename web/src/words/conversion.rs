//! The words of the conversion sheet.

mod changes;
mod fields;
mod told;

use super::{Phrase, Subject, list, pair, same};

pub use changes::change_name;

/// The parts of the sheet.
pub const PARTS: Phrase = same("Parts of the conversion");
/// A part.
pub const STEERING: Phrase = same("Steering");
/// A part.
pub const PEDALS: Phrase = same("Pedals");
/// A part.
pub const ROUTES: Phrase = same("Cables and pipes");
/// A part.
pub const SIDES: Phrase = same("What changes sides");
/// The heading of what is moved.
pub const MOVED: Phrase = same("Box moved");
/// Before the count of open changes.
pub const STILL_OPEN: Phrase = same("Still to do:");
/// The title of the drawing from above.
pub const ABOVE_TITLE: Phrase = same("The steering from above, straight ahead");
/// What is to be seen in it.
pub const ABOVE_SAID: Phrase =
    same("Front axle, box, arms and drag link; as it was in dashes, the new side solid. {0}");
/// The title of the drawing on lock.
pub const LOCK_TITLE: Phrase = same("On full lock, left solid, right in dashes");
/// What is to be seen in it.
pub const LOCK_SAID: Phrase =
    same("Both front wheels and the linkage on full left lock, and dashed on full right lock. {0}");
/// The title of the curve of bump steer.
pub const BUMP_TITLE: Phrase = same("Bump steer as the axle rises and falls");
/// What is to be seen in it.
pub const BUMP_SAID: Phrase = same(
    "How far the wheels steer by themselves, to the driver's side is more than nought, over the axle's travel. {0}",
);
/// The title of the curve of the Ackermann error.
pub const ACKERMANN_TITLE: Phrase = same("Ackermann error over the lock");
/// What is to be seen in it.
pub const ACKERMANN_SAID: Phrase =
    same("How much further than correct the outer wheel turns, over the inner wheel's angle. {0}");
/// An axis.
pub const STEER_AXIS: Phrase = same("Steers to the driver's side +, {0}");
/// An axis.
pub const RISE_AXIS: Phrase = same("Axle rises by, {0}");
/// An axis.
pub const INNER_AXIS: Phrase = same("Inner wheel, {0}");
/// An axis.
pub const ERROR_AXIS: Phrase = same("Outer wheel too far by, {0}");
/// A line of the plot.
pub const NO_SCRUB: Phrase = same("rolls without scrub");
/// Over a set-up that is stopped.
pub const BACKWARDS: Phrase = pair(
    "Stopped: it steers backwards",
    "Stopped: it steers backward",
);
/// The title of the pedal's drawing.
pub const PEDAL_TITLE: Phrase = same("Brake pedal, as it was and now");
/// What is to be seen in it.
pub const PEDAL_SAID: Phrase =
    same("The brake pedal from the side, to scale; as it was in dashes, the new side solid. {0}");
/// A label.
pub const AT_FOOT: Phrase = same("Foot {0}");
/// A label.
pub const AT_LINE: Phrase = same("Line {0}");
/// A label.
pub const AT_BULKHEAD: Phrase = same("Panic load {0}");
/// The title of a route stretched out.
pub const WAY_TITLE: Phrase = same("{0}, stretched out");
/// What is to be seen in it.
pub const WAY_SAID: Phrase =
    same("The whole length with its bends hatched, each with the mark where it begins: {0}.");
/// A bend's angle and radius.
pub const TURN: Phrase = same("{0} round {1}");
/// A column.
pub const BEND: Phrase = same("Bend");
/// A column.
pub const BEGINS_AT: Phrase = same("Begins at");
/// A column.
pub const BY: Phrase = same("Turns by, round");
/// The whole length.
pub const IN_ALL: Phrase = same("{0} in all");
/// A label.
pub const PIVOT: Phrase = same("Pivot");
/// A label.
pub const AHEAD: Phrase = same("Front");
/// The column of the old side.
pub const WAS: Phrase = same("As it was");
/// The column of the new side.
pub const NOW: Phrase = same("New side");
/// The column of the change.
pub const CHANGE: Phrase = same("Change");
/// The heading of what moving the box does.
pub const MOVING: Phrase = same("What moving the end of the box does");
/// What stands under it.
pub const MOVING_SAID: Phrase = pair(
    "Each by 10 mm (0.39 in), all else left as it is. Bump steer is that at the full rise of the axle.",
    "Each by 10 mm (0.39 in), all else left as it is. Bump steer is that at the full rise of the axle.",
);
/// A row of that table.
pub const FORWARD: Phrase = same("Forward");
/// A row of that table.
pub const OUTWARD: Phrase = same("Outward");
/// A row of that table.
pub const UPWARD: Phrase = same("Up");
/// A column of that table.
pub const LINK: Phrase = same("Drag link");
/// A column of that table.
pub const RATIO: Phrase = same("Ratio");
/// A column of that table.
pub const BUMP: Phrase = same("Bump steer");
/// The key that takes the old side's measures over.
pub const TAKE_OVER: Phrase = same("Start from the old side's measures");
/// What it says beside that key.
pub const TAKE_OVER_SAID: Phrase = same(
    "Measures out from the middle serve on either side. Which way the arm swings is not taken over: look at the box.",
);
/// The key that shows or hides a change's note and day.
pub const NOTE: Phrase = same("Note");
/// How many are open.
pub const OPEN_OF: Phrase = same("{0} open");
/// Shows those that are done or do not apply, too.
pub const SHOW_ALL: Phrase = same("Show all {0}");
/// Shows the open ones only.
pub const SHOW_OPEN: Phrase = same("Show what is open");

/// The words of the conversion sheet.
pub static WORDS: Subject = Subject {
    name: same("LHD/RHD conversion"),
    asks: same("Will it steer and stop true?"),
    tells: same(
        "Whether it steers the right way, the drag link to make, bump steer, pedal forces, and what else changes sides.",
    ),
    fields: fields::FIELDS,
    hints: fields::HINTS,
    choices: fields::CHOICES,
    groups: &[
        (
            "conversion/direction",
            same("First: which way does it steer?"),
        ),
        ("conversion/now", same("Steering on the new side")),
        ("conversion/was", same("Steering as it was")),
        ("conversion/axle", same("Axle, spring and track rod")),
        ("conversion/brake_now", same("Brake pedal on the new side")),
        (
            "conversion/brake_was",
            same("Brake pedal as the maker had it"),
        ),
        ("conversion/feet", same("Foot forces")),
        ("conversion/pistons", same("At the wheels")),
        (
            "conversion/clutch_now",
            same("Clutch pedal on the new side"),
        ),
        ("conversion/clutch_was", same("Clutch pedal as it was")),
        ("conversion/fork", same("Clutch fork")),
        ("conversion/routes", same("Cables and pipes")),
        (
            "conversion/changes",
            same("What changes sides with the driver"),
        ),
        (
            "conversion/steering",
            same("Steering, as it was and on the new side"),
        ),
        (
            "conversion/pedals",
            same("Pedals, as it was and on the new side"),
        ),
        ("conversion/least", same("What would upset it least")),
        (
            "conversion/forces",
            same("Force of each piston at full braking"),
        ),
        ("conversion/own", same("Anything else that changes sides")),
        ("conversion/results", same("What comes of it")),
    ],
    lists: &[
        (
            "conversion/was",
            list(same("As it was"), same("set-up"), same("As it was")),
        ),
        (
            "conversion/now",
            list(same("New side"), same("set-up"), same("New side")),
        ),
        (
            "conversion/brake_was",
            list(
                same("Brake, as it was"),
                same("pedal"),
                same("Brake, as it was"),
            ),
        ),
        (
            "conversion/brake_now",
            list(
                same("Brake, new side"),
                same("pedal"),
                same("Brake, new side"),
            ),
        ),
        (
            "conversion/clutch_was",
            list(
                same("Clutch, as it was"),
                same("pedal"),
                same("Clutch, as it was"),
            ),
        ),
        (
            "conversion/clutch_now",
            list(
                same("Clutch, new side"),
                same("pedal"),
                same("Clutch, new side"),
            ),
        ),
        (
            "conversion/pistons",
            list(
                same("At the wheels"),
                same("kind of piston"),
                same("Pistons {0}"),
            ),
        ),
        (
            "conversion/routes",
            list(
                same("Cables and pipes"),
                same("cable or pipe"),
                same("Cable or pipe {0}"),
            ),
        ),
        (
            "conversion/routes/*/straights",
            list(
                same("Straight pieces"),
                same("straight"),
                same("Straight {0}"),
            ),
        ),
        (
            "conversion/routes/*/bends",
            list(same("Bends"), same("bend"), same("Bend {0}")),
        ),
        (
            "conversion/changes",
            list(
                same("What changes sides with the driver"),
                same("thing"),
                same("Thing {0}"),
            ),
        ),
        (
            "conversion/others",
            list(same("Anything else"), same("thing"), same("Thing {0}")),
        ),
    ],
    results: told::RESULTS,
    remarks: told::REMARKS,
    plates: &[
        (
            "conversion/way",
            same(
                "Enter straights and bends in turn to see where each bend begins; or the string alone.",
            ),
        ),
        (
            "conversion/ackermann",
            pair(
                "Enter the wheelbase, the king pins and the track rod's arm to see the error.",
                "Enter the wheelbase, the king pins and the tie rod's arm to see the error.",
            ),
        ),
        (
            "conversion/pedal",
            same("Enter the pedal's two arms to see it and its forces."),
        ),
        (
            "conversion/above",
            same("Enter where box, arm and king pins are to see the steering from above."),
        ),
        (
            "conversion/bump",
            same("Enter the steering and the spring to see what the axle's rise does to it."),
        ),
        (
            "conversion/lock",
            pair(
                "Enter the track rod's arm and the axle's stop to see full lock.",
                "Enter the tie rod's arm and the axle's stop to see full lock.",
            ),
        ),
    ],
    words: &[
        ("was", WAS),
        ("now", NOW),
        ("change", CHANGE),
        ("forward", FORWARD),
        ("out", OUTWARD),
        ("up", UPWARD),
    ],
};
