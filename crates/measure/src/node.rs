//! One step of a calculation: what was done, with what, and what came out.

use std::cell::{Cell, OnceCell, RefCell};
use std::rc::Rc;

use crate::unit::Powers;
use crate::{Function, Kind, Source, Stated};

/// A step, shared by every later step that uses its value.
#[derive(Clone)]
pub(crate) struct Node {
    pub value: f64,
    pub op: Op,
    pub args: Args,
    pub powers: Powers,
    pub symbol: Option<&'static str>,
    pub kind: Option<Kind>,
    pub source: Option<&'static Source>,
    /// Where the step stands in an order that is being made; nought outside of that.
    pub mark: Cell<u32>,
}

/// The arguments of a step. Most have one or two, which need no room of their own; results of one table share theirs.
#[derive(Clone, Default)]
pub(crate) enum Args {
    #[default]
    None,
    One([Rc<Node>; 1]),
    Two([Rc<Node>; 2]),
    Many(Rc<[Rc<Node>]>),
}

impl std::ops::Deref for Args {
    type Target = [Rc<Node>];
    fn deref(&self) -> &[Rc<Node>] {
        match self {
            Self::None => &[],
            Self::One(one) => one,
            Self::Two(two) => two,
            Self::Many(many) => many,
        }
    }
}

impl From<[Rc<Node>; 0]> for Args {
    fn from(_: [Rc<Node>; 0]) -> Self {
        Self::None
    }
}

impl From<[Rc<Node>; 1]> for Args {
    fn from(one: [Rc<Node>; 1]) -> Self {
        Self::One(one)
    }
}

impl From<[Rc<Node>; 2]> for Args {
    fn from(two: [Rc<Node>; 2]) -> Self {
        Self::Two(two)
    }
}

impl From<Vec<Rc<Node>>> for Args {
    fn from(many: Vec<Rc<Node>>) -> Self {
        Self::Many(many.into())
    }
}

/// What a step does with its arguments.
#[derive(Clone)]
pub(crate) enum Op {
    /// In a room of its own: few steps are entries, and the others need not be as large.
    Entry(Box<Leaf>),
    Constant,
    Unknown,
    Same,
    Sum,
    Difference,
    Product,
    Quotient,
    /// A pure number times its argument.
    Times(f64),
    /// Its argument by a pure number.
    Over(f64),
    Negative,
    Power(f64),
    Apply(Function),
    /// The least or the greatest of its arguments.
    Least(Rc<Limits>),
    Greatest(Rc<Limits>),
    /// One of the outputs.
    Table(Rc<TableOf>, u32),
    /// The unknown that makes its first argument (the remainder) zero; the slope is the remainder's by the unknown.
    Solved {
        slope: f64,
    },
}

/// The names of limits, and which of them governs.
pub(crate) struct Limits {
    pub names: Vec<&'static str>,
    pub governing: usize,
}

/// An entry of the user: its key and how far off it can be.
#[derive(Debug, Clone)]
pub(crate) struct Leaf {
    pub key: Rc<str>,
    pub plus: f64,
    pub minus: f64,
    pub stated: Stated,
}

/// Adds the outputs for these inputs to a list.
pub(crate) type Outputs = dyn Fn(&[f64], &mut Vec<f64>);

/// A look-up, integration or solution taken as one step, with slopes that are known, or by central differences when they are asked for.
pub(crate) struct TableOf {
    pub name: &'static str,
    pub outputs: Vec<f64>,
    /// None where the slopes are known.
    pub of: Option<Box<Outputs>>,
    /// Of every output by the first input, of every output by the second, and so on.
    pub slopes: OnceCell<Vec<f64>>,
}

impl TableOf {
    /// Slopes of every output by every input.
    fn slopes(&self, args: &[Rc<Node>]) -> &[f64] {
        self.slopes.get_or_init(|| {
            let mut inputs: Vec<f64> = args.iter().map(|arg| arg.value).collect();
            let mut slopes = vec![0.0; args.len() * self.outputs.len()];
            let (mut above, mut below) = (Vec::new(), Vec::new());
            if let Some(of) = &self.of {
                for (i, arg) in args.iter().enumerate() {
                    // Nobody asks for a slope by what nothing can be off in.
                    if matches!(arg.op, Op::Constant) {
                        continue;
                    }
                    // The cube root of the machine's accuracy balances rounding against curvature (any text on numerical differentiation).
                    let size = if arg.value == 0.0 {
                        1.0
                    } else {
                        arg.value.abs()
                    };
                    let step = f64::EPSILON.cbrt() * size;
                    for (sides, x) in [
                        (&mut above, arg.value + step),
                        (&mut below, arg.value - step),
                    ] {
                        sides.clear();
                        inputs[i] = x;
                        of(&inputs, sides);
                    }
                    inputs[i] = arg.value;
                    let slopes = slopes.iter_mut().skip(i * self.outputs.len());
                    for (o, (slope, here)) in slopes.zip(&self.outputs).enumerate() {
                        *slope = between((below.get(o), above.get(o)), *here, step);
                    }
                }
            }
            slopes
        })
    }
}

