//! Top speed in a gear, and what limits it.

use measure::{Kind, Rotation, Speed};

use super::effort::Pull;
use super::engine::TorqueCurve;
use super::road_load::Resistance;
use super::sources;
use super::speeds::road_speed;

/// What limits a top speed or a hill, as [`measure::Quantity::governing`] names it.
pub mod limit {
    /// Effort meets road load.
    pub const POWER: &str = "power";
    /// The engine's highest speed.
    pub const REVS: &str = "revs";
    /// The mean piston speed that is kept to.
    pub const PISTON: &str = "piston speed";
    /// What the clutch holds.
    pub const CLUTCH: &str = "clutch";
    /// What the engine gives.
    pub const TORQUE: &str = "torque";
    /// What the driven tyres hold.
    pub const GRIP: &str = "grip";
}

/// The engine speeds between which a vehicle is driven.
#[derive(Debug, Clone)]
pub struct EngineLimits {
    /// The lowest at which it pulls.
    pub lowest: Rotation,
    /// The highest that it may reach.
    pub highest: Rotation,
    /// The one that the mean piston speed allows, where that is kept to.
    pub piston: Option<Rotation>,
}

impl EngineLimits {
    /// Lowest and highest as plain numbers, turns per second.
    #[must_use]
    pub fn range(&self) -> (f64, f64) {
        (self.lowest.value(), self.highest.value())
    }
}

/// The top speed in a gear on the level: the least of what power, revs and piston speed allow.
///
/// Power allows the speed at which effort meets road load: F(v) = R(v). Where the engine has effort to spare at its highest
/// speed, power does not limit. None where the gear cannot hold any speed on the level.
///
/// # Units
/// Metres per second.
///
/// # Source
/// T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2 (from memory).
#[must_use]
pub fn top_speed(
    pull: &Pull,
    curve: &TorqueCurve,
    resistance: &Resistance,
    limits: &EngineLimits,
) -> Option<Speed> {
    let at = |n: &Rotation| road_speed(&pull.circumference, n, &pull.overall);
    let mut allowed = vec![(limit::REVS, at(&limits.highest))];
    if let Some(piston) = &limits.piston {
        allowed.push((limit::PISTON, at(piston)));
    }
    let metres = pull.metres_a_turn();
    let (lowest, highest) = limits.range();
    let (lowest, highest) = (lowest * metres, highest * metres);
    let surplus = pull.surplus(curve, resistance);
    if surplus(highest) < 0.0 {
        let balance = last_crossing(&surplus, lowest, highest)?;
        let balance = Speed::solved("v", balance, |v| pull.effort(curve, v) - resistance.at(v));
        allowed.push((
            limit::POWER,
            balance.of_kind(Kind::Speed).cited(&sources::ROAD_LOAD),
        ));
    }
    Some(
        Speed::least_of(&allowed)
            .of_kind(Kind::Speed)
            .called("v_max"),
    )
}

/// The highest place where a falling surplus passes nought.
fn last_crossing(surplus: &dyn Fn(f64) -> f64, lowest: f64, highest: f64) -> Option<f64> {
    const PLACES: usize = 48;
    let place = |k: usize| lowest + (highest - lowest) * k as f64 / PLACES as f64;
    let last = (0..PLACES).rev().find(|k| surplus(place(*k)) >= 0.0)?;
    measure::zero(place(last), place(last + 1), surplus)
}
