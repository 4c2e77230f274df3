//! Tractive effort at the wheels.

use core::f64::consts::PI;

use measure::{Force, Kind, Length, Ratio, Speed, Torque};

use super::engine::TorqueCurve;
use super::road_load::Resistance;
use super::sources;
use super::speeds::engine_speed;

/// The force at the driven wheels: F = 2 pi T i eta / C.
///
/// # Units
/// Newtons.
///
/// # Source
/// T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2 (from memory).
///
/// # Example
/// 201 lb ft, ratios 4.28 and 2.92, efficiencies 0.966 and 0.99, radius 12.59 in: 2290 lbf.
#[must_use]
pub fn tractive_effort(
    torque: &Torque,
    overall: &Ratio,
    efficiency: &Ratio,
    circumference: &Length,
) -> Force {
    (2.0 * PI * torque * overall * efficiency / circumference)
        .of_kind(Kind::Force)
        .cited(&sources::EFFORT)
        .called("F")
}

/// The overall ratio of gears before the axle turned round: the axle ratio that gives a wanted force.
///
/// # Source
/// As [`tractive_effort`].
#[must_use]
pub fn axle_for_force(
    force: &Force,
    torque: &Torque,
    other_ratios: &Ratio,
    efficiency: &Ratio,
    circumference: &Length,
) -> Ratio {
    (force * circumference / (2.0 * PI * torque * other_ratios * efficiency))
        .of_kind(Kind::Ratio)
        .cited(&sources::EFFORT)
        .called("i_f")
}

/// One gear as it reaches the road.
#[derive(Debug, Clone)]
pub struct Pull {
    /// Engine turns for one turn of the wheels.
    pub overall: Ratio,
    /// Share of the engine's power that reaches the wheels.
    pub efficiency: Ratio,
    /// Rolling circumference.
    pub circumference: Length,
}

impl Pull {
    /// The tractive effort at a road speed, at full load.
    #[must_use]
    pub fn effort(&self, curve: &TorqueCurve, speed: &Speed) -> Force {
        let n = engine_speed(&self.circumference, speed, &self.overall);
        self.effort_of(&curve.torque(&n))
    }

    /// The tractive effort of a torque of the engine.
    #[must_use]
    pub fn effort_of(&self, torque: &Torque) -> Force {
        tractive_effort(torque, &self.overall, &self.efficiency, &self.circumference)
    }

    /// Road speed over engine speed, plain.
    pub(super) fn metres_a_turn(&self) -> f64 {
        self.circumference.value() / self.overall.value()
    }

    /// Effort for each newton metre of the engine, plain.
    pub(super) fn force_a_torque(&self) -> f64 {
        2.0 * PI * self.efficiency.value() / self.metres_a_turn()
    }

    /// Effort over road speed as a plain function, N over m/s.
    pub(super) fn plain(&self, curve: &TorqueCurve) -> impl Fn(f64) -> f64 + use<> {
        let torque = curve.plain();
        let (metres, force) = (self.metres_a_turn(), self.force_a_torque());
        move |v| force * torque(v / metres)
    }

    /// What is left of the effort over the road load, plain.
    pub(super) fn surplus(
        &self,
        curve: &TorqueCurve,
        resistance: &Resistance,
    ) -> impl Fn(f64) -> f64 + use<> {
        let (effort, load) = (self.plain(curve), resistance.plain());
        move |v| effort(v) - load(v)
    }

    /// Effort over speed for a drawing, m/s and N, between two engine speeds.
    #[must_use]
    pub fn line(
        &self,
        curve: &TorqueCurve,
        (lowest, highest): (f64, f64),
        count: usize,
    ) -> Vec<(f64, f64)> {
        let effort = self.plain(curve);
        let metres = self.metres_a_turn();
        (0..count)
            .map(|k| metres * (lowest + (highest - lowest) * k as f64 / (count.max(2) - 1) as f64))
            .map(|v| (v, effort(v)))
            .collect()
    }
}
