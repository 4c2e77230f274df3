//! Pull at the wheels in each gear against what the road takes, on the level and on hills.

use measure::{Figure, Kind};
use yew::{Html, html};

use super::super::parts::{Fill, Lean, Line, area, dot, polyline, text_on};
use super::super::{Axis, Drawing, Labels, Paper, Plate, Plot, Span, Table};
use super::{axis, before, gear_mark, gear_name, marked, rounded, unit, whole};
use crate::shown::{plain, written};
use crate::state::State;
use crate::words::{filled, frame, gearing};
use buildbook::sheets::gearing::Sketch;

/// Pull against road load.
pub static PULL: Plate = Plate::new("gearing/pull", 0.72, pull);

fn pull(state: &State, paper: &Paper) -> Option<Drawing> {
    let findings = &state.findings.gearing;
    let sketch = &findings.sketch;
    if sketch.effort.is_empty() {
        return None;
    }
    let old = before(state)
        .map(|before| &before.sketch)
        .filter(|old| !old.effort.is_empty());
    let top = findings.found.figure("gearing/top_speed");
    let plot = plot(sketch, old, paper)?;
    let steepest = sketch
        .loads
        .iter()
        .map(|(slope, _)| *slope)
        .fold(0.0, f64::max);
    let top_said = top.map_or_else(|| "—".to_owned(), |top| written(top, &paper.manner).whole());
    Some(Drawing {
        title: paper.tongue.say(gearing::PULL_TITLE).to_owned(),
        description: filled(
            paper.tongue.say(gearing::PULL_SAID),
            &[plain(steepest, Kind::Slope, &paper.manner), top_said],
        ),
        marks: marks(sketch, old, top, &plot, paper),
        table: table(sketch, old, paper),
    })
}

/// A pair of road speed and force in the shown units.
fn shown((road, force): (f64, f64), paper: &Paper) -> (f64, f64) {
    (
        unit(Kind::Speed, paper).from_si(road),
        unit(Kind::Force, paper).from_si(force),
    )
}

fn greatest(sketch: &Sketch, paper: &Paper) -> Option<(f64, f64)> {
    let points = sketch
        .effort
        .iter()
        .flat_map(|line| &line.points)
        .map(|point| shown(*point, paper));
    points.reduce(|a, b| (a.0.max(b.0), a.1.max(b.1)))
}

fn plot(sketch: &Sketch, old: Option<&Sketch>, paper: &Paper) -> Option<Plot> {
    let (x, y) = greatest(sketch, paper)?;
    let (old_x, old_y) = old.and_then(|old| greatest(old, paper)).unwrap_or((x, y));
    let across = Span {
        lowest: 0.0,
        highest: 1.04 * x.max(old_x),
    };
    let up = Span {
        lowest: 0.0,
        highest: 1.10 * y.max(old_y),
    };
    Some(Plot::with_room(paper, across, up, 84.0, 70.0))
}

fn marks(
    sketch: &Sketch,
    old: Option<&Sketch>,
    top: Option<&Figure>,
    plot: &Plot,
    paper: &Paper,
) -> Html {
    let across = Axis::round(
        axis(gearing::ROAD_SPEED_AXIS, Kind::Speed, paper),
        plot.x,
        6,
        |v| whole(v, paper),
    );
    let up = Axis::round(
        axis(gearing::PULL_AXIS, Kind::Force, paper),
        plot.y,
        5,
        |v| whole(v, paper),
    );
    let on_paper = |pairs: &[(f64, f64)]| -> Vec<(f64, f64)> {
        let pairs: Vec<_> = pairs.iter().map(|pair| shown(*pair, paper)).collect();
        plot.all(&pairs)
    };
    let hills = sketch.loads.iter().map(|(slope, points)| {
        let line = on_paper(points);
        let kind = if *slope == 0.0 {
            Line::Against
        } else {
            Line::Centre
        };
        let said = if *slope == 0.0 {
            paper.tongue.say(gearing::LEVEL).to_owned()
        } else {
            plain(*slope, Kind::Slope, &paper.manner)
        };
        // Hills that rise out of the picture are cut off at its top.
        let (_, ceiling) = plot.at(0.0, plot.y.highest);
        let seen: Vec<_> = line.into_iter().filter(|(_, y)| *y >= ceiling).collect();
        let end = seen
            .last()
            .map(|(x, y)| text_on((x + 6.0, y + 6.0), Lean::Start, &said));
        html! { <>{ polyline(&seen, kind) }{ end }</> }
    });
    let mut labels = Labels::new(paper);
    for line in &sketch.effort {
        let highest = line
            .points
            .iter()
            .copied()
            .reduce(|a, b| if b.1 > a.1 { b } else { a });
        if let Some(point) = highest {
            let (x, y) = shown(point, paper);
            labels.add(plot.at(x, y), gear_mark(&line.gear, paper));
        }
    }
    let top = top.map(|top| top_mark(sketch, top, plot, paper));
    let olds = old.map(|old| {
        old.effort
            .iter()
            .map(|line| polyline(&on_paper(&line.points), Line::Before))
            .collect::<Html>()
    });
    html! {
        <>
            { plot.axes(&across, &up) }
            { hills.collect::<Html>() }
            { olds }
            { top }
            { sketch.effort.iter().map(|line| polyline(&on_paper(&line.points), Line::Now)).collect::<Html>() }
            { labels.placed() }
        </>
    }
}

/// The top speed with its ± as a band, and a dot where pull and road load meet or the engine has no more turns.
fn top_mark(sketch: &Sketch, top: &Figure, plot: &Plot, paper: &Paper) -> Html {
    let load = sketch.loads.first().map_or(&[][..], |(_, points)| points);
    let after = load.iter().find(|(v, _)| *v >= top.value()).or(load.last());
    let force = after.map_or(0.0, |(_, force)| *force);
    let at = |v: f64, force: f64| {
        let (x, y) = shown((v, force), paper);
        plot.at(x.min(plot.x.highest), y)
    };
    let (slow, fast) = (top.value() - top.minus(), top.value() + top.plus());
    let band = [
        at(slow, 0.0),
        at(fast, 0.0),
        at(fast, force),
        at(slow, force),
    ];
    // At the foot of the band, where the road load lies well above.
    let foot = at(slow, 0.0);
    let said = marked(gearing::TOP_MARK, top.value(), Kind::Speed, paper);
    html! {
        <>
            { area(&band, Fill::Uncertain) }
            { dot(at(top.value(), force), Fill::Now) }
            { text_on((foot.0 - 8.0, foot.1 - 9.0), Lean::End, &said) }
        </>
    }
}

fn table(sketch: &Sketch, old: Option<&Sketch>, paper: &Paper) -> Table {
    let most = |sketch: &Sketch, at: usize| {
        let line = sketch.effort.get(at)?;
        let force = line
            .points
            .iter()
            .map(|(_, force)| *force)
            .fold(0.0, f64::max);
        Some(rounded(force, Kind::Force, paper))
    };
    let rows = sketch.effort.iter().enumerate().map(|(at, line)| {
        let mut row = vec![gear_name(&line.gear, paper)];
        if let Some(old) = old {
            row.push(most(old, at).unwrap_or_else(|| "—".to_owned()));
        }
        row.push(most(sketch, at).unwrap_or_default());
        row
    });
    let mut head = vec![paper.tongue.say(gearing::GEARS).to_owned()];
    if old.is_some() {
        head.push(paper.tongue.say(frame::BEFORE).to_owned());
    }
    head.push(paper.tongue.say(frame::NOW).to_owned());
    Table {
        head,
        rows: rows.collect(),
    }
}
