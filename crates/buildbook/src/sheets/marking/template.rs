//! The template of the pattern as it goes on the new side.

use std::f64::consts::FRAC_PI_2;

use ::trade::marking::{Placed, Shape};
use measure::Length;

use super::MarkingFindings;
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
    let there = findings.there.iter().map(|(name, placed)| Feature {
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
        // On the other hand above the line A'-B' is below nothing.
        up: if moved.mirrors { -FRAC_PI_2 } else { FRAC_PI_2 },
        from_behind: sheet.template_seen.value() == Some(&"behind"),
        datums: ["A\u{2032}", "B\u{2032}"]
            .into_iter()
            .zip(from)
            .map(|(name, at)| (name.to_owned(), at.values()))
            .collect(),
        datum_line: (said.datum_line)(&from[0].distance(&from[1])),
        centre_line: moved
            .centre
            .as_ref()
            .map(|ends| ends.each_ref().map(|end| end.values())),
        edges: Vec::new(),
        pieces,
        features: features.into_iter().chain(there).collect(),
    })
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
