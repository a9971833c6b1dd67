"""Models that would do in the same place: every one at hand is tried by the same question."""

from collections.abc import Callable, Iterator

from secondfix.catalogue import Form, Model, Output
from secondfix.maintenance.plan import Nearest, Outcome
from secondfix.maintenance.replacing import IN_BOX, Site, Unit
from secondfix.maintenance.trying import Ground, Tried, tried

MOST_NEAREST = 5
_ORDER = list(Outcome)


def outcome_of(one: Tried) -> Outcome:
    """Refused for any reason; else by whether anything is lost."""
    if one.reasons or one.after is None:
        return Outcome.REFUSED
    return Outcome.LOSSES if one.losses else Outcome.KEPT


def nearest_of(
    ground: Ground, asked: tuple[Unit, ...], *, whole: bool, progress: Callable[[str], None] = lambda _: None
) -> tuple[Nearest, ...]:
    """At most five that are not refused: those that keep everything first, then those that lose least.

    Among equals: same protocol, same maker, as many gangs, as many mounts as the failed device had.
    ``progress`` is told the words of each try before it is made, and may raise.
    """
    tried_already = asked[0].model if len(asked) == 1 else ""
    others = [model for model in _candidates(ground.site) if model.key != tried_already]
    found: list[tuple[Outcome, Tried, Model]] = []
    for number, model in enumerate(others, 1):
        progress(f"model {number} of {len(others)}, {model.title}")
        one = tried(ground, (Unit(model.key),), whole=whole)
        found.append((outcome_of(one), one, model))
    ranked = sorted(
        (f for f in found if f[0] is not Outcome.REFUSED),
        key=lambda f: (_ORDER.index(f[0]), len(f[1].losses), len(f[1].open), *_distance(ground.site, f[2])),
    )
    return tuple(Nearest(m.key, m.title, outcome, one.losses) for outcome, one, m in ranked[:MOST_NEAREST])


def _candidates(site: Site) -> Iterator[Model]:
    """Models that can stand where the failed device stood, with an output if it fed something, by key."""
    own = site.model.form if site.model else None
    feeds = bool(site.loads())
    for key in sorted(site.models):
        model = site.models[key]
        if feeds and model.output is Output.NONE:
            continue
        in_box = model.form in IN_BOX and model.form is not Form.EXTENSION_UNIT
        if in_box if site.device.box is not None else model.form is own or (own is None and not in_box):
            yield model


def _distance(site: Site, model: Model) -> tuple[object, ...]:
    own = site.model
    if own is None:
        return (False, False, 0, 0, model.key)
    return (
        model.protocol is not own.protocol,
        model.maker != own.maker,
        abs(model.gangs - own.gangs),
        abs(model.mounts - own.mounts),
        model.key,
    )
