"""How long a scene takes, one by one and as a group, and when that is worth a word."""

from collections.abc import Mapping

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from secondfix.assumptions import Assumptions, Override, default_assumptions
from secondfix.findings import Finding, Outcome
from secondfix.radio import sending
from secondfix.scenes import Air, Group, SceneTime, Span, check, resolve, scene_times, time_words
from secondfix.scenes.wording import span_words
from secondfix.terms import RadioRegion
from tests.scenes.many import many
from tests.scenes.small import Plain, read, rule

_NAMES = ("scene_controller_ms", "scene_device_ms")
BARE = default_assumptions().overridden({n: Override(0) for n in _NAMES}, set_by="house")
SPENT = default_assumptions().overridden({n: Override(7) for n in _NAMES}, set_by="house")


def links(plain: Plain, count: int = 1) -> dict[str, int]:
    return dict.fromkeys(plain["devices"], count)


def timed(
    plain: Plain,
    assumptions: Assumptions = BARE,
    *,
    hops: Mapping[str, int] | None = None,
    region: RadioRegion | None = RadioRegion.EU,
) -> SceneTime:
    rows = read(plain)
    air = Air(sending(region), links(plain) if hops is None else hops)
    (time,) = scene_times(rows, resolve(rows), assumptions, air)
    return time


def one_by_one(plain: Plain, **more: int) -> float:
    found = timed(plain, hops=links(plain, more.get("count", 1))).one_by_one_ms
    assert found is not None
    return found.value


# Expected values are sums of published frame times, made by hand: IEEE 802.15.4-2006 6.3 and 7.5.1.4
# (secondary): mean back-off 1120, listening 128, turnaround 192, (6 + PSDU) × 32, 192, 352 µs. Whole
# microseconds, so 0.001 ms.
def test_one_zigbee_command_is_a_frame_of_48_and_an_answer_of_50_octets() -> None:
    assert one_by_one(many(1)) == pytest.approx(3.712 + 3.776, abs=0.001)  # 3.776: the table's row of 50
    assert one_by_one(many(6), count=3) == pytest.approx(6 * 3 * 7.488, abs=0.001)


def test_one_matter_command_is_98_octets_and_its_answer_106() -> None:
    wanted = 2 * (1.120 + 0.128 + 0.192 + 0.192 + 0.352) + (104 + 112) * 0.032
    assert one_by_one(many(1, protocol="matter_thread")) == pytest.approx(wanted, abs=0.001)


def test_one_zwave_command_at_100_kbit() -> None:
    # Source: ITU-T G.9959 airtime (secondary): (40 + 1 + 11 + 20) × 0.08, its acknowledgement 4.16, and
    # 1 ms between (from memory).
    wanted = (52 + 20) * 0.08 + (52 + 17) * 0.08 + 2 * (1 + 4.16)
    assert one_by_one(many(1, protocol="zwave")) == pytest.approx(wanted, abs=0.001)


def test_what_devices_and_the_controller_spend_is_added() -> None:
    found = timed(many(5), SPENT).one_by_one_ms
    assert found is not None
    assert found.value == pytest.approx(5 * (7.488 + 2 * 7) + 4 * 7, abs=0.001)


def test_a_device_without_a_route_counts_with_the_assumed_links() -> None:
    found = timed(many(1), hops={}).one_by_one_ms
    assert found is not None
    assert (found.low, found.value, found.high) == pytest.approx((7.488, 2 * 7.488, 5 * 7.488), abs=0.001)


def test_a_zigbee_group_is_one_frame_and_a_wait_at_each_repeater() -> None:
    # A frame of 49 octets to many: 1120 + 128 + 192 + 55 × 32 = 3.2 ms; a repeater waits 0 to 64 ms.
    near = timed(many(20)).as_group_ms
    far = timed(many(20), hops=links(many(20), 3)).as_group_ms
    assert near is not None
    assert far is not None
    assert (near.low, near.value, near.high) == pytest.approx((3.2, 3.2, 3.2), abs=0.001)
    assert (far.low, far.value, far.high) == pytest.approx((9.6, 9.6 + 64, 9.6 + 128), abs=0.001)


def test_each_thing_said_to_two_or_more_is_a_group_of_its_own() -> None:
    plain = many(5)
    plain["scenes"]["SC1"]["rules"] += [
        rule("on", load="L1"),
        rule("on", load="L2"),
        rule("on", level=30, load="L3"),
    ]
    (network,) = timed(plain).networks
    assert network.commands == 5
    # Two groups, one after the other, then D3 alone; its relay is sent 'on', so it joins the group of 'on'.
    assert network.as_group_ms is not None
    assert network.as_group_ms.value == pytest.approx(2 * 3.2, abs=0.001)
    plain["scenes"]["SC1"]["rules"][-1] = rule("on", load="L3")
    plain["scenes"]["SC1"]["rules"][1:3] = []
    (network,) = timed(plain).networks
    assert network.as_group_ms is not None
    assert network.as_group_ms.value == pytest.approx(3.2 + 7.488, abs=0.001)


def test_after_a_zwave_multicast_each_device_still_gets_its_own_command() -> None:
    time = timed(many(8, protocol="zwave"))
    (network,) = time.networks
    assert network.as_group_ms is not None
    assert network.as_group_ms.value > network.one_by_one_ms.value
    assert (network.saves, time.as_group_ms) == (False, None)
    assert time_words(time)[1] == "no gain"


@pytest.mark.parametrize(
    ("word", "group", "words"),
    [("unable", Group.NOT_TAKEN, "no gain"), ("mute", Group.NOT_STATED, "cannot tell")],
)
def test_a_group_asks_for_the_statement_of_every_device(word: str, group: Group, words: str) -> None:
    plain = many(4)
    plain["devices"]["D3"]["model"] = f"veltrane-zigbee-{word}@1"
    time = timed(plain)
    (network,) = time.networks
    assert (network.group, network.as_group_ms, network.devices) == (group, None, ("D3",))
    assert "D3" in time.why
    assert time_words(time)[1] == words


