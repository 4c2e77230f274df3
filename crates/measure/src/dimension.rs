//! Dimensions as types: a product of a length and a force is a torque, and the compiler says so.

use core::marker::PhantomData;
use std::ops::{Add, Sub};

use typenum::{Diff, Integer, N1, N2, N3, P1, P2, P3, P4, PartialDiv, PartialQuot, Sum, Z0};

use crate::Quantity;
use crate::unit::Powers;

/// A dimension: the powers of length, mass, time and temperature as integers of the type system.
#[allow(clippy::type_complexity)] // The marker names all four powers and nothing else.
pub struct Dim<L, M, T, K>(PhantomData<fn() -> (L, M, T, K)>);

/// What a quantity's type parameter must be: a [`Dim`] of type-level integers.
pub trait Dimension: 'static {
    /// The same powers at run time, for parsing, showing and the working.
    const POWERS: Powers;
}

impl<L, M, T, K> Dimension for Dim<L, M, T, K>
where
    L: Integer + 'static,
    M: Integer + 'static,
    T: Integer + 'static,
    K: Integer + 'static,
{
    const POWERS: Powers = [L::I8, M::I8, T::I8, K::I8];
}

/// Dimensions that multiply.
pub trait Times<Other>: Dimension {
    /// The dimension of the product.
    type Product: Dimension;
}

impl<L, M, T, K, L2, M2, T2, K2> Times<Dim<L2, M2, T2, K2>> for Dim<L, M, T, K>
where
    Self: Dimension,
    L: Add<L2>,
    M: Add<M2>,
    T: Add<T2>,
    K: Add<K2>,
    Dim<Sum<L, L2>, Sum<M, M2>, Sum<T, T2>, Sum<K, K2>>: Dimension,
{
    type Product = Dim<Sum<L, L2>, Sum<M, M2>, Sum<T, T2>, Sum<K, K2>>;
}

/// Dimensions that divide.
pub trait Over<Other>: Dimension {
    /// The dimension of the quotient.
    type Quotient: Dimension;
}

impl<L, M, T, K, L2, M2, T2, K2> Over<Dim<L2, M2, T2, K2>> for Dim<L, M, T, K>
where
    Self: Dimension,
    L: Sub<L2>,
    M: Sub<M2>,
    T: Sub<T2>,
    K: Sub<K2>,
    Dim<Diff<L, L2>, Diff<M, M2>, Diff<T, T2>, Diff<K, K2>>: Dimension,
{
    type Quotient = Dim<Diff<L, L2>, Diff<M, M2>, Diff<T, T2>, Diff<K, K2>>;
}

/// Dimensions that have a square root: every power is even.
pub trait Halved: Dimension {
    /// The dimension of the square root.
    type Half: Dimension;
}

impl<L, M, T, K> Halved for Dim<L, M, T, K>
where
    Self: Dimension,
    L: PartialDiv<P2>,
    M: PartialDiv<P2>,
    T: PartialDiv<P2>,
    K: PartialDiv<P2>,
    Dim<PartialQuot<L, P2>, PartialQuot<M, P2>, PartialQuot<T, P2>, PartialQuot<K, P2>>: Dimension,
{
    type Half = Dim<PartialQuot<L, P2>, PartialQuot<M, P2>, PartialQuot<T, P2>, PartialQuot<K, P2>>;
}

/// No dimension: ratios, counts, shares, and angles in radians.
pub type NoDim = Dim<Z0, Z0, Z0, Z0>;
macro_rules! quantities {
    ($($(#[$doc:meta])* $name:ident = $l:ident $m:ident $t:ident $k:ident;)*) => {
        $($(#[$doc])* pub type $name = Quantity<Dim<$l, $m, $t, $k>>;)*
    };
}

quantities! {
    /// A pure number: a gear ratio, a share, a count.
    Ratio = Z0 Z0 Z0 Z0;
    /// Radians.
    Angle = Z0 Z0 Z0 Z0;
    /// Metres.
    Length = P1 Z0 Z0 Z0;
    /// Square metres.
    Area = P2 Z0 Z0 Z0;
    /// Cubic metres.
    Volume = P3 Z0 Z0 Z0;
    /// Cubic metres: section modulus.
    SectionModulus = P3 Z0 Z0 Z0;
    /// Metres to the fourth power: second moment of area.
    SecondMoment = P4 Z0 Z0 Z0;
    /// Per metre: turns per kilometre, square metres per litre.
    PerLength = N1 Z0 Z0 Z0;
    /// Kilograms.
    Mass = Z0 P1 Z0 Z0;
    /// Kilogram square metres.
    Inertia = P2 P1 Z0 Z0;
    /// Kilograms per cubic metre.
    Density = N3 P1 Z0 Z0;
    /// Seconds.
    Time = Z0 Z0 P1 Z0;
    /// Turns per second.
    Rotation = Z0 Z0 N1 Z0;
    /// Cycles per second.
    Frequency = Z0 Z0 N1 Z0;
    /// Metres per second.
    Speed = P1 Z0 N1 Z0;
    /// Metres per second squared.
    Acceleration = P1 Z0 N2 Z0;
    /// Cubic metres per second.
    Flow = P3 Z0 N1 Z0;
    /// Newtons.
    Force = P1 P1 N2 Z0;
    /// Newton metres.
    Torque = P2 P1 N2 Z0;
    /// Joules.
    Energy = P2 P1 N2 Z0;
    /// Pascals.
    Pressure = N1 P1 N2 Z0;
    /// Pascals.
    Stress = N1 P1 N2 Z0;
    /// Newtons per metre.
    SpringRate = Z0 P1 N2 Z0;
    /// Watts.
    Power = P2 P1 N3 Z0;
    /// Watts per kilogram.
    PowerToMass = P2 Z0 N3 Z0;
    /// Kelvin.
    Temperature = Z0 Z0 Z0 P1;
}
