//! One spring as it stands: rate, load, height, stress, shackle.

use std::cell::OnceCell;
use std::rc::Rc;

use ::trade::springs::{
    self as trade, Beam, LeafEnds, LoadLine, Mounting, Pack, PressPoint, PressTest, Seat, Shackle,
    defaults,
};
use measure::{Area, Force, Length, Ratio, SpringRate, Stress};

use super::pack::{self, Built};
use super::plan::{self, Plan, Stresses};
use super::{PointEntry, Rated, SpringEntry, axles};
use crate::sheets::vehicle::VehicleFindings;
use crate::{All, Found, Given, Lack};

/// Which rate a spring's heights rest on.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum RateBy {
    Press,
    Handbook,
    Beam,
}

/// A spring with all that its entries come to.
pub(super) struct Spring {
    pub id: Rc<str>,
    pub entry: SpringEntry,
    pub built: Result<Built, Lack>,
    pub stiffening: Result<Ratio, Lack>,
    /// The handbook's line.
    pub line: Result<LoadLine, Lack>,
    pub press: Result<PressTest, Lack>,
    pub rate_by: RateBy,
    pub load: Result<Force, Lack>,
    pub allowed: Given<Stress>,
    pub allowed_bump: Given<Stress>,
    /// Friction as a share of the load: as entered, else from the press, else as assumed.
    pub friction: Result<Ratio, Lack>,
    pub beam: Result<Beam, Lack>,
    /// The state under the load.
    pub stand: Result<Stand, Lack>,
    height: OnceCell<Result<Length, Lack>>,
    stresses: OnceCell<Stresses>,
    load_allowed: OnceCell<Result<Force, Lack>>,
    /// The state after the planned work, when any is planned.
    pub plan: Option<Plan>,
}

/// A spring under its load.
#[derive(Clone)]
pub(super) struct Stand {
    pub rate: SpringRate,
    pub travel: Length,
    pub free_arch: Length,
    pub arch: Length,
    /// What carries the load on to full bump.
    pub line: LoadLine,
}

impl Spring {
    pub(super) fn of(
        entry: &SpringEntry,
        vehicle: &VehicleFindings,
        laden: bool,
        found: &mut Found,
    ) -> Self {
        let built = pack::built(entry);
        let stiffening = stiffening(entry, &built);
        let line = line(&built, &stiffening);
        let press = press(entry);
        let chosen = entry.rate_by.value().copied();
        let rate_by = match chosen {
            Some("press") => RateBy::Press,
            Some("beam") => RateBy::Beam,
            Some(_) => RateBy::Handbook,
            None if press.is_ok() => RateBy::Press,
            None => RateBy::Handbook,
        };
        let load = axles::load_on(entry, vehicle, laden);
        let steel = entry.steel.value().and_then(|id| defaults::steel(id));
        let (at_load, at_bump) = steel.map_or(("550 N/mm²", "990 N/mm²"), |steel| steel.allowed);
        let allowed = found.assume(&entry.allowed, at_load);
        let allowed_bump = found.assume(&entry.allowed_bump, at_bump);
        let rubs = match entry.condition.value() {
            Some(&"greased") => defaults::FRICTION_GREASED.text,
            _ => defaults::FRICTION_DRY.text,
        };
        let friction = found.assume(&entry.friction, rubs);
        let pressed = press
            .as_ref()
            .ok()
            .and_then(|test| test.friction_share.clone());
        let friction = match pressed {
            Some(share) if friction.typed().is_none() && !friction.is_bad() => Ok(share),
            _ => friction.ask().cloned(),
        };
        let mut spring = Self {
            id: entry.id().into(),
            entry: entry.clone(),
            built,
            stiffening,
            line,
            press,
            rate_by,
            load,
            allowed,
            allowed_bump,
            friction,
            beam: Err(Lack::needs([])),
            stand: Err(Lack::needs([])),
            height: OnceCell::new(),
            stresses: OnceCell::new(),
            load_allowed: OnceCell::new(),
            plan: None,
        };
        spring.beam = spring.beam_under(&spring.built, &spring.line);
        spring.stand = spring.stand_of(&spring.built, &spring.line, &spring.beam);
        spring.plan = plan::planned(&spring);
        spring
    }

