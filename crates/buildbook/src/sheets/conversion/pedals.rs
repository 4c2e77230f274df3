//! Brake and clutch pedals with their hydraulics, the maker's against the new.

use ::trade::conversion as trade;
use measure::{Force, Kind, Length, Pressure, Ratio, Standing};

use super::steering::pair;
use super::{ClutchEntry, ConversionSheet, PedalEntry};
use crate::key::joined;
use crate::sheets::vehicle::VehicleFindings;
use crate::{All, Found, Given, Lack, Rank, Remark};

/// Puts in what the pedals come to.
pub(super) fn show(sheet: &ConversionSheet, vehicle: &VehicleFindings, found: &mut Found) {
    // A foot's force of 500 N at most in a car, 700 N in any other. Of service braking: Directive 70/311/EEC as amended by 92/62/EEC,
    // annex on braking with an energy source shared with the steering, point 1, table, column K. Of secondary braking: UN R13 and
    // Directive 71/320/EEC, annex II, as quoted at wordscope.be, "braking foot control".
    let limit = match vehicle.sheet.sort.value() {
        Some(&"car") => "500 N exact",
        _ => "700 N exact",
    };
    let limit = found.assume(&sheet.foot_limit, limit);
    let foot = match sheet.foot.is_blank() {
        true => limit.clone(),
        false => sheet.foot.clone(),
    };
    brake(sheet, &foot, &limit, found);
    clutch(sheet, found);
}

fn each<'a, E, T>(rows: [&'a E; 2], of: impl Fn(&'a E) -> Result<T, Lack>) -> [Result<T, Lack>; 2] {
    rows.map(of)
}

fn ratio(pad: &Given<Length>, rod: &Given<Length>) -> Result<Ratio, Lack> {
    let (pad, rod) = (pad.ask(), rod.ask()).all()?;
    Ok(trade::lever_ratio(pad, rod)?)
}

/// The free play as the foot feels it, which manuals quote: that at the rod times the lever.
fn play_at_pad(
    play: &Given<Length>,
    pad: &Given<Length>,
    rod: &Given<Length>,
) -> Result<Length, Lack> {
    let (play, ratio) = (play.ask(), ratio(pad, rod)).all()?;
    Ok((play * ratio).of_kind(Kind::Length))
}

/// The line pressure at a foot's force.
fn pressure(pedal: &PedalEntry, foot: &Given<Force>) -> Result<Pressure, Lack> {
    let (foot, ratio, servo, master) = (
        foot.ask(),
        ratio(&pedal.pad_arm, &pedal.rod_arm),
        pedal.servo.ask(),
        pedal.master.ask(),
    )
        .all()?;
    Ok(trade::line_pressure(
        &trade::push_force(foot, &ratio, servo),
        master,
    )?)
}

fn brake(sheet: &ConversionSheet, foot: &Given<Force>, limit: &Given<Force>, found: &mut Found) {
    for headline in ["bulkhead/now", "foot/now"] {
        found
            .headlines
            .push(format!("conversion/{headline}").into());
    }
    let pedals = [&sheet.brake_was[0], &sheet.brake_now[0]];
    let ratios = each(pedals, |pedal| ratio(&pedal.pad_arm, &pedal.rod_arm));
    pair(
        found,
        "bulkhead",
        Kind::Force,
        [0, 1].map(|at: usize| {
            let (panic, ratio) = (sheet.panic.ask(), ratios[at].clone()).all()?;
            Ok(trade::bulkhead_load(panic, &ratio))
        }),
    );
    let pressures = each(pedals, |pedal| pressure(pedal, foot));
    let needed = (
        pressures[0].clone(),
        sheet.brake_now[0].master.ask(),
        ratios[1].clone(),
        sheet.brake_now[0].servo.ask(),
    )
        .all()
        .and_then(|(pressure, bore, ratio, servo)| {
            Ok(trade::foot_force(&pressure, bore, &ratio, servo)?)
        });
    too_much_foot(sheet, &needed, limit, found);
    pair(found, "foot", Kind::Force, [foot.ask().cloned(), needed]);
    pair(found, "pedal_ratio", Kind::Ratio, ratios);
    pistons(sheet, &pressures[1], found);
    pair(found, "pressure", Kind::Pressure, pressures);
    let strokes = each(pedals, |pedal| stroke(sheet, pedal));
    pair(
        found,
        "pad_travel",
        Kind::Length,
        [0, 1].map(|at: usize| {
            let (stroke, play, ratio) = (
                strokes[at].clone(),
                pedals[at].free_play.ask(),
                ratio(&pedals[at].pad_arm, &pedals[at].rod_arm),
            )
                .all()?;
            Ok(trade::pedal_travel(&stroke, play, &ratio))
        }),
    );
    let shares = [0, 1].map(|at: usize| {
        let (stroke, whole) = (strokes[at].clone(), pedals[at].stroke.ask()).all()?;
        Ok((stroke / whole).of_kind(Kind::Percent))
    });
    if let Ok(share) = &shares[1]
        && share.standing(&Ratio::exact(MOST_STROKE)) != Standing::Below
    {
        let remark =
            Remark::new(Rank::Warning, "stroke_used_up").at(pedals[1].stroke.key().clone());
        found.remark(remark.with(share.figure(Kind::Percent)));
    }
    pair(found, "stroke", Kind::Length, strokes);
    let plays = each(pedals, |pedal| {
        play_at_pad(&pedal.free_play, &pedal.pad_arm, &pedal.rod_arm)
    });
    pair(found, "brake_play", Kind::Length, plays);
    pair(found, "stroke_share", Kind::Percent, shares);
}

