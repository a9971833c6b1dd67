"""The wall boxes of the switch schedule: what each holds against its room, as the check answered."""

from collections.abc import Sequence
from typing import TypeVar

from secondfix.findings import Finding
from secondfix.house import Box, Fact, Schedule, is_nec
from secondfix.papers.blocks import Block, Cell, column, heading, ident, marked, soft, table
from secondfix.papers.drawing import SHAPE_WORDS, shape_of
from secondfix.papers.figures import NOT_KNOWN, known_value

Size = TypeVar("Size", bound=str)


def wall_box_blocks(schedule: Schedule, answers: Sequence[Finding]) -> list[Block]:
    """A table of all boxes: fill and conductors by AWG in NEC houses, depth in others; none without a box.

    Needed and available are the limit and the value of the finding itself: of ``box_fill`` (NEC 314.16) or of
    ``depth``.
    """
    house = schedule.house
    if not house.boxes:
        return []
    nec = is_nec(house)
    rule = "box_fill" if nec else "depth"
    of_box = {f.place: f for f in answers if f.rule == rule}
    rows: list[list[Cell]] = []
    for box_id, box in house.boxes.items():
        inside = [_conductors(box), _at_devices(box)] if nec else []
        rows.append([ident(box_id), house.rooms[box.room].name, *inside, *_room(of_box.get(box_id))])
    wires = [column("Conductors, AWG", fr=2), column("At the devices, AWG", fr=1.1)] if nec else []
    columns = [
        column("Box", mm=17),
        column("Room", fr=1.2),
        *wires,
        column("Fill" if nec else "Depth needed", fr=1.2 if nec else 2.4),
        column("Available", fr=1.2),
        column("Answer", fr=1.1),
    ]
    return [heading("Wall boxes"), table(columns, rows)]


def _room(finding: Finding | None) -> list[Cell]:
    """Needed, available, and the answer under the shape of the legend."""
    if finding is None:
        return [soft("not asked: nothing that is decided is wired there"), "", ""]
    shape = shape_of(finding)
    needed, available = finding.limit or NOT_KNOWN, finding.value or NOT_KNOWN
    return [needed, available, marked(shape, SHAPE_WORDS[shape])]


def _conductors(box: Box) -> str:
    """From outside, looped through, equipment grounds: each by size; what was counted as none is left out."""
    counts = (("", box.conductors), ("loops ", box.loops), ("grounds ", box.grounds))
    told = [
        f"{what}{_counted(sizes)}" for what, sizes in counts if sizes is None or any(sizes.value.values())
    ]
    return "; ".join(told) or "none"


def _counted(counts: Fact[dict[Size, int]] | None) -> str:
    each = [f"{n} × {size}" for size, n in (counts.value.items() if counts else ()) if n]
    return known_value(counts, ", ".join(each))


def _at_devices(box: Box) -> str:
    """The largest conductor that ends at each device, mount by mount."""
    largest = [m.largest_awg for m in box.mounts.values()]
    return ", ".join(known_value(awg, awg.value if awg else "") for awg in largest)
