//! Paint: areas of panels, films, mixes, litres, times on the clock, solvent, dew point, and the cheapest tins.

mod air;
mod area;
mod film;
mod kinds;
mod litres;
mod mix;
mod moisture;
mod outline;
mod polygon;
mod solvent;
mod sources;
mod stock;
mod times;
mod tins;

pub use air::{compressed_air_time, free_air, load_on_compressor};
pub use area::{
    Faces, box_area, curved_area, disc_area, painted_area, rectangle_area, trapezium_area,
    tube_area,
};
pub use film::{dry_film, spreading_rate, wet_film};
pub use kinds::{COMMON_PRACTICE, Defaults, Gun, LayerKind};
pub use litres::{
    area_from_rate, litres_by_film, litres_by_rate, litres_to_mix, rate_ready_to_spray,
};
pub use mix::{Amount, By, Component, ScaleStep, Shares, scale_steps};
pub use moisture::{DEW_MARGIN_KELVIN, dew_point, least_metal_temperature};
pub use outline::{
    Outline, disc_outline, outline_size, rectangle_outline, traced_outline, trapezium_outline,
};
pub use polygon::{Corners, outline_crosses};
pub use solvent::{
    ANNEX_II_B, Limit, ReadyMix, Subcategory, mixed_density, mixed_solids, solvent_content,
    solvent_content_less_water,
};
pub use stock::{coats_from_stock, film_from_stock};
pub use times::{CoatTime, LayerTimes, Mixes, mixes_in_pot_life, time_at, timetable};
pub use tins::{Purchase, Tin, cheapest_tins};
