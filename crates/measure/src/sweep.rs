//! From a result back to its entries: each one's slope, share and the ± of the result.

use std::rc::Rc;

use crate::Stated;
use crate::node::{Leaf, Node, Op};

/// An entry's part in a result.
#[derive(Debug, Clone)]
pub struct Contribution {
    /// The entry's key.
    pub key: Rc<str>,
    /// The symbol that the working shows for it.
    pub symbol: &'static str,
    /// The entry's value (SI).
    pub value: f64,
    /// How far above its value the entry can lie (95 %, SI).
    pub plus: f64,
    /// How far below its value the entry can lie (95 %, SI).
    pub minus: f64,
    /// Whether that was typed or assumed.
    pub stated: Stated,
    /// The slope of the result by the entry (SI by SI).
    pub slope: f64,
}

impl Contribution {
    fn of(leaf: &Leaf, node: &Node, slope: f64) -> Self {
        Self {
            key: Rc::clone(&leaf.key),
            symbol: node.symbol.unwrap_or_default(),
            value: node.value,
            plus: leaf.plus,
            minus: leaf.minus,
            stated: leaf.stated,
            slope,
        }
    }

    /// Parts in the result's upper and lower ±.
    fn reach(&self) -> (f64, f64) {
        let (up, down) = if self.slope >= 0.0 {
            (self.plus, self.minus)
        } else {
            (self.minus, self.plus)
        };
        let size = self.slope.abs();
        // An exact entry at a place where the slope has no bound adds nothing.
        let part = |x: f64| if x == 0.0 { 0.0 } else { size * x };
        (part(up), part(down))
    }

    /// This part squared, as it enters the sum.
    pub(crate) fn weight(&self) -> f64 {
        let (up, down) = self.reach();
        up.max(down).powi(2)
    }

    /// The same measurement: what two graphs share counts once.
    fn same_as(&self, leaf: &Leaf, value: f64) -> bool {
        self.value.to_bits() == value.to_bits()
            && self.plus.to_bits() == leaf.plus.to_bits()
            && self.minus.to_bits() == leaf.minus.to_bits()
            && (Rc::ptr_eq(&self.key, &leaf.key) || self.key == leaf.key)
    }
}

/// All entries' parts in a result, and its ±.
#[derive(Debug, Clone, Default)]
pub struct Spread {
    /// How far above the value the truth can lie (95 %, SI).
    pub plus: f64,
    /// How far below the value the truth can lie (95 %, SI).
    pub minus: f64,
    /// Every entry that took part.
    pub contributions: Vec<Contribution>,
}

impl Spread {
    /// First-order propagation (JCGM 100:2008, 5.1.2, with correlation through shared entries):
    /// a reverse sweep over the steps, each weighed once.
    pub(crate) fn of(result: &Rc<Node>) -> Self {
        let mut contributions: Vec<Contribution> = Vec::with_capacity(16);
        let renamed = result.renamed();
        if let Op::Entry(leaf) = &renamed.op {
            contributions.push(Contribution::of(leaf, renamed, 1.0));
        } else if !result.args.is_empty() {
            let mut met = [0; 8];
            for_each_slope(result, &mut |node, slope| {
                if let Op::Entry(leaf) = &node.op {
                    record(&mut contributions, &mut met, leaf, node, slope);
                }
            });
        }
        let (plus, minus) = contributions
            .iter()
            .map(Contribution::reach)
            .fold((0.0, 0.0), |(plus, minus): (f64, f64), (up, down)| {
                (plus + up * up, minus + down * down)
            });
        Self {
            plus: plus.sqrt(),
            minus: minus.sqrt(),
            contributions,
        }
    }
}

/// Visits every step but plain constants, users before arguments, with the slope of the result by it.
fn for_each_slope<'a>(result: &'a Rc<Node>, visit: &mut dyn FnMut(&'a Rc<Node>, f64)) {
    let Order { steps, places } = order(result);
    let mut slopes = vec![0.0; steps.len()];
    slopes[steps.len() - 1] = 1.0;
    let mut end = places.len();
    for (i, node) in steps.iter().enumerate().rev() {
        let slope = slopes[i];
        let args = &places[end - node.args.len()..end];
        end -= args.len();
        visit(node, slope);
        if slope != 0.0 {
            node.for_each_partial(|arg, partial| {
                if let Some(of_arg) = slopes.get_mut(args[arg] as usize) {
                    *of_arg += slope * partial;
                }
            });
        }
    }
}

/// The slope of a result by one step that it rests on; zero where it does not.
pub(crate) fn slope_by(result: &Rc<Node>, step: &Rc<Node>) -> f64 {
    let mut found = 0.0;
    for_each_slope(result, &mut |node, slope| {
        if Rc::ptr_eq(node, step) {
            found = slope;
        }
    });
    found
}

/// Adds an entry's part to what is known. `met` has a mark for every value that was met, so that few are looked for in vain.
fn record(
    contributions: &mut Vec<Contribution>,
    met: &mut [u64; 8],
    leaf: &Leaf,
    node: &Node,
    slope: f64,
) {
    let spread = node.value.to_bits().wrapping_mul(0x9E37_79B9_7F4A_7C15);
    let (word, mark) = (
        &mut met[(spread >> 61) as usize],
        1u64 << (spread >> 55 & 63),
    );
    if *word & mark != 0
        && let Some(known) = contributions
            .iter_mut()
            .find(|c| c.same_as(leaf, node.value))
    {
        known.slope += slope;
        return;
    }
    *word |= mark;
    contributions.push(Contribution::of(leaf, node, slope));
}

/// Every step that a result rests on, arguments before users, and where the arguments of each stand among them. Constants change
/// nothing and stand nowhere.
struct Order<'a> {
    steps: Vec<&'a Rc<Node>>,
    places: Vec<u32>,
}

/// A step that waits for its arguments.
const WAITING: u32 = u32::MAX;

/// Marks in the steps themselves stand in for a table of those that were met; they are gone when the order is made, so that
/// no other code ever sees one.
#[allow(
    clippy::cast_possible_truncation,
    reason = "memory ends before four thousand million steps"
)]
fn order(result: &Rc<Node>) -> Order<'_> {
    let mut steps: Vec<&Rc<Node>> = Vec::with_capacity(48);
    let mut places: Vec<u32> = Vec::with_capacity(64);
    // A stack of our own, with how many arguments are still to be seen: a long chain of sums must not exhaust the machine's.
    let mut stack = Vec::with_capacity(32);
    stack.push((result, result.args.len()));
    while let Some((node, left)) = stack.last_mut() {
        let node: &Rc<Node> = node;
        if *left == 0 {
            places.extend(node.args.iter().map(|arg| arg.mark.get().wrapping_sub(1)));
            steps.push(node);
            node.mark.set(steps.len() as u32);
            stack.pop();
            continue;
        }
        *left -= 1;
        let arg = &node.args[*left];
        if arg.mark.get() != 0 || matches!(arg.op, Op::Constant) {
            continue;
        }
        if arg.args.is_empty() {
            // An entry waits for nothing.
            steps.push(arg);
            arg.mark.set(steps.len() as u32);
        } else {
            arg.mark.set(WAITING);
            stack.push((arg, arg.args.len()));
        }
    }
    steps.iter().for_each(|node| node.mark.set(0));
    Order { steps, places }
}

/// Every step that the result rests on but plain constants, arguments before users; the result comes last.
pub(crate) fn steps_in_order(result: &Rc<Node>) -> Vec<&Rc<Node>> {
    order(result).steps
}
