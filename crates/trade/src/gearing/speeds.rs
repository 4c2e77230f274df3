//! Speeds along the train: engine, propeller shaft, wheels, road.

use core::f64::consts::PI;

use measure::{Kind, Length, PerLength, Power, Ratio, Rotation, Speed, Torque};

use super::sources;

/// What stands between the engine and the wheels, besides the gear that is engaged.
#[derive(Debug, Clone)]
pub struct Train {
    /// Ratio of the overdrive, when there is one and it is in.
    pub overdrive: Option<Ratio>,
    /// Ratio of the transfer box.
    pub transfer: Option<Ratio>,
    /// Ratio of the crown wheel and pinion, or of the worm.
    pub axle: Ratio,
    /// Ratio of the second speed of a two-speed axle, when that is in.
    pub second_speed: Option<Ratio>,
    /// Ratio of reduction gears in the hubs.
    pub hubs: Option<Ratio>,
}

impl Train {
    /// A train of nothing but an axle.
    #[must_use]
    pub fn of_axle(axle: Ratio) -> Self {
        Self {
            overdrive: None,
            transfer: None,
            axle,
            second_speed: None,
            hubs: None,
        }
    }

    /// The same train with another crown wheel and pinion.
    #[must_use]
    pub fn with_axle(&self, axle: Ratio) -> Self {
        Self {
            axle,
            ..self.clone()
        }
    }

    /// Turns of the engine for one turn of the propeller shaft.
    #[must_use]
    pub fn to_shaft(&self, gear: &Ratio) -> Ratio {
        times(gear, [&self.overdrive, &self.transfer])
    }

    /// Turns of the propeller shaft for one turn of the wheels.
    #[must_use]
    pub fn from_shaft(&self) -> Ratio {
        times(&self.axle, [&self.second_speed, &self.hubs])
    }

    /// Turns of the engine for one turn of the wheels.
    ///
    /// i = gear x overdrive x transfer x axle x second speed x hubs.
    ///
    /// # Source
    /// Kinematics.
    #[must_use]
    pub fn overall(&self, gear: &Ratio) -> Ratio {
        (self.to_shaft(gear) * self.from_shaft())
            .of_kind(Kind::Ratio)
            .cited(&sources::KINEMATICS)
            .called("i")
    }
}

fn times<const N: usize>(first: &Ratio, others: [&Option<Ratio>; N]) -> Ratio {
    others
        .into_iter()
        .flatten()
        .fold(first.clone(), |product, next| product * next)
}

/// The road speed at an engine speed: v = n C / i.
///
/// # Units
/// Metres per second from turns per second and metres.
///
/// # Source
/// Kinematics.
///
/// # Example
/// 4000 rpm, C 1.895575 m, i 3.90: 116.65 km/h.
#[must_use]
pub fn road_speed(circumference: &Length, engine_speed: &Rotation, overall: &Ratio) -> Speed {
    (engine_speed * circumference / overall)
        .of_kind(Kind::Speed)
        .cited(&sources::KINEMATICS)
        .called("v")
}

/// The engine speed at a road speed: n = v i / C.
///
/// # Units
/// Turns per second.
///
/// # Source
/// Kinematics.
#[must_use]
pub fn engine_speed(circumference: &Length, road_speed: &Speed, overall: &Ratio) -> Rotation {
    (road_speed * overall / circumference)
        .of_kind(Kind::Rotation)
        .cited(&sources::KINEMATICS)
        .called("n")
}

/// The road speed for each 1000 turns a minute of the engine.
///
/// # Source
/// Kinematics.
#[must_use]
pub fn speed_per_1000(circumference: &Length, overall: &Ratio) -> Speed {
    let thousand = Rotation::exact(1000.0 / 60.0).of_kind(Kind::Rotation);
    road_speed(circumference, &thousand, overall)
}

/// The speed of the propeller shaft: n / (gear x overdrive x transfer).
///
/// # Source
/// Kinematics.
#[must_use]
pub fn propeller_shaft_speed(engine_speed: &Rotation, to_shaft: &Ratio) -> Rotation {
    (engine_speed / to_shaft)
        .of_kind(Kind::Rotation)
        .cited(&sources::KINEMATICS)
        .called("n_s")
}

/// Engine turns in a distance: i / C.
///
/// # Units
/// Turns per metre.
///
/// # Source
/// Kinematics.
#[must_use]
pub fn turns_per_distance(circumference: &Length, overall: &Ratio) -> PerLength {
    (overall / circumference)
        .of_kind(Kind::TurnsPerDistance)
        .cited(&sources::KINEMATICS)
        .called("N")
}

/// The mean piston speed: 2 x stroke x n.
///
/// # Source
/// Kinematics of the crank.
///
/// # Example
/// Stroke 100 mm at 4000 rpm: 13.33 m/s.
#[must_use]
pub fn mean_piston_speed(stroke: &Length, engine_speed: &Rotation) -> Speed {
    (2.0 * stroke * engine_speed)
        .of_kind(Kind::SurfaceSpeed)
        .cited(&sources::PISTON)
        .called("c_m")
}

/// The engine speed at a mean piston speed.
///
/// # Source
/// Kinematics of the crank.
#[must_use]
pub fn engine_speed_at_piston_speed(stroke: &Length, piston_speed: &Speed) -> Rotation {
    (piston_speed / (2.0 * stroke))
        .of_kind(Kind::Rotation)
        .cited(&sources::PISTON)
        .called("n_p")
}

/// The power of a torque at a speed: P = 2 pi n T.
///
/// # Source
/// Mechanics.
#[must_use]
pub fn power(torque: &Torque, engine_speed: &Rotation) -> Power {
    (2.0 * PI * engine_speed * torque)
        .of_kind(Kind::Power)
        .cited(&sources::POWER)
        .called("P")
}

/// The axle ratio for a wanted engine speed at a wanted road speed: axle = n C / (v x all other ratios).
///
/// # Source
/// Kinematics.
#[must_use]
pub fn axle_for_speed(
    circumference: &Length,
    road_speed: &Speed,
    engine_speed: &Rotation,
    other_ratios: &Ratio,
) -> Ratio {
    (engine_speed * circumference / road_speed / other_ratios)
        .of_kind(Kind::Ratio)
        .cited(&sources::KINEMATICS)
        .called("i_f")
}
