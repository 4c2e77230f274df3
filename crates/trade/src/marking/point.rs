//! A point on the flat of a pattern.

use measure::{Kind, Length, Ratio};

/// A point: x along the datum line, y to the left of it.
#[derive(Debug, Clone)]
pub struct Point {
    /// Along the datum line.
    pub x: Length,
    /// To the left of the datum line.
    pub y: Length,
}

impl Point {
    /// A point without error, in metres.
    #[must_use]
    pub fn exact(x: f64, y: f64) -> Self {
        Self {
            x: Length::exact(x),
            y: Length::exact(y),
        }
    }

    /// The distance to another point: sqrt((x₂ - x₁)² + (y₂ - y₁)²).
    #[must_use]
    pub fn distance(&self, other: &Self) -> Length {
        ((&other.x - &self.x).squared() + (&other.y - &self.y).squared())
            .sqrt()
            .of_kind(Kind::Length)
    }

    /// The point moved by a length along x and a length along y.
    #[must_use]
    pub fn shifted(&self, dx: &Length, dy: &Length) -> Self {
        Self {
            x: &self.x + dx,
            y: &self.y + dy,
        }
    }

    /// The point turned about the origin, anticlockwise by an angle in radians.
    #[must_use]
    pub fn turned(&self, angle: &Ratio) -> Self {
        let (sin, cos) = (angle.sin(), angle.cos());
        Self {
            x: &self.x * &cos - &self.y * &sin,
            y: &self.x * &sin + &self.y * &cos,
        }
    }

    /// The values alone, in metres.
    #[must_use]
    pub fn values(&self) -> [f64; 2] {
        [self.x.value(), self.y.value()]
    }
}
