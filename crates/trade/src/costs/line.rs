//! One line of cost: quantity and unit price, tax in or out, carriage, duty, exchange, deposit and part payment.

use measure::{Decimal, Money, MoneyError, MoneyExpr, MoneyWorking};

use super::{Terms, money_line, rounded_formula};
use crate::TradeError;

/// How far a line has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum LineState {
    /// Thought of, not ordered.
    #[default]
    Planned,
    /// Ordered or agreed, not wholly paid.
    Committed,
    /// Paid in full.
    Paid,
}

/// Which way the money of a line goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum LineKind {
    /// Something bought: money goes out.
    #[default]
    Bought,
    /// Something taken back to its seller: money comes in.
    Returned,
    /// A part of the vehicle sold: money comes in.
    Sold,
}

impl LineKind {
    fn comes_in(self) -> bool {
        matches!(self, Self::Returned | Self::Sold)
    }
}

/// Whether prices hold the tax already.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum TaxBasis {
    /// The price holds the tax.
    #[default]
    In,
    /// The tax comes on top.
    Out,
}

/// The tax on a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tax {
    /// The rate, in per cent.
    pub percent: Decimal,
    /// Whether the price holds it.
    pub basis: TaxBasis,
}

/// What has become of the deposit on an exchange unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum DepositState {
    /// Left with the supplier, to come back with the old unit.
    #[default]
    Out,
    /// Come back.
    Back,
    /// Kept by the supplier.
    Kept,
}

/// What a line says, in the currency it is charged in.
#[derive(Debug, Clone, PartialEq)]
pub struct LineTerms {
    /// Where the entries stand, such as `costs/lines/3`: names the figures in the working.
    pub key: String,
    /// Which way the money goes.
    pub kind: LineKind,
    /// How far the line has come.
    pub state: LineState,
    /// How many.
    pub quantity: Decimal,
    /// For one; may be finer than the smallest coin.
    pub unit_price: Money,
    /// Carriage and packing, taxed as the goods.
    pub carriage: Money,
    /// Customs duty, in per cent of goods and carriage without tax.
    pub duty_percent: Decimal,
    /// The tax, where there is one.
    pub tax: Option<Tax>,
    /// How much of the home currency one unit of the line's currency costs.
    pub exchange_rate: Option<Decimal>,
    /// A deposit on an exchange unit, untaxed.
    pub deposit: Money,
    /// What has become of it.
    pub deposit_state: DepositState,
    /// Paid so far, for a line that is not paid in full.
    pub paid_so_far: Money,
}

impl LineTerms {
    /// A line of so many at a price, bought here, with nothing else said.
    #[must_use]
    pub fn plain(
        key: impl Into<String>,
        quantity: Decimal,
        unit_price: Money,
        state: LineState,
    ) -> Self {
        let nothing = Money::zero(unit_price.currency());
        Self {
            key: key.into(),
            kind: LineKind::default(),
            state,
            quantity,
            unit_price,
            carriage: nothing,
            duty_percent: Decimal::ZERO,
            tax: None,
            exchange_rate: None,
            deposit: nothing,
            deposit_state: DepositState::default(),
            paid_so_far: nothing,
        }
    }
}

/// What a line comes to, in the home currency; money that comes in is negative.
#[derive(Debug, Clone, PartialEq)]
pub struct LineAmounts {
    /// Goods and carriage without tax.
    pub net: Money,
    /// Customs duty.
    pub duty: Money,
    /// Tax, whether it counts or not.
    pub tax: Money,
    /// The deposit, unless it has come back.
    pub deposit: Money,
    /// What the line counts for: net, duty, deposit, and tax where tax counts.
    pub total: Money,
    /// The part of the total that is paid.
    pub paid: Money,
    /// The rest of the total.
    pub unpaid: Money,
    /// The part of the deposit that is still to come back.
    pub to_come_back: Money,
    /// How the total came about.
    pub working: MoneyWorking,
}

