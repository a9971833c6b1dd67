"""What the draws leave open and what the model leaves open stand apart; when numbers are shown."""

from itertools import pairwise

import numpy as np
import pytest

from secondfix.radio import DeviceChance, Interference, Measured, Word, foresee, foreseen_as_json, reach
from tests.radio.foresight.test_cases import WEAK, row
from tests.radio.houses import assumed, rows_of


def test_more_draws_narrow_the_interval_of_the_draws_and_not_the_models() -> None:
    rows = rows_of(row(8))
    answer = reach(rows, WEAK)
    few, many = (
        next(iter(foresee(rows, WEAK, answer, draws=n).networks.values())).devices for n in (3392, 54272)
    )
    width = [np.mean([d.reached.high - d.reached.low for d in run]) for run in (few, many)]
    open_ = [np.mean([d.model_high - d.model_low for d in run]) for run in (few, many)]
    assert width[1] < width[0]
    assert open_[0] == pytest.approx(open_[1], rel=0.1)
    for d in many:
        assert d.model_low <= d.reached.share <= d.model_high
        assert d.reached.low <= d.reached.share <= d.reached.high
        assert d.any_gone.share <= d.reached.share


def test_who_is_farther_is_reached_less_and_doubted_more() -> None:
    rows = rows_of(row(8))
    (network,) = foresee(rows, WEAK, reach(rows, WEAK), draws=2000).networks.values()
    shares = {d.id: d.reached.share for d in network.devices}
    for near, far in pairwise([f"D{n}" for n in range(1, 8)]):
        assert shares[far] <= shares[near] + 0.02
    assert network.words["D0"] is Word.LIKELY
    assert network.words["D7"] is not Word.LIKELY


def test_numbers_stand_in_the_answer_only_when_asked_for_or_five_links_are_measured() -> None:
    rows = rows_of(row(8))
    answer = reach(rows, WEAK)

    def told(count: int, *, numbers: bool = False) -> list[object]:
        measured = [Measured(f"D{n}", f"D{n + 1}", -60.0) for n in range(count)]
        foreseen = foresee(rows, WEAK, answer, measured=measured, draws=200)
        assert foreseen.measured == count
        plain = foreseen_as_json(foreseen, numbers=numbers)
        (network,) = plain["networks"]  # type: ignore[misc]  # plain JSON values
        return [d["chance"] for d in network["devices"]] + [c["gained"] for c in network["cases"]]

    assert not any(told(4))
    assert all(value is not None for value in told(5))
    assert all(value is not None for value in told(0, numbers=True))


def test_measured_links_that_are_good_raise_who_hangs_behind_them() -> None:
    rows = rows_of(row(8))
    answer = reach(rows, WEAK)
    measured = [Measured(f"D{n}", f"D{n + 1}", -48.0) for n in range(7)]
    before, after = (
        {d.id: d for d in next(iter(foresee(rows, WEAK, answer, measured=m).networks.values())).devices}
        for m in ((), measured)
    )
    assert after["D7"].reached.share > before["D7"].reached.share + 0.05
    assert after["D7"].model_high - after["D7"].model_low < before["D7"].model_high - before["D7"].model_low


def test_a_source_on_the_channel_most_of_the_time_lowers_every_chance_and_a_rare_one_hardly() -> None:
    rows = rows_of(row(8))
    answer = reach(rows, WEAK)

    def mean(duty: float | None) -> float:
        heard = None
        if duty is not None:

            def heard(_: str, stations: object) -> Interference:
                count = len(stations)  # type: ignore[arg-type]  # a sequence of stations
                return Interference(np.full((count, 1), -80.0), np.array([duty]))

        (network,) = foresee(rows, WEAK, answer, heard=heard, draws=1000).networks.values()
        return float(np.mean([d.reached.share for d in network.devices]))

    quiet = mean(None)
    assert mean(0.05) == pytest.approx(quiet, abs=0.01)
    assert mean(0.9) < quiet - 0.1


def test_slower_rates_of_a_region_widen_what_the_model_leaves_open_and_no_chance() -> None:
    weaker = assumed(radio_longest_link_m=12, radio_spread_db=8, radio_fading_db=40, radio_house_offset_db=10)

    def asked(region: str) -> tuple[DeviceChance, ...]:
        rows = rows_of({**row(6, protocol="zwave"), "radio_region": region})
        (network,) = foresee(rows, weaker, reach(rows, weaker), draws=1000).networks.values()
        return network.devices

    with_slow, without = asked("eu"), asked("kr")  # 868 and 921 MHz: 0.5 dB apart
    assert np.mean([d.model_high for d in with_slow]) > np.mean([d.model_high for d in without]) + 0.05
    for one, other in zip(with_slow, without, strict=True):
        assert one.reached.share == pytest.approx(other.reached.share, abs=0.06)
