# ruff: noqa: E501 - a case of the table stays one line
"""The verbs of a house that stands: as-built, test, adopt, swap, import; bad input, exits, what is written."""

import json
import re
from pathlib import Path

import pytest

from secondfix.house import as_canonical_json
from tests import example_house as ex
from tests.cli.conftest import Call
from tests.journal.writing import plain

MAPPING = {"format": 1, "columns": {"address": "Body", "endpoint": "Part", "name": "Called"}}


@pytest.fixture(autouse=True)
def files(tmp_path: Path) -> None:
    """The example house, a journal with a cut last line, a list and its mapping."""
    (tmp_path / "h.json").write_text(as_canonical_json(ex.house()), encoding="utf-8")
    lines = [
        json.dumps(plain(1, "function_tested", "gang:B1.1", answered={"L2": "changed"})),
        json.dumps(plain(2, "function_tested", "gang:B1.2", answered={"L1": "changed"})),
    ]
    (tmp_path / "j.jsonl").write_text("\n".join(lines) + "\n", encoding="utf-8")
    (tmp_path / "cut.jsonl").write_text("\n".join(lines) + '\n{"format":1,', encoding="utf-8")
    (tmp_path / "l.csv").write_text("Body,Part,Called\n5A11C04D00317E02,1,Ceiling\n", encoding="utf-8")
    (tmp_path / "m.json").write_text(json.dumps(MAPPING), encoding="utf-8")


BAD: list[tuple[str, tuple[str, ...], str]] = [
    ("no such journal", ("as-built", "h.json", "none.jsonl"), "none.jsonl: no such file"),
    ("a device that is not there", ("swap", "h.json", "D99", "corvell-pair@1"), "h.json: device: 'D99'; expected a device, wall box, gang or place of this house"),
    ("nothing to put in", ("swap", "h.json", "D01"), "h.json: units: nothing; expected at least one model"),
    ("words that are no model", ("swap", "h.json", "D01", "a:b:c"), "WITH: 'a:b:c'; expected MODEL, MODEL:1,3 or LOAD=MODEL"),
    ("a model nobody has", ("swap", "h.json", "D01", "corvell-moon@1"), "units[0].model: 'corvell-moon@1'"),
    ("a network that is not there", ("swap", "h.json", "N9", "--controller", "nothing"), "FAILED: 'N9'; expected a network: N1"),
    ("a device that is not on the network", ("swap", "h.json", "N1", "--controller", "backup_with_keys", "--not-in-backup", "D99"), "--not-in-backup: 'D99'; expected a device on N1"),
    ("entries with nothing replaced", ("swap", "h.json", "--silent", "B1.1", "--entries", "x.jsonl"), "--entries: given; expected FAILED"),
    ("a model beside a controller", ("swap", "h.json", "N1", "corvell-pair@1", "--controller", "nothing"), "WITH: given; expected a device that is replaced"),
    ("more codes than devices", ("swap", "h.json", "D01", "corvell-pair@1", "--code", "K40", "--code", "K41"), "--code: 2 references; expected at most 1"),
    ("entries over a file", ("swap", "h.json", "D01", "corvell-pair@1", "--entries", "m.json"), "m.json: a file that exists"),
    ("no such list", ("import", "none.csv"), "none.csv: no such file"),
    ("no house and no new file", ("import", "l.csv", "--mapping", "m.json"), "mapping: protocol: nothing" ),
    ("a house in place of a mapping", ("import", "l.csv", "h.json", "--mapping", "h.json"), "h.json: columns"),
    ("a new house over a file", ("import", "l.csv", "--mapping", "m.json", "--new", "h.json"), "h.json: a file that exists"),
    ("an adoption over a file", ("adopt", "h.json", "j.jsonl", "--to", "h.json", "--entry", "e.jsonl", "--revision", "A", "--to-revision", "B", "--writer", "Pell"), "h.json: a file that exists"),
    ("an adoption into the same revision", ("adopt", "h.json", "j.jsonl", "--to", "n.json", "--entry", "e.jsonl", "--revision", "A", "--to-revision", "A", "--writer", "Pell"), "revision A is the one adopted from"),
]  # fmt: skip


@pytest.mark.parametrize(("words", "line"), [b[1:] for b in BAD], ids=[b[0] for b in BAD])
def test_bad_input_is_refused_in_a_clear_line(
    call: Call, tmp_path: Path, words: tuple[str, ...], line: str
) -> None:
    before = {p.name: p.read_bytes() for p in tmp_path.iterdir() if p.is_file()}
    ended = call(*words)
    if words[0] == "import" and "--new" not in words and "none.csv" not in words and "h.json" not in words:
        line = "expected a house to hold the list against, or --new FILE to begin one"
    assert ended.code == 2
    assert line in ended.err
    assert ended.out == ""
    assert {p.name: p.read_bytes() for p in tmp_path.iterdir() if p.is_file()} == before


def test_crossed_gangs_are_found_by_the_function_test(call: Call) -> None:
    ended = call("test", "h.json", "j.jsonl")
    assert ended.code == 1
    assert "Crossed: B1.1, B1.2. Exchange B1.1 with B1.2" in ended.out
    told = json.loads(call("test", "h.json", "j.jsonl", "--json").out)
    assert told["true_map"] == {"gang:B1.1": ["L2"], "gang:B1.2": ["L1"]}


