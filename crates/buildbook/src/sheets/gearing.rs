//! The gearing sheet: its entries and what it finds.

use std::rc::Rc;

use super::vehicle::VehicleFindings;
use crate::field::text;
use crate::{Found, Given, Read, SheetFindings, sheet};

sheet! {
    /// What is entered on the gearing sheet.
    pub struct GearingSheet = "gearing" {
        /// A name for it.
        name: Given<Rc<str>> = text(),
    }
}

/// What the gearing sheet finds.
#[derive(Debug, Clone)]
pub struct GearingFindings {
    /// The entries as they were read.
    pub sheet: GearingSheet,
    /// Results, remarks and errors.
    pub found: Found,
}

impl SheetFindings for GearingFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the gearing sheet come to.
#[must_use]
pub fn findings(read: Read<GearingSheet>, vehicle: &Rc<VehicleFindings>) -> GearingFindings {
    let _ = vehicle;
    let found = Found::of(&read);
    GearingFindings {
        sheet: read.sheet,
        found,
    }
}
