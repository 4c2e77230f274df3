//! The day: timetable of coats, dew point, compressed air.

use measure::{Flow, Kind, Standing, Temperature, Time};
use trade::paint::{
    CoatTime, LayerTimes, compressed_air_time, dew_point, free_air, least_metal_temperature,
    load_on_compressor, timetable,
};

use super::entries::{PaintSheet, PaintSystem};
use super::layers::Reckoned;
use crate::key::joined;
use crate::{All, Found, Lack, Rank, Remark};

/// The colder end of what paint with hardener cures at, in kelvin: common practice.
const COLD: f64 = 283.15;

/// The soonest that a system's coats can follow each other.
pub(super) fn show_timetable(system: &PaintSystem, reckoned: &[Reckoned], found: &mut Found) {
    let times: Result<Vec<LayerTimes>, Lack> =
        reckoned.iter().map(|layer| layer.times.clone()).collect();
    let Ok(times) = times else { return };
    let coats = timetable(&times);
    for coat in &coats {
        let layer = &system.layers[coat.layer];
        let place = format!("{}/{}/{}", system.id(), layer.id(), coat.coat);
        show_time("start", &place, &coat.start, found);
        show_time("end", &place, &coat.end, found);
        show_time("next_from", &place, &coat.next_from, found);
        if let Some(until) = &coat.next_until {
            show_time("next_until", &place, until, found);
        }
    }
    for missed in coats.iter().filter(|coat| window_is_shut(coat)) {
        let layer = &system.layers[missed.layer];
        found.remark(Remark::new(Rank::Caution, "window_shut").at(layer.latest_over.key().clone()));
    }
}

/// A time on the clock, in the unit in which one would say it.
fn show_time(what: &str, place: &str, time: &Time, found: &mut Found) {
    let kind = match time.value() / 3600.0 {
        hours if hours > 72.0 => Kind::Days,
        hours if hours > 3.0 => Kind::Duration,
        _ => Kind::Time,
    };
    found.show(joined(&["paint", what, place]), kind, &Ok(time.clone()));
}

/// Whether the next layer may begin only after it should have begun.
fn window_is_shut(coat: &CoatTime) -> bool {
    coat.next_until
        .as_ref()
        .is_some_and(|until| until.value() < coat.next_from.value())
}

/// Dew point, and whether the metal is warm enough.
pub(super) fn show_moisture(sheet: &PaintSheet, found: &mut Found) {
    if sheet
        .temperature
        .value()
        .is_some_and(|air: &Temperature| air.value() < COLD)
    {
        found.remark(
            Remark::new(Rank::Caution, "too_cold_to_cure").at(sheet.temperature.key().clone()),
        );
    }
    let dew = (sheet.temperature.ask(), sheet.humidity.ask())
        .all()
        .and_then(|(air, humidity)| dew_point(air, humidity).map_err(Lack::from));
    let least = dew
        .as_ref()
        .map(least_metal_temperature)
        .map_err(Clone::clone);
    found.show("paint/dew_point", Kind::Temperature, &dew);
    found.show("paint/least_metal", Kind::Temperature, &least);
    let (Ok(least), Ok(metal)) = (&least, sheet.metal.ask()) else {
        return;
    };
    let remark = |rank, fact| {
        let at = Remark::new(rank, fact).at(sheet.metal.key().clone());
        at.with(metal.figure(Kind::Temperature))
            .with(least.figure(Kind::Temperature))
    };
    match metal.standing(least) {
        Standing::Below => found.remark(remark(Rank::Warning, "metal_too_cold")),
        Standing::TooCloseToCall => found.remark(remark(Rank::Caution, "metal_near_dew_point")),
        Standing::Above => {}
    }
}

/// Whether the compressor keeps up with the gun, and for how long its receiver helps where it does not.
pub(super) fn show_air(sheet: &PaintSheet, found: &mut Found) {
    let delivered: Result<Flow, Lack> = if sheet.free_air.is_blank() && !sheet.swept.is_blank() {
        (sheet.swept.ask(), sheet.efficiency.ask())
            .all()
            .map(|(swept, efficiency)| free_air(swept, efficiency))
    } else {
        sheet.free_air.ask().cloned()
    };
    found.show("paint/free_air", Kind::Flow, &delivered);
    let load = (sheet.gun_air.ask(), delivered.clone())
        .all()
        .map(|(gun, air)| load_on_compressor(gun, &air));
    found.show("paint/air_load", Kind::Percent, &load);
    let Ok(load) = load else { return };
    if load.value() <= 1.0 {
        return;
    }
    found.remark(
        Remark::new(Rank::Caution, "compressor_falls_behind").at(sheet.gun_air.key().clone()),
    );
    let pressures = (sheet.cut_out.ask(), sheet.least_air.ask()).all();
    let time = (
        sheet.receiver.ask(),
        pressures,
        sheet.gun_air.ask(),
        delivered,
    )
        .all()
        .and_then(|(receiver, (high, low), gun, air)| {
            Ok(compressed_air_time(receiver, high, low, gun, &air)?)
        });
    found.show("paint/air_time", Kind::Time, &time);
}
