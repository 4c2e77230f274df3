//! What the pages show of entries and figures: values with their ±, units, assumptions and doubts, as plain text.

use crate::browser;
use crate::settings::KeypadUse;
use crate::state::{Action, State};
use crate::widgets::keypad_text::with_unit_of_value;
use crate::words::{self, Tongue, frame};
use buildbook::field::Finest;
use buildbook::{Book, Entry, Field, Form, Key, Lack, ask, field_of};
use measure::{
    Doubt, Figure, Kind, Manner, Mark, Money, MoneyAsk, Reading, Stated, System, Unit, show,
    show_exact,
};

/// No-break space between a number and its unit.
pub const NBSP: char = '\u{a0}';

/// A figure as the pages write it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Written {
    /// `24.7`
    pub value: String,
    /// `± 0.4`; none for what is exact.
    pub pm: Option<String>,
    /// `mph`; empty for a plain number.
    pub unit: String,
}

impl Written {
    /// `24.7 ± 0.4 mph` on one line.
    pub fn whole(&self) -> String {
        let mut whole = self.value.clone();
        if let Some(pm) = &self.pm {
            whole.push(NBSP);
            whole.push_str(pm);
        }
        if !self.unit.is_empty() {
            whole.push(NBSP);
            whole.push_str(&self.unit);
        }
        whole
    }

    /// The same, without the word that says a figure is exact.
    pub fn shortly(&self) -> String {
        let numbers = |pm: &String| pm.contains(|c: char| c.is_ascii_digit());
        Self {
            pm: self.pm.clone().filter(numbers),
            ..self.clone()
        }
        .whole()
    }
}

/// A figure in the manner of the settings.
pub fn written(figure: &Figure, manner: &Manner) -> Written {
    of_shown(&show(figure, manner))
}

fn of_shown(shown: &measure::Shown) -> Written {
    Written {
        value: shown.value.clone(),
        pm: nonempty(&shown.plus_minus),
        unit: shown.unit.clone().into_owned(),
    }
}

/// A plain value in a kind, without ±.
pub fn plain(si: f64, kind: Kind, manner: &Manner) -> String {
    written(&Figure::exact(si, kind), manner).whole()
}

/// An amount of money as the pages write it, in the book's terms: `£1,234.50`.
pub fn money(amount: &Money, state: &State) -> String {
    amount.shown(state.settings.manner().mark, state.book.currency())
}

/// A result of the findings, be it a figure or an amount of money, or what it lacks; none where the id is not known.
pub fn answer_of<'a>(state: &'a State, id: &str) -> Option<Result<Written, &'a Lack>> {
    let found = state.findings.found(id.split('/').next()?)?;
    if let Some(amount) = found.money(id) {
        return Some(amount.as_ref().map(|reckoned| Written {
            value: money(&reckoned.money, state),
            pm: Some(state.settings.tongue.say(frame::EXACT).to_owned()),
            unit: String::new(),
        }));
    }
    let finding = found.result(id)?;
    Some(
        finding
            .as_ref()
            .map(|figure| written(figure, &state.settings.manner())),
    )
}

/// Whether a result is an amount of money that is known.
pub fn is_money(state: &State, id: &str) -> bool {
    let sheet = id.split('/').next().unwrap_or_default();
    let found = state.findings.found(sheet);
    found.is_some_and(|found| matches!(found.money(id), Some(Ok(_))))
}

/// What stands after a field.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Tail {
    /// The unit of a bare number.
    pub unit: Option<String>,
    /// The ± that stands in for one that was not typed.
    pub pm: Option<String>,
    /// Whether the value, or its ±, is assumed.
    pub assumed: bool,
    /// What is assumed while the field is blank.
    pub placeholder: String,
}

fn nonempty(text: &str) -> Option<String> {
    (!text.is_empty()).then(|| text.to_owned())
}

/// What is assumed of an entry while it is blank, as it would be typed. Paper is that of the country whose English is spoken.
pub fn assumed<'a>(state: &'a State, key: &Key) -> Option<&'a str> {
    if key.as_str() == "handover/paper" {
        let letter = state.settings.tongue == Tongue::American;
        return Some(if letter { "letter" } else { "a4" });
    }
    let found = state.findings.found(key.sheet());
    let known = found.and_then(|found| found.assumption(key));
    known.or_else(|| field_of(key)?.assumed_in(state.book.defaults_version()))
}

