//! How a drawing is shared out over pages, and what each page carries.

use super::bars::{LEFT, MAP, TEXTS, foot, foot_height};
use super::drawing::drawing;
use super::ink::{Ink, Pen, around, overlap, rectangle};
use super::sheet::Lay;
use super::{Labels, Template};

/// A size of paper, upright, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Paper {
    /// Its width.
    pub width: f64,
    /// Its height.
    pub height: f64,
}

/// A4: 210 mm by 297 mm (ISO 216:2007).
pub const A4: Paper = Paper {
    width: 210.0,
    height: 297.0,
};
/// Letter: 8 1/2 in by 11 in (ANSI/ASME Y14.1, size A).
pub const LETTER: Paper = Paper {
    width: 215.9,
    height: 279.4,
};

/// What no printer reaches, millimetres from each edge. Common practice, no source.
const EDGE: f64 = 8.0;
/// Pages beyond this are refused: that is work for a plotter.
const MOST: usize = 60;

/// How the room that is left over is shared out to both sides, the middle first.
const SHARES: [f64; 5] = [0.5, 0.25, 0.75, 0.0, 1.0];

/// A drawing shared out over pages. Everything on a page is drawn larger by the correction along and up the paper.
#[derive(Debug, Clone)]
pub struct Pages {
    /// The size of a page as it is printed, millimetres: upright, or on its side where that takes fewer.
    pub size: [f64; 2],
    /// Pages side by side, and one above the other, with those that are left out.
    pub count: [usize; 2],
    /// How far two neighbours show the same, millimetres.
    pub overlap: f64,
    /// By how much the print comes out too small, along and up.
    pub correction: [f64; 2],
    /// What a page shows of the pattern, millimetres.
    pub shows: [f64; 2],
    /// Which pages are printed, counted from the upper left along the rows: one with nothing on it is left out where the others join
    /// without it.
    printed: Vec<usize>,
    ink: Vec<Ink>,
    low: [f64; 2],
    /// The lower left corner of what shows the pattern, millimetres of paper.
    corner: [f64; 2],
}

/// Shares a template out over pages: upright or on its side, and shifted on them, as takes the fewest; upright and in the middle
/// where all take as many.
///
/// `overlap_m` is how far neighbouring pages show the same, metres; `correction` is what the printer must be given to print true:
/// 100 mm over what its bar of 100 mm measures, along and up the paper.
///
/// None where there is nothing to draw, or where it would take more than sixty pages.
#[must_use]
pub fn pages(
    template: &Template,
    labels: &Labels,
    paper: Paper,
    overlap_m: f64,
    correction: [f64; 2],
) -> Option<Pages> {
    let [behind, own] = drawing(template, labels);
    let needed: Vec<[[f64; 2]; 2]> = own.iter().map(Ink::bounds).collect();
    let lay = Lay::of(template);
    let edges = template.edges.iter().flatten();
    let edges = edges.map(|at| [lay.place(*at); 2]);
    let [low, high] = needed.iter().copied().chain(edges).reduce(around)?;
    let overlap = overlap_m * 1e3;
    // Room for the lines' own width, and for a foot that is never broken.
    let (low, high) = (low.map(|at| at - 2.0), high.map(|at| at + 2.0));
    // The name of a page is no longer than this.
    let name = format!("{} AA60 (60/60)", labels.page);
    let foot = [LEFT, foot_height(template, labels, &name)];
    let corner = [0, 1].map(|axis| EDGE + foot[axis] * correction[axis]);
    let shared = |size: [f64; 2]| {
        let room = [size[0] - corner[0] - EDGE, size[1] - corner[1] - EDGE];
        let shows = [room[0] / correction[0], room[1] / correction[1]];
        let step = shows.map(|shows| shows - overlap);
        let count = [0, 1].map(|axis| {
            ((high[axis] - low[axis] - overlap) / step[axis])
                .ceil()
                .max(1.0)
        });
        let fits = (0..2).all(|axis| step[axis] > overlap && count[axis] <= MOST as f64);
        let count = count.map(|count| count as usize);
        (fits && count[0] * count[1] <= MOST).then_some(Pages {
            size,
            count,
            overlap,
            correction,
            shows,
            printed: Vec::new(),
            ink: Vec::new(),
            low,
            corner,
        })
    };
    let sizes = [[paper.width, paper.height], [paper.height, paper.width]];
    let mut fewest: Option<Pages> = None;
    for pages in sizes.into_iter().filter_map(shared) {
        // What is left over goes half to both sides, or more to one of them.
        let over = [0, 1].map(|axis| {
            let steps = (pages.count[axis] - 1) as f64 * pages.step(axis);
            pages.shows[axis] + steps - (high[axis] - low[axis])
        });
        for share in SHARES.into_iter().flat_map(|x| SHARES.map(|y| [x, y])) {
            let low = [0, 1].map(|axis| low[axis] - share[axis] * over[axis]);
            let mut pages = Pages {
                low,
                ..pages.clone()
            };
            pages.printed = pages.needed(&needed);
            if fewest
                .as_ref()
                .is_none_or(|fewest| pages.printed.len() < fewest.printed.len())
            {
                fewest = Some(pages);
            }
        }
    }
    Some(Pages {
        ink: [behind, own].concat(),
        ..fewest?
    })
}

