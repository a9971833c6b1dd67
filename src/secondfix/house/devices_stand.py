"""Devices stand somewhere, alone there, with the mounts and gangs that their model has."""

from collections import Counter
from collections.abc import Iterable, Iterator

from secondfix.catalogue import Form, Model
from secondfix.house.devices import Device, Network
from secondfix.house.document import House
from secondfix.house.misfit import Misfit, dangling
from secondfix.house.wiring import Box, Duty
from secondfix.terms import Protocol

_ONLY_BOX = {Form.SWITCH, Form.IN_BOX_MODULE, Form.EXTENSION_UNIT}
_ONLY_PLACE = {
    Form.LUMINAIRE_MODULE,
    Form.CEILING_MODULE,
    Form.BOARD_MODULE,
    Form.PLUG_IN,
    Form.SENSOR,
}


def device_faults(house: House) -> Iterator[Misfit]:
    """Every misfit of networks, devices and outside uses."""
    for key, network in house.networks.items():
        at = f"networks.{key}.controller_place"
        yield from dangling(at, network.controller_place, house.places, "place")
        yield from _channel(f"networks.{key}.channel", network)
    taken: dict[tuple[str, str, str], str] = {}
    addresses: dict[str, str] = {}
    for key, device in house.devices.items():
        path = f"devices.{key}"
        yield from dangling(f"{path}.network", device.network, house.networks, "network")
        yield from _stands(house, path, device)
        yield from _alone(path, device, taken)
        if device.address is not None and addresses.setdefault(device.address, key) != key:
            yield Misfit(
                f"{path}.address",
                f"'{device.address}'",
                f"an address of its own ({addresses[device.address]} has it)",
            )
        if device.model is not None:
            model = house.models.get(device.model)
            if model is None:
                yield Misfit(
                    f"{path}.model", f"'{device.model}'", "a model of the catalogue or a copy under 'models'"
                )
            else:
                yield from _agrees(house, path, device, model)
    for key, use in house.outside_uses.items():
        yield from dangling(f"outside_uses.{key}.device", use.device, house.devices, "device")


def _channel(path: str, network: Network) -> Iterator[Misfit]:
    """IEEE 802.15.4 channels 11 to 26 at 2.4 GHz; a Z-Wave network's frequencies are its region's."""
    if network.channel is None:
        return
    if network.protocol is Protocol.ZWAVE:
        yield Misfit(path, str(network.channel), "nothing: the region gives a Z-Wave network its frequencies")
    elif not 11 <= network.channel <= 26:
        yield Misfit(path, str(network.channel), "11 to 26, the channels at 2.4 GHz")


def _stands(house: House, path: str, device: Device) -> Iterator[Misfit]:
    if (device.box is None) == (device.place is None):
        yield Misfit(
            path,
            "both box and place" if device.box else "neither box nor place",
            "where it stands: box or place",
        )
        return
    yield from dangling(f"{path}.place", device.place, house.places, "place")
    yield from dangling(f"{path}.box", device.box, house.boxes, "box")
    if device.place is not None:
        for name in ("mounts", "gangs"):
            if getattr(device, name):
                yield Misfit(
                    f"{path}.{name}",
                    f"{len(getattr(device, name))} given",
                    "none: a place has neither mounts nor gangs",
                )
    elif device.box in house.boxes:
        box = house.boxes[device.box]
        for name, have in (("mounts", box.mounts), ("gangs", box.gangs)):
            for i, n in enumerate(getattr(device, name)):
                if n not in have:
                    yield Misfit(
                        f"{path}.{name}[{i}]",
                        f"'{n}'",
                        f"one of the {name} of box {device.box}: {_listed(have)}",
                    )
        if device.outputs:
            yield Misfit(
                f"{path}.outputs", f"{len(device.outputs)} given", "none: in a box the gangs name their loads"
            )


def _alone(path: str, device: Device, taken: dict[tuple[str, str, str], str]) -> Iterator[Misfit]:
    if device.box is None:
        return
    for name in ("mounts", "gangs"):
        numbers = getattr(device, name)
        for n, times in Counter(numbers).items():
            if times > 1:
                yield Misfit(f"{path}.{name}", f"'{n}' given {times} times", "each once")
            other = taken.setdefault((device.box, name, n), path)
            if other != path:
                yield Misfit(
                    f"{path}.{name}", f"'{n}'", f"a {name[:-1]} that no other device takes ({other} takes it)"
                )


def _agrees(house: House, path: str, device: Device, model: Model) -> Iterator[Misfit]:
    network = house.networks.get(device.network or "")
    if network is not None and network.protocol is not model.protocol:
        speaks = f"one of {model.protocol.value}, which {model.key} speaks" if model.protocol else _NO_RADIO
        yield Misfit(f"{path}.network", f"a {network.protocol.value} network", speaks)
    if model.form is Form.EXTENSION_UNIT and device.box in house.boxes:
        yield from _extends(house.boxes[device.box], path, device)
    if device.box is not None:
        if model.form in _ONLY_PLACE:
            yield Misfit(
                f"{path}.box",
                f"'{device.box}'",
                f"a place: a {model.form.value} does not stand in a wall box",
            )
        if len(device.mounts) != model.mounts:
            yield Misfit(
                f"{path}.mounts", f"{len(device.mounts)} given", f"{model.mounts}, which {model.key} takes"
            )
        if len(device.gangs) > model.gangs:
            yield Misfit(
                f"{path}.gangs", f"{len(device.gangs)} given", f"at most {model.gangs}, which {model.key} has"
            )
    elif model.form in _ONLY_BOX:
        yield Misfit(f"{path}.place", f"'{device.place}'", f"a box: a {model.form.value} stands in one")
    for n in device.outputs:
        if int(n) > model.gangs:
            yield Misfit(f"{path}.outputs.{n}", "an output", f"at most {model.gangs}, which {model.key} has")
    settable = model.power_loss.settable if model.power_loss else ()
    if device.after_power_loss is not None and device.after_power_loss not in settable:
        words = ", ".join(s.value for s in settable) or "nothing: its sheet states none"
        yield Misfit(
            f"{path}.after_power_loss",
            f"'{device.after_power_loss.value}'",
            f"what {model.key} can be set to: {words}",
        )


_NO_RADIO = "none: an extension unit has no radio"


def _extends(box: Box, path: str, device: Device) -> Iterator[Misfit]:
    for i, gang in enumerate(device.gangs):
        if gang in box.gangs and box.gangs[gang].duty not in {Duty.EXTENDS, Duty.NOT_KNOWN}:
            yield Misfit(
                f"{path}.gangs[{i}]",
                f"'{gang}', whose duty is '{box.gangs[gang].duty.value}'",
                "a gang that extends another: an extension unit has no output",
            )


def _listed(ids: Iterable[str]) -> str:
    return ", ".join(ids) or "it has none"
