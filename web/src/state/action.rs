//! What a user, the browser or the store does.

use super::{CallTo, Drawer, Panel, Saved, Stand};
use crate::route::Route;
use buildbook::{Book, Edit, Entry, Key, Log};
use measure::Mark;
use std::rc::Rc;

/// One thing that is done.
#[derive(Clone, Debug, PartialEq)]
pub enum Action {
    /// A letter more or less in an entry.
    Typed(Key, Rc<str>),
    /// An entry read with another decimal mark.
    ReadWith(Key, Mark),
    /// An entry put in whole; `None` takes it out.
    Put(Key, Option<Entry>),
    /// Several entries at once, undone together.
    Change(Edit),
    /// A new row at the end of a list.
    AddRow(Key),
    /// Rows of texts at the end of a list, the fields in the order given.
    AddRows(Key, Vec<Vec<(&'static str, String)>>),
    /// A row like this one, after it.
    CopyRow(Key, Rc<str>),
    /// A row taken out.
    RemoveRow(Key, Rc<str>),
    /// A row moved up (`true`) or down.
    MoveRow(Key, Rc<str>, bool),
    /// The last edit taken back.
    Undo,
    /// The last edit taken back is made again.
    Redo,
    /// A sheet, with what it reads of others, is kept as before.
    KeepBefore(Rc<str>),
    /// A sheet's before is forgotten.
    ForgetBefore(Rc<str>),
    /// A sheet's entries go back to what was kept.
    BackToBefore(Rc<str>),
    /// Another book is opened, with its edits.
    Open(Rc<Book>, Rc<Log>),
    /// Another page changed the book that this one shows.
    Follow(Rc<Book>, Rc<Log>),
    /// This page may edit, or only show.
    ReadOnly(bool),
    /// What became of saving.
    Saved(Saved),
    /// Something happened to the books of this browser.
    Shelved,
    /// A setting, by its kept name and value.
    Set(&'static str, &'static str),
    /// Another page; where one stood on it, when one comes back to it.
    Go(Route, Option<Stand>),
    /// The cursor went into an entry, or out of all.
    Field(Option<Key>),
    /// The system's keyboard, please.
    SystemKeyboard,
    /// Something else beside the entries.
    Panel(Panel),
    /// A panel beside the rail, or none.
    Drawer(Option<Drawer>),
    /// A result into its sheet's band.
    Answer(Rc<str>),
    /// A row folded up or opened.
    Fold(Key),
    /// A row's keys shown or put away.
    RowKeys(Key),
    /// An entry shown in another unit as well, or no longer.
    AlsoIn(Key, &'static str),
    /// The cursor to a place; the page of an entry is opened first.
    Call(CallTo),
    /// The screen is to be wiped, or has been.
    Wipe(bool),
    /// The page goes to paper (`true`), or has gone.
    Printing(bool),
}

impl Action {
    /// Whether it would change the book.
    pub(super) fn edits(&self) -> bool {
        matches!(
            self,
            Self::Typed(..)
                | Self::ReadWith(..)
                | Self::Put(..)
                | Self::Change(..)
                | Self::AddRow(..)
                | Self::AddRows(..)
                | Self::CopyRow(..)
                | Self::RemoveRow(..)
                | Self::MoveRow(..)
                | Self::Undo
                | Self::Redo
                | Self::KeepBefore(..)
                | Self::ForgetBefore(..)
                | Self::BackToBefore(..)
        )
    }
}
