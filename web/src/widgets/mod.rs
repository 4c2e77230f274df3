//! What pages are made of. A page names keys of entries and ids of results; labels, units, ±, errors and actions come
//! from the sheet's declaration, the findings and the words.
//!
//! # How a sheet's page is written
//!
//! ```ignore
//! const ANSWERS: &[&str] = &["gearing/top_speed", "gearing/speed_per_1000/*"];   // first: in the band at first
//! const PLATES: &[&Plate] = &[&drawings::gearing::SPEEDS];                        // beside the entries
//!
//! #[component]
//! pub fn GearingPage() -> Html {
//!     html! {
//!         <SheetPage sheet="gearing" answers={ANSWERS} plates={PLATES} below={below()}>
//!             <Group id="gearing/tyre">                       // heading from words.groups, its rows on one card
//!                 <EntryRow at="gearing/tyre" />              // any form: number, choice, yes/no, text, money, date
//!                 <EntryRow at="gearing/roll_out" />
//!             </Group>
//!             <Group id="gearing/gears" card={false}>         // a list brings its own card
//!                 <EntryList list="gearing/gears" found="gearing/speed_per_1000" titled={false} />
//!             </Group>
//!         </SheetPage>
//!     }
//! }
//!
//! fn below() -> Html {                                        // across both columns
//!     html! { <><BeforeNowTable sheet="gearing" /><ResultTable sheet="gearing" results={&["gearing/hill/*"]} /></> }
//! }
//! ```
//!
//! - `Group` with `folds` closes to one line that shows its own result; a call to an entry in it opens it, and on paper it stands open.
//! - `SheetPage` brings the band, the row of other answers, the remarks, the keypad, working and work back.
//! - `EntryList` makes its rows from the sheet's declaration, nested lists too. `found` is the result that a row's
//!   heading shows; the row's id is put after it. Rows of one or two numbers stand on one line. A field called `name`
//!   names the row. Keys of a subject's own (`Other side`) are [`RowKey`]s.
//! - `ResultFigure` is one figure within a sentence or a cell; `ResultRow` a row that a press brings into the band.
//! - A drawing is a static `Plate`: see `drawings`.
//! - Every widget draws nothing when its key or id is unknown; a page never has to ask whether something is there.
//! - Inside `html!`, an `Option` that is `None` changes the number of children, and fields beside it lose the cursor:
//!   write `{ thing.unwrap_or_default() }`, or an `if`, which keep their place when there is nothing to draw.
//! - Hooks for tests: `data-key` on fields, `data-choice` within them, `data-result` on figures, `data-do` on keys,
//!   `data-row` and `data-list` on rows and lists, `data-remark` on remarks.

mod answer_band;
mod before_now;
mod choices;
mod drawing_frame;
mod entry_list;
mod entry_row;
mod group;
mod icon;
mod keypad;
pub mod keypad_text;
mod mathml;
mod money_working;
mod motif;
mod paste;
mod placing;
mod preset_list;
mod rail;
mod remarks;
mod results;
mod sheet_page;
mod work_back;
mod working;

pub use answer_band::{AnswerBand, OtherAnswers};
pub use before_now::{BeforeNowTable, before_and_now_text};
pub use choices::Choices;
pub use drawing_frame::{DrawingFrame, table};
pub use entry_list::{EntryList, RowKey};
pub use entry_row::{EntryRow, id_of};
pub use group::{Folds, Group};
pub use icon::{Icon, icon};
pub use keypad::Keypad;
pub use motif::motif;
pub use placing::{Placing, Spot};
pub use preset_list::{PresetList, Presets};
pub use rail::{Drawers, Notices, OfflineReady, Rail, Wiping, standing};
pub use remarks::{Remarks, Which, rank_word, remark_said};
pub use results::{ResultFigure, ResultRow, ResultTable, column_cell, column_head};
pub use sheet_page::SheetPage;
pub use work_back::WorkBackPanel;
pub use working::WorkingPanel;
