//! What the paint sheet answers: results, remarks and the words of its page.

use super::super::{Phrase, Told, pair, same, told, told_of};

const LAYER: &[&str] = &["paint/systems", "paint/systems/*/layers"];
const PART: &[&str] = &[
    "paint/systems",
    "paint/systems/*/layers",
    "paint/systems/*/layers/*/parts",
];
const SYSTEM: &[&str] = &["paint/systems"];
const PRODUCT: &[&str] = &["paint/products"];

pub(super) const RESULTS: &[Told] = &[
    told("paint/litres", same("Paint in all, ready to spray")),
    told("paint/area", same("Area to paint")),
    told("paint/area/body", same("Area of the body")),
    told_of("paint/area/*", &["paint/panels"], same("Area of {0}")),
    told_of("paint/system_area/*", SYSTEM, same("Area, {0}")),
    told_of("paint/system_litres/*", SYSTEM, same("Ready to spray, {0}")),
    told_of("paint/layer_litres/*/*", LAYER, same("{1} ({0}), to mix")),
    told_of("paint/coat_litres/*/*", LAYER, same("{1} ({0}), one coat")),
    told_of("paint/film/*/*", LAYER, same("{1} ({0}), dry film a coat")),
    told_of("paint/wet/*/*", LAYER, same("{1} ({0}), wet comb")),
    told_of(
        "paint/whole_film/*/*",
        LAYER,
        same("{1} ({0}), dry film in all"),
    ),
    told_of(
        "paint/pot_life/*/*",
        LAYER,
        same("{1} ({0}), pot life today"),
    ),
    told_of("paint/solvent/*/*", LAYER, same("{1} ({0}), solvent")),
    told_of(
        "paint/solvent_limit/*/*",
        LAYER,
        same("{1} ({0}), limit of 2004/42/EC"),
    ),
    told_of("paint/mixes/*/*", LAYER, same("{1} ({0}), mixes")),
    told_of("paint/gun_fills/*/*", LAYER, same("{1} ({0}), gun fills")),
    told_of("paint/mix_litres/*/*", LAYER, same("{1} ({0}), one mix")),
    told_of(
        "paint/stock_film/*/*",
        LAYER,
        pair(
            "{1} ({0}), film a coat from stock",
            "{1} ({0}), film a coat from what is on hand",
        ),
    ),
    told_of(
        "paint/stock_coats/*/*",
        LAYER,
        pair(
            "{1} ({0}), coats from stock",
            "{1} ({0}), coats from what is on hand",
        ),
    ),
    told_of(
        "paint/part_share/*/*/*",
        PART,
        same("{1} ({0}): share of {2}"),
    ),
    told_of(
        "paint/part_litres/*/*/*",
        PART,
        same("{1} ({0}): {2} in all"),
    ),
    told_of(
        "paint/mix_part/*/*/*",
        PART,
        same("{1} ({0}): {2} in one mix"),
    ),
    told_of(
        "paint/grams/*/*/*",
        PART,
        same("{1} ({0}): weight of {2} in one mix"),
    ),
    told_of(
        "paint/scale/*/*/*",
        PART,
        same("{1} ({0}): scale after {2}"),
    ),
    told_of("paint/start/*/*/*", LAYER, same("{1} ({0}): coat begins")),
    told_of("paint/end/*/*/*", LAYER, same("{1} ({0}): coat is on")),
    told_of("paint/next_from/*/*/*", LAYER, same("{1} ({0}): next from")),
    told_of(
        "paint/next_until/*/*/*",
        LAYER,
        same("{1} ({0}): next until"),
    ),
    told_of("paint/product_litres/*", PRODUCT, same("{0}, to buy")),
    told_of("paint/left_over/*", PRODUCT, same("{0}, left over")),
    told("paint/dew_point", same("Dew point")),
    told("paint/least_metal", same("Metal must be at least")),
    told("paint/free_air", same("Free air the compressor gives")),
    told("paint/air_load", same("The gun's share of the compressor")),
    told(
        "paint/air_time",
        same("Trigger time until the pressure is down"),
    ),
    told_of("paint/product_cost/*", PRODUCT, same("{0}, cost")),
    told("paint/tins_cost", pair("All tins", "All cans")),
    told("paint/own_hours", same("Our own hours")),
    told("paint/doing_it", same("Doing it here")),
    told("paint/saved", same("Saved by doing it here")),
];

