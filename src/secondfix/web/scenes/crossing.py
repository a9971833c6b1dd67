"""Why a scene does to a load what it does: the sentence, who speaks for it, and the policy of the purpose."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix.house import House, load_words
from secondfix.scenes import Cell, Crossing, CrossingKind, cell_of
from secondfix.terms import PURPOSES, AllOff, Purpose, UnattendedOn
from secondfix.web.frame.asked import Asked
from secondfix.web.scenes.chart import resolved_of

_OFF = {
    AllOff.OFF: "a scene may switch it off",
    AllOff.LEAVE: "off only where a rule names the load itself",
    AllOff.NEVER: "no scene switches it off",
}
_ON = {
    UnattendedOn.YES: "a scene may switch it on",
    UnattendedOn.NAMED_ONLY: "on only where a rule names the load itself",
    UnattendedOn.OWN_THERMOSTAT: "on only with a thermostat of its own and a limit to its time on",
    UnattendedOn.NEVER: "no scene switches it on",
}


@dataclass(frozen=True)
class Chosen:
    """One crossing to read about; ``facts`` are heads with what stands behind them."""

    at: str
    scene_id: str
    scene_name: str
    load_id: str
    load: str
    cell: Cell
    crossing: Crossing
    facts: tuple[tuple[str, tuple[str, ...]], ...]


def chosen(about: Asked, at: str) -> Chosen | None:
    """The crossing of ``S1.L07``; None where no such scene or load stands."""
    scene_id, _, load_id = at.partition(".")
    for resolution in resolved_of(about).resolutions:
        if resolution.scene_id == scene_id and load_id in resolution.crossings:
            crossing = resolution.crossings[load_id]
            words = load_words(about.house, load_id)
            facts = tuple((head, told) for head, told in _facts(about.house, crossing) if told)
            return Chosen(at, scene_id, resolution.name, load_id, words, cell_of(crossing), crossing, facts)
    return None


def _facts(house: House, crossing: Crossing) -> Iterator[tuple[str, tuple[str, ...]]]:
    yield "Said by", crossing.by
    if crossing.device_id and crossing.entry is not None:
        yield "Sent to", (f"{crossing.device_id} entry {crossing.entry}",)
    if crossing.kind is CrossingKind.SWITCHED and crossing.asked_level_pct != crossing.level_pct:
        yield (
            "Level",
            (f"{crossing.asked_level_pct} is asked for; its output holds no level, so it is only on",),
        )
    yield "Purpose", _policy(house.loads[crossing.load_id].purpose)
    yield "To look at", tuple(look.words for look in crossing.looks)


def _policy(purpose: Purpose | None) -> tuple[str, ...]:
    if purpose is None:
        return ("not known: what may be done to it cannot be told",)
    policy = PURPOSES[purpose]
    hazard = f" ({policy.hazard})" if policy.hazard else ""
    return (
        f"{policy.label}{hazard}: {_OFF[policy.all_off]}; {_ON[policy.unattended_on]}",
        f"Source: {policy.source}",
    )
