//! The traced quantity: a value that remembers how it came about.

use core::fmt;
use core::marker::PhantomData;
use std::rc::Rc;

use crate::dimension::{Dimension, Halved, NoDim, Times};
use crate::node::{Args, Leaf, Node, Op};
use crate::sweep::Spread;
use crate::unit::Powers;
use crate::{Figure, Function, Kind, MeasureError, Reading, Source, Steps, Table, Unit};

/// A quantity with its dimension as a type. Cloning shares the step that made it.
pub struct Quantity<D> {
    pub(crate) node: Rc<Node>,
    pub(crate) dimension: PhantomData<fn() -> D>,
}

impl<D> Clone for Quantity<D> {
    // Cloned at thousands of places: on the pages, one call each is smaller than the counting there.
    #[cfg_attr(target_arch = "wasm32", inline(never))]
    fn clone(&self) -> Self {
        Self {
            node: Rc::clone(&self.node),
            dimension: PhantomData,
        }
    }
}

impl<D> fmt::Debug for Quantity<D> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} (SI)", self.node.value)
    }
}

mod sealed {
    /// Only quantities are traced.
    pub trait Sealed {}
    impl<D> Sealed for super::Quantity<D> {}
}

/// A quantity of any dimension, as an input of a [`Table`].
pub trait Traced: sealed::Sealed {
    #[doc(hidden)]
    fn step(&self) -> Step;
}

#[doc(hidden)]
pub struct Step(pub(crate) Rc<Node>);

impl<D> Traced for Quantity<D> {
    fn step(&self) -> Step {
        Step(Rc::clone(&self.node))
    }
}

/// How a quantity stands to a limit, given how far off both can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Below, by more than the ± of the difference.
    Below,
    /// Within the ± of the difference: nobody can say.
    TooCloseToCall,
    /// Above, by more than the ± of the difference.
    Above,
}

impl<D: Dimension> Quantity<D> {
    pub(crate) fn from_node(node: Node) -> Self {
        Self {
            node: Rc::new(node),
            dimension: PhantomData,
        }
    }

    pub(crate) fn from_op(value: f64, op: Op, args: impl Into<Args>) -> Self {
        Self::of_shared(Node::made(value, op, args.into(), D::POWERS))
    }

    /// What every dimension has in common is made in functions of nodes; only the type is put on here.
    pub(crate) fn of_shared(node: Rc<Node>) -> Self {
        Self {
            node,
            dimension: PhantomData,
        }
    }

    /// An entry of the user, under its key, with the symbol that the working shows.
    pub fn entry(
        key: impl Into<Rc<str>>,
        symbol: &'static str,
        kind: Kind,
        reading: &Reading,
    ) -> Self {
        debug_assert_eq!(kind.dims(), D::POWERS, "{kind:?} read as another dimension");
        let leaf = Leaf {
            key: key.into(),
            plus: reading.plus,
            minus: reading.minus,
            stated: reading.stated,
        };
        let mut node = Node::new(reading.value, Op::Entry(leaf.into()), [], D::POWERS);
        node.symbol = Some(symbol);
        node.kind = Some(kind);
        Self::from_node(node)
    }

    /// An exact value in the SI unit of its dimension, without a name.
    #[must_use]
    pub fn exact(si: f64) -> Self {
        Self::from_op(si, Op::Constant, [])
    }

    /// An exact value in a unit, without a name.
    #[must_use]
    pub fn of(value: f64, unit: &'static Unit) -> Self {
        Self::exact(unit.to_si(value))
    }

    /// A named, cited constant.
    #[must_use]
    pub fn constant(symbol: &'static str, si: f64, kind: Kind, source: &'static Source) -> Self {
        let mut node = Node::new(si, Op::Constant, [], D::POWERS);
        node.symbol = Some(symbol);
        node.kind = Some(kind);
        node.source = Some(source);
        Self::from_node(node)
    }

