//! What gearing's results and remarks say.

use super::{pair, same, told, told_of};
use crate::words::Told;
use crate::words::subject::Table;

const GEARS: &[&str] = &["gearing/gears"];
const SETS: &[&str] = &["gearing/candidates"];

pub(super) const RESULTS: &[Told] = &[
    told(
        "gearing/cruise",
        same("Engine speed at the cruise, top gear"),
    ),
    told(
        "gearing/per_1000",
        same("Road speed for 1000\u{a0}rpm, top gear"),
    ),
    told(
        "gearing/circumference",
        pair(
            "Rolling circumference of the driven tyres",
            "Rolling circumference of the driven tires",
        ),
    ),
    told_of("gearing/overall/*", GEARS, same("{0}: overall ratio")),
    told_of(
        "gearing/overall_overdrive/*",
        GEARS,
        same("{0} + overdrive: overall ratio"),
    ),
    told_of(
        "gearing/per_1000/*",
        GEARS,
        same("{0}: speed for 1000\u{a0}rpm"),
    ),
    told_of(
        "gearing/per_1000_overdrive/*",
        GEARS,
        same("{0} + overdrive: speed for 1000\u{a0}rpm"),
    ),
    told_of("gearing/speed/*", GEARS, same("{0}: road speed")),
    told_of(
        "gearing/speed_overdrive/*",
        GEARS,
        same("{0} + overdrive: road speed"),
    ),
    told_of(
        "gearing/revs/*",
        GEARS,
        same("{0}: engine speed at the cruise"),
    ),
    told_of(
        "gearing/revs_overdrive/*",
        GEARS,
        same("{0} + overdrive: engine speed at the cruise"),
    ),
    told_of(
        "gearing/shaft/*",
        GEARS,
        pair("{0}: propeller-shaft speed", "{0}: driveshaft speed"),
    ),
    told_of(
        "gearing/shaft_overdrive/*",
        GEARS,
        pair(
            "{0} + overdrive: propeller-shaft speed",
            "{0} + overdrive: driveshaft speed",
        ),
    ),
    told_of(
        "gearing/turns/*",
        GEARS,
        same("{0}: engine turns in a distance"),
    ),
    told_of(
        "gearing/turns_overdrive/*",
        GEARS,
        same("{0} + overdrive: engine turns in a distance"),
    ),
    told_of("gearing/top/*", GEARS, same("{0}: top speed")),
    told_of(
        "gearing/top_overdrive/*",
        GEARS,
        same("{0} + overdrive: top speed"),
    ),
    told_of("gearing/hill/*", GEARS, same("{0}: steepest hill")),
    told_of(
        "gearing/hill_overdrive/*",
        GEARS,
        same("{0} + overdrive: steepest hill"),
    ),
    told_of("gearing/effort/*", GEARS, same("{0}: greatest pull")),
    told_of(
        "gearing/effort_overdrive/*",
        GEARS,
        same("{0} + overdrive: greatest pull"),
    ),
    told("gearing/top_speed", same("Top speed on the level")),
    told("gearing/steepest", same("Steepest hill, lowest gear")),
    told(
        "gearing/grip_slope",
        pair(
            "Hill on which the driven tyres slip",
            "Hill on which the driven tires slip",
        ),
    ),
    told("gearing/restart", same("Steepest hill to start on")),
    told("gearing/time", same("Time from rest")),
    told("gearing/air_density", same("Density of the air")),
    told(
        "gearing/air_factor",
        same("Share of its torque the air leaves the engine"),
    ),
    told(
        "gearing/piston_speed",
        same("Mean piston speed at the engine speed told of"),
    ),
    told(
        "gearing/piston_cruise",
        same("Mean piston speed at the cruise"),
    ),
    told("gearing/power", same("Power at the engine speed told of")),
    told("gearing/mass", same("Mass driven")),
    told("gearing/rolling", same("Rolling resistance reckoned with")),
    told(
        "gearing/dial_shown",
        same("Speedometer shows at the cruise"),
    ),
    told(
        "gearing/dial_most",
        same("Most it may show there at approval"),
    ),
    told(
        "gearing/cable_turns",
        same("Turns of the speedometer cable"),
    ),
    told(
        "gearing/adapter",
        same("Adapter that puts the speedometer right"),
    ),
    told(
        "gearing/shaft_critical",
        pair(
            "Critical speed of the propeller shaft",
            "Critical speed of the driveshaft",
        ),
    ),
    told(
        "gearing/shaft_highest",
        pair(
            "Highest speed of the propeller shaft",
            "Highest speed of the driveshaft",
        ),
    ),
    told(
        "gearing/shaft_share",
        pair(
            "Highest by critical speed of the propeller shaft",
            "Highest by critical speed of the driveshaft",
        ),
    ),
    told_of("gearing/candidate_ratio/*", SETS, same("{0}: ratio")),
    told_of(
        "gearing/candidate_per_1000/*",
        SETS,
        same("{0}: speed for 1000\u{a0}rpm"),
    ),
    told_of(
        "gearing/candidate_revs/*",
        SETS,
        same("{0}: engine speed at the cruise"),
    ),
    told_of(
        "gearing/candidate_change/*",
        SETS,
        same("{0}: change of engine speed"),
    ),
    told_of("gearing/candidate_top/*", SETS, same("{0}: top speed")),
    told_of("gearing/candidate_hill/*", SETS, same("{0}: steepest hill")),
    told_of(
        "gearing/candidate_dial/*",
        SETS,
        same("{0}: speedometer shows at the cruise"),
    ),
    told(
        "gearing/axle_for_speed",
        same("Axle ratio for the wanted engine speed"),
    ),
    told("gearing/speed_pair_ratio/*", same("Pair {0}: ratio")),
    told(
        "gearing/speed_pair_revs/*",
        same("Pair {0}: engine speed at the wanted road speed"),
    ),
    told(
        "gearing/axle_for_hill",
        same("Axle ratio for the wanted hill"),
    ),
    told("gearing/hill_pair_ratio/*", same("Pair {0}: ratio")),
    told("gearing/hill_pair_slope/*", same("Pair {0}: steepest hill")),
];

