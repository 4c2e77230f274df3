//! Quantities that remember how they came about: text typed, traced value, text shown.

mod mark;
mod money;

pub use mark::Mark;
pub use money::{
    Currency, Decimal, DecimalReading, Money, MoneyAsk, MoneyEntryError, MoneyError, MoneyExpr,
    MoneyFault, MoneyLine, MoneyReading, MoneyWorking, PRICED_DECIMALS, Rounding, measured_decimal,
    read_decimal, read_money, shown_decimal,
};