    /// The leaf-by-leaf beam of a pack under this spring's load; under no load where that is not known.
    pub(super) fn beam_under(
        &self,
        built: &Result<Built, Lack>,
        line: &Result<LoadLine, Lack>,
    ) -> Result<Beam, Lack> {
        let built = built.as_ref().map_err(Clone::clone)?;
        let none = Force::exact(0.0);
        let load = self.load.as_ref().unwrap_or(&none);
        // Load at full bump by the handbook's line; the load itself where the clearance is not known.
        let bump = match (line, self.entry.bump.value()) {
            (Ok(line), Some(clearance)) => line.load_after(load, clearance),
            _ => load.clone(),
        };
        Ok(Beam::new(&built.pack, load, &bump))
    }

    /// How a pack stands under the load.
    pub(super) fn stand_of(
        &self,
        built: &Result<Built, Lack>,
        line: &Result<LoadLine, Lack>,
        beam: &Result<Beam, Lack>,
    ) -> Result<Stand, Lack> {
        let free_arch = self.free_arch(built);
        let (load, free_arch) = (self.load.clone(), free_arch).all()?;
        let (line, travel) = match self.rate_by {
            RateBy::Handbook => {
                let line = line.clone()?;
                let travel = line.travel(&load);
                (line, travel)
            }
            RateBy::Beam => {
                let beam = beam.as_ref().map_err(Clone::clone)?;
                (LoadLine::straight(beam.rate()), beam.travel())
            }
            RateBy::Press => {
                let line = LoadLine::straight(self.press.clone()?.rate);
                let travel = line.travel(&load);
                (line, travel)
            }
        };
        let arch = trade::loaded_arch(&free_arch, &travel);
        Ok(Stand {
            rate: line.rate_at(&load).clone(),
            travel,
            free_arch,
            arch,
            line,
        })
    }

    /// Arch off the vehicle: as measured, else from the loose leaves drawn together.
    pub(super) fn free_arch(&self, built: &Result<Built, Lack>) -> Result<Length, Lack> {
        let measured = &self.entry.free_arch;
        if !measured.is_blank() {
            return measured.ask().cloned();
        }
        let needs = || Lack::needs([measured.key().clone()]);
        let built = built.as_ref().map_err(|_| needs())?;
        let curve = built.pack.common_curvature().ok_or_else(needs)?;
        let camber = trade::camber_of_curve(&built.pack, &curve);
        let rise = self.entry.eye_rise.ask()?;
        Ok(trade::arch_of_camber(
            &camber,
            &built.pack.main().thickness,
            rise,
        ))
    }

    pub(super) fn mounting(&self) -> Mounting {
        let chosen = self.entry.mounting.value();
        chosen
            .and_then(|id| Mounting::named(id))
            .unwrap_or(Mounting::SpringOverAxle)
    }

    /// The stress in each working leaf under the load, by the handbook.
    pub(super) fn stresses(&self) -> &Stresses {
        let found = || plan::stresses(&self.built, &self.line, &self.load);
        self.stresses.get_or_init(found)
    }

    /// The load that the stress allowed lets the spring carry.
    pub(super) fn load_allowed(&self) -> Result<Force, Lack> {
        let found = || plan::load_allowed(&self.built, &self.allowed);
        self.load_allowed.get_or_init(found).clone()
    }

    /// The rate by the way that the heights rest on.
    pub(super) fn rate(&self) -> Rated {
        match self.rate_by {
            RateBy::Press => self.press.clone().map(|test| test.rate),
            RateBy::Beam => self.beam.as_ref().map(Beam::rate).map_err(Clone::clone),
            RateBy::Handbook => {
                let line = self.line.as_ref().map_err(Clone::clone)?;
                Ok(match &self.load {
                    Ok(load) => line.rate_at(load).clone(),
                    Err(_) => line.rate.clone(),
                })
            }
        }
    }

    /// The seat of a pack with a block.
    pub(super) fn seat(&self, built: &Result<Built, Lack>, block: &Length) -> Result<Seat, Lack> {
        let pad = self.entry.pad.ask().cloned();
        let (built, pad) = (built.as_ref().map_err(Clone::clone), pad).all()?;
        Ok(Seat::of(&built.pack, self.mounting(), pad, block.clone()))
    }

    /// Height of the mark on the frame above the centre of the axle.
    pub(super) fn height(&self) -> Result<Length, Lack> {
        self.height.get_or_init(|| self.height_now()).clone()
    }

