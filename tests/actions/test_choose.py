"""Choosing a model where `select` says it fits: the edit is one that the document takes."""

from functools import cache
from pathlib import Path

import pytest

from secondfix.actions.choose import choose
from secondfix.actions.select import select
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, edited, read_house
from secondfix.selection import PlaceChoice
from secondfix.terms import Protocol

TREE = Path(__file__).parents[2]
HOUSES = ("demo/house.json", "demo/nec-house.json")


@cache
def choices_of(name: str) -> tuple[House, tuple[PlaceChoice, ...]]:
    house = read_house((TREE / name).read_bytes(), where=name, models=shipped_models())
    assert isinstance(house, House)
    return house, select(house, models=shipped_models(), assumptions=default_assumptions())


@pytest.mark.parametrize("name", HOUSES)
def test_whatever_fits_or_may_fit_is_an_edit_that_stands_or_names_what_is_in_its_way(name: str) -> None:
    house, choices = choices_of(name)
    chosen = 0
    for choice in choices:
        for one in (*choice.fits[:2], *choice.doubts[:2]):
            model = {**shipped_models(), **house.models}[one.model]
            device_id = choice.spot.device_id or "D99"
            changes = choose(house, choice.spot, model, set_to=one.set_to, device_id=device_id)
            made = edited(house, changes, models=shipped_models())
            if isinstance(made, list):  # gangs left to scenes, where a unit without a radio stands
                assert choice.spot.instead_of
                assert ["an extension unit has no output" in f.expected for f in made] == [True]
                continue
            assert made.devices[device_id].model == one.model
            assert made.devices[device_id].after_power_loss == one.set_to
            chosen += 1
    assert chosen > 20


def test_a_module_at_the_luminaire_leaves_the_gangs_to_scenes() -> None:
    house, choices = choices_of(HOUSES[0])
    choice = next(c for c in choices if c.spot.instead_of and (c.fits or c.doubts))
    one = (*choice.fits, *choice.doubts)[0]
    changes = choose(house, choice.spot, shipped_models()[one.model], set_to=one.set_to, device_id="D99")
    made = edited(house, changes, models=shipped_models())
    assert isinstance(made, House)
    for gang_id in choice.spot.instead_of:
        box_id, _, number = gang_id.partition(".")
        assert made.boxes[box_id].gangs[number].duty == "scene_only"
    assert set(made.devices["D99"].outputs.values()) == {g.load_id for g in choice.spot.gangs}


@pytest.mark.parametrize("protocol", sorted(Protocol))
def test_a_new_device_goes_to_the_only_network_of_its_protocol(protocol: Protocol) -> None:
    house, _ = choices_of(HOUSES[0])
    found = select(house, models=shipped_models(), assumptions=default_assumptions(), protocol=protocol)
    speaking = [n for n, network in house.networks.items() if network.protocol is protocol]
    for choice in found:
        for one in choice.fits[:1]:
            model = shipped_models()[one.model]
            device_id = choice.spot.device_id or "D99"
            changes = choose(house, choice.spot, model, set_to=one.set_to, device_id=device_id)
            network = next(c.value for c in changes if c.path.endswith(".network"))
            if model.protocol is None:
                assert network is None
            elif len(speaking) == 1:
                assert network == speaking[0]
