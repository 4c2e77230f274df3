//! The words of the paint sheet.

use super::{ListWords, Phrase, Subject, Told, list, pair, same, told, told_of};

/// The words of the paint sheet.
pub static WORDS: Subject = Subject {
    name: same("Paint"),
    asks: pair("How many litres?", "How many quarts?"),
    tells: same(
        "How much paint each layer takes, what to mix and buy, and when each coat can follow.",
    ),
    fields: FIELDS,
    hints: HINTS,
    choices: CHOICES,
    groups: GROUPS,
    lists: LISTS,
    results: RESULTS,
    remarks: REMARKS,
    plates: &[
        (
            "paint/elevations",
            same("Enter the body's length first: the sheet metal, not the bumpers."),
        ),
        (
            "paint/films",
            same("The films appear here, coat on coat, once a layer is known."),
        ),
    ],
    words: OWN,
};

const FIELDS: &[(&str, Phrase)] = &[
    ("paint/body_length", same("Body, length")),
    ("paint/body_width", same("Body, width")),
    ("paint/body_height", same("Body, height of the sheet metal")),
    ("paint/sill", same("Sill above the ground")),
    ("paint/body_share", same("Share of the box that is painted")),
    ("paint/body_edges", same("Edges, returns and shuts")),
    ("paint/body_system", same("Body gets")),
    ("paint/panels/*/name", same("Panel")),
    ("paint/panels/*/shape", same("Shape")),
    ("paint/panels/*/length", same("Length")),
    ("paint/panels/*/height", same("Height")),
    ("paint/panels/*/top", same("Other edge")),
    ("paint/panels/*/chord", same("Straight across the curve")),
    ("paint/panels/*/rise", same("Rise in the middle")),
    ("paint/panels/*/diameter", same("Across")),
    ("paint/panels/*/area", same("Area")),
    ("paint/panels/*/corners/*/x", same("Across")),
    ("paint/panels/*/corners/*/y", same("Up")),
    ("paint/panels/*/openings/*/shape", same("Shape")),
    ("paint/panels/*/openings/*/length", same("Length")),
    ("paint/panels/*/openings/*/height", same("Height")),
    ("paint/panels/*/openings/*/diameter", same("Across")),
    ("paint/panels/*/openings/*/area", same("Area")),
    ("paint/panels/*/openings/*/count", same("How many")),
    ("paint/panels/*/faces", same("Faces painted")),
    ("paint/panels/*/edges", same("Edges and returns")),
    ("paint/panels/*/count", same("How many alike")),
    ("paint/panels/*/system", same("It gets")),
    (
        "paint/systems/*/name",
        pair("Colour or part", "Color or part"),
    ),
    ("paint/systems/*/layers/*/name", same("Layer")),
    ("paint/systems/*/layers/*/kind", same("What it is")),
    ("paint/systems/*/layers/*/coats", same("Coats")),
    ("paint/systems/*/layers/*/basis", same("A coat is given by")),
    ("paint/systems/*/layers/*/film", same("Film of one coat")),
    ("paint/systems/*/layers/*/film_is", same("That film is")),
    ("paint/systems/*/layers/*/rate", same("Spreading rate")),
    (
        "paint/systems/*/layers/*/rate_for",
        same("That rate is for paint"),
    ),
    ("paint/systems/*/layers/*/rate_is", same("That rate is")),
    ("paint/systems/*/layers/*/solids", same("Volume solids")),
    (
        "paint/systems/*/layers/*/solids_for",
        same("Those solids are of paint"),
    ),
    (
        "paint/systems/*/layers/*/parts/*/product",
        same("Component"),
    ),
    ("paint/systems/*/layers/*/parts/*/of", same("Measured as")),
    ("paint/systems/*/layers/*/parts/*/parts", same("Parts")),
    ("paint/systems/*/layers/*/parts/*/share", same("Share")),
    ("paint/systems/*/layers/*/mix_by", same("Parts are by")),
    (
        "paint/systems/*/layers/*/thinner_by",
        pair("Thinner is by", "Reducer is by"),
    ),
    ("paint/systems/*/layers/*/mix_size", same("Mixed at a time")),
    ("paint/systems/*/layers/*/pot_life", same("Pot life")),
    (
        "paint/systems/*/layers/*/wait",
        same("Wait between coats, at least"),
    ),
    (
        "paint/systems/*/layers/*/earliest_over",
        same("Next layer, at the earliest after"),
    ),
    (
        "paint/systems/*/layers/*/latest_over",
        same("Next layer, at the latest after"),
    ),
    (
        "paint/systems/*/layers/*/film_least",
        same("Whole film, least"),
    ),
    (
        "paint/systems/*/layers/*/film_most",
        same("Whole film, most"),
    ),
    (
        "paint/systems/*/layers/*/solvent",
        same("Solvent, ready to spray"),
    ),
    (
        "paint/systems/*/layers/*/stock",
        pair("In stock, ready to spray", "On hand, ready to spray"),
    ),
    ("paint/products/*/name", same("What it is called")),
    ("paint/products/*/role", same("What it is")),
    (
        "paint/products/*/density",
        pair("A litre weighs", "Density"),
    ),
    ("paint/products/*/solvent", same("Solvent in it")),
    ("paint/products/*/water", same("Water in it")),
    ("paint/products/*/in_hand", same("On the shelf")),
    ("paint/products/*/isocyanate", same("Holds isocyanates")),
    (
        "paint/products/*/tins/*/size",
        pair("Tin holds", "Can holds"),
    ),
    ("paint/products/*/tins/*/price", same("Price")),
    ("paint/gun", same("Gun")),
    ("paint/transfer", same("Share that reaches the panel")),
    ("paint/cup", same("Cup holds")),
    ("paint/left_in_cup", same("Stays in cup and hose, each mix")),
    ("paint/reserve", same("Reserve")),
    ("paint/flow", same("Paint through the gun")),
    ("paint/temperature", same("Air temperature")),
    ("paint/reference", same("Data sheet's times are for")),
    ("paint/slower", same("Times as long, 10 °C colder")),
    ("paint/humidity", same("Humidity")),
    ("paint/metal", same("Metal temperature")),
    ("paint/gun_air", same("Air the gun takes")),
    ("paint/free_air", same("Free air the compressor gives")),
    ("paint/swept", same("Swept, where no free air is given")),
    ("paint/efficiency", same("Of the swept, delivered")),
    ("paint/receiver", same("Receiver holds")),
    ("paint/cut_out", same("Compressor cuts out at")),
    ("paint/least_air", same("Least pressure for the gun")),
    ("paint/quote", same("The paint shop asks")),
    ("paint/sundries", same("Masking, paper, filters, hire")),
    ("paint/hours", same("Hours of our own")),
    ("paint/hour_rate", same("An hour is put at")),
];

