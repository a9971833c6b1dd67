"""The work at the box: isolate, take out, fit, energise, leave the network, join, in the plan's own order."""

from collections.abc import Iterator

from secondfix.house import House, is_nec
from secondfix.joining import Worksheet, before_boxes
from secondfix.maintenance import Fit, StepKind, SwapPlan
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    across,
    bullets,
    cautions,
    column,
    heading,
    para,
    steps,
    table,
    tick_box,
)
from secondfix.papers.words import sentence
from secondfix.papers.worksheets_paper import nothing_blocks, removal_blocks
from secondfix.terms import PROTOCOLS, said

HEADS = {
    StepKind.REMOVE: "Off its network",
    StepKind.ISOLATE: "Isolate, lock off, prove dead",
    StepKind.FIT: "Take out and fit",
    StepKind.ENERGISE: "Energise",
}


def at_box_sheet(house: House, plan: SwapPlan, number: str) -> Sheet:
    """Every step up to joining with a box to tick; joining as on the device's own worksheet."""
    blocks: list[Block] = [_cautions(house, plan)]
    sheets = {sheet.device: sheet for sheet in plan.sheets}
    count, rows, last = 0, list[list[Cell]](), None
    for step in plan.steps:
        fit = next((f for f in plan.fits if step.words.startswith(f"{f.device}: ")), None)
        if step.kind in HEADS:
            if step.kind is not last:
                rows.append([across(said(HEADS[step.kind], nec=is_nec(house)))])
            count += 1
            rows.append([str(count), step.words, tick_box()])
            last = step.kind
        elif step.kind is StepKind.JOIN and fit and fit.device in sheets:
            blocks += [*_ticked(rows), *_joining(sheets.pop(fit.device), fit)]
            rows, last = [], None
    says = "In this order. Tick each step when it is done."
    # What has no radio has no step of joining, and still something to be told.
    rest = [b for f in plan.fits if f.device in sheets for b in _joining(sheets[f.device], f)]
    return Sheet(number, f"At {plan.place}", says, [*blocks, *_ticked(rows), *rest])


def _cautions(house: House, plan: SwapPlan) -> Block:
    items = dict.fromkeys(c.words for s in plan.sheets for c in s.cautions)
    items |= dict.fromkeys(sentence(m.value) for s in plan.sheets for m in s.marks)
    return cautions(before_boxes(house)[0].words, list(items))


def _ticked(rows: list[list[Cell]]) -> list[Block]:
    """One run of numbers through all that is done with tools, a head at each change of the work."""
    heads = [column("Step", mm=13, align="right"), column("Do", fr=1), column("Done", mm=14, align="center")]
    return [table(heads, rows, large=True)] if rows else []


def _joining(w: Worksheet, fit: Fit) -> Iterator[Block]:
    """Removal where it is asked for, window, parent, procedure, what must appear, what to try."""
    if not w.joins:
        yield heading(f"{w.device} has no radio")
        yield bullets(w.extending)
        return
    verb = PROTOCOLS[fit.model.protocol].join if fit.model.protocol else "join"
    yield heading(f"{verb.capitalize()} {w.device}")
    if w.removal:
        yield from removal_blocks(w.removal)
    yield para(w.through)
    if w.window:
        yield para(" ".join(w.window))
    yield steps(w.procedure, large=True)
    yield para(w.time)
    yield para(w.entries_words, style="strong")
    yield from nothing_blocks(w)