    /// The value in the SI unit of its dimension.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.node.value
    }

    /// The value in a unit.
    #[must_use]
    pub fn in_unit(&self, unit: &'static Unit) -> f64 {
        unit.from_si(self.node.value)
    }

    /// How far above the value the truth can lie (95 %, SI).
    #[must_use]
    pub fn plus(&self) -> f64 {
        Spread::of(&self.node).plus
    }

    /// How far below the value the truth can lie (95 %, SI).
    #[must_use]
    pub fn minus(&self) -> f64 {
        Spread::of(&self.node).minus
    }

    /// The same quantity under a symbol of its own, which gives it a line in the working.
    #[must_use]
    pub fn called(self, symbol: &'static str) -> Self {
        Self::of_shared(changed(self.node, &Change::Symbol(symbol)))
    }

    /// The same quantity, shown in the working as this kind.
    #[must_use]
    pub fn of_kind(self, kind: Kind) -> Self {
        debug_assert_eq!(kind.dims(), D::POWERS, "{kind:?} is of another dimension");
        Self::of_shared(changed(self.node, &Change::Kind(kind)))
    }

    /// The same quantity with the published source of its formula.
    #[must_use]
    pub fn cited(self, source: &'static Source) -> Self {
        Self::of_shared(changed(self.node, &Change::Source(source)))
    }

    /// The square.
    #[must_use]
    pub fn squared(&self) -> Quantity<D::Product>
    where
        D: Times<D>,
    {
        self.to_power(2.0, self.value().powi(2))
    }

    /// The cube.
    #[must_use]
    pub fn cubed(&self) -> Quantity<<D::Product as Times<D>>::Product>
    where
        D: Times<D>,
        D::Product: Times<D>,
    {
        self.to_power(3.0, self.value().powi(3))
    }

    /// The square root; not a number below zero.
    #[must_use]
    pub fn sqrt(&self) -> Quantity<D::Half>
    where
        D: Halved,
    {
        self.to_power(0.5, self.value().sqrt())
    }

    fn to_power<E: Dimension>(&self, power: f64, value: f64) -> Quantity<E> {
        Quantity::of_shared(one(&self.node, value, Op::Power(power), E::POWERS))
    }

    /// The size without the sign.
    #[must_use]
    pub fn abs(&self) -> Self {
        self.apply(Function::Abs)
    }

    fn apply(&self, function: Function) -> Self {
        let value = function.at(self.value());
        Self::of_shared(one(&self.node, value, Op::Apply(function), D::POWERS))
    }

    /// The sum of any number of quantities; zero of none.
    #[must_use]
    pub fn sum_of<'a>(parts: impl IntoIterator<Item = &'a Self>) -> Self {
        let args: Vec<_> = parts
            .into_iter()
            .map(|part| Rc::clone(&part.node))
            .collect();
        Self::of_shared(sum(args, D::POWERS))
    }

    /// One named step for an integration, a look-up or a solution: SI numbers in, one SI number out.
    #[must_use]
    pub fn tabled(
        name: &'static str,
        inputs: &[&dyn Traced],
        of: impl Fn(&[f64]) -> f64 + 'static,
    ) -> Self {
        Table::boxed(name, inputs, Box::new(move |x, out| out.push(of(x)))).output(0)
    }

    /// How this stands to a limit, given the ± of the difference of the two.
    #[must_use]
    pub fn standing(&self, limit: &Self) -> Standing {
        standing(&(self - limit).node)
    }

    /// How many whole steps hold this quantity, and whether its ± reaches over into another count.
    #[must_use]
    pub fn steps_up(&self, step: &Self) -> Steps {
        steps_up(&self.node, step.value())
    }

    /// How many whole steps hold this quantity, for those who do not ask whether its ± reaches over into another count.
    #[must_use]
    pub fn count_of(&self, step: &Self) -> f64 {
        whole_steps(self.value(), step.value())
    }

    /// The same quantity, or an error where it is no finite number.
    ///
    /// # Errors
    /// [`MeasureError::NotFinite`].
    pub fn finite(self) -> Result<Self, MeasureError> {
        if self.value().is_finite() {
            Ok(self)
        } else {
            Err(MeasureError::NotFinite)
        }
    }

    /// The quantity as pages show it, its dimension forgotten.
    #[must_use]
    pub fn figure(&self, kind: Kind) -> Figure {
        debug_assert_eq!(kind.dims(), D::POWERS, "{kind:?} is of another dimension");
        Figure::new(Rc::clone(&self.node), kind)
    }
}

