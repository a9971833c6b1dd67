"""The switch schedule: every gang of the house with all that meets in it.

The one join that checks, names, scenes, worksheets and papers share.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

from secondfix.catalogue import Model
from secondfix.house.devices import Device
from secondfix.house.document import House
from secondfix.house.wiring import Box, Duty, Gang, Load, Mount


@dataclass(frozen=True, slots=True)
class Row:
    """One gang: ``id`` is ``<box>.<gang>``; device, model and channel are None where undecided."""

    id: str
    box_id: str
    gang_no: str
    box: Box
    mount: Mount
    gang: Gang
    load_id: str | None
    load: Load | None
    device_id: str | None
    device: Device | None
    model: Model | None
    channel: int | None


@dataclass(frozen=True, slots=True)
class Channel:
    """One output or button of one device: ``number`` counts from 1 in the device's own order.

    ``place`` is the gang's id (``B07.2``) or the id of the place the device stands at;
    ``load_id`` is what it feeds.
    """

    device_id: str
    number: int
    place: str
    load_id: str | None
    row: Row | None


@dataclass(frozen=True, slots=True)
class Schedule:
    """All rows by gang id; and by device, by load, for those who ask from the other side."""

    house: House
    models: Mapping[str, Model]
    rows: dict[str, Row]
    channels_of: dict[str, tuple[Channel, ...]] = field(default_factory=dict)
    fed_by: dict[str, Channel | Row] = field(default_factory=dict)
    extended_by: dict[str, tuple[str, ...]] = field(default_factory=dict)

    def model_of(self, device_id: str) -> Model | None:
        """The model of a device, None where undecided."""
        key = self.house.devices[device_id].model
        return self.models[key] if key else None

    def on_radio(self, device_id: str) -> bool:
        """Whether it has a radio: an extension unit has none; undecided counts as having one."""
        model = self.model_of(device_id)
        return model is None or model.protocol is not None

    def room_of_device(self, device_id: str) -> str:
        """The id of the room in which a device stands."""
        device = self.house.devices[device_id]
        if device.box:
            return self.house.boxes[device.box].room
        assert device.place is not None  # the reader refuses a device that stands nowhere
        return self.house.places[device.place].room

    def place_of_device(self, device_id: str) -> str:
        """The id of the box or place at which a device stands."""
        device = self.house.devices[device_id]
        return device.box or device.place or ""


def _device_at(house: House) -> dict[tuple[str, str], tuple[str, int]]:
    return {
        (device.box, gang): (device_id, number)
        for device_id, device in house.devices.items()
        if device.box
        for number, gang in enumerate(device.gangs, start=1)
    }


def _row(
    house: House, models: Mapping[str, Model], box_id: str, gang_no: str, at: tuple[str, int] | None
) -> Row:
    box = house.boxes[box_id]
    gang = box.gangs[gang_no]
    device = house.devices[at[0]] if at else None
    load_id = gang.load if gang.duty is Duty.FEEDS else None
    return Row(
        f"{box_id}.{gang_no}",
        box_id,
        gang_no,
        box,
        box.mounts[gang.mount],
        gang,
        load_id,
        house.loads[load_id] if load_id else None,
        at[0] if at else None,
        device,
        models[device.model] if device and device.model else None,
        at[1] if at else None,
    )


def _channels(
    house: House, models: Mapping[str, Model], rows: Mapping[str, Row]
) -> dict[str, tuple[Channel, ...]]:
    out: dict[str, tuple[Channel, ...]] = {}
    for device_id, device in house.devices.items():
        if device.box:
            of_box = [rows[f"{device.box}.{gang}"] for gang in device.gangs]
            out[device_id] = tuple(Channel(device_id, n, r.id, r.load_id, r) for n, r in enumerate(of_box, 1))
            continue
        model = models[device.model] if device.model else None
        count = max([model.gangs if model else 0, *(int(n) for n in device.outputs)], default=0)
        place = device.place or ""
        out[device_id] = tuple(
            Channel(device_id, n, place, device.outputs.get(str(n)), None) for n in range(1, count + 1)
        )
    return out


def schedule(house: House, models: Mapping[str, Model]) -> Schedule:
    """The switch schedule of a house that ``read_house`` accepted. Time linear in its gangs."""
    at = _device_at(house)
    rows = {
        f"{box_id}.{gang_no}": _row(house, models, box_id, gang_no, at.get((box_id, gang_no)))
        for box_id, box in house.boxes.items()
        for gang_no in box.gangs
    }
    channels = _channels(house, models, rows)
    fed_by: dict[str, Channel | Row] = {r.load_id: r for r in rows.values() if r.load_id}
    fed_by |= {c.load_id: c for cs in channels.values() for c in cs if c.load_id}
    extended: dict[str, list[str]] = {}
    for row in rows.values():
        if row.gang.extends:
            extended.setdefault(row.gang.extends, []).append(row.id)
    return Schedule(house, models, rows, channels, fed_by, {k: tuple(v) for k, v in extended.items()})
