//! What the engine gives and the road takes: top speeds, hills, restart, time from rest.

use measure::{Acceleration, Density, Kind, Ratio, Rotation, Speed, Torque};
use trade::gearing::{
    Driven, EngineLimits, Ground, Hill, Pull, Resistance, Stance, Start, TorqueCurve, grip_slope,
    limit, mean_piston_speed, power, restart_slope, steepest_hill, time_to_speed, top_speed,
};

use super::GearingSheet;
use super::engine::{air, curve, limits, mass, stance};
use super::gears::{Gear, GearFound, Line};
use crate::sheets::vehicle::VehicleFindings;
use crate::{All, Found, Lack};

/// Everything that pull, road load and grip rest on.
pub(super) struct Pulling {
    pub(super) curve: Result<TorqueCurve, Lack>,
    pub(super) limits: Result<EngineLimits, Lack>,
    pub(super) resistance: Result<Resistance, Lack>,
    /// Each gear on the road, in the order of the line's gears.
    pub(super) pulls: Vec<Result<Pull, Lack>>,
    /// The red line, where it is known.
    pub(super) red_line: Option<Rotation>,
    /// Whether the mass is the unladen one because the laden one is not known.
    pub(super) unladen_instead: bool,
    /// Whether the curve ends below the red line, so that the red line is out of its reach.
    pub(super) curve_ends: bool,
    grip: Result<Ratio, Lack>,
    stance: Result<Stance, Lack>,
    driven: Driven,
    air: Result<Density, Lack>,
    air_factor: Result<Ratio, Lack>,
    sheet: Extra,
}

/// What the results need of the sheets besides.
struct Extra {
    start: Result<Acceleration, Lack>,
    clutch: Option<Torque>,
    target: Result<Speed, Lack>,
    run: Result<Start, Lack>,
    stroke: Result<measure::Length, Lack>,
    engine_speed: Result<Rotation, Lack>,
    cruise: Result<Rotation, Lack>,
}

impl Pulling {
    pub(super) fn of(found: &mut Found, line: &Line, vehicle: &VehicleFindings) -> Self {
        let sheet = &line.sheet;
        let (air, air_factor) = air(sheet, vehicle);
        let curve = curve(sheet, vehicle, &air_factor);
        let (limits, curve_ends) = limits(sheet, vehicle, &curve);
        let (mass, unladen_instead) = mass(sheet, vehicle);
        let ground = ground(sheet);
        let radial = line
            .wheel
            .tyre
            .as_ref()
            .is_none_or(|tyre| tyre.construction == trade::gearing::Construction::Radial);
        let rolling = found
            .assume(&sheet.rolling, usual_rolling(ground, radial))
            .ask()
            .cloned();
        let v = &vehicle.sheet;
        let area = (v.frontal_share.ask(), v.width.ask(), v.height.ask())
            .all()
            .map(|(share, width, height)| trade::vehicle::frontal_area(share, width, height));
        let resistance = (mass, rolling, air.clone(), sheet.drag.ask().cloned(), area)
            .all()
            .map(
                |(mass, rolling, air, drag_coefficient, frontal_area)| Resistance {
                    mass,
                    rolling,
                    air,
                    drag_coefficient,
                    frontal_area,
                },
            );
        let pulls = line.gears.iter().map(|gear| pull(line, gear)).collect();
        Self {
            curve,
            limits,
            resistance,
            pulls,
            red_line: v.red_line.value().cloned(),
            unladen_instead,
            curve_ends,
            grip: found.assume(&sheet.grip, usual_grip(ground)).ask().cloned(),
            stance: stance(sheet, vehicle),
            driven: match v.drive.value() {
                Some(&"front") => Driven::Front,
                Some(&"all") => Driven::All,
                _ => Driven::Rear,
            },
            air,
            air_factor,
            sheet: extra(line, vehicle),
        }
    }

