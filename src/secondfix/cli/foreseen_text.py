"""What was foreseen, as a page of text."""

from collections.abc import Iterator, Sequence

from secondfix.cli.page import counted, para, percent, table
from secondfix.house import House
from secondfix.radio import (
    LEAST_FOR_NUMBERS,
    LEAST_GAIN,
    Case,
    CaseKind,
    DeviceChance,
    Foreseen,
    NetworkForeseen,
    Reach,
    Word,
)

MOST_CASES = 12
_LOSSES = {
    CaseKind.REPEATER_GONE: "repeater",
    CaseKind.PULLED: "plug",
    CaseKind.TRIPPED: "circuit",
}


def foreseen_text(house: House, foreseen: Foreseen, answer: Reach, *, numbers: bool) -> list[str]:
    """Paragraphs and tables, one network after another; chances where asked for or enough is measured."""
    if not foreseen.networks:
        return ["Nothing to draw: no network stands in the house."]
    shown = numbers or foreseen.measured >= LEAST_FOR_NUMBERS
    by_route = {d.id: d.word for d in answer.devices}
    out = [_head(foreseen)]
    for key, network in foreseen.networks.items():
        if not network.devices:
            why = "nothing to draw, for where its devices or its controller stand is not known"
            out.append(para(f"{_called(house, key)}: {why}."))
            continue
        counts = "; ".join(_counted(house, network))
        out.append(para(" ".join((f"{_called(house, key)}: {counts}.", *_otherwise(network, by_route)))))
        out += _network(network, shown=shown)
    return out + [para(note) for note in foreseen.notes]


def case_text(house: House, foreseen: Foreseen, key: str, *, numbers: bool) -> list[str]:
    """All that is foreseen of one device, circuit or place; nothing where there is none of that id."""
    shown = numbers or foreseen.measured >= LEAST_FOR_NUMBERS
    out = []
    for network in foreseen.networks.values():
        for case in (*_losses(network), *network.of_kind(*_HELPS)):
            if case.id == key:
                out.append(para(_whole(house, network, case)))
                if shown and case.chance:
                    head = ("device", "chance now", "chance then", "draws leave")
                    moved = [d for d in network.devices if d.id in case.chance]
                    out.append(table(head, [_then(case, d) for d in moved]))
    if not out and (key in house.devices or key in house.circuits):
        out = [para(f"{key}: {_why_no_case(house, foreseen, key)}.")]
    return [_head(foreseen), *out, *(para(note) for note in foreseen.notes)] if out else []


def _why_no_case(house: House, foreseen: Foreseen, key: str) -> str:
    if key in house.circuits:
        return "no device or controller that is drawn is known to hang on it"
    network = foreseen.networks.get(house.devices[key].network or "")
    if network and key in network.words:
        return "it passes nothing on, so nobody else falls with it"
    return "nothing is drawn of it, for where it or its controller stands is not known"


def _head(foreseen: Foreseen) -> str:
    return f"Drawn {counted(foreseen.draws, 'time')}, seed {foreseen.seed}:"


def _called(house: House, network: str) -> str:
    return f"{network} ({house.networks[network].name})"


def _network(network: NetworkForeseen, *, shown: bool) -> Iterator[str]:
    if shown:
        head = ("device", "reach", "chance", "draws leave", "model leaves", "whichever one goes")
        yield table(head, [_device(network, d) for d in network.devices])
    losses = [c for c in _losses(network) if c.falls]
    if losses:
        head = ("when", *(("in the mean",) if shown else ()), "who falls")
        yield table(head, [_loss(network, c, shown=shown) for c in losses[:MOST_CASES]])
        if len(losses) > MOST_CASES:
            yield f"… and {len(losses) - MOST_CASES} more cases in which somebody falls; --json has them all."
    yield para(" ".join((*_quiet(network, bool(losses)), *_helps(network, shown=shown))))


def _counted(house: House, network: NetworkForeseen) -> Iterator[str]:
    for word in Word:
        found = {d.id for d in network.devices if network.words[d.id] is word}
        if word is Word.NOT_KNOWN:
            found |= set(network.not_known)
        if found and word is Word.LIKELY:
            yield f"{len(found)} likely"
        elif found:
            yield f"{len(found)} {word.value}: {', '.join(key for key in house.devices if key in found)}"


def _otherwise(network: NetworkForeseen, by_route: dict[str, Word]) -> Iterator[str]:
    """Whose word is another than that of its best route alone, and why."""
    words = network.words
    better = [k for k in words if words[k] is Word.LIKELY is not by_route[k]]
    if better:
        yield f"Likely by several routes together, though by no single one: {_some(better)}."
    worse = [k for k in words if by_route[k] is Word.LIKELY is not words[k]]
    if worse:
        yield (
            "Likely link by link, but not in the draws, which take the whole route at once and others on the "
            f"air: {_some(worse)}."
        )


