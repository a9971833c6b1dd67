"""A channel survey as an entry: what it may say, and which of several stand."""

import pytest

from secondfix.house import Fault
from secondfix.journal import AirHeard, Entry, fold, journal_of, new_entry
from tests.journal.writing import HOUSE, plain, write

SIX = {"channel": 6, "level_dbm": -61}


def current(*entries: Entry) -> list[str]:
    """Levels that the current surveys of box B1 give, survey after survey."""
    folded = fold(HOUSE, journal_of(entries))
    assert folded.conflicts == ()
    found = folded.current.get(("box:B1", "air_heard"), ())
    return [str([t.level_dbm for t in e.transmitters]) for e in found if isinstance(e, AirHeard)]


def test_a_later_survey_takes_the_place_of_those_its_writer_knew() -> None:
    first = write(1, "air_heard", "box:B1", transmitters=[SIX])
    later = write(2, "air_heard", "box:B1", transmitters=[], sees=[1])
    assert current(first) == ["[-61]"]
    assert current(first, later) == current(later, first) == ["[]"]


def test_surveys_that_did_not_know_of_each_other_both_stand() -> None:
    first = write(1, "air_heard", "box:B1", transmitters=[SIX])
    other = write(2, "air_heard", "box:B1", transmitters=[{"channel": 6, "level_dbm": -49}])
    assert current(first, other) == ["[-61]", "[-49]"]
    assert current(first, other, write(3, "air_heard", "box:B1", transmitters=[SIX], sees=[1, 2])) == [
        "[-61]"
    ]


def test_a_survey_withdrawn_gives_its_place_back() -> None:
    entries = [
        write(1, "air_heard", "box:B1", transmitters=[SIX]),
        write(2, "air_heard", "box:B1", transmitters=[], sees=[1]),
        write(3, "withdrawn", "box:B1", of=2),
    ]
    assert current(*entries) == ["[-61]"]


@pytest.mark.parametrize(
    ("subject", "heard", "says"),
    [
        ("box:B1", {"channel": 15, "level_dbm": -60}, "1 to 14"),
        ("box:B1", {"kind": "mesh", "channel": 6, "level_dbm": -60}, "11 to 26"),
        ("box:B1", {**SIX, "width_mhz": 2}, "20, 22 or 40"),
        ("box:B1", {**SIX, "width_mhz": 40}, "second channel"),
        ("box:B1", {**SIX, "second_channel": 10}, "40 MHz wide"),
        ("box:B1", {**SIX, "width_mhz": 40, "second_channel": 9}, "four from"),
        ("box:B1", {**SIX, "place": "P1"}, "names no other"),
        ("box:B1", {**SIX, "duty_permille": 1001}, "1000"),
        ("room:R1", SIX, "box, house, place"),
    ],
)
def test_what_cannot_be_is_told(subject: str, heard: dict[str, object], says: str) -> None:
    read = new_entry(plain(1, "air_heard", subject, transmitters=[heard]), where="entry")
    assert isinstance(read, Fault)
    assert says in f"{read.stands} {read.expected}"


def test_what_is_no_list_is_told() -> None:
    read = new_entry(plain(1, "air_heard", "box:B1", transmitters="none"), where="entry")
    assert str(read) == "entry: transmitters: 'none'; expected a list"


def test_one_40_mhz_wide_and_one_heard_at_a_place_are_read() -> None:
    wide = {**SIX, "width_mhz": 40, "second_channel": 10, "place": "P1"}
    assert isinstance(write(1, "air_heard", f"house:{HOUSE.id}", transmitters=[wide]), AirHeard)
