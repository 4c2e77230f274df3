//! The words of the gearing sheet.

use super::subject::ListWords;
use super::{Phrase, Subject, list, pair, same, told, told_of};
use trade::TradeError;
use trade::gearing::TyreFault;

mod results;

/// The drawing of engine speed over road speed.
pub const SPEEDS_TITLE: Phrase = same("Up through the gears");
/// What is to be seen in it: each gear's reach.
pub const SPEEDS_SAID: Phrase =
    same("Engine speed over road speed, a tooth for each gear, changed at {0}: {1}.");
/// One gear's reach within that sentence: its name, and the road speed at the highest engine speed.
pub const REACHES: Phrase = same("{0} to {1}");
/// The drawing of effort against road load.
pub const PULL_TITLE: Phrase = same("Pull and road load");
/// What is to be seen in it.
pub const PULL_SAID: Phrase = same(
    "Pull at the wheels in each gear over road speed, and what the road takes on the level and on slopes up to {0}. Top speed {1}.",
);
/// An axis: road speed, with its unit.
pub const ROAD_SPEED_AXIS: Phrase = same("Road speed, {0}");
/// An axis: engine speed, with its unit.
pub const ENGINE_SPEED_AXIS: Phrase = same("Engine speed, {0}");
/// An axis: pull, with its unit.
pub const PULL_AXIS: Phrase = same("Pull, {0}");
/// Beside the line of the road load without a slope.
pub const LEVEL: Phrase = same("level");
/// Beside the highest engine speed.
pub const HIGHEST: Phrase = same("highest {0}");
/// Beside the cruise.
pub const CRUISE: Phrase = same("cruise {0}");
/// Beside the crossing of pull and road load.
pub const TOP_MARK: Phrase = same("top speed {0}");
/// A gear by its place.
pub const GEAR: Phrase = same("Gear {0}");
/// A gear with the overdrive in.
pub const WITH_OVERDRIVE: Phrase = same("{0} + overdrive");
/// Heading of a column of gears.
pub const GEARS: Phrase = same("Gear");
/// Heading of the fitted set's column.
pub const FITTED: Phrase = same("Fitted");
/// A row: the teeth of each set.
pub const TEETH: Phrase = same("Teeth");
/// A row: whether the teeth hunt.
pub const TEETH_MEET: Phrase = same("The same teeth meet again");
/// Every tooth meets every other, after so many turns.
pub const HUNTS: Phrase = pair(
    "after {0} turns of the crown wheel: hunts",
    "after {0} turns of the ring gear: hunts",
);
/// Some teeth always meet the same.
pub const DOES_NOT_HUNT: Phrase = pair(
    "after {0} turns of the crown wheel: does not hunt",
    "after {0} turns of the ring gear: does not hunt",
);
/// A row: the price.
pub const PRICE: Phrase = same("Price");
/// A row: whether it goes in.
pub const GOES_IN: Phrase = same("Goes in");
/// Every point was looked at and fits.
pub const ALL_FITS: Phrase = same("all six points fit");
/// Some point does not fit.
pub const DOES_NOT_FIT: Phrase = same("no: {0}");
/// Some points were not looked at.
pub const NOT_LOOKED_AT: Phrase = same("not yet looked at: {0}");
/// The key that puts a candidate's teeth in as the fitted axle.
pub const FIT_THIS: Phrase = same("Fit this set");
/// The key that puts a pair of teeth in as the fitted axle.
pub const PUT_IN: Phrase = same("Put in {0}");
/// Heading of a column of tooth pairs.
pub const PAIR: Phrase = same("Real teeth");
/// The name of a table that runs wider than its room.
pub const WIDE_TABLE: Phrase = same("Table, moves sideways");
/// Said above the pairs.
pub const PAIRS_SAID: Phrase =
    same("The nearest pairs that hunt, nearest first. Ask whether anybody cut them.");

/// Said in place of the table by gear.
pub const GEARS_FIRST: Phrase = same("Each gear stands here once its ratio is entered.");
/// Said in place of the table of sets.
pub const NO_SETS: Phrase =
    same("Sets to be had stand here beside the fitted one once their teeth are entered.");
