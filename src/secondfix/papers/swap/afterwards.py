"""Before the visit closes: names, settings, scenes gang by gang, who is heard again, tests, findings."""

from collections.abc import Iterator
from itertools import groupby

from secondfix.house import House, Schedule, schedule
from secondfix.maintenance import Expected, StepKind, SwapPlan, Teach
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    across,
    bullets,
    column,
    heading,
    lines,
    para,
    soft,
    strong,
    table,
    tick_box,
    together,
    write_on,
)
from secondfix.papers.places import thing_words
from secondfix.papers.words import sentence

_BLANK_ROWS = 4


def afterwards_sheet(house: House, plan: SwapPlan, number: str) -> Sheet:
    """Everything after joining, each with a box to tick, and room for what was found."""
    after = plan.after or house
    rows = schedule(after, after.models)
    blocks: list[Block] = [
        *_names(plan),
        *_scenes(after, plan),
        *_heard(house, plan),
        *_tests(rows, plan),
        *_entries(plan),
        _found(),
    ]
    says = "The visit closes when every box is ticked, or what is left stands below in words."
    return Sheet(number, "Before the visit closes", says, blocks)


def _names(plan: SwapPlan) -> Iterator[Block]:
    rows: list[list[Cell]] = []
    for sheet in plan.sheets:
        for e in sheet.entries:
            name = lines(strong(e.name), soft(e.note)) if e.note else strong(e.name)
            rows.append(
                [f"{sheet.device}, {e.label}", name, e.purpose or soft("no purpose"), tick_box(), tick_box()]
            )
    yield heading("Entries that must appear, their names and purposes")
    if rows:
        heads = [
            column("Entry", fr=1.1),
            column("Name to set", fr=1.8),
            column("Purpose to set", fr=1),
            column("Appeared", mm=19, align="center"),
            column("Set", mm=11, align="center"),
        ]
        yield table(heads, rows)
    else:
        yield para("No entry is known for it.")
    told = [sentence(words) for s in plan.sheets for words in (s.power_loss, *s.time_limits) if words]
    if told:
        yield bullets(told)


def _scenes(after: House, plan: SwapPlan) -> Iterator[Block]:
    """Scene by scene, a row for each gang: what it is commanded to do."""
    yield heading("Scenes, gang by gang")
    heads = [
        column("Entry", fr=1.4),
        column("Load", fr=1.5),
        column("Command", mm=24),
        column("Do", mm=16),
        column("Done", mm=14, align="center"),
    ]
    rows: list[list[Cell]] = []
    for name, run in groupby(plan.teach, key=lambda t: t.name):
        rows.append([across(name)])
        rows += [_taught(after, plan, t) for t in run]
    taught = {t.words for t in plan.teach}
    starts = [s.words for s in plan.steps if s.kind is StepKind.TEACH and s.words not in taught]
    if rows:
        yield table(heads, rows)
    elif not starts:
        yield para("No scene of the book switches a load through it, and it starts none.")
    if starts:
        given: list[list[Cell]] = [[words, tick_box()] for words in starts]
        yield table([column("Starts", fr=1), column("Done", mm=14, align="center")], given)


def _taught(after: House, plan: SwapPlan, t: Teach) -> list[Cell]:
    fit = next(f for f in plan.fits if f.device == t.device)
    gang = f", gang {fit.box}.{fit.gangs[t.entry - 1]}" if fit.box and t.entry <= len(fit.gangs) else ""
    level = f" {t.level_pct} %" if t.level_pct else ""
    deed = strong("teach") if t.again else "try"
    return [
        f"{t.device} entry {t.entry}{gang}",
        thing_words(after, t.load),
        strong(f"{t.to}{level}"),
        deed,
        tick_box(),
    ]


def _heard(house: House, plan: SwapPlan) -> Iterator[Block]:
    yield heading("Heard again by radio")
    if plan.children is None:
        yield para(f"Who hangs on {plan.failed} was not asked: see that all of its network answers.")
    elif not plan.children:
        yield para(f"Nothing is known to hang on {plan.failed} alone. See that its neighbours still answer.")
    else:
        yield para(f"These hung on {plan.failed}. Do not close the visit before each has been heard again.")
        rows: list[list[Cell]] = [
            [strong(child), thing_words(house, _place(house, child)), tick_box()] for child in plan.children
        ]
        heads = [column("Device", mm=20), column("At", fr=1), column("Heard", mm=15, align="center")]
        yield table(heads, rows)


def _place(house: House, device: str) -> str:
    return house.devices[device].box or house.devices[device].place or ""


def _tests(rows: Schedule, plan: SwapPlan) -> Iterator[Block]:
    """Every button of the new devices, then every extension unit of their gangs."""
    body: list[list[Cell]] = []
    gangs = {
        (fit.device, f"gang {n}"): f" ({fit.box}.{slot})"
        for fit in plan.fits
        for n, slot in enumerate(fit.gangs, 1)
    }
    for sheet in plan.sheets:
        for t in sheet.tests:
            which = strong(f"{sheet.device}, {t.label}{gangs.get((sheet.device, t.label), '')}")
            body.append([lines(which, t.press), t.answer, tick_box(), tick_box()])
    for gang in (f"{fit.box}.{slot}" for fit in plan.fits for slot in fit.gangs if fit.box):
        for other in rows.extended_by.get(gang, ()):
            load = rows.rows[gang].load_id
            answer = f"{thing_words(rows.house, load)} changes each time." if load else "As the gang itself."
            press = lines(strong(f"{other}, which extends {gang}"), "Press it, twice.")
            body.append([press, answer, tick_box(), tick_box()])
    yield heading("Function test")
    heads = [
        column("Press", fr=1),
        column("Must answer", fr=1.4),
        column("Works", mm=14, align="center"),
        column("Does not", mm=17, align="center"),
    ]
    yield table(heads, body, row_mm=8) if body else para("It has no button and no output to test.")


def _found() -> Block:
    """Room to write, and who did it all."""
    heads = [column("Where", mm=30), column("In words", fr=1), column("Put right", mm=18, align="center")]
    blank: list[list[Cell]] = [["", "", tick_box()] for _ in range(_BLANK_ROWS)]
    signed = write_on(["Done by", "Licence or company", "Date", "Signature"])
    return together([heading("What was found"), table(heads, blank, row_mm=9), signed])


def _entries(plan: SwapPlan) -> Iterator[Block]:
    """What the journal will hold, kind by kind; a test is written only once it was made."""
    by_kind: dict[str, list[Expected]] = {}
    for entry in plan.entries:
        by_kind.setdefault(entry.kind, []).append(entry)
    rows: list[list[Cell]] = []
    for kind, own in by_kind.items():
        fill = ", ".join(dict.fromkeys(key for e in own for key in e.to_fill))
        about = ", ".join(e.subject.partition(":")[2] for e in own)
        rows.append([strong(kind.replace("_", " ")), about, f"{fill}: " if fill else "", tick_box()])
    yield heading("Entries for the journal")
    heads = [
        column("Kind", mm=34),
        column("Of", fr=1.2),
        column("Still to be written in", fr=1),
        column("Written", mm=16, align="center"),
    ]
    yield table(heads, rows, dense=True)
