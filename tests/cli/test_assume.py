"""``--assume``: on every verb that leans on assumptions, over firm and house; refused whole."""

import inspect
import json
from importlib import import_module
from pathlib import Path
from typing import Any

import pytest

from secondfix.assumptions import DEFAULTS
from secondfix.cli.opening import Assume
from secondfix.cli.table import VERBS
from tests.cli.conftest import Call
from tests.papers.reading import flat, words_of

DEMO = Path(__file__).parents[2] / "demo"
HOUSE = DEMO / "house-mended.json"
SPOKEN = DEMO / "nec-house-mended.json"  # its names are said aloud
# Any device that is there, and a network.
FAILED, NETWORK = "D01", next(iter(json.loads(HOUSE.read_text())["networks"]))
LEANING = {
    "check": (),
    "reach": (),
    "names": (),
    "scenes": (),
    "walk": (),
    "worksheet": (),
    "select": ("--place", "B10"),
    "swap": (NETWORK, "--controller", "nothing"),
}


@pytest.mark.parametrize("verb", sorted(VERBS))
def test_a_verb_takes_assume_just_where_it_hands_assumptions_on(verb: str) -> None:
    """A verb whose answer leans on none has no option that would do nothing."""
    module = import_module(f"secondfix.cli.{VERBS[verb][0]}")
    source = inspect.getsource(module)
    leans = "firm.assumptions" in source or "made(house, firm" in source or verb == "assumptions"
    run = getattr(module, "run", None)
    options = inspect.signature(run).parameters.values() if run else ()
    assert any(option.annotation == Assume for option in options) == leans


@pytest.mark.parametrize("verb", sorted([*LEANING, "pack", "demo", "assumptions"]))
def test_everything_wrong_with_what_is_assumed_is_told_at_once_and_nothing_is_written(
    call: Call, tmp_path: Path, verb: str
) -> None:
    wrong = ("luck=3", "parent_margn_db=4", "parent_margin_db=61", "glow_voltage_v=1.5", "scene_slow_ms")
    words = [w for choice in wrong for w in ("--assume", choice)]
    ended = call(verb, HOUSE, *LEANING.get(verb, ()), *words)
    assert (ended.code, ended.out) == (2, "")
    assert ended.err.splitlines() == [
        "--assume: 'luck'; expected the name of an assumption: secondfix assumptions lists them",
        "--assume: 'parent_margn_db'; expected the name of an assumption, perhaps 'parent_margin_db': "
        "secondfix assumptions lists them",
        "--assume: parent_margin_db: '61'; expected 0 to 60 dB, its legal bounds",
        "--assume: glow_voltage_v: '1.5'; expected a whole number of V, of nine digits at most",
        "--assume: 'scene_slow_ms'; expected name=value, the value a whole number",
    ]
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("choices", "line"),
    [
        (("glow_voltage_v=3", "glow_voltage_v=4"), "glow_voltage_v: '4'; expected one value: it is set to 3"),
        (("glow_voltage_v=",), "glow_voltage_v: ''; expected a whole number of V"),
        (("glow_voltage_v=٣",), "glow_voltage_v: '٣'; expected a whole number of V"),
        (("glow_voltage_v=1234567890",), "of nine digits at most"),
        (("=5",), "''; expected the name of an assumption"),
        (("luck=x",), "luck: 'x'; expected a whole number"),
    ],
)
def test_a_choice_that_cannot_be_read_is_told(call: Call, choices: tuple[str, ...], line: str) -> None:
    ended = call("check", HOUSE, *(w for c in choices for w in ("--assume", c)))
    assert (ended.code, ended.out) == (2, "")
    assert line in ended.err


def test_faults_of_the_house_and_of_the_command_line_are_told_together(call: Call, tmp_path: Path) -> None:
    (tmp_path / "h.json").write_text("{}")
    lines = call("check", "h.json", "--assume", "luck=3").err.splitlines()
    assert lines[0].startswith("--assume: 'luck'")
    assert any(line.startswith("h.json: ") for line in lines)
    (tmp_path / "firm").mkdir()
    (tmp_path / "firm/assumptions.toml").write_text("luck = 4\n")
    lines = call("check", "h.json", "--firm", "firm", "--assume", "luck=3").err.splitlines()
    assert [line.split(":")[0] for line in lines] == ["firm/assumptions.toml", "--assume"]


