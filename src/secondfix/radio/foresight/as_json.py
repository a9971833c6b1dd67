"""The answer of `foresee` as plain JSON values; the shape is described in docs/json.md."""

from secondfix.radio.engine.chances import DeviceChance, Drawn
from secondfix.radio.foresight.answers import Case, Foreseen, NetworkForeseen
from secondfix.radio.learning.measured import LEAST_FOR_NUMBERS


def foreseen_as_json(foreseen: Foreseen, *, numbers: bool = False) -> dict[str, object]:
    """``draws``, ``seed``, ``measured``, ``likely``, ``networks`` and ``notes``.

    Words stand always; chances are null unless ``numbers`` asks for them or enough links are measured.
    """
    shown = numbers or foreseen.measured >= LEAST_FOR_NUMBERS
    return {
        "draws": foreseen.draws,
        "seed": foreseen.seed,
        "measured": foreseen.measured,
        "likely": foreseen.likely,
        "networks": [_network(n, shown) for n in foreseen.networks.values()],
        "notes": list(foreseen.notes),
    }


def _network(n: NetworkForeseen, shown: bool) -> dict[str, object]:
    return {
        "network": n.network,
        "devices": [_device(n, d, shown) for d in n.devices],
        "not_known": list(n.not_known),
        "cases": [_case(c, shown) for c in n.cases],
    }


def _device(n: NetworkForeseen, d: DeviceChance, shown: bool) -> dict[str, object]:
    return {
        "id": d.id,
        "word": n.words[d.id].value,
        "chance": _drawn(d.reached) if shown else None,
        "model": {"low": round(d.model_low, 3), "high": round(d.model_high, 3)} if shown else None,
        "whichever_goes": _drawn(d.any_gone) if shown else None,
    }


def _case(c: Case, shown: bool) -> dict[str, object]:
    return {
        "kind": c.kind.value,
        "id": c.id,
        "words": c.words,
        "gone": list(c.gone),
        "falls": list(c.falls),
        "rises": list(c.rises),
        "holds": list(c.holds),
        "gained": round(c.gained, 2) + 0.0 if shown else None,
        "chances": {key: _drawn(drawn) for key, drawn in c.chance.items()} if shown else None,
    }


def _drawn(drawn: Drawn) -> dict[str, float]:
    return {"low": round(drawn.low, 4), "share": round(drawn.share, 4), "high": round(drawn.high, 4)}
