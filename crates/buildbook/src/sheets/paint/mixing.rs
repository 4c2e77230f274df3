//! Mixing: from a layer's parts to shares, litres, grams and solvent.

use std::rc::Rc;

use measure::{Density, Kind, Mass, Ratio, Volume};
use trade::paint::{Amount, By, Component, ReadyMix, Shares, solvent_content_less_water};

use super::entries::{PaintLayer, PaintPart, PaintProduct, PaintSheet};
use super::layers::{Filled, Shop};
use crate::{All, Found, Given, Lack};

/// The product that a part names.
pub(super) fn product_of<'s>(sheet: &'s PaintSheet, part: &PaintPart) -> Option<&'s PaintProduct> {
    let id = part.product.value()?;
    sheet.products.iter().find(|product| product.id() == &**id)
}

/// What a litre is assumed to weigh, in kilograms, by what it is.
fn usual_density(role: &str) -> &'static str {
    match role {
        "hardener" => "1.05 ± 0.05",
        "thinner" => "0.87 ± 0.03",
        _ => "1.15 ± 0.15",
    }
}

/// The products' densities, their blanks filled in by their roles.
pub(super) fn densities(sheet: &PaintSheet, found: &mut Found) -> Vec<(Rc<str>, Given<Density>)> {
    let fill = |product: &PaintProduct| {
        let role = product.role.value().copied().unwrap_or("paint");
        (
            product.id().into(),
            found.assume(&product.density, usual_density(role)),
        )
    };
    sheet.products.iter().map(fill).collect()
}

/// What a part's litre weighs.
fn density_of(sheet: &PaintSheet, shop: &Shop, part: &PaintPart) -> Result<Density, Lack> {
    let product =
        product_of(sheet, part).ok_or_else(|| Lack::needs([part.product.key().clone()]))?;
    let filled = shop.densities.iter().find(|(id, _)| **id == *product.id());
    filled.map_or_else(
        || product.density.ask().cloned(),
        |(_, given)| given.ask().cloned(),
    )
}

fn by(given: &Given<&'static str>) -> By {
    if given.value() == Some(&"weight") {
        By::Weight
    } else {
        By::Volume
    }
}

fn amount_of(part: &PaintPart) -> Result<Amount, Lack> {
    Ok(match *part.of.ask()? {
        "paint" => Amount::OfPaint(part.share.ask()?.clone()),
        "both" => Amount::OfPaintAndHardener(part.share.ask()?.clone()),
        _ => Amount::Parts(part.parts.ask()?.clone()),
    })
}

/// The shares by volume of a layer's mix. Where nothing is weighed, the densities do not count and are not asked for.
pub(super) fn shares_of(
    sheet: &PaintSheet,
    shop: &Shop,
    layer: &PaintLayer,
) -> Result<Shares, Lack> {
    let (mix_by, thinner_by) = (by(&layer.mix_by), by(&layer.thinner_by));
    let weighed = |amount: &Amount| match amount {
        Amount::Parts(_) => mix_by == By::Weight,
        _ => thinner_by == By::Weight,
    };
    let amounts: Vec<Amount> = layer
        .parts
        .iter()
        .map(amount_of)
        .collect::<Result<_, _>>()?;
    let any_weighed = amounts.len() > 1 && amounts.iter().any(weighed);
    let component = |(part, amount): (&PaintPart, Amount)| -> Result<Component, Lack> {
        let density = if any_weighed {
            density_of(sheet, shop, part)?
        } else {
            Density::exact(1000.0)
        };
        Ok(Component { amount, density })
    };
    let mix: Vec<Component> = layer
        .parts
        .iter()
        .zip(amounts)
        .map(component)
        .collect::<Result<_, _>>()?;
    Ok(Shares::of(&mix, mix_by, thinner_by)?)
}

/// One line of a mixing table.
pub(super) struct Pour {
    /// The component's share of the ready mix by volume.
    pub(super) share: Result<Ratio, Lack>,
    /// Of all that is mixed for the layer.
    pub(super) litres: Result<Volume, Lack>,
    /// Of one mix.
    pub(super) mix_litres: Result<Volume, Lack>,
    /// The weight of one mix's pour.
    pub(super) grams: Result<Mass, Lack>,
    /// What the scale shows once it is poured.
    pub(super) scale: Result<Mass, Lack>,
}

/// The mixing table of a layer: for all of it, and for one mix.
pub(super) fn pours(
    sheet: &PaintSheet,
    shop: &Shop,
    layer: &PaintLayer,
    shares: &Result<Shares, Lack>,
    litres: &Result<Volume, Lack>,
    mix: &Result<Volume, Lack>,
) -> Vec<Pour> {
    let densities: Vec<Result<Density, Lack>> = layer
        .parts
        .iter()
        .map(|part| density_of(sheet, shop, part))
        .collect();
    let mut poured: Vec<Result<Mass, Lack>> = Vec::new();
    densities
        .into_iter()
        .enumerate()
        .map(|(place, density)| {
            let share = shares
                .as_ref()
                .map(|shares| shares.each[place].clone())
                .map_err(Clone::clone);
            let of = |volume: &Result<Volume, Lack>| {
                (share.clone(), volume.clone())
                    .all()
                    .map(|(share, volume)| (share * volume).called("V_i").of_kind(Kind::Volume))
            };
            let one = of(mix);
            let grams = (one.clone(), density)
                .all()
                .map(|(volume, density)| (volume * density).called("m_i").of_kind(Kind::SmallMass));
            poured.push(grams.clone());
            let scale = poured
                .iter()
                .cloned()
                .collect::<Result<Vec<_>, _>>()
                .map(|masses| {
                    Mass::sum_of(&masses)
                        .called("m_scale")
                        .of_kind(Kind::SmallMass)
                });
            Pour {
                litres: of(litres),
                mix_litres: one,
                share,
                grams,
                scale,
            }
        })
        .collect()
}

/// Solvent of a layer as it is sprayed: from its products where all of them say, else the usual of its kind.
pub(super) fn solvent_of(
    sheet: &PaintSheet,
    layer: &PaintLayer,
    filled: &Filled,
    shares: &Result<Shares, Lack>,
) -> Result<Density, Lack> {
    let said: Option<Vec<_>> = layer
        .parts
        .iter()
        .map(|part| {
            let product = product_of(sheet, part)?;
            Some((
                product.solvent.value()?.clone(),
                product.water.value()?.clone(),
            ))
        })
        .collect();
    match said {
        Some(said) if layer.solvent.is_blank() => {
            let shares = shares.as_ref().map_err(Clone::clone)?;
            let (solvents, waters): (Vec<_>, Vec<_>) = said.into_iter().unzip();
            Ok(solvent_content_less_water(&ReadyMix {
                shares,
                solvents: &solvents,
                waters: &waters,
            }))
        }
        _ => filled.solvent.ask().cloned(),
    }
}
