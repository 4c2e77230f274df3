//! The parts of the sheet, one on the page at a time: steering, pedals, cables and pipes, what changes sides.

use crate::desk::{use_desk, use_slice, use_tongue};
use crate::state::{Action, State};
use crate::words::{Phrase, conversion as said, filled};
use buildbook::Key;
use yew::prelude::*;

/// The parts, each with its name.
pub const PARTS: &[(&str, Phrase)] = &[
    ("steering", said::STEERING),
    ("pedals", said::PEDALS),
    ("routes", said::ROUTES),
    ("sides", said::SIDES),
];

/// Under this key the view remembers which part is shown.
fn open_of(part: &str) -> Key {
    Key::from("conversion/part").under(part).under("open")
}

/// The part that is shown.
pub fn part(state: &State) -> &'static str {
    let open = PARTS.iter().find(|(part, _)| state.is_open(&open_of(part)));
    open.map_or("steering", |(part, _)| part)
}

/// The part that an entry stands in.
pub fn part_of(key: &Key) -> Option<&'static str> {
    let name = key
        .as_str()
        .strip_prefix("conversion/")?
        .split('/')
        .next()?;
    Some(match name {
        "routes" => "routes",
        "changes" | "others" => "sides",
        "foot" | "foot_limit" | "panic" | "pistons" | "fork_force" | "fork_travel" => "pedals",
        _ if name.starts_with("brake") || name.starts_with("clutch") => "pedals",
        _ => "steering",
    })
}

/// What has to be done for a part to come onto the page.
pub fn opening(state: &State, wanted: &str) -> Vec<Action> {
    let wrong = |part: &&str| state.is_open(&open_of(part)) != (**part == *wanted);
    let names = PARTS.iter().map(|(part, _)| *part);
    names
        .filter(wrong)
        .map(|part| Action::Fold(open_of(part)))
        .collect()
}

/// The props of [`Parts`].
#[derive(Properties, PartialEq)]
pub struct PartsProps {
    /// The parts, each with its name.
    pub parts: &'static [(&'static str, Phrase)],
}

/// A key for each part.
#[component]
pub fn Parts(props: &PartsProps) -> Html {
    let found = use_slice(|state| {
        let open = state.findings.conversion.open_changes().count();
        (part(state), open)
    });
    let (desk, tongue) = (use_desk(), use_tongue());
    let (Some((shown, open)), Some(desk)) = (found, desk) else {
        return html! {};
    };
    let keys = props.parts.iter().map(|(part, name)| {
        let (desk, part) = (desk.clone(), *part);
        let press = Callback::from(move |_: MouseEvent| {
            opening(&desk.state(), part).into_iter().for_each(|action| desk.send(action));
        });
        html! {
            <button key={part} type="button" class="key tall" data-do={format!("part {part}")}
                aria-pressed={if part == shown { "true" } else { "false" }} onclick={press}>
                { tongue.say(*name) }
                if part == "sides" { <small>{ filled(tongue.say(said::OPEN_OF), &[open.to_string()]) }</small> }
            </button>
        }
    });
    html! { <nav class="keys parts" aria-label={tongue.say(said::PARTS)}>{ keys.collect::<Html>() }</nav> }
}
