//! One entry: its label, what was typed, its unit and ±, what was understood, and what is wrong with it.

use super::choices::{Choices, options};
use super::icon::{Icon, icon};
use crate::browser;
use crate::desk::{Desk, use_desk, use_settings, use_slice};
use crate::shown::{self, Tail};
use crate::state::{Action, State};
use crate::words::{self, entry::Fault, filled, frame};
use buildbook::{Entry, Field, Form, Key, field_of};
use gloo_timers::callback::Timeout;
use yew::prelude::*;

/// How long a hand rests before an error is spoken of.
const REST: u32 = 900;

/// A text of more letters is not seen whole in a field: on a tablet, and on a phone.
const LONG: usize = 40;
const LONG_ON_PHONE: usize = 26;

/// How many letters are shown on either side of the one at fault.
const NEAR: usize = 16;

/// How long the keypad stays after the cursor has left: longer than a press takes.
const LINGER: u32 = 280;

/// The row of an entry.
#[derive(Properties, PartialEq)]
pub struct EntryRowProps {
    /// The entry's key: `gearing/gears/2/ratio`.
    pub at: AttrValue,
}

/// What a row shows of the state.
#[derive(Clone, PartialEq)]
struct Slice {
    entry: Option<Entry>,
    fault: Option<Fault>,
    tail: Tail,
    /// Where the entry is a choice: how many there are, and how many letters they have together.
    choices: Option<(usize, usize)>,
    focused: bool,
    read_only: bool,
}

fn slice(state: &State, key: &Key) -> Slice {
    let found = state.findings.found(key.sheet());
    let error = found
        .and_then(|found| found.errors.iter().find(|(at, _)| at == key))
        .map(|(_, error)| error);
    Slice {
        entry: state.book.entry(key.as_str()).cloned(),
        fault: error.map(|error| {
            words::entry::fault(error, &state.settings.manner(), state.settings.tongue)
        }),
        tail: shown::tail(state, key),
        choices: options(state, key).map(|all| {
            (
                all.len(),
                all.iter().map(|(_, word)| word.chars().count()).sum(),
            )
        }),
        focused: state.view.field.as_ref() == Some(key),
        read_only: state.read_only,
    }
}

/// A row for one entry, whatever its form. A key that names no field gives nothing.
#[component]
pub fn EntryRow(props: &EntryRowProps) -> Html {
    let key = Key::from(&*props.at);
    let found = {
        let key = key.clone();
        use_slice(move |state| slice(state, &key))
    };
    let tongue = use_settings().tongue;
    let rested = use_rest(found.as_ref().and_then(|f| f.entry.clone()));
    let (Some(field), Some(found)) = (field_of(&key), found) else {
        return html! {};
    };

    let blank = found.entry.is_none();
    let told = found.fault.as_ref().filter(|_| !found.focused || rested);
    let standing = match (told, blank, found.tail.assumed) {
        (Some(_), ..) => "error",
        (None, true, true) => "assumed",
        (None, true, false) => "empty",
        (None, false, _) => "entered",
    };
    let chosen_from = found.choices.is_some();
    let words = matches!(field.form, Form::Text);
    let wide = words
        || found.choices.is_some_and(|(count, letters)| {
            // The mark of an assumption takes room beside the keys.
            let most = if standing == "assumed" { 14 } else { 22 };
            count > 3 || letters > most
        });
    let id = id_of(&key);
    html! {
        <div class={classes!("row", wide.then_some("wide"))} data-standing={standing}>
            <label class="row-label" id={format!("{id}-label")} for={(!chosen_from).then(|| id.clone())}>
                { words::label(key.as_str(), tongue) }
                { words::hint(key.as_str(), tongue).map(|hint| html! { <small>{ hint }</small> }).unwrap_or_default() }
            </label>
            <div class="row-value">
                if chosen_from {
                    <Choices at={props.at.clone()} />
                } else {
                    <TextField at={props.at.clone()} text={text_of(&found)} placeholder={found.tail.placeholder.clone()}
                        invalid={told.is_some()} read_only={found.read_only} />
                    // A field shows one line of a long text: below it, and on paper, stands all of it.
                    if words {
                        <span class={classes!("only-print", "words-said", long(&found))} aria-hidden="true">{ text_of(&found) }</span>
                    }
                    { tail(field, &found.tail, blank, tongue.say(frame::ASSUMED)) }
                }
            </div>
            // One node whether there is an error or not: a list that grew would move the field and take the cursor from it.
            if let Some(fault) = told { { error(&id, &text_of(&found), fault) } }
            <Understood at={props.at.clone()} />
        </div>
    }
}

