//! Inputs as quantities: a text with its unit is read as a person's entry would be.

use measure::{Ask, Dimension, Kind, Manner, Quantity, Reading, System, read};

use crate::Inputs;
use crate::inputs::number_of;

impl Inputs {
    /// What a text says, with its ± where it gives one; exact where it does not.
    ///
    /// # Errors
    /// When it is absent, has no unit, could mean two things, or cannot be read.
    pub fn reading(&self, name: &str, kind: Kind) -> Result<Reading, String> {
        let ask = Ask {
            signed: true,
            ..Ask::of(kind, &Manner::of(System::Metric))
        };
        let value = self.value(name)?;
        let Some(text) = value.as_str() else {
            // A number without a unit is a pure number.
            return match kind {
                Kind::Ratio | Kind::Percent | Kind::Slope | Kind::Count => {
                    Ok(Reading::exact(number_of(name, value)?, ask.bare))
                }
                _ => Err(format!("input `{name}` wants a text with a unit")),
            };
        };
        reading_of(name, text, &ask)
    }

    /// A quantity under the name of its input.
    ///
    /// # Errors
    /// As [`Inputs::reading`].
    pub fn quantity<D: Dimension>(&self, name: &str, kind: Kind) -> Result<Quantity<D>, String> {
        let reading = self.reading(name, kind)?;
        Ok(Quantity::entry(name, symbol_of(name), kind, &reading))
    }

    /// A list of quantities, named by their place: `thickness/0`.
    ///
    /// # Errors
    /// As [`Inputs::reading`].
    pub fn quantities<D: Dimension>(
        &self,
        name: &str,
        kind: Kind,
    ) -> Result<Vec<Quantity<D>>, String> {
        let ask = Ask {
            signed: true,
            ..Ask::of(kind, &Manner::of(System::Metric))
        };
        self.texts(name)?
            .into_iter()
            .enumerate()
            .map(|(place, text)| {
                let reading = reading_of(name, text, &ask)?;
                Ok(Quantity::entry(
                    format!("{name}/{place}"),
                    symbol_of(name),
                    kind,
                    &reading,
                ))
            })
            .collect()
    }
}

/// The name of an input as a symbol. Symbols are written down in the code; those that are read from a file live as long as the run.
fn symbol_of(name: &str) -> &'static str {
    name.to_owned().leak()
}

fn reading_of(name: &str, text: &str, ask: &Ask) -> Result<Reading, String> {
    let reading =
        read(text, ask).map_err(|error| format!("input `{name}`: `{text}`: {:?}", error.why))?;
    let pure = matches!(ask.kind, Kind::Ratio | Kind::Count | Kind::Slope);
    if reading.bare && !pure {
        return Err(format!("input `{name}`: `{text}` has no unit"));
    }
    if reading.ambiguous.is_some() {
        return Err(format!("input `{name}`: `{text}` could mean two things"));
    }
    Ok(reading)
}

/// One reader for each kind that a formula asks for.
macro_rules! readers {
    ($($name:ident: $kind:ident => $quantity:ident;)*) => {
        impl Inputs {
            $(
                #[doc = concat!("A [`measure::", stringify!($quantity), "`] read as [`Kind::", stringify!($kind), "`].")]
                ///
                /// # Errors
                /// As [`Inputs::reading`].
                pub fn $name(&self, name: &str) -> Result<measure::$quantity, String> {
                    self.quantity(name, Kind::$kind)
                }
            )*
        }
    };
}

readers! {
    length: Length => Length;
    distance: Distance => Length;
    film: Film => Length;
    area: Area => Area;
    volume: Volume => Volume;
    mass: Mass => Mass;
    force: Force => Force;
    torque: Torque => Torque;
    pressure: Pressure => Pressure;
    stress: Stress => Stress;
    angle: Angle => Angle;
    speed: Speed => Speed;
    rotation: Rotation => Rotation;
    spring_rate: SpringRate => SpringRate;
    power: Power => Power;
    temperature: Temperature => Temperature;
    seconds: Seconds => Time;
    minutes: Time => Time;
    density: Density => Density;
    ratio: Ratio => Ratio;
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::*;

    fn inputs(text: &str) -> Inputs {
        Inputs::new(BTreeMap::from([(
            "x".into(),
            toml::Value::String(text.into()),
        )]))
    }

    #[test]
    fn a_text_with_a_unit_is_a_quantity_and_without_a_plus_minus_it_is_exact() {
        let reading = inputs("412.5 mm").reading("x", Kind::Length).expect("read");
        assert!((reading.value - 0.4125).abs() < 1e-15);
        assert_eq!((reading.plus, reading.minus), (0.0, 0.0));
        let reading = inputs("412.5 ± 0.5 mm")
            .reading("x", Kind::Length)
            .expect("read");
        assert!((reading.plus - 0.0005).abs() < 1e-15);
    }

    #[test]
    fn a_text_without_a_unit_or_of_another_kind_is_refused() {
        assert!(inputs("412.5").length("x").is_err());
        assert!(inputs("412.5 kg").length("x").is_err());
        assert!(inputs("4.11").ratio("x").is_ok());
    }
}
