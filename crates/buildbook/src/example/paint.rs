//! The example's entries on the paint sheet.

use super::Typed;

pub(super) const ENTRIES: Typed = &[];
