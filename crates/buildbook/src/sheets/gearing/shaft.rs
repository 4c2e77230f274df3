//! The propeller shaft: how fast it turns at most, and where it whirls.

use measure::{Kind, Length, Rotation};
use trade::gearing::{SAFE_SHARE_OF_CRITICAL, propeller_shaft_speed, shaft_critical_speed};

use super::gears::Line;
use super::pull::Pulling;
use crate::{All, Found, Lack, Rank, Remark};

/// Critical speed, highest speed, and the share of the one that the other reaches.
pub(super) fn show(found: &mut Found, line: &Line, pulling: &Pulling) {
    let sheet = &line.sheet;
    let critical = (
        sheet.shaft_outside.ask(),
        sheet.shaft_wall.ask(),
        sheet.shaft_length.ask(),
    )
        .all()
        .map(|(outside, wall, length)| {
            // A wall of half the diameter or more is a solid bar.
            let bore = (outside - 2.0 * wall)
                .greatest(&Length::exact(0.0))
                .of_kind(Kind::Length)
                .called("d_s");
            shaft_critical_speed(outside, &bore, length)
        });
    let highest = highest(line, pulling);
    let share = (highest.clone(), critical.clone())
        .all()
        .map(|(highest, critical)| (highest / critical).of_kind(Kind::Percent).called("q"));
    found.show("gearing/shaft_critical", Kind::Rotation, &critical);
    found.show("gearing/shaft_highest", Kind::Rotation, &highest);
    found.show("gearing/shaft_share", Kind::Percent, &share);
    let Ok(share) = share else { return };
    if share.value() + share.plus() > SAFE_SHARE_OF_CRITICAL {
        let rank = if share.value() > SAFE_SHARE_OF_CRITICAL {
            Rank::Warning
        } else {
            Rank::Caution
        };
        let remark = Remark::new(rank, "shaft_near_critical").at(sheet.shaft_length.key().clone());
        found.remark(remark.with(share.figure(Kind::Percent)));
    }
}

/// The shaft's highest speed: the engine at its highest, in the gear that turns the shaft fastest.
fn highest(line: &Line, pulling: &Pulling) -> Result<Rotation, Lack> {
    let limits = pulling.limits.as_ref().map_err(Clone::clone);
    let to_shaft = line.top().and_then(|gear| line.to_shaft(gear));
    let engine = match limits {
        Ok(limits) => Ok(limits.highest.clone()),
        // Without a curve the red line alone will do.
        Err(lack) => pulling.red_line.clone().ok_or(lack),
    };
    (engine, to_shaft)
        .all()
        .map(|(engine, to_shaft)| propeller_shaft_speed(&engine, &to_shaft))
}