const HINTS: &[(&str, Phrase)] = &[
    (
        "paint/body_share",
        same("Glass, arches and lamps taken off. Van about 85 %, cab 70 %, car 55 %."),
    ),
    ("paint/body_length", same("Blank: the vehicle's.")),
    ("paint/body_width", same("Blank: the vehicle's.")),
    (
        "paint/body_height",
        same("Sill to roof. Blank: the vehicle's less the sill."),
    ),
    (
        "paint/panels/*/chord",
        same("A straight edge laid across, edge to edge."),
    ),
    (
        "paint/panels/*/rise",
        same("From the straight edge to the metal, in the middle."),
    ),
    (
        "paint/panels/*/length",
        same("Of a curve or tube, along it."),
    ),
    ("paint/panels/*/edges", same("As a share on top.")),
    (
        "paint/systems/*/layers/*/film",
        same("From the data sheet; it is dry unless said."),
    ),
    (
        "paint/systems/*/layers/*/rate_is",
        same("In practice: its loss is in it, the gun's is not taken again."),
    ),
    (
        "paint/systems/*/layers/*/solids",
        same("From the data sheet."),
    ),
    (
        "paint/systems/*/layers/*/mix_size",
        same("Blank: as the pot life divides it."),
    ),
    (
        "paint/systems/*/layers/*/stock",
        same("Tells what film or how many coats it gives."),
    ),
    (
        "paint/transfer",
        same("The one loss of the gun; the data sheet's loss is the same."),
    ),
    (
        "paint/slower",
        same("Usually 2. The maker's table comes first."),
    ),
    ("paint/free_air", same("Free air delivered, not swept.")),
];

