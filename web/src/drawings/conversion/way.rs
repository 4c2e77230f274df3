//! A cable or pipe stretched out straight: where each bend begins, to be marked before anything is bent.

use crate::drawings::parts::{Fill, Lean, Line, area, line, outline, text, text_on};
use crate::drawings::{Drawing, Paper, Plate, Table};
use crate::shown::{plain, written};
use crate::state::State;
use crate::words::{self, conversion as said, filled};
use buildbook::Key;
use buildbook::sheets::conversion::RouteEntry;
use measure::Kind;
use yew::{Html, html};

/// The marks on the straight length.
pub static WAY: Plate = Plate::new("conversion/way", 0.62, draw);

/// A bend on the straight length: its name, where it begins, how long it is, and what is said of it.
struct Mark {
    name: String,
    begins: f64,
    long: f64,
    at: String,
    turn: String,
}

/// The route that is worked on: the one whose row is open, else the first with a bend.
fn route(state: &State) -> Option<&RouteEntry> {
    let routes = &state.findings.conversion.sheet.routes;
    let bent = || routes.iter().filter(|route| !route.bends.is_empty());
    bent()
        .find(|route| state.is_open(&route.key))
        .or_else(|| bent().next())
}

fn marks(state: &State, route: &RouteEntry, paper: &Paper) -> Vec<Mark> {
    let list = route.key.under("bends");
    let mark = |bend: &buildbook::sheets::conversion::BendEntry| {
        let id = format!("conversion/bend_at/{}/{}", route.id(), bend.id());
        let begins = state.findings.result(&id)?.as_ref().ok()?;
        let (radius, angle) = (bend.radius.value()?.value(), bend.angle.value()?.value());
        let turn = [
            plain(angle, Kind::Angle, &paper.manner),
            plain(radius, Kind::Length, &paper.manner),
        ];
        Some(Mark {
            name: words::row_name(&state.book, &list, bend.id(), paper.tongue),
            begins: begins.value(),
            long: radius * angle,
            at: written(begins, &paper.manner).whole(),
            turn: filled(paper.tongue.say(said::TURN), &turn),
        })
    };
    route.bends.iter().filter_map(mark).collect()
}

fn draw(state: &State, paper: &Paper) -> Option<Drawing> {
    let route = route(state)?;
    let marks = marks(state, route, paper);
    let last = marks.last()?;
    let whole = state
        .findings
        .result(&format!("conversion/cut/{}", route.id()));
    let whole = whole.and_then(|whole| whole.as_ref().ok())?;
    // A string that was laid shorter than its straights and bends leaves the picture its length.
    let total = whole.value().max(last.begins + last.long);
    let (left, right) = (24.0, paper.width - 24.0);
    let x = |along: f64| left + (right - left) * along / total;
    let (top, low) = (paper.height - 62.0, paper.height - 40.0);
    let bar = [(left, top), (right, top), (right, low), (left, low)];
    let step = (top - 30.0) / marks.len() as f64;
    let drawn = marks.iter().enumerate().map(|(at, mark)| {
        let (from, to) = (x(mark.begins), x(mark.begins + mark.long));
        // Each bend has a level of its own, so that no label meets another.
        let level = 26.0 + step * at as f64;
        let lean = if from > paper.width * 0.55 {
            Lean::End
        } else {
            Lean::Start
        };
        let beside = if lean == Lean::End {
            from - 8.0
        } else {
            from + 8.0
        };
        html! {
            <>
                { area(&[(from, top), (to, top), (to, low), (from, low)], Fill::Hatched) }
                { line((from, low), (from, level - 14.0), Line::Fine) }
                { text_on((beside, level), lean, &format!("{} {}", mark.name, mark.at)) }
                { text_on((beside, level + 22.0), lean, &mark.turn) }
            </>
        }
    });
    let cut = written(whole, &paper.manner).whole();
    let name = words::row_name(
        &state.book,
        &Key::from("conversion/routes"),
        route.id(),
        paper.tongue,
    );
    let rows: Vec<Vec<String>> = marks
        .iter()
        .map(|mark| vec![mark.name.clone(), mark.at.clone(), mark.turn.clone()])
        .collect();
    let sentence: Vec<String> = rows.iter().map(|row| row.join(" ")).collect();
    let head =
        [said::BEND, said::BEGINS_AT, said::BY].map(|head| paper.tongue.say(head).to_owned());
    let shown: Html = drawn.collect();
    Some(Drawing {
        title: filled(paper.tongue.say(said::WAY_TITLE), &[name]),
        description: filled(paper.tongue.say(said::WAY_SAID), &[sentence.join(", ")]),
        marks: html! {
            <>
                { area(&bar, Fill::Metal) }
                { shown }
                { outline(&bar, Line::Outline) }
                { text((right, paper.height - 12.0), Lean::End, &filled(paper.tongue.say(said::IN_ALL), &[cut])) }
            </>
        },
        table: Table {
            head: head.to_vec(),
            rows,
        },
    })
}
