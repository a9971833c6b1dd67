"""The walk: in which order to isolate, fit, energise, join and test."""

from secondfix.assumptions import Assumptions
from secondfix.house import House, Schedule
from secondfix.joining.circuits import natural
from secondfix.joining.links import Links
from secondfix.joining.narrate import narrate
from secondfix.joining.parents import mesh
from secondfix.joining.site import groups_of, site_of
from secondfix.joining.stages import route
from secondfix.joining.steps import Walk


def walk(schedule: Schedule, links: Links, assumptions: Assumptions) -> Walk:
    """An order in which every device joins through a good parent already joined and powered.

    A good parent is the controller or a powered, repeating, joined device over a link of at least
    ``parent_margin_db`` after spread; Z-Wave goes through at most 4 repeaters, Zigbee 15 deep
    (secondary). Circuits that meet in one box, or share a
    neutral anywhere, are isolated together; a stage isolates one such
    group, fits all of it, energises it, and joins what then has a parent. Each group is isolated
    once; the shortest way comes first. A device whose gesture wants its front off and power on, where
    live parts can then be touched, is joined on a bench before anything is isolated, and tested in its
    place. Battery devices come last: by then every repeater stands (common practice, no source). A
    circuit that is not isolated counts as on. Devices over links nobody knows, and those with no good
    parent at all, stand in the order too, marked.
    """
    webbed = mesh(schedule, links, assumptions)
    grouped = groups_of(schedule, webbed.ids)
    site = site_of(schedule, webbed, grouped, assumptions)
    found = route(site)
    steps, stages = narrate(schedule, site, grouped, found.rounds)
    isolations = sum(1 for r in found.rounds if r.group is not None)
    return Walk(steps, stages, isolations, found.walked_mm, found.exact, _unplaced(schedule))


def _unplaced(schedule: Schedule) -> tuple[str, ...]:
    places = {schedule.place_of_device(d) for d in schedule.house.devices}
    return tuple(sorted((p for p in places if not _placed(schedule.house, p)), key=natural))


def _placed(house: House, place_id: str) -> bool:
    return (house.boxes.get(place_id) or house.places[place_id]).position is not None
