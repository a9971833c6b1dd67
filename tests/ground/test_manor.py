"""The bench's manors are houses like any other, varied, and the same again for a seed."""

import json

import pytest

from bench.manor import manor
from secondfix.files import shipped_models
from secondfix.house import House, read_house


def read(places: int, seed: int) -> House:
    data = json.dumps(manor(places=places, seed=seed)).encode()
    house = read_house(data, where="manor", models=shipped_models())
    assert isinstance(house, House), "\n".join(map(str, house))
    return house


@pytest.mark.parametrize("places", [12, 60, 150, 400])
@pytest.mark.parametrize("seed", range(3))
def test_a_manor_is_a_house_without_faults_of_just_that_size(places: int, seed: int) -> None:
    house = read(places, seed)
    assert len(house.boxes) + len(house.places) == places
    assert {n.protocol.value for n in house.networks.values()} == {"zigbee", "zwave"}
    assert 2 <= len(house.storeys) <= 4


@pytest.mark.deep
@pytest.mark.parametrize("seed", range(100, 400))
def test_manors_of_any_size_are_houses_without_faults(seed: int) -> None:
    places = 12 + seed * 7919 % 500
    house = read(places, seed)
    assert len(house.boxes) + len(house.places) == places


def test_a_manor_is_the_same_again_and_another_for_another_seed() -> None:
    assert manor(places=40, seed=5) == manor(places=40, seed=5)
    assert manor(places=40, seed=5) != manor(places=40, seed=6)


def test_a_large_manor_holds_something_of_everything() -> None:
    house = read(400, 1)
    models = {d.model for d in house.devices.values()}
    forms = {house.models[key].form.value for key in models if key}
    assert {"switch", "plug_in", "battery_button", "ceiling_module", "luminaire_module"} <= forms
    assert None in models, "a device of an unknown make"
    shells = {box.shell.value.value if box.shell else None for box in house.boxes.values()}
    assert shells == {"plastic", "metal", None}
    assert {bool(wall.layers) for wall in house.walls.values()} == {True, False}
    assert {bool(box.position) for box in house.boxes.values()} == {True, False}
    areas = sorted(
        (r.outline_mm[2][0] - r.outline_mm[0][0]) * (r.outline_mm[2][1] - r.outline_mm[0][1])
        for r in house.rooms.values()
        if r.outline_mm
    )
    assert areas[-1] > 3 * areas[0]
    assert len(house.circuits) > 10


def test_too_small_a_manor_is_refused() -> None:
    with pytest.raises(ValueError, match="12 places or more"):
        manor(places=11, seed=0)
