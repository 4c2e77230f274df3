//! The pattern itself as lines and texts, the same on every kind of file.

use trade::marking::{Corner, Outline};

use super::ink::{Ink, Pen, around};
use super::labels::Names;
use super::sheet::{Lay, extent};
use super::{Feature, For, Labels, Part, Template};

/// How far a centre's cross reaches, millimetres.
const CROSS: f64 = 4.0;
/// How far a tick reaches to either side of an outline.
const TICK: f64 = 3.0;

/// All of the pattern, in millimetres of the paper with UP at the top: what runs across or is there already, and what is marked out,
/// which has to be seen whole.
pub(super) fn drawing(template: &Template, labels: &Labels) -> [Vec<Ink>; 2] {
    let lay = Lay::of(template);
    let (mut behind, mut ink) = (lines_across(template, labels, lay), Vec::new());
    let mut taken = Vec::new();
    for feature in &template.features {
        let own = feature_ink(template.purpose, feature, lay);
        taken.extend(own.iter().map(Ink::bounds).reduce(around));
        match feature.part {
            Part::There => behind.extend(own),
            _ => ink.extend(own),
        }
    }
    for (_, at) in &template.datums {
        let at = lay.place(*at);
        taken.push([[at[0] - 6.0, at[1] - 6.0], [at[0] + 6.0, at[1] + 6.0]]);
        ink.extend(datum(at));
    }
    let beside = taken.clone();
    let mut names = Names::among(taken);
    for (which, feature) in template.features.iter().enumerate() {
        let size = match (template.purpose, feature.part) {
            (For::Spraying, Part::Cut) => &labels.cut_away,
            _ => &feature.size,
        };
        // A slot that lies askew fills so little of its box that a name would cover its sides.
        let outline = lay.outline(&feature.outline);
        let [low, high] = outline.bounds();
        let full = outline.area_m2() > 0.6 * (high[0] - low[0]) * (high[1] - low[1]);
        let within = full.then_some([low, high]);
        let name = names.place(&feature.name, size, within, beside[which]);
        match feature.part {
            Part::There => behind.extend(name),
            _ => ink.extend(name),
        }
    }
    for (which, (name, _)) in template.datums.iter().enumerate() {
        ink.extend(names.place(name, "", None, beside[template.features.len() + which]));
    }
    [behind, ink]
}

/// One feature as this purpose shows it.
fn feature_ink(purpose: For, feature: &Feature, lay: Lay) -> Vec<Ink> {
    let outline = &lay.outline(&feature.outline);
    let centre = lay.place(feature.centre);
    let turn = lay.direction(feature.turn);
    let mut ink = Vec::new();
    match (feature.part, purpose) {
        (Part::There, _) => return vec![Ink::Line(Pen::Dashed, outline.clone())],
        (Part::Cut, For::Spraying) => {
            ink.push(Ink::Area(0.82, outline.clone()));
            ink.push(Ink::Line(Pen::Outline, outline.clone()));
            ink.extend(ticks(outline, centre, turn, [1.0, 8.0]));
        }
        (_, For::Punching) => {
            ink.push(Ink::Line(Pen::Faint, outline.clone()));
            for spot in &feature.spots {
                let spot = lay.place(*spot);
                ink.extend(cross(spot, turn, CROSS));
                ink.push(Ink::circle(Pen::Outline, spot, 1.5));
            }
        }
        _ => {
            ink.push(Ink::Line(Pen::Outline, outline.clone()));
            ink.extend(cross(centre, turn, CROSS));
            if outline.closed {
                ink.extend(ticks(outline, centre, turn, [-TICK, TICK]));
            }
        }
    }
    ink
}

/// A cross along the axes of what it marks.
fn cross(at: [f64; 2], turn: f64, reach: f64) -> [Ink; 2] {
    [turn, turn + std::f64::consts::FRAC_PI_2].map(|direction| {
        let (sin, cos) = direction.sin_cos();
        let end = |side: f64| [at[0] + side * reach * cos, at[1] + side * reach * sin];
        Ink::line(Pen::Thin, end(-1.0), end(1.0))
    })
}

