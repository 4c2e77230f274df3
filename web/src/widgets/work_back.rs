//! A result turned round: what is wanted, the entry that may change, and what it then must be.

mod amount;
mod figure;

use super::icon::{Icon, icon};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::shown::{Written, answer_of};
use crate::state::{Action, Panel, State, WorkBack};
use crate::words::{self, Tongue, filled, frame};
use buildbook::{Edit, Key};
use gloo_timers::callback::Timeout;
use measure::Figure;
use yew::prelude::*;

/// How long a hand rests before the search begins.
const REST: u32 = 300;

/// What the panel shows of the state.
#[derive(Clone, PartialEq)]
struct Slice {
    back: WorkBack,
    told: String,
    now: Written,
    /// The figure in full: a change too small to show is searched for again. An amount of money has none.
    figure: Option<Figure>,
    /// The entries that may change, those with the greatest say first.
    entries: Vec<(Key, String)>,
}

fn slice(state: &State) -> Option<Slice> {
    let Panel::WorkBack(back) = &state.view.panel else {
        return None;
    };
    let tongue = state.settings.tongue;
    let figure = state.findings.result(&back.result);
    let figure = figure.and_then(|figure| figure.as_ref().ok()).cloned();
    let entries = match &figure {
        Some(figure) => figure::entries(figure),
        None => amount::entries(state, &back.result),
    };
    let named = |key: Key| {
        let name = words::entry_name(&state.book, &key, tongue);
        (key, name)
    };
    Some(Slice {
        told: words::result(&state.book, &back.result, tongue),
        now: answer_of(state, &back.result)?.ok()?,
        figure,
        entries: entries.into_iter().map(named).collect(),
        back: back.clone(),
    })
}

impl Slice {
    /// The entry that was chosen to change, else the first.
    fn chosen(&self) -> Option<&Key> {
        let first = || self.entries.first().map(|(key, _)| key);
        self.back.entry.as_ref().or_else(first)
    }

    /// The answer as it is: that money is exact goes without saying.
    fn now_said(&self) -> String {
        match self.figure {
            Some(_) => self.now.whole(),
            None => self.now.value.clone(),
        }
    }
}

/// What came of the search.
#[derive(Clone, PartialEq)]
enum Outcome {
    /// Nothing asked yet, or what was asked cannot be read.
    Open(Option<String>),
    /// The entry as it then is, and the edit that puts it in.
    Found {
        said: String,
        /// What comes of it, where that is not quite what was wanted.
        reached: Option<String>,
        edit: Edit,
        others: Vec<String>,
    },
    /// It cannot be reached; the nearest.
    Missed(String),
}

fn outcome(state: &State, found: &Slice) -> Outcome {
    let Some(key) = found.chosen() else {
        return Outcome::Open(None);
    };
    if found.back.wanted.trim().is_empty() {
        return Outcome::Open(None);
    }
    match &found.figure {
        Some(now) => figure::outcome(state, found, now, key),
        None => amount::outcome(state, found, key),
    }
}

/// The panel, while a result is being turned round.
#[component]
pub fn WorkBackPanel() -> Html {
    let found = use_slice(slice).flatten();
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let reached = use_state(|| Outcome::Open(None));
    {
        // The search tries many books: it waits for the hand, off the path of the key.
        let (desk, reached) = (desk.clone(), reached.clone());
        use_effect_with(found.clone(), move |found| {
            let timer = desk.zip(found.clone()).map(|(desk, found)| {
                Timeout::new(REST, move || reached.set(outcome(&desk.state(), &found)))
            });
            move || drop(timer)
        });
    }
    let (Some(found), Some(desk)) = (found, desk) else {
        return html! {};
    };
    html! {
        <section class="panel workback" data-work-back={found.back.result.to_string()}>
            <div class="panel-head"><h2>{ tongue.say(frame::WORK_BACK) }{ ": " }{ &found.told }</h2></div>
            <div class="want">
                { want(&found, &desk, tongue) }
                if found.figure.is_none() {
                    { result(&reached, &found, &desk, tongue) }
                    { entries(&found, &desk, tongue) }
                } else {
                    { entries(&found, &desk, tongue) }
                    { result(&reached, &found, &desk, tongue) }
                }
            </div>
        </section>
    }
}