const CHOICES: &[(&str, Phrase)] = &[
    ("rectangle", same("Rectangle")),
    ("trapezium", pair("Trapezium", "Trapezoid")),
    ("curved", same("Rolled")),
    ("tube", same("Tube")),
    ("disc", pair("Disc", "Disk")),
    ("corners", same("Traced")),
    ("known", same("Area known")),
    ("one", same("Outside")),
    ("both", same("Both faces")),
    (
        "paint/systems/*/layers/*/parts/*/of=both",
        pair("Of paint and hardener", "Of paint and activator"),
    ),
    (
        "paint/systems/*/layers/*/parts/*/of=paint",
        same("Of the paint"),
    ),
    ("parts", same("Parts")),
    ("etch", same("Etch primer")),
    ("epoxy", same("Epoxy primer")),
    ("filler", same("Filler primer")),
    ("base", same("Base")),
    ("clear", same("Clear")),
    ("single", pair("Single stage", "Single stage")),
    ("cellulose", pair("Cellulose", "Lacquer")),
    ("film", same("Film")),
    ("rate", same("Spreading rate")),
    ("dry", same("Dry")),
    ("wet", same("Wet")),
    ("ready", same("Ready to spray")),
    ("unthinned", pair("Before thinning", "Before reducing")),
    ("theoretical", same("Theoretical")),
    ("practical", same("In practice")),
    ("volume", same("Volume")),
    ("weight", same("Weight")),
    ("paint", same("Paint")),
    ("hardener", pair("Hardener", "Activator")),
    ("thinner", pair("Thinner", "Reducer")),
    ("conventional", same("Conventional")),
    ("low_pressure", same("Low pressure, panels")),
    ("low_pressure_small", same("Low pressure, small parts")),
];

const GROUPS: &[(&str, Phrase)] = &[
    ("paint/body", same("Body, quickly")),
    ("paint/panels", same("Panel by panel")),
    ("paint/systems", same("What goes on")),
    ("paint/products", same("What to buy it in")),
    ("paint/gun", same("Gun and allowances")),
    ("paint/day", same("The day")),
    ("paint/air", same("Compressed air")),
    ("paint/money", same("Send out or do here")),
    ("paint/mixing", same("Mixing, on the scale")),
    ("paint/buying", pair("Tins to buy", "Cans to buy")),
    ("paint/clock", same("Coat after coat")),
    ("paint/solvents", same("Solvent")),
    ("paint/layers", same("Layer by layer")),
    ("paint/results", same("What else comes of it")),
];

const LISTS: &[(&str, ListWords)] = &[
    (
        "paint/panels",
        list(same("Panels"), same("panel"), same("Panel {0}")),
    ),
    (
        "paint/panels/*/corners",
        list(same("Corners"), same("corner"), same("Corner {0}")),
    ),
    (
        "paint/panels/*/openings",
        list(same("Openings"), same("opening"), same("Opening {0}")),
    ),
    (
        "paint/systems",
        list(same("Systems"), same("system"), same("System {0}")),
    ),
    (
        "paint/systems/*/layers",
        list(same("Layers"), same("layer"), same("Layer {0}")),
    ),
    (
        "paint/systems/*/layers/*/parts",
        list(same("Mixed from"), same("component"), same("Component {0}")),
    ),
    (
        "paint/products",
        list(same("Products"), same("product"), same("Product {0}")),
    ),
    (
        "paint/products/*/tins",
        list(
            pair("Tins on the price list", "Cans on the price list"),
            pair("tin", "can"),
            pair("Tin {0}", "Can {0}"),
        ),
    ),
];

const LAYER: &[&str] = &["paint/systems", "paint/systems/*/layers"];
const PART: &[&str] = &[
    "paint/systems",
    "paint/systems/*/layers",
    "paint/systems/*/layers/*/parts",
];
const SYSTEM: &[&str] = &["paint/systems"];
const PRODUCT: &[&str] = &["paint/products"];

const RESULTS: &[Told] = &[
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

const REMARKS: &[(&str, Phrase)] = &[
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

const OWN: &[(&str, Phrase)] = &[
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
