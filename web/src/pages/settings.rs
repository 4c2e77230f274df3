//! The settings of this browser.

use crate::desk::{use_desk, use_settings};
use crate::state::Action;
use crate::words::{Phrase, frame};
use yew::prelude::*;

/// A setting: its kept name, what it is called, its values, and a word of advice.
struct Setting {
    name: &'static str,
    said: Phrase,
    values: &'static [(&'static str, Phrase)],
    advice: Option<Phrase>,
}

static SETTINGS: [Setting; 7] = [
    Setting {
        name: "units",
        said: frame::UNITS,
        values: &[
            ("metric", frame::UNITS_METRIC),
            ("imperial", frame::UNITS_IMPERIAL),
            ("us", frame::UNITS_US),
        ],
        advice: Some(frame::UNITS_SAID),
    },
    Setting {
        name: "fractions",
        said: frame::FRACTIONS,
        values: &[("no", frame::FRACTIONS_NO), ("yes", frame::FRACTIONS_YES)],
        advice: None,
    },
    Setting {
        name: "mark",
        said: frame::DECIMAL_MARK,
        values: &[("point", frame::MARK_POINT), ("comma", frame::MARK_COMMA)],
        advice: None,
    },
    Setting {
        name: "tongue",
        said: frame::LANGUAGE,
        values: &[("en-GB", frame::BRITISH), ("en-US", frame::AMERICAN)],
        advice: None,
    },
    Setting {
        name: "look",
        said: frame::LOOK,
        values: &[
            ("auto", frame::LOOK_AUTO),
            ("light", frame::LOOK_LIGHT),
            ("dark", frame::LOOK_DARK),
            ("sun", frame::LOOK_SUN),
        ],
        advice: Some(frame::LOOK_SUN_SAID),
    },
    Setting {
        name: "thumb",
        said: frame::THUMB,
        values: &[("right", frame::THUMB_RIGHT), ("left", frame::THUMB_LEFT)],
        advice: None,
    },
    Setting {
        name: "keypad",
        said: frame::KEYPAD_USE,
        values: &[
            ("touch", frame::KEYPAD_AUTO),
            ("always", frame::KEYPAD_ALWAYS),
            ("never", frame::KEYPAD_NEVER),
        ],
        advice: None,
    },
];

/// The settings page.
#[component]
pub fn SettingsPage() -> Html {
    let (desk, settings) = (use_desk(), use_settings());
    let tongue = settings.tongue;
    let all = SETTINGS.iter().map(|setting| {
        let values = setting.values.iter().map(|(value, said)| {
            let (desk, name, value) = (desk.clone(), setting.name, *value);
            let chosen = settings.value(name) == value;
            html! {
                <button key={value} type="button" role="radio" class="choice" data-do={format!("set {name} {value}")}
                    aria-checked={if chosen { "true" } else { "false" }}
                    onclick={Callback::from(move |_| if let Some(desk) = &desk { desk.send(Action::Set(name, value)); })}>
                    { tongue.say(*said) }
                </button>
            }
        });
        html! {
            <div class="setting card" key={setting.name}>
                <span class="legend" id={format!("s-{}", setting.name)}>{ tongue.say(setting.said) }</span>
                <div class="choices" role="radiogroup" aria-labelledby={format!("s-{}", setting.name)}>{ values.collect::<Html>() }</div>
                { setting.advice.map(|advice| html! { <p>{ tongue.say(advice) }</p> }).unwrap_or_default() }
            </div>
        }
    });
    html! {
        <main id="page" class="plain" data-page="settings">
            <h1 class="ruled" tabindex="-1">{ tongue.say(frame::SETTINGS) }</h1>
            <div class="settings">
                { all.collect::<Html>() }
                <p class="muted">{ tongue.say(frame::SETTINGS_SAID) }</p>
            </div>
        </main>
    }
}
