//! The results of one spring as it stands, by name.

use std::rc::Rc;

use ::trade::springs::{self as trade, Beam, Pack};
use measure::{Kind, Length};

use super::one::{Spring, Stand};
use super::pack;
use crate::key::joined;
use crate::{All, Found, Lack};

/// The name of a result of a row: `springs/rate/1`.
pub(super) fn id(result: &str, row: &str) -> Rc<str> {
    joined(&["springs", result, row])
}

impl Spring {
    /// Puts everything about the spring as it stands into the findings.
    pub(super) fn show(&self, found: &mut Found) {
        let row = &*self.id;
        found.headline(id("rate", row), Kind::SpringRate, &self.rate());
        found.headline(id("height", row), Kind::Length, &self.height());
        self.show_rates(found, row);
        self.show_stand(found, row);
        self.show_shackle(found, row);
        self.show_stresses(found, row);
        self.show_rust(found, row);
    }

    fn show_rates(&self, found: &mut Found, row: &str) {
        let handbook = self
            .line
            .as_ref()
            .map_err(Clone::clone)
            .map(|line| line.rate.clone());
        let beam = self.beam.as_ref().map(Beam::rate).map_err(Clone::clone);
        let tight = self.pack().map(trade::tight_rate);
        let free = (self.pack(), self.stiffening.clone())
            .all()
            .map(|(pack, factor)| trade::unclamped_rate(pack, &factor));
        // Both at the load: where a helper bears, it bears in both.
        let at_load = match (&self.line, &self.load) {
            (Ok(line), Ok(load)) => Ok(line.rate_at(load).clone()),
            _ => handbook.clone(),
        };
        let differ = (at_load, beam.clone())
            .all()
            .map(|(handbook, beam)| (beam / handbook - 1.0).called("Δ"));
        found.show(id("rate_handbook", row), Kind::SpringRate, &handbook);
        found.show(id("rate_free", row), Kind::SpringRate, &free);
        found.show(id("rate_beam", row), Kind::SpringRate, &beam);
        found.show(id("rate_tight", row), Kind::SpringRate, &tight);
        found.show(id("methods_differ", row), Kind::Percent, &differ);
        found.show(id("stiffening", row), Kind::Ratio, &self.stiffening);
        found.show(id("dead", row), Kind::Length, &pack::dead_of(&self.entry));
        let helper = self.line.clone().and_then(|line| {
            let none = || Lack::needs([self.entry.leaves_key()]);
            line.helper.ok_or_else(none)
        });
        if self.pack().is_ok_and(|pack| pack.helper().is_some()) {
            let load = helper.as_ref().map(|step| step.load.clone());
            let rate = helper.as_ref().map(|step| step.rate.clone());
            found.show(
                id("helper_load", row),
                Kind::Force,
                &load.map_err(Clone::clone),
            );
            found.show(
                id("rate_helper", row),
                Kind::SpringRate,
                &rate.map_err(Clone::clone),
            );
        }
        if !self.entry.points.is_empty() {
            self.show_press(found, row);
        }
    }

    fn show_press(&self, found: &mut Found, row: &str) {
        let press = self.press.clone();
        let rate = press.as_ref().map(|test| test.rate.clone());
        found.show(
            id("rate_press", row),
            Kind::SpringRate,
            &rate.map_err(Clone::clone),
        );
        let friction = press.and_then(|test| {
            let lack = || Lack::needs([self.entry.key.under("points")]);
            test.friction.zip(test.friction_share).ok_or_else(lack)
        });
        let force = friction.as_ref().map(|(force, _)| force.clone());
        let share = friction.as_ref().map(|(_, share)| share.clone());
        found.show(
            id("press_friction", row),
            Kind::Force,
            &force.map_err(Clone::clone),
        );
        found.show(
            id("press_friction_share", row),
            Kind::Percent,
            &share.map_err(Clone::clone),
        );
    }

    fn show_stand(&self, found: &mut Found, row: &str) {
        found.show(id("load", row), Kind::Force, &self.load);
        let stand = || self.stand.as_ref().map_err(Clone::clone);
        let part = |of: &dyn Fn(&Stand) -> Length| stand().map(of);
        found.show(
            id("free_arch", row),
            Kind::Length,
            &self.free_arch(&self.built),
        );
        found.show(
            id("travel", row),
            Kind::Length,
            &part(&|stand| stand.travel.clone()),
        );
        found.show(
            id("arch", row),
            Kind::Length,
            &part(&|stand| stand.arch.clone()),
        );
        let pile = self.pack().map(Pack::pile);
        found.show(id("pile", row), Kind::Length, &pile);
        let swing = (stand(), self.load.clone())
            .all()
            .map(|(stand, load)| trade::natural_frequency(&stand.rate, &load));
        found.show(id("frequency", row), Kind::Frequency, &swing);
        let held = (stand(), self.load.clone(), self.friction.clone())
            .all()
            .map(|(stand, load, friction)| trade::friction_height(&friction, &load, &stand.rate));
        found.show(id("friction_height", row), Kind::Length, &held);
        let bump = (stand(), self.load.clone(), self.entry.bump.ask())
            .all()
            .map(|(stand, load, clearance)| stand.line.load_after(&load, clearance));
        found.show(id("bump_load", row), Kind::Force, &bump);
        found.show(id("bump_arch", row), Kind::Length, &self.bump_arch());
    }

