//! Dangers and cautions of painting.

use super::LayerFound;
use super::entries::PaintSheet;
use crate::{Found, Rank, Remark};

/// What must be known whatever was entered, and what follows from the entries.
pub(super) fn remark(sheet: &PaintSheet, layers: &[LayerFound], found: &mut Found) {
    let hardener = layers.iter().any(|layer| layer.kind.takes_hardener())
        || sheet
            .products
            .iter()
            .any(|product| match product.isocyanate.value() {
                Some(&holds) => holds,
                None => product.role.value() == Some(&"hardener"),
            });
    if hardener {
        found.remark(Remark::standing(Rank::Danger, "isocyanates"));
    }
    found.remark(Remark::standing(Rank::Danger, "tablet_out_of_spray"));
    found.remark(Remark::standing(Rank::Danger, "lead_in_old_paint"));
    found.remark(Remark::standing(Rank::Remark, "solvent_limits"));
    let practical = |layer: &super::PaintLayer| {
        layer.basis.value() == Some(&"rate") && layer.rate_is.value() == Some(&"practical")
    };
    let mut all = sheet.systems.iter().flat_map(|system| &system.layers);
    if let Some(layer) = all.find(|layer| practical(layer)) {
        found.remark(Remark::new(Rank::Remark, "one_loss").at(layer.rate.key().clone()));
    }
}
