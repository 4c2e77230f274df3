//! The costs sheet: its entries and what it finds.

use std::rc::Rc;

use super::gearing::GearingFindings;
use super::paint::PaintFindings;
use super::springs::SpringsFindings;
use crate::field::text;
use crate::{Found, Given, Read, SheetFindings, sheet};

sheet! {
    /// What is entered on the costs sheet.
    pub struct CostsSheet = "costs" {
        /// A name for it.
        name: Given<Rc<str>> = text(),
    }
}

/// What the costs sheet finds.
#[derive(Debug, Clone)]
pub struct CostsFindings {
    /// The entries as they were read.
    pub sheet: CostsSheet,
    /// Results, remarks and errors.
    pub found: Found,
}

impl SheetFindings for CostsFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the costs sheet come to.
#[must_use]
pub fn findings(
    read: Read<CostsSheet>,
    gearing: &Rc<GearingFindings>,
    springs: &Rc<SpringsFindings>,
    paint: &Rc<PaintFindings>,
) -> CostsFindings {
    let _ = (gearing, springs, paint);
    let found = Found::of(&read);
    CostsFindings {
        sheet: read.sheet,
        found,
    }
}
