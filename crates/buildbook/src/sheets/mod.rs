//! The sheets of the book, one module each.

pub mod conversion;
pub mod costs;
pub mod final_drive;
pub mod gearing;
pub mod handover;
pub mod marking;
pub mod paint;
pub mod springs;
pub mod torque;
pub mod vehicle;

use crate::{Row, Spec};

/// What a sheet holds, by its name.
#[must_use]
pub fn spec_of(sheet: &str) -> Option<&'static Spec> {
    Some(match sheet {
        "book" => crate::BookSheet::SPEC,
        "vehicle" => vehicle::VehicleSheet::SPEC,
        "gearing" => gearing::GearingSheet::SPEC,
        "springs" => springs::SpringsSheet::SPEC,
        "paint" => paint::PaintSheet::SPEC,
        "conversion" => conversion::ConversionSheet::SPEC,
        "costs" => costs::CostsSheet::SPEC,
        "torque" => torque::TorqueSheet::SPEC,
        "marking" => marking::MarkingSheet::SPEC,
        "final_drive" => final_drive::FinalDriveSheet::SPEC,
        "handover" => handover::HandoverSheet::SPEC,
        _ => return None,
    })
}
