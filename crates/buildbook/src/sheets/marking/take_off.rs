//! The side that has the holes: its datums, and each feature by its readings.

use ::trade::TradeError;
use ::trade::marking::{Check, Fix, Point, Reach, Shape, Side, Sight};
use ::trade::marking::{centre_distance, chord_of_arc, datum_deviation_m, fix, fix_from, frame};
use measure::{Kind, Length};

use super::{FeatureEntry, MarkingSheet, shape};
use crate::{Found, Given, Key, Lack};

/// The datums' letters, in their order.
pub const LETTERS: [&str; 4] = ["a", "b", "c", "d"];

/// Where everything lies on the side that has it: x from A to B, y above.
#[derive(Debug, Clone)]
pub struct TakenOff {
    /// The datums: two, three or four.
    pub datums: Result<Vec<Point>, Lack>,
    /// The features, row by row.
    pub features: Vec<Fixed>,
}

/// A feature as its readings place it.
#[derive(Debug, Clone)]
pub struct Fixed {
    /// Its row.
    pub key: Key,
    /// Its readings, in the order of the fix.
    pub readings: Vec<Key>,
    /// Where it is.
    pub fix: Result<Fix, Lack>,
    /// What it is, with its sizes.
    pub shape: Result<Shape, Lack>,
    /// By how much the reading at fault is out, metres, where one was named.
    pub out_by: Option<f64>,
}

pub(super) fn side(given: &Given<&'static str>) -> Side {
    match given.value() {
        Some(&"below") => Side::Right,
        _ => Side::Left,
    }
}

pub(super) fn other(side: Side) -> Side {
    match side {
        Side::Left => Side::Right,
        Side::Right => Side::Left,
    }
}

/// The distances between the datums of one side, by place: AB, AC, BC, AD, BD, CD.
pub(super) type Between<'a> = [&'a Given<Length>; 6];

const PAIRS: [(usize, usize); 6] = [(0, 1), (0, 2), (1, 2), (0, 3), (1, 3), (2, 3)];

/// The datums of a side, as many as have both their distances. A distance that makes no triangle is told at its field, and the
/// datums before it stay.
pub(super) fn placed_datums(
    between: Between<'_>,
    sides: [Side; 2],
    curve: &Curve,
    found: &mut Found,
) -> Result<Vec<Point>, Lack> {
    between[0].ask()?;
    let both = |third: usize| [2 * third - 3, 2 * third - 2].map(|i| between[i]);
    let known = |third: &usize| both(*third).iter().all(|given| given.value().is_some());
    let most = 2 + (2..4).take_while(known).count();
    let laid = |count: usize| {
        let distances: Vec<(usize, usize, Length)> = PAIRS
            .iter()
            .zip(between)
            .filter(|((_, b), _)| *b < count)
            .filter_map(|((a, b), given)| Some((*a, *b, curve.straight(given.value()?))))
            .collect();
        frame(&sides[..count - 2], &distances)
    };
    if let Ok(points) = laid(most) {
        return Ok(points);
    }
    // Those before the first that does not fit stay where they are.
    let mut placed = Vec::new();
    for count in 2..=most {
        let third = count - 1;
        match laid(count) {
            Ok(points) => placed = points,
            Err(error) if count > 2 => {
                let at = both(third)[1].key().clone();
                found.errors.push((at, error.into()));
                break;
            }
            Err(error) => return Err(error.into()),
        }
    }
    Ok(placed)
}

/// How distances lie on the panel.
pub(super) struct Curve(Option<Length>);

impl Curve {
    pub(super) fn of(sheet: &MarkingSheet) -> Self {
        let over = sheet.taken.value() == Some(&"surface");
        Self(sheet.panel_radius.value().filter(|_| over).cloned())
    }

    /// The straight distance behind one that was taken.
    pub(super) fn straight(&self, taken: &Length) -> Length {
        match &self.0 {
            Some(radius) => chord_of_arc(taken, radius),
            None => taken.clone(),
        }
    }

    /// A straight distance as the tape will lie.
    pub(super) fn as_taken(&self, straight: &Length) -> Result<Length, Lack> {
        match &self.0 {
            Some(radius) => Ok(::trade::marking::arc_over_chord(straight, radius)?),
            None => Ok(straight.clone()),
        }
    }
}

pub(super) fn taken_off(sheet: &MarkingSheet, found: &mut Found) -> TakenOff {
    let between = [
        &sheet.ab, &sheet.ac, &sheet.bc, &sheet.ad, &sheet.bd, &sheet.cd,
    ];
    let sides = [side(&sheet.c_side), side(&sheet.d_side)];
    let datums = placed_datums(between, sides, &Curve::of(sheet), found);
    let placed = datums.as_ref().map_or(&[][..], Vec::as_slice);
    let off: Vec<f64> = placed.iter().map(datum_deviation_m).collect();
    let features = sheet
        .features
        .iter()
        .map(|feature| fixed(sheet, feature, (&datums, &off), found))
        .collect();
    TakenOff { datums, features }
}

fn reach(word: Option<&&'static str>) -> Reach {
    match word.copied() {
        Some("near_edge") => Reach::NearEdge,
        Some("far_edge") => Reach::FarEdge,
        Some("inside") => Reach::Inside,
        Some("outside") => Reach::Outside,
        Some("same_edges") => Reach::SameEdges,
        _ => Reach::Centres,
    }
}

