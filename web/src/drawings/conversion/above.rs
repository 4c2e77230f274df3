//! The steering from above: the front of the vehicle up, its left to the left.

use super::{about, compared};
use crate::drawings::parts::{
    Fill, Lean, Line, area, circle, dot, line, outline, polyline, text_on,
};
use crate::drawings::{Drawing, Fit, Labels, Paper, Plate, Point, Span};
use crate::shown::written;
use crate::state::State;
use crate::words::{Phrase, conversion as said, filled};
use ::trade::conversion::Linkage;
use buildbook::sheets::conversion::SetUp;
use yew::{Html, html};

/// Straight ahead: as it was, and on the new side.
pub static ABOVE: Plate = Plate::new("conversion/above", 0.74, above);

/// On full lock, both ways.
pub static LOCK: Plate = Plate::new("conversion/lock", 0.74, lock);

/// A wheel as it is drawn: half its length and half its width, metres.
const WHEEL: (f64, f64) = (0.36, 0.1);

/// What the drawings of a steering share.
struct Scene<'a> {
    state: &'a State,
    fit: Fit,
    /// From the middle to a king pin, and on to the middle of the wheel.
    pin: f64,
    stub: f64,
    /// The track rod's arm: behind the pin (below nought) and inward.
    arm: Option<(f64, f64)>,
}

impl<'a> Scene<'a> {
    fn new(state: &'a State, paper: &Paper) -> Option<Self> {
        let findings = &state.findings.conversion;
        let linkages = findings
            .set_ups
            .iter()
            .filter_map(|set_up| set_up.steering.as_ref().ok());
        let linkages: Vec<Linkage> = linkages
            .map(::trade::conversion::Steering::linkage)
            .collect();
        let sheet = &findings.sheet;
        let first = linkages.first()?;
        let pin = sheet
            .pivots
            .value()
            .map_or(first.pin[1].abs(), |pivots| pivots.value() / 2.0);
        let track = state.findings.vehicle.sheet.track_front.value();
        let stub = track.map_or(0.08, |track| (track.value() / 2.0 - pin).max(0.0));
        let arm = sheet
            .track_arm
            .value()
            .zip(sheet.track_arm_angle.value())
            .map(|(arm, angle)| {
                let (sin, cos) = angle.value().sin_cos();
                let front = sheet.track_rod.value() == Some(&"front");
                let side = if front { 1.0 } else { -1.0 };
                (side * arm.value() * cos, -side * arm.value() * sin)
            });
        let ends = linkages
            .iter()
            .flat_map(|linkage| [linkage.box_at, linkage.ball, linkage.drop_ball(0.0)]);
        let along = Span::of(ends.map(|end| end[0]).chain([-WHEEL.0, WHEEL.0]))?;
        let half = pin + stub + WHEEL.0 * 0.75;
        let across = Span {
            lowest: -half,
            highest: half,
        };
        Some(Self {
            state,
            fit: Fit::new(paper, across, along, 40.0),
            pin,
            stub,
            arm,
        })
    }

    /// A place on the vehicle, forward and to the left, on the paper.
    fn at(&self, x: f64, y: f64) -> Point {
        self.fit.at(-y, x)
    }

    /// A place on a wheel's hub, turned with it: forward and outward of its king pin.
    fn hub(&self, side: f64, steer: f64, forward: f64, outward: f64) -> Point {
        let (sin, cos) = steer.sin_cos();
        let left = side * outward;
        self.at(
            forward * cos - left * sin,
            side * self.pin + forward * sin + left * cos,
        )
    }

    fn wheel(&self, side: f64, steer: f64) -> Vec<Point> {
        let (long, wide) = WHEEL;
        let corners = [(long, -wide), (long, wide), (-long, wide), (-long, -wide)];
        let corner = |(forward, out): (f64, f64)| self.hub(side, steer, forward, self.stub + out);
        corners.into_iter().map(corner).collect()
    }

    /// Axle, wheels and track rod with both wheels turned.
    fn axle(&self, steers: [f64; 2], drawn: Line) -> Html {
        let sides = [1.0, -1.0];
        let wheels = [0, 1].map(|at: usize| outline(&self.wheel(sides[at], steers[at]), drawn));
        let stubs = [0, 1].map(|at: usize| {
            let hub = |out| self.hub(sides[at], steers[at], 0.0, out);
            line(hub(0.0), hub(self.stub), drawn)
        });
        let rod = self.arm.map(|(forward, inward)| {
            let ends = [0, 1].map(|at: usize| {
                self.hub(
                    sides[at],
                    steers[at],
                    forward,
                    -inward.abs() * inward.signum(),
                )
            });
            let arms =
                [0, 1].map(|at: usize| line(self.at(0.0, sides[at] * self.pin), ends[at], drawn));
            html! { <>{ arms.into_iter().collect::<Html>() }{ line(ends[0], ends[1], drawn) }</> }
        });
        html! { <>{ wheels.into_iter().collect::<Html>() }{ stubs.into_iter().collect::<Html>() }{ rod.unwrap_or_default() }</> }
    }

    /// Drop arm, drag link and steering arm at a steer angle.
    fn linkage(&self, linkage: &Linkage, steer: f64, drawn: Line, fill: Fill) -> Html {
        let Some(swing) = linkage.swing(steer) else {
            return html! {};
        };
        let (drop, ball) = (linkage.drop_ball(swing), linkage.arm_ball(steer, 0.0));
        let [shaft, drop, ball] = [linkage.box_at, drop, ball].map(|end| self.at(end[0], end[1]));
        let pin = self.at(linkage.pin[0], linkage.pin[1]);
        html! {
            <>
                { polyline(&[shaft, drop, ball, pin], drawn) }
                { circle(shaft, 11.0, drawn) }
                { dot(drop, fill) }
                { dot(ball, fill) }
            </>
        }
    }

