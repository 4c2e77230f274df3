//! Several tabs on one book: one edits it, the others show it, and it is handed over with the revision to be seen.

use std::rc::Rc;

use buildbook::store::book_at;
use gloo_timers::callback::Timeout;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};

use super::channel::Said;
use super::keeper::Keeper;
use super::locks::{self, Held, How};
use crate::state::{Action, Saved};

/// How long a tab that wishes to edit waits for the one that holds the book before it takes the lock, in milliseconds.
const PATIENCE: u32 = 3_000;

/// How often, and how many times, a new writer looks for the revision that was handed over to it.
const LOOKS: (u32, u32) = (50, 60);

fn lock_name(id: &str) -> String {
    format!("rebuild-reckoner/book/{id}")
}

impl Keeper {
    /// Takes the lock of the open book if it is free; else this tab only shows the book.
    pub(super) fn take_lock(self: &Rc<Self>) {
        if !locks::supported() || self.forgets() {
            return;
        }
        let id = self.open_id();
        let (me, wanted) = (Rc::clone(self), Rc::clone(&id));
        let (loser, lost) = (Rc::clone(self), Rc::clone(&id));
        let granted = move |held: Option<Held>| {
            // Another book may have been opened since.
            if wanted != me.open_id() {
                return;
            }
            me.send(Action::ReadOnly(held.is_none()));
            *me.held.borrow_mut() = held;
        };
        locks::ask(&lock_name(&id), How::IfFree, granted, move || {
            loser.lose(&lost);
        });
    }

    /// Another tab took the lock of a book.
    fn lose(&self, id: &str) {
        if *id == *self.open_id() {
            *self.held.borrow_mut() = None;
            self.send(Action::ReadOnly(true));
        }
    }

    /// Asks the tab that edits the open book to hand it over, and edits here.
    pub fn edit_here(self: &Rc<Self>) {
        if !locks::supported() {
            self.reopen();
            self.send(Action::ReadOnly(false));
            return;
        }
        let id = self.open_id();
        self.say(&Said::Wish(id.to_string()));
        self.ask_for(&id, How::Wait);
        let me = Rc::clone(self);
        Timeout::new(PATIENCE, move || {
            if *me.open_id() == *id && me.held.borrow().is_none() {
                me.ask_for(&id, How::Steal);
            }
        })
        .forget();
    }

    fn ask_for(self: &Rc<Self>, id: &Rc<str>, how: How) {
        let (me, wanted) = (Rc::clone(self), Rc::clone(id));
        let (loser, lost) = (Rc::clone(self), Rc::clone(id));
        let granted = move |held: Option<Held>| {
            if let (Some(held), true) = (held, wanted == me.open_id()) {
                *me.held.borrow_mut() = Some(held);
                me.edit_from_handed(LOOKS.1);
            }
        };
        locks::ask(&lock_name(id), how, granted, move || loser.lose(&lost));
    }

    /// Edits from the revision that was handed over, which may take a moment to reach this tab's view of the store.
    fn edit_from_handed(self: &Rc<Self>, looks: u32) {
        let there = self
            .shelf
            .open(&self.open_id())
            .is_ok_and(|opened| opened.revision >= self.handed.get());
        if there || looks == 0 {
            self.reopen();
            self.send(Action::ReadOnly(false));
            return;
        }
        let me = Rc::clone(self);
        Timeout::new(LOOKS.0, move || me.edit_from_handed(looks - 1)).forget();
    }

    fn say(&self, said: &Said) {
        if let Some(channel) = &*self.channel.borrow() {
            channel.say(said);
        }
    }

    pub(super) fn hear(&self, said: Said) {
        match said {
            Said::Wish(id) if *id == *self.open_id() && self.held.borrow().is_some() => {
                self.keep();
                self.send(Action::ReadOnly(true));
                self.say(&Said::Given(id, self.seen.get()));
                *self.held.borrow_mut() = None;
            }
            Said::Given(id, revision) if *id == *self.open_id() => self.handed.set(revision),
            _ => {}
        }
    }

    /// Shows the open book as the store holds it.
    fn reopen(&self) {
        if let Ok(opened) = self.shelf.open(&self.open_id())
            && opened.revision > self.seen.get()
        {
            self.seen.set(opened.revision);
            self.send(Action::Follow(Rc::new(opened.book), Rc::new(opened.log)));
        }
    }

    pub(super) fn follow_other_tabs(self: &Rc<Self>) {
        let me = Rc::clone(self);
        let changed = Closure::<dyn Fn(JsValue)>::new(move |event: JsValue| {
            let name = js_sys::Reflect::get(&event, &"key".into()).unwrap_or_default();
            let id = name
                .as_string()
                .and_then(|name| book_at(&name).map(str::to_owned));
            let open = id.is_some_and(|id| *id == *me.open_id());
            let desk = me.desk.borrow().clone();
            // Where something entered here is not kept yet, saving it will find out and keep both.
            if open && desk.is_some_and(|desk| desk.state().saved != Saved::Pending) {
                me.reopen();
            }
            me.send(Action::Shelved);
        });
        if let Some(window) = web_sys::window() {
            let _ = window
                .add_event_listener_with_callback("storage", changed.as_ref().unchecked_ref());
        }
        changed.forget();
    }
}
