"""What is current and stands in no document: joins that failed, steps skipped, names of entries."""

from dataclasses import dataclass

from secondfix.journal.deeds import JoinFailed, Named, PurposeSet, Skipped
from secondfix.journal.draft import Draft
from secondfix.journal.folding import Folded
from secondfix.journal.subject import subject_of
from secondfix.terms import PURPOSES

_DEED = {
    "fit": "fitted", "join": "joined", "name": "named", "purpose": "given its purpose", "test": "tested",
    "measure": "measured",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Remark:
    """One sentence about a place or thing, and the entry that says it."""

    place: str
    says: str
    entry: str


def remarks(folded: Folded, draft: Draft) -> tuple[Remark, ...]:
    """In the order of places. What speaks of a device that left is history, not a remark."""
    found = []
    for (text, aspect), entries in folded.current.items():
        subject = subject_of(text)
        if draft.left(subject) or (text, aspect) in folded.disputed:
            continue
        for entry in entries:
            says = ""
            if isinstance(entry, JoinFailed):
                says = f"did not join {entry.network}" + (f": {entry.note}" if entry.note else "")
            elif isinstance(entry, Skipped):
                says = f"was not {_DEED[entry.deed]}: {entry.reason}"
            elif isinstance(entry, Named) and subject.kind == "entry":
                says = f"is called '{entry.name}' in the controller"
            elif isinstance(entry, PurposeSet) and subject.kind == "entry":
                says = f"has the purpose {PURPOSES[entry.purpose].label} in the controller"
            if says:
                found.append(Remark(subject.id, f"{_noun(subject.kind)} {subject.id} {says}.", entry.id))
    return tuple(sorted(found, key=lambda r: (r.place, r.says, r.entry)))


def _noun(kind: str) -> str:
    return {"box": "Wall box"}.get(kind, kind.capitalize())
