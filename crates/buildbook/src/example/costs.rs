//! The example's entries on the costs sheet.

use super::Typed;

pub(super) const ENTRIES: Typed = &[];
