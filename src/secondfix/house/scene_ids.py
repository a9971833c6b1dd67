"""Scenes name gangs, devices, rooms, storeys and loads that exist, and entries that models have."""

from collections.abc import Iterator

from secondfix.house.document import House
from secondfix.house.misfit import Misfit, dangling
from secondfix.house.scenes import Selector


def scene_faults(house: House) -> Iterator[Misfit]:
    """Every dangling id of a scene."""
    gangs = {f"{b}.{n}" for b, box in house.boxes.items() for n in box.gangs}
    for key, scene in house.scenes.items():
        path = f"scenes.{key}"
        for i, start in enumerate(scene.starts):
            yield from dangling(f"{path}.starts[{i}].gang", start.gang, gangs, "gang")
            yield from dangling(f"{path}.starts[{i}].device", start.device, house.devices, "device")
        for i, rule in enumerate(scene.rules):
            yield from _selector(house, f"{path}.rules[{i}].select", rule.select)
            for j, selector in enumerate(rule.leave_out):
                yield from _selector(house, f"{path}.rules[{i}].leave_out[{j}]", selector)
        for i, command in enumerate(scene.commands):
            yield from dangling(f"{path}.commands[{i}].device", command.device, house.devices, "device")
            yield from _entry(house, f"{path}.commands[{i}].entry", command.device, command.entry)
    for key, use in house.outside_uses.items():
        if use.entry is not None:
            yield from _entry(house, f"outside_uses.{key}.entry", use.device, use.entry)


def _selector(house: House, path: str, s: Selector) -> Iterator[Misfit]:
    yield from dangling(f"{path}.room", s.room, house.rooms, "room")
    yield from dangling(f"{path}.storey", s.storey, house.storeys, "storey")
    yield from dangling(f"{path}.load", s.load, house.loads, "load")


def _entry(house: House, path: str, device_id: str, entry: int) -> Iterator[Misfit]:
    device = house.devices.get(device_id)
    model = house.models.get(device.model) if device and device.model else None
    if model is None:
        return
    if model.protocol is None:
        yield Misfit(path, str(entry), f"no entry: {model.key} has no radio")
        return
    least = 0 if model.whole_entry else 1
    if not least <= entry <= max(model.gangs, 1):
        yield Misfit(path, str(entry), f"an entry of {model.key}: {least} to {max(model.gangs, 1)}")
