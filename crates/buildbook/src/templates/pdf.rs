//! The pages as a PDF file: plain ASCII, lines and arcs as curves, texts in the standard fonts.

use std::fmt::Write;

use trade::marking::{Outline, Piece};

use super::ink::Ink;
use super::pages::Page;
use super::{INCH, Labels, Pages, Template, number};

/// The pages of a template as a PDF file (ISO 32000-1, version 1.4).
///
/// Every page is scaled to millimetres once; coordinates in the file are millimetres of paper.
#[must_use]
pub fn pdf(pages: &Pages, template: &Template, labels: &Labels) -> String {
    let total = pages.total();
    let mut file = File {
        text: String::from("%PDF-1.4\n"),
        starts: Vec::new(),
    };
    let kids: Vec<String> = (0..total)
        .map(|page| format!("{} 0 R", 5 + 2 * page))
        .collect();
    file.object("<< /Type /Catalog /Pages 2 0 R /ViewerPreferences << /PrintScaling /None >> >>");
    file.object(&format!(
        "<< /Type /Pages /Count {total} /Kids [{}] >>",
        kids.join(" ")
    ));
    for font in ["Helvetica", "Helvetica-Bold"] {
        file.object(&format!(
            "<< /Type /Font /Subtype /Type1 /BaseFont /{font} /Encoding /WinAnsiEncoding >>"
        ));
    }
    let point = 72.0 / INCH;
    let [width, height] = pages.size.map(|side| number(side * point));
    for which in 0..total {
        file.object(&format!(
            "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 {width} {height}] /Contents {} 0 R \
             /Resources << /Font << /F 3 0 R /B 4 0 R >> >> >>",
            6 + 2 * which
        ));
        let content = content(&pages.page(which, template, labels), point);
        file.object(&format!(
            "<< /Length {} >>\nstream\n{content}endstream",
            content.len()
        ));
    }
    file.end()
}

/// The file as far as it is written, and where its objects begin.
struct File {
    text: String,
    starts: Vec<usize>,
}

impl File {
    fn object(&mut self, body: &str) {
        self.starts.push(self.text.len());
        let _ = write!(self.text, "{} 0 obj\n{body}\nendobj\n", self.starts.len());
    }

    fn end(mut self) -> String {
        let (table, count) = (self.text.len(), self.starts.len() + 1);
        let _ = write!(self.text, "xref\n0 {count}\n0000000000 65535 f \n");
        for start in &self.starts {
            // An entry of the table is twenty bytes long, the space before the line's end among them.
            let _ = writeln!(self.text, "{start:010} 00000 n ");
        }
        let _ = write!(
            self.text,
            "trailer\n<< /Size {count} /Root 1 0 R >>\nstartxref\n{table}\n%%EOF\n"
        );
        self.text
    }
}

/// The content of a page.
fn content(page: &Page, point: f64) -> String {
    let mut text = format!("q {point:.9} 0 0 {point:.9} 0 0 cm 1 J 1 j\n");
    let [low, high] = page.window;
    let _ = writeln!(
        text,
        "q {} {} {} {} re W n",
        number(low[0]),
        number(low[1]),
        number(high[0] - low[0]),
        number(high[1] - low[1])
    );
    let there = |at: [f64; 2]| [0, 1].map(|axis| page.shift[axis] + page.scale[axis] * at[axis]);
    for ink in &page.inside {
        write_ink(&mut text, ink, &there);
    }
    text.push_str("Q\n");
    write_ink(
        &mut text,
        &Ink::frame(super::ink::Pen::Thin, low, high),
        &|at| at,
    );
    // The bars are corrected like the pattern: they are what the correction is checked by.
    let foot = Pages::foot_at();
    for ink in &page.around {
        write_ink(&mut text, ink, &|at| {
            [0, 1].map(|axis| foot[axis] + page.scale[axis] * at[axis])
        });
    }
    text.push_str("Q\n");
    text
}

