//! The line from engine to road, and the speeds along it.

use std::rc::Rc;

use measure::{Kind, Length, Ratio};
use trade::gearing::{
    Train, engine_speed, propeller_shaft_speed, road_speed, speed_per_1000, turns_per_distance,
};

use super::{AxleRatio, GearRow, GearingSheet};
use crate::sheets::vehicle::{VehicleFindings, Wheel};
use crate::{All, Found, Given, Key, Lack};

/// A gear as it can be driven.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GearFound {
    /// The id of its row.
    pub id: Rc<str>,
    /// Its place, counted from 1 with the lowest.
    pub place: usize,
    /// Whether the overdrive is in.
    pub overdrive: bool,
}

impl GearFound {
    /// The name of one of its results: `gearing/top/3`, and `gearing/top_overdrive/3` where the overdrive is in.
    #[must_use]
    pub fn result(&self, what: &str) -> String {
        let with = if self.overdrive { "_overdrive" } else { "" };
        format!("gearing/{what}{with}/{}", self.id)
    }
}

/// A gear with what it needs to be reckoned with.
pub(super) struct Gear {
    pub(super) found: GearFound,
    pub(super) ratio: Result<Ratio, Lack>,
    pub(super) efficiency: Result<Ratio, Lack>,
}

/// The line from engine to road.
pub(super) struct Line {
    pub(super) sheet: Rc<GearingSheet>,
    /// All gears, the lowest first, the ones with the overdrive behind their own.
    pub(super) gears: Vec<Gear>,
    /// What stands behind the gearbox, without the overdrive.
    pub(super) train: Result<Train, Lack>,
    /// Rolling circumference of the driven wheels.
    pub(super) circumference: Result<Length, Lack>,
    /// The driven wheels.
    pub(super) wheel: Wheel,
}

/// A ratio that may be left out, but must be readable where it stands.
fn optional(given: &Given<Ratio>) -> Result<Option<Ratio>, Lack> {
    given.ask_or_none().map(Option::<&Ratio>::cloned)
}

impl Line {
    pub(super) fn of(sheet: &Rc<GearingSheet>, vehicle: &VehicleFindings) -> Self {
        let front = vehicle.sheet.drive.value() == Some(&"front");
        let wheel = if front {
            &vehicle.front_wheel
        } else {
            &vehicle.rear_wheel
        };
        let axle = sheet.axle.ask().map(|axle| axle.ratio.clone());
        Self {
            gears: gears(sheet),
            train: train(sheet, axle),
            circumference: wheel.circumference.clone(),
            wheel: wheel.clone(),
            sheet: Rc::clone(sheet),
        }
    }

    /// The train that a gear engages.
    pub(super) fn train_in(&self, gear: &Gear) -> Result<Train, Lack> {
        let train = self.train.clone();
        if !gear.found.overdrive {
            return train;
        }
        let overdrive = self.sheet.overdrive.ask().cloned();
        (train, overdrive).all().map(|(train, overdrive)| Train {
            overdrive: Some(overdrive),
            ..train
        })
    }

    /// Engine turns for one turn of the wheels.
    pub(super) fn overall(&self, gear: &Gear) -> Result<Ratio, Lack> {
        (self.train_in(gear), gear.ratio.clone())
            .all()
            .map(|(train, ratio)| train.overall(&ratio))
    }

    /// Engine turns for one turn of the propeller shaft.
    pub(super) fn to_shaft(&self, gear: &Gear) -> Result<Ratio, Lack> {
        (self.train_in(gear), gear.ratio.clone())
            .all()
            .map(|(train, ratio)| train.to_shaft(&ratio))
    }

    /// The gear that turns the engine slowest, the overdrive's included; what is missing where there is none.
    pub(super) fn top(&self) -> Result<&Gear, Lack> {
        self.extreme(|a, b| a < b)
    }

    /// The gear that turns the engine fastest.
    pub(super) fn low(&self) -> Result<&Gear, Lack> {
        self.extreme(|a, b| a > b)
    }

    fn extreme(&self, wins: fn(f64, f64) -> bool) -> Result<&Gear, Lack> {
        let mut best: Option<(&Gear, f64)> = None;
        for gear in &self.gears {
            let Ok(ratio) = &gear.ratio else { continue };
            let value = ratio.value() * self.overdrive_of(gear);
            if best.is_none_or(|(_, other)| wins(value, other)) {
                best = Some((gear, value));
            }
        }
        match (best, self.gears.first().map(|gear| &gear.ratio)) {
            (Some((gear, _)), _) => Ok(gear),
            (None, Some(Err(lack))) => Err(lack.clone()),
            (None, _) => Err(self.no_gear()),
        }
    }

    fn overdrive_of(&self, gear: &Gear) -> f64 {
        let overdrive = self
            .sheet
            .overdrive
            .value()
            .filter(|_| gear.found.overdrive);
        overdrive.map_or(1.0, Ratio::value)
    }

    fn no_gear(&self) -> Lack {
        let row = self.sheet.gears.first();
        Lack::needs([row.map_or_else(
            || Key::from("gearing/gears/1/ratio"),
            |row| row.ratio.key().clone(),
        )])
    }