pub(super) const REMARKS: Table = &[
    (
        "top_speed_is_not_gearing",
        pair(
            "Gearing does not make a speed safe: brakes, tyres and steering limit it first. Keep to what the maker gave.",
            "Gearing does not make a speed safe: brakes, tires and steering limit it first. Keep to what the maker gave.",
        ),
    ),
    (
        "local_law_first",
        same(
            "The speedometer's band is approval law for new vehicles (UN R39). The law of the country for vehicles in use comes first.",
        ),
    ),
    (
        "fuel_is_torque",
        same(
            "What climbs hills is torque, and the maker's figure may be gross, net or DIN: gross is about a fifth too much.",
        ),
    ),
    (
        "gears_out_of_order",
        same("The gears do not fall from the lowest to the highest: look at the ratios."),
    ),
    (
        "axle_not_hunting",
        same(
            "{0} has a common divisor: the same teeth meet again and again. Such a set goes together on its marks.",
        ),
    ),
    (
        "count_the_teeth",
        same(
            "A printed ratio is rounded. Count the teeth and enter them, 41/8, and the ratio is exact.",
        ),
    ),
    (
        "no_low_ratio",
        pair(
            "The transfer box is in low, but its low ratio is not entered: it counts as 1.",
            "The transfer case is in low, but its low ratio is not entered: it counts as 1.",
        ),
    ),
    (
        "no_second_speed",
        same("The second axle speed is in, but what it multiplies by is not entered."),
    ),
    (
        "unladen_instead",
        pair(
            "The laden weight is not known: everything is reckoned unladen.",
            "The loaded weight is not known: everything is reckoned empty.",
        ),
    ),
    (
        "curve_ends_early",
        same(
            "The torque curve ends before the red line: nothing is reckoned beyond its last point.",
        ),
    ),
    (
        "limits_lie_close",
        same("At {0} two limits lie within their ±: either may govern."),
    ),
    (
        "piston_speed_at_cruise",
        same("At the cruise the pistons run at {0}, more than the {1} that is kept to."),
    ),
    (
        "cruise_above_red_line",
        same("At the cruise the engine turns at {0}, above its red line of {1}."),
    ),
    (
        "time_by_cars",
        same(
            "The time from rest goes by a rule for cars, which makes too much of the flywheel in so low a gear: enter its inertia.",
        ),
    ),
    (
        "hill_beyond_grip",
        pair(
            "The driven tyres slip on {0}: no axle ratio climbs the hill that is wished for.",
            "The driven tires slip on {0}: no axle ratio climbs the hill that is wished for.",
        ),
    ),
    (
        "dial_within",
        same("The speedometer shows {0} at a true {1}: within the band of approval."),
    ),
    (
        "dial_reads_low",
        same(
            "The speedometer shows {0} at a true {1}: it reads low, which no approval allows. Fit the adapter.",
        ),
    ),
    (
        "dial_reads_high",
        same("The speedometer shows {0} at a true {1}: more than a tenth and 4 km/h too much."),
    ),
    (
        "dial_too_close",
        same(
            "The speedometer shows {0} at a true {1}: too close to the edge of the band to say. Prove it over a timed mile.",
        ),
    ),
    (
        "shaft_near_critical",
        pair(
            "The propeller shaft reaches {0} of its critical speed; stay below 70 %. A thicker tube or a middle bearing helps.",
            "The driveshaft reaches {0} of its critical speed; stay below 70 %. A thicker tube or a center bearing helps.",
        ),
    ),
    (
        "tyre_overloaded",
        pair(
            "Each tyre carries {0}, and may carry {1}.",
            "Each tire carries {0}, and may carry {1}.",
        ),
    ),
    (
        "tyre_near_its_load",
        pair(
            "Each tyre carries {0}, close to the {1} it may: weigh the axle again.",
            "Each tire carries {0}, close to the {1} it may: weigh the axle again.",
        ),
    ),
    (
        "faster_than_its_tyres",
        pair(
            "Top speed is {0}, and the tyres are made for {1}.",
            "Top speed is {0}, and the tires are made for {1}.",
        ),
    ),
    (
        "candidate_does_not_fit",
        same("{0} does not go in as it is."),
    ),
    (
        "candidate_unchecked",
        same("{0} is to be bought, but not every point was looked at."),
    ),
    (
        "candidate_not_hunting",
        same("{0} has a common divisor: it goes together on its marks."),
    ),
];