impl Pages {
    /// From one page's edge to the next one's, millimetres of the pattern.
    fn step(&self, axis: usize) -> f64 {
        self.shows[axis] - self.overlap
    }

    /// A page by its column and its row, both counted from the lower left.
    fn cell(&self, [column, row]: [usize; 2]) -> usize {
        column + (self.count[1] - 1 - row) * self.count[0]
    }

    /// The pages that show these boxes, each as far as the middle of its overlaps, and those that it takes to join them.
    fn needed(&self, boxes: &[[[f64; 2]; 2]]) -> Vec<usize> {
        let mut shows = vec![false; self.count[0] * self.count[1]];
        let over = |at: f64, axis: usize| {
            let steps = ((at - self.low[axis] - self.overlap / 2.0) / self.step(axis)).floor();
            (steps.max(0.0) as usize).min(self.count[axis] - 1)
        };
        for [low, high] in boxes {
            for column in over(low[0], 0)..=over(high[0], 0) {
                for row in over(low[1], 1)..=over(high[1], 1) {
                    shows[self.cell([column, row])] = true;
                }
            }
        }
        let mut printed = vec![true; shows.len()];
        for (page, shows) in shows.iter().enumerate() {
            printed[page] = *shows;
            printed[page] = *shows || !joined(&printed, self.count[0]);
        }
        (0..printed.len()).filter(|page| printed[*page]).collect()
    }
}

/// Whether every one of these pages can be reached from every other, side by side.
fn joined(printed: &[bool], wide: usize) -> bool {
    let mut reached = vec![false; printed.len()];
    let mut waiting: Vec<usize> = printed.iter().position(|page| *page).into_iter().collect();
    while let Some(page) = waiting.pop() {
        if std::mem::replace(&mut reached[page], true) {
            continue;
        }
        let beside = [
            (page % wide > 0).then(|| page - 1),
            ((page + 1) % wide > 0).then_some(page + 1),
            page.checked_sub(wide),
            Some(page + wide),
        ];
        let beside = beside.into_iter().flatten();
        waiting.extend(beside.filter(|page| printed.get(*page) == Some(&true)));
    }
    reached == printed
}

/// One page: what is clipped to its part of the pattern, and what stands around it.
pub(super) struct Page {
    /// The part of the paper that shows the pattern, millimetres of paper.
    pub(super) window: [[f64; 2]; 2],
    /// Where a place of the pattern comes to on the paper: factor, then shift, along and up.
    pub(super) scale: [f64; 2],
    pub(super) shift: [f64; 2],
    /// The pattern, in its own millimetres.
    pub(super) inside: Vec<Ink>,
    /// The foot, in millimetres about the paper's lower left corner, scaled like the pattern about its own corner.
    pub(super) around: Vec<Ink>,
}

