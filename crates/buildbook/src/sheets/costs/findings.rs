//! What the entries of the costs sheet come to.

use std::rc::Rc;

use measure::{Decimal, Money};
use trade::costs::settle::settlement;
use trade::costs::standing::{left_to_spend, part_sum, room_to_plan, standing};
use trade::costs::worth::{hours_in_all, value_of_hours, worth_when_done};
use trade::costs::{
    Contingency, GroupSum, LineKind, LineState, OwnHours, Payer, Reckoned, Settlement, Standing,
    Terms, WorthWhenDone,
};

use super::CostsSheet;
use super::choices::{HireFinding, SendFinding, hire, put_choice};
use super::lines::{Group, LineFinding, lines};
use crate::key::joined;
use crate::sheets::marking::MarkingFindings;
use crate::{All, Found, Key, Lack, Rank, Read, Remark, SheetFindings, Why};

/// Someone who pays, and how they stand.
#[derive(Debug, Clone, PartialEq)]
pub struct PayerFinding {
    /// The id of their row.
    pub id: Rc<str>,
    /// Their name.
    pub name: Rc<str>,
    /// What they have paid.
    pub paid: Money,
}

/// What the costs sheet finds.
#[derive(Debug, Clone)]
pub struct CostsFindings {
    /// The entries as they were read.
    pub sheet: Rc<CostsSheet>,
    /// Results, remarks and errors.
    pub found: Found,
    /// How amounts are reckoned.
    pub terms: Terms,
    /// Every line, in its order.
    pub lines: Vec<LineFinding>,
    /// Where the money stands.
    pub standing: Result<Standing, Lack>,
    /// The sums by sheet or job.
    pub groups: Vec<(Group, GroupSum)>,
    /// Those who pay.
    pub payers: Vec<PayerFinding>,
    /// What is paid without saying by whom.
    pub unassigned: Money,
    /// Who owes whom; the places are those of `payers`.
    pub settlement: Result<Settlement, Lack>,
    /// Own hours in all.
    pub hours: Result<Decimal, Lack>,
    /// What is left over when the vehicle is done.
    pub worth: Result<WorthWhenDone, Lack>,
    /// Hire or buy?
    pub hire: Vec<HireFinding>,
    /// Send out or do here?
    pub send: Vec<SendFinding>,
}

impl SheetFindings for CostsFindings {
    fn found(&self) -> &Found {
        &self.found
    }
}

/// What the entries of the costs sheet come to, with what the sheets that buy have found.
#[must_use]
pub fn findings(
    read: &Read<CostsSheet>,
    buyers: &[&Found],
    marking: &MarkingFindings,
) -> CostsFindings {
    let mut found = Found::of(read);
    let sheet = Rc::clone(&read.sheet);
    let terms = Terms {
        home: read.currency,
        rounding: read.rounding,
        tax_counts: sheet.tax_counts.value().copied().unwrap_or(true),
    };
    let purchases: Vec<_> = buyers.iter().flat_map(|found| &found.purchases).collect();
    found.begun |= !purchases.is_empty();
    let lines = lines(&sheet, &purchases, &terms);
    for line in &lines {
        let total = line
            .amounts
            .as_ref()
            .map_err(Clone::clone)
            .map(|amounts| Reckoned {
                money: amounts.total,
                working: amounts.working.clone(),
            });
        found.put_money(line.key.as_str(), total);
    }
    let contingency = contingency(&sheet, &terms);
    let placed: Vec<_> = lines.iter().filter_map(LineFinding::placed).collect();
    let stands = contingency
        .clone()
        .and_then(|contingency| Ok(standing(&placed, &contingency, &terms)?));
    put_standing(&mut found, &sheet, &stands, contingency, &terms);
    let groups = groups(&lines, &stands);
    for (group, _) in &groups {
        let name = group.name();
        let theirs = placed.iter().filter(|line| line.group == name);
        let total = part_sum("total", theirs, |line| Some(line.amounts.total), &terms);
        found.put_money(joined(&["costs/group", &name]), total.map_err(Lack::from));
    }
    let (payers, unassigned) = payers(&sheet, &stands, &terms);
    let settlement = who_owes_whom(&sheet, &payers);
    let (hours, hours_value) = own_hours(&sheet, &terms);
    found.put_money("costs/hours_value", hours_value.clone());
    let worth = worth(&sheet, &stands, &hours, &hours_value, &terms);
    put_worth(&mut found, &worth, &sheet);
    let followed = &marking.sheet;
    let hire = sheet.hire.iter().map(|row| hire(row, followed, &terms));
    let hire: Vec<_> = hire.collect();
    for asked in &hire {
        put_choice(
            &mut found,
            asked.key.as_str(),
            asked.answer.as_ref(),
            &asked.key.under("days"),
        );
    }
    let send = sheet.send.iter();
    let send = send.map(|row| super::choices::send(row, (&sheet, followed), &terms));
    let send: Vec<_> = send.collect();
    for asked in &send {
        let at = asked.key.as_str();
        let with_hours = asked.answer.as_ref().map(|answer| &answer.with_hours);
        put_choice(&mut found, at, with_hours, &asked.key.under("count"));
        let cash = asked.answer.as_ref().map(|answer| &answer.cash);
        put_choice(
            &mut found,
            &format!("{at}/cash"),
            cash,
            &asked.key.under("count"),
        );
        let earned = match &asked.answer {
            Ok(answer) => answer
                .earned_each_hour
                .clone()
                .ok_or_else(|| Lack::needs([asked.key.under("hours_each")])),
            Err(lack) => Err(lack.clone()),
        };
        found.put_money(format!("{at}/earned_each_hour"), earned);
    }
    let mut findings = CostsFindings {
        sheet,
        found,
        terms,
        lines,
        standing: stands,
        groups,
        payers,
        unassigned,
        settlement,
        hours,
        worth,
        hire,
        send,
    };
    remark(&mut findings);
    findings
}

