//! What changes sides with the driver: the usual things by name, what their owner adds, and how each stands.

use std::rc::Rc;

use measure::{Kind, Ratio};

use super::{ChangeEntry, ConversionSheet};
use crate::{Date, Found, Key};

/// The usual things, by the ids of their rows. The first ones come first on the road to a registered vehicle.
pub const STANDARD: &[&str] = &[
    "rules",
    "inspection",
    "insurance",
    "registration",
    "dip",
    "mirrors",
    "wipers",
    "washer",
    "speedometer",
    "handbrake",
    "gear_lever",
    "loom",
    "switches",
    "horn",
    "column_lock",
    "column_mounts",
    "door_lock",
    "seat",
    "belts",
    "floor",
    "heater",
    "exhaust",
    "engine_clearance",
    "fuse_box",
    "battery",
    "choke",
    "fog_lamp",
    "number_plate",
    "vin_plate",
    "old_holes",
];

/// How a thing stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Still to do.
    ToDo,
    /// Done.
    Done,
    /// Not on this vehicle.
    DoesNotApply,
}

/// One thing that changes sides.
#[derive(Debug, Clone, PartialEq)]
pub struct SideChange {
    /// Its row: the last part is one of [`STANDARD`], or a number for what its owner added.
    pub key: Key,
    /// Its owner's name for it.
    pub name: Option<Rc<str>>,
    /// How it stands.
    pub standing: Standing,
    /// Anything to remember.
    pub note: Option<Rc<str>>,
    /// The day it was done.
    pub on: Option<Date>,
}

impl SideChange {
    /// The row's id.
    #[must_use]
    pub fn id(&self) -> &str {
        self.key.field()
    }
}

/// All of them, with the count of the open ones as a result.
pub(super) fn of(sheet: &ConversionSheet, found: &mut Found) -> Vec<SideChange> {
    let row_of = |id: &str| sheet.changes.iter().find(|row| row.id() == id);
    let usual = STANDARD.iter().map(|id| {
        let key = sheet.key.under("changes").under(id);
        change(key, row_of(id))
    });
    let own = sheet
        .others
        .iter()
        .map(|row| change(row.key.clone(), Some(row)));
    let all: Vec<SideChange> = usual.chain(own).collect();
    let count = |standing: Standing| {
        let of = all.iter().filter(|change| change.standing == standing);
        Ok(Ratio::exact(of.count() as f64))
    };
    found.headline("conversion/open", Kind::Count, &count(Standing::ToDo));
    found.show("conversion/done", Kind::Count, &count(Standing::Done));
    all
}

fn change(key: Key, row: Option<&ChangeEntry>) -> SideChange {
    let standing = match row.and_then(|row| row.state.value()) {
        Some(&"done") => Standing::Done,
        Some(&"does_not_apply") => Standing::DoesNotApply,
        _ => Standing::ToDo,
    };
    SideChange {
        key,
        name: row.and_then(|row| row.name.value().cloned()),
        standing,
        note: row.and_then(|row| row.note.value().cloned()),
        on: row.and_then(|row| row.on.value().copied()),
    }
}
