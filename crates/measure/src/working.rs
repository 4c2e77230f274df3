//! The working: the same steps that gave a result, written out as formulas with their numbers.

use std::rc::Rc;

use crate::node::{Limits, Node, Op};
use crate::sweep::steps_in_order;
use crate::unit::Powers;
use crate::{Function, Kind, Source};

/// A result's working, a line a named step, in the order of reckoning.
#[derive(Debug, Clone, PartialEq)]
pub struct Working {
    /// The lines; the last one is the result.
    pub lines: Vec<Line>,
}

/// One line: symbol = formula = value.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// The symbol of what the line finds; none where the result itself has no name.
    pub symbol: Option<&'static str>,
    /// How it is found.
    pub formula: Expr,
    /// What it comes to (SI).
    pub value: f64,
    /// How it is shown.
    pub kind: Option<Kind>,
    /// Its dimension.
    pub powers: Powers,
    /// The published source of the formula.
    pub source: Option<&'static Source>,
}

/// Something with a symbol or a number that a formula uses as it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Term {
    /// Its symbol; none for a bare constant.
    pub symbol: Option<&'static str>,
    /// The entry's key, where it is one.
    pub key: Option<Rc<str>>,
    /// Its value (SI).
    pub value: f64,
    /// How it is shown.
    pub kind: Option<Kind>,
    /// Its dimension.
    pub powers: Powers,
}

/// A formula.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Expr {
    /// An entry, a constant or a line above.
    Term(Term),
    /// A pure number of the formula itself.
    Number(f64),
    /// a + b + ...
    Sum(Vec<Expr>),
    /// a - b
    Difference(Box<Expr>, Box<Expr>),
    /// a × b
    Product(Box<Expr>, Box<Expr>),
    /// a / b
    Quotient(Box<Expr>, Box<Expr>),
    /// -a
    Negative(Box<Expr>),
    /// a to an exact power; one half is the square root.
    Power(Box<Expr>, f64),
    /// A function of a.
    Apply(Function, Box<Expr>),
    /// The least of several, with their names and which one governs.
    Least(Vec<(&'static str, Expr)>, usize),
    /// The greatest of several, with their names and which one governs.
    Greatest(Vec<(&'static str, Expr)>, usize),
    /// A named look-up, integration or solution of its inputs.
    Table(&'static str, Vec<Expr>),
    /// The unknown that makes the remainder zero; the remainder is written with the answer put in.
    Solved(Box<Expr>),
}

impl Working {
    pub(crate) fn of(result: &Rc<Node>, kind: Kind) -> Self {
        let lines = steps_in_order(result)
            .iter()
            .filter(|node| Rc::ptr_eq(node, result) || has_line(node))
            .map(|node| {
                let mut line = line(node);
                if Rc::ptr_eq(node, result) {
                    line.kind = Some(kind);
                }
                line
            })
            .collect();
        Self { lines }
    }

    /// The published sources of the lines, each once.
    #[must_use]
    pub fn sources(&self) -> Vec<&'static Source> {
        let mut sources: Vec<&'static Source> = Vec::new();
        for source in self.lines.iter().filter_map(|line| line.source) {
            if !sources.contains(&source) {
                sources.push(source);
            }
        }
        sources
    }

    /// Every entry, constant and earlier line that the lines use, each once.
    #[must_use]
    pub fn terms(&self) -> Vec<&Term> {
        let mut terms = Vec::new();
        for line in &self.lines {
            line.formula.collect_terms(&mut terms);
        }
        terms
    }
}

/// Named steps have a line of their own; entries, constants and unknowns are terms only.
fn has_line(node: &Node) -> bool {
    node.symbol.is_some() && !matches!(node.op, Op::Entry(_) | Op::Constant | Op::Unknown)
}

fn line(node: &Node) -> Line {
    Line {
        symbol: node.symbol,
        formula: formula(node),
        value: node.value,
        kind: node.kind.or_else(|| Kind::usual(node.powers)),
        powers: node.powers,
        source: source(node),
    }
}

/// The source of a step, or of one that the step's formula writes out.
fn source(node: &Node) -> Option<&'static Source> {
    node.source.or_else(|| {
        let mut unnamed = node.args.iter().filter(|arg| arg.symbol.is_none());
        unnamed.find_map(|arg| source(arg))
    })
}

fn term(node: &Node) -> Expr {
    let key = match &node.op {
        Op::Entry(leaf) => Some(Rc::clone(&leaf.key)),
        Op::Constant if node.symbol.is_none() && node.powers == [0; 4] => {
            return Expr::Number(node.value);
        }
        _ => None,
    };
    Expr::Term(Term {
        symbol: node.symbol,
        key,
        value: node.value,
        kind: node.kind.or_else(|| Kind::usual(node.powers)),
        powers: node.powers,
    })
}

/// An argument as the formula of its user shows it: by symbol where it has one, else written out.
fn argument(node: &Node) -> Expr {
    match node.op {
        Op::Entry(_) | Op::Constant | Op::Unknown => term(node),
        _ if node.symbol.is_some() => term(node),
        _ => formula(node),
    }
}

fn formula(node: &Node) -> Expr {
    let arg = |i: usize| Box::new(argument(&node.args[i]));
    let args = || {
        node.args
            .iter()
            .map(|arg| argument(arg))
            .collect::<Vec<_>>()
    };
    let named = |limits: &Limits| limits.names.iter().copied().zip(args()).collect::<Vec<_>>();
    match &node.op {
        Op::Entry(_) | Op::Constant | Op::Unknown => term(node),
        Op::Same => argument(&node.args[0]),
        Op::Sum => Expr::Sum(args()),
        Op::Difference => Expr::Difference(arg(0), arg(1)),
        Op::Product => Expr::Product(arg(0), arg(1)),
        Op::Quotient => Expr::Quotient(arg(0), arg(1)),
        Op::Times(number) => Expr::Product(Box::new(Expr::Number(*number)), arg(0)),
        Op::Over(number) => Expr::Quotient(arg(0), Box::new(Expr::Number(*number))),
        Op::Negative => Expr::Negative(arg(0)),
        Op::Power(power) => Expr::Power(arg(0), *power),
        Op::Apply(function) => Expr::Apply(*function, arg(0)),
        Op::Least(limits) => Expr::Least(named(limits), limits.governing),
        Op::Greatest(limits) => Expr::Greatest(named(limits), limits.governing),
        Op::Table(table, _) => Expr::Table(table.name, args()),
        Op::Solved { .. } => Expr::Solved(arg(0)),
    }
}

impl Expr {
    fn collect_terms<'a>(&'a self, terms: &mut Vec<&'a Term>) {
        match self {
            Self::Term(term) => {
                if !terms.contains(&term) {
                    terms.push(term);
                }
            }
            Self::Number(_) => {}
            Self::Sum(parts) | Self::Table(_, parts) => {
                parts.iter().for_each(|part| part.collect_terms(terms));
            }
            Self::Difference(a, b) | Self::Product(a, b) | Self::Quotient(a, b) => {
                a.collect_terms(terms);
                b.collect_terms(terms);
            }
            Self::Negative(a) | Self::Power(a, _) | Self::Apply(_, a) | Self::Solved(a) => {
                a.collect_terms(terms);
            }
            Self::Least(parts, _) | Self::Greatest(parts, _) => {
                parts.iter().for_each(|(_, part)| part.collect_terms(terms));
            }
        }
    }
}