fn write_ink(out: &mut String, ink: &Ink, there: &dyn Fn([f64; 2]) -> [f64; 2]) {
    match ink {
        Ink::Line(pen, outline) => {
            let (width, dashes, grey) = pen.look();
            let dashes: Vec<String> = dashes.iter().map(|dash| number(*dash)).collect();
            let _ = writeln!(
                out,
                "{} w [{}] 0 d {} G",
                number(width),
                dashes.join(" "),
                number(grey)
            );
            path(out, outline, there);
            out.push_str("S\n");
        }
        Ink::Area(grey, outline) => {
            let _ = writeln!(out, "{} g", number(*grey));
            path(out, outline, there);
            out.push_str("f\n");
        }
        Ink::Text {
            at,
            high,
            turn,
            bold,
            text,
        } => {
            let [x, y] = there(*at).map(number);
            let (sin, cos) = turn.sin_cos();
            let [c, s, back] = [cos, sin, -sin].map(number);
            let font = if *bold { 'B' } else { 'F' };
            let _ = writeln!(
                out,
                "BT 0 g /{font} {} Tf {c} {s} {back} {c} {x} {y} Tm ({}) Tj ET",
                number(*high),
                escaped(text)
            );
        }
    }
}

/// An outline's lines and curves; an arc becomes cubic curves of a quarter of a circle at most, 0.03 % of the radius off at worst.
fn path(out: &mut String, outline: &Outline, there: &dyn Fn([f64; 2]) -> [f64; 2]) {
    let mut first = true;
    for Piece { from, to, arc } in outline.pieces() {
        if first {
            let [x, y] = there(from).map(number);
            let _ = writeln!(out, "{x} {y} m");
            first = false;
        }
        let Some(arc) = arc else {
            let [x, y] = there(to).map(number);
            let _ = writeln!(out, "{x} {y} l");
            continue;
        };
        let parts = (arc.sweep.abs() / std::f64::consts::FRAC_PI_2 - 1e-9)
            .ceil()
            .max(1.0);
        let step = arc.sweep / parts;
        // The control points lie so far along the tangents that the curve's middle lies on the arc.
        let handle = 4.0 / 3.0 * (step / 4.0).tan() * arc.radius;
        for i in 0..parts as usize {
            let (a, b) = (
                arc.start + i as f64 * step,
                arc.start + (i + 1) as f64 * step,
            );
            let (p, q) = (arc.point(a), arc.point(b));
            let near = there([p[0] - handle * a.sin(), p[1] + handle * a.cos()]).map(number);
            let far = there([q[0] + handle * b.sin(), q[1] - handle * b.cos()]).map(number);
            let end = there(q).map(number);
            let _ = writeln!(
                out,
                "{} {} {} {} {} {} c",
                near[0], near[1], far[0], far[1], end[0], end[1]
            );
        }
    }
    if outline.closed {
        out.push_str("h\n");
    }
}

/// A text as the standard fonts encode it (WinAnsiEncoding, ISO 32000-1 annex D); what they lack is a question mark.
fn escaped(text: &str) -> String {
    let mut out = String::new();
    for letter in text.chars() {
        match letter {
            '(' | ')' | '\\' => {
                out.push('\\');
                out.push(letter);
            }
            ' '..='~' => out.push(letter),
            _ => {
                let code = match letter {
                    '\u{a0}'..='\u{ff}' => letter as u32,
                    '–' => 0o226,
                    '—' => 0o227,
                    '‘' => 0o221,
                    '’' => 0o222,
                    '“' => 0o223,
                    '”' => 0o224,
                    '′' => u32::from(b'\''),
                    '″' => u32::from(b'"'),
                    '−' | '\u{2010}' | '\u{2011}' => u32::from(b'-'),
                    '\u{202f}' | '\u{2009}' => u32::from(b' '),
                    'Š' => 0o212,
                    'š' => 0o232,
                    'Ž' => 0o216,
                    'ž' => 0o236,
                    'Œ' => 0o214,
                    'œ' => 0o234,
                    '€' => 0o200,
                    _ => u32::from(b'?'),
                };
                let _ = write!(out, "\\{code:03o}");
            }
        }
    }
    out
}
