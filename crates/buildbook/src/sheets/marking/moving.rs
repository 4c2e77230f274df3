//! Where the pattern goes: mirrored in the vehicle's centre line, fitted to the new side's datums, or shifted.

use ::trade::TradeError;
use ::trade::marking::{Fit, MirrorLine, Move, Placed, Point, Shape, Side, Sight};
use ::trade::marking::{fix, mirror_line, rigid_fit};
use measure::{Kind, Length, Ratio};

use super::take_off::{Curve, Fixed, LETTERS, TakenOff, other, placed_datums, side};
use super::{FeatureEntry, MarkingSheet, PairEntry, ThereEntry};
use crate::{All, Found, Given, Key, Lack};

/// Where the features go. Places are those of the side they are set out on: x from its A to its B.
#[derive(Debug, Clone)]
pub struct Moved {
    /// The vehicle's centre line, on the side the pattern was taken off, where pairs of points give it.
    pub line: Option<MirrorLine>,
    /// The pairs it rests on, by their rows: the point and its twin.
    pub pairs: Vec<(Key, [Point; 2])>,
    /// Two points of the vehicle's centre line as the new side's datums see it, where the pattern is mirrored in it.
    pub centre: Option<[Point; 2]>,
    /// Where A and B of the new side lie as seen from the old datums, where both were measured across the vehicle.
    pub twins: Option<[Point; 2]>,
    /// The datums to set out from.
    pub from: Result<[Point; 2], Lack>,
    /// The datums of the new side after those two, in their order: as measured there, else where the move takes them.
    pub others: Vec<Point>,
    /// Whether the new side is the other hand: its A stands to the right of its B, and above the line is below nothing.
    pub mirrors: bool,
    /// How the new side's datums fit the old ones.
    pub fit: Option<Fit>,
    /// The features, row by row.
    pub features: Vec<Goes>,
    /// What is on the new side already, by its place in the list.
    pub there: Vec<(usize, Placed)>,
}

/// Where one feature goes.
#[derive(Debug, Clone)]
pub struct Goes {
    /// Mirrored.
    pub mirrored: Option<Point>,
    /// Fitted to the new side's datums.
    pub fitted: Option<Point>,
    /// As it was chosen.
    pub at: Result<Point, Lack>,
    /// How it is turned and mirrored there, where its sizes are known.
    pub placed: Result<Placed, Lack>,
    /// Whether it belongs to a handed part, and so keeps its own hand.
    pub kept: bool,
}

impl Goes {
    fn nowhere(lack: &Lack) -> Self {
        Self {
            mirrored: None,
            fitted: None,
            at: Err(lack.clone()),
            placed: Err(lack.clone()),
            kept: false,
        }
    }
}

