//! The spring from the side, to scale, front to the left.

use super::{figure, name_of, picture, said, told};
use crate::drawings::parts::{
    Fill, Lean, Line, area, circle, dimension, leader, line, polyline, text_on,
};
use crate::drawings::{Drawing, Fit, Paper, Plate, Span};
use crate::state::State;
use crate::words::springs as phrases;
use buildbook::sheets::springs::SpringPicture;
use trade::springs::{LeafKind, LeafShape, Mounting, SpringLie, SpringShape};
use yew::{Html, html};

/// The spring free and under its load.
pub static SIDE: Plate = Plate::new("springs/side", 0.5, side);

/// The spring before and after the work, or before and now.
pub static PLANNED: Plate = Plate::new("springs/planned", 0.4, planned);

/// Radius of an eye as it is drawn, in metres.
const EYE: f64 = 0.014;
/// Half the width of a block as it is drawn, in metres, at least.
const HALF_BLOCK: f64 = 0.045;
/// Pixels kept free for dimensions.
const MARGIN: f64 = 44.0;

/// A spring set on its axle: everything counts from the centre of the axle.
struct Set {
    shape: SpringShape,
    mounting: Mounting,
    pad: f64,
    block: f64,
}

impl Set {
    fn of(picture: &SpringPicture, lie: &SpringLie, block: Option<f64>) -> Self {
        let (pad, own) = picture.seat_m.unwrap_or((0.04, 0.0));
        Self {
            shape: lie.shape(),
            mounting: picture.mounting,
            pad,
            block: block.unwrap_or(own),
        }
    }

    /// Height of the upper face of the main leaf at the seat over the centre of the axle.
    fn lift(&self) -> f64 {
        let middle =
            |face: &[(f64, f64)]| face.iter().map(|p| (p.0.abs(), p.1)).fold(None, nearest);
        match self.mounting {
            Mounting::SpringOverAxle => {
                let last = self
                    .shape
                    .leaves
                    .last()
                    .and_then(|leaf| middle(&leaf.lower));
                self.pad + self.block - last.map_or(0.0, |p| p.1)
            }
            Mounting::SpringUnderAxle => {
                let first = self
                    .shape
                    .leaves
                    .first()
                    .and_then(|leaf| middle(&leaf.upper));
                -self.pad - self.block - first.map_or(0.0, |p| p.1)
            }
        }
    }

    fn lifted(&self, points: &[(f64, f64)]) -> Vec<(f64, f64)> {
        let lift = self.lift();
        points.iter().map(|(x, y)| (*x, y + lift)).collect()
    }

    fn eyes(&self) -> [(f64, f64); 2] {
        let lift = self.lift();
        [self.shape.front_eye, self.shape.rear_eye].map(|(x, y)| (x, y + lift))
    }

    /// Every point that has to find room.
    fn corners(&self) -> Vec<(f64, f64)> {
        let leaves = self.shape.leaves.iter();
        let mut all: Vec<(f64, f64)> = leaves
            .flat_map(|leaf| leaf.upper.iter().chain(&leaf.lower).copied())
            .collect();
        all = self.lifted(&all);
        all.extend(self.eyes());
        all.push((0.0, -self.pad));
        all.push((0.0, self.pad));
        all
    }

    /// The block as a rectangle, when there is one.
    fn block_corners(&self) -> Option<[(f64, f64); 4]> {
        let half = self.shape.half_dead_m.max(HALF_BLOCK);
        let (low, high) = match self.mounting {
            Mounting::SpringOverAxle => (self.pad, self.pad + self.block),
            Mounting::SpringUnderAxle => (-self.pad - self.block, -self.pad),
        };
        (self.block > 0.0).then_some([(-half, low), (half, low), (half, high), (-half, high)])
    }
}

/// The point that lies nearest to the middle.
fn nearest(best: Option<(f64, f64)>, point: (f64, f64)) -> Option<(f64, f64)> {
    match best {
        Some(best) if best.0 <= point.0 => Some(best),
        _ => Some(point),
    }
}

fn round(leaf: &LeafShape) -> Vec<(f64, f64)> {
    leaf.upper
        .iter()
        .chain(leaf.lower.iter().rev())
        .copied()
        .collect()
}

fn fit(paper: &Paper, corners: &[(f64, f64)]) -> Option<Fit> {
    let x = Span::of(corners.iter().map(|p| p.0))?;
    let y = Span::of(corners.iter().map(|p| p.1))?;
    Some(Fit::new(paper, x, y, MARGIN))
}

