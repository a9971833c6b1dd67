"""The function test form, and the page for the day on which a switch fails."""

from secondfix.house import Duty, Row, Schedule
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    cautions,
    column,
    heading,
    ident,
    lines,
    soft,
    steps,
    strong,
    table,
    tick_box,
    write_on,
)
from secondfix.papers.duties import duty_words, rows_of_box, scene_presses
from secondfix.papers.places import thing_words
from secondfix.scenes import resolve
from secondfix.terms import PROTOCOLS

_ROW_MM = 8.5


def function_test_sheet(schedule: Schedule, number: str) -> Sheet:
    """One row per gang and per start of a scene, with boxes to tick (function test: IEC 60364-6)."""
    house = schedule.house
    gangs = [r for box in house.boxes for r in rows_of_box(schedule, box)]
    rows: list[list[Cell]] = [
        [ident(r.id), house.rooms[r.box.room].name, *_asked(schedule, r), tick_box(), tick_box(), "", ""]
        for r in gangs
    ]
    rows += [
        [
            ident(s.scene_id),
            soft("scene"),
            start,
            f"{s.name} as in the scene schedule",
            tick_box(),
            tick_box(),
            "",
            "",
        ]
        for s in resolve(schedule)
        for start in s.starts
    ]
    heads = [
        column("Gang", mm=18),
        column("Room", fr=1.2),
        column("Do", fr=1.2),
        column("See", fr=2.4),
        column("Works", mm=15, align="center"),
        column("Does not", mm=18, align="center"),
        column("Date", mm=26),
        column("Initials", mm=20),
    ]
    says = "Press, look, tick one box, write date and initials. A row without a tick is not tested."
    signed = write_on(["Tested by", "Licence or company", "Date", "Signature"])
    return Sheet(number, "Function test", says, [table(heads, rows, row_mm=_ROW_MM), signed])


def _asked(schedule: Schedule, r: Row) -> tuple[Cell, Cell]:
    also = [soft(words) for words in scene_presses(schedule, r.id)]
    if r.gang.duty is Duty.CAPPED:
        return "press", "nothing: the gang is capped"
    if r.gang.duty is Duty.NOT_KNOWN:
        return "press, then look through the house", "write down what it does"
    if r.gang.duty is Duty.SCENE_ONLY:
        return "press", lines("no load of its own", *also)
    return "press on, press off", lines(f"{duty_words(schedule, r)}, and nothing else", *also)


_FAILING = (
    "Look up the box in the room elevations and the switch schedule: its gangs, loads and circuits.",
    "See first whether the supply is there: the breaker of its circuit, then the other gangs of the box.",
    "See whether the loads still work from another place, and which scenes use them (scene schedule).",
    "Choose a switch with as many gangs, rated for the same kinds of load, with the same need of a neutral, "
    "and no deeper behind the plate than the box allows. Run the check again with it in the house.",
    "Ask about every use that the house does not own before the old device leaves its network.",
    "Take the old device off its network{removing}. If it no longer answers, remove it in the controller "
    "as failed.",
    "Isolate, lock off, prove dead. Write down which conductor sat on which terminal. Fit the new switch.",
    "Energise, join the new device, and set the name and purpose of each entry exactly as the sheet of names "
    "has them.",
    "Put the scenes and the listed uses back onto the new entries.",
    "Carry out the function test of every gang of the box and of every scene that uses it.",
    "Enter the swap in the journal: old address, new address, date, who.",
)
_BEFORE = (
    "Isolate, lock off, prove dead before the plate comes off. A press or a scene is no isolation.",
    "A licensed person does it; local code decides who that is and what must be notified.",
)


def failing_sheet(schedule: Schedule, number: str) -> Sheet:
    """What to do when a switch fails, years later; the uses that others own are listed to ask about."""
    house = schedule.house
    used = {n.protocol for n in house.networks.values()}
    verbs = "; ".join(f"{p.label}: {p.remove}" for k, p in PROTOCOLS.items() if k in used)
    removing = f" ({verbs})" if verbs else ""
    blocks: list[Block] = [
        cautions("Work on mains can kill.", _BEFORE),
        steps([words.replace("{removing}", removing) for words in _FAILING]),
    ]
    if house.outside_uses:
        rows: list[list[Cell]] = [
            [
                strong(thing_words(house, u.device)),
                "any" if u.entry is None else str(u.entry),
                u.kind,
                u.words,
            ]
            for u in house.outside_uses.values()
        ]
        heads = [
            column("Device", fr=1),
            column("Entry", mm=18),
            column("Kind", mm=24),
            column("What it is", fr=3),
        ]
        blocks += [heading("Uses that the house does not own"), table(heads, rows)]
    return Sheet(number, "When a switch fails", "Keep this sheet where the board is.", blocks)