/// Head of a column: road speed for 1000 rpm.
pub const PER_1000_HEAD: Phrase = same("For 1000\u{a0}rpm");
/// Road speed at the engine speed told of.
pub const SPEED_HEAD: Phrase = same("Road speed");
/// Engine speed at the cruise.
pub const REVS_HEAD: Phrase = same("Engine at the cruise");
/// Engine speed at the wished road speed.
pub const REVS_THERE_HEAD: Phrase = same("Engine there");
/// Top speed.
pub const TOP_HEAD: Phrase = same("Top speed");
/// Steepest hill.
pub const HILL_HEAD: Phrase = same("Steepest hill");
/// What the dial shows.
pub const DIAL_HEAD: Phrase = same("Speedometer shows");
/// Change of engine speed.
pub const CHANGE_HEAD: Phrase = same("Change");
/// A ratio.
pub const RATIO_HEAD: Phrase = same("Ratio");

/// Why a tyre's designation is refused, ending in a right one and a way out.
pub fn tyre_fault(fault: TyreFault) -> Phrase {
    match fault {
        TyreFault::Empty | TyreFault::NoWidth => pair(
            "A tyre begins with its width. A right one: 7.50-16. If it cannot be read, roll it out.",
            "A tire begins with its width. A right one: 7.50-16. If it cannot be read, roll it out.",
        ),
        TyreFault::NoRim => pair(
            "The rim is missing behind the width. A right one: 7.50-16. If it cannot be read, roll it out.",
            "The rim is missing after the width. A right one: 7.50-16. If it cannot be read, roll it out.",
        ),
        TyreFault::Width => pair(
            "No road tyre has this width. A right one: 185/80 R 14",
            "No road tire has this width. A right one: 185/80 R 14",
        ),
        TyreFault::Aspect => pair(
            "No tyre has this aspect ratio; it lies between 25 and 105. A right one: 185/80 R 14",
            "No tire has this aspect ratio; it lies between 25 and 105. A right one: 185/80 R 14",
        ),
        TyreFault::Rim => same("No road wheel has this rim. A right one: 6.40-13"),
        TyreFault::Overall => pair(
            "No tyre on this rim has this diameter. A right one: 31x10.50 R 15",
            "No tire on this rim has this diameter. A right one: 31x10.50 R 15",
        ),
        TyreFault::LetterSize => pair(
            "A letter size gives a load, not a width. Roll the wheel out and enter the distance instead, or a size such as 185/80 R 14",
            "A letter size gives a load, not a width. Roll the wheel out and enter the distance instead, or a size such as 185/80 R 14",
        ),
        _ => pair(
            "That stands on no tyre. Right ones: 7.50-16, 185/80 R 14, 185 R 14 C, 31x10.50 R 15",
            "That stands on no tire. Right ones: 7.50-16, 185/80 R 14, 185 R 14 C, 31x10.50 R 15",
        ),
    }
}

/// Why a calculation of gearing refuses.
pub fn refusal(error: &TradeError) -> Option<Phrase> {
    Some(match error {
        TradeError::Tyre(fault) => tyre_fault(*fault),
        TradeError::Teeth => same("A gear wheel has 1 to 200 teeth. A right pair: 41/8"),
        TradeError::TorquePoints => {
            same("A torque curve needs two points or more: give each an engine speed of its own.")
        }
        TradeError::TorquePeaks => same(
            "Greatest power must come at a higher engine speed than greatest torque, and ask for no more torque than that.",
        ),
        TradeError::NoLimit => {
            same("Nothing within reach limits it: a greater load or a steeper hill would.")
        }
        TradeError::NoPull => same(
            "The engine does not pull the vehicle there: a lower gear, or a lower speed, is right.",
        ),
        TradeError::NoAxle => {
            same("No axle ratio from 1 to 20 does it: wish for less, or for another gear.")
        }
        _ => return None,
    })
}

