"""The house as selection asks about it: read once, then small copies with one candidate in place."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model
from secondfix.house import Box, Device, Duty, House, Schedule, schedule
from secondfix.scenes import resolve
from secondfix.terms import PowerLossState

NEW = "New"
SCENES_ONLY = {"duty": Duty.SCENE_ONLY, "load": None, "extends": None}
CAPPED = {"duty": Duty.CAPPED, "load": None, "extends": None}


@dataclass(frozen=True)
class Ground:
    """One house, the models at hand, the assumptions."""

    house: House
    models: Mapping[str, Model]
    assumptions: Assumptions
    origin: "Ground | None" = None

    @cached_property
    def first(self) -> "Ground":
        """The house as it is: what is wanted, and what hangs with what, stands for every change of it."""
        return self.origin or self

    @cached_property
    def every_model(self) -> Mapping[str, Model]:
        """The catalogue and the editions that the house carries."""
        return {**self.models, **self.house.models}

    @cached_property
    def new_id(self) -> str:
        """An id that no device has, for one that is not in the house yet."""
        number = 1
        while (name := f"{NEW}{number if number > 1 else ''}") in self.house.devices:
            number += 1
        return name

    @cached_property
    def devices_in(self) -> Mapping[str, tuple[str, ...]]:
        """The devices of each box, in the document's order."""
        found: dict[str, list[str]] = {}
        for device_id, device in self.house.devices.items():
            if device.box:
                found.setdefault(device.box, []).append(device_id)
        return {box: tuple(ids) for box, ids in found.items()}

    @cached_property
    def feeding_at(self) -> Mapping[str, tuple[str, ...]]:
        """The devices outside the boxes that feed something, by place."""
        found: dict[str, list[str]] = {}
        for device_id, device in self.house.devices.items():
            if device.place and device.outputs:
                found.setdefault(device.place, []).append(device_id)
        return {place: tuple(ids) for place, ids in found.items()}

    @cached_property
    def loads_at(self) -> Mapping[str, tuple[str, ...]]:
        """The loads that hang at each place."""
        found: dict[str, list[str]] = {}
        for load_id, load in self.house.loads.items():
            if load.place:
                found.setdefault(load.place, []).append(load_id)
        return {place: tuple(ids) for place, ids in found.items()}

    @cached_property
    def dimmed(self) -> frozenset[str]:
        """Loads that are to be dimmed: so stated, or set to a level below full by a scene.

        A gang without a device is taken to get one, for else no scene could reach its load.
        """
        house = self.house.model_copy(update={"devices": {**self.house.devices, **self._undecided()}})
        stated = {k for k, load in house.loads.items() if load.to_be_dimmed}
        if not house.scenes:
            return frozenset(stated)
        crossings = (c for r in resolve(schedule(house, self.every_model)) for c in r.crossings.values())
        return frozenset(stated | {c.load_id for c in crossings if c.asked_level_pct not in {None, 100}})

    def _undecided(self) -> dict[str, Device]:
        taken = {(d.box, g) for d in self.house.devices.values() for g in d.gangs}
        found = {}
        for number, (box_id, box) in enumerate(self.house.boxes.items()):
            free = tuple(g for g in box.gangs if (box_id, g) not in taken)
            if free:
                found[f"{self.new_id}-{number}"] = Device(box=box_id, gangs=free)
        return found

    @cached_property
    def gang_of(self) -> Mapping[str, str]:
        """The gang that feeds each load, where one does."""
        boxes = self.house.boxes.items()
        return {g.load: f"{b}.{n}" for b, box in boxes for n, g in box.gangs.items() if g.load}

    @cached_property
    def outside_of(self) -> Mapping[str, str]:
        """The device outside the boxes that feeds each load, where one does."""
        return {load: d for d, device in self.house.devices.items() for load in device.outputs.values()}

    @cached_property
    def _linked(self) -> Mapping[str, frozenset[str]]:
        """Each box with those that its gangs extend, are extended by, or drive one motor with."""
        links: dict[str, set[str]] = {box_id: {box_id} for box_id in self.house.boxes}
        for box_id, box in self.house.boxes.items():
            for gang in box.gangs.values():
                other = gang.extends.partition(".")[0] if gang.extends else None
                if gang.load:
                    other = self.gang_of.get(self.house.loads[gang.load].other_direction or "")
                if other := (other or "").partition(".")[0]:
                    links[box_id].add(other)
                    links[other].add(box_id)
        return {box_id: frozenset(found) for box_id, found in links.items()}

    @cached_property
    def _around(self) -> dict[str, tuple[str, ...]]:
        return {}

    def around(self, box_id: str) -> tuple[str, ...]:
        """The box and all that hang with it by extensions and motors, in the document's order."""
        known = self.first
        if box_id not in known._around:
            found, todo = {box_id}, [box_id]
            while todo:
                new = known._linked[todo.pop()] - found
                found |= new
                todo += new
            known._around[box_id] = tuple(sorted(found, key=known._number.__getitem__))
        return known._around[box_id]

    @cached_property
    def _number(self) -> Mapping[str, int]:
        return {box_id: number for number, box_id in enumerate(self.house.boxes)}

    def part(self, box_ids: Iterable[str], devices: Mapping[str, Device]) -> Schedule:
        """The schedule of these boxes and devices alone; circuits, rooms, loads and the rest stay whole."""
        boxes = {b: self.house.boxes[b] for b in box_ids}
        return schedule(
            _copy(self.house, boxes=boxes, devices=dict(devices), scenes={}), self.first.every_model
        )

    def devices_of(self, box_ids: Iterable[str]) -> dict[str, Device]:
        """The devices that stand in these boxes."""
        ids = [d for b in box_ids for d in self.first.devices_in.get(b, ())]
        return {d: self.house.devices[d] for d in ids}

    def changed(self, **collections: Mapping[str, Any]) -> "Ground":
        """The same question about a house in which some collections are other ones."""
        return Ground(_copy(self.house, **collections), self.models, self.assumptions, self.first)

    def with_gangs(self, changes: Mapping[str, Mapping[str, Any]]) -> "Ground":
        """A house in which some gangs, by id, say something else."""
        boxes = dict(self.house.boxes)
        for gang_id, change in changes.items():
            box_id, _, number = gang_id.partition(".")
            gangs = boxes[box_id].gangs
            new = gangs[number].model_copy(update=dict(change))
            boxes[box_id] = boxes[box_id].model_copy(update={"gangs": {**gangs, number: new}})
        return self.changed(boxes=boxes)

    def with_extensions(self, gang_ids: Iterable[str]) -> tuple[str, ...]:
        """These gangs, then all that extend them, at first or at second hand."""
        found = dict.fromkeys(gang_ids)
        boxes = {b.partition(".")[0] for b in found}
        near = {b for box_id in boxes for b in self.around(box_id)}
        extends = {f"{b}.{n}": g.extends for b in near for n, g in self.house.boxes[b].gangs.items()}
        before = -1
        while before < len(found):
            before = len(found)
            found |= {g: None for g in sorted(extends) if extends[g] in found}
        return tuple(found)

    def with_box(self, box_id: str, box: Box) -> "Ground":
        """A house in which one box is another."""
        return self.changed(boxes={**self.house.boxes, box_id: box})


def _copy(house: House, **collections: Any) -> House:
    return house.model_copy(update=collections)


def settings_of(model: Model) -> tuple[PowerLossState | None, ...]:
    """What to try: nothing set, then each state that the model can be set to."""
    return (None, *(model.power_loss.settable if model.power_loss else ()))
