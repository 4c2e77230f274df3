//! What a feature is, with its sizes.

use ::trade::marking::{Shape, slanted_length};
use measure::{Length, Ratio};

use super::{FeatureEntry, MarkingSheet};
use crate::{All, Found, Lack};

/// The shape of a feature; one that its sizes do not make is told at the last of them.
pub(super) fn of(
    sheet: &MarkingSheet,
    feature: &FeatureEntry,
    found: &mut Found,
) -> Result<Shape, Lack> {
    let (diameter, length, width) = (
        feature.diameter.ask().cloned(),
        feature.length.ask().cloned(),
        feature.width.ask().cloned(),
    );
    let (shape, last) = match feature.kind.value().copied().unwrap_or("round") {
        "slot" => {
            let (length, width) = (length, width).all()?;
            (Shape::slot(length, width), &feature.width)
        }
        "rectangle" => {
            let (length, width, corner) = (length, width, feature.corner.ask().cloned()).all()?;
            (Shape::rectangle(length, width, corner), &feature.corner)
        }
        "corner" => {
            let (length, width) = (length, width).all()?;
            (Shape::bracket(length, width), &feature.width)
        }
        "d_hole" => {
            let (diameter, across) = (diameter, width).all()?;
            (Shape::d_hole(diameter, across), &feature.width)
        }
        "tube" => {
            let (tube, slant) = (diameter, feature.slant.ask()).all()?;
            let nothing = Length::exact(0.0);
            let sheet = sheet.sheet.value().unwrap_or(&nothing);
            (oval(&tube, sheet, slant), &feature.diameter)
        }
        "outline" => {
            let corners = feature
                .points
                .iter()
                .map(|point| (point.x.ask().cloned(), point.y.ask().cloned()).all());
            let corners: Vec<[Length; 2]> = corners
                .map(|corner| corner.map(|(x, y)| [x, y]))
                .collect::<Result<_, _>>()?;
            if corners.len() < 3 {
                return Err(Lack::needs([feature.key.under("points")]));
            }
            (Shape::free(corners), &feature.diameter)
        }
        "stud" => (Shape::stud(diameter?), &feature.diameter),
        _ => (Shape::round(diameter?), &feature.diameter),
    };
    shape.map_err(|error| {
        let at = feature.points.last().map_or(last, |point| &point.x);
        found.errors.push((at.key().clone(), error.clone().into()));
        error.into()
    })
}

/// The oval that a tube needs where it passes the sheet metal at a slant.
fn oval(tube: &Length, sheet: &Length, slant: &Ratio) -> Result<Shape, ::trade::TradeError> {
    Shape::oval(slanted_length(tube, sheet, slant)?, tube.clone())
}
