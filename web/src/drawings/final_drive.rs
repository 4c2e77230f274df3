//! The drawings of the final drive: the tooth marks of the trials, the guide to reading them, and the packs of shims.

mod guide;
mod marks;
mod packs;
mod tooth;

pub use guide::GUIDE;
pub use marks::MARKS;
pub use packs::PACK;
