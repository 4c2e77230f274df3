//! Thread forms: what follows from the diameter, the pitch and the flank angle.

use measure::{Angle, Area, Held, Kind, Length, Ratio, Source};

/// A thread form, each with its own flank angle and depth.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Form {
    /// ISO metric, 60°.
    Metric,
    /// Unified inch (UNC, UNF), 60°.
    Unified,
    /// Whitworth (BSW, BSF), 55°.
    Whitworth,
    /// British Association (BA), 47.5°.
    Association,
}

static ISO_724: Source = Source {
    title: "ISO 724 and ISO 68-1, ISO metric screw threads",
    place: "basic dimensions",
    held: Held::Seen,
};
static ASME_B1_1: Source = Source {
    title: "ASME B1.1, Unified Inch Screw Threads",
    place: "basic dimensions, tensile stress area",
    held: Held::Seen,
};
static BS_84: Source = Source {
    title: "BS 84, Screw threads of Whitworth form",
    place: "basic form",
    held: Held::Seen,
};
static BS_93: Source = Source {
    title: "BS 93, British Association screw threads",
    place: "basic form",
    held: Held::Memory,
};
static ISO_898: Source = Source {
    title: "ISO 898-1, Mechanical properties of fasteners",
    place: "nominal stress area, As = π/4 ((d2 + d3)/2)²",
    held: Held::Seen,
};

impl Form {
    /// The angle between the flanks, radians.
    #[must_use]
    pub fn flank_angle(self) -> f64 {
        match self {
            Self::Metric | Self::Unified => 60_f64,
            Self::Whitworth => 55.0,
            Self::Association => 47.5,
        }
        .to_radians()
    }

    /// From the major to the effective (pitch) diameter, in pitches.
    fn to_effective(self) -> f64 {
        match self {
            Self::Metric | Self::Unified => 0.75 * 0.75_f64.sqrt(),
            Self::Whitworth => 0.640_327,
            Self::Association => 0.6,
        }
    }

    /// From the major to the minor diameter of the bolt's root, in pitches.
    fn to_root(self) -> f64 {
        let sharp = 0.75_f64.sqrt();
        match self {
            // d3 = d1 - H/6, d1 = d - 1.25 H.
            Self::Metric | Self::Unified => (1.25 + 1.0 / 6.0) * sharp,
            Self::Whitworth => 1.280_654,
            Self::Association => 1.2,
        }
    }

    fn source(self) -> &'static Source {
        match self {
            Self::Metric => &ISO_724,
            Self::Unified => &ASME_B1_1,
            Self::Whitworth => &BS_84,
            Self::Association => &BS_93,
        }
    }
}

/// A thread.
#[derive(Debug, Clone)]
pub struct Thread {
    /// Its form.
    pub form: Form,
    /// The major diameter.
    pub major: Length,
    /// The pitch.
    pub pitch: Length,
}

impl Thread {
    /// The effective (pitch) diameter d2.
    ///
    /// # Units
    /// Metres.
    ///
    /// # Source
    /// ISO 724, ASME B1.1, BS 84, BS 93, by the form.
    #[must_use]
    pub fn effective(&self) -> Length {
        let to = self.form.to_effective();
        (&self.major - &self.pitch * to)
            .called("d2")
            .of_kind(Kind::Thickness)
            .cited(self.form.source())
    }

    /// The diameter at the root of the bolt's thread d3.
    ///
    /// # Units
    /// Metres.
    ///
    /// # Source
    /// ISO 724 with ISO 68-1, ASME B1.1, BS 84, BS 93, by the form.
    #[must_use]
    pub fn root(&self) -> Length {
        let to = self.form.to_root();
        (&self.major - &self.pitch * to)
            .called("d3")
            .of_kind(Kind::Thickness)
            .cited(self.form.source())
    }

    /// The minor diameter d1 of the basic profile, as tables print it.
    ///
    /// # Units
    /// Metres.
    ///
    /// # Source
    /// ISO 724, ASME B1.1 (d - 1.25 H); BS 84, BS 93 (both depths).
    #[must_use]
    pub fn minor(&self) -> Length {
        let to = match self.form {
            Form::Metric | Form::Unified => 1.25 * 0.75_f64.sqrt(),
            Form::Whitworth | Form::Association => self.form.to_root(),
        };
        (&self.major - &self.pitch * to)
            .called("d1")
            .of_kind(Kind::Thickness)
            .cited(self.form.source())
    }

    /// The area that stands for the thread in tension.
    ///
    /// Metric and Unified use the stress area; strengths of old Whitworth and BA bolts go with the area at the core.
    ///
    /// # Units
    /// Square metres.
    ///
    /// # Source
    /// ISO 898-1; ASME B1.1 (π/4 (D - 0.9743/n)²); core area: common practice of the old British standards, from memory.
    #[must_use]
    pub fn stress_area(&self) -> Area {
        let quarter = std::f64::consts::PI / 4.0;
        let area = match self.form {
            Form::Metric => ((self.effective() + self.root()) / 2.0).squared() * quarter,
            Form::Unified => (&self.major - &self.pitch * 0.9743).squared() * quarter,
            Form::Whitworth | Form::Association => self.root().squared() * quarter,
        };
        let source = if self.form == Form::Metric {
            &ISO_898
        } else {
            self.form.source()
        };
        area.called("As").of_kind(Kind::Section).cited(source)
    }

    /// Half the angle between the flanks, as a traced constant.
    #[must_use]
    pub fn half_flank(&self) -> Angle {
        Ratio::constant(
            "α",
            self.form.flank_angle() / 2.0,
            Kind::Angle,
            self.form.source(),
        )
    }
}
