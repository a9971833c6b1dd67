"""What a shape cannot say: ids that exist, one meaning each, loads fed once, geometry that closes."""

from collections.abc import Iterator

from secondfix.assumptions import Override, default_assumptions
from secondfix.house.devices_stand import device_faults
from secondfix.house.document import House
from secondfix.house.faults import Fault
from secondfix.house.feeding import feeding_faults
from secondfix.house.geometry import geometry_faults
from secondfix.house.misfit import Misfit, dangling
from secondfix.house.scene_ids import scene_faults
from secondfix.house.wiring import Box, Load, Mount
from secondfix.terms import Kind

_COLLECTIONS = (
    "storeys", "rooms", "walls", "doors", "windows", "circuits", "boxes", "places", "loads", "networks",
    "devices", "scenes", "outside_uses",
)  # fmt: skip


def reference_faults(house: House, *, where: str) -> list[Fault]:
    """Every dangling or contradictory statement of a house of the right shape."""
    checks = (_twice, _building, _wiring, feeding_faults, device_faults, scene_faults, geometry_faults, _rest)
    return [Fault(where, m.path, m.stands, m.expected) for check in checks for m in check(house)]


def _twice(house: House) -> Iterator[Misfit]:
    """Ids are one namespace: a finding at 'K1' must mean one thing."""
    first: dict[str, str] = {}
    for collection in _COLLECTIONS:
        for key in getattr(house, collection):
            if key in first:
                yield Misfit(
                    f"{collection}.{key}", f"'{key}'", f"an id not used before ({first[key]} has it)"
                )
            first.setdefault(key, collection)


def _building(house: House) -> Iterator[Misfit]:
    for key, room in house.rooms.items():
        yield from dangling(f"rooms.{key}.storey", room.storey, house.storeys, "storey")
    for key, wall in house.walls.items():
        yield from dangling(f"walls.{key}.storey", wall.storey, house.storeys, "storey")
    for name, openings in (("doors", house.doors), ("windows", house.windows)):
        for key, opening in openings.items():
            yield from dangling(f"{name}.{key}.wall", opening.wall, house.walls, "wall")


def _wiring(house: House) -> Iterator[Misfit]:
    for key, circuit in house.circuits.items():
        for i, room in enumerate(circuit.label_rooms or ()):
            yield from dangling(f"circuits.{key}.label_rooms[{i}]", room, house.rooms, "room")
        shared = circuit.shares_neutral_with.value if circuit.shares_neutral_with else ()
        for i, other in enumerate(shared):
            at = f"circuits.{key}.shares_neutral_with.value[{i}]"
            yield from dangling(at, other, house.circuits, "circuit")
            if other == key:
                yield Misfit(at, f"'{other}'", "another circuit")
    for key, box in house.boxes.items():
        at = f"boxes.{key}"
        yield from dangling(f"{at}.room", box.room, house.rooms, "room")
        for n, mount in box.mounts.items():
            yield from _size_counted(f"{at}.mounts.{n}.largest_awg", box, mount)
            neutral = mount.neutral.value if mount.neutral else None
            if neutral not in {None, "absent", "earth", *house.circuits}:
                yield Misfit(
                    f"{at}.mounts.{n}.neutral.value", f"'{neutral}'",
                    "the id of a circuit of this house, 'absent' or 'earth'",
                )  # fmt: skip
        for n, gang in box.gangs.items():
            here = f"{at}.gangs.{n}"
            if gang.mount not in box.mounts:
                yield Misfit(
                    f"{here}.mount", f"'{gang.mount}'", f"one of the box's mounts: {', '.join(box.mounts)}"
                )
            yield from dangling(
                f"{here}.line.value", gang.line.value if gang.line else None, house.circuits, "circuit"
            )
    for key, load in house.loads.items():
        yield from dangling(f"loads.{key}.room", load.room, house.rooms, "room")
        yield from dangling(f"loads.{key}.place", load.place, house.places, "place")
        neutral = load.neutral.value if load.neutral else None
        yield from dangling(f"loads.{key}.neutral.value", neutral, house.circuits, "circuit")
        yield from _load_agrees(house, key, load)
    for key, place in house.places.items():
        yield from dangling(f"places.{key}.room", place.room, house.rooms, "room")
        circuit_id = place.circuit.value if place.circuit else None
        yield from dangling(f"places.{key}.circuit.value", circuit_id, house.circuits, "circuit")


def _size_counted(path: str, box: Box, mount: Mount) -> Iterator[Misfit]:
    """A size that ends at a device is among the sizes counted in its box."""
    if box.conductors is None or mount.largest_awg is None:
        return
    sizes = {**box.conductors.value, **(box.loops.value if box.loops else {})}
    if mount.largest_awg.value not in sizes:
        words = f"a size counted in the box ({', '.join(sizes) or 'none is'}); 0 for one that only tails have"
        yield Misfit(path, f"'{mount.largest_awg.value}'", words)


_TRANSFORMERS = {Kind.IRON_TRANSFORMER, Kind.ELECTRONIC_TRANSFORMER}


def _load_agrees(house: House, key: str, load: Load) -> Iterator[Misfit]:
    """Mixed loads name the transformer as their kind; two directions of a motor name each other."""
    kind = load.kind.value if load.kind else None
    if load.also_kinds is not None and kind not in _TRANSFORMERS:
        words = "nothing, unless 'kind' names the transformer that hangs beside them"
        yield Misfit(f"loads.{key}.also_kinds", f"{len(load.also_kinds.value)} given", words)
    other, at = load.other_direction, f"loads.{key}.other_direction"
    if other is None:
        return
    yield from dangling(at, other, house.loads, "load")
    if other in house.loads and (other == key or house.loads[other].other_direction != key):
        yield Misfit(at, f"'{other}'", "another load, which names this one as its other direction")
    if load.reversing is not None and not load.reversing.value:
        yield Misfit(f"loads.{key}.reversing", "false", "true, where 'other_direction' is given")


def _rest(house: House) -> Iterator[Misfit]:
    known = default_assumptions()
    for name, choice in house.assumptions.items():
        if name not in known:
            yield Misfit(
                f"assumptions.{name}",
                "a name nobody reads",
                "the name of an assumption: secondfix assumptions lists them",
            )
            continue
        try:
            known.overridden({name: Override(choice.value, choice.low, choice.high)}, set_by="house")
        except ValueError as error:
            yield Misfit(
                f"assumptions.{name}", str(error), "low <= value <= high, within what anybody may set"
            )
    for key, model in house.models.items():
        if model.key != key:
            yield Misfit(f"models.{key}", f"a copy of {model.key}", f"a copy of {key}")
