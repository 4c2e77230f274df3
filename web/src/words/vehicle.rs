//! The words of the vehicle sheet.

use super::{Phrase, Subject, pair, same, told};

/// The title of the drawing from the side.
pub const SIDE_TITLE: Phrase = same("The vehicle from the side");
/// What is to be seen in it.
pub const SIDE_SAID: Phrase =
    same("The vehicle from its left side with the lengths that were entered: {0}.");
/// The heading of the measured lengths.
pub const MEASURED: Phrase = same("Measured");

/// The words of the vehicle sheet.
pub static WORDS: Subject = Subject {
    name: same("Vehicle"),
    asks: same("What have I got?"),
    tells: same(
        "What the vehicle weighs and measures. Gearing, springs and paint read it from here.",
    ),
    fields: &[
        ("vehicle/name", same("What it is called")),
        ("vehicle/year", same("Year built")),
        ("vehicle/sort", same("Sort of vehicle")),
        ("vehicle/drive", same("Driven wheels")),
        ("vehicle/steering_now", same("Steers now from the")),
        ("vehicle/steering_wanted", same("Shall steer from the")),
        ("vehicle/wheelbase", same("Wheelbase")),
        ("vehicle/track_front", same("Track, front")),
        ("vehicle/track_rear", same("Track, rear")),
        ("vehicle/length", same("Length over all")),
        ("vehicle/width", same("Width over all")),
        ("vehicle/height", same("Height over all")),
        ("vehicle/bed_length", same("Load bed, length inside")),
        ("vehicle/bed_width", same("Load bed, width inside")),
        (
            "vehicle/centre_height",
            pair("Centre of gravity, height", "Center of gravity, height"),
        ),
        (
            "vehicle/frontal_share",
            same("Share of width × height that meets the wind"),
        ),
        (
            "vehicle/front_unladen",
            pair("Front axle, unladen", "Front axle, empty"),
        ),
        (
            "vehicle/rear_unladen",
            pair("Rear axle, unladen", "Rear axle, empty"),
        ),
        (
            "vehicle/front_laden",
            pair("Front axle, laden", "Front axle, loaded"),
        ),
        (
            "vehicle/rear_laden",
            pair("Rear axle, laden", "Rear axle, loaded"),
        ),
        ("vehicle/payload", same("Load on the bed")),
        (
            "vehicle/payload_ahead",
            same("Middle of the load ahead of the rear axle"),
        ),
        ("vehicle/front_limit", same("Front axle, plated limit")),
        ("vehicle/rear_limit", same("Rear axle, plated limit")),
        ("vehicle/gross_limit", same("Whole vehicle, plated limit")),
        ("vehicle/unsprung_front", same("Unsprung at the front")),
        ("vehicle/unsprung_rear", same("Unsprung at the rear")),
        ("vehicle/tyre_front", pair("Front tyres", "Front tires")),
        ("vehicle/tyre_rear", pair("Rear tyres", "Rear tires")),
        ("vehicle/rear_wheels", same("Rear wheels")),
        ("vehicle/roll_out_front", same("Front roll-out, measured")),
        (
            "vehicle/roll_out_front_turns",
            same("Turns of the front wheel"),
        ),
        ("vehicle/roll_out_rear", same("Rear roll-out, measured")),
        (
            "vehicle/roll_out_rear_turns",
            same("Turns of the rear wheel"),
        ),
        (
            "vehicle/rolling_factor",
            same("Rolling circumference ÷ diameter"),
        ),
        (
            "vehicle/pressure_front",
            pair("Front tyre pressure, cold", "Front tire pressure, cold"),
        ),
        (
            "vehicle/pressure_rear",
            pair("Rear tyre pressure, cold", "Rear tire pressure, cold"),
        ),
        ("vehicle/fuel", same("Fuel")),
        ("vehicle/breathing", same("Air")),
        ("vehicle/cylinders", same("Cylinders")),
        ("vehicle/bore", same("Bore")),
        ("vehicle/stroke", same("Stroke")),
        ("vehicle/idle", same("Idle")),
        ("vehicle/red_line", same("Red line")),
        ("vehicle/peak_torque", same("Greatest torque")),
        ("vehicle/peak_torque_at", same("… at engine speed")),
        ("vehicle/peak_power", same("Greatest power")),
        ("vehicle/peak_power_at", same("… at engine speed")),
        ("vehicle/power_basis", same("Maker measured")),
        ("vehicle/notes", same("Anything else")),
    ],
    hints: &[
        (
            "vehicle/wheelbase",
            same("Hub to hub, wheels straight; measure both sides."),
        ),
        (
            "vehicle/track_front",
            pair(
                "Middle of tyre to middle of tyre.",
                "Middle of tire to middle of tire.",
            ),
        ),
        (
            "vehicle/track_rear",
            same("Of twin wheels, between the middles of the pairs."),
        ),
        (
            "vehicle/tyre_front",
            same("As it stands on the side wall: 7.50-16, 185 R 14 C"),
        ),
        (
            "vehicle/tyre_rear",
            pair(
                "As it stands on the side wall; cannot be read? Enter the roll-out.",
                "As it stands on the side wall; cannot be read? Enter the roll-out.",
            ),
        ),
        (
            "vehicle/roll_out_front",
            pair(
                "Straight, laden, at working pressure.",
                "Straight, loaded, at working pressure.",
            ),
        ),
        (
            "vehicle/roll_out_rear",
            pair(
                "Straight, laden, at working pressure.",
                "Straight, loaded, at working pressure.",
            ),
        ),
        (
            "vehicle/payload_ahead",
            same("Below nought when it lies behind the axle."),
        ),
        (
            "vehicle/unsprung_front",
            same("Axle, hubs, brakes, wheels, half the springs."),
        ),
        (
            "vehicle/unsprung_rear",
            same("Axle, hubs, brakes, wheels, half the springs."),
        ),
        (
            "vehicle/power_basis",
            same("Gross on a bare bench; net or DIN with all the engine drives."),
        ),
    ],
    choices: &[
        ("car", same("Car")),
        ("van", same("Van")),
        ("pickup", same("Pickup")),
        ("lorry", pair("Lorry", "Truck")),
        ("bus", same("Bus")),
        ("tractor", same("Tractor")),
        ("other", same("Other")),
        ("rear", same("Rear")),
        ("front", same("Front")),
        ("all", same("All")),
        ("right", same("Right")),
        ("left", same("Left")),
        ("single", same("Single")),
        ("twin", pair("Twin", "Dual")),
        ("petrol", pair("Petrol", "Gasoline")),
        ("diesel", same("Diesel")),
        ("natural", same("Unblown")),
        ("blown", same("Blown")),
        ("gross", same("Gross")),
        ("net", same("Net")),
        ("din", same("DIN")),
    ],
    groups: &[
        ("vehicle/what", same("What it is")),
        ("vehicle/sizes", same("Sizes")),
        ("vehicle/weights", same("Weights")),
        ("vehicle/limits", same("Limits on the plate")),
        ("vehicle/tyres", pair("Tyres", "Tires")),
        ("vehicle/engine", same("Engine")),
        ("vehicle/more", same("Besides")),
        ("vehicle/results", same("What comes of it")),
    ],
    lists: &[],
    results: &[
        told("vehicle/unladen", pair("Weight unladen", "Curb weight")),
        told("vehicle/laden", pair("Weight laden", "Weight loaded")),
        told(
            "vehicle/front_laden",
            pair("Front axle, laden", "Front axle, loaded"),
        ),
        told(
            "vehicle/rear_laden",
            pair("Rear axle, laden", "Rear axle, loaded"),
        ),
        told(
            "vehicle/front_share_unladen",
            pair(
                "Share on the front axle, unladen",
                "Share on the front axle, empty",
            ),
        ),
        told(
            "vehicle/front_share_laden",
            pair(
                "Share on the front axle, laden",
                "Share on the front axle, loaded",
            ),
        ),
        told(
            "vehicle/centre_unladen",
            pair(
                "Centre of gravity behind the front axle, unladen",
                "Center of gravity behind the front axle, empty",
            ),
        ),
        told(
            "vehicle/centre_laden",
            pair(
                "Centre of gravity behind the front axle, laden",
                "Center of gravity behind the front axle, loaded",
            ),
        ),
        told("vehicle/front_left", same("Left to the front axle's limit")),
        told("vehicle/rear_left", same("Left to the rear axle's limit")),
        told(
            "vehicle/gross_left",
            same("Left to the whole vehicle's limit"),
        ),
        told("vehicle/load_room", same("Load that may still go on")),
        told(
            "vehicle/swept_volume",
            pair("Engine, swept volume", "Engine displacement"),
        ),
        told(
            "vehicle/piston_speed",
            same("Mean piston speed at the red line"),
        ),
        told(
            "vehicle/torque_at_peak_power",
            same("Torque at greatest power"),
        ),
        told(
            "vehicle/power_to_mass_unladen",
            same("Power to weight, unladen"),
        ),
        told(
            "vehicle/power_to_mass_laden",
            pair("Power to weight, laden", "Power to weight, loaded"),
        ),
        told("vehicle/frontal_area", same("Frontal area")),
        told(
            "vehicle/diameter_front",
            pair(
                "Front tyre, overall diameter",
                "Front tire, overall diameter",
            ),
        ),
        told(
            "vehicle/diameter_rear",
            pair("Rear tyre, overall diameter", "Rear tire, overall diameter"),
        ),
        told(
            "vehicle/circumference_front",
            pair(
                "Front tyre, rolling circumference",
                "Front tire, rolling circumference",
            ),
        ),
        told(
            "vehicle/circumference_rear",
            pair(
                "Rear tyre, rolling circumference",
                "Rear tire, rolling circumference",
            ),
        ),
    ],
    remarks: &[
        (
            "front_axle_over_limit",
            same("The front axle is {0} over its plated limit."),
        ),
        (
            "rear_axle_over_limit",
            same("The rear axle is {0} over its plated limit."),
        ),
        (
            "gross_over_limit",
            same("The vehicle is {0} over its plated limit."),
        ),
        (
            "front_axle_near_limit",
            same("The front axle stands at its plated limit: weigh it again before it is loaded."),
        ),
        (
            "rear_axle_near_limit",
            same("The rear axle stands at its plated limit: weigh it again before it is loaded."),
        ),
        (
            "gross_near_limit",
            same("The vehicle stands at its plated limit: weigh it again before it is loaded."),
        ),
        (
            "power_exceeds_torque",
            same(
                "At its greatest power the engine would need more than its greatest torque: one of the four figures is wrong.",
            ),
        ),
        (
            "peak_torque_above_peak_power",
            same(
                "Greatest torque usually comes at a lower engine speed than greatest power: look at both.",
            ),
        ),
        (
            "tyre_by_rule_of_thumb",
            pair(
                "No table holds this tyre: {0} is a rule of thumb. Roll the wheel out: straight line, working pressure, laden, several turns.",
                "No table holds this tire: {0} is a rule of thumb. Roll the wheel out: straight line, working pressure, loaded, several turns.",
            ),
        ),
        (
            "track_wider_than_body",
            same("The track is wider than the vehicle: look at both."),
        ),
    ],
    plates: &[(
        "vehicle/side",
        same("Measure the wheelbase first: hub to hub, wheels straight."),
    )],
    words: &[],
};