    fn show_shackle(&self, found: &mut Found, row: &str) {
        let states = [
            ("free", self.free_arch(&self.built)),
            (
                "loaded",
                self.stand
                    .as_ref()
                    .map(|stand| stand.arch.clone())
                    .map_err(Clone::clone),
            ),
            ("bump", self.bump_arch()),
        ];
        for (state, arch) in states {
            let eyes = arch
                .as_ref()
                .map_err(Clone::clone)
                .and_then(|arch| self.eyes(arch));
            found.show(id(&format!("eyes_{state}"), row), Kind::Length, &eyes);
            let lean = arch.and_then(|_| self.shackle_lean(&eyes));
            found.show(id(&format!("shackle_{state}"), row), Kind::Angle, &lean);
        }
    }

    fn show_stresses(&self, found: &mut Found, row: &str) {
        found.show(
            id("allowed", row),
            Kind::Stress,
            &self.allowed.ask().cloned(),
        );
        found.show(
            id("allowed_bump", row),
            Kind::Stress,
            &self.allowed_bump.ask().cloned(),
        );
        found.show(id("load_allowed", row), Kind::Force, &self.load_allowed());
        let (Ok(built), Ok(beam)) = (&self.built, &self.beam) else {
            return;
        };
        if built.pack.common_curvature().is_some() {
            found.show(id("bolt_pull", row), Kind::Force, &Ok(beam.bolt_pull()));
        }
        if let Ok(load) = &self.load {
            let nip = trade::even_nip(&built.pack, load);
            found.show(id("even_nip", row), Kind::Length, &Ok(nip));
        }
        let first = built.pack.rebound().len();
        let stresses = self.stresses();
        let loads = (self.line.clone(), self.load.clone()).all();
        let bending_at_bump =
            (loads, self.entry.bump.ask())
                .all()
                .map(|((line, load), clearance)| {
                    let bump = line.load_after(&load, clearance);
                    trade::Bending::of(&built.pack, &bump, &line)
                });
        for (place, leaf) in built.pack.working().iter().enumerate() {
            let row = format!("{row}/{}", built.ids[first + place]);
            // Without the loose arches nobody knows the nip: then there is no result rather than a missing entry.
            if let Some(nip) = trade::nip_stress(&built.pack, leaf) {
                found.show(id("nip", &row), Kind::Stress, &Ok(nip));
                let by_beam = beam.nip_stress(place);
                found.show(id("nip_beam", &row), Kind::Stress, &Ok(by_beam));
            }
            let at_load = stresses.as_ref().map_err(Clone::clone);
            let at_load = at_load.map(|stresses| stresses[place].clone());
            let at_bump = bending_at_bump.as_ref().map_err(Clone::clone);
            let at_bump = at_bump.map(|bending| bending.stress(&built.pack, leaf));
            let used = (at_load.clone(), self.allowed.ask())
                .all()
                .map(|(stress, allowed)| (stress / allowed).called("used"));
            let used_bump = (at_bump.clone(), self.allowed_bump.ask())
                .all()
                .map(|(stress, allowed)| (stress / allowed).called("used"));
            found.show(id("stress", &row), Kind::Stress, &at_load);
            found.show(id("stress_bump", &row), Kind::Stress, &at_bump);
            found.show(id("used", &row), Kind::Percent, &used);
            found.show(id("used_bump", &row), Kind::Percent, &used_bump);
            let known = self.load.clone();
            let bump_known = (self.load.clone(), self.entry.bump.ask()).all();
            found.show(
                id("stress_beam", &row),
                Kind::Stress,
                &known.map(|_| beam.load_stress(place)),
            );
            found.show(
                id("stress_beam_bump", &row),
                Kind::Stress,
                &bump_known.map(|_| beam.bump_stress(place)),
            );
        }
    }

    /// What rust has cost.
    fn show_rust(&self, found: &mut Found, row: &str) {
        let Ok(built) = &self.built else { return };
        if built.new.iter().all(Option::is_none) {
            return;
        }
        let rates = (
            trade::as_new(&built.pack, &built.new).map_err(Lack::from),
            self.stiffening.clone(),
        )
            .all()
            .map(|(new, factor)| {
                let of = |pack: &Pack| trade::rate_of(pack, pack.carrying(), &factor);
                (of(&new).called("k_new"), of(&built.pack).called("k_now"))
            });
        let new = rates.clone().map(|(new, _)| new);
        let left = rates
            .clone()
            .map(|(new, now)| (now / new).called("k_now/k_new"));
        let lost = (rates, self.load.clone())
            .all()
            .map(|((new, now), load)| (&load / now - &load / new).called("lost"));
        found.show(id("rate_new", row), Kind::SpringRate, &new);
        found.show(id("rate_left", row), Kind::Percent, &left);
        found.show(id("height_lost", row), Kind::Length, &lost);
    }
}
