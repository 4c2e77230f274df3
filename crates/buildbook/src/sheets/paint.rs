//! The paint sheet: its entries and what it finds.

use std::rc::Rc;

use super::vehicle::VehicleFindings;
use crate::field::text;
use crate::{Found, Given, Read, SheetFindings, sheet};

sheet! {
    /// What is entered on the paint sheet.
    pub struct PaintSheet = "paint" {
        /// A name for it.
        name: Given<Rc<str>> = text(),
    }
}

/// What the paint sheet finds.
#[derive(Debug, Clone)]
pub struct PaintFindings {
    /// The entries as they were read.
    pub sheet: PaintSheet,
    /// Results, remarks and errors.
    pub found: Found,
}

impl SheetFindings for PaintFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the paint sheet come to.
#[must_use]
pub fn findings(read: Read<PaintSheet>, vehicle: &Rc<VehicleFindings>) -> PaintFindings {
    let _ = vehicle;
    let found = Found::of(&read);
    PaintFindings {
        sheet: read.sheet,
        found,
    }
}
