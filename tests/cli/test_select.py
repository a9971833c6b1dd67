"""The verb select: one block of text for each place, exit by the worst, JSON as the page says."""

import json
from pathlib import Path

import pytest

from secondfix.selection import RULES
from tests.cli.conftest import Call

DEMO = Path(__file__).parents[2] / "demo"


def flat(text: str) -> str:
    return " ".join(text.split())


def test_a_place_where_nothing_fits_tells_why_and_what_would_help(call: Call) -> None:
    ended = call("select", DEMO / "house.json", "--place", "B14")
    told = flat(ended.out)
    assert ended.code == 1
    assert told.startswith(
        "B14 Shower, mount 1, now D14 plimmet-osier-one@1. Wanted: B14.1 feeds light (L34); "
    )
    assert "Nothing fits. Refused, by the first rule that does:" in told
    assert "Does it take as many mounts as are there? No (select.mounts): murrowfen-cairn@1" in told
    assert "◆ Fault, B14 (depth). What is to stand in box B14 is deeper than the box." in told
    assert "What would help: Fit a box 47 mm deep in place of 25 mm. Then fits: " in told
    assert "Then fits at P34: plimmet-rush@1" in told


def test_a_light_point_that_a_switch_works_already_lacks_nothing(call: Call) -> None:
    """The switch at B17 works the dryer, and all other places are served."""
    ended = call("select", DEMO / "house-mended.json")
    assert ended.code == 0
    assert "P17 Utility, instead of gang B17.2." in flat(ended.out)
    assert call("select", DEMO / "house.json").code == 1


def test_a_refusal_by_a_rule_of_electricity_says_what_to_do(call: Call) -> None:
    ended = call("select", DEMO / "nec-house.json", "--place", "B11")
    assert "do: Take a switch of a larger rating, or let a motor-rated controller switch it." in flat(
        ended.out
    )
    assert "No change and no two of those tried bring a model to fit" in flat(ended.out)


def test_every_refusal_in_its_own_words_on_request(call: Call) -> None:
    told = flat(call("select", DEMO / "house.json", "--place", "B14", "--all").out)
    assert (
        "◆ Fault, B14 (select.mounts). It takes 4 mounts; there is 1. stands: 4; limit: 1; source: " in told
    )
    assert not any(f"{rule.asks} No" in told for rule in RULES)


def test_what_cannot_be_told_names_its_looks(call: Call) -> None:
    ended = call("select", DEMO / "house.json", "--place", "B07")
    assert ended.code == 3
    assert "Nothing fits as far as is known." in ended.out
    assert "find out what gang B07.3 does" in flat(ended.out)


def test_the_mended_house_ends_well_at_a_box_and_says_that_it_is_no_price(call: Call) -> None:
    ended = call("select", DEMO / "house-mended.json", "--place", "B12", "--place", "B11")
    assert ended.code == 0
    assert [line.split()[0] for line in ended.out.splitlines() if line[:1] == "B"] == ["B11", "B12"]
    assert "that is no price" in ended.out


def test_another_protocol_is_asked_for_by_its_word(call: Call) -> None:
    plain = json.loads(
        call("select", DEMO / "house-mended.json", "--place", "B21", "--protocol", "zwave", "--json").out
    )
    (place,) = plain["places"]
    assert place["wanted"]["protocols"] == ["zwave"]
    assert "ostrabeck-gannet@1" in [fit["model"] for fit in place["fits"]]


def test_the_json_of_a_place_has_the_keys_that_the_page_names(call: Call, tree: Path) -> None:
    page = (tree / "docs/json.md").read_text(encoding="utf-8").split("\n## select\n")[1].split("\n## ")[0]
    for place in json.loads(call("select", DEMO / "house.json", "--json").out)["places"]:
        assert set(place) == {"place", "device", "wanted", "fits", "cannot_tell", "refused", "helps"}
        parts = [place, place["wanted"], *place["wanted"]["gangs"], *place["fits"], *place["cannot_tell"]]
        parts += [*place["refused"], *place["helps"]]
        assert {key for part in parts for key in part if f"`{key}`" not in page} == set()


@pytest.mark.parametrize("place", ["B99", "L01", ""])
def test_a_place_that_does_not_stand_is_refused_in_one_line(call: Call, place: str) -> None:
    ended = call("select", DEMO / "house.json", "--place", place)
    assert (ended.code, ended.out) == (2, "")
    assert f"'{place}'; expected the id of a box or place of this house" in ended.err
