"""The steps of a swap in the order of a visit, and what is to be minded."""

from collections.abc import Iterable, Iterator

from secondfix.house import is_nec
from secondfix.joining import Mark, Worksheet
from secondfix.maintenance.losses import LossKind
from secondfix.maintenance.plan import StepKind, SwapStep
from secondfix.maintenance.removal import Removal
from secondfix.maintenance.replacing import Fit, Site
from secondfix.maintenance.teaching import Ask, Teach
from secondfix.maintenance.trying import Tried
from secondfix.terms import PROTOCOLS, said_around_names

Said = tuple[StepKind, str]


def steps_of(
    site: Site,
    one: Tried,
    sheets: tuple[Worksheet, ...],
    *,
    removal: Removal,
    asks: tuple[Ask, ...],
    teach: tuple[Teach, ...],
    starts: tuple[str, ...],
    children: tuple[str, ...] | None,
) -> tuple[SwapStep, ...]:
    """Ask, capture, remove, isolate, fit, energise, join, set, teach, hear again, test, write down.

    What joins on a bench joins before anything is isolated, or once the failed device is out.
    """
    said: list[Said] = [(StepKind.ASK, ask.words) for ask in asks]
    said += _losses(one)
    said += [
        (StepKind.CAPTURE, f"{s.device}: {s.code.words} Printed: {s.code.printed_at}.")
        for s in sheets
        if s.code
    ]
    said += _at_the_box(site, one, sheets, removal)
    said += [(StepKind.SET, f"{s.device}: {s.power_loss}") for s in sheets if s.power_loss]
    said += [(StepKind.TEACH, t.words) for t in teach]
    said += [(StepKind.TEACH, words) for words in starts]
    said += _hearing(site, children)
    said += [
        (StepKind.TEST, f"{s.device}, {row.label}: {row.press} {row.answer}")
        for s in sheets
        for row in s.tests
    ]
    said.append((StepKind.RECORD, "Write the entries into the journal, with the address as it appeared."))
    nec = is_nec(site.house)
    return tuple(
        SwapStep(n, kind, said_around_names(words, nec=nec)) for n, (kind, words) in enumerate(said, 1)
    )


def _losses(one: Tried) -> Iterator[Said]:
    if one.losses:
        yield StepKind.ASK, "Read the losses to the customer; go on only if they are accepted."
    for look in dict.fromkeys(look.words for f in one.open for look in f.looks):
        yield StepKind.ASK, f"Not known yet, and to be settled before fitting: {look}."


def _at_the_box(site: Site, one: Tried, sheets: tuple[Worksheet, ...], removal: Removal) -> list[Said]:
    """Whatever joins on a bench has joined before it is fitted: nobody opens the box twice for it.

    A failed node is replaced once the old device is out and can no longer answer.
    """
    bench = {s.device for s in sheets if Mark.BENCH in s.marks}
    isolate = dict.fromkeys(s.isolate for s in sheets if s.isolate)
    out, in_ = [*_taking_out(site, isolate)], [*_putting_in(site, one, powered=bool(isolate))]
    leaves = [(StepKind.REMOVE, words) for words in removal.words]
    first = [*_joining(tuple(f for f in one.fits if f.device in bench), sheets)]
    rest = [*_joining(tuple(f for f in one.fits if f.device not in bench), sheets)]
    if not removal.keeps_node:
        return [*leaves, *first, *out, *in_, *rest]
    return [*out, *leaves, *first, *in_, *rest] if first else [*out, *in_, *leaves, *rest]


def _taking_out(site: Site, isolate: Iterable[str]) -> Iterator[Said]:
    for words in isolate:
        yield StepKind.ISOLATE, f"{words} A licensed person does this; local code decides."
    where = site.device.box or site.device.place
    yield (
        StepKind.FIT,
        f"Take {site.failed} out of {where}. Mark every conductor with its gang before it is loosened.",
    )


def _putting_in(site: Site, one: Tried, *, powered: bool) -> Iterator[Said]:
    for fit in one.fits:
        yield StepKind.FIT, _fit_words(site, fit)
    yield from ((StepKind.FIT, words) for words in _closing(site, one.fits))
    if powered:
        yield (
            StepKind.ENERGISE,
            "Put all fronts on that joining does not need off, then energise the circuit again.",
        )


def _fit_words(site: Site, fit: Fit) -> str:
    if fit.unit.load:
        return (
            f"Fit {fit.device} ({fit.model.title}) at {fit.place}. In the box, join the line to the wire "
            f"of {site.house.loads[fit.unit.load].name}, so that it keeps its supply, and mark it."
        )
    if not fit.box:
        return f"Fit {fit.device} ({fit.model.title}) at {fit.place}."
    order = ", ".join(f"gang {n} works {fit.box}.{slot}" for n, slot in enumerate(fit.gangs, 1))
    return f"Fit {fit.device} ({fit.model.title}) in {fit.box}: {order or 'it works no gang'}."


def _closing(site: Site, fits: tuple[Fit, ...]) -> Iterator[str]:
    """Conductors that nothing takes are capped, mounts that nothing takes are covered."""
    taken = {m for fit in fits for m in fit.mounts}
    open_ = [m for m in site.device.mounts if m not in taken]
    worked = {slot for fit in fits for slot in fit.gangs}
    moved = {fit.unit.load for fit in fits}
    for slot in site.device.gangs:
        row = site.rows.rows[f"{site.device.box}.{slot}"]
        if slot not in worked and row.load_id not in moved:
            yield f"Cap the conductor of {row.id} and mark it."
    if open_:
        yield (
            f"Cover mount {', '.join(open_)} of {site.device.box} with a plain switch, or with a blank plate "
            "that needs a tool to come off."
        )


def _joining(fits: tuple[Fit, ...], sheets: tuple[Worksheet, ...]) -> Iterator[Said]:
    by_device = {s.device: s for s in sheets}
    for fit in fits:
        sheet = by_device.get(fit.device)
        if sheet is None or fit.model.protocol is None:
            continue
        verb = PROTOCOLS[fit.model.protocol].join
        for words in (*sheet.removal, *sheet.window, *sheet.procedure):
            yield StepKind.JOIN, f"{fit.device}: {words}"
        yield StepKind.JOIN, f"{fit.device}: when it has been told to {verb}, {sheet.entries_words}"
        for row in sheet.entries:
            note = f" ({row.note})" if row.note else ""
            yield StepKind.SET, f"{fit.device}, {row.label}: name '{row.name}', purpose {row.purpose}{note}."


def _hearing(site: Site, children: tuple[str, ...] | None) -> Iterator[Said]:
    if children is None:
        words = f"Who hangs on {site.failed} by radio was not asked: see that all of its network answers."
        yield StepKind.HEAR, words
    for child in children or ():
        yield StepKind.HEAR, f"Do not close the visit before {child} has been heard again."


def notes_of(site: Site, one: Tried) -> tuple[str, ...]:
    """What is no loss and still worth a word."""
    notes = []
    for fit in one.fits:
        spare = fit.model.gangs - len(fit.gangs) - len(fit.outputs)
        if spare > 0 and fit.unit.load is None:
            notes.append(f"{fit.device} has {spare} more gang{'s' if spare > 1 else ''} than are used.")
    if site.model is None:
        notes.append(f"The model of {site.failed} is not known: what it could do is not known either.")
    if one.after is not None and all(loss.kind is not LossKind.NAME for loss in one.losses):
        notes.append("Every entry keeps its name; identity is address and endpoint, so give the names again.")
    return tuple(notes)