/// The words of the gearing sheet.
pub static WORDS: Subject = Subject {
    name: same("Gearing"),
    asks: same("Which axle ratio?"),
    tells: same("Road speed in each gear, the hill it will climb, and the ratio to fit."),
    fields: FIELDS,
    hints: HINTS,
    choices: CHOICES,
    groups: GROUPS,
    lists: LISTS,
    results: results::RESULTS,
    remarks: results::REMARKS,
    plates: &[
        (
            "gearing/speeds",
            pair(
                "Enter the tyre, the gears and the axle: read the tyre's side wall, and count the teeth.",
                "Enter the tire, the gears and the axle: read the tire's side wall, and count the teeth.",
            ),
        ),
        (
            "gearing/pull",
            same(
                "Enter weight, width and height on the vehicle's page, and its torque and power: then pull and hills appear.",
            ),
        ),
    ],
    words: &[],
};

const FIELDS: super::subject::Table = &[
    ("gearing/gears/*/ratio", same("Ratio")),
    (
        "gearing/efficiency_direct",
        same("Power that gets through, direct"),
    ),
    (
        "gearing/efficiency_gears",
        same("Power that gets through, in gears"),
    ),
    (
        "gearing/efficiency_worm",
        same("Power that gets through a worm"),
    ),
    ("gearing/overdrive", same("Overdrive ratio")),
    ("gearing/overdrive_with", same("Overdrive works in")),
    (
        "gearing/transfer_high",
        pair("Transfer box, high", "Transfer case, high"),
    ),
    (
        "gearing/transfer_low",
        pair("Transfer box, low", "Transfer case, low"),
    ),
    (
        "gearing/transfer_in",
        pair("Transfer box is in", "Transfer case is in"),
    ),
    ("gearing/axle", same("Axle: teeth, or ratio")),
    ("gearing/axle_kind", same("Axle gears")),
    ("gearing/axle_second", same("Two-speed axle multiplies by")),
    ("gearing/axle_second_in", same("Second axle speed is in")),
    ("gearing/hubs", same("Hub reduction")),
    ("gearing/engine_speed", same("Tell speeds at")),
    ("gearing/road_speed", same("Usual cruise")),
    ("gearing/torque/*/at", same("Engine speed")),
    ("gearing/torque/*/torque", same("Torque")),
    ("gearing/load", same("Loaded or not")),
    ("gearing/ground", same("Ground")),
    ("gearing/rolling", same("Rolling resistance")),
    (
        "gearing/grip",
        pair("Grip of the driven tyres", "Grip of the driven tires"),
    ),
    ("gearing/drag", same("Drag coefficient")),
    ("gearing/altitude", same("Height above the sea")),
    ("gearing/temperature", same("Air temperature")),
    ("gearing/piston_limit", same("Mean piston speed kept to")),
    ("gearing/clutch", same("Clutch holds")),
    ("gearing/start", same("A start on a hill at")),
    ("gearing/target", same("Time from rest to")),
    ("gearing/inertia", same("Inertia of engine and flywheel")),
    (
        "gearing/change_time",
        pair("A change of gear takes", "A shift takes"),
    ),
    ("gearing/dial_axle", same("Dial was right with axle")),
    (
        "gearing/dial_tyre",
        pair("… and with tyre", "… and with tire"),
    ),
    ("gearing/dial_showed", same("It showed")),
    ("gearing/dial_true", same("… at a true")),
    ("gearing/dial_constant", same("Turns on the dial")),
    ("gearing/cable_drive", same("Cable drive, starts/teeth")),
    ("gearing/cable_counted", same("Cable turns counted")),
    ("gearing/shaft_outside", same("Tube, outside diameter")),
    ("gearing/shaft_wall", same("Tube, wall")),
    (
        "gearing/shaft_length",
        pair("Between joint centres", "Between joint centers"),
    ),
    ("gearing/candidates/*/name", same("From")),
    ("gearing/candidates/*/teeth", same("Teeth, or ratio")),
    ("gearing/candidates/*/price", same("Price")),
    ("gearing/candidates/*/splines", same("Pinion splines fit")),
    (
        "gearing/candidates/*/bearings",
        same("Stem and bearings fit"),
    ),
    (
        "gearing/candidates/*/offset",
        same("Hypoid offset is the same"),
    ),
    ("gearing/candidates/*/carrier", same("Goes on this carrier")),
    (
        "gearing/candidates/*/bolts",
        pair("Crown-wheel bolts fit", "Ring-gear bolts fit"),
    ),
    ("gearing/candidates/*/strength", same("Bears the torque")),
    ("gearing/candidates/*/chosen", same("To be bought")),
    ("gearing/wanted_revs", same("I want the engine at")),
    ("gearing/wanted_speed", same("… at a road speed of")),
    ("gearing/wanted_hill", same("I want to climb")),
    ("gearing/wanted_hill_gear", same("… in gear number")),
];

