//! What the pages know: the book, what it comes to, and where the user is. State, action and reducer; no DOM.

mod action;
mod view;

pub use action::Action;
pub use view::{Call, CallTo, Drawer, Panel, Saved, Stand, View, WorkBack, more_of};

use crate::route::Route;
use crate::settings::Settings;
use buildbook::{
    Befores, Book, BookError, Change, Edit, Entry, Findings, Key, Log, Place, RANK, evaluate,
    field_of, typed,
};
use measure::Mark;
use std::collections::BTreeSet;
use std::rc::Rc;

/// Everything the pages show comes from here. Cheap to clone: all that is large is shared.
#[derive(Clone, Debug)]
pub struct State {
    /// The book that is open.
    pub book: Rc<Book>,
    /// What its sheets find.
    pub findings: Rc<Findings>,
    /// Edits to undo and redo.
    pub log: Rc<Log>,
    /// What each sheet came to when it was kept as before.
    pub befores: Rc<Befores>,
    /// How this browser shows books, and in which units it shows this one.
    pub settings: Rc<Settings>,
    /// The page.
    pub route: Route,
    /// Whether what was entered is kept.
    pub saved: Saved,
    /// Why it is not, until it is.
    pub fault: Option<BookError>,
    /// What is open, chosen and asked for on the page.
    pub view: Rc<View>,
    /// Whether another page of this browser holds the book, so that this one only shows it.
    pub read_only: bool,
    /// Counts what happens to the books of this browser, so that their list is drawn again.
    pub shelf: u32,
}

impl State {
    /// A state with a book, on a page.
    pub fn new(book: Book, log: Log, mut settings: Settings, route: Route) -> Self {
        settings.open(&book);
        let findings = Rc::new(evaluate(&book, None));
        Self {
            befores: Rc::new(Befores::of(&book, None)),
            book: Rc::new(book),
            findings,
            log: Rc::new(log),
            settings: Rc::new(settings),
            route,
            saved: Saved::Untouched,
            fault: None,
            view: Rc::new(View::default()),
            read_only: false,
            shelf: 0,
        }
    }

    /// The state after an action.
    #[must_use]
    pub fn after(mut self, action: Action) -> Self {
        if self.read_only && action.edits() {
            return self;
        }
        match action {
            Action::Typed(key, text) => self.type_into(key, &text),
            Action::ReadWith(key, mark) => self.read_with(key, mark),
            Action::Put(key, entry) => {
                let edit = self.book.setting(key, entry);
                self.make(edit, false);
            }
            Action::Change(edit) => self.make(edit, false),
            Action::AddRow(list) => self.add_row(&list),
            Action::AddRows(list, rows) => self.add_rows(&list, &rows),
            Action::CopyRow(list, id) => {
                let (new, edit) = self.book.copying_row(&list, &id, &self.log);
                self.make(edit, false);
                self.call(CallTo::Row(list.under(&new)));
            }
            Action::RemoveRow(list, id) => self.remove_row(&list, &id),
            Action::MoveRow(list, id, up) => self.move_row(&list, &id, up),
            Action::Undo => self.undo(true),
            Action::Redo => self.undo(false),
            Action::KeepBefore(sheet) => self.make(self.book.keeping_as_before(&sheet), false),
            Action::ForgetBefore(sheet) => self.make(self.book.forgetting_before(&sheet), false),
            Action::BackToBefore(sheet) => self.make(self.going_back(&sheet), false),
            Action::Open(book, log) => {
                self.saved = Saved::Untouched;
                // A browser that keeps nothing keeps nothing of this book either.
                self.fault = self.fault.filter(|fault| *fault == BookError::Off);
                self.put_book(book, log);
                *Rc::make_mut(&mut self.view) = View {
                    call: self.view.call.clone(),
                    ..View::default()
                };
            }
            Action::Follow(book, log) => self.put_book(book, log),
            Action::ReadOnly(only) => self.read_only = only,
            Action::Saved(saved) => {
                self.fault = match &saved {
                    Saved::Fault(why) => Some(why.clone()),
                    _ => None,
                };
                self.saved = saved;
            }
            Action::Shelved => self.shelf = self.shelf.wrapping_add(1),
            Action::Set(setting, value) => {
                let settings = Rc::make_mut(&mut self.settings);
                settings.put(setting, value);
                settings.open(&self.book);
            }
            other => self.look(other),
        }
        self
    }

