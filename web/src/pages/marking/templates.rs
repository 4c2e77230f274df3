//! Templates at true scale: a small picture, and the keys that hand them out as files.

use crate::browser;
use crate::desk::{use_desk, use_slice, use_tongue};
use crate::shown::plain;
use crate::state::State;
use crate::words::{self, filled, templates as said};
use buildbook::Key;
use buildbook::sheets::marking::{MarkingFindings, Said, template};
use buildbook::templates::{
    A4, LETTER, Labels, Pages, Paper, Part, Template, dxf, pages, pdf, svg,
};
use measure::{Kind, Length};
use std::rc::Rc;
use trade::marking::{Form, Shape};
use yew::prelude::*;

/// A length as the reader writes it, without its ±.
pub fn length(length: &Length, state: &State) -> String {
    plain(length.value(), Kind::Length, &state.settings.manner())
}

/// The name of a feature: its place in the list, and what its owner called it.
pub fn feature_name(state: &State, place: usize) -> String {
    let features = &state.findings.marking.sheet.features;
    let Some(feature) = features.get(place) else {
        return String::new();
    };
    match feature.name.value() {
        Some(name) => format!("{} {name}", place + 1),
        None => words::row_name(
            &state.book,
            &Key::from("marking/features"),
            feature.id(),
            state.settings.tongue,
        ),
    }
}

/// The size of a shape, as the trade writes it.
fn size(shape: &Shape, state: &State) -> String {
    let tongue = state.settings.tongue;
    let sizes: Vec<String> = shape
        .sizes()
        .iter()
        .take(3)
        .map(|size| length(size, state))
        .collect();
    let phrase = match shape.form() {
        Form::Round => return format!("Ø {}", sizes[0]),
        Form::Rectangle if shape.sizes()[2].value() > 0.0 => {
            return format!("{} × {}, r {}", sizes[0], sizes[1], sizes[2]);
        }
        Form::Rectangle => return format!("{} × {}", sizes[0], sizes[1]),
        Form::DHole => return format!("D {} / {}", sizes[0], sizes[1]),
        Form::Bracket => return String::new(),
        Form::Slot => said::SLOT,
        Form::Oval => said::OVAL,
        Form::Stud => said::STUD,
        Form::Free => {
            let [low, high] = shape.outline().bounds();
            let across = [0, 1].map(|axis| {
                plain(
                    high[axis] - low[axis],
                    Kind::Length,
                    &state.settings.manner(),
                )
            });
            return filled(tongue.say(said::OUTLINE), &across);
        }
    };
    filled(tongue.say(phrase), &sizes)
}

fn labels(state: &State) -> Labels {
    let say = |phrase| state.settings.tongue.say(phrase).to_owned();
    Labels {
        // From above, what is up on the paper is ahead on the vehicle.
        up: say(
            if state.findings.marking.sheet.seen_from.value() == Some(&"above") {
                said::AHEAD
            } else {
                said::UP
            },
        ),
        bar_mm: say(said::BAR_MM),
        bar_in: say(said::BAR_IN),
        scale: say(said::SCALE),
        page: say(said::PAGE),
        centre_line: say(said::CENTRE_LINE),
        cut_away: say(said::CUT_AWAY),
        millimetres: say(said::MILLIMETRES),
    }
}

/// What a template says beneath its title.
fn lines(state: &State) -> Vec<String> {
    let (tongue, sheet) = (state.settings.tongue, &state.findings.marking.sheet);
    let seen = sheet.seen_from.value().copied().unwrap_or("seat");
    let seen = words::choice("marking/seen_from", seen, tongue).to_ascii_lowercase();
    let side = match state.findings.marking.goes_on {
        Some("right") => said::GOES_RIGHT,
        Some(_) => said::GOES_LEFT,
        None => said::GOES_WHERE,
    };
    let mut lines = vec![format!(
        "{} {}",
        filled(tongue.say(said::SEEN_FROM), &[seen]),
        tongue.say(side)
    )];
    if sheet.template_seen.value() == Some(&"behind") {
        lines.push(tongue.say(said::SEEN_BEHIND).to_owned());
    }
    match sheet.template_for.value() {
        Some(&"spraying") => lines.push(tongue.say(said::FOR_SPRAYING).to_owned()),
        Some(&"punching") => lines.push(tongue.say(said::FOR_PUNCHING).to_owned()),
        _ => {}
    }
    lines
}

fn template_of(state: &State) -> Option<(Template, Labels)> {
    let tongue = state.settings.tongue;
    let title = match state.book.name() {
        "" => words::page_name("marking", tongue),
        name => filled(tongue.say(said::TITLE), &[name.to_owned()]),
    };
    let said = Said {
        title,
        lines: lines(state),
        datum_line: &|apart| filled(tongue.say(said::DATUM_LINE), &[length(apart, state)]),
        name: &|place| feature_name(state, place),
        size: &|shape| size(shape, state),
    };
    let template = template(&state.findings.marking, said)?;
    Some((template, labels(state)))
}

