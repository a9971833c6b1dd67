"""The function test form, and the page for the day on which a switch fails."""

from collections.abc import Iterator

from secondfix.house import Schedule, is_nec
from secondfix.joining import FunctionTestRow, function_test_rows
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    beside,
    cautions,
    column,
    heading,
    ident,
    para,
    steps,
    strong,
    table,
    tick_box,
    write_on,
)
from secondfix.papers.duties import duty_words, rows_of_box
from secondfix.papers.places import id_words, room_name, thing_words
from secondfix.scenes import resolve
from secondfix.terms import PROTOCOLS, said

_ROW_MM = 8.5


def function_test_sheet(schedule: Schedule, number: str, *, done: frozenset[str] = frozenset()) -> Sheet:
    """A row for every gang, output, button and start of a scene, with boxes to tick.

    What to press and what must answer is the worksheets' own (function test: IEC 60364-6). ``done`` are
    gangs, outputs and scenes that the journal has as designed: their rows are left out, which is said.
    """
    every = [*_of_boxes(schedule), *_of_places(schedule), *_of_scenes(schedule)]
    rows = [_test_row(*asked) for asked in every if asked[0].split()[-1] not in done]
    heads = [
        column("Gang", mm=20),
        column("Room", fr=1.1),
        column("Do", fr=1.6),
        column("Must answer", fr=2.4),
        column("Works", mm=15, align="center"),
        column("Does not", mm=18, align="center"),
        column("Date", mm=26),
        column("Initials", mm=20),
    ]
    says = "Press, look, tick one box, write date and initials. A row without a tick is not tested."
    if done:
        says += f" Left out: {len(every) - len(rows)} that the function test record has as designed."
    # Above the rows, so that nobody signs a page on which nothing stands.
    signed = write_on(["Tested by", "Licence or company", "Date", "Signature"])
    asked = table(heads, rows, row_mm=_ROW_MM) if rows else para("Nothing is left to test.")
    return Sheet(number, "Function test", says, [signed, asked])


_Asked = tuple[str, str, str, str]


def _test_row(what: str, room: str, press: str, answer: str) -> list[Cell]:
    return [ident(what), room, press, answer, tick_box(), tick_box(), "", ""]


def _of_boxes(schedule: Schedule) -> Iterator[_Asked]:
    """Gang by gang, then the whole-device entries of the box; a gang without a device is asked too."""
    house = schedule.house
    for box_id, box in house.boxes.items():
        room = house.rooms[box.room].name
        devices = [i for i, d in house.devices.items() if d.box == box_id]
        told = {what: row for i in devices for what, row in _told(schedule, i)}
        for r in rows_of_box(schedule, box_id):
            row = told.pop(r.id, None)
            if row:
                yield r.id, room, row.press, row.answer
            else:
                yield r.id, room, "No device is chosen for it.", f"Then: {duty_words(schedule, r)}."
        for what, row in told.items():
            yield f"{what} {row.label}", room, row.press, row.answer


def _of_places(schedule: Schedule) -> Iterator[_Asked]:
    for device_id, device in schedule.house.devices.items():
        if device.box is None:
            for what, row in _told(schedule, device_id):
                label = "" if "." in what else f" {row.label}"
                yield f"{what}{label}", room_name(schedule.house, device_id), row.press, row.answer


def _told(schedule: Schedule, device_id: str) -> Iterator[tuple[str, FunctionTestRow]]:
    """The worksheet's rows of one device under the ids of its gangs, outputs and buttons."""
    ids = [c.row.id if c.row else f"{device_id}.{c.number}" for c in schedule.channels_of[device_id]]
    rows = function_test_rows(schedule, device_id)
    # The rows of gangs, outputs and buttons come first, in the device's own order.
    yield from zip([*ids, *[device_id] * (len(rows) - len(ids))], rows, strict=True)


def _of_scenes(schedule: Schedule) -> Iterator[_Asked]:
    for s in resolve(schedule):
        for start in s.starts:
            what = id_words(schedule.house, s.scene_id)
            yield what, "", start, f"{s.name} as in the scene schedule"


