//! Turns a computed value from SI into the unit of the published one.

/// The value in the unit with this symbol; unchanged where the check names no unit.
///
/// # Errors
/// When no unit has that symbol.
pub fn in_unit(si: f64, symbol: Option<&str>) -> Result<f64, String> {
    match symbol {
        None | Some("") => Ok(si),
        Some(symbol) => Err(format!("no unit is written `{symbol}`")),
    }
}
