//! What the drawings of one spring need.

use std::rc::Rc;

use ::trade::springs::{Pack, SpringLie};
use measure::Length;

use super::one::{Spring, Stand, point_load, ram_area};
use super::{PointEntry, SpringPicture};

impl Spring {
    /// What the drawing needs.
    pub(super) fn picture(&self) -> SpringPicture {
        let rise = self.entry.eye_rise.value().map_or(0.0, Length::value);
        let lie = |pack: Option<&Pack>, arch: Option<&Length>| {
            let (pack, arch_m) = (pack?.clone(), arch?.value());
            Some(SpringLie {
                pack,
                arch_m,
                eye_rise_m: rise,
            })
        };
        let pack = self.pack().ok();
        let stand = self.stand.as_ref().ok();
        let planned = self.plan.as_ref().and_then(|plan| {
            let (stand, built) = (plan.stand.as_ref().ok()?, plan.built.as_ref().ok()?);
            lie(Some(&built.pack), Some(&stand.arch))
        });
        let block = self.entry.block.value().map_or(0.0, Length::value);
        let shackle = (self.entry.pins_apart.value()).zip(self.entry.shackle.value());
        SpringPicture {
            id: Rc::clone(&self.id),
            place: self.entry.place.value().copied(),
            mounting: self.mounting(),
            free: lie(pack, self.free_arch(&self.built).ok().as_ref()),
            loaded: lie(pack, stand.map(|stand| &stand.arch)),
            bump: lie(pack, self.bump_arch().ok().as_ref()),
            planned,
            seat_m: self.entry.pad.value().map(|pad| (pad.value(), block)),
            planned_block_m: self
                .plan
                .as_ref()
                .and_then(|plan| plan.block.as_ref().ok())
                .map(Length::value),
            shackle_m: shackle.map(|(apart, length)| {
                let higher = self.entry.pin_higher.value().map_or(0.0, Length::value);
                (apart.value(), higher, length.value())
            }),
            friction: self.friction.as_ref().map_or(0.0, measure::Quantity::value),
            line: stand
                .map(|stand| self.line_points(stand))
                .unwrap_or_default(),
            points: self
                .entry
                .points
                .iter()
                .filter_map(|point| self.plotted(point))
                .collect(),
            leaf_ids: self
                .built
                .as_ref()
                .map(|built| built.ids.clone())
                .unwrap_or_default(),
        }
    }

    /// The line that heights rest on, from no load to full bump.
    fn line_points(&self, stand: &Stand) -> Vec<(f64, f64)> {
        let mut points = vec![(0.0, 0.0)];
        if let Some(step) = &stand.line.helper {
            points.push(((&step.load / &stand.line.rate).value(), step.load.value()));
        }
        if let Ok(load) = &self.load {
            points.push((stand.travel.value(), load.value()));
            if let Some(clearance) = self.entry.bump.value() {
                let bump = stand.line.load_after(load, clearance);
                points.push((stand.travel.value() + clearance.value(), bump.value()));
            }
        }
        measure::sort_by(&mut points, |one, other| one.0.total_cmp(&other.0));
        points
    }

    fn plotted(&self, point: &PointEntry) -> Option<(f64, f64, bool)> {
        let load = point_load(point, ram_area(&self.entry).as_ref()).ok()?;
        let travel = point.travel.value()?.value();
        Some((travel, load.value(), point.going.value() != Some(&"down")))
    }
}
