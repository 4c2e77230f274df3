//! Setting up a final drive: pinion depth, preload, backlash and tooth marks.

mod backlash;
mod marks;
mod pinion;
mod preload;
mod shims;

pub use backlash::{
    Adjustment, Backlash, agma_backlash, backlash_factor, backlash_readings, crown_move,
    notches_for, slope_of_trials,
};
pub use marks::{Advice, Flank, Height, Lengthwise, TrialMark, advice, next_shim};
pub use pinion::{MarkSense, ShimPlace, preload_pack_change, shim_by_depth, shim_by_marks};
pub use preload::{cord_radius, pull_for_torque, side_drag};
pub use shims::{Pack, Shim, shim_pack};
