"""Where a device is to stand: every switch-to-be of a wall box, and every light point with its loads."""

from collections.abc import Iterator
from dataclasses import replace

from secondfix.house import Device, Duty, settled
from secondfix.selection.choice import Spot, WantedGang
from secondfix.selection.ground import Ground
from secondfix.terms import Protocol


def spots(ground: Ground, places: frozenset[str] | None, protocol: Protocol | None) -> Iterator[Spot]:
    """All spots at ``places`` (None: everywhere), in the document's order; boxes first.

    A device stands or is intended: its mounts and gangs. Where mounts are free and their gangs worked by
    none: all of them as one switch, and each mount that has gangs as a switch of its own.
    """
    for box_id in ground.house.boxes:
        if places is None or box_id in places:
            yield from _of_box(ground, box_id, protocol)
    for place_id in ground.house.places:
        if places is None or place_id in places:
            yield from _of_place(ground, place_id, protocol)


def _of_box(ground: Ground, box_id: str, protocol: Protocol | None) -> Iterator[Spot]:
    box, devices = ground.house.boxes[box_id], ground.house.devices
    here = {d: devices[d] for d in ground.first.devices_in.get(box_id, ())}
    for device_id, device in here.items():
        yield _spot(ground, box_id, device.mounts, device.gangs, (device_id, device, protocol))
    worked = {g for d in here.values() for g in d.gangs}
    idle = [n for n, gang in box.gangs.items() if n not in worked and gang.duty is not Duty.CAPPED]
    free = tuple(m for m in box.mounts if not any(m in d.mounts for d in here.values()))
    behind = tuple(g for g in idle if box.gangs[g].mount not in free)
    if behind:
        yield _spot(ground, box_id, (), behind, (None, None, protocol))
    gangs = tuple(g for g in idle if g not in behind)
    if gangs:
        yield _spot(ground, box_id, free, gangs, (None, None, protocol))
    for mount in free if len(free) > 1 else ():
        own = tuple(g for g in gangs if box.gangs[g].mount == mount)
        if own:
            yield _spot(ground, box_id, (mount,), own, (None, None, protocol))


_Stands = tuple[str | None, Device | None, Protocol | None]


def _spot(
    ground: Ground, box_id: str, mounts: tuple[str, ...], gangs: tuple[str, ...], stands: _Stands
) -> Spot:
    device_id, device, protocol = stands
    wanted = []
    for number in gangs:
        gang = ground.house.boxes[box_id].gangs[number]
        load = gang.load if gang.duty is Duty.FEEDS else None
        wanted.append(
            WantedGang(f"{box_id}.{number}", gang.duty, load, gang.extends, load in ground.first.dimmed)
        )
    return Spot(box_id, mounts, tuple(wanted), device_id, _protocols(ground, device, protocol), in_box=True)


def _of_place(ground: Ground, place_id: str, protocol: Protocol | None) -> Iterator[Spot]:
    """A device that feeds something from there; else the loads of a light point, whoever feeds them now."""
    house = ground.house
    stands = {d: house.devices[d] for d in ground.feeding_at.get(place_id, ())}
    for device_id, device in stands.items():
        fed = tuple(device.outputs[n] for n in sorted(device.outputs, key=int))
        yield at_place(ground, place_id, fed, _protocols(ground, device, protocol), device_id)
    loads = tuple(k for k in ground.loads_at.get(place_id, ()) if not _straight(ground, k))
    if not stands and loads and house.places[place_id].kind == "light_point":
        gangs = tuple(dict.fromkeys(ground.gang_of[k] for k in loads if k in ground.gang_of))
        whole = all(k in ground.gang_of for k in loads)
        spot = at_place(ground, place_id, loads, _protocols(ground, None, protocol))
        yield replace(spot, instead_of=gangs if whole else ())


def _straight(ground: Ground, load_id: str) -> bool:
    """Whether it keeps its supply and nothing switches it: no device is wanted for it."""
    fed = load_id in ground.gang_of or load_id in ground.outside_of
    return not fed and settled(ground.house.loads[load_id].permanent_supply) is True


def at_place(
    ground: Ground,
    place_id: str,
    loads: tuple[str, ...],
    protocols: tuple[Protocol, ...],
    device_id: str | None = None,
) -> Spot:
    """The spot of a device outside the boxes that feeds these loads, one output each."""
    wanted = tuple(WantedGang(k, Duty.FEEDS, k, None, k in ground.first.dimmed) for k in loads)
    return Spot(place_id, (), wanted, device_id, protocols, in_box=False)


def _protocols(ground: Ground, device: Device | None, asked: Protocol | None) -> tuple[Protocol, ...]:
    """What was asked for; else that of the device's network; else those of the house's networks."""
    networks = ground.house.networks
    if asked is not None:
        return (asked,)
    if device is not None and device.network is not None:
        return (networks[device.network].protocol,)
    return tuple(dict.fromkeys(n.protocol for n in networks.values()))
