"""Verbs: what each prints, exits with, and gives as JSON; the shapes are those of docs/json.md."""

import json
import re
from pathlib import Path
from typing import Any

import pytest

from secondfix.cli.table import VERBS
from tests.cli.conftest import Call

DEMO = Path(__file__).parents[2] / "demo"
HOUSES = {"as surveyed": DEMO / "house.json", "mended": DEMO / "house-mended.json"}


def keys_of(page: str, verb: str) -> set[str]:
    """The top keys that docs/json.md names for a verb."""
    part = page.split(f"\n## {verb}\n", 1)[1].split("\n## ", 1)[0]
    return set(re.findall(r"^\| `(\w+)` \|", part, re.MULTILINE))


@pytest.mark.parametrize("verb", ["check", "reach", "select", "names", "scenes", "walk", "worksheet"])
def test_the_json_of_a_verb_has_the_keys_that_the_page_names(call: Call, tree: Path, verb: str) -> None:
    page = (tree / "docs/json.md").read_text()
    plain = json.loads(call(verb, HOUSES["as surveyed"], "--json").out)
    assert set(plain) == keys_of(page, verb)


def test_findings_and_survey_have_the_fields_that_the_page_names(call: Call) -> None:
    plain = json.loads(call("check", HOUSES["as surveyed"], "--json").out)
    for finding in plain["findings"]:
        assert set(finding) == {
            *("rule", "outcome", "severity", "place", "says", "value", "limit", "source", "remedy"),
            *("looks", "assumptions", "also"),
        }
    assert all(set(s) == {"place", "field", "words", "settles", "rules"} for s in plain["survey"])
    assert plain["counts"]["danger"] == sum(
        f["outcome"] == "fails" and f["severity"] == "danger" for f in plain["findings"]
    )


@pytest.mark.parametrize(
    ("name", "codes"), [("as surveyed", {"check": 1, "reach": 0, "scenes": 1}), ("mended", {})]
)
def test_verbs_exit_by_the_worst_answer(call: Call, name: str, codes: dict[str, int]) -> None:
    for verb in ("check", "reach", "names", "scenes", "walk"):
        expected = codes.get(verb, 3 if (name, verb) == ("as surveyed", "names") else 0)
        assert call(verb, HOUSES[name]).code == expected, verb


def test_what_the_page_shows_is_what_the_json_says(call: Call) -> None:
    text = call("check", HOUSES["as surveyed"]).out
    plain = json.loads(call("check", HOUSES["as surveyed"], "--json").out)
    told = [f for f in plain["findings"] if f["outcome"] != "passes"]
    flat = " ".join(text.split())
    assert all(f"{f['place']} ({f['rule']}). {f['says']}" in flat for f in told)
    assert len(re.findall(r"^    do: ", text, re.MULTILINE)) == len(told)


def test_a_house_is_read_from_standard_input(call: Call) -> None:
    from_file = call("check", HOUSES["as surveyed"], "--json")
    from_input = call("check", "-", "--json", stdin=HOUSES["as surveyed"].read_bytes())
    assert (from_input.code, from_input.out) == (from_file.code, from_file.out)


def test_all_answers_are_listed_only_if_asked_for(call: Call) -> None:
    assert "No fault found," not in call("check", HOUSES["mended"]).out
    assert "No fault found," in call("check", HOUSES["mended"], "--all").out


def test_numbers_of_radio_are_shown_only_if_asked_for(call: Call) -> None:
    without = json.loads(call("reach", HOUSES["mended"], "--json").out)
    with_numbers = json.loads(call("reach", HOUSES["mended"], "--json", "--numbers").out)
    assert {d["chance"] for d in without["devices"]} == {None}
    assert all(0 <= d["chance"]["low"] <= d["chance"]["high"] <= 1 for d in with_numbers["devices"])
    assert "%" in call("reach", HOUSES["mended"], "--numbers").out


def test_without_a_verb_the_verbs_are_listed(call: Call) -> None:
    ended = call()
    assert ended.code == 2
    assert all(verb in ended.out for verb in VERBS)
    assert call("--help").code == 0
    assert re.fullmatch(r"secondfix \d+\.\d+\.\d+\n", call("--version").out)


@pytest.mark.parametrize("verb", sorted(VERBS))
def test_every_verb_explains_itself(call: Call, verb: str) -> None:
    ended = call(verb, "--help")
    assert ended.code == 0
    assert f"secondfix {verb}" in ended.out


def test_models_lists_every_model(call: Call) -> None:
    plain = json.loads(call("models", "--json").out)
    assert all(key in call("models").out for key in plain["models"])


