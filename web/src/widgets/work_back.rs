//! A result turned round: the figure that is wanted, the entry that may change, and what it then must be.

use super::icon::{Icon, icon};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::shown::{plain, written};
use crate::state::{Action, Panel, State, WorkBack};
use crate::words::{self, Tongue, filled, frame};
use buildbook::{Edit, Key, WorkBackError, field_of};
use gloo_timers::callback::Timeout;
use measure::{Ask, Figure};
use yew::prelude::*;

/// How long a hand rests before the search begins.
const REST: u32 = 300;

/// How many entries are offered to change.
const OFFERED: usize = 6;

/// What the panel shows of the state.
#[derive(Clone, PartialEq)]
struct Slice {
    back: WorkBack,
    told: String,
    now: Figure,
    /// The number entries the result rests on, those with the greatest say first.
    entries: Vec<(Key, String)>,
}

fn slice(state: &State) -> Option<Slice> {
    let Panel::WorkBack(back) = &state.view.panel else {
        return None;
    };
    let now = state.findings.result(&back.result)?.as_ref().ok()?.clone();
    let tongue = state.settings.tongue;
    let mut parts: Vec<(f64, Key)> = now
        .contributions()
        .iter()
        .map(|part| ((part.slope * part.value).abs(), Key::from(&*part.key)))
        .filter(|(_, key)| field_of(key).is_some_and(|field| field.number().is_some()))
        .collect();
    // The few that are offered are picked out one by one: a sort of the library would be ten times this code.
    let mut entries = Vec::with_capacity(OFFERED);
    while let Some(most) = most_telling(&parts).filter(|_| entries.len() < OFFERED) {
        let (_, key) = parts.remove(most);
        entries.push((key.clone(), words::entry_name(&state.book, &key, tongue)));
    }
    Some(Slice {
        told: words::result(&state.book, &back.result, tongue),
        entries,
        back: back.clone(),
        now,
    })
}

/// Where the entry with the greatest say stands, the first of equals.
fn most_telling(parts: &[(f64, Key)]) -> Option<usize> {
    let mut most: Option<usize> = None;
    for (at, (say, _)) in parts.iter().enumerate() {
        if most.is_none_or(|known| *say > parts[known].0) {
            most = Some(at);
        }
    }
    most
}

/// What came of the search.
#[derive(Clone, PartialEq)]
enum Outcome {
    /// Nothing asked yet, or what was asked cannot be read.
    Open(Option<String>),
    /// The entry, what it is then, and the edit that puts it in.
    Found {
        said: String,
        reached: String,
        edit: Edit,
        others: Vec<String>,
        met: bool,
    },
    /// It cannot be reached; the nearest.
    Missed(String),
}

/// The wanted figure as a number; what is wrong with it as a sentence.
fn wanted(state: &State, text: &str, now: &Figure) -> Result<f64, Option<String>> {
    if text.trim().is_empty() {
        return Err(None);
    }
    let manner = state.settings.manner();
    let ask = Ask {
        whole: false,
        signed: true,
        ..Ask::of(now.kind(), &manner)
    };
    measure::read(text, &ask)
        .map(|reading| reading.value)
        .map_err(|error| {
            let fault = words::entry::fault(&error.into(), &manner, state.settings.tongue);
            Some(fault.said)
        })
}

fn outcome(state: &State, found: &Slice) -> Outcome {
    let Some(key) = found
        .back
        .entry
        .clone()
        .or_else(|| found.entries.first().map(|(key, _)| key.clone()))
    else {
        return Outcome::Open(None);
    };
    let aim = match wanted(state, &found.back.wanted, &found.now) {
        Ok(aim) => aim,
        Err(why) => return Outcome::Open(why),
    };
    let manner = state.settings.manner();
    let kind = found.now.kind();
    match buildbook::work_back(
        &state.book,
        &state.findings,
        &found.back.result,
        &key,
        aim,
        &manner,
    ) {
        Ok(back) => {
            let entry_kind = field_of(&key)
                .and_then(|field| field.number())
                .map(|number| number.kind);
            let value =
                |si: f64| entry_kind.map_or_else(String::new, |kind| plain(si, kind, &manner));
            Outcome::Found {
                said: back.figure.as_ref().map_or_else(
                    || value(back.value),
                    |figure| written(figure, &manner).whole(),
                ),
                reached: written(&back.result, &manner).whole(),
                others: back.others.iter().map(|other| value(*other)).collect(),
                edit: back.edit,
                met: back.met,
            }
        }
        Err(WorkBackError::NoRoot { reached, .. }) => {
            let nearest = plain(reached, kind, &manner);
            Outcome::Missed(filled(
                state.settings.tongue.say(frame::CANNOT_REACH),
                &[nearest],
            ))
        }
        Err(_) => Outcome::Missed(state.settings.tongue.say(frame::NO_ANSWER).to_owned()),
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
                { entries(&found, &desk, tongue) }
                { result(&reached, &found, &desk, tongue) }
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
    let manner = desk.state().settings.manner();
    let shown = written(&found.now, &manner);
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
                <small>{ filled(tongue.say(frame::NOW_IT_IS), &[shown.whole()]) }</small>
            </label>
            <div class="row-value">
                <input id="wanted" class="field" type="text" inputmode="decimal" autocomplete="off" spellcheck="false"
                    value={found.back.wanted.to_string()} placeholder={shown.value} oninput={input} />
                <span class="row-tail"><span class="unit">{ shown.unit }</span></span>
            </div>
        </div>
    }
}

fn entries(found: &Slice, desk: &Desk, tongue: Tongue) -> Html {
    let chosen = found
        .back
        .entry
        .clone()
        .or_else(|| found.entries.first().map(|(key, _)| key.clone()));
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
        .back
        .entry
        .as_ref()
        .or_else(|| found.entries.first().map(|(key, _)| key));
    let name = name
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
            met,
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
                    if !*met { <p class="muted">{ reached }</p> }
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
