//! The app: the frame around every page, and what ties the desk to the browser.

use crate::browser;
use crate::desk::{Desk, use_slice};
use crate::drawings::parts::definitions;
use crate::offline::{Offline, Watch};
use crate::pages;
use crate::route::{self, Route};
use crate::settings::Settings;
use crate::state::{Action, Call, Saved, State};
use crate::storage::Keeper;
use crate::widgets::{Drawers, Notices, Rail, Wiping};
use crate::words::{self, frame};
use gloo_timers::callback::Timeout;
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::{JsCast, closure::Closure};
use yew::prelude::*;

/// How long after the last key a book is kept, in milliseconds.
const KEPT_AFTER: u32 = 400;

/// Opens the app in the page.
pub fn start() {
    let (keeper, opened, fault) = Keeper::start();
    let settings = keeper.settings().unwrap_or_else(|| {
        Settings::for_language(&browser::language(), &browser::one_and_a_half())
    });
    browser::dress(&settings);
    let desk = Desk::new(State::new(
        opened.book,
        opened.log,
        settings,
        route::route_now(),
    ));
    tie(&desk, &keeper);
    match fault {
        Some(fault) => desk.send(Action::Saved(Saved::Fault(fault))),
        None => keeper.tell_kept(opened.saved_ms),
    }
    let Some(root) = browser::document().and_then(|document| document.get_element_by_id("app"))
    else {
        return;
    };
    yew::Renderer::<App>::with_root_and_props(root, AppProps { desk }).render();
}

/// Ties the desk to the address, the store and the page's root.
fn tie(desk: &Desk, keeper: &Rc<Keeper>) {
    let heard = desk.clone();
    route::on_route(move |route, stood| heard.send(Action::Go(route, stood)));
    keep_settings(desk, Rc::clone(keeper));
    keep_book(desk, Rc::clone(keeper));
    keeper.tie(desk);
    follow_calls(desk);
    follow_printing(desk);
    follow_turning(desk);
}

/// Hears an event of the window for as long as the page lives.
fn hear(event: &str, heard: impl Fn() + 'static) {
    let heard = Closure::<dyn Fn()>::new(heard);
    if let Some(window) = web_sys::window() {
        let _ = window.add_event_listener_with_callback(event, heard.as_ref().unchecked_ref());
    }
    heard.forget();
}

/// Keeps the entry that is typed on in sight when the tablet is turned: everything has moved then.
fn follow_turning(desk: &Desk) {
    let told = desk.clone();
    hear("resize", move || {
        if let Some(key) = &told.state().view.field {
            browser::bring_into_sight(key.as_str());
        }
    });
}

/// Opens what is folded when the page goes to paper. What this changes is drawn before the browser takes the page.
fn follow_printing(desk: &Desk) {
    for (event, printing) in [("beforeprint", true), ("afterprint", false)] {
        let told = desk.clone();
        hear(event, move || told.send(Action::Printing(printing)));
    }
}

fn keep_settings(desk: &Desk, keeper: Rc<Keeper>) {
    let last = RefCell::new(Rc::clone(&desk.state().settings));
    let told = desk.clone();
    desk.listen(move || {
        let now = Rc::clone(&told.state().settings);
        // A book that is shown in units of its own changes no setting.
        if !Rc::ptr_eq(&last.borrow(), &now)
            && last.replace(Rc::clone(&now)).written() != now.written()
        {
            keeper.keep_settings(&now);
            browser::dress(&now);
        }
    });
}

