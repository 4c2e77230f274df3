//! What the sheets read of each other: whole sheets, and which entries of them.

use crate::Key;
use crate::book::Entries;

/// The sheets that a sheet reads entries of, besides its own.
#[must_use]
pub fn reads(sheet: &str) -> &'static [&'static str] {
    match sheet {
        "marking" | "conversion" | "gearing" | "springs" => &["vehicle"],
        "paint" => &["vehicle", "costs"],
        "final_drive" => &["vehicle", "gearing"],
        "costs" => &[
            "vehicle",
            "marking",
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
        ("marking", "vehicle") => Some(&["steering_wanted"]),
        ("conversion", "vehicle") => Some(&[
            "sort",
            "steering_now",
            "steering_wanted",
            "wheelbase",
            "track_front",
            "tyre_front",
            "roll_out_front",
            "roll_out_front_turns",
            "rolling_factor",
        ]),
        ("gearing", "vehicle") => Some(&[
            "drive",
            "wheelbase",
            "width",
            "height",
            "centre_height",
            "frontal_share",
            "front_unladen",
            "rear_unladen",
            "front_laden",
            "rear_laden",
            "payload",
            "payload_ahead",
            "tyre_front",
            "tyre_rear",
            "rear_wheels",
            "roll_out_front",
            "roll_out_front_turns",
            "roll_out_rear",
            "roll_out_rear_turns",
            "rolling_factor",
            "fuel",
            "breathing",
            "stroke",
            "idle",
            "red_line",
            "peak_torque",
            "peak_torque_at",
            "peak_power",
            "peak_power_at",
            "power_basis",
        ]),
        ("springs", "vehicle") => Some(&[
            "wheelbase",
            "front_unladen",
            "rear_unladen",
            "front_laden",
            "rear_laden",
            "payload",
            "payload_ahead",
            "front_limit",
            "rear_limit",
            "unsprung_front",
            "unsprung_rear",
        ]),
        ("paint" | "costs", "vehicle") => Some(&["length", "width", "height"]),
        // How money is rounded is said in one place.
        ("paint", "costs") => Some(&["rounding"]),
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
        // Of marking out costs read what a template costs, and how many features there are, each of which is carried by its first reading.
        ("costs", "marking") => Some(&[
            "rank",
            "a",
            "along",
            "template_got",
            "template_hire",
            "template_days",
            "template_buy",
        ]),
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

/// What decides on no tin: the timetable, the air, the solvent, the paint shop's price.
const NOT_FOR_TINS: &[&str] = &[
    "wait",
    "earliest_over",
    "latest_over",
    "film_least",
    "film_most",
    "solvent",
    "water",
    "stock",
    "isocyanate",
    "humidity",
    "metal",
    "cut_out",
    "gun_air",
    "receiver",
    "swept",
    "free_air",
    "quote",
    "sundries",
    "hours",
    "hour_rate",
];

/// Whether a sheet reads this entry of another one. Costs read a joint, and the shims, only where something of them has a price.
#[must_use]
pub fn reads_entry(sheet: &str, other: &str, entries: &Entries, key: &Key) -> bool {
    let Some(fields) = reads_only(sheet, other) else {
        return (sheet, other) != ("costs", "paint") || !NOT_FOR_TINS.contains(&key.field());
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
