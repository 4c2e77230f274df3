//! The rail down the thumb edge, the panels it opens, the notices, and the wiping of the screen.

use super::icon::{Icon, icon};
use crate::browser;
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::offline::{Offline, Watch, accept_new_version};
use crate::route::{Route, WHOLE_BOOK};
use crate::state::{Action, Drawer, State};
use crate::storage::keeper;
use crate::words::{self, Phrase, Tongue, filled, frame};
use buildbook::{SHEETS, State as Standing};
use gloo_timers::callback::Interval;
use yew::prelude::*;

/// How long the screen ignores touch while it is wiped, in seconds.
const WIPED_FOR: u32 = 15;

#[derive(Clone, PartialEq, Default)]
struct Slice {
    questions: bool,
    drawer: Option<Drawer>,
    can_undo: bool,
    can_redo: bool,
}

fn slice(state: &State) -> Slice {
    Slice {
        questions: state.route == Route::Questions,
        drawer: state.view.drawer,
        can_undo: state.log.can_undo() && !state.read_only,
        can_redo: state.log.can_redo() && !state.read_only,
    }
}

/// The rail: Questions, Sheets, Undo, More.
#[component]
pub fn Rail() -> Html {
    let found = use_slice(slice).unwrap_or_default();
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let Some(desk) = desk else { return html! {} };
    let toggled = |drawer: Drawer| Action::Drawer((found.drawer != Some(drawer)).then_some(drawer));
    html! {
        <nav class="rail" aria-label={tongue.say(frame::RAIL)}>
            { mark() }
            <a class="rail-key" href={Route::Questions.fragment()} data-do="questions"
                aria-current={found.questions.then_some("page")}>
                { icon(Icon::Questions) }<span>{ tongue.say(frame::QUESTIONS) }</span>
            </a>
            { opener(&desk, "sheets", Icon::Sheets, tongue.say(frame::SHEETS), found.drawer == Some(Drawer::Sheets), toggled(Drawer::Sheets)) }
            <button type="button" class="rail-key" data-do="undo" aria-disabled={(!found.can_undo).then_some("true")}
                onclick={send(&desk, Action::Undo)}>
                { icon(Icon::Undo) }<span>{ tongue.say(frame::UNDO) }</span>
            </button>
            { opener(&desk, "more", Icon::More, tongue.say(frame::MORE), found.drawer == Some(Drawer::More), toggled(Drawer::More)) }
        </nav>
    }
}

/// The mark of the reckoner: a total under its double rule.
fn mark() -> Html {
    html! {
        <svg class="rail-mark" viewBox="0 0 56 56" aria-hidden="true" focusable="false">
            <path class="mark-line" d="M8 40h40M8 46h40" />
            <path class="mark-line" d="M12 30h10M17 25v10M32 27h12M32 33h12M14 10l7 7M21 10l-7 7M33 13.5h11" />
        </svg>
    }
}

fn send(desk: &Desk, action: Action) -> Callback<MouseEvent> {
    let desk = desk.clone();
    Callback::from(move |_| desk.send(action.clone()))
}

fn opener(
    desk: &Desk,
    name: &'static str,
    picture: Icon,
    said: &'static str,
    open: bool,
    action: Action,
) -> Html {
    html! {
        <button type="button" class="rail-key" data-do={name} aria-expanded={if open { "true" } else { "false" }} onclick={send(desk, action)}>
            { icon(picture) }<span>{ said }</span>
        </button>
    }
}

/// A sheet's standing: a word, a shape and a colour.
pub fn standing(standing: Standing, tongue: Tongue) -> Html {
    let (class, picture, said) = match standing {
        Standing::Empty => ("", None, tongue.say(frame::EMPTY).to_owned()),
        Standing::Needs(count) => (
            "needs",
            Some(Icon::Needs),
            filled(tongue.say(frame::NEEDS), &[count.to_string()]),
        ),
        Standing::Ready => (
            "ready",
            Some(Icon::Ready),
            tongue.say(frame::READY).to_owned(),
        ),
        Standing::Warning => (
            "warning",
            Some(Icon::Warning),
            tongue.say(frame::WARNING).to_owned(),
        ),
    };
    html! { <span class={classes!("standing", class)}>{ picture.map(icon).unwrap_or_default() }{ said }</span> }
}