/// Keeps the book soon after each edit, and at once when the page is hidden.
fn keep_book(desk: &Desk, keeper: Rc<Keeper>) {
    let keep = Rc::new(move || keeper.keep());
    let timer = RefCell::new(None::<Timeout>);
    let last = RefCell::new(Rc::clone(&desk.state().book));
    let (told, soon) = (desk.clone(), Rc::clone(&keep));
    desk.listen(move || {
        let now = Rc::clone(&told.state().book);
        if !Rc::ptr_eq(&last.borrow(), &now) {
            let soon = Rc::clone(&soon);
            // The timer that was running is dropped with this, which stops it.
            *timer.borrow_mut() = Some(Timeout::new(KEPT_AFTER, move || soon()));
            *last.borrow_mut() = now;
        }
    });
    let hidden = Closure::<dyn Fn()>::new(move || keep());
    if let Some(window) = web_sys::window() {
        for event in ["visibilitychange", "pagehide"] {
            let _ = window.add_event_listener_with_callback(event, hidden.as_ref().unchecked_ref());
            if let Some(document) = window.document() {
                let _ = document
                    .add_event_listener_with_callback(event, hidden.as_ref().unchecked_ref());
            }
        }
    }
    hidden.forget();
}

/// Moves the cursor when it was called somewhere, and the address when another page was opened. Where the address has gone ahead,
/// as with the browser's own keys, the page follows it: whatever else happens in between must not turn it back.
fn follow_calls(desk: &Desk) {
    let last = RefCell::new(Call::default());
    let page = RefCell::new(desk.state().route.clone());
    let told = desk.clone();
    desk.listen(move || {
        let state = told.state();
        if page.replace(state.route.clone()) != state.route && route::route_now() != state.route {
            route::go(&state.route);
        }
        let call = state.view.call.clone();
        if *last.borrow() != call {
            *last.borrow_mut() = call.clone();
            browser::answer_call(call.to);
        }
    });
}

#[derive(Properties, PartialEq)]
struct AppProps {
    desk: Desk,
}

/// The context, and within it the frame.
#[component]
fn App(props: &AppProps) -> Html {
    html! { <ContextProvider<Desk> context={props.desk.clone()}><Frame /></ContextProvider<Desk>> }
}

/// The rail, the notices, and the page of the address.
#[component]
fn Frame() -> Html {
    let route = use_slice(|state| state.route.clone()).unwrap_or_default();
    let tongue = use_slice(|state| state.settings.tongue).unwrap_or_default();
    let offline = use_offline();
    use_effect_with((route.clone(), tongue), move |(route, tongue)| {
        let page = words::page_name(route.name(), *tongue);
        browser::title(&format!("{page} · {}", tongue.say(frame::RECKONER)));
    });
    html! {
        <div class="frame">
            <Notices {offline} />
            { page(&route) }
            <Rail />
            <Drawers />
            <Wiping />
            <svg class="unseen" width="0" height="0" aria-hidden="true">{ definitions() }</svg>
        </div>
    }
}

/// What is known about use without a network.
#[hook]
fn use_offline() -> Offline {
    let offline = use_state_eq(crate::offline::now);
    {
        let offline = offline.clone();
        use_effect_with((), move |()| {
            let watch = Watch::new(move |now| offline.set(now));
            move || drop(watch)
        });
    }
    *offline
}

fn page(route: &Route) -> Html {
    match route {
        Route::Questions => html! { <pages::Questions /> },
        Route::Books => html! { <pages::Books /> },
        Route::Send(what) => html! { <pages::Send what={*what} /> },
        Route::Link(payload) => html! { <pages::ReceivedLink payload={payload.clone()} /> },
        Route::Vehicle => html! { <pages::Vehicle /> },
        Route::Settings => html! { <pages::SettingsPage /> },
        Route::Marking => html! { <pages::Marking /> },
        Route::Conversion => html! { <pages::Conversion /> },
        Route::Gearing => html! { <pages::Gearing /> },
        Route::Springs => html! { <pages::Springs /> },
        Route::FinalDrive => html! { <pages::FinalDrive /> },
        Route::Torque => html! { <pages::Torque /> },
        Route::TickOff => html! { <pages::TickOff /> },
        Route::Paint => html! { <pages::Paint /> },
        Route::Costs => html! { <pages::Costs /> },
        Route::Handover => html! { <pages::Handover /> },
        Route::Pack => html! { <pages::PackPage /> },
    }
}
