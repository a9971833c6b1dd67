"""What every entry has: who wrote what about which thing, knowing which earlier entries."""

from collections.abc import Hashable
from datetime import datetime
from typing import Annotated, ClassVar, Literal

from pydantic import AfterValidator, Field, Strict

from secondfix.house import UUID7, Note, Part
from secondfix.journal.subject import SUBJECT

FORMAT = 1
BODY = "body"
"""What a device is as one piece of hardware: its settings and its code go when another is fitted."""
Loose = Strict(False)
EntryId = Annotated[str, Field(pattern=UUID7)]
Revision = Annotated[str, Field(pattern=r"^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$")]
SubjectText = Annotated[str, Field(max_length=60, pattern=SUBJECT)]
Writer = Annotated[str, Field(min_length=1, max_length=40)]
_CLOCK = r"^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,6})?)?(Z|[+-]\d{2}:\d{2})$"


def _real(at: str) -> str:
    datetime.fromisoformat(at)  # ValueError for the thirtieth of February
    return at


At = Annotated[str, Field(pattern=_CLOCK), AfterValidator(_real)]


class Entry(Part):
    """One entry, format 1. ``at`` is printed and never decides; ``sees`` are entries on the same subject.

    ``aspect`` says which side of the subject it speaks of: an entry takes the place of earlier ones of
    its aspect that its writer knew; one without an aspect takes nobody's place. ``value`` is what must
    agree between two writers who did not know of each other; None where both may be true.
    """

    speaks_of: ClassVar[frozenset[str]] = frozenset()

    format: Literal[1]
    id: EntryId
    house: Annotated[str, Field(pattern=UUID7)]
    revision: Revision
    kind: str
    subject: SubjectText
    writer: Writer
    at: At
    sees: Annotated[tuple[EntryId, ...], Loose, Field(max_length=1000)] = ()
    note: Note = ""

    @property
    def aspect(self) -> str:
        """The side of the subject that the entry speaks of."""
        return self.kind

    @property
    def yields_to(self) -> tuple[str, ...]:
        """The aspects whose later entries take its place."""
        return (self.aspect,)

    @property
    def ends(self) -> tuple[str, ...]:
        """Aspects besides its own that it ends: what was said of them before it, and known to its writer."""
        return ()

    @property
    def names(self) -> str | None:
        """The one earlier entry that this one is about: withdrawn, or a snag cleared."""
        return None

    @property
    def value(self) -> Hashable:
        """What two entries must agree on, or None where each may stand beside the other."""
        return None


class Unknown(Entry):
    """An entry of a kind that this edition does not know: its line is kept as it stands."""

    line: str
