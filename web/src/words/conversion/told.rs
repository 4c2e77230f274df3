//! What the conversion sheet's results and remarks say.

use crate::words::{Phrase, Told, pair, same, told, told_of};

const PISTONS: &[&str] = &["conversion/pistons"];
const ROUTES: &[&str] = &["conversion/routes"];
const BENDS: &[&str] = &["conversion/routes", "conversion/routes/*/bends"];

pub(super) const RESULTS: &[Told] = &[
    told("conversion/link/now", same("Drag link")),
    told(
        "conversion/ratio/now",
        pair("Steering ratio at centre", "Steering ratio at center"),
    ),
    told(
        "conversion/bump_up/now",
        same("Bump steer at full rise (to the driver's side +)"),
    ),
    told(
        "conversion/bump_down/now",
        same("Bump steer at full fall (to the driver's side +)"),
    ),
    told("conversion/link/*", same("Drag link: {0}")),
    told(
        "conversion/ratio/*",
        pair(
            "Steering ratio at centre: {0}",
            "Steering ratio at center: {0}",
        ),
    ),
    told(
        "conversion/ratio_left/*",
        same("Steering ratio at left lock: {0}"),
    ),
    told(
        "conversion/ratio_right/*",
        same("Steering ratio at right lock: {0}"),
    ),
    told(
        "conversion/bump_up/*",
        same("Bump steer at full rise (to the driver's side +): {0}"),
    ),
    told(
        "conversion/bump_down/*",
        same("Bump steer at full fall (to the driver's side +): {0}"),
    ),
    told(
        "conversion/lock_left/*",
        same("Left lock, inner wheel: {0}"),
    ),
    told(
        "conversion/lock_right/*",
        same("Right lock, inner wheel: {0}"),
    ),
    told(
        "conversion/outer_left/*",
        same("Left lock, outer wheel: {0}"),
    ),
    told(
        "conversion/outer_right/*",
        same("Right lock, outer wheel: {0}"),
    ),
    told(
        "conversion/error_left/*",
        same("Ackermann error at left lock: {0}"),
    ),
    told(
        "conversion/error_right/*",
        same("Ackermann error at right lock: {0}"),
    ),
    told(
        "conversion/circle_left/*",
        pair(
            "Turning circle, kerb to kerb, left: {0}",
            "Turning circle, curb to curb, left: {0}",
        ),
    ),
    told(
        "conversion/circle_right/*",
        pair(
            "Turning circle, kerb to kerb, right: {0}",
            "Turning circle, curb to curb, right: {0}",
        ),
    ),
    told("conversion/turns/*", same("Turns, lock to lock: {0}")),
    told(
        "conversion/least/box_up",
        same("Least bump steer: raise the box by"),
    ),
    told(
        "conversion/least/ball_lower",
        same("… or lower the steering arm's ball by"),
    ),
    told(
        "conversion/least/drop_arm",
        pair("… or fit a drop arm of", "… or fit a pitman arm of"),
    ),
    told(
        "conversion/moved_link/*",
        same("Drag link, box moved {0} by 10 mm"),
    ),
    told(
        "conversion/moved_ratio/*",
        same("Ratio, box moved {0} by 10 mm"),
    ),
    told(
        "conversion/moved_bump/*",
        same("Bump steer, box moved {0} by 10 mm"),
    ),
    told(
        "conversion/bulkhead/now",
        same("Panic load on the new bulkhead"),
    ),
    told("conversion/foot/now", same("Foot force for full braking")),
    told(
        "conversion/bulkhead/*",
        same("Panic load on the bulkhead: {0}"),
    ),
    told(
        "conversion/foot/*",
        same("Foot force for full braking: {0}"),
    ),
    told("conversion/pedal_ratio/*", same("Brake pedal ratio: {0}")),
    told(
        "conversion/pressure/*",
        same("Line pressure at full braking's foot force: {0}"),
    ),
    told(
        "conversion/pad_travel/*",
        same("Brake pad's travel until the linings bear: {0}"),
    ),
    told(
        "conversion/stroke/*",
        same("Master stroke until the linings bear: {0}"),
    ),
    told(
        "conversion/stroke_share/*",
        same("Share of the master's stroke: {0}"),
    ),
    told(
        "conversion/brake_play/*",
        same("Free play at the brake pad: {0}"),
    ),
    told(
        "conversion/clutch_play/*",
        same("Free play at the clutch pad: {0}"),
    ),
    told_of(
        "conversion/piston/*",
        PISTONS,
        same("Force of a piston, {0}"),
    ),
    told(
        "conversion/clutch_travel/*",
        same("Travel at the clutch fork: {0}"),
    ),
    told(
        "conversion/clutch_foot/*",
        same("Foot force on the clutch: {0}"),
    ),
    told_of("conversion/cut/*", ROUTES, same("Length to make: {0}")),
    told_of("conversion/bend_at/*/*", BENDS, same("{0}: {1} begins at")),
    told_of(
        "conversion/efficiency/*",
        ROUTES,
        same("Pull that comes out: {0}"),
    ),
    told_of(
        "conversion/travel/*",
        ROUTES,
        same("Travel it is given: {0}"),
    ),
    told_of(
        "conversion/travel_wanted/*",
        ROUTES,
        same("Travel the far lever wants: {0}"),
    ),
    told_of(
        "conversion/lever/*",
        ROUTES,
        same("Far lever that would suit: {0}"),
    ),
    told("conversion/open", same("Still to change sides")),
    told("conversion/done", same("Changed sides")),
];