@pytest.fixture
def ways(tmp_path: Path) -> dict[str, tuple[str | Path, ...]]:
    """The same house: plain, with the firm's word, with its own over that, with the command line over all."""
    name = "by_ear_near_pct"
    (tmp_path / "firm").mkdir()
    (tmp_path / "firm/assumptions.toml").write_text(f"{name} = 41\n")
    plain = json.loads(HOUSE.read_text()) | {"assumptions": {name: {"value": 42}}}
    (tmp_path / "own.json").write_text(json.dumps(plain))
    return {
        "default": (HOUSE,),
        "firm": (HOUSE, "--firm", "firm"),
        "house": ("own.json", "--firm", "firm"),
        "command line": ("own.json", "--firm", "firm", "--assume", f"{name}=43"),
    }


def test_the_nearest_voice_wins_firm_house_command_line(
    call: Call, ways: dict[str, tuple[str | Path, ...]]
) -> None:
    told = {}
    for who, words in ways.items():
        listed = json.loads(call("assumptions", *words, "--json").out)["assumptions"]
        told[who] = next((a["value"], a["set_by"]) for a in listed if a["name"] == "by_ear_near_pct")
    assert told == {who: (value, who) for value, who in zip((45, 41, 42, 43), ways, strict=True)}


# For each verb one assumption that changes what it prints, and a value far off.
MOVES = {
    "check": "plate_projection_mm=30",
    "reach": "radio_plastic_box_db=60",
    "names": "by_ear_alike_pct=100",
    "scenes": "scene_slow_ms=0",
    "walk": "storey_change_m=200",
    "worksheet": "radio_plastic_box_db=60",
    "select": "plate_projection_mm=30",
    "swap": "rejoin_near_min=99",
}


@pytest.mark.parametrize("verb", sorted(LEANING))
def test_each_verb_answers_by_the_nearest_voice(call: Call, tmp_path: Path, verb: str) -> None:
    """What the firm says moves the answer; the house's own default moves it back; the command line again."""
    name, _, far = MOVES[verb].partition("=")
    file = SPOKEN if verb == "names" else HOUSE
    default = next(a for a in DEFAULTS if a.name == name)
    own = {"value": default.value, "low": default.low, "high": default.high}
    plain = json.loads(file.read_text()) | {"assumptions": {name: own}}
    (tmp_path / "own.json").write_text(json.dumps(plain))
    (tmp_path / "firm").mkdir()
    (tmp_path / "firm/assumptions.toml").write_text(f"{name} = {far}\n")

    def answer(*words: str | Path) -> Any:
        return _bare(json.loads(call(verb, *words[:1], *LEANING[verb], *words[1:], "--json").out))

    base, firm = answer(file), answer(file, "--firm", "firm")
    house = answer("own.json", "--firm", "firm")
    command = answer("own.json", "--firm", "firm", "--assume", f"{name}={far}")
    assert base == house != firm == command


def _bare(plain: dict[str, Any]) -> dict[str, Any]:
    """Without the list of what was leaned on, which says who set it."""
    return {key: value for key, value in plain.items() if key != "assumptions"}


def test_what_was_leaned_on_is_printed_with_who_set_it(call: Call) -> None:
    cases = (
        ("check", HOUSE, MOVES["check"]),
        ("names", SPOKEN, MOVES["names"]),
        ("walk", HOUSE, "parent_margin_db=40"),
        ("select", HOUSE, "plate_projection_mm=30"),
    )
    for verb, file, choice in cases:
        text = " ".join(call(verb, file, "--assume", choice).out.split())
        name, _, value = choice.partition("=")
        assert f"{name}: " in text, verb
        assert f": {value} " in text, verb
        assert "; set by the command line" in text, verb
        plain = json.loads(call(verb, file, "--assume", choice, "--json").out)["assumptions"]
        assert next(a for a in plain if a["name"] == name)["set_by"] == "command line"


def test_papers_show_what_the_command_line_set_and_that_it_did(call: Call, tmp_path: Path) -> None:
    words = ("--assume", "radio_spread_db=7", "--assume", "plate_projection_mm=3")
    assert call("pack", HOUSE, "--out", "papers", "--date", "2026-03-09", *words).code == 0
    assert call("worksheet", HOUSE, "--pdf", "w.pdf", "--date", "2026-03-09", *words).code == 0
    for name in ("papers/handover-pack.pdf", "papers/findings.pdf", "papers/worksheets.pdf", "w.pdf"):
        assert flat("set by the command line") in words_of((tmp_path / name).read_bytes()), name
