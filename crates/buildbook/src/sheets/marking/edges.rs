//! Edges of the sheet metal on the new side: as lines, and the land that is left to them.

use std::rc::Rc;

use ::trade::TradeError;
use ::trade::marking::{LandVerdict, Placed, Point};
use ::trade::marking::{judged, land, left_to_edge, usual_edge};
use measure::Length;

use super::moving::{Moved, NewSide};
use super::set_out::CLEAR;
use super::take_off::Curve;
use super::{EdgeEntry, FeatureEntry, MarkingSheet};
use crate::key::joined;
use crate::{Found, Key, Rank, Remark};

/// A straight edge of the sheet metal on the new side.
#[derive(Debug, Clone)]
pub struct Edge {
    /// Its row.
    pub key: Key,
    /// What it was called.
    pub name: Option<Rc<str>>,
    /// Two points of it.
    pub ends: [Point; 2],
    /// A datum that lies on the sheet metal.
    metal: Point,
}

/// The edges that can be placed; one that cannot is told at its last entry.
pub(super) fn edges(sheet: &MarkingSheet, moved: &Moved, found: &mut Found) -> Vec<Edge> {
    let Ok(from) = &moved.from else {
        return Vec::new();
    };
    let side = NewSide {
        from,
        mirrors: moved.mirrors,
        curve: Curve::of(sheet),
    };
    let rows = sheet.edges.iter();
    rows.filter_map(|row| {
        let (ends, last) = if row.by.value() == Some(&"two_points") {
            (by_points(row, &side)?, &row.two_b)
        } else {
            (Ok(by_offsets(row, &side)?), &row.off_a)
        };
        let placed = ends.and_then(|ends| {
            // The datums lie on the sheet metal; one that lies on the edge does not tell on which side.
            let [one, two] = from.each_ref().map(|at| off(&ends, at));
            let metal = if one >= two { &from[0] } else { &from[1] };
            if one.max(two) > 1e-6 {
                Ok((ends, metal.clone()))
            } else {
                Err(TradeError::Undetermined { entry: "edge" })
            }
        });
        match placed {
            Ok((ends, metal)) => Some(Edge {
                key: row.key.clone(),
                name: row.name.value().cloned(),
                ends,
                metal,
            }),
            Err(error) => {
                found.errors.push((last.key().clone(), error.into()));
                None
            }
        }
    })
    .collect()
}

/// How far a point lies off the line through two others, metres.
fn off([a, b]: &[Point; 2], at: &Point) -> f64 {
    let [[ax, ay], [bx, by], [x, y]] = [a, b, at].map(Point::values);
    let long = (bx - ax).hypot(by - ay);
    (((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / long).abs()
}

fn by_offsets(row: &EdgeEntry, side: &NewSide<'_>) -> Option<[Point; 2]> {
    let at_a = row.off_a.value()?;
    let at_b = row.off_b.value().unwrap_or(at_a);
    let sign = side.above(&row.side).sign();
    let across = |at: &Point, off: &Length| Point {
        x: at.x.clone(),
        y: &at.y + off * sign,
    };
    Some([across(&side.from[0], at_a), across(&side.from[1], at_b)])
}

fn by_points(row: &EdgeEntry, side: &NewSide<'_>) -> Option<Result<[Point; 2], TradeError>> {
    let one = side.place([&row.one_a, &row.one_b], &row.side)?;
    let two = side.place([&row.two_a, &row.two_b], &row.two_side)?;
    Some(one.and_then(|one| {
        let two = two?;
        // Two points in one place give no line.
        if one.distance(&two).value() < 1e-6 {
            return Err(TradeError::Undetermined { entry: "edge" });
        }
        Ok([one, two])
    }))
}

/// The land of a feature to the edge that is nearest, typed or reckoned: against what was asked for, else what is usual.
pub(super) fn show(
    sheet: &MarkingSheet,
    edges: &[Edge],
    (feature, placed, across): (&FeatureEntry, &Placed, &Length),
    found: &mut Found,
) {
    let least = match sheet.land.value() {
        Some(least) => least.clone(),
        None => usual_edge(across),
    };
    let typed = feature.edge.value().map(|edge| {
        let nothing = Length::exact(0.0);
        let at = Point {
            x: edge.clone(),
            y: nothing.clone(),
        };
        let rim = (&Point::exact(0.0, 0.0), &nothing);
        (land((&at, across), rim, &least).left, None)
    });
    let reckoned = edges.iter().map(|edge| {
        let left = left_to_edge(placed, &edge.ends, &edge.metal);
        (left, Some(edge))
    });
    let nearest = typed
        .into_iter()
        .chain(reckoned)
        .min_by(|a, b| a.0.value().total_cmp(&b.0.value()));
    let Some((left, edge)) = nearest else { return };
    let id = joined(&["marking/edge", feature.id()]);
    found.show(id, measure::Kind::Length, &Ok(left.clone()));
    if left.value() > 2.0 * least.value() + CLEAR {
        return;
    }
    let land = judged(left, &least);
    let rank = match land.verdict {
        LandVerdict::Enough => return,
        LandVerdict::Clash => Rank::Warning,
        _ => Rank::Caution,
    };
    let fact = match land.verdict {
        LandVerdict::Clash => "over_the_edge",
        LandVerdict::Doubtful => "edge_doubtful",
        _ => "edge_short",
    };
    let at = match edge {
        None => feature.edge.key().clone(),
        Some(_) => feature.key.under("name"),
    };
    let remark = Remark::new(rank, fact).at(at);
    let [left, least] = [land.left, least].map(|length| length.figure(measure::Kind::Length));
    let remark = remark.with(left).with(least);
    found.remark(remark);
}
