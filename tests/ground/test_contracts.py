"""The import contracts bite: each broken rule is found in a small tree under the project's own contracts."""

import configparser
import os
import subprocess
import sys
from pathlib import Path

import pytest


def contracts(tree: Path) -> configparser.ConfigParser:
    read = configparser.ConfigParser()
    read.read(tree / ".importlinter", encoding="utf-8")
    return read


def standing(tree: Path) -> list[str]:
    """Packages that the layers say stand (those not in brackets)."""
    layers = contracts(tree)["importlinter:contract:layers"]["layers"]
    return [name for name in layers.replace("|", " ").split() if not name.startswith("(")]


def judged(tree: Path, folder: Path, files: dict[str, str]) -> str:
    """What the contracts say of a tree that holds every standing package, with `files` written over it."""
    package = folder / "secondfix"
    doors = {f"{name}/__init__.py": "" for name in standing(tree)}
    for path, text in {"__init__.py": "", **doors, **files}.items():
        (package / path).parent.mkdir(parents=True, exist_ok=True)
        (package / path).write_text(text, encoding="utf-8")
    command = "import sys; from importlinter.cli import lint_imports_command as run; run()"
    ended = subprocess.run(
        [sys.executable, "-c", command, "--no-cache", "--no-logo", str(tree / ".importlinter")],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(folder)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert ended.returncode in {0, 1}, ended.stderr
    assert (ended.returncode == 0) == ("Broken contracts" not in ended.stdout), ended.stdout + ended.stderr
    return ended.stdout


def test_the_door_of_the_store_and_the_step_before_it_are_open(tree: Path, tmp_path: Path) -> None:
    lines = "import secondfix.store.door\nimport secondfix.store.start"
    files = {"store/door.py": "", "store/start.py": "", "cli/serve.py": lines}
    assert "0 broken" in judged(tree, tmp_path, files)


def test_each_standing_package_has_its_door(tree: Path) -> None:
    read = contracts(tree)
    for name in set(standing(tree)) - {"actions"}:  # a row of doors: one module a verb
        door = read[f"importlinter:contract:door-{name}"]
        assert door["protected_modules"] == f"secondfix.{name}.*"
        assert door["allowed_importers"] == f"secondfix.{name}"


def test_a_tree_that_keeps_to_the_layers_is_kept(tree: Path, tmp_path: Path) -> None:
    files = {
        "house/__init__.py": "from secondfix.house.document import House",
        "house/document.py": "from secondfix.terms import LINE\nHouse = LINE",
        "terms/__init__.py": "LINE = 1",
        "radio/__init__.py": "from secondfix.house import House",
        "radio/path.py": "from secondfix.house import House",
    }
    assert "0 broken" in judged(tree, tmp_path, files)


@pytest.mark.parametrize(
    ("files", "told"),
    [
        ({"house/__init__.py": "import secondfix.electrical"}, "secondfix.house is not allowed to import"),
        ({"radio/__init__.py": "import secondfix.naming"}, "secondfix.radio is not allowed to import"),
        ({"house/__init__.py": "def f():\n    import secondfix.cli"}, "secondfix.house -> secondfix.cli"),
        ({"drawer/__init__.py": ""}, "- secondfix.drawer"),
        (
            {"house/walls.py": "", "radio/path.py": "from secondfix.house import walls"},
            "secondfix.radio.path -> secondfix.house.walls",
        ),
        ({"scenes/ledger.py": "import socket"}, "secondfix.scenes.ledger -> socket"),
        (
            {"store/houses.py": "", "cli/serve.py": "from secondfix.store import houses"},
            "secondfix.cli.serve -> secondfix.store.houses",
        ),
    ],
    ids=[
        "upward",
        "sideways",
        "inside a function",
        "a package nobody named",
        "past the door",
        "to the net",
        "past the store's door",
    ],
)
def test_a_broken_rule_is_found(tree: Path, tmp_path: Path, files: dict[str, str], told: str) -> None:
    assert told in judged(tree, tmp_path, files)
