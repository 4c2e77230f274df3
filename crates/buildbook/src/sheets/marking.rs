//! The marking-out sheet: the pattern that is taken off one side, where it goes on the other, and what to strike it with.

use std::rc::Rc;

use measure::{Angle, Decimal, Kind, Length, Money, Tool};

use super::vehicle::VehicleFindings;
use crate::field::{choice, decimal, number, price, text};
use crate::{AtLeastOne, Found, Given, Rank, Read, Remark, SheetFindings, sheet};

mod edges;
mod getting;
mod making;
mod moving;
mod remarks;
mod set_out;
mod shape;
mod take_off;
mod template;
#[cfg(test)]
mod tests;

pub use edges::Edge;
pub use making::{Closing, Making, swap_gap};
pub use moving::{Goes, Moved};
pub use take_off::{Fixed, LETTERS, TakenOff};
pub use template::{Said, template};

/// To what a distance is read at the feature.
pub const REACHES: &[&str] = &[
    "centres",
    "near_edge",
    "far_edge",
    "inside",
    "outside",
    "same_edges",
];
/// The entry that says what distances are measured with.
const TAKEN_WITH: &str = "marking/taken_with";
/// Which side of the line from A to B.
const SIDES: &[&str] = &["above", "below"];

sheet! {
    /// What is entered of the pattern, of both sides and of the move.
    pub struct MarkingSheet = "marking" {
        /// Where one looks from. A stands to the left of B on the side that has the holes.
        seen_from: Given<&'static str> = choice(&["seat", "front", "above"]).assumed("seat"),
        /// From datum A to datum B.
        ab: Given<Length> = number("AB", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From A to C.
        ac: Given<Length> = number("AC", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From B to C.
        bc: Given<Length> = number("BC", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// Which side of A–B C lies on.
        c_side: Given<&'static str> = choice(SIDES).assumed("above"),
        /// From A to D.
        ad: Given<Length> = number("AD", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From B to D.
        bd: Given<Length> = number("BD", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From C to D: it only checks.
        cd: Given<Length> = number("CD", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// Which side of A–B D lies on.
        d_side: Given<&'static str> = choice(SIDES).assumed("above"),
        /// What datum A is.
        a_is: Given<Rc<str>> = text(),
        /// What datum B is.
        b_is: Given<Rc<str>> = text(),
        /// What datum C is.
        c_is: Given<Rc<str>> = text(),
        /// What datum D is.
        d_is: Given<Rc<str>> = text(),
        /// The diameter of the holes that serve as datums, where distances are read to their edges.
        datum_diameter: Given<Length> = number("d_0", Kind::Length).between(0.0, 0.3).measured_with(Tool::Caliper),
        /// What distances are measured with: the usual error of that tool stands in for an untyped ±.
        taken_with: Given<&'static str> = choice(&["tape", "rule", "trammel"]).assumed("tape"),
        /// How distances lie on a curved panel.
        taken: Given<&'static str> = choice(&["chord", "surface"]).assumed("chord"),
        /// The radius of the curved panel.
        panel_radius: Given<Length> = number("r", Kind::Length).between(0.05, 50.0).measured_as(Tool::Tape, TAKEN_WITH),

        /// The features of the pattern.
        features: AtLeastOne<FeatureEntry>,

        /// How the pattern comes to the new side.
        move_by: Given<&'static str> = choice(&["mirror", "fit", "fit_plain", "shift"]).assumed("mirror"),
        /// Points that lie alike on both sides of the vehicle.
        pairs: Vec<PairEntry>,
        /// From A to B on the new side.
        new_ab: Given<Length> = number("A'B'", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From A to C on the new side.
        new_ac: Given<Length> = number("A'C'", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From B to C on the new side.
        new_bc: Given<Length> = number("B'C'", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From A to D on the new side.
        new_ad: Given<Length> = number("A'D'", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From B to D on the new side.
        new_bd: Given<Length> = number("B'D'", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From C to D on the new side.
        new_cd: Given<Length> = number("C'D'", Kind::Length).between(0.02, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// Shifted along the line from A to B.
        shift_along: Given<Length> = number("s_x", Kind::Length).between(-5.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// Shifted across it; above is more than nothing.
        shift_across: Given<Length> = number("s_y", Kind::Length).between(-5.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH).assumed("0 exact"),

        /// What is on the new side already.
        there: Vec<ThereEntry>,
        /// Edges of the sheet metal on the new side.
        edges: Vec<EdgeEntry>,
        /// The least land between holes. Blank: pitch and edge distance by the smaller hole.
        land: Given<Length> = number("l", Kind::Length).between(0.0, 0.3),
        /// How thick the sheet metal is.
        sheet: Given<Length> = number("t", Kind::Thickness).between(0.0003, 0.03).measured_with(Tool::Caliper),
        /// The gap to weld round a patch. Common practice, no source.
        weld_gap: Given<Length> = number("g", Kind::Thickness).between(0.0, 0.006).assumed("0.8 mm"),
        /// The kerf of the hole saw. Common practice, no source.
        saw_kerf: Given<Length> = number("k", Kind::Thickness).between(0.0, 0.02).assumed("3 mm"),
        /// The pilot drill. Common practice, no source.
        pilot: Given<Length> = number("d_p", Kind::Length).between(0.0005, 0.02).assumed("3 mm"),
        /// How far punching and drilling can be off. Common practice, no source.
        drilling: Given<Length> = number("ε", Kind::Thickness).between(0.0, 0.005).assumed("0.5 mm"),

        /// What the template is for.
        template_for: Given<&'static str> = choice(&["marking", "spraying", "punching"]).assumed("marking"),
        /// From where it is drawn as seen: from where the pattern was taken off, or from behind the sheet metal.
        template_seen: Given<&'static str> = choice(&["same", "behind"]).assumed("same"),
        /// Which side of the vehicle it goes on; as the vehicle sheet says it shall steer while it is blank.
        goes_on: Given<&'static str> = choice(&["left", "right"]).assumed_once(&[(1, "left")]),
        /// How much higher B' stands than A', as the lean of the line between them from level.
        datum_lean: Given<Angle> = number("λ", Kind::Angle).between(-1.6, 1.6).assumed("0 exact"),
        /// How far neighbouring pages show the same.
        overlap: Given<Length> = number("o", Kind::Length).between(0.008, 0.05).assumed("15 mm"),
        /// What the printed bar of 100 mm measures along the paper.
        bar_along: Given<Length> = number("b_x", Kind::Length).between(0.08, 0.12).measured_with(Tool::Rule),
        /// What it measures up the paper.
        bar_up: Given<Length> = number("b_y", Kind::Length).between(0.08, 0.12).measured_with(Tool::Rule),
        /// The kerf that the cutter's file allows for; nothing where the cutter allows for it.
        cutter_kerf: Given<Length> = number("k_c", Kind::Thickness).between(0.0, 0.01).assumed("0 mm exact"),

        /// Where the template comes from: hired, bought, or measured and made here.
        template_got: Given<&'static str> = choice(&["here", "hired", "bought"]).assumed("here"),
        /// What hiring one costs for a day.
        template_hire: Given<Money> = price().between(0.0, 1e6),
        /// For how many days it is hired.
        template_days: Given<Decimal> = decimal(2).between(0.0, 1e4).assumed("1"),
        /// What buying one costs.
        template_buy: Given<Money> = price().between(0.0, 1e6),
    }
    /// A feature of the pattern: a hole, a slot, a stud, a corner.
    pub struct FeatureEntry {
        /// Its name.
        name: Given<Rc<str>> = text(),
        /// What it is.
        kind: Given<&'static str> = choice(&["round", "slot", "rectangle", "d_hole", "tube", "outline", "stud", "corner"]).assumed("round"),
        /// Its diameter; the tube's own where a tube passes at a slant.
        diameter: Given<Length> = number("d", Kind::Length).between(0.0005, 0.6).measured_with(Tool::Caliper),
        /// How long over all: a slot, a rectangle, a bracket's foot.
        length: Given<Length> = number("L", Kind::Length).between(0.001, 2.0).measured_with(Tool::Rule),
        /// How wide: a slot, a rectangle; a D-hole from its flat straight across.
        width: Given<Length> = number("w", Kind::Length).between(0.001, 2.0).measured_with(Tool::Rule),
        /// The radius of a rectangle's corners.
        corner: Given<Length> = number("r_c", Kind::Length).between(0.0, 0.5).assumed("0 exact"),
        /// How far the tube slants from square to the sheet metal.
        slant: Given<Angle> = number("σ", Kind::Angle).between(0.0, 1.3).measured_with(Tool::Protractor),
        /// From the line A–B to the long axis, the flat or the tube's slant; anticlockwise.
        turn: Given<Angle> = number("φ", Kind::Angle).between(-3.2, 3.2).assumed("0 exact"),
        /// The corners of a free outline, from the feature's own place.
        points: Vec<OutlineEntry>,
        /// From datum A.
        a: Given<Length> = number("a", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From datum B.
        b: Given<Length> = number("b", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From datum C.
        c: Given<Length> = number("c", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From datum D.
        d: Given<Length> = number("e", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// To where at the feature the distances are read.
        read_to: Given<&'static str> = choice(REACHES).assumed("centres"),
        /// Along the line from A to B.
        along: Given<Length> = number("x", Kind::Length).between(-5.0, 5.0).measured_with(Tool::Rule),
        /// Away from the line A–B.
        across: Given<Length> = number("y", Kind::Length).between(0.0, 5.0).measured_with(Tool::Rule),
        /// Which side of the line A–B.
        side: Given<&'static str> = choice(SIDES).assumed("above"),
        /// Readings besides: from any datum, read to anywhere.
        more: Vec<ReadingEntry>,
        /// How far off its part lets it be.
        allowed: Given<Length> = number("τ", Kind::Length).between(0.000_05, 0.05),
        /// From its centre to the nearest edge of the sheet metal on the new side.
        edge: Given<Length> = number("e_d", Kind::Length).between(0.0, 3.0).measured_with(Tool::Rule),
        /// The handed part it belongs to, which is kept as it is and placed.
        part: Given<Rc<str>> = text(),
    }
    /// A reading of a feature besides those from the datums in their order.
    pub struct ReadingEntry {
        /// From where.
        from: Given<&'static str> = choice(&["a", "b", "c", "d", "along", "across"]),
        /// What the tape says.
        reading: Given<Length> = number("m", Kind::Length).between(-5.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// To where at the feature.
        read_to: Given<&'static str> = choice(REACHES).assumed("centres"),
    }
    /// A corner of a free outline.
    pub struct OutlineEntry {
        /// To the right of the feature's own place.
        x: Given<Length> = number("x", Kind::Length).between(-2.0, 2.0).measured_with(Tool::Rule),
        /// Above the feature's own place.
        y: Given<Length> = number("y", Kind::Length).between(-2.0, 2.0).measured_with(Tool::Rule),
    }
    /// A point that lies alike on both sides of the vehicle, and its twin.
    pub struct PairEntry {
        /// Which point of the side that has the holes.
        of: Given<&'static str> = choice(&["a", "b", "c", "d", "other"]).assumed("a"),
        /// What the point is.
        name: Given<Rc<str>> = text(),
        /// The point from A, where it is none of the datums.
        own_a: Given<Length> = number("a", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// The point from B.
        own_b: Given<Length> = number("b", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// The point from C.
        own_c: Given<Length> = number("c", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// The twin from A.
        twin_a: Given<Length> = number("a'", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// The twin from B.
        twin_b: Given<Length> = number("b'", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// The twin from C.
        twin_c: Given<Length> = number("c'", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// Which side of the line A–B both lie on.
        side: Given<&'static str> = choice(SIDES).assumed("above"),
    }
    /// A straight edge of the sheet metal on the new side.
    pub struct EdgeEntry {
        /// What it is.
        name: Given<Rc<str>> = text(),
        /// How it is given: by how far it lies off the line A'-B', or by two of its points.
        by: Given<&'static str> = choice(&["offsets", "two_points"]).assumed("offsets"),
        /// From A' straight across to it.
        off_a: Given<Length> = number("e_a", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From B' straight across to it; blank: as at A'.
        off_b: Given<Length> = number("e_b", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// One of its points, from A'.
        one_a: Given<Length> = number("a", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// The same point, from B'.
        one_b: Given<Length> = number("b", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// Which side of the line A'-B' the first point, or the whole edge, lies on.
        side: Given<&'static str> = choice(SIDES).assumed("above"),
        /// Another of its points, from A'.
        two_a: Given<Length> = number("a", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// The same point, from B'.
        two_b: Given<Length> = number("b", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// Which side of the line the second point lies on.
        two_side: Given<&'static str> = choice(SIDES).assumed("above"),
    }
    /// Something that is on the new side already.
    pub struct ThereEntry {
        /// What it is.
        name: Given<Rc<str>> = text(),
        /// What it is shaped like.
        kind: Given<&'static str> = choice(&["round", "strip", "rectangle"]).assumed("round"),
        /// From A on the new side: its middle, or the middle of a strip's one end.
        a: Given<Length> = number("a", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// From B on the new side.
        b: Given<Length> = number("b", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// Which side of the line A–B.
        side: Given<&'static str> = choice(SIDES).assumed("above"),
        /// The middle of a strip's other end, from A.
        two_a: Given<Length> = number("a", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// The same, from B.
        two_b: Given<Length> = number("b", Kind::Length).between(0.0, 5.0).measured_as(Tool::Tape, TAKEN_WITH),
        /// Which side of the line that end lies on.
        two_side: Given<&'static str> = choice(SIDES).assumed("above"),
        /// A rectangle's longer way.
        length: Given<Length> = number("L", Kind::Length).between(0.001, 5.0).measured_with(Tool::Rule),
        /// How far it reaches across.
        diameter: Given<Length> = number("d", Kind::Length).between(0.0005, 2.0).measured_with(Tool::Rule),
        /// From the line A'-B' to the length of a rectangle; anticlockwise.
        turn: Given<Angle> = number("φ", Kind::Angle).between(-3.2, 3.2).assumed("0 exact"),
    }
}

/// What the marking-out sheet finds.
#[derive(Debug, Clone)]
pub struct MarkingFindings {
    /// The entries as they were read.
    pub sheet: Rc<MarkingSheet>,
    /// Results, remarks and errors.
    pub found: Found,
    /// Where datums and features lie on the side that has them.
    pub taken: TakenOff,
    /// Where they go.
    pub moved: Moved,
    /// The edges of the sheet metal on the new side.
    pub edges: Vec<Edge>,
    /// What is on the new side already, by name.
    pub there: Vec<(Rc<str>, ::trade::marking::Placed)>,
    /// How the holes are made, and the old ones closed.
    pub making: Making,
    /// Which side of the vehicle the template goes on, where that is known.
    pub goes_on: Option<&'static str>,
}

impl SheetFindings for MarkingFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the marking-out sheet come to.
#[must_use]
pub fn findings(read: &Read<MarkingSheet>, vehicle: &VehicleFindings) -> MarkingFindings {
    let mut found = Found::of(read);
    let sheet = Rc::clone(&read.sheet);
    let taken = take_off::taken_off(&sheet, &mut found);
    let moved = moving::moved(&sheet, &taken, &mut found);
    let edges = edges::edges(&sheet, &moved, &mut found);
    let there = set_out::show(&sheet, &taken, (&moved, &edges), &mut found);
    let making = making::making(&sheet, &taken, &moved, &mut found);
    remarks::remark(&sheet, &taken, &moved, &mut found);
    let goes_on = goes_on(&sheet, vehicle, &mut found);
    getting::buy(&sheet, &mut found);
    MarkingFindings {
        sheet,
        found,
        taken,
        moved,
        edges,
        there,
        making,
        goes_on,
    }
}

/// The side that was chosen, else the one that the vehicle shall steer on. Books of the first version took the left for granted: they
/// keep it, and say so where the vehicle's sheet says otherwise.
fn goes_on(
    sheet: &MarkingSheet,
    vehicle: &VehicleFindings,
    found: &mut Found,
) -> Option<&'static str> {
    let (own, wanted) = (&sheet.goes_on, vehicle.sheet.steering_wanted.value());
    if let (true, Some(wanted)) = (own.is_blank(), wanted) {
        found.stands_in(own.key(), *wanted);
    }
    if own.is_assumed() && wanted.is_some_and(|wanted| own.value() != Some(wanted)) {
        found.remark(Remark::new(Rank::Caution, "goes_on_other").at(own.key().clone()));
    }
    own.value().or(wanted).copied()
}
