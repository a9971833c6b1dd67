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
    blocks: list[Block] = [_cautions(house, plan), _steps(plan, nec=is_nec(house))]
    for fit in plan.fits:
        blocks += [b for s in plan.sheets if s.device == fit.device for b in _joining(s, fit)]
    says = "In this order. Tick each step when it is done."
    return Sheet(number, f"At {plan.place}", says, blocks)


def _cautions(house: House, plan: SwapPlan) -> Block:
    items = dict.fromkeys(c.words for s in plan.sheets for c in s.cautions)
    items |= dict.fromkeys(sentence(m.value) for s in plan.sheets for m in s.marks)
    return cautions(before_boxes(house)[0].words, list(items))


def _steps(plan: SwapPlan, *, nec: bool) -> Block:
    """One run of numbers through all that is done with tools, a head at each change of the work."""
    done = [step for step in plan.steps if step.kind in HEADS]
    rows: list[list[Cell]] = []
    for n, step in enumerate(done, 1):
        if n == 1 or done[n - 2].kind is not step.kind:
            rows.append([across(said(HEADS[step.kind], nec=nec))])
        rows.append([str(n), step.words, tick_box()])
    heads = [column("Step", mm=13, align="right"), column("Do", fr=1), column("Done", mm=14, align="center")]
    return table(heads, rows, large=True)


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