    /// What lies still: the vehicle's middle, the axle's beam, the king pins.
    fn ground(&self, paper: &Paper) -> Html {
        let middle = self.at(0.0, 0.0).0;
        let pins =
            [1.0, -1.0].map(|side| circle(self.at(0.0, side * self.pin), 7.0, Line::Outline));
        html! {
            <>
                { line((middle, 8.0), (middle, paper.height - 8.0), Line::Centre) }
                { line(self.at(0.0, self.pin), self.at(0.0, -self.pin), Line::Outline) }
                { pins.into_iter().collect::<Html>() }
            </>
        }
    }
}

fn linkage_of(set_up: &SetUp) -> Option<Linkage> {
    set_up
        .steering
        .as_ref()
        .ok()
        .map(::trade::conversion::Steering::linkage)
}

fn above(state: &State, paper: &Paper) -> Option<Drawing> {
    let scene = Scene::new(state, paper)?;
    let [was, now] = &scene.state.findings.conversion.set_ups;
    let now_stopped = &now.stopped;
    let mut labels = Labels::new(paper);
    let mut name = |linkage: &Linkage, phrase: Phrase, parts: bool| {
        let [x, y, _] = linkage.box_at;
        labels.add(scene.at(x, y), paper.tongue.say(phrase));
        if parts {
            let (drop, ball) = (linkage.drop_ball(0.0), linkage.ball);
            // Nearer to the box than to the axle: clear of the wheels on a narrow paper.
            let between = |i: usize| drop[i] + (ball[i] - drop[i]) * 0.3;
            let middle = scene.at(between(0), between(1));
            let link = state.findings.result("conversion/link/now");
            let link = link.and_then(|link| link.as_ref().ok());
            let link = link.map_or_else(String::new, |link| written(link, &paper.manner).whole());
            labels.add(middle, format!("{} {link}", paper.tongue.say(said::LINK)));
        }
    };
    let was = linkage_of(was).map(|linkage| {
        name(&linkage, said::WAS, false);
        scene.linkage(&linkage, 0.0, Line::Before, Fill::Before)
    });
    let new = linkage_of(now).map(|linkage| {
        name(&linkage, said::NOW, true);
        scene.linkage(&linkage, 0.0, Line::Now, Fill::Now)
    });
    labels.add((scene.at(0.0, 0.0).0, 14.0), paper.tongue.say(said::AHEAD));
    let wheels = [1.0, -1.0].map(|side| area(&scene.wheel(side, 0.0), Fill::Metal));
    let backwards = now_stopped
        .as_ref()
        .is_some_and(|lack| lack.refusal().is_some());
    let marks = html! {
        <>
            if backwards { { text_on((paper.width / 2.0, paper.height - 14.0), Lean::Middle, paper.tongue.say(said::BACKWARDS)) } }
            { wheels.into_iter().collect::<Html>() }
            { scene.ground(paper) }
            { scene.axle([0.0; 2], Line::Outline) }
            { was.unwrap_or_default() }
            { new.unwrap_or_default() }
            { labels.placed() }
        </>
    };
    let (table, sentence) = compared(
        state,
        &["link", "ratio", "turns", "bump_up", "bump_down"],
        paper,
    );
    Some(Drawing {
        title: paper.tongue.say(said::ABOVE_TITLE).to_owned(),
        description: filled(paper.tongue.say(said::ABOVE_SAID), &[sentence]),
        marks,
        table,
    })
}

fn lock(state: &State, paper: &Paper) -> Option<Drawing> {
    let scene = Scene::new(state, paper)?;
    let now = &scene.state.findings.conversion.set_ups[1];
    let linkage = linkage_of(now).filter(|_| now.stopped.is_none())?;
    let [left, right] = now.locks;
    let ((left_in, left_out), (right_in, right_out)) = (left?, right?);
    let mine = |steers: [f64; 2]| {
        if now.arm_side > 0.0 {
            steers[0]
        } else {
            steers[1]
        }
    };
    let to_left = [left_in, left_out];
    let to_right = [-right_out, -right_in];
    let mut labels = Labels::new(paper);
    let wheels = [1.0, -1.0].map(|side| area(&scene.wheel(side, 0.0), Fill::Metal));
    for (at, side) in [1.0, -1.0].into_iter().enumerate() {
        for steers in [to_left, to_right] {
            let nose = scene.hub(side, steers[at], WHEEL.0, scene.stub);
            labels.add(nose, about(steers[at].abs(), 0.1, paper));
        }
    }
    let marks = html! {
        <>
            { wheels.into_iter().collect::<Html>() }
            { scene.ground(paper) }
            { scene.axle(to_right, Line::Hidden) }
            { scene.linkage(&linkage, mine(to_right), Line::Hidden, Fill::Metal) }
            { scene.axle(to_left, Line::Outline) }
            { scene.linkage(&linkage, mine(to_left), Line::Now, Fill::Now) }
            { labels.placed() }
        </>
    };
    let names = [
        "lock_left",
        "lock_right",
        "circle_left",
        "circle_right",
        "error_left",
        "error_right",
        "ratio_left",
        "ratio_right",
    ];
    let (table, sentence) = compared(state, &names, paper);
    Some(Drawing {
        title: paper.tongue.say(said::LOCK_TITLE).to_owned(),
        description: filled(paper.tongue.say(said::LOCK_SAID), &[sentence]),
        marks,
        table,
    })
}