/// What a line comes to.
///
/// Goods are quantity times unit price, rounded to the currency's smallest unit; carriage is added; tax is taken out
/// of the price or put on top; duty is on goods and carriage without tax, and tax put on top is on duty too. The
/// total is exchanged once, after it is summed; the parts in the home currency always add up to it.
///
/// `goods = round(q p)`; tax in: `tax = round((goods + carriage) r / (100 + r))`; tax out:
/// `tax = round((net + duty) r / 100)`; `duty = round(net d / 100)`; `total = round(rate (net + duty + tax + deposit))`.
///
/// # Units
/// Rates in per cent; amounts in the line's currency, results in the home currency.
///
/// # Valid range
/// Quantity and rates of nothing or more; the rate of exchange above nothing.
///
/// # Errors
/// [`TradeError::Money`] for overflow or a currency without a rate of exchange; [`TradeError::PaidTooMuch`] when more
/// is paid than the line comes to.
///
/// # Source
/// Tax within a price: Directive 2006/112/EC, articles 73 and 78, and the fraction r/(100 + r) (a sixth at 20 %);
/// tax on duty: the same directive, articles 85 and 86. From memory.
pub fn line_amounts(line: &LineTerms, terms: &Terms) -> Result<LineAmounts, TradeError> {
    let own = line.unit_price.currency();
    let mut working = MoneyWorking::default();
    let entry = |field: &str| [&line.key, "/", field].concat();
    let goods = money_line(
        &mut working,
        "goods",
        rounded_formula(
            MoneyExpr::Product(vec![
                MoneyExpr::number(entry("quantity"), line.quantity),
                MoneyExpr::amount(entry("price"), line.unit_price),
            ]),
            own,
            terms.rounding,
        ),
        own,
    )?;
    let parts = OwnParts::of(line, goods, terms, &mut working)?;
    let home = Exchange::of(line, terms)?;
    let counted_tax = if terms.tax_counts {
        parts.tax
    } else {
        Money::zero(own)
    };
    let own_total = Money::sum([&parts.net, &parts.duty, &counted_tax, &parts.deposit], own)?;
    let total = home.total(&parts, counted_tax, own_total, &mut working)?;
    let duty = home.amount(&parts.duty)?;
    let tax = home.amount(&parts.tax)?;
    let deposit = home.amount(&parts.deposit)?;
    let mut net = total.minus(&duty)?.minus(&deposit)?;
    if terms.tax_counts {
        net = net.minus(&tax)?;
    }
    let so_far = home.amount(&line.paid_so_far.rounded(terms.rounding))?;
    let paid = if line.state == LineState::Paid {
        total
    } else {
        so_far
    };
    let unpaid = total.minus(&paid)?;
    if unpaid.is_negative() && !paid.is_zero() && !total.is_negative() {
        return Err(TradeError::PaidTooMuch);
    }
    let to_come_back = if line.deposit_state == DepositState::Out {
        deposit
    } else {
        Money::zero(terms.home)
    };
    let turned = |money: Money| {
        if line.kind.comes_in() {
            money.negated()
        } else {
            money
        }
    };
    if line.kind.comes_in() {
        let taken = MoneyExpr::Sum(vec![(true, MoneyExpr::amount("total", total))]);
        working.line("comes_in", taken)?;
    }
    Ok(LineAmounts {
        net: turned(net),
        duty: turned(duty),
        tax: turned(tax),
        deposit: turned(deposit),
        total: turned(total),
        paid: turned(paid),
        unpaid: turned(unpaid),
        to_come_back,
        working,
    })
}

/// The parts of a line in its own currency.
struct OwnParts {
    net: Money,
    duty: Money,
    tax: Money,
    deposit: Money,
}