def _device(network: NetworkForeseen, d: DeviceChance) -> tuple[str, ...]:
    return (
        d.id,
        network.words[d.id].value,
        percent(d.reached.share),
        _between(d.reached.low, d.reached.high),
        _between(d.model_low, d.model_high),
        percent(d.any_gone.share),
    )


def _between(low: float, high: float) -> str:
    ends = dict.fromkeys((percent(low), percent(high)))
    return " to ".join(ends)


def _losses(network: NetworkForeseen) -> list[Case]:
    """What may go; a repeater that may be pulled out stands once."""
    gone = {c.id for c in network.of_kind(CaseKind.REPEATER_GONE)}
    cases = network.of_kind(*_LOSSES, CaseKind.ALL_PULLED)
    return [c for c in cases if c.kind is not CaseKind.PULLED or c.id not in gone]


def _words(network: NetworkForeseen, case: Case) -> str:
    pulled = {c.id for c in network.of_kind(CaseKind.PULLED)}
    both = case.kind is CaseKind.REPEATER_GONE and case.id in pulled
    return f"{case.words} or pulled out" if both else case.words


def _loss(network: NetworkForeseen, case: Case, *, shown: bool) -> tuple[str, ...]:
    mean = (f"{case.gained:+.1f} reached",) if shown else ()
    return (_words(network, case), *mean, _fallen(network, case, most=8))


def _fallen(network: NetworkForeseen, case: Case, *, most: int) -> str:
    if network.network in case.gone:
        return "all others"
    likely = [key for key in case.falls if network.words[key] is Word.LIKELY]
    already = [key for key in case.falls if network.words[key] is not Word.LIKELY]
    parts = [_some(likely, most)] if likely else []
    return "; ".join((*parts, *((f"doubtful already: {_some(already, most)}",) if already else ())))


def _some(ids: Sequence[str], most: int = 8) -> str:
    listed = ", ".join(ids[:most])
    return f"{listed} and {len(ids) - most} more" if len(ids) > most else listed


def _quiet(network: NetworkForeseen, somebody: bool) -> Iterator[str]:
    """How many may go without anybody else falling."""
    silent = [c.kind for c in _losses(network) if not c.falls]
    told = [counted(silent.count(kind), word) for kind, word in _LOSSES.items() if kind in silent]
    other = "the other " if somebody else ""
    if len(silent) == 1:
        yield f"Nobody else falls when {other or 'its '}{_LOSSES.get(silent[0], 'plugs')} goes."
    elif told:
        yield f"Nobody else falls when one of {other}{_listed(told)} goes."


_HELPS = {
    CaseKind.SOCKET_HELPS: "No empty socket would help anybody",
    CaseKind.CONTROLLER_MOVED: "No other place on the plan is better for the controller",
}


def _helps(network: NetworkForeseen, *, shown: bool) -> Iterator[str]:
    """The best socket to plug a repeater into, and the best other place of the controller."""
    for kind, nothing in _HELPS.items():
        cases = network.of_kind(kind)
        if cases and cases[0].helps:
            best = cases[0]
            gain = f" ({best.gained:+.1f} reached in the mean)" if shown else ""
            words = f"{best.words[:1].upper()}{best.words[1:]}{gain}"
            changed = _changed(network, best)
            yield f"{words} would help most{'; ' + changed if changed else ', but make nobody likely'}."
        elif cases:
            yield f"{nothing}."


def _changed(network: NetworkForeseen, case: Case, *, most: int = 8) -> str:
    parts = [f"then likely in the mean: {_some(case.rises, most)}"] if case.rises else []
    if case.falls:
        parts.append(f"who falls: {_fallen(network, case, most=most)}")
    if case.holds:
        parts.append(f"no longer hanging on one repeater: {_some(case.holds, most)}")
    return "; ".join(parts)


def _whole(house: House, network: NetworkForeseen, case: Case) -> str:
    """One case, nobody left out."""
    words = _words(network, case)
    changed = _changed(network, case, most=len(house.devices))
    out = f"{_called(house, network.network)}, {words}; {changed or 'nobody else falls or becomes likely'}."
    before = {d.id: d.reached.share for d in network.devices}
    lower = [key for key, then in case.chance.items() if before[key] - then.share >= LEAST_GAIN]
    for word, told in ((Word.LIKELY, "Likely still, but less surely"), (Word.NOT_KNOWN, "Cannot be told")):
        found = [key for key in lower if key not in case.falls and network.words[key] is word]
        if found:
            out += f" {told}: {', '.join(found)}."
    if len(case.gone) > 1:
        devices = [key for key in case.gone if key != network.network]
        out += f" Without power: {', '.join(devices) or 'the controller alone'}."
    return out


def _then(case: Case, d: DeviceChance) -> tuple[str, ...]:
    then = case.chance[d.id]
    return (d.id, percent(d.reached.share), percent(then.share), _between(then.low, then.high))


def _listed(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} or {words[-1]}"
