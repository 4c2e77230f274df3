//! What has to be said of tightening whatever was entered.

use super::TorqueSheet;
use crate::{Found, Rank, Remark};

/// Standing cautions, each only where a joint gives rise to it.
pub(super) fn remark(found: &mut Found, sheet: &TorqueSheet) {
    let any = |purpose: &str| {
        sheet
            .joints
            .iter()
            .any(|joint| joint.purpose.value() == Some(&purpose))
    };
    if any("wheels") {
        found.remark(Remark::standing(Rank::Danger, "wheel_nuts_again"));
    }
    if any("steering") || any("brakes") {
        found.remark(Remark::standing(Rank::Danger, "safety_joints"));
    }
    if any("spring_u_bolts") {
        found.remark(Remark::standing(Rank::Warning, "u_bolts_new_and_again"));
    }
    let silent = |joint: &super::JointEntry| joint.figure.is_blank() && !joint.thread.is_blank();
    if sheet.joints.iter().any(silent) {
        found.remark(Remark::standing(Rank::Caution, "thread_engagement"));
    }
    if !sheet.joints.is_empty() {
        found.remark(Remark::standing(Rank::Remark, "clean_threads"));
    }
}
