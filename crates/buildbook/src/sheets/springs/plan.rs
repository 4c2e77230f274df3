//! The work that is planned on a spring, and what it does to rate, height, stress and load.

use ::trade::springs::{self as trade, Beam, Leaf, LeafKind};
use measure::{Force, Kind, Length, Stress};

use super::one::{RateBy, Spring, Stand, line};
use super::pack::Built;
use super::show::id;
use crate::{All, Found, Given, Lack};

/// A spring after the planned work.
pub(super) struct Plan {
    pub built: Result<Built, Lack>,
    line: Result<trade::LoadLine, Lack>,
    pub block: Result<Length, Lack>,
    pub stand: Result<Stand, Lack>,
}

/// Whether any work is planned on the spring.
fn is_planned(spring: &Spring) -> bool {
    let entry = &spring.entry;
    entry.plan_as_new.value() == Some(&true)
        || !entry.plan_remove.is_blank()
        || !entry.plan_add.is_blank()
        || !entry.plan_arch.is_blank()
        || !entry.plan_block.is_blank()
        || !entry.plan_wedge.is_blank()
}

/// The spring after the planned work; none when nothing is planned.
pub(super) fn planned(spring: &Spring) -> Option<Plan> {
    if !is_planned(spring) {
        return None;
    }
    let entry = &spring.entry;
    let built = leaves_after(spring);
    let line = line(&built, &spring.stiffening);
    // The beam of the leaves that are left is asked for only where heights rest on it.
    let beam = match spring.rate_by {
        RateBy::Beam => spring.beam_under(&built, &line),
        RateBy::Press | RateBy::Handbook => Err(Lack::needs([])),
    };
    let block = if entry.plan_block.is_blank() {
        entry.block.ask().cloned()
    } else {
        entry.plan_block.ask().cloned()
    };
    let stand = stand_after(spring, &built, &line, &beam);
    Some(Plan {
        built,
        line,
        block,
        stand,
    })
}

/// The pack after leaves were renewed, taken out and added.
fn leaves_after(spring: &Spring) -> Result<Built, Lack> {
    let entry = &spring.entry;
    let mut built = spring.built.clone()?;
    if entry.plan_as_new.value() == Some(&true) {
        built.pack = trade::as_new(&built.pack, &built.new)?;
    }
    if !entry.plan_remove.is_blank() {
        let number = entry.plan_remove.ask()?.value();
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a whole number from 1 to 30, by the field's limits"
        )]
        let number = number as usize;
        built.pack = trade::without_leaf(&built.pack, number)?;
        built.ids.remove(number - 1);
        built.new.remove(number - 1);
    }
    if !entry.plan_add.is_blank() {
        let (thickness, length) = (entry.plan_add.ask(), entry.plan_add_length.ask()).all()?;
        let main = built.pack.main();
        let share = &main.front / (&main.front + &main.rear);
        let front = length * share;
        let leaf = Leaf {
            kind: LeafKind::Graduated,
            width: main.width.clone(),
            thickness: thickness.clone(),
            rear: length - &front,
            front,
            // Made to lie on the leaf above it.
            arch: None,
            gap: None,
        };
        built.pack = trade::with_leaf(&built.pack, leaf)?;
    }
    Ok(built)
}

/// Whether the work leaves a spring that has yet to settle.
fn will_settle(spring: &Spring) -> bool {
    let entry = &spring.entry;
    entry.plan_as_new.value() == Some(&true) || !entry.plan_arch.is_blank()
}

fn stand_after(
    spring: &Spring,
    built: &Result<Built, Lack>,
    line: &Result<trade::LoadLine, Lack>,
    beam: &Result<Beam, Lack>,
) -> Result<Stand, Lack> {
    let entry = &spring.entry;
    let mut stand = match spring.rate_by {
        RateBy::Press => pressed(spring, line)?,
        _ => spring.stand_of(built, line, beam)?,
    };
    // What has not been re-arched keeps the free arch it had.
    let mut free_arch = if entry.plan_arch.is_blank() {
        spring.free_arch(&spring.built)?
    } else {
        entry.plan_arch.ask()?.clone()
    };
    if will_settle(spring) {
        free_arch = (free_arch - entry.settling.ask()?).called("h_settled");
    }
    stand.arch = trade::loaded_arch(&free_arch, &stand.travel);
    stand.free_arch = free_arch;
    Ok(stand)
}

