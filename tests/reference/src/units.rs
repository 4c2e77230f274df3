//! Turns a computed value from SI into the unit of the published one.

use measure::{Kind, Unit};

/// The value in the unit with this symbol; unchanged where the check names no unit.
///
/// # Errors
/// When no unit has that symbol, or two different ones have.
pub fn in_unit(si: f64, symbol: Option<&str>) -> Result<f64, String> {
    match symbol {
        None | Some("") => Ok(si),
        Some(symbol) => Ok(unit(symbol)?.from_si(si)),
    }
}

/// The unit that is written this way, among the units of every kind of quantity.
///
/// # Errors
/// When no unit is, or two different ones are.
pub fn unit(symbol: &str) -> Result<&'static Unit, String> {
    let mut found: Option<&'static Unit> = None;
    for kind in Kind::all() {
        for &unit in kind.units() {
            if unit.symbol != symbol {
                continue;
            }
            match found {
                Some(other) if other.factor != unit.factor || other.dims != unit.dims => {
                    return Err(format!("two units are written `{symbol}`"));
                }
                // A temperature stands before the difference of two, which is written the same.
                _ => found = found.or(Some(unit)),
            }
        }
    }
    found.ok_or_else(|| format!("no unit is written `{symbol}`"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_is_shown_in_the_unit_of_its_source() {
        assert_eq!(in_unit(0.0254, Some("mm")), Ok(25.4));
        assert_eq!(in_unit(3.5, None), Ok(3.5));
        assert!(in_unit(1.0, Some("furlong per fortnight")).is_err());
    }
}
