//! Litres, ready to spray.

use measure::{Area, Kind, Length, PerLength, Ratio, Volume};

use super::sources::{ALLOWANCES, SPREADING, THINNED, TRANSFER};

/// Paint to spray for one coat, from the film wanted.
///
/// `V = A t / (VS η)`
///
/// # Units
/// Area, length, pure numbers; volume out, ready to spray.
/// # Valid range
/// Solids are of the paint as it is sprayed. The transfer efficiency is the one and only loss of the gun: a data
/// sheet's loss factor is the same loss and must not be taken as well.
/// # Source
/// Spreading rate from coating makers' guides; transfer efficiency as defined by R. Joseph.
#[must_use]
pub fn litres_by_film(area: &Area, dry: &Length, solids: &Ratio, transfer: &Ratio) -> Volume {
    (area * dry / (solids * transfer))
        .called("V_coat")
        .of_kind(Kind::Volume)
        .cited(&TRANSFER)
}

/// Paint to spray for one coat, from a data sheet's spreading rate for paint ready to spray.
///
/// `V = A / (s η)`, where η is 1 for a rate that is said to hold in practice: it has its loss in it.
///
/// # Units
/// Area, area per volume, pure number; volume out, ready to spray.
/// # Source
/// As [`litres_by_film`].
/// # Example
/// A gallon that covers 300 ft² with no loss covers 90 ft² at a transfer of 30 %.
#[must_use]
pub fn litres_by_rate(area: &Area, rate: &PerLength, transfer: Option<&Ratio>) -> Volume {
    let volume = match transfer {
        Some(transfer) => area / (rate * transfer),
        None => area / rate,
    };
    volume
        .called("V_coat")
        .of_kind(Kind::Volume)
        .cited(&TRANSFER)
}

/// How much panel a volume covers in practice.
///
/// `A = V s η`
///
/// # Units
/// Volume, area per volume, pure number; area out.
/// # Source
/// As [`litres_by_film`].
#[must_use]
pub fn area_from_rate(volume: &Volume, rate: &PerLength, transfer: &Ratio) -> Area {
    (volume * rate * transfer)
        .called("A")
        .of_kind(Kind::Area)
        .cited(&SPREADING)
}

/// The spreading rate of paint ready to spray, from the rate before thinning: a litre that is thinned becomes more
/// litres, which together cover no more.
///
/// `s_ready = s u`, where u is the share of paint and hardener in the mix
///
/// # Units
/// Area per volume; a pure number.
/// # Source
/// The same reckoning as for solids after thinning.
#[must_use]
pub fn rate_ready_to_spray(before_thinning: &PerLength, unthinned: &Ratio) -> PerLength {
    (before_thinning * unthinned)
        .called("s_ready")
        .of_kind(Kind::SpreadingRate)
        .cited(&THINNED)
}

/// Paint to mix for all coats of a layer: what is sprayed, what stays in cup and hose with each mix, and a reserve.
///
/// `V = (V_sprayed + n c) (1 + r)`
///
/// # Units
/// Volumes and pure numbers.
/// # Source
/// Common practice.
#[must_use]
pub fn litres_to_mix(
    sprayed: &Volume,
    mixes: f64,
    left_in_cup: &Volume,
    reserve: &Ratio,
) -> Volume {
    let lost = left_in_cup * mixes;
    ((sprayed + lost) * (1.0 + reserve))
        .called("V")
        .of_kind(Kind::Volume)
        .cited(&ALLOWANCES)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn litres(area: f64, film: f64, solids: f64, transfer: f64, mixes: f64) -> f64 {
        let coat = litres_by_film(
            &Area::exact(area),
            &Length::exact(film * 1e-6),
            &Ratio::exact(solids),
            &Ratio::exact(transfer),
        );
        let cup = Volume::exact(50e-6);
        litres_to_mix(&coat, mixes, &cup, &Ratio::exact(0.1)).value() * 1000.0
    }

    #[test]
    fn the_film_and_its_spreading_rate_ask_for_the_same_litres() {
        let (area, film) = (Area::exact(12.0), Length::exact(28e-6));
        let (solids, transfer) = (Ratio::exact(0.45), Ratio::exact(0.6));
        let by_film = litres_by_film(&area, &film, &solids, &transfer);
        let rate = crate::paint::spreading_rate(&solids, &film);
        let by_rate = litres_by_rate(&area, &rate, Some(&transfer));
        assert!((by_film.value() / by_rate.value() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_rate_that_holds_in_practice_has_its_loss_in_it() {
        let rate = PerLength::exact(8000.0);
        let volume = litres_by_rate(&Area::exact(16.0), &rate, None);
        assert!((volume.value() - 0.002).abs() < 1e-15);
    }

    proptest! {
        #[test]
        fn litres_grow_with_area_film_and_mixes_and_fall_with_solids_and_transfer(
            area in 0.1_f64..100.0, film in 5.0_f64..200.0, solids in 0.05_f64..0.9,
            transfer in 0.1_f64..0.9, mixes in 1_u32..9, more in 1.001_f64..1.1,
        ) {
            let mixes = f64::from(mixes);
            let here = litres(area, film, solids, transfer, mixes);
            prop_assert!(litres(area * more, film, solids, transfer, mixes) > here);
            prop_assert!(litres(area, film * more, solids, transfer, mixes) > here);
            prop_assert!(litres(area, film, solids, transfer, mixes + 1.0) > here);
            prop_assert!(litres(area, film, solids * more, transfer, mixes) < here);
            prop_assert!(litres(area, film, solids, transfer * more, mixes) < here);
        }
    }
}