/// What stands after the field of an entry.
pub fn tail(state: &State, key: &Key) -> Tail {
    let Some(field) = field_of(key).map(|field| field.in_book(&state.book)) else {
        return Tail::default();
    };
    let entry = state
        .book
        .entry(key.as_str())
        .filter(|entry| !entry.is_blank());
    let assumed = assumed(state, key);
    let Form::Number(number) = &field.form else {
        let blank = entry.is_none();
        // An amount that names its currency needs no other beside it.
        let named = entry.is_some_and(|entry| {
            entry
                .text
                .contains(|c: char| c.is_alphabetic() || "€£$¥₹".contains(c))
        });
        let currency = (matches!(field.form, Form::Money(_)) && !named)
            .then(|| state.book.currency().code().to_owned());
        return Tail {
            unit: currency,
            pm: None,
            assumed: blank && assumed.is_some(),
            placeholder: assumed.unwrap_or_default().to_owned(),
        };
    };
    let manner = state.settings.manner();
    let shown = number.unit(state.settings.units);
    let unit = nonempty(shown.symbol);
    match (entry, assumed) {
        (Some(entry), _) => typed_tail(&field, entry, unit),
        (None, Some(text)) => {
            let reading = reading_of(&field, &Entry::new(text));
            let placeholder = reading
                .as_ref()
                .map_or_else(|| text.to_owned(), |r| in_unit(r.value, shown, &manner));
            Tail {
                unit,
                pm: reading.and_then(|r| assumed_pm(&r, shown, &manner)),
                assumed: true,
                placeholder,
            }
        }
        (None, None) => Tail {
            unit,
            ..Tail::default()
        },
    }
}

fn typed_tail(field: &Field, entry: &Entry, unit: Option<String>) -> Tail {
    let Some(reading) = reading_of(field, entry) else {
        return Tail {
            unit,
            ..Tail::default()
        };
    };
    let mut pm = assumed_pm(&reading, reading.unit, &Manner::default());
    if let (Some(pm), false) = (&mut pm, reading.bare || reading.unit.symbol.is_empty()) {
        // The unit stands in what was typed, so it is told with the ±.
        pm.push(NBSP);
        pm.push_str(reading.unit.symbol);
    }
    Tail {
        unit: if reading.bare {
            nonempty(reading.unit.symbol)
        } else {
            None
        },
        assumed: pm.is_some(),
        pm,
        placeholder: String::new(),
    }
}

/// The ± of the tool that stands in, in a unit.
fn assumed_pm(reading: &Reading, unit: &'static Unit, manner: &Manner) -> Option<String> {
    let size = unit.step_from_si(reading.plus.max(reading.minus));
    (reading.stated == Stated::Assumed && size > 0.0)
        .then(|| format!("±{NBSP}{}", short(size, manner)))
}

/// A ± as a person would say it: two figures where it has no more, else one, or two where it begins with 1.
fn short(value: f64, manner: &Manner) -> String {
    let power = value.abs().max(1e-12).log10().floor();
    let to = |figures: f64| {
        let scale = 10_f64.powf((figures - 1.0 - power).clamp(-9.0, 9.0));
        (value * scale).round() / scale
    };
    let (one, two) = (to(1.0), to(2.0));
    let plain = (two - value).abs() <= 1e-6 * value.abs();
    let begins_with_1 = two < 2.0 * 10_f64.powf(power);
    exact_number(if plain || begins_with_1 { two } else { one }, manner)
}

fn exact_number(value: f64, manner: &Manner) -> String {
    show_exact(value, Kind::Ratio.default_unit(System::Metric), manner).value
}

/// A value in a unit, the number alone.
pub fn in_unit(si: f64, unit: &'static Unit, manner: &Manner) -> String {
    show_exact(si, unit, manner).value
}

/// An entry as it was understood; none where it cannot be read, or is no number.
pub fn reading_of(field: &Field, entry: &Entry) -> Option<Reading> {
    let number = field.number()?;
    measure::read(&entry.text, &ask(number, entry)).ok()
}

