//! How an amount of money came about: sums as a ledger, products and shares as formulas, all exact.

use super::icon::{Icon, icon};
use super::working::source_of;
use crate::desk::{use_desk, use_settings, use_slice};
use crate::shown::{answer_of, money};
use crate::state::{Action, Panel, State};
use crate::words::{self, Tongue, frame};
use buildbook::{Key, field_of};
use measure::{Currency, Decimal, Money, MoneyExpr, MoneyLine, shown_decimal};
use std::rc::Rc;
use trade::costs::Reckoned;
use yew::prelude::*;

/// The panel that shows the working of an amount.
#[derive(Properties, PartialEq)]
pub struct MoneyWorkingProps {
    /// The result's id.
    pub id: AttrValue,
}

/// The working of an amount, line by line.
#[component]
pub fn MoneyWorkingPanel(props: &MoneyWorkingProps) -> Html {
    let id = props.id.clone();
    let found = use_slice(move |state| {
        let sheet = id.split('/').next()?;
        let reckoned: Reckoned = state
            .findings
            .found(sheet)?
            .money(&id)?
            .as_ref()
            .ok()?
            .clone();
        let whole = answer_of(state, &id)?.ok()?.whole();
        let told = words::result(&state.book, &id, state.settings.tongue);
        let lines: Vec<Said> = reckoned
            .working
            .lines
            .iter()
            .map(|line| Said::of(line, reckoned.money.currency(), state))
            .collect();
        Some((told, whole, lines))
    });
    let (desk, tongue) = (use_desk(), use_settings().tongue);
    let (Some(Some((told, whole, lines))), Some(desk)) = (found, desk) else {
        return html! {};
    };
    let close = Callback::from(move |_: MouseEvent| desk.send(Action::Panel(Panel::Drawing)));
    html! {
        <section class="panel working" data-working={props.id.clone()}>
            <div class="panel-head">
                <h2 tabindex="-1">{ told }</h2>
                <button type="button" class="key quiet" data-do="close-panel" onclick={close}>
                    { icon(Icon::Remove) }{ tongue.say(frame::CLOSE) }
                </button>
            </div>
            <p class="num">{ whole }</p>
            { lines.iter().map(|line| line_of(line, tongue)).collect::<Html>() }
            <p class="muted">{ tongue.say(frame::ALL_EXACT) }</p>
        </section>
    }
}

/// A line of the working in words and figures.
#[derive(Clone, PartialEq)]
struct Said {
    symbol: Rc<str>,
    name: String,
    value: String,
    body: Body,
}

#[derive(Clone, PartialEq)]
enum Body {
    /// A sum: each part's sign, name and amount.
    Ledger(Vec<(bool, String, String)>),
    /// Anything else, in names and in figures.
    Formula(Part),
}

/// A formula whose names and figures are already written.
#[derive(Clone, PartialEq)]
enum Part {
    One { name: String, figure: String },
    Sum(Vec<(bool, Part)>),
    Product(Vec<Part>),
    Share(Box<Part>, Box<Part>),
}

/// What a name in a working stands for: an entry, a row, a line of the working.
fn name_of(name: &str, state: &State) -> String {
    let tongue = state.settings.tongue;
    let key = Key::from(name);
    if field_of(&key).is_some() {
        return words::entry_name(&state.book, &key, tongue);
    }
    if let Some(line) = state
        .findings
        .costs
        .lines
        .iter()
        .find(|line| *line.key.as_str() == *name)
    {
        return line.what.to_string();
    }
    if name.contains('/') {
        return words::result(&state.book, name, tongue);
    }
    words::costs::WORDS
        .word(name)
        .map_or_else(|| name.to_owned(), |phrase| tongue.say(phrase).to_owned())
}

impl Said {
    fn of(line: &MoneyLine, currency: Currency, state: &State) -> Self {
        let body = match &line.formula {
            MoneyExpr::Sum(parts) if parts.len() > 1 => Body::Ledger(
                parts
                    .iter()
                    .map(|(taken, part)| {
                        (*taken, flat(part, state), figure_of(part, currency, state))
                    })
                    .collect(),
            ),
            formula => Body::Formula(Part::of(formula, state)),
        };
        let plain = matches!(&*line.symbol, "break_even" | "hours");
        // A line that is exchanged shows its own currency until it is.
        let shown_in = currency_of(&line.formula).unwrap_or(currency);
        let shown_in = if &*line.symbol == "total" {
            currency
        } else {
            shown_in
        };
        Self {
            symbol: Rc::clone(&line.symbol),
            name: name_of(&line.symbol, state),
            value: if plain {
                decimal(line.value, state)
            } else {
                money(&Money::new(line.value, shown_in), state)
            },
            body,
        }
    }
}

/// The currency of the first amount in a formula.
fn currency_of(formula: &MoneyExpr) -> Option<Currency> {
    match formula {
        MoneyExpr::Amount { money, .. } => Some(money.currency()),
        MoneyExpr::Number { .. } => None,
        MoneyExpr::Sum(parts) => parts.iter().find_map(|(_, part)| currency_of(part)),
        MoneyExpr::Product(parts) => parts.iter().find_map(currency_of),
        MoneyExpr::Quotient { over, .. } => currency_of(over),
        MoneyExpr::Rounded { of, .. } => currency_of(of),
    }
}

