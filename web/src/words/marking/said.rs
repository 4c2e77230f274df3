//! What the page and the drawing of a pattern say.

use crate::words::{Phrase, pair, same};

/// The title of the drawing of the pattern.
pub const PATTERN_TITLE: Phrase = same("The pattern and where it goes");
/// What is to be seen in it.
pub const PATTERN_SAID: Phrase =
    same("{0} features on the side they were taken from, dashed, and where they go, filled.");
/// The vehicle's centre line, measured.
pub const CENTRE: Phrase = pair("Centre line", "Center line");
/// The vehicle's centre line, only drawn.
pub const CENTRE_GUESSED: Phrase = pair("Centre line, not measured", "Center line, not measured");
/// The heading of the features.
pub const FEATURE: Phrase = same("Feature");
/// The heading of the arc from A on the new side.
pub const FROM_A: Phrase = same("From A′");
/// The heading of the arc from B on the new side.
pub const FROM_B: Phrase = same("From B′");
/// The heading of the ±.
pub const WITHIN: Phrase = same("Within");

/// How the bands of ± are drawn.
pub const BANDS: Phrase = same("± {0} times as large");
/// The heading of where it was, along the line.
pub const WAS_ALONG: Phrase = same("Along A–B");
/// The heading of where it was, above the line.
pub const WAS_ABOVE: Phrase = same("Above A–B");
/// The heading of the offset along the new line.
pub const ALONG: Phrase = same("Along A′–B′");
/// The heading of the offset from the new line.
pub const ABOVE: Phrase = same("Above A′–B′");
/// The heading of what differs between image and fit.
pub const DIFFERS: Phrase = same("Image to fit");
/// The heading of the land.
pub const LAND: Phrase = same("Least land");
/// The heading of how far it may be off.
pub const WORST: Phrase = same("At worst off by");
/// The heading of what the readings say of each other.
pub const SAYS: Phrase = same("The readings");
/// All agree.
pub const AGREE: Phrase = same("agree");
/// Nothing checks them.
pub const UNCHECKED: Phrase = same("nothing checks them");
/// One of three is bad.
pub const ONE_IS_BAD: Phrase = same("one is bad");
/// More than one is bad.
pub const SEVERAL: Phrase = same("do not agree");
/// One was named.
pub const NAMED: Phrase = same("{0} is out");
/// How the set-out table is to be used.
pub const STRIKE_SAID: Phrase = same(
    "Strike both arcs, and check with the offsets from the line. Where image and fit differ by more than their ±, the body is not symmetrical: decide which one the parts follow.",
);
/// What the residuals are.
pub const RESIDUALS_SAID: Phrase =
    same("What each reading is longer (+) or shorter than the place found from all of them.");
/// A datum and how far it is to the next, in the heading of what is folded.
pub const DATUMS_ARE: Phrase = same("{0}, A to B {1}");
/// How many features, and how many have their place.
pub const FEATURES_ARE: Phrase = same("{0} in all, {1} placed");
/// How far the new side's datums are apart.
pub const NEW_DATUMS: Phrase = same("A′ to B′ {0}");
/// How many things are there, and how many edges.
pub const THERE_ARE: Phrase = same("Things: {0}, edges: {1}");
/// How thick the sheet metal is.
pub const METAL_IS: Phrase = same("{0} thick");
/// How many readings agree.
pub const AGREE_ARE: Phrase = same("{0} of {1} agree");
/// How many steps.
pub const STEPS_ARE: Phrase = same("{0} in all");
/// How many old holes, and how much sheet metal they take.
pub const OLD_ARE: Phrase = same("{0} in all, {1}");
/// The heading of readings besides those from the datums.
pub const MORE_READINGS: Phrase = same("More");
/// Beside an edge that was not named.
pub const EDGE: Phrase = same("edge");
/// Brings the question of a hired template to costs.
pub const ASK_SEND: Phrase = same("Ask Costs: send out or do here?");
/// Brings the question of an own template to costs.
pub const ASK_HIRE: Phrase = pair(
    "Ask Costs: hire or buy a template?",
    "Ask Costs: rent or buy a template?",
);
/// What the costs line is called.
pub const TEMPLATE: Phrase = same("Drilling template");
/// What the work is called there.
pub const SETTING_OUT: Phrase = pair(
    "Marking out, with a hired template",
    "Layout, with a rented template",
);
