"""What a house leaves no ground to ask is told, once, where names are answered for."""

import json
from pathlib import Path

import pytest

from tests.cli.conftest import Call

SENTENCE = "How names sound was not asked"


@pytest.mark.parametrize("verb", ["check", "names"])
def test_names_not_heard_are_told_in_one_line(call: Call, tree: Path, tmp_path: Path, verb: str) -> None:
    house = json.loads((tree / "demo/house.json").read_text())
    house.get("naming", {}).pop("spoken_language", None)
    silent, heard = tmp_path / "silent.json", tmp_path / "heard.json"
    silent.write_text(json.dumps(house))
    house.setdefault("naming", {})["spoken_language"] = "en"
    heard.write_text(json.dumps(house))
    assert call(verb, silent).out.count(SENTENCE) == 1
    assert SENTENCE not in call(verb, heard).out
    assert [s.startswith(SENTENCE) for s in json.loads(call(verb, silent, "--json").out)["not_asked"]] == [
        True
    ]
    assert json.loads(call(verb, heard, "--json").out)["not_asked"] == []