def test_a_line_that_was_cut_off_is_told_and_the_rest_is_read(call: Call) -> None:
    ended = call("as-built", "h.json", "cut.jsonl")
    assert ended.code == 1
    assert "cut.jsonl: line 3" in ended.err
    assert "2 entries count" in ended.out


def test_what_is_adopted_differs_no_longer(call: Call, tmp_path: Path) -> None:
    told = json.loads(call("as-built", "h.json", "j.jsonl", "--json").out)
    assert told["differences"]
    call(
        "adopt", "h.json", "j.jsonl", "--to", "n.json", "--entry", "e.jsonl", "--revision", "A",
        "--to-revision", "B", "--writer", "Pell",
    )  # fmt: skip
    assert json.loads((tmp_path / "e.jsonl").read_text())["kind"] == "adopted"
    assert json.loads(call("as-built", "n.json", "j.jsonl", "e.jsonl", "--json").out)["differences"] == []


def test_a_swap_is_printed_and_its_entries_make_the_house_that_it_promised(call: Call) -> None:
    ended = call("swap", "h.json", "B1.1", "corvell-pair@1", "--entries", "x.jsonl", "--writer", "Pell")
    assert "kept" in ended.out
    assert "licensed person" in ended.out
    plan = json.loads(call("swap", "h.json", "B1.1", "corvell-pair@1", "--json").out)
    built = json.loads(call("as-built", "h.json", "x.jsonl", "--json").out)
    assert not [t for t in built["told"] if t["serious"]]
    assert {d["place"] for d in built["differences"]} >= {plan["fits"][0]["device"]}


def test_silence_points_at_a_device(call: Call) -> None:
    assert "D01 at B1: it is this one" in call("swap", "h.json", "--silent", "B1.1").out
    assert call("swap", "h.json", "--silent", "whatever").code == 3


def test_a_controller_replaced_is_told_with_hours(call: Call) -> None:
    ended = call("swap", "h.json", "N1", "--controller", "nothing")
    assert ended.code == 0
    assert "a new controller; of the old one nothing is left" in ended.out
    assert (
        json.loads(call("swap", "h.json", "N1", "--controller", "backup_with_keys", "--json").out)["order"]
        == []
    )


def test_the_entries_of_a_network_joined_again_are_written_and_fit_the_house(
    call: Call, tmp_path: Path
) -> None:
    call("swap", "h.json", "N1", "--controller", "nothing", "--entries", "n.jsonl")
    kinds = [json.loads(line)["kind"] for line in (tmp_path / "n.jsonl").read_text().splitlines()]
    told = json.loads(call("swap", "h.json", "N1", "--controller", "nothing", "--json").out)
    assert kinds == [e["kind"] for e in told["entries"]]
    assert kinds.count("joined") == len(told["order"]) > 0
    assert "function_tested" not in kinds
    built = json.loads(call("as-built", "h.json", "n.jsonl", "--json").out)
    assert not [t for t in built["told"] if t["serious"]]


def test_the_code_of_the_new_device_goes_into_its_entry(call: Call, tmp_path: Path) -> None:
    call("swap", "h.json", "D01", "corvell-pair@1", "--code", "K40", "--entries", "c.jsonl")
    (fitted,) = [
        e for e in map(json.loads, (tmp_path / "c.jsonl").read_text().splitlines()) if e["kind"] == "fitted"
    ]
    assert fitted["code_ref"] == "K40"


def test_without_a_mapping_the_columns_are_shown(call: Call) -> None:
    ended = call("import", "l.csv")
    assert ended.code == 0
    assert "Part: 1" in ended.out


def test_a_list_is_held_against_the_house(call: Call) -> None:
    ended = call("import", "l.csv", "h.json", "--mapping", "m.json", "--json")
    assert ended.code == 1
    told = json.loads(ended.out)
    assert told["rows"] == 1
    assert {d["kind"] for d in told["differences"]} >= {"missing"}


def test_a_house_is_begun_from_a_list(call: Call, tmp_path: Path) -> None:
    (tmp_path / "m.json").write_text(json.dumps({**MAPPING, "protocol": "zigbee"}), encoding="utf-8")
    ended = call("import", "l.csv", "--mapping", "m.json", "--new", "n.json", "--entries", "n.jsonl")
    assert ended.code == 3
    assert "1 room, 1 device, 1 box" in ended.out
    assert call("import", "l.csv", "n.json", "--mapping", "m.json", "--journal", "n.jsonl").code == 0


@pytest.mark.parametrize(
    ("verb", "words"),
    [("swap", ("h.json", "D01", "corvell-pair@1")), ("import", ("l.csv", "h.json", "--mapping", "m.json"))],
)
def test_the_json_has_the_keys_that_the_page_names(
    call: Call, tree: Path, verb: str, words: tuple[str, ...]
) -> None:
    part = (
        (tree / "docs/json.md").read_text(encoding="utf-8").split(f"\n## {verb}\n", 1)[1].split("\n## ", 1)[0]
    )
    named = set(re.findall(r"^\| `(\w+)` \|", part, re.MULTILINE))
    assert set(json.loads(call(verb, *words, "--json").out)) == named
