"""Recomputes the `library` checks of handover.toml with Python's calendar, and reads the calendar file with icalendar.

The calendar file is the one that `buildbook` writes of the events in `tests/fixtures/calendar/look-again.toml`: a test
there holds the two together; here a library that is not ours says what stands in the file.
"""

import datetime
import sys
import tomllib
from fractions import Fraction
from pathlib import Path

import icalendar
from dateutil.relativedelta import relativedelta
from recompute import compare

CALENDAR = Path(__file__).resolve().parent.parent.parent / "fixtures/calendar"


def parts(day):
    """A day as year, month and day."""
    return day.year, day.month, day.day


def begin(inputs):
    """The day to count from."""
    return datetime.date.fromisoformat(inputs["day"])


def tyre_week(inputs):
    """The Sunday that begins a week of a year, week 1 being the first full one."""
    day = datetime.date(inputs["year"], 1, 1)
    while day.isoweekday() != 7:
        day += datetime.timedelta(days=1)
    return parts(day + datetime.timedelta(weeks=inputs["week"] - 1))


def tyre_age(inputs):
    """Whole years and months from the first day of the week to the day it was read."""
    code = inputs["code"]
    decade = inputs.get("decade", 2000)
    year = 2000 + int(code[2:]) if len(code) == 4 else decade + int(code[2:])
    made = datetime.date(*tyre_week({"year": year, "week": int(code[:2])}))
    age = relativedelta(begin(inputs), made)
    return age.years, age.months


def days_after(inputs):
    """So many days later."""
    return parts(begin(inputs) + datetime.timedelta(days=inputs["days"]))


def due(inputs):
    """The day on which a distance is driven, at so much a week, rounded to the sooner."""
    after, per_week = (Fraction(inputs[name].split()[0]) for name in ("after", "per_week"))
    return parts(begin(inputs) + datetime.timedelta(days=int(7 * after / per_week)))


def faults_of_calendar():
    """What the calendar file has otherwise than its events and RFC 5545."""
    wanted = tomllib.loads((CALENDAR / "look-again.toml").read_text(encoding="utf-8"))
    raw = (CALENDAR / "look-again.ics").read_bytes()
    lines = raw.split(b"\r\n")
    if lines[-1] != b"" or any(b"\n" in line or b"\r" in line for line in lines):
        yield "lines end otherwise than in CRLF"
    for line in lines:
        if len(line) > 75:
            yield f"a line of {len(line)} bytes: {line!r}"
        try:
            line.decode("utf-8")
        except UnicodeDecodeError:
            yield f"a line that parts a character: {line!r}"
    if not any(line.startswith(b" ") for line in lines):
        yield "no line is folded, so folding is not tried"
    read = icalendar.Calendar.from_ical(raw)
    # The library leaves a property beyond the standard as it stands.
    name = str(read["X-WR-CALNAME"]).replace("\\,", ",").replace("\\;", ";")
    if (read["VERSION"], name) != ("2.0", wanted["name"]):
        yield f"another version or name: {read['VERSION']}, {name}"
    events = list(read.walk("VEVENT"))
    if len(events) != len(wanted["event"]):
        yield f"{len(wanted['event'])} events wanted, {len(events)} read"
    stamp = datetime.datetime.fromisoformat(wanted["written"])
    for event, want in zip(events, wanted["event"]):
        day = datetime.date.fromisoformat(want["day"])
        have = {
            "uid": str(event["UID"]),
            "stamp": event.decoded("DTSTAMP"),
            "begin": event.decoded("DTSTART"),
            "end": event.decoded("DTEND"),
            "summary": str(event["SUMMARY"]),
            "description": str(event.get("DESCRIPTION", "")),
            "errors": event.errors,
        }
        should = {
            "uid": want["uid"],
            "stamp": stamp,
            "begin": day,
            "end": day + datetime.timedelta(days=1),
            "summary": want["summary"],
            "description": want["description"],
            "errors": [],
        }
        for name, value in should.items():
            if have[name] != value:
                yield f"{want['uid']}: {name} should be {value!r} and is {have[name]!r}"


faults = list(faults_of_calendar())
for fault in faults:
    print(f"handover: the calendar file: {fault}", file=sys.stderr)
if faults:
    sys.exit(1)
compare("handover", {"tyre_week": tyre_week, "tyre_age": tyre_age, "days_after": days_after, "due": due})
