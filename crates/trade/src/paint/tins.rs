//! The cheapest set of tins that holds what is needed: exact, by going through the sets worth keeping. However much is
//! needed, most of it comes in the size that is cheapest by the litre; only what stands beside that has to be searched.

use rust_decimal::Decimal;

/// A size that the shop sells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tin {
    /// What it holds, in microlitres: whole numbers keep sums exact.
    pub microlitres: u64,
    /// What it costs.
    pub price: Decimal,
}

/// The tins to buy.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Purchase {
    /// How many of each size, in the order of the list.
    pub counts: Vec<u32>,
    /// What they hold together, in microlitres.
    pub microlitres: u64,
    /// What they cost together.
    pub cost: Decimal,
}

/// A set of tins on the way to a purchase, its cost in millionths of the currency.
#[derive(Clone)]
struct Set {
    microlitres: u64,
    cost: i128,
    counts: Vec<u32>,
}

impl Set {
    fn tins(&self) -> u32 {
        self.counts.iter().sum()
    }

    /// The set with so many more tins of a size.
    fn with(&self, more: u32, place: usize, (size, price): (u64, i128)) -> Self {
        let mut set = self.clone();
        set.microlitres += size * u64::from(more);
        set.cost += price * i128::from(more);
        set.counts[place] += more;
        set
    }
}

/// The cheapest tins that hold at least the volume needed; at the same price the set that holds more, then the one of
/// fewer tins. Nothing where nothing is needed or nothing is for sale.
///
/// minimise `Σ n_i p_i` over whole `n_i >= 0` with `Σ n_i v_i >= V`
///
/// # Units
/// Microlitres and money; both are counted exactly, so a purchase carries no ±.
/// # Valid range
/// Sizes above nothing, prices not below nothing; sizes that are neither are passed over.
/// # Source
/// Integer covering problem; compared with SciPy's `milp` in the reference checks.
/// # Example
/// 0.5, 1, 2.5 and 5 L at 14, 24, 52 and 95: 6.2 L cost 133.
#[must_use]
pub fn cheapest_tins(needed: u64, tins: &[Tin]) -> Option<Purchase> {
    let millionths = |mut price: Decimal| {
        price.rescale(PRICE_PLACES);
        price.mantissa()
    };
    let for_sale = |(_, tin): &(usize, &Tin)| tin.microlitres > 0 && tin.price >= Decimal::ZERO;
    let priced = |(place, tin): (usize, &Tin)| (place, (tin.microlitres, millionths(tin.price)));
    let sizes: Vec<_> = tins
        .iter()
        .enumerate()
        .filter(for_sale)
        .map(priced)
        .collect();
    // The cheapest by the litre, of several the largest.
    let by_the_litre = |(_, (size, price)): &(usize, (u64, i128)), other: &(usize, (u64, i128))| {
        let (other_size, other_price) = other.1;
        (price * i128::from(other_size))
            .cmp(&(other_price * i128::from(*size)))
            .then(other_size.cmp(size))
    };
    let &(main, (main_size, main_price)) = sizes.iter().min_by(|a, b| by_the_litre(a, b))?;
    if needed == 0 {
        return None;
    }
    let filled_up = |set: &Set| {
        let lacking = needed.saturating_sub(set.microlitres).div_ceil(main_size);
        Some(set.with(u32::try_from(lacking).ok()?, main, (main_size, main_price)))
    };
    let nothing = Set {
        microlitres: 0,
        cost: 0,
        counts: vec![0; tins.len()],
    };
    let bound = filled_up(&nothing)?.cost;
    // What is lacking costs at least what it does by the litre.
    let may_be_cheapest = |set: &Set| {
        let lacking = i128::from(needed.saturating_sub(set.microlitres));
        let by_litre = set.cost.saturating_mul(main_size.into());
        by_litre.saturating_add(lacking.saturating_mul(main_price))
            <= bound.saturating_mul(main_size.into())
    };
    let mut worth_keeping = vec![nothing];
    for &(place, tin) in sizes.iter().filter(|(place, _)| *place != main) {
        // So many of them hold what whole tins of the main size hold, for no less.
        let most = main_size / greatest_common_divisor(main_size, tin.0);
        let mut next = Vec::new();
        // The smallest first: they lead to the others.
        for mut set in worth_keeping.into_iter().rev() {
            for _ in 1..most {
                if set.microlitres >= needed || next.len() > MOST_SETS {
                    break;
                }
                let more = set.with(1, place, tin);
                if !may_be_cheapest(&more) {
                    break;
                }
                next.push(std::mem::replace(&mut set, more));
            }
            next.push(set);
        }
        worth_keeping = without_dominated(next);
    }
    worth_keeping
        .iter()
        .filter_map(filled_up)
        .min_by(|a, b| {
            a.cost
                .cmp(&b.cost)
                .then(b.microlitres.cmp(&a.microlitres))
                .then(a.tins().cmp(&b.tins()))
        })
        .map(|set| Purchase {
            counts: set.counts,
            microlitres: set.microlitres,
            cost: Decimal::from_i128_with_scale(set.cost, PRICE_PLACES).normalize(),
        })
}

/// As many sets are looked at for each size, more than any shop's list asks for: a list made up so that hundreds of litres in a
/// dozen odd sizes all cost the same by the litre is bought well, and perhaps not to the penny.
const MOST_SETS: usize = 50_000;

/// Prices are reckoned in millionths, finer than any currency goes.
const PRICE_PLACES: u32 = 6;

