//! What is to be known beside the results of gearing.

use measure::{Kind, Mass, Speed, Standing};
use trade::gearing::{load_of_index, speed_of_symbol};

use super::gears::{Line, teeth};
use super::pull::Pulling;
use crate::sheets::vehicle::VehicleFindings;
use crate::{Found, Rank, Remark};

pub(super) fn remark(found: &mut Found, line: &Line, pulling: &Pulling, vehicle: &VehicleFindings) {
    of_train(found, line);
    of_pull(found, line, pulling);
    of_tyres(found, vehicle);
    // Each caution of the trade stands as soon as there is something to be careful with.
    if found.figure("gearing/top_speed").is_some() {
        found.remark(Remark::standing(Rank::Warning, "top_speed_is_not_gearing"));
    }
    if found.figure("gearing/dial_shown").is_some() || found.figure("gearing/adapter").is_some() {
        found.remark(Remark::standing(Rank::Caution, "local_law_first"));
    }
    if pulling.curve.is_ok() {
        found.remark(Remark::standing(Rank::Remark, "fuel_is_torque"));
    }
}

fn of_train(found: &mut Found, line: &Line) {
    let ratios: Vec<f64> = line
        .gears
        .iter()
        .filter(|gear| !gear.found.overdrive)
        .filter_map(|gear| gear.ratio.as_ref().ok())
        .map(measure::Ratio::value)
        .collect();
    if ratios.windows(2).any(|two| two[0] <= two[1]) {
        found.remark(Remark::new(Rank::Caution, "gears_out_of_order").at("gearing/gears"));
    }
    let axle = &line.sheet.axle;
    match teeth(axle) {
        Some(teeth) if !teeth.meeting().hunting() => {
            let named = format!("{}/{}", teeth.crown, teeth.pinion);
            found.remark(
                Remark::new(Rank::Remark, "axle_not_hunting")
                    .at(axle.key().clone())
                    .naming(named),
            );
        }
        None if axle.value().is_some() => {
            found.remark(Remark::new(Rank::Remark, "count_the_teeth").at(axle.key().clone()));
        }
        _ => {}
    }
    if line.sheet.transfer_in.value() == Some(&"low") && line.sheet.transfer_low.is_blank() {
        found.remark(
            Remark::new(Rank::Caution, "no_low_ratio").at(line.sheet.transfer_low.key().clone()),
        );
    }
    if line.sheet.axle_second_in.value() == Some(&true) && line.sheet.axle_second.is_blank() {
        found.remark(
            Remark::new(Rank::Caution, "no_second_speed").at(line.sheet.axle_second.key().clone()),
        );
    }
}

fn of_pull(found: &mut Found, line: &Line, pulling: &Pulling) {
    if pulling.unladen_instead && pulling.resistance.is_ok() {
        found.remark(Remark::new(Rank::Caution, "unladen_instead").at("vehicle/payload"));
    }
    if pulling.curve_ends {
        found.remark(Remark::new(Rank::Remark, "curve_ends_early").at("vehicle/red_line"));
    }
    for id in ["gearing/top_speed", "gearing/steepest", "gearing/restart"] {
        if found.figure(id).is_some_and(measure::Figure::contested) {
            let figure = found.figure(id).cloned();
            let remark = Remark::new(Rank::Remark, "limits_lie_close");
            found.remark(match figure {
                Some(figure) => remark.with(figure),
                None => remark,
            });
        }
    }
    beyond(found, line, pulling);
    // The rule for rotating masses was made of cars, whose lowest gear is no lower.
    let low = line.low().and_then(|gear| line.overall(gear));
    if line.sheet.inertia.is_blank()
        && found.figure("gearing/time").is_some()
        && low.is_ok_and(|overall| overall.value() > 20.0)
    {
        let key = line.sheet.inertia.key().clone();
        found.remark(Remark::new(Rank::Remark, "time_by_cars").at(key));
    }
    let limit = line
        .sheet
        .piston_limit
        .value()
        .map(|limit| limit.figure(Kind::SurfaceSpeed));
    let cruise = found.figure("gearing/piston_cruise").cloned();
    if let (Some(limit), Some(cruise)) = (limit, cruise)
        && cruise.value() > limit.value()
    {
        found.remark(
            Remark::new(Rank::Caution, "piston_speed_at_cruise")
                .with(cruise)
                .with(limit),
        );
    }
}

/// Wishes that no axle ratio fulfils: a cruise above the red line, a hill on which the tyres slip.
fn beyond(found: &mut Found, line: &Line, pulling: &Pulling) {
    let red_line = pulling.red_line.as_ref();
    let cruise = found.figure("gearing/cruise").cloned();
    if let (Some(red_line), Some(cruise)) = (red_line, cruise)
        && cruise.value() > red_line.value()
    {
        let remark = Remark::new(Rank::Warning, "cruise_above_red_line").at("vehicle/red_line");
        found.remark(remark.with(cruise).with(red_line.figure(Kind::Rotation)));
    }
    let slipping = found.figure("gearing/grip_slope").cloned();
    if let (Some(hill), Some(slipping)) = (line.sheet.wanted_hill.value(), slipping)
        && hill.value() > slipping.value()
    {
        let key = line.sheet.wanted_hill.key().clone();
        let remark = Remark::new(Rank::Caution, "hill_beyond_grip").at(key);
        found.remark(remark.with(slipping));
    }
}

/// Tyres that carry too much, or are driven faster than they may.
fn of_tyres(found: &mut Found, vehicle: &VehicleFindings) {
    let twin = vehicle.sheet.rear_wheels.value() == Some(&"twin");
    let axles = [
        (
            "vehicle/tyre_front",
            &vehicle.front_wheel,
            &vehicle.front,
            2.0,
        ),
        (
            "vehicle/tyre_rear",
            &vehicle.rear_wheel,
            &vehicle.rear,
            if twin { 4.0 } else { 2.0 },
        ),
    ];
    for (key, wheel, loads, tyres) in axles {
        let Some(tyre) = &wheel.tyre else { continue };
        let load = loads[1].as_ref().or(loads[0].as_ref());
        if let (Some(capacity), Ok(load)) = (tyre.load_index.and_then(load_of_index), load) {
            let (each, capacity) = (load / tyres, Mass::exact(capacity));
            let rank = match each.standing(&capacity) {
                Standing::Above => Some((Rank::Warning, "tyre_overloaded")),
                Standing::TooCloseToCall => Some((Rank::Caution, "tyre_near_its_load")),
                Standing::Below => None,
            };
            if let Some((rank, fact)) = rank {
                let remark = Remark::new(rank, fact)
                    .at(key)
                    .with(each.figure(Kind::Mass));
                found.remark(remark.with(capacity.figure(Kind::Mass)));
            }
        }
        let allowed = tyre
            .speed_symbol
            .and_then(speed_of_symbol)
            .map(|km_h| Speed::exact(km_h / 3.6));
        let top = found.figure("gearing/top_speed").cloned();
        if let (Some(allowed), Some(top)) = (allowed, top)
            && top.value() > allowed.value()
        {
            let remark = Remark::new(Rank::Warning, "faster_than_its_tyres").at(key);
            found.remark(remark.with(top).with(allowed.figure(Kind::Speed)));
        }
    }
}
