# ruff: noqa: E501 - a case of the table stays one line
"""Bad input: one clear line each, exit 2, and what stood there before stands there still."""

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tests import example_house as ex
from tests.cli.conftest import Call

Change = Callable[[dict[str, Any]], Any]
TARGET = b"what stood here before"


def changed(change: Change) -> bytes:
    plain = ex.document()
    plain["models"] = {k: m.model_dump(mode="json", exclude_none=True) for k, m in ex.models().items()}
    change(plain)
    return json.dumps(plain).encode()


def same(plain: dict[str, Any]) -> None:
    """Leave the document as it is."""


FILES: list[tuple[str, bytes, str]] = [
    ("nothing", b"", "h.json: line 1, column 1: not JSON; expected JSON (expecting value)"),
    ("half a file", changed(same)[:300], "not JSON"),
    ("not text", b"\x89PNG\r\n\x1a\n", "not UTF-8"),
    ("a key twice", b'{"rooms": {"R1": {}, "R1": {}}}', "h.json: rooms.R1: this key stands twice; expected each key once"),
    ("nested too deep", b"[" * 9999 + b"]" * 9999, "nested too deep; expected at most 32 levels"),
    ("too large", b" " * (20 * 1024 * 1024 + 1), "20,971,521 bytes; expected at most 20,971,520 bytes"),
    ("a format of tomorrow", changed(lambda d: d.update(format=9)), "h.json: format: 9; expected format 1: this file was made by a newer Secondfix"),
    ("an unknown key", changed(lambda d: d["boxes"]["B1"].update(depthmm=1)), "h.json: boxes.B1.depthmm: unknown key; expected perhaps 'depth_mm'"),
    ("a fraction", changed(lambda d: d["boxes"]["B1"]["depth_mm"].update(value=4.7)), "h.json: boxes.B1.depth_mm.value: 4.7; expected a whole number"),
    ("an absurd number", changed(lambda d: d["loads"]["L1"]["power_mw"].update(value=10**12)), "h.json: loads.L1.power_mw.value: 1000000000000; expected less than or equal to 20000000"),
    ("a dangling id", changed(lambda d: d["boxes"]["B1"].update(room="R9")), "h.json: boxes.B1.room: 'R9'; expected the id of a room of this house"),
    ("a load fed twice", changed(lambda d: d["boxes"]["B1"]["gangs"]["2"].update(load="L1")), "h.json: boxes.B1.gangs.2.load: 'L1'; expected a load that nothing else feeds"),
    ("a ring of extensions", changed(lambda d: d["boxes"]["B2"]["gangs"]["1"].update(extends="B2.1")), "h.json: boxes.B2.gangs.1.extends: a ring: B2.1, B2.1"),
    ("an open outline", changed(lambda d: d["rooms"]["R1"].update(outline_mm=[[0, 0], [9, 9]])), "h.json: rooms.R1.outline_mm: a list of 2"),
]  # fmt: skip

WRITING = {
    "pack": ("pack", "h.json", "--out", "target"),
    "worksheet": ("worksheet", "h.json", "--pdf", "target/sheets.pdf"),
    "demo": ("demo", "h.json", "--out", "target"),
}
READING = {
    verb: (verb, "h.json")
    for verb in ("check", "reach", "names", "scenes", "walk", "worksheet", "assumptions")
}


@pytest.mark.parametrize(("data", "line"), [f[1:] for f in FILES], ids=[f[0] for f in FILES])
def test_an_unusable_house_is_refused_in_clear_lines(
    call: Call, tmp_path: Path, data: bytes, line: str
) -> None:
    (tmp_path / "h.json").write_bytes(data)
    ended = call("check", "h.json")
    assert (ended.code, ended.out) == (2, "")
    assert line in ended.err
    assert all(": " in told and "expected" in told for told in ended.err.splitlines())


