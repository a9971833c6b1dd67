"""What is learned of whole houses: links that nobody measured, blanks, powers, and what does not count."""

import numpy as np
import pytest
from scipy.stats import binom

from bench.measured_houses import DEFAULTS, house_with_truth
from secondfix.radio import Measured, Reach, Word, learn, reach, reach_measured
from tests.example_house import seen
from tests.radio.houses import assumed, key, row_of_rooms, rows_of

ROW = row_of_rooms(6)


def answered(plain: dict[str, object]) -> Reach:
    return reach(rows_of(plain), DEFAULTS)


def level(answer: Reach, a: str, b: str, *, more_db: float = 0.0) -> Measured:
    """What would be read of a link as computed, with so much more loss."""
    links = answer.networks["N1"]
    ids = [s.id for s in links.stations]
    n = next(n for n, (p, q) in enumerate(zip(links.a, links.b, strict=True)) if {ids[p], ids[q]} == {a, b})
    power = links.stations[ids.index(a)].power_dbm[1]
    return Measured(a, b, float(power - links.loss_db[n] - more_db))


def coverage(houses: int, links: int, *, seed: int) -> tuple[int, int]:
    """How many readings of links nobody measured lie inside nine in ten, one link of each house."""
    inside = 0
    for number in range(seed, seed + houses):
        truth = house_with_truth(number)
        draw = np.random.default_rng([number, 2])
        picked = draw.permutation(len(truth.level))
        learned = learn(truth.rows, DEFAULTS, truth.answer, truth.measured(picked[:links]))
        found, other = learned.predicted("N1"), int(picked[links])
        inside += abs(truth.level[other] - found.ab_dbm[other]) < 1.644854 * found.spread_db[other]
    return inside, houses


@pytest.mark.parametrize("links", [3, 10])
def test_intervals_of_links_that_nobody_measured_cover(links: int) -> None:
    inside, houses = coverage(40, links, seed=1000)
    low, high = binom.ppf([0.001, 0.999], houses, 0.9)
    assert low <= inside <= high


@pytest.mark.deep
@pytest.mark.parametrize("links", [1, 5, 10, 40])
def test_intervals_of_links_that_nobody_measured_cover_in_thousands(links: int) -> None:
    inside, houses = coverage(1500, links, seed=5000)
    assert abs(inside / houses - 0.9) < 0.025


def test_a_house_that_loses_more_everywhere_is_learned_from_a_few_links() -> None:
    answer = answered(ROW)
    pairs = [("D0", "D1"), ("D1", "D2"), ("D2", "D3"), ("D3", "D4"), ("N1", "D2"), ("D0", "D3")]
    measured = [level(answer, a, b, more_db=9.0) for a, b in pairs]
    learned = learn(rows_of(ROW), DEFAULTS, answer, measured)
    offset = next(p for p in learned.parameters if p.name == "offset")
    assert learned.count == 6
    assert offset.before == pytest.approx((-8, 0, 8))
    assert offset.after[1] > 3
    assert offset.after[2] - offset.after[0] < 16
    found = learned.predicted("N1")
    nowhere = ~found.measured
    computed = 8 - answer.networks["N1"].loss_db
    assert np.mean((found.ab_dbm - computed)[nowhere]) == pytest.approx(-8, abs=2)


def test_a_measured_link_keeps_its_own_level_and_is_surer_than_the_others() -> None:
    answer = answered(ROW)
    learned = learn(rows_of(ROW), DEFAULTS, answer, [level(answer, "D0", "D5", more_db=-20.0)])
    found, way = learned.predicted("N1"), learned.ways("N1")[0]
    one = int(np.flatnonzero(found.measured)[0])
    computed = 8 - answer.networks["N1"].loss_db
    assert 10 < found.ab_dbm[one] - computed[one] < 20
    assert way.own_db[one] < 4 < np.delete(way.own_db, one).min()
    touched = {int(answer.networks["N1"].a[one]), int(answer.networks["N1"].b[one])}
    assert {n for n, around in enumerate(way.around_db) if around == 0} == touched