fn side(state: &State, paper: &Paper) -> Option<Drawing> {
    let picture = picture(state)?;
    let lie = picture.loaded.as_ref().or(picture.free.as_ref())?;
    let set = Set::of(picture, lie, None);
    let free = picture
        .loaded
        .is_some()
        .then_some(picture.free.as_ref())
        .flatten();
    let free = free.map(|lie| Set::of(picture, lie, None));
    let mark = state
        .findings
        .springs
        .sheet
        .springs
        .iter()
        .find(|spring| *spring.id() == *picture.id);
    let mark = mark
        .and_then(|spring| spring.mark.value())
        .map_or(0.0, measure::Quantity::value);
    let [front, rear] = set.eyes();
    let over_axle = set.lift() + set.shape.arch_m;
    let mut corners = set.corners();
    corners.extend(free.iter().flat_map(Set::corners));
    corners.push((front.0, over_axle + mark));
    let pin = picture
        .shackle_m
        .map(|(apart, higher, _)| (front.0 + apart, front.1 + higher));
    corners.extend(pin);
    let highest = corners.iter().map(|p| p.1).fold(over_axle, f64::max);
    let fit = fit(paper, &corners)?;
    let (table, sentence) = told(
        state,
        &[
            "free_arch",
            "arch",
            "height",
            "eyes_free",
            "eyes_loaded",
            "shackle_loaded",
            "pile",
        ],
        &picture.id,
        paper,
    );
    let marks = html! {
        <>
            { free.as_ref().map(|free| ghost(free, &fit)).unwrap_or_default() }
            { solid(&set, &fit, Fill::Leaf) }
            { axle(&set, &fit) }
            { pin.map(|pin| shackle(&fit, pin, rear)).unwrap_or_default() }
            { line(fit.at(front.0, front.1), fit.at(rear.0, rear.1), Line::Centre) }
            { dimensions(state, picture, &set, &fit, over_axle + mark, highest, paper) }
            { free.as_ref().map(|free| {
                let eye = free.eyes()[1];
                text_on(fit.at(eye.0 - 0.03, eye.1 + 0.004), Lean::End, paper.tongue.say(phrases::FREE))
            }).unwrap_or_default() }
        </>
    };
    let name = name_of(state, &picture.id);
    Some(Drawing {
        title: said(paper, phrases::SIDE_TITLE, &name),
        description: said(paper, phrases::SIDE_SAID, &sentence),
        marks,
        table,
    })
}

/// The leaves and eyes, filled.
fn solid(set: &Set, fit: &Fit, fill: Fill) -> Html {
    let leaves = set.shape.leaves.iter();
    let leaves = leaves.map(|leaf| area(&fit.all(&set.lifted(&round(leaf))), fill));
    let eyes = set
        .eyes()
        .map(|(x, y)| circle(fit.at(x, y), EYE * fit.scale, Line::Outline));
    html! { <>{ leaves.collect::<Html>() }{ eyes.into_iter().collect::<Html>() }</> }
}

/// The main leaf's upper face, the lower edge of the pile at the seat, and the eyes, in dashes.
fn ghost(set: &Set, fit: &Fit) -> Html {
    let leaves = &set.shape.leaves;
    let main = leaves.iter().find(|leaf| leaf.kind == LeafKind::Main);
    let main = main.map(|leaf| polyline(&fit.all(&set.lifted(&leaf.upper)), Line::Before));
    let last = leaves
        .last()
        .map(|leaf| polyline(&fit.all(&set.lifted(&leaf.lower)), Line::Before));
    let eyes = set
        .eyes()
        .map(|(x, y)| circle(fit.at(x, y), EYE * fit.scale, Line::Before));
    html! { <>{ main.unwrap_or_default() }{ last.unwrap_or_default() }{ eyes.into_iter().collect::<Html>() }</> }
}

/// How large the axle is drawn: within its pad.
fn axle_radius(set: &Set) -> f64 {
    (set.pad * 0.85).clamp(0.012, 0.06)
}

/// The axle, its pad and the block.
fn axle(set: &Set, fit: &Fit) -> Html {
    let centre = fit.at(0.0, 0.0);
    let radius = axle_radius(set) * fit.scale;
    let block = set
        .block_corners()
        .map(|corners| area(&fit.all(&corners), Fill::Hatched));
    let half = set.shape.half_dead_m.max(HALF_BLOCK);
    let pad = match set.mounting {
        Mounting::SpringOverAxle => set.pad,
        Mounting::SpringUnderAxle => -set.pad,
    };
    let (left, right) = (fit.at(-half, pad), fit.at(half, pad));
    html! {
        <>
            { block.unwrap_or_default() }
            { line(left, right, Line::Outline) }
            { circle(centre, radius, Line::Outline) }
            { line((centre.0 - radius - 8.0, centre.1), (centre.0 + radius + 8.0, centre.1), Line::Centre) }
            { line((centre.0, centre.1 - radius - 8.0), (centre.0, centre.1 + radius + 8.0), Line::Centre) }
        </>
    }
}