/// One feature, from all its readings.
fn fixed(
    sheet: &MarkingSheet,
    feature: &FeatureEntry,
    (datums, off): (&Result<Vec<Point>, Lack>, &[f64]),
    found: &mut Found,
) -> Fixed {
    let mut fixed = Fixed {
        key: feature.key.clone(),
        readings: Vec::new(),
        fix: Err(Lack::needs([])),
        shape: shape::of(sheet, feature, found),
        out_by: None,
    };
    let datums = match datums {
        Ok(datums) => datums,
        Err(lack) => {
            fixed.fix = Err(lack.clone());
            return fixed;
        }
    };
    let (readings, sights, lack) = sights(sheet, feature, datums);
    let side = side(&feature.side);
    fixed.fix = match lack {
        Some(lack) => Err(lack),
        None if sights.len() < 2 => Err(Lack::needs(needed(feature, &readings))),
        None => fix_from(&sights, &offs(&readings, off), side).map_err(|error| {
            // Told at the last reading: the one that was just made, as a rule.
            if let Some(at) = readings.last() {
                found.errors.push((at.clone(), error.clone().into()));
            }
            Lack::refused(error)
        }),
    };
    if let Ok(Fix {
        check: Check::Spoiled { reading, .. },
        ..
    }) = &fixed.fix
    {
        let by = out_by(&sights, *reading, side);
        if let (Some(by), Some(at)) = (by, readings.get(*reading)) {
            let spoils = TradeError::ReadingSpoils { by };
            found.errors.push((at.clone(), spoils.into()));
        }
        fixed.out_by = by;
    }
    fixed.readings = readings;
    fixed
}

/// How uncertain the datum of each reading is; a reading in a row of its own counts with the worst of them.
fn offs(readings: &[Key], off: &[f64]) -> Vec<f64> {
    let worst = off.iter().copied().fold(0.0, f64::max);
    let of = |key: &Key| match key.field() {
        "along" | "across" => 0.0,
        field => {
            let place = LETTERS.iter().position(|letter| *letter == field);
            place
                .and_then(|place| off.get(place).copied())
                .unwrap_or(worst)
        }
    };
    readings.iter().map(of).collect()
}

/// The first readings that are still to be made.
fn needed(feature: &FeatureEntry, readings: &[Key]) -> Vec<Key> {
    [&feature.a, &feature.b]
        .into_iter()
        .map(Given::key)
        .filter(|key| !readings.contains(key))
        .take(2 - readings.len().min(2))
        .cloned()
        .collect()
}

/// By how much a reading misses the place that all others agree on.
fn out_by(sights: &[Sight], reading: usize, side: Side) -> Option<f64> {
    let mut rest = sights.to_vec();
    let sight = rest.remove(reading);
    let at = fix(&rest, side).ok()?.at;
    Some(match sight {
        Sight::From { datum, distance } => distance.value() - at.distance(&datum).value(),
        Sight::Along(x) => x.value() - at.x.value(),
        Sight::Across(y) => y.value() - at.y.value().abs(),
    })
}

type Sights = (Vec<Key>, Vec<Sight>, Option<Lack>);

/// The readings of a feature as sights of its centre; what keeps one from being used.
fn sights(sheet: &MarkingSheet, feature: &FeatureEntry, datums: &[Point]) -> Sights {
    let (mut keys, mut sights, mut lack) = (Vec::new(), Vec::new(), None);
    let mut add = |given: &Given<Length>, from: &str, to: Option<&&'static str>| {
        let sight = match given.ask() {
            Ok(reading) => sight(sheet, feature, datums, (from, reading, reach(to))),
            Err(lack) if lack.is_blank() => return,
            Err(bad) => Err(bad),
        };
        match sight {
            Ok(sight) => {
                keys.push(given.key().clone());
                sights.push(sight);
            }
            Err(why) => lack = Some(why),
        }
    };
    let to = feature.read_to.value();
    for (given, from) in [&feature.a, &feature.b, &feature.c, &feature.d]
        .into_iter()
        .zip(LETTERS)
    {
        add(given, from, to);
    }
    add(&feature.along, "along", None);
    add(&feature.across, "across", None);
    for row in &feature.more {
        if let Some(from) = row.from.value() {
            add(&row.reading, from, row.read_to.value());
        }
    }
    (keys, sights, lack)
}

/// One reading: edges, diameters and the panel's curve allowed for.
fn sight(
    sheet: &MarkingSheet,
    feature: &FeatureEntry,
    datums: &[Point],
    (from, reading, reach): (&str, &Length, Reach),
) -> Result<Sight, Lack> {
    match from {
        "along" => return Ok(Sight::Along(reading.clone())),
        "across" => return Ok(Sight::Across(reading.clone())),
        _ => {}
    }
    let place = LETTERS.iter().position(|letter| *letter == from);
    let datum = place.and_then(|place| datums.get(place)).ok_or_else(|| {
        let distances = [&sheet.ac, &sheet.bc, &sheet.ad, &sheet.bd];
        let of = if from == "d" { 2..4 } else { 0..2 };
        let blank = distances[of].iter().filter(|given| given.is_blank());
        Lack::needs(blank.map(|given| given.key().clone()).collect::<Vec<_>>())
    })?;
    let nothing = Length::exact(0.0);
    let own = match reach {
        Reach::Centres => nothing.clone(),
        _ => feature.diameter.ask()?.clone(),
    };
    let datum_diameter = match reach {
        Reach::Inside | Reach::Outside | Reach::SameEdges => sheet.datum_diameter.ask()?,
        _ => &nothing,
    };
    let distance = centre_distance(reading, reach, datum_diameter, &own);
    let distance = Curve::of(sheet).straight(&distance).of_kind(Kind::Length);
    Ok(Sight::From {
        datum: datum.clone(),
        distance,
    })
}
