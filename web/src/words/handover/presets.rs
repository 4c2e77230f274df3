//! The names of the rows that stand in the lists of the handover sheet from the first, by their paths.

use crate::words::{Phrase, pair, same};

/// What is looked at before the road, what is looked at again, what may need approval.
pub const NAMES: &[(&str, Phrase)] = &[
    (
        "handover/checks/steering_play",
        same("Steering: free play at the rim"),
    ),
    (
        "handover/checks/steering_joints",
        same("Steering: joints, locking parts"),
    ),
    (
        "handover/checks/steering_lock",
        same("Steering: lock to lock, nothing touches"),
    ),
    (
        "handover/checks/column",
        same("Steering column and wheel fixed"),
    ),
    (
        "handover/checks/pedal",
        same("Brake pedal firm, does not sink"),
    ),
    (
        "handover/checks/brake_lines",
        same("Brake lines and hoses dry and clear"),
    ),
    (
        "handover/checks/parking_brake",
        same("Parking brake holds on a slope"),
    ),
    (
        "handover/checks/brakes_even",
        same("Brakes pull evenly, none drags"),
    ),
    ("handover/checks/wheel_fixings", same("Wheel nuts and rims")),
    ("handover/checks/hub_bearings", same("Hub bearings")),
    (
        "handover/checks/tyres",
        pair(
            "Tyres: size, date, tread, pressure",
            "Tires: size, date, tread, pressure",
        ),
    ),
    (
        "handover/checks/springs",
        same("Springs, shackles, U-bolts"),
    ),
    (
        "handover/checks/propeller_shaft",
        pair("Propeller shaft and joints", "Driveshaft and joints"),
    ),
    (
        "handover/checks/oil_leaks",
        same("Oil: engine, gears, axle dry"),
    ),
    ("handover/checks/fuel", same("Fuel: tank, lines, no smell")),
    (
        "handover/checks/exhaust",
        same("Exhaust tight, clear of lines and wires"),
    ),
    (
        "handover/checks/throttle",
        same("Throttle returns by itself"),
    ),
    (
        "handover/checks/head_lamps",
        same("Head lamps: dip to the right side, aimed"),
    ),
    (
        "handover/checks/rear_lamps",
        same("Rear, brake and turn lamps"),
    ),
    ("handover/checks/horn_wipers", same("Horn, wipers, washers")),
    ("handover/checks/mirrors_glass", same("Mirrors and glass")),
    ("handover/checks/seats_belts", same("Seats and belts")),
    (
        "handover/checks/battery_wiring",
        same("Battery and wiring fixed and fused"),
    ),
    (
        "handover/checks/levels",
        same("Levels: oil, coolant, brake fluid"),
    ),
    (
        "handover/checks/bed_doors",
        same("Bed, sides, doors, locks"),
    ),
    (
        "handover/checks/loose_parts",
        same("No tool, rag or part left in"),
    ),
    ("handover/checks/road_test", same("First drive")),
    ("handover/again/wheel_nuts", same("Wheel nuts")),
    ("handover/again/u_bolts", same("Spring U-bolts")),
    ("handover/again/leaks", same("Leaks and levels")),
    (
        "handover/again/steering_joints",
        same("Steering joints and box"),
    ),
    ("handover/again/hub_bearings", same("Hub bearings")),
    ("handover/again/brakes", same("Brakes, once bedded in")),
    (
        "handover/again/heights",
        same("Ride heights: springs settle"),
    ),
    ("handover/again/hoses", same("Hoses, clamps, belts")),
    (
        "handover/again/engine_oil",
        same("Engine oil and filter after run-in"),
    ),
    ("handover/again/axle_oil", same("Axle oil after run-in")),
    ("handover/again/valve_clearance", same("Valve clearances")),
    ("handover/again/toe", same("Toe-in")),
    ("handover/again/underside", same("Underside: rust and wax")),
    ("handover/again/brake_fluid", same("Brake fluid: change")),
    ("handover/again/coolant", same("Coolant: change")),
    (
        "handover/approvals/steering_side",
        same("Steering moved to the other side"),
    ),
    (
        "handover/approvals/lamps",
        same("Lamps for the other side of the road"),
    ),
    (
        "handover/approvals/speedometer",
        same("Speedometer: drive and scale"),
    ),
    ("handover/approvals/axle_ratio", same("Another axle ratio")),
    (
        "handover/approvals/springs",
        same("Springs and ride height"),
    ),
    ("handover/approvals/weights", same("Axle weights and load")),
    (
        "handover/approvals/tyres",
        pair("Another size of tyre", "Another size of tire"),
    ),
    ("handover/approvals/brakes", same("Brakes changed")),
    (
        "handover/approvals/fuel_system",
        same("Fuel tank and lines"),
    ),
    ("handover/approvals/seat_belts", same("Seats and belts")),
    (
        "handover/approvals/papers",
        same("Import, papers, registration"),
    ),
    (
        "handover/approvals/insurance",
        same("Insurance told of the changes"),
    ),
];
