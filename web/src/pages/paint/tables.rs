//! The paint sheet's tables: layer by layer, the mixing table for the scale, the tins to buy, the coats on the clock.

use crate::desk::{use_settings, use_slice, use_tongue};
use crate::state::State;
use crate::widgets::{ResultFigure, ResultTable, column_cell, column_head};
use crate::words::{self, Tongue, paint as said, row_name};
use buildbook::Key;
use buildbook::sheets::paint::{LayerFound, ProductFound};
use measure::Kind;
use std::rc::Rc;
use yew::prelude::*;

fn own(tongue: Tongue, name: &str) -> &'static str {
    said::WORDS
        .word(name)
        .map_or("", |phrase| tongue.say(phrase))
}

/// A layer's name, with its system's where there are several.
#[derive(Clone, PartialEq)]
struct Named {
    place: Rc<str>,
    name: String,
    system: Option<String>,
}

fn named(state: &State, layer: &LayerFound) -> Named {
    let tongue = state.settings.tongue;
    let systems = Key::from("paint/systems");
    let (system, id) = layer.place.split_once('/').unwrap_or_default();
    let list = systems.under(system).under("layers");
    let row = list.under(id);
    let name = if state.book.entry(row.under("name").as_str()).is_some() {
        row_name(&state.book, &list, id, tongue)
    } else {
        words::choice(row.under("kind").as_str(), layer.kind.word(), tongue)
    };
    let several = state.findings.paint.sheet.systems.len() > 1;
    Named {
        place: Rc::clone(&layer.place),
        name,
        system: several.then(|| row_name(&state.book, &systems, system, tongue)),
    }
}

fn all_named(state: &State) -> Vec<Named> {
    state
        .findings
        .paint
        .layers
        .iter()
        .map(|layer| named(state, layer))
        .collect()
}

/// Rows under the headings of their systems.
fn by_system(layers: &[Named], columns: u32, row: impl Fn(&Named) -> Html) -> Html {
    let mut last: Option<&String> = None;
    let mut rows = Vec::new();
    for layer in layers {
        if layer.system.is_some() && layer.system.as_ref() != last {
            last = layer.system.as_ref();
            rows.push(html! {
                <tr class="part-head"><th scope="rowgroup" colspan={columns.to_string()}>{ layer.system.clone() }</th></tr>
            });
        }
        rows.push(row(layer));
    }
    rows.into_iter().collect()
}

fn head(tongue: Tongue, names: &[&str]) -> Html {
    let cells = names
        .iter()
        .map(|name| html! { <th scope="col" key={*name}>{ own(tongue, name) }</th> });
    html! { <thead><tr>{ cells.collect::<Html>() }</tr></thead> }
}

fn cell(id: String) -> Html {
    html! { <td><ResultFigure {id} /></td> }
}

/// The columns of the table of layers: heading, result, and its kind where the unit stands in the heading, since nine columns of
/// units would not fit a tablet.
const COLUMNS: [(&str, &str, Option<Kind>); 9] = [
    ("one_coat", "coat_litres", Some(Kind::Volume)),
    ("in_all", "layer_litres", Some(Kind::Volume)),
    ("wet", "wet", Some(Kind::Film)),
    ("film", "whole_film", Some(Kind::Film)),
    ("mixes", "mixes", None),
    ("gun_fills", "gun_fills", None),
    ("pot_life", "pot_life", None),
    ("solvent", "solvent", Some(Kind::Concentration)),
    ("limit", "solvent_limit", Some(Kind::Concentration)),
];

