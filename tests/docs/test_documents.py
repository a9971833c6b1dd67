"""What the documents show in console blocks is what the commands print."""

import shutil
from pathlib import Path

import pytest

from tests.docs.console import blocks, differences

TOP = Path(__file__).resolve().parents[2]
# These two must show commands; any other page of docs may.
MUST_SHOW = ("README.md", "docs/tutorial.md")


def documents() -> list[str]:
    """The two, and each further page that shows a command."""
    pages = {path.relative_to(TOP).as_posix(): path for path in sorted((TOP / "docs").rglob("*.md"))}
    showing = [name for name, path in pages.items() if "```console" in path.read_text(encoding="utf-8")]
    return list(dict.fromkeys([*MUST_SHOW, *showing]))


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder of the reader's own with a copy of the demo houses, as the documents suppose."""
    shutil.copytree(TOP / "demo", tmp_path / "demo")
    return tmp_path


@pytest.mark.parametrize("name", MUST_SHOW)
def test_a_document_that_teaches_shows_commands(name: str) -> None:
    assert blocks((TOP / name).read_text(encoding="utf-8"))


@pytest.mark.parametrize("name", documents())
def test_a_document_shows_what_the_commands_print(name: str, folder: Path) -> None:
    text = (TOP / name).read_text(encoding="utf-8")
    assert "\n".join(differences(text, folder, TOP)) == ""
