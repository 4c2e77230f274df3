//! What is open, chosen and asked for on the page; nothing of it is kept.

use buildbook::{BookError, Key};
use std::collections::BTreeMap;
use std::rc::Rc;

/// Whether what was entered is kept in this browser.
#[derive(Clone, Debug, PartialEq, Default)]
pub enum Saved {
    /// Nothing to keep yet.
    #[default]
    Untouched,
    /// Entered, and about to be kept.
    Pending,
    /// Kept, at this time of today or on this earlier day, as the browser writes it.
    At(Rc<str>),
    /// Not kept, and why.
    Fault(BookError),
}

/// What takes the drawing's place beside the entries.
#[derive(Clone, Debug, PartialEq, Default)]
pub enum Panel {
    /// The drawings.
    #[default]
    Drawing,
    /// How a result came about.
    Working(Rc<str>),
    /// A result turned round.
    WorkBack(WorkBack),
}

/// A wanted result and the entry that may change for it.
#[derive(Clone, Debug, PartialEq)]
pub struct WorkBack {
    /// The result.
    pub result: Rc<str>,
    /// The entry; none until one is picked.
    pub entry: Option<Key>,
    /// The wanted figure as typed.
    pub wanted: Rc<str>,
}

/// A panel beside the rail.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Drawer {
    /// All sheets.
    Sheets,
    /// Redo, send, print, settings, wipe.
    More,
}

/// A wish to put the cursor somewhere once the page is drawn. The number tells two wishes for the same place apart.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Call {
    /// Grows with each wish.
    pub number: u32,
    /// Where.
    pub to: CallTo,
}

/// Where one was on a page: how far down, in CSS pixels, and what had the cursor, as a selector.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Stand {
    /// How far down.
    pub down: f64,
    /// What had the cursor.
    pub focus: Option<String>,
}

/// Where the cursor shall go.
#[derive(Clone, Debug, PartialEq, Default)]
pub enum CallTo {
    /// Nowhere.
    #[default]
    Nowhere,
    /// The page's heading.
    Heading,
    /// The field of an entry.
    Entry(Key),
    /// The first field of a row.
    Row(Key),
    /// The panel that was opened.
    Panel,
    /// The drawer that was opened.
    Drawer,
    /// Where one was when the page was left.
    Back(Stand),
}

/// What is open, chosen and asked for on the page.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct View {
    /// The entry the keypad serves.
    pub field: Option<Key>,
    /// Whether its entry was changed since the cursor came.
    pub typing: bool,
    /// The system's keyboard is wanted in place of ours, until the next field.
    pub system_keyboard: bool,
    /// What stands beside the entries.
    pub panel: Panel,
    /// What stood beside the entries of the pages that were left, for who comes back to them.
    pub panels: BTreeMap<&'static str, Panel>,
    /// The panel beside the rail.
    pub drawer: Option<Drawer>,
    /// The result that a sheet's band shows, where one was chosen.
    pub answers: BTreeMap<Rc<str>, Rc<str>>,
    /// Rows that were opened (`true`) or folded up by hand, and what stands behind their keys "More".
    pub rows: BTreeMap<Key, bool>,
    /// Rows whose keys are shown.
    pub row_keys: Option<Key>,
    /// An entry whose value is also shown in another unit.
    pub also_in: Option<(Key, &'static str)>,
    /// Where the cursor shall go.
    pub call: Call,
    /// The page is being printed: rows and remarks stand open.
    pub printing: bool,
    /// The screen is being wiped.
    pub wiping: bool,
    /// What was last done, for those who listen.
    pub said: Rc<str>,
}

/// The key under which the view remembers that the seldom needed entries of a row are shown.
pub fn more_of(row: &Key) -> Key {
    row.under("more")
}
