//! Who owes whom: what each has paid against a fair share, settled with the fewest transfers.

use measure::{Decimal, Money};

use crate::TradeError;

/// The most payers that are settled together; the fewest transfers are searched among all groupings of them.
pub const MOST_PAYERS: usize = 12;

/// Someone who pays.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Payer {
    /// Their share of the cost, as a weight: 1 and 1 for halves, 60 and 40, 2 and 1.
    pub share: Decimal,
    /// What they have paid; below nothing when more came in than went out.
    pub paid: Money,
}

/// One payment that helps to settle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Transfer {
    /// Who pays, by place in the list.
    pub from: usize,
    /// Who is paid.
    pub to: usize,
    /// How much.
    pub amount: Money,
}

/// Fair shares and the transfers that settle them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Settlement {
    /// What each should bear; the parts add up to what all have paid.
    pub fair: Vec<Money>,
    /// What each has paid beyond that; they add up to nothing.
    pub ahead: Vec<Money>,
    /// The fewest payments after which nobody is ahead or behind.
    pub transfers: Vec<Transfer>,
}

/// Who owes whom.
///
/// What all have paid is split by the shares, in whole minor units. The fewest transfers are the payers who are ahead
/// or behind, less the most groups among them that are even within themselves.
///
/// # Valid range
/// Up to [`MOST_PAYERS`] payers.
///
/// # Errors
/// [`TradeError::Money`] for shares that are all nothing or below it; [`TradeError::OutOfRange`] for too many payers.
///
/// # Source
/// The least number of transfers is n less the greatest number of disjoint subsets that sum to nothing (common
/// knowledge of the zero-sum partition problem, no source).
pub fn settlement(payers: &[Payer]) -> Result<Settlement, TradeError> {
    if payers.is_empty() || payers.len() > MOST_PAYERS {
        return Err(TradeError::OutOfRange {
            entry: "payers",
            lowest: 1.0,
            highest: MOST_PAYERS as f64,
        });
    }
    let currency = payers[0].paid.currency();
    let paid = Money::sum(payers.iter().map(|payer| &payer.paid), currency)?;
    let shares: Vec<Decimal> = payers.iter().map(|payer| payer.share).collect();
    let fair = paid.split(&shares)?;
    let ahead = payers
        .iter()
        .zip(&fair)
        .map(|(payer, fair)| payer.paid.minus(fair))
        .collect::<Result<Vec<_>, _>>()?;
    let minor = ahead
        .iter()
        .map(Money::minor_units)
        .collect::<Result<Vec<_>, _>>()?;
    let mut transfers = Vec::new();
    for group in even_groups(&minor) {
        for (from, to, amount) in chain(group, &minor) {
            transfers.push(Transfer {
                from,
                to,
                amount: Money::of_minor_units(amount, currency)?,
            });
        }
    }
    Ok(Settlement {
        fair,
        ahead,
        transfers,
    })
}

/// The payers who are ahead or behind, in as many groups as can be that are each even within themselves.
fn even_groups(ahead: &[i128]) -> Vec<Vec<usize>> {
    let open: Vec<usize> = (0..ahead.len()).filter(|i| ahead[*i] != 0).collect();
    let all = 1_usize << open.len();
    let mut sum = vec![0_i128; all];
    // The most even groups met on the way to a set, adding one payer after another, and who was added last.
    let mut most = vec![0_usize; all];
    let mut added = vec![0_usize; all];
    for set in 1..all {
        let lowest = set.trailing_zeros() as usize;
        sum[set] = sum[set & (set - 1)] + ahead[open[lowest]];
        let (best, who) = (0..open.len())
            .filter(|bit| set >> bit & 1 == 1)
            .map(|bit| (most[set & !(1 << bit)], bit))
            .max_by_key(|(count, bit)| (*count, std::cmp::Reverse(*bit)))
            .unwrap_or((0, 0));
        most[set] = best + usize::from(sum[set] == 0);
        added[set] = who;
    }
    let mut groups = Vec::new();
    let mut group = Vec::new();
    let mut set = all - 1;
    while set != 0 {
        if sum[set] == 0 && !group.is_empty() {
            groups.push(std::mem::take(&mut group));
        }
        group.push(open[added[set]]);
        set &= !(1 << added[set]);
    }
    if !group.is_empty() {
        groups.push(group);
    }
    groups
}

/// Settles one even group: the one furthest behind pays the one furthest ahead, until all are even.
fn chain(group: Vec<usize>, ahead: &[i128]) -> Vec<(usize, usize, i128)> {
    let mut open: Vec<(usize, i128)> = group.into_iter().map(|who| (who, ahead[who])).collect();
    let mut transfers = Vec::new();
    loop {
        measure::sort_by_key(&mut open, |(who, balance)| (*balance, *who));
        let (Some(&(from, behind)), Some(&(to, before))) = (open.first(), open.last()) else {
            return transfers;
        };
        let amount = (-behind).min(before);
        if amount <= 0 {
            return transfers;
        }
        transfers.push((from, to, amount));
        for (who, balance) in &mut open {
            if *who == from {
                *balance += amount;
            } else if *who == to {
                *balance -= amount;
            }
        }
        open.retain(|(_, balance)| *balance != 0);
    }
}
