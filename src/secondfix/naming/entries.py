"""Every entry that a device shows in the controller, with its number, what it is and its name."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum

from secondfix.catalogue import Model, Output
from secondfix.house import Channel, Device, Duty, Schedule
from secondfix.naming.policy import idle_name, load_name, output_name, place_name, spare_name, whole_name
from secondfix.terms import PROTOCOLS, Protocol, Purpose


class EntryKind(StrEnum):
    """What an entry stands for."""

    GANG = "gang"
    WHOLE_DEVICE = "whole_device"
    PLACE_DEVICE = "place_device"


@dataclass(frozen=True, slots=True)
class Entry:
    """One entry of one device.

    ``number`` is how the book and its scenes count: 0 the whole-device entry, gangs from 1.
    ``endpoint`` is what the protocol calls it: the same number, but 0 (the root device) for a Z-Wave
    device that shows a single entry, and None where the protocol of a single entry is not known.
    ``place`` is the gang's id, or the box or place; ``stands`` is False for a whole-device entry that
    may or may not appear, since the model is not known. ``explained`` is False for a gang whose duty
    is not known: its name is provisional. ``purpose`` is that of the load it feeds.
    Identity on the network is ``address`` (None until written down) with ``endpoint``, never the name.
    """

    device_id: str
    number: int
    endpoint: int | None
    kind: EntryKind
    name: str
    place: str
    room_id: str
    duty: Duty | None = None
    load_id: str | None = None
    purpose: Purpose | None = None
    protocol: Protocol | None = None
    address: str | None = None
    stands: bool = True
    explained: bool = True


@dataclass(frozen=True, slots=True)
class Names:
    """The entries of every device, by device id, in the order of their numbers."""

    of_device: dict[str, tuple[Entry, ...]]

    def entries(self) -> Iterator[Entry]:
        """Every entry, by device in the order of the document."""
        for entries in self.of_device.values():
            yield from entries

    def of(self, device_id: str, number: int) -> Entry | None:
        """The entry of this number, None where the device shows none."""
        return next((e for e in self.of_device.get(device_id, ()) if e.number == number), None)


def names(schedule: Schedule) -> Names:
    """The entry list of every device, named by the house's policy; empty for an extension unit.

    Endpoints: Zigbee and Matter 1..n (Matter's 0 is the root node, no entry); Z-Wave end points 1..n
    behind root device 0, which is the whole-device entry where the model shows one (Multi Channel
    command class, secondary; the single-entry case from memory). Leaves out entries of a maker's own
    (metering, settings) and endpoints above the gangs.
    """
    return Names({device_id: tuple(_entries(schedule, device_id)) for device_id in schedule.house.devices})


def protocol_of(schedule: Schedule, device_id: str) -> Protocol | None:
    """By the model, else by the network, else not known."""
    model = schedule.model_of(device_id)
    network = schedule.house.devices[device_id].network
    if model:
        return model.protocol
    return schedule.house.networks[network].protocol if network else None


def _entries(schedule: Schedule, device_id: str) -> Iterator[Entry]:
    if not schedule.on_radio(device_id):
        return
    model = schedule.model_of(device_id)
    protocol = protocol_of(schedule, device_id)
    if model.whole_entry if model else _may_show_whole(protocol):
        yield _whole(schedule, device_id, stands=model is not None)
    channels = schedule.channels_of[device_id]
    count = max(len(channels), model.gangs if model else 0)
    endpoint = _sole_endpoint(model, protocol, count)
    if not count:
        yield _place_entry(schedule, device_id, 1, endpoint, alone=True)
    for number in range(1, count + 1):
        at = number if count > 1 else endpoint
        if number > len(channels) and model and model.output is not Output.NONE:
            yield _spare(schedule, device_id, number, at)
        elif number <= len(channels) and (channels[number - 1].row or channels[number - 1].load_id):
            yield _gang(schedule, channels[number - 1], at)
        else:
            yield _place_entry(schedule, device_id, number, at, alone=count == 1)


def _may_show_whole(protocol: Protocol | None) -> bool:
    return protocol is None or PROTOCOLS[protocol].whole_entry is not None


def _sole_endpoint(model: Model | None, protocol: Protocol | None, count: int) -> int | None:
    """The endpoint of a device's first entry after the whole-device entry."""
    if count > 1 or (model and model.whole_entry):
        return 1
    if protocol is None or (model is None and _may_show_whole(protocol)):
        return None
    root = PROTOCOLS[protocol].whole_entry
    return 1 if root is None else root


def _whole(schedule: Schedule, device_id: str, *, stands: bool) -> Entry:
    device = schedule.house.devices[device_id]
    protocol = protocol_of(schedule, device_id)
    return Entry(
        device_id,
        0,
        PROTOCOLS[protocol].whole_entry if protocol else None,
        EntryKind.WHOLE_DEVICE,
        whole_name(schedule, device_id),
        schedule.place_of_device(device_id),
        schedule.room_of_device(device_id),
        protocol=protocol,
        address=device.address,
        stands=stands,
    )


def _gang(schedule: Schedule, channel: Channel, endpoint: int | None) -> Entry:
    device: Device = schedule.house.devices[channel.device_id]
    row = channel.row
    load = schedule.house.loads[channel.load_id] if channel.load_id else None
    if load and row:
        name = load_name(schedule.house, load, row)
    elif load:
        name = output_name(schedule, channel.device_id, channel.number, load)
    else:
        assert row is not None  # an output without a load is a place entry
        name = idle_name(schedule, row)
    duty = row.gang.duty if row else Duty.FEEDS
    return Entry(
        channel.device_id,
        channel.number,
        endpoint,
        EntryKind.GANG,
        name,
        channel.place,
        row.box.room if row else schedule.room_of_device(channel.device_id),
        duty,
        channel.load_id,
        load.purpose if load else None,
        protocol_of(schedule, channel.device_id),
        device.address,
        explained=duty is not Duty.NOT_KNOWN,
    )


def _spare(schedule: Schedule, device_id: str, number: int, endpoint: int | None) -> Entry:
    return Entry(
        device_id,
        number,
        endpoint,
        EntryKind.GANG,
        spare_name(schedule, device_id, number),
        schedule.place_of_device(device_id),
        schedule.room_of_device(device_id),
        protocol=protocol_of(schedule, device_id),
        address=schedule.house.devices[device_id].address,
    )


def _place_entry(
    schedule: Schedule, device_id: str, number: int, endpoint: int | None, *, alone: bool
) -> Entry:
    return Entry(
        device_id,
        number,
        endpoint,
        EntryKind.PLACE_DEVICE,
        place_name(schedule, device_id, number, alone=alone),
        schedule.place_of_device(device_id),
        schedule.room_of_device(device_id),
        protocol=protocol_of(schedule, device_id),
        address=schedule.house.devices[device_id].address,
    )
