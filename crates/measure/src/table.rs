//! Look-ups, integrations and solutions as one named step of the working.

use core::cell::OnceCell;
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
        Self::boxed(name, inputs, Box::new(move |x, out| out.extend(of(x))))
    }

    #[cfg_attr(target_arch = "wasm32", inline(never))]
    pub(crate) fn boxed(name: &'static str, inputs: &[&dyn Traced], of: Box<Outputs>) -> Self {
        let args: Rc<[_]> = inputs.iter().map(|input| input.step().0).collect();
        let values: Vec<f64> = args.iter().map(|arg| arg.value).collect();
        let mut outputs = Vec::new();
        of(&values, &mut outputs);
        let table = TableOf {
            name,
            outputs,
            of: Some(of),
            slopes: OnceCell::new(),
        };
        Self {
            of: Rc::new(table),
            args: Args::Many(args),
        }
    }

    /// One named step whose results and slopes the caller has found: of every result by the first input, then by the second, and so on.
    #[must_use]
    pub fn known(
        name: &'static str,
        inputs: &[&dyn Traced],
        outputs: Vec<f64>,
        slopes: Vec<f64>,
    ) -> Self {
        let table = TableOf {
            name,
            outputs,
            of: None,
            slopes: OnceCell::from(slopes),
        };
        Self {
            of: Rc::new(table),
            args: Args::Many(inputs.iter().map(|input| input.step().0).collect()),
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
                let op = Op::Table(Rc::clone(&self.of), index as u32);
                Node::made(*value, op, self.args.clone(), powers)
            }
            None => Node::made(f64::NAN, Op::Constant, Args::None, powers),
        }
    }
}
