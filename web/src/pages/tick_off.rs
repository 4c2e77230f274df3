//! The joints one after another, at the vehicle: one big figure, one thumb, and the screen stays on.

use crate::browser::{self, Awake};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::drawings::torque::of_joint;
use crate::drawings::{Drawing, Paper};
use crate::joints::{as_printed, number_typed, set_to, wrench_name};
use crate::route::Route;
use crate::shown::written;
use crate::state::{Action, State};
use crate::widgets::{EntryRow, Remarks};
use crate::words::{self, Tongue, filled, lack, torque};
use buildbook::sheets::torque::JointEntry;
use buildbook::{Entry, Key};
use measure::Kind;
use yew::prelude::*;

/// What the page says of the joint that is up.
#[derive(Clone, PartialEq)]
struct Up {
    row: Key,
    name: String,
    /// The wrench's name, where there are several.
    wrench: Option<String>,
    /// The extension and its angle.
    extension: Option<[String; 2]>,
    /// In the wrench's unit, and in the book's where that is another.
    setting: Result<(String, Option<String>), String>,
    printed: Option<String>,
    computed: bool,
    stages: Vec<String>,
    turn: Option<String>,
    left_hand: bool,
    marked: bool,
    last: bool,
    order: Option<Drawing>,
    /// Who did the last joint: taken over until another name is typed.
    by: Option<String>,
}

/// A joint that is done.
#[derive(Clone, PartialEq)]
struct Ticked {
    row: Key,
    name: String,
    who: String,
}

/// How far one is, and the joint that is up.
#[derive(Clone, PartialEq, Default)]
struct Round {
    all: usize,
    done: Vec<Ticked>,
    up: Option<Up>,
}

/// The paper of the order: a fixed one, since the figure beside it is what matters.
const PAPER: (f64, f64) = (340.0, 280.0);

fn round(state: &State, passed: usize) -> Round {
    let findings = &state.findings.torque;
    let joints = &findings.sheet.joints;
    let is_done = |entry: &JointEntry| entry.done.value() == Some(&true);
    let undone: Vec<usize> = (0..joints.len())
        .filter(|at| !is_done(&joints[*at]))
        .collect();
    let done = joints.iter().filter(|entry| is_done(entry));
    Round {
        all: joints.len(),
        done: done.map(|entry| ticked(state, entry)).collect(),
        up: undone
            .get(passed % undone.len().max(1))
            .map(|at| up(state, *at, undone.len() == 1)),
    }
}

fn name_of(state: &State, entry: &JointEntry) -> String {
    let list = Key::from("torque/joints");
    words::row_name(&state.book, &list, entry.id(), state.settings.tongue)
}

/// What was typed into a field of a joint.
fn typed(state: &State, entry: &JointEntry, field: &str) -> Option<String> {
    let entry = state.book.entry(entry.key.under(field).as_str())?;
    Some(entry.text.trim().to_owned()).filter(|text| !text.is_empty())
}

fn ticked(state: &State, entry: &JointEntry) -> Ticked {
    let who = [typed(state, entry, "by"), typed(state, entry, "on")];
    Ticked {
        row: entry.key.clone(),
        name: name_of(state, entry),
        who: who.into_iter().flatten().collect::<Vec<_>>().join(", "),
    }
}

fn up(state: &State, at: usize, last: bool) -> Up {
    let findings = &state.findings.torque;
    let (entry, joint) = (&findings.sheet.joints[at], &findings.joints[at]);
    let (tongue, manner) = (state.settings.tongue, state.settings.manner());
    let paper = Paper {
        width: PAPER.0,
        height: PAPER.1,
        manner: manner.clone(),
        tongue,
        near: crate::drawings::Near::default(),
    };
    let by = |other: &JointEntry| typed(state, other, "by");
    let latest = findings.sheet.joints.iter().rev().find_map(by);
    Up {
        row: entry.key.clone(),
        name: name_of(state, entry),
        wrench: wrench_name(state, joint),
        extension: number_typed(state, entry, "extension").map(|extension| {
            let angle = number_typed(state, entry, "extension_angle");
            [extension, angle.unwrap_or_else(|| "0°".to_owned())]
        }),
        setting: match &joint.setting {
            Ok(setting) => Ok(set_to(state, joint, setting)),
            Err(why) => Err(lack::said(why, &state.book, tongue)),
        },
        printed: as_printed(state, entry),
        computed: joint.computed,
        stages: joint
            .stages
            .iter()
            .map(|stage| set_to(state, joint, stage).0)
            .collect(),
        turn: entry
            .turn
            .value()
            .map(|turn| written(&turn.figure(Kind::Angle), &manner).shortly()),
        left_hand: entry.hand.value() == Some(&"left"),
        marked: entry.marked.value() == Some(&true),
        last,
        order: (!joint.order.is_empty()).then(|| of_joint(state, at, &paper)),
        by: by(entry).or(latest),
    }
}