/// The shackle from its pin on the frame to the rear eye.
fn shackle(fit: &Fit, pin: (f64, f64), eye: (f64, f64)) -> Html {
    let pin = fit.at(pin.0, pin.1);
    html! {
        <>
            { line(pin, fit.at(eye.0, eye.1), Line::Outline) }
            { circle(pin, 5.0, Line::Outline) }
        </>
    }
}

fn dimensions(
    state: &State,
    picture: &SpringPicture,
    set: &Set,
    fit: &Fit,
    mark: f64,
    highest: f64,
    paper: &Paper,
) -> Html {
    let [front, rear] = set.eyes();
    let lift = set.lift();
    let state_of = if picture.loaded.is_some() {
        "loaded"
    } else {
        "free"
    };
    let arch = if picture.loaded.is_some() {
        "arch"
    } else {
        "free_arch"
    };
    let arch = figure(state, arch, &picture.id, paper);
    let eyes = figure(state, &format!("eyes_{state_of}"), &picture.id, paper);
    let height = figure(state, "height", &picture.id, paper);
    let seat = fit.at(0.0, lift);
    let top = fit.at(0.0, lift + set.shape.arch_m);
    let ends = (fit.at(front.0, front.1), fit.at(rear.0, rear.1));
    // The distance between the eyes stands above all else; what stands below the spring is led up to it.
    let above = ends.0.1.max(ends.1.1) - fit.at(0.0, highest).1 + 22.0;
    let foot = fit.at(0.0, 0.0).1 + axle_radius(set) * fit.scale + 26.0;
    let at = fit.at(front.0 * 0.82, 0.0);
    let marked = fit.at(front.0 * 0.82, mark);
    html! {
        <>
            { eyes.map(|said| dimension(ends.0, ends.1, above, &said)).unwrap_or_default() }
            { arch.map(|said| {
                let words = self::said(paper, phrases::ARCH, &said);
                let start = (seat.0 + 0.3 * (ends.1.0 - seat.0), foot);
                html! {
                    <>
                        { dimension(seat, top, -26.0, "") }
                        { leader((start.0 - 4.0, start.1 - 8.0), (seat.0 + 26.0, (seat.1 + top.1) / 2.0)) }
                        { text_on(start, Lean::Start, &words) }
                    </>
                }
            }).unwrap_or_default() }
            { height.map(|said| html! {
                <>
                    { line((at.0 - 14.0, at.1), fit.at(0.0, 0.0), Line::Fine) }
                    { line((at.0 - 14.0, marked.1), (ends.1.0, marked.1), Line::Fine) }
                    { dimension(at, marked, 1.0, "") }
                    { text_on((at.0 + 8.0, foot), Lean::Start, &said) }
                </>
            }).unwrap_or_default() }
        </>
    }
}

/// Before and after the planned work; without a plan, as it was kept as before and as it is now.
fn planned(state: &State, paper: &Paper) -> Option<Drawing> {
    let picture = picture(state)?;
    let now = picture.loaded.as_ref()?;
    let kept = state.befores.sheet("springs").map(|(_, before)| before);
    let kept = kept.and_then(|before| {
        let pictures = &before.springs.pictures;
        pictures.iter().find(|before| before.id == picture.id)
    });
    let (before, after, phrases) = match (&picture.planned, kept) {
        (Some(planned), _) => (
            Set::of(picture, now, None),
            Set::of(picture, planned, picture.planned_block_m),
            (phrases::PLANNED_TITLE, phrases::PLANNED_SAID),
        ),
        (None, Some(kept)) => (
            Set::of(kept, kept.loaded.as_ref()?, None),
            Set::of(picture, now, None),
            (phrases::BEFORE_TITLE, phrases::BEFORE_SAID),
        ),
        (None, None) => return None,
    };
    let corners: Vec<(f64, f64)> = before
        .corners()
        .into_iter()
        .chain(after.corners())
        .collect();
    let fit = fit(paper, &corners)?;
    let results: &[&str] = if picture.planned.is_some() {
        &[
            "height",
            "height_after",
            "height_change",
            "arch",
            "arch_after",
            "rate_change",
        ]
    } else {
        &["height", "arch", "rate"]
    };
    let (table, sentence) = told(state, results, &picture.id, paper);
    let change = figure(state, "height_change", &picture.id, paper);
    let (low, high) = (
        before.lift() + before.shape.arch_m,
        after.lift() + after.shape.arch_m,
    );
    let marks = html! {
        <>
            { solid(&after, &fit, Fill::Leaf) }
            { ghost(&before, &fit) }
            { axle(&after, &fit) }
            { change.map(|said| dimension(fit.at(0.0, low), fit.at(0.0, high), -30.0, &said)).unwrap_or_default() }
        </>
    };
    let name = name_of(state, &picture.id);
    Some(Drawing {
        title: said(paper, phrases.0, &name),
        description: said(paper, phrases.1, &sentence),
        marks,
        table,
    })
}
