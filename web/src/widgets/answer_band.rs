//! The band that keeps the answer in sight: the figure with its ±, what it is, and what to do with it.

use super::icon::{Icon, icon};
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::shown::{Written, answer_of};
use crate::state::{Action, CallTo, Panel, State, WorkBack};
use crate::words::{self, Tongue, filled, frame, lack};
use buildbook::{Key, Why};
use gloo_timers::callback::Timeout;
use std::rc::Rc;
use yew::prelude::*;

/// How long after the last key the answer is spoken, in milliseconds.
const SPOKEN_AFTER: u32 = 800;

/// How many other answers stand side by side, with the key for the rest, until all are asked for.
const FEW: usize = 4;

/// The props of [`AnswerBand`] and [`OtherAnswers`].
#[derive(Properties, PartialEq)]
pub struct AnswerBandProps {
    /// The sheet: `gearing`.
    pub sheet: &'static str,
    /// The results that may stand in the band; the first one is shown until another is chosen. Results that end in a
    /// star stand for one of each row. Empty: the sheet's headlines.
    #[prop_or_default]
    pub answers: &'static [&'static str],
}

/// What the band shows.
#[derive(Clone, PartialEq)]
struct Slice {
    id: Option<Rc<str>>,
    told: String,
    said: Said,
    working: bool,
    working_back: bool,
}

