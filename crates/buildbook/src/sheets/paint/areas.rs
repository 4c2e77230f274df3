//! Areas: the body from its overall sizes, and panels one by one.

use std::rc::Rc;

use measure::{Area, Figure, Kind, Length, Ratio};
use trade::TradeError;
use trade::paint::{
    Corners, Faces, Outline, box_area, curved_area, disc_area, disc_outline, painted_area,
    rectangle_area, rectangle_outline, traced_outline, trapezium_area, trapezium_outline,
    tube_area,
};

use super::entries::{PaintOpening, PaintPanel, PaintSheet};
use crate::key::joined;
use crate::sheets::vehicle::VehicleSheet;
use crate::{All, Found, Given, Key, Lack, Rank, Remark};

/// A flat view of something painted, for drawing it to scale.
#[derive(Debug, Clone)]
pub struct Elevation {
    /// What is seen.
    pub what: Seen,
    /// Its outline in metres; a curved panel is laid flat.
    pub outline: Outline,
    /// Outlines of what is cut out of it.
    pub openings: Vec<Outline>,
    /// How many faces of it are painted in all.
    pub faces: f64,
    /// Whether the outline stands for an area whose shape is not known.
    pub shapeless: bool,
    /// The place of its system in the list.
    pub system: usize,
    /// What of it is painted, edges and all.
    pub area: Option<Figure>,
}

/// What an elevation shows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Seen {
    /// A side of the body.
    BodySide,
    /// An end of the body.
    BodyEnd,
    /// The roof of the body.
    BodyRoof,
    /// The panel whose row has this id.
    Panel(Rc<str>),
}

/// An area to paint, and with which system.
pub(super) struct Painted {
    pub(super) system: Result<usize, Lack>,
    pub(super) area: Result<Area, Lack>,
}

/// All that is to be painted.
pub(super) struct Areas {
    pub(super) painted: Vec<Painted>,
    pub(super) elevations: Vec<Elevation>,
}

impl Areas {
    pub(super) fn of(sheet: &PaintSheet, vehicle: &VehicleSheet, found: &mut Found) -> Self {
        let mut areas = Self {
            painted: Vec::new(),
            elevations: Vec::new(),
        };
        let sizes = [&sheet.body_length, &sheet.body_width, &sheet.body_height];
        if sheet.panels.is_empty() || sizes.iter().any(|size| !size.is_blank()) {
            areas.add_body(sheet, vehicle, found);
        }
        for panel in &sheet.panels {
            areas.add_panel(sheet, panel, found);
        }
        found.show("paint/area", Kind::Area, &areas.total(None));
        areas
    }

    /// The area of one system, or of all.
    pub(super) fn total(&self, system: Option<usize>) -> Result<Area, Lack> {
        let mut parts = Vec::new();
        for painted in &self.painted {
            let theirs = painted.system.clone()?;
            if system.is_none_or(|system| system == theirs) {
                parts.push(painted.area.clone()?);
            }
        }
        match parts.len() {
            1 => Ok(parts.remove(0)),
            _ => Ok(Area::sum_of(&parts).called("A_all").of_kind(Kind::Area)),
        }
    }

    fn add_body(&mut self, sheet: &PaintSheet, vehicle: &VehicleSheet, found: &mut Found) {
        let length = body_size(&sheet.body_length, &vehicle.length);
        let width = body_size(&sheet.body_width, &vehicle.width);
        let height = body_height(sheet, vehicle);
        let sizes = (length, width, height).all();
        let area = (
            sizes.clone(),
            sheet.body_share.ask(),
            sheet.body_edges.ask(),
        )
            .all()
            .map(|((length, width, height), share, edges)| {
                let sheet_metal = box_area(&length, &width, &height, share);
                (sheet_metal * (1.0 + edges))
                    .called("A_body")
                    .of_kind(Kind::Area)
            });
        found.show("paint/area/body", Kind::Area, &area);
        let system = system_of(sheet, &sheet.body_system);
        if let (Ok((length, width, height)), Ok(system)) = (&sizes, &system) {
            let (length, width, height) = (length.value(), width.value(), height.value());
            let views = [
                (Seen::BodySide, rectangle_outline(length, height), 2.0),
                (Seen::BodyEnd, rectangle_outline(width, height), 2.0),
                (Seen::BodyRoof, rectangle_outline(length, width), 1.0),
            ];
            self.elevations
                .extend(views.map(|(what, outline, faces)| Elevation {
                    what,
                    outline,
                    openings: Vec::new(),
                    faces,
                    shapeless: false,
                    system: *system,
                    area: None,
                }));
        }
        self.painted.push(Painted { system, area });
    }

