//! Up through the gears: engine speed over road speed, a tooth for each gear, before dashed behind now.

use measure::Kind;
use yew::{Html, html};

use super::super::parts::{Fill, Lean, Line, dot, line, polyline, text_on, text_width};
use super::super::{Axis, Drawing, Labels, Paper, Plate, Plot, Span, Table};
use super::{axis, before, gear_mark, gear_name, marked, rounded, unit, whole};
use crate::state::State;
use crate::words::{filled, frame, gearing};
use buildbook::sheets::gearing::Sketch;

/// Engine speed over road speed in each gear.
pub static SPEEDS: Plate = Plate::new("gearing/speeds", 0.66, speeds);

fn speeds(state: &State, paper: &Paper) -> Option<Drawing> {
    let sketch = &state.findings.gearing.sketch;
    if sketch.gears.is_empty() {
        return None;
    }
    let old = before(state)
        .map(|before| &before.sketch)
        .filter(|old| !old.gears.is_empty());
    let plot = plot(sketch, old, paper)?;
    let highest = marked(gearing::HIGHEST, sketch.engine.1, Kind::Rotation, paper);
    let reaches: Vec<String> = sketch
        .gears
        .iter()
        .map(|(gear, metres)| {
            let to = rounded(metres * sketch.engine.1, Kind::Speed, paper);
            filled(
                paper.tongue.say(gearing::REACHES),
                &[gear_name(gear, paper), to],
            )
        })
        .collect();
    let changed_at = rounded(sketch.engine.1, Kind::Rotation, paper);
    Some(Drawing {
        title: paper.tongue.say(gearing::SPEEDS_TITLE).to_owned(),
        description: filled(
            paper.tongue.say(gearing::SPEEDS_SAID),
            &[changed_at, reaches.join(", ")],
        ),
        marks: marks(sketch, old, &plot, &highest, paper),
        table: table(sketch, old, paper),
    })
}

/// A pair of engine and road speed in the shown units.
fn shown((engine, road): (f64, f64), paper: &Paper) -> (f64, f64) {
    let (speed, rotation) = (unit(Kind::Speed, paper), unit(Kind::Rotation, paper));
    (speed.from_si(road), rotation.from_si(engine))
}

fn plot(sketch: &Sketch, old: Option<&Sketch>, paper: &Paper) -> Option<Plot> {
    let ends = |sketch: &Sketch| sketch.saw_tooth.last().map(|end| shown(*end, paper));
    let (x, y) = ends(sketch)?;
    let (old_x, old_y) = old.and_then(ends).unwrap_or((x, y));
    let across = Span {
        lowest: 0.0,
        highest: 1.06 * x.max(old_x),
    };
    let up = Span {
        lowest: 0.0,
        highest: 1.24 * y.max(old_y),
    };
    Some(Plot::with_room(paper, across, up, 72.0, 18.0))
}

fn marks(sketch: &Sketch, old: Option<&Sketch>, plot: &Plot, highest: &str, paper: &Paper) -> Html {
    let across = Axis::round(
        axis(gearing::ROAD_SPEED_AXIS, Kind::Speed, paper),
        plot.x,
        6,
        |v| whole(v, paper),
    );
    let up = Axis::round(
        axis(gearing::ENGINE_SPEED_AXIS, Kind::Rotation, paper),
        plot.y,
        5,
        |v| whole(v, paper),
    );
    let on_paper = |pairs: &[(f64, f64)]| -> Vec<(f64, f64)> {
        let pairs: Vec<_> = pairs.iter().map(|pair| shown(*pair, paper)).collect();
        plot.all(&pairs)
    };
    let from_rest = |sketch: &Sketch| -> Vec<Vec<(f64, f64)>> {
        let (_, highest) = sketch.engine;
        sketch
            .gears
            .iter()
            .map(|(_, metres)| on_paper(&[(0.0, 0.0), (highest, highest * metres)]))
            .collect()
    };
    let mut peaks = Vec::new();
    let mut crossings = Vec::new();
    for (gear, metres) in &sketch.gears {
        let (n, v) = (sketch.engine.1, sketch.engine.1 * metres);
        let (x, y) = shown((n, v), paper);
        peaks.push((plot.at(x, y), gear_mark(gear, paper)));
        if let Some(cruise) = sketch.cruise.filter(|cruise| *cruise < v) {
            let (x, y) = shown((cruise / metres, cruise), paper);
            crossings.push((
                plot.at(x, y),
                rounded(cruise / metres, Kind::Rotation, paper),
            ));
        }
    }
    let mut labels = Labels::new(paper);
    // Only the gear one cruises in is told; the others are marked by their dots.
    if let Some((point, said)) = crossings.last() {
        labels.add(*point, said.clone());
    }
    // The gears' numbers stand over their teeth, the name of the line over them.
    let over = |(point, said): &((f64, f64), String)| {
        text_on((point.0, point.1 - 8.0), Lean::Middle, said)
    };
    let (_, top) = shown((sketch.engine.1, 0.0), paper);
    html! {
        <>
            { plot.axes(&across, &up) }
            { from_rest(sketch).iter().map(|line| polyline(line, Line::Fine)).collect::<Html>() }
            { old.map(|old| polyline(&on_paper(&old.saw_tooth), Line::Before)) }
            { polyline(&plot.all(&[(plot.x.lowest, top), (plot.x.highest, top)]), Line::Limit) }
            { highest_said(plot, top, highest) }
            { cruise(sketch, plot, paper) }
            { polyline(&on_paper(&sketch.saw_tooth), Line::Now) }
            { crossings.iter().map(|(point, _)| dot(*point, Fill::Now)).collect::<Html>() }
            { peaks.iter().map(over).collect::<Html>() }
            { labels.placed() }
        </>
    }
}

/// The name of the highest engine speed, at the right end and clear of the gears' numbers.
fn highest_said(plot: &Plot, top: f64, said: &str) -> Html {
    let (x, y) = plot.at(plot.x.highest, top);
    text_on((x - 4.0, y - 32.0), Lean::End, said)
}

/// The cruise as a line up the plot, its name at the foot, where no tooth comes.
fn cruise(sketch: &Sketch, plot: &Plot, paper: &Paper) -> Option<Html> {
    let cruise = sketch.cruise?;
    let (x, _) = shown((0.0, cruise), paper);
    let said = marked(gearing::CRUISE, cruise, Kind::Speed, paper);
    let (foot, head) = (plot.at(x, plot.y.lowest), plot.at(x, plot.y.highest));
    let room = plot.at(plot.x.highest, 0.0).0 - foot.0 > text_width(&said) + 12.0;
    let (off, lean) = if room {
        (8.0, Lean::Start)
    } else {
        (-8.0, Lean::End)
    };
    (x < plot.x.highest).then(|| {
        html! { <>{ line(foot, head, Line::Limit) }{ text_on((foot.0 + off, foot.1 - 12.0), lean, &said) }</> }
    })
}

fn table(sketch: &Sketch, old: Option<&Sketch>, paper: &Paper) -> Table {
    let reach =
        |sketch: &Sketch, metres: f64| rounded(sketch.engine.1 * metres, Kind::Speed, paper);
    let rows = sketch.gears.iter().map(|(gear, metres)| {
        let mut row = vec![gear_name(gear, paper)];
        if let Some(old) = old {
            let was = old.gears.iter().find(|(other, _)| other == gear);
            row.push(was.map_or_else(|| "—".to_owned(), |(_, metres)| reach(old, *metres)));
        }
        row.push(reach(sketch, *metres));
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
