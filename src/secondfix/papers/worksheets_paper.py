"""Worksheets: the order of work, then one sheet per device to stand before it with."""

from collections.abc import Sequence

from secondfix.house import Schedule, is_nec
from secondfix.joining import ISOLATION, Walk, Worksheet, stage_words, worksheets
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
from secondfix.papers.setting import Setting
from secondfix.papers.typeset import typeset
from secondfix.papers.words import sentence
from secondfix.terms import walked_way

_MOST_TOGETHER = 12  # rows of a function test that share one page with all that follows them


def worksheets_pdf(schedule: Schedule, walk: Walk, *, setting: Setting) -> bytes | list[TextFault]:
    """Cautions, the order of work and a worksheet per device, in the walk's order, as a PDF.

    Each worksheet has place, cautions, code to capture, procedure, the entries that must appear and how
    to tell them apart, their names and purposes, what to try when nothing appears, and the function
    test's rows. Codes themselves are never printed here. The same arguments give the same bytes.
    """
    sheets = [
        cautions_sheet(schedule.house, "S0/01"),
        _order_sheet(schedule, walk, "S0/02"),
        *(_worksheet(w) for w in worksheets(schedule, walk, names(schedule))),
    ]
    return typeset(sheets, title="worksheets", house=schedule.house, setting=setting, landscape=False)


def _order_sheet(schedule: Schedule, walk: Walk, number: str) -> Sheet:
    rows: list[list[Cell]] = []
    last = -1
    for step in walk.steps:
        if step.stage != last:
            rows.append([across(sentence(stage_words(step.stage)).removesuffix("."))])
        last = step.stage
        marks = [soft(sentence(m.value)) for m in step.marks]
        rows.append([str(step.number), lines(step.words, *marks), tick_box()])
    columns = [
        column("Step", mm=13, align="right"),
        column("Do", fr=1),
        column("Done", mm=14, align="center"),
    ]
    apart = f" Positions not known: {', '.join(walk.unplaced)}." if walk.unplaced else ""
    way = walked_way(walk.walked_mm, nec=is_nec(schedule.house))
    says = (
        f"Every device after a parent that is joined and has power. Isolations: {walk.isolations}. "
        f"Way between stops: about {way}.{apart}"
    )
    return Sheet(
        number, "Order of work", says, [table(columns, rows)] if rows else [para("No device is chosen.")]
    )


def _worksheet(w: Worksheet) -> Sheet:
    blocks: list[Block] = [
        para(w.where, style="soft"),
        para(f"{w.device_title}. Worksheet {w.number}, {stage_words(w.stage).lower()}."),
        _cautions(w),
    ]
    if w.code:
        blocks += [heading("Capture before fitting"), para(f"{w.code.words} Printed: {w.code.printed_at}.")]
    if w.removal:
        blocks += [heading("First"), *removal_blocks(w.removal)]
    # The order of work hangs on the parent: it stands before the steps, as large as they are.
    blocks += [heading("Join"), para(w.through), *([para(" ".join(w.window))] if w.window else [])]
    blocks += [steps(w.procedure, large=True), para(w.time)]
    blocks += [heading("Entries"), para(w.entries_words, style="strong"), _entries(w)]
    if w.tell_apart:
        blocks.append(bullets(w.tell_apart))
    settings = [sentence(s) for s in (w.power_loss, *w.time_limits) if s]
    blocks += [heading("Set"), bullets(settings)] if settings else []
    return Sheet(f"S7/{w.number:02d}", w.place_title, "", [*blocks, *_foot(w)])


def _foot(w: Worksheet) -> list[Block]:
    """Function test, what to try, lines to write on: on one page, side by side where that saves one."""
    tests = [heading("Function test"), tests_table(w)]
    written = write_on(["Address", "Entries seen", "Date", "Initials"])
    nothing = nothing_blocks(w)
    foot = [beside(tests, nothing, shares=(1.2, 1)), written] if nothing else [*tests, written]
    return [together(foot)] if len(w.tests) <= _MOST_TOGETHER else foot


def removal_blocks(sentences: Sequence[str]) -> list[Block]:
    """Sentences that end in a colon or speak for all lead; the steps between them are numbered afresh."""
    blocks: list[Block] = [para(sentences[0])]
    run: list[str] = []
    for words in sentences[1:]:
        if words.endswith(":"):
            blocks += [steps(run), para(words)]
            run = []
        else:
            run.append(words)
    return [*blocks, steps(run)]


def _cautions(w: Worksheet) -> Block:
    """With mains in the box, the isolation leads; without it, what is left to mind."""
    items = [c.words for c in w.cautions]
    items += [f"{sentence(m.value)}" for m in w.marks]
    if w.isolate:
        return cautions(w.isolate, [ISOLATION[0].words, *items])
    return cautions(
        "No wall box is opened for this device. If one must be: isolate, lock off, prove dead.", items
    )


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
