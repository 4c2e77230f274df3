//! A result as pages show it: a quantity whose dimension is forgotten and whose kind is known.

use core::cell::OnceCell;
use core::fmt;
use std::rc::Rc;

use crate::extreme::{contested, governing};
use crate::node::{Node, Op};
use crate::sweep::{Contribution, Spread};
use crate::working::Working;
use crate::{Kind, Source, Unit};

/// A result: value, ±, each entry's share and the working, on demand. Cloning is cheap.
#[derive(Clone)]
pub struct Figure {
    node: Rc<Node>,
    kind: Kind,
    spread: OnceCell<Rc<Spread>>,
}

/// An entry's share of a result's ±.
#[derive(Debug, Clone, PartialEq)]
pub struct Share {
    /// The entry's key.
    pub key: Rc<str>,
    /// The symbol that the working shows for it.
    pub symbol: &'static str,
    /// Its part of the squared ±, from 0 to 1.
    pub fraction: f64,
    /// Whether the entry's ± was assumed, not typed.
    pub assumed: bool,
}

impl fmt::Debug for Figure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "{} +{} -{} ({:?}, SI)",
            self.value(),
            self.plus(),
            self.minus(),
            self.kind
        )
    }
}

/// Equal where value, ± and kind are.
impl PartialEq for Figure {
    fn eq(&self, other: &Self) -> bool {
        self.kind == other.kind
            && self.value() == other.value()
            && self.plus() == other.plus()
            && self.minus() == other.minus()
    }
}

impl Figure {
    pub(crate) fn new(node: Rc<Node>, kind: Kind) -> Self {
        Self {
            node,
            kind,
            spread: OnceCell::new(),
        }
    }

    /// An exact figure (a count, a typed number) that has no working.
    #[must_use]
    pub fn exact(si: f64, kind: Kind) -> Self {
        Self::new(Rc::new(Node::new(si, Op::Constant, [], kind.dims())), kind)
    }

    /// The value (SI).
    #[must_use]
    pub fn value(&self) -> f64 {
        self.node.value
    }

    /// The value in a unit.
    #[must_use]
    pub fn in_unit(&self, unit: &'static Unit) -> f64 {
        unit.from_si(self.node.value)
    }

    /// How the figure is shown.
    #[must_use]
    pub fn kind(&self) -> Kind {
        self.kind
    }

    fn spread(&self) -> &Spread {
        self.spread.get_or_init(|| Rc::new(Spread::of(&self.node)))
    }

    /// How far above the value the truth can lie (95 %, SI).
    #[must_use]
    pub fn plus(&self) -> f64 {
        self.spread().plus
    }

    /// How far below the value the truth can lie (95 %, SI).
    #[must_use]
    pub fn minus(&self) -> f64 {
        self.spread().minus
    }

    /// Every entry that took part, with the figure's slope by it.
    #[must_use]
    pub fn contributions(&self) -> &[Contribution] {
        &self.spread().contributions
    }

    /// Each entry's share of the ±, the greatest first; entries without a share are left out.
    #[must_use]
    pub fn shares(&self) -> Vec<Share> {
        let parts = self.contributions();
        let whole: f64 = parts.iter().map(Contribution::weight).sum();
        let mut shares: Vec<Share> = parts
            .iter()
            .filter(|part| part.weight() > 0.0 && whole > 0.0)
            .map(|part| Share {
                key: Rc::clone(&part.key),
                symbol: part.symbol,
                fraction: part.weight() / whole,
                assumed: part.stated == crate::Stated::Assumed,
            })
            .collect();
        crate::sort_by(&mut shares, |a, b| b.fraction.total_cmp(&a.fraction));
        shares
    }

    /// The slope of this figure by an entry (SI by SI); zero where the entry takes no part.
    #[must_use]
    pub fn slope(&self, key: &str) -> f64 {
        self.contributions()
            .iter()
            .filter(|part| &*part.key == key)
            .map(|part| part.slope)
            .sum()
    }

    /// An entry turned into the unknown: the value that makes this figure what it is, with the ± that the other entries give it by
    /// implicit differentiation. `None` where the figure does not depend on the entry.
    ///
    /// The entry is to stand in this figure as exact, or its own ± would count as well.
    #[must_use]
    pub fn solved_for(&self, key: &str, value: f64, kind: Kind) -> Option<Self> {
        let slope = self.slope(key);
        if slope == 0.0 || !slope.is_finite() {
            return None;
        }
        let args = [Rc::clone(&self.node)];
        Some(Self::new(
            Rc::new(Node::new(value, Op::Solved { slope }, args, kind.dims())),
            kind,
        ))
    }

    /// The working, line by line.
    #[must_use]
    pub fn working(&self) -> Working {
        Working::of(&self.node, self.kind)
    }

    /// The published sources of the formulas, each once, in the order of the working.
    #[must_use]
    pub fn sources(&self) -> Vec<&'static Source> {
        self.working().sources()
    }

    /// The name of the limit that governs, where the figure is the least or greatest of several.
    #[must_use]
    pub fn governing(&self) -> Option<&'static str> {
        governing(&self.node)
    }

    /// Whether another limit lies within its ± of the governing one.
    #[must_use]
    pub fn contested(&self) -> bool {
        contested(&self.node)
    }

    /// Whether nothing in it can be off.
    #[must_use]
    pub fn is_exact(&self) -> bool {
        self.plus() == 0.0 && self.minus() == 0.0
    }
}

/// Now less before, with the ± taken jointly: a measurement that both rest on counts once.
#[must_use]
pub fn difference(before: &Figure, now: &Figure) -> Figure {
    let args = [Rc::clone(&now.node), Rc::clone(&before.node)];
    let value = now.value() - before.value();
    Figure::new(
        Rc::new(Node::new(value, Op::Difference, args, now.node.powers)),
        // The nought of a thermometer plays no part in a difference.
        if now.kind == Kind::Temperature {
            Kind::TemperatureStep
        } else {
            now.kind
        },
    )
}
