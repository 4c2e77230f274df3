//! The costs sheet: its entries and what it finds.

mod choices;
mod findings;
mod lines;
mod table;
#[cfg(test)]
mod table_tests;
#[cfg(test)]
mod tests;

use std::rc::Rc;

use measure::{Decimal, Money, MoneyReading};

use crate::field::{choice, date, decimal, money, one_of, price, text, yes_no};
use crate::{AtLeastOne, Date, Given, sheet};

pub use choices::{Asked, HireFinding, SendFinding};
pub use findings::{CostsFindings, PayerFinding, findings};
pub use lines::{Group, LineFinding, PricedFrom};
pub use table::{CellProblem, Preview, Problem, costs_table, preview};

/// More than any rebuild costs: a slip of the finger shows.
const MOST: f64 = 1e10;

/// The sheets that a line can belong to: those that buy.
const PINNED: &[&str] = &[
    "vehicle",
    "marking",
    "gearing",
    "final_drive",
    "springs",
    "torque",
    "paint",
    "other",
];

/// The sheets that a question can follow.
const FOLLOWED: &[&str] = &["nothing", "marking"];

sheet! {
    /// What is entered on the costs sheet.
    pub struct CostsSheet = "costs" {
        /// All that may be spent.
        limit: Given<Money> = money().between(0.0, MOST),
        /// Held back, as a share of what is not yet paid, in per cent. Common practice, no source.
        contingency_percent: Given<Decimal> = decimal(2).between(0.0, 200.0).assumed("10"),
        /// Held back, as a fixed sum; it stands before the share.
        contingency_sum: Given<Money> = money().between(0.0, MOST),
        /// How a tie is rounded.
        rounding: Given<&'static str> = choice(&["half_even", "half_up"]).assumed("half_even"),
        /// The rate of tax of lines that name none, in per cent.
        tax: Given<Decimal> = decimal(3).between(0.0, 200.0),
        /// Whether tax counts as cost; `no` for those who claim it back.
        tax_counts: Given<bool> = yes_no().assumed("yes"),
        /// What an own hour is reckoned at.
        hour_rate: Given<Money> = price().between(0.0, 1e6),
        /// What the vehicle is worth when it is done.
        value_done: Given<Money> = money().between(0.0, MOST),
        /// The lines entered by hand.
        lines: AtLeastOne<CostLine>,
        /// What is said of lines that are priced from other sheets; a row's id is the purchase's.
        priced: Vec<PricedLine>,
        /// Those who pay.
        payers: Vec<CostPayer>,
        /// Own hours, job by job.
        hours: Vec<CostHours>,
        /// Hire or buy?
        hire: Vec<CostHire>,
        /// Send out or do here?
        send: Vec<CostSend>,
    }
    /// One line entered by hand.
    pub struct CostLine {
        /// What it is.
        what: Given<Rc<str>> = text(),
        /// For one; the currency it names is that of the whole line.
        price: Given<MoneyReading> = price().between(-MOST, MOST),
        /// How far it has come.
        state: Given<&'static str> = choice(&["planned", "committed", "paid"]).assumed("planned"),
        /// Which way the money goes.
        kind: Given<&'static str> = choice(&["bought", "returned", "sold"]).assumed("bought"),
        /// The sheet it belongs to.
        sheet: Given<&'static str> = choice(PINNED).assumed("other"),
        /// The job it belongs to; it stands before the sheet.
        job: Given<Rc<str>> = text(),
        /// How many.
        quantity: Given<Decimal> = decimal(3).between(0.0, 1e9).assumed("1"),
        /// Whether the price holds the tax.
        tax_basis: Given<&'static str> = choice(&["in", "out", "none"]).assumed("in"),
        /// The rate of tax, in per cent, where it is not the usual one.
        tax: Given<Decimal> = decimal(3).between(0.0, 200.0),
        /// Carriage and packing.
        carriage: Given<MoneyReading> = money().between(0.0, MOST),
        /// Customs duty, in per cent.
        duty: Given<Decimal> = decimal(3).between(0.0, 500.0),
        /// How much of the book's currency one unit of the line's costs.
        rate: Given<Decimal> = decimal(10).between(1e-9, 1e9),
        /// The day of that rate.
        rate_day: Given<Date> = date(),
        /// A deposit on an exchange unit.
        deposit: Given<MoneyReading> = money().between(0.0, MOST),
        /// What has become of it.
        deposit_state: Given<&'static str> = choice(&["out", "back", "kept"]).assumed("out"),
        /// Paid so far, while the line is not paid in full.
        paid_so_far: Given<MoneyReading> = money().between(0.0, MOST),
        /// Who pays: the id of a payer's row.
        payer: Given<Rc<str>> = one_of("costs/payers"),
        /// The day it was ordered or paid.
        day: Given<Date> = date(),
        /// From whom.
        supplier: Given<Rc<str>> = text(),
        /// Until when the quote holds.
        holds_until: Given<Date> = date(),
        /// Anything else.
        note: Given<Rc<str>> = text(),
    }
    /// What is said of a line priced from another sheet.
    pub struct PricedLine {
        /// How far it has come.
        state: Given<&'static str> = choice(&["planned", "committed", "paid"]).assumed("planned"),
        /// The quantity it is pinned to.
        pinned_quantity: Given<Decimal> = decimal(3).between(0.0, 1e9),
        /// The price it is pinned to.
        pinned_price: Given<Money> = price().between(-MOST, MOST),
        /// What it was when it was pinned.
        pinned_what: Given<Rc<str>> = text(),
        /// The sheet it came from when it was pinned.
        pinned_sheet: Given<&'static str> = choice(PINNED).assumed("other"),
        /// Whether the price holds the tax.
        tax_basis: Given<&'static str> = choice(&["in", "out", "none"]).assumed("in"),
        /// The rate of tax, in per cent, where it is not the usual one.
        tax: Given<Decimal> = decimal(3).between(0.0, 200.0),
        /// Paid so far, while the line is not paid in full.
        paid_so_far: Given<MoneyReading> = money().between(0.0, MOST),
        /// How much of the book's currency one unit of the line's costs.
        rate: Given<Decimal> = decimal(10).between(1e-9, 1e9),
        /// The day of that rate.
        rate_day: Given<Date> = date(),
        /// Who pays: the id of a payer's row.
        payer: Given<Rc<str>> = one_of("costs/payers"),
        /// The day it was ordered or paid.
        day: Given<Date> = date(),
        /// From whom.
        supplier: Given<Rc<str>> = text(),
        /// Anything else.
        note: Given<Rc<str>> = text(),
    }
    /// Someone who pays.
    pub struct CostPayer {
        /// Their name.
        name: Given<Rc<str>> = text(),
        /// Their share of the cost: 1 and 1 for halves, 60 and 40, 2 and 1.
        share: Given<Decimal> = decimal(3).between(0.0, 1e6).assumed("1"),
    }
    /// Own hours on one job.
    pub struct CostHours {
        /// The job.
        what: Given<Rc<str>> = text(),
        /// How many hours.
        hours: Given<Decimal> = decimal(2).between(0.0, 1e6),
        /// What an hour of this job is reckoned at, where it is not the usual rate.
        rate: Given<Money> = price().between(0.0, 1e6),
    }
    /// One thing to hire or to buy.
    pub struct CostHire {
        /// What it is.
        what: Given<Rc<str>> = text(),
        /// The sheet that says the hire for a day, the price and the days, in place of what is typed.
        follows: Given<&'static str> = choice(FOLLOWED).assumed("nothing"),
        /// Hire for a day.
        hire_day: Given<Money> = price().between(0.0, MOST),
        /// Delivery, collection and the like, once.
        hire_once: Given<Money> = money().between(0.0, MOST).assumed("0"),
        /// The price.
        buy_price: Given<Money> = money().between(0.0, MOST),
        /// What it fetches afterwards.
        resale: Given<Money> = money().between(0.0, MOST).assumed("0"),
        /// Upkeep for a day of use when it is one's own.
        upkeep_day: Given<Money> = price().between(0.0, MOST).assumed("0"),
        /// Days it is needed.
        days: Given<Decimal> = decimal(2).between(0.0, 1e5),
    }
    /// One piece of work to send out or to do here.
    pub struct CostSend {
        /// What it is.
        what: Given<Rc<str>> = text(),
        /// The sheet that says how many, in place of what is typed.
        follows: Given<&'static str> = choice(FOLLOWED).assumed("nothing"),
        /// How many pieces.
        count: Given<Decimal> = decimal(2).between(0.0, 1e6).assumed("1"),
        /// The outside trade's charge for each.
        send_each: Given<Money> = price().between(0.0, MOST),
        /// Its charge once: setting up, carriage both ways.
        send_once: Given<Money> = money().between(0.0, MOST).assumed("0"),
        /// Materials for each piece here.
        here_each: Given<Money> = price().between(0.0, MOST),
        /// Tools and materials bought to do it here, once.
        here_once: Given<Money> = money().between(0.0, MOST).assumed("0"),
        /// Own hours for each piece.
        hours_each: Given<Decimal> = decimal(2).between(0.0, 1e5),
        /// Own hours at once: setting up, learning.
        hours_once: Given<Decimal> = decimal(2).between(0.0, 1e5).assumed("0"),
    }
}
