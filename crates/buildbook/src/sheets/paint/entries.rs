//! What is entered on the paint sheet.

use std::rc::Rc;

use measure::{
    Area, Decimal, Density, Flow, Kind, Length, Money, PerLength, Pressure, Ratio, Temperature,
    Time, Tool, Volume, unit,
};

use crate::field::{choice, count, decimal, money, number, one_of, price, text, yes_no};
use crate::{AtLeastOne, Given, sheet};

/// The shapes of panels.
pub const SHAPES: &[&str] = &[
    "rectangle",
    "trapezium",
    "curved",
    "tube",
    "disc",
    "corners",
    "known",
];
/// The shapes of openings.
pub const OPENINGS: &[&str] = &["rectangle", "disc", "known"];
/// The kinds of layer, by the words of `trade::paint::LayerKind`.
pub const KINDS: &[&str] = &[
    "etch",
    "epoxy",
    "filler",
    "base",
    "clear",
    "single",
    "cellulose",
];
/// The guns, by the words of `trade::paint::Gun`.
pub const GUNS: &[&str] = &["conventional", "low_pressure", "low_pressure_small"];
/// Before thinner goes in, or as it is sprayed.
pub const READY: &[&str] = &["ready", "unthinned"];
/// By volume or by weight.
pub const BY: &[&str] = &["volume", "weight"];
/// What the amount of a component is of.
pub const OF: &[&str] = &["parts", "paint", "both"];
/// What a product is.
pub const ROLES: &[&str] = &["paint", "hardener", "thinner"];

const LEAST_FILM: f64 = 1e-6;
const MOST_FILM: f64 = 2e-3;

