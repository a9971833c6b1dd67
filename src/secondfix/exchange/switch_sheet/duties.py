"""Duty, load and extended gang of one row belong together: one of them typed brings the others along."""

from collections.abc import Mapping
from typing import Any

from secondfix.house import Change, Duty, Fault, Row

_NEEDS = {Duty.FEEDS: "load", Duty.EXTENDS: "extends"}
_FIRST = {
    Duty.FEEDS: ("'feeds' without a load", "the load first: typed under Load, it brings this duty with it"),
    Duty.EXTENDS: (
        "'extends' without a gang that it extends",
        "that gang first: typed under Extends, it brings this duty with it",
    ),
}


def with_duty(row: Row, made: Mapping[str, Any]) -> list[Change] | Fault:
    """What the changes of a row bring along, ``made`` being their values by path; or what must come first.

    A load makes its gang feed, a gang that is extended makes it extend; one of them taken out leaves the duty
    unknown. A duty that was typed takes out what does not go with it, and is a fault without what it needs.
    """
    at = f"boxes.{row.box_id}.gangs.{row.gang_no}"
    stand = {"load": row.gang.load, "extends": row.gang.extends}
    typed = {name: made[f"{at}.{name}"] for name in stand if f"{at}.{name}" in made}
    said = f"{at}.duty" in made
    if not typed and not said:
        return []
    duty = Duty(made[f"{at}.duty"] or Duty.NOT_KNOWN) if said else _implied(row.gang.duty, typed)
    needed = _NEEDS.get(duty)
    if said and needed is not None and {**stand, **typed}[needed] is None:
        return Fault("", "Duty", *_FIRST[duty])
    brought = [] if said or duty is row.gang.duty else [Change(f"{at}.duty", duty.value)]
    idle = [n for n, value in stand.items() if n != needed and n not in typed and value is not None]
    return [*brought, *(Change(f"{at}.{name}", None) for name in idle)]


def _implied(duty: Duty, typed: Mapping[str, Any]) -> Duty:
    for implied, name in _NEEDS.items():
        if typed.get(name) is not None:
            return implied
    return Duty.NOT_KNOWN if _NEEDS.get(duty) in typed else duty
