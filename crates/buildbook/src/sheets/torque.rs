//! The torque sheet: joints with the maker's figures or, where the manual is silent, computed ones; what the wrench is set to.

use std::rc::Rc;

use measure::{Angle, Force, Kind, Length, Money, Ratio, Tool, Torque};

use crate::field::{choice, count, date, number, one_of, price, text, yes_no};
use crate::{Date, Found, Given, Key, Lack, Read, SheetFindings, sheet};

mod joint;
mod new_parts;
mod remarks;
#[cfg(test)]
mod tests;
mod wrench;

/// What a joint holds.
pub const PURPOSES: &[&str] = &["other", "steering", "brakes", "wheels", "spring_u_bolts"];

/// How it is fixed, which decides what may be done with nut and pin.
pub const FIXINGS: &[&str] = &[
    "bolt",
    "stud",
    "self_locking",
    "clamping_castle",
    "adjusting_castle",
    "stretch",
];

/// How a wrench shows or gives its torque.
pub const WRENCHES: &[&str] = &["setting", "dial", "beam", "screwdriver"];

/// What a joint keeps where it takes the first wrench, which stands on the sheet itself and not in the list of the others.
pub const FIRST_WRENCH: &str = "first";

/// After how long wheel nuts and spring U-bolts are tightened again where nothing else was entered: common practice, 50 to 80 km.
const AGAIN_AFTER: &str = "80 km";

/// How the bolts of a joint lie.
pub const PATTERNS: &[&str] = &["one", "circle", "rectangle"];

