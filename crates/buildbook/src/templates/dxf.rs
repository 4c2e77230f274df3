//! The file for a cutter: DXF, release 12, in millimetres.

use std::fmt::Write;

use trade::marking::{Corner, Outline};

use super::sheet::{Lay, extent};
use super::{Labels, Part, Template, number};

/// Layers and their colours (by the numbers of the format).
const LAYERS: [(&str, u8); 8] = [
    ("CUT", 1),
    ("MARK", 5),
    ("DATUM", 3),
    ("THERE", 8),
    ("EDGE", 4),
    ("PIECES", 6),
    ("SQUARE_100_MM", 2),
    ("NOTES", 7),
];

/// The side of the square that the cutter's scale is checked by, millimetres.
const SQUARE: f64 = 100.0;
/// Between one thing and the next, millimetres.
const GAP: f64 = 15.0;

/// A template as a DXF file; none where there is nothing to cut or mark.
///
/// Round holes are circles; other outlines are closed polylines whose arcs are bulges. The units stand in the header ($INSUNITS 4,
/// $MEASUREMENT 1) and in words on the layer NOTES, and a square of 100 mm stands on a layer of its own.
#[must_use]
pub fn dxf(template: &Template, labels: &Labels) -> Option<String> {
    let lay = Lay::of(template);
    let [low, high] = extent(template)?;
    let mut file = File::begun([low, high]);
    for feature in &template.features {
        let (layer, outline) = match (feature.part, &feature.cut) {
            (Part::Cut, Some(cut)) => ("CUT", cut),
            (Part::There, _) => ("THERE", &feature.outline),
            _ => ("MARK", &feature.outline),
        };
        file.outline(layer, &lay.outline(outline));
        if feature.part == Part::There {
            continue;
        }
        for spot in &feature.spots {
            file.point("MARK", lay.place(*spot));
        }
        let box_ = lay.outline(&feature.outline).bounds();
        file.text(
            "NOTES",
            [box_[1][0] + 2.0, box_[1][1]],
            3.0,
            &format!("{} {}", feature.name, feature.size),
        );
    }
    for edge in &template.edges {
        let corners = edge.map(|at| Corner {
            at: lay.place(at),
            bulge: 0.0,
        });
        let line = Outline {
            corners: corners.to_vec(),
            closed: false,
        };
        file.outline("EDGE", &line);
    }
    for (name, at) in &template.datums {
        let at = lay.place(*at);
        file.point("DATUM", at);
        file.outline("DATUM", &Outline::circle(at, 4.0));
        file.text("NOTES", [at[0] + 6.0, at[1] + 2.0], 3.0, name);
    }
    // Below the pattern: the square, then the pieces in a row, then what must be read.
    let top = low[1] - GAP;
    let corner = [low[0], top - SQUARE];
    file.outline(
        "SQUARE_100_MM",
        &super::ink::rectangle(corner, [corner[0] + SQUARE, top]),
    );
    let (mut x, mut lowest) = (corner[0] + SQUARE + GAP, corner[1]);
    for (name, way) in &template.pieces {
        let way = Lay::upright().outline(way);
        let [least, most] = way.bounds();
        let shift = [x - least[0], top - most[1]];
        file.outline("PIECES", &way.placed(false, 0.0, shift));
        file.text("NOTES", [x, top + 2.0], 3.0, name);
        x += most[0] - least[0] + GAP;
        lowest = lowest.min(top - (most[1] - least[1]));
    }
    let lines = [&labels.millimetres, &template.title]
        .into_iter()
        .chain(&template.lines);
    for (i, line) in lines.enumerate() {
        file.text(
            "NOTES",
            [corner[0], lowest - 8.0 - 6.0 * i as f64],
            4.0,
            line,
        );
    }
    Some(file.end())
}

struct File(String);

