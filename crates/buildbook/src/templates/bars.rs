//! What stands around the pattern: bars to check the printer by, the arrow that points up, and the lines of text.

use super::ink::{Ink, Pen, rectangle, wrapped};
use super::{INCH, Labels, Template};

/// How wide the bars are that stand up the left edge, millimetres.
pub(super) const LEFT: f64 = 14.0;
/// How high the map of the pages may be, and so at least what stands below the pattern.
pub(super) const MAP: f64 = 32.0;
/// How high the bars along the lower edge are, with what they are.
const BARS: f64 = 13.0;
/// How far texts and bars reach along the paper before the arrow and the map begin.
pub(super) const TEXTS: f64 = 119.0;

/// The bar of 100 mm or of 4 in from a point along the paper, or up it: a ladder of filled and empty fields, one a division.
pub(super) fn bar(from: [f64; 2], inches: bool, upwards: bool) -> Vec<Ink> {
    let (division, count) = if inches { (INCH, 4) } else { (10.0, 10) };
    let field = |i: f64, low: f64, high: f64| {
        let at = |along: f64, across: f64| {
            if upwards {
                [from[0] + across, from[1] + along]
            } else {
                [from[0] + along, from[1] + across]
            }
        };
        (at(i * division, low), at((i + 1.0) * division, high))
    };
    let mut ink = Vec::new();
    for i in 0..count {
        let (low, high) = field(
            f64::from(i),
            if i % 2 == 0 { 0.0 } else { 1.0 },
            if i % 2 == 0 { 1.0 } else { 2.0 },
        );
        ink.push(Ink::Area(0.0, rectangle(low, high)));
    }
    // The frame is what is measured: its outer edges are the ends of the bar.
    let (low, _) = field(0.0, 0.0, 2.0);
    let (_, high) = field(f64::from(count) - 1.0, 0.0, 2.0);
    ink.push(Ink::frame(Pen::Thin, low, high));
    ink
}

/// All four bars of a page about its lower left corner, with what they are.
pub(super) fn bars(corner: [f64; 2], labels: &Labels) -> Vec<Ink> {
    let [x, y] = corner;
    let mut ink = Vec::new();
    for (inches, off, label) in [(false, 0.0, &labels.bar_mm), (true, 6.5, &labels.bar_in)] {
        ink.extend(bar([x + 16.0, y + off], inches, false));
        ink.push(Ink::text([x + 16.0, y + off + 2.7], 2.4, label.clone()));
        ink.extend(bar([x + off, y + 16.0], inches, true));
        let at = [x + off + 5.0, y + 16.0];
        ink.push(Ink::Text {
            at,
            high: 2.4,
            turn: std::f64::consts::FRAC_PI_2,
            bold: false,
            text: label.clone(),
        });
    }
    ink
}

/// The lines of text below the pattern, wrapped: text, size, and whether it is bold.
fn lines(template: &Template, labels: &Labels, page: &str) -> Vec<(String, f64, bool)> {
    let said = [(template.title.as_str(), 4.0, true), (page, 3.2, true)];
    let rest = template.lines.iter().chain([&labels.scale]);
    let all = said
        .into_iter()
        .chain(rest.map(|line| (line.as_str(), 2.8, false)));
    all.flat_map(|(text, size, bold)| {
        let lines = wrapped(text, size, TEXTS - LEFT);
        lines.into_iter().map(move |line| (line, size, bold))
    })
    .collect()
}

/// Between one line of text and the next.
const LEAD: f64 = 0.7;

/// How high everything is that stands below the pattern: it grows with what is said.
pub(super) fn foot_height(template: &Template, labels: &Labels, page: &str) -> f64 {
    let lines = lines(template, labels, page);
    let text: f64 = lines.iter().map(|(_, size, _)| size + LEAD).sum();
    (BARS + text + 2.0).max(MAP + 4.0)
}

/// What every page carries below its part of the pattern, about its lower left corner: bars, title, lines, arrow.
pub(super) fn foot(corner: [f64; 2], template: &Template, labels: &Labels, page: &str) -> Vec<Ink> {
    let [x, y] = corner;
    let mut ink = bars(corner, labels);
    let mut top = y + foot_height(template, labels, page) - 1.0;
    for (line, size, bold) in lines(template, labels, page) {
        top -= size;
        let at = [x + 16.0, top];
        ink.push(if bold {
            Ink::bold(at, size, line)
        } else {
            Ink::text(at, size, line)
        });
        top -= LEAD;
    }
    ink.extend(arrow([x + TEXTS + 6.0, y + 2.0], 26.0, &labels.up));
    ink
}

/// The arrow that points up, its foot at a point, so high.
pub(super) fn arrow(foot: [f64; 2], high: f64, label: &str) -> Vec<Ink> {
    let [x, y] = foot;
    let head = trade::marking::Outline::of_points([
        [x - 3.0, y + high - 8.0],
        [x + 3.0, y + high - 8.0],
        [x, y + high],
    ]);
    vec![
        Ink::Area(0.0, head),
        Ink::Area(0.0, rectangle([x - 0.8, y], [x + 0.8, y + high - 8.0])),
        Ink::bold([x + 4.5, y + high - 7.5], 5.0, label),
    ]
}
