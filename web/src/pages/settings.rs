//! The settings of this browser, and the units of the open book.

use crate::desk::{use_desk, use_settings, use_slice};
use crate::state::Action;
use crate::words::{Phrase, frame};
use buildbook::store::ROUGH;
use buildbook::{Entry, UNITS_KEY};
use yew::prelude::*;

/// A setting: its kept name, what it is called, its values, and a word of advice.
struct Setting {
    name: &'static str,
    said: Phrase,
    values: &'static [(&'static str, Phrase)],
    advice: Option<Phrase>,
}

/// What the rough book has: it is shown in the reader's usual units, and keeps none of its own.
static ROUGH_UNITS: [Setting; 1] = [Setting {
    name: "units",
    said: frame::UNITS,
    values: frame::FAMILIES,
    advice: Some(frame::UNITS_SAID),
}];

static BOOK_UNITS: [Setting; 2] = [
    Setting {
        name: "book-units",
        said: frame::BOOK_UNITS,
        values: frame::FAMILIES,
        advice: Some(frame::BOOK_UNITS_SAID),
    },
    Setting {
        name: "units",
        said: frame::NEW_UNITS,
        values: frame::FAMILIES,
        advice: Some(frame::NEW_UNITS_SAID),
    },
];

static SETTINGS: [Setting; 6] = [
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
    let book = use_slice(|state| (&**state.book.id() == ROUGH, state.read_only));
    let (rough, read_only) = book.unwrap_or_default();
    let tongue = settings.tongue;
    let units: &[Setting] = if rough { &ROUGH_UNITS } else { &BOOK_UNITS };
    let all = units.iter().chain(&SETTINGS).map(|setting| {
        let values = setting.values.iter().map(|(value, said)| {
            let (desk, name, value) = (desk.clone(), setting.name, *value);
            let chosen = settings.value(name) == value;
            let of_book = name == "book-units";
            let press = Callback::from(move |_| {
                if let Some(desk) = &desk {
                    desk.send(if of_book {
                        Action::Put(UNITS_KEY.into(), Some(Entry::new(value)))
                    } else {
                        Action::Set(name, value)
                    });
                }
            });
            html! {
                <button key={value} type="button" role="radio" class="choice" data-do={format!("set {name} {value}")}
                    aria-checked={if chosen { "true" } else { "false" }} disabled={of_book && read_only} onclick={press}>
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
                <p class="muted">{ tongue.say(if rough { frame::SETTINGS_SAID } else { frame::OTHER_SETTINGS_SAID }) }</p>
            </div>
        </main>
    }
}
