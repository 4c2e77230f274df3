//! Where the money stands: paid, committed, planned, held back, and left.

use std::collections::BTreeMap;
use std::rc::Rc;

use measure::{Decimal, Money, MoneyExpr, MoneyWorking};

use super::{LineAmounts, LineState, Reckoned, Terms, money_line};
use crate::TradeError;

/// What is held back for what nobody thought of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Contingency {
    /// A share, in per cent, of what is committed and planned but not yet paid.
    Percent(Decimal),
    /// A fixed sum.
    Sum(Money),
}

/// A line with its place in the book.
#[derive(Debug, Clone, PartialEq)]
pub struct PlacedLine {
    /// Names the line in the working, such as `costs/lines/3`.
    pub key: Rc<str>,
    /// The sheet or job it belongs to.
    pub group: Rc<str>,
    /// Who paid or pays, where it is said.
    pub payer: Option<Rc<str>>,
    /// How far it has come.
    pub state: LineState,
    /// What it comes to.
    pub amounts: LineAmounts,
}

/// The sums of a group of lines.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct GroupSum {
    /// Paid.
    pub paid: Money,
    /// Committed and not yet paid.
    pub committed: Money,
    /// Planned and not yet paid.
    pub planned: Money,
    /// The three together.
    pub total: Money,
}

impl GroupSum {
    fn none(terms: &Terms) -> Self {
        let nothing = Money::zero(terms.home);
        Self {
            paid: nothing,
            committed: nothing,
            planned: nothing,
            total: nothing,
        }
    }

    fn with(mut self, line: &PlacedLine) -> Result<Self, TradeError> {
        self.paid = self.paid.plus(&line.amounts.paid)?;
        let unpaid = &line.amounts.unpaid;
        match line.state {
            LineState::Planned => self.planned = self.planned.plus(unpaid)?,
            LineState::Committed | LineState::Paid => {
                self.committed = self.committed.plus(unpaid)?;
            }
        }
        self.total = self.total.plus(&line.amounts.total)?;
        Ok(self)
    }
}

/// Where the money stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Standing {
    /// The sums of all lines.
    pub sums: GroupSum,
    /// How paid, committed and planned came about, line by line.
    pub paid: Reckoned,
    /// Committed and not yet paid.
    pub committed: Reckoned,
    /// Planned and not yet paid.
    pub planned: Reckoned,
    /// Held back.
    pub contingency: Reckoned,
    /// What all lines come to.
    pub total: Reckoned,
    /// Deposits that are still to come back.
    pub to_come_back: Reckoned,
    /// By sheet or job, in the order of their names.
    pub by_group: Vec<(Rc<str>, GroupSum)>,
    /// What each payer has paid; the last, without a name, is what nobody is named for.
    pub by_payer: Vec<(Option<Rc<str>>, Money)>,
}

/// Where the money stands, from the lines.
///
/// # Errors
/// [`TradeError::Money`] on overflow or a currency that is not the book's.
pub fn standing(
    lines: &[PlacedLine],
    contingency: &Contingency,
    terms: &Terms,
) -> Result<Standing, TradeError> {
    let mut sums = GroupSum::none(terms);
    let mut groups: BTreeMap<Rc<str>, GroupSum> = BTreeMap::new();
    let mut payers: BTreeMap<(bool, Option<Rc<str>>), Money> = BTreeMap::new();
    for line in lines {
        sums = sums.with(line)?;
        let group = groups
            .entry(line.group.clone())
            .or_insert_with(|| GroupSum::none(terms));
        *group = group.with(line)?;
        if !line.amounts.paid.is_zero() {
            let sum = payers
                .entry((line.payer.is_none(), line.payer.clone()))
                .or_insert_with(|| Money::zero(terms.home));
            *sum = sum.plus(&line.amounts.paid)?;
        }
    }
    let is_planned = |line: &PlacedLine| line.state == LineState::Planned;
    let paid = part_sum("paid", lines, |line| Some(line.amounts.paid), terms)?;
    let committed = part_sum(
        "committed",
        lines,
        |line| (!is_planned(line)).then_some(line.amounts.unpaid),
        terms,
    )?;
    let planned = part_sum(
        "planned",
        lines,
        |line| is_planned(line).then_some(line.amounts.unpaid),
        terms,
    )?;
    let contingency = held_back(contingency, &committed.money, &planned.money, terms)?;
    Ok(Standing {
        sums,
        paid,
        committed,
        planned,
        contingency,
        total: part_sum("total", lines, |line| Some(line.amounts.total), terms)?,
        to_come_back: part_sum(
            "deposit",
            lines,
            |line| Some(line.amounts.to_come_back),
            terms,
        )?,
        by_group: groups.into_iter().collect(),
        by_payer: payers
            .into_iter()
            .map(|((_, name), sum)| (name, sum))
            .collect(),
    })
}

/// The sum of one part of every line, line by line.
///
/// # Errors
/// [`TradeError::Money`] on overflow or a currency that is not the book's.
pub fn part_sum<'l>(
    symbol: &'static str,
    lines: impl IntoIterator<Item = &'l PlacedLine>,
    part: impl Fn(&PlacedLine) -> Option<Money>,
    terms: &Terms,
) -> Result<Reckoned, TradeError> {
    let formula = MoneyExpr::Sum(
        lines
            .into_iter()
            .filter_map(|line| Some((line, part(line)?)))
            .filter(|(_, money)| !money.is_zero())
            .map(|(line, money)| (false, MoneyExpr::amount(line.key.clone(), money)))
            .collect(),
    );
    let mut working = MoneyWorking::default();
    let money = money_line(&mut working, symbol, formula, terms.home)?;
    Ok(Reckoned { money, working })
}

