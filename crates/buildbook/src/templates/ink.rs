//! What is put on paper: lines, areas and texts, in millimetres with y upwards.

use trade::marking::{Corner, Outline};

/// How a line is drawn: habits of ISO 128, for a pen that copies well.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Pen {
    /// What is cut or marked.
    Outline,
    /// Centre crosses, ticks, frames.
    Thin,
    /// Faint: outlines on a template for punching.
    Faint,
    /// Chain-dotted: centre lines and datum lines.
    Chain,
    /// Dashed: what is there already, and where pages join.
    Dashed,
}

impl Pen {
    /// Width in millimetres, dashes in millimetres, and grey from 0 black to 1 white.
    pub(super) fn look(self) -> (f64, &'static [f64], f64) {
        match self {
            Self::Outline => (0.45, &[], 0.0),
            Self::Thin => (0.18, &[], 0.0),
            Self::Faint => (0.25, &[], 0.55),
            Self::Chain => (0.18, &[8.0, 1.5, 1.0, 1.5], 0.0),
            Self::Dashed => (0.25, &[3.0, 1.5], 0.3),
        }
    }
}

/// One thing on paper.
#[derive(Debug, Clone)]
pub(super) enum Ink {
    /// A line or an outline.
    Line(Pen, Outline),
    /// An area filled with a grey from 0 black to 1 white.
    Area(f64, Outline),
    /// A text: where its foot begins, its size (the height of a line), where it runs to (radians from along the paper), and
    /// whether it is bold.
    Text {
        at: [f64; 2],
        high: f64,
        turn: f64,
        bold: bool,
        text: String,
    },
}

/// About how wide a text of this size is: Helvetica's figures are 0.556 of its size wide, and its letters little less on the
/// average.
pub(super) fn wide(text: &str, high: f64) -> f64 {
    0.56 * high * text.chars().count() as f64
}

impl Ink {
    /// A straight line.
    pub(super) fn line(pen: Pen, from: [f64; 2], to: [f64; 2]) -> Self {
        let corners = [from, to].map(|at| Corner { at, bulge: 0.0 });
        Self::Line(
            pen,
            Outline {
                corners: corners.to_vec(),
                closed: false,
            },
        )
    }

    /// A circle.
    pub(super) fn circle(pen: Pen, centre: [f64; 2], radius: f64) -> Self {
        Self::Line(pen, Outline::circle(centre, radius))
    }

    /// A frame.
    pub(super) fn frame(pen: Pen, low: [f64; 2], high: [f64; 2]) -> Self {
        Self::Line(pen, rectangle(low, high))
    }

    /// A text that runs along the paper.
    pub(super) fn text(at: [f64; 2], high: f64, text: impl Into<String>) -> Self {
        Self::Text {
            at,
            high,
            turn: 0.0,
            bold: false,
            text: text.into(),
        }
    }

    /// A text in bold.
    pub(super) fn bold(at: [f64; 2], high: f64, text: impl Into<String>) -> Self {
        Self::Text {
            at,
            high,
            turn: 0.0,
            bold: true,
            text: text.into(),
        }
    }

    /// The box that it keeps within.
    pub(super) fn bounds(&self) -> [[f64; 2]; 2] {
        match self {
            Self::Line(_, outline) | Self::Area(_, outline) => outline.bounds(),
            Self::Text {
                at,
                high,
                turn,
                text,
                ..
            } => {
                let paper = rectangle([0.0; 2], [wide(text, *high), *high]);
                paper.placed(false, *turn, *at).bounds()
            }
        }
    }
}

/// A rectangle by two opposite corners.
pub(super) fn rectangle(low: [f64; 2], high: [f64; 2]) -> Outline {
    Outline::of_points([low, [high[0], low[1]], high, [low[0], high[1]]])
}

/// Whether two boxes share anything.
pub(super) fn overlap(a: [[f64; 2]; 2], b: [[f64; 2]; 2]) -> bool {
    (0..2).all(|axis| a[0][axis] <= b[1][axis] && b[0][axis] <= a[1][axis])
}

/// The box around two boxes.
pub(super) fn around(a: [[f64; 2]; 2], b: [[f64; 2]; 2]) -> [[f64; 2]; 2] {
    [
        [a[0][0].min(b[0][0]), a[0][1].min(b[0][1])],
        [a[1][0].max(b[1][0]), a[1][1].max(b[1][1])],
    ]
}

/// A text in lines that are no wider than this; a word that is wider stands alone.
pub(super) fn wrapped(text: &str, high: f64, width: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        match lines.last_mut() {
            Some(line) if wide(line, high) + wide(word, high) + high / 2.0 <= width => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