pub(super) fn moved(sheet: &MarkingSheet, taken: &TakenOff, found: &mut Found) -> Moved {
    let by = sheet.move_by.value().copied().unwrap_or("mirror");
    let mirrors = matches!(by, "mirror" | "fit");
    let pairs: Vec<_> = sheet
        .pairs
        .iter()
        .filter_map(|pair| Some((pair.key.clone(), pair_of(sheet, pair, taken, found)?)))
        .collect();
    let line = line(&pairs, found);
    let twins = twins(sheet, &pairs);
    let new = new_datums(sheet, by != "fit_plain", found);
    let fit = taken
        .datums
        .as_ref()
        .ok()
        .zip(new.as_ref().ok())
        .and_then(|(old, new)| rigid_fit(old, new, by != "fit_plain").ok());
    let mirror = mirror(line.as_ref(), twins.as_ref());
    let from = match by {
        "fit" | "fit_plain" => new.as_ref().map_err(Clone::clone).and_then(|new| two(new)),
        "shift" => old_datums(taken),
        _ => old_datums(taken).map(|old| match &twins {
            Some([a, b]) => base(a.distance(b)),
            None => old,
        }),
    };
    let chosen: Result<Move, Lack> = match by {
        "fit" | "fit_plain" => match (&fit, &new) {
            (Some(fit), _) => Ok(fit.by.clone()),
            (None, Err(lack)) => Err(lack.clone()),
            (None, Ok(_)) => Err(Lack::needs([sheet.new_ab.key().clone()])),
        },
        "shift" => (sheet.shift_along.ask(), sheet.shift_across.ask())
            .all()
            .map(|(along, across)| Move::shift(along.clone(), across.clone())),
        _ => Ok(mirror.clone()),
    };
    let centre = line.as_ref().filter(|_| by == "mirror").map(|line| {
        // The line is its own image: its points stay, and are only seen from the new datums.
        let (cos, sin) = (line.normal.cos(), line.normal.sin());
        [-1.0, 1.0].map(|side| {
            let along = Length::exact(side);
            mirror.of(&Point {
                x: &line.offset * &cos - &along * &sin,
                y: &line.offset * &sin + &along * &cos,
            })
        })
    });
    let goes = |(feature, fixed): (&FeatureEntry, &Fixed)| match &fixed.fix {
        Err(lack) => Goes::nowhere(lack),
        Ok(fix) => Goes {
            mirrored: Some(mirror.of(&fix.at)),
            fitted: fit.as_ref().map(|fit| fit.by.of(&fix.at)),
            at: chosen.clone().map(|by| by.of(&fix.at)),
            placed: placed(feature, fixed, &fix.at).and_then(|placed| {
                let by = chosen.as_ref().map_err(Clone::clone)?;
                Ok(placed.moved(by))
            }),
            kept: false,
        },
    };
    let rows = sheet.features.iter().zip(&taken.features);
    let mut features: Vec<Goes> = rows.map(goes).collect();
    if mirrors {
        keep_handed_parts(sheet, taken, &mut features);
    }
    let there = there(sheet, &from, mirrors, found);
    let others = match (&new, &taken.datums, &chosen) {
        (Ok(new), ..) if by != "shift" => new[2..].to_vec(),
        // A pattern that is shifted is laid on by the old datums themselves.
        (_, Ok(old), _) if by == "shift" => old[2..].to_vec(),
        (_, Ok(old), Ok(by)) => old[2..].iter().map(|at| by.of(at)).collect(),
        _ => Vec::new(),
    };
    Moved {
        others,
        there,
        line,
        pairs,
        centre,
        twins,
        from,
        mirrors,
        fit,
        features,
    }
}

/// A feature in its place on the side it was taken off.
fn placed(feature: &FeatureEntry, fixed: &Fixed, at: &Point) -> Result<Placed, Lack> {
    let (shape, turn) = (fixed.shape.clone(), feature.turn.ask()).all()?;
    Ok(Placed::new(shape, at.clone(), turn.clone()))
}

fn base(length: Length) -> [Point; 2] {
    let b = Point {
        x: length,
        y: Length::exact(0.0),
    };
    [Point::exact(0.0, 0.0), b]
}

/// The twins of A and B, where both were measured.
fn twins(sheet: &MarkingSheet, pairs: &[(Key, [Point; 2])]) -> Option<[Point; 2]> {
    let twin = |letter: &str| {
        let mut rows = sheet.pairs.iter();
        let row = rows.find(|row| row.of.value() == Some(&letter))?;
        let pair = pairs.iter().find(|(key, _)| *key == row.key)?;
        Some(pair.1[1].clone())
    };
    Some([twin("a")?, twin("b")?])
}

/// The mirror image as the new side's datums see it. From images of the old datums everything lies as it lay from the old ones, on
/// the other hand; from datums that were measured, as they see the image in the centre line.
fn mirror(line: Option<&MirrorLine>, twins: Option<&[Point; 2]>) -> Move {
    let (Some(line), Some([a, b])) = (line, twins) else {
        return Move {
            mirrored: true,
            ..Move::shift(Length::exact(0.0), Length::exact(0.0))
        };
    };
    let image = line.as_move();
    let (x, y) = (&b.x - &a.x, &b.y - &a.y);
    let back = Ratio::tabled("direction of the datum line", &[&x, &y], |d| {
        -d[1].atan2(d[0])
    });
    let shift = Point {
        x: image.dx - &a.x,
        y: image.dy - &a.y,
    };
    let shift = shift.turned(&back);
    Move {
        mirrored: true,
        turn: (image.turn + &back).of_kind(Kind::Angle),
        dx: shift.x,
        dy: shift.y,
    }
}

