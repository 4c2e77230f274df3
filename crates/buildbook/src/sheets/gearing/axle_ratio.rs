//! A crown wheel and pinion as typed: teeth, which are exact, or a ratio.

use measure::{Kind, Ratio, Reading, unit};
use trade::gearing::Teeth;

use crate::{Answer, Asking, BookError, Typed};

/// An axle's ratio, with its teeth where those were typed.
#[derive(Debug, Clone)]
pub struct AxleRatio {
    /// The ratio; exact where teeth were typed.
    pub ratio: Ratio,
    /// The teeth, where a pair was typed.
    pub teeth: Option<Teeth>,
}

impl Answer for AxleRatio {
    fn read(entry: Typed<'_>, asking: &Asking<'_>) -> Result<Self, BookError> {
        let Some(teeth) = Teeth::read(entry.text) else {
            return Ok(Self {
                ratio: Ratio::read(entry, asking)?,
                teeth: None,
            });
        };
        // The greater count is the crown wheel, whichever was typed first; the limits are those of any ratio.
        let text = &format!("{}/{}", teeth.crown, teeth.pinion);
        Ratio::read(Typed { text, ..entry }, asking)?;
        let reading = Reading::exact(teeth.ratio(), &unit::ONE);
        let ratio = Ratio::entry(
            asking.spot.key().shared(),
            asking.field.symbol,
            Kind::Ratio,
            &reading,
        );
        Ok(Self {
            ratio,
            teeth: Some(teeth),
        })
    }
}
