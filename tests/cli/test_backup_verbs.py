"""Backup and restore on the command line, each in a process of its own."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

FILL = """
import sys
from pathlib import Path
from secondfix.store.start import Whereabouts, begin
begin(Whereabouts(Path(sys.argv[1])))
from secondfix.store import door
by = door.create_account(username="Ilka", password="three grey herons", right=door.Right.WRITER, by=None)
door.begin_house(Path(sys.argv[2]).read_bytes(), by=by)
"""


def plain() -> dict[str, str]:
    """The environment without what a desk of this process laid in it."""
    ours = ("SECONDFIX_", "DATABASE_URL", "DJANGO_")
    return {k: v for k, v in os.environ.items() if not k.startswith(ours)}


def called(*words: str | Path, url: str = "") -> subprocess.CompletedProcess[str]:
    """One call of ``secondfix``."""
    command = [sys.executable, "-c", "from secondfix.cli import main; main()", *map(str, words)]
    env = {**plain(), **({"DATABASE_URL": url} if url else {})}
    return subprocess.run(command, capture_output=True, text=True, check=False, env=env)


@pytest.fixture(scope="module")
def filled(tree: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The data folder of a desk with one account and the demo house."""
    folder = tmp_path_factory.mktemp("filled") / "data"
    command = [sys.executable, "-c", FILL, str(folder), str(tree / "demo/house.json")]
    subprocess.run(command, check=True, env=plain())
    return folder


def test_a_desk_is_backed_up_and_restored(filled: Path, tmp_path: Path) -> None:
    file = tmp_path / "desk.backup"
    written = called("backup", file, "--data", filled, "--json")
    assert written.returncode == 0, written.stderr
    told = json.loads(written.stdout)
    assert (told["rows"]["House"], told["rows"]["Account"], told["ring_key_here"]) == (1, 1, True)
    restored = called("restore", file, "--data", tmp_path / "new")
    assert restored.returncode == 0, restored.stderr
    assert told["digest"] in restored.stdout
    assert "accounts 1, houses 1, edits 1, issues 0" in restored.stdout
    assert "ring.key" in restored.stdout  # the new desk has another key
    again = called("restore", file, "--data", tmp_path / "new")
    assert again.returncode == 2
    assert "a fresh store" in again.stderr


def test_unusable_input_is_one_line_and_exit_2(filled: Path, tmp_path: Path) -> None:
    here = tmp_path / "here"
    here.write_text("x")
    for call in (
        called("backup", here, "--data", filled),
        called("backup", tmp_path / "a", "--data", tmp_path / "none"),
        called("restore", here, "--data", tmp_path / "new"),
        called("restore", here, "--data", tmp_path / "pg", url="postgresql://nobody@localhost:1/none"),
    ):
        assert (call.returncode, call.stdout) == (2, "")
        assert len(call.stderr.splitlines()) == 1, call.stderr
    assert not (tmp_path / "none").exists()
    assert here.read_text() == "x"