/// The panel that is open beside the rail, if one is.
#[component]
pub fn Drawers() -> Html {
    let drawer = use_slice(|state| state.view.drawer).flatten();
    let desk = use_desk();
    let close = Callback::from(move |event: KeyboardEvent| {
        if let (Some(desk), "Escape") = (&desk, event.key().as_str()) {
            desk.send(Action::Drawer(None));
        }
    });
    match drawer {
        None => html! {},
        Some(Drawer::Sheets) => html! { <div class="drawer" onkeydown={close}><Sheets /></div> },
        Some(Drawer::More) => html! { <div class="drawer" onkeydown={close}><More /></div> },
    }
}

/// Every sheet of the book in the order of the job, with how it stands; and the build books.
#[component]
fn Sheets() -> Html {
    let standings = use_slice(|state| {
        SHEETS.map(|sheet| {
            (
                sheet,
                state
                    .findings
                    .found(sheet)
                    .map_or(Standing::Empty, buildbook::Found::state),
            )
        })
    });
    let here = use_slice(|state| state.route.name()).unwrap_or_default();
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let Some(desk) = desk else { return html! {} };
    let keys = standings.into_iter().flatten().map(|(sheet, how)| {
        let name = words::subject(sheet).map_or(sheet, |words| tongue.say(words.name));
        html! {
            <a key={sheet} class="drawer-key" href={Route::of_key(sheet).fragment()} data-do={format!("sheet {sheet}")}
                aria-current={(here == sheet).then_some("page")} onclick={send(&desk, Action::Drawer(None))}>
                <span class="name">{ name }</span>{ standing(how, tongue) }
            </a>
        }
    });
    html! {
        <>
            <h2 class="ruled">{ tongue.say(frame::SHEETS) }</h2>
            <div class="drawer-keys">
                { keys.collect::<Html>() }
                <a class="drawer-key" href={Route::Books.fragment()} data-do="books" onclick={send(&desk, Action::Drawer(None))}>
                    <span class="name">{ tongue.say(frame::BOOKS) }</span>{ icon(Icon::Books) }
                </a>
            </div>
        </>
    }
}

/// Redo, Send, Print, Settings, Wipe screen.
#[component]
fn More() -> Html {
    let can_redo = use_slice(|state| state.log.can_redo() && !state.read_only).unwrap_or(false);
    // From a sheet its own link is offered first, from anywhere else the whole book.
    let what = use_slice(|state| state.route.sheet().unwrap_or(WHOLE_BOOK)).unwrap_or(WHOLE_BOOK);
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let Some(desk) = desk else { return html! {} };
    let print = {
        let desk = desk.clone();
        Callback::from(move |_: MouseEvent| {
            desk.send(Action::Drawer(None));
            browser::after(50, browser::print);
        })
    };
    let wipe = {
        let desk = desk.clone();
        Callback::from(move |_: MouseEvent| {
            desk.send(Action::Drawer(None));
            desk.send(Action::Wipe(true));
        })
    };
    let press = |name: &'static str, picture: Icon, said: Phrase, onclick: Callback<MouseEvent>| {
        html! {
            <button type="button" class="drawer-key" data-do={name} {onclick}>
                { icon(picture) }<span class="name">{ tongue.say(said) }</span>
            </button>
        }
    };
    html! {
        <>
            <h2 class="ruled">{ tongue.say(frame::MORE) }</h2>
            <div class="drawer-keys">
                if can_redo { { press("redo", Icon::Redo, frame::REDO, send(&desk, Action::Redo)) } }
                <a class="drawer-key" href={Route::Send(what).fragment()} data-do="send" onclick={send(&desk, Action::Drawer(None))}>
                    { icon(Icon::Send) }<span class="name">{ tongue.say(frame::SEND) }</span>
                </a>
                { press("print", Icon::Print, frame::PRINT, print) }
                <a class="drawer-key" href={Route::Settings.fragment()} data-do="settings" onclick={send(&desk, Action::Drawer(None))}>
                    { icon(Icon::Settings) }<span class="name">{ tongue.say(frame::SETTINGS) }</span>
                </a>
                { press("wipe", Icon::Wipe, frame::WIPE, wipe) }
            </div>
        </>
    }
}

