"""Worksheets: the order of work, then one sheet per device to stand before it with."""

from collections.abc import Collection, Iterable, Sequence

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, in_order
from secondfix.house import Schedule, is_nec
from secondfix.joining import Walk, Worksheet, stage_words, worksheets
from secondfix.naming import names
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    across,
    beside,
    bullets,
    cautions,
    column,
    heading,
    lines,
    para,
    soft,
    steps,
    strong,
    table,
    tick_box,
    together,
    write_on,
)
from secondfix.papers.cautions import cautions_sheet
from secondfix.papers.coverage import TextFault
from secondfix.papers.leaned import leaning, names_of
from secondfix.papers.light_sheet import light_sheets
from secondfix.papers.setting import PX_PER_MM, Setting, body_mm
from secondfix.papers.typeset import typeset
from secondfix.papers.words import sentence
from secondfix.papers.worksheet_parts import caution_words, removal_parts, settings_of
from secondfix.terms import said, walked_way

_ORDERING = frozenset({"no_parent"})  # the rule whose answer the order of joining follows
_WALKING = ("room_change_m", "storey_change_m")  # what the way between stops is reckoned with
_MOST_TOGETHER = 12  # rows of a function test that share one page with all that follows them


def worksheets_pdf(
    schedule: Schedule,
    walk: Walk,
    findings: Iterable[Finding],
    assumptions: Assumptions,
    *,
    setting: Setting,
    only: Collection[str] | None = None,
) -> bytes | list[TextFault]:
    """Cautions, the order of work and a worksheet per device, in the walk's order, as a PDF.

    Each worksheet has place, cautions, code to capture, procedure, the entries that must appear and how
    to tell them apart, their names and purposes, what to try when nothing appears, and the function
    test's rows. After the first worksheet at a box of a light worked from several places stands the sheet
    of that light. Codes themselves are never printed here. The same arguments give the same bytes.
    ``only``: the sheets of these devices, after the cautions and without the order of work.
    """
    house, answers = schedule.house, in_order(findings)
    nec = is_nec(house)
    width, _ = body_mm(setting.size_for(house), landscape=False)
    of_lights = light_sheets(schedule, answers, assumptions, wide=width * PX_PER_MM)
    chosen = [w for w in worksheets(schedule, walk, names(schedule)) if only is None or w.device in only]
    boxes = {house.devices[w.device].box for w in chosen}
    waiting = [pair for pair in of_lights if only is None or boxes.intersection(pair[0].boxes)]
    of_order = {*names_of(f for f in answers if f.rule in _ORDERING), *_WALKING}
    sheets = [cautions_sheet(house, "S0/01")]
    if only is None:
        sheets.append(leaning(_order_sheet(schedule, walk, "S0/02"), assumptions, of_order, nec=nec))
    sources_on = "S0/02" if only is None else ""
    for w in chosen:
        box = house.devices[w.device].box
        here = [pair for pair in waiting if box in pair[0].boxes]
        see = tuple(f"{s.number} {s.title}" for light, s in of_lights if box in light.boxes)
        sheet, lean = _worksheet(w, see, nec=nec), _leaned(w.device, answers)
        sheets.append(leaning(sheet, assumptions, lean, nec=nec, sources_on=sources_on))
        sheets += [s for _, s in here]
        waiting = [pair for pair in waiting if pair not in here]
    sheets += [s for _, s in waiting]
    return typeset(sheets, title="worksheets", house=house, setting=setting, landscape=False)


def _leaned(device_id: str, answers: Sequence[Finding]) -> tuple[str, ...]:
    """What the order, and so the parent that a device joins through, leans on."""
    return names_of(f for f in answers if f.rule in _ORDERING and device_id in f.also)


def _order_sheet(schedule: Schedule, walk: Walk, number: str) -> Sheet:
    nec = is_nec(schedule.house)
    rows: list[list[Cell]] = []
    last = -1
    for step in walk.steps:
        if step.stage != last:
            rows.append([across(sentence(stage_words(step.stage, nec=nec)).removesuffix("."))])
        last = step.stage
        marks = [soft(sentence(m.value)) for m in step.marks]
        rows.append([str(step.number), lines(step.words, *marks), tick_box()])
    columns = [
        column("Step", mm=13, align="right"),
        column("Do", fr=1),
        column("Done", mm=14, align="center"),
    ]
    apart = f" Positions not known: {', '.join(walk.unplaced)}." if walk.unplaced else ""
    way, isolations = walked_way(walk.walked_mm, nec=nec), said("Isolations", nec=nec)
    says = (
        f"Every device after a parent that is joined and has power. {isolations}: {walk.isolations}. "
        f"Way between stops: about {way}.{apart}"
    )
    return Sheet(
        number, "Order of work", says, [table(columns, rows)] if rows else [para("No device is chosen.")]
    )