    /// Actions that change only what is seen.
    fn look(&mut self, action: Action) {
        if let Action::Go(route, stood) = action {
            self.go(route, stood);
            return;
        }
        let mut called = None;
        let view = Rc::make_mut(&mut self.view);
        match action {
            Action::Field(key) => {
                // Whoever comes back to an entry begins anew; the keyboard that was called for this one stays.
                view.typing = false;
                if view.field != key {
                    view.system_keyboard = false;
                }
                view.field = key;
            }
            Action::SystemKeyboard => view.system_keyboard = true,
            Action::Panel(panel) => {
                if panel != Panel::Drawing && panel != view.panel {
                    called = Some(CallTo::Panel);
                }
                view.panel = panel;
                view.field = None;
            }
            Action::Drawer(drawer) => {
                view.drawer = drawer;
                called = drawer.map(|_| CallTo::Drawer);
            }
            Action::Answer(result) => {
                let sheet: Rc<str> = result.split('/').next().unwrap_or_default().into();
                // The panel follows the answer it belongs to.
                match &mut view.panel {
                    Panel::Working(shown) => *shown = Rc::clone(&result),
                    Panel::WorkBack(_) => view.panel = Panel::Drawing,
                    Panel::Drawing => {}
                }
                view.answers.insert(sheet, result);
            }
            Action::Fold(row) => {
                let open = self.is_open(&row);
                Rc::make_mut(&mut self.view).rows.insert(row, !open);
            }
            Action::RowKeys(row) => {
                view.row_keys = if view.row_keys.as_ref() == Some(&row) {
                    None
                } else {
                    Some(row)
                }
            }
            Action::AlsoIn(key, unit) => {
                let wanted = Some((key, unit));
                view.also_in = if view.also_in == wanted { None } else { wanted };
            }
            Action::Wipe(wiping) => view.wiping = wiping,
            Action::Printing(printing) => view.printing = printing,
            Action::Call(to) => called = Some(to),
            _ => {}
        }
        if let Some(to) = called {
            self.call(to);
        }
    }

    /// Another page: what was open on the last one is put away, and stands there again when one comes back.
    fn go(&mut self, route: Route, stood: Option<Stand>) {
        let left = std::mem::replace(&mut self.route, route);
        let view = Rc::make_mut(&mut self.view);
        view.drawer = None;
        if left != self.route {
            view.field = None;
            view.row_keys = None;
            let stood_here = view.panels.remove(self.route.name());
            let beside = stood_here.filter(|_| stood.is_some()).unwrap_or_default();
            let put_away = std::mem::replace(&mut view.panel, beside);
            view.panels.insert(left.name(), put_away);
            self.call(stood.map_or(CallTo::Heading, CallTo::Back));
        }
    }

    /// The list that must get its first row before an entry can be made.
    fn list_without_rows(&self, key: &Key) -> Option<Key> {
        let list = key.row()?.parent()?;
        let above = self.list_without_rows(&list);
        above.or_else(|| self.book.rows(&list).is_empty().then_some(list))
    }

    fn call(&mut self, to: CallTo) {
        // An entry of a row that is not there yet is made in a new one.
        if let CallTo::Entry(key) = &to
            && !self.read_only
            && let Some(list) = self.list_without_rows(key)
        {
            return self.add_row(&list);
        }
        if let CallTo::Entry(key) | CallTo::Row(key) = &to {
            let route = Route::of_key(key.sheet());
            if self.route != route {
                self.go(route, None);
            }
            self.unfold(key);
        }
        // An entry that stands behind "More" is brought out.
        if let CallTo::Entry(key) = &to
            && let Some(row) = key.row()
        {
            Rc::make_mut(&mut self.view)
                .rows
                .insert(more_of(&row), true);
        }
        let view = Rc::make_mut(&mut self.view);
        view.call = Call {
            number: view.call.number.wrapping_add(1),
            to,
        };
    }

    /// Opens the rows an entry stands in.
    fn unfold(&mut self, key: &Key) {
        let mut above = if matches!(key.as_str().split('/').count() % 2, 1) {
            Some(key.clone())
        } else {
            key.row()
        };
        while let Some(row) = above {
            above = row.parent().and_then(|list| list.row());
            Rc::make_mut(&mut self.view).rows.insert(row, true);
        }
    }

    /// Whether a row of a list, or what stands behind its key "More", is open: as it was left, else a row that is alone. On
    /// paper all are.
    pub fn is_open(&self, row: &Key) -> bool {
        if self.view.printing {
            return true;
        }
        if let Some(open) = self.view.rows.get(row) {
            return *open;
        }
        let whole = row.as_str().split('/').count() % 2 == 1;
        whole
            && row
                .parent()
                .is_some_and(|list| self.book.rows(&list).len() <= 1)
    }

    fn put_book(&mut self, book: Rc<Book>, log: Rc<Log>) {
        self.findings = Rc::new(evaluate(&book, Some(&self.findings)));
        self.befores = Rc::new(Befores::of(&book, Some(&self.befores)));
        self.book = book;
        self.log = log;
        if self.book.units().unwrap_or(self.settings.usual) != self.settings.units {
            Rc::make_mut(&mut self.settings).open(&self.book);
        }
    }

    /// Makes an edit, notes it and reckons again; `continuing` joins it to the last one of the same entry.
    fn make(&mut self, edit: Edit, continuing: bool) {
        if edit.is_empty() {
            return;
        }
        let book = Rc::new(self.book.with(&edit));
        let mut log = (*self.log).clone();
        log.record(edit, continuing);
        self.put_book(book, Rc::new(log));
        self.saved = Saved::Pending;
    }

