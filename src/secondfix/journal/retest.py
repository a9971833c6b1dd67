"""Tests that a fitting has made old: what was tested before the device that now works it was fitted."""

from collections.abc import Iterable, Mapping

from secondfix.house import House, Schedule, schedule
from secondfix.journal.deeds import Fitted
from secondfix.journal.facts import FunctionTested
from secondfix.journal.folding import Folded
from secondfix.journal.marks import Adopted
from secondfix.journal.subject import subject_of


def fitted_since(house: House, folded: Folded) -> dict[str, str]:
    """Subject of a test to the device that was fitted after it, in the as-built house.

    Clocks do not decide: a test is older than a fitting when an adoption took the test in and neither that
    adoption nor one that it knew took in the fitting. Without an adoption between them nothing tells.
    """
    known = _known_at(folded)
    if not known:
        return {}
    rows = schedule(house, house.models)
    fits = {subject_of(f.subject).id: f.id for f in folded.each("standing", Fitted)}
    found: dict[str, str] = {}
    for test in folded.each("working", FunctionTested):
        took = [ids for taken, ids in known if test.id in taken]
        for device in _devices(rows, test):
            if any(device in fits and fits[device] not in ids for ids in took):
                found[test.subject] = device
    return found


def _known_at(folded: Folded) -> list[tuple[frozenset[str], frozenset[str]]]:
    """For each adoption, what it took in; and that with all that the adoptions it knew had taken in."""
    standing = [e for i, e in folded.counted.items() if isinstance(e, Adopted) and i not in folded.withdrawn]
    by_id: Mapping[str, Adopted] = {e.id: e for e in standing}
    return [
        (frozenset(e.took_in), frozenset(i for a in _before(e, by_id) for i in by_id[a].took_in))
        for e in standing
    ]


def _before(adoption: Adopted, by_id: Mapping[str, Adopted]) -> Iterable[str]:
    """The adoption itself and every one that it knew, directly or through others."""
    found: set[str] = set()
    todo = [adoption.id]
    while todo:
        here = todo.pop()
        if here in by_id and here not in found:
            found.add(here)
            todo += by_id[here].sees
    return found


def _devices(rows: Schedule, test: FunctionTested) -> list[str]:
    """The devices that the test passed through: of its gang or entry, or that work what a scene switched."""
    subject = subject_of(test.subject)
    if subject.kind == "gang":
        row = rows.rows.get(subject.id)
        return [row.device_id] if row is not None and row.device_id else []
    if subject.kind == "entry":
        return [subject.owner] if subject.owner in rows.house.devices else []
    feeds = (rows.fed_by.get(load) for load in test.answered)
    return sorted({feed.device_id for feed in feeds if feed is not None and feed.device_id})