sheet! {
    /// What is entered of the wrench and the joints.
    pub struct TorqueSheet = "torque" {
        /// What the first wrench is called.
        wrench_name: Given<Rc<str>> = text(),
        /// The wrench's lowest setting.
        wrench_low: Given<Torque> = number("M_lo", Kind::Torque).between(0.1, 2_000.0),
        /// The wrench's highest setting.
        wrench_high: Given<Torque> = number("M_hi", Kind::Torque).between(1.0, 5_000.0),
        /// How it shows or gives its torque: that decides its permitted error.
        wrench_kind: Given<&'static str> = choice(WRENCHES).assumed("setting"),
        /// From the middle of the grip to the square.
        wrench_length: Given<Length> = number("L", Kind::Length).between(0.05, 3.0).measured_with(Tool::Rule),
        /// What its certificate says that it may be out by; blank, what its class may.
        wrench_error: Given<Ratio> = number("e", Kind::Percent).between(0.001, 0.3),
        /// Other wrenches beside that one.
        wrenches: Vec<WrenchEntry>,
        /// The joints, in the order of work.
        joints: Vec<JointEntry>,
    }
    /// Another wrench.
    pub struct WrenchEntry {
        /// What it is called: `Small wrench`.
        name: Given<Rc<str>> = text(),
        /// Its lowest setting.
        low: Given<Torque> = number("M_lo", Kind::Torque).between(0.1, 2_000.0),
        /// Its highest setting; the unit that it is typed in is that of its scale.
        high: Given<Torque> = number("M_hi", Kind::Torque).between(1.0, 5_000.0),
        /// How it shows or gives its torque.
        kind: Given<&'static str> = choice(WRENCHES).assumed("setting"),
        /// From the middle of the grip to the square.
        length: Given<Length> = number("L", Kind::Length).between(0.05, 3.0).measured_with(Tool::Rule),
        /// What its certificate says that it may be out by.
        error: Given<Ratio> = number("e", Kind::Percent).between(0.001, 0.3),
    }
    /// One joint.
    pub struct JointEntry {
        /// What it is: `Half-shaft nuts`.
        name: Given<Rc<str>> = text(),
        /// What it holds.
        purpose: Given<&'static str> = choice(PURPOSES).assumed("other"),
        /// How it is fixed.
        fixing: Given<&'static str> = choice(FIXINGS).assumed("bolt"),
        /// The maker's figure, as printed; the lower one of a range.
        figure: Given<Torque> = number("M", Kind::Torque).between(0.2, 5_000.0),
        /// The upper figure of a range.
        figure_to: Given<Torque> = number("M_to", Kind::Torque).between(0.2, 5_000.0),
        /// A turn after the torque, by angle.
        turn: Given<Angle> = number("φ", Kind::Angle).between(0.0, 6.3),
        /// The manual's page.
        page: Given<Rc<str>> = text(),
        /// Whether the figure is for dry or oiled threads.
        threads: Given<&'static str> = choice(&["dry", "oiled", "sealant"]).assumed("dry"),
        /// In how many stages.
        stages: Given<Ratio> = count("s").between(1.0, 6.0).assumed("1"),
        /// How the bolts lie.
        pattern: Given<&'static str> = choice(PATTERNS).assumed("one"),
        /// How many bolts on the circle.
        bolts: Given<Ratio> = count("n").between(2.0, 40.0),
        /// Rows of a rectangle.
        rows: Given<Ratio> = count("r").between(1.0, 10.0),
        /// Columns of a rectangle.
        columns: Given<Ratio> = count("c").between(1.0, 20.0),
        /// What a self-locking nut takes by itself, measured.
        prevailing: Given<Torque> = number("M_p", Kind::Torque).between(0.0, 500.0).measured_with(Tool::Dial),
        /// The wrench it takes; blank, the smallest one that holds its class at the setting.
        wrench: Given<Rc<str>> = one_of("torque/wrenches"),
        /// An extension on the wrench: from square to square.
        extension: Given<Length> = number("A", Kind::Length).between(0.0, 1.0).measured_with(Tool::Rule),
        /// The extension's angle to the wrench; straight on is nothing.
        extension_angle: Given<Angle> = number("a", Kind::Angle).between(0.0, 1.571).measured_with(Tool::Protractor).assumed("0"),
        /// Which way it tightens.
        hand: Given<&'static str> = choice(&["right", "left"]).assumed("right"),

        /// The thread, for a computed figure: `M10x1.25`, `3/8 UNF`, `5/16 BSF`, `2 BA`.
        thread: Given<Rc<str>> = text(),
        /// The class or grade on the head: `8.8`, `grade 5`, `R`.
        grade: Given<Rc<str>> = text(),
        /// Friction in the thread. Light oil 0.12, dry zinc 0.14, cleaned rusty 0.18, molybdenum grease 0.09: common practice, each within its
        /// class of VDI 2230 (0.04 to 0.10 solid lubricants, 0.08 to 0.16 oils and greases, 0.14 to 0.24 zinc or bare, slightly oiled;
        /// the table as printed at amesweb.info, "Friction coefficient values bolted joints").
        friction_thread: Given<Ratio> = number("μ_G", Kind::Ratio).between(0.04, 0.40).measured_with(Tool::Share(0.15)).assumed("0.12"),
        /// Friction under the head.
        friction_head: Given<Ratio> = number("μ_K", Kind::Ratio).between(0.04, 0.40).measured_with(Tool::Share(0.15)).assumed("0.12"),
        /// The head or nut that turns: that decides the face that bears, where it was not measured.
        head: Given<&'static str> = choice(&["plain", "flanged"]).assumed("plain"),
        /// The outer diameter of the face that bears.
        bearing: Given<Length> = number("d_w", Kind::Thickness).between(0.003, 0.15).measured_with(Tool::Caliper),
        /// The hole that the bolt passes.
        hole: Given<Length> = number("d_h", Kind::Thickness).between(0.002, 0.1).measured_with(Tool::Caliper),
        /// A reduced shank, where there is one.
        shank: Given<Length> = number("d_s", Kind::Thickness).between(0.002, 0.1).measured_with(Tool::Caliper),
        /// What it screws into.
        into: Given<&'static str> = choice(&["nut", "steel", "iron", "aluminium"]).assumed("nut"),
        /// How much thread is engaged there.
        engaged: Given<Length> = number("m", Kind::Thickness).between(0.001, 0.2).measured_with(Tool::Caliper),
        /// The share of the yield strength to use.
        yield_share: Given<Ratio> = number("ν", Kind::Percent).between(0.1, 0.9).assumed("75 %").chosen(),
        /// How it is tightened, for the scatter of the clamp load.
        method: Given<&'static str> = choice(&["feel", "wrench", "angle"]).assumed("wrench"),

        /// What one new bolt or nut costs, where the old ones do not go back.
        new_price: Given<Money> = price(),
        /// How many new ones; blank, as many as the pattern has.
        new_count: Given<Ratio> = count("n_new").between(1.0, 999.0),

        /// To be checked again after so far.
        check_after: Given<Length> = number("s", Kind::Distance).between(1_000.0, 20_000_000.0),
        /// Done to the figure.
        done: Given<bool> = yes_no(),
        /// Marked with paint.
        marked: Given<bool> = yes_no(),
        /// By whom.
        by: Given<Rc<str>> = text(),
        /// On which day.
        on: Given<Date> = date(),
    }
}

