"""Compares what reference libraries compute with the `library` checks of a subject's data file.

A subject's script gives one function for each name it recomputes; the function takes the check's inputs as a
dictionary and returns a number or a list of numbers in the unit of the check. The run fails when a value differs
by more than the check's tolerance, when a check has no function, or when a function has no check.
"""

import sys
import tomllib
from pathlib import Path


def compare(subject, functions):
    """Recomputes every `library` check of the subject; ends the program with a status."""
    data = Path(__file__).resolve().parent.parent / f"{subject}.toml"
    checks = [
        check
        for check in tomllib.loads(data.read_text(encoding="utf-8"))["check"]
        if check["held"] == "library" and "expected" in check
    ]
    failures = []
    used = set()
    for check in checks:
        name = check["of"]
        used.add(name)
        if name not in functions:
            failures.append(f"{check['id']}: no function recomputes `{name}`")
            continue
        expected = check["expected"]
        expected = expected if isinstance(expected, list) else [expected]
        found = functions[name](check.get("inputs", {}))
        found = list(found) if hasattr(found, "__iter__") else [found]
        if len(found) != len(expected):
            failures.append(f"{check['id']}: {len(expected)} values expected, {len(found)} computed")
            continue
        for place, (want, have) in enumerate(zip(expected, found), start=1):
            have = float(have)
            slack = check["tolerance"] + 4e-16 * abs(want) * 4
            if not abs(have - want) <= slack:
                failures.append(
                    f"{check['id']} value {place}: the file has {want} ± {check['tolerance']}, "
                    f"{check['library']} gives {have!r}"
                )
    for name in sorted(set(functions) - used):
        failures.append(f"`{name}` is recomputed but no check asks for it")
    if not checks:
        failures.append("no check is held by a library")
    for failure in failures:
        print(f"{subject}: {failure}", file=sys.stderr)
    print(f"{subject}: {len(checks)} library checks recomputed, {len(failures)} failed")
    sys.exit(1 if failures else 0)