    /// A gear's pull with all it is reckoned with.
    pub(super) fn ready(
        &self,
        pull: &Result<Pull, Lack>,
    ) -> Result<(Pull, &TorqueCurve, &Resistance, &EngineLimits), Lack> {
        let lent = |lack: &Lack| lack.clone();
        (
            pull.clone(),
            self.curve.as_ref().map_err(lent),
            self.resistance.as_ref().map_err(lent),
            self.limits.as_ref().map_err(lent),
        )
            .all()
    }

    pub(super) fn top_speed(&self, pull: &Result<Pull, Lack>) -> Result<Speed, Lack> {
        let (pull, curve, resistance, limits) = self.ready(pull)?;
        top_speed(&pull, curve, resistance, limits).ok_or(Lack::refused(trade::TradeError::NoPull))
    }

    pub(super) fn hill(&self, pull: &Result<Pull, Lack>) -> Result<Hill, Lack> {
        let (pull, curve, resistance, limits) = self.ready(pull)?;
        Ok(steepest_hill(&pull, curve, resistance, limits.range())?)
    }

    /// The slope on which the driven wheels slip: at a steady speed, or starting off.
    fn slipping(&self, start: &Acceleration) -> Result<Ratio, Lack> {
        let lent = |lack: &Lack| lack.clone();
        let (grip, stance, resistance) = (
            self.grip.as_ref().map_err(lent),
            self.stance.as_ref().map_err(lent),
            self.resistance.as_ref().map_err(lent),
        )
            .all()?;
        Ok(grip_slope(
            grip,
            &resistance.rolling,
            stance,
            self.driven,
            start,
        )?)
    }

    pub(super) fn show(&self, found: &mut Found, gears: &[GearFound]) {
        let greatest = self.greatest_torque();
        let mut tops: Vec<(usize, Speed)> = Vec::new();
        let mut steepest = None;
        for (place, (gear, pull)) in gears.iter().zip(&self.pulls).enumerate() {
            let top = self.top_speed(pull);
            found.show(gear.result("top"), Kind::Speed, &top);
            if let Ok(top) = top {
                tops.push((place, top));
            }
            let slope = self.hill(pull).map(|hill| hill.slope);
            found.show(gear.result("hill"), Kind::Slope, &slope);
            steepest = Some(steeper(steepest, slope));
            let effort = (pull.clone(), greatest.clone()).all();
            let effort = effort.map(|(pull, torque)| pull.effort_of(&torque));
            found.show(gear.result("effort"), Kind::Force, &effort);
        }
        let best = tops
            .into_iter()
            .max_by(|a, b| a.1.value().total_cmp(&b.1.value()));
        let best = best.map(|(_, top)| top).ok_or_else(|| self.lack_of_top());
        found.headline("gearing/top_speed", Kind::Speed, &best);
        self.show_hills(found, steepest.unwrap_or_else(|| Err(self.lack_of_top())));
        self.show_time(found);
        self.show_engine(found);
    }

    /// Why no gear has a top speed.
    fn lack_of_top(&self) -> Lack {
        let first = self
            .pulls
            .first()
            .cloned()
            .unwrap_or_else(|| Err(Lack::needs(["gearing/gears/1/ratio".into()])));
        self.top_speed(&first)
            .err()
            .unwrap_or(Lack::refused(trade::TradeError::NoPull))
    }

    /// The greatest torque between the limits.
    fn greatest_torque(&self) -> Result<Torque, Lack> {
        let curve = self.curve.as_ref().map_err(Clone::clone)?;
        let limits = self.limits.as_ref();
        let (lowest, highest) = limits.map_or_else(|_| curve.range(), EngineLimits::range);
        let n = Rotation::exact(curve.peak_torque_at(lowest, highest)).of_kind(Kind::Rotation);
        Ok(curve.torque(&n))
    }

    /// The slope that the engine climbs, or the one on which the driven tyres slip, where that is less. Where the engine
    /// climbs anything, the tyres alone tell.
    pub(super) fn held_by_grip(&self, by_torque: Result<Ratio, Lack>) -> Result<Ratio, Lack> {
        let slipping = self.slipping(&Acceleration::exact(0.0));
        least(
            [(limit::TORQUE, by_torque), (limit::GRIP, slipping)],
            "s_max",
        )
    }

