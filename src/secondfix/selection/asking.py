"""One model at one spot: put there in a copy, the electrical rules asked, their answers there read."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix import electrical
from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import Device, Schedule
from secondfix.selection.ground import SCENES_ONLY, settings_of
from secondfix.selection.suits import RULES as OWN
from secondfix.selection.suits import Asked, suits
from secondfix.terms import PowerLossState

_ORDER = {rule.id: number for number, rule in enumerate((*OWN, *electrical.RULES))}
_ABOUT_RETURNING = {"power_loss", "power_loss_wanted"}


@dataclass(frozen=True, slots=True)
class Answer:
    """What is found against one model at one spot, first rule first; dangers and faults refuse it.

    ``leans_on`` are the assumptions of what decides: of the first refusal, else of every answer there.
    """

    set_to: PowerLossState | None
    refusing: tuple[Finding, ...]
    unknown: tuple[Finding, ...]
    advice: tuple[Finding, ...]
    leans_on: tuple[str, ...]


def asked_of(asked: Asked) -> Answer:
    """The answer with the best of the settings that the model takes.

    What the place itself wants is asked first; a model that it refuses is not put into the house.
    """
    doubts: list[Finding] = []
    for found in suits(asked):
        if found.outcome is Outcome.FAILS:
            return Answer(None, (found,), (), (), found.assumptions)
        doubts.append(found)
    own = tuple(doubts)
    return min(_by_setting(asked, own), key=lambda a: (len(a.refusing), len(a.unknown)))


def _by_setting(asked: Asked, own: tuple[Finding, ...]) -> Iterator[Answer]:
    """Without a setting; with each one only where the state after a power loss is in question."""
    for set_to in settings_of(asked.model):
        found = _sorted_out(set_to, (*own, *_electrical(asked, set_to)))
        yield found
        if set_to is None and not _ABOUT_RETURNING & {f.rule for f in (*found.refusing, *found.unknown)}:
            return


def _sorted_out(set_to: PowerLossState | None, found: tuple[Finding, ...]) -> Answer:
    ordered = sorted(found, key=lambda f: (_ORDER[f.rule], f.place))
    grave = {Severity.DANGER, Severity.FAULT}
    failing = [f for f in ordered if f.outcome is Outcome.FAILS]
    refusing = tuple(f for f in failing if f.severity in grave)
    return Answer(
        set_to,
        refusing,
        tuple(f for f in ordered if f.outcome is Outcome.CANNOT_TELL),
        tuple(f for f in failing if f.severity not in grave),
        tuple(dict.fromkeys(name for f in refusing[:1] or ordered for name in f.assumptions)),
    )


def _electrical(asked: Asked, set_to: PowerLossState | None) -> Iterator[Finding]:
    spot, device_id = asked.spot, asked.device_id
    rows = _beside(asked, candidate(asked, set_to))
    own_places = {spot.place, device_id, *(g.id for g in spot.gangs)}
    for finding in electrical.check(rows, asked.ground.assumptions):
        if finding.place in own_places or finding.place.startswith(f"{device_id}."):
            yield finding


def _beside(asked: Asked, device: Device) -> Schedule:
    """The candidate with the boxes and devices that a rule at its place may look at.

    Beside a box: those that hang with it. Beside either: what drives a motor of the spot the other way. Gangs
    that fed the loads of a light point start scenes only.
    """
    ground, spot = asked.ground, asked.spot
    loads = [g.load_id or "" for g in spot.outputs]
    others = {ground.house.loads[k].other_direction or "" for k in loads} - {"", *loads}
    boxes = set(ground.around(spot.place)) if spot.in_box else set[str]()
    for gang_id in (ground.gang_of[k] for k in others & ground.gang_of.keys()):
        boxes.update(ground.around(gang_id.partition(".")[0]))
    if boxes and not spot.in_box:
        idle = ground.with_extensions(ground.gang_of[k] for k in loads if k in ground.gang_of)
        ground = ground.with_gangs(dict.fromkeys(idle, SCENES_ONLY))
    outside = {d: ground.house.devices[d] for k in others if (d := ground.outside_of.get(k))}
    return ground.part(sorted(boxes), {**ground.devices_of(boxes), **outside, asked.device_id: device})


def candidate(asked: Asked, set_to: PowerLossState | None) -> Device:
    """The device that the model would be at the spot."""
    spot, model = asked.spot, asked.model
    if not spot.in_box:
        outputs = {str(n): g.load_id for n, g in enumerate(spot.outputs, 1) if g.load_id}
        return Device(model=model.key, place=spot.place, outputs=outputs, after_power_loss=set_to)
    gangs = tuple(g.id.partition(".")[2] for g in spot.gangs)
    mounts = spot.mounts if model.mounts else ()
    return Device(model=model.key, box=spot.place, mounts=mounts, gangs=gangs, after_power_loss=set_to)
