//! Our own keypad: digits, marks, the units and tolerances of the field. What a key does to the text is in `keypad_text`.

use super::entry_row::next;
use super::icon::{Icon, icon};
use super::keypad_text::{self as text, Typed};
use crate::browser;
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::shown::reading_of;
use crate::state::Action;
use crate::words::{self, Phrase, filled, frame};
use buildbook::{Form, Key, field_of};
use measure::{Kind, System, Unit};
use yew::prelude::*;

/// A key and what it does.
#[derive(Clone, PartialEq)]
enum Press {
    Insert(&'static str),
    Erase,
    Clear,
    Next,
    Keyboard,
    Close,
    UnitAdded(&'static str),
    UnitMeant(&'static str),
    AlsoIn(&'static str),
    Tolerance(String),
}

/// The keypad for the entry the cursor stands in.
#[component]
pub fn Keypad() -> Html {
    let desk = use_desk();
    let settings = use_settings();
    let (field, typing) =
        use_slice(|state| (state.view.field.clone(), state.view.typing)).unwrap_or_default();
    // What the digits offer hangs on the text, so the keypad is drawn again with each letter.
    let entered = use_slice(|state| {
        let key = state.view.field.as_ref()?;
        state
            .book
            .entry(key.as_str())
            .map(|entry| entry.text.to_string())
    });
    use_effect_with(field.clone(), |field| {
        // On a narrow page the keypad takes the drawing's room, so everything has moved.
        if let Some(key) = field {
            browser::bring_into_sight(key.as_str());
        }
    });
    // And so it has when the keypad goes.
    use_effect_with((), |()| browser::bring_cursor_into_sight);
    let (Some(key), Some(desk)) = (field, desk) else {
        return html! {};
    };
    let Some(spec) = field_of(&key) else {
        return html! {};
    };
    let entered = entered.flatten().unwrap_or_default();
    let tongue = settings.tongue;
    let number = spec.number();
    let units = number
        .map(|n| offered_units(n.kind, settings.units))
        .unwrap_or_default();
    let stroke = browser::text_field(key.as_str()).is_some_and(|input| {
        let selection = selection(&input, &entered);
        text::after_stroke(&entered, selection.start)
    }) || entered.ends_with('/');
    let pad = Pad {
        desk,
        key: key.clone(),
    };
    html! {
        <section class="keypad" aria-label={tongue.say(frame::KEYPAD)}
            onpointerdown={Callback::from(|event: PointerEvent| event.prevent_default())}
            onmousedown={Callback::from(|event: MouseEvent| event.prevent_default())}>
            <div class="pad-head">
                <span>{ words::label(key.as_str(), tongue) }</span>
                { pad.word(Press::Close, frame::PAD_CLOSE, tongue) }
            </div>
            if stroke {
                { pad.denominators() }
            } else {
                { pad.units(&units, typing || entered.is_empty(), !entered.is_empty(), tongue) }
            }
            <div class="pad-keys">
                { pad.keys(settings.mark.sign(), number.is_some_and(|n| lengthy(n.kind)), tongue) }
            </div>
            if number.is_some() && !matches!(spec.form, Form::Money(_)) {
                { pad.tolerances(number.map(|n| n.kind), settings.units, tongue) }
            }
        </section>
    }
}

/// Kinds that are typed in feet and inches.
fn lengthy(kind: Kind) -> bool {
    matches!(kind, Kind::Length | Kind::Thickness)
}

/// Up to four units of a kind, the one of the settings first.
fn offered_units(kind: Kind, system: System) -> Vec<&'static Unit> {
    // A plain number is typed plainly.
    if kind.default_unit(system).symbol.is_empty() {
        return Vec::new();
    }
    let mut units = vec![kind.default_unit(system)];
    for other in [System::Metric, System::Imperial, System::UnitedStates] {
        let unit = kind.default_unit(other);
        if !units.iter().any(|u| u.symbol == unit.symbol) {
            units.push(unit);
        }
    }
    for unit in kind.units() {
        if units.len() >= 4 {
            break;
        }
        if !units.iter().any(|u| u.symbol == unit.symbol) {
            units.push(unit);
        }
    }
    units.retain(|unit| !unit.symbol.is_empty());
    units
}

/// The selection in a field, in characters.
fn selection(input: &web_sys::HtmlInputElement, entered: &str) -> std::ops::Range<usize> {
    let end = entered.chars().count();
    let start = input
        .selection_start()
        .ok()
        .flatten()
        .map_or(end, |at| at as usize);
    let stop = input
        .selection_end()
        .ok()
        .flatten()
        .map_or(end, |at| at as usize);
    // The browser counts in UTF-16; every character an entry is made of is one unit of it.
    start.min(end)..stop.min(end)
}

struct Pad {
    desk: Desk,
    key: Key,
}

impl Pad {
    /// A key with what stands on it.
    fn key(
        &self,
        press: Press,
        class: &'static str,
        on_it: Html,
        name: Option<&'static str>,
    ) -> Html {
        let (desk, key) = (self.desk.clone(), self.key.clone());
        let hook = format!("pad {}", hook(&press));
        html! {
            <button type="button" tabindex="-1" class={classes!("pad", class)} data-do={hook} aria-label={name}
                onclick={Callback::from(move |_| act(&desk, &key, &press))}>
                { on_it }
            </button>
        }
    }

    fn word(&self, press: Press, phrase: Phrase, tongue: words::Tongue) -> Html {
        self.key(press, "word", html! { { tongue.say(phrase) } }, None)
    }

    /// The usual denominators, offered right after the stroke of a fraction.
    fn denominators(&self) -> Html {
        let offered = ["2", "4", "8", "16", "32", "64"].into_iter();
        let keys =
            offered.map(|said| self.key(Press::Insert(said), "offered", html! { { said } }, None));
        html! { <div class="pad-row">{ keys.collect::<Html>() }</div> }
    }

    /// Digits in the order of a calculator, and the marks of an entry.
    fn keys(&self, mark: char, feet: bool, tongue: words::Tongue) -> Html {
        let mark = if mark == ',' { "," } else { "." };
        let plain =
            |said: &'static str| self.key(Press::Insert(said), "", html! { { said } }, None);
        let named = |said: &'static str, name: Phrase| {
            self.key(
                Press::Insert(said),
                "",
                html! { { said } },
                Some(tongue.say(name)),
            )
        };
        html! {
            <>
                { plain("7") }{ plain("8") }{ plain("9") }
                { self.key(Press::Erase, "", icon(Icon::Erase), Some(tongue.say(frame::PAD_ERASE))) }
                { self.word(Press::Clear, frame::PAD_CLEAR, tongue) }
                { plain("4") }{ plain("5") }{ plain("6") }
                { named("/", frame::PAD_STROKE) }
                { self.word(Press::Keyboard, frame::PAD_ABC, tongue) }
                { plain("1") }{ plain("2") }{ plain("3") }
                if feet { { named("'", frame::PAD_FEET) } } else { { plain("−") } }
                { self.key(Press::Next, "next word", html! { <>{ icon(Icon::Next) }{ tongue.say(frame::PAD_NEXT) }</> }, None) }
                { plain(mark) }{ plain("0") }
                { self.word(Press::Insert(" "), frame::PAD_SPACE, tongue) }
                if feet { { named("\"", frame::PAD_INCHES) } } else { { plain("±") } }
            </>
        }
    }

    /// Units: appended while typing; on a finished entry they offer what was meant, or show it as well.
    fn units(
        &self,
        units: &[&'static Unit],
        typing: bool,
        entered: bool,
        tongue: words::Tongue,
    ) -> Html {
        if units.is_empty() {
            return html! {};
        }
        let finished = entered && !typing;
        // A finished entry has a unit already; two others in pairs fill the row.
        let present = if finished { self.present_unit() } else { None };
        let offered = units.iter().filter(|unit| Some(unit.symbol) != present);
        let keys = offered.take(if finished { 2 } else { 4 }).map(|unit| {
            let symbol = unit.symbol;
            if !finished {
                return self.key(Press::UnitAdded(symbol), "word", html! { { symbol } }, None);
            }
            let meant = filled(tongue.say(frame::UNIT_MEANT), &[symbol.to_owned()]);
            let also = filled(tongue.say(frame::SHOWN_IN), &[symbol.to_owned()]);
            html! {
                <>
                    { self.key(Press::UnitMeant(symbol), "word", html! { { meant } }, None) }
                    { self.key(Press::AlsoIn(symbol), "word", html! { { also } }, None) }
                </>
            }
        });
        html! { <div class="pad-units">{ keys.collect::<Html>() }</div> }
    }

    /// The unit that the entry is in.
    fn present_unit(&self) -> Option<&'static str> {
        let state = self.desk.state();
        let entry = state.book.entry(self.key.as_str())?;
        Some(reading_of(field_of(&self.key)?, entry)?.unit.symbol)
    }

    fn tolerances(&self, kind: Option<Kind>, system: System, tongue: words::Tongue) -> Html {
        let tools: &[(Phrase, &str)] = match (kind, system) {
            (Some(kind), System::Metric) if lengthy(kind) => &[
                (frame::PAD_TAPE, "± 1 mm"),
                (frame::PAD_RULE, "± 0.5 mm"),
                (frame::PAD_CALIPER, "± 0.05 mm"),
            ],
            (Some(kind), _) if lengthy(kind) => &[
                (frame::PAD_TAPE, "± 1/32 in"),
                (frame::PAD_RULE, "± 1/64 in"),
                (frame::PAD_CALIPER, "± 0.002 in"),
            ],
            _ => &[],
        };
        html! {
            <div class="pad-row">
                { tools.iter().map(|(name, size)| self.key(
                    Press::Tolerance((*size).to_owned()), "word",
                    html! { <>{ tongue.say(*name) }<small class="num">{ *size }</small></> }, None,
                )).collect::<Html>() }
                { self.word(Press::Tolerance("exact".to_owned()), frame::PAD_EXACT, tongue) }
                { self.word(Press::Tolerance("± ".to_owned()), frame::PAD_TYPE, tongue) }
            </div>
        }
    }
}

/// The name of a press, for tests to find the key by.
fn hook(press: &Press) -> String {
    match press {
        Press::Insert(said) => (*said).to_owned(),
        Press::Erase => "erase".to_owned(),
        Press::Clear => "clear".to_owned(),
        Press::Next => "next".to_owned(),
        Press::Keyboard => "abc".to_owned(),
        Press::Close => "close".to_owned(),
        Press::UnitAdded(unit) => format!("unit {unit}"),
        Press::UnitMeant(unit) => format!("meant {unit}"),
        Press::AlsoIn(unit) => format!("also {unit}"),
        Press::Tolerance(size) => format!("tolerance {}", size.trim()),
    }
}

fn act(desk: &Desk, key: &Key, press: &Press) {
    let state = desk.state();
    let entered = state
        .book
        .entry(key.as_str())
        .map_or_else(String::new, |entry| entry.text.to_string());
    let input = browser::text_field(key.as_str());
    let at = input.as_ref().map_or_else(
        || {
            let end = entered.chars().count();
            end..end
        },
        |input| selection(input, &entered),
    );
    let typed = match press {
        Press::Insert(said) => text::inserted(&entered, &at, said),
        Press::Erase => text::erased(&entered, &at),
        Press::Clear => Typed {
            text: String::new(),
            caret: 0,
        },
        Press::UnitAdded(unit) => text::with_unit_added(&entered, unit),
        Press::UnitMeant(unit) => text::with_unit_meant(&entered, unit),
        Press::Tolerance(size) => {
            text::with_tolerance(&entered, &localised(size, state.settings.mark.sign()))
        }
        Press::Next => return next(desk, key),
        Press::Close => return desk.send(Action::Field(None)),
        Press::AlsoIn(unit) => return desk.send(Action::AlsoIn(key.clone(), unit)),
        Press::Keyboard => {
            desk.send(Action::SystemKeyboard);
            if let Some(input) = input {
                // Only a field that takes the cursor anew brings the system's keyboard up.
                let _ = input.blur();
                browser::after(60, move || {
                    let _ = input.focus();
                });
            }
            return;
        }
    };
    if let Some(input) = input {
        input.set_value(&typed.text);
        let caret = u32::try_from(typed.caret).unwrap_or(u32::MAX);
        let _ = input.set_selection_range(caret, caret);
    }
    desk.send(Action::Typed(key.clone(), typed.text.into()));
}

/// A tolerance with the decimal mark of the settings.
fn localised(size: &str, mark: char) -> String {
    size.replace('.', &mark.to_string())
}
