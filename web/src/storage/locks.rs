//! Web Locks, bound by hand: one tab at a time writes a book.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::{Function, Object, Promise, Reflect};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};

/// How a lock is asked for.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum How {
    /// Only if it is free now.
    IfFree,
    /// When the tab that holds it lets go.
    Wait,
    /// At once, from a tab that does not answer.
    Steal,
}

/// A lock that is held until this is dropped.
pub struct Held {
    release: Function,
}

impl Drop for Held {
    fn drop(&mut self) {
        // The lock's promise is settled by this; there is nothing it could refuse.
        let _ = self.release.call0(&JsValue::UNDEFINED);
    }
}

fn manager() -> Option<JsValue> {
    let navigator = web_sys::window()?.navigator();
    let locks = Reflect::get(&navigator, &"locks".into()).ok()?;
    locks.is_object().then_some(locks)
}

/// Whether this browser, at this address, has locks.
pub fn supported() -> bool {
    manager().is_some()
}

/// Asks for a lock. `granted` is told of it, or gets nothing where it is not free; `lost` is told when another tab took it away.
pub fn ask(
    name: &str,
    how: How,
    granted: impl FnOnce(Option<Held>) + 'static,
    lost: impl FnOnce() + 'static,
) {
    let Some(manager) = manager() else {
        granted(None);
        return;
    };
    let options = Object::new();
    let option = match how {
        How::IfFree => "ifAvailable",
        How::Wait => "",
        How::Steal => "steal",
    };
    if !option.is_empty() {
        // A plain object takes any member.
        let _ = Reflect::set(&options, &option.into(), &JsValue::TRUE);
    }
    let held = Closure::once_into_js(move |lock: JsValue| -> JsValue {
        if lock.is_null() || lock.is_undefined() {
            granted(None);
            return JsValue::UNDEFINED;
        }
        // The lock is held as long as this promise is open.
        let release = Rc::new(RefCell::new(None));
        let kept = Rc::clone(&release);
        let open = Promise::new(&mut move |resolve, _| *kept.borrow_mut() = Some(resolve));
        if let Some(release) = release.borrow_mut().take() {
            granted(Some(Held { release }));
        }
        open.into()
    });
    let request: Option<Function> = Reflect::get(&manager, &"request".into())
        .ok()
        .and_then(|request| request.dyn_into().ok());
    let asked = request
        .and_then(|request| request.call3(&manager, &name.into(), &options, &held).ok())
        .and_then(|promise| promise.dyn_into::<Promise>().ok());
    if let Some(asked) = asked {
        let lost = Closure::once(move |_: JsValue| lost());
        let _ = asked.catch(&lost);
        lost.forget();
    }
}
