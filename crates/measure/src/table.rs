//! Look-ups, integrations and solutions as one named step of the working.

use std::rc::Rc;

use crate::dimension::Dimension;
use crate::node::{Args, Op, TableOf};
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
        let args: Vec<_> = inputs.iter().map(|input| input.step().0).collect();
        let inputs: Vec<_> = args.iter().map(|arg| arg.value).collect();
        let constant = args
            .iter()
            .map(|arg| matches!(arg.op, Op::Constant))
            .collect();
        let outputs = of(&inputs);
        let slopes = core::cell::OnceCell::new();
        Self {
            of: Rc::new(TableOf {
                name,
                inputs,
                constant,
                outputs,
                of: Box::new(of),
                slopes,
            }),
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
        let value = self.of.outputs.get(index).copied().unwrap_or(f64::NAN);
        let op = match self.of.outputs.get(index) {
            Some(_) => Op::Table(Rc::clone(&self.of), index),
            None => return Quantity::exact(value),
        };
        Quantity::from_op(value, op, self.args.clone())
    }
}
