//! Working back an amount of money: the price, limit or rate that gives a wanted amount, to the smallest coin.

use measure::{Decimal, Mark, Money, MoneyExpr, MoneyReading, Rounding};

use crate::field::{Form, field_of};
use crate::{Answer, Asking, Book, Edit, Entry, Findings, Key, Spot, WorkBackError, evaluate};

/// The entry that gives a wanted amount.
#[derive(Debug, Clone)]
pub struct MoneyWorkedBack {
    /// The amount to enter.
    pub value: Money,
    /// The edit that enters it.
    pub edit: Edit,
    /// What the result then is.
    pub result: Money,
    /// Whether that is the wanted amount to the coin, or the nearest above it.
    pub met: bool,
}

/// The money entries that an amount rests on, those of the result's own line first.
#[must_use]
pub fn money_entries(findings: &Findings, id: &str) -> Vec<Key> {
    let mut keys = Vec::new();
    gather(findings, id, &mut keys, 0);
    keys
}

/// How deep the lines of a working lead to those of others: a sum, a line, its entries.
const DEEPEST: u32 = 4;

fn gather(findings: &Findings, id: &str, keys: &mut Vec<Key>, depth: u32) {
    let found = id.split('/').next().and_then(|sheet| findings.found(sheet));
    let Some(Ok(reckoned)) = found.and_then(|found| found.money(id)) else {
        return;
    };
    // The last line gives the result: what it names comes first, then what lies deeper.
    let mut names = Vec::new();
    for line in reckoned.working.lines.iter().rev() {
        named(&line.formula, &mut names);
    }
    let is_money = |name: &str| {
        let field = field_of(&Key::from(name));
        field.is_some_and(|field| matches!(field.form, Form::Money(_)))
    };
    let (own, others): (Vec<_>, Vec<_>) = names.into_iter().partition(|name| is_money(name));
    for key in own.iter().map(|name| Key::from(&**name)) {
        if !keys.contains(&key) {
            keys.push(key);
        }
    }
    for name in others {
        if depth < DEEPEST && *name != *id && name.contains('/') {
            gather(findings, &name, keys, depth + 1);
        }
    }
}

fn named(formula: &MoneyExpr, names: &mut Vec<std::rc::Rc<str>>) {
    match formula {
        MoneyExpr::Amount { name, .. } | MoneyExpr::Number { name, .. } => {
            if !names.contains(name) {
                names.push(name.clone());
            }
        }
        MoneyExpr::Sum(parts) => parts.iter().for_each(|(_, part)| named(part, names)),
        MoneyExpr::Product(parts) => parts.iter().for_each(|part| named(part, names)),
        MoneyExpr::Quotient { over, under, .. } => {
            named(over, names);
            named(under, names);
        }
        MoneyExpr::Rounded { of, .. } => named(of, names),
    }
}

/// Finds the amount at `key` that makes the amount `id` what is wanted, or the nearest above that whole coins allow.
///
/// # Errors
/// [`WorkBackError`]: the entry is no amount, the result has none, or does not depend on the entry.
pub fn money_back(
    book: &Book,
    findings: &Findings,
    id: &str,
    key: &Key,
    wanted: &Money,
) -> Result<MoneyWorkedBack, WorkBackError> {
    let field = field_of(key)
        .filter(|field| matches!(field.form, Form::Money(_)))
        .ok_or_else(|| WorkBackError::NotANumber(key.clone()))?;
    let spot = Spot::from(key);
    let asking = Asking {
        spot: &spot,
        field,
        currency: book.currency_at(key),
    };
    let entry = book
        .entry(key.as_str())
        .cloned()
        .unwrap_or_else(|| Entry::new(field.assumed.unwrap_or("0")));
    let now = MoneyReading::read((&entry).into(), &asking)
        .map_err(|_| WorkBackError::NotANumber(key.clone()))?;
    let search = Search {
        book,
        findings,
        id,
        key,
        currency: now.money,
        named: now.named,
        wanted: *wanted,
        asking,
    };
    search.answer()
}

struct Search<'a> {
    book: &'a Book,
    findings: &'a Findings,
    id: &'a str,
    key: &'a Key,
    currency: Money,
    named: bool,
    wanted: Money,
    asking: Asking<'a>,
}

impl Search<'_> {
    /// The edit that enters so many coins.
    fn edit(&self, coins: i128) -> Option<(Money, Edit)> {
        let value = Money::of_minor_units(coins, self.currency.currency()).ok()?;
        let figures = value.figures(Mark::Point);
        let text = if self.named {
            format!("{figures} {}", value.currency())
        } else {
            figures
        };
        // An amount with three decimals could be taken for thousands: the mark is settled.
        let entry = Entry::new(text.as_str()).with_mark(Mark::Point);
        let reads = MoneyReading::read((&entry).into(), &self.asking)
            .is_ok_and(|reading| reading.money == value);
        reads.then(|| (value, self.book.setting(self.key.clone(), Some(entry))))
    }

    /// How far the result lies above the wanted amount, in its coins.
    fn above(&self, coins: i128) -> Option<i128> {
        let (_, edit) = self.edit(coins)?;
        let findings = evaluate(&self.book.with(&edit), Some(self.findings));
        let found = findings.found(self.id.split('/').next()?)?;
        let money = found.money(self.id)?.as_ref().ok()?.money;
        money.minus(&self.wanted).ok()?.minor_units().ok()
    }

    fn answer(&self) -> Result<MoneyWorkedBack, WorkBackError> {
        let no_result = || WorkBackError::NoResult(self.id.into());
        let rounded = self.currency.rounded(Rounding::HalfEven);
        let mut at = rounded.minor_units().map_err(|_| no_result())?;
        let step = 10_000;
        let mut here = self.above(at).ok_or_else(no_result)?;
        let there = self.above(at + step).ok_or_else(no_result)?;
        if there == here {
            return Err(WorkBackError::NoPart(self.key.clone()));
        }
        let (over, under) = (step, there - here);
        // The amounts are straight lines of the entry but for rounding: two steps land within a few coins.
        for _ in 0..6 {
            let move_by = Decimal::from_i128_with_scale(-here * over, 0)
                / Decimal::from_i128_with_scale(under, 0);
            let by = move_by.round().mantissa() / 10_i128.pow(move_by.round().scale());
            if by == 0 {
                break;
            }
            at += by;
            here = self.above(at).ok_or_else(no_result)?;
        }
        let near: Vec<(i128, i128)> = (at - 4..=at + 4)
            .filter_map(|coins| Some((coins, self.above(coins)?)))
            .collect();
        let best = near
            .iter()
            .filter(|(_, above)| *above >= 0)
            .min_by_key(|(coins, above)| (*above, (coins - at).abs()))
            .or_else(|| near.iter().max_by_key(|(_, above)| *above))
            .ok_or_else(no_result)?;
        let (value, edit) = self.edit(best.0).ok_or_else(no_result)?;
        let result = Money::of_minor_units(best.1, self.wanted.currency())
            .and_then(|above| self.wanted.plus(&above))
            .map_err(|_| no_result())?;
        Ok(MoneyWorkedBack {
            value,
            edit,
            result,
            met: best.1 == 0,
        })
    }
}
