"""Select told slowly and obviously: each model put into the whole house, and the whole house checked.

A reference for the bench. It shares with select what a place asks of a model, and nothing of how it is asked.
"""

from __future__ import annotations

from collections.abc import Mapping

from secondfix import electrical
from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model
from secondfix.findings import Outcome, Severity
from secondfix.house import Device, Duty, House, schedule
from secondfix.selection import PlaceChoice, Spot
from secondfix.terms import PowerLossState

Verdict = dict[str, str]
_RETURNING = {"power_loss", "power_loss_wanted"}


def plain_verdicts(
    house: House, models: Mapping[str, Model], assumptions: Assumptions, choice: PlaceChoice
) -> Verdict:
    """Model to verdict at one place; what the place itself refuses or doubts is taken from the choice."""
    own = {r.model for r in choice.refused if r.because.rule.startswith("select.")}
    doubted = {d.model for d in choice.doubts if any(f.rule.startswith("select.") for f in d.unknown)}
    out = dict.fromkeys(own, "refused")
    for key, model in models.items():
        if key not in own:
            found = _best(house, model, assumptions, choice.spot)
            out[key] = "cannot tell" if found == "fits" and key in doubted else found
    return out


def _best(house: House, model: Model, assumptions: Assumptions, spot: Spot) -> str:
    """Without a setting; where the state after a power loss is in question the best of all settings."""
    settings = (None, *(model.power_loss.settable if model.power_loss else ()))
    order = ["fits", "cannot tell", "refused"]
    best, rules = _once(house, model, assumptions, spot, None)
    if rules & _RETURNING:
        best = min((_once(house, model, assumptions, spot, s)[0] for s in settings), key=order.index)
    return best


def _once(
    house: House, model: Model, assumptions: Assumptions, spot: Spot, set_to: PowerLossState | None
) -> tuple[str, set[str]]:
    device_id = spot.device_id or "Plain"
    whole = _with(house, model, spot, device_id, set_to)
    places = {spot.place, device_id, *(g.id for g in spot.gangs)}
    there = [
        f
        for f in electrical.check(schedule(whole, {**house.models, model.key: model}), assumptions)
        if f.outcome is not Outcome.PASSES
        if f.place in places or f.place.startswith(f"{device_id}.")
    ]
    failing = [f for f in there if f.outcome is Outcome.FAILS and f.severity is not Severity.ADVICE]
    unknown = [f for f in there if f.outcome is Outcome.CANNOT_TELL]
    word = "refused" if failing else "cannot tell" if unknown else "fits"
    return word, {f.rule for f in (*failing, *unknown)}


def _with(house: House, model: Model, spot: Spot, device_id: str, set_to: PowerLossState | None) -> House:
    devices, boxes = dict(house.devices), dict(house.boxes)
    if spot.in_box:
        gangs = tuple(g.id.partition(".")[2] for g in spot.gangs)
        mounts = spot.mounts if model.mounts else ()
        at = Device(model=model.key, box=spot.place, mounts=mounts, gangs=gangs, after_power_loss=set_to)
    else:
        outputs = {str(n): g.load_id or "" for n, g in enumerate(spot.outputs, 1)}
        at = Device(model=model.key, place=spot.place, outputs=outputs, after_power_loss=set_to)
        for box_id, box in boxes.items():
            fed = {n: g for n, g in box.gangs.items() if g.load and g.load in outputs.values()}
            idle = {n: g.model_copy(update={"duty": Duty.SCENE_ONLY, "load": None}) for n, g in fed.items()}
            if idle:
                boxes[box_id] = box.model_copy(update={"gangs": {**box.gangs, **idle}})
    devices[device_id] = at
    return house.model_copy(update={"devices": devices, "boxes": boxes})
