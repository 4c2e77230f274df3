//! What to strike the pattern with on the new side: arcs, offsets, and the land that is left.

use std::rc::Rc;

use ::trade::marking::{Body, Form, LandVerdict, Placed, Point};
use ::trade::marking::{arcs, land_between, left_between, offsets, swing, usual_land};
use measure::{Kind, Length};

use super::edges::{self, Edge};
use super::moving::{Goes, Moved};
use super::take_off::{Curve, TakenOff};
use super::{FeatureEntry, MarkingSheet};
use crate::key::joined;
use crate::{All, Found, Given, Key, Lack, Rank, Remark};

/// Shows all that the pattern is set out with; what is on the new side already, by name.
pub(super) fn show(
    sheet: &MarkingSheet,
    taken: &TakenOff,
    (moved, edges): (&Moved, &[Edge]),
    found: &mut Found,
) -> Vec<(Rc<str>, Placed)> {
    show_line(moved, found);
    let curve = Curve::of(sheet);
    let rows = sheet
        .features
        .iter()
        .zip(&taken.features)
        .zip(&moved.features);
    for (place, ((feature, fixed), placed)) in rows.enumerate() {
        let id = feature.id();
        let coordinate = |of: fn(&Point) -> &Length| {
            fixed
                .fix
                .as_ref()
                .map(|fix| of(&fix.at).clone())
                .map_err(Clone::clone)
        };
        let struck = (placed.at.clone(), moved.from.clone()).all();
        let arcs = struck.clone().and_then(|(at, from)| {
            let [a, b] = arcs(&from, &at);
            Ok([curve.as_taken(&a)?, curve.as_taken(&b)?])
        });
        let offsets = struck.map(|(at, from)| {
            let [along, across] = offsets(&from, &at);
            [along, if moved.mirrors { -across } else { across }]
        });
        let one = |pair: &Result<[Length; 2], Lack>, i: usize| {
            pair.as_ref()
                .map(|pair| pair[i].clone())
                .map_err(Clone::clone)
        };
        for (i, name) in ["arc_a", "arc_b"].into_iter().enumerate() {
            let id = joined(&["marking", name, id]);
            if place == 0 {
                found.headline(id, Kind::Length, &one(&arcs, i));
            } else {
                found.show(id, Kind::Length, &one(&arcs, i));
            }
        }
        for (i, name) in ["along", "across"].into_iter().enumerate() {
            found.show(
                joined(&["marking", name, id]),
                Kind::Length,
                &one(&offsets, i),
            );
        }
        found.show(
            joined(&["marking/x", id]),
            Kind::Length,
            &coordinate(|at| &at.x),
        );
        found.show(
            joined(&["marking/y", id]),
            Kind::Length,
            &coordinate(|at| &at.y),
        );
        if let (true, Some(mirrored), Some(fitted)) =
            (moved.mirrors, &placed.mirrored, &placed.fitted)
        {
            let differs = Ok(mirrored.distance(fitted));
            found.show(joined(&["marking/differs", id]), Kind::Length, &differs);
        }
        cross(moved, feature, placed, found);
    }
    lands(sheet, moved, edges, found)
}

/// The vehicle's centre line: how far from A it crosses A–B.
fn show_line(moved: &Moved, found: &mut Found) {
    if let Some(line) = &moved.line {
        let at = Ok((&line.offset / line.normal.cos()).of_kind(Kind::Length));
        found.show("marking/centre", Kind::Length, &at);
        for ((key, _), rest) in moved.pairs.iter().zip(&line.residuals) {
            let id = joined(&["marking/pair", key.field()]);
            found.show(id, Kind::Length, &Ok(rest.clone()));
        }
    }
}

/// Arcs that cross at a flat angle place a hole badly: 30°. Common practice, no source.
const FLAT: f64 = std::f64::consts::FRAC_PI_6;

fn cross(moved: &Moved, feature: &FeatureEntry, placed: &Goes, found: &mut Found) {
    if let (Ok(from), Ok(at)) = (&moved.from, &placed.at) {
        let swing = swing(from, at);
        let angle = swing.value() % std::f64::consts::PI;
        if angle.min(std::f64::consts::PI - angle) < FLAT {
            let remark = Remark::new(Rank::Remark, "flat_crossing").at(feature.key.under("a"));
            let flat = match angle < FLAT {
                true => swing,
                false => (std::f64::consts::PI - swing).of_kind(Kind::Angle),
            };
            found.remark(remark.with(flat.figure(Kind::Angle)));
        }
    }
}

/// Something that takes room on the new side.
struct Room {
    key: Key,
    name: Rc<str>,
    placed: Placed,
    body: Body,
    /// How far it reaches at most from its place, metres.
    reach: f64,
    own: bool,
}