/// The props of [`Notices`].
#[derive(Properties, PartialEq)]
pub struct NoticesProps {
    /// What is known about use without a network.
    pub offline: Offline,
}

/// What the app has to say: a store that does not keep, a new version.
#[component]
pub fn Notices(props: &NoticesProps) -> Html {
    let fault = use_slice(|state| state.fault.clone());
    let read_only = use_slice(|state| state.read_only).unwrap_or(false);
    let tongue = use_settings().tongue;
    let put_off = use_state(|| false);
    let later = {
        let put_off = put_off.clone();
        Callback::from(move |_: MouseEvent| put_off.set(true))
    };
    let new = matches!(props.offline, Offline::NewVersion | Offline::Replaced) && !*put_off;
    html! {
        <>
            if let Some(why) = fault.flatten() {
                <div class="notice fault" role="alert" data-notice="not-kept">
                    { icon(Icon::Warning) }<p>{ words::books::not_kept(&why, tongue) }</p>
                    <a class="key" href={Route::Books.fragment()} data-do="books">{ tongue.say(frame::BOOKS) }</a>
                </div>
            }
            if read_only {
                <div class="notice" role="status" data-notice="read-only">
                    { icon(Icon::Remark) }<p>{ tongue.say(words::books::READ_ONLY) }</p>
                    <button type="button" class="key main" data-do="edit-here"
                        onclick={Callback::from(|_| if let Some(keeper) = keeper() { keeper.edit_here(); })}>
                        { tongue.say(words::books::EDIT_HERE) }
                    </button>
                </div>
            }
            if new {
                <div class="notice" role="status" data-notice="new-version">
                    <p>{ tongue.say(frame::NEW_VERSION) }</p>
                    <button type="button" class="key main" data-do="take-new-version" onclick={Callback::from(|_| accept_new_version())}>{ tongue.say(frame::TAKE_NEW_VERSION) }</button>
                    <button type="button" class="key quiet" data-do="not-now" onclick={later}>{ tongue.say(frame::NOT_NOW) }</button>
                </div>
            }
        </>
    }
}

/// A sheet over everything that counts down while the screen is wiped, and takes no touch.
#[component]
pub fn Wiping() -> Html {
    let wiping = use_slice(|state| state.view.wiping).unwrap_or(false);
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let left = use_state(|| WIPED_FOR);
    {
        let left = left.clone();
        use_effect_with(wiping, move |wiping| {
            let ticking = wiping.then(|| {
                left.set(WIPED_FOR);
                let mut seconds = WIPED_FOR;
                Interval::new(1000, move || {
                    seconds = seconds.saturating_sub(1);
                    left.set(seconds);
                    if let (0, Some(desk)) = (seconds, &desk) {
                        desk.send(Action::Wipe(false));
                    }
                })
            });
            move || drop(ticking)
        });
    }
    if !wiping {
        return html! {};
    }
    html! {
        <div class="wiped" role="alert" onclick={Callback::from(|event: MouseEvent| event.prevent_default())}>
            <div><p class="count">{ *left }</p><p>{ tongue.say(frame::WIPE_SAID) }</p></div>
        </div>
    }
}

/// Says that the pages open without a network, once every file is kept.
#[component]
pub fn OfflineReady() -> Html {
    let offline = use_state_eq(crate::offline::now);
    let tongue = use_settings().tongue;
    {
        let offline = offline.clone();
        use_effect_with((), move |()| {
            let watch = Watch::new(move |now| offline.set(now));
            move || drop(watch)
        });
    }
    html! {
        if *offline == Offline::Ready {
            <span class="standing ready" data-notice="offline-ready">{ icon(Icon::Ready) }{ tongue.say(frame::OFFLINE_READY) }</span>
        }
    }
}
