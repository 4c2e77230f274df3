//! Working back: the axle for a wished engine speed or hill, and the nearest real teeth.

use std::rc::Rc;

use measure::{Kind, Ratio, Rotation};
use trade::gearing::{
    Teeth, axle_for_hill, axle_for_speed, engine_speed, steepest_hill, tooth_pairs, usual_teeth,
};

use super::gears::{Gear, Line};
use super::pull::Pulling;
use crate::key::joined;
use crate::{All, Found, Lack};

/// A real pair of teeth near a wished ratio.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PairFound {
    /// What its results end in.
    pub id: Rc<str>,
    /// The teeth.
    pub teeth: Teeth,
}

/// How many pairs are told.
const PAIRS: usize = 5;

/// The axle for the wished engine speed at the wished road speed in top gear, and the engine speed with each near pair.
pub(super) fn for_speed(found: &mut Found, line: &Line) -> Vec<PairFound> {
    let sheet = &line.sheet;
    let others = line.top().and_then(|gear| others(line, gear));
    let asked = (
        sheet.wanted_revs.ask(),
        sheet.wanted_speed.ask(),
        line.circumference.clone(),
        others,
    )
        .all();
    let axle = asked
        .clone()
        .map(|(n, v, circumference, others)| axle_for_speed(&circumference, v, n, &others));
    found.show("gearing/axle_for_speed", Kind::Ratio, &axle);
    let (Ok(axle), Ok((_, speed, circumference, others))) = (axle, asked) else {
        return Vec::new();
    };
    pairs(found, line, &axle, "speed_pair", |axle, id, found| {
        let revs: Result<Rotation, Lack> =
            Ok(engine_speed(&circumference, speed, &(axle * &others)));
        found.show(
            joined(&["gearing/speed_pair_revs", id]),
            Kind::Rotation,
            &revs,
        );
    })
}

/// The axle that just climbs the wished hill in the wished gear, and the hill with each near pair.
pub(super) fn for_hill(found: &mut Found, line: &Line, pulling: &Pulling) -> Vec<PairFound> {
    let asked = hill_asked(line, pulling);
    let axle = asked
        .as_ref()
        .map_err(Clone::clone)
        .and_then(|(slope, gear, pull)| {
            let (fitted, curve, resistance, limits) = pulling.ready(&Ok(pull.clone()))?;
            let (train, ratio) = (line.train_in(gear)?, gear.ratio.clone()?);
            let engaged = (&train, &ratio, &fitted.efficiency);
            Ok(axle_for_hill(
                slope,
                engaged,
                &fitted.circumference,
                curve,
                resistance,
                limits.range(),
            )?)
        });
    found.show("gearing/axle_for_hill", Kind::Ratio, &axle);
    let (Ok(axle), Ok((_, gear, fitted))) = (axle, asked) else {
        return Vec::new();
    };
    pairs(found, line, &axle, "hill_pair", |axle, id, found| {
        let slope = (line.train_in(gear), gear.ratio.clone())
            .all()
            .and_then(|(train, ratio)| {
                let pull = trade::gearing::Pull {
                    overall: train.with_axle(axle.clone()).overall(&ratio),
                    ..fitted.clone()
                };
                let (pull, curve, resistance, limits) = pulling.ready(&Ok(pull))?;
                Ok(steepest_hill(&pull, curve, resistance, limits.range())?.slope)
            });
        found.show(
            joined(&["gearing/hill_pair_slope", id]),
            Kind::Slope,
            &slope,
        );
    })
}

type HillAsked<'a> = (&'a Ratio, &'a Gear, trade::gearing::Pull);

fn hill_asked<'a>(line: &'a Line, pulling: &Pulling) -> Result<HillAsked<'a>, Lack> {
    let sheet = &line.sheet;
    let gear = match sheet.wanted_hill_gear.value() {
        None => line.low(),
        Some(place) => {
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "a whole number from 1 to 16"
            )]
            let place = place.value() as usize;
            let gear = line
                .gears
                .iter()
                .find(|gear| gear.found.place == place && !gear.found.overdrive);
            gear.ok_or_else(|| Lack::entry(sheet.wanted_hill_gear.key().clone()))
        }
    };
    let pull = gear.clone().and_then(|gear| {
        let at = line
            .gears
            .iter()
            .position(|other| other.found == gear.found);
        at.and_then(|at| pulling.pulls.get(at).cloned())
            .unwrap_or(Err(Lack::needs([])))
    });
    (sheet.wanted_hill.ask(), gear, pull).all()
}

/// All ratios of a gear but the axle's own.
fn others(line: &Line, gear: &Gear) -> Result<Ratio, Lack> {
    (line.train_in(gear), gear.ratio.clone())
        .all()
        .map(|(train, ratio)| {
            train
                .with_axle(Ratio::exact(1.0))
                .overall(&ratio)
                .called("i_g")
        })
}

fn pairs(
    found: &mut Found,
    line: &Line,
    wanted: &Ratio,
    name: &str,
    show: impl Fn(&Ratio, &str, &mut Found),
) -> Vec<PairFound> {
    let worm = line.sheet.axle_kind.value() == Some(&"worm");
    let near = tooth_pairs(wanted.value(), usual_teeth(wanted.value(), worm), PAIRS);
    near.into_iter()
        .enumerate()
        .map(|(place, teeth)| {
            let id = (place + 1).to_string();
            let axle = Ratio::exact(teeth.ratio()).of_kind(Kind::Ratio);
            found.show(
                format!("gearing/{name}_ratio/{id}"),
                Kind::Ratio,
                &Ok(axle.clone()),
            );
            show(&axle, &id, found);
            PairFound {
                id: id.into(),
                teeth,
            }
        })
        .collect()
}
