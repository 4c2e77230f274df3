//! Buying: what is needed of each product, the cheapest tins that hold it, and what doing it ourselves costs beside the
//! paint shop's quote.

use std::rc::Rc;

use measure::{
    Decimal, Figure, Kind, Manner, Money, MoneyExpr, MoneyWorking, Rounding, Volume, show,
};
use trade::TradeError;
use trade::costs::Reckoned;
use trade::paint::{Purchase as Tins, Tin, cheapest_tins};

use super::entries::{PaintProduct, PaintSheet, PaintTin};
use crate::key::joined;
use crate::{All, Found, Lack, MoneyFinding, Purchase, Rank, Remark};

/// What of a product is to be bought.
#[derive(Debug, Clone)]
pub struct ProductFound {
    /// The id of its row.
    pub id: Rc<str>,
    /// How many of which tin, for those that are bought.
    pub tins: Vec<TinFound>,
    /// Whether the ± of what is needed reaches over into another set of tins.
    pub straddles: bool,
}

/// So many tins of a size.
#[derive(Debug, Clone)]
pub struct TinFound {
    /// The id of the tin's row.
    pub id: Rc<str>,
    /// What one holds.
    pub size: Figure,
    /// How many.
    pub count: u32,
    /// What one costs.
    pub price: Money,
}

/// What all layers need of each product, in the order of the list.
pub(super) type Needs = Vec<Vec<Result<Volume, Lack>>>;

/// Microlitres, the whole number next above: a tin must hold all that is needed.
fn microlitres(litres: f64) -> u64 {
    // A hair below a whole number is that number: binary fractions must not cost a tin.
    (litres * 1e9 - 1e-3).ceil().max(0.0) as u64
}

/// One tin of the price list; a row with nothing in it is passed over.
fn tin_of(row: &PaintTin) -> Option<Result<(Tin, &PaintTin), Lack>> {
    if row.size.is_blank() && row.price.is_blank() {
        return None;
    }
    Some(
        (row.size.ask(), row.price.ask())
            .all()
            .map(|(size, price)| {
                (
                    Tin {
                        microlitres: (size.value() * 1e9).round() as u64,
                        price: price.amount(),
                    },
                    row,
                )
            }),
    )
}

/// What is bought of every product, into the findings.
pub(super) fn buy(
    sheet: &PaintSheet,
    needs: &Needs,
    rounding: Rounding,
    found: &mut Found,
) -> Vec<ProductFound> {
    let mut costs = Vec::new();
    let mut products = Vec::new();
    for (product, needs) in sheet.products.iter().zip(needs) {
        if needs.is_empty() {
            products.push(ProductFound {
                id: product.id().into(),
                tins: Vec::new(),
                straddles: false,
            });
            continue;
        }
        let need = need_of(product, needs);
        let id = joined(&["paint/product_litres", product.id()]);
        found.show(&*id, Kind::Volume, &need);
        // The figure that is shown keeps its ±: it is reckoned once for the page and the tins.
        let bought = need.and_then(|need| Bought::of(product, need, found.figure(&id)));
        let cost = bought
            .as_ref()
            .map_err(Clone::clone)
            .and_then(|bought| bought.cost(product));
        found.put_money(cost_id(product), cost.clone());
        costs.push((product, cost));
        let left = bought
            .as_ref()
            .map(|bought| bought.left_over.clone())
            .map_err(Clone::clone);
        found.show(
            joined(&["paint/left_over", product.id()]),
            Kind::Volume,
            &left,
        );
        match bought {
            Ok(bought) => {
                bought.remark(product, found);
                found.purchases.extend(bought.purchases(product));
                products.push(bought.found(product));
            }
            Err(_) => products.push(ProductFound {
                id: product.id().into(),
                tins: Vec::new(),
                straddles: false,
            }),
        }
    }
    show_money(sheet, costs, rounding, found);
    products
}

/// What all layers need of a product, less what is on the shelf.
fn need_of(product: &PaintProduct, needs: &[Result<Volume, Lack>]) -> Result<Volume, Lack> {
    let parts: Vec<Volume> = needs.iter().cloned().collect::<Result<_, _>>()?;
    let in_hand = product.in_hand.ask()?;
    let need = Volume::sum_of(&parts)
        .called("V_need")
        .of_kind(Kind::Volume);
    if in_hand.value() == 0.0 {
        return Ok(need);
    }
    Ok((need - in_hand).called("V_buy").of_kind(Kind::Volume))
}

