//! Setting up a final drive: pinion depth, preload, backlash and tooth marks.

mod backlash;
mod marks;
mod pinion;
mod preload;
mod shims;
mod trend;

pub use backlash::{
    Adjustment, Backlash, agma_backlash, backlash_factor, backlash_of_a_notch, backlash_readings,
    crown_move, notches_for, pinion_factor,
};
pub use marks::{Advice, Height, Lengthwise, TrialMark, advice, first_step};
pub use pinion::{MarkSense, ShimPlace, preload_pack_change, shim_by_depth, shim_by_marks};
pub use preload::{
    cord_radius, drag_behind_rise, pull_for_torque, shims_of_both_sides, side_drag,
    spread_each_side, spread_to_add, turning_torque_with_carrier,
};
pub use shims::{Pack, Shim, shim_pack};
pub use trend::{
    next_shim, pack_for_preload, slope_of_trials, torque_for_thickness, without_pinion,
};
