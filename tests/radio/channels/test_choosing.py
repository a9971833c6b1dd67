"""Which channel, and by how much: the three answers, and what the figures must do."""

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from secondfix.assumptions import Assumptions
from secondfix.findings import Outcome, Severity
from secondfix.house import Schedule
from secondfix.radio import (
    CHANNEL,
    Channels,
    Choice,
    NetworkChannels,
    Sends,
    Share,
    Transmitter,
    channels_of,
    cost_words,
    foresee,
    interference_of,
    reach,
)
from secondfix.radio.channels.overlap import MESH_CHANNELS
from tests.radio.houses import assumed, far, row_of_rooms, rows_of

RULE = "radio.channel"
SURE = {
    "air_heard_db": 0, "air_duty_pct": 10, "air_adjacent_db": 25, "air_alternate_db": 40,
    "air_better_channel_pct": 5, "radio_spread_db": 8, "radio_fading_db": 10, "radio_plastic_box_db": 3,
}  # fmt: skip


def plain(channel: int | None = 15, count: int = 5, protocol: str = "zigbee") -> dict[str, Any]:
    house = far(row_of_rooms(count, protocol=protocol), power_dbm=0)
    if channel is not None:
        house["networks"]["N1"]["channel"] = channel
    return house


def wifi(channel: int, level_dbm: int = -50, duty: int | None = 300, place: str | None = None) -> Transmitter:
    return Transmitter(Sends.WIFI, channel, 20, level_dbm, duty, place)


def mesh(channel: int, level_dbm: int = -50, duty: int = 200) -> Transmitter:
    return Transmitter(Sends.MESH, channel, 2, level_dbm, duty)


def asked(
    rows: Schedule, *heard: Transmitter, assumptions: Assumptions | None = None
) -> tuple[Channels, NetworkChannels]:
    settled = assumptions or assumed()
    answer = channels_of(rows, settled, reach(rows, settled), heard)
    return answer, answer.networks["N1"]


def test_beside_a_loud_one_on_its_channel_another_is_better_by_so_much() -> None:
    answer, one = asked(rows_of(plain(15)), wifi(3), wifi(1, -80, 10))
    assert (one.choice, one.in_use) == (Choice.CHANGE, 15)
    assert one.best is not None
    now, best = one.of(15), one.of(one.best)
    assert now is not None
    assert best is not None
    assert now.lost.assumed > 0.25
    assert best.lost.assumed < 0.05
    assert one.gain is not None
    assert one.gain.assumed == pytest.approx(now.lost.assumed - best.lost.assumed)
    (found,) = answer.findings
    assert (found.rule, found.outcome, found.severity) == (RULE, Outcome.FAILS, Severity.ADVICE)
    assert found.limit == f"channel {one.best}"
    assert set(found.assumptions) <= set(CHANNEL.leans_on)


def test_where_nobody_is_near_it_stays() -> None:
    answer, one = asked(rows_of(plain(20)), wifi(1, -90, 20), assumptions=assumed(**SURE))
    assert (one.choice, one.best) == (Choice.STAY, 20)
    assert answer.findings[0].outcome is Outcome.PASSES


def test_nobody_heard_cannot_be_told() -> None:
    answer, one = asked(rows_of(plain(15)))
    assert (one.choice, one.channels, one.best) == (Choice.CANNOT_TELL, (), None)
    assert [look.field for look in one.needs] == ["air_heard"]
    assert answer.assumptions == ()
    assert answer.findings[0].outcome is Outcome.CANNOT_TELL


def test_a_channel_that_is_not_stated_cannot_be_compared() -> None:
    _, one = asked(rows_of(plain(None)), wifi(3))
    assert (one.choice, one.gain) == (Choice.CANNOT_TELL, None)
    assert one.best is not None
    assert "is not stated" in one.words
    assert [look.field for look in one.needs] == ["channel"]


def test_z_wave_has_no_channel_to_choose() -> None:
    answer, one = asked(rows_of(plain(None, protocol="zwave")), wifi(3))
    assert (one.choice, answer.findings) == (Choice.NO_CHOICE, ())
    assert "no channel to choose" in one.words


def test_thread_is_asked_as_zigbee_is() -> None:
    _, one = asked(rows_of(plain(15, protocol="matter_thread")), wifi(3))
    assert one.choice is Choice.CHANGE


def test_a_controller_that_is_nowhere_cannot_be_told() -> None:
    lost = plain(15)
    del lost["networks"]["N1"]["controller_place"]
    _, one = asked(rows_of(lost), wifi(3))
    assert one.choice is Choice.CANNOT_TELL
    assert "controller_place" in [look.field for look in one.needs]
    assert set(one.not_known) == {f"D{n}" for n in range(5)}


def test_a_network_without_devices_cannot_be_told() -> None:
    empty = plain(15)
    empty["devices"] = {}
    _, one = asked(rows_of(empty), wifi(3))
    assert one.choice is Choice.CANNOT_TELL
    assert [look.field for look in one.needs] == ["devices"]


def test_what_hangs_on_an_unknown_share_of_time_cannot_be_told() -> None:
    _, one = asked(rows_of(plain(15)), wifi(3, -72, None), assumptions=assumed(radio_spread_db=8))
    assert one.gain is not None
    assert one.gain.low < 0.05 < one.gain.high
    assert one.choice is Choice.CANNOT_TELL or one.gain.low >= 0


