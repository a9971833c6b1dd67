"""Measured: the links that a journal says were measured, and what reach learns from them."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from secondfix import journal as package
from secondfix import radio
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.house import House, schedule
from secondfix.journal import Journal

NEXT_LINKS = 5


@dataclass(frozen=True, slots=True)
class MeasuredLinks:
    """Links as `radio.learn` takes them, and a sentence for what cannot be learned from."""

    measured: tuple[radio.Measured, ...]
    notes: tuple[str, ...]


def measured_of(house: House, journal: Journal) -> MeasuredLinks:
    """The links that current entries of the journal tell the level of, or that they were not heard.

    Each entry counts: measurements never take each other's place but where the writer knew of the earlier.
    A link quality alone counts for nothing, for its scale is the maker's.
    """
    links: list[radio.Measured] = []
    quality: set[str] = set()
    for link, rssi_dbm, told in _links(house, journal):
        if told:
            a, _, b = link.removeprefix("link:").partition(">")
            links.append(radio.Measured(a, b, rssi_dbm))
        else:
            quality.add(link.removeprefix("link:"))
    notes = []
    if quality:
        notes.append(
            f"Of {_counted(len(quality))} the journal knows the LQI alone, whose scale IEEE 802.15.4 "
            f"leaves to the maker: nothing is learned from {'them' if len(quality) > 1 else 'it'}."
        )
    return MeasuredLinks(tuple(links), tuple(notes))


def _links(house: House, journal: Journal) -> Iterator[tuple[str, float | None, bool]]:
    """Each link with its level (None: not heard), and whether it tells either."""
    folded = package.fold(house, journal)
    for _, entries in sorted(folded.current.items(), key=lambda item: item[0]):
        for entry in entries:
            if isinstance(entry, package.Measured):
                if entry.subject.startswith("link:"):
                    yield _told(entry.subject, entry.rssi_dbm, entry.not_heard)
                for row in entry.table:
                    yield _told(row.link, row.rssi_dbm, row.not_heard)


def _told(link: str, rssi_dbm: int | None, not_heard: bool | None) -> tuple[str, float | None, bool]:
    return link, None if rssi_dbm is None else float(rssi_dbm), rssi_dbm is not None or bool(not_heard)


def _counted(n: int) -> str:
    return f"{n} links" if n > 1 else "one link"


def reach_measured(
    house: House, links: Sequence[radio.Measured], *, assumptions: Assumptions, seed: int = 1
) -> tuple[radio.Reach, radio.Learned]:
    """`reach` as the measured links teach it, and what was learned; with none measured as it is."""
    rows, settled = schedule(house, house.models), settled_assumptions(house, assumptions)
    return radio.reach_measured(rows, settled, links, seed=seed)


def learned_as_json(learned: radio.Learned, *, notes: Sequence[str] = ()) -> dict[str, object]:
    """``count``, ``not_heard``, ``parameters``, ``links``, ``next_links`` and ``notes`` (docs/json.md).

    Numbers are null below five measured links: they would look surer than they are.
    """
    return radio.learned_as_json(learned, next_links=learned.next_links(NEXT_LINKS), notes=notes)
