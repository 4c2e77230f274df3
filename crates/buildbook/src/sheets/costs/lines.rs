//! The lines of cost: those entered by hand, and those priced from other sheets until they are pinned.

use std::collections::BTreeMap;
use std::rc::Rc;

use measure::{Currency, Decimal, Mark, Money, MoneyError, MoneyReading};
use trade::costs::line::line_amounts;
use trade::costs::{
    DepositState, LineAmounts, LineKind, LineState, LineTerms, PlacedLine, Tax, TaxBasis, Terms,
};

use super::{CostLine, CostsSheet, PricedLine};
use crate::{Book, Edit, Entry, Given, Key, Lack, Purchase};

/// What a line belongs to.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    /// A sheet of the book, or `other`.
    Sheet(&'static str),
    /// A job by its name.
    Job(Rc<str>),
}

impl Group {
    /// A text that stands for the group and no other.
    #[must_use]
    pub fn name(&self) -> Rc<str> {
        match self {
            Self::Sheet(sheet) => format!("@{sheet}").into(),
            Self::Job(job) => Rc::clone(job),
        }
    }
}

/// Where a line has its price from.
#[derive(Debug, Clone, PartialEq)]
pub struct PricedFrom {
    /// The sheet.
    pub sheet: &'static str,
    /// The size of the pack, as typed there.
    pub pack: Option<Rc<str>>,
    /// Whether the line stands by a price of its own.
    pub pinned: bool,
    /// What the sheet says now; `None` when it no longer asks for the purchase.
    pub now: Option<(Decimal, Money)>,
}

/// One line, and what it comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct LineFinding {
    /// Where its entries stand: `costs/lines/3` or `costs/priced/paint-tins-1`.
    pub key: Key,
    /// What it is.
    pub what: Rc<str>,
    /// What it belongs to.
    pub group: Group,
    /// The id of the payer's row.
    pub payer: Option<Rc<str>>,
    /// How far it has come.
    pub state: LineState,
    /// Which way the money goes.
    pub kind: LineKind,
    /// How many.
    pub quantity: Decimal,
    /// For one.
    pub unit_price: Option<Money>,
    /// Where the price comes from, when from another sheet.
    pub from: Option<PricedFrom>,
    /// What it comes to.
    pub amounts: Result<LineAmounts, Lack>,
}

impl LineFinding {
    /// The line for the sums, when it can be reckoned.
    pub(super) fn placed(&self) -> Option<PlacedLine> {
        Some(PlacedLine {
            key: self.key.shared(),
            group: self.group.name(),
            payer: self.payer.clone(),
            state: self.state,
            amounts: self.amounts.as_ref().ok()?.clone(),
        })
    }
}

/// Every line: those entered by hand first, then those of other sheets.
pub(super) fn lines(
    sheet: &CostsSheet,
    purchases: &[&Purchase],
    terms: &Terms,
) -> Vec<LineFinding> {
    // The first row stands there before anything is entered in it: it is no line yet.
    let begun = |line: &&CostLine| {
        let blank = line.what.is_blank() && line.price.is_blank();
        !(blank && line.state.is_assumed() && line.quantity.is_assumed())
    };
    let by_hand = sheet
        .lines
        .iter()
        .filter(begun)
        .map(|line| entered(line, sheet, terms));
    let mut said: BTreeMap<&str, &PricedLine> = BTreeMap::new();
    said.extend(sheet.priced.iter().map(|row| (row.id(), row)));
    let asked: Vec<&str> = purchases.iter().map(|purchase| &*purchase.id).collect();
    let from_sheets = purchases.iter().map(|purchase| {
        priced(
            Some(purchase),
            said.get(&*purchase.id).copied(),
            sheet,
            terms,
        )
    });
    // What no sheet asks for any more, but was pinned or begun to be paid.
    let gone = sheet
        .priced
        .iter()
        .filter(|row| {
            !asked.contains(&row.id())
                && (is_pinned(row) || state_of(&row.state) != LineState::Planned)
        })
        .map(|row| priced(None, Some(row), sheet, terms));
    by_hand.chain(from_sheets).chain(gone).collect()
}