/// The measured rate, changed as the handbook says that the work changes it.
fn pressed(spring: &Spring, line: &Result<trade::LoadLine, Lack>) -> Result<Stand, Lack> {
    let (test, load) = (spring.press.clone(), spring.load.clone()).all()?;
    let free_arch = spring.free_arch(&spring.built)?;
    let rate = match (&spring.line, line) {
        (Ok(before), Ok(after)) => (&test.rate * (&after.rate / &before.rate)).called("k"),
        _ => test.rate,
    };
    let line = trade::LoadLine::straight(rate.clone());
    let travel = line.travel(&load);
    Ok(Stand {
        rate,
        arch: trade::loaded_arch(&free_arch, &travel),
        travel,
        free_arch,
        line,
    })
}

impl Plan {
    /// Height of the mark after the work.
    pub(super) fn height(&self, spring: &Spring) -> Result<Length, Lack> {
        let (stand, block) = (
            self.stand.as_ref().map_err(Clone::clone),
            self.block.clone(),
        )
            .all()?;
        let seat = spring.seat(&self.built, &block)?;
        spring.height_at(&seat, &stand.arch)
    }
}

/// The stress in each working leaf.
pub(super) type Stresses = Result<Vec<Stress>, Lack>;

/// The stress in each working leaf under the load, by the handbook.
pub(super) fn stresses(
    built: &Result<Built, Lack>,
    line: &Result<trade::LoadLine, Lack>,
    load: &Result<Force, Lack>,
) -> Stresses {
    let (built, line, load) = (
        built.as_ref().map_err(Clone::clone),
        line.as_ref().map_err(Clone::clone),
        load.as_ref().map_err(Clone::clone),
    )
        .all()?;
    let bending = trade::Bending::of(&built.pack, load, line);
    let leaves = built.pack.working().iter();
    Ok(leaves
        .map(|leaf| bending.stress(&built.pack, leaf))
        .collect())
}

/// The load that the stress allowed lets a pack carry.
pub(super) fn load_allowed(
    built: &Result<Built, Lack>,
    allowed: &Given<Stress>,
) -> Result<Force, Lack> {
    (built.as_ref().map_err(Clone::clone), allowed.ask())
        .all()
        .map(|(built, allowed)| trade::load_at_stress(&built.pack, allowed))
}

/// The greatest of the leaves' stresses.
fn worst(stresses: &Stresses) -> Result<Stress, Lack> {
    let stresses = stresses.as_ref().map_err(Clone::clone)?;
    let named = trade::LEAF_NAMES.into_iter().zip(stresses.iter().cloned());
    Ok(Stress::greatest_of(&named.collect::<Vec<_>>()).called("σ_max"))
}

/// What each wanted height asks for, and what the planned work does.
pub(super) fn show(spring: &Spring, found: &mut Found) {
    let row = &*spring.id;
    let worst_now = worst(spring.stresses());
    found.show(id("worst", row), Kind::Stress, &worst_now);
    show_wanted(spring, found, row);
    let Some(plan) = &spring.plan else {
        return;
    };
    let stand = || plan.stand.as_ref().map_err(Clone::clone);
    let before = || spring.stand.as_ref().map_err(Clone::clone);
    let rate = stand().map(|stand| stand.rate.clone());
    compared(found, "rate", row, Kind::SpringRate, &spring.rate(), &rate);
    let (now, after) = (spring.height(), plan.height(spring));
    compared(found, "height", row, Kind::Length, &now, &after);
    let arch = |stand: Result<&Stand, Lack>| stand.map(|stand| stand.arch.clone());
    let (now, after) = (arch(before()), arch(stand()));
    compared(found, "arch", row, Kind::Length, &now, &after);
    let worst_after = worst(&stresses(&plan.built, &plan.line, &spring.load));
    compared(found, "worst", row, Kind::Stress, &worst_now, &worst_after);
    let swing = |stand: Result<&Stand, Lack>| {
        (stand, spring.load.clone())
            .all()
            .map(|(stand, load)| trade::natural_frequency(&stand.rate, &load))
    };
    let (now, after) = (swing(before()), swing(stand()));
    compared(found, "frequency", row, Kind::Frequency, &now, &after);
    let now = spring.load_allowed();
    let after = load_allowed(&plan.built, &spring.allowed);
    compared(found, "load_allowed", row, Kind::Force, &now, &after);
    let turn = seat_turn(spring, plan);
    found.show(id("seat_turn", row), Kind::Angle, &turn);
}

