//! The words of the paint sheet.

mod answers;

use self::answers::{OWN, REMARKS, RESULTS};
use super::{ListWords, Phrase, Subject, list, pair, same};

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