pub(super) fn is_pinned(row: &PricedLine) -> bool {
    row.pinned_price.typed().is_some() && row.pinned_quantity.typed().is_some()
}

fn state_of(given: &Given<&'static str>) -> LineState {
    match given.value() {
        Some(&"paid") => LineState::Paid,
        Some(&"committed") => LineState::Committed,
        _ => LineState::Planned,
    }
}

fn tax_of(
    basis: &Given<&'static str>,
    own: &Given<Decimal>,
    usual: &Given<Decimal>,
) -> Result<Option<Tax>, Lack> {
    let basis = match *basis.ask()? {
        "in" => TaxBasis::In,
        "out" => TaxBasis::Out,
        _ => return Ok(None),
    };
    let percent = match (own.ask_or_none()?, usual.ask_or_none()?) {
        (Some(percent), _) | (None, Some(percent)) => *percent,
        (None, None) => return Ok(None),
    };
    Ok(Some(Tax { percent, basis }))
}

/// An amount in the line's currency, or nothing.
fn amount(given: &Given<MoneyReading>, own: Currency) -> Result<Money, Lack> {
    let Some(reading) = given.ask_or_none()? else {
        return Ok(Money::zero(own));
    };
    let money = reading.in_line_of(own);
    if money.currency() == own {
        Ok(money)
    } else {
        Err(MoneyError::Mixed {
            left: own,
            right: money.currency(),
        }
        .into())
    }
}

/// A rate of exchange where the line needs one.
fn rate(given: &Given<Decimal>, own: Currency, terms: &Terms) -> Result<Option<Decimal>, Lack> {
    if own == terms.home {
        return Ok(None);
    }
    given.ask().map(|rate| Some(*rate))
}

fn entered(line: &CostLine, sheet: &CostsSheet, terms: &Terms) -> LineFinding {
    let kind = match line.kind.value() {
        Some(&"returned") => LineKind::Returned,
        Some(&"sold") => LineKind::Sold,
        _ => LineKind::Bought,
    };
    let group = match (
        line.job.value().filter(|job| !job.is_empty()),
        line.sheet.value(),
    ) {
        (Some(job), _) => Group::Job(Rc::clone(job)),
        (None, sheet) => Group::Sheet(sheet.copied().unwrap_or("other")),
    };
    let reckon = || -> Result<LineAmounts, Lack> {
        let price = line.price.ask()?.money;
        let own = price.currency();
        line.state.ask()?;
        line.kind.ask()?;
        let terms_of_line = LineTerms {
            key: line.key.to_string(),
            kind,
            state: state_of(&line.state),
            quantity: *line.quantity.ask()?,
            unit_price: price,
            carriage: amount(&line.carriage, own)?,
            duty_percent: line.duty.ask_or_none()?.copied().unwrap_or_default(),
            tax: tax_of(&line.tax_basis, &line.tax, &sheet.tax)?,
            exchange_rate: rate(&line.rate, own, terms)?,
            deposit: amount(&line.deposit, own)?,
            deposit_state: match *line.deposit_state.ask()? {
                "back" => DepositState::Back,
                "kept" => DepositState::Kept,
                _ => DepositState::Out,
            },
            paid_so_far: amount(&line.paid_so_far, own)?,
        };
        Ok(line_amounts(&terms_of_line, terms)?)
    };
    LineFinding {
        key: line.key.clone(),
        what: line.what.value().cloned().unwrap_or_default(),
        group,
        payer: payer_of(&line.payer),
        state: state_of(&line.state),
        kind,
        quantity: line.quantity.value().copied().unwrap_or(Decimal::ONE),
        unit_price: line.price.value().map(|reading| reading.money),
        from: None,
        amounts: reckon(),
    }
}

fn payer_of(given: &Given<Rc<str>>) -> Option<Rc<str>> {
    given.value().filter(|payer| !payer.is_empty()).cloned()
}

