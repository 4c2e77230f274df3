//! The steepest hill that the driven wheels' grip allows, with the load that a slope moves to the rear.

use measure::{Acceleration, Kind, Length, Mass, Ratio};

use super::atmosphere::gravity;
use super::sources;
use crate::TradeError;

/// Which axle is driven.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Driven {
    /// The rear axle.
    Rear,
    /// The front axle.
    Front,
    /// Both axles.
    All,
}

/// Where a vehicle's mass stands on its wheels.
#[derive(Debug, Clone)]
pub struct Stance {
    /// Distance of the axles.
    pub wheelbase: Length,
    /// Height of the centre of gravity above the road.
    pub height: Length,
    /// Share of the weight on the rear axle, on the level.
    pub rear_share: Ratio,
}

impl Stance {
    /// The stance from the loads on the axles.
    #[must_use]
    pub fn of_axle_loads(wheelbase: &Length, height: &Length, front: &Mass, rear: &Mass) -> Self {
        Self {
            wheelbase: wheelbase.clone(),
            height: height.clone(),
            rear_share: (rear / (front + rear)).of_kind(Kind::Ratio).called("w_r"),
        }
    }
}

/// The slope on which the driven wheels slip, at a steady speed or when starting off with an acceleration.
///
/// Moments about the tyre contacts give the driven axle's load. With k the height by the wheelbase (against the sign for
/// front drive, nil for both axles), w the driven axle's share of the weight on the level and mu the grip:
/// A = 1 - mu k, B = mu w - f, a = atan(B/A) - asin(A start / (g sqrt(A² + B²))), slope = tan(a).
///
/// # Units
/// A ratio, rise to run.
///
/// # Errors
/// [`TradeError::NoLimit`] where load transfer outruns the slope, so that grip never limits.
///
/// # Source
/// Statics.
pub fn grip_slope(
    grip: &Ratio,
    rolling: &Ratio,
    stance: &Stance,
    driven: Driven,
    start: &Acceleration,
) -> Result<Ratio, TradeError> {
    let lever = &stance.height / &stance.wheelbase;
    let (a, b) = match driven {
        Driven::Rear => (1.0 - grip * lever, grip * &stance.rear_share - rolling),
        Driven::Front => (
            1.0 + grip * lever,
            grip * (1.0 - &stance.rear_share) - rolling,
        ),
        Driven::All => (Ratio::exact(1.0), grip - rolling),
    };
    if a.value() <= 0.0 {
        return Err(TradeError::NoLimit);
    }
    let reach = (a.squared() + b.squared()).sqrt();
    let asked = &a * (start / gravity()) / reach;
    if asked.value() >= 1.0 {
        return Err(TradeError::OutOfRange {
            entry: "start",
            lowest: 0.0,
            highest: 5.0,
        });
    }
    let angle = ((b / a).atan() - asked.asin())
        .of_kind(Kind::Angle)
        .called("α");
    Ok(angle
        .tan()
        .of_kind(Kind::Slope)
        .cited(&sources::GRIP)
        .called("s"))
}
