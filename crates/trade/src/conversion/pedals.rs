//! Pedals and hydraulics: levers, pressures, forces and travel.

use measure::{Area, Force, Held, Kind, Length, Pressure, Ratio, Source, Volume};

use crate::TradeError;

static LEVER: Source = Source {
    title: "Statics: the lever",
    place: "F₁ l₁ = F₂ l₂",
    held: Held::Computed,
};
static PASCAL: Source = Source {
    title: "Hydrostatics: Pascal's law",
    place: "p = F / A",
    held: Held::Computed,
};

/// The pedal's ratio: pivot to pad over pivot to push rod.
///
/// # Errors
/// [`TradeError::OutOfRange`] for arms of no length.
///
/// # Source
/// The lever.
pub fn lever_ratio(pad_arm: &Length, rod_arm: &Length) -> Result<Ratio, TradeError> {
    if rod_arm.value() <= 0.0 || pad_arm.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "pedal arm",
            lowest: 0.001,
            highest: 1.0,
        });
    }
    Ok((pad_arm / rod_arm).of_kind(Kind::Ratio).cited(&LEVER))
}

/// The push on the master cylinder: foot times lever, times the servo's gain where there is one.
///
/// # Source
/// The lever.
#[must_use]
pub fn push_force(foot: &Force, ratio: &Ratio, gain: &Ratio) -> Force {
    (foot * ratio * gain).of_kind(Kind::Force).cited(&LEVER)
}

/// The load that the bulkhead must carry: the push rod's force less the foot's, at the panic force.
///
/// The pivot pushes back with the rod's force and the foot's together where the pivot lies between them, else with the
/// difference; the bulkhead at the master cylinder carries the push rod's force whole, and that is what is returned.
///
/// # Source
/// Statics; 1500 N as a panic force is common practice, no source.
#[must_use]
pub fn bulkhead_load(panic: &Force, ratio: &Ratio) -> Force {
    (panic * ratio).of_kind(Kind::Force).cited(&LEVER)
}

/// The area of a piston: π d² / 4.
#[must_use]
pub fn piston_area(bore: &Length) -> Area {
    (bore.squared() * (std::f64::consts::PI / 4.0)).of_kind(Kind::Section)
}

/// The line pressure: push over the master piston's area.
///
/// # Units
/// Pascals.
///
/// # Errors
/// [`TradeError::OutOfRange`] for a bore of nothing.
///
/// # Source
/// Pascal's law.
///
/// # Example
/// 1500 N on 19.05 mm: 5.263 MPa.
pub fn line_pressure(push: &Force, bore: &Length) -> Result<Pressure, TradeError> {
    if bore.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "master cylinder bore",
            lowest: 0.005,
            highest: 0.1,
        });
    }
    Ok((push / piston_area(bore))
        .of_kind(Kind::Pressure)
        .cited(&PASCAL))
}

/// The force of a wheel-cylinder or slave piston.
///
/// # Source
/// Pascal's law.
#[must_use]
pub fn piston_force(pressure: &Pressure, bore: &Length) -> Force {
    (pressure * piston_area(bore))
        .of_kind(Kind::Force)
        .cited(&PASCAL)
}

/// The stroke of the master piston for the pistons it moves, each with its bore and its travel.
///
/// # Source
/// The volume of the fluid stays.
#[must_use]
pub fn master_travel(bore: &Length, pistons: &[(Length, Length)]) -> Length {
    let moved: Vec<Volume> = pistons
        .iter()
        .map(|(bore, travel)| piston_area(bore) * travel)
        .collect();
    (Volume::sum_of(&moved) / piston_area(bore))
        .of_kind(Kind::Length)
        .cited(&PASCAL)
}

/// The travel of the pad: master stroke and free play at the rod, times the lever.
///
/// # Source
/// The lever.
#[must_use]
pub fn pedal_travel(stroke: &Length, free_play: &Length, ratio: &Ratio) -> Length {
    ((stroke + free_play) * ratio)
        .of_kind(Kind::Length)
        .cited(&LEVER)
}

/// The foot's force for a line pressure: p A over lever and servo.
///
/// # Errors
/// [`TradeError::OutOfRange`] for a servo's gain of nothing.
///
/// # Source
/// Pascal's law and the lever.
pub fn foot_force(
    pressure: &Pressure,
    bore: &Length,
    ratio: &Ratio,
    gain: &Ratio,
) -> Result<Force, TradeError> {
    if gain.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "servo",
            lowest: 1.0,
            highest: 10.0,
        });
    }
    Ok((pressure * piston_area(bore) / (ratio * gain))
        .of_kind(Kind::Force)
        .cited(&PASCAL))
}

/// The travel of a slave piston for a stroke of its master.
///
/// # Errors
/// [`TradeError::OutOfRange`] for a bore of nothing.
///
/// # Source
/// The volume of the fluid stays.
pub fn slave_travel(
    stroke: &Length,
    master: &Length,
    slave: &Length,
) -> Result<Length, TradeError> {
    if slave.value() <= 0.0 {
        return Err(TradeError::OutOfRange {
            entry: "slave cylinder bore",
            lowest: 0.005,
            highest: 0.1,
        });
    }
    Ok((stroke * (piston_area(master) / piston_area(slave)))
        .of_kind(Kind::Length)
        .cited(&PASCAL))
}
