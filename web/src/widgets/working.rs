//! How a result came about: each step as a formula and with its numbers, its source, and where the ± comes from.

use super::icon::{Icon, icon};
use super::mathml::line_of;
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::drawings::parts::px;
use crate::shown::written;
use crate::state::{Action, CallTo, Panel};
use crate::words::{self, Phrase, Tongue, frame};
use buildbook::{Book, Key};
use measure::{Figure, Held, Source};
use std::rc::Rc;
use yew::prelude::*;

/// The panel that shows a result's working.
#[derive(Properties, PartialEq)]
pub struct WorkingPanelProps {
    /// The result's id.
    pub id: AttrValue,
}

/// The working of a result, line by line.
#[component]
pub fn WorkingPanel(props: &WorkingPanelProps) -> Html {
    let id = props.id.clone();
    let found = use_slice(move |state| {
        let figure = state.findings.result(&id)?.as_ref().ok()?.clone();
        Some((figure, Rc::clone(&state.book)))
    });
    let (desk, settings) = (use_desk(), use_settings());
    let tongue = settings.tongue;
    let (Some(Some((figure, book))), Some(desk)) = (found, desk) else {
        return html! {};
    };
    let manner = settings.manner();
    let working = figure.working();
    let told = words::result(&book, &props.id, tongue);
    let lines = working.lines.iter().enumerate().map(|(at, line)| {
        html! {
            <div class="working-line" key={at}>
                { line_of(line, &manner) }
                { line.source.map(|source| source_of(source, tongue)).unwrap_or_default() }
            </div>
        }
    });
    html! {
        <section class="panel working" data-working={props.id.clone()}>
            { head(&desk, &told, tongue) }
            <p class="num">{ written(&figure, &manner).whole() }</p>
            { words::governed(&figure, &props.id, tongue).map(|said| governed(said, figure.contested(), tongue)).unwrap_or_default() }
            { lines.collect::<Html>() }
            { shares(&figure, &book, &desk, tongue) }
        </section>
    }
}

fn head(desk: &Desk, told: &str, tongue: Tongue) -> Html {
    let desk = desk.clone();
    html! {
        <div class="panel-head">
            <h2 tabindex="-1">{ told }</h2>
            <button type="button" class="key quiet" data-do="close-panel"
                onclick={Callback::from(move |_| desk.send(Action::Panel(Panel::Drawing)))}>
                { icon(Icon::Remove) }{ tongue.say(frame::CLOSE) }
            </button>
        </div>
    }
}

fn governed(said: String, contested: bool, tongue: Tongue) -> Html {
    html! {
        <p>
            { said }
            if contested { { " " }{ tongue.say(frame::CONTESTED) } }
        </p>
    }
}

/// Title, place, and how well it is known.
pub fn source_of(source: &Source, tongue: Tongue) -> Html {
    let held: Phrase = match source.held {
        Held::Seen => frame::HELD_SEEN,
        Held::Computed => frame::HELD_COMPUTED,
        Held::Memory => frame::HELD_MEMORY,
        Held::CommonPractice => frame::HELD_PRACTICE,
    };
    html! {
        <p class="source">
            { tongue.say(frame::SOURCE) }{ ": " }{ source.title }
            if !source.place.is_empty() { { ", " }{ source.place } }
            { " (" }<span class="held">{ tongue.say(held) }</span>{ ")" }
        </p>
    }
}

/// Bars of each entry's share of the ±; a press leads to the entry.
fn shares(figure: &Figure, book: &Book, desk: &Desk, tongue: Tongue) -> Html {
    let shares = figure.shares();
    if shares.is_empty() {
        return html! { <p class="muted">{ tongue.say(frame::ALL_EXACT) }</p> };
    }
    let bars = shares.into_iter().filter(|share| share.fraction >= 0.005).map(|share| {
        let key = Key::from(&*share.key);
        let (desk, to) = (desk.clone(), key.clone());
        let percent = format!("{:.0}\u{a0}%", share.fraction * 100.0);
        html! {
            <li key={key.to_string()}>
                <button type="button" class="share" data-do={format!("go {key}")}
                    onclick={Callback::from(move |_| desk.send(Action::Call(CallTo::Entry(to.clone()))))}>
                    <span><span class="name">{ words::entry_name(book, &key, tongue) }</span>
                        if share.assumed { { " " }<span class="tag">{ tongue.say(frame::ASSUMED) }</span> }
                    </span>
                    <span class="num">{ percent }</span>
                    { share_bar(share.fraction) }
                </button>
            </li>
        }
    });
    html! {
        <>
            <h3 class="ruled">{ tongue.say(frame::SHARES) }</h3>
            <p class="muted">{ tongue.say(frame::SHARES_SAID) }</p>
            <ul class="shares">{ bars.collect::<Html>() }</ul>
        </>
    }
}

/// A bar filled by a share from 0 to 1.
pub fn share_bar(share: f64) -> Html {
    html! {
        <svg class="share-bar" viewBox="0 0 100 14" preserveAspectRatio="none" aria-hidden="true">
            <rect class="bar-ground" x="0" y="1" width="100" height="12" />
            <rect class="bar-part" x="0" y="1" width={px(share.clamp(0.0, 1.0) * 100.0)} height="12" />
        </svg>
    }
}
