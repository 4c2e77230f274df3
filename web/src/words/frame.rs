//! The words of the frame: rail, panels, settings, and what every widget says.

use super::{Phrase, pair, same};

/// The name of the whole.
pub const RECKONER: Phrase = same("Rebuild Reckoner");

// The rail.
pub const QUESTIONS: Phrase = same("Questions");
pub const SHEETS: Phrase = same("Sheets");
pub const UNDO: Phrase = same("Undo");
pub const REDO: Phrase = same("Redo");
pub const MORE: Phrase = same("More");
/// Hides again what "More" has shown.
pub const LESS: Phrase = same("Less");
pub const SEND: Phrase = same("Send");
pub const PRINT: Phrase = same("Print");
pub const SETTINGS: Phrase = same("Settings");
pub const WIPE: Phrase = same("Wipe screen");
pub const BOOKS: Phrase = same("Build books");
pub const RECEIVED: Phrase = same("Received");
pub const CLOSE: Phrase = same("Close");
pub const KEYPAD: Phrase = same("Keypad");
pub const WIPE_SAID: Phrase = same("Wipe the screen now. Touch does nothing until the count ends.");
pub const RAIL: Phrase = same("Main keys");
pub const ALL_SHEETS: Phrase = same("Sheets of this book");

// The front page.
pub const WHAT_TO_KNOW: Phrase = same("What do you need to know?");
pub const ROUGH_BOOK: Phrase = pair("Rough book", "Scratch pad");
pub const ROUGH_SAID: Phrase = pair(
    "The rough book is always there. Name it to keep it as a build book.",
    "The scratch pad is always there. Name it to keep it as a build book.",
);
pub const BOOK_SAID: Phrase = pair(
    "A build book of yours. The rough book and all others are under Build books.",
    "A build book of yours. The scratch pad and all others are under Build books.",
);
pub const NAME_IT: Phrase = same("Name it");
pub const EXAMPLE: Phrase = same("Look at the example");
pub const EXAMPLE_SAID: Phrase = pair(
    "An invented 1967 hop lorry, right-hand drive, going to left-hand drive for a vineyard.",
    "An invented 1967 hop truck, right-hand drive, going to left-hand drive for a vineyard.",
);

// How a sheet stands.
pub const EMPTY: Phrase = same("empty");
pub const NEEDS: Phrase = same("needs {0}");
pub const READY: Phrase = same("ready");
pub const WARNING: Phrase = same("look here");

// Saving.
pub const SAVED_AT: Phrase = same("Saved {0}");
pub const NOT_SAVED: Phrase = same("Not saved yet");
pub const OFFLINE_READY: Phrase = same("Ready to work without a network.");
pub const NEW_VERSION: Phrase = same("A new version is here. Your books stay as they are.");
pub const TAKE_NEW_VERSION: Phrase = same("Take it now");
pub const NOT_NOW: Phrase = same("Not now");

// The answer band.
pub const WORKING: Phrase = same("Working");
pub const WORK_BACK: Phrase = same("Work back");
pub const CHECK_FIRST: Phrase = same("Check first");
pub const CHECK_FIRST_SHARE: Phrase = same("{0} of the ±");
pub const STILL_NEEDED: Phrase = same("Still needed");
pub const ONE_ENTRY: Phrase = same("1 entry");
pub const ENTRIES: Phrase = same("{0} entries");
pub const ANSWER_IN: Phrase = same("Answer after {0}");
pub const LOOK_AT_ENTRY: Phrase = same("Look at {0}: it cannot be used as it stands.");
pub const NO_ANSWER: Phrase = same("There is no answer with these entries.");
pub const OTHER_ANSWERS: Phrase = same("Other answers of this sheet");
pub const ALL_ANSWERS: Phrase = same("All {0} answers");
pub const FEWER_ANSWERS: Phrase = same("Fewer answers");
pub const READ_OUT: Phrase = same("{0}: {1}");
pub const EXACT: Phrase = same("exact");
pub const PLUS_MINUS: Phrase = same("plus or minus");