impl Quantity<NoDim> {
    /// The sine of an angle in radians.
    #[must_use]
    pub fn sin(&self) -> Self {
        self.apply(Function::Sin)
    }
    /// The cosine of an angle in radians.
    #[must_use]
    pub fn cos(&self) -> Self {
        self.apply(Function::Cos)
    }
    /// The tangent of an angle in radians.
    #[must_use]
    pub fn tan(&self) -> Self {
        self.apply(Function::Tan)
    }
    /// The angle in radians with this sine.
    #[must_use]
    pub fn asin(&self) -> Self {
        self.apply(Function::Asin)
    }
    /// The angle in radians with this cosine.
    #[must_use]
    pub fn acos(&self) -> Self {
        self.apply(Function::Acos)
    }
    /// The angle in radians with this tangent.
    #[must_use]
    pub fn atan(&self) -> Self {
        self.apply(Function::Atan)
    }
    /// e to this power.
    #[must_use]
    pub fn exp(&self) -> Self {
        self.apply(Function::Exp)
    }
    /// The natural logarithm.
    #[must_use]
    pub fn ln(&self) -> Self {
        self.apply(Function::Ln)
    }
    /// This number to an exact power.
    #[must_use]
    pub fn powf(&self, power: f64) -> Self {
        self.to_power(power, self.value().powf(power))
    }
}

/// What is said of a step besides its value.
enum Change {
    Symbol(&'static str),
    Kind(Kind),
    Source(&'static Source),
}

/// Marks the step itself where nobody else uses it and it is not an entry; else a step that renames it.
#[cfg_attr(target_arch = "wasm32", inline(never))]
fn changed(mut shared: Rc<Node>, change: &Change) -> Rc<Node> {
    let fixed = matches!(shared.op, Op::Entry(_) | Op::Unknown)
        || matches!(shared.op, Op::Constant) && shared.symbol.is_some();
    if fixed || Rc::get_mut(&mut shared).is_none() {
        let mut renamed = Node::new(shared.value, Op::Same, [Rc::clone(&shared)], shared.powers);
        renamed.kind = shared.kind;
        shared = Rc::new(renamed);
    }
    if let Some(node) = Rc::get_mut(&mut shared) {
        match *change {
            Change::Symbol(symbol) => node.symbol = Some(symbol),
            Change::Kind(kind) => node.kind = Some(kind),
            Change::Source(source) => node.source = Some(source),
        }
    }
    shared
}

/// A step of one argument.
#[cfg_attr(target_arch = "wasm32", inline(never))]
pub(crate) fn one(argument: &Rc<Node>, value: f64, op: Op, powers: Powers) -> Rc<Node> {
    Node::made(value, op, [Rc::clone(argument)].into(), powers)
}

#[cfg_attr(target_arch = "wasm32", inline(never))]
fn sum(args: Vec<Rc<Node>>, powers: Powers) -> Rc<Node> {
    if args.is_empty() {
        return Node::made(0.0, Op::Constant, Args::None, powers);
    }
    let value = args.iter().map(|arg| arg.value).sum();
    Node::made(value, Op::Sum, args.into(), powers)
}

#[cfg_attr(target_arch = "wasm32", inline(never))]
fn standing(difference: &Rc<Node>) -> Standing {
    let spread = Spread::of(difference);
    match difference.value {
        d if d > spread.minus => Standing::Above,
        d if -d > spread.plus => Standing::Below,
        _ => Standing::TooCloseToCall,
    }
}

fn whole_steps(value: f64, step: f64) -> f64 {
    (value / step - 1e-9).ceil().max(0.0)
}

#[cfg_attr(target_arch = "wasm32", inline(never))]
fn steps_up(node: &Rc<Node>, step: f64) -> Steps {
    let spread = Spread::of(node);
    let whole = |x: f64| whole_steps(x, step);
    Steps {
        count: whole(node.value),
        fewest: whole(node.value - spread.minus),
        most: whole(node.value + spread.plus),
    }
}
