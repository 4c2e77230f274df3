//! The words of the build books, of sending and of what is received.

use super::{Phrase, Tongue, pair, same};
use buildbook::BookError;

// The list of books.
pub const SAID: Phrase = pair(
    "Every book stands in this browser alone. Browsers and people clear it: take a file copy now and then.",
    "Every book stands in this browser alone. Browsers and people clear it: make a file copy now and then.",
);
pub const NEW_NAME: Phrase = same("Name of the new book");
pub const BEGIN: Phrase = same("Begin");
pub const OPEN: Phrase = same("Open");
pub const OPEN_NOW: Phrase = same("open now");
pub const COPY: Phrase = same("Copy");
pub const COPY_OF: Phrase = same("{0}, copy");
pub const RENAME: Phrase = same("Rename");
pub const NAME: Phrase = same("Name");
pub const DELETE: Phrase = same("Delete");
pub const DELETED: Phrase = same("Deleted");
pub const DELETED_SAID: Phrase = same("Kept until room is needed for other books.");
pub const BRING_BACK: Phrase = same("Bring back");
pub const FILE_COPY: Phrase = same("File copy");
pub const IMPORT: Phrase = same("Open a file");
pub const IMPORT_SAID: Phrase = same("A file is opened as a book of its own. It replaces nothing.");
pub const SAVED: Phrase = same("Saved {0}");
pub const COPIED: Phrase = same("File copy {0}");
pub const NEVER_COPIED: Phrase = same("No file copy yet");
pub const ROOM: Phrase = same("{0} of about {1} used");
pub const ROOM_LEFT: Phrase = same("Room left");
pub const NO_NAME: Phrase = same("Book without a name");
pub const ASIDE: Phrase = same("Set aside");
pub const ASIDE_DAMAGED: Phrase = same(
    "A book, or an older state of one, that is damaged. It is left as it is: take it as a file before anything else.",
);
pub const ASIDE_NEWER: Phrase = same(
    "A newer version of the reckoner wrote this book. It is left as it is, and opens as soon as this page is up to date.",
);
pub const TAKE_FILE: Phrase = same("Take it as a file");
pub const REMOVE_FOR_GOOD: Phrase = same("Remove for good");

// Two tabs.
pub const READ_ONLY: Phrase =
    same("This book is being edited in another tab. Here it is shown as it grows.");
pub const EDIT_HERE: Phrase = same("Edit here");

// Sending.
pub const SEND_WHAT: Phrase = same("What to send");
pub const WHOLE_BOOK: Phrase = same("Whole book");
pub const SEND_SAID: Phrase = same(
    "The link holds the entries themselves. No server keeps them; whoever has the link can read them.",
);
pub const LINK: Phrase = same("Link");
pub const COPY_LINK: Phrase = same("Copy the link");
pub const SHARE: Phrase = same("Share");
pub const NOT_SHARED: Phrase = same("The browser does not share here. Copy the link instead.");
pub const COPIED_LINK: Phrase = same("The link is on the clipboard.");
pub const NOT_COPIED: Phrase =
    same("The browser does not let the page copy. Select the link and copy it.");
pub const LENGTH: Phrase = same("{0} characters");
pub const LONG: Phrase =
    same("Longer than {0} characters: some chat programs cut such a link. Send the file instead.");
pub const QR: Phrase = same("QR code of the link");
pub const QR_SAID: Phrase = same("Point the other tablet's camera at it.");
pub const NO_QR: Phrase = same("Too long for a QR code.");

// A received link.
pub const RECEIVED_SHEET: Phrase = same("{0}, one sheet: {1}");
pub const RECEIVED_BOOK: Phrase = same("{0}, whole book");
pub const ONLY_SHOWN: Phrase = same("Only shown. Your own books stay as they are.");
pub const KEEP_COPY: Phrase = same("Keep a copy");
pub const KEEP_SAID: Phrase = same("Becomes a book of yours, beside the others.");
pub const FIGURES: Phrase = same("What it comes to");
pub const IN_BOOKS_UNITS: Phrase = same("Units of the book: {0}.");
pub const IN_OWN_UNITS: Phrase = same("Your usual units: {0}.");
pub const SHOW_IN_BOOKS: Phrase = same("Show in the book's units");
pub const SHOW_IN_OWN: Phrase = same("Show in your units");
pub const AS_SENT: Phrase =
    same("The sender saw {0}: the two reckoners are not of the same version.");
pub const ALL_ENTRIES: Phrase = same("All entries");
pub const DIFFERENCE: Phrase = same("Against your book");
pub const SAME: Phrase = same("Your book holds the same entries.");
pub const MINE: Phrase = same("Yours");
pub const THEIRS: Phrase = same("Received");
pub const ENTRY: Phrase = same("Entry");
pub const TAKE: Phrase = same("Take");
pub const TAKE_ALL: Phrase = same("Take all {0}");
pub const NOTHING: Phrase = same("no entry");
pub const SAME_VALUE: Phrase = same("same value, written otherwise");
pub const OPEN_MINE: Phrase = same("Open your book to compare");
pub const BEFORE_OF: Phrase = same("Kept as before");
pub const UNKNOWN: Phrase = same("Of a newer version");
pub const PLACE: Phrase = same("Place in the list");
pub const OWN_BOOKS: Phrase = same("To your own books");

/// Why a link, a file or a book could not be opened.
pub fn not_opened(error: &BookError, tongue: Tongue) -> &'static str {
    tongue.say(match error {
        BookError::Newer => same("A newer version of the reckoner made this. Bring this page up to date, then open it again."),
        BookError::TooLarge => same("This is larger than anything the reckoner makes, so it was not opened."),
        BookError::Damaged(_) | BookError::Key(_) => {
            same("This was cut or changed on its way, so it was not opened. Ask for it again, or for the file.")
        }
        BookError::Missing => same("This book is not in this browser."),
        BookError::NotOurs => same("This is not from the reckoner, so it was not opened."),
        other => return not_kept(other, tongue),
    })
}

/// Why what was entered is not kept.
pub fn not_kept(error: &BookError, tongue: Tongue) -> &'static str {
    tongue.say(match error {
        BookError::Full => same(
            "This browser's store is full: what you enter lasts until the page closes. Take a file copy, then delete a book.",
        ),
        BookError::Off => same(
            "This browser keeps nothing here: what you enter lasts until the page closes. Take a file copy from Build books.",
        ),
        BookError::Stale { .. } => same(
            "Another tab saved this book meanwhile. Both are kept: what you entered here is a book of its own now.",
        ),
        BookError::Newer => same(
            "A newer version of the reckoner wrote this book. It is left as it is; what you enter here lasts until the page closes.",
        ),
        BookError::Damaged(_) => same(
            "The book that was open is damaged and set aside; see Build books. Another one is open.",
        ),
        _ => same("What you enter lasts until the page closes. Take a file copy from Build books."),
    })
}