impl File {
    /// Header and tables.
    fn begun([low, high]: [[f64; 2]; 2]) -> Self {
        let mut file = Self(String::new());
        file.pairs(&[
            (0, "SECTION"),
            (2, "HEADER"),
            (9, "$ACADVER"),
            (1, "AC1009"),
        ]);
        file.pairs(&[
            (9, "$INSUNITS"),
            (70, "4"),
            (9, "$MEASUREMENT"),
            (70, "1"),
            (9, "$EXTMIN"),
        ]);
        file.place(low);
        file.pair(9, "$EXTMAX");
        file.place(high);
        file.pairs(&[(0, "ENDSEC"), (0, "SECTION"), (2, "TABLES")]);
        file.pairs(&[
            (0, "TABLE"),
            (2, "LTYPE"),
            (70, "1"),
            (0, "LTYPE"),
            (2, "CONTINUOUS"),
            (70, "0"),
        ]);
        file.pairs(&[
            (3, "Solid line"),
            (72, "65"),
            (73, "0"),
            (40, "0"),
            (0, "ENDTAB"),
        ]);
        file.pairs(&[(0, "TABLE"), (2, "LAYER"), (70, &LAYERS.len().to_string())]);
        for (name, colour) in LAYERS {
            file.pairs(&[
                (0, "LAYER"),
                (2, name),
                (70, "0"),
                (62, &colour.to_string()),
                (6, "CONTINUOUS"),
            ]);
        }
        file.pairs(&[
            (0, "ENDTAB"),
            (0, "ENDSEC"),
            (0, "SECTION"),
            (2, "ENTITIES"),
        ]);
        file
    }

    fn pair(&mut self, code: u16, value: &str) {
        let _ = write!(self.0, "{code:>3}\r\n{value}\r\n");
    }

    fn pairs(&mut self, pairs: &[(u16, &str)]) {
        for (code, value) in pairs {
            self.pair(*code, value);
        }
    }

    fn place(&mut self, at: [f64; 2]) {
        let [x, y] = at.map(number);
        self.pairs(&[(10, &x), (20, &y), (30, "0")]);
    }

    fn point(&mut self, layer: &str, at: [f64; 2]) {
        self.pairs(&[(0, "POINT"), (8, layer)]);
        self.place(at);
    }

    fn text(&mut self, layer: &str, at: [f64; 2], high: f64, text: &str) {
        self.pairs(&[(0, "TEXT"), (8, layer)]);
        self.place(at);
        self.pairs(&[(40, &number(high)), (1, &escaped(text))]);
    }

    /// A circle where it is one; else a polyline, its arcs as bulges.
    fn outline(&mut self, layer: &str, outline: &Outline) {
        let round = |corner: &Corner| (corner.bulge.abs() - 1.0).abs() < 1e-12;
        let whole = outline.corners.len() == 2 && outline.corners.iter().all(round);
        if let (true, Some(arc)) = (whole, outline.pieces().next().and_then(|piece| piece.arc)) {
            self.pairs(&[(0, "CIRCLE"), (8, layer)]);
            self.place(arc.centre);
            self.pair(40, &number(arc.radius));
            return;
        }
        let closed = if outline.closed { "1" } else { "0" };
        self.pairs(&[(0, "POLYLINE"), (8, layer), (66, "1")]);
        self.place([0.0; 2]);
        self.pair(70, closed);
        for corner in &outline.corners {
            self.pairs(&[(0, "VERTEX"), (8, layer)]);
            self.place(corner.at);
            if corner.bulge != 0.0 {
                // A bulge is no length: nine decimals keep a radius of a metre to the micrometre.
                self.pair(42, &format!("{:.9}", corner.bulge));
            }
        }
        self.pairs(&[(0, "SEQEND"), (8, layer)]);
    }

    fn end(mut self) -> String {
        self.pairs(&[(0, "ENDSEC"), (0, "EOF")]);
        self.0
    }
}

/// A text on one line in ASCII: the three signs that the format has a code for, what looks like a letter of ASCII, and other letters
/// by their numbers.
fn escaped(text: &str) -> String {
    let mut out = String::new();
    for letter in text.chars() {
        match letter {
            'Ø' | '⌀' => out.push_str("%%c"),
            '°' => out.push_str("%%d"),
            '±' => out.push_str("%%p"),
            '×' => out.push('x'),
            '′' => out.push('\''),
            '″' => out.push('"'),
            '−' | '–' | '\u{2011}' => out.push('-'),
            ' '..='~' => out.push(letter),
            _ if letter.is_control() || letter.is_whitespace() => out.push(' '),
            _ => {
                let _ = write!(out, "\\U+{:04X}", letter as u32);
            }
        }
    }
    out
}
