//! What the reference checks of springs are computed with.

use crate::Inputs;

/// The values named `of`, in SI units, from these inputs.
///
/// # Errors
/// When nothing here has that name, an input is missing, or the calculation refuses the inputs.
pub fn computed(of: &str, _inputs: &Inputs) -> Result<Vec<f64>, String> {
    Err(crate::unknown(of))
}
