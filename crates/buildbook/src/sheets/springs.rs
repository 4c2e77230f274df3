//! The springs sheet: its entries and what it finds.

use std::rc::Rc;

use super::vehicle::VehicleFindings;
use crate::field::text;
use crate::{Found, Given, Read, SheetFindings, sheet};

sheet! {
    /// What is entered on the springs sheet.
    pub struct SpringsSheet = "springs" {
        /// A name for it.
        name: Given<Rc<str>> = text(),
    }
}

/// What the springs sheet finds.
#[derive(Debug, Clone)]
pub struct SpringsFindings {
    /// The entries as they were read.
    pub sheet: SpringsSheet,
    /// Results, remarks and errors.
    pub found: Found,
}

impl SheetFindings for SpringsFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the springs sheet come to.
#[must_use]
pub fn findings(read: Read<SpringsSheet>, vehicle: &Rc<VehicleFindings>) -> SpringsFindings {
    let _ = vehicle;
    let found = Found::of(&read);
    SpringsFindings {
        sheet: read.sheet,
        found,
    }
}