/// What is held back: a share of what is not yet paid, or a fixed sum; never below nothing.
fn held_back(
    contingency: &Contingency,
    committed: &Money,
    planned: &Money,
    terms: &Terms,
) -> Result<Reckoned, TradeError> {
    let mut working = MoneyWorking::default();
    let formula = match contingency {
        Contingency::Sum(money) => MoneyExpr::Sum(vec![(
            false,
            MoneyExpr::amount("costs/contingency", *money),
        )]),
        Contingency::Percent(percent) => {
            let unpaid = MoneyExpr::Sum(vec![
                (false, MoneyExpr::amount("committed", *committed)),
                (false, MoneyExpr::amount("planned", *planned)),
            ]);
            // More to come in than to go out asks for nothing to be held back.
            let unpaid = if unpaid.value()?.is_sign_negative() {
                MoneyExpr::number("0", Decimal::ZERO)
            } else {
                unpaid
            };
            MoneyExpr::Quotient {
                over: Box::new(MoneyExpr::Product(vec![
                    unpaid,
                    MoneyExpr::number("costs/contingency", *percent),
                ])),
                under: Box::new(MoneyExpr::number("100", Decimal::ONE_HUNDRED)),
                places: terms.home.minor_units(),
                rounding: terms.rounding,
            }
        }
    };
    let money = money_line(&mut working, "contingency", formula, terms.home)?;
    Ok(Reckoned { money, working })
}

/// What is left to spend; below nothing when the plans go over the limit.
///
/// `left = limit - paid - committed and unpaid - planned - contingency`
///
/// # Errors
/// [`TradeError::Money`] on overflow or a limit in another currency.
///
/// # Source
/// Common practice, no source.
pub fn left_to_spend(
    limit: &Money,
    standing: &Standing,
    terms: &Terms,
) -> Result<Reckoned, TradeError> {
    let mut working = MoneyWorking::default();
    let parts = [
        &standing.paid,
        &standing.committed,
        &standing.planned,
        &standing.contingency,
    ];
    for part in parts {
        working.lines.extend(part.working.lines.iter().cloned());
    }
    limit.compared(&standing.paid.money)?;
    let formula = MoneyExpr::Sum(vec![
        (false, MoneyExpr::amount("costs/limit", *limit)),
        (true, MoneyExpr::amount("paid", standing.paid.money)),
        (
            true,
            MoneyExpr::amount("committed", standing.committed.money),
        ),
        (true, MoneyExpr::amount("planned", standing.planned.money)),
        (
            true,
            MoneyExpr::amount("contingency", standing.contingency.money),
        ),
    ]);
    let money = money_line(&mut working, "left", formula, terms.home)?;
    Ok(Reckoned { money, working })
}

/// What can still be planned so that nothing is left over, with its own contingency held back.
///
/// `room = left / (1 + c / 100)`, to the smallest unit, one less or more where rounding asks for it; `room = left` where a fixed
/// sum is held back, and nothing where nothing is left.
///
/// # Errors
/// [`TradeError::Money`] on overflow.
///
/// # Source
/// Algebra of [`left_to_spend`].
pub fn room_to_plan(
    left: &Money,
    contingency: &Contingency,
    terms: &Terms,
) -> Result<Reckoned, TradeError> {
    let percent = match contingency {
        Contingency::Percent(percent) if !percent.is_sign_negative() => *percent,
        _ => Decimal::ZERO,
    };
    let number = |name: &str, value| MoneyExpr::number(name, value);
    let mut working = MoneyWorking::default();
    let formula = if left.is_negative() {
        number("0", Decimal::ZERO)
    } else {
        MoneyExpr::Quotient {
            over: Box::new(MoneyExpr::Product(vec![
                MoneyExpr::amount("costs/left", *left),
                number("100", Decimal::ONE_HUNDRED),
            ])),
            under: Box::new(MoneyExpr::Sum(vec![
                (false, number("100", Decimal::ONE_HUNDRED)),
                (false, number("costs/contingency", percent)),
            ])),
            places: terms.home.minor_units(),
            rounding: terms.rounding,
        }
    };
    let room = money_line(&mut working, "room", formula, terms.home)?;
    // Rounding may have gone a coin too far, or a coin short.
    let coin = Money::of_minor_units(1, terms.home)?;
    let fits = |room: &Money| -> Result<bool, TradeError> {
        let held = room.times_fraction(percent, Decimal::ONE_HUNDRED, terms.rounding)?;
        Ok(!left.minus(&room.plus(&held)?)?.is_negative())
    };
    let too_far = !fits(&room)?;
    if left.is_negative() || !too_far && !fits(&room.plus(&coin)?)? {
        return Ok(Reckoned {
            money: room,
            working,
        });
    }
    let formula = MoneyExpr::Sum(vec![
        (false, MoneyExpr::amount("room", room)),
        (too_far, MoneyExpr::amount("coin", coin)),
    ]);
    let money = money_line(&mut working, "room_with_held", formula, terms.home)?;
    Ok(Reckoned { money, working })
}

/// The limit that would leave a wanted sum.
///
/// `limit = limit now - left now + wanted`
///
/// # Errors
/// [`TradeError::Money`] on overflow or mixed currencies.
///
/// # Source
/// Algebra of [`left_to_spend`].
pub fn limit_that_leaves(wanted: &Money, limit: &Money, left: &Money) -> Result<Money, TradeError> {
    Ok(limit.minus(left)?.plus(wanted)?)
}
