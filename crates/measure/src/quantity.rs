//! The traced quantity: a value that remembers how it came about.

use core::fmt;
use core::marker::PhantomData;
use std::rc::Rc;

use crate::dimension::{Dimension, Halved, NoDim, Times};
use crate::node::{Args, Leaf, Node, Op};
use crate::sweep::Spread;
use crate::{Figure, Function, Kind, MeasureError, Reading, Source, Steps, Table, Unit};

/// A quantity with its dimension as a type. Cloning shares the step that made it.
pub struct Quantity<D> {
    pub(crate) node: Rc<Node>,
    pub(crate) dimension: PhantomData<fn() -> D>,
}

impl<D> Clone for Quantity<D> {
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
        Self::from_node(Node::new(value, op, args, D::POWERS))
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
        let mut node = Node::new(reading.value, Op::Entry(leaf), [], D::POWERS);
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
        self.changed(|node| node.symbol = Some(symbol))
    }

    /// The same quantity, shown in the working as this kind.
    #[must_use]
    pub fn of_kind(self, kind: Kind) -> Self {
        debug_assert_eq!(kind.dims(), D::POWERS, "{kind:?} is of another dimension");
        self.changed(|node| node.kind = Some(kind))
    }

    /// The same quantity with the published source of its formula.
    #[must_use]
    pub fn cited(self, source: &'static Source) -> Self {
        self.changed(|node| node.source = Some(source))
    }

    /// Marks the step itself where nobody else uses it and it is not an entry; else a step that renames it.
    fn changed(mut self, change: impl FnOnce(&mut Node)) -> Self {
        let fixed = matches!(self.node.op, Op::Entry(_) | Op::Unknown)
            || matches!(self.node.op, Op::Constant) && self.node.symbol.is_some();
        if let (false, Some(node)) = (fixed, Rc::get_mut(&mut self.node)) {
            change(node);
            return self;
        }
        let mut node = Node::new(
            self.node.value,
            Op::Same,
            [Rc::clone(&self.node)],
            D::POWERS,
        );
        node.kind = self.node.kind;
        change(&mut node);
        Self::from_node(node)
    }

    /// The square.
    #[must_use]
    pub fn squared(&self) -> Quantity<D::Product>
    where
        D: Times<D>,
    {
        Quantity::from_op(
            self.value().powi(2),
            Op::Power(2.0),
            [Rc::clone(&self.node)],
        )
    }

    /// The cube.
    #[must_use]
    pub fn cubed(&self) -> Quantity<<D::Product as Times<D>>::Product>
    where
        D: Times<D>,
        D::Product: Times<D>,
    {
        Quantity::from_op(
            self.value().powi(3),
            Op::Power(3.0),
            [Rc::clone(&self.node)],
        )
    }

    /// The square root; not a number below zero.
    #[must_use]
    pub fn sqrt(&self) -> Quantity<D::Half>
    where
        D: Halved,
    {
        Quantity::from_op(self.value().sqrt(), Op::Power(0.5), [Rc::clone(&self.node)])
    }

    /// The size without the sign.
    #[must_use]
    pub fn abs(&self) -> Self {
        self.apply(Function::Abs)
    }

    fn apply(&self, function: Function) -> Self {
        Self::from_op(
            function.at(self.value()),
            Op::Apply(function),
            [Rc::clone(&self.node)],
        )
    }

    /// The sum of any number of quantities; zero of none.
    #[must_use]
    pub fn sum_of<'a>(parts: impl IntoIterator<Item = &'a Self>) -> Self {
        let args: Vec<_> = parts
            .into_iter()
            .map(|part| Rc::clone(&part.node))
            .collect();
        if args.is_empty() {
            return Self::exact(0.0);
        }
        Self::from_op(args.iter().map(|arg| arg.value).sum(), Op::Sum, args)
    }

    /// One named step for an integration, a look-up or a solution: SI numbers in, one SI number out.
    #[must_use]
    pub fn tabled(
        name: &'static str,
        inputs: &[&dyn Traced],
        of: impl Fn(&[f64]) -> f64 + 'static,
    ) -> Self {
        Table::new(name, inputs, move |x| vec![of(x)]).output(0)
    }

    /// How this stands to a limit, given the ± of the difference of the two.
    #[must_use]
    pub fn standing(&self, limit: &Self) -> Standing {
        let difference = self - limit;
        let spread = Spread::of(&difference.node);
        match difference.value() {
            d if d > spread.minus => Standing::Above,
            d if -d > spread.plus => Standing::Below,
            _ => Standing::TooCloseToCall,
        }
    }

    /// How many whole steps hold this quantity, and whether its ± reaches over into another count.
    #[must_use]
    pub fn steps_up(&self, step: &Self) -> Steps {
        let spread = Spread::of(&self.node);
        let whole = |x: f64| (x / step.value() - 1e-9).ceil().max(0.0);
        Steps {
            count: whole(self.value()),
            fewest: whole(self.value() - spread.minus),
            most: whole(self.value() + spread.plus),
        }
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
        Self::from_op(
            self.value().powf(power),
            Op::Power(power),
            [Rc::clone(&self.node)],
        )
    }
}
