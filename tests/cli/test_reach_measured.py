"""`reach --journal`: what was measured takes the place of what is assumed, and is told."""

import json
from pathlib import Path

import pytest

from tests.cli.conftest import Call

DEMO = Path(__file__).parents[2] / "demo/house-mended.json"
LINKS = {"D01>D09": -61, "D35>D31": -72, "D11>D20": -66, "D07>D12": -70, "D13>D17": -74}


@pytest.fixture
def journal(tmp_path: Path, call: Call) -> Path:
    """Five links measured on the demo house, each by `record`."""
    path = tmp_path / "visit.jsonl"
    for link, level in LINKS.items():
        assert call("record", DEMO, str(path), "measured", f"link:{link}", f"rssi_dbm={level}").code == 0
    return path


def test_five_links_bring_figures_and_what_to_measure_next(journal: Path, call: Call) -> None:
    said = call("reach", DEMO, "--journal", str(journal)).out
    assert "5 links measured" in said
    assert "nothing measured yet" not in said
    assert "5 heard, 0 not heard" in said
    assert "what brick takes" in said
    assert "To measure next, with plates and covers fitted" in said
    assert "%" in said


def test_four_links_bring_words_alone(journal: Path, call: Call) -> None:
    journal.write_text("".join(journal.read_text().splitlines(keepends=True)[:4]))
    said = call("reach", DEMO, "--journal", str(journal)).out
    assert "4 links measured" in said
    assert "Below 5 measured links" in said
    assert "%" not in said


def test_not_heard_and_lqi_are_told(journal: Path, call: Call) -> None:
    call("record", DEMO, str(journal), "measured", "link:D12>D17", "not_heard=true")
    call("record", DEMO, str(journal), "measured", "link:D12>D20", "lqi=99")
    said = " ".join(call("reach", DEMO, "--journal", str(journal)).out.split())
    assert "6 links, 5 heard, 1 not heard" in said
    assert "LQI alone" in said


def test_json_holds_what_was_learned_and_null_without_a_journal(journal: Path, call: Call) -> None:
    assert json.loads(call("reach", DEMO, "--json").out)["measured"] is None
    plain = json.loads(call("reach", DEMO, "--json", "--journal", str(journal)).out)
    assert plain["measured"]["count"] == 5
    assert {p["name"] for p in plain["measured"]["parameters"]} >= {"offset", "distance", "spread"}
    assert plain["devices"][0]["chance"] is not None


def test_a_line_that_cannot_be_read_is_told_and_the_others_count(journal: Path, call: Call) -> None:
    with journal.open("a") as file:
        file.write("{not json\n")
    told = call("reach", DEMO, "--journal", str(journal))
    assert told.code == 1
    assert "5 links measured" in told.out


def test_a_check_learns_from_the_journal_too(tmp_path: Path, call: Call) -> None:
    journal = tmp_path / "in-vain.jsonl"
    for device in ("D20", "D21", "D22", "D31"):
        call("record", DEMO, str(journal), "measured", f"link:{device}>P81", "not_heard=true")
    doubt = "Radio may or may not carry D22"
    assert doubt not in call("check", DEMO).out
    told = call("check", DEMO, "--journal", str(journal))
    assert doubt in told.out
    assert told.code in {1, 3}
    told = call("check", DEMO, "--journal", str(journal), "--journal", "no-such.jsonl")
    assert (told.code, told.err.count("\n")) == (2, 1)


def test_a_link_to_itself_is_refused(tmp_path: Path, call: Call) -> None:
    told = call("record", DEMO, str(tmp_path / "x.jsonl"), "measured", "link:D14>D14", "rssi_dbm=-60")
    assert (told.code, told.err.count("\n")) == (2, 1)
    assert "two" in told.err