/// The tick: done today, by whoever did the last one where nobody else was typed. One edit, undone as one.
fn tick(desk: &Desk, up: &Up) {
    let state = desk.state();
    let book = &state.book;
    let put = |field: &str, text: &str| book.setting(up.row.under(field), Some(Entry::new(text)));
    let mut edit = put("done", "yes");
    if let Some(today) = browser::today() {
        edit = edit.then(put("on", &today.to_string()));
    }
    if let Some(by) = &up.by {
        edit = edit.then(put("by", by));
    }
    desk.send(Action::Change(edit));
}

/// The tick-off page.
#[component]
pub fn TickOff() -> Html {
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let passed = use_state(|| 0_usize);
    let round = {
        let passed = *passed;
        use_slice(move |state| round(state, passed)).unwrap_or_default()
    };
    // The next joint's name has to be seen before its figure is taken for the last one's.
    use_effect_with(round.up.as_ref().map(|up| up.row.clone()), |_| {
        browser::to_top();
    });
    let awake = use_memo((), |()| Awake::asked());
    let screen = if awake.is_some() {
        torque::SCREEN_STAYS
    } else {
        torque::SCREEN_MAY_SLEEP
    };
    let later = {
        let passed = passed.clone();
        Callback::from(move |_: MouseEvent| passed.set(*passed + 1))
    };
    let body = match &round.up {
        None if round.all == 0 => {
            html! { <p class="tick-word">{ tongue.say(torque::NO_JOINTS) }</p> }
        }
        None => html! { <p class="tick-word">{ tongue.say(torque::ALL_DONE) }</p> },
        Some(up) => html! {
            <>
                { facts(up, tongue) }
                <Remarks sheet="torque" under={up.row.to_string()} />
                { keys(up, desk.as_ref(), later, tongue) }
            </>
        },
    };
    let far = filled(
        tongue.say(torque::SO_FAR),
        &[round.done.len().to_string(), round.all.to_string()],
    );
    html! {
        <main id="page" class="tick-off" data-page="tick-off">
            <div class="front-head">
                <h1 class="ruled" tabindex="-1">{ tongue.say(torque::TICK_OFF) }</h1>
                <p class="num" data-result="torque/done">{ far }</p>
            </div>
            <div class="tick-body">{ body }</div>
            { done_so_far(&round.done, desk.as_ref(), tongue) }
            <div class="front-foot">
                <a class="key tall" href={Route::Torque.fragment()} data-do="back">{ tongue.say(torque::BACK_TO_ENTRIES) }</a>
                <p class="muted">{ tongue.say(screen) }</p>
            </div>
        </main>
    }
}

