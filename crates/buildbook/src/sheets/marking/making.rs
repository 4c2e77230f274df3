//! How the holes are made on the new side, how far off they can come, and how the old ones are closed.

use ::trade::marking::{Form, Shape, Step, Swap, Tool};
use ::trade::marking::{
    bolt_through, drill_schedule, patch, plate, round_tool, swap, tolerated, worst_error,
};
use measure::{Area, Figure, Kind, Length};

use super::moving::Moved;
use super::take_off::TakenOff;
use super::{FeatureEntry, MarkingSheet};
use crate::key::joined;
use crate::{All, Found, Lack, Rank, Remark};

/// How the holes are made, and how the old ones are closed.
#[derive(Debug, Clone)]
pub struct Making {
    /// The steps in the order of work, each with the features it serves by their places in the list.
    pub steps: Result<Vec<Step>, Lack>,
    /// How each feature's old hole is closed by a piece that a new hole leaves; none for what is not cut.
    pub closing: Vec<Option<Closing>>,
}

/// How an old hole is closed.
#[derive(Debug, Clone)]
pub enum Closing {
    /// No new hole leaves a piece: drills leave chips.
    NoPiece,
    /// The piece of this feature's new hole, and how it sits.
    Piece(usize, Swap),
}

pub(super) fn making(
    sheet: &MarkingSheet,
    taken: &TakenOff,
    moved: &Moved,
    found: &mut Found,
) -> Making {
    let known: Vec<(usize, &Shape)> = taken
        .features
        .iter()
        .enumerate()
        .filter_map(|(place, fixed)| Some((place, fixed.shape.as_ref().ok()?)))
        .collect();
    for (feature, goes) in sheet.features.iter().zip(&moved.features) {
        let worst = (goes.at.as_ref().map_err(Clone::clone), sheet.drilling.ask()).all();
        let worst = worst.map(|(at, drilling)| worst_error(at, drilling));
        found.show(
            joined(&["marking/worst", feature.id()]),
            Kind::Length,
            &worst,
        );
        if let Ok(worst) = &worst {
            tolerance(feature, worst, found);
        }
    }
    close(sheet, &known, found);
    let steps = (sheet.sheet.ask(), sheet.pilot.ask())
        .all()
        .map(|(thick, pilot)| {
            let shapes: Vec<&Shape> = known.iter().map(|(_, shape)| *shape).collect();
            let mut steps = drill_schedule(&shapes, thick, pilot);
            for (which, _) in steps.iter_mut().flat_map(|step| &mut step.at) {
                *which = known[*which].0;
            }
            steps
        });
    let closing = (0..taken.features.len())
        .map(|place| closing(sheet, &known, place))
        .collect();
    Making { steps, closing }
}

/// How far off a hole can come against what its part lets it be: as typed, else what the bolt tolerates that the hole is for.
fn tolerance(feature: &FeatureEntry, worst: &Length, found: &mut Found) {
    let round = feature.kind.value() == Some(&"round");
    let bolt = || {
        feature
            .diameter
            .value()
            .filter(|_| round)
            .and_then(|hole| Some((hole, bolt_through(hole)?)))
    };
    let (allowed, bolt) = match (feature.allowed.value(), bolt()) {
        (Some(allowed), _) => (allowed.clone(), None),
        (None, Some((hole, bolt))) => (tolerated(hole, &bolt), Some(bolt)),
        (None, None) => return,
    };
    if worst.value() <= allowed.value() {
        return;
    }
    let fact = if bolt.is_some() {
        "bolt_may_miss"
    } else {
        "may_miss"
    };
    let mut remark = Remark::new(Rank::Caution, fact).at(feature.allowed.key().clone());
    remark = remark
        .with(worst.figure(Kind::Length))
        .with(allowed.figure(Kind::Length));
    if let Some(bolt) = bolt {
        // Bolts are called by their diameter in millimetres.
        remark = remark.naming(format!("M{:.0}", bolt.value() * 1e3));
    }
    found.remark(remark);
}