/// The tins of one product.
struct Bought<'s> {
    tins: Tins,
    rows: Vec<&'s PaintTin>,
    left_over: Volume,
    straddles: bool,
}

impl<'s> Bought<'s> {
    fn of(product: &'s PaintProduct, need: Volume, shown: Option<&Figure>) -> Result<Self, Lack> {
        let list: Vec<_> = product
            .tins
            .iter()
            .filter_map(tin_of)
            .collect::<Result<_, _>>()?;
        if list.is_empty() {
            return Err(Lack::needs([product.key.under("tins")]));
        }
        let (tins, rows): (Vec<Tin>, Vec<_>) = list.into_iter().unzip();
        let set = |litres: f64| {
            let nothing = Tins {
                counts: vec![0; tins.len()],
                microlitres: 0,
                cost: Decimal::ZERO,
            };
            cheapest_tins(microlitres(litres), &tins).unwrap_or(nothing)
        };
        let bought = set(need.value());
        // The cheapest tins for more are the same as long as they hold it; for less there may be cheaper ones.
        let straddles = shown.is_some_and(|shown| {
            microlitres(need.value() + shown.plus()) > bought.microlitres
                || set(need.value() - shown.minus()).counts != bought.counts
        });
        let held = Volume::exact(bought.microlitres as f64 * 1e-9)
            .called("V_tins")
            .of_kind(Kind::Volume);
        let left_over = (held - need).called("V_left").of_kind(Kind::Volume);
        Ok(Self {
            tins: bought,
            rows,
            left_over,
            straddles,
        })
    }

