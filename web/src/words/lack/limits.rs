//! The entries that a calculation refuses, by the names it knows them by, and within what limits they are right.

use crate::words::{Phrase, Tongue, filled, found, pair, same};
use measure::{Figure, Kind, Manner, System};

/// The entries' words: with a capital, since a sentence begins with them.
const ENTRIES: &[(&str, Phrase)] = &[
    ("across", same("The width across the flat")),
    ("adjuster", same("The adjuster's notches")),
    ("air", same("The air's temperature")),
    ("backlash", same("The backlash")),
    ("backlash factor", same("The backlash for a unit of move")),
    ("backlash readings", same("Readings of the backlash")),
    ("brake_mass", same("The mass on the brake tester")),
    ("cable friction", same("The cable's friction")),
    (
        "centre line",
        pair(
            "Pairs across the centre line",
            "Pairs across the center line",
        ),
    ),
    ("chord", same("The chord")),
    ("corner", same("The radius of the corners")),
    ("corners", same("Corners")),
    ("diameter", same("The diameter")),
    (
        "distance between datums",
        same("The distance between datums"),
    ),
    ("drop arm", pair("The drop arm", "The pitman arm")),
    ("extension angle", same("The extension's angle")),
    ("gun_air", same("The gun's air")),
    (
        "half spring",
        same("The half of the spring before the axle"),
    ),
    ("head friction", same("The friction under the head")),
    ("humidity", same("The humidity")),
    ("kerf", same("The width of the cut")),
    ("left", same("The force of a brake")),
    ("length", same("The length")),
    ("marks", same("The tooth marks")),
    ("master cylinder bore", same("The master cylinder's bore")),
    ("mix_size", same("What is mixed at a time")),
    ("module", same("The teeth's module")),
    ("opening", same("The opening")),
    ("pairs of points", same("Pairs of points")),
    ("parts", same("The parts of the mix")),
    ("payers", same("The payers")),
    ("pedal arm", same("The pedal's arm")),
    ("per_week", same("The distance driven in a week")),
    ("radius", same("The radius of the pull")),
    ("readings", same("Readings")),
    ("red line", same("The red line")),
    ("rise", same("The rise of the arc")),
    ("servo", pair("The servo's ratio", "The booster's ratio")),
    ("strip", same("The ends of the strip")),
    ("shim pack", same("The pack of shims")),
    ("slant", same("The slant")),
    ("slave cylinder bore", same("The slave cylinder's bore")),
    ("start", same("The start on the hill")),
    ("swing", same("The arm's swing")),
    ("thread friction", same("The friction in the thread")),
    ("three points in one line", same("Three points in one line")),
    (
        "trials at different positions",
        same("Trials at different positions"),
    ),
    ("turning torque", same("The turning torque")),
    ("use of yield", same("The share of yield to use")),
    ("wanted backlash", same("The backlash wanted")),
    ("weld gap", same("The gap for the weld")),
    ("width", same("The width")),
    ("wrench length", same("The wrench's length")),
    ("wrench setting", same("The setting")),
    // Links of the steering.
    ("drag link", same("drag link")),
    ("track rod", pair("track rod", "tie rod")),
];

/// What an entry measures, where its limits are to be told in units.
fn kind(entry: &str) -> Kind {
    match entry {
        "air" => Kind::Temperature,
        "backlash" | "wanted backlash" | "module" | "shim pack" | "kerf" | "weld gap" => {
            Kind::Thickness
        }
        "across" | "corner" => Kind::Length,
        "brake_mass" => Kind::Mass,
        "chord"
        | "diameter"
        | "distance between datums"
        | "drop arm"
        | "length"
        | "master cylinder bore"
        | "pedal arm"
        | "radius"
        | "rise"
        | "slave cylinder bore"
        | "width"
        | "wrench length" => Kind::Length,
        "extension angle" | "slant" | "swing" => Kind::Angle,
        "gun_air" => Kind::Flow,
        "humidity" | "use of yield" => Kind::Percent,
        "left" => Kind::Force,
        "mix_size" => Kind::SmallVolume,
        "opening" => Kind::Area,
        "per_week" => Kind::Distance,
        "red line" => Kind::Rotation,
        "start" => Kind::Acceleration,
        "wrench setting" => Kind::Torque,
        _ => Kind::Ratio,
    }
}

/// The words for an entry; none where there are none, which a test forbids.
pub(super) fn entry(name: &str, tongue: Tongue) -> Option<&'static str> {
    found(ENTRIES, name).map(|phrase| tongue.say(phrase))
}

/// The words for an entry, or at worst its name.
pub(super) fn named(name: &str, tongue: Tongue) -> String {
    entry(name, tongue).unwrap_or(name).to_owned()
}

/// A limit in metric units, and behind it in imperial ones where those differ: nobody has asked for either.
fn limit(si: f64, kind: Kind) -> String {
    let said = |system| {
        let shown = measure::show(&Figure::exact(si, kind), &Manner::of(system));
        if shown.unit.is_empty() {
            shown.value
        } else {
            format!("{}\u{a0}{}", shown.value, shown.unit)
        }
    };
    let (metric, imperial) = (said(System::Metric), said(System::Imperial));
    if metric == imperial {
        metric
    } else {
        format!("{metric} ({imperial})")
    }
}

/// An entry beyond its limits, in a sentence that ends in them.
pub(super) fn out_of_range(name: &str, lowest: f64, highest: f64, tongue: Tongue) -> String {
    let kind = kind(name);
    let mut parts = vec![named(name, tongue)];
    let phrase = match (lowest.is_finite(), highest.is_finite() && highest < 1e15) {
        (true, true) => {
            parts.extend([limit(lowest, kind), limit(highest, kind)]);
            same("{0} must lie between {1} and {2}.")
        }
        (true, false) => {
            parts.push(limit(lowest, kind));
            same("{0} must be more than {1}.")
        }
        _ => {
            parts.push(limit(highest, kind));
            same("{0} must be less than {1}.")
        }
    };
    filled(tongue.say(phrase), &parts)
}