impl Pages {
    /// How many pages are printed.
    #[must_use]
    pub fn total(&self) -> usize {
        self.printed.len()
    }

    /// The name of a page: its column by letter, from the left, and its row by number, from the top.
    #[must_use]
    pub fn name(&self, which: usize) -> String {
        let page = self.printed[which];
        let (column, row) = (page % self.count[0], page / self.count[0]);
        // Sixty pages at most: beyond Z the alphabet begins again, doubled.
        let letter = char::from(b'A' + (column % 26) as u8);
        let doubled = if column < 26 { "" } else { "A" };
        format!("{doubled}{letter}{}", row + 1)
    }

    /// The lowest place that a page shows, in millimetres of the pattern.
    fn low_of(&self, which: usize) -> [f64; 2] {
        let page = self.printed[which];
        let place = [
            page % self.count[0],
            self.count[1] - 1 - page / self.count[0],
        ];
        [0, 1].map(|axis| self.low[axis] + place[axis] as f64 * self.step(axis))
    }

    /// Where a place of the pattern, millimetres with UP at the top, comes to lie on a page: millimetres from its lower left corner.
    /// None where the page does not show it.
    #[must_use]
    pub fn place_on(&self, which: usize, at: [f64; 2]) -> Option<[f64; 2]> {
        let low = self.low_of(which);
        let inside =
            (0..2).all(|axis| at[axis] >= low[axis] && at[axis] <= low[axis] + self.shows[axis]);
        let corner = self.corner;
        inside.then(|| {
            [0, 1].map(|axis| corner[axis] + (at[axis] - low[axis]) * self.correction[axis])
        })
    }

    /// A page, counted from the upper left along the rows.
    pub(super) fn page(&self, which: usize, template: &Template, labels: &Labels) -> Page {
        let low = self.low_of(which);
        let corner = self.corner;
        let window = [corner, [self.size[0] - EDGE, self.size[1] - EDGE]];
        let mine = [low, [low[0] + self.shows[0], low[1] + self.shows[1]]];
        let mut inside: Vec<Ink> = self
            .ink
            .iter()
            .filter(|ink| overlap(ink.bounds(), mine))
            .cloned()
            .collect();
        inside.extend(
            self.seams()
                .into_iter()
                .filter(|ink| overlap(ink.bounds(), mine)),
        );
        let mut name = format!("{} {}", labels.page, self.name(which));
        if self.total() > 1 {
            name = format!("{name} ({}/{})", which + 1, self.total());
        }
        let mut around = foot([0.0; 2], template, labels, &name);
        around.extend(self.map(which));
        Page {
            window,
            scale: self.correction,
            shift: [0, 1].map(|axis| corner[axis] - low[axis] * self.correction[axis]),
            inside,
            around,
        }
    }

    /// Where the foot's lower left corner lies on the paper.
    pub(super) fn foot_at() -> [f64; 2] {
        [EDGE; 2]
    }

