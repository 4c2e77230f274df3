//! Cables and pipes over their routes.

use ::trade::conversion::{self as trade, Bend};
use measure::{Kind, Length, Ratio, Standing};

use super::{ClutchEntry, ConversionSheet, RouteEntry};
use crate::key::joined;
use crate::{All, Found, Lack, Rank, Remark};

/// Whether a route is a pipe's; else it is a cable's.
#[must_use]
pub fn is_pipe(kind: Option<&&'static str>) -> bool {
    kind.is_some_and(|kind| kind.ends_with("_pipe"))
}

/// Puts in what each cable and pipe comes to.
pub(super) fn show(sheet: &ConversionSheet, found: &mut Found) {
    for route in &sheet.routes {
        let id = route.id();
        found.show(joined(&["conversion/cut", id]), Kind::Length, &cut(route));
        show_marks(route, found);
        tight_bends(route, found);
        if is_pipe(route.kind.value()) {
            mixed_ends(route, found);
        } else {
            show_cable(route, found);
        }
    }
}

fn bends(route: &RouteEntry) -> Result<Vec<Bend>, Lack> {
    let bend = |row: &super::BendEntry| {
        let (radius, angle) = (row.radius.ask(), row.angle.ask()).all()?;
        Ok(Bend {
            radius: radius.clone(),
            angle: angle.clone(),
        })
    };
    route.bends.iter().map(bend).collect()
}

/// The length to make: by the string where one was laid, else by straights and bends; of a pipe with what both flares take.
fn cut(route: &RouteEntry) -> Result<Length, Lack> {
    let way = if route.string.is_blank() {
        let straights: Vec<Length> = route
            .straights
            .iter()
            .map(|row| row.length.ask().cloned())
            .collect::<Result<_, _>>()?;
        let bends = bends(route)?;
        if straights.is_empty() && bends.is_empty() {
            return Err(Lack::needs([route.string.key().clone()]));
        }
        trade::route_length(&straights, &bends)
    } else {
        route.string.ask()?.clone()
    };
    if is_pipe(route.kind.value()) {
        let flare = route.flare_takes.ask()?;
        return Ok(trade::pipe_to_cut(&way, &[flare.clone(), flare.clone()]));
    }
    Ok(way)
}

/// Where each bend begins on the straight length, straights and bends taken in turn.
fn show_marks(route: &RouteEntry, found: &mut Found) {
    let mut before: Vec<Length> = Vec::new();
    if is_pipe(route.kind.value())
        && let Some(flare) = route.flare_takes.value()
    {
        before.push(flare.clone());
    }
    for (at, row) in route.bends.iter().enumerate() {
        if let Some(straight) = route.straights.get(at) {
            let Some(length) = straight.length.value() else {
                return;
            };
            before.push(length.clone());
        }
        let (Some(radius), Some(angle)) = (row.radius.value(), row.angle.value()) else {
            return;
        };
        let begins = Length::sum_of(&before).called("b").of_kind(Kind::Length);
        let id = joined(&["conversion/bend_at", route.id(), row.id()]);
        found.show(id, Kind::Length, &Ok(begins));
        before.push((radius * angle).of_kind(Kind::Length));
    }
}

fn show_cable(route: &RouteEntry, found: &mut Found) {
    let id = route.id();
    if route.kind.value() == Some(&"speedometer") {
        return;
    }
    found.show(
        joined(&["conversion/efficiency", id]),
        Kind::Percent,
        &efficiency(route),
    );
    let asked = (route.arm.ask(), route.swing.ask(), route.free_play.ask());
    let travel = asked
        .all()
        .map(|(arm, swing, play)| (trade::lever_travel(arm, swing) - play).called("s"));
    if route.arm.is_blank() && route.swing.is_blank() {
        return;
    }
    found.show(joined(&["conversion/travel", id]), Kind::Length, &travel);
    let wanted = (route.far_arm.ask(), route.far_swing.ask()).all();
    let wanted = wanted.map(|(arm, swing)| trade::lever_travel(arm, swing));
    found.show(
        joined(&["conversion/travel_wanted", id]),
        Kind::Length,
        &wanted,
    );
    let lever = (travel.clone(), route.far_swing.ask()).all();
    let lever = lever.and_then(|(travel, swing)| Ok(trade::matching_lever(&travel, swing)?));
    found.show(joined(&["conversion/lever", id]), Kind::Length, &lever);
    let (Ok(travel), Ok(wanted)) = (travel, wanted) else {
        return;
    };
    let fact = match travel.standing(&wanted) {
        Standing::Below => "cable_travels_short",
        Standing::Above => "cable_travels_far",
        _ => return,
    };
    let remark = Remark::new(Rank::Caution, fact).at(route.far_arm.key().clone());
    found.remark(
        remark
            .with(travel.figure(Kind::Length))
            .with(wanted.figure(Kind::Length)),
    );
}

fn efficiency(route: &RouteEntry) -> Result<Ratio, Lack> {
    let (friction, bends) = (route.friction.ask(), bends(route)).all()?;
    if bends.is_empty() {
        let first = route.key.under("bends").under("1").under("angle");
        return Err(Lack::needs([first]));
    }
    Ok(trade::capstan_efficiency(friction, &bends)?)
}

/// The clutch cable's efficiency by its route.
pub(super) fn clutch_efficiency(
    sheet: &ConversionSheet,
    pedal: &ClutchEntry,
) -> Result<Ratio, Lack> {
    let cable = sheet
        .routes
        .iter()
        .find(|route| route.kind.value() == Some(&"clutch"));
    match cable {
        Some(route) => efficiency(route),
        None => Err(Lack::needs([pedal.efficiency.key().clone()])),
    }
}

fn tight_bends(route: &RouteEntry, found: &mut Found) {
    let Some(least) = route.least_radius.value() else {
        return;
    };
    for row in &route.bends {
        let (Some(radius), Some(angle)) = (row.radius.value(), row.angle.value()) else {
            continue;
        };
        let bend = Bend {
            radius: radius.clone(),
            angle: angle.clone(),
        };
        if trade::bend_too_tight(&bend, least) {
            let remark = Remark::new(Rank::Warning, "bend_too_tight").at(row.radius.key().clone());
            found.remark(
                remark
                    .with(radius.figure(Kind::Length))
                    .with(least.figure(Kind::Length)),
            );
        }
    }
}

/// Ends of two makes on one pipe are nearly always a mistake.
fn mixed_ends(route: &RouteEntry, found: &mut Found) {
    if let (Some(one), Some(other)) = (route.flare_1.value(), route.flare_2.value())
        && one != other
    {
        found.remark(Remark::new(Rank::Caution, "flares_differ").at(route.flare_2.key().clone()));
    }
}