def test_what_was_not_heard_counts_against_the_house() -> None:
    answer = answered(ROW)
    in_vain = [Measured("D0", d, None) for d in ("D3", "D4", "D5")]
    learned = learn(rows_of(ROW), DEFAULTS, answer, in_vain)
    assert (learned.count, learned.not_heard) == (3, 3)
    without = learn(rows_of(ROW), DEFAULTS, answer, [])
    assert (learned.predicted("N1").ab_dbm < without.predicted("N1").ab_dbm - 1).all()
    one = learned.predicted("N1").not_heard
    assert (learned.predicted("N1").ab_dbm[one] < -90).all()


def test_with_nothing_measured_the_answer_of_reach_stands() -> None:
    answer, learned = reach_measured(rows_of(ROW), DEFAULTS, [])
    assert learned.count == answer.measured == 0
    assert answer.devices == answered(ROW).devices
    assert learned.parameters == ()


def test_the_order_of_the_measurements_and_of_their_ends_is_of_no_account() -> None:
    answer = answered(ROW)
    measured = [level(answer, "D0", "D1"), level(answer, "D4", "D2", more_db=3), Measured("P0", "B3", None)]
    one = learn(rows_of(ROW), DEFAULTS, answer, measured)
    other = learn(rows_of(ROW), DEFAULTS, answer, measured[::-1])
    assert np.array_equal(one.predicted("N1").ab_dbm, other.predicted("N1").ab_dbm)


@pytest.mark.parametrize(
    ("one", "why"),
    [
        (Measured("D0", "D9", -60.0), "not two devices of one network"),
        (Measured("D0", "D0", -60.0), "not two devices of one network"),
        (Measured("D0", "D1", 19.0), "is more than D0 sends"),
    ],
)
def test_what_cannot_count_is_told(one: Measured, why: str) -> None:
    learned = learn(rows_of(ROW), DEFAULTS, answered(ROW), [one])
    assert learned.count == 0
    assert why in learned.notes[0]


def test_a_reading_far_from_all_others_is_told_and_the_others_are_not() -> None:
    answer = answered(ROW)
    pairs = [("D0", "D1"), ("D1", "D2"), ("D2", "D3"), ("D3", "D4"), ("N1", "D2"), ("D0", "D3"), ("D1", "D5")]
    usual = [level(answer, a, b) for a, b in pairs]
    assert learn(rows_of(ROW), DEFAULTS, answer, usual).notes == ()
    notes = learn(rows_of(ROW), DEFAULTS, answer, [*usual, level(answer, "D4", "D5", more_db=45)]).notes
    assert len(notes) == 1
    assert "Between D4 and D5" in notes[0]
    assert "dB weaker" in notes[0]


def test_a_place_with_two_devices_must_be_named_by_device() -> None:
    plain = row_of_rooms(2)
    plain["boxes"]["B1"]["mounts"] = {"1": {}, "2": {}}
    plain["boxes"]["B1"]["gangs"] = {"1": {"duty": "scene_only"}, "2": {"duty": "scene_only"}}
    plain["devices"]["D7"] = {
        "model": key("relay"),
        "network": "N1",
        "box": "B1",
        "mounts": ["2"],
        "gangs": ["2"],
    }
    learned = learn(rows_of(plain), DEFAULTS, answered(plain), [Measured("D0", "B1", -60.0)])
    assert "several devices stand there" in learned.notes[0]


def closed_in_metal() -> dict[str, object]:
    plain = row_of_rooms(3)
    plain["boxes"]["B2"]["plate"] = seen("metal")
    return plain


def test_a_closed_metal_box_is_not_known_until_a_link_of_it_is_heard() -> None:
    plain = closed_in_metal()
    rows, answer = rows_of(plain), answered(plain)
    assert next(d for d in answer.devices if d.id == "D2").word is Word.NOT_KNOWN
    near, _ = reach_measured(rows, DEFAULTS, [level(answer, "D0", "D1")])
    assert next(d for d in near.devices if d.id == "D2").word is Word.NOT_KNOWN
    heard, _ = reach_measured(rows, DEFAULTS, [Measured("N1", "D2", -52.0), Measured("D2", "D1", -50.0)])
    found = next(d for d in heard.devices if d.id == "D2")
    assert found.word is Word.LIKELY
    assert found.needs == ()


