//! The paint sheet: its entries and what it finds.

mod areas;
mod buying;
mod day;
mod entries;
mod layers;
mod mixing;
mod remarks;
mod sight;
#[cfg(test)]
mod tests;

use std::rc::Rc;

use measure::{Figure, Kind, Volume};
use trade::paint::{LayerKind, Subcategory};

pub use areas::{Elevation, Seen};
pub use buying::{ProductFound, TinFound};
pub use entries::{
    BY, GUNS, KINDS, OF, OPENINGS, PaintCorner, PaintLayer, PaintOpening, PaintPanel, PaintPart,
    PaintProduct, PaintSheet, PaintSystem, PaintTin, READY, ROLES, SHAPES,
};

use self::areas::Areas;
use self::buying::Needs;
use self::layers::{Filled, Reckoned, Shop};
use self::sight::Sight;
use super::vehicle::VehicleFindings;
use crate::key::joined;
use crate::{Found, Lack, Read, SheetFindings};

/// What the paint sheet finds.
#[derive(Debug, Clone)]
pub struct PaintFindings {
    /// The entries as they were read.
    pub sheet: Rc<PaintSheet>,
    /// Results, remarks and errors.
    pub found: Found,
    /// What is painted, laid flat, for drawing.
    pub elevations: Vec<Elevation>,
    /// The layers of all systems, in their order.
    pub layers: Vec<LayerFound>,
    /// What is bought of each product.
    pub products: Vec<ProductFound>,
}

/// What a drawing and a table need of a layer besides its results.
#[derive(Debug, Clone)]
pub struct LayerFound {
    /// The system's id and the layer's: the end of its results' names, `1/2`.
    pub place: Rc<str>,
    /// What it is for.
    pub kind: LayerKind,
    /// Coats.
    pub coats: Option<u32>,
    /// The limit of Annex II B beside which its solvent stands.
    pub subcategory: Subcategory,
    /// Dry film of all coats, with what it should lie between, in metres.
    pub film: Option<(Figure, [f64; 2])>,
}

impl SheetFindings for PaintFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the paint sheet come to.
#[must_use]
pub fn findings(read: &Read<PaintSheet>, vehicle: &Rc<VehicleFindings>) -> PaintFindings {
    let mut found = Found::of(read);
    let sheet = Rc::clone(&read.sheet);
    // The main result comes first, whatever it rests on.
    found.headline(
        "paint/litres",
        Kind::Volume,
        &Err::<Volume, _>(Lack::needs([])),
    );
    let areas = Areas::of(&sheet, &vehicle.sheet, &mut found);
    let shop = Shop::of(&sheet, &mut found);
    let mut needs: Needs = sheet.products.iter().map(|_| Vec::new()).collect();
    let mut layers = Vec::new();
    let mut litres = Vec::new();
    for (place, system) in sheet.systems.iter().enumerate() {
        let area = areas.total(Some(place));
        found.show(
            joined(&["paint/system_area", system.id()]),
            Kind::Area,
            &area,
        );
        let mut reckoned = Vec::new();
        let mut of_system = Vec::new();
        for layer in &system.layers {
            let filled = Filled::of(layer, &mut found);
            let one = Reckoned::of(&sheet, &shop, layer, &filled, &area);
            let place: Rc<str> = format!("{}/{}", system.id(), layer.id()).into();
            let sight = Sight {
                sheet: &sheet,
                shop: &shop,
                layer,
                filled: &filled,
                place: &place,
            };
            layers.push(sight.show(&one, &mut needs, &mut found));
            of_system.push(one.litres.clone());
            reckoned.push(one);
        }
        let whole = sum("V_system", of_system);
        found.show(
            joined(&["paint/system_litres", system.id()]),
            Kind::Volume,
            &whole,
        );
        litres.push(whole);
        day::show_timetable(system, &reckoned, &mut found);
    }
    found.show("paint/litres", Kind::Volume, &sum("V_all", litres));
    let products = buying::buy(&sheet, &needs, read.rounding, &mut found);
    day::show_moisture(&sheet, &mut found);
    day::show_air(&sheet, &mut found);
    remarks::remark(&sheet, &layers, &mut found);
    PaintFindings {
        sheet,
        found,
        elevations: areas.elevations,
        layers,
        products,
    }
}

/// The sum of several volumes, or all that they lack.
fn sum(symbol: &'static str, parts: Vec<Result<Volume, Lack>>) -> Result<Volume, Lack> {
    let mut volumes = Vec::new();
    let mut lack: Option<Lack> = None;
    for part in parts {
        match part {
            Ok(volume) => volumes.push(volume),
            Err(new) => {
                lack = Some(match lack.take() {
                    Some(old) => old.and(new),
                    None => new,
                });
            }
        }
    }
    match (lack, volumes.len()) {
        (Some(lack), _) => Err(lack),
        (None, 1) => Ok(volumes.remove(0)),
        (None, _) => Ok(Volume::sum_of(&volumes)
            .called(symbol)
            .of_kind(Kind::Volume)),
    }
}
