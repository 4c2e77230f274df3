//! What a sheet says has to be bought: a line that costs takes over, priced from that sheet until it is pinned.

use std::rc::Rc;

use measure::{Decimal, Money, MoneyError, Rounding, measured_decimal};

/// Something to be bought, as the sheet that needs it reckons it.
#[derive(Debug, Clone, PartialEq)]
pub struct Purchase {
    /// A name that stays the same while the sheet is worked on, and that no other purchase has: `paint-tins-3`. It is
    /// part of a key, so letters, digits and hyphens only.
    pub id: Rc<str>,
    /// The sheet it comes from: `paint`.
    pub sheet: &'static str,
    /// What it is, in the words that were typed on that sheet.
    pub what: Rc<str>,
    /// The size of the pack, as typed: `2.5 L`.
    pub pack: Option<Rc<str>>,
    /// How many packs, or how much of the unit that is priced. Exact: see [`Purchase::measured`].
    pub quantity: Decimal,
    /// The price of one.
    pub unit_price: Money,
}

impl Purchase {
    /// So many whole packs at a price each.
    #[must_use]
    pub fn packs(
        sheet: &'static str,
        id: impl Into<Rc<str>>,
        what: impl Into<Rc<str>>,
        count: u32,
        unit_price: Money,
    ) -> Self {
        Self {
            id: id.into(),
            sheet,
            what: what.into(),
            pack: None,
            quantity: count.into(),
            unit_price,
        }
    }

    /// A measured quantity, in the unit that is priced, rounded half-even to three decimals.
    ///
    /// # Errors
    /// [`MoneyError::Quantity`] for no number, or one beyond all reason.
    pub fn measured(
        sheet: &'static str,
        id: impl Into<Rc<str>>,
        what: impl Into<Rc<str>>,
        quantity: f64,
        unit_price: Money,
    ) -> Result<Self, MoneyError> {
        let quantity = measured_decimal(quantity)?;
        Ok(Self {
            quantity,
            ..Self::packs(sheet, id, what, 0, unit_price)
        })
    }

    /// The same purchase, in packs of a size.
    #[must_use]
    pub fn in_packs_of(mut self, size: impl Into<Rc<str>>) -> Self {
        self.pack = Some(size.into());
        self
    }

    /// Quantity times unit price, rounded to the currency's smallest unit.
    ///
    /// # Errors
    /// [`MoneyError::Overflow`].
    pub fn total(&self, rounding: Rounding) -> Result<Money, MoneyError> {
        Ok(self.unit_price.times(self.quantity)?.rounded(rounding))
    }
}
