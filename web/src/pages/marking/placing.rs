//! How the rows of the lists are laid out: a feature shows what its kind is measured by, and a distance for each datum there is.

use crate::state::{State, more_of};
use crate::widgets::{Placing, Spot};
use buildbook::{Key, field_of};

/// The lists of the marking-out sheet.
pub static PLACING: Placing = Placing {
    name: "marking",
    spot,
    found,
};

/// What stands in a choice, or is assumed of it.
fn chosen(state: &State, row: &Key, field: &str) -> String {
    let key = row.under(field);
    let typed = state
        .book
        .entry(key.as_str())
        .map(|entry| entry.text.trim().to_owned());
    let assumed = || Some(field_of(&key)?.assumed?.to_owned());
    typed.or_else(assumed).unwrap_or_default()
}

fn typed(state: &State, row: &Key, field: &str) -> bool {
    state
        .book
        .entry(row.under(field).as_str())
        .is_some_and(|entry| !entry.is_blank())
}

/// What a kind is measured by.
fn sizes(kind: &str) -> &'static [&'static str] {
    match kind {
        "slot" | "corner" => &["length", "width", "turn"],
        "rectangle" => &["length", "width", "corner", "turn"],
        "d_hole" => &["diameter", "width", "turn"],
        "tube" => &["diameter", "slant", "turn"],
        "outline" => &["points", "turn"],
        _ => &["diameter"],
    }
}

fn spot(state: &State, row: &Key, field: &str) -> Spot {
    let list = row.parent().map(|list| list.field().to_owned());
    match list.as_deref() {
        Some("features") => feature(state, row, field),
        Some("pairs") => pair(state, row, field),
        Some("edges") => edge(state, row, field),
        Some("there") => thing(state, row, field),
        _ => Spot::Open,
    }
}

/// How many datums there are.
fn datums(state: &State) -> usize {
    let taken = &state.findings.marking.taken;
    taken.datums.as_ref().map_or(2, Vec::len)
}

fn feature(state: &State, row: &Key, field: &str) -> Spot {
    let kind = chosen(state, row, "kind");
    let of_kind = sizes(&kind).contains(&field);
    let when = |needed: bool| if needed { Spot::Open } else { Spot::Nowhere };
    match field {
        "name" | "kind" | "a" | "b" => Spot::Open,
        "c" => when(datums(state) > 2 || typed(state, row, field)),
        "d" => when(datums(state) > 3 || typed(state, row, field)),
        "diameter" | "length" | "width" | "slant" | "points" => when(of_kind),
        "turn" | "corner" if !of_kind => Spot::Nowhere,
        // A field that moved while it is typed into would lose the cursor.
        _ if state.is_open(&more_of(row)) => Spot::More,
        _ if typed(state, row, field) => Spot::Open,
        "more" if state.book.below(&row.under("more")).next().is_some() => Spot::Open,
        _ => Spot::More,
    }
}

/// An edge shows what it is given by.
fn edge(state: &State, row: &Key, field: &str) -> Spot {
    let points = chosen(state, row, "by") == "two_points";
    let of_points = ["one_a", "one_b", "two_a", "two_b", "two_side"].contains(&field);
    let of_offsets = field.starts_with("off_");
    if of_points && !points || of_offsets && points {
        Spot::Nowhere
    } else {
        Spot::Open
    }
}

/// A thing shows what its kind is given by.
fn thing(state: &State, row: &Key, field: &str) -> Spot {
    let of = match field {
        "two_a" | "two_b" | "two_side" => "strip",
        "length" | "turn" => "rectangle",
        _ => return Spot::Open,
    };
    if chosen(state, row, "kind") == of {
        Spot::Open
    } else {
        Spot::Nowhere
    }
}

fn pair(state: &State, row: &Key, field: &str) -> Spot {
    let other = chosen(state, row, "of") == "other";
    let third = datums(state) > 2 || typed(state, row, field);
    match field {
        "name" | "own_a" | "own_b" if !other => Spot::Nowhere,
        "own_c" if !(other && third) => Spot::Nowhere,
        "twin_c" if !third => Spot::Nowhere,
        _ => Spot::Open,
    }
}

/// The result in a row's heading.
fn found(row: &Key) -> Option<String> {
    let parts: Vec<&str> = row.as_str().split('/').collect();
    match parts.as_slice() {
        ["marking", "features", id] => Some(format!("marking/arc_a/{id}")),
        ["marking", "pairs", id] => Some(format!("marking/pair/{id}")),
        _ => None,
    }
}
