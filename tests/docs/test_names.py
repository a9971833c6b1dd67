"""Every word a user sees has its row in docs/names.md: meaning, and clause or 'plain word, ours'."""

from pathlib import Path

import pytest

from secondfix.cli.table import VERBS
from secondfix.terms import KIND_LABELS, PROTOCOLS, PURPOSES


@pytest.fixture(scope="module")
def rows(tree: Path) -> dict[str, tuple[str, str]]:
    """Word to meaning and origin, from all tables of the page; a cell of several words gives each."""
    found: dict[str, tuple[str, str]] = {}
    for line in (tree / "docs/names.md").read_text().splitlines():
        cells = [c.strip() for c in line.strip().strip("|").split("|")]
        if line.startswith("|") and len(cells) == 3 and set(cells[0]) != {"-"} and cells[0] != "word":
            for word in (cells[0], *cells[0].split(", ")):
                found[word] = (cells[1], cells[2])
    return found


def test_every_row_has_a_meaning_and_an_origin(rows: dict[str, tuple[str, str]]) -> None:
    assert len(rows) > 100
    assert not [word for word, (meaning, origin) in rows.items() if not meaning or not origin]
    assert not [word for word, (_, origin) in rows.items() if origin.strip().lower() == "common"]


@pytest.mark.parametrize(
    "word",
    [
        *KIND_LABELS.values(),
        *(p.label for p in PURPOSES.values()),
        *(w for p in PROTOCOLS.values() for w in (p.join, p.controller)),
        *VERBS,
    ],
)
def test_the_word_has_its_row(rows: dict[str, tuple[str, str]], word: str) -> None:
    assert word in rows
