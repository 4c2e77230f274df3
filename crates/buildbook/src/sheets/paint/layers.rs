//! Layers: films, litres, mixes and times of each.

use std::rc::Rc;

use measure::{Area, Density, Kind, Length, PerLength, Ratio, Temperature, Time, Volume};
use trade::TradeError;
use trade::paint::{
    Defaults, Gun, LayerKind, LayerTimes, Mixes, Shares, dry_film, film_from_stock, litres_by_film,
    litres_by_rate, litres_to_mix, mixed_solids, mixes_in_pot_life, rate_ready_to_spray, time_at,
    wet_film,
};

use super::entries::{PaintLayer, PaintSheet};
use super::mixing::{densities, shares_of};
use crate::{All, Found, Given, Lack};

/// A layer with its blanks filled in by its kind.
pub(super) struct Filled {
    pub(super) kind: LayerKind,
    pub(super) defaults: &'static Defaults,
    pub(super) coats: Given<Ratio>,
    pub(super) film: Given<Length>,
    pub(super) solids: Given<Ratio>,
    pub(super) pot_life: Option<Given<Time>>,
    pub(super) wait: Given<Time>,
    pub(super) earliest_over: Given<Time>,
    pub(super) film_least: Given<Length>,
    pub(super) film_most: Given<Length>,
    pub(super) solvent: Given<Density>,
}

impl Filled {
    pub(super) fn of(layer: &PaintLayer, found: &mut Found) -> Self {
        let kind = layer
            .kind
            .value()
            .and_then(|word| LayerKind::from_word(word))
            .unwrap_or(LayerKind::SingleStage);
        let defaults = kind.defaults();
        let pot_life = match defaults.pot_life {
            Some(text) => Some(found.assume(&layer.pot_life, text)),
            None => (!layer.pot_life.is_blank()).then(|| layer.pot_life.clone()),
        };
        Self {
            kind,
            defaults,
            coats: found.assume(&layer.coats, defaults.coats),
            film: found.assume(&layer.film, defaults.film),
            solids: found.assume(&layer.solids, defaults.solids),
            pot_life,
            wait: found.assume(&layer.wait, defaults.wait),
            earliest_over: found.assume(&layer.earliest_over, defaults.earliest_over),
            film_least: found.assume(&layer.film_least, defaults.film_least),
            film_most: found.assume(&layer.film_most, defaults.film_most),
            solvent: found.assume(&layer.solvent, defaults.solvent),
        }
    }
}

/// What holds for every layer: the gun, the day, the allowances.
pub(super) struct Shop {
    pub(super) transfer: Given<Ratio>,
    /// What a litre of each product weighs, by the product's id.
    pub(super) densities: Vec<(Rc<str>, Given<Density>)>,
}

impl Shop {
    pub(super) fn of(sheet: &PaintSheet, found: &mut Found) -> Self {
        let gun = sheet
            .gun
            .value()
            .and_then(|word| Gun::from_word(word))
            .unwrap_or(Gun::LowPressure);
        Self {
            transfer: found.assume(&sheet.transfer, gun.transfer()),
            densities: densities(sheet, found),
        }
    }
}

/// What a layer comes to.
pub(super) struct Reckoned {
    pub(super) coats: Result<u32, Lack>,
    pub(super) shares: Result<Shares, Lack>,
    /// Dry film of one coat.
    pub(super) film: Result<Length, Lack>,
    /// Wet film of one coat.
    pub(super) wet: Result<Length, Lack>,
    /// Dry film of all coats.
    pub(super) whole_film: Result<Length, Lack>,
    /// Ready to spray, one coat.
    pub(super) coat: Result<Volume, Lack>,
    /// Ready to spray, to be mixed for all coats.
    pub(super) litres: Result<Volume, Lack>,
    pub(super) mixes: Result<Mixes, Lack>,
    pub(super) pot_life: Option<Result<Time, Lack>>,
    pub(super) times: Result<LayerTimes, Lack>,
    /// The dry film a coat, and the coats, that the paint in stock gives.
    pub(super) stock_film: Result<Length, Lack>,
    pub(super) stock_coats: Result<Ratio, Lack>,
}

