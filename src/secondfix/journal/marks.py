"""Kinds of entry about the book itself: snags, withdrawals, adoptions, signatures."""

from typing import Annotated, ClassVar, Literal

from pydantic import Field

from secondfix.findings import Severity
from secondfix.house import Name, Note
from secondfix.journal.entry import Entry, EntryId, Loose, Revision
from secondfix.journal.subject import COLLECTION_OF

MOST_TAKEN_IN = 200_000
_ANY = frozenset({*COLLECTION_OF, "house", "gang", "entry", "link"})


class SnagRaised(Entry):
    """Something is not as it should be. The snag is known by the id of this entry."""

    speaks_of: ClassVar[frozenset[str]] = _ANY
    kind: Literal["snag_raised"]
    words: Annotated[Note, Field(min_length=1)]
    severity: Annotated[Severity, Loose] = Severity.FAULT

    @property
    def aspect(self) -> str:
        return ""


class SnagCleared(Entry):
    """The snag that an entry raised is put right; ``words`` say how."""

    speaks_of: ClassVar[frozenset[str]] = _ANY
    kind: Literal["snag_cleared"]
    clears: EntryId
    words: Note = ""

    @property
    def aspect(self) -> str:
        return ""

    @property
    def names(self) -> str:
        return self.clears


class Withdrawn(Entry):
    """An earlier entry on the same subject is withdrawn: what it had taken the place of stands again."""

    speaks_of: ClassVar[frozenset[str]] = _ANY
    kind: Literal["withdrawn"]
    of: EntryId
    reason: Note = ""

    @property
    def aspect(self) -> str:
        return ""

    @property
    def names(self) -> str:
        return self.of


class Adopted(Entry):
    """The as-built house became a revision; ``took_in`` are the entries newly taken into it."""

    speaks_of: ClassVar[frozenset[str]] = frozenset({"house"})
    kind: Literal["adopted"]
    to_revision: Revision
    took_in: Annotated[tuple[EntryId, ...], Loose, Field(max_length=MOST_TAKEN_IN)]


class Signed(Entry):
    """Somebody put their name to a paper or a visit."""

    speaks_of: ClassVar[frozenset[str]] = frozenset({"house", "room", "box", "device"})
    kind: Literal["signed"]
    name: Name
    paper: Annotated[Note, Field(min_length=1)]

    @property
    def aspect(self) -> str:
        return ""
