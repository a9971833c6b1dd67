"""A check learns from measured links, and takes nothing over from a check that knew of others."""

from pathlib import Path

import pytest

from secondfix.actions.check import Checked, check
from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, read_house
from secondfix.radio import Measured

ASSUMED = default_assumptions()
IN_VAIN = tuple(Measured(device, "N1", None) for device in ("D20", "D21", "D22", "D31"))


@pytest.fixture(scope="module")
def house(tree: Path) -> House:
    read = read_house((tree / "demo/house.json").read_bytes(), where="demo", models=shipped_models())
    assert isinstance(read, House)
    return read


def untold(checked: Checked) -> set[str]:
    return {f.also[0] for f in checked.findings if f.rule == "radio.reach" and f.looks}


def test_links_that_were_not_heard_raise_doubt_where_the_assumptions_had_none(house: House) -> None:
    before = check(house, assumptions=ASSUMED)
    after = check(house, assumptions=ASSUMED, measured=IN_VAIN)
    assert not untold(before)
    assert {"D20", "D21", "D22", "D31"} <= untold(after)
    assert after.answers.reached.measured == len(IN_VAIN)
    others = [[f for f in c.findings if f.rule.startswith("electrical")] for c in (before, after)]
    assert others[0] == others[1]


def test_an_earlier_check_that_knew_of_other_links_is_not_taken_over(house: House) -> None:
    before = check(house, assumptions=ASSUMED)
    fresh = check(house, assumptions=ASSUMED, measured=IN_VAIN)
    assert check(house, assumptions=ASSUMED, earlier=before, measured=IN_VAIN) == fresh
    assert check(house, assumptions=ASSUMED, earlier=fresh) == before
    assert check(house, assumptions=ASSUMED, earlier=fresh, measured=IN_VAIN) == fresh
