//! A working as text: formula in symbols, formula with the numbers put in, and what it comes to.
//!
//! The text is plain enough for any expression evaluator: `*`, `/`, `^`, `sqrt(...)`, `min(...)`, and each number with its
//! unit in brackets: `(412.5 mm)`. A test evaluates it with one that is not ours.

use std::borrow::Cow;

use super::{Shown, gap, show_exact};
use crate::kind::Kind;
use crate::manner::Manner;
use crate::mark::Mark;
use crate::source::Source;
use crate::unit::{self, Powers};
use crate::working::{Expr, Line, Term, Working};

/// A line of a working, ready to be read.
#[derive(Debug, Clone, PartialEq)]
pub struct ShownLine {
    /// The symbol of what the line finds.
    pub symbol: Option<&'static str>,
    /// The formula in symbols: `C * n / i`.
    pub formula: String,
    /// The formula with its numbers and their units: `(1987.38 mm) * (1000 rpm) / 4.11`.
    pub numbers: String,
    /// Numbers give nought here: the line finds the unknown that makes them so.
    pub solves: bool,
    /// What it comes to, to as many figures as a number in a working has.
    pub result: Shown,
    /// The published source of the formula.
    pub source: Option<&'static Source>,
}

/// Every line of a working in the book's units and manner.
#[must_use]
pub fn show_working(working: &Working, manner: &Manner) -> Vec<ShownLine> {
    working
        .lines
        .iter()
        .map(|line| shown_line(line, manner))
        .collect()
}

fn shown_line(line: &Line, manner: &Manner) -> ShownLine {
    let (solves, formula) = match &line.formula {
        Expr::Solved(remainder) => (true, remainder.as_ref()),
        formula => (false, formula),
    };
    let symbols = |term: &Term| {
        term.symbol
            .map_or_else(|| bracketed(term, manner), str::to_owned)
    };
    let numbers = |term: &Term| bracketed(term, manner);
    ShownLine {
        symbol: line.symbol,
        formula: written(formula, manner.mark, &symbols).0,
        numbers: written(formula, manner.mark, &numbers).0,
        solves,
        result: shown_number(line.value, line.kind, line.powers, manner),
        source: line.source,
    }
}

/// A term's value as a working shows it: in the book's unit, to at most seven figures.
#[must_use]
pub fn show_term(term: &Term, manner: &Manner) -> Shown {
    shown_number(term.value, term.kind, term.powers, manner)
}

/// Temperatures are absolute in a working, since formulas multiply them; a dimension that no kind has is in SI units.
fn shown_number(si: f64, kind: Option<Kind>, powers: Powers, manner: &Manner) -> Shown {
    match kind {
        Some(Kind::Temperature) => show_exact(si, &unit::KELVIN, manner),
        Some(kind) => show_exact(si, manner.unit(kind), manner),
        None => Shown {
            unit: Cow::Owned(si_symbol(powers)),
            ..show_exact(si, &unit::ONE, manner)
        },
    }
}

/// The SI base units of a dimension: `m²·kg·s⁻³`.
fn si_symbol(powers: Powers) -> String {
    let raised = |power: i8| -> String {
        let digits = "⁰¹²³⁴⁵⁶⁷⁸⁹".chars().collect::<Vec<_>>();
        power
            .to_string()
            .chars()
            .map(|c| c.to_digit(10).map_or('⁻', |d| digits[d as usize]))
            .collect()
    };
    let bases = ["m", "kg", "s", "K"]
        .iter()
        .zip(powers)
        .filter(|(_, power)| *power != 0);
    let parts = bases.map(|(base, power)| {
        if power == 1 {
            (*base).to_owned()
        } else {
            format!("{base}{}", raised(power))
        }
    });
    parts.collect::<Vec<_>>().join("·")
}

fn bracketed(term: &Term, manner: &Manner) -> String {
    let shown = show_term(term, manner);
    if shown.unit.is_empty() && term.value >= 0.0 {
        return shown.value;
    }
    format!("({}{}{})", shown.value, gap(&shown.unit), shown.unit)
}

/// How tightly an expression binds; a looser one inside a tighter one needs brackets.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Binding {
    Sum,
    Product,
    Power,
    Whole,
}

fn written(formula: &Expr, mark: Mark, term: &dyn Fn(&Term) -> String) -> (String, Binding) {
    let inner = |part: &Expr, at_least: Binding| {
        let (text, binding) = written(part, mark, term);
        if binding < at_least {
            format!("({text})")
        } else {
            text
        }
    };
    let plain = |part: &Expr| written(part, mark, term).0;
    let list =
        |parts: &mut dyn Iterator<Item = &Expr>| parts.map(plain).collect::<Vec<_>>().join("; ");
    match formula {
        Expr::Term(of) => (term(of), Binding::Whole),
        Expr::Number(value) => {
            let text = super::number(*value, super::place(*value, 0.0, 0.0), true, mark);
            (
                if *value < 0.0 {
                    format!("({text})")
                } else {
                    text
                },
                Binding::Whole,
            )
        }
        Expr::Sum(parts) => {
            let parts: Vec<String> = parts
                .iter()
                .map(|part| inner(part, Binding::Product))
                .collect();
            (parts.join(" + "), Binding::Sum)
        }
        Expr::Difference(a, b) => (
            format!(
                "{} \u{2212} {}",
                inner(a, Binding::Sum),
                inner(b, Binding::Product)
            ),
            Binding::Sum,
        ),
        Expr::Product(a, b) => (
            format!(
                "{} * {}",
                inner(a, Binding::Product),
                inner(b, Binding::Power)
            ),
            Binding::Product,
        ),
        Expr::Quotient(a, b) => (
            format!(
                "{} / {}",
                inner(a, Binding::Product),
                inner(b, Binding::Power)
            ),
            Binding::Product,
        ),
        Expr::Negative(a) => (
            format!("\u{2212}{}", inner(a, Binding::Whole)),
            Binding::Sum,
        ),
        Expr::Power(a, power) if *power == 0.5 => (format!("sqrt({})", plain(a)), Binding::Whole),
        Expr::Power(a, power) => {
            let exponent = super::number(*power, super::place(*power, 0.0, 0.0), true, mark);
            let exponent = if *power < 0.0 {
                format!("({exponent})")
            } else {
                exponent
            };
            (
                format!("{}^{exponent}", inner(a, Binding::Whole)),
                Binding::Power,
            )
        }
        Expr::Apply(function, a) => (format!("{}({})", function.name(), plain(a)), Binding::Whole),
        Expr::Least(parts, _) => (
            format!("min({})", list(&mut parts.iter().map(|p| &p.1))),
            Binding::Whole,
        ),
        Expr::Greatest(parts, _) => (
            format!("max({})", list(&mut parts.iter().map(|p| &p.1))),
            Binding::Whole,
        ),
        Expr::Table(name, parts) => (
            format!("{name}({})", list(&mut parts.iter())),
            Binding::Whole,
        ),
        Expr::Solved(remainder) => written(remainder, mark, term),
    }
}
