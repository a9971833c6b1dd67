"""A silenced rule names the rule and has its reason beside it."""

import re
from pathlib import Path

import pytest

from tests.ground.tracked import texts

SILENCES = re.compile(r"#\s*(noqa|type:\s*ignore|pragma:\s*no cover|ruff:\s*noqa)\b(.*)")
CODES = re.compile(r"^\s*(?::\s*[A-Z]+\d+(?:\s*,\s*[A-Z]+\d+)*|\[[\w\-, ]+\])?")


def unexplained(text: str) -> list[int]:
    """Line numbers where a rule is silenced without words after the silencing or in the line above."""
    lines = text.splitlines()
    found = []
    for number, line in enumerate(lines, start=1):
        silence = SILENCES.search(line)
        if silence:
            after = CODES.sub("", silence[2])
            above = lines[number - 2].strip() if number > 1 else ""
            if not (_says_why(after) or (above.startswith("#") and _says_why(above))):
                found.append(number)
    return found


def _says_why(words: str) -> bool:
    return len(re.findall(r"[A-Za-z]{2,}", words)) >= 2


@pytest.mark.parametrize(
    ("line", "stands"),
    [
        ("x = 1  # " + "noqa: S603", False),
        ("x = 1  # " + "noqa: S603 # our own command, no shell", True),
        ("x = 1  # " + "type: ignore[arg-type]", False),
        ("x = 1  # " + "type: ignore[arg-type]  # the stub lacks the keyword", True),
        ("# the stub lacks the keyword\nx = 1  # " + "type: ignore[arg-type]", True),
    ],
)
def test_a_reason_is_told_from_none(line: str, stands: bool) -> None:
    assert (unexplained(line) == []) is stands


def test_every_silenced_rule_in_code_has_its_reason() -> None:
    found = {name: unexplained(text) for name, text in texts() if name.endswith(".py")}
    assert {name: lines for name, lines in found.items() if lines} == {}


def test_every_rule_silenced_for_the_project_has_its_reason(tree: Path) -> None:
    """In pyproject.toml: ruff's two tables of ignored rules, coverage's exclusions, mypy's overrides."""
    text = (tree / "pyproject.toml").read_text(encoding="utf-8")
    tables = (r"^ignore = \[\n(.*?)^\]", r"^exclude_also = \[\n(.*?)^\]", r"per-file-ignores\]\n(.*?)^\[")
    found = [re.findall(table, text, flags=re.MULTILINE | re.DOTALL) for table in tables]
    assert [len(table) for table in found] == [1, 1, 1]
    lines = [line for (table,) in found for line in table.splitlines() if line.strip()]
    lines += re.findall(r"^(?:ignore_|disable_|follow_|allow_)\w+ = .*$", text, flags=re.MULTILINE)
    assert [line for line in lines if not re.search(r"# .*\w+ \w+", line)] == []