fn greatest_common_divisor(a: u64, b: u64) -> u64 {
    if b == 0 {
        a
    } else {
        greatest_common_divisor(b, a % b)
    }
}

/// Leaves out every set for which another holds as much or more and costs as much or less.
fn without_dominated(mut sets: Vec<Set>) -> Vec<Set> {
    measure::sort_by(&mut sets, |a, b| {
        b.microlitres
            .cmp(&a.microlitres)
            .then(a.cost.cmp(&b.cost))
            .then(a.tins().cmp(&b.tins()))
    });
    let mut least_cost: Option<i128> = None;
    sets.retain(|set| {
        let keep = least_cost.is_none_or(|least| set.cost < least);
        if keep {
            least_cost = Some(set.cost);
        }
        keep
    });
    sets
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn tin(millilitres: u64, price: i64) -> Tin {
        Tin {
            microlitres: millilitres * 1000,
            price: Decimal::from(price),
        }
    }

    /// Every set of tins up to a count of each.
    fn cheapest_by_trying_all(needed: u64, tins: &[Tin]) -> Decimal {
        fn from(needed: u64, tins: &[Tin]) -> Option<Decimal> {
            let (first, rest) = tins.split_first()?;
            (0..=needed.div_ceil(first.microlitres))
                .filter_map(|count| {
                    let cost = first.price * Decimal::from(count);
                    let left = needed.saturating_sub(count * first.microlitres);
                    if left == 0 {
                        Some(cost)
                    } else {
                        from(left, rest).map(|more| cost + more)
                    }
                })
                .min()
        }
        from(needed, tins).unwrap()
    }

    #[test]
    fn the_dear_small_tin_is_not_taken_where_a_large_one_costs_less() {
        let purchase = cheapest_tins(900_000, &[tin(500, 20), tin(1000, 24)]).unwrap();
        assert_eq!(
            (purchase.counts, purchase.cost),
            (vec![0, 1], Decimal::from(24))
        );
    }

    #[test]
    fn the_greedy_choice_is_beaten() {
        // Largest first would take 5 + 1 for 115; three of 2 cost 90.
        let purchase = cheapest_tins(6_000_000, &[tin(5000, 95), tin(2000, 30), tin(1000, 20)]);
        assert_eq!(purchase.unwrap().cost, Decimal::from(90));
    }

    #[test]
    fn nothing_needed_or_nothing_for_sale_is_no_purchase() {
        assert!(cheapest_tins(0, &[tin(500, 14)]).is_none());
        assert!(cheapest_tins(100, &[]).is_none());
        assert!(cheapest_tins(100, &[tin(0, 14)]).is_none());
    }

    #[test]
    fn at_the_same_price_the_set_that_holds_more_is_taken() {
        let purchase = cheapest_tins(1_000_000, &[tin(500, 10), tin(1500, 20)]).unwrap();
        assert_eq!(purchase.counts, vec![0, 1]);
    }

    #[test]
    fn a_lake_of_paint_is_bought_as_fast_as_a_litre() {
        // A million litres: 263852 tins of 3.79 L hold 999999.08 L, and a litre more costs less than another of them.
        let sizes = [tin(500, 14), tin(1000, 24), tin(2500, 52), tin(3790, 71)];
        let purchase = cheapest_tins(1_000_000_000_000, &sizes).unwrap();
        assert_eq!(purchase.counts, [0, 1, 0, 263_852]);
        assert_eq!(purchase.cost, Decimal::from(263_852 * 71 + 24));
    }

    #[test]
    fn a_list_without_rhyme_or_reason_is_bought_from_all_the_same() {
        let odd = |at: u64| tin(500 + 37 * at, i64::try_from(500 + 37 * at).unwrap());
        let sizes: Vec<_> = (1..=10).map(odd).collect();
        let purchase = cheapest_tins(1_000_000_000_000, &sizes).unwrap();
        // A pound a millilitre, whichever tins: no less than what is needed, and no more than one tin above it.
        let least = Decimal::from(1_000_000_000);
        assert!(purchase.cost >= least && purchase.cost < least + Decimal::from(870));
    }

    proptest! {
        #[test]
        fn the_purchase_is_as_cheap_as_any_and_holds_enough(
            needed in 1_u64..12_000,
            sizes in prop::collection::vec((200_u64..4000, 1_i64..200), 1..5),
        ) {
            let tins: Vec<_> = sizes.iter().map(|&(size, price)| tin(size, price)).collect();
            let purchase = cheapest_tins(needed * 1000, &tins).unwrap();
            prop_assert!(purchase.microlitres >= needed * 1000);
            let held: u64 =
                purchase.counts.iter().zip(&tins).map(|(n, tin)| u64::from(*n) * tin.microlitres).sum();
            let cost: Decimal =
                purchase.counts.iter().zip(&tins).map(|(n, tin)| Decimal::from(*n) * tin.price).sum();
            prop_assert_eq!(held, purchase.microlitres);
            prop_assert_eq!(cost, purchase.cost);
            prop_assert_eq!(purchase.cost, cheapest_by_trying_all(needed * 1000, &tins));
        }

        #[test]
        fn more_paint_never_costs_less(
            needed in 1_u64..20_000,
            more in 0_u64..5000,
            sizes in prop::collection::vec((200_u64..4000, 1_i64..200), 1..5),
        ) {
            let tins: Vec<_> = sizes.iter().map(|&(size, price)| tin(size, price)).collect();
            let cost = |needed: u64| cheapest_tins(needed * 1000, &tins).unwrap().cost;
            prop_assert!(cost(needed) <= cost(needed + more));
        }
    }
}
