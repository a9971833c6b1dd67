"""Names asked of a house, and its naming policy as a form."""

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from secondfix.actions.names import Named, names
from secondfix.findings import Finding
from secondfix.house import House, NamePart, NamingPolicy
from secondfix.naming import Entry, EntryKind, place_of
from secondfix.terms import PURPOSES
from secondfix.web.frame.asked import Asked

PART_WORDS = {
    NamePart.ROOM: "room",
    NamePart.STOREY: "storey",
    NamePart.LOAD: "load",
    NamePart.BOX: "box or place",
    NamePart.GANG: "gang",
    NamePart.DEVICE: "device",
}
KINDS = {
    "gang_entry": "Gang that feeds a load",
    "whole_entry": "Whole-device entry",
    "place_entry": "Device that feeds nothing",
}
MOST_PARTS = 4


def named_of(about: Asked) -> Named:
    """Entries by device, and findings about names."""
    return about.once("names", lambda a: names(a.house, assumptions=a.firm.assumptions))


@dataclass(frozen=True)
class NameRow:
    """One entry: what it is called by policy, what it was named on site, and what is wrong with that."""

    entry: Entry
    number: str
    standing: str
    purpose: str
    findings: tuple[Finding, ...]


def rows_of(about: Asked, standing: Mapping[tuple[str, int], str]) -> list[NameRow]:
    """Every entry, by device; a finding stands beside each entry of which it speaks."""
    found: defaultdict[str, list[Finding]] = defaultdict(list)
    for finding in named_of(about).findings:
        for place in {finding.place, *finding.also} if finding.severity else ():
            found[place].append(finding)
    return [
        NameRow(
            e,
            "whole" if e.kind is EntryKind.WHOLE_DEVICE else str(e.number),
            standing.get((e.device_id, e.number), ""),
            PURPOSES[e.purpose].label if e.purpose else "",
            tuple(dict.fromkeys((*found[place_of(e)], *found[e.place]))),
        )
        for e in named_of(about).names.entries()
    ]


def policy_fields(house: House, sent: Mapping[str, str]) -> list[dict[str, Any]]:
    """For each kind of entry its parts in order, holding what was sent, else what stands."""
    return [
        {
            "key": key,
            "words": words,
            "parts": [
                {"name": f"{key}.{n}", "number": n + 1, "value": sent.get(f"{key}.{n}", part)}
                for n, part in enumerate(_padded(house.naming, key))
            ],
        }
        for key, words in KINDS.items()
    ]


def _padded(policy: NamingPolicy, key: str) -> list[str]:
    parts = [part.value for part in getattr(policy, key)]
    return parts + [""] * (MOST_PARTS - len(parts))


def policy_of(sent: Mapping[str, str]) -> dict[str, Any]:
    """The naming policy that the form asks for, as the document would hold it."""
    policy: dict[str, Any] = {
        key: [part for n in range(MOST_PARTS) if (part := sent.get(f"{key}.{n}", ""))] for key in KINDS
    }
    policy["between"] = sent.get("between", " ")
    if sent.get("spoken_language"):
        policy["spoken_language"] = sent["spoken_language"]
    return policy
