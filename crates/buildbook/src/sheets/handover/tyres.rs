//! How old the tyres are, by the date codes on them.

use ::trade::handover::DateCode;
use measure::{Kind, Ratio};

use super::{HandoverSheet, TyreEntry};
use crate::{BookError, Date, Found, Key, Rank, Remark};

/// What the date code of a tyre tells.
#[derive(Debug, Clone, PartialEq)]
pub struct TyreMade {
    /// The tyre's row.
    pub row: Key,
    /// The week and the year it was made in.
    pub code: DateCode,
    /// The day its age is counted to.
    pub read_on: Option<Date>,
    /// Whole years and months from the first day of that week; none while the year is in doubt, or the day is not known or before it.
    pub age: Option<(u16, u16)>,
}

/// What every tyre's code tells. One that no tyre carries stands as an error.
pub(super) fn made(found: &mut Found, sheet: &HandoverSheet) -> Vec<TyreMade> {
    let one = |tyre: &TyreEntry| {
        let text = tyre.code.value()?;
        let code = match DateCode::read(text) {
            Ok(code) => code,
            Err(error) => {
                let key = tyre.code.key().clone();
                found.errors.push((key, BookError::Trade(error)));
                return None;
            }
        };
        let decade = tyre.decade.value().and_then(|decade| decade.parse().ok());
        let code = decade.map_or(code, |decade| code.in_decade(decade));
        let read_on = if tyre.read_on.is_blank() {
            &sheet.handed_on
        } else {
            &tyre.read_on
        };
        let read_on = read_on.value().copied();
        remark(found, tyre, code, read_on);
        Some(TyreMade {
            row: tyre.key.clone(),
            code,
            read_on,
            age: age(code, read_on).filter(|_| code.sure),
        })
    };
    sheet.tyres.iter().filter_map(one).collect()
}

/// The age by the code; of three figures the least that it can be.
fn age(code: DateCode, read_on: Option<Date>) -> Option<(u16, u16)> {
    read_on?.age_since(Date::of_tyre_week(code.year, code.week)?)
}

/// Tyres that are old, and codes that leave the decade open. Six and ten years: common practice, no source.
fn remark(found: &mut Found, tyre: &TyreEntry, code: DateCode, read_on: Option<Date>) {
    if !code.sure {
        let years = DateCode::DECADES.map(|decade| code.in_decade(decade).year.to_string());
        let remark = Remark::new(Rank::Caution, "tyre_decade").at(tyre.decade.key().clone());
        found.remark(remark.naming(years.join(", ")));
    }
    let fact = match (read_on, age(code, read_on)) {
        (Some(_), None) => Some((Rank::Warning, "tyre_of_the_future")),
        (_, Some((10.., _))) => Some((Rank::Warning, "tyre_too_old")),
        (_, Some((6.., _))) => Some((Rank::Caution, "tyre_old")),
        _ => None,
    };
    if let Some((rank, fact)) = fact {
        let years = age(code, read_on).map_or(0, |(years, _)| years);
        let remark = Remark::new(rank, fact).at(tyre.code.key().clone());
        found.remark(remark.with(Ratio::exact(f64::from(years)).figure(Kind::Count)));
    }
}
