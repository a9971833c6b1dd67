"""One row of a controller's device list, in the book's words."""

from dataclasses import dataclass

from secondfix.terms import Purpose


@dataclass(frozen=True, slots=True)
class ListRow:
    """``number`` is the row's in its file. ``purpose_said`` and ``model_said`` are the list's own words;
    ``purpose`` and ``model`` are None where these lead nowhere. ``has_purpose``: the list has such a column.
    """

    number: int
    address: str | None = None
    node: int | None = None
    endpoint: int | None = None
    name: str = ""
    room: str = ""
    purpose: Purpose | None = None
    purpose_said: str = ""
    model: str | None = None
    model_said: str = ""
    has_purpose: bool = False

    @property
    def words(self) -> str:
        """How people are told of the row: its number, and the name or address in it."""
        return f"row {self.number} ({self.name or self.address or self.node or 'empty'})"