    /// Speeds in every gear, and the main ones in top gear.
    pub(super) fn show_speeds(&self, found: &mut Found) -> Vec<GearFound> {
        let per_1000 = |gear: &Gear| {
            (self.circumference.clone(), self.overall(gear))
                .all()
                .map(|(circumference, overall)| speed_per_1000(&circumference, &overall))
        };
        let revs = |gear: &Gear| {
            (
                self.circumference.clone(),
                self.sheet.road_speed.ask(),
                self.overall(gear),
            )
                .all()
                .map(|(circumference, speed, overall)| {
                    engine_speed(&circumference, speed, &overall)
                })
        };
        let needed = self.top().map_err(|lack| match &self.train_and_wheel() {
            Err(other) => lack.and(other.clone()),
            Ok(()) => lack,
        });
        found.headline(
            "gearing/cruise",
            Kind::Rotation,
            &needed.clone().and_then(revs),
        );
        found.headline(
            "gearing/per_1000",
            Kind::Speed,
            &needed.clone().and_then(per_1000),
        );
        found.show("gearing/circumference", Kind::Length, &self.circumference);
        for gear in &self.gears {
            self.show_gear(found, gear, &per_1000(gear), &revs(gear));
        }
        self.gears.iter().map(|gear| gear.found.clone()).collect()
    }

    /// What else a speed needs, so that all that is missing is named at once.
    fn train_and_wheel(&self) -> Result<(), Lack> {
        (self.circumference.clone(), self.train.clone())
            .all()
            .map(|_| ())
    }

    fn show_gear(
        &self,
        found: &mut Found,
        gear: &Gear,
        per_1000: &Result<measure::Speed, Lack>,
        revs: &Result<measure::Rotation, Lack>,
    ) {
        let at_gear = |what: &str| gear.found.result(what);
        let overall = self.overall(gear);
        let both = (self.circumference.clone(), overall.clone()).all();
        let at = self.sheet.engine_speed.ask();
        let speed = (both.clone(), at.clone())
            .all()
            .map(|((circumference, overall), n)| road_speed(&circumference, n, &overall));
        let shaft = (at, self.to_shaft(gear))
            .all()
            .map(|(n, ratio)| propeller_shaft_speed(n, &ratio));
        let turns =
            both.map(|(circumference, overall)| turns_per_distance(&circumference, &overall));
        found.show(at_gear("overall"), Kind::Ratio, &overall);
        found.show(at_gear("per_1000"), Kind::Speed, per_1000);
        found.show(at_gear("speed"), Kind::Speed, &speed);
        found.show(at_gear("revs"), Kind::Rotation, revs);
        found.show(at_gear("shaft"), Kind::Rotation, &shaft);
        found.show(at_gear("turns"), Kind::TurnsPerDistance, &turns);
    }
}

fn train(sheet: &GearingSheet, axle: Result<Ratio, Lack>) -> Result<Train, Lack> {
    let low = sheet.transfer_in.value() == Some(&"low");
    let transfer = optional(if low {
        &sheet.transfer_low
    } else {
        &sheet.transfer_high
    });
    let second = sheet.axle_second_in.value() == Some(&true);
    let second_speed = if second {
        optional(&sheet.axle_second)
    } else {
        Ok(None)
    };
    (axle, transfer, second_speed, optional(&sheet.hubs))
        .all()
        .map(|(axle, transfer, second_speed, hubs)| Train {
            overdrive: None,
            transfer,
            axle,
            second_speed,
            hubs,
        })
}

fn gears(sheet: &GearingSheet) -> Vec<Gear> {
    // A row that is still empty is no gear yet.
    let rows: Vec<&GearRow> = sheet
        .gears
        .iter()
        .filter(|row| !row.ratio.is_blank())
        .collect();
    let count = rows.len();
    let with_overdrive = match (sheet.overdrive.is_blank(), sheet.overdrive_with.value()) {
        (true, _) => 0,
        (false, Some(&"all")) => count,
        (false, Some(&"top_two")) => 2,
        (false, _) => 1,
    };
    let mut all = Vec::with_capacity(count + with_overdrive);
    for (at, row) in rows.into_iter().enumerate() {
        all.push(gear(sheet, row, at + 1, false));
        if at + with_overdrive >= count {
            all.push(gear(sheet, row, at + 1, true));
        }
    }
    all
}

fn gear(sheet: &GearingSheet, row: &GearRow, place: usize, overdrive: bool) -> Gear {
    let ratio = row.ratio.ask().map(direct_is_exact);
    let direct = ratio
        .as_ref()
        .is_ok_and(|ratio| (ratio.value() - 1.0).abs() < 1e-9);
    let worm = sheet.axle_kind.value() == Some(&"worm");
    let efficiency = match (worm, direct && !overdrive) {
        (true, _) => &sheet.efficiency_worm,
        (false, true) => &sheet.efficiency_direct,
        (false, false) => &sheet.efficiency_gears,
    };
    Gear {
        found: GearFound {
            id: row.id().into(),
            place,
            overdrive,
        },
        ratio,
        efficiency: efficiency.ask().cloned(),
    }
}

/// Direct drive has no teeth to be off: a bare 1 is exact, though other printed ratios are rounded.
fn direct_is_exact(ratio: &Ratio) -> Ratio {
    if ratio.value() != 1.0 {
        return ratio.clone();
    }
    match ratio.figure(Kind::Ratio).contributions() {
        [entry] if entry.stated == measure::Stated::Assumed => {
            let exact = measure::Reading::exact(1.0, &measure::unit::ONE);
            Ratio::entry(Rc::clone(&entry.key), entry.symbol, Kind::Ratio, &exact)
        }
        _ => ratio.clone(),
    }
}

/// The teeth of an axle, where they were typed.
pub(super) fn teeth(axle: &Given<AxleRatio>) -> Option<trade::gearing::Teeth> {
    axle.value()?.teeth
}
