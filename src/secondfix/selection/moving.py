"""Loads moved from a gang to a module at their own light point."""

from dataclasses import dataclass, replace

from secondfix.house import Box, Duty
from secondfix.selection.choice import Spot, WantedGang
from secondfix.selection.ground import Ground
from secondfix.selection.spots import at_place


@dataclass(frozen=True, slots=True)
class Moved:
    """The changed house; each light point with its words and its spot; what stays in the box."""

    ground: Ground
    points: tuple[tuple[str, Spot], ...]
    left: Spot


def to_the_luminaires(ground: Ground, spot: Spot) -> Moved | None:
    """All loads of the spot that hang at light points, moved there; None where there is none.

    Their gangs then start scenes only: line and load are joined in the box, so that the module has its line.
    """
    house = ground.house
    points: dict[str, list[WantedGang]] = {}
    for gang in spot.outputs if spot.in_box else ():
        place = house.loads[gang.load_id or ""].place
        if place and house.places[place].kind == "light_point":
            points.setdefault(place, []).append(gang)
    if not points:
        return None
    moved = {g.id: g for gangs in points.values() for g in gangs}
    changed = ground.with_box(spot.place, _idle(house.boxes[spot.place], set(moved)))
    left = replace(
        spot,
        gangs=tuple(
            WantedGang(g.id, Duty.SCENE_ONLY, None, None, dimmed=False) if g.id in moved else g
            for g in spot.gangs
        ),
    )
    told = tuple(
        (
            _words(ground, place, gangs),
            at_place(changed, place, [g.load_id or "" for g in gangs], spot.protocols),
        )
        for place, gangs in points.items()
    )
    return Moved(changed, told, left)


def _idle(box: Box, gang_ids: set[str]) -> Box:
    gangs = dict(box.gangs)
    for number in (g.partition(".")[2] for g in gang_ids):
        gangs[number] = gangs[number].model_copy(update={"duty": Duty.SCENE_ONLY, "load": None})
    return box.model_copy(update={"gangs": gangs})


def _words(ground: Ground, place: str, gangs: list[WantedGang]) -> str:
    loads = ", ".join(f"{ground.house.loads[g.load_id or ''].name} ({g.load_id})" for g in gangs)
    which = ", ".join(g.id for g in gangs)
    start = "starts" if len(gangs) == 1 else "start"
    return (
        f"Put a module at the luminaire, {place}, for {loads}; {which} then {start} scenes only, with line "
        "and load joined in the box."
    )
