//! Opening the reckoner: from a host, from a sub-path, from a file, without a network.

use super::cases;
use crate::{Journey, Machine, Outcome};

cases![
    it_opens_on_the_questions_and_breaks_no_policy,
    it_opens_again_when_the_server_is_gone,
    it_opens_from_a_sub_path_of_a_host_that_carries_other_things,
    it_opens_from_a_file,
];

async fn it_opens_on_the_questions_and_breaks_no_policy(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.page_is_sound().await
}

async fn it_opens_again_when_the_server_is_gone(machine: &Machine) -> Outcome {
    let journey = Journey::begin(machine).await?;
    journey.open("").await?;
    journey.wait_until_kept().await?;
    journey.go_offline();
    journey.reload().await?;
    journey.open("#/gearing").await?;
    journey.console_is_quiet().await
}

async fn it_opens_from_a_sub_path_of_a_host_that_carries_other_things(
    machine: &Machine,
) -> Outcome {
    let journey = Journey::begin_under(machine, "/workshop/reckoner/").await?;
    journey.open("").await?;
    journey.wait_until_kept().await?;
    journey.console_is_quiet().await?;
    journey.go_offline();
    journey.reload().await
}

async fn it_opens_from_a_file(machine: &Machine) -> Outcome {
    let page = format!("file://{}", machine.pages.join("index.html").display());
    let journey = Journey::at(machine, &page).await?;
    journey.open("").await?;
    journey.open("#/vehicle").await?;
    journey.enter("vehicle/front_unladen", "1080 exact").await?;
    journey.enter("vehicle/rear_unladen", "795 exact").await?;
    journey
        .expect_that("vehicle/unladen", "1875 kg", |shown| {
            shown.starts_with("1875")
        })
        .await?;
    journey.open("#/gearing").await
}