    fn add_panel(&mut self, sheet: &PaintSheet, panel: &PaintPanel, found: &mut Found) {
        let shape = shape_area(panel);
        let cut: Result<Vec<Area>, Lack> = panel.openings.iter().map(opening_area).collect();
        let faces = match panel.faces.value() {
            Some(&"both") => Faces::Both,
            _ => Faces::One,
        };
        let area = (shape, cut, panel.edges.ask(), panel.count.ask())
            .all()
            .and_then(|(shape, cut, edges, count)| {
                painted_area(&shape, &cut, faces, edges, count).map_err(Lack::from)
            });
        if let Some(error) = area.as_ref().err().and_then(Lack::refusal) {
            found.remark(Remark::new(Rank::Caution, "panel_refused").at(at_fault(panel, error)));
        }
        found.show(joined(&["paint/area", panel.id()]), Kind::Area, &area);
        let system = system_of(sheet, &panel.system);
        if let (Some((outline, shapeless)), Ok(system)) = (panel_outline(panel), &system) {
            let count = panel.count.value().map_or(1.0, Ratio::value);
            self.elevations.push(Elevation {
                what: Seen::Panel(panel.id().into()),
                outline,
                openings: panel.openings.iter().flat_map(opening_outlines).collect(),
                faces: count * if faces == Faces::Both { 2.0 } else { 1.0 },
                shapeless,
                system: *system,
                area: area.as_ref().ok().map(|area| area.figure(Kind::Area)),
            });
        }
        // A row that was only just added takes nothing away from the others.
        if !(area.as_ref().is_err_and(Lack::is_blank) && untouched(panel)) {
            self.painted.push(Painted { system, area });
        }
    }
}

/// The key of the entry that a refusal speaks of.
fn at_fault(panel: &PaintPanel, error: &TradeError) -> Key {
    match error {
        TradeError::OutOfRange {
            entry: "opening", ..
        } => panel.key.under("openings"),
        TradeError::OutOfRange { entry, .. } => panel.key.under(entry),
        _ => panel.key.under("corners"),
    }
}

/// The place of the system that an entry names.
pub(super) fn system_of(sheet: &PaintSheet, named: &Given<Rc<str>>) -> Result<usize, Lack> {
    match named.value() {
        None => Ok(0),
        Some(id) => sheet
            .systems
            .iter()
            .position(|system| system.id() == &**id)
            .ok_or_else(|| Lack::entry(named.key().clone())),
    }
}

fn body_size(own: &Given<Length>, vehicle: &Given<Length>) -> Result<Length, Lack> {
    if own.is_blank()
        && let Some(size) = vehicle.value()
    {
        return Ok(size.clone());
    }
    own.ask().cloned()
}

fn body_height(sheet: &PaintSheet, vehicle: &VehicleSheet) -> Result<Length, Lack> {
    if sheet.body_height.is_blank()
        && let Some(height) = vehicle.height.value()
    {
        return sheet
            .sill
            .ask()
            .map(|sill| (height - sill).called("H").of_kind(Kind::Length));
    }
    sheet.body_height.ask().cloned()
}

