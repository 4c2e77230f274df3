//! The words of the handover sheet and of the pack.

mod presets;

use super::{Phrase, Subject, list, pair, same, told, told_of};

const BRAKES: &[&str] = &["handover/brakes"];
const AGAIN: &[&str] = &["handover/again"];
const JOINTS: &[&str] = &["torque/joints"];

/// The words of the handover sheet.
pub static WORDS: Subject = Subject {
    name: same("Handover"),
    asks: same("What was done and measured?"),
    tells: same(
        "What is still open, what is looked at again and when, and the pack that goes with the vehicle.",
    ),
    fields: &[
        ("handover/handed_on", same("Handed over on")),
        ("handover/handed_by", same("Handed over by")),
        ("handover/handed_to", same("Taken over by")),
        ("handover/odometer", same("Odometer")),
        ("handover/per_week", same("Driven in a week")),
        ("handover/frame_number", same("Frame number")),
        ("handover/engine_number", same("Engine number")),
        ("handover/axle_number", same("Axle number")),
        ("handover/registration", same("Registration")),
        ("handover/changes/*/name", same("Part")),
        ("handover/changes/*/found", same("Found")),
        ("handover/changes/*/changed", same("Done")),
        ("handover/front_weighed", same("Front axle, as weighed")),
        ("handover/rear_weighed", same("Rear axle, as weighed")),
        ("handover/weighed_as", same("On the scales")),
        ("handover/toe_ahead", same("Between the rims, ahead")),
        ("handover/toe_behind", same("Between the rims, behind")),
        ("handover/toe_least", same("Toe-in by the maker, least")),
        ("handover/toe_most", same("Toe-in by the maker, most")),
        ("handover/camber_left", same("Camber, left")),
        ("handover/camber_right", same("Camber, right")),
        ("handover/castor_left", pair("Castor, left", "Caster, left")),
        (
            "handover/castor_right",
            pair("Castor, right", "Caster, right"),
        ),
        ("handover/brakes/*/name", same("Axle")),
        ("handover/brakes/*/left", same("Left")),
        ("handover/brakes/*/right", same("Right")),
        ("handover/parking", same("Parking brake, all its wheels")),
        ("handover/brake_mass", same("Weight on the brake tester")),
        ("handover/tyres/*/name", same("Where it stands")),
        ("handover/tyres/*/size", same("Size")),
        ("handover/tyres/*/code", same("Date code")),
        ("handover/tyres/*/decade", same("Made in the")),
        ("handover/tyres/*/read_on", same("Read on")),
        ("handover/tyres/*/tread", same("Tread")),
        ("handover/tyres/*/pressure", same("Pressure, cold")),
        ("handover/fluids/*/name", same("Where it went")),
        ("handover/fluids/*/grade", same("What it is")),
        ("handover/fluids/*/amount", same("How much")),
        ("handover/checked_by", same("Looked over by")),
        ("handover/checked_on", same("Looked over on")),
        ("handover/checks/*/state", same("Seen")),
        ("handover/again/*/after", same("After")),
        ("handover/again/*/within", same("At the latest after")),
        ("handover/again/*/done", same("Done on")),
        ("handover/approvals/*/state", same("Stands")),
        ("handover/approvals/*/office", same("Who decides")),
        (
            "handover/approvals/*/reference",
            same("Number of the paper"),
        ),
        ("handover/notes", same("Anything else")),
        ("handover/paper", same("Paper")),
        ("handover/sides", same("Printed on")),
        ("handover/with_money", same("With the costs")),
        ("handover/*/*/name", same("What it is")),
        ("handover/*/*/note", same("Note")),
        ("handover/*/*/by", same("By")),
        ("handover/*/*/on", same("On")),
    ],
    hints: &[
        (
            "handover/handed_on",
            same("The first day on the road. The plan begins here."),
        ),
        (
            "handover/toe_ahead",
            same("At hub height. Roll on half a turn for the measurement behind."),
        ),
        ("handover/toe_least", same("Below nought is toe-out.")),
        ("handover/parking", same("Blank weight: as weighed above.")),
        (
            "handover/tyres/*/code",
            same(
                "The last four figures after DOT: week and year. Three figures are from before 2000.",
            ),
        ),
        (
            "handover/tyres/*/decade",
            same("Three figures do not tell the decade."),
        ),
        (
            "handover/tyres/*/read_on",
            same("Its age is counted to this day. Blank: the day of handing over."),
        ),
        ("handover/checks/*/by", same("Blank: the one named above.")),
        ("handover/checks/*/on", same("Blank: the day above.")),
    ],
    choices: &[
        ("unladen", same("Unladen")),
        ("laden", same("Laden")),
        ("good", same("Good")),
        ("put_right", same("Put right")),
        ("not_there", same("Not fitted")),
        ("not_needed", same("Not needed")),
        ("to_ask", same("To ask")),
        ("asked", same("Asked")),
        ("granted", same("Granted")),
        ("a4", same("A4")),
        ("letter", same("Letter")),
        ("one", same("One side")),
        ("two", same("Both sides")),
        ("1990", same("1990s")),
        ("1980", same("1980s")),
        ("1970", same("1970s")),
    ],
    groups: &[
        ("handover/day", same("The day")),
        ("handover/identity", same("Identity")),
        ("handover/changes", same("Found and done")),
        ("handover/checks", same("Before the road")),
        ("handover/weights", same("Weights and wheels")),
        ("handover/brakes", same("Brake test")),
        ("handover/tyres", pair("Tyres", "Tires")),
        ("handover/fluids", same("Fluids")),
        ("handover/again", same("Look again")),
        ("handover/approvals", same("Approval and inspection")),
        ("handover/more", same("Anything else")),
        ("handover/plan", same("When to look again")),
        ("handover/open", same("Still open")),
        ("handover/results", same("What comes of it")),
        ("handover/print", same("The pack")),
    ],
    lists: &[
        (
            "handover/changes",
            list(same("Found and done"), same("part"), same("Part {0}")),
        ),
        (
            "handover/brakes",
            list(same("Axles"), same("axle"), same("Axle {0}")),
        ),
        (
            "handover/tyres",
            list(
                pair("Tyres", "Tires"),
                pair("tyre", "tire"),
                pair("Tyre {0}", "Tire {0}"),
            ),
        ),
        (
            "handover/fluids",
            list(same("Fluids"), same("fluid"), same("Fluid {0}")),
        ),
        (
            "handover/checks",
            list(
                same("Before the road"),
                same("something to look at"),
                same("Check {0}"),
            ),
        ),
        (
            "handover/again",
            list(
                same("Look again"),
                same("something to look at again"),
                same("Check {0}"),
            ),
        ),
        (
            "handover/approvals",
            list(
                same("Approval and inspection"),
                same("approval"),
                same("Approval {0}"),
            ),
        ),
    ],
    results: &[
        told("handover/checks_left", same("Checks still to do")),
        told("handover/joints_left", same("Joints not ticked")),
        told("handover/weighed", same("Weight as finished")),
        told(
            "handover/weight_change",
            same("Change from before, unladen"),
        ),
        told("handover/front_of_limit", same("Front axle, of its limit")),
        told("handover/rear_of_limit", same("Rear axle, of its limit")),
        told("handover/toe", same("Toe-in")),
        told_of("handover/imbalance/*", BRAKES, same("Brake imbalance: {0}")),
        told(
            "handover/brake_efficiency",
            same("Service brake efficiency"),
        ),
        told(
            "handover/parking_efficiency",
            same("Parking brake efficiency"),
        ),
        told_of("handover/due_at/*", AGAIN, same("Odometer when due: {0}")),
        told_of(
            "handover/joint_due_at/*",
            JOINTS,
            same("Odometer when due: {0}"),
        ),
    ],
    remarks: &[
        ("put_right", same("{row}: to be put right before the road.")),
        (
            "joint_open",
            same("{0}: holds steering, brakes or wheels, and is not ticked on Torque settings."),
        ),
        (
            "axle_over_limit",
            same("The axle carries {0}; its limit is {1}. Not on the road like this."),
        ),
        (
            "toe_outside",
            same("Toe-in is {0}: outside the maker's figures."),
        ),
        (
            "toe_upside_down",
            same("The greatest toe-in is below the least."),
        ),
        (
            "uneven_brakes",
            same(
                "{row}: one side brakes {0} less than the other. Where tests follow European rules, 30 % is the most.",
            ),
        ),
        (
            "weak_brake",
            same(
                "Service brake: {0}. Many tests ask for {1}; what counts is the figure of your country and class.",
            ),
        ),
        (
            "weak_parking_brake",
            same(
                "Parking brake: {0}. Many tests ask for {1}; what counts is the figure of your country and class.",
            ),
        ),
        (
            "tyre_too_old",
            same(
                "{row}: {0} years old or more. Rubber of ten years is not trusted, whatever its tread.",
            ),
        ),
        (
            "tyre_old",
            same("{row}: more than {0} years old. Look for cracks each year from six years on."),
        ),
        (
            "tyre_of_the_future",
            same("{row}: by its date code it was made after the day on which it was read."),
        ),
        (
            "tyre_decade",
            same("{row}: three figures may mean {0}. Choose the decade; in doubt take the oldest."),
        ),
        (
            "tread_worn",
            same("{row}: {0} of tread. Most countries ask for {1} at least."),
        ),
        (
            "no_day",
            same("With the day of handing over the plan gets its dates."),
        ),
        (
            "done_too_early",
            same("{row}: done before the vehicle was handed over."),
        ),
        (
            "record_only",
            same(
                "A record, not a certificate. It tells what was entered, and proves nothing of the vehicle.",
            ),
        ),
        (
            "rules_first",
            same(
                "Steering side, brakes, axle and weights may need approval before the road. Ask the authority where the vehicle is registered; the list here is no legal advice.",
            ),
        ),
        (
            "stop_and_look",
            pair(
                "First drive: short, slow, with tools aboard. Stop after the first few kilometres and look at wheels, steering, brakes and leaks.",
                "First drive: short, slow, with tools aboard. Stop after the first few miles and look at wheels, steering, brakes and leaks.",
            ),
        ),
    ],
    plates: &[],
    words: presets::NAMES,
};

