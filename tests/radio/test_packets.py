"""Frames and chances: shape of the curves and refused input."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.radio import g9959, ieee802154
from secondfix.radio.g9959 import Rate
from secondfix.radio.shadowing import chance, shadowing_margin_db
from secondfix.terms import RadioRegion


@given(st.floats(-20, 20), st.floats(0.01, 5), st.integers(1, 126))
def test_a_better_ratio_or_a_shorter_packet_never_fails_more(
    sinr_db: float, more: float, octets: int
) -> None:
    here = ieee802154.packet_error_rate(sinr_db=sinr_db, octets=octets)
    assert 0 <= here <= 1
    assert ieee802154.packet_error_rate(sinr_db=sinr_db + more, octets=octets) <= here + 1e-12
    assert ieee802154.packet_error_rate(sinr_db=sinr_db, octets=octets + 1) >= here - 1e-12


@given(st.floats(-60, 60), st.floats(0.1, 20))
def test_chance_and_margin_undo_each_other(margin_db: float, spread_db: float) -> None:
    found = chance(margin_db=margin_db, spread_db=spread_db)
    if 1e-6 < found < 1 - 1e-6:
        back = shadowing_margin_db(wanted_chance=found, spread_db=spread_db)
        assert back == pytest.approx(margin_db, abs=1e-6 * spread_db)


def test_no_margin_is_an_even_chance() -> None:
    assert chance(margin_db=0, spread_db=8) == 0.5


def test_every_radio_region_has_a_plan() -> None:
    assert set(g9959.PLANS) == set(RadioRegion)
    for plan in g9959.PLANS.values():
        assert all(860 < mhz < 930 for mhz in (*plan.fast_mhz, plan.slow_mhz or 868.4))


@pytest.mark.parametrize("octets", [-1, 128])
def test_a_packet_of_impossible_length_is_refused(octets: int) -> None:
    with pytest.raises(ValueError, match="octets"):
        ieee802154.airtime_us(psdu_octets=octets)
    with pytest.raises(ValueError, match="octets"):
        ieee802154.packet_error_rate(sinr_db=0, octets=octets)


@pytest.mark.parametrize("channel", [10, 27])
def test_a_channel_off_the_band_is_refused(channel: int) -> None:
    with pytest.raises(ValueError, match="11 to 26"):
        ieee802154.channel_mhz(channel)


def test_frames_of_impossible_length_or_plan_are_refused() -> None:
    with pytest.raises(ValueError, match="carries 0 to 54"):
        g9959.mpdu_octets(rate=Rate.R2, payload_octets=55)
    with pytest.raises(ValueError, match="10 to 64"):
        g9959.airtime_ms(rate=Rate.R1, frame_octets=65)
    with pytest.raises(ValueError, match="R3 only"):
        g9959.mpdu_octets(rate=Rate.R1, payload_octets=3, three_channels=True)


@pytest.mark.parametrize("spread_db", [0.0, -1.0])
def test_a_spread_of_nothing_is_refused(spread_db: float) -> None:
    with pytest.raises(ValueError, match="spread"):
        chance(margin_db=1, spread_db=spread_db)
    with pytest.raises(ValueError, match="spread"):
        shadowing_margin_db(wanted_chance=0.9, spread_db=spread_db)
