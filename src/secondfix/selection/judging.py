"""Every model at one spot: it fits, it is refused, or it cannot be told."""

from secondfix.selection.asking import asked_of
from secondfix.selection.choice import Doubt, Fit, Refusal, Spot
from secondfix.selection.ground import Ground
from secondfix.selection.margin import used_permille
from secondfix.selection.suits import Asked

_UNKNOWN_MARGIN = 1_000_000

Judged = tuple[tuple[Fit, ...], tuple[Doubt, ...], tuple[Refusal, ...], tuple[str, ...]]


def judged(ground: Ground, spot: Spot) -> Judged:
    """Every model at one spot in one of three lists, and the assumptions that these verdicts lean on."""
    fits: list[Fit] = []
    doubts: list[Doubt] = []
    refused: list[Refusal] = []
    leans_on: set[str] = set()
    for key, model in ground.models.items():
        asked = Asked(ground, spot, model)
        answer = asked_of(asked)
        leans_on.update(answer.leans_on)
        if answer.refusing:
            refused.append(Refusal(key, answer.refusing[0]))
        elif answer.unknown:
            doubts.append(Doubt(key, answer.set_to, used_permille(asked), answer.unknown))
        else:
            spare = model.gangs - len(spot.gangs)
            fits.append(Fit(key, answer.set_to, used_permille(asked), spare, answer.advice))
    fits.sort(key=lambda f: (len(f.advice), _used(f), f.spare_gangs, f.model))
    doubts.sort(key=lambda d: (len(d.looks), _used(d), d.model))
    order = sorted(refused, key=lambda r: r.model)
    return tuple(fits), tuple(doubts), tuple(order), tuple(sorted(leans_on))


def _used(one: Fit | Doubt) -> int:
    return _UNKNOWN_MARGIN if one.used_permille is None else one.used_permille
