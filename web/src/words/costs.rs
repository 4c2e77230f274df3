//! The words of the costs sheet.

use super::{Phrase, Subject, list, pair, same, told, told_of};

/// The title of the drawing of the budget.
pub const BUDGET_TITLE: Phrase = same("The budget");
/// What is to be seen in it.
pub const BUDGET_SAID: Phrase = same(
    "A bar of the whole limit, cut into what is paid, committed, planned, held back and left: {0}.",
);
/// The same, when the plans go over the limit.
pub const BUDGET_OVER: Phrase = same("The plans go {0} over the limit.");
/// What of the limit each part is.
pub const OF_LIMIT: Phrase = same("Of the limit");
/// A part of the budget.
pub const PART: Phrase = same("Part");
/// An amount.
pub const AMOUNT: Phrase = same("Amount");
/// The title of the drawing of a choice between two ways.
pub const CHOICE_TITLE: Phrase = same("{0}: where both cost the same");
/// What is to be seen in it.
pub const CHOICE_SAID: Phrase = same("The cost of {0} and of {1} over the count. {2}");
/// Days along the axis.
pub const DAYS: Phrase = same("Days");
/// Pieces along the axis.
pub const PIECES: Phrase = same("Pieces");
/// The cost up the axis.
pub const COST: Phrase = same("Cost");
/// One way.
pub const HIRE: Phrase = pair("hire", "rent");
/// Another way.
pub const BUY: Phrase = same("buy");
/// One way.
pub const SEND_OUT: Phrase = same("send out");
/// Another way.
pub const DO_HERE: Phrase = same("do here");
/// Where the lines meet.
pub const ALIKE_AT: Phrase = same("Both cost the same at {0}.");
/// They do not meet.
pub const NEVER_ALIKE: Phrase = same("They never cost the same.");

/// What the sums below a table are.
pub const EXACT_SUMS: Phrase = same("Exact: every row and column adds up.");

/// A word of the costs page by its name.
pub fn word(name: &str) -> Phrase {
    WORDS.word(name).unwrap_or(same("—"))
}

const LINES: &[&str] = &["costs/lines"];
const HIRES: &[&str] = &["costs/hire"];
const SENDS: &[&str] = &["costs/send"];

