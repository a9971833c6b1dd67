"""A house begun from a device list: rooms and devices first, boxes to be surveyed."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from secondfix.catalogue import Form, Model
from secondfix.house import Fault, House, read_house
from secondfix.maintenance.device_list import ListRow
from secondfix.maintenance.expected import Expected
from secondfix.maintenance.replacing import IN_BOX
from secondfix.terms import Protocol

Plain = dict[str, Any]
_PLACE_OF = {Form.PLUG_IN: "socket", Form.LUMINAIRE_MODULE: "light_point"}
_NOT_TOLD = "Room not told"


@dataclass(frozen=True, slots=True)
class Begun:
    """The house, what is told of rows, and the names in the list as journal entries to expect."""

    house: House
    told: tuple[str, ...]
    entries: tuple[Expected, ...] = ()


@dataclass(slots=True)
class _Making:
    models: Mapping[str, Model]
    plain: Plain
    told: list[str] = field(default_factory=list)
    named: list[Expected] = field(default_factory=list)
    rooms: dict[str, str] = field(default_factory=dict)

    def room(self, name: str) -> str:
        """The id of a room, made where it is new."""
        words = name[:80] or _NOT_TOLD
        if words not in self.rooms:
            self.rooms[words] = f"R{len(self.rooms) + 1:02d}"
            self.plain["rooms"][self.rooms[words]] = {"name": words}
        return self.rooms[words]

    def next_id(self, letter: str, collection: str) -> str:
        """The next free id of a collection that only grows."""
        return f"{letter}{len(self.plain[collection]) + 1:02d}"


def begin_from(
    rows: Sequence[ListRow],
    *,
    house_id: str,
    name: str,
    network_name: str,
    protocol: Protocol,
    models: Mapping[str, Model],
) -> Begun | list[Fault]:
    """A house with the rooms, the network and the devices of the list.

    Rows of one address (or node, or name where there is neither) are one device. A device of a model for a
    wall box, or of an unknown model, gets a box of its own whose mounts and facts are to be surveyed; its
    gangs are of unknown duty. A row with a purpose becomes a load of that name which nothing is said to
    feed: the function test finds its gang. Nothing of the wiring is taken from a list.
    """
    groups = _grouped(rows)
    if not groups:
        return [Fault("", "rows", "no row with an address, node or name", "at least one device")]
    plain: Plain = {
        "format": 1, "id": house_id, "name": name,
        "note": "Begun from a device list: boxes, wires and loads are still to be surveyed.",
        "rooms": {}, "boxes": {}, "places": {}, "loads": {},
        "networks": {"N1": {"name": network_name, "protocol": protocol.value}}, "devices": {},
    }  # fmt: skip
    making = _Making(models, plain)
    making.told += [f"{r.words} has no address, node or name: it is no device." for r in rows if not _key(r)]
    making.told += [
        f"{r.words[:100]}: a name of more than 80 characters is cut."
        for r in rows
        if max(len(r.name), len(r.room)) > 80
    ]
    for group in groups:
        _device(making, group, protocol)
    _told_of_loads(making)
    kept = {key: value for key, value in plain.items() if value != {} or key in {"rooms", "boxes"}}
    house = read_house(json.dumps(kept, ensure_ascii=False).encode(), where="list", models=models)
    return Begun(house, tuple(making.told), tuple(making.named)) if isinstance(house, House) else house


def _key(row: ListRow) -> object:
    if row.address:
        return row.address
    return ("node", row.node) if row.node is not None else row.name and ("name", row.name)


def _grouped(rows: Sequence[ListRow]) -> list[list[ListRow]]:
    groups: dict[object, list[ListRow]] = {}
    for row in rows:
        if _key(row):
            groups.setdefault(_key(row), []).append(row)
    return list(groups.values())


def _device(making: _Making, group: list[ListRow], protocol: Protocol) -> None:
    plain = making.plain
    device_id = making.next_id("D", "devices")
    key = next((r.model for r in group if r.model), None)
    model = making.models[key] if key else None
    if model is not None and model.protocol is not protocol:
        says = f"{model.key} does not speak {protocol.value}; its model is left open."
        making.told.append(f"{group[0].words}: {says}")
        key = model = None
    group = _once(making, device_id, group)
    rooms = list(dict.fromkeys(r.room for r in group if r.room))
    if len(rooms) > 1:
        making.told.append(f"{group[0].words}: its rows name {len(rooms)} rooms; it is put into {rooms[0]}.")
    room = making.room(rooms[0] if rooms else "")
    whole = [r for r in group if _whole(r, model, protocol, len(group))]
    making.told += [
        f"{r.words} is the whole-device entry of {device_id}: it is no load, and its purpose is not taken."
        for r in whole
        if r.purpose is not None
    ]
    gangs = sorted((r for r in group if r not in whole), key=lambda r: (r.endpoint is None, r.endpoint or 0))
    for number, row in [*((0, r) for r in whole), *enumerate(gangs, 1)]:
        if row.name:
            making.named.append(Expected("named", f"entry:{device_id}.{number}", {"name": row.name[:80]}))
    device: Plain = {"network": "N1", "note": _note(group)}
    if key:
        device["model"] = key
    if group[0].address:
        device["address"] = group[0].address
    if model is None or model.form in IN_BOX:
        device |= _box(making, room, gangs, model)
    else:
        place = making.next_id("P", "places")
        kind, words = _PLACE_OF.get(model.form, "surface"), (group[0].name or device_id)[:80]
        plain["places"][place] = {"kind": kind, "name": words, "room": room}
        device["place"] = place
    plain["devices"][device_id] = device
    for row in gangs:
        _load(making, row, room)


def _once(making: _Making, device: str, group: list[ListRow]) -> list[ListRow]:
    """Each entry's first row; one that says it again is told and not taken."""
    first: dict[int, ListRow] = {}
    kept = []
    for row in group:
        if row.endpoint is None or first.setdefault(row.endpoint, row) is row:
            kept.append(row)
        else:
            says = f"says entry {row.endpoint} of {device} again, after {first[row.endpoint].words}"
            making.told.append(f"{row.words} {says}: it is not taken.")
    return kept


