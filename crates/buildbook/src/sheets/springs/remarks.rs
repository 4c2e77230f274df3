//! What is to be known beside the results of springs.

use measure::Kind;
use trade::springs::LeafKind;

use super::one::Spring;
use crate::key::joined;
use crate::{Found, Key, Lack, Rank, Remark};
use ::trade::TradeError;

/// The methods are said to differ from this share on.
const DIFFER: f64 = 0.10;
/// A leaf is said to be close to its stress from this share of it on.
const CLOSE: f64 = 0.95;
/// A leaf is said to be badly worn below this share of its new thickness.
const WORN: f64 = 0.92;
/// Tallest block that no remark is made on.
const TALL_BLOCK_M: f64 = 0.075;
/// A shackle is said to lie down from this lean on.
const LYING_RAD: f64 = 0.785;

/// The cautions that always stand, and those that the entries call for.
pub(super) fn remark(springs: &[Spring], found: &mut Found) {
    for (rank, fact) in [
        (Rank::Danger, "stored_energy"),
        (Rank::Warning, "never_weld_or_heat"),
        (Rank::Warning, "full_drop"),
        (Rank::Warning, "new_u_bolts"),
        (Rank::Remark, "replace_in_pairs"),
    ] {
        found.remark(Remark::standing(rank, fact));
    }
    for spring in springs {
        refusals(spring, found);
        leaves(spring, found);
        stresses(spring, found);
        stance(spring, found);
        blocks(spring, found);
    }
}

/// Leaves that cannot exist, points that no spring gives: said at the entry.
fn refusals(spring: &Spring, found: &mut Found) {
    let last = spring.entry.points.last();
    let press = spring.press.as_ref().err().and_then(Lack::refusal);
    if let (Some(error @ TradeError::PressFalls), Some(last)) = (press, last) {
        let at = if last.load.is_blank() {
            last.pressure.key()
        } else {
            last.load.key()
        };
        found.errors.push((at.clone(), error.clone().into()));
    }
    let after = spring
        .plan
        .as_ref()
        .and_then(|plan| plan.built.as_ref().err());
    if let Some(error @ TradeError::NoSuchLeaf { .. }) = after.and_then(Lack::refusal) {
        let at = spring.entry.plan_remove.key().clone();
        found.errors.push((at, error.clone().into()));
    }
    let refusal = spring.built.as_ref().err().and_then(Lack::refusal);
    let Some(error) = refusal else {
        let line = spring.line.as_ref().err().and_then(Lack::refusal);
        if let Some(TradeError::HelperWithoutGap { .. }) = line {
            let helper = helper_key(spring);
            found.remark(Remark::new(Rank::Warning, "helper_without_gap").at(helper));
        }
        return;
    };
    let list = spring.entry.key.under("leaves");
    let (fact, key) = match error {
        TradeError::NoMainLeaf => ("no_main_leaf", list),
        TradeError::LeafWithinSeat { .. } => {
            ("leaf_within_seat", shortest_leaf(spring).unwrap_or(list))
        }
        _ => ("leaf_has_no_body", list),
    };
    found.remark(Remark::new(Rank::Warning, fact).at(key));
}

/// The length of the shortest leaf: the one that a seat swallows first.
fn shortest_leaf(spring: &Spring) -> Option<Key> {
    spring
        .entry
        .leaves
        .iter()
        .filter_map(|leaf| Some((leaf.length.value()?.value(), leaf.length.key())))
        .min_by(|one, other| one.0.total_cmp(&other.0))
        .map(|(_, key)| key.clone())
}

fn helper_key(spring: &Spring) -> Key {
    spring
        .entry
        .leaves
        .iter()
        .find(|leaf| leaf.kind.value() == Some(&"helper"))
        .map_or_else(
            || spring.entry.key.under("leaves"),
            |leaf| leaf.gap.key().clone(),
        )
}

fn leaves(spring: &Spring, found: &mut Found) {
    let entry = &spring.entry;
    for leaf in &entry.leaves {
        if let (Some(now), Some(new)) = (leaf.thickness.value(), leaf.new_thickness.value()) {
            let left = now.value() / new.value();
            if left > 1.0 + 1e-9 {
                let remark = Remark::new(Rank::Caution, "thicker_than_new");
                found.remark(remark.at(leaf.new_thickness.key().clone()));
            } else if left < WORN {
                let share = (now / new).figure(Kind::Percent);
                let remark = Remark::new(Rank::Caution, "badly_worn").with(share);
                found.remark(remark.at(leaf.thickness.key().clone()));
            }
        }
    }
    let Ok(built) = &spring.built else { return };
    let main = built.pack.main();
    let whole = |leaf: &trade::springs::Leaf| (&leaf.front + &leaf.rear).value();
    let mains = built
        .pack
        .leaves()
        .iter()
        .filter(|leaf| leaf.kind == LeafKind::Main)
        .count();
    if mains > 1 {
        found.remark(Remark::new(Rank::Caution, "two_main_leaves").at(entry.key.under("leaves")));
    }
    for (leaf, id) in built.pack.leaves().iter().zip(&built.ids) {
        if leaf.kind == LeafKind::Main || whole(leaf) <= whole(main) + 1e-6 {
            continue;
        }
        let key = entry.key.under("leaves").under(id).under("length");
        let (rank, fact) = match leaf.kind {
            LeafKind::Wrapper => (Rank::Remark, "wrapper_longer"),
            _ => (Rank::Caution, "longer_than_main"),
        };
        found.remark(Remark::new(rank, fact).at(key));
    }
    if let Some(Ok(differ)) = found
        .result(&joined(&["springs/methods_differ", &spring.id]))
        .cloned()
        && differ.value().abs() > DIFFER
    {
        found.remark(
            Remark::new(Rank::Remark, "methods_differ")
                .at(entry.key.under("leaves"))
                .with(differ),
        );
    }
}

