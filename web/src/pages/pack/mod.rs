//! The pack that goes with the vehicle: every sheet as a record, to print and bind.

mod leaves;
mod record;
mod results;

use super::handover::vehicle_name;
use crate::browser::{self, paper};
use crate::desk::{use_desk, use_slice, use_tongue};
use crate::drawings::{Plate, Table};
use crate::route::Route;
use crate::settings::Settings;
use crate::state::State;
use crate::widgets::{DrawingFrame, EntryRow, Icon, icon};
use crate::words::{Tongue, frame, handover};
use buildbook::Findings;
use record::entry_or_assumed;
use std::rc::Rc;
use yew::prelude::*;

/// A section of the pack: it begins on a page of its own unless it follows another.
#[derive(Clone, PartialEq)]
pub struct Leaf {
    /// Its name in the page: `springs`.
    pub id: &'static str,
    /// Its heading.
    pub title: String,
    /// What stands on it.
    pub pieces: Vec<Piece>,
    /// Its drawings.
    pub plates: &'static [&'static Plate],
    /// Whether it stands on the page where the section before it ends.
    pub follows: bool,
}

/// A piece of a section.
#[derive(Clone, PartialEq)]
pub enum Piece {
    /// A heading within the section.
    Heading(String),
    /// Names and what belongs to them.
    Pairs(Vec<(String, String)>),
    /// Rows under headings.
    Table(Table),
    /// Results: a line for what they tell.
    Results(Table),
    /// Remarks: the word of the rank, and what is said.
    Remarks(Vec<(&'static str, String)>),
    /// A paragraph.
    Text(String),
    /// Lines to sign on.
    Signatures(Vec<String>),
}

/// The whole pack.
#[derive(Clone, PartialEq, Default)]
struct Pack {
    vehicle: String,
    book: String,
    facts: Vec<(String, String)>,
    leaves: Vec<Leaf>,
    letter: bool,
    two_sides: bool,
}

/// What the pack rests on. It is long, so it is made anew only when one of these is another.
#[derive(Clone)]
struct Basis(Rc<Findings>, Rc<Settings>);

impl PartialEq for Basis {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0) && Rc::ptr_eq(&self.1, &other.1)
    }
}

fn pack(state: &State) -> Pack {
    let chosen = |field: &str| entry_or_assumed(state, &format!("handover/{field}"));
    Pack {
        vehicle: vehicle_name(state),
        book: state.book.name().to_owned(),
        facts: leaves::front(state),
        leaves: leaves::leaves(state),
        letter: chosen("paper") == "letter",
        two_sides: chosen("sides") == "two",
    }
}

/// The sections that share their pages, each run with what stands above it.
fn runs(pack: &Pack) -> Vec<paper::Run> {
    let mut runs: Vec<paper::Run> = Vec::new();
    for leaf in &pack.leaves {
        match runs.last_mut() {
            Some(run) if leaf.follows => {
                run.sections.push(leaf.id);
                run.title.push_str(" · ");
                run.title.push_str(&leaf.title);
            }
            _ => runs.push(paper::Run {
                sections: vec![leaf.id],
                title: leaf.title.clone(),
            }),
        }
    }
    runs
}

/// The pack's page: a few keys that are not printed, and the pack as it will be.
#[component]
pub fn PackPage() -> Html {
    let basis = use_slice(|state| Basis(Rc::clone(&state.findings), Rc::clone(&state.settings)));
    let (desk, tongue) = (use_desk(), use_tongue());
    let pack = use_memo(basis, |_| {
        desk.as_ref()
            .map(|desk| pack(&desk.state()))
            .unwrap_or_default()
    });
    {
        use_effect_with(Rc::clone(&pack), move |pack| {
            let set = paper::Set::new(pack.letter, pack.two_sides, &pack.vehicle, &runs(pack));
            move || drop(set)
        });
    }
    let print = Callback::from(|_: MouseEvent| browser::print());
    html! {
        <main id="page" class="pack-page" data-page="pack">
            <div class="pack-keys no-print">
                <a class="key quiet tall" href={Route::Handover.fragment()} data-do="back">{ tongue.say(handover::TO_SHEET) }</a>
                <button type="button" class="key tall main" data-do="print-pack" onclick={print}>{ icon(Icon::Print) }{ tongue.say(frame::PRINT) }</button>
                <div class="rows">
                    <EntryRow at="handover/paper" />
                    <EntryRow at="handover/sides" />
                    <EntryRow at="handover/with_money" />
                </div>
            </div>
            <div class="pack-hold" tabindex="0">
                <article class="pack">
                    { front(&pack, tongue) }
                    { pack.leaves.iter().enumerate().map(|(at, leaf)| shown(at, leaf)).collect::<Html>() }
                </article>
            </div>
        </main>
    }
}