    /// Where pages join: a dashed line in the middle of each overlap, with two register marks a page on it, numbered.
    fn seams(&self) -> Vec<Ink> {
        let mut ink = Vec::new();
        let radius = 3.0_f64.min(self.overlap / 2.0 - 1.0).max(1.0);
        let mut number = 0;
        for axis in 0..2 {
            let other = 1 - axis;
            let step = [0, 1].map(|axis| self.step(axis));
            for seam in 1..self.count[axis] {
                let middle = self.low[axis] + seam as f64 * step[axis] + self.overlap / 2.0;
                let at = |along: f64| {
                    if axis == 0 {
                        [middle, along]
                    } else {
                        [along, middle]
                    }
                };
                for page in 0..self.count[other] {
                    let beside = [seam - 1, seam].map(|at| {
                        let mut place = [page; 2];
                        place[axis] = at;
                        self.cell(place)
                    });
                    if !beside.iter().all(|page| self.printed.contains(page)) {
                        continue;
                    }
                    let low = self.low[other] + page as f64 * step[other];
                    let ends = [low, low + step[other]].map(|end| end + self.overlap / 2.0);
                    ink.push(Ink::line(Pen::Dashed, at(ends[0]), at(ends[1])));
                    let place = |share: f64| at(low + share * self.shows[other]);
                    // Near each end, where it covers nothing that is marked.
                    for shares in [[0.2, 0.12, 0.28, 0.36], [0.8, 0.88, 0.72, 0.64]] {
                        number += 1;
                        let clear = |share: &f64| {
                            let mark = register(place(*share), radius, number);
                            mark.into_iter().all(|part| !self.covers(part.bounds()))
                        };
                        let share = shares.into_iter().find(clear).unwrap_or(shares[0]);
                        ink.extend(register(place(share), radius, number));
                    }
                }
            }
        }
        ink
    }

    /// Whether a name or an outline of the pattern lies in a box; lines that run across it do not count.
    fn covers(&self, mine: [[f64; 2]; 2]) -> bool {
        self.ink.iter().any(|ink| match ink {
            Ink::Line(Pen::Outline | Pen::Faint, outline) if outline.closed => {
                overlap(outline.bounds(), mine)
            }
            Ink::Text { .. } => overlap(ink.bounds(), mine),
            _ => false,
        })
    }

    /// The map of the pages, this one filled, the pattern small upon it.
    fn map(&self, which: usize) -> Vec<Ink> {
        let whole =
            [0, 1].map(|axis| self.shows[axis] + (self.count[axis] - 1) as f64 * self.step(axis));
        let left = LEFT + TEXTS + 8.0;
        let room = [self.size[0] - 2.0 * EDGE - left, MAP];
        let scale = (room[0] / whole[0]).min(room[1] / whole[1]);
        let place = |at: [f64; 2]| {
            [
                left + (at[0] - self.low[0]) * scale,
                1.0 + (at[1] - self.low[1]) * scale,
            ]
        };
        let mut ink = Vec::new();
        for page in (0..self.total())
            .filter(|page| *page != which)
            .chain([which])
        {
            let low = self.low_of(page);
            let cell = rectangle(
                place(low),
                place([low[0] + self.shows[0], low[1] + self.shows[1]]),
            );
            if page == which {
                ink.push(Ink::Area(0.75, cell.clone()));
            }
            ink.push(Ink::Line(Pen::Thin, cell));
        }
        for line in &self.ink {
            if let Ink::Line(Pen::Outline | Pen::Faint, outline) = line {
                let mut small = outline.clone();
                for corner in &mut small.corners {
                    corner.at = place(corner.at);
                }
                ink.push(Ink::Line(Pen::Thin, small));
            }
        }
        for page in 0..self.total() {
            let low = self.low_of(page);
            let at = place([low[0], low[1] + self.shows[1]]);
            ink.push(Ink::text([at[0] + 0.6, at[1] - 2.2], 2.0, self.name(page)));
        }
        ink
    }
}

/// A register mark: a circle and a cross, with a number that its twin on the next page bears too.
fn register(at: [f64; 2], radius: f64, number: usize) -> Vec<Ink> {
    let reach = radius + 2.0;
    vec![
        Ink::circle(Pen::Thin, at, radius),
        Ink::line(Pen::Thin, [at[0] - reach, at[1]], [at[0] + reach, at[1]]),
        Ink::line(Pen::Thin, [at[0], at[1] - reach], [at[0], at[1] + reach]),
        Ink::text(
            [at[0] + 0.7 * radius + 0.8, at[1] + 0.7 * radius + 0.8],
            2.4,
            number.to_string(),
        ),
    ]
}
