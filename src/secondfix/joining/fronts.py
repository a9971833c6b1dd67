"""Fronts: whether a gesture wants the front off while power is on, and what feeds the device.

Where live parts can then be touched (not stated counts as yes) such a gesture has no place in a wall
box: the device is joined before it is fitted, on a bench.
"""

from dataclasses import dataclass
from enum import Enum

from secondfix.catalogue import Act, Form, Model, Procedure, Removal, Stated, Supply


class Fed(Enum):
    """What a person does to give the device power, or to take it away."""

    CIRCUIT = "circuit"
    SOCKET = "socket"
    BATTERY = "battery"


@dataclass(frozen=True, slots=True)
class Body:
    """What feeds a device, and whether live parts can, or may, be touched with its front off."""

    fed: Fed
    live: bool


def body_of(model: Model) -> Body:
    """A battery has no live parts of the mains; elsewhere only a sheet that denies them does."""
    if model.supply is Supply.BATTERY:
        return Body(Fed.BATTERY, live=False)
    fed = Fed.SOCKET if model.form is Form.PLUG_IN else Fed.CIRCUIT
    return Body(fed, live=model.live_parts_front_off is not Stated.NO)


def wants_bench(body: Body, procedure: Procedure) -> bool:
    """Whether live parts can be touched while the gesture is made: its front off, its power on.

    Power counts as on until a step takes it away, for the device was fitted and energised before.
    """
    off, power = False, True
    for step in procedure.steps:
        if step.act in {Act.RELEASE_FRONT, Act.REFIT_FRONT}:
            off = step.act is Act.RELEASE_FRONT
        elif step.act is Act.POWER_OFF:
            power = False
        else:
            power = power or step.act is Act.POWER_ON
            if off and power and body.live:
                return True
    return False


def joined_on_bench(model: Model | None) -> bool:
    """Whether it is joined before fitting: joining wants the bench, or each way of removing it first does.

    A model that is not known says nothing of its gesture, so no.
    """
    if model is None or model.join is None:
        return False
    body = body_of(model)
    if wants_bench(body, model.join):
        return True
    ways = [way for way in (model.remove, model.reset) if way]
    always = model.removal_before_join is Removal.ALWAYS and bool(ways)
    return always and all(wants_bench(body, way) for way in ways)
