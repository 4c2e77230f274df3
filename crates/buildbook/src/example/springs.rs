//! The example's entries on the springs sheet.

use super::Typed;

pub(super) const ENTRIES: Typed = &[];
