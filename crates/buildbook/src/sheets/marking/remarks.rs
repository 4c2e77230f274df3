//! What the readings say of each other, and the cautions of the trade.

use ::trade::marking::Check;
use measure::{Figure, Kind};
use std::rc::Rc;

use super::moving::Moved;
use super::take_off::TakenOff;
use super::{FeatureEntry, MarkingSheet};
use crate::{Found, Key, Rank, Remark};

pub(super) fn remark(sheet: &MarkingSheet, taken: &TakenOff, moved: &Moved, found: &mut Found) {
    let mut unchecked = None;
    let mut count = 0_u32;
    for (feature, fixed) in sheet.features.iter().zip(&taken.features) {
        let Ok(fix) = &fixed.fix else { continue };
        let at = |reading: usize| fixed.readings.get(reading).cloned();
        match &fix.check {
            Check::Agree => {}
            Check::Nothing => {
                unchecked = unchecked.or_else(|| at(0));
                count += 1;
            }
            Check::OneIsBad => found.remark(told(Rank::Warning, "one_is_bad", at(0))),
            Check::SeveralAreBad => found.remark(told(Rank::Warning, "several_are_bad", at(0))),
            Check::Spoiled { reading, or } => {
                let fact = if or.is_empty() {
                    "spoiled"
                } else {
                    "spoiled_or"
                };
                let mut remark = told(Rank::Warning, fact, at(*reading));
                if let Some(by) = fixed.out_by {
                    remark = remark.with(Figure::exact(by, Kind::Length));
                }
                remark = remark.naming(letter(feature, at(*reading)));
                for which in or {
                    remark = remark.naming(letter(feature, at(*which)));
                }
                found.remark(remark);
            }
        }
    }
    if let Some(at) = unchecked {
        let remark = Remark::new(Rank::Remark, "nothing_checks").at(at);
        found.remark(remark.with(Figure::exact(f64::from(count), Kind::Count)));
    }
    of_the_move(sheet, moved, found);
    found.remark(Remark::standing(Rank::Danger, "hot_work"));
    found.remark(Remark::standing(Rank::Warning, "inspection"));
    found.remark(Remark::standing(Rank::Caution, "look_behind"));
}

fn told(rank: Rank, fact: &'static str, at: Option<Key>) -> Remark {
    let remark = Remark::new(rank, fact);
    match at {
        Some(key) => remark.at(key),
        None => remark,
    }
}

/// The letter of the datum that a reading runs from; a reading by itself has its row.
fn letter(feature: &FeatureEntry, at: Option<Key>) -> Rc<str> {
    let Some(at) = at else { return "".into() };
    let row = feature.more.iter().find(|row| *row.reading.key() == at);
    let from = match row {
        Some(row) => row.from.value().copied().unwrap_or_default(),
        None => at.field(),
    };
    from.to_ascii_uppercase().into()
}

/// What both sides may differ by, root of the mean square, before one of them is doubted, metres. Common practice, no source.
const CROOKED: f64 = 0.01;

fn of_the_move(sheet: &MarkingSheet, moved: &Moved, found: &mut Found) {
    let far = moved.fit.as_ref().filter(|fit| fit.rms > CROOKED);
    let rests = far.into_iter().flat_map(|fit| &fit.residuals);
    if let Some(most) = rests.max_by(|a, b| a.value().total_cmp(&b.value())) {
        let remark = Remark::new(Rank::Caution, "fit_far").at(sheet.new_ab.key().clone());
        found.remark(remark.with(most.figure(Kind::Length)));
    }
    if !moved.mirrors || !found.begun {
        return;
    }
    if moved.line.is_none() && sheet.new_ab.is_blank() {
        let remark = Remark::new(Rank::Remark, "taken_as_alike");
        found.remark(remark.at(sheet.new_ab.key().clone()));
    }
    if let [pair] = &moved.pairs[..] {
        found.remark(Remark::new(Rank::Remark, "one_pair").at(pair.0.under("twin_a")));
    }
    // What keeps the twins from lying on each other's images, beyond the ±, is the body.
    if let Some(line) = &moved.line {
        let rests = moved.pairs.iter().zip(&line.residuals);
        let most = rests.max_by(|a, b| a.1.value().total_cmp(&b.1.value()));
        let most = most.filter(|(_, rest)| rest.value() > rest.minus());
        if let Some(((key, _), rest)) = most {
            let remark = Remark::new(Rank::Remark, "not_alike").at(key.under("twin_a"));
            found.remark(remark.with(rest.figure(Kind::Length)));
        }
    }
    if moved.features.iter().any(|feature| feature.kept) {
        found.remark(Remark::standing(Rank::Remark, "handed_kept"));
    }
}
