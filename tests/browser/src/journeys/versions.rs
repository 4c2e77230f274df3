//! New versions: kept whole or not at all, and taken up only when the user says so.

use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};

use serde_json::json;

use super::cases;
use crate::{Journey, Machine, Outcome};

cases![
    a_new_version_waits_for_a_yes_and_nothing_is_mixed,
    a_half_finished_upload_leaves_the_old_version_in_place,
];

/// What the new version's page has and the old one's has not.
const MARK: &str = "<meta name=\"newer\" content=\"yes\">";

async fn a_new_version_waits_for_a_yes_and_nothing_is_mixed(machine: &Machine) -> Outcome {
    let host = Host::of(&machine.pages)?;
    let journey = Journey::begin_in(machine, &host.folder).await?;
    journey.open("").await?;
    journey.wait_until_kept().await?;
    host.publish_a_new_version()?;
    journey.reload().await?;
    journey.wait_for("html[data-offline=waiting]").await?;
    // However often the page is loaded, it stays the old one.
    journey.reload().await?;
    journey.wait_for("html[data-offline=waiting]").await?;
    if journey.has("meta[name=newer]").await? {
        return Err("the new version came without a yes".into());
    }
    journey
        .ask(
            "document.dispatchEvent(new Event('acceptnewversion'));",
            vec![],
        )
        .await?;
    journey.wait_for("meta[name=newer]").await?;
    journey.wait_until_kept().await?;
    journey.go_offline();
    journey.reload().await?;
    journey.wait_for("meta[name=newer]").await?;
    let stores = "const done = arguments[0]; caches.keys().then((names) => done(names.length));";
    let stores = journey.ask_later(stores).await?;
    if stores == json!(1) {
        Ok(())
    } else {
        Err(format!("{stores} versions are kept"))
    }
}

async fn a_half_finished_upload_leaves_the_old_version_in_place(machine: &Machine) -> Outcome {
    let host = Host::of(&machine.pages)?;
    let journey = Journey::begin_in(machine, &host.folder).await?;
    journey.open("").await?;
    journey.wait_until_kept().await?;
    host.publish_a_new_version()?;
    host.cut_short("boot.js")?;
    journey.reload().await?;
    let update = "const done = arguments[0]; navigator.serviceWorker.getRegistration().then((r) => r.update()) \
                  .then((r) => { const w = r.installing; if (!w) return done('none'); \
                  w.onstatechange = () => done(w.state); if (w.state === 'redundant') done(w.state); }, () => done('failed'));";
    let state = journey.ask_later(update).await?;
    if state == json!("installed") || state == json!("activated") {
        return Err(format!("a version with a file cut short is {state}"));
    }
    journey.go_offline();
    journey.reload().await?;
    journey.wait_until_kept().await
}

/// A host of our own that can publish another version.
struct Host {
    folder: PathBuf,
}

impl Host {
    fn of(pages: &Path) -> Outcome<Self> {
        static NUMBER: AtomicU32 = AtomicU32::new(0);
        let folder = std::env::temp_dir().join(format!(
            "reckoner-host-{}-{}",
            std::process::id(),
            NUMBER.fetch_add(1, Ordering::Relaxed)
        ));
        copy(pages, &folder).map_err(|error| format!("{}: {error}", folder.display()))?;
        Ok(Self { folder })
    }

    fn publish_a_new_version(&self) -> Outcome {
        let page = self.folder.join("index.html");
        let text = std::fs::read_to_string(&page).map_err(|error| error.to_string())?;
        let newer = text.replacen("</head>", &format!("{MARK}</head>"), 1);
        if newer == text {
            return Err("the page has no head".into());
        }
        std::fs::write(&page, newer).map_err(|error| error.to_string())?;
        let worker = xtask::places::root().join("web/static/sw.js");
        std::fs::copy(worker, self.folder.join("sw.js")).map_err(|error| error.to_string())?;
        xtask::bundle::finish(&self.folder, false)
    }

    fn cut_short(&self, name: &str) -> Outcome {
        let file = self.folder.join(name);
        let whole = std::fs::read(&file).map_err(|error| error.to_string())?;
        std::fs::write(file, &whole[..whole.len() / 2]).map_err(|error| error.to_string())
    }
}

impl Drop for Host {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.folder);
    }
}

fn copy(from: &Path, to: &Path) -> std::io::Result<()> {
    std::fs::create_dir_all(to)?;
    for entry in std::fs::read_dir(from)? {
        let entry = entry?;
        let place = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy(&entry.path(), &place)?;
        } else {
            std::fs::copy(entry.path(), place)?;
        }
    }
    Ok(())
}