#[derive(Clone, PartialEq)]
enum Said {
    Figure {
        written: Written,
        first: Option<First>,
    },
    Needs {
        keys: Vec<(Key, String)>,
        tells: &'static str,
        begun: bool,
    },
    Lack(String, Option<Key>),
    Nothing(&'static str),
}

/// The entry whose ± matters most.
#[derive(Clone, PartialEq)]
struct First {
    key: Key,
    name: String,
    share: f64,
}

/// The results of a sheet that may stand in its band, as they are in the findings now.
pub fn offered(state: &State, sheet: &str, answers: &[&str]) -> Vec<Rc<str>> {
    let Some(found) = state.findings.found(sheet) else {
        return Vec::new();
    };
    if answers.is_empty() {
        return found.headlines.clone();
    }
    let matching = |pattern: &&str| -> Vec<Rc<str>> {
        let results = found.results().map(|(id, _)| id);
        let known = results.chain(found.amounts().map(|(id, _)| id));
        known
            .filter(|id| words::matches(pattern, id))
            .map(Rc::clone)
            .collect()
    };
    answers.iter().flat_map(matching).collect()
}

fn slice(state: &State, sheet: &'static str, answers: &[&str]) -> Slice {
    let tongue = state.settings.tongue;
    let id = state.answer(sheet, &offered(state, sheet, answers));
    let told = id
        .as_ref()
        .map_or_else(String::new, |id| words::result(&state.book, id, tongue));
    let tells = words::subject(sheet).map_or("", |words| tongue.say(words.tells));
    let finding = id.as_ref().and_then(|id| answer_of(state, id));
    let figure = id
        .as_ref()
        .and_then(|id| state.findings.result(id)?.as_ref().ok());
    let begun = state.findings.found(sheet).is_some_and(|found| found.begun);
    let said = match finding {
        None => Said::Nothing(tells),
        Some(Ok(written)) => Said::Figure {
            written,
            first: figure
                .and_then(|figure| figure.shares().into_iter().next())
                .map(|share| {
                    let key = Key::from(&*share.key);
                    First {
                        name: words::entry_name(&state.book, &key, tongue),
                        key,
                        share: share.fraction,
                    }
                }),
        },
        Some(Err(lacking)) => match lacking.why() {
            Why::Needs(keys) => Said::Needs {
                keys: keys
                    .iter()
                    .map(|key| (key.clone(), words::entry_name(&state.book, key, tongue)))
                    .collect(),
                tells,
                begun,
            },
            other => {
                let key = if let Why::Entry(key) = other {
                    Some(key.clone())
                } else {
                    None
                };
                Said::Lack(lack::said(lacking, &state.book, tongue), key)
            }
        },
    };
    Slice {
        working: matches!(&state.view.panel, Panel::Working(_)),
        working_back: matches!(&state.view.panel, Panel::WorkBack(_)),
        id,
        told,
        said,
    }
}

/// The answer band of a sheet, with the page's heading in it.
#[component]
pub fn AnswerBand(props: &AnswerBandProps) -> Html {
    let (sheet, answers) = (props.sheet, props.answers);
    let found = use_slice(move |state| slice(state, sheet, answers));
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let (Some(found), Some(desk)) = (found, desk) else {
        return html! {};
    };
    let name = words::subject(sheet).map_or("", |words| tongue.say(words.name));
    html! {
        <header class={classes!("band", found.working_back.then_some("wanted"))}>
            <div class="band-said">
                <div class="band-head">
                    <h1 tabindex="-1">{ name }</h1>
                    <p class="band-what">{ &found.told }</p>
                </div>
                { said(&found, tongue) }
            </div>
            { keys(&found, &desk, tongue) }
            <Spoken text={spoken(&found, tongue)} />
        </header>
    }
}

/// The figure, or what is still needed for it.
fn said(found: &Slice, tongue: Tongue) -> Html {
    match &found.said {
        Said::Figure { written, .. } => html! {
            <p class="band-figure" data-result={found.id.as_ref().map(ToString::to_string)}>
                <span class="fig">{ &written.value }</span>
                if let Some(pm) = &written.pm { <span class="pm">{ pm }</span> }
                if !written.unit.is_empty() { <span class="unit">{ &written.unit }</span> }
            </p>
        },
        Said::Needs { keys, tells, begun } => {
            let count = filled(
                tongue.say(frame::ANSWER_IN),
                &[lack::entries(keys.len(), tongue)],
            );
            let (lead, small) = if *begun {
                (count, still(keys, tongue))
            } else {
                ((*tells).to_owned(), count)
            };
            html! { <p class="band-lack" data-result={found.id.as_ref().map(ToString::to_string)}>{ lead }<small>{ small }</small></p> }
        }
        Said::Lack(why, _) => html! {
            <p class="band-lack" data-result={found.id.as_ref().map(ToString::to_string)}>{ why }</p>
        },
        Said::Nothing(tells) => html! { <p class="band-lack">{ *tells }</p> },
    }
}

/// `Still needed: tyre, final drive.`
fn still(keys: &[(Key, String)], tongue: Tongue) -> String {
    let names: Vec<&str> = keys.iter().take(3).map(|(_, name)| name.as_str()).collect();
    let more = if keys.len() > 3 { " …" } else { "" };
    format!(
        "{}: {}{more}",
        tongue.say(frame::STILL_NEEDED),
        names.join(", ")
    )
}

/// Working, Work back, and the entry to check first.
fn keys(found: &Slice, desk: &Desk, tongue: Tongue) -> Html {
    let Some(id) = &found.id else { return html! {} };
    match &found.said {
        Said::Figure { first, .. } => {
            let working = if found.working {
                Panel::Drawing
            } else {
                Panel::Working(Rc::clone(id))
            };
            let back = WorkBack {
                result: Rc::clone(id),
                entry: None,
                wanted: "".into(),
            };
            let back = if found.working_back {
                Panel::Drawing
            } else {
                Panel::WorkBack(back)
            };
            html! {
                <div class="band-keys">
                    { panel_key(desk, "working", Icon::Working, tongue.say(frame::WORKING), found.working, working) }
                    { panel_key(desk, "work-back", Icon::WorkBack, tongue.say(frame::WORK_BACK), found.working_back, back) }
                    { first.as_ref().map(|first| check(desk, first, tongue)).unwrap_or_default() }
                </div>
            }
        }
        Said::Needs { keys, .. } => html! {
            <div class="band-keys">{ keys.iter().take(2).map(|(key, name)| next_needed(desk, key, name)).collect::<Html>() }</div>
        },
        Said::Lack(_, Some(key)) => html! {
            <div class="band-keys">{ next_needed(desk, key, tongue.say(frame::GO_TO_ENTRY)) }</div>
        },
        _ => html! {},
    }
}

fn panel_key(
    desk: &Desk,
    name: &'static str,
    picture: Icon,
    said: &'static str,
    pressed: bool,
    panel: Panel,
) -> Html {
    let desk = desk.clone();
    html! {
        <button type="button" class="key tall" data-do={name} aria-pressed={if pressed { "true" } else { "false" }}
            onclick={Callback::from(move |_| desk.send(Action::Panel(panel.clone())))}>
            { icon(picture) }{ said }
        </button>
    }
}

/// The entry to check first with its share of the ±; a press goes there.
fn check(desk: &Desk, first: &First, tongue: Tongue) -> Html {
    let (desk, key) = (desk.clone(), first.key.clone());
    let percent = format!("{:.0}\u{a0}%", first.share * 100.0);
    html! {
        <button type="button" class="key check" data-do={format!("check {}", first.key)}
            onclick={Callback::from(move |_| desk.send(Action::Call(CallTo::Entry(key.clone()))))}>
            { icon(Icon::Measure) }
            <span>
                { tongue.say(frame::CHECK_FIRST) }{ ": " }{ &first.name }{ " " }
                <b class="nowrap">{ filled(tongue.say(frame::CHECK_FIRST_SHARE), &[percent]) }</b>
            </span>
        </button>
    }
}

fn next_needed(desk: &Desk, key: &Key, name: &str) -> Html {
    let (desk, to) = (desk.clone(), key.clone());
    html! {
        <button type="button" class="key check" data-do={format!("go {key}")}
            onclick={Callback::from(move |_| desk.send(Action::Call(CallTo::Entry(to.clone()))))}>
            { icon(Icon::Next) }<span>{ name }</span>
        </button>
    }
}

/// What those who listen hear.
fn spoken(found: &Slice, tongue: Tongue) -> String {
    match &found.said {
        Said::Figure { written, .. } => {
            let figure = written.whole().replace('±', tongue.say(frame::PLUS_MINUS));
            filled(tongue.say(frame::READ_OUT), &[found.told.clone(), figure])
        }
        Said::Needs { keys, .. } => still(keys, tongue),
        Said::Lack(why, _) => why.clone(),
        Said::Nothing(_) => String::new(),
    }
}

#[derive(Properties, PartialEq)]
struct SpokenProps {
    text: String,
}

/// A live region that waits until the hand rests.
#[component]
fn Spoken(props: &SpokenProps) -> Html {
    let text = use_state(String::new);
    {
        let heard = text.clone();
        use_effect_with(props.text.clone(), move |wanted| {
            let wanted = wanted.clone();
            let timer = Timeout::new(SPOKEN_AFTER, move || heard.set(wanted));
            move || drop(timer)
        });
    }
    html! { <p class="unseen" aria-live="polite" role="status">{ (*text).clone() }</p> }
}

/// The sheet's other answers, side by side: a press brings one into the band.
#[component]
pub fn OtherAnswers(props: &AnswerBandProps) -> Html {
    let (sheet, answers) = (props.sheet, props.answers);
    let others = use_slice(move |state| others(state, sheet, answers)).unwrap_or_default();
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let all = use_state(|| false);
    if others.len() < 2 {
        return html! {};
    }
    let count = others.len();
    // One row of four is enough until more are asked for; the one in the band is always among them.
    let few = count > FEW && !*all;
    let chosen = others.iter().position(|other| other.chosen).unwrap_or(0);
    let seen = move |at: usize| !few || at < FEW - 2 || at == chosen.max(FEW - 2);
    let more = (count > FEW).then(|| {
        let (all, open) = (all.clone(), *all);
        let said = if open { tongue.say(frame::FEWER_ANSWERS).to_owned() } else { filled(tongue.say(frame::ALL_ANSWERS), &[count.to_string()]) };
        html! {
            <button type="button" class="other all" data-do={format!("all-answers {sheet}")} aria-expanded={if open { "true" } else { "false" }}
                onclick={Callback::from(move |_| all.set(!open))}>{ said }</button>
        }
    });
    let keys = others.into_iter().enumerate().filter(|(at, _)| seen(*at)).map(|(_, other)| {
        let (desk, id) = (desk.clone(), Rc::clone(&other.id));
        html! {
            <button key={other.id.to_string()} type="button" class="other" data-do={format!("answer {}", other.id)}
                aria-pressed={if other.chosen { "true" } else { "false" }}
                onclick={Callback::from(move |_| if let Some(desk) = &desk { desk.send(Action::Answer(Rc::clone(&id))); })}>
                <span class="what">{ other.told }</span>
                <span class="num">{ other.written }</span>
            </button>
        }
    });
    html! { <nav class="others" aria-label={tongue.say(frame::OTHER_ANSWERS)}>{ keys.collect::<Html>() }{ more.unwrap_or_default() }</nav> }
}

#[derive(Clone, PartialEq)]
struct Other {
    id: Rc<str>,
    told: String,
    written: String,
    chosen: bool,
}

fn others(state: &State, sheet: &str, answers: &[&str]) -> Vec<Other> {
    let offered = offered(state, sheet, answers);
    let chosen = state.answer(sheet, &offered);
    let known = offered.iter().filter_map(|id| {
        let written = answer_of(state, id)?.ok()?;
        Some(Other {
            id: Rc::clone(id),
            told: words::result(&state.book, id, state.settings.tongue),
            written: Written {
                pm: written.pm.filter(|_| state.findings.result(id).is_some()),
                ..written
            }
            .whole(),
            chosen: chosen.as_ref() == Some(id),
        })
    });
    known.take(12).collect()
}