pub(super) const REMARKS: &[(&str, Phrase)] = &[
    (
        "isocyanates",
        pair(
            "Paint with hardener gives off isocyanates when it is sprayed. Wear air-fed breathing apparatus until the mist has cleared; a cartridge mask does not protect.",
            "Paint with activator gives off isocyanates when it is sprayed. Wear a supplied-air respirator until the mist has cleared; a cartridge mask does not protect.",
        ),
    ),
    (
        "tablet_out_of_spray",
        pair(
            "Keep this tablet out of the spray zone: solvent vapour and a battery do not go together.",
            "Keep this tablet out of the spray zone: solvent vapor and a battery do not go together.",
        ),
    ),
    (
        "lead_in_old_paint",
        same(
            "Old paint may hold lead. Test before you sand, sand wet, and keep the dust away from people and food.",
        ),
    ),
    (
        "solvent_limits",
        same(
            "Solvent stands beside the limits of 2004/42/EC, which bind whoever sells the paint and leave out historic vehicles in places. The maker's sheet and the law of the place come first.",
        ),
    ),
    (
        "one_loss",
        same("This spreading rate has its loss in it, so the gun's is not taken again."),
    ),
    (
        "panel_refused",
        same("This panel cannot be as entered: look at its openings, its rise and its corners."),
    ),
    (
        "film_below_band",
        same("The whole film of {0} is below what it should be: another coat, or a wetter one."),
    ),
    (
        "film_above_band",
        same(
            "The whole film of {0} is above what it should be: it may trap solvent, craze or run.",
        ),
    ),
    (
        "window_shut",
        pair(
            "The next layer may begin only after its window has shut: rub down first.",
            "The next layer may begin only after its window has shut: scuff it first.",
        ),
    ),
    (
        "too_cold_to_cure",
        pair(
            "Below 10 °C most paint with hardener does not cure.",
            "Below 50 °F most paint with activator does not cure.",
        ),
    ),
    (
        "metal_too_cold",
        same(
            "The metal at {0} is colder than {1}: moisture settles on it. Warm it, not only the air.",
        ),
    ),
    (
        "metal_near_dew_point",
        same("The metal at {0} may be colder than {1}: measure both again before you spray."),
    ),
    (
        "compressor_falls_behind",
        same(
            "The gun takes more air than the compressor gives: the pressure falls while you spray.",
        ),
    ),
    (
        "tins_straddle",
        pair(
            "{0}: within the ± it may take another tin.",
            "{0}: within the ± it may take another can.",
        ),
    ),
    (
        "mix_tins_together",
        pair(
            "{0}: pour all tins together before you start, so that the colour is one.",
            "{0}: pour all cans together before you start, so that the color is one.",
        ),
    ),
    (
        "hardener_keeps_badly",
        pair(
            "{0}: an opened tin keeps badly. Buy it when you need it.",
            "{0}: an opened can keeps badly. Buy it when you need it.",
        ),
    ),
];

pub(super) const OWN: &[(&str, Phrase)] = &[
    ("elevations_title", same("What is painted, laid flat")),
    ("elevations_said", same("Flat views to one scale: {0}.")),
    ("films_title", same("The films, coat on coat")),
    (
        "films_said",
        same("Dry films of the layers beside what each should lie between: {0}."),
    ),
    ("body_side", same("Side, twice")),
    ("body_end", same("End, twice")),
    ("body_roof", same("Roof")),
    ("part", same("What")),
    ("area", same("Area")),
    ("layer", same("Layer")),
    ("film", same("Dry film")),
    ("band", same("Should be")),
    ("coats", same("Coats")),
    ("wet", same("Wet comb")),
    ("one_coat", same("One coat")),
    ("in_all", same("In all")),
    ("share", same("Share")),
    ("component", same("Component")),
    ("pour", same("Pour")),
    ("pour_weight", same("Weight")),
    ("scale", same("Scale shows")),
    ("one_mix", same("One mix")),
    ("mixes", same("Mixes")),
    ("gun_fills", same("Gun fills")),
    ("product", same("Product")),
    ("needed", same("Needed")),
    ("buy", same("Buy")),
    ("left_over", same("Left over")),
    ("cost", same("Cost")),
    (
        "no_tins",
        pair(
            "Enter the tins it is sold in",
            "Enter the cans it is sold in",
        ),
    ),
    (
        "name_products",
        pair(
            "Name the components to get grams and tins.",
            "Name the components to get weights and cans.",
        ),
    ),
    ("coat", same("Coat")),
    ("begins", same("Begins")),
    ("is_on", same("Is on")),
    ("next_from", same("Next from")),
    ("next_until", same("until")),
    ("solvent", same("Solvent")),
    ("limit", same("Limit, 2004/42/EC II B")),
    ("unnamed", same("not named")),
    ("presets", same("Usual mixes")),
    ("kind", same("What it is")),
    ("pot_life", same("Pot life")),
    ("together", same("All")),
];