fn priced(
    purchase: Option<&Purchase>,
    said: Option<&PricedLine>,
    sheet: &CostsSheet,
    terms: &Terms,
) -> LineFinding {
    let pinned = said.filter(|row| is_pinned(row));
    let now = purchase.map(|purchase| (purchase.quantity, purchase.unit_price));
    let own = pinned
        .and_then(|row| Some((*row.pinned_quantity.value()?, *row.pinned_price.value()?)))
        .or(now);
    let from_sheet = purchase
        .map(|purchase| purchase.sheet)
        .or_else(|| said?.pinned_sheet.value().copied())
        .unwrap_or("other");
    let id = purchase.map_or_else(|| said.map_or("", |row| row.id()), |purchase| &purchase.id);
    let key = Key::from(format!("costs/priced/{id}"));
    let state = said.map_or(LineState::Planned, |row| state_of(&row.state));
    let reckon = || -> Result<LineAmounts, Lack> {
        let Some((quantity, unit_price)) = own else {
            return Err(Lack::needs([key.under("pinned_price")]));
        };
        let mut line = LineTerms::plain(key.to_string(), quantity, unit_price, state);
        let own = unit_price.currency();
        if let Some(row) = said {
            for pin in [row.pinned_quantity.is_bad(), row.pinned_price.is_bad()] {
                if pin {
                    return Err(Lack::entry(key.under("pinned_price")));
                }
            }
            row.state.ask()?;
            line.tax = tax_of(&row.tax_basis, &row.tax, &sheet.tax)?;
            line.paid_so_far = amount(&row.paid_so_far, own)?;
            line.exchange_rate = rate(&row.rate, own, terms)?;
        } else {
            line.tax = sheet.tax.ask_or_none()?.map(|percent| Tax {
                percent: *percent,
                basis: TaxBasis::In,
            });
            if own != terms.home {
                return Err(Lack::needs([key.under("rate")]));
            }
        }
        Ok(line_amounts(&line, terms)?)
    };
    LineFinding {
        what: purchase
            .map(|purchase| Rc::clone(&purchase.what))
            .or_else(|| said?.pinned_what.value().cloned())
            .unwrap_or_default(),
        group: Group::Sheet(from_sheet),
        payer: said.and_then(|row| payer_of(&row.payer)),
        state,
        kind: LineKind::Bought,
        quantity: own.map_or(Decimal::ONE, |(quantity, _)| quantity),
        unit_price: own.map(|(_, price)| price),
        from: Some(PricedFrom {
            sheet: from_sheet,
            pack: purchase.and_then(|purchase| purchase.pack.clone()),
            pinned: pinned.is_some(),
            now,
        }),
        amounts: reckon(),
        key,
    }
}

impl LineFinding {
    /// The edit that pins a line to the quantity and price it has now, so that its sheet no longer moves it.
    #[must_use]
    pub fn pinning(&self, book: &Book) -> Edit {
        let (Some(from), Some(price)) = (&self.from, self.unit_price) else {
            return Edit::default();
        };
        let price = format!("{} {}", price.figures(Mark::Point), price.currency());
        let fields = [
            ("pinned_quantity", self.quantity.normalize().to_string()),
            ("pinned_price", price),
            ("pinned_what", self.what.to_string()),
            ("pinned_sheet", from.sheet.to_owned()),
        ];
        let edits = fields.into_iter().map(|(field, text)| {
            let entry = Entry::new(text.as_str());
            // A figure with three decimals could be taken for thousands elsewhere: its mark is settled.
            let figure = field == "pinned_quantity" || field == "pinned_price";
            let entry = if figure {
                entry.with_mark(Mark::Point)
            } else {
                entry
            };
            book.setting(self.key.under(field), Some(entry))
        });
        edits.fold(Edit::default(), Edit::then)
    }

    /// The edit that lets a pinned line follow its sheet again.
    #[must_use]
    pub fn following(&self, book: &Book) -> Edit {
        let fields = [
            "pinned_quantity",
            "pinned_price",
            "pinned_what",
            "pinned_sheet",
        ];
        let edits = fields
            .into_iter()
            .map(|field| book.setting(self.key.under(field), None));
        edits.fold(Edit::default(), Edit::then)
    }
}