def test_a_wall_that_nobody_surveyed_is_in_the_level_of_the_link_through_it() -> None:
    plain = row_of_rooms(2, kind="leaf")
    plain["walls"]["W1"] = {
        k: v for k, v in plain["walls"]["W1"].items() if k not in {"layers", "thickness_mm"}
    }
    plain["networks"]["N1"]["transmit_power_dbm"] = -4
    plain["networks"]["N1"]["sensitivity_dbm"] = -92
    rows, answer = rows_of(plain), answered(plain)
    before = next(d for d in answer.devices if d.id == "D1")
    assert before.word is Word.NOT_KNOWN
    assert {look.place for look in before.needs} == {"W1"}
    heard, learned = reach_measured(
        rows, DEFAULTS, [Measured("P0", "D1", -47.0), Measured("D1", "P0", -36.0)]
    )
    after = next(d for d in heard.devices if d.id == "D1")
    assert after.word is Word.LIKELY
    assert after.needs == ()
    other = learned.predicted("N1")
    assert other.spread_db[other.measured].max() < other.spread_db[~other.measured].min()


def test_both_directions_tell_of_a_power_that_no_sheet_states() -> None:
    plain = row_of_rooms(3)
    plain["devices"]["D1"]["model"] = key("bare")
    rows, answer = rows_of(plain), answered(plain)
    there, back = level(answer, "D0", "D1").rssi_dbm, level(answer, "D1", "D0").rssi_dbm
    assert there is not None
    assert back is not None
    learned = learn(rows, DEFAULTS, answer, [Measured("D0", "D1", there), Measured("D1", "D0", back + 9)])
    power = next(p for p in learned.parameters if p.name == "radio_transmit_power_dbm")
    assert power.after[1] > 6  # 4 dBm is assumed, 13 read; half of it may be this device's alone


def test_a_certain_assumption_leaves_nothing_to_learn_of_it() -> None:
    certain = assumed(radio_house_offset_db=0, radio_plastic_box_db=3, radio_spread_db=8)
    answer = reach(rows_of(ROW), certain)
    learned = learn(rows_of(ROW), certain, answer, [level(answer, "D0", "D1", more_db=10)])
    assert {"offset", "radio_plastic_box_db"}.isdisjoint(p.name for p in learned.parameters)
    assert learned.scale.spread_db == (8, 8, 8)


def test_answers_lean_on_what_the_learning_began_with() -> None:
    answer, _ = reach_measured(rows_of(ROW), DEFAULTS, [level(answered(ROW), "D0", "D1")])
    for finding in answer.findings:
        assert "radio_house_offset_db" in finding.assumptions
    assert answer.measured == 1
    assert not any("Nothing is measured" in note for note in answer.notes)


def test_the_next_link_is_one_nobody_measured_and_tells_of_whoever_is_in_doubt() -> None:
    plain = row_of_rooms(8, wall_mm=300)
    rows, answer = rows_of(plain), answered(plain)
    measured = [level(answer, "D0", "D1")]
    following = learn(rows, DEFAULTS, answer, measured).next_links(4)
    assert len(following) == 4
    assert len({(n.a, n.b) for n in following}) == 4
    assert {("D0", "D1"), ("D1", "D0")}.isdisjoint((n.a, n.b) for n in following)
    assert following[0].settles >= following[-1].settles


def test_measuring_the_next_link_takes_doubt_away() -> None:
    """A device in doubt at the end of a row: the first link advised is one that could carry it."""
    plain = row_of_rooms(2, room_mm=9000, wall_mm=400)
    plain["networks"]["N1"]["transmit_power_dbm"] = -14
    plain["networks"]["N1"]["sensitivity_dbm"] = -84
    for device in plain["devices"].values():
        device["model"] = key("leaf")
    rows, answer = rows_of(plain), answered(plain)
    first = learn(rows, DEFAULTS, answer, []).next_links(1)[0]
    assert first.settles > 0.05
    assert "P0" in {first.a, first.b}  # the controller, by its place
