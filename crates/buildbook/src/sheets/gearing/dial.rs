//! The speedometer after a change, and the adapter that puts it right.

use measure::{Kind, Length, PerLength, Ratio, Speed};
use trade::gearing::{
    Designation, DialVerdict, adapter_ratio, cable_turns, dial_verdict, most_shown,
    rolling_circumference, rolling_factor, shown_after, tyre_diameter,
};

use super::gears::Line;
use super::usual;
use crate::sheets::vehicle::VehicleFindings;
use crate::{All, Found, Lack, Rank, Remark};

/// What the dial was right with: the ratio behind the gearbox and the tyre.
pub(super) struct Dial {
    axle: Result<Ratio, Lack>,
    circumference: Result<Length, Lack>,
    error: Result<Ratio, Lack>,
}

impl Dial {
    pub(super) fn of(found: &mut Found, line: &Line, vehicle: &VehicleFindings) -> Self {
        let sheet = &line.sheet;
        let axle = if sheet.dial_axle.is_blank() {
            Err(Lack::needs([sheet.dial_axle.key().clone()]))
        } else {
            let axle = sheet.dial_axle.ask().map(|axle| axle.ratio.clone());
            (axle, line.train.clone())
                .all()
                .map(|(axle, train)| train.with_axle(axle).from_shaft())
        };
        let error = if sheet.dial_showed.is_blank() && sheet.dial_true.is_blank() {
            Ok(Ratio::exact(1.0))
        } else {
            (sheet.dial_showed.ask(), sheet.dial_true.ask())
                .all()
                .map(|(showed, true_speed)| (showed / true_speed).of_kind(Kind::Ratio).called("e"))
        };
        Self {
            axle,
            circumference: old_circumference(found, line, vehicle),
            error,
        }
    }

    /// What the dial shows at a true speed with another ratio behind the gearbox.
    pub(super) fn shown(
        &self,
        line: &Line,
        true_speed: &Speed,
        from_shaft: &Ratio,
    ) -> Result<Speed, Lack> {
        let parts = (
            self.axle.clone(),
            self.circumference.clone(),
            self.error.clone(),
            line.circumference.clone(),
        );
        parts.all().map(|(axle, was, error, is)| {
            shown_after(true_speed, (&axle, &was), (from_shaft, &is), &error)
        })
    }
}

fn old_circumference(
    found: &mut Found,
    line: &Line,
    vehicle: &VehicleFindings,
) -> Result<Length, Lack> {
    let typed = &line.sheet.dial_tyre;
    let Some(text) = typed.value().filter(|text| !text.is_empty()) else {
        return line.circumference.clone();
    };
    match Designation::read(text) {
        Ok(tyre) => {
            let size = tyre_diameter(&tyre);
            let reading = measure::Reading {
                plus: size.plus_m,
                minus: size.minus_m,
                stated: measure::Stated::Assumed,
                ..measure::Reading::exact(size.metres, &measure::unit::METRE)
            };
            let diameter = Length::entry(typed.key().shared(), "D_0", Kind::Length, &reading);
            let factor = usual(
                vehicle.sheet.rolling_factor.key(),
                "F",
                rolling_factor(tyre.construction),
            );
            Ok(rolling_circumference(&diameter, &factor))
        }
        Err(fault) => {
            let fault = trade::TradeError::from(fault);
            found.errors.push((typed.key().clone(), fault.into()));
            Err(Lack::entry(typed.key().clone()))
        }
    }
}

/// What the dial shows at the cruise, what it may show, and the adapter.
pub(super) fn show(found: &mut Found, line: &Line, dial: &Dial) {
    let from_shaft = line.train.clone().map(|train| train.from_shaft());
    let at = line.sheet.road_speed.ask().cloned();
    let shown = (from_shaft.clone(), at.clone())
        .all()
        .and_then(|(from_shaft, speed)| dial.shown(line, &speed, &from_shaft));
    found.show("gearing/dial_shown", Kind::Speed, &shown);
    found.show(
        "gearing/dial_most",
        Kind::Speed,
        &at.clone().map(|speed| most_shown(&speed)),
    );
    let turns = cable(line, &from_shaft);
    found.show("gearing/cable_turns", Kind::TurnsPerDistance, &turns);
    let counted = (line.sheet.dial_constant.ask(), turns)
        .all()
        .map(|(constant, turns)| adapter_ratio(constant, &turns));
    // Counted turns tell the adapter outright; else what the dial shows does.
    let adapter = match (&counted, &shown, &at) {
        (Err(lack), Ok(shown), Ok(speed)) if lack.is_blank() => {
            Ok((speed / shown).of_kind(Kind::Ratio).called("i_a"))
        }
        _ => counted,
    };
    found.show("gearing/adapter", Kind::Ratio, &adapter);
    if let (Ok(shown), Ok(speed)) = (&shown, &at) {
        let (rank, fact) = match dial_verdict(speed, shown) {
            DialVerdict::ReadsLow => (Rank::Warning, "dial_reads_low"),
            DialVerdict::ReadsHigh => (Rank::Caution, "dial_reads_high"),
            DialVerdict::TooCloseToCall => (Rank::Caution, "dial_too_close"),
            DialVerdict::Within => (Rank::Remark, "dial_within"),
        };
        let remark = Remark::new(rank, fact).with(shown.figure(Kind::Speed));
        found.remark(remark.with(speed.figure(Kind::Speed)));
    }
}

fn cable(line: &Line, from_shaft: &Result<Ratio, Lack>) -> Result<PerLength, Lack> {
    let sheet = &line.sheet;
    if !sheet.cable_counted.is_blank() {
        return sheet.cable_counted.ask().cloned();
    }
    (
        line.circumference.clone(),
        from_shaft.clone(),
        sheet.cable_drive.ask(),
    )
        .all()
        .map(|(circumference, from_shaft, drive)| cable_turns(&circumference, &from_shaft, drive))
}