def _worksheet(w: Worksheet, see: Sequence[str], *, nec: bool) -> Sheet:
    blocks: list[Block] = [
        para(w.where, style="soft"),
        para(f"{w.device_title}. Worksheet {w.number}, {stage_words(w.stage, nec=nec).lower()}."),
        _cautions(w, nec=nec),
        *(para(f"Before a conductor is parted: sheet {sheet}.", style="strong") for sheet in see),
    ]
    if w.code:
        blocks += [heading("Capture before fitting"), para(f"{w.code.words} Printed: {w.code.printed_at}.")]
    if w.removal:
        blocks += [heading("First"), *removal_blocks(w.removal)]
    blocks += _joining(w) if w.joins else [heading("Extension unit"), bullets(w.extending)]
    if w.tell_apart:
        blocks.append(bullets(w.tell_apart))
    settings = settings_of(w)
    blocks += [heading("Set"), bullets(settings)] if settings else []
    return Sheet(f"S7/{w.number:02d}", w.place_title, "", [*blocks, *_foot(w)])


def _joining(w: Worksheet) -> list[Block]:
    """The order of work hangs on the parent: it stands before the steps, as large as they are."""
    blocks = [heading("Join"), para(w.through), *([para(" ".join(w.window))] if w.window else [])]
    blocks += [steps(w.procedure, large=True), para(w.time)]
    return [*blocks, heading("Entries"), para(w.entries_words, style="strong"), _entries(w)]


def _foot(w: Worksheet) -> list[Block]:
    """Function test, what to try, lines to write on: on one page, side by side where that saves one."""
    tests = [heading("Function test"), tests_table(w)]
    asked = ["Address", "Entries seen"] if w.joins else ["Conductors moved"]
    written = write_on([*asked, "Date", "Initials"])
    nothing = nothing_blocks(w)
    foot = [beside(tests, nothing, shares=(1.2, 1)), written] if nothing else [*tests, written]
    return [together(foot)] if len(w.tests) <= _MOST_TOGETHER else foot


def removal_blocks(sentences: Sequence[str]) -> list[Block]:
    """Sentences that end in a colon or speak for all lead; the steps between them are numbered afresh."""
    return [block for lead, run in removal_parts(sentences) for block in (para(lead), steps(run))]


def _cautions(w: Worksheet, *, nec: bool) -> Block:
    return cautions(*caution_words(w, nec=nec))


def _entries(w: Worksheet) -> Block:
    rows: list[list[Cell]] = [
        [
            strong(e.label),
            "" if e.endpoint is None else str(e.endpoint),
            lines(strong(e.name), soft(e.note)) if e.note else strong(e.name),
            e.purpose or soft("no purpose"),
            tick_box(),
        ]
        for e in w.entries
    ]
    columns = [
        column("Entry", mm=28),
        column("Endpoint", mm=18),
        column("Name to set", fr=2),
        column("Purpose to set", fr=1.2),
        column("Set", mm=11, align="center"),
    ]
    return table(columns, rows)


def nothing_blocks(w: Worksheet) -> list[Block]:
    if not w.when_nothing:
        return []
    rows: list[list[Cell]] = [[t.seen, sentence(t.do)] for t in w.when_nothing]
    return [
        heading("When nothing appears"),
        table([column("What is seen", fr=1), column("Try", fr=2)], rows, dense=True),
    ]


def tests_table(w: Worksheet) -> Block:
    rows: list[list[Cell]] = [
        [lines(strong(t.label), t.press), t.answer, tick_box(), tick_box()] for t in w.tests
    ]
    columns = [
        column("Press", fr=1),
        column("Must answer", fr=1.4),
        column("Works", mm=14, align="center"),
        column("Does not", mm=17, align="center"),
    ]
    return table(columns, rows, row_mm=8)
