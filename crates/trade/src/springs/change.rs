//! What may be done to a spring: leaves as new, one more or one fewer, and the arch or leaf for a wanted height.

use measure::Length;

use super::height::Seat;
use super::leaf::{Leaf, LeafKind, Pack};
use crate::TradeError;

/// The pack with each leaf at the thickness it had when new, where that is known.
///
/// # Errors
/// As [`Pack::new`].
pub fn as_new(pack: &Pack, new_thicknesses: &[Option<Length>]) -> Result<Pack, TradeError> {
    let leaves = pack
        .leaves()
        .iter()
        .zip(new_thicknesses.iter().chain(core::iter::repeat(&None)))
        .map(|(leaf, new)| Leaf {
            thickness: new.clone().unwrap_or_else(|| leaf.thickness.clone()),
            ..leaf.clone()
        })
        .collect();
    pack.with_leaves(leaves)
}

/// The pack without one leaf, counted from 1 at the top of the pile.
///
/// # Errors
/// [`TradeError::NoSuchLeaf`] when there is no leaf of that number; as [`Pack::new`] when it was the main leaf.
pub fn without_leaf(pack: &Pack, number: usize) -> Result<Pack, TradeError> {
    let count = pack.leaves().len();
    if number == 0 || number > count {
        return Err(TradeError::NoSuchLeaf { number, count });
    }
    let leaves = pack
        .leaves()
        .iter()
        .enumerate()
        .filter(|(place, _)| place + 1 != number)
        .map(|(_, leaf)| leaf.clone())
        .collect();
    pack.with_leaves(leaves)
}

/// The pack with one leaf more, in the place that its length gives it.
///
/// # Errors
/// As [`Pack::new`].
pub fn with_leaf(pack: &Pack, leaf: Leaf) -> Result<Pack, TradeError> {
    let mut leaves = pack.leaves().to_vec();
    let longer = |other: &Leaf| {
        other.kind == LeafKind::Rebound
            || other.kind == LeafKind::Main
            || (other.kind != LeafKind::Helper && other.front.value() >= leaf.front.value())
    };
    let place = leaves
        .iter()
        .rposition(longer)
        .map_or(leaves.len(), |place| place + 1);
    leaves.insert(place, leaf);
    pack.with_leaves(leaves)
}

/// Free arch that lets the frame sit at a wanted height: what the seat asks for, plus the travel, plus what settles.
///
/// free arch = arch(H) + δ + settling
///
/// # Units
/// Metres.
/// # Valid range
/// As the height.
/// # Errors
/// None.
/// # Source
/// The height turned round.
#[must_use]
pub fn free_arch_for(
    seat: &Seat,
    eye_line_height: &Length,
    travel: &Length,
    settling: &Length,
) -> Length {
    (seat.arch_for(eye_line_height) + travel + settling).called("free arch")
}

/// Block that puts the frame at a wanted height with the spring as it is; negative when the block must shrink.
///
/// block = sign × (H wanted - H now) + block now
///
/// # Units
/// Metres.
/// # Valid range
/// +1 when the spring lies on the axle, -1 when it hangs under it.
/// # Errors
/// None.
/// # Source
/// The height turned round.
#[must_use]
pub fn block_for(seat: &Seat, height_now: &Length, wanted: &Length) -> Length {
    (&seat.block + (wanted - height_now) * seat.mounting.block_sign()).called("block")
}

/// Thickness of one more leaf, as wide and long as a given one, that lifts the frame to a wanted height.
///
/// lift = travel now - travel with the leaf, and the leaf's own thickness where the spring lies on the axle
///
/// # Units
/// Metres.
/// # Valid range
/// Lifts only, within what a leaf of 3 to 30 mm gives. The travel of a pack is told by whatever the height rests on.
/// # Errors
/// [`TradeError::Measure`] when no such leaf reaches the height; as [`Pack::new`] when the leaf cannot be.
/// # Source
/// The travel and the height, solved for the thickness.
pub fn leaf_thickness_for(
    pack: &Pack,
    like: &Leaf,
    travel: &dyn Fn(&Pack) -> Result<Length, TradeError>,
    lift: &Length,
    mounting: super::Mounting,
) -> Result<Length, TradeError> {
    let now = travel(pack)?;
    let grows = match mounting {
        super::Mounting::SpringOverAxle => 1.0,
        super::Mounting::SpringUnderAxle => 0.0,
    };
    let after = |thickness: &Length| {
        let extra = Leaf {
            thickness: thickness.clone(),
            kind: LeafKind::Graduated,
            arch: None,
            gap: None,
            ..like.clone()
        };
        travel(&with_leaf(pack, extra)?)
    };
    // A leaf that the seat swallows whole is refused in one sentence rather than at every thickness.
    after(&Length::exact(0.003))?;
    let thickness = Length::root("t", 0.003, 0.030, |thickness| {
        let after = after(thickness).unwrap_or_else(|_| now.clone());
        &now - after + thickness * grows - lift
    })?;
    Ok(thickness)
}
