//! The usual things that change sides with the driver.

use crate::words::{Phrase, Tongue, pair, same};

/// What a usual thing is called, by its row's id.
pub fn change_name(id: &str, tongue: Tongue) -> Option<&'static str> {
    let found = NAMES.iter().find(|(known, _)| *known == id);
    found.map(|(_, phrase)| tongue.say(*phrase))
}

const NAMES: &[(&str, Phrase)] = &[
    ("rules", same("Local rules asked, in writing")),
    ("inspection", same("Qualified inspection booked")),
    ("insurance", same("Insurer told")),
    (
        "registration",
        pair(
            "Registration papers changed",
            "Title and registration changed",
        ),
    ),
    (
        "dip",
        pair(
            "Headlamps dip to the other side",
            "Low beams throw to the other side",
        ),
    ),
    ("mirrors", same("Mirrors, near and far side")),
    (
        "wipers",
        pair("Wiper sweep and park", "Wiper sweep and park"),
    ),
    ("washer", same("Washer jets")),
    ("speedometer", same("Speedometer units and cable")),
    (
        "handbrake",
        pair(
            "Handbrake lever and cables",
            "Parking brake lever and cables",
        ),
    ),
    (
        "gear_lever",
        pair("Gear lever and its linkage", "Shift lever and its linkage"),
    ),
    (
        "loom",
        pair(
            "Wiring loom lengthened by whole cable",
            "Wiring harness lengthened by whole cable",
        ),
    ),
    ("switches", same("Switches, stalks and lamps on the dash")),
    ("horn", same("Horn and its slip ring")),
    ("column_lock", same("Column lock")),
    ("column_mounts", same("Column mounts and floor seal")),
    ("door_lock", same("Door locks and key side")),
    ("seat", same("Driver's seat and its runners")),
    ("belts", same("Belt anchorages")),
    ("floor", same("Pedal box, floor and foot rest")),
    ("heater", same("Heater, ducts and hoses")),
    ("exhaust", same("Exhaust away from the column")),
    (
        "engine_clearance",
        same("Engine clears the shaft when it rocks"),
    ),
    ("fuse_box", same("Fuse box and regulator")),
    ("battery", same("Battery, its tray and leads")),
    ("choke", same("Choke, throttle and stop cables")),
    (
        "fog_lamp",
        pair(
            "Rear fog and reversing lamps",
            "Rear fog and back-up lights",
        ),
    ),
    (
        "number_plate",
        pair("Number plate and its lamp", "License plate and its light"),
    ),
    ("vin_plate", same("VIN plate still to be read")),
    ("old_holes", same("Old holes closed, inside and out")),
];

#[cfg(test)]
mod tests {
    use super::*;
    use buildbook::sheets::conversion::STANDARD;

    #[test]
    fn every_usual_thing_has_a_name() {
        let unsaid: Vec<_> = STANDARD
            .iter()
            .filter(|id| change_name(id, Tongue::British).is_none())
            .collect();
        assert!(unsaid.is_empty(), "{unsaid:?}");
        assert_eq!(NAMES.len(), STANDARD.len());
    }
}