fn contingency(sheet: &CostsSheet, terms: &Terms) -> Result<Contingency, Lack> {
    match sheet.contingency_sum.ask() {
        Ok(sum) => {
            sum.compared(&Money::zero(terms.home))?;
            Ok(Contingency::Sum(*sum))
        }
        Err(lack) if lack.is_blank() => sheet
            .contingency_percent
            .ask()
            .map(|share| Contingency::Percent(*share)),
        Err(lack) => Err(lack),
    }
}

fn put_standing(
    found: &mut Found,
    sheet: &CostsSheet,
    stands: &Result<Standing, Lack>,
    contingency: Result<Contingency, Lack>,
    terms: &Terms,
) {
    let standing = stands.as_ref().map_err(Clone::clone);
    let left = (sheet.limit.ask(), standing.clone())
        .all()
        .and_then(|(limit, standing)| Ok(left_to_spend(limit, standing, terms)?));
    let room = (left.clone(), contingency)
        .all()
        .and_then(|(left, contingency)| Ok(room_to_plan(&left.money, &contingency, terms)?));
    found.headline_money("costs/left", left);
    found.put_money("costs/room", room);
    let part =
        |pick: fn(&Standing) -> &Reckoned| standing.clone().map(|standing| pick(standing).clone());
    found.put_money("costs/paid", part(|standing| &standing.paid));
    found.put_money("costs/committed", part(|standing| &standing.committed));
    found.put_money("costs/planned", part(|standing| &standing.planned));
    found.put_money("costs/contingency", part(|standing| &standing.contingency));
    found.put_money("costs/total", part(|standing| &standing.total));
    found.put_money(
        "costs/to_come_back",
        part(|standing| &standing.to_come_back),
    );
}

/// The sums by group, in the order in which the lines name them.
fn groups(lines: &[LineFinding], stands: &Result<Standing, Lack>) -> Vec<(Group, GroupSum)> {
    let Ok(stands) = stands else {
        return Vec::new();
    };
    let mut groups: Vec<(Group, GroupSum)> = Vec::new();
    for line in lines {
        let name = line.group.name();
        let sum = stands.by_group.iter().find(|(known, _)| *known == name);
        if let Some((_, sum)) = sum
            && !groups.iter().any(|(known, _)| *known == line.group)
        {
            groups.push((line.group.clone(), *sum));
        }
    }
    groups
}

fn payers(
    sheet: &CostsSheet,
    stands: &Result<Standing, Lack>,
    terms: &Terms,
) -> (Vec<PayerFinding>, Money) {
    let nothing = Money::zero(terms.home);
    let paid = stands
        .as_ref()
        .map(|stands| stands.by_payer.as_slice())
        .unwrap_or_default();
    let payers: Vec<_> = sheet
        .payers
        .iter()
        .map(|row| PayerFinding {
            id: row.id().into(),
            name: row.name.value().cloned().unwrap_or_default(),
            paid: paid
                .iter()
                .find(|(payer, _)| payer.as_deref() == Some(row.id()))
                .map_or(nothing, |(_, sum)| *sum),
        })
        .collect();
    let known =
        |payer: &Option<Rc<str>>| payers.iter().any(|known| Some(&known.id) == payer.as_ref());
    let rest = paid
        .iter()
        .filter(|(payer, _)| !known(payer))
        .map(|(_, sum)| sum);
    let unassigned = Money::sum(rest, terms.home).unwrap_or(nothing);
    (payers, unassigned)
}

fn who_owes_whom(sheet: &CostsSheet, payers: &[PayerFinding]) -> Result<Settlement, Lack> {
    if payers.len() < 2 {
        return Err(Lack::needs([Key::from("costs/payers")]));
    }
    let parties = sheet
        .payers
        .iter()
        .zip(payers)
        .map(|(row, payer)| {
            Ok(Payer {
                share: *row.share.ask()?,
                paid: payer.paid,
            })
        })
        .collect::<Result<Vec<_>, Lack>>()?;
    Ok(settlement(&parties)?)
}

