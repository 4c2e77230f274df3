//! Templates at true scale: a marked-out pattern as a drawing (SVG), as pages to print and join (PDF), and as a file for a cutter
//! (DXF). Bytes in, bytes out: the words that stand on them come in as texts.
//!
//! A template is laid out once, in millimetres of paper with UP at the top; the three writers only say the same lines, arcs and
//! texts in their own formats. All three write plain ASCII, so that a text is the file.

mod bars;
mod drawing;
mod dxf;
mod ink;
mod labels;
mod pages;
mod pdf;
mod sheet;
mod svg;
#[cfg(test)]
mod tests;

pub use dxf::dxf;
pub use pages::{A4, LETTER, Pages, Paper, pages};
pub use pdf::pdf;
pub use svg::svg;

use trade::marking::Outline;

/// What a template is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum For {
    /// To mark everything from: outlines, centres, names.
    Marking,
    /// A mask to cut out and spray through: what is cut away is grey.
    Spraying,
    /// To punch centres through: every spot that is punched, the outlines faint.
    Punching,
}

/// What a feature of a template is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// It is cut out.
    Cut,
    /// It is only marked: a stud, a bracket's corner.
    Marked,
    /// It is there already and must be kept clear of.
    There,
}

/// A feature on a template: metres on the flat of the pattern.
#[derive(Debug, Clone)]
pub struct Feature {
    /// Its name.
    pub name: String,
    /// Its size, as the trade writes it; may be empty.
    pub size: String,
    /// What it is.
    pub part: Part,
    /// Its outline, metres.
    pub outline: Outline,
    /// What the cutter's middle runs along, metres: the outline less half a kerf. None where the kerf leaves nothing.
    pub cut: Option<Outline>,
    /// Its centre, metres.
    pub centre: [f64; 2],
    /// Where its axes lie, from the x axis, radians.
    pub turn: f64,
    /// Where it is punched, metres.
    pub spots: Vec<[f64; 2]>,
}

/// What is drawn at true scale. Places are metres on the flat of the pattern: x along the datum line, y to the left of it.
#[derive(Debug, Clone)]
pub struct Template {
    /// What it is a template of.
    pub title: String,
    /// Lines of text beneath: seen from where, which side it goes on, the day, whatever must not be forgotten.
    pub lines: Vec<String>,
    /// What it is for.
    pub purpose: For,
    /// The direction that is up on the vehicle, from the x axis, radians.
    pub up: f64,
    /// Whether it is drawn as seen from behind the flat.
    pub from_behind: bool,
    /// What is marked out.
    pub features: Vec<Feature>,
    /// The datums to lay it on by: name and place.
    pub datums: Vec<(String, [f64; 2])>,
    /// What stands on the line from the first datum to the second: how far they must be apart once pages are joined.
    pub datum_line: String,
    /// The vehicle's centre line, by two of its points.
    pub centre_line: Option<[[f64; 2]; 2]>,
    /// Edges of the sheet, each from one point to another.
    pub edges: Vec<[[f64; 2]; 2]>,
    /// Pieces to cut that close old holes: name, and the way of the cutter outside the piece, metres about its own centre. They
    /// stand in the cutter's file alone, in a row below the pattern.
    pub pieces: Vec<(String, Outline)>,
}

/// The words on a template, in the language of the reader.
#[derive(Debug, Clone)]
pub struct Labels {
    /// Beside the arrow that points up.
    pub up: String,
    /// Beside the bar of 100 mm along the paper.
    pub bar_mm: String,
    /// Beside the bar of 4 in.
    pub bar_in: String,
    /// How to print and check: one line.
    pub scale: String,
    /// Before a page's name: "Page".
    pub page: String,
    /// On the vehicle's centre line.
    pub centre_line: String,
    /// In what a mask is cut away.
    pub cut_away: String,
    /// On the cutter's file: that all of it is in millimetres, and what its square is for.
    pub millimetres: String,
}

/// Millimetres in an inch.
const INCH: f64 = 25.4;

/// A number of millimetres with no more digits than it needs.
fn number(value: f64) -> String {
    let text = format!("{value:.4}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" {
        "0".to_owned()
    } else {
        text.to_owned()
    }
}