def test_a_device_without_model_leaves_its_group_open() -> None:
    plain = many(3)
    del plain["devices"]["D2"]["model"]
    (network,) = timed(plain).networks
    assert (network.group, network.looks[0].field) == (Group.NOT_STATED, "model")


def test_networks_work_side_by_side_and_the_slowest_counts() -> None:
    plain = many(6)
    plain["networks"]["N2"] = {"name": "Lower net", "protocol": "zigbee"}
    for n in (5, 6):
        plain["devices"][f"D{n}"]["network"] = "N2"
    time = timed(plain)
    assert [n.commands for n in time.networks] == [4, 2]
    assert time.one_by_one_ms == time.networks[0].one_by_one_ms


def test_a_device_on_no_network_has_no_time() -> None:
    plain = many(3)
    del plain["devices"]["D2"]["network"]
    time = timed(plain)
    assert (time.one_by_one_ms, time.as_group_ms, time.loose) == (None, None, ("D2",))
    assert time_words(time) == ("cannot tell", "cannot tell")
    assert time.why == "D2 is on no network yet."


def test_a_scene_without_commands_takes_no_time() -> None:
    plain = many(1)
    plain["scenes"]["SC1"]["rules"] = []
    time = timed(plain)
    assert (time.one_by_one_ms, time.as_group_ms, time.why) == (Span(0, 0, 0), None, "It sends no command.")


@given(st.integers(1, 30), st.integers(1, 5), st.sampled_from(["zigbee", "zwave", "matter_thread"]))
def test_more_commands_and_more_links_never_take_less(count: int, hops: int, protocol: str) -> None:
    def at(n: int, h: int) -> Span:
        plain = many(n, protocol=protocol)
        found = timed(plain, default_assumptions(), hops=links(plain, h), region=None).one_by_one_ms
        assert found is not None
        return found

    here, more, farther = at(count, hops), at(count + 1, hops), at(count, hops + 1)
    assert here.low <= here.value <= here.high
    assert here.low < more.low < more.value < more.high
    assert here.low < farther.low
    assert here.value < farther.value
    assert here.high < farther.high


def asked(plain: Plain, routes: Mapping[str, int]) -> list[Finding]:
    found = check(read(plain), default_assumptions(), Air(sending(RadioRegion.EU), routes))
    return [f for f in found if f.rule == "scenes.time"]


def slow(plain: Plain, hops: int = 2) -> Finding:
    (one,) = asked(plain, links(plain, hops))
    return one


def test_a_slow_scene_is_advised_to_use_a_group() -> None:
    one = slow(many(90))  # 90 × 2 × (7.5 + 2 × 2) is over 2 s even at the low end
    assert (one.outcome, one.severity, one.place) == (Outcome.FAILS, "advice", "SC1")
    assert one.also == ("N1",)
    assert "Zigbee group" in one.remedy


def test_a_quick_scene_passes_whatever_its_devices_state() -> None:
    for word in ("able", "unable", "mute"):
        assert slow(many(20, word=word)).outcome is Outcome.PASSES


def test_where_no_group_would_do_there_is_nothing_to_advise() -> None:
    assert slow(many(90, word="unable")).outcome is Outcome.PASSES
    assert slow(many(90, protocol="zwave")).outcome is Outcome.PASSES


def test_a_slow_scene_whose_devices_state_nothing_cannot_be_told() -> None:
    one = slow(many(90, word="mute"))
    assert one.outcome is Outcome.CANNOT_TELL
    assert {look.field for look in one.looks} == {"group_commands"}


def test_a_scene_that_is_slow_at_one_end_of_the_range_is_to_be_timed() -> None:
    one = slow(many(50))
    assert one.outcome is Outcome.CANNOT_TELL
    assert [(look.place, look.field) for look in one.looks] == [("SC1", "time")]


def test_many_devices_on_no_network_may_make_a_slow_scene() -> None:
    plain = many(90)
    for n in range(1, 91):
        del plain["devices"][f"D{n}"]["network"]
    one = slow(plain)
    assert one.outcome is Outcome.CANNOT_TELL
    assert {look.field for look in one.looks} == {"network"}
    plain = many(3)
    del plain["devices"]["D1"]["network"]
    assert slow(plain).outcome is Outcome.PASSES


@given(
    st.integers(40, 90),
    st.integers(1, 5),
    st.sampled_from(["zigbee", "zwave", "matter_thread"]),
    st.sampled_from(["able", "unable", "mute"]),
    st.sampled_from(["model", "network", "route"]),
)
@settings(max_examples=25)
def test_a_blank_makes_no_pass_of_a_slow_scene(
    count: int, hops: int, protocol: str, word: str, blank: str
) -> None:
    plain = many(count, protocol=protocol, word=word)
    before = {f.outcome for f in asked(plain, links(plain, hops))}
    routes = links(plain, hops)
    if blank == "route":
        del routes["D7"]
    else:
        del plain["devices"]["D7"][blank]
    after = {f.outcome for f in asked(plain, routes)}
    assert before == {Outcome.PASSES} or after != {Outcome.PASSES}


@pytest.mark.parametrize(
    ("span", "words"),
    [
        (Span(85, 124, 210), "0.12 s (0.09 to 0.21)"),
        (Span(950, 1240, 12_100), "1.2 s (0.95 to 12)"),
        (Span(40, 40, 40), "0.04 s"),
    ],
)
def test_a_time_is_told_with_its_range(span: Span, words: str) -> None:
    assert span_words(span) == words
