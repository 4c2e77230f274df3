//! From the book to what every sheet finds, doing again only what rests on something that changed.

use std::any::Any;
use std::collections::BTreeMap;
use std::rc::Rc;

use crate::book::Entries;
use crate::sheets::conversion::{self, ConversionFindings, ConversionSheet};
use crate::sheets::costs::{self, CostsFindings, CostsSheet};
use crate::sheets::final_drive::{self, FinalDriveFindings, FinalDriveSheet};
use crate::sheets::gearing::{self, GearingFindings, GearingSheet};
use crate::sheets::handover::{self, HandoverFindings, HandoverSheet};
use crate::sheets::marking::{self, MarkingFindings, MarkingSheet};
use crate::sheets::paint::{self, PaintFindings, PaintSheet};
use crate::sheets::springs::{self, SpringsFindings, SpringsSheet};
use crate::sheets::torque::{self, TorqueFindings, TorqueSheet};
use crate::sheets::vehicle::{self, VehicleFindings, VehicleSheet};
use crate::{Book, Finding, Found, Key, Sheet, SheetFindings};

/// What every sheet finds.
#[derive(Debug, Clone)]
pub struct Findings {
    /// What the vehicle is.
    pub vehicle: Rc<VehicleFindings>,
    /// Where the holes go.
    pub marking: Rc<MarkingFindings>,
    /// Steering, pedals and cables on the other side.
    pub conversion: Rc<ConversionFindings>,
    /// Speeds, pull and ratios.
    pub gearing: Rc<GearingFindings>,
    /// Rates, heights and stresses.
    pub springs: Rc<SpringsFindings>,
    /// Shims, preload and backlash.
    pub final_drive: Rc<FinalDriveFindings>,
    /// How tight.
    pub torque: Rc<TorqueFindings>,
    /// Litres, tins and hours.
    pub paint: Rc<PaintFindings>,
    /// What is spent and what is left.
    pub costs: Rc<CostsFindings>,
    /// What is measured, checked and open at the end.
    pub handover: Rc<HandoverFindings>,
    inputs: BTreeMap<&'static str, Vec<Input>>,
}

/// The names of the sheets, in the order of the job.
pub const SHEETS: [&str; 10] = [
    "vehicle",
    "marking",
    "conversion",
    "gearing",
    "final_drive",
    "springs",
    "torque",
    "paint",
    "costs",
    "handover",
];

/// Something a sheet's findings rest on; kept alive, so that its address is its own.
#[derive(Clone)]
struct Input(Rc<dyn Any>);

impl std::fmt::Debug for Input {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:p}", Rc::as_ptr(&self.0))
    }
}

impl PartialEq for Input {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::addr_eq(Rc::as_ptr(&self.0), Rc::as_ptr(&other.0))
    }
}

impl Findings {
    /// What any sheet's findings have in common, by the sheet's name.
    #[must_use]
    pub fn found(&self, sheet: &str) -> Option<&Found> {
        Some(match sheet {
            "vehicle" => self.vehicle.found(),
            "marking" => self.marking.found(),
            "conversion" => self.conversion.found(),
            "gearing" => self.gearing.found(),
            "final_drive" => self.final_drive.found(),
            "springs" => self.springs.found(),
            "torque" => self.torque.found(),
            "paint" => self.paint.found(),
            "costs" => self.costs.found(),
            "handover" => self.handover.found(),
            _ => return None,
        })
    }

    /// A result of any sheet by its name, which begins with the sheet's.
    #[must_use]
    pub fn result(&self, id: &str) -> Option<&Finding> {
        self.found(id.split('/').next()?)?.result(id)
    }
}

/// The old findings where they rest on the same inputs, else new ones.
struct Again<'a> {
    old: Option<&'a Findings>,
    /// The one sheet that is asked for; others that it does not rest on keep their old findings.
    only: Option<&'a str>,
    inputs: BTreeMap<&'static str, Vec<Input>>,
}

impl Again<'_> {
    fn findings<F>(
        &mut self,
        sheet: &'static str,
        inputs: Vec<Rc<dyn Any>>,
        kept: impl FnOnce(&Findings) -> &Rc<F>,
        made: impl FnOnce() -> F,
    ) -> Rc<F> {
        let idle = self
            .only
            .is_some_and(|only| only != sheet && !reads(only).contains(&sheet));
        if let (Some(old), true) = (self.old, idle) {
            self.inputs
                .insert(sheet, old.inputs.get(sheet).cloned().unwrap_or_default());
            return Rc::clone(kept(old));
        }
        let inputs: Vec<Input> = inputs.into_iter().map(Input).collect();
        let same = self
            .old
            .filter(|old| old.inputs.get(sheet) == Some(&inputs));
        self.inputs.insert(sheet, inputs);
        match same {
            Some(old) => Rc::clone(kept(old)),
            None => Rc::new(made()),
        }
    }
}