/// What the printer must be given to print true, along and up, from what its bars measured.
fn correction(findings: &MarkingFindings) -> [f64; 2] {
    let bars = [&findings.sheet.bar_along, &findings.sheet.bar_up];
    bars.map(|bar| bar.value().map_or(1.0, |measured| 0.1 / measured.value()))
}

/// The pages of a template; its lines say so where they are corrected.
fn pages_of(
    state: &State,
    template: &mut Template,
    labels: &Labels,
    paper: Paper,
) -> Option<Pages> {
    let findings = &state.findings.marking;
    let overlap = findings.sheet.overlap.value().map_or(0.015, Length::value);
    let correction = correction(findings);
    if correction != [1.0; 2] {
        let came = correction.map(|by| plain(0.1 / by, Kind::Length, &state.settings.manner()));
        template
            .lines
            .push(filled(state.settings.tongue.say(said::CORRECTED), &came));
    }
    pages(template, labels, paper, overlap, correction)
}

/// A file that can be handed out.
#[derive(Clone, Copy, PartialEq)]
enum FileKind {
    Drawing,
    Pages(Paper),
    Cutter,
}

impl FileKind {
    fn name(self) -> &'static str {
        match self {
            Self::Drawing => "template.svg",
            Self::Pages(paper) if paper == A4 => "template-a4.pdf",
            Self::Pages(_) => "template-letter.pdf",
            Self::Cutter => "template.dxf",
        }
    }

    fn text(self, state: &State) -> Option<String> {
        let (mut template, labels) = template_of(state)?;
        match self {
            Self::Drawing => svg(&template, &labels),
            Self::Pages(paper) => {
                let pages = pages_of(state, &mut template, &labels, paper)?;
                Some(pdf(&pages, &template, &labels))
            }
            Self::Cutter => dxf(&template, &labels),
        }
    }
}

/// What the page shows of the templates.
#[derive(Clone, PartialEq)]
struct Shown {
    picture: String,
    /// How many pages it takes on A4 and on Letter; none where it would take too many.
    counts: [Option<usize>; 2],
    /// Features that the kerf leaves nothing of.
    lost: Vec<String>,
}

fn shown(state: &State) -> Option<Shown> {
    let (template, labels) = template_of(state)?;
    let count = |paper| Some(pages_of(state, &mut template.clone(), &labels, paper)?.total());
    let lost = template
        .features
        .iter()
        .filter(|feature| feature.part == Part::Cut && feature.cut.is_none());
    Some(Shown {
        picture: browser::picture_address(&svg(&template, &labels)?),
        counts: [count(A4), count(LETTER)],
        lost: lost.map(|feature| feature.name.clone()).collect(),
    })
}

/// The templates: picture and keys.
#[component]
pub fn Templates() -> Html {
    let tongue = use_tongue();
    let desk = use_desk();
    // All of it hangs on the sheet's findings, the book's name and the settings; it is drawn anew when one of them is another.
    let known = use_slice(|state| {
        let name = state.book.name().to_owned();
        (
            Rc::as_ptr(&state.findings.marking),
            Rc::clone(&state.settings),
            name,
        )
    });
    let made = {
        let desk = desk.clone();
        use_memo(known, move |_| desk.and_then(|desk| shown(&desk.state())))
    };
    let body = match &*made {
        None => html! { <p class="muted">{ tongue.say(said::NOTHING) }</p> },
        Some(shown) => {
            let key = |kind: FileKind, words: String| {
                let desk = desk.clone();
                let onclick = Callback::from(move |_: MouseEvent| {
                    if let Some(text) = desk.as_ref().and_then(|desk| kind.text(&desk.state())) {
                        browser::hand_out(kind.name(), &text);
                    }
                });
                html! { <button type="button" class="key" data-do={kind.name()} {onclick}>{ words }</button> }
            };
            let paged = |paper, phrase, count: Option<usize>| {
                count.map_or_else(Html::default, |count| {
                    key(
                        FileKind::Pages(paper),
                        filled(tongue.say(phrase), &[count.to_string()]),
                    )
                })
            };
            let lost = shown.lost.iter().map(|name| {
                html! { <p class="error" role="status">{ filled(tongue.say(said::KERF_LEAVES_NOTHING), std::slice::from_ref(name)) }</p> }
            });
            html! {
                <>
                    <img class="template-picture" src={shown.picture.clone()} alt={tongue.say(said::PICTURE)} />
                    <div class="book-keys">
                        { paged(A4, said::PDF_A4, shown.counts[0]) }
                        { paged(LETTER, said::PDF_LETTER, shown.counts[1]) }
                        { key(FileKind::Drawing, tongue.say(said::SVG).to_owned()) }
                        { key(FileKind::Cutter, tongue.say(said::DXF).to_owned()) }
                    </div>
                    if shown.counts.contains(&None) { <p class="error" role="status">{ tongue.say(said::TOO_MANY) }</p> }
                    { lost.collect::<Html>() }
                    <p class="muted">{ tongue.say(said::CHECK_PRINT) }</p>
                </>
            }
        }
    };
    html! { <div class="panel">{ body }</div> }
}