const HINTS: super::subject::Table = &[
    (
        "gearing/axle",
        pair(
            "41/8: crown wheel and pinion. In place: hold one wheel; ratio = 2 × shaft turns ÷ turns of the other wheel.",
            "41/8: ring gear and pinion. In place: hold one wheel; ratio = 2 × shaft turns ÷ turns of the other wheel.",
        ),
    ),
    ("gearing/overdrive", same("Below 1, such as 0.78.")),
    (
        "gearing/drag",
        same("A flatbed about 0.8, a van 0.45, a saloon 0.4."),
    ),
    ("gearing/inertia", same("Blank: the rule for cars.")),
    (
        "gearing/dial_constant",
        same("Printed small on the dial: turns of the cable in a mile or km."),
    ),
    (
        "gearing/cable_drive",
        same("Starts of the worm by teeth of its gear: 3/11."),
    ),
    (
        "gearing/dial_tyre",
        pair("Blank: the tyre it has now.", "Blank: the tire it has now."),
    ),
    ("gearing/wanted_hill_gear", same("Blank: the lowest.")),
    ("gearing/wanted_hill", same("25 %, or 1/4.")),
];

const CHOICES: super::subject::Table = &[
    ("top", same("Top gear")),
    ("top_two", same("Top two")),
    ("all", same("All gears")),
    ("high", same("High")),
    ("low", same("Low")),
    ("bevel", same("Bevel or hypoid")),
    ("worm", same("Worm")),
    ("laden", pair("Laden", "Loaded")),
    ("unladen", pair("Unladen", "Empty")),
    ("dry", same("Dry road")),
    ("wet", same("Wet road")),
    ("track", same("Farm track")),
    ("field", same("Wet field")),
];

const GROUPS: super::subject::Table = &[
    ("gearing/wheels", pair("Driven wheels", "Driven wheels")),
    ("gearing/gears", pair("Gearbox", "Transmission")),
    ("gearing/axle", same("Axle")),
    (
        "gearing/more_gears",
        pair(
            "Overdrive, transfer box, hubs",
            "Overdrive, transfer case, hubs",
        ),
    ),
    ("gearing/speeds", same("Speeds to tell")),
    ("gearing/engine", same("Engine and vehicle")),
    ("gearing/torque", same("Torque curve")),
    ("gearing/road", same("Road and air")),
    ("gearing/start", same("Starting off")),
    ("gearing/dial", same("Speedometer")),
    ("gearing/shaft", pair("Propeller shaft", "Driveshaft")),
    ("gearing/candidates", same("Sets to be had")),
    ("gearing/wish_speed", same("Axle for an engine speed")),
    ("gearing/wish_hill", same("Axle for a hill")),
    ("gearing/by_gear", same("Gear by gear")),
    ("gearing/beside", same("Beside the fitted set")),
    ("gearing/all", same("All answers")),
];

const LISTS: &[(&str, ListWords)] = &[
    (
        "gearing/gears",
        list(same("Gears"), same("gear"), same("Gear {0}")),
    ),
    (
        "gearing/torque",
        list(same("Torque curve"), same("point"), same("Point {0}")),
    ),
    (
        "gearing/candidates",
        list(same("Sets to be had"), same("set"), same("Set {0}")),
    ),
];
