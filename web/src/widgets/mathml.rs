//! Formulas as MathML: each line of a working twice, in symbols and with the numbers put in.

use measure::{Expr, Function, Line, Manner, Term, show_exact, show_term};
use yew::{Html, html};

/// How the terms of a formula are written.
#[derive(Clone, Copy, PartialEq)]
enum As {
    Symbols,
    Numbers,
}

/// Both formulas of a line.
pub fn line_of(line: &Line, manner: &Manner) -> Html {
    let symbol = line
        .symbol
        .as_ref()
        .map(|symbol| html! { <>{ symbol_of(symbol) }<mo>{ "=" }</mo></> });
    let whole = Term {
        symbol: None,
        key: None,
        value: line.value,
        kind: line.kind,
        powers: line.powers,
    };
    let result = number_of(&whole, manner);
    let (formula, solved) = match &line.formula {
        Expr::Solved(remainder) => (remainder.as_ref(), true),
        formula => (formula, false),
    };
    let plain = matches!(formula, Expr::Term(term) if term.symbol.is_none());
    html! {
        <>
            if !plain {
                <math display="block"><mrow>
                    if solved { { expression(formula, As::Symbols, manner) }<mo>{ "=" }</mo><mn>{ "0" }</mn> }
                    else { { symbol.clone() }{ expression(formula, As::Symbols, manner) } }
                </mrow></math>
            }
            <math display="block"><mrow>
                if solved { { symbol }{ result } }
                else { { symbol }{ expression(formula, As::Numbers, manner) }<mo>{ "=" }</mo>{ result } }
            </mrow></math>
        </>
    }
}

/// A symbol with its index: `i_f` is i with a small f.
fn symbol_of(symbol: &str) -> Html {
    let (name, index) = symbol.split_once('_').unwrap_or((symbol, ""));
    if index.is_empty() {
        return html! { <mi>{ name.to_owned() }</mi> };
    }
    html! { <msub><mi>{ name.to_owned() }</mi><mi mathvariant="normal">{ index.to_owned() }</mi></msub> }
}

fn number_of(term: &Term, manner: &Manner) -> Html {
    let shown = show_term(term, manner);
    html! {
        <mrow>
            <mn>{ shown.value }</mn>
            if !shown.unit.is_empty() { <mspace width="0.2em" /><mtext>{ shown.unit }</mtext> }
        </mrow>
    }
}

fn term(term: &Term, how: As, manner: &Manner) -> Html {
    match (how, &term.symbol) {
        (As::Symbols, Some(symbol)) => symbol_of(symbol),
        _ => number_of(term, manner),
    }
}

fn bare(value: f64, manner: &Manner) -> Html {
    let unit = measure::Kind::Ratio.default_unit(manner.units);
    html! { <mn>{ show_exact(value, unit, manner).value }</mn> }
}

/// Whether a part needs brackets within a product, or under a power.
fn loose(part: &Expr) -> bool {
    matches!(
        part,
        Expr::Sum(_) | Expr::Difference(..) | Expr::Negative(_)
    )
}

fn bracketed(inner: Html) -> Html {
    html! { <mrow><mo>{ "(" }</mo>{ inner }<mo>{ ")" }</mo></mrow> }
}

fn factor(part: &Expr, how: As, manner: &Manner) -> Html {
    let inner = expression(part, how, manner);
    if loose(part) { bracketed(inner) } else { inner }
}

fn joined(parts: &[Expr], between: &'static str, how: As, manner: &Manner) -> Html {
    let parts = parts.iter().enumerate().map(|(at, part)| {
        html! { <>if at > 0 { <mo>{ between }</mo> }{ expression(part, how, manner) }</> }
    });
    html! { <mrow>{ parts.collect::<Html>() }</mrow> }
}

fn called(name: &str, inner: Html) -> Html {
    html! { <mrow><mi mathvariant="normal">{ name.to_owned() }</mi><mo>{ "(" }</mo>{ inner }<mo>{ ")" }</mo></mrow> }
}

fn expression(formula: &Expr, how: As, manner: &Manner) -> Html {
    match formula {
        Expr::Term(of) => term(of, how, manner),
        Expr::Number(value) => bare(*value, manner),
        Expr::Sum(parts) => joined(parts, "+", how, manner),
        Expr::Difference(a, b) => html! {
            <mrow>{ expression(a, how, manner) }<mo>{ "−" }</mo>{ factor(b, how, manner) }</mrow>
        },
        Expr::Product(a, b) => html! {
            <mrow>{ factor(a, how, manner) }<mo>{ "·" }</mo>{ factor(b, how, manner) }</mrow>
        },
        Expr::Quotient(a, b) => html! {
            <mfrac><mrow>{ expression(a, how, manner) }</mrow><mrow>{ expression(b, how, manner) }</mrow></mfrac>
        },
        Expr::Negative(a) => html! { <mrow><mo>{ "−" }</mo>{ factor(a, how, manner) }</mrow> },
        Expr::Power(a, power) => power_of(a, *power, how, manner),
        Expr::Apply(function, a) => applied(*function, a, how, manner),
        Expr::Least(parts, _) => called("min", named(parts, how, manner)),
        Expr::Greatest(parts, _) => called("max", named(parts, how, manner)),
        Expr::Table(name, parts) => called(name, joined(parts, ";", how, manner)),
        Expr::Solved(remainder) => expression(remainder, how, manner),
        _ => html! {},
    }
}

fn named(parts: &[(&'static str, Expr)], how: As, manner: &Manner) -> Html {
    let parts = parts.iter().enumerate().map(|(at, (_, part))| {
        html! { <>if at > 0 { <mo>{ ";" }</mo> }{ expression(part, how, manner) }</> }
    });
    parts.collect()
}

fn applied(function: Function, a: &Expr, how: As, manner: &Manner) -> Html {
    called(function.name(), expression(a, how, manner))
}

fn power_of(a: &Expr, power: f64, how: As, manner: &Manner) -> Html {
    if power == 0.5 {
        return html! { <msqrt>{ expression(a, how, manner) }</msqrt> };
    }
    // A number with its unit is one thing: (120 mm)².
    let composite = loose(a) || !matches!(a, Expr::Term(_) | Expr::Number(_)) || how == As::Numbers;
    let base = expression(a, how, manner);
    html! { <msup><mrow>if composite { { bracketed(base) } } else { { base } }</mrow>{ bare(power, manner) }</msup> }
}
