"""What the store holds and answers: houses, documents, edits, issues, the journal; and faults."""

from datetime import datetime
from typing import Any, Literal

from secondfix.house import Fault, FieldChange, FieldConflict
from secondfix.store import door
from secondfix.web.api.shapes.base import Shape


class Faults(Shape):
    """What was wrong with a call: file or part, place in it, what stands, what was expected."""

    faults: list[Fault]


class House(Shape):
    """A house in the register; ``number`` is that of its current edit, the base of the next save."""

    id: str
    name: str
    stage: door.Stage
    number: int
    changed_at: datetime
    changed_by: str
    away_at: datetime | None


class Houses(Shape):
    """Houses by name."""

    houses: list[House]


class Document(Shape):
    """A document as edit ``base`` has it."""

    base: int
    document: dict[str, Any]


class Begun(Shape):
    """A house that stands in the register now."""

    house: str
    number: int


class Saved(Shape):
    """The document is current as edit ``number``; ``others`` is what others had changed since the base."""

    kind: Literal["saved"]
    number: int
    new: bool
    others: list[FieldChange]


class Clash(Shape):
    """Something that stands already: for a document the fields that two changed, all kept as an edit."""

    faults: list[Fault]
    kept: int | None = None
    current: int | None = None
    conflicts: tuple[FieldConflict, ...] = ()
    others: tuple[FieldChange, ...] = ()


class Refused(Shape):
    """Every fault; what was sent is kept as edit ``kept``, null where nothing was kept."""

    faults: list[Fault]
    kept: int | None = None


class Edit(Shape):
    """One edit; ``stands`` is false for one set aside."""

    number: int
    base: int
    stands: bool
    at: datetime
    by: str
    words: str


class Edits(Shape):
    """The history, the latest first."""

    edits: list[Edit]


class Issue(Shape):
    """A revision that went out of the door."""

    letter: str
    number: int
    at: datetime
    by: str
    words: str


class Issues(Shape):
    """The issues, the latest first."""

    issues: list[Issue]


class IssuedHouse(Issue):
    """An issue with all that it was made with."""

    document: dict[str, Any]
    assumptions: dict[str, Any]
    editions: list[str]


class Posted(Shape):
    """Ids newly taken, ids that stood already, and a fault for each line not taken."""

    taken: list[str]
    again: list[str]
    id_taken: list[str]
    faults: list[Fault]
