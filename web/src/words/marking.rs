//! The words of the marking-out sheet.

use super::{Subject, list, pair, same, told, told_of};

mod said;
pub use said::*;

const FEATURES: &[&str] = &["marking/features"];

/// The words of the marking-out sheet.
pub static WORDS: Subject = Subject {
    name: pair("Marking out", "Layout"),
    asks: same("Where do the holes go?"),
    tells: same(
        "Each hole's place from what the tape reads, its place on the other side, and the arcs to strike it with.",
    ),
    fields: &[
        ("marking/seen_from", same("Seen from")),
        ("marking/ab", same("A to B")),
        ("marking/ac", same("A to C")),
        ("marking/bc", same("B to C")),
        ("marking/c_side", same("C lies")),
        ("marking/ad", same("A to D")),
        ("marking/bd", same("B to D")),
        ("marking/cd", same("C to D")),
        ("marking/d_side", same("D lies")),
        ("marking/a_is", same("A is")),
        ("marking/b_is", same("B is")),
        ("marking/c_is", same("C is")),
        ("marking/d_is", same("D is")),
        ("marking/datum_diameter", same("Datum holes, diameter")),
        ("marking/taken_with", same("Distances measured with")),
        ("marking/taken", same("Distances taken")),
        ("marking/panel_radius", same("Panel curved to a radius of")),
        ("marking/features/*/name", same("Name")),
        ("marking/features/*/kind", same("What it is")),
        ("marking/features/*/diameter", same("Diameter")),
        ("marking/features/*/length", same("Length over all")),
        ("marking/features/*/width", same("Width")),
        ("marking/features/*/corner", same("Radius of the corners")),
        ("marking/features/*/slant", same("Slant from square")),
        ("marking/features/*/turn", same("Turned from A–B by")),
        ("marking/features/*/points/*/x", same("To the right")),
        ("marking/features/*/points/*/y", same("Up")),
        ("marking/features/*/a", same("From A")),
        ("marking/features/*/b", same("From B")),
        ("marking/features/*/c", same("From C")),
        ("marking/features/*/d", same("From D")),
        ("marking/features/*/read_to", same("Read to")),
        ("marking/features/*/along", same("Along A–B, from A")),
        ("marking/features/*/across", same("Away from A–B")),
        ("marking/features/*/side", same("It lies")),
        ("marking/features/*/more/*/from", same("From")),
        ("marking/features/*/more/*/reading", same("Reading")),
        ("marking/features/*/more/*/read_to", same("Read to")),
        ("marking/features/*/allowed", same("May be off by")),
        (
            "marking/features/*/edge",
            same("New side: edge of the sheet metal is"),
        ),
        ("marking/features/*/part", same("Of a handed part, named")),
        ("marking/move_by", same("It goes to the new side")),
        ("marking/pairs/*/of", same("Point")),
        ("marking/pairs/*/name", same("What it is")),
        ("marking/pairs/*/own_a", same("Point, from A")),
        ("marking/pairs/*/own_b", same("Point, from B")),
        ("marking/pairs/*/own_c", same("Point, from C")),
        ("marking/pairs/*/twin_a", same("Its twin, from A")),
        ("marking/pairs/*/twin_b", same("Its twin, from B")),
        ("marking/pairs/*/twin_c", same("Its twin, from C")),
        ("marking/pairs/*/side", same("They lie")),
        ("marking/new_ab", same("A′ to B′")),
        ("marking/new_ac", same("A′ to C′")),
        ("marking/new_bc", same("B′ to C′")),
        ("marking/new_ad", same("A′ to D′")),
        ("marking/new_bd", same("B′ to D′")),
        ("marking/new_cd", same("C′ to D′")),
        ("marking/shift_along", same("Shift along A–B")),
        ("marking/shift_across", same("Shift upward")),
        ("marking/there/*/name", same("What it is")),
        ("marking/there/*/kind", same("It is")),
        ("marking/there/*/a", same("From A′")),
        ("marking/there/*/b", same("From B′")),
        ("marking/there/*/side", same("It lies")),
        ("marking/there/*/two_a", same("Other end, from A′")),
        ("marking/there/*/two_b", same("Other end, from B′")),
        ("marking/there/*/two_side", same("That end lies")),
        ("marking/there/*/length", same("Takes up, lengthwise")),
        ("marking/there/*/diameter", same("Takes up, across")),
        (
            "marking/there/*/turn",
            same("Lengthwise, turned from A′–B′ by"),
        ),
        ("marking/edges/*/name", same("What it is")),
        ("marking/edges/*/by", same("It is given by")),
        ("marking/edges/*/off_a", same("Away from A′–B′, at A′")),
        ("marking/edges/*/off_b", same("Away from A′–B′, at B′")),
        ("marking/edges/*/one_a", same("One point, from A′")),
        ("marking/edges/*/one_b", same("One point, from B′")),
        ("marking/edges/*/side", same("It lies")),
        ("marking/edges/*/two_a", same("Another point, from A′")),
        ("marking/edges/*/two_b", same("Another point, from B′")),
        ("marking/edges/*/two_side", same("That one lies")),
        ("marking/land", same("Land to be left, at least")),
        ("marking/sheet", same("Sheet metal, thickness")),
        ("marking/weld_gap", same("Gap to weld round a patch")),
        ("marking/saw_kerf", same("Hole saw, kerf")),
        ("marking/pilot", same("Pilot drill")),
        ("marking/drilling", same("Punching and drilling, off by")),
        ("marking/template_for", same("Template for")),
        ("marking/template_seen", same("Drawn as seen")),
        ("marking/goes_on", same("It goes on the")),
        ("marking/datum_lean", same("B′ stands higher than A′, by")),
        ("marking/overlap", same("Pages overlap by")),
        ("marking/bar_along", same("Bar of 100 mm, along")),
        ("marking/bar_up", same("Bar of 100 mm, up")),
        ("marking/cutter_kerf", same("Kerf in the cutter’s file")),
        ("marking/template_got", same("A template is")),
        (
            "marking/template_hire",
            pair("Hire for a day", "Rent for a day"),
        ),
        (
            "marking/template_days",
            pair("Days of hire", "Days of rent"),
        ),
        ("marking/template_buy", same("Price to buy")),
    ],
    hints: &[
        (
            "marking/seen_from",
            same("On the side that has the holes, A is the left datum and B the right one."),
        ),
        ("marking/cd", same("It only checks the others.")),
        (
            "marking/taken",
            same("On a curved panel: straight across, or with the tape lying on it."),
        ),
        (
            "marking/features/*/along",
            same("Square to the line; or x and y on squared paper."),
        ),
        (
            "marking/features/*/slant",
            same("The tube's angle from square to the sheet metal."),
        ),
        (
            "marking/features/*/turn",
            same("Anticlockwise: the long axis, or where the flat faces."),
        ),
        (
            "marking/features/*/part",
            same("It is not mirrored; the first hole of the part places it."),
        ),
        (
            "marking/features/*/allowed",
            same("What its part tolerates. A column is not a grommet."),
        ),
        (
            "marking/features/*/points/*/x",
            same("From the place that was measured."),
        ),
        (
            "marking/pairs/*/twin_a",
            same("Across the vehicle to the point that lies alike on the new side."),
        ),
        (
            "marking/there/*/a",
            same("To its middle; of a strip, to the middle of one end."),
        ),
        (
            "marking/there/*/two_a",
            same("To the middle of that end; of an opening, of its opposite side."),
        ),
        (
            "marking/land",
            same("Blank: 1.2 of the smaller hole between holes, 1 to an edge."),
        ),
        (
            "marking/new_ab",
            same("Between the points of the new side that are like A and B."),
        ),
        (
            "marking/goes_on",
            same("Blank: the side that the Vehicle sheet says it shall steer on."),
        ),
        (
            "marking/bar_along",
            same("As printed while this was blank."),
        ),
        (
            "marking/datum_lean",
            same("Where the line A′–B′ is not level: UP is turned by as much."),
        ),
        (
            "marking/edges/*/off_b",
            same("Blank: as at A′, the edge runs along the line."),
        ),
        ("marking/bar_up", same("As printed while this was blank.")),
        (
            "marking/cutter_kerf",
            same(
                "One kerf for all that is cut; a hole saw’s stands among metal and tools. Nothing where the cutter allows for it.",
            ),
        ),
    ],
    choices: &[
        ("seat", same("The seat")),
        ("front", same("The front")),
        ("marking/seen_from=above", same("Above")),
        ("above", same("Above A–B")),
        ("below", same("Below A–B")),
        ("tape", same("Tape")),
        ("rule", same("Rule")),
        ("trammel", same("Trammel")),
        ("chord", same("Straight")),
        ("surface", same("Over the surface")),
        ("round", same("Round")),
        ("slot", same("Slot")),
        ("rectangle", same("Rectangle")),
        ("strip", same("Strip (rib, seam)")),
        ("d_hole", same("D-hole")),
        ("tube", same("Slanted tube")),
        ("outline", same("Outline")),
        ("stud", same("Stud")),
        ("corner", same("Corner")),
        ("centres", pair("Centre", "Center")),
        ("near_edge", same("Near edge")),
        ("far_edge", same("Far edge")),
        ("inside", same("Inside of both")),
        ("outside", same("Outside of both")),
        ("same_edges", same("Like edges")),
        ("a", same("A")),
        ("b", same("B")),
        ("c", same("C")),
        ("d", same("D")),
        ("along", same("Along")),
        ("across", same("Away")),
        ("other", same("Another")),
        ("mirror", same("Mirrored")),
        ("fit", same("Mirrored and fitted to its datums")),
        ("fit_plain", same("Fitted, not mirrored")),
        ("shift", same("Shifted")),
        ("marking", same("Marking out")),
        ("spraying", same("A spray mask")),
        ("punching", pair("Centre-punching", "Center-punching")),
        ("same", same("From where it was taken off")),
        ("behind", same("From behind the sheet metal")),
        ("offsets", same("Offsets from A′–B′")),
        ("two_points", same("Two points")),
        ("here", same("Made here")),
        ("hired", pair("Hired", "Rented")),
        ("bought", same("Bought")),
        ("left", same("Left-hand side")),
        ("right", same("Right-hand side")),
    ],
    groups: &[
        ("marking/datums", same("Datums")),
        ("marking/features", same("What is to be moved")),
        ("marking/new_side", same("Where it goes")),
        ("marking/there", same("There already, and edges")),
        ("marking/schedule", same("Make the holes, in this order")),
        ("marking/closing", same("Close the old holes")),
        (
            "marking/getting",
            pair(
                "A template: hired or bought?",
                "A template: rented or bought?",
            ),
        ),
        ("marking/templates", same("Templates at true scale")),
        (
            "marking/metal",
            same("Metal, tools, and more of the datums"),
        ),
        ("marking/results", same("What comes of it")),
        ("marking/strike", same("Set it out")),
        ("marking/readings", same("How the readings agree")),
    ],
    lists: &[
        (
            "marking/features",
            list(same("Features"), same("feature"), same("Feature {0}")),
        ),
        (
            "marking/features/*/points",
            list(
                same("Corners of the outline"),
                same("corner"),
                same("Corner {0}"),
            ),
        ),
        (
            "marking/features/*/more",
            list(same("More readings"), same("reading"), same("Reading {0}")),
        ),
        (
            "marking/pairs",
            list(
                same("Points that lie alike on both sides"),
                same("pair"),
                same("Pair {0}"),
            ),
        ),
        (
            "marking/there",
            list(same("There already"), same("thing"), same("Thing {0}")),
        ),
        (
            "marking/edges",
            list(
                same("Edges of the sheet metal"),
                same("edge"),
                same("Edge {0}"),
            ),
        ),
    ],
    results: &[
        told_of("marking/arc_a/*", FEATURES, same("{0}: from A′")),
        told_of("marking/arc_b/*", FEATURES, same("{0}: from B′")),
        told_of("marking/along/*", FEATURES, same("{0}: along A′–B′")),
        told_of("marking/across/*", FEATURES, same("{0}: above A′–B′")),
        told_of("marking/x/*", FEATURES, same("{0}: was, along A–B")),
        told_of("marking/y/*", FEATURES, same("{0}: was, above A–B")),
        told_of(
            "marking/differs/*",
            FEATURES,
            same("{0}: mirrored to fitted"),
        ),
        told_of("marking/land/*", FEATURES, same("{0}: least land")),
        told_of("marking/edge/*", FEATURES, same("{0}: land to the edge")),
        told_of("marking/worst/*", FEATURES, same("{0}: off by at worst")),
        told_of(
            "marking/disc/*",
            FEATURES,
            same("{0}: disc for the old hole"),
        ),
        told_of(
            "marking/patch/*",
            FEATURES,
            same("{0}: metal for the old hole"),
        ),
        told_of(
            "marking/weld/*",
            FEATURES,
            same("{0}: weld round the old hole"),
        ),
        told("marking/patches", same("Sheet metal for all old holes")),
        told("marking/welds", same("Edge to weld, all old holes")),
        told(
            "marking/centre",
            pair("Centre line crosses A–B at", "Center line crosses A–B at"),
        ),
        told_of(
            "marking/pair/*",
            &["marking/pairs"],
            same("{0}: off its twin's image by"),
        ),
    ],
    remarks: &[
        (
            "may_miss",
            same("{row} can come out {0} off, and its part tolerates {1}."),
        ),
        (
            "bolt_may_miss",
            same(
                "{row} can come out {0} off; it is the hole for an {2} bolt, which tolerates {1}.",
            ),
        ),
        (
            "nothing_checks",
            same(
                "With two readings nothing checks them: {0} features. A third shows that one is bad, a fourth says which.",
            ),
        ),
        (
            "one_is_bad",
            same(
                "{row}: the three readings do not agree, so one is bad. A fourth would say which.",
            ),
        ),
        (
            "several_are_bad",
            same("{row}: the readings do not agree, whichever is left out. Measure it again."),
        ),
        (
            "spoiled",
            same("{row}: the reading from {1} spoils the fit, it is out by {0}. The others agree."),
        ),
        (
            "spoiled_or",
            same(
                "{row}: the reading from {1} spoils the fit, it is out by {0}; it could as well be the one from {2}.",
            ),
        ),
        (
            "flat_crossing",
            same("{row}: the arcs cross at {0} only. Use the offsets from the line."),
        ),
        (
            "land_doubtful",
            same("{row}: {0} of land to {2}, too near {1} to call."),
        ),
        (
            "land_short",
            same("{row}: only {0} of land to {2}, where {1} should be left."),
        ),
        ("holes_clash", same("{row} runs into {2}.")),
        (
            "clash_with_there",
            same("{row} runs into what is there: {2}."),
        ),
        (
            "edge_short",
            same("{row}: only {0} of land to the edge, where {1} should be left."),
        ),
        (
            "edge_doubtful",
            same("{row}: {0} of land to the edge, too near {1} to call."),
        ),
        (
            "over_the_edge",
            same("{row} does not lie on the sheet metal: it reaches over the edge."),
        ),
        (
            "not_alike",
            same(
                "{row}: the twin lies {0} off the point's image. The body is not symmetrical: look at image and fit side by side.",
            ),
        ),
        (
            "fit_far",
            same(
                "The new side's datums lie up to {0} off the old ones' image: more than a body is crooked by. Measure both sides again.",
            ),
        ),
        (
            "taken_as_alike",
            same(
                "The new side is taken to be the old one's exact image. Measure its datums: bodies are not symmetrical.",
            ),
        ),
        (
            "one_pair",
            pair(
                "One pair gives the centre line, and nothing checks it.",
                "One pair gives the center line, and nothing checks it.",
            ),
        ),
        (
            "handed_kept",
            same(
                "Handed parts are not mirrored: they keep their own hand and stand where their first hole goes.",
            ),
        ),
        (
            "goes_on_other",
            same(
                "The template says the left-hand side, as older books assumed it; the Vehicle sheet says the right. Choose one.",
            ),
        ),
        (
            "hot_work",
            same("Before any hot work: fuel tank and battery away, trim and wiring clear."),
        ),
        (
            "inspection",
            pair(
                "Steering column, chassis and seat-belt areas need a qualified inspection.",
                "Steering column, frame and seat-belt areas need a qualified inspection.",
            ),
        ),
        (
            "look_behind",
            same("Look behind the panel before drilling: pipes, wires, box sections."),
        ),
    ],
    plates: &[(
        "marking/pattern",
        same(
            "Measure A to B, then one feature from both, to see it here with its image on the other side.",
        ),
    )],
    words: &[],
};
