//! A layer's results: into the findings, and its components into what is needed of each product.

use std::rc::Rc;

use measure::{Figure, Kind, Standing, Volume};

use super::LayerFound;
use super::buying::Needs;
use super::entries::{PaintLayer, PaintSheet};
use super::layers::{Filled, Reckoned, Shop};
use super::mixing::{pours, product_of, solvent_of};
use crate::key::joined;
use crate::{All, Found, Lack, Rank, Remark};

/// A layer with all that its results are shown with.
pub(super) struct Sight<'a> {
    pub(super) sheet: &'a PaintSheet,
    pub(super) shop: &'a Shop,
    pub(super) layer: &'a PaintLayer,
    pub(super) filled: &'a Filled,
    /// The end of its results' names.
    pub(super) place: &'a Rc<str>,
}

impl Sight<'_> {
    /// Puts a layer's results into the findings, and its components into what is needed of each product.
    pub(super) fn show(&self, one: &Reckoned, needs: &mut Needs, found: &mut Found) -> LayerFound {
        let name = |what: &str| joined(&["paint", what, self.place]);
        found.show(name("coat_litres"), Kind::Volume, &one.coat);
        found.show(name("layer_litres"), Kind::Volume, &one.litres);
        found.show(name("film"), Kind::Film, &one.film);
        found.show(name("wet"), Kind::Film, &one.wet);
        found.show(name("whole_film"), Kind::Film, &one.whole_film);
        if let Some(pot_life) = &one.pot_life {
            found.show(name("pot_life"), Kind::Time, pot_life);
        }
        found.show(
            name("solvent"),
            Kind::Concentration,
            &solvent_of(self.sheet, self.layer, self.filled, &one.shares),
        );
        let limit = self.filled.defaults.subcategory.limit_content();
        found.show(name("solvent_limit"), Kind::Concentration, &Ok(limit));
        if !self.layer.stock.is_blank() {
            found.show(name("stock_film"), Kind::Film, &one.stock_film);
            found.show(name("stock_coats"), Kind::Ratio, &one.stock_coats);
        }
        let mix = self.mix(one);
        self.show_counts(one, &mix, found);
        self.show_mix(one, &mix, needs, found);
        self.found(one, found)
    }

    /// How many mixes, and how often the cup is filled for them: no fill holds of two.
    fn show_counts(&self, one: &Reckoned, mix: &Result<Volume, Lack>, found: &mut Found) {
        let exact = |count: f64| Figure::exact(count, Kind::Count);
        let mixes = one.mixes.clone().map(|mixes| f64::from(mixes.count));
        let fills = (
            one.litres.clone(),
            mixes.clone(),
            mix.clone(),
            self.sheet.cup.ask(),
        )
            .all()
            .map(|(litres, mixes, mix, cup)| {
                let last = litres - &mix * (mixes - 1.0);
                (mixes - 1.0) * mix.count_of(cup) + last.count_of(cup).max(1.0)
            });
        found.put(joined(&["paint/mixes", self.place]), mixes.map(exact));
        found.put(joined(&["paint/gun_fills", self.place]), fills.map(exact));
    }

    /// One mix: as large as was asked for, or as the pot life divides the whole, to the next 10 mL. It is what is set out to
    /// be poured, so it is exact: what the scale shows then is in doubt by the densities alone.
    fn mix(&self, one: &Reckoned) -> Result<Volume, Lack> {
        if !self.layer.mix_size.is_blank() {
            return self.layer.mix_size.ask().cloned();
        }
        const STEP: f64 = 1e-5;
        let (litres, mixes) = (one.litres.clone(), one.mixes.clone()).all()?;
        let each = litres.value() / f64::from(mixes.count);
        let mix = Volume::exact((each / STEP - 1e-9).ceil() * STEP);
        Ok(mix.called("V_mix").of_kind(Kind::Volume))
    }

    fn show_mix(
        &self,
        one: &Reckoned,
        mix: &Result<Volume, Lack>,
        needs: &mut Needs,
        found: &mut Found,
    ) {
        found.show(joined(&["paint/mix_litres", self.place]), Kind::Volume, mix);
        let pours = pours(
            self.sheet,
            self.shop,
            self.layer,
            &one.shares,
            &one.litres,
            mix,
        );
        for (part, pour) in self.layer.parts.iter().zip(pours) {
            let name = |what: &str| joined(&["paint", what, self.place, part.id()]);
            found.show(name("part_share"), Kind::Percent, &pour.share);
            found.show(name("part_litres"), Kind::Volume, &pour.litres);
            found.show(name("mix_part"), Kind::SmallVolume, &pour.mix_litres);
            found.show(name("grams"), Kind::SmallMass, &pour.grams);
            found.show(name("scale"), Kind::SmallMass, &pour.scale);
            let product = product_of(self.sheet, part);
            let row = product.and_then(|product| {
                self.sheet
                    .products
                    .iter()
                    .position(|other| other.id() == product.id())
            });
            if let Some(row) = row {
                needs[row].push(pour.litres);
            }
        }
    }

    fn found(&self, one: &Reckoned, found: &mut Found) -> LayerFound {
        let band = (self.filled.film_least.ask(), self.filled.film_most.ask()).all();
        let film = match (&one.whole_film, band) {
            (Ok(film), Ok((least, most))) => {
                let remark = |fact| {
                    Remark::new(Rank::Caution, fact)
                        .at(self.layer.film.key().clone())
                        .with(film.figure(Kind::Film))
                };
                if film.standing(least) == Standing::Below {
                    found.remark(remark("film_below_band"));
                } else if film.standing(most) == Standing::Above {
                    found.remark(remark("film_above_band"));
                }
                Some((film.figure(Kind::Film), [least.value(), most.value()]))
            }
            _ => None,
        };
        LayerFound {
            place: Rc::clone(self.place),
            kind: self.filled.kind,
            coats: one.coats.as_ref().ok().copied(),
            subcategory: self.filled.defaults.subcategory,
            film,
        }
    }
}