fn two(points: &[Point]) -> Result<[Point; 2], Lack> {
    match points {
        [a, b, ..] => Ok([a.clone(), b.clone()]),
        _ => Err(Lack::needs([Key::from("marking/ab")])),
    }
}

fn old_datums(taken: &TakenOff) -> Result<[Point; 2], Lack> {
    let datums = taken.datums.as_ref().map_err(Clone::clone)?;
    two(datums)
}

fn new_datums(sheet: &MarkingSheet, mirrored: bool, found: &mut Found) -> Result<Vec<Point>, Lack> {
    let between = [
        &sheet.new_ab,
        &sheet.new_ac,
        &sheet.new_bc,
        &sheet.new_ad,
        &sheet.new_bd,
        &sheet.new_cd,
    ];
    // What is above the line stays above it; but a mirrored line runs the other way.
    let sides = [&sheet.c_side, &sheet.d_side].map(|given| {
        let side = side(given);
        if mirrored { other(side) } else { side }
    });
    placed_datums(between, sides, &Curve::of(sheet), found)
}

fn line(pairs: &[(Key, [Point; 2])], found: &mut Found) -> Option<MirrorLine> {
    let points: Vec<(Point, Point)> = pairs
        .iter()
        .map(|(_, [own, twin])| (own.clone(), twin.clone()))
        .collect();
    if points.is_empty() {
        return None;
    }
    match mirror_line(&points) {
        Ok(line) => Some(line),
        Err(error) => {
            let at = pairs[0].0.under("twin_a");
            found.errors.push((at, error.into()));
            None
        }
    }
}

/// A point and its twin, once both are placed.
fn pair_of(
    sheet: &MarkingSheet,
    pair: &PairEntry,
    taken: &TakenOff,
    found: &mut Found,
) -> Option<[Point; 2]> {
    let datums = taken.datums.as_ref().ok()?;
    let curve = Curve::of(sheet);
    let mut placed = |cells: [&Given<Length>; 3]| {
        let typed = cells
            .into_iter()
            .zip(datums)
            .filter_map(|(given, datum)| Some((given.key(), given.value()?, datum)));
        let (keys, sights): (Vec<&Key>, Vec<Sight>) = typed
            .map(|(key, distance, datum)| {
                let distance = curve.straight(distance);
                let datum = datum.clone();
                (key, Sight::From { datum, distance })
            })
            .unzip();
        if sights.len() < 2 {
            return None;
        }
        match fix(&sights, side(&pair.side)) {
            Ok(fix) => Some(fix.at),
            Err(error) => {
                let at = keys[keys.len() - 1].clone();
                found.errors.push((at, error.into()));
                None
            }
        }
    };
    let of = pair.of.value().copied().unwrap_or("a");
    let own = match LETTERS.iter().position(|letter| *letter == of) {
        Some(place) => datums.get(place).cloned(),
        None => placed([&pair.own_a, &pair.own_b, &pair.own_c]),
    }?;
    Some([own, placed([&pair.twin_a, &pair.twin_b, &pair.twin_c])?])
}