/// The discs and plates that close the old holes, and what all of them come to.
fn close(sheet: &MarkingSheet, known: &[(usize, &Shape)], found: &mut Found) {
    let Some(gap) = sheet.weld_gap.value() else {
        return;
    };
    let (mut sheets, mut welds): (Vec<Area>, Vec<Length>) = Default::default();
    for (place, shape) in known {
        let Some(feature) = sheet.features.get(*place).filter(|_| shape.is_cut()) else {
            continue;
        };
        let id = feature.id();
        if shape.form() == Form::Round {
            let disc = patch(&shape.sizes()[0], gap)
                .map(|disc| disc.diameter)
                .map_err(Lack::from);
            found.show(joined(&["marking/disc", id]), Kind::Length, &disc);
        }
        let plate = plate(shape, gap).map_err(Lack::from);
        let part = |of: fn(&::trade::marking::Plate) -> Length| {
            plate.as_ref().map(of).map_err(Clone::clone)
        };
        found.show(
            joined(&["marking/weld", id]),
            Kind::Length,
            &part(|plate| plate.weld.clone()),
        );
        let metal = plate
            .as_ref()
            .map(|plate| plate.sheet.clone())
            .map_err(Clone::clone);
        found.show(joined(&["marking/patch", id]), Kind::Section, &metal);
        if let Ok(plate) = plate {
            sheets.push(plate.sheet);
            welds.push(plate.weld);
        }
    }
    if !sheets.is_empty() {
        let (metal, edge) = (Area::sum_of(&sheets), Length::sum_of(&welds));
        found.show(
            "marking/patches",
            Kind::Section,
            &Ok(metal.of_kind(Kind::Section).called("A")),
        );
        found.show(
            "marking/welds",
            Kind::Length,
            &Ok(edge.of_kind(Kind::Length).called("L")),
        );
    }
}

/// What a new hole leaves in one piece: a hole saw its slug, a cutter what it cut out; drills leave chips.
fn leaves_a_piece(shape: &Shape, thick: &Length) -> bool {
    match shape.form() {
        Form::Round => matches!(
            round_tool(&shape.sizes()[0], thick),
            Tool::HoleSaw | Tool::Cutter
        ),
        Form::Rectangle | Form::Oval | Form::Free => true,
        _ => false,
    }
}

/// The best piece for a feature's old hole: one that fills it, else one that does so once it is dressed, else its own twin's.
fn closing(sheet: &MarkingSheet, known: &[(usize, &Shape)], place: usize) -> Option<Closing> {
    let hole = known
        .iter()
        .find(|(which, _)| *which == place)
        .map(|(_, shape)| *shape)?;
    let (kerf, gap) = (sheet.saw_kerf.value()?, sheet.weld_gap.value()?);
    let thick = sheet.sheet.value().filter(|_| hole.is_cut())?;
    // A gap as wide as the sheet metal is thick can still be bridged. Common practice, no source.
    let widest = if thick.value() > gap.value() {
        thick
    } else {
        gap
    };
    let pieces = known
        .iter()
        .filter(|(_, shape)| leaves_a_piece(shape, thick));
    let swaps: Vec<(usize, Swap)> = pieces
        .map(|(which, shape)| (*which, swap(shape, kerf, hole, gap, widest)))
        .collect();
    let best = |fits: fn(&Swap) -> bool| swaps.iter().find(|(_, swap)| fits(swap));
    let own = || swaps.iter().find(|(which, _)| *which == place);
    let found = best(|swap| matches!(swap, Swap::Fills(_)))
        .or_else(|| best(|swap| matches!(swap, Swap::Dress(_))))
        .or_else(own);
    Some(found.map_or(Closing::NoPiece, |(which, swap)| {
        Closing::Piece(*which, swap.clone())
    }))
}

/// A figure of what a swap leaves all round.
#[must_use]
pub fn swap_gap(swap: &Swap) -> Option<Figure> {
    match swap {
        Swap::Fills(gap) | Swap::Dress(gap) | Swap::TooSmall(gap) => {
            Some(gap.figure(Kind::Thickness))
        }
        Swap::TooLarge(_) | Swap::NotAlike => None,
    }
}