pub(super) const REMARKS: &[(&str, Phrase)] = &[
    (
        "steers_backwards",
        pair(
            "It would steer BACKWARDS: with the wheel turned right, this arm turns the road wheels left. Do not fit it. Fit the box of the other hand, turn the box end for end, or move the steering arm to the other side of its king pin. No steering result is given until this is mended.",
            "It would steer BACKWARD: with the wheel turned right, this arm turns the road wheels left. Do not fit it. Fit the box of the other hand, turn the box end for end, or move the steering arm to the other side of its king pin. No steering result is given until this is mended.",
        ),
    ),
    (
        "steers_not_at_all",
        same(
            "It would not steer: the drag link pulls straight along the steering arm. The arm must stand square to the way the link moves. No steering result is given until this is mended.",
        ),
    ),
    (
        "measures_steer_backwards",
        same(
            "By the measures it steers backwards, though not by what was answered here. Measure the ball and the king pin again, and look again at the box.",
        ),
    ),
    (
        "link_cannot_reach",
        same("The drag link must be {0}, and the one to hand ends at {1}: it cannot reach."),
    ),
    (
        "link_cannot_follow",
        pair(
            "The drag link cannot follow the drop arm to the end of its swing: look at the measures, and at the swing.",
            "The drag link cannot follow the pitman arm to the end of its swing: look at the measures, and at the swing.",
        ),
    ),
    (
        "much_bump_steer",
        same(
            "The axle's own movement steers by {0}. See below what the height of the box or another arm would do.",
        ),
    ),
    (
        "foot_over_limit",
        same(
            "The new pedal asks for {0} where {1} must do. Go back to the maker's ratio and bore.",
        ),
    ),
    (
        "stroke_used_up",
        same(
            "The linings bear only at {0} of the master's stroke: too little is left for a hot or leaking brake.",
        ),
    ),
    (
        "clutch_will_drag",
        same("The fork travels {0} only: the clutch will not free."),
    ),
    (
        "cable_travels_short",
        same("The cable gives {0} and the far lever wants {1}: it will not open fully."),
    ),
    (
        "cable_travels_far",
        same(
            "The cable gives {0} and the far lever wants {1} only: fit a stop, or the cable pulls the lever off.",
        ),
    ),
    (
        "bend_too_tight",
        same("A bend of {0} is tighter than the {1} allowed, or cannot be told from it."),
    ),
    (
        "flares_differ",
        same(
            "The two ends are flared differently. That is right only where the two ports differ: look at both seats.",
        ),
    ),
    (
        "never_welded",
        same(
            "Steering and brake parts are never welded, bent or heated. Fit parts made for the place.",
        ),
    ),
    (
        "hot_work",
        same("Before hot work: battery off, fuel tank and lines out, trim away."),
    ),
    (
        "rules_first",
        same(
            "Local rules and a qualified inspection come first: some countries forbid the change or want it approved beforehand.",
        ),
    ),
    (
        "structural_holes",
        same(
            "Holes in structure (chassis, bulkhead, column and belt mounts) are closed by full-penetration repair by someone qualified, never by a patch laid over.",
        ),
    ),
    (
        "bulkhead_carries",
        same(
            "The new bulkhead must carry the panic load without giving: spread it over a plate as the maker did on the old side.",
        ),
    ),
    (
        "fluid_type",
        same(
            "One type of fluid, the maker's. Mineral oil and glycol fluid ruin each other's seals.",
        ),
    ),
    (
        "leak_test",
        same(
            "After any work on brakes: leak test under full pressure, then bleed, then test again at walking pace.",
        ),
    ),
    (
        "threads_never_mixed",
        same(
            "Threads and flares of unions are never mixed: a metric union in an inch port holds once, and lets go later.",
        ),
    ),
    (
        "clearances",
        same(
            "Shaft and column clear engine, exhaust and heater at full engine rock and at both locks.",
        ),
    ),
    (
        "string_measures_best",
        same("A string laid along the way is the best measure of a cable."),
    ),
    (
        "ackermann_stays",
        pair(
            "While hubs and track rod stay, Ackermann stays too: bump steer is what the new side changes.",
            "While hubs and tie rod stay, Ackermann stays too: bump steer is what the new side changes.",
        ),
    ),
];
