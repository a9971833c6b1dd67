"""The journal's measured links as reach learns from them."""

from pathlib import Path

from secondfix.actions.measured import learned_as_json, measured_of, reach_measured
from secondfix.assumptions import default_assumptions
from secondfix.files import open_house, shipped_models
from secondfix.house import House
from secondfix.journal import Entry, journal_of
from secondfix.radio import Measured
from tests.journal.writing import HOUSE, write

DEMO = Path(__file__).parents[2] / "demo/house-mended.json"


def of(*entries: Entry) -> tuple[tuple[Measured, ...], tuple[str, ...]]:
    found = measured_of(HOUSE, journal_of(entries))
    return found.measured, found.notes


def test_levels_tables_and_what_was_not_heard_are_taken() -> None:
    links, notes = of(
        write(1, "measured", "link:D01>P1", rssi_dbm=-71, lqi=90),
        write(2, "measured", "link:P1>D01", not_heard=True),
        write(
            3,
            "measured",
            "network:N1",
            table=[{"link": "link:D02>D01", "rssi_dbm": -60}, {"link": "link:D01>D02", "not_heard": True}],
        ),
    )
    assert set(links) == {
        Measured("D01", "P1", -71.0),
        Measured("P1", "D01", None),
        Measured("D02", "D01", -60.0),
        Measured("D01", "D02", None),
    }
    assert notes == ()


def test_a_link_quality_alone_is_told_and_counts_for_nothing() -> None:
    links, notes = of(
        write(1, "measured", "link:D01>P1", lqi=90),
        write(2, "measured", "network:N1", table=[{"link": "link:D02>D01", "lqi": 12}]),
    )
    assert links == ()
    assert "2 links" in notes[0]
    assert "LQI alone" in notes[0]


def test_a_measurement_withdrawn_or_made_again_by_who_knew_it_counts_no_longer() -> None:
    first = write(1, "measured", "link:D01>P1", rssi_dbm=-71)
    assert of(first, write(2, "withdrawn", "link:D01>P1", of=1))[0] == ()
    assert of(first, write(2, "measured", "link:D01>P1", rssi_dbm=-64, sees=[1]))[0] == (
        Measured("D01", "P1", -64.0),
    )
    assert len(of(first, write(2, "measured", "link:D01>P1", rssi_dbm=-64))[0]) == 2


def demo() -> House:
    read = open_house(str(DEMO), shipped_models())
    assert isinstance(read, House)
    return read


LEVELS = {"D09": -61, "D12": -70, "D13": -66, "D17": -75, "D20": -72}


def test_numbers_are_told_from_five_measured_links_on() -> None:
    house = demo()
    links = [Measured("D01", to, float(level)) for to, level in LEVELS.items()]
    for count in (4, 5):
        answer, learned = reach_measured(house, links[:count], assumptions=default_assumptions())
        plain = learned_as_json(learned, notes=["a note"])
        assert answer.measured == plain["count"] == count
        assert plain["notes"] == ["a note"]
        assert (plain["parameters"] is None) == (count < 5)
        shown = plain["links"]
        assert isinstance(shown, list)
        assert len(shown) == count
        assert all((link["ab_dbm"] is None) == (count < 5) for link in shown)
        following = plain["next_links"]
        assert isinstance(following, list)
        assert len(following) == 5
