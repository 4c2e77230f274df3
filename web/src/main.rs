//! The pages of the reckoner: everything that touches a browser. The reckoning is in `crates/`.

mod app;
mod browser;
mod desk;
mod drawings;
mod files;
mod joints;
mod link;
mod offline;
mod pages;
mod route;
mod settings;
mod shown;
mod state;
mod storage;
mod widgets;
mod words;

fn main() {
    app::start();
}
