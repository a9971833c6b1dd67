"""The loads that are worked from several places, each with what the rules ask about."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix.catalogue import Model
from secondfix.electrical.case import Case
from secondfix.electrical.multiway.as_found import LAMP
from secondfix.findings import Look
from secondfix.house import (
    DEAD_FIRST,
    Arrangement,
    Load,
    Multiway,
    OthersAct,
    Row,
    circuit_look,
    line_look,
    load_words,
    settled,
)


@dataclass(frozen=True, slots=True)
class Subject:
    """One such load. ``place`` is the contact that feeds it, or the load itself while nothing does.

    ``row`` is the feeding gang (None where a device outside the boxes feeds it), ``device_id`` the feeding
    device, ``others`` the further places, in the document's order.
    """

    load_id: str
    load: Load
    words: str
    place: str
    row: Row | None
    device_id: str | None
    model: Model | None
    others: tuple[Row, ...]

    @property
    def multiway(self) -> Multiway:
        """What the survey says of its places."""
        return self.load.multiway or Multiway()

    @property
    def arrangement(self) -> Arrangement | None:
        """The arrangement, where somebody measured, saw or was told it."""
        return settled(self.multiway.arrangement)

    @property
    def act(self) -> OthersAct | None:
        """How the other places act on the feeding one, where known."""
        return settled(self.multiway.others)

    @property
    def module(self) -> str | None:
        """The number of the box whose gang feeds the load; the luminaire for a device outside the boxes."""
        if self.row is None:
            return LAMP
        gangs = self.multiway.gangs
        return str(gangs.index(self.row.id) + 1) if self.row.id in gangs else None

    @property
    def several(self) -> bool:
        """Whether more places than the feeding one are known of."""
        return bool(self.others) or len(self.multiway.gangs) > (self.row is not None)

    @property
    def names(self) -> dict[str, str]:
        """The gang at each number of the row."""
        return {str(n): f"gang {gang}" for n, gang in enumerate(self.multiway.gangs, 1)}

    @property
    def also(self) -> list[str]:
        """Further ids that a finding concerns."""
        return [i for i in (self.load_id, self.device_id, *(r.id for r in self.others)) if i]

    def acts_look(self) -> Look:
        """The look for how the other places act."""
        ids = ", ".join(row.id for row in self.others)
        words = (
            f"{DEAD_FIRST}, trace how {ids or 'the other places'} of {self.words} will act: on an "
            "input of the module, by radio, or with a contact in line or beside it"
        )
        return Look(self.load_id, "multiway.others", words)


def subjects(case: Case) -> tuple[Subject, ...]:
    """Every load with an extension, or whose places the survey names.

    A schedule may hold a part of the house: places outside it are left out, and a load none of whose
    places stands in it is nobody's question there.
    """
    return case.once(_subjects)


def _subjects(case: Case) -> tuple[Subject, ...]:
    return tuple(_each(case))


def _each(case: Case) -> Iterator[Subject]:
    rows, fed_by, extended = case.schedule.rows, case.schedule.fed_by, case.schedule.extended_by
    for load_id, load in case.house.loads.items():
        fed = fed_by.get(load_id)
        if load.multiway is None and (fed is None or not extended):
            continue
        row = None if fed is None else fed if isinstance(fed, Row) else fed.row
        extending = tuple(_extending(case, row.id)) if row else ()
        listed = load.multiway.gangs if load.multiway else ()
        others = dict.fromkeys(g for g in (*extending, *listed) if g in rows and (row is None or g != row.id))
        elsewhere = fed is None and bool(listed) and not others
        if elsewhere or (not load.multiway and not extending):
            continue
        device_id = None if fed is None else fed.device_id
        outside = f"{device_id}.{fed.number}" if fed is not None and not isinstance(fed, Row) else load_id
        yield Subject(
            load_id,
            load,
            load_words(case.house, load_id),
            row.id if row else outside,
            row,
            device_id,
            case.schedule.model_of(device_id) if device_id else None,
            tuple(rows[gang] for gang in others),
        )


def _extending(case: Case, gang: str) -> Iterator[str]:
    for other in case.schedule.extended_by.get(gang, ()):
        yield other
        yield from _extending(case, other)


def circuit_of(case: Case, subject: Subject) -> str | None:
    """The circuit of the line that feeds the load, where known."""
    if subject.row is not None:
        return settled(subject.row.gang.line)
    device = case.house.devices[subject.device_id] if subject.device_id else None
    place = case.house.places.get(device.place or "") if device else None
    return settled(place.circuit) if place else None


def feed_look(case: Case, subject: Subject) -> Look:
    """The look for that circuit."""
    if subject.row is not None:
        return line_look(subject.row.box_id, subject.row.gang_no)
    device = case.house.devices[subject.device_id or ""]
    return circuit_look(device.place or "")