impl OwnParts {
    fn of(
        line: &LineTerms,
        goods: Money,
        terms: &Terms,
        working: &mut MoneyWorking,
    ) -> Result<Self, MoneyError> {
        let own = goods.currency();
        let entry = |field: &str| [&line.key, "/", field].concat();
        let mut charged = goods;
        if !line.carriage.is_zero() {
            let sum = MoneyExpr::Sum(vec![
                (false, MoneyExpr::amount("goods", goods)),
                (false, MoneyExpr::amount(entry("carriage"), line.carriage)),
            ]);
            charged = money_line(
                working,
                "charged",
                rounded_formula(sum, own, terms.rounding),
                own,
            )?;
        }
        let percent = |rate: Decimal, field: &str| MoneyExpr::number(entry(field), rate);
        let hundred = || MoneyExpr::number("100", Decimal::ONE_HUNDRED);
        let share =
            |of: Money, symbol: &str, over: MoneyExpr, under: MoneyExpr| MoneyExpr::Quotient {
                over: Box::new(MoneyExpr::Product(vec![
                    MoneyExpr::amount(symbol, of),
                    over,
                ])),
                under: Box::new(under),
                places: own.minor_units(),
                rounding: terms.rounding,
            };
        let charged_symbol = if line.carriage.is_zero() {
            "goods"
        } else {
            "charged"
        };
        let mut parts = Self {
            net: charged,
            duty: Money::zero(own),
            tax: Money::zero(own),
            deposit: Money::zero(own),
        };
        let mut net_symbol = charged_symbol;
        let inside = line
            .tax
            .filter(|tax| tax.basis == TaxBasis::In && !tax.percent.is_zero());
        if let Some(tax) = inside {
            let under = MoneyExpr::Sum(vec![
                (false, hundred()),
                (false, percent(tax.percent, "tax")),
            ]);
            let formula = share(charged, charged_symbol, percent(tax.percent, "tax"), under);
            parts.tax = money_line(working, "tax", formula, own)?;
            let net = MoneyExpr::Sum(vec![
                (false, MoneyExpr::amount(charged_symbol, charged)),
                (true, MoneyExpr::amount("tax", parts.tax)),
            ]);
            parts.net = money_line(working, "net", net, own)?;
            net_symbol = "net";
        }
        if !line.duty_percent.is_zero() {
            let formula = share(
                parts.net,
                net_symbol,
                percent(line.duty_percent, "duty"),
                hundred(),
            );
            parts.duty = money_line(working, "duty", formula, own)?;
        }
        let on_top = line
            .tax
            .filter(|tax| tax.basis == TaxBasis::Out && !tax.percent.is_zero());
        if let Some(tax) = on_top {
            let mut base = MoneyExpr::amount(net_symbol, parts.net);
            if !parts.duty.is_zero() {
                base = MoneyExpr::Sum(vec![
                    (false, base),
                    (false, MoneyExpr::amount("duty", parts.duty)),
                ]);
            }
            let formula = MoneyExpr::Quotient {
                over: Box::new(MoneyExpr::Product(vec![base, percent(tax.percent, "tax")])),
                under: Box::new(hundred()),
                places: own.minor_units(),
                rounding: terms.rounding,
            };
            parts.tax = money_line(working, "tax", formula, own)?;
        }
        if line.deposit_state != DepositState::Back {
            parts.deposit = line.deposit.rounded(terms.rounding);
        }
        Ok(parts)
    }
}

/// The way from the line's currency into the home currency.
struct Exchange {
    key: String,
    rate: Option<Decimal>,
    terms: Terms,
}

impl Exchange {
    fn of(line: &LineTerms, terms: &Terms) -> Result<Self, MoneyError> {
        let own = line.unit_price.currency();
        let rate = if own == terms.home {
            None
        } else {
            Some(line.exchange_rate.ok_or(MoneyError::Mixed {
                left: terms.home,
                right: own,
            })?)
        };
        Ok(Self {
            key: format!("{}/rate", line.key),
            rate,
            terms: *terms,
        })
    }

    fn amount(&self, money: &Money) -> Result<Money, MoneyError> {
        match self.rate {
            None => Ok(*money),
            Some(rate) => money.exchanged(rate, self.terms.home, self.terms.rounding),
        }
    }

    /// The total in the home currency, summed and then exchanged once.
    fn total(
        &self,
        parts: &OwnParts,
        counted_tax: Money,
        own_total: Money,
        working: &mut MoneyWorking,
    ) -> Result<Money, MoneyError> {
        let own = own_total.currency();
        let named = [
            ("net", parts.net),
            ("duty", parts.duty),
            ("tax", counted_tax),
            ("deposit", parts.deposit),
        ];
        let sum = named
            .into_iter()
            .filter(|(symbol, money)| *symbol == "net" || !money.is_zero())
            .map(|(symbol, money)| (false, MoneyExpr::amount(symbol, money)))
            .collect();
        let symbol = if self.rate.is_some() {
            "total_abroad"
        } else {
            "total"
        };
        money_line(working, symbol, MoneyExpr::Sum(sum), own)?;
        let Some(rate) = self.rate else {
            return Ok(own_total);
        };
        let product = MoneyExpr::Product(vec![
            MoneyExpr::amount("total_abroad", own_total),
            MoneyExpr::number(&*self.key, rate),
        ]);
        money_line(
            working,
            "total",
            rounded_formula(product, self.terms.home, self.terms.rounding),
            self.terms.home,
        )
    }
}