_AT_ONCE = (
    "Look at the board: if the breaker of the switch is off, turn it on once. If it goes off again, leave it "
    "off.",
    "See whether the other buttons of the same plate work, and whether the load works from another place.",
    "Find the switch in the room elevations: its plate has a number, such as {box}.",
    "Ring the firm on the line above. Say the name of the house, the number of the plate, and what it does "
    "and does not do.",
    "Do not take the plate off. A press, a scene or a dark lamp is no isolation.",
)
_REPLACING = (
    "Choose a switch with as many gangs, rated for the same kinds of load, with the same need of a neutral, "
    "and no deeper behind the plate than the box allows: the switch schedule has all but the depth. If the "
    "firm holds the file of this house, have it check the new switch in it before it is bought.",
    "Ask about every use that the house does not own, and write it down before anything is changed.",
    "Isolate, lock off, prove dead: every circuit that the switch schedule names for the box, as line or as "
    "neutral.",
    "Take the old switch out. Write down which conductor sat on which terminal. Fit the new one. Energise.",
    "In the controller, take the old device off its network{removing}, as failed where it no longer answers.",
    "Join the new device. Set the name and purpose of each entry exactly as the sheet of names has them.",
    "Put the scenes and the listed uses back onto the new entries.",
    "Carry out the function test of every gang of the box and of every scene that uses it.",
    "Write the swap into the table below and tell it to the firm, whose journal of this house takes it in.",
)
_BEFORE = (
    "Isolate, lock off, prove dead before the plate comes off. A press or a scene is no isolation.",
    "A licensed person does it; local code decides who that is and what must be notified.",
)
_SWAPS = 3


def failing_sheet(schedule: Schedule, number: str) -> Sheet:
    """What to do when a switch fails, years later, for a person who has only this paper.

    The householder's part and the licensed person's part stand apart; the uses that others own are listed
    to ask about, and a swap is written down on the sheet itself.
    """
    house = schedule.house
    used = {n.protocol for n in house.networks.values()}
    verbs = "; ".join(f"{p.label}: {p.remove}" for k, p in PROTOCOLS.items() if k in used)
    fill = {"removing": f" ({verbs})" if verbs else "", "box": next(iter(house.boxes), "B1")}
    nec = is_nec(house)
    at_once, replacing = (
        [said(w, nec=nec).format(**fill) for w in words] for words in (_AT_ONCE, _REPLACING)
    )
    blocks: list[Block] = [
        cautions("Work on mains can kill.", [said(w, nec=nec) for w in _BEFORE]),
        write_on(["The firm", "Its telephone", said("Where the board is", nec=nec)]),
        beside(
            [heading("At once, for whoever lives here"), steps(at_once)],
            [
                heading("For the licensed person who puts a new one in"),
                steps(replacing),
            ],
            shares=(1, 1.6),
        ),
    ]
    if house.outside_uses:
        blocks += [heading("Uses that the house does not own"), _outside_uses(schedule)]
    blocks += [heading("Swaps"), _swaps()]
    return Sheet(number, "When a switch fails", said("Keep this sheet where the board is.", nec=nec), blocks)


def _swaps() -> Block:
    heads = ["Box", "Gangs", "Old address", "New model", "New address", "Date", "Who"]
    columns = [column(head, fr=1) for head in heads]
    return table(columns, [[""] * len(heads) for _ in range(_SWAPS)], row_mm=_ROW_MM)


def _outside_uses(schedule: Schedule) -> Block:
    rows: list[list[Cell]] = [
        [
            strong(thing_words(schedule.house, u.device)),
            "any" if u.entry is None else str(u.entry),
            u.kind,
            u.words,
        ]
        for u in schedule.house.outside_uses.values()
    ]
    heads = [
        column("Device", fr=1),
        column("Entry", mm=18),
        column("Kind", mm=24),
        column("What it is", fr=3),
    ]
    return table(heads, rows)
