"""What is wrong with a question about a swap: every fault at once, before anything is worked out."""

import re
from collections import Counter
from collections.abc import Iterator, Mapping

from secondfix.catalogue import Model
from secondfix.house import Fault, House
from secondfix.maintenance.replacing import Unit

_KEY_REF = re.compile(r"^K[0-9]{2,4}$")


def device_at(house: House, text: str) -> str | list[Fault]:
    """The device that the text names: by its id, its box (``B07``), or a gang there (``B07.2``).

    A mount without a device, a box with several, and what is not in the house are faults.
    """
    if text in house.devices:
        return text
    box, _, slot = text.partition(".")
    if box in house.boxes and (not slot or slot in house.boxes[box].gangs):
        here = [d for d, o in house.devices.items() if o.box == box and (not slot or slot in o.gangs)]
    elif text in house.places:
        here = [d for d, o in house.devices.items() if o.place == text]
    else:
        return [Fault("", "device", f"'{text}'", "a device, wall box, gang or place of this house")]
    if len(here) == 1:
        return here[0]
    if here:
        return [Fault("", "device", f"'{text}', where {', '.join(here)} stand", "one of them")]
    return [
        Fault("", "device", f"'{text}', where no device stands", "a device to replace: fit one there first")
    ]


def faults_of(house: House, failed: str, units: tuple[Unit, ...], models: Mapping[str, Model]) -> list[Fault]:
    """Every fault of the units asked for; empty where a swap can be worked out."""
    return [*_faults(house, failed, units, models)]


def _faults(
    house: House, failed: str, units: tuple[Unit, ...], models: Mapping[str, Model]
) -> Iterator[Fault]:
    if not units:
        yield Fault("", "units", "nothing", "at least one model to put in its place")
    device = house.devices[failed]
    for i, unit in enumerate(units):
        at = f"units[{i}]"
        model = models.get(unit.model)
        if model is None:
            yield Fault("", f"{at}.model", f"'{unit.model}'", "a model of the catalogue or of the house")
            continue
        yield from _stand(house, failed, unit, model, at)
        yield from _network(house, unit, model, at)
        yield from _code(house, unit, at)
    boxed = [u for u in units if u.load is None]
    if device.place is not None and len(boxed) > 1:
        yield Fault("", "units", f"{len(boxed)} devices", f"one device at {device.place}")
    for what, numbers in (
        ("gangs", Counter(g for u in units for g in u.gangs or ())),
        ("mounts", Counter(m for u in units for m in u.mounts or ())),
        ("load", Counter(u.load for u in units if u.load)),
        ("code_ref", Counter(u.code_ref for u in units if u.code_ref)),
    ):
        for one, times in numbers.items():
            if times > 1:
                yield Fault("", f"units.{what}", f"'{one}' {times} times", "each once")


def _stand(house: House, failed: str, unit: Unit, model: Model, at: str) -> Iterator[Fault]:
    device = house.devices[failed]
    if unit.load is not None:
        if unit.load not in house.loads:
            yield Fault("", f"{at}.load", f"'{unit.load}'", "a load of this house")
        elif unit.load not in fed_by(house, failed):
            yield Fault("", f"{at}.load", f"'{unit.load}'", f"a load that {failed} feeds")
        if unit.gangs or unit.mounts:
            yield Fault("", f"{at}.gangs", "gangs or mounts", "none: a module at a light point has neither")
        return
    box = house.boxes.get(device.box or "")
    for what in ("gangs", "mounts"):
        given = getattr(unit, what)
        if given is None:
            continue
        if box is None:
            yield Fault(
                "", f"{at}.{what}", f"{len(given)} given", "none: the failed device stands at a place"
            )
            continue
        others = {
            n
            for d, o in house.devices.items()
            if o.box == device.box and d != failed
            for n in getattr(o, what)
        }
        for n in given:
            if n not in getattr(box, what) or n in others:
                yield Fault(
                    "", f"{at}.{what}", f"'{n}'", f"one of the {what} of {device.box} that no other takes"
                )
    if unit.gangs is not None and len(unit.gangs) > model.gangs:
        yield Fault(
            "", f"{at}.gangs", f"{len(unit.gangs)} given", f"at most {model.gangs}, which {model.key} has"
        )


def fed_by(house: House, failed: str) -> set[str]:
    """The loads that a device feeds."""
    device = house.devices[failed]
    gangs = house.boxes[device.box].gangs if device.box else {}
    return {*device.outputs.values(), *(load for g in device.gangs if (load := gangs[g].load))}


def _network(house: House, unit: Unit, model: Model, at: str) -> Iterator[Fault]:
    if unit.network is None:
        return
    network = house.networks.get(unit.network)
    if network is None:
        yield Fault("", f"{at}.network", f"'{unit.network}'", "a network of this house")
    elif network.protocol is not model.protocol:
        speaks = model.protocol.value if model.protocol else "no radio"
        yield Fault(
            "",
            f"{at}.network",
            f"a {network.protocol.value} network",
            f"one of {speaks}, as {model.key} speaks",
        )


def _code(house: House, unit: Unit, at: str) -> Iterator[Fault]:
    """A code belongs to one body: that of the failed device, or of any other, is never the new one's."""
    if unit.code_ref is not None and not _KEY_REF.match(unit.code_ref):
        yield Fault("", f"{at}.code_ref", f"'{unit.code_ref}'", "a reference of the key ring, such as K07")
    owner = next((d for d, o in house.devices.items() if unit.code_ref and o.code_ref == unit.code_ref), None)
    if owner is not None:
        yield Fault(
            "", f"{at}.code_ref", f"'{unit.code_ref}', which is the code of {owner}",
            "the new device's own code: capture it and keep it under a reference of its own",
        )  # fmt: skip
