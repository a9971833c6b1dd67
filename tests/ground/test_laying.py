"""requirements/install.sh against a stand-in Python that notes what it is asked: no network, no real pip."""

import os
import shutil
import subprocess
from pathlib import Path

import pytest

# Makes a .venv whose python is itself; notes each pip call; fails the install while ./broken stands.
STAND_IN = """#!/bin/sh
case "$*" in
  "-V") echo "Python 3.11.0" ;;
  "-m venv .venv") mkdir -p .venv/bin; cp "$0" .venv/bin/python; echo venv >>calls ;;
  "-m pip install"*) echo "${8-}" >>calls; [ ! -e broken ] ;;
esac
"""


class Ground:
    """A folder with the script, two locks and the stand-in."""

    def __init__(self, folder: Path, script: Path) -> None:
        self.folder = folder
        (folder / "requirements").mkdir()
        shutil.copy(script, folder / "requirements" / "install.sh")
        for name in ("pyproject.toml", "requirements/run.txt", "requirements/test.txt"):
            (folder / name).write_text(f"{name}\n", encoding="utf-8")
        self.python = folder / "python"
        self.python.write_text(STAND_IN, encoding="utf-8")
        self.python.chmod(0o755)

    def lay(self, name: str) -> list[str]:
        """Lay a lock; what was done: 'venv', and the locks installed."""
        calls = self.folder / "calls"
        calls.write_text("", encoding="utf-8")
        subprocess.run(
            ["sh", "requirements/install.sh", name],
            cwd=self.folder,
            env={**os.environ, "PYTHON": str(self.python)},
            capture_output=True,
            check=False,
        )
        words = calls.read_text(encoding="utf-8").split()
        return [word for word in words if word == "venv" or word.startswith("requirements/")]


@pytest.fixture
def ground(tmp_path: Path, tree: Path) -> Ground:
    return Ground(tmp_path, tree / "requirements" / "install.sh")


def test_the_first_laying_makes_an_environment(ground: Ground) -> None:
    assert ground.lay("run") == ["venv", "requirements/run.txt"]


def test_nothing_is_done_while_nothing_changed(ground: Ground) -> None:
    ground.lay("run")
    assert ground.lay("run") == []


def test_the_test_lock_is_laid_over_the_run_lock_and_holds_it(ground: Ground) -> None:
    ground.lay("run")
    assert ground.lay("test") == ["requirements/test.txt"]
    assert ground.lay("run") == []


def test_a_changed_lock_is_laid_again_into_the_same_environment(ground: Ground) -> None:
    ground.lay("run")
    (ground.folder / "requirements/run.txt").write_text("newer\n", encoding="utf-8")
    assert ground.lay("run") == ["requirements/run.txt"]


def test_an_environment_cut_short_is_made_anew(ground: Ground) -> None:
    (ground.folder / "broken").touch()
    ground.lay("run")
    (ground.folder / "broken").unlink()
    assert ground.lay("run") == ["venv", "requirements/run.txt"]


def test_an_environment_whose_python_is_gone_is_made_anew(ground: Ground) -> None:
    ground.lay("run")
    (ground.folder / ".venv/bin/python").unlink()
    assert ground.lay("run") == ["venv", "requirements/run.txt"]


def test_a_folder_that_was_moved_is_laid_again(ground: Ground, tmp_path: Path) -> None:
    ground.lay("run")
    moved = tmp_path.with_name(tmp_path.name + "-moved")
    tmp_path.rename(moved)
    ground.folder, ground.python = moved, moved / "python"
    assert ground.lay("run") == ["requirements/run.txt"]
