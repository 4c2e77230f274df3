//! What the vehicle brings to its pull: air, engine, mass and stance.

use measure::{Density, Kind, Mass, Ratio, Rotation};
use trade::gearing::{
    Breathing, EngineLimits, Rating, Stance, TorqueCurve, air_density, air_pressure,
    engine_air_factor, engine_speed_at_piston_speed,
};

use super::{GearingSheet, usual};
use crate::sheets::vehicle::VehicleFindings;
use crate::{All, Lack};

/// Density of the air, and the share of its rated torque that the engine gives in it.
pub(super) fn air(
    sheet: &GearingSheet,
    vehicle: &VehicleFindings,
) -> (Result<Density, Lack>, Result<Ratio, Lack>) {
    let state = (sheet.altitude.ask(), sheet.temperature.ask())
        .all()
        .map(|(altitude, temperature)| (air_pressure(altitude), temperature.clone()));
    let density = state
        .clone()
        .map(|(pressure, temperature)| air_density(&pressure, &temperature));
    let breathing = match (vehicle.sheet.breathing.value(), vehicle.sheet.fuel.value()) {
        (Some(&"blown"), _) => Breathing::Blown,
        (_, Some(&"diesel")) => Breathing::Diesel,
        _ => Breathing::Spark,
    };
    let reference = rating(vehicle).state();
    let factor = state.map(|(pressure, temperature)| {
        engine_air_factor(breathing, &pressure, &temperature, &reference)
    });
    (density, factor)
}

fn rating(vehicle: &VehicleFindings) -> Rating {
    match vehicle.sheet.power_basis.value() {
        Some(&"gross") => Rating::SaeGross,
        Some(&"net") => Rating::SaeNet,
        _ => Rating::Din,
    }
}

/// The torque curve as the engine gives it here: from points where there are any, else between the peaks.
pub(super) fn curve(
    sheet: &GearingSheet,
    vehicle: &VehicleFindings,
    air_factor: &Result<Ratio, Lack>,
) -> Result<TorqueCurve, Lack> {
    let rows: Vec<_> = sheet
        .torque
        .iter()
        .filter(|row| !(row.at.is_blank() && row.torque.is_blank()))
        .collect();
    let rated = if rows.is_empty() {
        let v = &vehicle.sheet;
        let peaks = (
            v.peak_torque.ask(),
            v.peak_torque_at.ask(),
            v.peak_power.ask(),
            v.peak_power_at.ask(),
        )
            .all();
        peaks.and_then(|(torque, torque_at, power, power_at)| {
            Ok(TorqueCurve::between_peaks(
                torque, torque_at, power, power_at,
            )?)
        })
    } else {
        let points: Result<Vec<_>, Lack> = rows
            .into_iter()
            .map(|row| (row.at.ask().cloned(), row.torque.ask().cloned()).all())
            .collect();
        points.and_then(|points| Ok(TorqueCurve::through(&points)?))
    };
    let share = usual(
        vehicle.sheet.power_basis.key(),
        "k_b",
        rating(vehicle).share(),
    );
    (rated, air_factor.clone())
        .all()
        .map(|(curve, air)| curve.in_condition(&(share * air).called("k")))
}

/// The engine speeds to drive between, and whether the curve ends before the red line.
pub(super) fn limits(
    sheet: &GearingSheet,
    vehicle: &VehicleFindings,
    curve: &Result<TorqueCurve, Lack>,
) -> (Result<EngineLimits, Lack>, bool) {
    let curve = match curve {
        Ok(curve) => curve,
        Err(lack) => return (Err(lack.clone()), false),
    };
    let (from, to) = curve.range();
    let idle = vehicle.sheet.idle.value().map_or(from, Rotation::value);
    let lowest = Rotation::exact(from.max(idle)).of_kind(Kind::Rotation);
    let end = Rotation::exact(to).of_kind(Kind::Rotation);
    let red_line = vehicle.sheet.red_line.value();
    let ends = !sheet.torque.is_empty()
        && red_line.is_some_and(|red_line| red_line.value() > to * (1.0 + 1e-9));
    let highest = match red_line {
        Some(red_line) if !ends => red_line.clone(),
        _ => end,
    };
    let piston = (vehicle.sheet.stroke.value(), sheet.piston_limit.value());
    let piston = match piston {
        (Some(stroke), Some(speed)) => Some(engine_speed_at_piston_speed(stroke, speed)),
        _ => None,
    };
    let limits = if highest.value() > lowest.value() {
        Ok(EngineLimits {
            lowest,
            highest,
            piston,
        })
    } else {
        Err(Lack::refused(trade::TradeError::OutOfRange {
            entry: "red line",
            lowest: lowest.value(),
            highest: f64::INFINITY,
        }))
    };
    (limits, ends)
}

/// The mass that is driven; the unladen one stands in where the laden one is not known.
pub(super) fn mass(sheet: &GearingSheet, vehicle: &VehicleFindings) -> (Result<Mass, Lack>, bool) {
    let total = |state: usize| {
        (vehicle.front[state].clone(), vehicle.rear[state].clone())
            .all()
            .map(|(front, rear)| (front + rear).of_kind(Kind::Mass).called("m"))
    };
    let unladen = sheet.load.value() == Some(&"unladen");
    if unladen {
        return (total(0), false);
    }
    match (total(1), total(0)) {
        (Err(lack), Ok(mass)) if lack.is_blank() => (Ok(mass), true),
        (laden, _) => (laden, false),
    }
}

pub(super) fn stance(sheet: &GearingSheet, vehicle: &VehicleFindings) -> Result<Stance, Lack> {
    let wanted = usize::from(sheet.load.value() != Some(&"unladen"));
    let pair = |state: usize| (vehicle.front[state].clone(), vehicle.rear[state].clone()).all();
    let loads = match pair(wanted) {
        Err(lack) if wanted == 1 && lack.is_blank() => pair(0).map_err(|_| lack),
        other => other,
    };
    let v = &vehicle.sheet;
    (loads, v.wheelbase.ask(), v.centre_height.ask()).all().map(
        |((front, rear), wheelbase, height)| {
            Stance::of_axle_loads(wheelbase, height, &front, &rear)
        },
    )
}
