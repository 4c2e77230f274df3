//! The steepest hill: by what the engine gives in a gear, and by what a start asks.

use measure::{Acceleration, Force, Kind, Length, Mass, Ratio, Speed};

use super::atmosphere::gravity;
use super::effort::Pull;
use super::engine::{TorqueCurve, peak};
use super::road_load::Resistance;
use super::sources;
use super::speeds::Train;
use crate::TradeError;

/// The slope on which a force just holds a vehicle against weight and rolling resistance.
///
/// sin(a) + f cos(a) = F / (m g), so a = asin(F / (m g sqrt(1 + f²))) - atan(f); the slope is tan(a).
///
/// # Units
/// A ratio, rise to run.
///
/// # Errors
/// [`TradeError::NoLimit`] where the force exceeds the weight: no slope stops the vehicle.
///
/// # Source
/// T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 4 (from memory).
pub fn slope_held(force: &Force, mass: &Mass, rolling: &Ratio) -> Result<Ratio, TradeError> {
    let share = (force / (mass * gravity()))
        .of_kind(Kind::Ratio)
        .called("q");
    let sine = &share / (rolling.squared() + 1.0).sqrt();
    if sine.value() >= 1.0 {
        return Err(TradeError::NoLimit);
    }
    let angle = (sine.asin() - rolling.atan())
        .of_kind(Kind::Angle)
        .called("α");
    Ok(angle
        .tan()
        .of_kind(Kind::Slope)
        .cited(&sources::ROAD_LOAD)
        .called("s"))
}

/// The force that a slope asks of a vehicle, rolling resistance included: m g (sin a + f cos a).
///
/// # Source
/// As [`slope_held`].
#[must_use]
pub fn force_on_slope(slope: &Ratio, mass: &Mass, rolling: &Ratio) -> Force {
    let angle = slope.atan();
    (mass * gravity() * (angle.sin() + rolling * angle.cos()))
        .of_kind(Kind::Force)
        .cited(&sources::ROAD_LOAD)
        .called("F")
}

/// The steepest hill in a gear, and the speed at which it is climbed.
#[derive(Debug, Clone)]
pub struct Hill {
    /// Rise to run; below nought where the gear cannot hold the vehicle on the level.
    pub slope: Ratio,
    /// The road speed at which the most effort is left over.
    pub speed_m_s: f64,
}

/// The steepest hill in a gear at a steady speed: where effort less air drag is greatest between two engine speeds.
///
/// # Errors
/// [`TradeError::NoLimit`] where the effort exceeds the weight.
///
/// # Source
/// As [`slope_held`].
pub fn steepest_hill(
    pull: &Pull,
    curve: &TorqueCurve,
    resistance: &Resistance,
    (lowest, highest): (f64, f64),
) -> Result<Hill, TradeError> {
    let metres = pull.metres_a_turn();
    let (effort, drag) = (pull.plain(curve), resistance.plain_drag());
    let (speed_m_s, _) = peak(
        &|v| effort(v) - drag * v * v,
        lowest * metres,
        highest * metres,
    );
    let speed = Speed::exact(speed_m_s).of_kind(Kind::Speed);
    let left = pull.effort(curve, &speed) - resistance.drag(&speed);
    let slope = slope_held(&left, &resistance.mass, &resistance.rolling)?;
    Ok(Hill { slope, speed_m_s })
}

/// The steepest slope to start on with a force at the wheels: the force must also set the mass moving.
///
/// F - 1.04 m a takes the place of F in [`slope_held`]; 1.04 stands for the wheels.
///
/// # Errors
/// [`TradeError::NoLimit`] where the force exceeds the weight.
///
/// # Source
/// As [`slope_held`]; the 4 % of the wheels are common practice.
pub fn restart_slope(
    force: &Force,
    mass: &Mass,
    rolling: &Ratio,
    start: &Acceleration,
) -> Result<Ratio, TradeError> {
    let left = (force - 1.04 * mass * start).of_kind(Kind::Force);
    slope_held(&left, mass, rolling)
}

/// The axle ratio with which a gear just climbs a wanted slope at a steady speed, the inverse of [`steepest_hill`].
///
/// # Valid range
/// Axles from 1 to 20; the least that serves is given.
///
/// # Errors
/// [`TradeError::NoAxle`] where none within the range climbs it.
///
/// # Source
/// As [`steepest_hill`].
pub fn axle_for_hill(
    slope: &Ratio,
    (train, gear, efficiency): (&Train, &Ratio, &Ratio),
    circumference: &Length,
    curve: &TorqueCurve,
    resistance: &Resistance,
    (lowest, highest): (f64, f64),
) -> Result<Ratio, TradeError> {
    let pull = |axle: &Ratio| Pull {
        overall: train.with_axle(axle.clone()).overall(gear),
        efficiency: efficiency.clone(),
        circumference: circumference.clone(),
    };
    let drag = resistance.plain_drag();
    let (torque, direct) = (curve.plain(), pull(&Ratio::exact(1.0)));
    let speed = |axle: f64| {
        let metres = direct.metres_a_turn() / axle;
        let force = direct.force_a_torque() * axle;
        let left = |v: f64| force * torque(v / metres) - drag * v * v;
        peak(&left, lowest * metres, highest * metres)
    };
    let asked = force_on_slope(slope, &resistance.mass, &resistance.rolling);
    // At each engine speed a higher ratio gives more effort and, going slower, less drag: what is left only grows with it.
    let axle = measure::zero(1.0, 20.0, |axle| speed(axle).1 - asked.value());
    let axle = axle.ok_or(TradeError::NoAxle)?;
    // At the best speed effort is level, so that speed may stand as it is.
    let speed = Speed::exact(speed(axle).0).of_kind(Kind::Speed);
    let solved = Ratio::solved("i_f", axle, |axle| {
        pull(axle).effort(curve, &speed) - resistance.drag(&speed) - &asked
    });
    Ok(solved.of_kind(Kind::Ratio).cited(&sources::EFFORT))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_slope_asks_for_the_force_that_holds_it(slope in -0.2f64..0.9, mass in 300.0f64..20e3, rolling in 0.0f64..0.15) {
            let (mass, rolling) = (Mass::exact(mass), Ratio::exact(rolling));
            let force = force_on_slope(&Ratio::exact(slope), &mass, &rolling);
            let found = slope_held(&force, &mass, &rolling).unwrap();
            prop_assert!((found.value() - slope).abs() < 1e-9);
        }
    }

    #[test]
    fn more_force_than_weight_knows_no_limit() {
        let found = slope_held(
            &Force::exact(20e3),
            &Mass::exact(1000.0),
            &Ratio::exact(0.01),
        );
        assert_eq!(found.err(), Some(TradeError::NoLimit));
    }
}
