//! The words of templates at true scale, of how the holes are made and of how the old ones are closed.

use super::{Phrase, pair, same};
use trade::marking::Tool;

/// Over the steps.
pub const STEP: Phrase = same("Do");
/// Over the features that a step serves.
pub const AT: Phrase = same("At");
/// Why there is no schedule yet.
pub const SCHEDULE_NEEDS: Phrase =
    same("The order of work stands here once the sheet metal's thickness is entered.");
/// What the order rests on.
pub const SCHEDULE_SAID: Phrase =
    same("Common practice, no source. Punch and pilot all of it while the template lies flat.");

/// Over the features.
pub const HOLE: Phrase = same("Old hole");
/// Over the diameters of discs.
pub const DISC: Phrase = same("Disc or plate");
/// In place of a diameter where the hole is not round.
pub const PLATE: Phrase = same("as the hole, less the gap");
/// Over the metal of patches.
pub const METAL: Phrase = same("Sheet metal");
/// Over the edges to weld.
pub const WELD: Phrase = same("Weld");
/// Over what the new holes' pieces do.
pub const SWAP: Phrase = same("From the new holes");
/// The sums.
pub const ALL: Phrase = same("All of them");
/// Drills leave chips.
pub const NO_PIECE: Phrase = same("nothing fits: cut a new one");
/// A piece fills the hole.
pub const FILLS: Phrase = same("the piece of {0} fills it: {1} all round");
/// A piece fills the hole once it is dressed.
pub const DRESS: Phrase = same("the piece of {0}, its edge dressed: it leaves only {1}");
/// The kerf made it too small.
pub const TOO_SMALL: Phrase = same("its own piece is too small: the kerf leaves {1} all round");
/// What a slug has in it.
pub const SLUG_SAID: Phrase = same(
    "A piece is smaller than its hole by a kerf all round, and a hole saw's has its pilot hole in it, to be closed as well.",
);

/// Before there is anything to draw.
pub const NOTHING: Phrase = same("A template is drawn once a feature has its size and its place.");
/// In the heading of the templates, once they can be drawn.
pub const READY: Phrase = same("SVG, PDF, DXF");
/// In the heading of the templates, before.
pub const NOTHING_YET: Phrase = same("not yet");
/// What the picture shows.
pub const PICTURE: Phrase = same("The whole template, small");
/// The key of the drawing.
pub const SVG: Phrase = same("One drawing, SVG");
/// The key of the A4 pages, with how many.
pub const PDF_A4: Phrase = same("A4 pages, PDF: {0}");
/// The key of the Letter pages, with how many.
pub const PDF_LETTER: Phrase = same("Letter pages, PDF: {0}");
/// Where it would take too many pages.
pub const TOO_MANY: Phrase =
    same("It would take more than 60 pages: print the drawing on a plotter.");
/// The key of the cutter's file.
pub const DXF: Phrase = same("For a cutter, DXF");
/// A hole that the kerf leaves nothing of.
pub const KERF_LEAVES_NOTHING: Phrase =
    same("The kerf leaves nothing to cut of {0}: it is only marked.");
/// What to do with a print.
pub const CHECK_PRINT: Phrase = same(
    "Print at 100 %, measure the bars both ways, and enter what they measure: the next print is made true by it.",
);

/// The title of a template.
pub const TITLE: Phrase = pair("Marking out: {0}", "Layout: {0}");
/// Seen from where.
pub const SEEN_FROM: Phrase = same("Seen from: {0}.");
/// Turned over.
pub const SEEN_BEHIND: Phrase = same("Turned over: seen from behind the sheet metal.");
/// Which side it goes on.
pub const GOES_LEFT: Phrase = same("Goes on the LEFT-HAND side of the vehicle.");
/// The other side.
pub const GOES_RIGHT: Phrase = same("Goes on the RIGHT-HAND side of the vehicle.");
/// A side that nobody has said yet, to be written in by hand.
pub const GOES_WHERE: Phrase = same("Goes on the ____________ side of the vehicle.");
/// What the correction was made from.
pub const CORRECTED: Phrase =
    same("Corrected for a printer whose 100 mm came out as {0} along and {1} up.");
/// What a template is for: spraying.
pub const FOR_SPRAYING: Phrase = pair(
    "Mask: cut away what is grey, spray through.",
    "Mask: cut away what is gray, spray through.",
);
/// What a template is for: punching.
pub const FOR_PUNCHING: Phrase = same("Punch through the small circles.");
/// Beside the arrow.
pub const UP: Phrase = same("UP");
/// Beside the arrow where the pattern is seen from above.
pub const AHEAD: Phrase = same("AHEAD");
/// Beside the bar of 100 mm.
pub const BAR_MM: Phrase = same("100 mm");
/// Beside the bar of 4 in.
pub const BAR_IN: Phrase = same("4 in");
/// How to print.
pub const SCALE: Phrase = same(
    "True scale: print at 100 %, not fitted to the page. Measure both bars, along and up, before anything is marked.",
);
/// Before a page's name.
pub const PAGE: Phrase = same("Page");
/// On the centre line.
pub const CENTRE_LINE: Phrase = pair("centre line of the vehicle", "center line of the vehicle");
/// In what a mask is cut away.
pub const CUT_AWAY: Phrase = same("cut away");
/// On the cutter's file.
pub const MILLIMETRES: Phrase = pair(
    "All of this file is in millimetres. The square is 100 mm by 100 mm: measure it before anything is cut.",
    "All of this file is in millimeters. The square is 100 mm by 100 mm: measure it before anything is cut.",
);
/// A slot's size.
pub const SLOT: Phrase = same("slot {0} × {1}");
/// A stud's size.
pub const STUD: Phrase = same("stud {0}");
/// An oval by its two axes.
pub const OVAL: Phrase = same("oval {0} × {1}");
/// A free outline.
pub const OUTLINE: Phrase = same("outline {0} × {1}");
/// On the line from A to B of the new side.
pub const DATUM_LINE: Phrase = same("A′ to B′: {0}. Measure it once the pages are joined.");

/// What a step of the work is.
pub fn step(tool: Tool) -> Phrase {
    match tool {
        Tool::Scriber => same("Scribe"),
        Tool::CentrePunch => pair("Centre-punch", "Center-punch"),
        Tool::Pilot => same("Pilot drill {0}"),
        Tool::Drill => same("Twist drill {0}"),
        Tool::StepDrill => same("Step drill, up to {0}"),
        Tool::HoleSaw => same("Hole saw {0}"),
        Tool::Cutter => same("Cut up to the line"),
        Tool::File => same("File to the line"),
        Tool::Finish => same("Take the burrs off, paint bare edges"),
    }
}
