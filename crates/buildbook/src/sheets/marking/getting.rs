//! A template that is hired or bought goes to the costs.

use std::rc::Rc;

use super::MarkingSheet;
use crate::{Found, Purchase};

pub(super) fn buy(sheet: &MarkingSheet, found: &mut Found) {
    // What it is, only the reader's language can say: the page names a purchase without words of its own by its id.
    let template = |price: &measure::Money| {
        let nameless: Rc<str> = "".into();
        Purchase::packs("marking", "marking-template", nameless, 1, *price)
    };
    let purchase = match sheet.template_got.value() {
        Some(&"bought") => sheet.template_buy.value().map(template),
        Some(&"hired") => sheet
            .template_hire
            .value()
            .zip(sheet.template_days.value())
            .map(|(price, days)| Purchase {
                quantity: *days,
                ..template(price)
            }),
        _ => None,
    };
    found.purchases.extend(purchase);
}