/// The words of the costs sheet.
pub static WORDS: Subject = Subject {
    name: same("Costs"),
    asks: same("What is left to spend?"),
    tells: same(
        "What is left to spend, who owes whom, and whether to hire or buy, send out or do it here.",
    ),
    fields: &[
        ("costs/limit", same("All that may be spent")),
        (
            "costs/contingency_percent",
            same("Held back, of what is not yet paid"),
        ),
        (
            "costs/contingency_sum",
            same("Held back, a fixed sum instead"),
        ),
        ("costs/rounding", same("A tie is rounded")),
        ("costs/tax", same("Usual rate of tax, %")),
        ("costs/tax_counts", same("Tax counts as cost")),
        ("costs/hour_rate", same("An own hour, reckoned at")),
        ("costs/value_done", same("Value when done")),
        ("costs/lines/*/what", same("What")),
        ("costs/lines/*/state", same("Stands")),
        ("costs/lines/*/kind", same("Money")),
        ("costs/lines/*/sheet", same("Belongs to")),
        ("costs/lines/*/job", same("Job, by name")),
        ("costs/lines/*/quantity", same("How many")),
        ("costs/lines/*/price", same("Price for one")),
        ("costs/lines/*/tax_basis", same("Tax")),
        ("costs/lines/*/tax", same("Rate of tax, %")),
        ("costs/lines/*/carriage", pair("Carriage", "Shipping")),
        ("costs/lines/*/duty", same("Customs duty, %")),
        ("costs/lines/*/rate", same("Exchange rate")),
        ("costs/lines/*/rate_day", same("Rate of the day")),
        (
            "costs/lines/*/deposit",
            pair("Deposit on the old unit", "Core deposit"),
        ),
        ("costs/lines/*/deposit_state", same("The deposit is")),
        ("costs/lines/*/paid_so_far", same("Paid so far")),
        ("costs/lines/*/payer", same("Paid by")),
        ("costs/lines/*/day", same("Day")),
        ("costs/lines/*/supplier", same("From whom")),
        ("costs/lines/*/holds_until", same("Quote holds until")),
        ("costs/lines/*/note", same("Anything else")),
        ("costs/priced/*/state", same("Stands")),
        ("costs/priced/*/pinned_quantity", same("Pinned: how many")),
        ("costs/priced/*/pinned_price", same("Pinned: price for one")),
        ("costs/priced/*/pinned_what", same("Pinned: what")),
        ("costs/priced/*/pinned_sheet", same("Pinned: from")),
        ("costs/priced/*/tax_basis", same("Tax")),
        ("costs/priced/*/tax", same("Rate of tax, %")),
        ("costs/priced/*/paid_so_far", same("Paid so far")),
        ("costs/priced/*/rate", same("Exchange rate")),
        ("costs/priced/*/rate_day", same("Rate of the day")),
        ("costs/priced/*/payer", same("Paid by")),
        ("costs/priced/*/day", same("Day")),
        ("costs/priced/*/supplier", same("From whom")),
        ("costs/priced/*/note", same("Anything else")),
        ("costs/payers/*/name", same("Name")),
        ("costs/payers/*/share", same("Share of the cost")),
        ("costs/hours/*/what", same("Job")),
        ("costs/hours/*/hours", same("Hours")),
        (
            "costs/hours/*/rate",
            same("An hour of it, where not the usual"),
        ),
        ("costs/hire/*/what", same("What")),
        ("costs/hire/*/follows", same("Prices and days follow")),
        (
            "costs/hire/*/hire_day",
            pair("Hire for a day", "Rent for a day"),
        ),
        ("costs/hire/*/hire_once", same("Delivery and collection")),
        ("costs/hire/*/buy_price", same("Price to buy")),
        ("costs/hire/*/resale", same("Fetches afterwards")),
        (
            "costs/hire/*/upkeep_day",
            same("Upkeep for a day, when own"),
        ),
        ("costs/hire/*/days", same("Days needed")),
        ("costs/send/*/what", same("What")),
        ("costs/send/*/follows", same("How many follows")),
        ("costs/send/*/count", same("Pieces")),
        ("costs/send/*/send_each", same("Sent out: for each")),
        ("costs/send/*/send_once", same("Sent out: once")),
        ("costs/send/*/here_each", same("Here: materials for each")),
        (
            "costs/send/*/here_once",
            same("Here: tools and materials once"),
        ),
        ("costs/send/*/hours_each", same("Here: own hours for each")),
        ("costs/send/*/hours_once", same("Here: own hours once")),
    ],
    hints: &[
        (
            "costs/contingency_percent",
            pair(
                "In per cent of what is committed and planned.",
                "In percent of what is committed and planned.",
            ),
        ),
        ("costs/tax_counts", same("No, when it is claimed back.")),
        (
            "costs/lines/*/price",
            same("Another currency by its sign or letters: €120, CHF 80."),
        ),
        (
            "costs/lines/*/rate",
            same("What one unit of that currency costs."),
        ),
        (
            "costs/lines/*/duty",
            same("On goods and carriage, without tax."),
        ),
        (
            "costs/lines/*/paid_so_far",
            same("While it is not paid in full."),
        ),
        (
            "costs/payers/*/share",
            same("1 and 1 for halves; 60 and 40; 2 and 1."),
        ),
        (
            "costs/send/*/send_once",
            same("Setting up, carriage both ways."),
        ),
        ("costs/send/*/hours_once", same("Setting up, learning.")),
    ],
    choices: &[
        ("planned", same("Planned")),
        ("committed", same("Committed")),
        ("paid", same("Paid")),
        ("bought", same("Bought")),
        ("returned", same("Returned")),
        ("sold", same("Sold")),
        ("nothing", same("Nothing")),
        ("marking-template", same("Drilling template")),
        ("other", same("Other")),
        ("in", same("In the price")),
        ("out", same("On top")),
        ("none", same("None")),
        ("costs/lines/*/deposit_state=out", same("Still out")),
        ("back", same("Back")),
        ("kept", same("Kept by them")),
        ("half_even", same("To the even digit")),
        ("half_up", same("Up")),
    ],
    groups: &[
        ("costs/budget", same("Budget")),
        ("costs/lines", same("Lines")),
        ("costs/priced", same("From other sheets")),
        ("costs/payers", same("Who pays")),
        ("costs/hours", same("Own hours, apart from cash")),
        ("costs/hire", pair("Hire or buy?", "Rent or buy?")),
        ("costs/send", same("Send out or do here?")),
        ("costs/done", same("When it is done")),
        ("costs/tax_and_rounding", same("Tax and rounding")),
        ("costs/by_group", same("By sheet and job")),
        ("costs/owes", same("Who owes whom")),
        ("costs/table", same("As a table, out and in")),
        ("costs/before", same("Before and now")),
    ],
    lists: &[
        (
            "costs/lines",
            list(same("Lines"), same("line"), same("Line {0}")),
        ),
        (
            "costs/priced",
            list(same("From other sheets"), same("line"), same("Line {0}")),
        ),
        (
            "costs/payers",
            list(same("Who pays"), same("payer"), same("Payer {0}")),
        ),
        (
            "costs/hours",
            list(same("Own hours"), same("job"), same("Job {0}")),
        ),
        (
            "costs/hire",
            list(
                pair("Hire or buy?", "Rent or buy?"),
                same("question"),
                same("Question {0}"),
            ),
        ),
        (
            "costs/send",
            list(
                same("Send out or do here?"),
                same("question"),
                same("Question {0}"),
            ),
        ),
    ],
    results: &[
        told("costs/left", same("Left to spend")),
        told("costs/room", same("Can still be planned")),
        told("costs/paid", same("Paid")),
        told("costs/committed", same("Committed, not yet paid")),
        told("costs/planned", same("Planned")),
        told("costs/contingency", same("Held back")),
        told("costs/total", same("Paid, committed and planned")),
        told("costs/to_come_back", same("Deposits still to come back")),
        told("costs/hours_value", same("Own hours")),
        told("costs/over_cash", same("Over the cash, when done")),
        told("costs/over_all", same("Over cash and hours, when done")),
        told("costs/each_hour", same("Over the cash, for each own hour")),
        told_of("costs/lines/*", LINES, same("{0}")),
        told("costs/priced/*", same("{0}")),
        told("costs/group/*", same("{0}")),
        told_of("costs/hire/*/first", HIRES, pair("{0}: hire", "{0}: rent")),
        told_of("costs/hire/*/second", HIRES, same("{0}: buy")),
        told_of("costs/send/*/first", SENDS, same("{0}: send out")),
        told_of(
            "costs/send/*/second",
            SENDS,
            same("{0}: do here, hours counted"),
        ),
        told_of(
            "costs/send/*/cash/first",
            SENDS,
            same("{0}: send out, in cash"),
        ),
        told_of(
            "costs/send/*/cash/second",
            SENDS,
            same("{0}: do here, in cash alone"),
        ),
        told_of(
            "costs/send/*/earned_each_hour",
            SENDS,
            same("{0}: an own hour earns"),
        ),
    ],
    remarks: &[
        ("over_limit", same("The plans go over the limit.")),
        (
            "line_without_price",
            same("{0}: no price yet, so it is not counted."),
        ),
        (
            "line_without_rate",
            same("{0}: in another currency; without an exchange rate it is not counted."),
        ),
        (
            "paid_too_much",
            same("{0}: more is paid than it comes to; it is not counted."),
        ),
        (
            "line_refused",
            same("{0}: its amounts do not go together; it is not counted."),
        ),
        (
            "line_unreadable",
            same("{0}: an entry cannot be read, so it is not counted."),
        ),
        (
            "sale_not_sure",
            same("{0}: counted as coming in, though it is not sold yet."),
        ),
        (
            "no_longer_on_its_sheet",
            same("{0}: its sheet no longer asks for it."),
        ),
        (
            "pinned_differs",
            same("{0}: pinned; its sheet now says otherwise."),
        ),
        (
            "paid_not_pinned",
            same("{0}: paid, but still follows its sheet. Pin it to what was paid."),
        ),
        (
            "rate_undated",
            same("An exchange rate without its day soon means nothing."),
        ),
        (
            "paid_by_nobody",
            same(
                "Some of what is paid is by none of those who pay: it is left out of who owes whom.",
            ),
        ),
        (
            "duty_is_for_the_customs",
            same("What duty and tax are due is for the customs to say; this is a reckoning."),
        ),
    ],
    plates: &[
        (
            "costs/budget",
            same("Enter all that may be spent, and one line with its price."),
        ),
        (
            "costs/break_even",
            pair(
                "Enter a day's hire and the price to buy.",
                "Enter a day's rent and the price to buy.",
            ),
        ),
    ],
    words: &[
        ("goods", same("Goods")),
        ("charged", pair("Goods and carriage", "Goods and shipping")),
        ("net", same("Without tax")),
        ("duty", same("Duty")),
        ("tax", same("Tax")),
        ("deposit", same("Deposit")),
        ("total_abroad", same("Total, in its currency")),
        ("total", same("Total")),
        ("comes_in", same("Comes in")),
        ("paid", same("Paid")),
        ("committed", same("Committed")),
        ("planned", same("Planned")),
        ("contingency", same("Held back")),
        ("left", same("Left")),
        ("room", same("Room")),
        ("room_with_held", same("Can still be planned")),
        ("coin", same("One smallest unit, for what is held back")),
        ("fixed", same("Once")),
        ("each", same("For each")),
        ("count", same("How many")),
        (
            "fixed_first",
            pair("Hired or sent out, once", "Rented or sent out, once"),
        ),
        (
            "each_first",
            pair(
                "Hired or sent out, for each",
                "Rented or sent out, for each",
            ),
        ),
        ("fixed_second", same("Bought or done here, once")),
        ("each_second", same("Bought or done here, for each")),
        ("break_even", same("Both cost the same at")),
        ("hours", same("Hours")),
        ("send_total", same("Sent out")),
        ("here_total", same("Done here, in cash")),
        ("earned_each_hour", same("An own hour earns")),
        ("hours_value", same("Own hours")),
        ("cash", same("All cash")),
        ("over_cash", same("Over the cash")),
        ("over_all", same("Over cash and hours")),
        ("each_hour", same("For each own hour")),
        ("100", same("100")),
        ("0", same("0")),
        ("exact", same("exact")),
        ("pin", same("Pin")),
        ("unpin", same("Follow its sheet again")),
        ("pinned", same("pinned")),
        ("follows", same("follows {0}")),
        ("gone", same("no longer asked for")),
        ("sheet_says", same("its sheet now says {0}")),
        ("times", same("{0} × {1}")),
        (
            "nothing_priced",
            same("Paint, gearing and springs bring their purchases here by themselves."),
        ),
        ("owes", same("{0} pays {1} to {2}.")),
        ("even", same("Nobody owes anybody.")),
        (
            "needs_payers",
            same("Name two who pay, and mark each line with who paid it."),
        ),
        ("payer_paid", same("Paid")),
        ("payer_fair", same("Fair share")),
        ("payer_ahead", same("Ahead or behind")),
        ("payer", same("Payer")),
        ("group", same("Belongs to")),
        ("unassigned", same("By nobody named")),
        ("all", same("All")),
        ("hire_cheaper", pair("Hire: {0} less.", "Rent: {0} less.")),
        ("buy_cheaper", same("Buy: {0} less.")),
        ("send_cheaper", same("Send out: {0} less.")),
        ("here_cheaper", same("Do it here: {0} less.")),
        (
            "here_cheaper_cash",
            same("In cash alone, doing it here costs {0} less."),
        ),
        (
            "send_cheaper_cash",
            same("Even in cash alone, sending it out costs {0} less."),
        ),
        ("same_cost", same("Both cost the same.")),
        (
            "even_at_days",
            same("Both cost the same at {0}\u{a0}days; from day {1} on it is better to {2}."),
        ),
        (
            "even_at_pieces",
            same("Both cost the same at {0}\u{a0}pieces; from {1} on it is better to {2}."),
        ),
        ("never_days", same("However many days: {0} costs less.")),
        ("never_pieces", same("However many pieces: {0} costs less.")),
        ("hour_earns", same("An own hour spent on it earns {0}.")),
        ("save_table", same("Save as a table (CSV)")),
        ("take_table", same("Bring a table in")),
        (
            "paste_table",
            same(
                "Paste a table, or choose a file. The first line names the columns: what, price, state …",
            ),
        ),
        ("choose_file", same("Choose a file")),
        ("rows_found", same("{0} lines would come in.")),
        ("one_row_found", same("One line would come in.")),
        ("take_rows", same("Bring them in")),
        ("no_problems", same("All of it can be read.")),
        ("problem_row", same("Row {0}, {1}: “{2}”")),
        (
            "problem_unreadable",
            same("cannot be read; it comes in as it stands, to be mended there."),
        ),
        (
            "problem_column",
            same("is no column of ours; its cells go to the note."),
        ),
        (
            "problem_surplus",
            same("is one cell too many; it goes to the note."),
        ),
        (
            "problem_quotes",
            same("The quotes do not match here; look at what comes of it."),
        ),
        (
            "problem_heading",
            same("The first line names no columns: the cells are taken as what, price, state."),
        ),
        (
            "problem_from_sheet",
            same("stands here already, priced from its sheet; it is left out."),
        ),
        ("file_name", same("costs")),
        ("more_about", same("More about it")),
        ("less_about", same("Less")),
        ("runs_out", same("The quote for {0} held until {1}.")),
        ("limit_for", same("To keep {0}, the limit must be {1}.")),
    ],
};