    fn show_hills(&self, found: &mut Found, by_torque: Result<Ratio, Lack>) {
        let at_rest = Acceleration::exact(0.0);
        let hill = self.held_by_grip(by_torque);
        found.headline("gearing/steepest", Kind::Slope, &hill);
        found.show("gearing/grip_slope", Kind::Slope, &self.slipping(&at_rest));
        found.headline("gearing/restart", Kind::Slope, &self.restart());
    }

    /// The steepest slope to start on, in the lowest gear: what engine, clutch and grip allow.
    fn restart(&self) -> Result<Ratio, Lack> {
        let lowest = self
            .pulls
            .iter()
            .filter_map(|pull| pull.as_ref().ok())
            .max_by(|a, b| a.overall.value().total_cmp(&b.overall.value()));
        let Some(pull) = lowest else {
            return Err(self.lack_of_top());
        };
        let (pull, _, resistance, _) = self.ready(&Ok(pull.clone()))?;
        let start = self.sheet.start.clone()?;
        let slope = |torque: &Torque| {
            let force = pull.effort_of(torque);
            restart_slope(&force, &resistance.mass, &resistance.rolling, &start)
        };
        let by_torque = slope(&self.greatest_torque()?).map_err(Lack::from);
        let by_clutch = self.sheet.clutch.as_ref();
        let by_clutch = by_clutch.map_or_else(
            || Err(Lack::refused(trade::TradeError::NoLimit)),
            |clutch| slope(clutch).map_err(Lack::from),
        );
        let limits = [
            (limit::TORQUE, by_torque),
            (limit::CLUTCH, by_clutch),
            (limit::GRIP, self.slipping(&start)),
        ];
        least(limits, "s_r")
    }

    fn show_time(&self, found: &mut Found) {
        let pulls: Vec<Pull> = self
            .pulls
            .iter()
            .filter_map(|pull| pull.as_ref().ok().cloned())
            .collect();
        let first = pulls.first().cloned().ok_or_else(|| self.lack_of_top());
        let time = (
            self.ready(&first),
            self.sheet.target.clone(),
            self.sheet.run.clone(),
        )
            .all()
            .and_then(|((_, curve, resistance, limits), target, run)| {
                time_to_speed(&target, &pulls, curve, resistance, limits, &run)
                    .ok_or(Lack::refused(trade::TradeError::NoPull))
            });
        found.show("gearing/time", Kind::Seconds, &time);
    }

    fn show_engine(&self, found: &mut Found) {
        found.show("gearing/air_density", Kind::AirDensity, &self.air);
        found.show("gearing/air_factor", Kind::Percent, &self.air_factor);
        let at = |n: &Result<Rotation, Lack>| {
            (self.sheet.stroke.clone(), n.clone())
                .all()
                .map(|(stroke, n)| mean_piston_speed(&stroke, &n))
        };
        found.show(
            "gearing/piston_speed",
            Kind::SurfaceSpeed,
            &at(&self.sheet.engine_speed),
        );
        found.show(
            "gearing/piston_cruise",
            Kind::SurfaceSpeed,
            &at(&self.sheet.cruise),
        );
        let power_at = (
            self.curve.as_ref().map_err(Clone::clone),
            self.sheet.engine_speed.clone(),
        )
            .all()
            .map(|(curve, n)| power(&curve.torque(&n), &n));
        found.show("gearing/power", Kind::Power, &power_at);
        let mass = self
            .resistance
            .as_ref()
            .map(|resistance| resistance.mass.clone())
            .map_err(Clone::clone);
        found.show("gearing/mass", Kind::Mass, &mass);
        let rolling = self
            .resistance
            .as_ref()
            .map(|resistance| resistance.rolling.clone())
            .map_err(Clone::clone);
        found.show("gearing/rolling", Kind::Ratio, &rolling);
    }
}

