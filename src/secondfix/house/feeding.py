"""Duties of gangs agree with what they name; a load is fed once; chains of extensions and orders hold."""

from collections import Counter
from collections.abc import Iterator

from secondfix.house.document import House
from secondfix.house.misfit import Misfit, dangling
from secondfix.house.wiring import Duty, Gang


def feeding_faults(house: House) -> Iterator[Misfit]:
    """Every misfit of duty, load and extension."""
    gangs = {
        f"{b}.{n}": (f"boxes.{b}.gangs.{n}", gang)
        for b, box in house.boxes.items()
        for n, gang in box.gangs.items()
    }
    fed: dict[str, str] = {}
    for path, gang in gangs.values():
        yield from _duty(path, gang)
        yield from dangling(f"{path}.load", gang.load, house.loads, "load")
        yield from dangling(f"{path}.extends", gang.extends, gangs, "gang")
        if gang.load is not None:
            yield from _fed_once(fed, gang.load, f"{path}.load")
    for key, device in house.devices.items():
        for n, load in device.outputs.items():
            path = f"devices.{key}.outputs.{n}"
            yield from dangling(path, load, house.loads, "load")
            yield from _fed_once(fed, load, path)
    yield from _chains(gangs)
    yield from _orders(house, gangs)


def _duty(path: str, gang: Gang) -> Iterator[Misfit]:
    needs = {Duty.FEEDS: "load", Duty.EXTENDS: "extends"}.get(gang.duty)
    for name in ("load", "extends"):
        given = getattr(gang, name) is not None
        if name == needs and not given:
            yield Misfit(f"{path}.{name}", "nothing", f"what a gang of duty '{gang.duty.value}' names here")
        if name != needs and given and "duty" not in gang.model_fields_set:
            duty = "feeds" if name == "load" else "extends"
            yield Misfit(f"{path}.duty", "nothing", f"'{duty}', where '{name}' is given")
        elif name != needs and given:
            yield Misfit(
                f"{path}.{name}", f"'{getattr(gang, name)}'", f"nothing beside duty '{gang.duty.value}'"
            )


def _fed_once(fed: dict[str, str], load: str, path: str) -> Iterator[Misfit]:
    if load in fed:
        yield Misfit(path, f"'{load}'", f"a load that nothing else feeds ({fed[load]} feeds it)")
    fed.setdefault(load, path)


def _chains(gangs: dict[str, tuple[str, Gang]]) -> Iterator[Misfit]:
    """Each extension must lead to a gang that feeds; a ring is told at every gang in it."""
    for start, (path, gang) in gangs.items():
        if gang.duty is not Duty.EXTENDS or gang.extends not in gangs:
            continue
        seen, here = [start], gang.extends
        while here in gangs and here not in seen and gangs[here][1].duty is Duty.EXTENDS:
            seen.append(here)
            here = gangs[here][1].extends or ""
        if here in seen:
            yield Misfit(
                f"{path}.extends",
                f"a ring: {', '.join([*seen, here])}",
                "a chain that ends in a gang that feeds",
            )
        elif here in gangs and gangs[here][1].duty not in {Duty.FEEDS, Duty.NOT_KNOWN}:
            yield Misfit(
                f"{path}.extends", f"'{here}', whose duty is '{gangs[here][1].duty.value}'",
                "a gang that feeds a load (or whose duty is not known)",
            )  # fmt: skip


def _orders(house: House, gangs: dict[str, tuple[str, Gang]]) -> Iterator[Misfit]:
    """The places that work one load: each a gang of this house, none twice."""
    for key, load in house.loads.items():
        order = load.multiway.gangs if load.multiway else ()
        path = f"loads.{key}.multiway.gangs"
        for i, gang in enumerate(order):
            yield from dangling(f"{path}[{i}]", gang, gangs, "gang")
        for gang, times in Counter(order).items():
            if times > 1:
                yield Misfit(path, f"'{gang}' given {times} times", "each place once")
