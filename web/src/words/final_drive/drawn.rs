//! What stands in the drawings of the final drive.

use super::super::{Phrase, pair, same};

/// The title of the drawing of the tooth marks.
pub const MARKS_TITLE: Phrase = same("Tooth marks");
/// What is to be seen in it while no trial was made.
pub const TOOTH_SAID: Phrase = pair(
    "A tooth of the crown wheel seen from either side: the toe at the small end, the heel at the large one, the face at the tip, the flank at the root.",
    "A tooth of the ring gear seen from either side: the toe at the small end, the heel at the large one, the face at the tip, the flank at the root.",
);
/// What is to be seen in it.
pub const MARKS_SAID: Phrase = pair(
    "A tooth of the crown wheel, drive flank and coast flank, with the marks of the last trial: {0}. {1}",
    "A tooth of the ring gear, drive flank and coast flank, with the marks of the last trial: {0}. {1}",
);
/// The title of the guide.
pub const GUIDE_TITLE: Phrase = same("Reading the tooth marks");
/// What is to be seen in it.
pub const GUIDE_SAID: Phrase = pair(
    "Eight small pictures of a crown wheel's tooth, drive flank beside coast flank, each with marks in another place and what to move first.",
    "Eight small pictures of a ring gear's tooth, drive flank beside coast flank, each with marks in another place and what to move first.",
);
/// The heading of what to do.
pub const FIRST: Phrase = same("Move first");
/// The drive flank.
pub const DRIVE: Phrase = same("Drive flank");
/// The coast flank.
pub const COAST: Phrase = same("Coast flank");
/// The drive flank of curved teeth.
pub const DRIVE_CURVED: Phrase = same("Drive flank, the bulging one");
/// The coast flank of curved teeth.
pub const COAST_CURVED: Phrase = same("Coast flank, the hollow one");
/// The small end.
pub const TOE: Phrase = same("toe");
/// The large end.
pub const HEEL: Phrase = same("heel");
/// The small end, and where it is.
pub const TOE_INSIDE: Phrase = same("toe (inside)");
/// The large end, and where it is.
pub const HEEL_OUTSIDE: Phrase = same("heel (outside)");
/// The tip.
pub const FACE: Phrase = same("face");
/// The root.
pub const FLANK: Phrase = same("flank");
/// The heading of where.
pub const WHERE: Phrase = same("Marks");
/// Drive and coast, as headings of two small pictures.
pub const DRIVE_SHORT: Phrase = same("drive");
/// See [`DRIVE_SHORT`].
pub const COAST_SHORT: Phrase = same("coast");
/// A thicker shim.
pub const THICKER: Phrase = same("shim {0} thicker");
/// A thinner shim.
pub const THINNER: Phrase = same("shim {0} thinner");
/// A move by so much.
pub const BY: Phrase = same("by {0}");
/// Follows from the trend of the trials.
pub const BY_TREND: Phrase = same("{0}, by the trend");

/// The title of the drawing of the packs.
pub const PACK_TITLE: Phrase = same("Pack for the pinion");
/// What is to be seen in it.
pub const PACK_SAID: Phrase =
    same("The shims of the pack lying on one another: {0}; together {1}, wanted {2}.");
/// What goes over at the side bearings.
pub const SIDE_TITLE: Phrase = pair(
    "From the crown wheel's side to the other",
    "From the ring gear's side to the other",
);
/// The same, the other way round.
pub const SIDE_BACK_TITLE: Phrase = pair(
    "From the other side to the crown wheel's",
    "From the other side to the ring gear's",
);
/// Together.
pub const TOGETHER: Phrase = same("together {0}");
/// Wanted.
pub const WANTED: Phrase = same("wanted {0}");
/// The heading of shims.
pub const SHIM: Phrase = same("Shim");
/// The heading of how many.
pub const HOW_MANY: Phrase = same("How many");

/// What the guide shows: the marks' name, where they lie.
pub const PATTERNS: [Phrase; 7] = [
    same("Middle, or a little to the toe"),
    same("High on both: face"),
    same("Low on both: flank"),
    same("Heel on both"),
    same("Toe on both"),
    same("Drive heel, coast toe"),
    same("Drive toe, coast heel"),
];

/// What the marks ask for, in a few words.
pub fn advice(advice: trade::final_drive::Advice) -> Phrase {
    use trade::final_drive::Advice;
    match advice {
        Advice::Good => same("Good: change nothing"),
        Advice::PinionIn => pair("Pinion to the crown wheel", "Pinion to the ring gear"),
        Advice::PinionOut => pair("Pinion from the crown wheel", "Pinion from the ring gear"),
        Advice::CrownIn => pair("Crown wheel to the pinion", "Ring gear to the pinion"),
        Advice::CrownOut => pair("Crown wheel from the pinion", "Ring gear from the pinion"),
    }
}

/// The same in a sixth of the room.
pub fn advice_short(advice: trade::final_drive::Advice) -> Phrase {
    use trade::final_drive::Advice;
    match advice {
        Advice::Good => same("good"),
        Advice::PinionIn => same("pinion in"),
        Advice::PinionOut => same("pinion out"),
        Advice::CrownIn => pair("crown wheel in", "ring gear in"),
        Advice::CrownOut => pair("crown wheel out", "ring gear out"),
    }
}
