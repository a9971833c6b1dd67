# ruff: noqa: E501 - a case of the table stays one line
"""The verb record, and journals given as files, folders and standard input."""

import json
from pathlib import Path
from typing import Any

import pytest

from secondfix.cli.page import table
from secondfix.house import as_canonical_json
from tests import example_house as ex
from tests.cli.conftest import Call
from tests.journal.writing import plain


@pytest.fixture(autouse=True)
def files(tmp_path: Path) -> None:
    (tmp_path / "h.json").write_text(as_canonical_json(ex.house()), encoding="utf-8")


def lines(path: Path) -> list[dict[str, Any]]:
    return [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines()]


def test_an_entry_is_appended_and_has_seen_what_the_file_holds(call: Call, tmp_path: Path) -> None:
    for answer in ("answered={}", "answered.L1=changed"):
        assert call("record", "h.json", "j.jsonl", "function_tested", "gang:B1.1", answer).code == 0
    first, second = lines(tmp_path / "j.jsonl")
    assert second["sees"] == [first["id"]]
    assert second["answered"] == {"L1": "changed"}
    assert "as designed" in call("test", "h.json", "j.jsonl").out


def test_what_other_journals_hold_is_seen_and_not_written_again(call: Call, tmp_path: Path) -> None:
    call("record", "h.json", "one.jsonl", "named", "load:L1", "name=Pendant", "--writer", "Pell")
    call("record", "h.json", "two.jsonl", "named", "load:L1", "name=Lantern", "--journal", "one.jsonl")
    (one,), (two,) = lines(tmp_path / "one.jsonl"), lines(tmp_path / "two.jsonl")
    assert two["sees"] == [one["id"]]
    assert "Lantern" in call("as-built", "h.json", "one.jsonl", "two.jsonl").out


def test_as_it_should_writes_down_every_load_that_should_answer(call: Call, tmp_path: Path) -> None:
    call("record", "h.json", "j.jsonl", "function_tested", "scene:SC1", "answered=as_it_should")
    call("record", "h.json", "j.jsonl", "function_tested", "gang:B1.1", "answered=as_it_should")
    scene, gang = lines(tmp_path / "j.jsonl")
    assert gang["answered"] == {"L1": "changed"}
    assert set(scene["answered"].values()) == {"off"}
    assert "as it should" in call("test", "h.json", "j.jsonl").out


def test_a_snag_is_cleared_without_its_id_where_one_alone_is_open(call: Call, tmp_path: Path) -> None:
    call("record", "h.json", "j.jsonl", "snag_raised", "box:B1", "words=plate chipped")
    assert call("record", "h.json", "j.jsonl", "snag_cleared", "box:B1", "words=new plate").code == 0
    assert "no open snag" in call("as-built", "h.json", "j.jsonl").out
    for words in ("words=one", "words=two"):
        call("record", "h.json", "j.jsonl", "snag_raised", "box:B1", words)
    ended = call("record", "h.json", "j.jsonl", "snag_cleared", "box:B1")
    assert ended.code == 2
    assert "one" in ended.err
    assert "two" in ended.err
    assert call("record", "h.json", "j.jsonl", "snag_cleared", "box:B2").err.count("expected") == 1


def test_a_name_of_digits_is_text(call: Call, tmp_path: Path) -> None:
    assert call("record", "h.json", "j.jsonl", "named", "load:L1", "name=4711").code == 0
    assert lines(tmp_path / "j.jsonl")[0]["name"] == "4711"


BAD: list[tuple[str, tuple[str, ...], str]] = [
    ("a kind nobody knows", ("painted", "box:B1"), "entry: kind: 'painted'; expected one of joined, "),
    ("a subject that is none", ("named", "L1", "name=a"), "entry: subject: 'L1'; expected kind:id, such as"),
    ("a key without value", ("named", "load:L1", "name"), "KEY=VALUE: 'name'; expected a key"),
    ("a key twice", ("named", "load:L1", "name=a", "name=b"), "KEY=VALUE: name: given twice"),
    ("a key within a value", ("function_tested", "gang:B1.1", "answered={}", "answered.L1.x=on"), "entry: answered.L1: an object"),
    ("a key under a text", ("named", "load:L1", "name=a", "name.b=c"), "KEY=VALUE: name.b: given twice"),
    ("an answer that is none", ("function_tested", "gang:B1.1", "answered=yes"), "entry: answered: 'yes'; expected an object"),
    ("as it should where nothing says", ("function_tested", "gang:B9.1", "answered=as_it_should"), "entry: answered: 'as_it_should'; expected an object"),
    ("an id that is none", ("withdrawn", "gang:B1.1", "of=x"), "entry: of: 'x'; expected a UUID of version 7"),
    ("nothing to withdraw", ("withdrawn", "gang:B1.1"), "KEY=VALUE: of: nothing; expected an entry to name"),
    ("a time without offset", ("named", "load:L1", "name=a", "--at", "yesterday"), "entry: at: 'yesterday'; expected a time with its offset"),
]  # fmt: skip


@pytest.mark.parametrize(("words", "line"), [b[1:] for b in BAD], ids=[b[0] for b in BAD])
def test_bad_input_is_refused_in_a_clear_line_and_nothing_is_written(
    call: Call, tmp_path: Path, words: tuple[str, ...], line: str
) -> None:
    ended = call("record", "h.json", "j.jsonl", *words)
    assert ended.code == 2
    assert line in ended.err
    assert "pattern" not in ended.err
    assert not (tmp_path / "j.jsonl").exists()


