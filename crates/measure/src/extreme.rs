//! Competing limits: the least or greatest of several, which one governs, and whether that is in doubt;
//! and whole steps that hold a quantity.

use std::rc::Rc;

use crate::Quantity;
use crate::dimension::Dimension;
use crate::node::{Limits, Node, Op};
use crate::sweep::Spread;

impl<D: Dimension> Quantity<D> {
    /// The lesser of two.
    #[must_use]
    pub fn least(&self, other: &Self) -> Self {
        Self::least_of(&[("", self.clone()), ("", other.clone())])
    }

    /// The greater of two.
    #[must_use]
    pub fn greatest(&self, other: &Self) -> Self {
        Self::greatest_of(&[("", self.clone()), ("", other.clone())])
    }

    /// The least of several limits, each with its name; it tells which one governs.
    /// Limits that are not numbers are passed over.
    ///
    /// # Panics
    /// Without any limit.
    #[must_use]
    pub fn least_of(limits: &[(&'static str, Self)]) -> Self {
        Self::extreme_of(limits, Op::Least, |a, b| a < b)
    }

    /// The greatest of several, each with its name; it tells which one governs.
    ///
    /// # Panics
    /// Without any.
    #[must_use]
    pub fn greatest_of(limits: &[(&'static str, Self)]) -> Self {
        Self::extreme_of(limits, Op::Greatest, |a, b| a > b)
    }

    fn extreme_of(
        limits: &[(&'static str, Self)],
        op: fn(Rc<Limits>) -> Op,
        wins: fn(f64, f64) -> bool,
    ) -> Self {
        assert!(!limits.is_empty(), "the extreme of nothing");
        let governing = (1..limits.len()).fold(0, |best, i| {
            let (here, there) = (limits[i].1.value(), limits[best].1.value());
            if wins(here, there) || there.is_nan() {
                i
            } else {
                best
            }
        });
        let named = Limits {
            names: limits.iter().map(|(name, _)| *name).collect(),
            governing,
        };
        let args = limits
            .iter()
            .map(|(_, limit)| Rc::clone(&limit.node))
            .collect::<Vec<_>>();
        Self::from_op(limits[governing].1.value(), op(named.into()), args)
    }

    /// The name of the limit that governs, where this is a [`least_of`](Self::least_of) or its twin.
    #[must_use]
    pub fn governing(&self) -> Option<&'static str> {
        governing(&self.node)
    }

    /// Whether another limit lies so near the governing one that it may govern in truth.
    #[must_use]
    pub fn contested(&self) -> bool {
        contested(&self.node)
    }
}

pub(crate) fn governing(node: &Node) -> Option<&'static str> {
    match &node.renamed().op {
        Op::Least(limits) | Op::Greatest(limits) => Some(limits.names[limits.governing]),
        _ => None,
    }
}

pub(crate) fn contested(node: &Node) -> bool {
    let node = node.renamed();
    let (Op::Least(limits) | Op::Greatest(limits)) = &node.op else {
        return false;
    };
    let governing = limits.governing;
    node.args
        .iter()
        .enumerate()
        .filter(|(i, _)| *i != governing)
        .any(|(_, other)| {
            let gap = (other.value - node.value).abs();
            let args = [Rc::clone(other), Rc::clone(&node.args[governing])];
            let difference = Node::new(gap, Op::Difference, args, node.powers);
            let spread = Spread::of(&Rc::new(difference));
            gap <= spread.plus.max(spread.minus)
        })
}

/// Whole steps (tins, teeth, turns) that hold a quantity. A step carries no ±; what carries over is the doubt in the count.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Steps {
    /// Steps for the value itself.
    pub count: f64,
    /// Steps for the least that the value can be.
    pub fewest: f64,
    /// Steps for the most that the value can be.
    pub most: f64,
}

impl Steps {
    /// Whether the ± reaches over into another count.
    #[must_use]
    pub fn straddles(&self) -> bool {
        self.fewest < self.count || self.most > self.count
    }
}
