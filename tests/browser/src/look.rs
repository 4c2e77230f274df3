//! Takes a picture of a route at a size of screen, after a few taps and entries.

use std::path::PathBuf;
use std::time::Duration;

use fantoccini::wd::PrintSize;
use xtask::bundle::{Build, up_to_date};
use xtask::server::Server;

use crate::{Device, Journey, Machine, Outcome};

const HELP: &str = "\
look ROUTE WIDTHxHEIGHT FILE.png [what to do, in order ...]
  --type KEY=TEXT     type into a field
  --choose KEY=VALUE  choose from a list
  --tap WHAT          tap a selector, or what a key does (its data-do)
  --open ROUTE        go to another route
  --wait MILLISECONDS
  --shot FILE.png     another picture on the way
  --print FILE.pdf    what is printed on A4
  --prefer NAME=VALUE such as prefers-color-scheme=dark
  --tall              make the screen as high as the page before the last picture
  --check             complain of what sticks out, is too small to tap or has no name
  --mouse             a screen that is not touched
  --url ADDRESS       a server that runs already; else the quick build is brought up to date and served
  --release           the release instead of the quick build";

/// What to do on the page.
enum Deed {
    Type(String, String),
    Choose(String, String),
    Tap(String),
    Open(String),
    Wait(u64),
    Shot(PathBuf),
    Print(PathBuf),
    Prefer(String, String),
}

struct Wish {
    route: String,
    device: Device,
    file: PathBuf,
    deeds: Vec<Deed>,
    tall: bool,
    check: bool,
    url: Option<String>,
    build: Build,
}

/// Obeys `look ...`.
///
/// # Errors
/// When the words make no sense, or the page does not do what was asked.
pub fn look(words: &[String]) -> Outcome {
    let wish = wish(words).ok_or(HELP)?;
    let browser = xtask::setup::browser()?;
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .map_err(|error| error.to_string())?;
    runtime.block_on(async {
        let (server, pages) = match &wish.url {
            Some(_) => (None, PathBuf::new()),
            None => {
                let pages = up_to_date(wish.build)?;
                (Some(Server::start(&pages, 0)?), pages)
            }
        };
        let address = wish
            .url
            .clone()
            .or_else(|| server.as_ref().map(Server::url))
            .unwrap_or_default();
        let machine = Machine::start(&browser, pages).await?;
        let result = act(&machine, &wish, &address).await;
        machine.stop().await;
        result
    })
}

async fn act(machine: &Machine, wish: &Wish, address: &str) -> Outcome {
    let journey = Journey::at(machine, address).await?;
    journey.device(wish.device).await?;
    // Whatever fails, the picture shows how far it came.
    let done = perform(&journey, wish).await;
    if wish.tall {
        let height = journey
            .ask("return document.documentElement.scrollHeight;", vec![])
            .await?
            .as_u64()
            .and_then(|height| u32::try_from(height).ok())
            .unwrap_or(wish.device.height);
        let device = Device {
            height: height.clamp(wish.device.height, 12_000),
            ..wish.device
        };
        journey.device(device).await?;
    }
    journey.picture(&wish.file).await?;
    for line in journey.console_errors().await? {
        eprintln!("{line}");
    }
    if wish.check {
        journey.page_is_sound().await?;
    }
    done
}

async fn perform(journey: &Journey, wish: &Wish) -> Outcome {
    journey.open(&wish.route).await?;
    for deed in &wish.deeds {
        match deed {
            Deed::Type(key, text) => journey.enter(key, text).await?,
            Deed::Choose(key, value) => journey.choose(key, value).await?,
            Deed::Tap(what) => journey.tap(what).await?,
            Deed::Open(route) => journey.open(route).await?,
            Deed::Wait(time) => tokio::time::sleep(Duration::from_millis(*time)).await,
            Deed::Shot(file) => journey.picture(file).await?,
            Deed::Print(file) => {
                let pdf = journey.printed(PrintSize::A4).await?;
                std::fs::write(file, pdf)
                    .map_err(|error| format!("{}: {error}", file.display()))?;
            }
            Deed::Prefer(feature, value) => journey.prefer(&[(feature, value)]).await?,
        }
    }
    Ok(())
}

fn wish(words: &[String]) -> Option<Wish> {
    let mut words = words.iter();
    if words.next()? != "look" {
        return None;
    }
    let route = words.next()?.clone();
    let (width, height) = words.next()?.split_once('x')?;
    let mut wish = Wish {
        route,
        device: Device::touched(width.parse().ok()?, height.parse().ok()?),
        file: words.next()?.into(),
        deeds: Vec::new(),
        tall: false,
        check: false,
        url: None,
        build: Build::Dev,
    };
    while let Some(word) = words.next() {
        let mut pair = || {
            let (key, text) = words.next()?.split_once('=')?;
            Some((key.to_owned(), text.to_owned()))
        };
        match word.as_str() {
            "--type" => {
                let (key, text) = pair()?;
                wish.deeds.push(Deed::Type(key, text));
            }
            "--choose" => {
                let (key, value) = pair()?;
                wish.deeds.push(Deed::Choose(key, value));
            }
            "--prefer" => {
                let (feature, value) = pair()?;
                wish.deeds.push(Deed::Prefer(feature, value));
            }
            "--tap" => wish.deeds.push(Deed::Tap(words.next()?.clone())),
            "--open" => wish.deeds.push(Deed::Open(words.next()?.clone())),
            "--wait" => wish.deeds.push(Deed::Wait(words.next()?.parse().ok()?)),
            "--print" => wish.deeds.push(Deed::Print(words.next()?.into())),
            "--shot" => wish.deeds.push(Deed::Shot(words.next()?.into())),
            "--url" => wish.url = Some(words.next()?.clone()),
            "--tall" => wish.tall = true,
            "--check" => wish.check = true,
            "--mouse" => wish.device.touch = false,
            "--release" => wish.build = Build::Release,
            _ => return None,
        }
    }
    Some(wish)
}
