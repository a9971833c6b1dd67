"""Channel surveys on the command line: asked, kept in the journal, refused."""

import json
from pathlib import Path
from typing import Any

import pytest

from tests.cli.conftest import Call

DEMO = Path(__file__).parents[2] / "demo" / "house-mended.json"
SURVEY = (
    "channel,level_dbm,duty_pct,place,name\n8,-49,35,P81,Pondweed\n2,-74,3,P81,Fernhollow\n13,-77,6,P41,\n"
)
HOUSE = "0190b7c4-5e21-7a3d-9c40-6b1f2d8e7a51"
TRANSMITTER = {
    "kind", "channel", "second_channel", "width_mhz", "level_dbm", "duty_permille", "place", "name",
}  # fmt: skip


@pytest.fixture(autouse=True)
def survey(tmp_path: Path) -> None:
    (tmp_path / "s.csv").write_text(SURVEY)


def asked(call: Call, *words: str) -> dict[str, Any]:
    plain = json.loads(call("reach", DEMO, "--json", *words).out)
    assert isinstance(plain, dict)
    return plain


def test_without_a_survey_nothing_is_said_of_channels(call: Call) -> None:
    assert asked(call)["channels"] is None
    assert "Channels at 2.4 GHz" not in call("reach", DEMO).out


def test_the_json_has_the_shape_of_the_page(call: Call) -> None:
    plain = asked(call, "--air", "s.csv", "--numbers")
    channels = plain["channels"]
    assert set(channels) == {"heard", "networks", "notes", "assumptions"}
    assert [set(one) for one in channels["heard"]] == [TRANSMITTER] * 3
    by_network = {one["network"]: one for one in channels["networks"]}
    assert {key: one["choice"] for key, one in by_network.items()} == {
        "N1": "change", "N2": "no_choice", "N3": "stay",
    }  # fmt: skip
    one = by_network["N1"]
    assert one["in_use"] == 20
    assert one["gain"]["assumed"] > 0.05
    assert [c["channel"] for c in one["channels"]] == list(range(11, 27))
    assert set(one["channels"][0]) == {"channel", "mhz", "cost", "lost", "added", "worst", "clear", "devices"}
    (finding,) = [f for f in plain["findings"] if f["rule"] == "radio.channel" and f["outcome"] == "fails"]
    assert finding["limit"] == f"channel {one['best']}"


def test_shares_are_told_when_asked_for_and_words_always(call: Call) -> None:
    one = asked(call, "--air", "s.csv")["channels"]["networks"][0]
    assert one["gain"] is one["quiet"] is one["channels"][0]["lost"] is None
    assert one["channels"][9]["cost"] == "many"
    plain, full = (call("reach", DEMO, "--air", "s.csv", *more).out for more in ((), ("--numbers",)))
    assert "at the first try" not in plain
    assert "at the first try" in full
    assert "lost on a quiet channel" in full


def test_better_elsewhere_is_advice_and_what_cannot_be_told_is_exit_3(call: Call, tmp_path: Path) -> None:
    ended = call("reach", DEMO, "--air", "s.csv")
    assert ended.code == 0
    assert "Larkholm mesh would do better on channel" in " ".join(ended.out.split())
    (tmp_path / "none.csv").write_text("channel,level_dbm\n")
    ended = call("reach", DEMO, "--air", "none.csv")
    assert ended.code == 3
    assert "Nobody was heard on the air" in ended.out


def test_a_survey_with_faults_is_refused_with_a_line_each(call: Call, tmp_path: Path) -> None:
    (tmp_path / "bad.csv").write_text("channel,level_dbm,place\n36,-50,\n6,loud,P99\n")
    ended = call("reach", DEMO, "--air", "bad.csv")
    assert (ended.code, ended.out) == (2, "")
    assert [line.split(": ")[1] for line in ended.err.splitlines()] == [
        "row 2, channel", "row 3, level_dbm", "row 3, place",
    ]  # fmt: skip
    assert call("reach", DEMO, "--air", "nowhere.csv").code == 2


def test_a_survey_is_kept_in_the_journal_and_a_later_one_takes_its_place(call: Call, tmp_path: Path) -> None:
    record = ("record", DEMO, "j.jsonl", "air_heard", f"house:{HOUSE}", "--air", "s.csv")
    assert call(*record).code == 0
    kept, brought = (asked(call, *w)["channels"] for w in (("--journal", "j.jsonl"), ("--air", "s.csv")))
    assert kept["networks"] == brought["networks"]
    (tmp_path / "s.csv").write_text("channel,level_dbm\n6,-60\n")
    assert call(*record).code == 0
    assert len(asked(call, "--journal", "j.jsonl")["channels"]["heard"]) == 1


def test_what_file_and_journal_both_heard_counts_once(call: Call) -> None:
    call("record", DEMO, "j.jsonl", "air_heard", f"house:{HOUSE}", "--air", "s.csv")
    assert len(asked(call, "--journal", "j.jsonl", "--air", "s.csv")["channels"]["heard"]) == 3


def test_an_entry_of_one_place_takes_no_rows_of_another(call: Call, tmp_path: Path) -> None:
    ended = call("record", DEMO, "j.jsonl", "air_heard", "place:P81", "--air", "s.csv")
    assert ended.code == 2
    assert "'P41'; expected P81 or nothing" in ended.err
    assert not (tmp_path / "j.jsonl").exists()
    (tmp_path / "s.csv").write_text("".join(SURVEY.splitlines(keepends=True)[:3]))
    assert call("record", DEMO, "j.jsonl", "air_heard", "place:P81", "--air", "s.csv").code == 0
    heard = asked(call, "--journal", "j.jsonl")["channels"]["heard"]
    assert {one["place"] for one in heard} == {"P81"}


def test_a_place_that_left_the_house_stands_for_the_whole_of_it(call: Call) -> None:
    heard = '[{"channel":8,"level_dbm":-49,"place":"P99"}]'
    call("record", DEMO, "j.jsonl", "air_heard", f"house:{HOUSE}", f"transmitters={heard}")
    channels = asked(call, "--journal", "j.jsonl")["channels"]
    assert channels["heard"][0]["place"] is None
    assert "P99" in channels["notes"][0]


def test_the_mesh_is_drawn_among_those_heard(call: Call, tmp_path: Path) -> None:
    (tmp_path / "loud.csv").write_text("channel,level_dbm,duty_pct\n8,-30,95\n")
    quiet, loud = (
        asked(call, "--draws", "640", "--numbers", *more)["foreseen"]["networks"][0]
        for more in ((), ("--air", "loud.csv"))
    )
    shares = [sum(d["chance"]["share"] for d in one["devices"]) for one in (quiet, loud)]
    assert shares[1] < shares[0] - 1
