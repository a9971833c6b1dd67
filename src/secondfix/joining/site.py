"""A house made ready for the search of an order."""

from collections.abc import Sequence

from secondfix.assumptions import Assumptions
from secondfix.house import Schedule
from secondfix.joining.circuits import Group, bonds, feed_of, groups, is_wired, natural, on_mains
from secondfix.joining.distance import walking_mm
from secondfix.joining.parents import Mesh
from secondfix.joining.stages import Site


def groups_of(schedule: Schedule, ids: Sequence[str]) -> tuple[Group, ...]:
    """The groups of circuits on which wired devices are to be fitted."""
    places = {schedule.place_of_device(d) for d in ids if is_wired(schedule, d)}
    feeds = [feed_of(schedule, place) for place in places]
    return groups(feeds, bonds(schedule, feeds))


def site_of(schedule: Schedule, mesh: Mesh, grouped: Sequence[Group], assumptions: Assumptions) -> Site:
    """What the search needs to know of this house; devices numbered as in ``mesh``."""
    at = [schedule.place_of_device(d) for d in mesh.ids]
    places = sorted(set(at), key=natural)
    rows: list[list[int]] = walking_mm(schedule.house, places, assumptions).tolist()
    index = {place: k for k, place in enumerate(places)}
    where = [index[place] for place in at]
    wired = {n for n, d in enumerate(mesh.ids) if is_wired(schedule, d)}
    asleep = {n for n, d in enumerate(mesh.ids) if on_mains(schedule, d) is False}
    plugged = [n for n in range(len(at)) if n not in wired and n not in asleep]
    waits = [_waits_for(schedule, at[n], grouped) for n in plugged]
    members = [[n for n in sorted(wired) if at[n] in set(g.places)] for g in grouped]
    return Site(
        mesh,
        lambda a, b: rows[where[a]][where[b]],
        tuple(_set(m) for m in members),
        tuple(tuple({at[n]: n for n in reversed(m)}.values()) for m in members),
        tuple(_set([n for n, w in zip(plugged, waits, strict=True) if w == k]) for k in range(len(grouped))),
        _set([n for n, w in zip(plugged, waits, strict=True) if w is None]),
        _set(sorted(asleep)),
    )


def _waits_for(schedule: Schedule, place: str, grouped: Sequence[Group]) -> int | None:
    """The group whose circuit feeds this socket: it has no power while that is isolated."""
    circuits = feed_of(schedule, place).circuits
    return next((k for k, g in enumerate(grouped) if set(g.circuits) & set(circuits)), None)


def _set(numbers: Sequence[int]) -> int:
    return sum(1 << n for n in numbers)
