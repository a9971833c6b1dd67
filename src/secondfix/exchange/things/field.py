"""One field, one kind of thing, and what several kinds share."""

from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from secondfix.exchange.switch_sheet import COLUMNS, Cell, Choice, Known, Words
from secondfix.exchange.things.cells import Length, Several
from secondfix.terms import POWER_LOSS_LABELS, LayerMaterial

Only = Literal["iec", "nec", ""]


@dataclass(frozen=True, slots=True)
class Field:
    """One field of a thing. ``path`` is within the thing; ``fact`` says that it carries how it is known.

    ``only`` keeps a field to houses of one world; ``wide`` one whose text may be long.
    """

    key: str
    heading: str
    path: str
    cell: Cell
    fact: bool = False
    only: Only = ""
    hint: str = ""
    wide: bool = False


@dataclass(frozen=True, slots=True)
class ThingKind:
    """One kind of thing: its collection in the document, its words, the letter of its ids, its fields."""

    name: str
    collection: str
    one: str
    letter: str
    fields: tuple[Field, ...]


def of_sheet(on: str) -> tuple[Field, ...]:
    """The columns that the switch schedule has of a thing."""
    return tuple(Field(c.key, c.heading, c.field, c.cell, c.fact, c.only) for c in COLUMNS if c.on == on)


def words(*values: str) -> Choice:
    return Choice({v: v.replace("_", " ") for v in values})


MATERIALS = {m.value: m.value.replace("_", " ") for m in LayerMaterial}
CIRCUIT = Known("circuits", "a circuit")
BY_NAME = "a reference such as K07, never what it stands for"
MS = Decimal(1000)
ROOM = Field("room", "Room", "room", Known("rooms", "a room"))
NOTE = Field("note", "Note", "note", Words(), wide=True)
NAME = Field("name", "Name", "name", Words())
TAGS = Field("tags", "Tags", "tags", Several(Words(), empty=""), hint="small letters, with commas between")
RETURNS = Choice({s.value: words for s, words in POWER_LOSS_LABELS.items()})
POSITION = (
    Field("x", "To the right on the plan, mm", "position.x_mm", Length()),
    Field("y", "Up on the plan, mm", "position.y_mm", Length()),
    Field("height", "Above the finished floor, mm", "position.height_mm", Length()),
)
