"""The first sheet of a swap: what it comes to, and what is settled before anything is taken out."""

from collections.abc import Iterator

from secondfix.house import House
from secondfix.joining import before_boxes
from secondfix.maintenance import Nearest, Outcome, SwapPlan
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    bullets,
    cautions,
    column,
    heading,
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

_KEPT = "Kept: every scene of the book switches the same loads the same way, and nothing is lost."
_LOSSES = "Kept, with losses: only if the customer accepts each of them."
_REFUSED = "Refused: do not fit it."
_TONIGHT = "For tonight: a model named below would keep everything."
_GOOD = "For good, as far as can be told: no other model that was tried keeps everything."


def outcome_sheet(house: House, plan: SwapPlan, number: str) -> Sheet:
    """Outcome, losses to accept, models that would do better, looks and questions before removal, codes."""
    which = [_which(house, plan), *(para(sentence(s.where), style="soft") for s in plan.sheets[:1])]
    if plan.outcome is Outcome.REFUSED:
        blocks = [cautions(_REFUSED, [r.words for r in plan.reasons]), *which, *_refused(house, plan)]
    else:
        told = heading(_KEPT if plan.outcome is Outcome.KEPT else _LOSSES)
        blocks = [told, *which, *_losses(plan), *_nearest(plan), *_before(house, plan)]
    return Sheet(number, f"Swap of {plan.failed} at {thing_words(house, plan.place)}", "", blocks)


def _which(house: House, plan: SwapPlan) -> Block:
    device = house.devices[plan.failed]
    out: Cell = strong(f"{plan.failed}  {plan.title}")
    network = thing_words(house, device.network) if device.network else "no network"
    address = device.address or "address not known"
    rows: list[list[Cell]] = [[soft("Out"), out, soft(f"{network}; {address}")]]
    for fit in plan.fits:
        where = fit.box or fit.place or ""
        on = thing_words(house, fit.network) if fit.network else "no network"
        mounts = f", mount {', '.join(fit.mounts)}" if fit.mounts else ""
        rows.append([soft("In"), strong(f"{fit.device}  {fit.model.title}"), soft(f"{on}; {where}{mounts}")])
    return table([column("", mm=12), column("Device", fr=1.5), column("Network, place", fr=1)], rows)


def _refused(house: House, plan: SwapPlan) -> list[Block]:
    """What would help; nothing here says how it would be done."""
    blocks: list[Block] = []
    rows: list[list[Cell]] = [
        [strong(r.about), sentence(r.remedy), soft(r.source)] for r in plan.reasons if r.remedy
    ]
    if rows:
        heads = [column("Place", mm=26), column("What would do away with it", fr=2), column("Source", fr=1.2)]
        blocks += [heading("What stands against it"), table(heads, rows)]
    blocks += _nearest(plan)
    if not plan.nearest:
        blocks.append(para("No model at hand would do there as it stands."))
    blocks.append(para("A refused swap has no steps. Leave the plate on, choose another model, ask again."))
    return [*blocks, para(before_boxes(house)[0].words, style="soft")]


def _losses(plan: SwapPlan) -> Iterator[Block]:
    if not plan.losses:
        return
    rows: list[list[Cell]] = [
        [strong(loss.kind.value.replace("_", " ")), loss.words, tick_box()] for loss in plan.losses
    ]
    heads = [column("Lost", mm=32), column("What it means", fr=1), column("Accepted", mm=19, align="center")]
    yield para(_TONIGHT if plan.for_tonight else _GOOD)
    until: list[list[Cell]] = [["What is ticked above", tick_box(), tick_box()]]
    for_columns = [
        column("The losses were read to the customer, who accepts", fr=1),
        column("For tonight", mm=24, align="center"),
        column("For good", mm=24, align="center"),
    ]
    yield together(
        [
            table(heads, rows, row_mm=8),
            table(for_columns, until, row_mm=8),
            write_on(["Customer's name", "Date", "Signature"]),
        ]
    )


def _nearest(plan: SwapPlan) -> Iterator[Block]:
    if plan.nearest:
        rows: list[list[Cell]] = [[strong(n.title), soft(n.model), _near(n)] for n in plan.nearest]
        yield heading("Models that would do there")
        yield table([column("Model", fr=1.6), column("Edition", fr=1), column("Comes to", fr=1.2)], rows)


def _near(near: Nearest) -> str:
    if near.outcome is Outcome.KEPT:
        return "kept"
    return f"loses {', '.join(dict.fromkeys(loss.kind.value.replace('_', ' ') for loss in near.losses))}"


def _before(house: House, plan: SwapPlan) -> Iterator[Block]:
    """What is settled with the front still on."""
    yield heading("Before anything is removed")
    rows: list[list[Cell]] = [["Ask", ask.words, tick_box(), ""] for ask in plan.asks]
    looks = dict.fromkeys(look.words for f in plan.open for look in f.looks)
    if looks:
        yield cautions(before_boxes(house)[0].words, ["Before a look into a box: the steps of sheet S10/02."])
    rows += [["Look", f"Not known yet: {words}.", tick_box(), ""] for words in looks]
    rows += [
        ["Capture", f"{s.device}: {s.code.words} Printed: {s.code.printed_at}.", tick_box(), ""]
        for s in plan.sheets
        if s.code
    ]
    rows += [["Open snag", f"{s.subject.replace(':', ' ')}: {s.words}", tick_box(), ""] for s in plan.snags]
    if not plan.asks:
        yield para(f"The book knows of no use of {plan.failed} that the house does not own.")
    if rows:
        heads = [
            column("", mm=20),
            column("What", fr=1.7),
            column("Done", mm=12, align="center"),
            column("Answer", fr=1),
        ]
        yield table(heads, rows, row_mm=9)
    if plan.notes:
        yield bullets(plan.notes)