def test_assumptions_tell_who_set_them(call: Call, tmp_path: Path) -> None:
    (tmp_path / "firm").mkdir()
    (tmp_path / "firm" / "assumptions.toml").write_text("parent_margin_db = 13\n")
    assert "13 dB; set by the firm" in call("assumptions", "--firm", "firm").out
    plain = json.loads(call("assumptions", HOUSES["mended"], "--json").out)
    assert {a["set_by"] for a in plain["assumptions"]} == {"default"}


def test_one_worksheet_can_be_asked_for(call: Call) -> None:
    plain = json.loads(call("worksheet", HOUSES["mended"], "--device", "D08", "--json").out)
    assert [w["device"] for w in plain["worksheets"]] == ["D08"]
    text = call("worksheet", HOUSES["mended"], "--device", "D08").out
    assert "Lock off" in text
    assert "D09" not in text


@pytest.mark.parametrize("name", HOUSES)
def test_the_demo_leaves_every_paper_and_says_how_the_house_stands(
    call: Call, tmp_path: Path, name: str
) -> None:
    ended = call("demo", HOUSES[name], "--out", "out", "--date", "2026-03-09")
    assert ended.code == 0
    made = {p.name for p in (tmp_path / "out").iterdir()}
    expected = {"handover-pack.pdf", "findings.pdf", "worksheets.pdf", "findings.txt", "survey-list.txt"}
    assert expected | {"scenes.txt", "walk.txt"} <= made
    assert "never" not in ended.err
    assert "prove dead" in ended.out


def test_a_house_of_120_v_is_shown_in_its_own_words_and_measures(call: Call, tmp_path: Path) -> None:
    ended = call("demo", DEMO / "nec-house.json", "--out", "out", "--date", "2026-03-09")
    assert ended.code == 0
    made = {p.name for p in (tmp_path / "out").iterdir()}
    assert {"closeout-pack.pdf", "findings.pdf", "worksheets.pdf"} <= made
    assert "handover-pack.pdf" not in made
    texts = [
        (tmp_path / "out" / name).read_text() for name in ("findings.txt", "walk.txt", "survey-list.txt")
    ]
    texts.append(call("worksheet", DEMO / "nec-house.json").out)
    for text in (ended.out, *texts):
        assert re.findall(r"\b(?:[Ii]solat|[Ll]ock off|[Pp]roved? dead|[Ee]nergis)\w*", text) == []
        # A millimetre stands only with inches behind it; nothing is in metres.
        assert re.findall(r"\d (?:m|mm)\b(?!\s\()", text) == []


def test_the_same_date_gives_the_same_bytes(call: Call, tmp_path: Path) -> None:
    for out in ("a", "b"):
        assert call("pack", HOUSES["mended"], "--out", out, "--date", "2026-03-09").code == 0
    assert {p.name: p.read_bytes() for p in (tmp_path / "a").iterdir()} == {
        p.name: p.read_bytes() for p in (tmp_path / "b").iterdir()
    }


def test_a_new_house_can_be_checked_at_once(call: Call, tmp_path: Path) -> None:
    assert call("new", "Pellow Lane 13", "p.json").code == 0
    plain: dict[str, Any] = json.loads((tmp_path / "p.json").read_text())
    assert plain["name"] == "Pellow Lane 13"
    assert call("check", "p.json").code == 3


def test_an_assumption_set_on_the_command_line_stands_over_firm_and_house(call: Call, tmp_path: Path) -> None:
    plain = json.loads(HOUSES["mended"].read_text()) | {"assumptions": {"parent_margin_db": {"value": 11}}}
    (tmp_path / "h.json").write_text(json.dumps(plain))
    for words, value in ((("h.json",), 11), (("h.json", "--assume", "parent_margin_db=14"), 14)):
        listed = json.loads(call("assumptions", *words, "--json").out)["assumptions"]
        assert next(a for a in listed if a["name"] == "parent_margin_db")["value"] == value
    assert call("walk", "h.json").code == 0
    assert call("walk", "h.json", "--assume", "parent_margin_db=40").code == 1


@pytest.mark.parametrize(
    ("choice", "line"),
    [
        ("luck=3", "--assume: 'luck'; expected the name of an assumption"),
        ("parent_margin_db", "--assume: 'parent_margin_db'; expected name=value"),
        ("parent_margin_db=ten", "parent_margin_db: 'ten'; expected a whole number of dB"),
        ("power_factor_motor_permille=0", "expected 100 to 1000 ‰, its legal bounds"),
    ],
)
def test_an_assumption_that_cannot_be_set_is_refused(call: Call, choice: str, line: str) -> None:
    ended = call("check", HOUSES["mended"], "--assume", choice)
    assert (ended.code, ended.out) == (2, "")
    assert line in ended.err
