"""Choose: the edit that puts a model at a place, as `select` found it to fit there."""

from collections.abc import Iterator

from secondfix.catalogue import Model
from secondfix.house import Change, Duty, House
from secondfix.selection import Spot
from secondfix.terms import PowerLossState


def choose(
    house: House, spot: Spot, model: Model, *, set_to: PowerLossState | None, device_id: str
) -> tuple[Change, ...]:
    """The changes that make ``device_id``, new or standing, a ``model`` at ``spot``.

    It takes the mounts and gangs of the spot, or its loads as outputs; ``set_to`` is the state after a power
    loss that it must be set to, None where any will do. It stays on its network where that speaks the model's
    protocol, else it goes to the only network that does; where there are several, which one is left open.
    Gangs that fed the loads of a light point start scenes only from then on, and so do those that extend
    them. Whether the document allows it is for whoever makes the edit to hear.
    """
    at = f"devices.{device_id}"
    own = {
        "model": model.key,
        "network": _network(house, model, spot.device_id),
        "after_power_loss": set_to.value if set_to else None,
    }
    return (
        *(Change(f"{at}.{name}", value) for name, value in own.items()),
        *_standing(spot, model, at),
        *(change for gang in _idle(house, spot.instead_of) for change in _scenes_only(gang)),
    )


def _standing(spot: Spot, model: Model, at: str) -> Iterator[Change]:
    if spot.in_box:
        yield Change(f"{at}.box", spot.place)
        yield Change(f"{at}.mounts", list(spot.mounts) if model.mounts and spot.mounts else None)
        yield Change(f"{at}.gangs", [g.id.partition(".")[2] for g in spot.gangs])
        return
    yield Change(f"{at}.place", spot.place)
    outputs = {str(n): g.load_id for n, g in enumerate(spot.outputs, 1)}
    yield Change(f"{at}.outputs", outputs or None)


def _network(house: House, model: Model, device_id: str | None) -> str | None:
    if model.protocol is None:
        return None
    speaking = [n for n, network in house.networks.items() if network.protocol is model.protocol]
    now = house.devices[device_id].network if device_id else None
    if now in speaking:
        return now
    return speaking[0] if len(speaking) == 1 else None


def _idle(house: House, gangs: tuple[str, ...]) -> list[str]:
    """These gangs, then all that extend them, at first or at second hand."""
    found = dict.fromkeys(gangs)
    extends = {f"{b}.{n}": g.extends for b, box in house.boxes.items() for n, g in box.gangs.items()}
    before = -1
    while before < len(found):
        before = len(found)
        found |= {gang: None for gang, other in extends.items() if other in found}
    return list(found)


def _scenes_only(gang_id: str) -> Iterator[Change]:
    box_id, _, number = gang_id.partition(".")
    at = f"boxes.{box_id}.gangs.{number}"
    yield Change(f"{at}.duty", Duty.SCENE_ONLY.value)
    yield Change(f"{at}.load", None)
    yield Change(f"{at}.extends", None)
