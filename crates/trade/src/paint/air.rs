//! Compressed air: whether the compressor keeps up with the gun.

use measure::{Flow, Kind, Pressure, Ratio, Time, Volume};

use super::sources::AIR;
use crate::TradeError;

/// Free air that a compressor delivers, from the displacement on its plate.
///
/// `Q = Q_swept η_v`
///
/// # Units
/// Volume flows; a pure number.
/// # Source
/// Definition of volumetric efficiency; its usual size is common practice.
#[must_use]
pub fn free_air(displacement: &Flow, efficiency: &Ratio) -> Flow {
    (displacement * efficiency)
        .called("Q")
        .of_kind(Kind::Flow)
        .cited(&AIR)
}

/// The gun's share of what the compressor delivers: above 1 the pressure falls while the trigger is held.
///
/// `x = Q_gun / Q`
///
/// # Units
/// Volume flows of free air; a pure number out.
/// # Source
/// Conservation of mass.
#[must_use]
pub fn load_on_compressor(gun: &Flow, delivered: &Flow) -> Ratio {
    (gun / delivered)
        .called("x")
        .of_kind(Kind::Percent)
        .cited(&AIR)
}

/// How long the trigger can be held until the receiver is down from one pressure to another, the compressor running.
///
/// `t = V (p_high - p_low) / (p_room (Q_gun - Q))`
///
/// # Units
/// Volume, pressures (gauge or absolute, both alike), flows of free air; a time out.
/// # Valid range
/// Slow enough that the air in the receiver keeps its temperature.
/// # Errors
/// [`TradeError::OutOfRange`] naming `gun_air` where the compressor keeps up: then there is no end.
/// # Source
/// Conservation of mass; standard atmosphere 101.325 kPa.
pub fn compressed_air_time(
    receiver: &Volume,
    high: &Pressure,
    low: &Pressure,
    gun: &Flow,
    delivered: &Flow,
) -> Result<Time, TradeError> {
    if gun.value() <= delivered.value() {
        let lowest = delivered.value();
        return Err(TradeError::OutOfRange {
            entry: "gun_air",
            lowest,
            highest: f64::INFINITY,
        });
    }
    let room = Pressure::constant("p_room", 101_325.0, Kind::Pressure, &AIR);
    let stored = receiver * ((high - low) / room);
    Ok((stored / (gun - delivered))
        .called("t_air")
        .of_kind(Kind::Time)
        .cited(&AIR))
}