/// The key that opens the pack.
pub const PACK: Phrase = same("The pack to print");
/// The key that goes from the pack back to the sheet.
pub const TO_SHEET: Phrase = same("Back to Handover");
/// What the pack is, above the vehicle's name.
pub const PACK_KIND: Phrase = same("Handover pack");
/// What it is not.
pub const RECORD: Phrase = same("A record, not a certificate.");
/// The heading of the contents.
pub const CONTENTS: Phrase = same("Contents");
/// The section of what was found, done and measured.
pub const FOUND_AND_DONE: Phrase = same("Found, done and measured");
/// The section to sign.
pub const SIGNATURES: Phrase = same("Signatures");
pub const SIGN_SAID: Phrase =
    same("Signed in ink: that this record was handed over with the vehicle, and nothing more.");
pub const SIGN_GIVES: Phrase = same("Handed over by: name, day, signature");
pub const SIGN_TAKES: Phrase = same("Taken over by: name, day, signature");
pub const SIGN_INSPECTS: Phrase =
    same("Inspected by, where rules ask for it: name, day, stamp, signature");
/// The key that saves the plan as a calendar.
pub const CALENDAR: Phrase = same("Calendar file");
/// Nothing is in the calendar without a day.
pub const CALENDAR_NEEDS: Phrase = same("The calendar file needs the day of handing over.");
/// What a plan's row says: the odometer, or the distance while that is not known.
pub const AFTER: Phrase = same("after {0}");
/// Headings of the plan.
pub const WHAT: Phrase = same("What");
pub const SHEET: Phrase = same("Sheet");
pub const DAY: Phrase = same("Day");
pub const ODOMETER: Phrase = same("Odometer");
pub const DONE: Phrase = same("Done");
/// The ages of the tyres.
pub const AGES: Phrase = pair("Age of the tyres", "Age of the tires");
pub const TYRE: Phrase = pair("Tyre", "Tire");
pub const MADE: Phrase = same("Made");
pub const READ_ON: Phrase = same("Read on");
pub const AGE: Phrase = same("Age");
pub const IN_WEEK: Phrase = same("week {0} of {1}");
pub const DECADE_OPEN: Phrase = same("week {0}, decade?");
pub const YEARS: [Phrase; 2] = [same("{0} year"), same("{0} years")];
pub const MONTHS: [Phrase; 2] = [same("{0} month"), same("{0} months")];
/// A check that other sheets call for.
pub const CALLED_FOR: Phrase = same("In question by what the other sheets show.");
/// Open items.
pub const NOTHING_OPEN: Phrase = same("Nothing is open.");
pub const JOINT_OPEN: Phrase = same("{0}: not ticked");
pub const PUT_RIGHT: Phrase = same("{0}: put right");
pub const UNSEEN: Phrase = same("Checks before the road not done: {0}");
pub const SIDES_OPEN: Phrase = same("What changes sides, still to do: {0}");
pub const CANNOT_USE: Phrase = same("{0}: cannot be used as entered");
/// The drawing of the checks: how many are left, how many to put right.
pub const ROUND_TITLE: Phrase = same("Round the vehicle: {0} to look at, {1} to put right");
pub const ROUND_SAID: Phrase = same(
    "The vehicle from above, its front to the left. Heavy ring: good. Two rings: put right. Dashed: not looked at. Thin: not fitted.",
);
pub const NUMBER: Phrase = same("No.");
pub const NOT_SEEN: Phrase = same("not looked at");
/// What the calendar says of an event.
pub const AT_ODOMETER: Phrase =
    same("At {0} on the odometer, or on this day, whichever comes first.");
pub const ON_THIS_DAY: Phrase = same("On this day.");