// The working.
pub const SOURCE: Phrase = same("Source");
pub const HELD_SEEN: Phrase = same("read in the source");
pub const HELD_COMPUTED: Phrase = same("follows from definitions and mechanics");
pub const HELD_MEMORY: Phrase = same("from memory, not checked in the source");
pub const HELD_PRACTICE: Phrase = same("common practice, no source");
pub const SHARES: Phrase = same("What the ± comes from");
pub const SHARES_SAID: Phrase = same("Measure the top one better first.");
pub const ASSUMED: Phrase = same("assumed");
pub const ALL_EXACT: Phrase = same("Every entry is exact, so is the answer.");
pub const GOVERNED_BY: Phrase = same("Governed by {0}.");
/// A leaf of a spring, where it governs.
pub const LEAF: Phrase = same("leaf {0}");
pub const CONTESTED: Phrase = same("Another limit lies within the ± of this one.");

// Work back.
pub const I_WANT: Phrase = same("I want");
pub const BY_CHANGING: Phrase = same("by changing");
pub const THEN_ENTRY_IS: Phrase = same("Then {0} is");
pub const NOW_IT_IS: Phrase = same("Now {0}");
pub const USE_THIS: Phrase = same("Use this");
pub const LEAVE_IT: Phrase = same("Leave it");
pub const SEVERAL_ANSWERS: Phrase = same("More than one value gives it.");
pub const CANNOT_REACH: Phrase =
    same("It cannot be reached by this entry alone. The nearest is {0}.");
pub const PICK_ENTRY: Phrase = same("Which entry may change?");

// Before and now.
pub const BEFORE_AND_NOW: Phrase = same("Before and now");
pub const KEEP_AS_BEFORE: Phrase = same("Keep as before");
pub const KEEP_AS_BEFORE_SAID: Phrase =
    same("Keep today's figures as before, then change what you like.");
pub const FORGET_BEFORE: Phrase = same("Forget before");
pub const BACK_TO_BEFORE: Phrase = same("Back to before");
pub const QUANTITY: Phrase = same("Quantity");
pub const BEFORE: Phrase = same("Before");
pub const NOW: Phrase = same("Now");
pub const CHANGE: Phrase = same("Change");
pub const NO_CLEAR_DIFFERENCE: Phrase = same("no clear difference");
pub const SAME_AS_BEFORE: Phrase = same("same");
pub const MORE_THAN: Phrase = same("more");
pub const LESS_THAN: Phrase = same("less");

// Entries.
pub const UNDERSTOOD: Phrase = same("Read as {0}.");
pub const MEANT: Phrase = same("I meant {0}");
pub const UNIT_MEANT: Phrase = same("I meant {0}");
pub const SHOWN_IN: Phrase = same("Show in {0}");
pub const IS_ALSO: Phrase = same("= {0}");
pub const YES: Phrase = same("Yes");
pub const NO: Phrase = same("No");
pub const FOR_EXAMPLE: Phrase = same("A right one: {0}");

// Lists.
pub const ADD_ONE: Phrase = same("Add {0}");
pub const SAME_AGAIN: Phrase = same("Same again");
pub const REMOVE: Phrase = same("Remove");
pub const MOVE_UP: Phrase = same("Up");
pub const MOVE_DOWN: Phrase = same("Down");
pub const ROW_KEYS: Phrase = same("Keys of this row");
pub const PASTE_COLUMN: Phrase = same("Paste a column");
pub const PASTE_SAID: Phrase =
    same("Paste the figures here, one a line. Columns are parted by tabs or semicolons.");
pub const PASTE_LEFT: Phrase =
    same("The first {0} lines are added. {1} more are left out: paste those afterwards.");
pub const PASTE_TAKE: Phrase = same("Add {0} rows");
pub const PASTE_TAKE_ONE: Phrase = same("Add 1 row");
pub const PASTE_BAD: Phrase = same("cannot be read");

// Remarks.
pub const DANGER_WORD: Phrase = same("Danger");
pub const WARNING_WORD: Phrase = same("Warning");
pub const CAUTION_WORD: Phrase = same("Caution");
pub const REMARK_WORD: Phrase = same("Remark");
pub const REMARKS: Phrase = same("To know");
pub const MORE_REMARKS: Phrase = same("{0} more to know");
pub const FEWER_REMARKS: Phrase = same("Put these away");
pub const GO_TO_ENTRY: Phrase = same("Go to the entry");

