"""Which devices lose power with which circuit."""

from collections.abc import Iterator

from secondfix.catalogue import Supply
from secondfix.house import Schedule, settled


def fed_by(rows: Schedule) -> tuple[dict[str, tuple[str, ...]], tuple[str, ...]]:
    """Give devices and networks (their controllers) by circuit, and those of which no circuit is known.

    A device in a box hangs on the circuits of its gangs' lines; if these are several, on each of them,
    for nobody states from which it feeds itself. Battery devices hang on none. Source: the survey.
    """
    house = rows.house
    out: dict[str, list[str]] = {key: [] for key in house.circuits}
    unknown: list[str] = []
    users = [
        *(
            (key, set(_of_place(rows, n.controller_place)))
            for key, n in house.networks.items()
            if n.controller_place
        ),
        *((key, set(_of_device(rows, key))) for key in house.devices if _on_mains(rows, key)),
    ]
    for key, circuits in users:
        known = [c for c in house.circuits if c in circuits]
        for circuit in known:
            out[circuit].append(key)
        if not known:
            unknown.append(key)
    return {key: tuple(users) for key, users in out.items() if users}, tuple(unknown)


def _on_mains(rows: Schedule, device_id: str) -> bool:
    model = rows.model_of(device_id)
    if model:
        return model.supply is not Supply.BATTERY
    return settled(rows.house.devices[device_id].power_source) != "battery"


def _of_place(rows: Schedule, place: str) -> Iterator[str]:
    spot = rows.house.places.get(place)
    circuit = settled(spot.circuit) if spot else None
    if circuit:
        yield circuit


def _of_device(rows: Schedule, device_id: str) -> Iterator[str]:
    device = rows.house.devices[device_id]
    if device.place:
        yield from _of_place(rows, device.place)
    if device.box:
        gangs = rows.house.boxes[device.box].gangs
        for gang in device.gangs:
            line = settled(gangs[gang].line) if gang in gangs else None
            if line:
                yield line