/// The share of the master's stroke beyond which nothing is left for a hot or leaking circuit: common practice, no source.
const MOST_STROKE: f64 = 0.6;

fn too_much_foot(
    sheet: &ConversionSheet,
    needed: &Result<Force, Lack>,
    limit: &Given<Force>,
    found: &mut Found,
) {
    if let (Ok(needed), Some(limit)) = (needed, limit.value())
        && needed.standing(limit) == Standing::Above
    {
        let remark = Remark::new(Rank::Warning, "foot_over_limit")
            .at(sheet.brake_now[0].master.key().clone());
        found.remark(
            remark
                .with(needed.figure(Kind::Force))
                .with(limit.figure(Kind::Force)),
        );
    }
}

/// The master piston's stroke until all linings bear.
fn stroke(sheet: &ConversionSheet, pedal: &PedalEntry) -> Result<Length, Lack> {
    let master = pedal.master.ask()?;
    let mut pistons: Vec<(Length, Length)> = Vec::new();
    for row in &sheet.pistons {
        let (bore, travel, count) = (row.bore.ask(), row.travel.ask(), row.count.ask()).all()?;
        pistons.push((bore.clone(), travel * count));
    }
    if pistons.is_empty() {
        return Err(Lack::needs(["conversion/pistons/1/bore".into()]));
    }
    Ok(trade::master_travel(master, &pistons))
}

/// The force of each kind of piston at the foot's force for full braking.
fn pistons(sheet: &ConversionSheet, pressure: &Result<Pressure, Lack>, found: &mut Found) {
    for row in &sheet.pistons {
        let force = (pressure.clone(), row.bore.ask())
            .all()
            .map(|(pressure, bore)| trade::piston_force(&pressure, bore));
        found.show(
            joined(&["conversion/piston", row.id()]),
            Kind::Force,
            &force,
        );
    }
}

fn clutch(sheet: &ConversionSheet, found: &mut Found) {
    let pedals = [&sheet.clutch_was[0], &sheet.clutch_now[0]];
    let travels = each(pedals, fork_travel);
    if let (Ok(now), Some(wanted)) = (&travels[1], sheet.fork_travel.value())
        && now.standing(wanted) == Standing::Below
    {
        let remark =
            Remark::new(Rank::Warning, "clutch_will_drag").at(sheet.fork_travel.key().clone());
        found.remark(remark.with(now.figure(Kind::Length)));
    }
    pair(found, "clutch_travel", Kind::Length, travels);
    let plays = each(pedals, |pedal| {
        play_at_pad(&pedal.free_play, &pedal.pad_arm, &pedal.rod_arm)
    });
    pair(found, "clutch_play", Kind::Length, plays);
    pair(
        found,
        "clutch_foot",
        Kind::Force,
        each(pedals, |pedal| clutch_foot(sheet, pedal)),
    );
}

fn by_cable(pedal: &ClutchEntry) -> bool {
    pedal.by.value() == Some(&"cable")
}

/// What the pad's travel makes of the fork's end.
fn fork_travel(pedal: &ClutchEntry) -> Result<Length, Lack> {
    let (travel, ratio, play) = (
        pedal.pad_travel.ask(),
        ratio(&pedal.pad_arm, &pedal.rod_arm),
        pedal.free_play.ask(),
    )
        .all()?;
    let rod = (travel / ratio - play).called("s_r");
    if by_cable(pedal) {
        return Ok(rod.of_kind(Kind::Length));
    }
    let (master, slave) = (pedal.master.ask(), pedal.slave.ask()).all()?;
    Ok(trade::slave_travel(&rod, master, slave)?)
}

/// The foot's force that frees the clutch.
fn clutch_foot(sheet: &ConversionSheet, pedal: &ClutchEntry) -> Result<Force, Lack> {
    let (fork, ratio) = (
        sheet.fork_force.ask(),
        ratio(&pedal.pad_arm, &pedal.rod_arm),
    )
        .all()?;
    if by_cable(pedal) {
        let efficiency = match pedal.efficiency.is_blank() {
            true => super::routes::clutch_efficiency(sheet, pedal)?,
            false => pedal.efficiency.ask()?.clone(),
        };
        return Ok((fork / (ratio * efficiency)).of_kind(Kind::Force));
    }
    let (master, slave) = (pedal.master.ask(), pedal.slave.ask()).all()?;
    let pressure = trade::line_pressure(fork, slave)?;
    Ok(trade::foot_force(
        &pressure,
        master,
        &ratio,
        &Ratio::exact(1.0),
    )?)
}
