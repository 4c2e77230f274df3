//! One joint: its figure, what the wrench is set to, the stages and the order.

use std::rc::Rc;

use ::trade::TradeError;
use ::trade::torque as trade;
use measure::{Force, Kind, Length, Ratio, Standing, Torque, unit};

use super::wrench::{self, Wrench};
use super::{JointEntry, JointFindings};
use crate::{All, BookError, Found, Key, Lack, Rank, Remark};

/// Reckons a joint and puts its results in: `torque/figure/<id>`, `torque/setting/<id>` and so on.
pub(super) fn findings(
    entry: &JointEntry,
    wrenches: &[Wrench<'_>],
    found: &mut Found,
) -> JointFindings {
    let id = entry.id().to_owned();
    let computed = entry.figure.is_blank() && !entry.thread.is_blank();
    let joint = (!entry.thread.is_blank()).then(|| joint(entry, found));
    let tightened = joint.as_ref().filter(|_| computed).map(|joint| {
        if purpose(entry) != trade::Purpose::Other {
            // Whatever else is missing: nothing that is entered would make it right to compute this one.
            return Err(Lack::refused(TradeError::MakersFigureOnly));
        }
        joint
            .clone()
            .and_then(|joint| Ok(trade::tightening(&joint)?))
    });
    let torque = match &tightened {
        Some(tightened) => tightened.clone().map(|tightened| tightened.torque),
        None => printed(entry, found),
    };
    let clamp = clamp_loads(&torque, joint.as_ref(), tightened.as_ref());
    let (wrench, setting) = wrench::taken(entry, wrenches, &torque);
    if wrenches.len() > 1 && entry.wrench.is_blank() && setting.is_ok() {
        found.stands_in(entry.wrench.key(), wrench.id);
    }
    let stages = match (&setting, entry.stages.value()) {
        (Ok(setting), Some(count)) => trade::stages(setting, count.value() as usize),
        _ => Vec::new(),
    };
    found.show(format!("torque/figure/{id}"), Kind::Torque, &torque);
    found.show(format!("torque/setting/{id}"), Kind::Torque, &setting);
    let split = stages.iter().enumerate().filter(|_| stages.len() > 1);
    for (place, stage) in split {
        found.show(
            format!("torque/stage/{id}/{}", place + 1),
            Kind::Torque,
            &Ok(stage.clone()),
        );
    }
    if let Some([clamp, least]) = &clamp {
        found.show(
            format!("torque/clamp/{id}"),
            Kind::Force,
            &Ok(clamp.clone()),
        );
        found.show(
            format!("torque/least_clamp/{id}"),
            Kind::Force,
            &Ok(least.clone()),
        );
    }
    if let Some(Ok(tightened)) = &tightened {
        let share = Ok(tightened.share_of_yield.clone());
        found.show(format!("torque/share_of_yield/{id}"), Kind::Percent, &share);
    }
    if let Some(remark) = wrench::judge(entry, wrench, wrenches.len(), &setting, found) {
        found.remark(named(entry, remark));
    }
    remark(entry, tightened.as_ref(), found);
    engagement(entry, found);
    let order = order(entry);
    JointFindings {
        key: entry.key.clone(),
        torque,
        wrench: wrench.id.into(),
        setting,
        stages,
        computed,
        clamp,
        order,
    }
}

/// The maker's figure; of a range its middle, so that the wrench's error stays within the range on either side.
fn printed(entry: &JointEntry, found: &mut Found) -> Result<Torque, Lack> {
    let low = entry.figure.ask()?;
    if entry.figure_to.is_blank() {
        return Ok(low.clone());
    }
    let high = entry.figure_to.ask()?;
    if high.value() < low.value() {
        let key = entry.figure_to.key().clone();
        found
            .errors
            .push((key.clone(), BookError::Trade(TradeError::UpsideDown)));
        return Err(Lack::entry(key));
    }
    Ok(((low + high) / 2.0).called("M").of_kind(Kind::Torque))
}

fn purpose(entry: &JointEntry) -> trade::Purpose {
    match entry.purpose.value().copied() {
        Some("steering") => trade::Purpose::Steering,
        Some("brakes") => trade::Purpose::Brakes,
        Some("wheels") => trade::Purpose::Wheels,
        _ => trade::Purpose::Other,
    }
}

/// The joint as the calculation takes it. A thread or class that nobody knows is told at its field.
fn joint(entry: &JointEntry, found: &mut Found) -> Result<trade::Joint, Lack> {
    let mut unknown = |key: &Key, why| {
        found.errors.push((key.clone(), BookError::Trade(why)));
        Lack::entry(key.clone())
    };
    let size = entry.thread.value().map(|name| {
        trade::size(name).ok_or_else(|| unknown(entry.thread.key(), TradeError::UnknownThread))
    });
    let size = size.transpose()?;
    let (_, grade_name) = (entry.thread.ask(), entry.grade.ask()).all()?;
    let size = size.ok_or_else(|| Lack::entry(entry.thread.key().clone()))?;
    let thread = size.thread();
    let grade = trade::grade(grade_name, &thread.major)
        .ok_or_else(|| unknown(entry.grade.key(), TradeError::UnknownGrade))?;
    let (thread_friction, head_friction, use_of_yield) = (
        entry.friction_thread.ask().cloned(),
        entry.friction_head.ask().cloned(),
        entry.yield_share.ask().cloned(),
    )
        .all()?;
    Ok(trade::Joint {
        purpose: purpose(entry),
        grade,
        friction: trade::Friction {
            thread: thread_friction,
            head: head_friction,
        },
        head: head(entry, size, &thread.major)?,
        shank: entry.shank.value().cloned(),
        use_of_yield,
        scatter: match entry.method.value().copied() {
            Some("feel") => trade::Scatter::ByFeel,
            Some("angle") => trade::Scatter::Angle,
            _ => trade::Scatter::TorqueWrench,
        },
        thread,
    })
}

/// What the head bears on: as measured, else the usual face of a flange or a hexagon, and a hole a tenth wider than the thread.
fn head(entry: &JointEntry, size: &trade::ThreadSize, major: &Length) -> Result<trade::Head, Lack> {
    if entry.bearing.is_bad() || entry.hole.is_bad() {
        return Err(Lack::entry(
            if entry.bearing.is_bad() {
                &entry.bearing
            } else {
                &entry.hole
            }
            .key()
            .clone(),
        ));
    }
    let flanged = entry.head.value() == Some(&"flanged");
    let bearing = match (entry.bearing.value(), size.across_flats) {
        (Some(measured), _) => measured.clone(),
        (None, _) if flanged => trade::flange_face(major),
        // The washer face is a little less than the width across flats (ISO 4014: about 0.95 of it).
        (None, Some(flats)) => Length::of(0.95 * flats, &unit::MILLIMETRE),
        (None, None) => return Err(Lack::needs([entry.bearing.key().clone()])),
    };
    let hole = entry.hole.value().cloned().unwrap_or_else(|| major * 1.1);
    Ok(trade::Head { bearing, hole })
}

fn clamp_loads(
    torque: &Result<Torque, Lack>,
    joint: Option<&Result<trade::Joint, Lack>>,
    tightened: Option<&Result<trade::Tightening, Lack>>,
) -> Option<[Force; 2]> {
    if let Some(Ok(tightened)) = tightened {
        return Some([tightened.clamp.clone(), tightened.least_clamp.clone()]);
    }
    let (Some(Ok(joint)), Ok(torque)) = (joint, torque) else {
        return None;
    };
    let clamp = trade::clamp_load_of(torque, joint);
    let least = (&clamp * (1.0 - joint.scatter.share()))
        .called("Fmin")
        .of_kind(Kind::Force);
    Some([clamp, least])
}

/// The order of the bolts, by their places from 1.
fn order(entry: &JointEntry) -> Vec<usize> {
    let whole = |given: &crate::Given<Ratio>| given.value().map(|count| count.value() as usize);
    let order = match entry.pattern.value().copied() {
        Some("circle") => whole(&entry.bolts).map(trade::circle_order),
        Some("rectangle") => whole(&entry.rows)
            .zip(whole(&entry.columns))
            .map(|(r, c)| trade::rectangle_order(r, c)),
        _ => None,
    };
    order
        .unwrap_or_default()
        .into_iter()
        .map(|place| place + 1)
        .collect()
}

/// Puts in how much thread has to be engaged where the joint screws into a part, and warns of less.
fn engagement(entry: &JointEntry, found: &mut Found) {
    let female = match entry.into.value().copied() {
        Some("steel") => trade::Female::Steel,
        Some("iron") => trade::Female::Iron,
        Some("aluminium") => trade::Female::Aluminium,
        _ => return,
    };
    let size = entry.thread.ask().and_then(|name| {
        // Of a thread that nobody knows it is told where the figure is computed.
        trade::size(name).ok_or_else(|| Lack::entry(entry.thread.key().clone()))
    });
    let least = size.map(|size| trade::least_engagement(&size.thread().major, female));
    let id = format!("torque/engagement/{}", entry.id());
    found.show(id, Kind::Thickness, &least);
    if let (Ok(least), Some(engaged)) = (&least, entry.engaged.value())
        && engaged.standing(least) == Standing::Below
    {
        let remark = Remark::new(Rank::Warning, "engaged_too_little");
        let remark = remark
            .at(entry.engaged.key().clone())
            .with(engaged.figure(Kind::Thickness))
            .with(least.figure(Kind::Thickness));
        found.remark(named(entry, remark));
    }
}

/// The remark with the joint's name.
fn named(entry: &JointEntry, remark: Remark) -> Remark {
    match entry.name.value() {
        Some(name) => remark.naming(Rc::clone(name)),
        None => remark,
    }
}

fn remark(
    entry: &JointEntry,
    tightened: Option<&Result<trade::Tightening, Lack>>,
    found: &mut Found,
) {
    let named = |remark| named(entry, remark);
    match tightened {
        Some(Err(lack)) if lack.refusal() == Some(&TradeError::MakersFigureOnly) => {
            found.remark(named(
                Remark::new(Rank::Danger, "makers_figure_only").at(entry.figure.key().clone()),
            ));
        }
        Some(Ok(_)) => {
            found.remark(named(
                Remark::new(Rank::Caution, "computed_figure").at(entry.figure.key().clone()),
            ));
        }
        _ => {}
    }
    let fact = match entry.fixing.value().copied() {
        Some("clamping_castle") => Some((Rank::Warning, "never_back_off")),
        Some("adjusting_castle") => Some((Rank::Caution, "back_off_to_end_float")),
        Some("stretch") => Some((Rank::Warning, "stretch_bolts_new")),
        Some("self_locking") if entry.prevailing.is_blank() => {
            Some((Rank::Remark, "measure_prevailing"))
        }
        _ => None,
    };
    if let Some((rank, fact)) = fact {
        let mut remark = Remark::standing(rank, fact).at(entry.fixing.key().clone());
        remark = named(remark);
        found.remark(remark);
    }
    if entry.hand.value() == Some(&"left") {
        found.remark(named(
            Remark::standing(Rank::Remark, "left_hand_thread").at(entry.hand.key().clone()),
        ));
    }
}