def test_what_the_house_cannot_take_is_refused_or_kept_anyway_and_told(call: Call, tmp_path: Path) -> None:
    refused = call("record", "h.json", "j.jsonl", "named", "room:R77", "name=Nook")
    assert refused.code == 2
    assert "entry: it speaks of room:R77, which is not in this house; expected an entry that" in refused.err
    assert not (tmp_path / "j.jsonl").exists()
    ended = call("record", "h.json", "j.jsonl", "named", "room:R77", "name=Nook", "--anyway")
    assert ended.code == 1
    assert "It speaks of room:R77, which is not in this house." in ended.out
    assert len(lines(tmp_path / "j.jsonl")) == 1


def test_a_line_cut_off_keeps_a_line_of_its_own(call: Call, tmp_path: Path) -> None:
    (tmp_path / "j.jsonl").write_text('{"format":1,', encoding="utf-8")
    ended = call("record", "h.json", "j.jsonl", "named", "load:L1", "name=a")
    assert ended.code == 1
    assert "line 1" in ended.err
    first, second = (tmp_path / "j.jsonl").read_text(encoding="utf-8").splitlines()
    assert first == '{"format":1,'
    assert json.loads(second)["name"] == "a"


def line(number: int, name: str) -> bytes:
    return json.dumps(plain(number, "named", f"load:L{number}", name=name)).encode() + b"\n"


def test_a_journal_comes_from_standard_input_and_from_files_at_once(call: Call, tmp_path: Path) -> None:
    (tmp_path / "j.jsonl").write_bytes(line(1, "Pendant"))
    ended = call("as-built", "h.json", "-", "j.jsonl", "j.jsonl", stdin=line(2, "Lantern"))
    assert "2 entries count" in ended.out
    bad = call("as-built", "h.json", "-", stdin=b"{\n")
    assert "standard input: line 1" in bad.err


def test_house_and_journal_cannot_both_come_from_standard_input(call: Call, tmp_path: Path) -> None:
    ended = call("as-built", "-", "-", stdin=(tmp_path / "h.json").read_bytes())
    assert ended.code == 2
    assert "-: house and journal from standard input; expected one of them in a file" in ended.err


def test_a_folder_gives_every_journal_in_it_and_tells_what_else_lies_there(
    call: Call, tmp_path: Path
) -> None:
    visits = tmp_path / "visits"
    visits.mkdir()
    assert "a folder without a journal" in call("as-built", "h.json", "visits").err
    (visits / "one.jsonl").write_bytes(line(1, "Pendant"))
    (visits / "two.jsonl").write_bytes(line(2, "Lantern") + line(1, "Pendant"))
    (visits / "list.csv").write_bytes(b"a,b\n")
    ended = call("as-built", "h.json", "visits")
    assert "2 entries count" in ended.out
    assert ended.err.strip() == "visits: not read, since not .jsonl: list.csv"


@pytest.mark.parametrize("verb", ["as-built", "test"])
def test_no_line_is_wider_than_a_phone_of_sixty_columns(
    call: Call, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, verb: str
) -> None:
    words = "a lamp over the log store that is in no book and hums when the kiln runs"
    call(
        "record",
        "h.json",
        "j.jsonl",
        "function_tested",
        "gang:B1.1",
        "answered.L2=on",
        f"also_answered={words}",
    )
    call("record", "h.json", "j.jsonl", "function_tested", "scene:SC1", "answered.L2=on")
    call("record", "h.json", "j.jsonl", "snag_raised", "box:B1", f"words={words}")
    monkeypatch.setattr("secondfix.cli.page.width", lambda: 60)
    assert max(map(len, call(verb, "h.json", "j.jsonl").out.splitlines())) <= 60


def test_a_table_too_wide_for_a_phone_tells_each_row_in_words(monkeypatch: pytest.MonkeyPatch) -> None:
    head, wide = ("place", "what it is", "why"), "words that are long and must stand somewhere"
    rows = [("B07.2", wide, "it is so"), ("B08.1", "", wide)]
    monkeypatch.setattr("secondfix.cli.page.width", lambda: 60)
    narrow = table(head, rows)
    assert max(map(len, narrow.splitlines())) <= 60
    assert "B07.2  what it is: words" in narrow
    assert "what it is:" not in narrow.split("B08.1")[1]
    monkeypatch.setattr("secondfix.cli.page.width", lambda: 100)
    assert table(head, rows).splitlines()[0].split() == ["place", "what", "it", "is", "why"]


def test_names_and_purposes_in_the_controller_are_one_paragraph_a_device(call: Call) -> None:
    for words in (("named", "name=Hall light"), ("purpose_set", "purpose=lighting"), ("named", "name=Porch")):
        number = 2 if words[1] == "name=Porch" else 1
        assert call("record", "h.json", "j.jsonl", words[0], f"entry:D01.{number}", words[1]).code == 0
    out = call("as-built", "h.json", "j.jsonl").out
    assert "  In the controller: D01.1 'Hall light', lighting; D01.2 'Porch'.\n" in out
    assert "is called" not in out


def test_a_file_that_is_no_journal_is_not_written_into(call: Call, tmp_path: Path) -> None:
    (tmp_path / "notes.txt").write_text("call Pell\nbring ladders\n", encoding="utf-8")
    for file, what in (("h.json", "the house itself"), ("notes.txt", "a file without any entry")):
        before = (tmp_path / file).read_bytes()
        ended = call("record", "h.json", file, "named", "load:L1", "name=a")
        assert ended.code == 2
        assert f"{file}: {what}; expected a journal, or a new name" in ended.err
        assert (tmp_path / file).read_bytes() == before
