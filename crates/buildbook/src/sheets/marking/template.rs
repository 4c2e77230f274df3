//! The template of the pattern as it goes on the new side.

use std::f64::consts::FRAC_PI_2;

use ::trade::marking::{Placed, Point, Shape};
use measure::{Length, Ratio};

use super::{Edge, MarkingFindings};
use crate::templates::{Feature, For, Part, Template};

/// What only the reader's language can say of a template.
pub struct Said<'a> {
    /// What it is a template of.
    pub title: String,
    /// Lines of text beneath.
    pub lines: Vec<String>,
    /// What stands on the line from A to B, by how far they are apart.
    pub datum_line: &'a dyn Fn(&Length) -> String,
    /// A feature's name, by its place in the list.
    pub name: &'a dyn Fn(usize) -> String,
    /// The size of a shape, as the trade writes it.
    pub size: &'a dyn Fn(&Shape) -> String,
}

/// The template of what is set out, for the purpose that was chosen; none before anything has a place on the new side.
#[must_use]
pub fn template(findings: &MarkingFindings, said: Said<'_>) -> Option<Template> {
    let (sheet, moved) = (&findings.sheet, &findings.moved);
    let from = moved.from.as_ref().ok()?;
    let nothing = Length::exact(0.0);
    let kerf = sheet.cutter_kerf.value().unwrap_or(&nothing);
    let placed = moved.features.iter().enumerate();
    let placed = placed.filter_map(|(place, goes)| Some((place, goes.placed.as_ref().ok()?)));
    let features: Vec<Feature> = placed
        .map(|(place, placed)| {
            feature(placed, (said.name)(place), (said.size)(&placed.shape), kerf)
        })
        .collect();
    if features.is_empty() {
        return None;
    }
    let pieces = pieces(findings, &said, kerf);
    let there = findings.there.iter();
    let there = there.filter(|(_, placed)| features.iter().any(|one| beside(one, placed)));
    let there = there.map(|(name, placed)| Feature {
        part: Part::There,
        ..feature(placed, name.to_string(), String::new(), &nothing)
    });
    let purpose = match sheet.template_for.value() {
        Some(&"spraying") => For::Spraying,
        Some(&"punching") => For::Punching,
        _ => For::Marking,
    };
    Some(Template {
        title: said.title,
        lines: said.lines,
        purpose,
        up: up(findings),
        from_behind: sheet.template_seen.value() == Some(&"behind"),
        datums: ["A\u{2032}", "B\u{2032}", "C\u{2032}", "D\u{2032}"]
            .into_iter()
            .zip(from.iter().chain(&moved.others))
            .map(|(name, at)| (name.to_owned(), at.values()))
            .collect(),
        datum_line: (said.datum_line)(&from[0].distance(&from[1])),
        centre_line: moved
            .centre
            .as_ref()
            .map(|ends| ends.each_ref().map(|end| end.values())),
        edges: edges(findings, from),
        pieces,
        features: features.iter().cloned().chain(there).collect(),
    })
}

/// The direction that is up on the vehicle, from the line A'-B', radians. On the other hand above that line is below nothing.
fn up(findings: &MarkingFindings) -> f64 {
    let lean = findings.sheet.datum_lean.value().map_or(0.0, Ratio::value);
    let up = FRAC_PI_2 - lean;
    if findings.moved.mirrors { -up } else { up }
}

/// An edge stands on a template where a feature or a datum lies as near to it as this, metres; what is there already, where a feature does.
const NEAR: f64 = 0.15;

fn beside(feature: &Feature, placed: &Placed) -> bool {
    let (own, other) = (feature.outline.bounds(), placed.outline().bounds());
    (0..2)
        .all(|axis| own[0][axis] - NEAR <= other[1][axis] && other[0][axis] <= own[1][axis] + NEAR)
}

/// The edges of the sheet metal beside the pattern, each as far as the pattern goes.
fn edges(findings: &MarkingFindings, from: &[Point; 2]) -> Vec<[[f64; 2]; 2]> {
    let goes = findings.moved.features.iter();
    let places = goes.filter_map(|goes| Some(goes.at.as_ref().ok()?.values()));
    let places: Vec<[f64; 2]> = places.chain(from.iter().map(Point::values)).collect();
    let beside = |edge: &Edge| {
        let [[ax, ay], [bx, by]] = edge.ends.each_ref().map(Point::values);
        let long = (bx - ax).hypot(by - ay);
        let (ux, uy) = ((bx - ax) / long, (by - ay) / long);
        let off = |[x, y]: &[f64; 2]| (ux * (y - ay) - uy * (x - ax)).abs();
        let along = |[x, y]: &[f64; 2]| ux * (x - ax) + uy * (y - ay);
        let near = places.iter().any(|at| off(at) <= NEAR);
        let ends = [
            places.iter().map(along).fold(f64::INFINITY, f64::min),
            places.iter().map(along).fold(f64::NEG_INFINITY, f64::max),
        ];
        near.then(|| ends.map(|far| [ax + far * ux, ay + far * uy]))
    };
    findings.edges.iter().filter_map(beside).collect()
}

fn feature(placed: &Placed, name: String, size: String, kerf: &Length) -> Feature {
    let cut = placed.shape.is_cut();
    Feature {
        name,
        size,
        part: if cut { Part::Cut } else { Part::Marked },
        outline: placed.outline(),
        cut: placed.offset(&(kerf / -2.0)).ok().filter(|_| cut),
        centre: placed.at.values(),
        turn: placed.turn.value(),
        spots: placed.spots(),
    }
}

/// The pieces that close the old holes: each hole less the weld gap, and the cutter's middle half a kerf outside it.
fn pieces(
    findings: &MarkingFindings,
    said: &Said<'_>,
    kerf: &Length,
) -> Vec<(String, ::trade::marking::Outline)> {
    let sheet = &findings.sheet;
    let Some(gap) = sheet.weld_gap.value() else {
        return Vec::new();
    };
    let shapes = findings.taken.features.iter().enumerate();
    shapes
        .filter_map(|(place, fixed)| {
            let shape = fixed.shape.as_ref().ok().filter(|shape| shape.is_cut())?;
            let way = shape.offset(&(kerf / 2.0 - gap)).ok()?;
            Some(((said.name)(place), way))
        })
        .collect()
}