/// What an entry says, with its unit where it was typed without one.
pub fn entry_said(book: &Book, key: &Key, entry: &Entry, tongue: Tongue) -> String {
    match (field_of(key).map(|field| field.form), &entry.unit) {
        (Some(Form::YesNo), _) => tongue
            .say(if entry.text.trim() == "yes" {
                frame::YES
            } else {
                frame::NO
            })
            .to_owned(),
        (Some(Form::Choice(_)), _) => words::choice(key.as_str(), &entry.text, tongue),
        (Some(Form::OneOf(list)), _) => {
            words::row_name(book, &Key::from(list), &entry.text, tongue)
        }
        (Some(Form::Number(number)), None) => {
            match measure::read(&entry.text, &ask(&number, entry)) {
                Ok(reading) if reading.bare => {
                    format!("{}{NBSP}{}", entry.text, reading.unit.symbol)
                }
                _ => entry.text.to_string(),
            }
        }
        (_, Some(unit)) => format!("{}{NBSP}{unit}", entry.text),
        (_, None) => entry.text.to_string(),
    }
}

/// What is said below a field.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Notes {
    /// The text could mean two things.
    pub doubt: Option<Doubting>,
    /// The value in another unit.
    pub also: Option<String>,
}

/// Two ways to read one text.
#[derive(Clone, Debug, PartialEq)]
pub struct Doubting {
    /// As it was understood.
    pub understood: String,
    /// As it could also be meant.
    pub otherwise: String,
    /// What settles it the other way.
    pub settle: Action,
}

/// What is said below the field of an entry.
pub fn notes(state: &State, key: &Key) -> Notes {
    let entry = state.book.entry(key.as_str());
    let (Some(field), Some(entry)) = (field_of(key), entry) else {
        return Notes::default();
    };
    let Some(reading) = reading_of(field, entry) else {
        return Notes {
            doubt: doubted_amount(state, key, field, entry),
            also: None,
        };
    };
    let manner = state.settings.manner();
    let also = state
        .view
        .also_in
        .as_ref()
        .filter(|(at, _)| at == key)
        .and_then(|(_, symbol)| {
            let units = field.number()?.kind.units();
            let unit = units.iter().find(|unit| unit.symbol == *symbol)?;
            Some(format!(
                "{}{NBSP}{}",
                in_unit(reading.value, unit, &manner),
                unit.symbol
            ))
        });
    Notes {
        doubt: doubt(key, field, entry, &reading, &manner),
        also,
    }
}

/// An amount of money, or a decimal number, whose mark could mean two things.
fn doubted_amount(state: &State, key: &Key, field: &Field, entry: &Entry) -> Option<Doubting> {
    let mark = entry.mark.unwrap_or(state.settings.manner().mark);
    let (understood, otherwise) = match field.form {
        Form::Money(finest) => {
            let currency = state.book.currency_at(key);
            let ask = match finest {
                Finest::Coin => MoneyAsk::amount(currency, mark),
                Finest::Price => MoneyAsk::price(currency, mark),
            };
            let reading = measure::read_money(&entry.text, &ask).ok()?;
            (
                money(&reading.money, state),
                money(&reading.otherwise?, state),
            )
        }
        Form::Decimal(places) => {
            let reading = measure::read_decimal(&entry.text, mark, None, places).ok()?;
            let show = |value| measure::shown_decimal(value, state.settings.manner().mark);
            (show(reading.value), show(reading.otherwise?))
        }
        _ => return None,
    };
    let other = match mark {
        Mark::Point => Mark::Comma,
        Mark::Comma => Mark::Point,
    };
    Some(Doubting {
        understood,
        otherwise,
        settle: Action::ReadWith(key.clone(), other),
    })
}

