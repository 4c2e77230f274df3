//! The joints one after another, at the vehicle: one big figure, one thumb, and the screen stays on.

use crate::browser::Awake;
use crate::desk::{use_desk, use_settings, use_slice};
use crate::route::Route;
use crate::shown::written;
use crate::state::{Action, State};
use crate::widgets::EntryRow;
use crate::words::{self, filled, lack, torque};
use buildbook::{Entry, Key};
use measure::Kind;
use yew::prelude::*;

/// What the page says of the joint that is up.
#[derive(Clone, PartialEq)]
struct Up {
    row: Key,
    name: String,
    setting: Result<String, String>,
    stages: Vec<String>,
    turn: Option<String>,
}

/// How far one is, and the joint that is up.
#[derive(Clone, PartialEq, Default)]
struct Round {
    done: usize,
    all: usize,
    up: Option<Up>,
}

fn round(state: &State, passed: usize) -> Round {
    let findings = &state.findings.torque;
    let (tongue, manner) = (state.settings.tongue, state.settings.manner());
    let undone: Vec<usize> = (0..findings.joints.len())
        .filter(|at| findings.sheet.joints[*at].done.value() != Some(&true))
        .collect();
    let up = undone.get(passed % undone.len().max(1)).map(|at| {
        let (entry, joint) = (&findings.sheet.joints[*at], &findings.joints[*at]);
        let figure =
            |torque: &measure::Torque| written(&torque.figure(Kind::Torque), &manner).whole();
        Up {
            row: entry.key.clone(),
            name: words::row_name(&state.book, &Key::from("torque/joints"), entry.id(), tongue),
            setting: match &joint.setting {
                Ok(setting) => Ok(figure(setting)),
                Err(why) => Err(lack::said(why, &state.book, tongue)),
            },
            stages: joint.stages.iter().map(figure).collect(),
            turn: entry
                .turn
                .value()
                .map(|turn| written(&turn.figure(Kind::Angle), &manner).whole()),
        }
    });
    let all = findings.joints.len();
    Round {
        done: all - undone.len(),
        all,
        up,
    }
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
        Some(up) => {
            let done = {
                let (row, desk) = (up.row.clone(), desk.clone());
                Callback::from(move |_: MouseEvent| {
                    if let Some(desk) = &desk {
                        desk.send(Action::Put(row.under("done"), Some(Entry::new("yes"))));
                    }
                })
            };
            html! {
                <>
                    { facts(up, tongue) }
                    <div class="tick-who rows"><EntryRow key={up.row.to_string()} at={up.row.under("by").to_string()} /></div>
                    <div class="tick-keys">
                        <button type="button" class="key tick-done" data-do="tick-done" onclick={done}>{ tongue.say(torque::DONE_NEXT) }</button>
                        <button type="button" class="key quiet tall" data-do="tick-later" onclick={later}>{ tongue.say(torque::LATER) }</button>
                    </div>
                </>
            }
        }
    };
    let far = filled(
        tongue.say(torque::SO_FAR),
        &[round.done.to_string(), round.all.to_string()],
    );
    html! {
        <main id="page" class="tick-off" data-page="tick-off">
            <div class="front-head">
                <h1 class="ruled" tabindex="-1">{ tongue.say(torque::TICK_OFF) }</h1>
                <p class="num" data-result="torque/done">{ far }</p>
            </div>
            { body }
            <div class="front-foot">
                <a class="key tall" href={Route::Torque.fragment()} data-do="back">{ tongue.say(torque::BACK_TO_ENTRIES) }</a>
                <p class="muted">{ tongue.say(screen) }</p>
            </div>
        </main>
    }
}

/// The joint's name, what the wrench is set to, its stages and its angle.
fn facts(up: &Up, tongue: words::Tongue) -> Html {
    let setting = match &up.setting {
        Ok(setting) => html! { <p class="tick-figure num" data-result="torque/up">{ setting }</p> },
        Err(why) => html! { <p class="tick-word">{ why }</p> },
    };
    let stages = (up.stages.len() > 1)
        .then(|| html! { <p class="tick-line num">{ filled(tongue.say(torque::IN_STAGES), &[up.stages.join(" · ")]) }</p> });
    let turn = up
        .turn
        .as_ref()
        .map(|turn| html! { <p class="tick-line num">{ filled(tongue.say(torque::THEN_TURN), std::slice::from_ref(turn)) }</p> });
    html! {
        <section class="tick-joint">
            <h2 data-joint={up.row.to_string()}>{ &up.name }</h2>
            <p class="muted">{ tongue.say(torque::SET_TO) }</p>
            { setting }
            { stages }
            { turn }
        </section>
    }
}