sheet! {
    /// What is entered on the paint sheet.
    pub struct PaintSheet = "paint" {
        /// Length of the body's sheet metal. Blank: the vehicle's.
        body_length: Given<Length> = number("L", Kind::Length).between(0.1, 20.0).measured_with(Tool::Tape),
        /// Width of the body's sheet metal. Blank: the vehicle's.
        body_width: Given<Length> = number("W", Kind::Length).between(0.1, 4.0).measured_with(Tool::Tape),
        /// Height of the body's sheet metal. Blank: the vehicle's, less what is below the sill.
        body_height: Given<Length> = number("H", Kind::Length).between(0.1, 5.0).measured_with(Tool::Tape),
        /// How far the sill is above the ground; counts only where the height is the vehicle's.
        sill: Given<Length> = number("h_sill", Kind::Length).between(0.0, 2.0).measured_with(Tool::Tape).assumed("400 ± 100"),
        /// The share of the enclosing box that is painted: glass, arches and lamps taken off.
        body_share: Given<Ratio> = number("s", Kind::Percent).between(0.05, 1.5).measured_with(Tool::Within(0.05)).assumed("75 ± 10"),
        /// Edges, returns and door shuts, as a share on top.
        body_edges: Given<Ratio> = number("e", Kind::Percent).between(0.0, 3.0).measured_with(Tool::Within(0.03)).assumed("10 ± 5"),
        /// Which system the body gets, by the id of its row. Blank: the first.
        body_system: Given<Rc<str>> = one_of("paint/systems"),
        /// Panels, one by one.
        panels: Vec<PaintPanel>,
        /// What goes on: a system is a list of layers.
        systems: AtLeastOne<PaintSystem>,
        /// What is bought.
        products: Vec<PaintProduct>,

        /// What it is sprayed with.
        gun: Given<&'static str> = choice(GUNS).assumed("low_pressure"),
        /// The share of the paint that reaches the panel: the one loss of the gun.
        transfer: Given<Ratio> = number("η", Kind::Percent).between(0.05, 1.0).measured_with(Tool::Within(0.05)),
        /// What the gun's cup holds.
        cup: Given<Volume> = number("V_cup", Kind::SmallVolume).between(0.05e-3, 20e-3).assumed("600"),
        /// What stays in cup and hose with each mix.
        left_in_cup: Given<Volume> = number("c", Kind::SmallVolume).between(0.0, 2e-3).measured_with(Tool::Guess).assumed("50 ± 25"),
        /// What is mixed beyond need.
        reserve: Given<Ratio> = number("r", Kind::Percent).between(0.0, 2.0).assumed("10"),
        /// What leaves the gun while the trigger is held.
        flow: Given<Flow> = number("q", Kind::Flow).in_units(&unit::MILLILITRE_PER_MINUTE, &unit::MILLILITRE_PER_MINUTE, &unit::MILLILITRE_PER_MINUTE).between(1e-7, 1e-3).measured_with(Tool::Guess).assumed("200 ± 60"),

        /// How warm it is where it is painted.
        temperature: Given<Temperature> = number("θ", Kind::Temperature).between(268.15, 328.15).measured_with(Tool::Thermometer).assumed("20"),
        /// The temperature that the data sheets' times are for.
        reference: Given<Temperature> = number("θ_ref", Kind::Temperature).between(268.15, 328.15).assumed("20"),
        /// How many times longer everything takes for each 10 °C colder.
        slower: Given<Ratio> = number("f", Kind::Ratio).between(1.0, 5.0).measured_with(Tool::Within(0.3)).assumed("2 ± 0.5"),
        /// Relative humidity.
        humidity: Given<Ratio> = number("φ_air", Kind::Percent).between(0.01, 1.0).measured_with(Tool::Within(0.05)),
        /// How warm the metal is.
        metal: Given<Temperature> = number("θ_metal", Kind::Temperature).between(253.15, 353.15).measured_with(Tool::Thermometer),

        /// Free air that the gun takes.
        gun_air: Given<Flow> = number("Q_gun", Kind::Flow).between(1e-5, 1.0).measured_with(Tool::DataSheet).assumed("350"),
        /// Free air that the compressor delivers.
        free_air: Given<Flow> = number("Q", Kind::Flow).between(1e-5, 1.0).measured_with(Tool::DataSheet),
        /// What the compressor's plate gives as swept, where it gives no free air.
        swept: Given<Flow> = number("Q_swept", Kind::Flow).between(1e-5, 1.0).measured_with(Tool::DataSheet),
        /// What of the swept volume is delivered.
        efficiency: Given<Ratio> = number("η_v", Kind::Percent).between(0.1, 1.0).measured_with(Tool::Within(0.05)).assumed("65 ± 10"),
        /// What the receiver holds.
        receiver: Given<Volume> = number("V_air", Kind::Volume).between(0.5e-3, 5.0).measured_with(Tool::DataSheet),
        /// The pressure at which the compressor cuts out.
        cut_out: Given<Pressure> = number("p_high", Kind::Pressure).between(1e5, 4e6).measured_with(Tool::PressureGauge).assumed("10"),
        /// The least pressure that serves the gun through filter and hose.
        least_air: Given<Pressure> = number("p_low", Kind::Pressure).between(1e4, 4e6).measured_with(Tool::PressureGauge).assumed("5"),

        /// What the paint shop asks for the same work.
        quote: Given<Money> = money(),
        /// Masking, rubbing down, filters, gloves, hire of a booth.
        sundries: Given<Money> = money(),
        /// Hours of our own.
        hours: Given<Decimal> = decimal(2),
        /// What an hour of our own is put at.
        hour_rate: Given<Money> = price(),
    }

    /// One panel, or several alike.
    pub struct PaintPanel {
        /// Its shape.
        shape: Given<&'static str> = choice(SHAPES).assumed("rectangle"),
        /// Its length, or the longer edge of a trapezium, or the length along a curve or tube.
        length: Given<Length> = number("a", Kind::Length).between(1e-3, 20.0).measured_with(Tool::Tape),
        /// Its height, or the distance between a trapezium's parallel edges.
        height: Given<Length> = number("h", Kind::Length).between(1e-3, 20.0).measured_with(Tool::Tape),
        /// The other parallel edge of a trapezium.
        top: Given<Length> = number("b", Kind::Length).between(0.0, 20.0).measured_with(Tool::Tape),
        /// Across a curve, straight.
        chord: Given<Length> = number("k", Kind::Length).between(1e-3, 20.0).measured_with(Tool::Tape),
        /// From the middle of that straight line to the curve.
        rise: Given<Length> = number("f", Kind::Length).between(1e-3, 20.0).measured_with(Tool::Rule),
        /// Across a disc or tube.
        diameter: Given<Length> = number("d", Kind::Length).between(1e-3, 20.0).measured_with(Tool::Tape),
        /// Its area, where that is known.
        area: Given<Area> = number("A", Kind::Area).between(1e-6, 1e3).measured_with(Tool::Share(0.05)),
        /// How many of it.
        count: Given<Ratio> = count("n").between(1.0, 999.0).assumed("1"),
        /// What it is called.
        name: Given<Rc<str>> = text(),
        /// Its corners, one after the other, measured from any two lines at right angles.
        corners: Vec<PaintCorner>,
        /// What is cut out of it.
        openings: Vec<PaintOpening>,
        /// Painted outside only, or inside too.
        faces: Given<&'static str> = choice(&["one", "both"]).assumed("one"),
        /// Edges and returns, as a share on top.
        edges: Given<Ratio> = number("e", Kind::Percent).between(0.0, 3.0).measured_with(Tool::Within(0.03)).assumed("5 ± 3"),
        /// Which system it gets, by the id of its row. Blank: the first.
        system: Given<Rc<str>> = one_of("paint/systems"),
    }

    /// One corner of a traced panel.
    pub struct PaintCorner {
        /// To the right.
        x: Given<Length> = number("x", Kind::Length).between(-20.0, 20.0).measured_with(Tool::Tape),
        /// Up.
        y: Given<Length> = number("y", Kind::Length).between(-20.0, 20.0).measured_with(Tool::Tape),
    }

    /// What is cut out of a panel, or several alike.
    pub struct PaintOpening {
        /// Its shape.
        shape: Given<&'static str> = choice(OPENINGS).assumed("rectangle"),
        /// Its length.
        length: Given<Length> = number("a", Kind::Length).between(1e-3, 20.0).measured_with(Tool::Tape),
        /// Its height.
        height: Given<Length> = number("h", Kind::Length).between(1e-3, 20.0).measured_with(Tool::Tape),
        /// Across, where it is round.
        diameter: Given<Length> = number("d", Kind::Length).between(1e-3, 20.0).measured_with(Tool::Tape),
        /// Its area, where that is known.
        area: Given<Area> = number("A", Kind::Area).between(1e-6, 1e3).measured_with(Tool::Share(0.05)),
        /// How many of it.
        count: Given<Ratio> = count("n").between(1.0, 999.0).assumed("1"),
    }

    /// A system: what goes on, from the metal up.
    pub struct PaintSystem {
        /// What it is called: the colour, or the part of the vehicle.
        name: Given<Rc<str>> = text(),
        /// Its layers, the first on the metal.
        layers: AtLeastOne<PaintLayer>,
    }

    /// A layer of one paint, in so many coats.
    pub struct PaintLayer {
        /// What it is for; the blank entries below follow from it.
        kind: Given<&'static str> = choice(KINDS).assumed("single"),
        /// How many coats.
        coats: Given<Ratio> = count("n").between(1.0, 30.0).chosen(),
        /// What it is called.
        name: Given<Rc<str>> = text(),
        /// Whether the film of a coat is given, or how far a litre goes.
        basis: Given<&'static str> = choice(&["film", "rate"]).assumed("film"),
        /// The film of one coat.
        film: Given<Length> = number("t", Kind::Film).between(LEAST_FILM, MOST_FILM).measured_with(Tool::Share(0.1)).chosen(),
        /// Whether that film is dry, or wet as the comb shows it.
        film_is: Given<&'static str> = choice(&["dry", "wet"]).assumed("dry"),
        /// How far a litre goes in one coat, from the data sheet.
        rate: Given<PerLength> = number("s", Kind::SpreadingRate).between(500.0, 1e6).measured_with(Tool::DataSheet),
        /// What that litre is: ready to spray, or before thinning.
        rate_for: Given<&'static str> = choice(READY).assumed("ready"),
        /// Whether it is the theoretical rate, or holds in practice and has its loss in it.
        rate_is: Given<&'static str> = choice(&["theoretical", "practical"]).assumed("theoretical"),
        /// Volume solids.
        solids: Given<Ratio> = number("VS", Kind::Percent).between(0.01, 1.0).measured_with(Tool::Within(0.02)),
        /// What those solids are of: ready to spray, or before thinning.
        solids_for: Given<&'static str> = choice(READY).assumed("ready"),
        /// What is mixed, in the order of pouring; the paint comes first.
        parts: AtLeastOne<PaintPart>,
        /// Whether the parts count volumes or weights.
        mix_by: Given<&'static str> = choice(BY).assumed("volume"),
        /// Whether thinner as a share is of the volume or of the weight.
        thinner_by: Given<&'static str> = choice(BY).assumed("volume"),
        /// How much is mixed at a time. Blank: as the pot life divides it.
        mix_size: Given<Volume> = number("V_mix", Kind::Volume).between(1e-5, 0.2),
        /// How long a mix can be sprayed.
        pot_life: Given<Time> = number("P", Kind::Time).between(60.0, 30.0 * 86_400.0).measured_with(Tool::Share(0.1)),
        /// How long to wait between coats, at the least.
        wait: Given<Time> = number("t_w", Kind::Time).between(0.0, 30.0 * 86_400.0).measured_with(Tool::Share(0.1)),
        /// How long to wait before the next layer, at the least.
        earliest_over: Given<Time> = number("t_over", Kind::Time).between(0.0, 90.0 * 86_400.0).measured_with(Tool::Share(0.1)),
        /// How long the next layer still keys without sanding, at the most.
        latest_over: Given<Time> = number("t_late", Kind::Time).between(60.0, 365.0 * 86_400.0).measured_with(Tool::Share(0.1)),
        /// The least dry film of the whole layer.
        film_least: Given<Length> = number("t_least", Kind::Film).between(LEAST_FILM, 5e-3),
        /// The most dry film of the whole layer.
        film_most: Given<Length> = number("t_most", Kind::Film).between(LEAST_FILM, 5e-3),
        /// Solvent in the paint as it is sprayed; counts where the products do not say.
        solvent: Given<Density> = number("c", Kind::Concentration).between(0.0, 1200.0).measured_with(Tool::DataSheet),
        /// Paint in stock, as it would be sprayed.
        stock: Given<Volume> = number("V_stock", Kind::Volume).between(1e-5, 1.0).measured_with(Tool::Jug),
    }

    /// One component of a mix.
    pub struct PaintPart {
        /// Which product, by the id of its row.
        product: Given<Rc<str>> = one_of("paint/products"),
        /// What its amount is of: parts of the whole, a share of the paint, a share of paint and hardener.
        of: Given<&'static str> = choice(OF).assumed("parts"),
        /// How many parts.
        parts: Given<Ratio> = number("p", Kind::Ratio).between(1e-3, 1e4).assumed("1"),
        /// What share.
        share: Given<Ratio> = number("p", Kind::Percent).between(0.0, 5.0),
    }

    /// Something to buy.
    pub struct PaintProduct {
        /// What it is called.
        name: Given<Rc<str>> = text(),
        /// What it is.
        role: Given<&'static str> = choice(ROLES).assumed("paint"),
        /// What a litre weighs.
        density: Given<Density> = number("ρ", Kind::Density).between(500.0, 4000.0).measured_with(Tool::Share(0.02)),
        /// Solvent in it.
        solvent: Given<Density> = number("c", Kind::Concentration).between(0.0, 1200.0).measured_with(Tool::DataSheet),
        /// Water in it, as a share of its volume.
        water: Given<Ratio> = number("w", Kind::Percent).between(0.0, 0.99).assumed("0"),
        /// What is on the shelf already.
        in_hand: Given<Volume> = number("V_hand", Kind::Volume).between(0.0, 1.0).assumed("0"),
        /// The sizes it is sold in.
        tins: Vec<PaintTin>,
        /// Whether it holds isocyanates. Blank: as its role suggests.
        isocyanate: Given<bool> = yes_no(),
    }

    /// A size that the shop sells.
    pub struct PaintTin {
        /// What the tin holds.
        size: Given<Volume> = number("V_tin", Kind::Volume).between(1e-5, 0.25),
        /// What it costs.
        price: Given<Money> = money(),
    }
}
