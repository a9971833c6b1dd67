"""The columns of the sheet: where each stands in the document, what may stand in it."""

from dataclasses import dataclass
from decimal import Decimal
from typing import Any, Literal

from secondfix.exchange.switch_sheet.cells import NEUTRAL, Cell, Choice, Figure, Known, Words, YesNo
from secondfix.house import Duty, House, Row, is_nec
from secondfix.terms import KIND_LABELS, PURPOSES, Finish, PlateMaterial, ShellMaterial

_MM3_PER_CUBIC_INCH = Decimal("16387.064")  # exact: 1 in = 25.4 mm (international inch, 1959)

_DUTIES = {
    Duty.FEEDS: "feeds", Duty.EXTENDS: "extends", Duty.SCENE_ONLY: "scene only", Duty.CAPPED: "capped",
    Duty.NOT_KNOWN: "not known",
}  # fmt: skip


def _spoken(words: type[Finish] | type[PlateMaterial] | type[ShellMaterial]) -> Choice:
    return Choice({w.value: w.value.replace("_", " ") for w in words})


@dataclass(frozen=True, slots=True)
class Column:
    """One column. ``on`` is what the field belongs to; ``fact`` says that it carries how it is known.

    ``only`` keeps a column to houses of one world.
    """

    key: str
    heading: str
    on: Literal["box", "mount", "gang", "load"]
    field: str
    cell: Cell
    fact: bool = False
    only: Literal["iec", "nec", ""] = ""

    def path(self, row: Row, load_id: str | None) -> str | None:
        """Where the field stands; None for a field of a load where the gang has none."""
        if self.on == "load":
            return f"loads.{load_id}.{self.field}" if load_id else None
        box = f"boxes.{row.box_id}"
        within = {
            "box": box, "mount": f"{box}.mounts.{row.gang.mount}", "gang": f"{box}.gangs.{row.gang_no}",
        }  # fmt: skip
        return f"{within[self.on]}.{self.field}"

    def value(self, row: Row) -> Any:
        """What stands there: a plain value, a Fact, or None."""
        holder = {"box": row.box, "mount": row.mount, "gang": row.gang, "load": row.load}[self.on]
        return getattr(holder, self.field) if holder is not None else None


_CIRCUIT = Known("circuits", "a circuit")
COLUMNS = (
    Column("room", "Room", "box", "room", Known("rooms", "a room")),
    Column("mount", "Mount", "gang", "mount", Words()),
    Column("duty", "Duty", "gang", "duty", Choice({d.value: words for d, words in _DUTIES.items()})),
    Column("load", "Load", "gang", "load", Known("loads", "a load")),
    Column("extends", "Extends", "gang", "extends", Words()),
    Column("kind", "Kind", "load", "kind", Choice({k.value: v for k, v in KIND_LABELS.items()}), fact=True),
    Column("purpose", "Purpose", "load", "purpose", Choice({p.value: v.label for p, v in PURPOSES.items()})),
    Column("power", "Power of one, W", "load", "power_mw", Figure("W", Decimal(1000), 3), fact=True),
    Column("count", "How many", "load", "count", Figure(""), fact=True),
    Column("line", "Line", "gang", "line", _CIRCUIT, fact=True),
    Column("neutral", "Neutral at the mount", "mount", "neutral", NEUTRAL, fact=True),
    Column("load-neutral", "Neutral of the load", "load", "neutral", _CIRCUIT, fact=True),
    Column("depth", "Box depth, mm", "box", "depth_mm", Figure("mm"), fact=True, only="iec"),
    Column("set-back", "Set back, mm", "box", "set_back_mm", Figure("mm"), fact=True, only="iec"),
    Column(
        "volume", "Box volume, in³", "box", "volume_mm3", Figure("in³", _MM3_PER_CUBIC_INCH, 3), fact=True,
        only="nec",
    ),
    Column("cables", "Cables in the box", "box", "cables", Figure(""), fact=True),
    Column("shell", "Box of", "box", "shell", _spoken(ShellMaterial), fact=True),
    Column("plate", "Plate of", "box", "plate", _spoken(PlateMaterial), fact=True),
    Column("finish", "Finish", "box", "finish", _spoken(Finish), fact=True),
    Column("earthed", "Metal earthed", "box", "earthed", YesNo(), fact=True),
    Column("note", "Note", "gang", "note", Words()),
)  # fmt: skip
PLACE = "Gang"


def columns_of(house: House) -> tuple[Column, ...]:
    """The columns of a house: depths in the IEC's world, volumes in the NEC's, both where not stated."""
    world = "nec" if is_nec(house) else "iec" if house.wiring_rules is not None else ""
    return tuple(c for c in COLUMNS if not world or c.only in {"", world})