/// Litres, films, solvent and mixes of every layer.
#[component]
pub fn LayerTable() -> Html {
    let settings = use_settings();
    let (tongue, manner) = (settings.tongue, settings.manner());
    let layers = use_slice(all_named).unwrap_or_default();
    let row = |layer: &Named| {
        let cells = COLUMNS.iter().map(|(_, what, unit)| {
            column_cell(format!("paint/{what}/{}", layer.place), unit.is_some())
        });
        html! {
            <tr key={layer.place.to_string()}><th scope="row">{ &layer.name }</th>{ for cells }</tr>
        }
    };
    let heads = COLUMNS.iter().map(|(name, _, unit)| {
        column_head(own(tongue, name), unit.map(|kind| manner.unit(kind).symbol))
    });
    html! {
        <div class="table-hold" tabindex="0" role="group" aria-label={words::group("paint/layers", tongue)}>
            <table class="table">
                <thead><tr><th scope="col">{ own(tongue, "layer") }</th>{ for heads }</tr></thead>
                <tbody>{ by_system(&layers, 10, row) }</tbody>
            </table>
        </div>
    }
}

/// A mixing table: a layer, and what is poured in which order.
#[derive(Clone, PartialEq)]
struct Mixed {
    layer: Named,
    poured: Vec<(Rc<str>, Option<String>)>,
}

fn mixed(state: &State) -> Vec<Mixed> {
    let sheet = &state.findings.paint.sheet;
    let products = Key::from("paint/products");
    let layers = sheet.systems.iter().flat_map(|system| &system.layers);
    let found = state.findings.paint.layers.iter();
    found
        .zip(layers)
        .map(|(found, layer)| {
            let name = |id: &Rc<str>| row_name(&state.book, &products, id, state.settings.tongue);
            let part = |part: &buildbook::sheets::paint::PaintPart| {
                (part.id().into(), part.product.value().map(name))
            };
            Mixed {
                layer: named(state, found),
                poured: layer.parts.iter().map(part).collect(),
            }
        })
        .filter(|mixed| mixed.poured.iter().any(|(_, product)| product.is_some()))
        .collect()
}

/// The mixing tables, large enough to be read from where the scale stands.
#[component]
pub fn MixingTables() -> Html {
    let tongue = use_tongue();
    let tables = use_slice(mixed).unwrap_or_default();
    if tables.is_empty() {
        return html! { <p class="muted">{ own(tongue, "name_products") }</p> };
    }
    let table = |mixed: &Mixed| {
        let place = &mixed.layer.place;
        let rows = mixed.poured.iter().map(|(part, product)| {
            let at = format!("{place}/{part}");
            html! {
                <tr key={part.to_string()}>
                    <th scope="row">{ product.clone().unwrap_or_else(|| own(tongue, "unnamed").to_owned()) }</th>
                    <td><ResultFigure id={format!("paint/mix_part/{at}")} /></td>
                    <td><ResultFigure id={format!("paint/grams/{at}")} /></td>
                    <td class="on-scale"><ResultFigure id={format!("paint/scale/{at}")} /></td>
                </tr>
            }
        });
        html! {
            <section class="mix" key={place.to_string()}>
                <h3>
                    { &mixed.layer.name }
                    { mixed.layer.system.as_ref().map(|system| html! { <small>{ system }</small> }) }
                    <span class="num">{ own(tongue, "one_mix") }{ " " }<ResultFigure id={format!("paint/mix_litres/{place}")} /></span>
                </h3>
                <div class="table-hold" tabindex="0">
                    <table class="table">
                        { head(tongue, &["component", "pour", "pour_weight", "scale"]) }
                        <tbody>{ rows.collect::<Html>() }</tbody>
                    </table>
                </div>
            </section>
        }
    };
    html! { <div class="mixes">{ tables.iter().map(table).collect::<Html>() }</div> }
}

/// A product with what is bought of it.
#[derive(Clone, PartialEq)]
struct Bought {
    id: Rc<str>,
    name: String,
    tins: String,
}