fn shape_area(panel: &PaintPanel) -> Result<Area, Lack> {
    let (length, height) = (panel.length.ask(), panel.height.ask());
    match *panel.shape.ask()? {
        "trapezium" => (length, panel.top.ask(), height)
            .all()
            .map(|(length, top, height)| trapezium_area(length, top, height)),
        "curved" => {
            let (chord, rise, length) = (panel.chord.ask(), panel.rise.ask(), length).all()?;
            Ok(curved_area(chord, rise, length)?)
        }
        "tube" => (panel.diameter.ask(), length)
            .all()
            .map(|(diameter, length)| tube_area(diameter, length)),
        "disc" => panel.diameter.ask().map(disc_area),
        "corners" => Ok(corners(panel)?.area()),
        "known" => panel.area.ask().cloned(),
        _ => (length, height)
            .all()
            .map(|(length, height)| rectangle_area(length, height)),
    }
}

fn corners(panel: &PaintPanel) -> Result<Corners, Lack> {
    let mut corners = Vec::new();
    let mut lack: Option<Lack> = None;
    for corner in &panel.corners {
        match (corner.x.ask(), corner.y.ask()).all() {
            Ok((x, y)) => corners.push((x.clone(), y.clone())),
            Err(new) => {
                lack = Some(match lack {
                    Some(old) => old.and(new),
                    None => new,
                });
            }
        }
    }
    match lack {
        Some(lack) => Err(lack),
        None if corners.len() < 3 => Err(Lack::needs([panel.key.under("corners")])),
        None => Ok(Corners::new(corners)?),
    }
}

fn opening_area(opening: &PaintOpening) -> Result<Area, Lack> {
    let one = match *opening.shape.ask()? {
        "disc" => disc_area(opening.diameter.ask()?),
        "known" => opening.area.ask()?.clone(),
        _ => {
            let (length, height) = (opening.length.ask(), opening.height.ask()).all()?;
            rectangle_area(length, height)
        }
    };
    let count = opening.count.ask()?;
    Ok((count * one).called("A_opening").of_kind(Kind::Area))
}

fn size(given: &Given<Length>) -> Option<f64> {
    given.value().map(Length::value)
}

/// The outline of a panel, and whether it only stands for an area.
fn panel_outline(panel: &PaintPanel) -> Option<(Outline, bool)> {
    let rectangle = |length, height| Some((rectangle_outline(length, height), false));
    match *panel.shape.value()? {
        "trapezium" => Some((
            trapezium_outline(
                size(&panel.length)?,
                size(&panel.top)?,
                size(&panel.height)?,
            ),
            false,
        )),
        "curved" | "tube" => {
            // Laid flat, its other side is its area by its length.
            let length = size(&panel.length)?;
            rectangle(length, shape_area(panel).ok()?.value() / length)
        }
        "disc" => Some((disc_outline(size(&panel.diameter)?), false)),
        "corners" => {
            let points: Option<Vec<_>> = panel
                .corners
                .iter()
                .map(|at| Some([size(&at.x)?, size(&at.y)?]))
                .collect();
            points
                .filter(|points| points.len() > 2)
                .map(|points| (traced_outline(&points), false))
        }
        "known" => {
            let side = panel.area.value()?.value().sqrt();
            Some((rectangle_outline(side, side), true))
        }
        _ => rectangle(size(&panel.length)?, size(&panel.height)?),
    }
}

fn opening_outlines(opening: &PaintOpening) -> Vec<Outline> {
    let outline = match opening.shape.value() {
        Some(&"disc") => size(&opening.diameter).map(disc_outline),
        Some(&"known") => opening
            .area
            .value()
            .map(|area| area.value().sqrt())
            .map(|side| rectangle_outline(side, side)),
        _ => size(&opening.length)
            .zip(size(&opening.height))
            .map(|(length, height)| rectangle_outline(length, height)),
    };
    let count = opening
        .count
        .value()
        .map_or(1.0, Ratio::value)
        .clamp(1.0, 12.0);
    outline
        .map(|outline| vec![outline; count as usize])
        .unwrap_or_default()
}

/// Whether none of a panel's sizes was typed.
fn untouched(panel: &PaintPanel) -> bool {
    let sizes = [
        &panel.length,
        &panel.height,
        &panel.top,
        &panel.chord,
        &panel.rise,
        &panel.diameter,
    ];
    sizes.iter().all(|size| size.is_blank()) && panel.area.is_blank() && panel.corners.is_empty()
}