/// What every sheet of the book finds. A sheet whose entries, and whatever it reads from others, are the same as in `old` keeps its
/// findings, by the same `Rc`.
#[must_use]
pub fn evaluate(book: &Book, old: Option<&Findings>) -> Findings {
    evaluated(
        book,
        Again {
            old,
            only: None,
            inputs: BTreeMap::new(),
        },
    )
}

/// What one sheet finds, and those that it rests on; the others keep the findings of `old`, whatever changed. For searches that ask for
/// one result again and again.
pub(crate) fn evaluate_only(book: &Book, old: &Findings, sheet: &str) -> Findings {
    evaluated(
        book,
        Again {
            old: Some(old),
            only: Some(sheet),
            inputs: BTreeMap::new(),
        },
    )
}

fn evaluated(book: &Book, mut again: Again<'_>) -> Findings {
    // Each sheet rests on the entries of its own and on the book's (its defaults version, its currency).
    let own = |sheet: &str| -> Vec<Rc<dyn Any>> { vec![book.sheet("book"), book.sheet(sheet)] };
    let with = |sheet: &str, others: Vec<Rc<dyn Any>>| -> Vec<Rc<dyn Any>> {
        let mut inputs = own(sheet);
        inputs.extend(others);
        inputs
    };

    let vehicle = again.findings(
        "vehicle",
        own("vehicle"),
        |old| &old.vehicle,
        || vehicle::findings(VehicleSheet::read(book)),
    );
    let marking = again.findings(
        "marking",
        own("marking"),
        |old| &old.marking,
        || marking::findings(MarkingSheet::read(book)),
    );
    let conversion = again.findings(
        "conversion",
        with("conversion", vec![vehicle.clone()]),
        |old| &old.conversion,
        || conversion::findings(ConversionSheet::read(book), &vehicle),
    );
    let gearing = again.findings(
        "gearing",
        with("gearing", vec![vehicle.clone()]),
        |old| &old.gearing,
        || gearing::findings(GearingSheet::read(book), &vehicle),
    );
    let springs = again.findings(
        "springs",
        with("springs", vec![vehicle.clone()]),
        |old| &old.springs,
        || springs::findings(SpringsSheet::read(book), &vehicle),
    );
    let final_drive = again.findings(
        "final_drive",
        with("final_drive", vec![gearing.clone()]),
        |old| &old.final_drive,
        || final_drive::findings(FinalDriveSheet::read(book), &gearing),
    );
    let torque = again.findings(
        "torque",
        own("torque"),
        |old| &old.torque,
        || torque::findings(TorqueSheet::read(book)),
    );
    let paint = again.findings(
        "paint",
        with("paint", vec![vehicle.clone()]),
        |old| &old.paint,
        || paint::findings(PaintSheet::read(book), &vehicle),
    );
    let costs = again.findings(
        "costs",
        with(
            "costs",
            vec![
                gearing.clone(),
                final_drive.clone(),
                springs.clone(),
                torque.clone(),
                paint.clone(),
            ],
        ),
        |old| &old.costs,
        || {
            let buyers = [
                gearing.found(),
                final_drive.found(),
                springs.found(),
                torque.found(),
                paint.found(),
            ];
            costs::findings(CostsSheet::read(book), &buyers)
        },
    );
    let handover = again.findings(
        "handover",
        with("handover", vec![vehicle.clone(), torque.clone()]),
        |old| &old.handover,
        || handover::findings(HandoverSheet::read(book), &vehicle, &torque),
    );
    Findings {
        vehicle,
        marking,
        conversion,
        gearing,
        final_drive,
        springs,
        torque,
        paint,
        costs,
        handover,
        inputs: again.inputs,
    }
}

/// The sheets that a sheet reads entries of, besides its own.
#[must_use]
pub fn reads(sheet: &str) -> &'static [&'static str] {
    match sheet {
        "conversion" | "gearing" | "springs" | "paint" => &["vehicle"],
        "final_drive" => &["vehicle", "gearing"],
        "costs" => &[
            "vehicle",
            "gearing",
            "final_drive",
            "springs",
            "torque",
            "paint",
        ],
        "handover" => &["vehicle", "torque"],
        _ => &[],
    }
}