    fn lines(&self) -> impl Iterator<Item = (&'s PaintTin, u32)> + '_ {
        self.rows
            .iter()
            .copied()
            .zip(self.tins.counts.iter().copied())
            .filter(|(_, count)| *count > 0)
    }

    /// What the tins cost together, tin by tin.
    fn cost(&self, product: &PaintProduct) -> MoneyFinding {
        let mut parts = Vec::new();
        let mut sum: Option<Money> = None;
        for (row, count) in self.lines() {
            let price = row.price.ask()?;
            let line = price.times(count.into()).map_err(TradeError::from)?;
            sum = Some(match sum {
                Some(sum) => sum.plus(&line).map_err(TradeError::from)?,
                None => line,
            });
            parts.push((
                false,
                MoneyExpr::Product(vec![
                    MoneyExpr::number("n", count.into()),
                    MoneyExpr::amount("price", *price),
                ]),
            ));
        }
        let any = self.rows.first().ok_or(Lack::needs([]))?.price.ask()?;
        let money = sum.unwrap_or(Money::zero(any.currency()));
        reckoned(cost_id(product), MoneyExpr::Sum(parts), money)
    }

    fn purchases(&self, product: &'s PaintProduct) -> Vec<Purchase> {
        let name = product
            .name
            .value()
            .cloned()
            .unwrap_or_else(|| product.id().into());
        self.lines()
            .filter_map(|(row, count)| {
                let (size, price) = (row.size.value()?, row.price.value()?);
                let id = format!("paint-tins-{}-{}", product.id(), row.id());
                let pack = show(&size.figure(Kind::Volume), &Manner::default()).without_error();
                Some(
                    Purchase::packs("paint", id, Rc::clone(&name), count, *price).in_packs_of(pack),
                )
            })
            .collect()
    }

    fn remark(&self, product: &PaintProduct, found: &mut Found) {
        let name = product
            .name
            .value()
            .cloned()
            .unwrap_or_else(|| product.id().into());
        let at = |rank, fact| {
            Remark::new(rank, fact)
                .at(product.key.clone())
                .naming(Rc::clone(&name))
        };
        if self.straddles {
            found.remark(at(Rank::Caution, "tins_straddle"));
        }
        let role = product.role.value().copied();
        if role == Some("paint") && self.tins.counts.iter().sum::<u32>() > 1 {
            found.remark(at(Rank::Remark, "mix_tins_together"));
        }
        if role == Some("hardener") && self.left_over.value() > 0.0 && self.tins.microlitres > 0 {
            found.remark(at(Rank::Remark, "hardener_keeps_badly"));
        }
    }

    fn found(&self, product: &PaintProduct) -> ProductFound {
        let tins = self
            .lines()
            .filter_map(|(row, count)| {
                let size = row.size.value()?.figure(Kind::Volume);
                Some(TinFound {
                    id: row.id().into(),
                    size,
                    count,
                    price: *row.price.value()?,
                })
            })
            .collect();
        ProductFound {
            id: product.id().into(),
            tins,
            straddles: self.straddles,
        }
    }
}

/// The name of a product's cost among the results.
fn cost_id(product: &PaintProduct) -> Rc<str> {
    joined(&["paint/product_cost", product.id()])
}

fn reckoned(symbol: impl Into<Rc<str>>, formula: MoneyExpr, money: Money) -> MoneyFinding {
    let mut working = MoneyWorking::default();
    working.line(symbol, formula).map_err(TradeError::from)?;
    Ok(Reckoned { money, working })
}

/// A sum of named amounts; those marked are taken away.
fn sum_of(symbol: &'static str, parts: Vec<(bool, Rc<str>, Money)>) -> MoneyFinding {
    let mut sum: Option<Money> = None;
    for (taken, _, money) in &parts {
        let signed = if *taken { money.negated() } else { *money };
        sum = Some(match sum {
            Some(sum) => sum.plus(&signed).map_err(TradeError::from)?,
            None => signed,
        });
    }
    let Some(sum) = sum else {
        return Err(Lack::needs([]));
    };
    let formula = parts
        .into_iter()
        .map(|(taken, name, money)| (taken, MoneyExpr::amount(name, money)));
    reckoned(symbol, MoneyExpr::Sum(formula.collect()), sum)
}

/// Tins in all, doing it ourselves, and what that saves beside the quote.
fn show_money(
    sheet: &PaintSheet,
    costs: Vec<(&PaintProduct, MoneyFinding)>,
    rounding: Rounding,
    found: &mut Found,
) {
    let tins = if costs.is_empty() {
        Err(Lack::needs([sheet.key.under("products")]))
    } else {
        let each = costs
            .into_iter()
            .map(|(product, cost)| Ok((false, cost_id(product), cost?.money)))
            .collect::<Result<_, Lack>>();
        each.and_then(|parts| sum_of("paint/tins_cost", parts))
    };
    found.put_money("paint/tins_cost", tins.clone());
    let doing = tins.and_then(|tins| {
        let mut parts = vec![(false, "paint/tins_cost".into(), tins.money)];
        if !sheet.sundries.is_blank() {
            parts.push((false, sheet.sundries.key().shared(), *sheet.sundries.ask()?));
        }
        if !sheet.hours.is_blank() || !sheet.hour_rate.is_blank() {
            parts.push((
                false,
                "paint/own_hours".into(),
                own_hours(sheet, rounding)?.money,
            ));
        }
        sum_of("paint/doing_it", parts)
    });
    if !sheet.hours.is_blank() {
        found.put_money("paint/own_hours", own_hours(sheet, rounding));
    }
    found.put_money("paint/doing_it", doing.clone());
    if !sheet.quote.is_blank() {
        let saved = (sheet.quote.ask(), doing).all().and_then(|(quote, doing)| {
            sum_of(
                "paint/saved",
                vec![
                    (false, sheet.quote.key().shared(), *quote),
                    (true, "paint/doing_it".into(), doing.money),
                ],
            )
        });
        found.put_money("paint/saved", saved);
    }
}

/// Hours of our own at their rate, to the currency's smallest unit.
fn own_hours(sheet: &PaintSheet, rounding: Rounding) -> MoneyFinding {
    let (hours, rate) = (sheet.hours.ask(), sheet.hour_rate.ask()).all()?;
    let money = rate
        .times(*hours)
        .map_err(TradeError::from)?
        .rounded(rounding);
    let product = MoneyExpr::Product(vec![
        MoneyExpr::number(sheet.hours.key().as_str(), *hours),
        MoneyExpr::amount(sheet.hour_rate.key().as_str(), *rate),
    ]);
    let formula = MoneyExpr::Rounded {
        of: Box::new(product),
        places: rate.currency().minor_units(),
        rounding,
    };
    reckoned("paint/own_hours", formula, money)
}