@pytest.mark.parametrize("words", [*READING.values(), *WRITING.values()], ids=lambda w: "-".join(w[::2]))
def test_every_verb_refuses_it_and_touches_nothing(
    call: Call, tmp_path: Path, words: tuple[str, ...]
) -> None:
    (tmp_path / "h.json").write_bytes(changed(lambda d: d["boxes"]["B1"].update(room="R9")))
    (tmp_path / "target").mkdir()
    (tmp_path / "target" / "sheets.pdf").write_bytes(TARGET)
    ended = call(*words)
    assert (ended.code, ended.out) == (2, "")
    assert "boxes.B1.room: 'R9'" in ended.err
    assert [(p.name, p.read_bytes()) for p in (tmp_path / "target").iterdir()] == [("sheets.pdf", TARGET)]


CALLS: list[tuple[str, tuple[str, ...], str]] = [
    ("no such file", ("check", "none.json"), "none.json: no such file or directory; expected a file that can be read"),
    ("a folder", ("check", "."), ".: is a directory"),
    ("no such verb", ("chek",), "secondfix: 'chek'; expected perhaps 'check'"),
    ("a verb far from any", ("xyzzy",), "expected one of"),
    ("no such firm", ("check", "good.json", "--firm", "none"), "none: no such folder"),
    ("no such scene", ("scenes", "good.json", "--scene", "SC9"), "--scene: 'SC9'; expected one of SC1"),
    ("no such device", ("worksheet", "good.json", "--device", "D99"), "'D99'; expected one of D01, D02"),
    ("no such kind of code", ("code", "X", "--kind", "barcode"), "'barcode'; expected one of zigbee-install-code"),
    ("a date of another form", ("pack", "good.json", "--date", "24.11.2026"), "24.11.2026"),
    ("a house that exists", ("new", "Any", "good.json"), "good.json: a file that exists"),
    ("a name of no length", ("new", "", "new.json"), "0 characters; expected 1 to 80"),
    ("a file in place of a folder", ("pack", "good.json", "--out", "good.json"), "good.json: a file; expected a folder"),
    ("no such time zone", ("check", "zone.json"), "zone.json: time_zone: 'Mars/One'; expected a name of the IANA time zone database"),
    ("no key ring", ("pack", "good.json", "--keys", "none.keys"), "none.keys: no such file"),
    ("a ring that is none", ("keys", "list", "good.json"), "not a key ring"),
]  # fmt: skip


@pytest.mark.parametrize(("words", "line"), [c[1:] for c in CALLS], ids=[c[0] for c in CALLS])
def test_an_unusable_call_is_refused(
    call: Call, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, words: tuple[str, ...], line: str
) -> None:
    monkeypatch.setenv("SECONDFIX_PASSPHRASE", "three grey herons")
    good = changed(same)
    zone = changed(lambda d: d.update(time_zone="Mars/One"))
    (tmp_path / "good.json").write_bytes(good)
    (tmp_path / "zone.json").write_bytes(zone)
    ended = call(*words)
    assert ended.code == 2
    assert line in " ".join(ended.err.split())
    assert {p.name: p.read_bytes() for p in tmp_path.iterdir()} == {"good.json": good, "zone.json": zone}


def test_faults_are_capped_with_a_count(call: Call, tmp_path: Path) -> None:
    def many(d: dict[str, Any]) -> None:
        d["loads"] |= {f"X{n}": d["loads"]["L1"] | {"room": "R99"} for n in range(250)}

    (tmp_path / "h.json").write_bytes(changed(many))
    told = call("check", "h.json").err.splitlines()
    assert len(told) == 201
    assert told[-1] == "and 50 more faults; 250 in all"


def test_a_text_that_no_font_draws_is_told_and_no_paper_is_written(call: Call, tmp_path: Path) -> None:
    (tmp_path / "h.json").write_bytes(changed(lambda d: d.update(name="\U00013000 House")))
    ended = call("pack", "h.json", "--out", "papers")
    assert ended.code == 2
    assert "U+13000" in ended.err
    assert not (tmp_path / "papers").exists()
