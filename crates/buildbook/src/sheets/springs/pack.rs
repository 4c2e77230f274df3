//! From the entries of a spring to the pack of its leaves.

use std::rc::Rc;

use measure::Length;
use trade::springs::{Leaf, LeafKind, Pack, SeatRule, dead_length};

use super::{LeafEntry, SpringEntry};
use crate::{Given, Lack};

/// A pack, and what the sheet knows of its leaves besides.
#[derive(Clone)]
pub(super) struct Built {
    pub pack: Pack,
    /// Thickness when new, leaf by leaf of the pack.
    pub new: Vec<Option<Length>>,
    /// Row of each leaf of the pack.
    pub ids: Vec<Rc<str>>,
}

/// A leaf with its row.
struct Entered<'a> {
    entry: &'a LeafEntry,
    kind: LeafKind,
    leaf: Leaf,
}

/// The kind of each leaf: as chosen, else the first the main leaf and the others graduated.
fn kind_of(entry: &LeafEntry, place: usize) -> LeafKind {
    let chosen = entry.kind.value().and_then(|id| LeafKind::named(id));
    chosen.unwrap_or(if place == 0 {
        LeafKind::Main
    } else {
        LeafKind::Graduated
    })
}

/// A row that was opened and not filled in ends the list.
fn is_blank(entry: &LeafEntry) -> bool {
    entry.kind.is_blank()
        && entry.width.is_blank()
        && entry.thickness.is_blank()
        && entry.length.is_blank()
}

fn rule_of(entry: &SpringEntry) -> SeatRule {
    let chosen = entry.seat_rule.value().and_then(|id| SeatRule::named(id));
    chosen.unwrap_or(SeatRule::Whole)
}

/// The length that does not bend.
pub(super) fn dead_of(entry: &SpringEntry) -> Result<Length, Lack> {
    let clamped = entry.clamped.ask()?;
    if clamped.value() == 0.0 {
        return Ok(Length::exact(0.0));
    }
    Ok(dead_length(clamped, rule_of(entry)))
}

/// Both halves of a leaf from its length and where its centre bolt sits.
struct Halves<'a> {
    /// Share of the main leaf's length that lies ahead of the bolt, where that was measured.
    share: Option<measure::Ratio>,
    /// What is put back to each half of lengths that were taken clear of the seat.
    back: Option<&'a Length>,
}

impl Halves<'_> {
    fn of(&self, length: &Length, front: Option<&Length>) -> (Length, Length) {
        let (front, rear) = match (front, &self.share) {
            (Some(front), _) => (front.clone(), length - front),
            (None, Some(share)) => {
                let front = length * share;
                let rear = length - &front;
                (front, rear)
            }
            (None, None) => {
                let half = length / 2.0;
                (half.clone(), half)
            }
        };
        match self.back {
            None => (front, rear),
            Some(dead) => {
                let half = dead / 2.0;
                (front + &half, rear + half)
            }
        }
    }
}

/// The pack of a spring, or everything it still needs.
pub(super) fn built(entry: &SpringEntry) -> Result<Built, Lack> {
    let modulus = entry.modulus.ask()?.clone();
    let dead = dead_of(entry)?;
    let clear = entry.lengths.value() == Some(&"clear");
    let leaves: Vec<&LeafEntry> = entry
        .leaves
        .iter()
        .enumerate()
        .filter(|(place, leaf)| *place == 0 || !is_blank(leaf))
        .map(|(_, leaf)| leaf)
        .collect();
    let halves = Halves {
        share: main_share(&leaves),
        back: clear.then_some(&dead),
    };
    let mut lack: Option<Lack> = None;
    let mut width: Option<&Given<Length>> = None;
    let mut entered = Vec::new();
    for (place, leaf) in leaves.iter().enumerate() {
        // A blank width is that of the leaf above.
        let own = match width {
            Some(above) if leaf.width.is_blank() => above,
            _ => &leaf.width,
        };
        width = Some(own);
        match one_leaf(leaf, kind_of(leaf, place), own, &halves) {
            Ok(leaf) => entered.push(leaf),
            Err(new) => {
                lack = Some(match lack.take() {
                    Some(old) => old.and(new),
                    None => new,
                });
            }
        }
    }
    if let Some(lack) = lack {
        return Err(lack);
    }
    // Rebound leaves lie on the main leaf, and all others under it.
    measure::sort_by_key(&mut entered, |leaf| match leaf.kind {
        LeafKind::Rebound => 0,
        LeafKind::Main => 1,
        _ => 2,
    });
    let new = entered
        .iter()
        .map(|leaf| leaf.entry.new_thickness.value().cloned())
        .collect();
    let ids = entered
        .iter()
        .map(|leaf| Rc::from(leaf.entry.id()))
        .collect();
    let pack = Pack::new(
        modulus,
        dead,
        entered.into_iter().map(|leaf| leaf.leaf).collect(),
    )?;
    Ok(Built { pack, new, ids })
}

/// Where the centre bolt sits in the main leaf, as a share of its length; none when it was not measured.
fn main_share(leaves: &[&LeafEntry]) -> Option<measure::Ratio> {
    let main = leaves
        .iter()
        .enumerate()
        .find(|(place, leaf)| kind_of(leaf, *place) == LeafKind::Main)?
        .1;
    Some(main.front.value()? / main.length.value()?)
}

fn one_leaf<'a>(
    entry: &'a LeafEntry,
    kind: LeafKind,
    width: &Given<Length>,
    halves: &Halves<'_>,
) -> Result<Entered<'a>, Lack> {
    use crate::All;
    let (width, thickness, length) =
        (width.ask(), entry.thickness.ask(), entry.length.ask()).all()?;
    let own = entry.front.is_bad().then(|| entry.front.ask());
    if let Some(Err(lack)) = own {
        return Err(lack);
    }
    let (front, rear) = halves.of(length, entry.front.value());
    Ok(Entered {
        entry,
        kind,
        leaf: Leaf {
            kind,
            width: width.clone(),
            thickness: thickness.clone(),
            front,
            rear,
            arch: entry.arch.value().cloned(),
            gap: entry.gap.value().cloned(),
        },
    })
}