fn decimal(value: Decimal, state: &State) -> String {
    shown_decimal(value.normalize(), state.settings.manner().mark)
}

/// A part of a sum in one line: a name, or figures times figures.
fn flat(part: &MoneyExpr, state: &State) -> String {
    match part {
        MoneyExpr::Amount { name, .. } | MoneyExpr::Number { name, .. } => name_of(name, state),
        MoneyExpr::Rounded { of, .. } => flat(of, state),
        MoneyExpr::Product(parts) => {
            let factor = |part: &MoneyExpr| match part {
                MoneyExpr::Amount { money: amount, .. } => money(amount, state),
                MoneyExpr::Number { value, .. } => decimal(*value, state),
                other => flat(other, state),
            };
            parts.iter().map(factor).collect::<Vec<_>>().join(" × ")
        }
        MoneyExpr::Sum(parts) => parts
            .iter()
            .map(|(_, part)| flat(part, state))
            .collect::<Vec<_>>()
            .join(" + "),
        MoneyExpr::Quotient { over, under, .. } => {
            format!("{} ÷ {}", flat(over, state), flat(under, state))
        }
    }
}

fn figure_of(part: &MoneyExpr, currency: Currency, state: &State) -> String {
    match (part, part.value()) {
        (MoneyExpr::Amount { money: amount, .. }, _) => money(amount, state),
        (MoneyExpr::Number { value, .. }, _) => decimal(*value, state),
        (_, Ok(value)) => money(
            &Money::new(value, currency_of(part).unwrap_or(currency)),
            state,
        ),
        (_, Err(_)) => String::new(),
    }
}

impl Part {
    fn of(formula: &MoneyExpr, state: &State) -> Self {
        match formula {
            MoneyExpr::Amount {
                name,
                money: amount,
            } => Self::One {
                name: name_of(name, state),
                figure: money(amount, state),
            },
            MoneyExpr::Number { name, value } => Self::One {
                name: name_of(name, state),
                figure: decimal(*value, state),
            },
            MoneyExpr::Sum(parts) => Self::Sum(
                parts
                    .iter()
                    .map(|(taken, part)| (*taken, Self::of(part, state)))
                    .collect(),
            ),
            MoneyExpr::Product(parts) => {
                Self::Product(parts.iter().map(|part| Self::of(part, state)).collect())
            }
            MoneyExpr::Quotient { over, under, .. } => Self::Share(
                Box::new(Self::of(over, state)),
                Box::new(Self::of(under, state)),
            ),
            MoneyExpr::Rounded { of, .. } => Self::of(of, state),
        }
    }

    fn math(&self, figures: bool) -> Html {
        match self {
            Self::One { figure, .. } if figures => html! { <mn>{ figure }</mn> },
            Self::One { name, .. } => html! { <mtext>{ name }</mtext> },
            Self::Sum(parts) => {
                let terms = parts.iter().enumerate().map(|(at, (taken, part))| {
                    let sign = match (at, taken) {
                        (0, false) => None,
                        (_, false) => Some("+"),
                        (_, true) => Some("−"),
                    };
                    html! { <>{ sign.map(|sign| html! { <mo>{ sign }</mo> }) }{ part.math(figures) }</> }
                });
                html! { <mrow>{ terms.collect::<Html>() }</mrow> }
            }
            Self::Product(parts) => {
                let factors = parts.iter().enumerate().map(|(at, part)| {
                    let bracketed = matches!(part, Self::Sum(terms) if terms.len() > 1);
                    html! {
                        <>
                            if at > 0 { <mo>{ "×" }</mo> }
                            if bracketed { <mo>{ "(" }</mo>{ part.math(figures) }<mo>{ ")" }</mo> } else { { part.math(figures) } }
                        </>
                    }
                });
                html! { <mrow>{ factors.collect::<Html>() }</mrow> }
            }
            Self::Share(over, under) => {
                html! { <mfrac>{ over.math(figures) }{ under.math(figures) }</mfrac> }
            }
        }
    }
}

fn line_of(line: &Said, tongue: Tongue) -> Html {
    let body = match &line.body {
        Body::Ledger(parts) => {
            let rows = parts.iter().map(|(taken, name, figure)| {
                let sign = if *taken { "− " } else { "" };
                html! { <tr><th scope="row">{ name }</th><td class="num">{ sign }{ figure }</td></tr> }
            });
            html! {
                <table class="ledger">
                    <tbody>{ rows.collect::<Html>() }</tbody>
                    <tfoot><tr><th scope="row">{ &line.name }</th><td class="num">{ &line.value }</td></tr></tfoot>
                </table>
            }
        }
        Body::Formula(part) => html! {
            <>
                if !matches!(part, Part::Sum(parts) if parts.is_empty()) {
                    <math display="block"><mrow><mtext>{ &line.name }</mtext><mo>{ "=" }</mo>{ part.math(false) }</mrow></math>
                }
                <math display="block"><mrow>
                    <mtext>{ &line.name }</mtext><mo>{ "=" }</mo>
                    if !matches!(part, Part::Sum(parts) if parts.len() < 2) { { part.math(true) }<mo>{ "=" }</mo> }
                    <mn>{ &line.value }</mn>
                </mrow></math>
            </>
        },
    };
    html! {
        <div class="working-line">
            { body }
            { trade::costs::source_of(&line.symbol).map(|source| source_of(source, tongue)) }
        </div>
    }
}
