//! What has to be said of a conversion whatever was entered.

use super::ConversionSheet;
use crate::{Found, Rank, Remark};

/// The cautions that stand there always, each beside what it is about.
pub(super) fn remark(sheet: &ConversionSheet, found: &mut Found) {
    let key = &sheet.key;
    for (rank, fact, at) in [
        (Rank::Danger, "never_welded", "now/1/drop_arm"),
        (Rank::Danger, "hot_work", "changes/old_holes/state"),
        (Rank::Warning, "rules_first", "changes/rules/state"),
        (Rank::Warning, "structural_holes", "changes/old_holes/state"),
        (Rank::Warning, "bulkhead_carries", "brake_now/1/pad_arm"),
        (Rank::Warning, "fluid_type", "brake_now/1/master"),
        (Rank::Warning, "leak_test", "routes"),
        (Rank::Warning, "threads_never_mixed", "routes"),
        (Rank::Caution, "clearances", "now/1/box_out"),
        (Rank::Remark, "string_measures_best", "routes"),
        (Rank::Remark, "ackermann_stays", "now/1/swing"),
    ] {
        found.remark(Remark::standing(rank, fact).at(key.under(at)));
    }
}