fn is_limitless(hill: &Result<Ratio, Lack>) -> bool {
    let refusal = hill.as_ref().err().and_then(Lack::refusal);
    refusal == Some(&trade::TradeError::NoLimit)
}

/// The steeper of two hills: one that nothing limits is steeper than any.
pub(super) fn steeper(
    one: Option<Result<Ratio, Lack>>,
    other: Result<Ratio, Lack>,
) -> Result<Ratio, Lack> {
    let Some(one) = one else { return other };
    let wins = match (&one, &other) {
        _ if is_limitless(&one) => false,
        _ if is_limitless(&other) => true,
        (Ok(one), Ok(other)) => other.value() > one.value(),
        (one, _) => one.is_err(),
    };
    if wins { other } else { one }
}

/// The least of several slopes; the first is asked for, the others count where they are known.
fn least<const N: usize>(
    slopes: [(&'static str, Result<Ratio, Lack>); N],
    symbol: &'static str,
) -> Result<Ratio, Lack> {
    if let (_, Err(lack)) = &slopes[0]
        && !is_limitless(&slopes[0].1)
    {
        return Err(lack.clone());
    }
    let mut known: Vec<(&'static str, Ratio)> = Vec::new();
    known.extend(
        slopes
            .into_iter()
            .filter_map(|(name, slope)| Some((name, slope.ok()?))),
    );
    if known.is_empty() {
        return Err(Lack::refused(trade::TradeError::NoLimit));
    }
    Ok(Ratio::least_of(&known).of_kind(Kind::Slope).called(symbol))
}

fn ground(sheet: &GearingSheet) -> Ground {
    match sheet.ground.value() {
        Some(&"wet") => Ground::Wet,
        Some(&"track") => Ground::Track,
        Some(&"field") => Ground::Field,
        _ => Ground::Dry,
    }
}

/// The usual rolling resistance, as it would be typed.
pub(super) fn usual_rolling(ground: Ground, radial: bool) -> &'static str {
    match (ground, radial) {
        (Ground::Dry | Ground::Wet, true) => "0.013 ± 0.003",
        (Ground::Dry | Ground::Wet, false) => "0.018 ± 0.004",
        (Ground::Track, _) => "0.040 ± 0.015",
        (Ground::Field, _) => "0.10 ± 0.04",
    }
}

/// The usual grip, as it would be typed.
pub(super) fn usual_grip(ground: Ground) -> &'static str {
    match ground {
        Ground::Dry => "0.7 ± 0.1",
        Ground::Wet | Ground::Track => "0.4 ± 0.1",
        Ground::Field => "0.3 ± 0.1",
    }
}

fn pull(line: &Line, gear: &Gear) -> Result<Pull, Lack> {
    (
        line.overall(gear),
        gear.efficiency.clone(),
        line.circumference.clone(),
    )
        .all()
        .map(|(overall, efficiency, circumference)| Pull {
            overall,
            efficiency,
            circumference,
        })
}

fn extra(line: &Line, vehicle: &VehicleFindings) -> Extra {
    let sheet = &line.sheet;
    let inertia = if sheet.inertia.is_blank() {
        Ok(None)
    } else {
        sheet.inertia.ask().cloned().map(Some)
    };
    let cruise = line.top().and_then(|gear| {
        (
            line.circumference.clone(),
            sheet.road_speed.ask(),
            line.overall(gear),
        )
            .all()
            .map(|(circumference, speed, overall)| {
                trade::gearing::engine_speed(&circumference, speed, &overall)
            })
    });
    Extra {
        start: sheet.start.ask().cloned(),
        clutch: sheet.clutch.value().cloned(),
        target: sheet.target.ask().cloned(),
        run: (inertia, sheet.change_time.ask().cloned())
            .all()
            .map(|(inertia, change)| Start { inertia, change }),
        stroke: vehicle.sheet.stroke.ask().cloned(),
        engine_speed: sheet.engine_speed.ask().cloned(),
        cruise,
    }
}
