//! Acceleration with the rotating masses, and the time from rest to a speed.

use core::f64::consts::PI;

use measure::{
    Acceleration, Force, Inertia, Kind, Length, Mass, Ratio, Rotation, Speed, Time, Traced,
};

use super::effort::Pull;
use super::engine::TorqueCurve;
use super::road_load::Resistance;
use super::sources;
use super::top_speed::EngineLimits;

/// The share by which rotating masses add to a vehicle's mass: 1.04 + 0.0025 i², for cars.
///
/// # Units
/// A pure number.
///
/// # Valid range
/// Cars, overall ratios up to about 20. For lorries use [`mass_factor_of_inertia`].
///
/// # Source
/// J. Y. Wong, Theory of Ground Vehicles, 2nd ed., page 211 (coefficients from memory).
#[must_use]
pub fn mass_factor(overall: &Ratio) -> Ratio {
    (1.04 + 0.0025 * overall.squared())
        .cited(&sources::MASS_FACTOR)
        .called("γ")
}

/// The same from the inertia of engine, flywheel and clutch: 1.04 + I i² (2 pi / C)² / m.
///
/// # Source
/// Mechanics; the 4 % of the wheels are common practice.
#[must_use]
pub fn mass_factor_of_inertia(
    inertia: &Inertia,
    overall: &Ratio,
    circumference: &Length,
    mass: &Mass,
) -> Ratio {
    let turning = overall * (2.0 * PI) / circumference;
    (1.04 + inertia * turning.squared() / mass)
        .cited(&sources::INERTIA)
        .called("γ")
}

/// The acceleration: (F - R) / (gamma m).
///
/// # Units
/// Metres per second squared.
///
/// # Source
/// Mechanics.
#[must_use]
pub fn acceleration(
    effort: &Force,
    resistance: &Force,
    mass: &Mass,
    mass_factor: &Ratio,
) -> Acceleration {
    ((effort - resistance) / (mass_factor * mass))
        .of_kind(Kind::Acceleration)
        .called("a")
}

/// What a start from rest needs besides gears, curve and resistance.
#[derive(Debug, Clone)]
pub struct Start {
    /// Inertia of engine, flywheel and clutch; without it the rule for cars is taken.
    pub inertia: Option<Inertia>,
    /// Time of one change of gear, during which speed is held.
    pub change: Time,
}

/// The time from rest to a speed, always in the gear that accelerates best; below the engine's lowest speed the clutch
/// slips in the lowest gear. None where that speed is out of reach. Its ± holds that of the greatest pull, for torque
/// and efficiency.
///
/// # Units
/// Seconds.
///
/// # Source
/// T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2 (from memory).
#[must_use]
pub fn time_to_speed(
    target: &Speed,
    gears: &[Pull],
    curve: &TorqueCurve,
    resistance: &Resistance,
    limits: &EngineLimits,
    start: &Start,
) -> Option<Time> {
    let circumference = &gears.first()?.circumference;
    let lowest = gears
        .iter()
        .max_by(|a, b| a.overall.value().total_cmp(&b.overall.value()))?;
    // What torque and efficiency are off by stands in the greatest pull: all other pulls are off by the same share.
    let (from, to) = limits.range();
    let peak = Rotation::exact(curve.peak_torque_at(from, to));
    let pull = lowest.effort_of(&curve.torque(&peak));
    let fixed = Run {
        torque: curve.plain(),
        pull: pull.value(),
        circumference: circumference.value(),
        overall: gears.iter().map(|gear| gear.overall.value()).collect(),
        efficiency: gears.iter().map(|gear| gear.efficiency.value()).collect(),
        limits: limits.range(),
        inertia: start.inertia.is_some(),
    };
    let inertia = start.inertia.clone().unwrap_or_else(|| Inertia::exact(0.0));
    let change = &start.change;
    let inputs: [&dyn Traced; 10] = [
        target,
        circumference,
        &pull,
        &resistance.mass,
        &resistance.rolling,
        &resistance.air,
        &resistance.drag_coefficient,
        &resistance.frontal_area,
        &inertia,
        change,
    ];
    let time = Time::tabled("time from rest", &inputs, move |x| fixed.seconds(x));
    time.value().is_finite().then(|| {
        time.of_kind(Kind::Seconds)
            .cited(&sources::EFFORT)
            .called("t")
    })
}

/// All that stays the same while the inputs are varied.
struct Run {
    torque: std::rc::Rc<dyn Fn(f64) -> f64>,
    pull: f64,
    circumference: f64,
    overall: Vec<f64>,
    efficiency: Vec<f64>,
    limits: (f64, f64),
    inertia: bool,
}

impl Run {
    fn seconds(&self, x: &[f64]) -> f64 {
        const STEPS: usize = 160;
        let [
            target,
            circumference,
            pull,
            mass,
            rolling,
            air,
            drag,
            area,
            inertia,
            change,
        ] = *x
        else {
            return f64::NAN;
        };
        let at = |v: f64| {
            let resistance = rolling * mass * 9.806_65 + 0.5 * air * drag * area * v * v;
            self.best(
                v,
                circumference,
                pull / self.pull,
                mass,
                resistance,
                inertia,
            )
        };
        let step = target / STEPS as f64;
        let mut seconds = 0.0;
        let mut before: Option<usize> = None;
        for k in 0..STEPS {
            // The middle of each step: the clutch's end and each change fall between steps, not on them.
            let Some((gear, acceleration)) = at((k as f64 + 0.5) * step) else {
                return f64::NAN;
            };
            if before.is_some_and(|last| last != gear) {
                seconds += change;
            }
            before = Some(gear);
            seconds += step / acceleration;
        }
        seconds
    }

    /// The gear that accelerates best at a speed, with its acceleration.
    fn best(
        &self,
        v: f64,
        circumference: f64,
        share: f64,
        mass: f64,
        resistance: f64,
        inertia: f64,
    ) -> Option<(usize, f64)> {
        let [radius, radius_of_pull] = [circumference, self.circumference].map(|c| c / (2.0 * PI));
        (0..self.overall.len())
            .filter_map(|gear| {
                let i = self.overall[gear];
                let n = v * i / circumference;
                let slipping = n < self.limits.0;
                if n > self.limits.1 || slipping && i < self.lowest_gear() {
                    return None;
                }
                let torque = share * (self.torque)(n.max(self.limits.0));
                let effort = torque * i * self.efficiency[gear] / radius_of_pull;
                let factor = if self.inertia {
                    1.04 + inertia * i * i / (radius * radius * mass)
                } else {
                    1.04 + 0.0025 * i * i
                };
                let acceleration = (effort - resistance) / (factor * mass);
                (acceleration > 0.0).then_some((gear, acceleration))
            })
            .max_by(|a, b| a.1.total_cmp(&b.1))
    }

    fn lowest_gear(&self) -> f64 {
        self.overall.iter().copied().fold(0.0, f64::max)
    }
}
