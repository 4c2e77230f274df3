//! What is still open, in every sheet; and what the sheets show that local rules may ask for.

use crate::{Findings, Key, Rank, Remark, SHEETS};

/// Something that is still open.
#[derive(Debug, Clone, PartialEq)]
pub enum Open<'a> {
    /// A joint that is not ticked: its row.
    Joint(&'a Key),
    /// A check that has to be put right: its row.
    PutRight(&'a Key),
    /// So many checks that nobody has looked at.
    Unseen(usize),
    /// So many things that change sides with the driver and have not.
    SideChanges(usize),
    /// An approval that is not there: its row, and how it stands.
    Approval(Key, &'static str),
    /// A danger or warning that a sheet's entries give rise to.
    Remark(&'static str, &'a Remark),
    /// An entry that cannot be used.
    Entry(&'a Key),
}

/// Everything that is open, in the order of the job.
#[must_use]
pub fn open_items(findings: &Findings) -> Vec<Open<'_>> {
    let mut open = Vec::new();
    for sheet in SHEETS {
        let Some(found) = findings.found(sheet) else {
            continue;
        };
        open.extend(found.errors.iter().map(|(key, _)| Open::Entry(key)));
        let grave = found
            .remarks
            .iter()
            .filter(|remark| remark.rank >= Rank::Warning && !remark.standing);
        // What is to be put right, and joints, stand below by themselves.
        let grave = grave.filter(|remark| !["put_right", "joint_open"].contains(&remark.fact));
        open.extend(grave.map(|remark| Open::Remark(sheet, remark)));
    }
    let joints = findings.torque.sheet.joints.iter();
    let undone = joints.filter(|joint| joint.done.value() != Some(&true));
    open.extend(undone.map(|joint| Open::Joint(&joint.key)));
    let sheet = &findings.handover.sheet;
    let bad = sheet
        .checks
        .iter()
        .filter(|check| check.state.value() == Some(&"put_right"));
    open.extend(bad.map(|check| Open::PutRight(&check.key)));
    let unseen = sheet.checks.iter().filter(|check| check.state.is_blank());
    let unseen = unseen.count();
    if unseen > 0 {
        open.push(Open::Unseen(unseen));
    }
    let sides = findings.conversion.open_changes().count();
    if sides > 0 && findings.conversion.found.begun {
        open.push(Open::SideChanges(sides));
    }
    let called = called_for(findings);
    open.extend(sheet.approvals.iter().filter_map(|entry| {
        let state = match entry.state.value() {
            Some(&"granted" | &"not_needed") => return None,
            Some(state) => state,
            None if called.contains(&entry.id()) => "to_ask",
            None => return None,
        };
        Some(Open::Approval(entry.key.clone(), state))
    }));
    open
}

/// The approvals that the other sheets show to be in question, by the ids of their rows.
#[must_use]
pub fn called_for(findings: &Findings) -> Vec<&'static str> {
    let vehicle = &findings.vehicle.sheet;
    let sides = (
        vehicle.steering_now.value(),
        vehicle.steering_wanted.value(),
    );
    let changes = matches!(sides, (Some(now), Some(wanted)) if now != wanted);
    let begun = |sheet: &str| findings.found(sheet).is_some_and(|found| found.begun);
    let all = [
        ("steering_side", changes || begun("conversion")),
        ("lamps", changes),
        ("speedometer", begun("gearing")),
        ("axle_ratio", begun("gearing") || begun("final_drive")),
        ("springs", begun("springs")),
        ("papers", changes),
    ];
    all.into_iter()
        .filter(|(_, called)| *called)
        .map(|(id, _)| id)
        .collect()
}
