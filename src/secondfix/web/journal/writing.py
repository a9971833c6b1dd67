"""From a form to entries that stand: made as the verb ``record`` makes them, seen what the form had shown."""

import json
import os
import time
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from django.http import HttpRequest

from secondfix.actions.record import Recorded, record_all
from secondfix.house import Fault, uuid7
from secondfix.journal import Entry, as_line
from secondfix.maintenance import Expected, written
from secondfix.store import door
from secondfix.web.access import person
from secondfix.web.frame.asked import asked
from secondfix.web.frame.site import OnSite, clock, head_of, revision_of, seen

Plain = dict[str, Any]
_HEAD = {"format", "id", "house", "revision", "kind", "subject", "writer", "at", "sees"}


@dataclass(frozen=True, slots=True)
class Written:
    """Entries that stand now, what is told of them, and a fault for each that was not taken."""

    taken: tuple[Entry, ...]
    told: tuple[str, ...]
    faults: tuple[Fault, ...]


def write(
    request: HttpRequest, house_id: str, wanted: Sequence[tuple[str, str, Plain]], *, anyway: bool = False
) -> Written:
    """Entries of (kind, subject, own keys) by this person. Raises door.UnknownError, door.NotAllowedError."""
    about = asked(house_id)
    heads = [
        (head_of(request, kind, subject, number=about.number, later=n), own)
        for n, (kind, subject, own) in enumerate(wanted)
    ]
    journal = seen(request, house_id)
    made = record_all(about.house, journal, heads, models=about.firm.models, anyway=anyway)
    good = [m for m in made if isinstance(m, Recorded)]
    faults = [_told(m) for m in made if isinstance(m, Fault)]
    lines = "".join(as_line(m.entry) + "\n" for m in good)
    posted = door.post_entries(house_id, lines.encode(), by=person(request))
    told = tuple(f"It {t.words}." for m in good for t in m.told)
    return Written(tuple(m.entry for m in good), told, (*faults, *posted.faults))


def _told(fault: Fault) -> Fault:
    """In the words of a page, where there are no options."""
    expected = fault.expected.replace("--anyway to keep it", "keep it anyway, below")
    return Fault("form", fault.path, fault.stands, expected)


def again(entry: Entry) -> tuple[str, str, Plain]:
    """What an entry says, to be said once more by somebody who has seen all that stands beside it."""
    plain = entry.model_dump(mode="json", exclude_defaults=True)
    return entry.kind, entry.subject, {k: v for k, v in plain.items() if k not in _HEAD}


def expected_lines(request: HttpRequest, site: OnSite, expected: Sequence[Expected]) -> list[Plain]:
    """Entries to expect, for a person to complete; tests are written as they are made."""
    now = time.time_ns() // 1_000_000
    return written(
        tuple(e for e in expected if e.kind != "function_tested"),
        site.journal,
        house=site.about.house.id,
        revision=revision_of(site.about.number),
        writer=person(request).username,
        at=clock(),
        new_id=lambda n: uuid7(unix_ms=now + n, random=os.urandom(10)),
    )


def posted_expected(request: HttpRequest, site: OnSite, expected: Sequence[Expected]) -> door.Posted:
    """Entries to expect, written as they are."""
    lines = (json.dumps(line, ensure_ascii=False) + "\n" for line in expected_lines(request, site, expected))
    return door.post_entries(site.about.house.id, "".join(lines).encode(), by=person(request))
