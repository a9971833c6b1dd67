"""Adopt: the as-built house becomes a revision."""

from dataclasses import dataclass

from secondfix.house import House
from secondfix.journal.asbuilt import AsBuilt
from secondfix.journal.marks import MOST_TAKEN_IN, Adopted


@dataclass(frozen=True, slots=True)
class Adoption:
    """``house`` is the new revision, ``entry`` what is appended to the journal."""

    house: House
    entry: Adopted


def adopt(
    built: AsBuilt, *, entry_id: str, revision: str, to_revision: str, writer: str, at: str
) -> Adoption | tuple[str, ...]:
    """The new revision and its entry; or why it cannot be, one sentence for each cause.

    ``revision`` is the id of the revision that was folded over and ``to_revision`` that of the new one;
    ``entry_id`` is a UUIDv7, ``at`` the wall clock with offset. A conflict must be settled first: a
    revision cannot hold two facts. Folding the new revision with the same journal changes nothing.
    Taken in are the entries that count and that no earlier adoption took in.
    """
    causes = [
        f"{c.subject}: {c.aspect} is in conflict between entries {', '.join(e.id for e in c.entries)}"
        for c in built.folded.conflicts
    ]
    if to_revision == revision:
        causes.append(f"revision {revision} is the one adopted from: a new revision has an id of its own")
    if not built.fresh:
        causes.append("no entry is new since the last adoption")
    if len(built.fresh) > MOST_TAKEN_IN:
        causes.append(f"{len(built.fresh):,} entries are new: at most {MOST_TAKEN_IN:,} go into one adoption")
    if causes:
        return tuple(causes)
    heads = [e.id for e in built.folded.counted.values() if isinstance(e, Adopted)]
    entry = Adopted(
        format=1,
        id=entry_id,
        house=built.house.id,
        revision=revision,
        kind="adopted",
        subject=f"house:{built.house.id}",
        writer=writer,
        at=at,
        sees=tuple(heads[-1000:]),
        to_revision=to_revision,
        took_in=built.fresh,
    )
    return Adoption(built.house, entry)
