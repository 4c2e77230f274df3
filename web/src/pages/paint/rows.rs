//! How the rows of the paint sheet's lists are laid out: a panel shows what its shape needs, a layer what its basis needs.

use crate::state::State;
use crate::widgets::{Placing, Spot};
use buildbook::{Key, field_of};

/// The lists of the paint sheet.
pub static PLACING: Placing = Placing {
    name: "paint",
    spot,
    found,
};

/// What stands in a choice, or is assumed of it.
fn chosen(state: &State, row: &Key, field: &str) -> String {
    let key = row.under(field);
    let entry = state
        .book
        .entry(key.as_str())
        .map(|entry| entry.text.trim().to_owned());
    let assumed = || {
        field_of(&key)?
            .assumed_in(state.book.defaults_version())
            .map(str::to_owned)
    };
    entry.or_else(assumed).unwrap_or_default()
}

fn spot(state: &State, row: &Key, field: &str) -> Spot {
    let pattern = row.under(field).pattern();
    let list = pattern.strip_prefix("paint/").unwrap_or_default();
    match list.split('/').next() {
        Some("panels") if list.starts_with("panels/*/openings/") => opening(state, row, field),
        Some("panels") if list.starts_with("panels/*/corners/") => Spot::Open,
        Some("panels") => panel(state, row, field),
        Some("systems") if list.contains("/parts/") => part(state, row, field),
        Some("systems") if list.contains("/layers/") => layer(state, row, field),
        Some("systems") => system(state, field),
        Some("products") => product(field),
        _ => Spot::Open,
    }
}

fn when(needed: bool) -> Spot {
    if needed { Spot::Open } else { Spot::Nowhere }
}

/// What a shape is measured by.
fn measured_by(shape: &str) -> &'static [&'static str] {
    match shape {
        "trapezium" => &["length", "height", "top"],
        "curved" => &["length", "chord", "rise"],
        "tube" => &["length", "diameter"],
        "disc" => &["diameter"],
        "corners" => &["corners"],
        "known" => &["area"],
        _ => &["length", "height"],
    }
}

const SIZES: [&str; 8] = [
    "length", "height", "top", "chord", "rise", "diameter", "area", "corners",
];

fn panel(state: &State, row: &Key, field: &str) -> Spot {
    if SIZES.contains(&field) {
        return when(measured_by(&chosen(state, row, "shape")).contains(&field));
    }
    match field {
        "edges" | "faces" => Spot::More,
        "system" => when(state.findings.paint.sheet.systems.len() > 1),
        "openings" if state.book.rows(&row.under("openings")).is_empty() => Spot::More,
        _ => Spot::Open,
    }
}

fn opening(state: &State, row: &Key, field: &str) -> Spot {
    if SIZES.contains(&field) {
        return when(measured_by(&chosen(state, row, "shape")).contains(&field));
    }
    Spot::Open
}

fn system(state: &State, field: &str) -> Spot {
    let alone = state.findings.paint.sheet.systems.len() < 2;
    if field == "name" && alone {
        Spot::More
    } else {
        Spot::Open
    }
}

fn layer(state: &State, row: &Key, field: &str) -> Spot {
    let by_rate = chosen(state, row, "basis") == "rate";
    match field {
        "kind" | "coats" | "name" | "solids" => Spot::Open,
        "film" => when(!by_rate),
        "rate" => when(by_rate),
        "film_is" if by_rate => Spot::Nowhere,
        "rate_for" | "rate_is" if !by_rate => Spot::Nowhere,
        "parts" if state.book.below(&row.under("parts")).next().is_some() => Spot::Open,
        _ => Spot::More,
    }
}

fn part(state: &State, row: &Key, field: &str) -> Spot {
    let in_parts = chosen(state, row, "of") == "parts";
    match field {
        "parts" => when(in_parts),
        "share" => when(!in_parts),
        _ => Spot::Open,
    }
}

fn product(field: &str) -> Spot {
    match field {
        "water" | "in_hand" | "isocyanate" => Spot::More,
        _ => Spot::Open,
    }
}

/// The result in a row's heading.
fn found(row: &Key) -> Option<String> {
    let parts: Vec<&str> = row.as_str().split('/').collect();
    match parts.as_slice() {
        ["paint", "panels", id] => Some(format!("paint/area/{id}")),
        ["paint", "systems", id] => Some(format!("paint/system_litres/{id}")),
        ["paint", "systems", system, "layers", id] => {
            Some(format!("paint/layer_litres/{system}/{id}"))
        }
        ["paint", "systems", system, "layers", layer, "parts", id] => {
            Some(format!("paint/part_litres/{system}/{layer}/{id}"))
        }
        ["paint", "products", id] => Some(format!("paint/product_litres/{id}")),
        _ => None,
    }
}