def test_a_neighbours_mesh_costs_its_own_channel_most() -> None:
    _, one = asked(rows_of(plain(20)), mesh(20), assumptions=assumed(**SURE))
    added = {c.channel: c.added.assumed for c in one.channels}
    assert max(added, key=lambda c: added[c]) == 20
    assert added[20] > added[21] >= added[22]
    assert [c.channel for c in one.channels if not c.clear] == [20]


def test_figures_stand_for_every_channel_and_device() -> None:
    _, one = asked(rows_of(plain(15)), wifi(6), wifi(11, -60))
    assert tuple(c.channel for c in one.channels) == MESH_CHANNELS
    for c in one.channels:
        assert set(c.devices) == set(one.quiet or ()) == {f"D{n}" for n in range(5)}
        assert c.worst == max(c.devices, key=lambda d: c.devices[d].assumed)
        assert c.lost.assumed == pytest.approx(sum(s.assumed for s in c.devices.values()) / 5)
        for share in (c.lost, c.added, *c.devices.values()):
            assert -1e-12 <= share.low <= share.assumed <= share.high <= 1


@settings(deadline=None, max_examples=15)
@given(
    heard=st.lists(
        st.builds(wifi, st.integers(1, 13), st.integers(-90, -40), st.sampled_from([0, 40, 500, None])),
        min_size=1,
        max_size=4,
    ),
    more=st.builds(wifi, st.integers(1, 13), st.integers(-90, -40), st.integers(0, 1000)),
)
def test_one_more_on_the_air_never_makes_a_channel_better(
    heard: list[Transmitter], more: Transmitter
) -> None:
    rows = rows_of(plain(15, count=3))
    _, before = asked(rows, *heard)
    _, after = asked(rows, *heard, more)
    for one, other in zip(before.channels, after.channels, strict=True):
        assert other.lost.assumed >= one.lost.assumed - 1e-9
    assert set(after.clear) <= set(before.clear)


@settings(deadline=None, max_examples=25)
@given(
    heard=st.lists(
        st.builds(wifi, st.integers(1, 13), st.integers(-95, -40), st.sampled_from([2, 40, 500, None])),
        min_size=1,
        max_size=3,
    ),
    sure=st.booleans(),
)
def test_stay_and_change_hold_over_the_whole_range(heard: list[Transmitter], sure: bool) -> None:
    settled = assumed(**SURE) if sure else assumed()
    _, one = asked(rows_of(plain(15, count=3)), *heard, assumptions=settled)
    now, best = one.of(15), one.of(one.best)
    assert now is not None
    assert best is not None
    least, enough = settled.span("air_better_channel_pct")[1:]
    ends = ("low", "assumed", "high")
    if one.choice is Choice.CHANGE:
        assert now.lost.assumed - best.lost.assumed >= least / 100
        assert all(getattr(now.lost, k) >= getattr(best.lost, k) - 0.001 for k in ends)
    elif one.choice is Choice.STAY:
        gains = [getattr(now.lost, k) - getattr(c.lost, k) for c in one.channels for k in ends]
        assert max(gains) < enough / 100
    else:
        assert len(one.needs) == 2


def test_heard_at_one_end_of_the_house_it_costs_the_devices_there() -> None:
    _, one = asked(rows_of(plain(15)), wifi(3, place="B4"), wifi(13, -95, 1, place="B0"))
    now = one.of(15)
    assert now is not None
    assert now.worst == "D4"
    assert now.devices["D4"].assumed > 0.2
    assert now.devices["D0"].assumed < 0.02


def test_a_device_in_a_box_hears_others_less_too() -> None:
    """What surrounds a device takes as much of the signal as of what disturbs it."""
    of = {
        db: asked(
            rows_of(plain(15, count=1)),
            wifi(3, -75),
            assumptions=assumed(**SURE | {"radio_plastic_box_db": db}),
        )[1]
        for db in (0, 6)
    }
    open_air, boxed = (one.of(15) for one in of.values())
    assert open_air is not None
    assert boxed is not None
    assert boxed.lost.assumed == pytest.approx(open_air.lost.assumed, abs=0.05)


def test_what_is_foreseen_is_worse_on_a_channel_that_others_fill() -> None:
    shares = []
    for channel in (15, 26):
        rows, settled = rows_of(plain(channel)), assumed()
        heard = interference_of(rows.house, settled, [wifi(3, -45, 900)])
        foreseen = foresee(rows, settled, reach(rows, settled), heard=heard, draws=640)
        shares.append(sum(d.reached.share for d in foreseen.networks["N1"].devices))
    assert shares[0] < shares[1] - 0.5


def test_nothing_is_sent_into_a_channel_that_is_not_stated_nor_into_z_wave() -> None:
    for house in (plain(None), plain(None, protocol="zwave")):
        rows = rows_of(house)
        stations = reach(rows, assumed()).networks["N1"].stations
        assert interference_of(rows.house, assumed(), [wifi(3)])("N1", stations) is None


@pytest.mark.parametrize(
    ("share", "words"),
    [
        (Share(0, 0.001, 0.005), "hardly any"),
        (Share(0, 0.001, 0.05), "hardly any (at worst some)"),
        (Share(0, 0.02, 0.09), "some"),
        (Share(0.3, 0.4, 0.5), "many"),
    ],
)
def test_shares_in_words(share: Share, words: str) -> None:
    assert cost_words(share) == words
