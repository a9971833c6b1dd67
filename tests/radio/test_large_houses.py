"""Houses of 150 and 400 places from a seed: every device is answered for, whole and in every case."""

import json
from functools import cache

import numpy as np
import pytest

from bench.manor import manor
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.radio import CaseKind, Reach, Word, foresee, reach
from secondfix.terms import Protocol

DEFAULTS = default_assumptions()
SIZES = [(150, 2), (400, 7)]


@cache
def asked(places: int, seed: int) -> tuple[Schedule, Reach]:
    data = json.dumps(manor(places=places, seed=seed)).encode()
    house = read_house(data, where="manor", models=shipped_models())
    assert isinstance(house, House), house
    rows = schedule(house, house.models)
    return rows, reach(rows, DEFAULTS)


@pytest.mark.parametrize(("places", "seed"), SIZES)
def test_every_device_has_a_word_and_every_unknown_its_looks(places: int, seed: int) -> None:
    rows, answer = asked(places, seed)
    assert [d.id for d in answer.devices] == list(rows.house.devices)
    words = {d.word for d in answer.devices}
    assert {Word.LIKELY, Word.NOT_KNOWN} <= words
    for device in answer.devices:
        assert bool(device.needs) == (device.word is Word.NOT_KNOWN)
        if device.word is Word.LIKELY:
            most = 5 if rows.house.networks[str(device.network)].protocol is Protocol.ZWAVE else 15
            assert 1 <= device.hops <= most
            assert len(device.route) == device.hops - 1


@pytest.mark.parametrize(("places", "seed"), SIZES)
def test_no_route_runs_over_a_device_that_does_not_repeat(places: int, seed: int) -> None:
    answer = asked(places, seed)[1]
    for links in answer.networks.values():
        silent = {s.id for s in links.stations[1:] if not s.may_repeat(0)}
        assert silent
        carried = {one for d in answer.devices for one in (*d.route, *d.hangs_on)}
        assert not carried & silent


@pytest.mark.parametrize(("places", "seed"), SIZES)
def test_every_case_of_a_large_house_is_foreseen(places: int, seed: int) -> None:
    rows, answer = asked(places, seed)
    foreseen = foresee(rows, DEFAULTS, answer, draws=640, seed=3, moves=("P1", "P2"))
    for key, network in foreseen.networks.items():
        told = {d.id for d in network.devices} | set(network.not_known)
        assert told == {d.id for d in answer.devices if d.network == key}
        shares = np.array([d.reached.share for d in network.devices])
        assert np.all((shares >= 0) & (shares <= 1))
        assert np.median(shares) > 0.9, "most devices of a manor are reached"
        for d in network.devices:
            assert d.model_low <= d.reached.share <= d.model_high
            assert d.any_gone.share <= d.reached.share
        kinds = {case.kind for case in network.cases}
        assert {CaseKind.REPEATER_GONE, CaseKind.TRIPPED, CaseKind.CONTROLLER_MOVED} <= kinds
        for case in network.of_kind(CaseKind.TRIPPED):
            assert set(case.gone) <= set(rows.house.devices)
            assert not set(case.falls) & set(case.rises)