fn update(desk: &Desk, back: &WorkBack, change: impl FnOnce(&mut WorkBack)) {
    let mut back = back.clone();
    change(&mut back);
    desk.send(Action::Panel(Panel::WorkBack(back)));
}

fn want(found: &Slice, desk: &Desk, tongue: Tongue) -> Html {
    let (desk, back) = (desk.clone(), found.back.clone());
    let input = Callback::from(move |event: InputEvent| {
        if let Some(field) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
            update(&desk, &back, |back| back.wanted = field.value().into());
        }
    });
    html! {
        <div class="row">
            <label class="row-label" for="wanted">
                { tongue.say(frame::I_WANT) }
                <small>{ filled(tongue.say(frame::NOW_IT_IS), &[found.now_said()]) }</small>
            </label>
            <div class="row-value">
                <input id="wanted" class="field" type="text" inputmode="decimal" autocomplete="off" spellcheck="false"
                    value={found.back.wanted.to_string()} placeholder={found.now.value.clone()} oninput={input} />
                if found.figure.is_some() {
                    <span class="row-tail"><span class="unit">{ &found.now.unit }</span></span>
                }
            </div>
        </div>
    }
}

fn entries(found: &Slice, desk: &Desk, tongue: Tongue) -> Html {
    let chosen = found.chosen();
    let keys = found.entries.iter().map(|(key, name)| {
        let (desk, back, to) = (desk.clone(), found.back.clone(), key.clone());
        html! {
            <button key={key.to_string()} type="button" role="radio" class="choice" data-do={format!("by {key}")}
                aria-checked={if chosen == Some(key) { "true" } else { "false" }}
                onclick={Callback::from(move |_| update(&desk, &back, |back| back.entry = Some(to.clone())))}>
                { name }
            </button>
        }
    });
    html! {
        <div class="row wide">
            <span class="row-label">{ tongue.say(frame::BY_CHANGING) }</span>
            <div class="choices" role="radiogroup" aria-label={tongue.say(frame::PICK_ENTRY)}>{ keys.collect::<Html>() }</div>
        </div>
    }
}

fn result(outcome: &Outcome, found: &Slice, desk: &Desk, tongue: Tongue) -> Html {
    let leave = {
        let desk = desk.clone();
        Callback::from(move |_| desk.send(Action::Panel(Panel::Drawing)))
    };
    let name = found
        .chosen()
        .map(|key| words::label(key.as_str(), tongue))
        .unwrap_or_default();
    let (said, take) = match outcome {
        Outcome::Open(None) => (html! {}, None),
        Outcome::Open(Some(why)) | Outcome::Missed(why) => (
            html! { <p class="row-note error">{ icon(Icon::Warning) }{ why }</p> },
            None,
        ),
        Outcome::Found {
            said,
            reached,
            edit,
            others,
        } => {
            let several = (!others.is_empty()).then(|| {
                format!(
                    "{} {}",
                    tongue.say(frame::SEVERAL_ANSWERS),
                    others.join(", ")
                )
            });
            let said = html! {
                <div role="status">
                    <p>{ filled(tongue.say(frame::THEN_ENTRY_IS), &[name]) }</p>
                    <p class="got" data-do="worked-back">{ said }</p>
                    if let Some(reached) = reached { <p class="muted">{ reached }</p> }
                    if let Some(several) = several { <p class="muted">{ several }</p> }
                </div>
            };
            (said, Some(edit.clone()))
        }
    };
    let take = take.map(|edit| {
        let desk = desk.clone();
        html! {
            <button type="button" class="key main tall" data-do="use-this" onclick={Callback::from(move |_| {
                desk.send(Action::Change(edit.clone()));
                desk.send(Action::Panel(Panel::Drawing));
            })}>{ icon(Icon::Ready) }{ tongue.say(frame::USE_THIS) }</button>
        }
    });
    html! {
        <>
            { said }
            <div class="keys">
                { take.unwrap_or_default() }
                <button type="button" class="key quiet tall" data-do="leave-it" onclick={leave}>{ tongue.say(frame::LEAVE_IT) }</button>
            </div>
        </>
    }
}