impl Reckoned {
    pub(super) fn of(
        sheet: &PaintSheet,
        shop: &Shop,
        layer: &PaintLayer,
        filled: &Filled,
        area: &Result<Area, Lack>,
    ) -> Self {
        let shares = shares_of(sheet, shop, layer);
        let unthinned = shares
            .as_ref()
            .map(|shares| shares.unthinned.clone())
            .map_err(Clone::clone);
        let solids = ready_solids(layer, filled, &unthinned);
        let (film, coat) = film_and_coat(layer, filled, shop, &unthinned, &solids, area);
        let coats = filled.coats.ask().map(|coats| whole(coats.value()));
        let wet = (film.clone(), solids.clone())
            .all()
            .map(|(film, solids)| wet_film(&film, &solids));
        let whole_film = (film.clone(), filled.coats.ask())
            .all()
            .map(|(film, coats)| (coats * film).called("t_whole").of_kind(Kind::Film));
        let clock = Clock::of(sheet, layer, filled);
        let coat_time = (coat.clone(), sheet.flow.ask())
            .all()
            .map(|(coat, flow)| (coat / flow).called("t_coat").of_kind(Kind::Time));
        let pot_life = clock.pot_life.clone().transpose();
        let mixes = (
            coats.clone(),
            coat_time.clone(),
            clock.wait.clone(),
            pot_life,
        )
            .all()
            .map(|(coats, coat, wait, pot_life)| {
                mixes_in_pot_life(coats, &coat, &wait, pot_life.as_ref())
            });
        let mixes = (mixes, mixes_of_size(sheet, layer, &coat, &coats))
            .all()
            .map(|(mixes, by_size)| Mixes {
                count: mixes.count.max(by_size),
                ..mixes
            });
        let litres = (
            coat.clone(),
            filled.coats.ask(),
            mixes.clone(),
            sheet.left_in_cup.ask(),
            sheet.reserve.ask(),
        )
            .all()
            .map(|(coat, coats, mixes, left, reserve)| {
                let sprayed = (coats * coat).called("V_sprayed").of_kind(Kind::Volume);
                litres_to_mix(&sprayed, f64::from(mixes.count), left, reserve)
            });
        let times = (
            coats.clone(),
            coat_time,
            clock.wait.clone(),
            clock.over,
            clock.latest,
        )
            .all()
            .map(
                |(coats, coat, wait, earliest_over, latest_over)| LayerTimes {
                    coats,
                    coat,
                    wait,
                    earliest_over,
                    latest_over,
                },
            );
        let stock = Stock {
            sheet,
            shop,
            layer,
            filled,
            area,
            coat: &coat,
            solids: &solids,
            mixes: &mixes,
        };
        let (stock_film, stock_coats) = (stock.film(), stock.coats());
        Self {
            coats,
            shares,
            film,
            wet,
            whole_film,
            coat,
            litres,
            mixes,
            pot_life: clock.pot_life,
            times,
            stock_film,
            stock_coats,
        }
    }
}

fn whole(count: f64) -> u32 {
    count.round().clamp(1.0, 1000.0) as u32
}

/// How many mixes of the size asked for hold what is sprayed, what stays in the cup with each, and the reserve; one where none is
/// asked for.
fn mixes_of_size(
    sheet: &PaintSheet,
    layer: &PaintLayer,
    coat: &Result<Volume, Lack>,
    coats: &Result<u32, Lack>,
) -> Result<u32, Lack> {
    if layer.mix_size.is_blank() {
        return Ok(1);
    }
    let (size, coat, coats, left, reserve) = (
        layer.mix_size.ask(),
        coat.clone(),
        coats.clone(),
        sheet.left_in_cup.ask(),
        sheet.reserve.ask(),
    )
        .all()?;
    let spared = 1.0 + reserve;
    let lost = left * &spared;
    if size.value() <= lost.value() {
        return Err(Lack::refused(TradeError::OutOfRange {
            entry: "mix_size",
            lowest: lost.value(),
            highest: f64::INFINITY,
        }));
    }
    let sprayed_of_one = size - lost;
    let mixes = (coat * f64::from(coats) * spared).count_of(&sprayed_of_one);
    Ok(mixes.clamp(1.0, 1e4) as u32)
}

fn ready_solids(
    layer: &PaintLayer,
    filled: &Filled,
    unthinned: &Result<Ratio, Lack>,
) -> Result<Ratio, Lack> {
    let given = filled.solids.ask()?;
    if layer.solids_for.value() == Some(&"unthinned") {
        return Ok(mixed_solids(
            given,
            unthinned.as_ref().map_err(Clone::clone)?,
        ));
    }
    Ok(given.clone())
}

