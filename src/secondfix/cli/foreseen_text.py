"""What was foreseen, as a page of text."""

from collections.abc import Iterator, Sequence

from secondfix.cli.page import para, percent, table
from secondfix.house import House
from secondfix.radio import LEAST_FOR_NUMBERS, Case, CaseKind, DeviceChance, Foreseen, NetworkForeseen, Word

MOST_CASES = 12
_LOSSES = {
    CaseKind.REPEATER_GONE: "repeater",
    CaseKind.PULLED: "plug",
    CaseKind.TRIPPED: "circuit",
}
_LEAST_GAIN = 0.05  # of a device


def foreseen_text(house: House, foreseen: Foreseen, *, numbers: bool) -> list[str]:
    """Paragraphs and tables, one network after another; chances where asked for or enough is measured."""
    shown = numbers or foreseen.measured >= LEAST_FOR_NUMBERS
    out = [f"Drawn {foreseen.draws} times, seed {foreseen.seed}:"]
    for key, network in foreseen.networks.items():
        out += _network(f"{key} ({house.networks[key].name})", network, shown=shown)
    return out + [para(note) for note in foreseen.notes]


def _network(name: str, network: NetworkForeseen, *, shown: bool) -> Iterator[str]:
    if not network.devices:
        yield para(f"{name}: nothing to draw, for where its devices or its controller stand is not known.")
        return
    yield para(f"{name}: {'; '.join(_counted(network))}.")
    if shown:
        head = ("device", "reach", "chance", "draws leave", "model leaves", "whichever one goes")
        yield table(head, [_device(network, d) for d in network.devices])
    losses = [c for c in network.of_kind(*_LOSSES, CaseKind.ALL_PULLED) if c.falls]
    if losses:
        head = ("when", *(("in the mean",) if shown else ()), "then not likely any more")
        yield table(head, [_loss(c, shown=shown) for c in losses[:MOST_CASES]])
        if len(losses) > MOST_CASES:
            yield f"… and {len(losses) - MOST_CASES} more cases in which somebody falls; --json has them all."
    yield para(" ".join(_rest(network)))


def _counted(network: NetworkForeseen) -> Iterator[str]:
    for word in Word:
        ids = [d.id for d in network.devices if network.words[d.id] is word]
        if word is Word.NOT_KNOWN:
            ids += network.not_known
        if ids and word is Word.LIKELY:
            yield f"{len(ids)} likely"
        elif ids:
            yield f"{len(ids)} {word.value}: {', '.join(ids)}"


def _device(network: NetworkForeseen, d: DeviceChance) -> tuple[str, ...]:
    return (
        d.id,
        network.words[d.id].value,
        percent(d.reached.share),
        f"{percent(d.reached.low)} to {percent(d.reached.high)}",
        f"{percent(d.model_low)} to {percent(d.model_high)}",
        percent(d.any_gone.share),
    )


def _loss(case: Case, *, shown: bool) -> tuple[str, ...]:
    return (case.words, *((f"{case.gained:+.1f} reached",) if shown else ()), _some(case.falls))


def _some(ids: Sequence[str]) -> str:
    listed = ", ".join(ids[:8])
    return f"{listed} and {len(ids) - 8} more" if len(ids) > 8 else listed


def _rest(network: NetworkForeseen) -> Iterator[str]:
    """Who falls in no case, and what would help."""
    quiet = {
        kind: sum(not c.falls for c in network.of_kind(kind)) for kind in _LOSSES if network.of_kind(kind)
    }
    told = [f"{count} {_LOSSES[kind]}{'' if count == 1 else 's'}" for kind, count in quiet.items() if count]
    if told:
        yield f"Nobody else falls when one of the other {_listed(told)} goes."
    for kind, words, nothing in (
        (CaseKind.SOCKET_HELPS, "The socket that helps most", "No empty socket would help anybody"),
        (
            CaseKind.CONTROLLER_MOVED,
            "A better place",
            "No place on the plan is better for the controller",
        ),
    ):
        cases = network.of_kind(kind)
        if cases and cases[0].gained >= _LEAST_GAIN:
            best = cases[0]
            then = f"then likely: {_some(best.rises)}" if best.rises else "nobody becomes likely by it"
            yield f"{words}: {best.words}; {then}."
        elif cases:
            yield f"{nothing}."


def _listed(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} or {words[-1]}"
