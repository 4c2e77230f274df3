//! Lengths in inches as rules and drawings have them: whole inches and a binary fraction.

/// The finest fraction on a steel rule.
const FINEST: u32 = 64;

/// How far an exact length may be from its fraction, in inches: the last bits of a conversion.
const BITS: f64 = 1e-9;

/// The length as `4 5/16`, in the coarsest fraction that is as fine as the ±; none where 1/64 is too coarse for it.
pub(super) fn binary_fraction(inches: f64, error: f64) -> Option<String> {
    if !inches.is_finite() || inches.abs() > 100_000.0 {
        return None;
    }
    let below = fraction_for(inches, error)?;
    let parts = (inches.abs() * f64::from(below)).round();
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "at most 6.4 million"
    )]
    let parts = parts as u32;
    let (whole, over) = (parts / below, parts % below);
    let common = 1 << over.trailing_zeros().min(below.trailing_zeros());
    let sign = if inches < 0.0 && parts > 0 {
        "\u{2212}"
    } else {
        ""
    };
    Some(match (whole, over) {
        (whole, 0) => format!("{sign}{whole}"),
        (0, over) => format!("{sign}{}/{}", over / common, below / common),
        (whole, over) => format!("{sign}{whole}\u{a0}{}/{}", over / common, below / common),
    })
}

/// The denominator whose steps are no coarser than the ± is wide.
fn fraction_for(inches: f64, error: f64) -> Option<u32> {
    let denominators = (0..=FINEST.trailing_zeros()).map(|power| 1u32 << power);
    if error <= BITS {
        let is_whole = |below: &u32| {
            let parts = inches * f64::from(*below);
            (parts - parts.round()).abs() <= BITS * f64::from(*below)
        };
        return denominators.into_iter().find(is_whole);
    }
    let finest = (inches * f64::from(FINEST)).round() / f64::from(FINEST);
    if (inches - finest).abs() > error {
        return None;
    }
    denominators
        .into_iter()
        .find(|below| 0.5 / f64::from(*below) <= error)
        .or(Some(FINEST))
}