/// The features of a handed part lie to its first one as they lay before; that first one goes where the move takes it.
fn keep_handed_parts(sheet: &MarkingSheet, taken: &TakenOff, goes: &mut [Goes]) {
    let part = |i: usize| sheet.features.get(i).and_then(|row| row.part.value());
    for (i, feature) in sheet.features.iter().enumerate() {
        let Some(name) = part(i) else { continue };
        goes[i].kept = true;
        let first = (0..i).find(|j| part(*j) == Some(name) && taken.features[*j].fix.is_ok());
        if let Some(first) = first
            && let (Ok(origin), Ok(own)) = (&taken.features[first].fix, &taken.features[i].fix)
        {
            // The new side's x runs the other way, so what keeps its hand is turned by half a turn.
            let (dx, dy) = (&origin.at.x - &own.at.x, &origin.at.y - &own.at.y);
            let by = |point: &Point| point.shifted(&dx, &dy);
            let mirrored = goes[first].mirrored.as_ref().map(by);
            let fitted = goes[first].fitted.as_ref().map(by);
            let at = goes[first].at.as_ref().map(by).map_err(Clone::clone);
            let one = &mut goes[i];
            (one.mirrored, one.fitted, one.at) = (mirrored, fitted, at);
        }
        goes[i].placed = goes[i].at.clone().and_then(|at| {
            let mut placed = placed(feature, &taken.features[i], &at)?;
            placed.turn = (placed.turn + std::f64::consts::PI).of_kind(Kind::Angle);
            Ok(placed)
        });
    }
}

/// The new side, where places are found by their distances from A' and B'.
pub(super) struct NewSide<'a> {
    pub(super) from: &'a [Point; 2],
    pub(super) mirrors: bool,
    pub(super) curve: Curve,
}

impl NewSide<'_> {
    /// What is above the line on the vehicle; on the other hand that is below nothing.
    pub(super) fn above(&self, side_of: &Given<&'static str>) -> Side {
        let side = side(side_of);
        if self.mirrors { other(side) } else { side }
    }

    /// A place by its distances from A' and B'; none before both are there.
    pub(super) fn place(
        &self,
        distances: [&Given<Length>; 2],
        side_of: &Given<&'static str>,
    ) -> Option<Result<Point, TradeError>> {
        let distances = [distances[0].value()?, distances[1].value()?];
        let sights = distances.into_iter().zip(self.from);
        let sights = sights.map(|(distance, datum)| Sight::From {
            datum: datum.clone(),
            distance: self.curve.straight(distance),
        });
        let fixed = fix(&sights.collect::<Vec<_>>(), self.above(side_of));
        Some(fixed.map(|fix| fix.at))
    }

    /// What is there already, as it is shaped; none before its places and sizes are there. What makes no shape is told at the last
    /// reading of the place.
    fn thing(&self, row: &ThereEntry) -> Option<Result<Placed, (Key, TradeError)>> {
        let told = |last: &Given<Length>| {
            let key = last.key().clone();
            move |error| (key, error)
        };
        let across = row.diameter.value()?.clone();
        let at = self.place([&row.a, &row.b], &row.side)?;
        let at = at.map_err(told(&row.b));
        Some(match row.kind.value() {
            Some(&"strip") => {
                let two = self.place([&row.two_a, &row.two_b], &row.two_side)?;
                let strip = |one| Placed::strip(&[one, two?], across);
                at.and_then(|one| strip(one).map_err(told(&row.two_b)))
            }
            Some(&"rectangle") => {
                let (length, turn) = (row.length.value()?.clone(), row.turn.value()?.clone());
                let shape = Shape::rectangle(length, across, Length::exact(0.0));
                let shape = shape.map_err(told(&row.length));
                at.and_then(|at| Ok(Placed::new(shape?, at, turn)))
            }
            _ => {
                let shape = Shape::round(across).map_err(told(&row.diameter));
                at.and_then(|at| Ok(Placed::new(shape?, at, Ratio::exact(0.0))))
            }
        })
    }
}

/// What is on the new side already, where it lies.
fn there(
    sheet: &MarkingSheet,
    from: &Result<[Point; 2], Lack>,
    mirrors: bool,
    found: &mut Found,
) -> Vec<(usize, Placed)> {
    let Ok(from) = from else {
        return Vec::new();
    };
    let curve = Curve::of(sheet);
    let side = NewSide {
        from,
        mirrors,
        curve,
    };
    let mut placed = Vec::new();
    for (place, row) in sheet.there.iter().enumerate() {
        match side.thing(row) {
            Some(Ok(thing)) => placed.push((place, thing)),
            Some(Err((at, error))) => found.errors.push((at, error.into())),
            None => {}
        }
    }
    placed
}
