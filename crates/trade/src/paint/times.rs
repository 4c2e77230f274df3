//! The clock: pot life and recoat windows at the temperature of the day, mixes that fit, and a timetable of coats.

use measure::{Kind, Ratio, Temperature, Time};

use super::sources::{DRYING, POT_LIFE};

/// A pot life or drying time at another temperature than the data sheet's.
///
/// `t = t_ref f^((θ_ref - θ) / 10 °C)`, where f is how much longer it takes for each 10 °C colder
///
/// # Units
/// Time, absolute temperatures, pure number.
/// # Valid range
/// From 5 to 40 °C; the maker's own table comes first.
/// # Source
/// UFGS 09 97 00.27 and makers' advice: a pot life halves for each 10 °C warmer (f = 2).
/// # Example
/// Two hours at 20 °C are one hour at 30 °C and half an hour at 40 °C.
#[must_use]
pub fn time_at(
    at_reference: &Time,
    temperature: &Temperature,
    reference: &Temperature,
    factor: &Ratio,
) -> Time {
    let tens = (reference - temperature) / Temperature::exact(10.0);
    let longer = (factor.ln() * tens).exp();
    (at_reference * longer)
        .called("t_θ")
        .of_kind(Kind::Time)
        .cited(&POT_LIFE)
}

/// How a layer's mixes fall out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mixes {
    /// How many mixes the layer takes.
    pub count: u32,
    /// Coats that one mix serves, where it serves whole coats.
    pub coats_each: Option<u32>,
    /// What the largest mix holds, in coats (a part of one where the pot life ends within a coat).
    pub largest_in_coats: f64,
}

/// How many mixes a layer takes, so that none outlives its pot life: several coats from one mix while spraying and
/// waiting between coats fit in; a mix a coat, or several a coat, where they do not.
///
/// `k t + (k - 1) w <= P`, the greatest whole k
///
/// # Units
/// Seconds, all three from the same start; without a pot life one mix serves all coats.
/// # Source
/// Arithmetic.
#[must_use]
pub fn mixes_in_pot_life(coats: u32, coat: &Time, wait: &Time, pot_life: Option<&Time>) -> Mixes {
    let coats = coats.max(1);
    let (coat, wait) = (coat.value().max(0.0), wait.value().max(0.0));
    let Some(pot_life) = pot_life.map(Time::value) else {
        return Mixes {
            count: 1,
            coats_each: Some(coats),
            largest_in_coats: f64::from(coats),
        };
    };
    if coat <= pot_life {
        let fit = ((pot_life + wait) / (coat + wait).max(1e-9) + 1e-9).floor();
        let each = fit.clamp(1.0, f64::from(coats)) as u32;
        return Mixes {
            count: coats.div_ceil(each),
            coats_each: Some(each),
            largest_in_coats: f64::from(each),
        };
    }
    let within_a_coat = (coat / pot_life.max(1e-9) - 1e-9).ceil().clamp(1.0, 1e4);
    Mixes {
        count: coats * within_a_coat as u32,
        coats_each: None,
        largest_in_coats: 1.0 / within_a_coat,
    }
}

/// What the clock needs to know of a layer.
#[derive(Debug, Clone)]
pub struct LayerTimes {
    /// How many coats.
    pub coats: u32,
    /// How long one coat takes to spray.
    pub coat: Time,
    /// How long to wait between its coats, at the least.
    pub wait: Time,
    /// How long to wait after its last coat before the next layer, at the least.
    pub earliest_over: Time,
    /// How long after its last coat the next layer still keys without sanding, at the most.
    pub latest_over: Option<Time>,
}

/// One coat on the clock, counted from the first touch of the trigger.
#[derive(Debug, Clone)]
pub struct CoatTime {
    /// Which layer, counted from 0.
    pub layer: usize,
    /// Which coat of it, counted from 1.
    pub coat: u32,
    /// When it begins.
    pub start: Time,
    /// When it is on.
    pub end: Time,
    /// When whatever comes next may begin.
    pub next_from: Time,
    /// When the next layer must have begun, after a layer's last coat.
    pub next_until: Option<Time>,
}

/// The soonest that the coats of several layers can follow each other.
///
/// # Units
/// Times.
/// # Source
/// Arithmetic on the maker's waits; drying is taken to follow temperature as the pot life does.
#[must_use]
pub fn timetable(layers: &[LayerTimes]) -> Vec<CoatTime> {
    let mut clock = Time::exact(0.0);
    let mut coats = Vec::new();
    for (place, layer) in layers.iter().enumerate() {
        for coat in 1..=layer.coats {
            let last = coat == layer.coats;
            let on = |time: Time| time.called("t").of_kind(Kind::Time).cited(&DRYING);
            let end = on(&clock + &layer.coat);
            let next = on(&end
                + if last {
                    &layer.earliest_over
                } else {
                    &layer.wait
                });
            let next_until = layer
                .latest_over
                .as_ref()
                .filter(|_| last)
                .map(|latest| on(&end + latest));
            let start = std::mem::replace(&mut clock, next.clone());
            coats.push(CoatTime {
                layer: place,
                coat,
                start,
                end,
                next_from: next,
                next_until,
            });
        }
    }
    coats
}

#[cfg(test)]
mod tests {
    use super::*;

    fn minutes(number: f64) -> Time {
        Time::exact(number * 60.0)
    }

    #[test]
    fn two_coats_come_from_one_mix_while_both_fit_its_pot_life() {
        let mixes = mixes_in_pot_life(3, &minutes(20.0), &minutes(15.0), Some(&minutes(60.0)));
        assert_eq!(
            mixes,
            Mixes {
                count: 2,
                coats_each: Some(2),
                largest_in_coats: 2.0
            }
        );
    }

    #[test]
    fn a_coat_longer_than_the_pot_life_takes_several_mixes() {
        let mixes = mixes_in_pot_life(2, &minutes(50.0), &minutes(10.0), Some(&minutes(20.0)));
        assert_eq!((mixes.count, mixes.coats_each), (6, None));
    }

    #[test]
    fn paint_without_hardener_is_mixed_once() {
        assert_eq!(
            mixes_in_pot_life(4, &minutes(50.0), &minutes(10.0), None).count,
            1
        );
    }

    #[test]
    fn coats_follow_each_other_and_the_last_opens_the_window_of_the_next_layer() {
        let layer = |latest: Option<f64>| LayerTimes {
            coats: 2,
            coat: minutes(10.0),
            wait: minutes(15.0),
            earliest_over: minutes(60.0),
            latest_over: latest.map(minutes),
        };
        let table = timetable(&[layer(Some(1440.0)), layer(None)]);
        let starts: Vec<_> = table.iter().map(|coat| coat.start.value() / 60.0).collect();
        assert_eq!(starts, [0.0, 25.0, 95.0, 120.0]);
        let until = table[1].next_until.as_ref().map(|time| time.value() / 60.0);
        assert_eq!(until, Some(35.0 + 1440.0));
        assert!(table[0].next_until.is_none() && table[3].next_until.is_none());
    }
}