/// Whether the text has been left alone for a while.
#[hook]
fn use_rest(entry: Option<Entry>) -> bool {
    let at_rest = use_state_eq(|| entry.clone());
    {
        let at_rest = at_rest.clone();
        use_effect_with(entry.clone(), move |entry| {
            let entry = entry.clone();
            let timer = (*at_rest != entry).then(|| Timeout::new(REST, move || at_rest.set(entry)));
            move || drop(timer)
        });
    }
    *at_rest == entry
}

fn text_of(found: &Slice) -> AttrValue {
    found
        .entry
        .as_ref()
        .map_or_else(AttrValue::default, |entry| {
            AttrValue::from(entry.text.to_string())
        })
}

fn long(found: &Slice) -> Option<&'static str> {
    match text_of(found).chars().take(LONG + 1).count() {
        letters if letters > LONG => Some("long"),
        letters if letters > LONG_ON_PHONE => Some("longish"),
        _ => None,
    }
}

/// The id of a key's field on the page.
pub fn id_of(key: &Key) -> String {
    format!("f-{}", key.as_str().replace('/', "-"))
}

/// Unit, ± and the mark of an assumption, after the field.
fn tail(field: &Field, tail: &Tail, blank: bool, assumed: &'static str) -> Html {
    let figures = matches!(
        field.form,
        Form::Number(_) | Form::Money(_) | Form::Decimal(_)
    );
    if !(figures || tail.assumed && blank) {
        return html! {};
    }
    let marked = tail.assumed && (blank || tail.pm.is_some());
    html! {
        <span class="row-tail">
            if let Some(unit) = &tail.unit { <span class="unit">{ unit }</span> }
            if let Some(pm) = &tail.pm { <span class="pm">{ pm }</span> }
            if marked { <span class="tag">{ assumed }</span> }
        </span>
    }
}

/// What is wrong: the typed text with a mark under the character, and the sentence.
fn error(id: &str, text: &str, fault: &Fault) -> Html {
    let marked = fault.at.as_ref().map(|at| {
        let begins = at.start.saturating_sub(NEAR);
        let part = |from: usize, to: usize| -> String {
            text.chars().skip(from).take(to - from).collect()
        };
        let end = at.start + at.len().clamp(1, NEAR);
        let dots = |cut: bool| if cut { "…" } else { "" };
        let before = format!("{}{}", dots(begins > 0), part(begins, at.start));
        let bad = part(at.start, end);
        let more = text.chars().nth(end + NEAR).is_some();
        let after = format!("{}{}", part(end, end + NEAR), dots(more));
        // Something that is missing at the end is marked by a space.
        let bad = if bad.is_empty() { "\u{a0}".to_owned() } else { bad };
        html! { <span class="typed" aria-hidden="true">{ before }<mark>{ bad }</mark>{ after }</span> }
    });
    html! {
        <div class="row-note error" id={format!("{id}-error")}>
            { icon(Icon::Warning) }
            { marked.unwrap_or_default() }
            <p>{ &fault.said }</p>
        </div>
    }
}

#[derive(Properties, PartialEq)]
struct TextFieldProps {
    at: AttrValue,
    text: AttrValue,
    placeholder: AttrValue,
    invalid: bool,
    read_only: bool,
}

/// The field itself. What was typed is what it holds; nothing rewrites it.
#[component]
fn TextField(props: &TextFieldProps) -> Html {
    let desk = use_desk();
    let pad = {
        let key = Key::from(&*props.at);
        use_slice(move |state| shown::own_keypad(state, &key)).unwrap_or(false)
    };
    let key = Key::from(&*props.at);
    let form = field_of(&key).map(|field| field.form);
    let worded = matches!(form, Some(Form::Text | Form::Date));
    let inputmode = match (pad, form) {
        (true, _) => "none",
        (false, Some(Form::Number(_) | Form::Money(_) | Form::Decimal(_))) => "decimal",
        _ => "text",
    };
    let id = id_of(&key);
    let error = props.invalid.then(|| format!("{id}-error"));
    html! {
        <input
            id={id}
            class={classes!("field", worded.then_some("words"))}
            data-key={props.at.clone()}
            type="text"
            {inputmode}
            autocomplete="off"
            autocapitalize="off"
            spellcheck="false"
            enterkeyhint="next"
            value={props.text.clone()}
            placeholder={props.placeholder.clone()}
            readonly={props.read_only}
            aria-invalid={props.invalid.then_some("true")}
            aria-describedby={error}
            oninput={typed(desk.as_ref(), &key)}
            onfocus={entered(desk.as_ref(), &key)}
            onclick={Callback::from(hold_cursor)}
            onblur={left(desk.as_ref(), &key)}
            onkeydown={pressed(desk.as_ref(), &key)}
        />
    }
}

