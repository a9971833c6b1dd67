"""Frames lost along a route: against the same worked link by link, and in what order they move."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad

from secondfix.radio import Interference
from secondfix.radio.channels.losing import lost, routes_of
from secondfix.radio.links import Links
from secondfix.radio.packets.curves import Kind, frame_success
from secondfix.radio.packets.delivery import raised_db
from secondfix.terms import Protocol

SENSITIVITY = np.array([-98.0, -95.0, -101.0])


def links(forth: tuple[float, float], back: tuple[float, float], reading_db: float = 0.0) -> Links:
    """Controller 0 to repeater 1, and 1 to device 2; margins at the assumed reading."""
    ab, ba = np.array(forth), np.array(back)
    weaker = np.minimum(ab, ba)
    margin = np.stack([weaker + reading_db, weaker, weaker - reading_db])
    return Links((), np.array([0, 1]), np.array([1, 2]), np.array([0, 1]), margin, weaker, ab, ba)


def by_hand(of: Links, among: Interference | None, *, reading: int, spread_db: float) -> float:
    """The same by an integral over each link, frame by frame."""
    raised = raised_db(among, SENSITIVITY) if among else np.zeros((3, 0))
    duty = among.duty if among else np.zeros(0)

    def through(above_db: float, at: int, kind: Kind) -> float:
        def success(db: float) -> float:
            return float(frame_success(np.array([db]), protocol=Protocol.ZIGBEE, kind=kind)[0])

        quiet = success(above_db)
        if quiet == 0:
            return 0.0
        for n, share in enumerate(duty):
            met = success(above_db - raised[at, n])
            quiet *= (1 - share) + share * met / success(above_db)
        return quiet

    kept = [1.0, 1.0]
    for n in range(2):
        a, b = int(of.a[n]), int(of.b[n])
        moved = of.margin_db[reading][n] - min(of.margin_ab_db[n], of.margin_ba_db[n])
        ab, ba = of.margin_ab_db[n] + moved, of.margin_ba_db[n] + moved
        for way, (there, here, receiver, sender) in enumerate(((ab, ba, b, a), (ba, ab, a, b))):

            def chance(
                z: float, t: float = there, h: float = here, r: int = receiver, s: int = sender
            ) -> float:
                shadow = spread_db * z
                both = through(t + shadow, r, "command") * through(h + shadow, s, "acknowledgement")
                return both * float(np.exp(-z * z / 2) / np.sqrt(2 * np.pi))

            kept[way] *= quad(chance, -5, 5, limit=200, epsabs=1e-6)[0]
    return 1 - sum(kept) / 2


@pytest.mark.parametrize("reading", [0, 1, 2])
@pytest.mark.parametrize(
    "among",
    [None, Interference(np.array([[-90.0, -99], [-70, -np.inf], [-105, -60]]), np.array([0.3, 0.05]))],
    ids=["quiet", "among two"],
)
def test_a_route_loses_what_its_links_lose_worked_one_by_one(
    reading: int, among: Interference | None
) -> None:
    of = links((9.0, 4.0), (6.0, 12.0), reading_db=5.0)
    found = lost(
        of,
        routes_of(of, [("D2", [2, 1, 0])]),
        reading=reading,
        spread_db=6.0,
        sensitivity_dbm=SENSITIVITY,
        among=among,
    )
    assert found[0] == pytest.approx(by_hand(of, among, reading=reading, spread_db=6.0), abs=2e-3)


def test_a_route_written_the_other_way_about_loses_the_same() -> None:
    of = links((9.0, 4.0), (6.0, 12.0))
    turned = Links((), of.b, of.a, of.pair, of.margin_db, of.loss_db, of.margin_ba_db, of.margin_ab_db)
    among = Interference(np.array([[-90.0], [-70], [-105]]), np.array([0.4]))
    for routes in ([("D2", [2, 1, 0])], [("D1", [1, 0]), ("D2", [2, 1, 0])]):
        one, other = (
            lost(x, routes_of(x, routes), reading=1, spread_db=7.0, sensitivity_dbm=SENSITIVITY, among=among)
            for x in (of, turned)
        )
        assert np.allclose(one, other, atol=1e-12)


LEVELS = st.floats(-120, -40)


@settings(deadline=None)
@given(
    level=LEVELS,
    more=st.floats(0, 30),
    duty=st.floats(0, 1),
    longer=st.floats(0, 1),
    margin=st.floats(-20, 40),
)
def test_a_louder_or_busier_source_never_makes_it_better(
    level: float, more: float, duty: float, longer: float, margin: float
) -> None:
    of = links((margin, margin + 3), (margin + 2, margin))

    def at(level_dbm: float, share: float) -> float:
        found = lost(
            of,
            routes_of(of, [("D2", [2, 1, 0])]),
            reading=1,
            spread_db=8.0,
            sensitivity_dbm=SENSITIVITY,
            among=Interference(np.full((3, 1), level_dbm), np.array([share])),
        )
        assert 0 <= found[0] <= 1
        return float(found[0])

    before = at(level, duty)
    assert at(level + more, duty) >= before - 1e-9
    assert at(level, max(duty, longer)) >= before - 1e-9


def test_nobody_within_reach_is_as_nobody() -> None:
    of = links((5.0, 5.0), (5.0, 5.0))
    routes = routes_of(of, [("D1", [1, 0]), ("D2", [2, 1, 0])])
    far = Interference(np.full((3, 2), -np.inf), np.array([1.0, 0.5]))
    quiet, found = (
        lost(of, routes, reading=1, spread_db=8.0, sensitivity_dbm=SENSITIVITY, among=a) for a in (None, far)
    )
    assert np.array_equal(quiet, found)
    assert quiet[1] > quiet[0] > 0
