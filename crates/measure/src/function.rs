//! The functions of one pure number that a formula may use, with their slopes.

/// A function of a pure number (an angle in radians where it is an angle).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
#[allow(missing_docs)] // The names are those of mathematics.
pub enum Function {
    Sin,
    Cos,
    Tan,
    Asin,
    Acos,
    Atan,
    Exp,
    Ln,
    Abs,
}

impl Function {
    /// The value at `x`.
    #[must_use]
    pub fn at(self, x: f64) -> f64 {
        match self {
            Self::Sin => x.sin(),
            Self::Cos => x.cos(),
            Self::Tan => x.tan(),
            Self::Asin => x.asin(),
            Self::Acos => x.acos(),
            Self::Atan => x.atan(),
            Self::Exp => x.exp(),
            Self::Ln => x.ln(),
            Self::Abs => x.abs(),
        }
    }

    /// The slope at `x`.
    #[must_use]
    pub fn slope(self, x: f64) -> f64 {
        match self {
            Self::Sin => x.cos(),
            Self::Cos => -x.sin(),
            Self::Tan => 1.0 / x.cos().powi(2),
            Self::Asin => 1.0 / (1.0 - x * x).sqrt(),
            Self::Acos => -1.0 / (1.0 - x * x).sqrt(),
            Self::Atan => 1.0 / (1.0 + x * x),
            Self::Exp => x.exp(),
            Self::Ln => 1.0 / x,
            Self::Abs => x.signum(),
        }
    }

    /// The name as formulas print it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Sin => "sin",
            Self::Cos => "cos",
            Self::Tan => "tan",
            Self::Asin => "asin",
            Self::Acos => "acos",
            Self::Atan => "atan",
            Self::Exp => "exp",
            Self::Ln => "ln",
            Self::Abs => "abs",
        }
    }
}