fn own_hours(sheet: &CostsSheet, terms: &Terms) -> (Result<Decimal, Lack>, Result<Reckoned, Lack>) {
    let mut jobs = Vec::new();
    let mut hours_alone = Vec::new();
    let mut lack: Option<Lack> = None;
    for row in &sheet.hours {
        let rate = match row.rate.ask() {
            Err(lack) if lack.is_blank() => sheet.hour_rate.ask(),
            other => other,
        };
        if let Ok(hours) = row.hours.ask() {
            hours_alone.push(OwnHours {
                key: row.key.shared(),
                hours: *hours,
                rate: Money::zero(terms.home),
            });
        }
        match (row.hours.ask(), rate).all() {
            Ok((hours, rate)) => jobs.push(OwnHours {
                key: row.key.shared(),
                hours: *hours,
                rate: *rate,
            }),
            Err(new) => {
                lack = Some(match lack.take() {
                    Some(old) => old.and(new),
                    None => new,
                });
            }
        }
    }
    let hours = hours_in_all(&hours_alone).map_err(Lack::from);
    let value = match lack {
        Some(lack) => Err(lack),
        None => value_of_hours(&jobs, terms).map_err(Lack::from),
    };
    (hours, value)
}

fn worth(
    sheet: &CostsSheet,
    stands: &Result<Standing, Lack>,
    hours: &Result<Decimal, Lack>,
    hours_value: &Result<Reckoned, Lack>,
    terms: &Terms,
) -> Result<WorthWhenDone, Lack> {
    let stands = stands.as_ref().map_err(Clone::clone);
    let inputs = (
        sheet.value_done.ask(),
        stands,
        hours.clone(),
        hours_value.clone(),
    )
        .all();
    let (value, stands, hours, hours_value) = inputs?;
    Ok(worth_when_done(
        value,
        &stands.sums.total,
        hours,
        &hours_value.money,
        terms,
    )?)
}

fn put_worth(found: &mut Found, worth: &Result<WorthWhenDone, Lack>, sheet: &CostsSheet) {
    let part = |pick: fn(&WorthWhenDone) -> &Reckoned| {
        worth
            .as_ref()
            .map(|worth| pick(worth).clone())
            .map_err(Clone::clone)
    };
    found.put_money("costs/over_cash", part(|worth| &worth.over_cash));
    found.put_money("costs/over_all", part(|worth| &worth.over_all));
    let each_hour = match worth {
        Ok(worth) => worth
            .each_hour
            .clone()
            .ok_or_else(|| Lack::needs([sheet.key.under("hours")])),
        Err(lack) => Err(lack.clone()),
    };
    found.put_money("costs/each_hour", each_hour);
}

/// What is to be known beside the sums.
fn remark(findings: &mut CostsFindings) {
    let mut remarks = Vec::new();
    if let Some(Ok(left)) = findings.found.money("costs/left")
        && left.money.is_negative()
    {
        remarks.push(Remark::new(Rank::Warning, "over_limit").at("costs/limit"));
    }
    for line in &findings.lines {
        let remark = |rank, fact| {
            Remark::new(rank, fact)
                .at(line.key.clone())
                .naming(Rc::clone(&line.what))
        };
        if let Err(lack) = &line.amounts {
            let fact = match lack.why() {
                Why::Needs(keys) if keys.iter().any(|key| key.field() == "rate") => {
                    "line_without_rate"
                }
                Why::Needs(_) => "line_without_price",
                Why::Refused(trade::TradeError::PaidTooMuch) => "paid_too_much",
                Why::Refused(_) => "line_refused",
                _ => "line_unreadable",
            };
            remarks.push(remark(Rank::Caution, fact));
        }
        if line.kind == LineKind::Sold && line.state == LineState::Planned {
            remarks.push(remark(Rank::Caution, "sale_not_sure"));
        }
        if let Some(from) = &line.from {
            match from.now {
                None => remarks.push(remark(Rank::Caution, "no_longer_on_its_sheet")),
                Some(now)
                    if from.pinned
                        && Some(now) != line.unit_price.map(|price| (line.quantity, price)) =>
                {
                    remarks.push(remark(Rank::Remark, "pinned_differs"));
                }
                Some(_) if !from.pinned && line.state == LineState::Paid => {
                    remarks.push(remark(Rank::Caution, "paid_not_pinned"));
                }
                Some(_) => {}
            }
        }
    }
    let sheet = &findings.sheet;
    let by_hand = sheet.lines.iter().map(|row| (&row.rate, &row.rate_day));
    let priced = sheet.priced.iter().map(|row| (&row.rate, &row.rate_day));
    for (rate, day) in by_hand.chain(priced) {
        if rate.value().is_some() && day.is_blank() {
            remarks.push(Remark::new(Rank::Remark, "rate_undated").at(day.key().clone()));
        }
    }
    if !findings.payers.is_empty() && !findings.unassigned.is_zero() {
        remarks.push(Remark::new(Rank::Caution, "paid_by_nobody"));
    }
    let duty = |row: &super::CostLine| row.duty.value().is_some_and(|percent| !percent.is_zero());
    if findings.sheet.lines.iter().any(duty) {
        remarks.push(Remark::standing(Rank::Remark, "duty_is_for_the_customs"));
    }
    for remark in remarks {
        findings.found.remark(remark);
    }
}