    fn height_now(&self) -> Result<Length, Lack> {
        let block = self.entry.block.ask()?;
        // What the leaves lack is asked for first.
        let (seat, stand) = (
            self.seat(&self.built, block),
            self.stand.as_ref().map_err(Clone::clone),
        )
            .all()?;
        self.height_at(&seat, &stand.arch)
    }

    pub(super) fn height_at(&self, seat: &Seat, arch: &Length) -> Result<Length, Lack> {
        let mark = self.entry.mark.ask()?;
        Ok((seat.eye_line_height(arch) + mark).called("H"))
    }

    /// The eyes' distance at an arch.
    pub(super) fn eyes(&self, arch: &Length) -> Result<Length, Lack> {
        let built = self.built.as_ref().map_err(Clone::clone)?;
        let rise = self.entry.eye_rise.ask()?;
        let main = built.pack.main();
        let camber = trade::camber(arch, &main.thickness, rise);
        Ok(trade::eye_to_eye(&built.pack, &camber))
    }

    /// The shackle's lean where the eyes are so far apart.
    pub(super) fn shackle_lean(&self, eyes: &Result<Length, Lack>) -> Result<measure::Angle, Lack> {
        let (length, pins_apart, pin_higher) = (
            self.entry.shackle.ask(),
            self.entry.pins_apart.ask(),
            self.entry.pin_higher.ask(),
        )
            .all()?;
        let shackle = Shackle {
            length: length.clone(),
            pins_apart: pins_apart.clone(),
            pin_higher: pin_higher.clone(),
        };
        Ok(trade::shackle_lean(
            &shackle,
            eyes.as_ref().map_err(Clone::clone)?,
        )?)
    }

    /// Arch at full bump.
    pub(super) fn bump_arch(&self) -> Result<Length, Lack> {
        let stand = self.stand.as_ref().map_err(Clone::clone)?;
        let clearance = self.entry.bump.ask()?;
        Ok((&stand.arch - clearance).called("arch_b"))
    }

    pub(super) fn pack(&self) -> Result<&Pack, Lack> {
        self.built
            .as_ref()
            .map(|built| &built.pack)
            .map_err(Clone::clone)
    }
}

impl SpringEntry {
    pub(super) fn leaves_key(&self) -> crate::Key {
        self.key.under("leaves")
    }
}

fn stiffening(entry: &SpringEntry, built: &Result<Built, Lack>) -> Result<Ratio, Lack> {
    if !entry.stiffening.is_blank() {
        return entry.stiffening.ask().cloned();
    }
    let built = built.as_ref().map_err(Clone::clone)?;
    let ends = entry.ends.value().and_then(|id| LeafEnds::named(id));
    let ends = ends.unwrap_or(LeafEnds::Thinned);
    Ok(trade::stiffening_factor(&built.pack, ends))
}

/// The handbook's line of a pack.
pub(super) fn line(
    built: &Result<Built, Lack>,
    stiffening: &Result<Ratio, Lack>,
) -> Result<LoadLine, Lack> {
    let factor = stiffening.clone()?;
    let built = built.as_ref().map_err(Clone::clone)?;
    Ok(trade::load_line(&built.pack, &factor)?)
}

pub(super) fn ram_area(entry: &SpringEntry) -> Option<Area> {
    entry.ram_bore.value().map(trade::ram_area)
}

/// Load of a point of the press test: as read, else from the gauge.
pub(super) fn point_load(point: &PointEntry, area: Option<&Area>) -> Result<Force, Lack> {
    if point.load.is_blank()
        && let (Some(pressure), Some(area)) = (point.pressure.value(), area)
    {
        return Ok(trade::ram_load(pressure, area));
    }
    point.load.ask().cloned()
}

/// The press test, from the points that are whole.
fn press(entry: &SpringEntry) -> Result<PressTest, Lack> {
    let area = ram_area(entry);
    let mut points = Vec::new();
    for point in &entry.points {
        let blank = point.load.is_blank() && point.pressure.is_blank();
        if point.travel.is_blank() && blank {
            continue;
        }
        let (travel, load) = (point.travel.ask(), point_load(point, area.as_ref())).all()?;
        let going = point.going.value().and_then(|id| trade::Going::named(id));
        points.push(PressPoint {
            travel: travel.clone(),
            load,
            going: going.unwrap_or(trade::Going::Up),
        });
    }
    if points.is_empty() {
        return Err(Lack::needs([entry.key.under("points")]));
    }
    Ok(trade::press_test(&points)?)
}