def _whole(row: ListRow, model: Model | None, protocol: Protocol, rows: int) -> bool:
    """Whether the row is of the whole-device entry: endpoint 0 of a Z-Wave device with more entries."""
    shows = model.whole_entry if model else protocol is Protocol.ZWAVE and rows > 1
    return shows and row.endpoint == 0


def _box(making: _Making, room: str, gangs: list[ListRow], model: Model | None) -> Plain:
    box = making.next_id("B", "boxes")
    mounts = [str(n) for n in range(1, max(model.mounts if model else 1, 1) + 1)]
    count = model.gangs if model else len(gangs)
    numbers = [str(n) for n in range(1, min(count, 24) + 1)]
    notes = {str(n): r for n, r in enumerate(gangs, 1)}
    making.plain["boxes"][box] = {
        "room": room,
        "mounts": {m: {} for m in mounts},
        "gangs": {n: {"note": f"In the list: {notes[n].name}"[:500]} if n in notes else {} for n in numbers},
        "note": "To be surveyed.",
    }
    return {"box": box, "mounts": mounts[: model.mounts] if model else [], "gangs": numbers}


def _load(making: _Making, row: ListRow, room: str) -> None:
    if row.purpose is None or not row.name:
        return
    load = making.next_id("L", "loads")
    where = making.room(row.room) if row.room else room
    making.plain["loads"][load] = {
        "name": row.name[:80], "room": where, "purpose": row.purpose.value,
        "note": f"From {row.words} of a device list."[:500],
    }  # fmt: skip


def _told_of_loads(making: _Making) -> None:
    if making.plain["loads"]:
        count = len(making.plain["loads"])
        making.told.append(
            f"{count} loads are named after rows; the function test finds which gang works each."
        )


def _note(group: list[ListRow]) -> str:
    said = dict.fromkeys(r.model_said for r in group if r.model_said and not r.model)
    names = ", ".join(f"{r.endpoint if r.endpoint is not None else '?'} {r.name}" for r in group if r.name)
    model = f"; model in the list: {', '.join(said)}" if said else ""
    return f"In the list: {names}{model}"[:500]