fn doubt(
    key: &Key,
    field: &Field,
    entry: &Entry,
    reading: &Reading,
    manner: &Manner,
) -> Option<Doubting> {
    let two = buildbook::doubt(field, entry)?;
    let say = |si: f64, unit: &'static Unit| {
        let number = in_unit(si, unit, manner);
        if unit.symbol.is_empty() {
            number
        } else {
            format!("{number}{NBSP}{}", unit.symbol)
        }
    };
    Some(match two.doubt {
        Doubt::Unit {
            understood,
            otherwise,
        } => Doubting {
            understood: say(two.understood, understood),
            otherwise: say(two.otherwise, otherwise),
            settle: Action::Put(key.clone(), Some(in_other_unit(entry, reading, otherwise))),
        },
        Doubt::Mark { otherwise, .. } => Doubting {
            understood: say(two.understood, reading.unit),
            otherwise: say(two.otherwise, reading.unit),
            settle: Action::ReadWith(key.clone(), otherwise),
        },
        _ => return None,
    })
}

/// The entry read in another unit: the typed text stays, save where the unit has to stand between value and tolerance.
fn in_other_unit(entry: &Entry, reading: &Reading, unit: &'static Unit) -> Entry {
    if reading.bare || reading.shared.is_some() {
        return entry.clone().in_unit(unit.symbol);
    }
    Entry {
        text: with_unit_of_value(&entry.text, unit.symbol).text.into(),
        ..entry.clone()
    }
}

/// Whether our own keypad serves an entry now.
pub fn own_keypad(state: &State, key: &Key) -> bool {
    let figures = field_of(key).is_some_and(|field| {
        matches!(
            field.form,
            Form::Number(_) | Form::Money(_) | Form::Decimal(_)
        )
    });
    let wanted = match state.settings.keypad {
        KeypadUse::Always => true,
        KeypadUse::Never => false,
        KeypadUse::OnTouch => browser::touched(),
    };
    let asked_away = state.view.system_keyboard && state.view.field.as_ref() == Some(key);
    figures && wanted && !asked_away && !state.read_only
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::route::Route;
    use crate::settings::Settings;
    use buildbook::{Book, Log};

    fn typed(text: &str) -> (State, Key) {
        typed_at("vehicle/track_front", text)
    }

    fn typed_at(key: &str, text: &str) -> (State, Key) {
        let key = Key::from(key);
        let state = State::new(
            Book::new("b"),
            Log::default(),
            Settings::default(),
            Route::Vehicle,
        );
        (state.after(Action::Typed(key.clone(), text.into())), key)
    }

    #[test]
    fn a_text_that_could_mean_two_things_is_asked_about_and_settled_by_the_answer() {
        let (state, key) = typed_at("vehicle/payload", "1,435");
        let doubt = notes(&state, &key).doubt;
        assert_eq!(
            doubt.as_ref().map(|d| d.understood.as_str()),
            Some("1435\u{a0}kg")
        );
        let settled = doubt.map(|d| state.clone().after(d.settle));
        let said = settled.and_then(|state| {
            state
                .book
                .entry(key.as_str())
                .map(|entry| entry.text.to_string())
        });
        assert_eq!(
            said.as_deref(),
            Some("1,435"),
            "what was typed stays as it was typed"
        );
    }

    #[test]
    fn a_bare_number_shows_its_unit_and_the_tape_s_error_as_assumed() {
        let (state, key) = typed("1435");
        let tail = tail(&state, &key);
        assert_eq!(tail.unit.as_deref(), Some("mm"));
        assert_eq!(tail.pm.as_deref(), Some("±\u{a0}1"));
        assert!(tail.assumed);
    }

    #[test]
    fn a_tools_error_in_another_unit_has_no_more_figures_than_it_is_worth() {
        let said = |value: f64| short(value, &Manner::default());
        // A caliper's 0.05 mm and a micrometer's 0.01 mm in inches, a tenth of 3.7, a tape's millimetre.
        for (value, expected) in [
            (0.05 / 25.4, "0.002"),
            (0.01 / 25.4, "0.0004"),
            (0.02 / 25.4, "0.0008"),
            (0.185, "0.19"),
            (0.05, "0.05"),
            (0.25, "0.25"),
            (1.0 / 25.4, "0.04"),
            (1.0, "1"),
        ] {
            assert_eq!(said(value), expected);
        }
    }

    #[test]
    fn a_typed_error_is_not_said_twice() {
        let (state, key) = typed("1435 ± 2 mm");
        assert_eq!(tail(&state, &key), Tail::default());
    }
}