impl Room {
    fn new(key: &Key, name: &Given<Rc<str>>, place: usize, placed: Placed, own: bool) -> Self {
        let shape = &placed.shape;
        let corners = shape.outline().corners;
        let far = corners
            .iter()
            .map(|corner| corner.at[0].hypot(corner.at[1]));
        // A slot's ends bulge beyond its corners.
        let long = match shape.form() {
            Form::Slot => shape.sizes()[0].value() / 2.0,
            _ => 0.0,
        };
        Self {
            key: key.clone(),
            // What a row was called, else its place in the list.
            name: match name.value() {
                Some(name) => Rc::clone(name),
                None => (place + 1).to_string().into(),
            },
            reach: far.fold(long, f64::max),
            body: Body::here(&placed),
            placed,
            own,
        }
    }

    /// What is left between the circles about two, metres: never more than what is left between themselves.
    fn gap(&self, other: &Self) -> f64 {
        let [[ax, ay], [bx, by]] = [self, other].map(|room| room.placed.at.values());
        (ax - bx).hypot(ay - by) - self.reach - other.reach
    }

    fn smaller(&self, other: &Self) -> Length {
        Length::exact(2.0 * self.reach.min(other.reach))
    }
}

/// Which of the others is the nearest to one, and about how much is left between the two, metres. That is asked for only where the circles about them come
/// nearer than what is left to the one whose circle comes nearest.
fn nearest(rooms: &[Room], one: usize) -> Option<(usize, f64)> {
    let gap = |which: usize| rooms[one].gap(&rooms[which]);
    let left = |which: usize| rooms[one].body.left(&rooms[which].body);
    let others = || (0..rooms.len()).filter(|which| *which != one);
    let first = others().min_by(|a, b| gap(*a).total_cmp(&gap(*b)))?;
    let mut found = (first, left(first));
    for which in others().filter(|which| *which != first) {
        if gap(which) < found.1 {
            let left = left(which);
            if left < found.1 {
                found = (which, left);
            }
        }
    }
    Some(found)
}

/// What leaves twice the least land and this much more is clear, metres: no ± that a tape leaves could make a question of it.
pub(super) const CLEAR: f64 = 0.01;

/// The least land of each feature: to other features, to what is there, to the edge. What is there comes back by name.
fn lands(
    sheet: &MarkingSheet,
    moved: &Moved,
    edges: &[Edge],
    found: &mut Found,
) -> Vec<(Rc<str>, Placed)> {
    let goes = sheet.features.iter().zip(&moved.features).enumerate();
    let mut rooms: Vec<Room> = goes
        .filter_map(|(place, (feature, goes))| {
            let placed = goes.placed.clone().ok()?;
            Some(Room::new(&feature.key, &feature.name, place, placed, true))
        })
        .collect();
    let there = moved.there.iter().enumerate();
    rooms.extend(there.map(|(place, (row, placed))| {
        let row = &sheet.there[*row];
        Room::new(&row.key, &row.name, place, placed.clone(), false)
    }));
    for (i, room) in rooms.iter().enumerate().filter(|(_, room)| room.own) {
        let Some((j, left)) = nearest(&rooms, i) else {
            continue;
        };
        let other = &rooms[j];
        let least = match sheet.land.value() {
            Some(least) => least.clone(),
            None => usual_land(&room.smaller(other)),
        };
        let id = joined(&["marking/land", room.key.field()]);
        if left > 2.0 * least.value() + CLEAR {
            // The ± is not asked for.
            let left = left_between(&room.placed, &other.placed);
            found.show(id, Kind::Length, &Ok(left));
            continue;
        }
        let land = land_between(&room.placed, &other.placed, &least);
        found.show(id, Kind::Length, &Ok(land.left.clone()));
        let (rank, fact) = match (land.verdict, other.own) {
            (LandVerdict::Enough, _) => continue,
            (LandVerdict::Doubtful, _) => (Rank::Caution, "land_doubtful"),
            (LandVerdict::Short, _) => (Rank::Caution, "land_short"),
            (LandVerdict::Clash, true) => (Rank::Warning, "holes_clash"),
            (LandVerdict::Clash, false) => (Rank::Warning, "clash_with_there"),
        };
        // Of two features that are each other's nearest the first one speaks for both.
        if other.own && j < i && nearest(&rooms, j).is_some_and(|(k, _)| k == i) {
            continue;
        }
        let remark = Remark::new(rank, fact).at(room.key.under("name"));
        let [left, least] = [land.left, least].map(|length| length.figure(Kind::Length));
        found.remark(remark.with(left).with(least).naming(Rc::clone(&other.name)));
    }
    for feature in &sheet.features {
        if let Some(room) = rooms.iter().find(|room| room.key == feature.key) {
            let across = Length::exact(2.0 * room.reach);
            edges::show(sheet, edges, (feature, &room.placed, &across), found);
        }
    }
    let there = rooms.into_iter().filter(|room| !room.own);
    there.map(|room| (room.name, room.placed)).collect()
}
