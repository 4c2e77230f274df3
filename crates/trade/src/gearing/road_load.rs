//! What the road takes: rolling, air and slope.

use measure::{Area, Density, Force, Kind, Mass, Ratio, Speed};

use super::atmosphere::gravity;
use super::sources;

/// What stands against a vehicle on the level.
#[derive(Debug, Clone)]
pub struct Resistance {
    /// Mass of the vehicle with its load.
    pub mass: Mass,
    /// Rolling-resistance coefficient.
    pub rolling: Ratio,
    /// Density of the air.
    pub air: Density,
    /// Drag coefficient.
    pub drag_coefficient: Ratio,
    /// Frontal area.
    pub frontal_area: Area,
}

impl Resistance {
    /// Rolling resistance and air drag at a speed.
    ///
    /// # Source
    /// T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 4 (from memory).
    #[must_use]
    pub fn at(&self, speed: &Speed) -> Force {
        (rolling_resistance(&self.mass, &self.rolling) + self.drag(speed))
            .of_kind(Kind::Force)
            .called("R")
    }

    /// Air drag at a speed.
    #[must_use]
    pub fn drag(&self, speed: &Speed) -> Force {
        air_drag(&self.air, &self.drag_coefficient, &self.frontal_area, speed)
    }

    /// The resistance on the level as a plain function, N over m/s.
    pub(super) fn plain(&self) -> impl Fn(f64) -> f64 + use<> {
        let rolling = self.rolling.value() * self.mass.value() * gravity().value();
        let drag = self.plain_drag();
        move |v| rolling + drag * v * v
    }

    /// Air drag by the square of speed, plain.
    pub(super) fn plain_drag(&self) -> f64 {
        0.5 * self.air.value() * self.drag_coefficient.value() * self.frontal_area.value()
    }

    /// Road load over speed on a slope for a drawing: m/s and N, from rest to `fastest_m_s`.
    #[must_use]
    pub fn line(&self, slope: f64, fastest_m_s: f64, count: usize) -> Vec<(f64, f64)> {
        let angle = slope.atan();
        let weight = self.mass.value() * gravity().value();
        let steady = weight * (angle.sin() + self.rolling.value() * angle.cos());
        let drag = self.plain_drag();
        (0..count)
            .map(|k| fastest_m_s * k as f64 / (count.max(2) - 1) as f64)
            .map(|v| (v, steady + drag * v * v))
            .collect()
    }
}

/// Rolling resistance on the level: f m g.
///
/// # Units
/// Newtons.
///
/// # Source
/// T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 4 (from memory).
#[must_use]
pub fn rolling_resistance(mass: &Mass, coefficient: &Ratio) -> Force {
    (coefficient * mass * gravity())
        .of_kind(Kind::Force)
        .cited(&sources::ROAD_LOAD)
        .called("R_r")
}

/// Air drag: 1/2 rho Cd A v².
///
/// # Units
/// Newtons.
///
/// # Source
/// T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 4 (from memory).
///
/// # Example
/// 1.07 kg/m³, 0.65, 10.0335 m², 29.9517 m/s: 3130.1 N.
#[must_use]
pub fn air_drag(density: &Density, coefficient: &Ratio, area: &Area, speed: &Speed) -> Force {
    (0.5 * density * coefficient * area * speed.squared())
        .of_kind(Kind::Force)
        .cited(&sources::ROAD_LOAD)
        .called("R_a")
}