/// The first page: what vehicle it is, and the contents.
fn front(pack: &Pack, tongue: Tongue) -> Html {
    let contents = pack.leaves.iter().enumerate().map(|(at, leaf)| {
        html! {
            <li key={leaf.id}>
                <span>{ format!("{}  {}", at + 1, leaf.title) }</span>
                <span class="pack-dots"></span>
                // The page's number is put in where the pages are made.
                <span class="pack-number" data-page-of={leaf.id}></span>
            </li>
        }
    });
    html! {
        <section class="leaf pack-front" id="leaf-front">
            <p class="pack-kind">{ tongue.say(handover::PACK_KIND) }</p>
            <h1 tabindex="-1">{ &pack.vehicle }</h1>
            if pack.book != pack.vehicle { <p>{ &pack.book }</p> }
            { pairs(&pack.facts) }
            <p class="pack-record">{ tongue.say(handover::RECORD) }</p>
            <h2>{ tongue.say(handover::CONTENTS) }</h2>
            <ol class="pack-contents">{ contents.collect::<Html>() }</ol>
        </section>
    }
}

fn shown(at: usize, leaf: &Leaf) -> Html {
    let plates = leaf
        .plates
        .iter()
        .map(|plate| html! { <DrawingFrame key={plate.id} plate={*plate} /> });
    html! {
        <section key={leaf.id} class={classes!("leaf", leaf.follows.then_some("follows"))} id={format!("leaf-{}", leaf.id)} data-leaf={leaf.id}>
            <h2>{ format!("{}  {}", at + 1, leaf.title) }</h2>
            { plates.collect::<Html>() }
            { leaf.pieces.iter().map(piece).collect::<Html>() }
        </section>
    }
}

fn piece(piece: &Piece) -> Html {
    match piece {
        Piece::Heading(said) => html! { <h3>{ said }</h3> },
        Piece::Pairs(all) => pairs(all),
        Piece::Table(table) => record_table(table, "pack-table"),
        Piece::Results(table) => record_table(table, "pack-table pack-results"),
        Piece::Remarks(all) => {
            let items = all
                .iter()
                .map(|(rank, said)| html! { <li><b>{ *rank }</b>{ format!("  {said}") }</li> });
            html! { <ul class="pack-remarks">{ items.collect::<Html>() }</ul> }
        }
        Piece::Text(said) => html! { <p>{ said }</p> },
        Piece::Signatures(all) => {
            let lines = all
                .iter()
                .map(|said| html! { <div class="pack-sign"><span>{ said }</span></div> });
            html! { <div class="pack-signs">{ lines.collect::<Html>() }</div> }
        }
    }
}

fn pairs(all: &[(String, String)]) -> Html {
    let rows = all
        .iter()
        .map(|(name, said)| html! { <div><dt>{ name }</dt><dd class={short(said, A_FIGURE)}>{ breaking(said) }</dd></div> });
    html! { <dl class="pack-pairs">{ rows.collect::<Html>() }</dl> }
}

/// At most so many rows stay together on a page, under headings of their own.
const ROWS_TOGETHER: usize = 12;

/// What is no longer than a day stays in one piece in a table, and what is no longer than a figure with its ± beside a name.
const A_DAY: usize = 11;
const A_FIGURE: usize = 22;

fn short(said: &str, most: usize) -> Option<&'static str> {
    (said.chars().count() <= most).then_some("short")
}

/// A figure may part from its ± at the end of a line, from its unit never.
fn breaking(said: &str) -> String {
    said.replace("\u{a0}±", " ±")
}

/// More columns than this stand smaller, all of one width.
const MANY: usize = 6;

fn record_table(table: &Table, class: &'static str) -> Html {
    let many = (table.head.len() > MANY).then_some("many");
    let head = table
        .head
        .iter()
        .map(|cell| html! { <th scope="col">{ cell }</th> });
    let cell = |cell: &String| {
        let short = short(cell, A_DAY).filter(|_| many.is_none());
        html! { <td class={classes!(short)}>{ breaking(cell) }</td> }
    };
    let head = html! { <tr>{ head.collect::<Html>() }</tr> };
    // Headings that the browser repeats on each page would not be counted with the pages, so each piece brings its own.
    let together = results::even(table.rows.len(), ROWS_TOGETHER);
    let pieces = table.rows.chunks(together).map(|rows| {
        let rows = rows
            .iter()
            .map(|row| html! { <tr>{ row.iter().map(cell).collect::<Html>() }</tr> });
        html! { <tbody>{ head.clone() }{ rows.collect::<Html>() }</tbody> }
    });
    html! { <table class={classes!(class, many)}>{ pieces.collect::<Html>() }</table> }
}