/// Ticks where the axes leave the outline, from and to so far outside it: what is left of the centre once the middle is cut away.
fn ticks(outline: &Outline, centre: [f64; 2], turn: f64, reach: [f64; 2]) -> Vec<Ink> {
    let here = outline
        .placed(false, 0.0, [-centre[0], -centre[1]])
        .placed(false, -turn, [0.0; 2]);
    let [low, high] = here.bounds();
    let (sin, cos) = turn.sin_cos();
    let there = |at: [f64; 2]| {
        [
            centre[0] + cos * at[0] - sin * at[1],
            centre[1] + sin * at[0] + cos * at[1],
        ]
    };
    let tick = |axis: usize, edge: f64, side: f64| {
        let end = |reach: f64| {
            let mut at = [0.0; 2];
            at[axis] = edge + side * reach;
            there(at)
        };
        Ink::line(Pen::Thin, end(reach[0]), end(reach[1]))
    };
    vec![
        tick(0, low[0], -1.0),
        tick(0, high[0], 1.0),
        tick(1, low[1], -1.0),
        tick(1, high[1], 1.0),
    ]
}

/// A datum: a circle with two opposite quarters filled, and its axes.
fn datum(at: [f64; 2]) -> Vec<Ink> {
    let quarter = |from: f64| {
        let end = |angle: f64| [at[0] + 4.0 * angle.cos(), at[1] + 4.0 * angle.sin()];
        let to = from + std::f64::consts::FRAC_PI_2;
        let corners = vec![
            Corner { at, bulge: 0.0 },
            Corner {
                at: end(from),
                bulge: (std::f64::consts::PI / 8.0).tan(),
            },
            Corner {
                at: end(to),
                bulge: 0.0,
            },
        ];
        Ink::Area(
            0.0,
            Outline {
                corners,
                closed: true,
            },
        )
    };
    let mut ink = vec![
        quarter(0.0),
        quarter(std::f64::consts::PI),
        Ink::circle(Pen::Thin, at, 4.0),
    ];
    ink.extend(cross(at, 0.0, 6.0));
    ink
}

/// Lines that run over the whole drawing: the datum line, the centre line, the edges of the sheet.
fn lines_across(template: &Template, labels: &Labels, lay: Lay) -> Vec<Ink> {
    let mut ink: Vec<Ink> = template
        .edges
        .iter()
        .map(|edge| Ink::line(Pen::Outline, lay.place(edge[0]), lay.place(edge[1])))
        .collect();
    if let [(_, a), (_, b), ..] = &template.datums[..] {
        let [a, b] = [a, b].map(|at| lay.place(*at));
        ink.push(Ink::line(Pen::Chain, a, b));
        let (low, high) = if a[0] <= b[0] { (a, b) } else { (b, a) };
        // Clear of the datum's own name.
        ink.push(along(low, high, 20.0, &template.datum_line));
    }
    let (Some(line), Some(extent)) = (template.centre_line, extent(template)) else {
        return ink;
    };
    let [from, to] = line.map(|at| lay.place(at));
    if let Some([low, high]) = across(from, to, extent) {
        ink.push(Ink::line(Pen::Chain, low, high));
        ink.push(along(low, high, 8.0, &labels.centre_line));
    }
    ink
}

/// A text that stands on a line, so far from its lower or left end.
fn along(low: [f64; 2], high: [f64; 2], from_end: f64, text: &str) -> Ink {
    let (dx, dy) = (high[0] - low[0], high[1] - low[1]);
    let (long, turn) = (dx.hypot(dy), dy.atan2(dx));
    let at = [
        low[0] + (from_end * dx - dy) / long,
        low[1] + (from_end * dy + dx) / long,
    ];
    Ink::Text {
        at,
        high: 2.8,
        turn,
        bold: false,
        text: text.to_owned(),
    }
}

/// The part of a line that lies in a box, from its lower or left end; none where it passes by.
fn across(from: [f64; 2], to: [f64; 2], extent: [[f64; 2]; 2]) -> Option<[[f64; 2]; 2]> {
    let along = [to[0] - from[0], to[1] - from[1]];
    let (mut begin, mut end) = (f64::NEG_INFINITY, f64::INFINITY);
    for axis in 0..2 {
        if along[axis].abs() < 1e-9 {
            if from[axis] < extent[0][axis] || from[axis] > extent[1][axis] {
                return None;
            }
            continue;
        }
        let at = [0, 1].map(|side: usize| (extent[side][axis] - from[axis]) / along[axis]);
        begin = begin.max(at[0].min(at[1]));
        end = end.min(at[0].max(at[1]));
    }
    if begin.partial_cmp(&end) != Some(std::cmp::Ordering::Less) {
        return None;
    }
    let point = |t: f64| [from[0] + t * along[0], from[1] + t * along[1]];
    let (a, b) = (point(begin), point(end));
    Some(if a[0] + 0.5 * a[1] <= b[0] + 0.5 * b[1] {
        [a, b]
    } else {
        [b, a]
    })
}