/// The joint's name, what the wrench is set to, where that comes from, its stages and its angle; beside them the order.
fn facts(up: &Up, tongue: Tongue) -> Html {
    let setting = match &up.setting {
        Ok((setting, also)) => html! {
            <>
                <p class="tick-figure num" data-result="torque/up">{ setting }</p>
                if let Some(also) = also { <p class="tick-line num">{ format!("= {also}") }</p> }
            </>
        },
        Err(why) => html! { <p class="tick-word">{ why }</p> },
    };
    let set_to = match &up.wrench {
        Some(wrench) => filled(
            tongue.say(torque::SET_WRENCH_TO),
            std::slice::from_ref(wrench),
        ),
        None => tongue.say(torque::SET_TO).to_owned(),
    };
    let line = |said: String| html! { <p class="tick-line num">{ said }</p> };
    let stages = (up.stages.len() > 1).then(|| {
        line(filled(
            tongue.say(torque::IN_STAGES),
            &[up.stages.join(" → ")],
        ))
    });
    let extension = up
        .extension
        .as_ref()
        .map(|said| line(filled(tongue.say(torque::THROUGH_EXTENSION), said)));
    let turn = up.turn.as_ref().map(|turn| {
        line(filled(
            tongue.say(torque::THEN_TURN),
            std::slice::from_ref(turn),
        ))
    });
    let printed = up
        .printed
        .as_ref()
        .map(|printed| {
            filled(
                tongue.say(torque::AS_PRINTED),
                std::slice::from_ref(printed),
            )
        })
        .or_else(|| {
            up.computed
                .then(|| tongue.say(torque::COMPUTED_HERE).to_owned())
        });
    let left = up
        .left_hand
        .then(|| html! { <p class="tick-line tick-hand">{ tongue.say(torque::LEFT_HAND) }</p> });
    html! {
        <section class="tick-joint">
            <div class="tick-facts">
                <h2 data-joint={up.row.to_string()}>{ &up.name }</h2>
                <p class="muted">{ set_to }</p>
                { setting }
                { extension.unwrap_or_default() }
                { stages.unwrap_or_default() }
                { turn.unwrap_or_default() }
                { left.unwrap_or_default() }
                { printed.map(|printed| html! { <p class="muted">{ printed }</p> }).unwrap_or_default() }
            </div>
            { up.order.as_ref().map(order).unwrap_or_default() }
        </section>
    }
}

fn order(drawing: &Drawing) -> Html {
    html! {
        <svg class="plate tick-order" role="img" viewBox={format!("0 0 {} {}", PAPER.0, PAPER.1)} aria-label={drawing.description.clone()}>
            { drawing.marks.clone() }
        </svg>
    }
}

/// Who does it, whether the paint is on, and the tick.
fn keys(up: &Up, desk: Option<&Desk>, later: Callback<MouseEvent>, tongue: Tongue) -> Html {
    let done = {
        let (up, desk) = (up.clone(), desk.cloned());
        Callback::from(move |_: MouseEvent| {
            if let Some(desk) = &desk {
                tick(desk, &up);
            }
        })
    };
    let mark = {
        let (key, desk) = (up.row.under("marked"), desk.cloned());
        let text = if up.marked { "no" } else { "yes" };
        Callback::from(move |_: MouseEvent| {
            if let Some(desk) = &desk {
                desk.send(Action::Put(key.clone(), Some(Entry::new(text))));
            }
        })
    };
    let said = if up.last {
        torque::DONE_LAST
    } else {
        torque::DONE_NEXT
    };
    let by = up.row.under("by").to_string();
    html! {
        <div class="tick-hold">
            <div class="tick-who rows"><EntryRow key={by.clone()} at={by.clone()} /></div>
            <div class="tick-keys">
                <button type="button" class="key tall tick-mark" data-do="tick-marked" role="switch"
                    aria-checked={if up.marked { "true" } else { "false" }} onclick={mark}>{ tongue.say(torque::MARKED) }</button>
                <button type="button" class="key quiet tall" data-do="tick-later" disabled={up.last} onclick={later}>{ tongue.say(torque::LATER) }</button>
                <button type="button" class="key main tick-done" data-do="tick-done" onclick={done}>{ tongue.say(said) }</button>
            </div>
        </div>
    }
}

/// The joints that are done, the last one first, each with a key that takes the tick back.
fn done_so_far(done: &[Ticked], desk: Option<&Desk>, tongue: Tongue) -> Html {
    if done.is_empty() {
        return html! {};
    }
    let rows = done.iter().rev().map(|ticked| {
        let (key, desk) = (ticked.row.under("done"), desk.cloned());
        let back = Callback::from(move |_: MouseEvent| {
            if let Some(desk) = &desk {
                desk.send(Action::Put(key.clone(), None));
            }
        });
        html! {
            <li key={ticked.row.to_string()}>
                <span>{ &ticked.name }<small>{ &ticked.who }</small></span>
                <button type="button" class="key quiet" data-do={format!("untick {}", ticked.row)}
                    aria-label={format!("{}: {}", tongue.say(torque::NOT_DONE), ticked.name)} onclick={back}>{ tongue.say(torque::NOT_DONE) }</button>
            </li>
        }
    });
    html! {
        <details class="tick-list">
            <summary class="key quiet">{ tongue.say(torque::DONE_SO_FAR) }</summary>
            <ul>{ rows.collect::<Html>() }</ul>
        </details>
    }
}
