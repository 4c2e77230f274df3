//! The desk: holds the state, takes actions, and tells those who look at a slice of the state when it changes.
//!
//! The one context of the app holds the desk itself, which never changes; so a change of the state draws again only
//! the widgets whose own slice is different.

use crate::settings::Settings;
use crate::state::{Action, State};
use crate::words::{Phrase, Tongue};
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use yew::prelude::*;

type Listener = Rc<dyn Fn()>;

/// The holder of the state. Cloning shares it.
#[derive(Clone)]
pub struct Desk(Rc<Held>);

struct Held {
    state: RefCell<Rc<State>>,
    listeners: RefCell<Vec<(u32, Listener)>>,
    next: Cell<u32>,
}

impl PartialEq for Desk {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl Desk {
    /// A desk with a state.
    pub fn new(state: State) -> Self {
        Self(Rc::new(Held {
            state: RefCell::new(Rc::new(state)),
            listeners: RefCell::default(),
            next: Cell::new(0),
        }))
    }

    /// The state as it is.
    pub fn state(&self) -> Rc<State> {
        Rc::clone(&self.0.state.borrow())
    }

    /// Does what is asked, then tells all who listen.
    pub fn send(&self, action: Action) {
        let after = State::clone(&self.state()).after(action);
        *self.0.state.borrow_mut() = Rc::new(after);
        // A listener may leave or come while others are told, so they are told from a copy.
        let listeners: Vec<Listener> = self
            .0
            .listeners
            .borrow()
            .iter()
            .map(|(_, heard)| Rc::clone(heard))
            .collect();
        for heard in listeners {
            heard();
        }
    }

    /// Calls `heard` after every action, until the returned number is given to [`Desk::leave`].
    pub fn listen(&self, heard: impl Fn() + 'static) -> u32 {
        let number = self.0.next.get();
        self.0.next.set(number.wrapping_add(1));
        self.0.listeners.borrow_mut().push((number, Rc::new(heard)));
        number
    }

    /// Ends listening.
    pub fn leave(&self, number: u32) {
        self.0
            .listeners
            .borrow_mut()
            .retain(|(held, _)| *held != number);
    }
}

/// The desk of the app, for widgets to send actions to.
#[hook]
pub fn use_desk() -> Option<Desk> {
    use_context::<Desk>()
}

/// Tells whether what was drawn differs from what the state now says.
type Differs = Rc<dyn Fn(&State) -> bool>;

/// Draws the component again when `differs` says so, which is made anew for each drawing, since it knows what was drawn.
#[hook]
fn use_told(desk: Option<Desk>, differs: Option<Differs>) {
    let again = use_force_update();
    // The listener lives longer than one drawing.
    let asked = use_mut_ref(|| None::<Differs>);
    *asked.borrow_mut() = differs;
    use_effect_with(desk, move |desk| {
        let held = desk.clone();
        let number = desk.as_ref().map(|desk| {
            let told = desk.clone();
            desk.listen(move || {
                let differs = asked.borrow().clone();
                if differs.is_some_and(|differs| differs(&told.state())) {
                    again.force_update();
                }
            })
        });
        move || {
            if let (Some(desk), Some(number)) = (held, number) {
                desk.leave(number);
            }
        }
    });
}

/// A slice of the state; the component is drawn again when it is no longer equal to what it was.
///
/// `None` when there is no desk above, which does not happen within the app. Little of it is made anew for each kind of slice, which keeps
/// the program small.
#[hook]
pub fn use_slice<T: Clone + PartialEq + 'static>(
    slice: impl Fn(&State) -> T + 'static,
) -> Option<T> {
    let desk = use_desk();
    let state = desk.as_ref().map(Desk::state);
    let now = state.as_deref().map(&slice);
    let differs = now.clone().map(|now| -> Differs {
        let drawn = RefCell::new(now);
        Rc::new(move |state| {
            let now = slice(state);
            let differs = *drawn.borrow() != now;
            drawn.replace(now);
            differs
        })
    });
    use_told(desk, differs);
    now
}

/// The settings.
#[hook]
pub fn use_settings() -> Rc<Settings> {
    use_slice(|state| Rc::clone(&state.settings)).unwrap_or_default()
}

/// Which English the page speaks.
#[hook]
pub fn use_tongue() -> Tongue {
    use_slice(|state| state.settings.tongue).unwrap_or_default()
}

/// Says a phrase in the page's English.
#[hook]
pub fn use_said(phrase: Phrase) -> &'static str {
    use_tongue().say(phrase)
}