/// The dry film of one coat, and the paint it takes.
fn film_and_coat(
    layer: &PaintLayer,
    filled: &Filled,
    shop: &Shop,
    unthinned: &Result<Ratio, Lack>,
    solids: &Result<Ratio, Lack>,
    area: &Result<Area, Lack>,
) -> (Result<Length, Lack>, Result<Volume, Lack>) {
    let (solids, area) = (solids.clone(), area.clone());
    if layer.basis.value() == Some(&"rate") {
        let practical = layer.rate_is.value() == Some(&"practical");
        let rate = ready_rate(layer, unthinned);
        let film =
            (rate.clone(), solids, shop.transfer.ask())
                .all()
                .map(|(rate, solids, transfer)| {
                    let covered = if practical {
                        transfer / rate
                    } else {
                        1.0 / rate
                    };
                    (solids * covered).called("t").of_kind(Kind::Film)
                });
        let coat = (area, rate, shop.transfer.ask())
            .all()
            .map(|(area, rate, transfer)| {
                litres_by_rate(&area, &rate, (!practical).then_some(transfer))
            });
        return (film, coat);
    }
    let film = match layer.film_is.value() {
        Some(&"wet") => (filled.film.ask(), solids.clone())
            .all()
            .map(|(wet, solids)| dry_film(wet, &solids)),
        _ => filled.film.ask().cloned(),
    };
    let coat = (area, film.clone(), solids, shop.transfer.ask())
        .all()
        .map(|(area, film, solids, transfer)| litres_by_film(&area, &film, &solids, transfer));
    (film, coat)
}

fn ready_rate(layer: &PaintLayer, unthinned: &Result<Ratio, Lack>) -> Result<PerLength, Lack> {
    let rate = layer.rate.ask()?;
    if layer.rate_for.value() == Some(&"unthinned") {
        return Ok(rate_ready_to_spray(
            rate,
            unthinned.as_ref().map_err(Clone::clone)?,
        ));
    }
    Ok(rate.clone())
}

/// The data sheet's times at the temperature of the day.
struct Clock {
    pot_life: Option<Result<Time, Lack>>,
    wait: Result<Time, Lack>,
    over: Result<Time, Lack>,
    latest: Result<Option<Time>, Lack>,
}

impl Clock {
    fn of(sheet: &PaintSheet, layer: &PaintLayer, filled: &Filled) -> Self {
        let day = (
            sheet.temperature.ask(),
            sheet.reference.ask(),
            sheet.slower.ask(),
        )
            .all();
        let today = |given: &Given<Time>| -> Result<Time, Lack> {
            let (time, (temperature, reference, slower)): (_, (&Temperature, _, _)) =
                (given.ask(), day.clone()).all()?;
            Ok(time_at(time, temperature, reference, slower))
        };
        Self {
            pot_life: filled.pot_life.as_ref().map(&today),
            wait: today(&filled.wait),
            over: today(&filled.earliest_over),
            latest: if layer.latest_over.is_blank() {
                Ok(None)
            } else {
                today(&layer.latest_over).map(Some)
            },
        }
    }
}

/// The way back from what is in stock.
struct Stock<'a> {
    sheet: &'a PaintSheet,
    shop: &'a Shop,
    layer: &'a PaintLayer,
    filled: &'a Filled,
    area: &'a Result<Area, Lack>,
    coat: &'a Result<Volume, Lack>,
    solids: &'a Result<Ratio, Lack>,
    mixes: &'a Result<Mixes, Lack>,
}

impl Stock<'_> {
    fn left_in_cups(&self) -> Result<Volume, Lack> {
        let (mixes, left) = (self.mixes.clone(), self.sheet.left_in_cup.ask()).all()?;
        Ok(left * f64::from(mixes.count))
    }

    fn film(&self) -> Result<Length, Lack> {
        let stock = (
            self.layer.stock.ask(),
            self.left_in_cups(),
            self.sheet.reserve.ask(),
        )
            .all();
        let (stock, area, coats, solids, transfer) = (
            stock,
            self.area.clone(),
            self.filled.coats.ask(),
            self.solids.clone(),
            self.shop.transfer.ask(),
        )
            .all()?;
        let (litres, left, reserve) = stock;
        Ok(film_from_stock(
            litres, &area, coats, &solids, transfer, &left, reserve,
        ))
    }

    fn coats(&self) -> Result<Ratio, Lack> {
        let (stock, coat, left, reserve) = (
            self.layer.stock.ask(),
            self.coat.clone(),
            self.left_in_cups(),
            self.sheet.reserve.ask(),
        )
            .all()?;
        Ok(trade::paint::coats_from_stock(stock, &coat, &left, reserve))
    }
}