fn typed(desk: Option<&Desk>, key: &Key) -> Callback<InputEvent> {
    let (desk, key) = (desk.cloned(), key.clone());
    Callback::from(move |event: InputEvent| {
        if let (Some(desk), Some(input)) =
            (&desk, event.target_dyn_into::<web_sys::HtmlInputElement>())
        {
            desk.send(Action::Typed(key.clone(), input.value().into()));
        }
    })
}

fn entered(desk: Option<&Desk>, key: &Key) -> Callback<FocusEvent> {
    let (desk, key) = (desk.cloned(), key.clone());
    Callback::from(move |_| {
        if let Some(desk) = &desk {
            desk.send(Action::Field(Some(key.clone())));
        }
    })
}

/// Where the page moves as a field is entered, the browser puts the cursor beside the field instead of into it: what is then
/// selected is the page, and what is typed stands wherever. The cursor is put to the end; at the start it was of no use.
fn hold_cursor(event: MouseEvent) {
    if let Some(input) = event.target_dyn_into::<web_sys::HtmlInputElement>() {
        let nowhere = |at: Result<Option<u32>, _>| at.is_ok_and(|at| at.unwrap_or(0) == 0);
        if nowhere(input.selection_start()) && nowhere(input.selection_end()) {
            let end = u32::try_from(input.value().encode_utf16().count()).unwrap_or(u32::MAX);
            // A field that takes no cursor has no need of one.
            let _ = input.set_selection_range(end, end);
        }
    }
}

/// Leaving the field: on paper there is no keypad, and with a keyboard nothing stays behind.
fn left(desk: Option<&Desk>, key: &Key) -> Callback<FocusEvent> {
    let (desk, key) = (desk.cloned(), key.clone());
    Callback::from(move |event: FocusEvent| {
        let Some(desk) = &desk else { return };
        // The keypad's own keys do not take the cursor; when something else does, the keypad goes. Not at once: what
        // was pressed would move from under the finger before it counts as pressed.
        if event.related_target().is_none() {
            return;
        }
        let (desk, key) = (desk.clone(), key.clone());
        let field = event.target_dyn_into::<web_sys::HtmlInputElement>();
        Timeout::new(LINGER, move || {
            let back = field.is_some_and(|field| field.matches(":focus").unwrap_or(false));
            if !back && desk.state().view.field.as_ref() == Some(&key) {
                desk.send(Action::Field(None));
            }
        })
        .forget();
    })
}

fn pressed(desk: Option<&Desk>, key: &Key) -> Callback<KeyboardEvent> {
    let (desk, key) = (desk.cloned(), key.clone());
    Callback::from(move |event: KeyboardEvent| {
        let Some(desk) = &desk else { return };
        match event.key().as_str() {
            "Enter" => {
                event.prevent_default();
                next(desk, &key);
            }
            "Escape" => desk.send(Action::Field(None)),
            _ => {}
        }
    })
}

/// On to the next entry; at the end of a list a new row opens, and an empty row ends the list.
pub fn next(desk: &Desk, key: &Key) {
    let after = browser::after_field(key.as_str());
    match after.ends {
        Some((list, id)) if after.blank => {
            if let Some(next) = after.next {
                browser::focus_on(next);
            }
            desk.send(Action::RemoveRow(Key::from(list), id.into()));
        }
        Some((list, _)) => desk.send(Action::AddRow(Key::from(list))),
        None => {
            if let Some(next) = after.next {
                browser::focus_on(next);
            }
        }
    }
}

/// What was understood, where the text could mean two things; and the value in another unit, where that was asked for.
#[component]
fn Understood(props: &EntryRowProps) -> Html {
    let key = Key::from(&*props.at);
    let notes = {
        let key = key.clone();
        use_slice(move |state| shown::notes(state, &key)).unwrap_or_default()
    };
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    html! {
        <>
            if let Some(doubt) = notes.doubt {
                <div class="row-note">
                    <span>{ filled(tongue.say(frame::UNDERSTOOD), std::slice::from_ref(&doubt.understood)) }</span>
                    <button type="button" class="key quiet" data-do={format!("meant {key}")}
                        onclick={Callback::from(move |_| {
                            if let Some(desk) = &desk { desk.send(doubt.settle.clone()); }
                        })}>
                        { filled(tongue.say(frame::MEANT), std::slice::from_ref(&doubt.otherwise)) }
                    </button>
                </div>
            }
            if let Some(also) = notes.also {
                <div class="row-note"><span class="num">{ filled(tongue.say(frame::IS_ALSO), &[also]) }</span></div>
            }
        </>
    }
}
