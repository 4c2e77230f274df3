//! Plus, minus, times and by, on quantities and references to them in any mixture, and on pure numbers.

use std::ops::{Add, Div, Mul, Neg, Sub};
use std::rc::Rc;

use crate::Quantity;
use crate::dimension::{Dimension, NoDim, Over, Times};
use crate::node::{Node, Op};
use crate::quantity::one;
use crate::unit::Powers;

/// A step of two arguments.
fn two<D: Dimension>(value: f64, op: Op, first: &Rc<Node>, second: &Rc<Node>) -> Quantity<D> {
    Quantity::of_shared(step_of_two(value, op, [first, second], D::POWERS))
}

#[cfg_attr(target_arch = "wasm32", inline(never))]
fn step_of_two(value: f64, op: Op, args: [&Rc<Node>; 2], powers: Powers) -> Rc<Node> {
    Node::made(value, op, args.map(Rc::clone).into(), powers)
}

macro_rules! operator {
    ($trait:ident $method:ident $how:ident, $sign:tt, [$($bound:tt)*], $other:ty, $output:ty, [$($generic:ident)*]) => {
        impl<D: Dimension $($bound)*, $($generic: Dimension,)*> $trait<&$other> for &Quantity<D> {
            type Output = $output;
            fn $method(self, other: &$other) -> Self::Output {
                let value = self.value() $sign other.value();
                two(value, Op::$how, &self.node, &other.node)
            }
        }
        impl<D: Dimension $($bound)*, $($generic: Dimension,)*> $trait<$other> for &Quantity<D> {
            type Output = $output;
            fn $method(self, other: $other) -> Self::Output {
                self $sign &other
            }
        }
        impl<D: Dimension $($bound)*, $($generic: Dimension,)*> $trait<&$other> for Quantity<D> {
            type Output = $output;
            fn $method(self, other: &$other) -> Self::Output {
                &self $sign other
            }
        }
        impl<D: Dimension $($bound)*, $($generic: Dimension,)*> $trait<$other> for Quantity<D> {
            type Output = $output;
            fn $method(self, other: $other) -> Self::Output {
                &self $sign &other
            }
        }
    };
}

operator!(Add add Sum, +, [], Quantity<D>, Quantity<D>, []);
operator!(Sub sub Difference, -, [], Quantity<D>, Quantity<D>, []);
operator!(Mul mul Product, *, [+ Times<E>], Quantity<E>, Quantity<D::Product>, [E]);
operator!(Div div Quotient, /, [+ Over<E>], Quantity<E>, Quantity<D::Quotient>, [E]);

impl<D: Dimension> Neg for &Quantity<D> {
    type Output = Quantity<D>;
    fn neg(self) -> Quantity<D> {
        Quantity::from_op(-self.value(), Op::Negative, [Rc::clone(&self.node)])
    }
}

impl<D: Dimension> Neg for Quantity<D> {
    type Output = Self;
    fn neg(self) -> Self {
        -&self
    }
}

/// Numbers times quantities keep the dimension, and need no proof of it.
fn scaled<D: Dimension>(number: f64, quantity: &Quantity<D>) -> Quantity<D> {
    let value = number * quantity.value();
    Quantity::of_shared(one(&quantity.node, value, Op::Times(number), D::POWERS))
}

fn divided<D: Dimension>(quantity: &Quantity<D>, number: f64) -> Quantity<D> {
    let value = quantity.value() / number;
    Quantity::of_shared(one(&quantity.node, value, Op::Over(number), D::POWERS))
}

macro_rules! with_numbers {
    ($($quantity:ty),*) => {$(
        impl<D: Dimension> Mul<f64> for $quantity {
            type Output = Quantity<D>;
            fn mul(self, number: f64) -> Quantity<D> {
                scaled(number, &self)
            }
        }
        impl<D: Dimension> Mul<$quantity> for f64 {
            type Output = Quantity<D>;
            fn mul(self, quantity: $quantity) -> Quantity<D> {
                scaled(self, &quantity)
            }
        }
        impl<D: Dimension> Div<f64> for $quantity {
            type Output = Quantity<D>;
            fn div(self, number: f64) -> Quantity<D> {
                divided(&self, number)
            }
        }
        impl<D: Dimension> Div<$quantity> for f64
        where
            NoDim: Over<D>,
        {
            type Output = Quantity<<NoDim as Over<D>>::Quotient>;
            fn div(self, quantity: $quantity) -> Self::Output {
                Quantity::<NoDim>::exact(self) / quantity
            }
        }
    )*};
}

with_numbers!(Quantity<D>, &Quantity<D>);

macro_rules! ratios_with_numbers {
    ($($ratio:ty),*) => {$(
        impl Add<f64> for $ratio {
            type Output = Quantity<NoDim>;
            fn add(self, number: f64) -> Quantity<NoDim> {
                self + Quantity::<NoDim>::exact(number)
            }
        }
        impl Sub<f64> for $ratio {
            type Output = Quantity<NoDim>;
            fn sub(self, number: f64) -> Quantity<NoDim> {
                self - Quantity::<NoDim>::exact(number)
            }
        }
        impl Add<$ratio> for f64 {
            type Output = Quantity<NoDim>;
            fn add(self, ratio: $ratio) -> Quantity<NoDim> {
                Quantity::<NoDim>::exact(self) + ratio
            }
        }
        impl Sub<$ratio> for f64 {
            type Output = Quantity<NoDim>;
            fn sub(self, ratio: $ratio) -> Quantity<NoDim> {
                Quantity::<NoDim>::exact(self) - ratio
            }
        }
    )*};
}

ratios_with_numbers!(Quantity<NoDim>, &Quantity<NoDim>);
