"""Slabs and whole links against a general ray tracer's frozen numbers.

Source: sionna/numbers.json, made by sionna/make_numbers.py with sionna-rt 2.2.0 (Apache-2.0), which
shares no code with ours; sionna/README.md tells how. Nothing of it is needed to run these tests.
"""

import json
import math
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from secondfix.assumptions import default_assumptions
from secondfix.house import House, read_house
from secondfix.radio import Paths, find_paths
from secondfix.radio.losses import path_losses_db
from secondfix.radio.openspace import free_space_loss_db
from secondfix.radio.slab import Layer, Polarisation, Wave, coherent_loss_db
from secondfix.radio.surfaces import Surface
from secondfix.terms import LayerMaterial
from tests.example_house import as_bytes, seen

NUMBERS: dict[str, Any] = json.loads(
    (Path(__file__).parent / "sionna" / "numbers.json").read_text(encoding="utf-8")
)
BANDS_MHZ = (868.4, 908.4, 2440.0)
# These returned no path: both sight lines pass within 10 mm of where two surfaces meet, and both return one
# when P6 stands 20 mm aside (tried when the numbers were made).
WITHOUT_A_PATH = {("P1", "P6"), ("P6", "P1"), ("P6", "P12"), ("P12", "P6")}


def fact(layer: list[Any]) -> dict[str, Any]:
    return seen([{"material": layer[0], "thickness_mm": layer[1]}])


def document() -> dict[str, Any]:
    """The ray tracer's scene as a house; all places of a storey in one room: no parting is unseen."""
    storeys, floors = NUMBERS["storeys_mm"], NUMBERS["floors"]
    return {
        "format": 1,
        "id": "0193e0a4-5c1f-7b26-8d90-4a6be1f3c752",
        "name": "Brackenfold, for the ray tracer",
        "storeys": {
            key: {"name": key, "level_mm": level, "height_mm": 2600}
            | ({"floor": fact(floors[key]["layer"])} if key in floors else {})
            for key, level in storeys.items()
        },
        "rooms": {f"R{key}": {"name": key, "storey": key} for key in storeys},
        "walls": {
            key: {name: wall[name] for name in ("storey", "from_mm", "to_mm")}
            | {"thickness_mm": wall["layer"][1], "layers": fact(wall["layer"])}
            for key, wall in NUMBERS["walls"].items()
        },
        "doors": {
            key: {name: o[name] for name in ("wall", "along_mm", "width_mm", "sill_mm", "height_mm")}
            | {"leaf": fact(o["layer"])}
            for key, o in NUMBERS["openings"].items()
        },
        "boxes": {},
        "places": {
            key: {
                "kind": "controller_spot",
                "name": key,
                "room": f"R{storey}",
                "position": {"x_mm": x, "y_mm": y, "height_mm": height},
            }
            for key, (storey, x, y, height) in NUMBERS["devices"].items()
        },
    }


@cache
def scene() -> tuple[House, Paths]:
    house = read_house(as_bytes(document()), where="scene.json", models={})
    assert isinstance(house, House), house
    return house, find_paths(house, default_assumptions(), house.places)


def at_mm(place: str) -> Any:
    storey, x, y, height = NUMBERS["devices"][place]
    return np.array([x, y, NUMBERS["storeys_mm"][storey] + height], np.float64)


def normal(house: House, surface: Surface) -> Any:
    """The surface's normal, of any length."""
    if surface.id in house.storeys:
        return np.array([0.0, 0.0, 1.0])
    wall = house.walls[house.doors[surface.id].wall if surface.id in house.doors else surface.id]
    (x1, y1), (x2, y2) = wall.from_mm, wall.to_mm
    return np.array([y1 - y2, x2 - x1, 0.0])


def across(sight: Any, face: Any) -> float:
    """How much of an upright antenna's power has its field across the plane of incidence (TE), 0 to 1."""
    field = np.array([0.0, 0.0, 1.0]) - sight * sight[2] / (sight @ sight)
    te = np.cross(sight, face)
    return float((field @ te) ** 2 / (field @ field) / (te @ te))


