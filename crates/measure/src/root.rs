//! Working back: the unknown that makes a remainder zero, with its ± by implicit differentiation.

use std::rc::Rc;

use crate::dimension::Dimension;
use crate::node::{Node, Op};
use crate::sweep::slope_by;
use crate::{MeasureError, Quantity};

/// How many places are tried between the bounds before the search narrows.
const PLACES: usize = 96;

impl<D: Dimension> Quantity<D> {
    /// The one unknown between the bounds (SI) that makes `remainder` zero; the least where there are several.
    ///
    /// The ± follows from the entries by implicit differentiation: dx/dp = -(∂f/∂p)/(∂f/∂x).
    ///
    /// # Errors
    /// [`MeasureError::NoRoot`] with the place that comes nearest and what remains there.
    pub fn root<E: Dimension>(
        symbol: &'static str,
        lowest: f64,
        highest: f64,
        remainder: impl Fn(&Self) -> Quantity<E>,
    ) -> Result<Self, MeasureError> {
        Self::roots(symbol, lowest, highest, remainder).map(|roots| roots[0].clone())
    }

    /// Every unknown between the bounds (SI) that makes `remainder` zero, the least first; at least one.
    ///
    /// # Errors
    /// [`MeasureError::NoRoot`] with the place that comes nearest and what remains there.
    pub fn roots<E: Dimension>(
        symbol: &'static str,
        lowest: f64,
        highest: f64,
        remainder: impl Fn(&Self) -> Quantity<E>,
    ) -> Result<Vec<Self>, MeasureError> {
        let places = zeros(lowest, highest, |x| remainder(&unknown(symbol, x)).value())?;
        Ok(places
            .into_iter()
            .map(|place| Self::solved(symbol, place, &remainder))
            .collect())
    }

    /// The unknown at a place that is known to make `remainder` zero: for a caller whose own search on plain numbers is
    /// cheaper than one that traces every try.
    pub fn solved<E: Dimension>(
        symbol: &'static str,
        place: f64,
        remainder: impl Fn(&Self) -> Quantity<E>,
    ) -> Self {
        let unknown = unknown(symbol, place);
        let remainder = remainder(&unknown);
        let slope = slope_by(&remainder.node, &unknown.node);
        let args = [Rc::clone(&remainder.node)];
        let mut node = Node::new(place, Op::Solved { slope }, args, D::POWERS);
        node.symbol = Some(symbol);
        Self::from_node(node)
    }
}

fn unknown<D: Dimension>(symbol: &'static str, place: f64) -> Quantity<D> {
    let mut node = Node::new(place, Op::Unknown, [], D::POWERS);
    node.symbol = Some(symbol);
    Quantity::from_node(node)
}

/// Every zero of `f` between the bounds: signs are compared at many places, then Brent's method narrows each change.
///
/// # Errors
/// [`MeasureError::NoRoot`] with the place that comes nearest and what remains there.
pub fn zeros(lowest: f64, highest: f64, f: impl Fn(f64) -> f64) -> Result<Vec<f64>, MeasureError> {
    zeros_of(lowest, highest, &f)
}

/// The zero of `f` between two places where its signs differ, by Brent's method; none where they do not.
pub fn zero(lowest: f64, highest: f64, f: impl Fn(f64) -> f64) -> Option<f64> {
    let (low, high) = (f(lowest), f(highest));
    (low * high <= 0.0).then(|| brent(&f, (lowest, low), (highest, high)))
}