// Drawings.
pub const SHOW_AS_TABLE: Phrase = same("Show as table");
pub const SHOW_AS_DRAWING: Phrase = same("Show as drawing");
pub const NEARER: Phrase = same("Nearer");
pub const FURTHER: Phrase = same("Further");
pub const WHOLE: Phrase = same("Whole");
pub const NEXT_DRAWING: Phrase = same("Drawing {0} of {1}: next");
pub const DRAWING_EMPTY: Phrase =
    same("The drawing appears as soon as there is something to draw.");

// The keypad.
pub const PAD_NEXT: Phrase = same("Next");
pub const PAD_ERASE: Phrase = same("Back");
pub const PAD_CLEAR: Phrase = same("Clear");
pub const PAD_SPACE: Phrase = same("space");
pub const PAD_ABC: Phrase = same("ABC");
pub const PAD_CLOSE: Phrase = same("Done");
pub const PAD_TAPE: Phrase = same("tape");
pub const PAD_RULE: Phrase = same("rule");
pub const PAD_CALIPER: Phrase = pair("caliper", "caliper");
pub const PAD_EXACT: Phrase = same("exact");
pub const PAD_TYPE: Phrase = same("type ±");
pub const PAD_FEET: Phrase = same("feet");
pub const PAD_INCHES: Phrase = same("inches");
pub const PAD_STROKE: Phrase = same("over");

// Settings.
pub const UNITS: Phrase = same("Units");
pub const UNITS_METRIC: Phrase = same("Metric");
pub const UNITS_IMPERIAL: Phrase = same("Imperial");
pub const UNITS_US: Phrase = same("US");
/// The families of units by the names they are kept under.
pub const FAMILIES: &[(&str, Phrase)] = &[
    ("metric", UNITS_METRIC),
    ("imperial", UNITS_IMPERIAL),
    ("us", UNITS_US),
];
pub const UNITS_SAID: Phrase =
    same("For what is shown, and for a bare number. What you typed stays as you typed it.");
pub const BOOK_UNITS: Phrase = same("Units of this book");
pub const BOOK_UNITS_SAID: Phrase = same(
    "For what is shown, and for a bare number. What you typed stays as you typed it. They go with the book when it is sent.",
);
pub const NEW_UNITS: Phrase = same("Units of new books");
pub const NEW_UNITS_SAID: Phrase = pair(
    "And of the rough book, and of any book that names none.",
    "And of the scratch pad, and of any book that names none.",
);
pub const DECIMAL_MARK: Phrase = same("Decimal mark");
pub const MARK_POINT: Phrase = same("Point 12.5");
pub const MARK_COMMA: Phrase = same("Comma 12,5");
pub const CURRENCY: Phrase = same("Currency");
pub const LANGUAGE: Phrase = same("Language");
pub const BRITISH: Phrase = same("British English");
pub const AMERICAN: Phrase = same("American English");
pub const LOOK: Phrase = same("Look");
pub const LOOK_AUTO: Phrase = same("As the tablet");
pub const LOOK_LIGHT: Phrase = same("Light");
pub const LOOK_DARK: Phrase = same("Dark");
pub const LOOK_SUN: Phrase = same("Sun");
pub const LOOK_SUN_SAID: Phrase =
    same("Sun is black on white with heavier lines, for work outdoors.");
pub const THUMB: Phrase = same("Keys down the edge");
pub const THUMB_RIGHT: Phrase = same("Right");
pub const THUMB_LEFT: Phrase = same("Left");
pub const KEYPAD_USE: Phrase = same("Own keypad");
pub const KEYPAD_AUTO: Phrase = same("On touch screens");
pub const KEYPAD_ALWAYS: Phrase = same("Always");
pub const KEYPAD_NEVER: Phrase = same("Never");
pub const FRACTIONS: Phrase = same("Inches as");
pub const FRACTIONS_YES: Phrase = same("Fractions 4 5/16");
pub const FRACTIONS_NO: Phrase = same("Decimals 4.3125");
pub const SETTINGS_SAID: Phrase = same("Kept in this browser. They do not change any book.");
pub const OTHER_SETTINGS_SAID: Phrase =
    same("All but the units of this book are kept in this browser, and change no book.");
