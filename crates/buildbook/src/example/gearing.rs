//! The example's entries on the gearing sheet.

use super::Typed;

pub(super) const ENTRIES: Typed = &[];