fn zeros_of(lowest: f64, highest: f64, f: &dyn Fn(f64) -> f64) -> Result<Vec<f64>, MeasureError> {
    let geometric = lowest > 0.0 && highest / lowest > 50.0;
    let place = |i: usize| {
        let share = i as f64 / PLACES as f64;
        if i == PLACES {
            highest
        } else if geometric {
            lowest * (highest / lowest).powf(share)
        } else {
            lowest + (highest - lowest) * share
        }
    };
    let tried: Vec<(f64, f64)> = (0..=PLACES)
        .map(|i| (place(i), f(place(i))))
        .filter(|(_, y)| y.is_finite())
        .collect();
    let mut found: Vec<f64> = Vec::new();
    for (here, pair) in tried.windows(2).enumerate() {
        let ((a, fa), (b, fb)) = (pair[0], pair[1]);
        if fa == 0.0 {
            found.push(a);
        } else if fa * fb < 0.0 {
            let x = brent(f, (a, fa), (b, fb));
            // A pole changes sign too, but does not come near zero.
            if f(x).abs() <= fa.abs().min(fb.abs()) {
                found.push(x);
            }
        }
        if here + 2 == tried.len() && fb == 0.0 {
            found.push(b);
        }
    }
    if found.is_empty() {
        Err(nearest(&tried, f))
    } else {
        Ok(found)
    }
}

/// Where the remainder comes nearest to zero, narrowed between the neighbours of the best place tried.
fn nearest(tried: &[(f64, f64)], f: &dyn Fn(f64) -> f64) -> MeasureError {
    let Some(best) =
        (0..tried.len()).min_by(|a, b| tried[*a].1.abs().total_cmp(&tried[*b].1.abs()))
    else {
        return MeasureError::NotFinite;
    };
    let (mut a, mut b) = (
        tried[best.saturating_sub(1)].0,
        tried[(best + 1).min(tried.len() - 1)].0,
    );
    for _ in 0..60 {
        let (c, d) = (a + (b - a) / 3.0, b - (b - a) / 3.0);
        if f(c).abs() < f(d).abs() {
            b = d;
        } else {
            a = c;
        }
    }
    let narrowed = 0.5 * (a + b);
    let (x, y) = (narrowed, f(narrowed));
    if y.abs() < tried[best].1.abs() {
        MeasureError::NoRoot {
            nearest: x,
            remainder: y,
        }
    } else {
        MeasureError::NoRoot {
            nearest: tried[best].0,
            remainder: tried[best].1,
        }
    }
}

/// Brent's method (R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4):
/// inverse quadratic steps where they help, halving where they do not.
fn brent(f: &dyn Fn(f64) -> f64, from: (f64, f64), to: (f64, f64)) -> f64 {
    let ((mut a, mut fa), (mut b, mut fb)) = (from, to);
    let (mut c, mut fc) = (a, fa);
    let mut step = b - a;
    let mut before = step;
    for _ in 0..200 {
        if fb.signum() == fc.signum() {
            (c, fc) = (a, fa);
            step = b - a;
            before = step;
        }
        if fc.abs() < fb.abs() {
            (a, b, c) = (b, c, b);
            (fa, fb, fc) = (fb, fc, fb);
        }
        let tolerance = 2.0 * f64::EPSILON * b.abs() + f64::MIN_POSITIVE;
        let half = 0.5 * (c - b);
        if half.abs() <= tolerance || fb == 0.0 {
            return b;
        }
        if before.abs() >= tolerance && fa.abs() > fb.abs() {
            let s = fb / fa;
            let (mut p, mut q) = if a == c {
                (2.0 * half * s, 1.0 - s)
            } else {
                let (q, r) = (fa / fc, fb / fc);
                (
                    s * (2.0 * half * q * (q - r) - (b - a) * (r - 1.0)),
                    (q - 1.0) * (r - 1.0) * (s - 1.0),
                )
            };
            if p > 0.0 {
                q = -q;
            } else {
                p = -p;
            }
            if 2.0 * p < (3.0 * half * q - (tolerance * q).abs()).min((before * q).abs()) {
                before = step;
                step = p / q;
            } else {
                step = half;
                before = half;
            }
        } else {
            step = half;
            before = half;
        }
        (a, fa) = (b, fb);
        b += if step.abs() > tolerance {
            step
        } else {
            tolerance.copysign(half)
        };
        fb = f(b);
    }
    b
}