/// What one joint comes to.
#[derive(Debug, Clone)]
pub struct JointFindings {
    /// Its row.
    pub key: Key,
    /// The torque at the joint.
    pub torque: Result<Torque, Lack>,
    /// The wrench it takes: its row's id, or [`FIRST_WRENCH`].
    pub wrench: Rc<str>,
    /// What the wrench is set to.
    pub setting: Result<Torque, Lack>,
    /// The settings of the stages, rising.
    pub stages: Vec<Torque>,
    /// Whether the figure was computed here.
    pub computed: bool,
    /// The clamp load of a joint whose thread is known, and the least by the method's scatter.
    pub clamp: Option<[Force; 2]>,
    /// The order of the bolts, each by its place from 1; empty for a single one.
    pub order: Vec<usize>,
}

/// What the torque sheet finds.
#[derive(Debug, Clone)]
pub struct TorqueFindings {
    /// The entries as they were read.
    pub sheet: TorqueSheet,
    /// Results, remarks and errors.
    pub found: Found,
    /// Joint by joint, in the order of work.
    pub joints: Vec<JointFindings>,
    /// The first joint that is not done.
    pub next: Option<usize>,
}

impl TorqueFindings {
    /// The joints that are tightened again on the road, each with the distance after which.
    pub fn again(&self) -> impl Iterator<Item = (&JointEntry, &Length)> {
        let joints = self.sheet.joints.iter();
        joints.filter_map(|joint| Some((joint, joint.check_after.value()?)))
    }
}

impl SheetFindings for TorqueFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the torque sheet come to.
#[must_use]
pub fn findings(read: &Read<TorqueSheet>) -> TorqueFindings {
    let mut found = Found::of(read);
    let mut sheet = TorqueSheet::clone(&read.sheet);
    for entry in &mut sheet.joints {
        if matches!(entry.purpose.value(), Some(&("wheels" | "spring_u_bolts"))) {
            entry.check_after = found.assume(&entry.check_after, AGAIN_AFTER);
        }
    }
    let wrenches = wrench::all(&sheet);
    wrench::check(&wrenches, &mut found);
    let joints: Vec<JointFindings> = sheet
        .joints
        .iter()
        .map(|entry| joint::findings(entry, &wrenches, &mut found))
        .collect();
    let undone = |entry: &JointEntry| entry.done.value() != Some(&true);
    let next = sheet.joints.iter().position(undone);
    let left = sheet.joints.iter().filter(|entry| undone(entry)).count();
    let up = match next {
        Some(next) => joints[next].setting.clone(),
        None => Err(Lack::needs([Key::from("torque/joints/1/figure")])),
    };
    if next.is_some() || sheet.joints.is_empty() {
        found.headline("torque/next", Kind::Torque, &up);
    }
    if !sheet.joints.is_empty() {
        found.headline("torque/left", Kind::Count, &Ok(Ratio::exact(left as f64)));
    }
    remarks::remark(&mut found, &sheet);
    new_parts::buy(&sheet, &mut found);
    TorqueFindings {
        sheet,
        found,
        joints,
        next,
    }
}
