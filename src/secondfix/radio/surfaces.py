"""What a sight line may pass: walls, doors, windows, floors, each with its lightest and heaviest reading."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from secondfix.assumptions import Assumptions
from secondfix.findings import Look
from secondfix.house import Fact, House, Opening, Storey, Wall, settled
from secondfix.house import Layer as HouseLayer
from secondfix.radio.slab import Layer
from secondfix.terms import LayerMaterial

_WALL_MOST, _LEAF_MOST = "radio_wall_most_db", "radio_leaf_most_db"
_THICK, _FLOOR_THICK = "radio_wall_thickness_mm", "radio_floor_thickness_mm"
NOT_DRAWN_DB = 200.0  # more than any link can pay: what is not drawn may be anything
STUD_WALL = (
    Layer(LayerMaterial.PLASTERBOARD, 12.5),
    Layer(LayerMaterial.AIR, 75.0),
    Layer(LayerMaterial.PLASTERBOARD, 12.5),
)
JOISTED_FLOOR = (
    Layer(LayerMaterial.CHIPBOARD, 22.0),
    Layer(LayerMaterial.AIR, 200.0),
    Layer(LayerMaterial.PLASTERBOARD, 12.5),
)
PANE = (Layer(LayerMaterial.GLASS, 4.0),)


@dataclass(frozen=True, slots=True)
class Reading:
    """One reading of a surface: its layers, the most it may take, and a fixed loss beside them, in dB."""

    layers: tuple[Layer, ...]
    most_db: float
    fixed_db: float = 0.0


@dataclass(frozen=True, slots=True)
class Surface:
    """One surface: its lightest, assumed and heaviest reading, and the look that would settle it.

    ``look`` is None where the survey says what it is made of; else the assumed reading is the heaviest.
    ``assumptions`` are those that its readings lean on; ``level`` tells a floor from what stands upright.
    """

    id: str
    words: str
    readings: tuple[Reading, Reading, Reading]
    look: Look | None = None
    assumptions: tuple[str, ...] = ()
    level: bool = False


def layers_in_words(layers: tuple[Layer, ...]) -> str:
    """The layers as people say them: '12 mm plasterboard + 100 mm brick'."""
    return " + ".join(f"{s.thickness_mm:g} mm {s.material.value.replace('_', ' ')}" for s in layers)


def wall_surface(wall_id: str, wall: Wall, assumptions: Assumptions) -> Surface:
    """A wall: its layers where the survey has them, else anything from a stud wall to solid concrete.

    The heaviest reading of an unknown wall is concrete of its thickness (of the assumption's high end
    where that is not known either): engineering judgement. Metal, plywood or foil inside an unknown
    wall may be heavier still.
    """
    most = assumptions.span(_WALL_MOST)
    layers = _known_layers(wall.layers)
    if layers:
        words = f"wall {wall_id}: {layers_in_words(layers)}"
        return Surface(wall_id, words, _alike(layers, most), assumptions=(_WALL_MOST,))
    thick = wall.thickness_mm or assumptions.span(_THICK)[2]
    solid = (Layer(LayerMaterial.CONCRETE, float(thick)),)
    return Surface(
        wall_id,
        f"wall {wall_id}: material not known",
        _between(STUD_WALL, solid, most),
        Look(wall_id, "layers", f"what wall {wall_id} is made of, and how thick"),
        (_WALL_MOST,) if wall.thickness_mm else (_WALL_MOST, _THICK),
    )


def opening_surface(opening_id: str, opening: Opening, assumptions: Assumptions, *, door: bool) -> Surface:
    """A door or window. A door's lightest reading is none: it may stand open.

    An unknown leaf may take as much as the assumption's high end, which also caps a known one.
    """
    most = assumptions.span(_LEAF_MOST)
    layers = _known_layers(opening.leaf)
    kind = "door" if door else "window"
    if layers:
        light, middle, heavy = _alike(layers, most)
        words = f"{kind} {opening_id}: {layers_in_words(layers)}"
        readings = (Reading((), 0.0) if door else light, middle, heavy)
        return Surface(opening_id, words, readings, assumptions=(_LEAF_MOST,))
    anything = Reading((), most[2], float(most[2]))
    return Surface(
        opening_id,
        f"{kind} {opening_id}: leaf not known",
        (Reading((), 0.0) if door else Reading(PANE, most[0]), anything, anything),
        Look(opening_id, "leaf", f"what the leaf of {kind} {opening_id} is made of"),
        (_LEAF_MOST,),
    )


def floor_surface(storeys: Mapping[str, Storey], assumptions: Assumptions) -> Surface:
    """The floor below the storeys of one level (more than one: two wings, either may be passed)."""
    most = assumptions.span(_WALL_MOST)
    known = [_known_layers(storey.floor) for storey in storeys.values()]
    first = next(iter(storeys))
    if all(known) and len(set(known)) == 1:
        words = f"floor of {first}: {layers_in_words(known[0])}"
        return Surface(first, words, _alike(known[0], most), assumptions=(_WALL_MOST,), level=True)
    thick = assumptions.span(_FLOOR_THICK)[2]
    readings = _between(JOISTED_FLOOR, (Layer(LayerMaterial.CONCRETE, float(thick)),), most)
    blank = next((s for s, layers in zip(storeys, known, strict=True) if not layers), first)
    look = Look(blank, "floor", f"what the floor of storey {blank} is made of, and how thick")
    words = f"floor of {blank}: layers not known"
    return Surface(blank, words, readings, look, (_WALL_MOST, _FLOOR_THICK), level=True)


def missing_walls(storey_id: str) -> Surface:
    """Stands for all walls of a level on which none is drawn: nothing at best, no link at worst."""
    words = f"the walls of storey {storey_id}: where they stand, how thick, of what"
    return _unseen(
        storey_id, f"walls of {storey_id}: not drawn", NOT_DRAWN_DB, Look(storey_id, "walls", words)
    )


def missing_partition(storey_id: str, assumptions: Assumptions) -> Surface:
    """Stands for a wall between two rooms where the sight line meets none: open, or not drawn."""
    thick = assumptions.span(_THICK)[2]
    solid = (Layer(LayerMaterial.CONCRETE, float(thick)),)
    light, middle, heavy = _between((), solid, assumptions.span(_WALL_MOST))
    words = f"whether rooms of storey {storey_id} that no drawn wall parts are open to each other"
    return Surface(
        storey_id,
        f"between two rooms of {storey_id}: no wall drawn",
        (light, middle, heavy),
        Look(storey_id, "walls", words),
        (_WALL_MOST, _THICK),
    )


def own_wall(place: str, wall: Surface) -> Surface:
    """Stands for the wall that a device sits in where its side is not known: passed or not."""
    words = f"the outline of the room of {place}, to tell on which side of its wall it stands"
    readings = (Reading((), 0.0), wall.readings[2], wall.readings[2])
    return Surface(
        place,
        f"own wall of {place}: side not known",
        readings,
        Look(place, "room.outline_mm", words),
        wall.assumptions,
    )


def openings_of(house: House) -> Iterator[tuple[str, Opening, bool]]:
    """Every door, then every window, with its id and whether it is a door."""
    yield from ((key, opening, True) for key, opening in house.doors.items())
    yield from ((key, opening, False) for key, opening in house.windows.items())


def _known_layers(fact: Fact[tuple[HouseLayer, ...]] | None) -> tuple[Layer, ...]:
    return tuple(Layer(s.material, float(s.thickness_mm)) for s in settled(fact) or ())


def _alike(layers: tuple[Layer, ...], most: tuple[int, int, int]) -> tuple[Reading, Reading, Reading]:
    low, value, high = (Reading(layers, float(cap)) for cap in most)
    return low, value, high


def _between(
    light: tuple[Layer, ...], heavy: tuple[Layer, ...], most: tuple[int, int, int]
) -> tuple[Reading, Reading, Reading]:
    top = Reading(heavy, float(most[2]))
    return Reading(light, float(most[0])), top, top


def _unseen(surface_id: str, words: str, most_db: float, look: Look) -> Surface:
    worst = Reading((), most_db, most_db)
    return Surface(surface_id, words, (Reading((), 0.0), worst, worst), look)
