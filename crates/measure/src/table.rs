//! Look-ups, integrations and solutions as one named step of the working.

use std::rc::Rc;

use crate::dimension::Dimension;
use crate::node::{Args, Node, Op, Outputs, TableOf};
use crate::unit::Powers;
use crate::{Quantity, Traced};

/// One named step with several results, for a solution that yields them together.
#[derive(Clone)]
pub struct Table {
    of: Rc<TableOf>,
    args: Args,
}

impl Table {
    /// Runs `of` once on the inputs' SI values; slopes are found by central differences when a ± is asked for.
    #[must_use]
    pub fn new(
        name: &'static str,
        inputs: &[&dyn Traced],
        of: impl Fn(&[f64]) -> Vec<f64> + 'static,
    ) -> Self {
        Self::boxed(name, inputs, Box::new(of))
    }

    #[cfg_attr(target_arch = "wasm32", inline(never))]
    fn boxed(name: &'static str, inputs: &[&dyn Traced], of: Box<Outputs>) -> Self {
        let mut table = Self::of(name, inputs);
        table.outputs = of(&table.inputs);
        table.of = Some(of);
        Self::shared(table, inputs)
    }

    /// One named step whose results and slopes the caller has found: of every result (inner) by every input (outer).
    #[must_use]
    pub fn known(
        name: &'static str,
        inputs: &[&dyn Traced],
        outputs: Vec<f64>,
        slopes: Vec<Vec<f64>>,
    ) -> Self {
        let mut table = Self::of(name, inputs);
        table.outputs = outputs;
        table.slopes = slopes.into();
        Self::shared(table, inputs)
    }

    fn of(name: &'static str, inputs: &[&dyn Traced]) -> TableOf {
        let args = inputs.iter().map(|input| input.step().0);
        let (inputs, constant) = args
            .map(|arg| (arg.value, matches!(arg.op, Op::Constant)))
            .unzip();
        TableOf {
            name,
            inputs,
            constant,
            outputs: Vec::new(),
            of: None,
            slopes: core::cell::OnceCell::new(),
        }
    }

    fn shared(table: TableOf, inputs: &[&dyn Traced]) -> Self {
        let args: Vec<_> = inputs.iter().map(|input| input.step().0).collect();
        Self {
            of: Rc::new(table),
            args: args.into(),
        }
    }

    /// How many results there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.of.outputs.len()
    }

    /// Whether there is no result.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.of.outputs.is_empty()
    }

    /// One result, in the SI unit of the dimension that the caller names; not a number where there is no such result.
    #[must_use]
    pub fn output<D: Dimension>(&self, index: usize) -> Quantity<D> {
        Quantity::of_shared(self.step(index, D::POWERS))
    }

    #[cfg_attr(target_arch = "wasm32", inline(never))]
    fn step(&self, index: usize, powers: Powers) -> Rc<Node> {
        match self.of.outputs.get(index) {
            Some(value) => {
                let op = Op::Table(Rc::clone(&self.of), index);
                Node::made(*value, op, self.args.clone(), powers)
            }
            None => Node::made(f64::NAN, Op::Constant, Args::None, powers),
        }
    }
}
