//! From the book to what every sheet finds, doing again only what rests on something that changed.

use std::any::Any;
use std::collections::BTreeMap;
use std::rc::Rc;

use crate::book::Entries;
use crate::reads::{reads, reads_only};
use crate::sheets::conversion::{self, ConversionFindings};
use crate::sheets::costs::{self, CostsFindings};
use crate::sheets::final_drive::{self, FinalDriveFindings};
use crate::sheets::gearing::{self, GearingFindings};
use crate::sheets::handover::{self, HandoverFindings};
use crate::sheets::marking::{self, MarkingFindings};
use crate::sheets::paint::{self, PaintFindings};
use crate::sheets::springs::{self, SpringsFindings};
use crate::sheets::torque::{self, TorqueFindings};
use crate::sheets::vehicle::{self, VehicleFindings};
use crate::{Book, Finding, Found, Key, Purchase, Read, Sheet, SheetFindings};

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
    inputs: BTreeMap<&'static str, Inputs>,
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

/// What a sheet's findings rest on, kept alive so that addresses are their own.
#[derive(Clone)]
struct Inputs {
    /// The entries of the book itself (its defaults version, its currency), of the sheet, and of the sheets that it reads, in that order.
    entries: Vec<Rc<Entries>>,
    /// The sheet as it was read from its own entries.
    read: Rc<dyn Any>,
    /// What the sheets that it reads buy, where it asks for that.
    bought: Vec<Purchase>,
}

impl std::fmt::Debug for Inputs {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} lots of entries", self.entries.len())
    }
}

impl Inputs {
    /// Whether the sheet's own entries are still these.
    fn same_own(&self, entries: &[Rc<Entries>]) -> bool {
        let mut pairs = self.entries.iter().zip(entries).take(2);
        pairs.all(|(old, new)| Rc::ptr_eq(old, new))
    }

    /// Whether all that the sheet reads of others is as it was.
    fn same_others(&self, sheet: &str, entries: &[Rc<Entries>], bought: &[Purchase]) -> bool {
        let mut pairs = self.entries.iter().zip(entries).skip(2).zip(reads(sheet));
        let same = |((old, new), other): ((&Rc<Entries>, &Rc<Entries>), &&'static str)| {
            // Costs take nothing but purchases of those that buy.
            let bought = sheet == "costs" && *other != "marking";
            let fields = reads_only(sheet, other);
            bought || Rc::ptr_eq(old, new) || fields.is_some_and(|only| same_in(old, new, only))
        };
        self.bought == bought && pairs.all(same)
    }
}

/// Whether two lots of entries are the same in these fields.
fn same_in(old: &Entries, new: &Entries, fields: &[&str]) -> bool {
    let read = |(key, _): &(&Key, _)| fields.contains(&key.field());
    // As a rule the same fields are filled in, and one of them with something else.
    let pairs = || old.iter().zip(new);
    if old.len() == new.len() && pairs().all(|(old, new)| old.0 == new.0) {
        return pairs().all(|(old, new)| old.1 == new.1 || !read(&old));
    }
    old.iter().filter(read).eq(new.iter().filter(read))
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
    book: &'a Book,
    old: Option<&'a Findings>,
    /// The one sheet that is asked for; others that it does not rest on keep their old findings.
    only: Option<&'a str>,
    inputs: BTreeMap<&'static str, Inputs>,
}