/// Puts in what a result comes to after the work, and the change; an entry that both rest on counts once in its ±.
pub(super) fn compared<D: measure::Dimension>(
    found: &mut Found,
    result: &str,
    row: &str,
    kind: Kind,
    now: &Result<measure::Quantity<D>, Lack>,
    after: &Result<measure::Quantity<D>, Lack>,
) {
    let change = (now.clone(), after.clone())
        .all()
        .map(|(now, after)| (after - now).called("Δ"));
    found.show(id(&[result, "_after"].concat(), row), kind, after);
    found.show(id(&[result, "_change"].concat(), row), kind, &change);
}

/// How much the planned work turns the seat against the frame, wedge included, nose up positive.
pub(super) fn seat_turn(spring: &Spring, plan: &Plan) -> Result<measure::Angle, Lack> {
    let (before, after, pack) = (
        spring.stand.as_ref().map_err(Clone::clone),
        plan.stand.as_ref().map_err(Clone::clone),
        spring.pack(),
    )
        .all()?;
    let turn = trade::seat_turn(pack, &(&before.arch - &after.arch));
    Ok(match spring.entry.plan_wedge.value() {
        Some(wedge) => (turn + wedge).called("θ"),
        None => turn,
    })
}

/// The block, the free arch or the leaf that would bring the mark to the wanted height.
fn show_wanted(spring: &Spring, found: &mut Found, row: &str) {
    let entry = &spring.entry;
    if entry.wanted.is_blank() {
        return;
    }
    let now = spring.height();
    let seat = entry
        .block
        .ask()
        .and_then(|block| spring.seat(&spring.built, block));
    let stand = || spring.stand.as_ref().map_err(Clone::clone);
    let block = (seat.clone(), now.clone(), entry.wanted.ask())
        .all()
        .map(|(seat, now, wanted)| trade::block_for(&seat, &now, wanted));
    found.show(id("block_for", row), Kind::Length, &block);
    let arch = (
        seat.clone(),
        stand(),
        entry.wanted.ask(),
        entry.mark.ask(),
        entry.settling.ask(),
    )
        .all()
        .map(|(seat, stand, wanted, mark, settling)| {
            trade::free_arch_for(&seat, &(wanted - mark), &stand.travel, settling)
        });
    found.show(id("arch_for", row), Kind::Length, &arch);
    let leaf = (
        spring.pack(),
        spring.stiffening.clone(),
        (spring.load.clone(), stand()).all(),
        now,
        entry.wanted.ask(),
    )
        .all()
        .and_then(|(pack, factor, (load, stand), now, wanted)| {
            // A leaf half as long as the main leaf, a step in the middle of the pile.
            let main = pack.main();
            let like = Leaf {
                front: &main.front * 0.5,
                rear: &main.rear * 0.5,
                ..main.clone()
            };
            let by_handbook =
                |pack: &trade::Pack| Ok(trade::load_line(pack, &factor)?.travel(&load));
            let known: Length = by_handbook(pack)?;
            let travel = |pack: &trade::Pack| match spring.rate_by {
                RateBy::Handbook => by_handbook(pack),
                RateBy::Beam => Ok(Beam::new(pack, &load, &load).travel()),
                // What the press found, changed as the handbook says that the leaf changes it.
                RateBy::Press => Ok(&stand.travel * (by_handbook(pack)? / &known)),
            };
            let (lift, mounting) = (wanted - now, spring.mounting());
            Ok(trade::leaf_thickness_for(
                pack, &like, &travel, &lift, mounting,
            )?)
        });
    found.show(id("leaf_for", row), Kind::Thickness, &leaf);
}