/// The leaf that stands closest to what its steel may bear, under the load and at bump: one remark each.
fn stresses(spring: &Spring, found: &mut Found) {
    let Ok(built) = &spring.built else { return };
    for (result, over, close) in [
        ("used", "overstressed", "near_its_stress"),
        (
            "used_bump",
            "overstressed_at_bump",
            "near_its_stress_at_bump",
        ),
    ] {
        let worst = built
            .ids
            .iter()
            .enumerate()
            .filter_map(|(place, id)| {
                let name = joined(&["springs", result, &spring.id, id]);
                Some((place, id, found.figure(&name)?.clone()))
            })
            .max_by(|one, other| one.2.value().total_cmp(&other.2.value()));
        let Some((place, id, used)) = worst else {
            continue;
        };
        let (rank, fact) = match used.value() {
            share if share > 1.0 => (Rank::Warning, over),
            share if share > CLOSE => (Rank::Caution, close),
            _ => continue,
        };
        let key = spring
            .entry
            .key
            .under("leaves")
            .under(id)
            .under("thickness");
        found.remark(
            Remark::new(rank, fact)
                .at(key)
                .with(used)
                .naming((place + 1).to_string()),
        );
    }
    leaf_by_leaf(spring, &built.ids, found);
}

/// The leaf that the load overstresses leaf by leaf, where the handbook, in which all share one curve, finds none.
fn leaf_by_leaf(spring: &Spring, ids: &[std::rc::Rc<str>], found: &mut Found) {
    let of = |result: &str, id: &str| {
        let name = joined(&["springs", result, &spring.id, id]);
        found.figure(&name).cloned()
    };
    let by_handbook = ids.iter().filter_map(|id| of("used", id));
    if by_handbook.fold(0.0, |most, used| used.value().max(most)) > 1.0 {
        return;
    }
    let Some(allowed) = found.figure(&joined(&["springs/allowed", &spring.id])) else {
        return;
    };
    let worst = ids
        .iter()
        .enumerate()
        .filter_map(|(place, id)| Some((place, id, of("stress_beam", id)?)))
        .max_by(|one, other| one.2.value().total_cmp(&other.2.value()));
    let Some((place, id, stress)) = worst.filter(|(.., stress)| stress.value() > allowed.value())
    else {
        return;
    };
    let key = spring.entry.key.under("leaves").under(id).under("arch");
    let remark = Remark::new(Rank::Caution, "overstressed_leaf_by_leaf").at(key);
    let remark = remark.with(stress).with(allowed.clone());
    found.remark(remark.naming((place + 1).to_string()));
}

fn stance(spring: &Spring, found: &mut Found) {
    let row = &spring.id;
    let key = |field: &str| spring.entry.key.under(field);
    if let Ok(stand) = &spring.stand {
        if stand.arch.value() < 0.0 {
            let arch = stand.arch.figure(Kind::Length);
            found.remark(
                Remark::new(Rank::Remark, "reversed")
                    .at(key("free_arch"))
                    .with(arch),
            );
        }
        if let Some(step) = &stand.line.helper
            && let Ok(load) = &spring.load
            && load.value() > step.load.value()
        {
            let touch = step.load.figure(Kind::Force);
            let remark = Remark::new(Rank::Remark, "helper_bears");
            found.remark(remark.at(key("leaves")).with(touch));
        }
    }
    let shackle = found.refusal(&joined(&["springs/shackle_loaded", row]));
    if let Some(TradeError::ShackleCannotReach { .. }) = shackle {
        let remark = Remark::new(Rank::Warning, "shackle_cannot_reach");
        found.remark(remark.at(key("pins_apart")));
    }
    for state in ["free", "loaded", "bump"] {
        let name = format!("springs/shackle_{state}/{row}");
        if let Some(lean) = found.figure(&name).cloned()
            && lean.value().abs() > LYING_RAD
        {
            let remark = Remark::new(Rank::Caution, "shackle_lies_down");
            found.remark(remark.at(key("shackle")).with(lean));
            break;
        }
    }
}

/// Blocks: tall ones, and any on an axle that steers.
fn blocks(spring: &Spring, found: &mut Found) {
    let entry = &spring.entry;
    let field = if entry.plan_block.is_blank() {
        &entry.block
    } else {
        &entry.plan_block
    };
    let Some(block) = field.value().filter(|block| block.value() > 0.0) else {
        return;
    };
    let front = entry
        .place
        .value()
        .is_some_and(|place| place.starts_with("front"));
    if front {
        let remark = Remark::new(Rank::Warning, "block_on_steering_axle");
        found.remark(remark.at(field.key().clone()));
    }
    if block.value() > TALL_BLOCK_M {
        let remark = Remark::new(Rank::Caution, "tall_block");
        found.remark(remark.at(field.key().clone()));
    }
    if spring.plan.is_some() && !entry.plan_block.is_blank() {
        let fact = match spring.mounting() {
            ::trade::springs::Mounting::SpringOverAxle => "block_lifts",
            ::trade::springs::Mounting::SpringUnderAxle => "block_lowers",
        };
        found.remark(Remark::new(Rank::Remark, fact).at(field.key().clone()));
    }
}
