"""What every rule is asked about: the schedule, the assumptions, and the contacts with their loads."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from typing import Any, TypeVar

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model, Output, Supply
from secondfix.electrical.demand import Current, current_of
from secondfix.house import Box, Device, House, Load, Row, Schedule, load_words

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Contact:
    """One output of a device of a decided model, and the load behind it.

    ``place`` is the gang's id, or ``<device>.<output>`` for a device that stands outside the boxes
    (``row`` is then None). ``load_words`` is the load as sentences name it.
    """

    place: str
    device_id: str
    device: Device
    model: Model
    load_id: str
    load: Load
    load_words: str
    row: Row | None


@dataclass(frozen=True, slots=True)
class Case:
    """The whole question. ``devices_in`` lists the devices of each box, in the document's order."""

    schedule: Schedule
    assumptions: Assumptions
    contacts: tuple[Contact, ...]
    devices_in: dict[str, tuple[str, ...]]
    _currents: dict[str, Current] = field(default_factory=dict, compare=False, repr=False)
    _worked_out: dict[object, Any] = field(default_factory=dict, compare=False, repr=False)

    @property
    def house(self) -> House:
        """The house asked about."""
        return self.schedule.house

    def once(self, work: Callable[["Case"], T]) -> T:
        """What ``work`` makes of the case; several rules ask for the same, and it is worked out once."""
        if work not in self._worked_out:
            self._worked_out[work] = work(self)
        found: T = self._worked_out[work]
        return found

    def current(self, load_id: str, *, mains_voltage_v: int) -> Current:
        """The current of a load at the mains voltage of the house; several rules ask for it."""
        known = self._currents.get(load_id)
        if known is None:
            load, called = self.house.loads[load_id], load_words(self.house, load_id)
            known = self._currents[load_id] = current_of(
                load_id, load, called, mains_voltage_v=mains_voltage_v, assumptions=self.assumptions
            )
        return known

    def switching_devices(self) -> Iterator[tuple[str, Device, Model]]:
        """Devices of a decided model that have an output."""
        for device_id, device in self.house.devices.items():
            model = self.schedule.model_of(device_id)
            if model is not None and model.output is not Output.NONE:
                yield device_id, device, model

    def wired_into(self, box_id: str) -> bool:
        """Whether a device stands in the box that joins its conductors, or may (model undecided)."""
        models = (self.schedule.model_of(device_id) for device_id in self.devices_in.get(box_id, ()))
        return any(model is None or model.supply is Supply.MAINS for model in models)


def mounts_of(device: Device, box: Box) -> tuple[str, ...]:
    """The mounts a device stands at: as stated, else those of its gangs, else all of the box."""
    if device.mounts:
        return device.mounts
    return tuple(dict.fromkeys(box.gangs[gang].mount for gang in device.gangs)) or tuple(box.mounts)


def case_of(schedule: Schedule, assumptions: Assumptions) -> Case:
    """The case of one house; linear in its devices."""
    devices_in: dict[str, list[str]] = {}
    for device_id, device in schedule.house.devices.items():
        if device.box:
            devices_in.setdefault(device.box, []).append(device_id)
    boxes = {box_id: tuple(ids) for box_id, ids in devices_in.items()}
    return Case(schedule, assumptions, tuple(_contacts(schedule)), boxes)


def _contacts(schedule: Schedule) -> Iterator[Contact]:
    for device_id, device in schedule.house.devices.items():
        model = schedule.model_of(device_id)
        if model is None or model.output is Output.NONE:
            continue
        for channel in schedule.channels_of[device_id]:
            if channel.load_id is not None:
                place = channel.row.id if channel.row else f"{device_id}.{channel.number}"
                load = schedule.house.loads[channel.load_id]
                words = load_words(schedule.house, channel.load_id)
                yield Contact(place, device_id, device, model, channel.load_id, load, words, channel.row)