/// Which fields a sheet reads of another one, where it is not all of them: those that its link carries.
#[must_use]
pub fn reads_only(sheet: &str, other: &str) -> Option<&'static [&'static str]> {
    match (sheet, other) {
        ("conversion", "vehicle") => Some(&[
            "sort",
            "steering_now",
            "steering_wanted",
            "wheelbase",
            "track_front",
        ]),
        ("paint" | "costs", "vehicle") => Some(&["length", "width", "height"]),
        // The axle that is set up reads which set was chosen.
        ("final_drive", "vehicle") => Some(&[]),
        ("final_drive", "gearing") => Some(&["rank", "name", "teeth", "chosen"]),
        // Costs read the purchases: of gearing the chosen axle set, of the axle shims, oil and new parts, of the joints what does not go
        // back, of springs none.
        ("costs", "gearing") => Some(&["rank", "name", "teeth", "price", "chosen"]),
        ("costs", "final_drive") => Some(AXLE_BUYS),
        ("costs", "torque") => Some(&[
            "rank",
            "name",
            "pattern",
            "bolts",
            "rows",
            "columns",
            "new_price",
            "new_count",
        ]),
        ("costs", "springs") => Some(&[]),
        ("handover", "vehicle") => {
            Some(&["front_unladen", "rear_unladen", "front_limit", "rear_limit"])
        }
        ("handover", "torque") => Some(&["rank", "name", "purpose", "done", "check_after"]),
        _ => None,
    }
}

/// What is bought for the axle: oil and parts.
const AXLE_BUYS: &[&str] = &[
    "rank",
    "name",
    "count",
    "price",
    "shim_price",
    "oil",
    "oil_name",
    "oil_can",
    "oil_price",
];

/// What decides which shims are bought, once they have a price.
const SHIM_BUYS: &[&str] = &[
    "thickness",
    "depth_by",
    "plus_means",
    "shim_sits",
    "old_shim",
    "old_mark",
    "new_mark",
    "depth",
    "bearing",
    "nominal",
    "pack_within",
    "shim_name",
];

/// Whether a sheet reads this entry of another one. Costs read a joint, and the shims, only where something of them has a price.
#[must_use]
pub fn reads_entry(sheet: &str, other: &str, entries: &Entries, key: &Key) -> bool {
    let Some(fields) = reads_only(sheet, other) else {
        return true;
    };
    let priced = |price: Key| entries.contains_key(&price);
    match (sheet, other, key.row()) {
        ("costs", "torque", Some(row)) => {
            fields.contains(&key.field()) && priced(row.under("new_price"))
        }
        ("costs", "final_drive", row) => {
            let of_parts = row.is_none_or(|row| row.as_str().starts_with("final_drive/parts/"));
            let shims = priced(Key::from("final_drive/shim_price"));
            let of_shims = shims && !key.as_str().starts_with("final_drive/side_shims/");
            let asked = fields.contains(&key.field());
            asked && of_parts || (asked || SHIM_BUYS.contains(&key.field())) && of_shims
        }
        _ => fields.contains(&key.field()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sheet_that_rests_on_nothing_that_changed_keeps_its_findings() {
        let book = Book::of("b", [("vehicle/wheelbase".into(), "3 m".into())]);
        let before = evaluate(&book, None);
        let after = evaluate(
            &book.with(&book.setting("paint/name", Some("x".into()))),
            Some(&before),
        );
        assert!(Rc::ptr_eq(&before.vehicle, &after.vehicle));
        assert!(Rc::ptr_eq(&before.gearing, &after.gearing));
        assert!(!Rc::ptr_eq(&before.paint, &after.paint));
        assert!(
            !Rc::ptr_eq(&before.costs, &after.costs),
            "costs read what paint finds"
        );
    }

    #[test]
    fn a_search_for_one_sheet_leaves_the_others_alone() {
        let book = Book::of("b", [("vehicle/wheelbase".into(), "3 m".into())]);
        let before = evaluate(&book, None);
        let changed = book.with(&book.setting("vehicle/wheelbase", Some("4 m".into())));
        let searched = evaluate_only(&changed, &before, "gearing");
        assert!(!Rc::ptr_eq(&before.gearing, &searched.gearing));
        assert!(Rc::ptr_eq(&before.paint, &searched.paint));
        // A whole evaluation afterwards does not take what was left alone for new.
        assert!(!Rc::ptr_eq(
            &before.paint,
            &evaluate(&changed, Some(&searched)).paint
        ));
    }

    #[test]
    fn a_vehicle_that_changed_is_reckoned_again_by_all_who_read_it() {
        let book = Book::of("b", [("vehicle/wheelbase".into(), "3 m".into())]);
        let before = evaluate(&book, None);
        let after = evaluate(
            &book.with(&book.setting("vehicle/wheelbase", Some("4 m".into()))),
            Some(&before),
        );
        assert!(!Rc::ptr_eq(&before.vehicle, &after.vehicle));
        assert!(!Rc::ptr_eq(&before.springs, &after.springs));
    }
}