fn bought(state: &State) -> Vec<Bought> {
    let products = Key::from("paint/products");
    let tins = |product: &ProductFound| {
        let tin = |tin: &buildbook::sheets::paint::TinFound| {
            let size = crate::shown::written(&tin.size, &state.settings.manner()).whole();
            format!("{} × {size}", tin.count)
        };
        product.tins.iter().map(tin).collect::<Vec<_>>().join(" + ")
    };
    let needed = |product: &&ProductFound| {
        state
            .findings
            .result(&format!("paint/product_litres/{}", product.id))
            .is_some()
    };
    let row = |product: &ProductFound| Bought {
        name: row_name(&state.book, &products, &product.id, state.settings.tongue),
        tins: tins(product),
        id: Rc::clone(&product.id),
    };
    state
        .findings
        .paint
        .products
        .iter()
        .filter(needed)
        .map(row)
        .collect()
}

const SUMS: &[&str] = &[
    "paint/tins_cost",
    "paint/own_hours",
    "paint/doing_it",
    "paint/saved",
];

/// What to buy, what is left over, and what it costs.
#[component]
pub fn BuyingTable() -> Html {
    let tongue = use_tongue();
    let rows = use_slice(bought).unwrap_or_default();
    if rows.is_empty() {
        return html! { <p class="muted">{ own(tongue, "name_products") }</p> };
    }
    let row = |row: &Bought| {
        let tins = if row.tins.is_empty() {
            html! { <span class="lack">{ own(tongue, "no_tins") }</span> }
        } else {
            html! { <b class="num" data-result={format!("paint/tins/{}", row.id)}>{ &row.tins }</b> }
        };
        html! {
            <tr key={row.id.to_string()}>
                <th scope="row">{ &row.name }</th>
                { cell(format!("paint/product_litres/{}", row.id)) }
                <td>{ tins }</td>
                { cell(format!("paint/left_over/{}", row.id)) }
                { cell(format!("paint/product_cost/{}", row.id)) }
            </tr>
        }
    };
    html! {
        <>
        <div class="table-hold" tabindex="0" role="group" aria-label={words::group("paint/buying", tongue)}>
            <table class="table">
                { head(tongue, &["product", "needed", "buy", "left_over", "cost"]) }
                <tbody>{ rows.iter().map(row).collect::<Html>() }</tbody>
            </table>
        </div>
        <ResultTable sheet="paint" results={SUMS} />
        </>
    }
}

/// A coat on the clock.
#[derive(Clone, PartialEq)]
struct Clocked {
    layer: Named,
    coats: u32,
}

fn clocked(state: &State) -> Vec<Clocked> {
    let layers = state.findings.paint.layers.iter();
    layers
        .filter_map(|layer| {
            Some(Clocked {
                layer: named(state, layer),
                coats: layer.coats?,
            })
        })
        .collect()
}

/// When each coat begins, is on, and what may follow when.
#[component]
pub fn ClockTable() -> Html {
    let tongue = use_tongue();
    let layers = use_slice(clocked).unwrap_or_default();
    let rows: Vec<Named> = layers
        .iter()
        .flat_map(|clocked| {
            let coat = |coat: u32| Named {
                place: format!("{}/{coat}", clocked.layer.place).into(),
                name: format!("{} {coat}", clocked.layer.name),
                system: clocked.layer.system.clone(),
            };
            (1..=clocked.coats).map(coat)
        })
        .collect();
    let row = |coat: &Named| {
        let of = |what: &str| cell(format!("paint/{what}/{}", coat.place));
        html! {
            <tr key={coat.place.to_string()}>
                <th scope="row">{ &coat.name }</th>
                { of("start") }{ of("end") }{ of("next_from") }{ of("next_until") }
            </tr>
        }
    };
    html! {
        <div class="table-hold" tabindex="0" role="group" aria-label={words::group("paint/clock", tongue)}>
            <table class="table">
                { head(tongue, &["coat", "begins", "is_on", "next_from", "next_until"]) }
                <tbody>{ by_system(&rows, 5, row) }</tbody>
            </table>
        </div>
    }
}
