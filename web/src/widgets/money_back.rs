//! An amount of money turned round: the sum that is wanted, the price or limit that may change, and what it then must be.

use super::icon::{Icon, icon};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::shown::{answer_of, money};
use crate::state::{Action, Panel, State, WorkBack};
use crate::words::{self, Tongue, filled, frame};
use buildbook::{BookError, Edit, Key, money_back, money_entries};
use gloo_timers::callback::Timeout;
use measure::MoneyAsk;
use yew::prelude::*;

/// How long a hand rests before the search begins.
const REST: u32 = 300;

/// The most entries that are offered.
const MOST: usize = 8;

#[derive(Clone, PartialEq)]
struct Slice {
    back: WorkBack,
    told: String,
    now: String,
    entries: Vec<(Key, String)>,
}

fn slice(state: &State) -> Option<Slice> {
    let Panel::WorkBack(back) = &state.view.panel else {
        return None;
    };
    let tongue = state.settings.tongue;
    let entries = money_entries(&state.findings, &back.result)
        .into_iter()
        .take(MOST)
        .map(|key| (key.clone(), words::entry_name(&state.book, &key, tongue)));
    Some(Slice {
        told: words::result(&state.book, &back.result, tongue),
        now: answer_of(state, &back.result)?.ok()?.value,
        entries: entries.collect(),
        back: back.clone(),
    })
}

impl Slice {
    fn chosen(&self) -> Option<Key> {
        let first = || self.entries.first().map(|(key, _)| key.clone());
        self.back.entry.clone().or_else(first)
    }
}

#[derive(Clone, PartialEq)]
enum Outcome {
    Open(Option<String>),
    Found {
        said: String,
        reached: Option<String>,
        edit: Edit,
    },
    Missed(String),
}

fn outcome(state: &State, found: &Slice) -> Outcome {
    let (Some(key), wanted) = (found.chosen(), found.back.wanted.trim()) else {
        return Outcome::Open(None);
    };
    if wanted.is_empty() {
        return Outcome::Open(None);
    }
    let manner = state.settings.manner();
    let ask = MoneyAsk::amount(state.book.currency(), manner.mark);
    let aim = match measure::read_money(wanted, &ask) {
        Ok(reading) => reading.money,
        Err(error) => {
            let fault =
                words::entry::fault(&BookError::Money(error), &manner, state.settings.tongue);
            return Outcome::Open(Some(fault.said));
        }
    };
    match money_back(&state.book, &state.findings, &found.back.result, &key, &aim) {
        Ok(back) => Outcome::Found {
            said: money(&back.value, state),
            reached: (!back.met).then(|| money(&back.result, state)),
            edit: back.edit,
        },
        Err(_) => Outcome::Missed(state.settings.tongue.say(frame::NO_ANSWER).to_owned()),
    }
}

/// The panel, while an amount is being turned round.
#[component]
pub fn MoneyBackPanel() -> Html {
    let found = use_slice(slice).flatten();
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let reached = use_state(|| Outcome::Open(None));
    {
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
                { result(&reached, &found, &desk, tongue) }
                { entries(&found, &desk, tongue) }
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
                <small>{ filled(tongue.say(frame::NOW_IT_IS), std::slice::from_ref(&found.now)) }</small>
            </label>
            <div class="row-value">
                <input id="wanted" class="field" type="text" inputmode="decimal" autocomplete="off" spellcheck="false"
                    value={found.back.wanted.to_string()} placeholder={found.now.clone()} oninput={input} />
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
                aria-checked={if chosen.as_ref() == Some(key) { "true" } else { "false" }}
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
        } => {
            let said = html! {
                <div role="status">
                    <p>{ filled(tongue.say(frame::THEN_ENTRY_IS), &[name]) }</p>
                    <p class="got" data-do="worked-back">{ said }</p>
                    if let Some(reached) = reached { <p class="muted">{ &found.told }{ ": " }{ reached }</p> }
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
                { take }
                <button type="button" class="key quiet tall" data-do="leave-it" onclick={leave}>{ tongue.say(frame::LEAVE_IT) }</button>
            </div>
        </>
    }
}
