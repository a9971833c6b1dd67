"""Networks and devices as tables: where each stands, whether radio carries it, who hangs on whom."""

from collections.abc import Iterable
from dataclasses import dataclass
from html import escape

from django.urls import reverse

from secondfix.house import Duty, load_words
from secondfix.radio import DeviceReach, Reach, Word
from secondfix.web.frame.asked import Asked
from secondfix.web.things.tables import Extra, Table, table_of


def reached(about: Asked) -> Reach:
    """The answer of radio for every device: the one that the check leans on."""
    return about.reached


def tables_of(about: Asked) -> tuple[Table, ...]:
    """Networks; devices with their reach in words; uses that others make of devices."""
    by_id = about.once("reach by device", lambda a: {d.id: d for d in reached(a).devices})
    count = Extra(
        "Devices", lambda a, i: str(sum(d.network == i for d in a.house.devices.values()) or "none")
    )
    own = (
        Extra("Model", _model),
        Extra("Stands at", _stands),
        "network",
        Extra("Radio", lambda _, i: _word(by_id.get(i))),
        Extra("Choose", _choose),
    )
    networks = ("name", "protocol", "controller", "channel", count)
    return (
        table_of(about, "network", "Networks", networks),
        table_of(about, "device", "Devices", own),
        table_of(about, "use", "Uses of others", ("use-kind", "device", "entry", "words")),
    )


def _model(about: Asked, device_id: str) -> str:
    model = about.rows.model_of(device_id)
    if model is None:
        return '<span class="soft">not chosen</span>'
    return f"{escape(model.title)}{_under(model.key)}"


def _stands(about: Asked, device_id: str) -> str:
    house, device = about.house, about.house.devices[device_id]
    room = escape(house.rooms[about.rows.room_of_device(device_id)].name)
    within = "; ".join(
        f"{name}{'' if len(numbers) == 1 else 's'} {', '.join(numbers)}"
        for name, numbers in (("mount", device.mounts), ("gang", device.gangs))
        if numbers
    )
    fed = [f"{n} feeds {load_words(house, load)}" for n, load in device.outputs.items()]
    head = f"{about.rows.place_of_device(device_id)} {room}"
    return "".join((head, *(_under(words) for words in (within, *fed) if words)))


def _word(device: DeviceReach | None) -> str:
    if device is None:  # an extension unit, which is wired to its gang
        return '<span class="soft">has no radio</span>'
    word = device.word.value
    told = f'<strong class="accent">{word}</strong>' if device.word is Word.UNLIKELY else word
    way = _way(device)
    return told + _under(way) if way else told


def _under(words: str) -> str:
    """A second line in a smaller hand."""
    return f'<span class="under">{escape(words)}</span>'


def _way(device: DeviceReach) -> str:
    if device.needs:
        return "; ".join(dict.fromkeys(look.words for look in device.needs))
    if not device.hops:
        return ""
    return f"by way of {', '.join(device.route)}" if device.route else "straight to the controller"


def _choose(about: Asked, device_id: str) -> str:
    device = about.house.devices[device_id]
    if device.box is None and not device.outputs:
        return ""
    way = reverse("choose", args=[about.house.id, about.rows.place_of_device(device_id)])
    words = "another model" if device.model else "a model"
    return f'<a href="{way}#at-{device_id}">{words}<span class="apart"> for {device_id}</span></a>'


@dataclass(frozen=True, slots=True)
class Carrier:
    """A repeater that others cannot do without."""

    device_id: str
    carries: tuple[str, ...]


def carriers(devices: Iterable[DeviceReach]) -> list[Carrier]:
    """Every repeater with the devices that are missed if it goes, the most missed first."""
    found: dict[str, list[str]] = {}
    for device in devices:
        for repeater in device.hangs_on:
            found.setdefault(repeater, []).append(device.id)
    told = [Carrier(repeater, tuple(ids)) for repeater, ids in found.items()]
    return sorted(told, key=lambda c: (-len(c.carries), c.device_id))


def without_device(about: Asked) -> list[str]:
    """Wall boxes with a gang that no device works; a capped one wants none."""
    rows = about.rows.rows.values()
    return list(
        dict.fromkeys(r.box_id for r in rows if r.device_id is None and r.gang.duty is not Duty.CAPPED)
    )


def points(about: Asked) -> list[str]:
    """Light points with a load and no device, where a module could do it instead of a switch."""
    house = about.house
    at = {d.place for d in house.devices.values() if d.place}
    wanted = {load.place for load in house.loads.values() if load.place} - at
    return [i for i, place in house.places.items() if i in wanted and place.kind == "light_point"]
