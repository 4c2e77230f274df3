//! What is painted, laid flat to one scale, and the films coat on coat beside what each should lie between.

use super::parts::{Fill, Lean, Line, area, line, outline, text, text_on, text_width};
use super::{Drawing, NARROW, Paper, Plate, Point, Table};
use crate::shown::{plain, written};
use crate::state::State;
use crate::words::{self, Phrase, filled, paint as said, row_name};
use buildbook::Key;
use buildbook::sheets::paint::{Elevation, LayerFound, Seen};
use measure::{Figure, Kind};
use yew::{Html, html};

/// The panels or the body, laid flat.
pub static ELEVATIONS: Plate =
    Plate::new("paint/elevations", 0.82, elevations).with_room(least_height);

/// The films.
pub static FILMS: Plate = Plate::new("paint/films", 0.7, films).with_room(films_height);

/// Between two views, and around all.
const GAP: f64 = 22.0;
/// Room for two lines of text below a view.
const CAPTION: f64 = 48.0;
/// Room for the bar that shows the scale.
const BAR: f64 = 46.0;

fn own(paper: &Paper, name: &str) -> &'static str {
    said::WORDS
        .word(name)
        .map_or("", |phrase: Phrase| paper.tongue.say(phrase))
}

/// A view with what stands below it.
struct View<'a> {
    elevation: &'a Elevation,
    name: String,
    area: Option<String>,
    size: [f64; 2],
}

impl View<'_> {
    /// How much paper it takes at a scale.
    fn cell(&self, scale: f64) -> (f64, f64) {
        let caption = text_width(&self.name).max(self.area.as_deref().map_or(0.0, text_width));
        (
            (self.size[0] * scale).max(caption),
            self.size[1] * scale + CAPTION,
        )
    }
}

fn view<'a>(state: &State, paper: &Paper, elevation: &'a Elevation) -> View<'a> {
    let name = match &elevation.what {
        Seen::BodySide => own(paper, "body_side").to_owned(),
        Seen::BodyEnd => own(paper, "body_end").to_owned(),
        Seen::BodyRoof => own(paper, "body_roof").to_owned(),
        Seen::Panel(id) => row_name(&state.book, &Key::from("paint/panels"), id, paper.tongue),
    };
    let times =
        if elevation.faces > 1.0 && !matches!(elevation.what, Seen::BodySide | Seen::BodyEnd) {
            format!(" × {}", elevation.faces)
        } else {
            String::new()
        };
    let area = elevation.area.as_ref().map(|area| {
        let shown = written(area, &paper.manner);
        format!("{}\u{a0}{}", shown.value, shown.unit)
    });
    View {
        elevation,
        name: shortened(&format!("{name}{times}")),
        area,
        size: trade::paint::outline_size(&elevation.outline),
    }
}

/// A name that does not push the views apart.
fn shortened(name: &str) -> String {
    const MOST: usize = 28;
    if name.chars().count() <= MOST {
        return name.to_owned();
    }
    let cut: String = name.chars().take(MOST - 1).collect();
    format!("{}…", cut.trim_end())
}

fn elevations(state: &State, paper: &Paper) -> Option<Drawing> {
    let views: Vec<View<'_>> = state
        .findings
        .paint
        .elevations
        .iter()
        .map(|elevation| view(state, paper, elevation))
        .filter(|view| view.size[0] > 0.0 && view.size[1] > 0.0)
        .collect();
    if views.is_empty() {
        return None;
    }
    let (scale, places) = packed(&views, paper);
    let names: Vec<String> = views.iter().map(|view| caption(view)).collect();
    Some(Drawing {
        title: own(paper, "elevations_title").to_owned(),
        description: filled(own(paper, "elevations_said"), &[names.join(", ")]),
        marks: html! {
            <>
                { views.iter().zip(&places).map(|(view, at)| drawn(view, *at, scale)).collect::<Html>() }
                { scale_bar(paper, scale) }
            </>
        },
        table: Table {
            head: vec![own(paper, "part").to_owned(), own(paper, "area").to_owned()],
            rows: views
                .iter()
                .map(|view| vec![view.name.clone(), view.area.clone().unwrap_or_default()])
                .collect(),
        },
    })
}

fn caption(view: &View<'_>) -> String {
    match &view.area {
        Some(area) => format!("{} {area}", view.name),
        None => view.name.clone(),
    }
}