impl Again<'_> {
    fn findings<S: Sheet + 'static, F>(
        &mut self,
        bought: Vec<Purchase>,
        kept: impl FnOnce(&Findings) -> &Rc<F>,
        made: impl FnOnce(&Read<S>) -> F,
    ) -> Rc<F> {
        let (entries, same) = self.asked(S::NAME, &bought);
        if let (Some(old), true) = (self.old, same) {
            return Rc::clone(kept(old));
        }
        // Entries that are the same need not be read again, though others that the sheet rests on have changed.
        let before = self.old.and_then(|old| old.inputs.get(S::NAME));
        let before = before.filter(|before| before.same_own(&entries));
        let read = before.and_then(|before| Rc::clone(&before.read).downcast::<Read<S>>().ok());
        let read = read.unwrap_or_else(|| Rc::new(S::read(self.book)));
        let found = Rc::new(made(&read));
        let inputs = Inputs {
            entries,
            read,
            bought,
        };
        self.inputs.insert(S::NAME, inputs);
        found
    }

    /// The entries that a sheet rests on, and whether its old findings, whose inputs are then taken over, stand as they are.
    fn asked(&mut self, sheet: &'static str, bought: &[Purchase]) -> (Vec<Rc<Entries>>, bool) {
        let names = ["book", sheet];
        let names = names.iter().chain(reads(sheet));
        let entries: Vec<_> = names.map(|name| self.book.sheet(name)).collect();
        let idle = self
            .only
            .is_some_and(|only| only != sheet && !reads(only).contains(&sheet));
        let before = self.old.and_then(|old| old.inputs.get(sheet));
        let before = before.filter(|before| {
            idle || before.same_own(&entries) && before.same_others(sheet, &entries, bought)
        });
        let Some(before) = before.cloned() else {
            return (entries, false);
        };
        self.inputs.insert(sheet, before);
        (entries, true)
    }
}

/// What every sheet of the book finds. A sheet whose entries, and whatever it reads from others, are the same as in `old` keeps its
/// findings, by the same `Rc`.
#[must_use]
pub fn evaluate(book: &Book, old: Option<&Findings>) -> Findings {
    evaluated(Again {
        book,
        old,
        only: None,
        inputs: BTreeMap::new(),
    })
}

/// What one sheet finds, and those that it rests on; the others keep the findings of `old`, whatever changed. For searches that ask for
/// one result again and again.
pub(crate) fn evaluate_only(book: &Book, old: &Findings, sheet: &str) -> Findings {
    evaluated(Again {
        book,
        old: Some(old),
        only: Some(sheet),
        inputs: BTreeMap::new(),
    })
}

fn evaluated(mut again: Again<'_>) -> Findings {
    let vehicle = again.findings(Vec::new(), |old| &old.vehicle, vehicle::findings);
    let marking = again.findings(
        Vec::new(),
        |old| &old.marking,
        |read| marking::findings(read, &vehicle),
    );
    let conversion = again.findings(
        Vec::new(),
        |old| &old.conversion,
        |read| conversion::findings(read, &vehicle),
    );
    let gearing = again.findings(
        Vec::new(),
        |old| &old.gearing,
        |read| gearing::findings(read, &vehicle),
    );
    let springs = again.findings(
        Vec::new(),
        |old| &old.springs,
        |read| springs::findings(read, &vehicle),
    );
    let final_drive = again.findings(
        Vec::new(),
        |old| &old.final_drive,
        |read| final_drive::findings(read, &gearing),
    );
    let torque = again.findings(Vec::new(), |old| &old.torque, torque::findings);
    let paint = again.findings(
        Vec::new(),
        |old| &old.paint,
        |read| paint::findings(read, &vehicle),
    );
    let buyers = [
        marking.found(),
        gearing.found(),
        final_drive.found(),
        springs.found(),
        torque.found(),
        paint.found(),
    ];
    let bought = buyers.iter().flat_map(|found| found.purchases.iter());
    let costs = again.findings(
        bought.cloned().collect(),
        |old| &old.costs,
        |read| costs::findings(read, &buyers, &marking),
    );
    let handover = again.findings(
        Vec::new(),
        |old| &old.handover,
        |read| handover::findings(read, &vehicle, &torque),
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn costs_keep_their_findings_until_something_else_is_bought() {
        let book = crate::example::book();
        let before = evaluate(&book, None);
        let costs = |key: &str, text: &str| {
            let after = book.with(&book.setting(key, Some(text.into())));
            evaluate(&after, Some(&before)).costs
        };
        assert!(Rc::ptr_eq(&before.costs, &costs("paint/name", "x")));
        let more_tins = costs("paint/panels/1/length", "9 m");
        assert!(!Rc::ptr_eq(&before.costs, &more_tins));
    }

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
    }

    #[test]
    fn a_search_for_one_sheet_leaves_the_others_alone() {
        let book = Book::of("b", [("vehicle/width".into(), "2 m".into())]);
        let before = evaluate(&book, None);
        let changed = book.with(&book.setting("vehicle/width", Some("1.9 m".into())));
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
