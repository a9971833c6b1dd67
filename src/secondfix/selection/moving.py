"""Loads moved from a gang to a module at their own light point."""

from dataclasses import dataclass, replace

from secondfix.house import Duty
from secondfix.selection.choice import Spot, WantedGang
from secondfix.selection.ground import SCENES_ONLY, Ground
from secondfix.selection.spots import at_place


@dataclass(frozen=True, slots=True)
class Moved:
    """The changed house; each light point with its words and its spot; what stays in the box."""

    ground: Ground
    points: tuple[tuple[str, Spot], ...]
    left: Spot


def to_the_luminaires(ground: Ground, spot: Spot) -> Moved | None:
    """All loads of the spot that hang at light points, moved there; None where there is none.

    Their gangs, and those that extend them, then start scenes only: line and load are joined in the box, so
    that the module has its line.
    """
    house = ground.house
    points: dict[str, list[WantedGang]] = {}
    for gang in spot.outputs if spot.in_box else ():
        place = house.loads[gang.load_id or ""].place
        if place and house.places[place].kind == "light_point":
            points.setdefault(place, []).append(gang)
    if not points:
        return None
    idle = ground.with_extensions(g.id for gangs in points.values() for g in gangs)
    changed = ground.with_gangs(dict.fromkeys(idle, SCENES_ONLY))
    left = replace(spot, gangs=tuple(_scenes_only(g) if g.id in idle else g for g in spot.gangs))
    told = tuple(
        (_words(ground, place, gangs), _at(changed, place, gangs, spot)) for place, gangs in points.items()
    )
    return Moved(changed, told, left)


def _scenes_only(gang: WantedGang) -> WantedGang:
    return WantedGang(gang.id, Duty.SCENE_ONLY, None, None, dimmed=False)


def _at(ground: Ground, place: str, gangs: list[WantedGang], spot: Spot) -> Spot:
    return at_place(ground, place, tuple(g.load_id or "" for g in gangs), spot.protocols)


def _words(ground: Ground, place: str, gangs: list[WantedGang]) -> str:
    loads = ", ".join(f"{ground.house.loads[g.load_id or ''].name} ({g.load_id})" for g in gangs)
    idle = ground.with_extensions(g.id for g in gangs)
    which, start = ", ".join(idle), "starts" if len(idle) == 1 else "start"
    return (
        f"Put a module at the luminaire, {place}, for {loads}; {which} then {start} scenes only, with line "
        "and load joined in the box."
    )