/// The greatest scale at which all views fit in rows, and where each comes to stand.
fn packed(views: &[View<'_>], paper: &Paper) -> (f64, Vec<Point>) {
    let largest = views.iter().map(|view| view.size[0]).fold(0.0, f64::max);
    let mut scale = (paper.width - 2.0 * GAP) / largest.max(1e-6);
    for _ in 0..60 {
        if let Some(places) = in_rows(views, paper, scale) {
            return (scale, places);
        }
        scale *= 0.93;
    }
    (
        scale,
        in_rows(
            views,
            &Paper {
                height: f64::MAX,
                ..paper.clone()
            },
            scale,
        )
        .unwrap_or_default(),
    )
}

/// The upper left corners of the views in rows, the tallest first, where they fit on the paper. What has no shape, only an area, comes last.
fn in_rows(views: &[View<'_>], paper: &Paper, scale: f64) -> Option<Vec<Point>> {
    let mut order: Vec<usize> = (0..views.len()).collect();
    measure::sort_by(&mut order, |one, other| {
        let (one, other) = (&views[*one], &views[*other]);
        let shapeless = one.elevation.shapeless.cmp(&other.elevation.shapeless);
        shapeless.then(f64::total_cmp(&other.size[1], &one.size[1]))
    });
    let mut places = vec![(0.0, 0.0); views.len()];
    let (mut left, mut top, mut tallest) = (GAP, GAP, 0.0_f64);
    for at in order {
        let (width, height) = views[at].cell(scale);
        if left > GAP && left + width > paper.width - GAP {
            left = GAP;
            top += tallest + GAP * 0.6;
            tallest = 0.0;
        }
        places[at] = (left, top);
        left += width + GAP;
        tallest = tallest.max(height);
    }
    (top + tallest <= paper.height - BAR).then_some(places)
}

fn drawn(view: &View<'_>, at: Point, scale: f64) -> Html {
    let bottom = at.1 + view.size[1] * scale;
    let on_paper = |points: &[[f64; 2]], x: f64, y: f64| -> Vec<Point> {
        points
            .iter()
            .map(|point| {
                (
                    at.0 + (x + point[0]) * scale,
                    bottom - (y + point[1]) * scale,
                )
            })
            .collect()
    };
    let shape = on_paper(&view.elevation.outline, 0.0, 0.0);
    // Where an opening lies is not asked for: they stand side by side, with even gaps.
    let widths: Vec<f64> = view
        .elevation
        .openings
        .iter()
        .map(|opening| trade::paint::outline_size(opening)[0])
        .collect();
    let gap = (view.size[0] - widths.iter().sum::<f64>()) / (widths.len() as f64 + 1.0);
    let mut next = gap;
    let mut openings = Vec::new();
    for (opening, width) in view.elevation.openings.iter().zip(&widths) {
        let height = trade::paint::outline_size(opening)[1];
        let shape = on_paper(opening, next, (view.size[1] - height) / 2.0);
        openings.push(area(&shape, Fill::Hatched));
        next += width + gap;
    }
    html! {
        <g>
            if view.elevation.shapeless {
                { outline(&shape, Line::Hidden) }
            } else {
                { area(&shape, Fill::Metal) }
            }
            { openings }
            { text((at.0, bottom + 19.0), Lean::Start, &view.name) }
            { view.area.as_ref().map(|said| text((at.0, bottom + 40.0), Lean::Start, said)) }
        </g>
    }
}

/// How high the drawing of the views is at the least, so that each keeps some height: few stand in a row on a phone, where
/// the page is scrolled anyway; beside the entries all of it is to be seen at once.
fn least_height(state: &State, width: f64) -> f64 {
    const ROW: f64 = 96.0;
    let (in_a_row, most) = if width < NARROW {
        (2, f64::MAX)
    } else {
        (3, 520.0)
    };
    let views = state.findings.paint.elevations.len();
    (views.div_ceil(in_a_row) as f64 * ROW + BAR + GAP).min(most)
}

/// A bar of a round length.
fn scale_bar(paper: &Paper, scale: f64) -> Html {
    let metres = [5.0, 2.0, 1.0, 0.5, 0.2, 0.1];
    let length = metres
        .into_iter()
        .find(|length| length * scale < paper.width * 0.3)
        .unwrap_or(0.05);
    let y = paper.height - 16.0;
    let (from, to) = ((GAP, y), (GAP + length * scale, y));
    let tick = |at: Point| line((at.0, at.1 - 6.0), (at.0, at.1 + 6.0), Line::Fine);
    html! {
        <g>
            { line(from, to, Line::Outline) }
            { tick(from) }
            { tick(to) }
            { text((to.0 + 10.0, y + 6.0), Lean::Start, &plain(length, Kind::Length, &paper.manner)) }
        </g>
    }
}

/// A layer's name on a drawing or in a table.
pub fn layer_name(state: &State, layer: &LayerFound, paper: &Paper) -> String {
    let (system, id) = layer.place.split_once('/').unwrap_or_default();
    let row = Key::from("paint/systems").under(system).under("layers");
    let named = state
        .book
        .entry(row.under(id).under("name").as_str())
        .is_some();
    if named {
        return row_name(&state.book, &row, id, paper.tongue);
    }
    words::choice(
        row.under(id).under("kind").as_str(),
        layer.kind.word(),
        paper.tongue,
    )
}

/// One layer's film, standing on those below it.
struct Film<'a> {
    name: String,
    system: &'a str,
    film: &'a Figure,
    band: [f64; 2],
}

/// How high the films stand at the least: each has a line of text and a bar.
fn films_height(state: &State, _: f64) -> f64 {
    const LEAST_PITCH: f64 = 44.0;
    let films = state.findings.paint.layers.len() as f64;
    (films * LEAST_PITCH + 2.0 * GAP).min(900.0)
}

fn films(state: &State, paper: &Paper) -> Option<Drawing> {
    let layers = &state.findings.paint.layers;
    let films: Vec<Film<'_>> = layers
        .iter()
        .filter_map(|layer| {
            let (film, band) = layer.film.as_ref()?;
            let (system, _) = layer.place.split_once('/')?;
            Some(Film {
                name: layer_name(state, layer, paper),
                system,
                film,
                band: *band,
            })
        })
        .collect();
    if films.is_empty() {
        return None;
    }
    let rows: Vec<Vec<String>> = films
        .iter()
        .map(|film| {
            vec![
                film.name.clone(),
                written(film.film, &paper.manner).whole(),
                band_said(film, paper),
            ]
        })
        .collect();
    let told: Vec<String> = rows.iter().map(|row| row.join(" ")).collect();
    Some(Drawing {
        title: own(paper, "films_title").to_owned(),
        description: filled(own(paper, "films_said"), &[told.join("; ")]),
        marks: stacked(state, &films, paper),
        table: Table {
            head: ["layer", "film", "band"]
                .map(|name| own(paper, name).to_owned())
                .to_vec(),
            rows,
        },
    })
}

fn band_said(film: &Film<'_>, paper: &Paper) -> String {
    let [least, most] = film
        .band
        .map(|value| plain(value, Kind::Film, &paper.manner));
    format!("{least} – {most}")
}

/// Layers from the metal outwards, each beginning where the one below it ends.
fn stacked(state: &State, films: &[Film<'_>], paper: &Paper) -> Html {
    let mut systems: Vec<&str> = films.iter().map(|film| film.system).collect();
    systems.dedup();
    let many = systems.len() > 1;
    let lines = films.len() + if many { systems.len() } else { 0 };
    let pitch = ((paper.height - 2.0 * GAP) / lines as f64).min(64.0);
    let reach = |system: &str| -> f64 {
        let mine = || films.iter().filter(|film| film.system == system);
        mine().map(|film| film.film.value()).sum::<f64>()
            + mine().map(|film| film.band[1]).fold(0.0, f64::max)
    };
    let widest = systems
        .iter()
        .map(|system| reach(system))
        .fold(1e-6, f64::max);
    let metal = GAP + 12.0;
    let scale = (paper.width - metal - GAP) / widest;
    let mut marks = Vec::new();
    let mut top = GAP;
    for system in systems {
        if many {
            let name = row_name(
                &state.book,
                &Key::from("paint/systems"),
                system,
                paper.tongue,
            );
            marks.push(text((GAP, top + 18.0), Lean::Start, &name));
            top += pitch * 0.6;
        }
        let begun = top;
        let mut below = 0.0;
        for film in films.iter().filter(|film| film.system == system) {
            marks.push(bar(film, below, (metal, top), scale, pitch, paper));
            below += film.film.value();
            top += pitch;
        }
        let sheet = [
            (GAP, begun),
            (metal, begun),
            (metal, top - 8.0),
            (GAP, top - 8.0),
        ];
        marks.push(area(&sheet, Fill::Hatched));
        top += pitch * 0.25;
    }
    marks.into_iter().collect()
}

/// One layer: what it should lie between, hollow; what it is, solid; its ±, a band.
fn bar(film: &Film<'_>, below: f64, at: Point, scale: f64, pitch: f64, paper: &Paper) -> Html {
    let x = |value: f64| at.0 + (below + value) * scale;
    let (upper, lower) = (at.1 + 24.0, at.1 + pitch - 8.0);
    let box_of = |from: f64, to: f64, inset: f64| {
        [
            (x(from), upper + inset),
            (x(to), upper + inset),
            (x(to), lower - inset),
            (x(from), lower - inset),
        ]
    };
    let value = film.film.value();
    let shown = format!(
        "{}  {}",
        film.name,
        written(film.film, &paper.manner).whole()
    );
    let width = text_width(&shown);
    let start = x(0.0).min(paper.width - GAP - width).max(GAP + 16.0);
    html! {
        <g>
            { area(&box_of(0.0, value, 4.0), Fill::Now) }
            { area(&box_of(value - film.film.minus(), value + film.film.plus(), 4.0), Fill::Uncertain) }
            { outline(&box_of(film.band[0], film.band[1], 0.0), Line::Before) }
            { text_on((start, at.1 + 18.0), Lean::Start, &shown) }
        </g>
    }
}