    fn undo(&mut self, back: bool) {
        let mut log = (*self.log).clone();
        let book = if back {
            log.undo(&self.book)
        } else {
            log.redo(&self.book)
        };
        if let Some(book) = book {
            self.put_book(Rc::new(book), Rc::new(log));
            self.saved = Saved::Pending;
            Rc::make_mut(&mut self.view).typing = false;
        }
    }

    fn type_into(&mut self, key: Key, text: &str) {
        let continuing = self.view.typing && self.view.field.as_ref() == Some(&key);
        let edit = self.book.typing(&key, text, &self.settings.manner());
        self.make(edit, continuing);
        let view = Rc::make_mut(&mut self.view);
        view.field = Some(key);
        view.typing = true;
    }

    /// The entry that a text typed into a field makes under the settings.
    pub fn entry_of(&self, key: &Key, text: &str) -> Entry {
        field_of(key).map_or_else(
            || Entry::new(text),
            |field| typed(field, text, &self.settings.manner()),
        )
    }

    /// The edit that makes a sheet's entries those that were kept as before.
    fn going_back(&self, sheet: &str) -> Edit {
        let Some((before, _)) = self.befores.sheet(sheet) else {
            return Edit::default();
        };
        let (kept, now) = (before.sheet(sheet), self.book.sheet(sheet));
        let mut keys = BTreeSet::new();
        keys.extend(kept.keys().chain(now.keys()));
        let change = |key: &Key| Change {
            key: key.clone(),
            old: now.get(key).cloned(),
            new: kept.get(key).cloned(),
        };
        Edit(
            keys.into_iter()
                .map(change)
                .filter(|change| change.old != change.new)
                .collect(),
        )
    }

    fn read_with(&mut self, key: Key, mark: Mark) {
        if let Some(entry) = self.book.entry(key.as_str()) {
            let entry = entry.clone().with_mark(mark);
            let edit = self.book.setting(key, Some(entry));
            self.make(edit, false);
        }
    }

    fn add_row(&mut self, list: &Key) {
        let alone = self.book.rows(list);
        let (id, edit) = self.book.adding_row(list, Place::Last, &self.log, &[]);
        self.make(edit, false);
        // A row that was open because it was alone does not close under the hand.
        if let [only] = alone.as_slice() {
            let rows = &mut Rc::make_mut(&mut self.view).rows;
            rows.entry(list.under(only)).or_insert(true);
        }
        self.call(CallTo::Row(list.under(&id)));
    }

    /// Takes a row out. A row that was just added and holds nothing leaves no trace: undoing goes on to what was really done.
    fn remove_row(&mut self, list: &Key, id: &str) {
        let edit = self.book.removing_row(list, id);
        let rank = list.under(id).under(RANK);
        let blank = edit.0.iter().all(|change| change.key == rank);
        let just_added = self.log.done().last().is_some_and(|last| {
            let ranks = |change: &Change| {
                change.old.is_none() && change.key.is_under(list) && change.key.field() == RANK
            };
            last.0.iter().all(ranks) && last.0.iter().any(|change| change.key == rank)
        });
        if !(blank && just_added) {
            return self.make(edit, false);
        }
        let mut log = (*self.log).clone();
        if let Some(book) = log.forget_last(&self.book) {
            self.put_book(Rc::new(book), Rc::new(log));
            self.saved = Saved::Pending;
        }
    }

    fn add_rows(&mut self, list: &Key, rows: &[Vec<(&'static str, String)>]) {
        let mut whole = Edit::default();
        let mut book = (*self.book).clone();
        let mut log = (*self.log).clone();
        for row in rows {
            let with: Vec<(&str, Entry)> = row
                .iter()
                .map(|(field, text)| (*field, self.entry_of(&list.under("0").under(field), text)))
                .collect();
            let (_, edit) = book.adding_row(list, Place::Last, &log, &with);
            book = book.with(&edit);
            log.record(edit.clone(), false);
            whole = whole.then(edit);
        }
        self.make(whole, false);
    }

    fn move_row(&mut self, list: &Key, id: &str, up: bool) {
        let rows = self.book.rows(list);
        let Some(at) = rows.iter().position(|row| &**row == id) else {
            return;
        };
        let place = match (up, at) {
            (true, 0) => return,
            (true, 1) => Place::First,
            (true, at) => Place::After(&rows[at - 2]),
            (false, at) if at + 1 < rows.len() => Place::After(&rows[at + 1]),
            (false, _) => return,
        };
        let edit = self.book.moving_row(list, id, place);
        self.make(edit, false);
    }

    /// The result that a sheet's band shows: the chosen one while the sheet still gives it, else the first.
    pub fn answer(&self, sheet: &str, offered: &[Rc<str>]) -> Option<Rc<str>> {
        let chosen = self.view.answers.get(sheet);
        let given = |id: &Rc<str>| {
            let money = self.findings.found(sheet).and_then(|found| found.money(id));
            self.findings.result(id).is_some() || money.is_some()
        };
        chosen
            .filter(|id| given(id))
            .or_else(|| offered.first())
            .cloned()
    }
}

#[cfg(test)]
mod tests;