def straight_on_db(pair: int, mhz: float) -> float:
    """Free space and every surface that `find_paths` tells, coherent, in the polarisation that meets it."""
    house, paths = scene()
    a, b = (paths.sites.places[ends[pair]] for ends in (paths.first, paths.second))
    out = free_space_loss_db(distance_m=float(paths.distance_m[pair]), frequency_mhz=mhz)
    for n in np.flatnonzero(paths.at_pair == pair):
        surface = paths.surfaces[paths.crossed[n]]
        angle = math.degrees(math.acos(min(float(paths.cosine[n]), 1.0)))
        te, tm = (
            10 ** (-coherent_loss_db(surface.readings[1].layers, Wave(mhz, angle, one)) / 20)
            for one in (Polarisation.TE, Polarisation.TM)
        )
        share = across(at_mm(b) - at_mm(a), normal(house, surface))
        out -= 20 * math.log10(share * te + (1 - share) * tm)
    return out


def pairs() -> Iterator[tuple[int, str, str]]:
    paths = scene()[1]
    for pair in np.flatnonzero(paths.first != paths.second).tolist():
        a, b = (paths.sites.places[ends[pair]] for ends in (paths.first, paths.second))
        yield pair, a, b
        yield pair, b, a


def compared(mhz: float) -> list[tuple[int, str, str, float]]:
    """Directed links that returned a path: our pair, both ends, the ray tracer's loss in dB."""
    said = NUMBERS[f"links_{mhz:g}"]
    return [(pair, a, b, said[a][b]) for pair, a, b in pairs() if (a, b) not in WITHOUT_A_PATH]


@pytest.mark.parametrize("name", NUMBERS["slabs"])
def test_slabs_at_three_frequencies_and_angles(name: str) -> None:
    # Asked for: within 0.1 dB. It computes in single precision and the file keeps four decimals, so the
    # difference is held to a hundredth of that.
    material, thickness = name.split()
    layers = [Layer(LayerMaterial(material), float(thickness))]
    for mhz, angle, te_db, tm_db in NUMBERS["slabs"][name]:
        for one, expected in ((Polarisation.TE, te_db), (Polarisation.TM, tm_db)):
            assert coherent_loss_db(layers, Wave(mhz, angle, one)) == pytest.approx(expected, abs=0.001)


@pytest.mark.parametrize("mhz", BANDS_MHZ)
def test_only_the_links_named_above_returned_no_path(mhz: float) -> None:
    said = NUMBERS[f"links_{mhz:g}"]
    assert {(a, b) for a, to in said.items() for b, loss in to.items() if loss is None} == WITHOUT_A_PATH
    assert len(compared(mhz)) == 128


@pytest.mark.parametrize("mhz", BANDS_MHZ)
def test_whole_links_going_straight_on(mhz: float) -> None:
    # Asked for: within 1 dB. What is left (0.23 dB at most) is that TE and TM parts also differ in phase,
    # which losses alone do not tell; held to 0.3 dB.
    for pair, a, b, expected in compared(mhz):
        assert straight_on_db(pair, mhz) == pytest.approx(expected, abs=0.3), (a, b)


@pytest.mark.parametrize("mhz", BANDS_MHZ)
def test_what_we_plan_with_is_near_it_on_a_storey_and_heavier_through_a_floor(mhz: float) -> None:
    # `path_losses_db` averages the fringes and takes TE at every surface. On one storey walls lie on either
    # side of their fringes' mean: within 3 dB, 0.6 dB on average. An upright antenna meets a floor as TM,
    # which loses less: 4 to 5 dB too heavy on average, never lighter. Which is right for a switch, whose
    # antenna is seldom upright, no source says; see docs/decisions/loss-model.md.
    planned = path_losses_db(scene()[1], [mhz])[1]
    over: dict[bool, list[float]] = {True: [], False: []}
    for pair, a, b, expected in compared(mhz):
        one_storey = NUMBERS["devices"][a][0] == NUMBERS["devices"][b][0]
        over[one_storey].append(float(planned[pair]) - expected)
    assert max(map(abs, over[True])) < 3
    assert abs(np.mean(over[True])) < 0.6
    assert min(over[False]) > 0
    assert 4 < np.mean(over[False]) < 5.5