/// Central difference; where one side has no answer, the difference to the other side.
fn between(sides: (Option<&f64>, Option<&f64>), here: f64, step: f64) -> f64 {
    let there = |side: Option<&f64>| side.copied().filter(|value| value.is_finite());
    match (there(sides.0), there(sides.1)) {
        (Some(down), Some(up)) => (up - down) / (2.0 * step),
        (None, Some(up)) => (up - here) / step,
        (Some(down), None) => (here - down) / step,
        (None, None) => 0.0,
    }
}

thread_local! {
    /// How many steps are being dropped within one another.
    static DEPTH: Cell<u32> = const { Cell::new(0) };
    /// Steps whose arguments wait until those that are being dropped are gone.
    static WAITING: RefCell<Vec<Args>> = const { RefCell::new(Vec::new()) };
}

/// Steps are dropped within one another only so far, and from there on one after another.
const DEEPEST: u32 = 64;

/// Takes long chains apart piece by piece: dropping them by recursion alone would exhaust the stack.
impl Drop for Node {
    fn drop(&mut self) {
        if self.args.iter().all(|arg| Rc::strong_count(arg) > 1) {
            return;
        }
        let args = core::mem::take(&mut self.args);
        let depth = DEPTH.get();
        if depth == DEEPEST {
            WAITING.with_borrow_mut(|waiting| waiting.push(args));
            return;
        }
        DEPTH.set(depth + 1);
        drop(args);
        if depth == 0 {
            while let Some(args) = WAITING.with_borrow_mut(Vec::pop) {
                drop(args);
            }
        }
        DEPTH.set(depth);
    }
}

impl Node {
    pub fn new(value: f64, op: Op, args: impl Into<Args>, powers: Powers) -> Self {
        Self {
            value,
            op,
            args: args.into(),
            powers,
            symbol: None,
            kind: None,
            source: None,
            mark: Cell::new(0),
        }
    }

    /// A step that has nothing but its value yet.
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    pub fn made(value: f64, op: Op, args: Args, powers: Powers) -> Rc<Self> {
        Rc::new(Self::new(value, op, args, powers))
    }

    /// Visits each argument with the slope of this step's value by it.
    pub fn for_each_partial(&self, mut visit: impl FnMut(usize, f64)) {
        let arg = |i: usize| self.args[i].value;
        match &self.op {
            Op::Entry(_) | Op::Constant | Op::Unknown => {}
            Op::Same => visit(0, 1.0),
            Op::Sum => (0..self.args.len()).for_each(|i| visit(i, 1.0)),
            Op::Difference => {
                visit(0, 1.0);
                visit(1, -1.0);
            }
            Op::Product => {
                visit(0, arg(1));
                visit(1, arg(0));
            }
            Op::Quotient => {
                visit(0, 1.0 / arg(1));
                visit(1, -self.value / arg(1));
            }
            Op::Times(number) => visit(0, *number),
            Op::Over(number) => visit(0, 1.0 / number),
            Op::Negative => visit(0, -1.0),
            Op::Power(n) => visit(0, n * arg(0).powf(n - 1.0)),
            Op::Apply(function) => visit(0, function.slope(arg(0))),
            Op::Least(limits) | Op::Greatest(limits) => visit(limits.governing, 1.0),
            Op::Table(table, output) => {
                let slopes = table.slopes(&self.args);
                for i in 0..self.args.len() {
                    visit(i, slopes[i * table.outputs.len() + *output as usize]);
                }
            }
            Op::Solved { slope } => visit(0, -1.0 / slope),
        }
    }

    /// The step itself, or the one it merely renames.
    pub fn renamed(&self) -> &Node {
        match self.op {
            Op::Same => self.args[0].renamed(),
            _ => self,
        }
    }
}
