"""A level is asked for where the output and the load can hold one."""

from collections.abc import Iterator

from secondfix.catalogue import Output
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails
from secondfix.house import dimmable_look, load_words, model_look, settled
from secondfix.scenes.asked import Asked
from secondfix.scenes.crossing import Crossing
from secondfix.terms import Kind

RULE = Rule(
    "scenes.level",
    "Can every load that a scene sets to a level be dimmed?",
    "common practice, no source",
)
RULES = (RULE,)
_ON_OR_OFF = {Output.RELAY: "is a relay", Output.SHUTTER: "runs a motor"}
_FULL_PCT = 100  # on a relay the same as on


def check(asked: Asked) -> Iterator[Finding]:
    """One answer per scene, or one per load that cannot follow."""
    for resolution in asked.resolutions:
        levelled = [c for c in resolution.crossings.values() if c.asked_level_pct is not None]
        found = [finding for c in levelled for finding in _one(asked, c)]
        yield from asked.or_passes(found, RULE, resolution)


def _one(asked: Asked, crossing: Crossing) -> Iterator[Finding]:
    assert crossing.device_id is not None  # a level stands only where the load is switched by a device
    model = asked.schedule.model_of(crossing.device_id)
    load = asked.schedule.house.loads[crossing.load_id]
    dimmable = settled(load.dimmable)
    if model and model.output is Output.FAN_CONTROL and settled(load.kind) is Kind.MOTOR:
        return  # the level is the fan's speed; whether it can be dimmed is asked of lamps
    if model and model.output in _ON_OR_OFF:
        if crossing.asked_level_pct != _FULL_PCT:
            yield _relay(asked, crossing, _ON_OR_OFF[model.output])
    elif model and dimmable is False:
        yield _not_dimmable(asked, crossing)
    elif not model or dimmable is None:
        yield _open(asked, crossing, model_known=model is not None, dimmable_known=dimmable is not None)


def _relay(asked: Asked, crossing: Crossing, because: str) -> Finding:
    return fails(
        RULE,
        Severity.ADVICE,
        crossing.scene_id,
        f"{asked.load_words(crossing.load_id)} is switched on, not dimmed: its output {because}.",
        value=f"on {crossing.asked_level_pct} %",
        limit="on or off",
        remedy="Ask for 'on', or fit a dimmer.",
        also=(crossing.load_id, crossing.device_id or ""),
    )


def _not_dimmable(asked: Asked, crossing: Crossing) -> Finding:
    return fails(
        RULE,
        Severity.FAULT,
        crossing.scene_id,
        f"{asked.load_words(crossing.load_id)} cannot be dimmed.",
        value=f"on {crossing.asked_level_pct} %",
        limit="a load that can be dimmed",
        remedy="Ask for 'on', or change the lamps.",
        also=(crossing.load_id, crossing.device_id or ""),
    )


def _open(asked: Asked, crossing: Crossing, *, model_known: bool, dimmable_known: bool) -> Finding:
    device = crossing.device_id or ""
    looks = [] if model_known else [model_look(device)]
    if not dimmable_known:
        looks.append(dimmable_look(crossing.load_id, load_words(asked.schedule.house, crossing.load_id)))
    return cannot_tell(
        RULE,
        Severity.FAULT,
        crossing.scene_id,
        f"It is not known whether {asked.load_words(crossing.load_id)} can be dimmed.",
        looks=looks,
        value=f"on {crossing.asked_level_pct} %",
        also=(crossing.load_id, device),
    )
