"""What the door answers: plain values, no rows of tables."""

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from secondfix.house import Fault, FieldChange, FieldConflict, House


class UnknownError(LookupError):
    """No house, edit, issue, entry or account of this name."""


class NotAllowedError(PermissionError):
    """The account may not do this."""


class NoRingKeyError(RuntimeError):
    """The key ring's key is missing from the data folder, or is not the one that codes were sealed with."""


@dataclass(frozen=True, slots=True)
class Saved:
    """The document is current as edit ``number``; ``others`` is what others had changed since the base.

    ``new`` is False where nothing differed from what stood already, so that no edit was made.
    """

    number: int
    others: tuple[FieldChange, ...] = ()
    new: bool = True
    kind: Literal["saved"] = "saved"


@dataclass(frozen=True, slots=True)
class Conflicting:
    """Fields that two people changed apart. Nothing became current; what was sent is kept as edit ``kept``.

    ``current`` is the edit that it was held against; `settle` takes a side for each path of ``conflicts``.
    """

    kept: int
    current: int
    conflicts: tuple[FieldConflict, ...]
    others: tuple[FieldChange, ...] = ()
    kind: Literal["conflicting"] = "conflicting"


@dataclass(frozen=True, slots=True)
class Refused:
    """Faults, all at once. What was sent is kept as edit ``kept``; None where nothing was kept."""

    faults: tuple[Fault, ...]
    kept: int | None = None
    kind: Literal["refused"] = "refused"


@dataclass(frozen=True, slots=True)
class Known:
    """The house stands here already, at edit ``number``: open it and save an edit."""

    house_id: str
    number: int
    away: bool


@dataclass(frozen=True, slots=True)
class IdTaken:
    """The client's id stands already with other contents; nothing was written."""

    id: str


Order = Literal["name", "edit", "stage", "open"]


@dataclass(frozen=True, slots=True)
class OpenCounts:
    """What the last check counted, and of which edit."""

    number: int
    danger: int
    fault: int
    cannot_tell: int
    advice: int


@dataclass(frozen=True, slots=True)
class HouseRow:
    """A house in the list of all; ``open`` None where no check was kept, or nobody asked for it."""

    id: str
    name: str
    stage: str
    number: int
    changed_at: datetime
    changed_by: str
    away_at: datetime | None
    open: OpenCounts | None = None


@dataclass(frozen=True, slots=True)
class Found:
    """One page of the houses found, and how many were found in all."""

    rows: tuple[HouseRow, ...]
    count: int


@dataclass(frozen=True, slots=True)
class Opened:
    """A house as it stands now; ``number`` is the base of the next save, ``text`` its canonical document."""

    house: House
    text: str
    number: int
    stage: str
    away: bool


@dataclass(frozen=True, slots=True)
class EditRow:
    """One edit in the history; ``stands`` is False for one set aside."""

    number: int
    base: int
    stands: bool
    at: datetime
    by: str
    words: str


@dataclass(frozen=True, slots=True)
class IssueRow:
    """One issue in the list."""

    letter: str
    number: int
    at: datetime
    by: str
    words: str


@dataclass(frozen=True, slots=True)
class Issued:
    """An issue as it went out: document, resolved assumptions (JSON), editions of the catalogue."""

    row: IssueRow
    house: House
    text: str
    assumptions: str
    editions: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Posted:
    """Ids newly taken, ids that stood already word for word, and a fault for each line that was not taken."""

    taken: tuple[str, ...]
    again: tuple[str, ...]
    faults: tuple[Fault, ...]
    id_taken: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class KeptCode:
    """That a code is kept, since when and by whom; never the code."""

    reference: str
    at: datetime
    by: str


@dataclass(frozen=True, slots=True)
class Shown:
    """One line of the trail: who was shown which reference, when."""

    reference: str
    at: datetime
    by: str


@dataclass(frozen=True, slots=True)
class Cover:
    """People's names and addresses, apart from the house."""

    customer: str = ""
    address: str = ""
    reached_by: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class BackedUp:
    """What a backup holds or a restore laid: rows of each table, and the digest of the file's body."""

    rows: dict[str, int]
    digest: str
    ring_key_here: bool


@dataclass(frozen=True, slots=True)
class LastBackup:
    """The last backup that was made of this desk."""

    at: datetime
    file: str
    size_bytes: int


@dataclass(frozen=True, slots=True)
class Status:
    """The database in words, what should be put right, the data folder and its room, the last backup."""

    database: str
    version: str
    warnings: tuple[str, ...]
    folder: str = ""
    free_bytes: int | None = None
    last_backup: LastBackup | None = None
