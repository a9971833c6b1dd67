"""The two locks: no address, every version with its hash, test holding all of run."""

import re
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

LOCKS = ("run", "test")


def entries(tree: Path, lock: str) -> dict[str, str]:
    """{'name==version ; marker': its hash lines} of one lock."""
    text = (tree / "requirements" / f"{lock}.txt").read_text(encoding="utf-8")
    parts = re.split(r"^(?=\S)", text, flags=re.MULTILINE)[1:]
    heads = [part.partition(" \\\n") for part in parts]
    return {head: hashes for head, _, hashes in heads}


@pytest.mark.parametrize("lock", LOCKS)
def test_a_lock_holds_no_address(tree: Path, lock: str) -> None:
    text = (tree / "requirements" / f"{lock}.txt").read_text(encoding="utf-8")
    assert re.findall(r"\S*(?:://|@|--(?!hash=)|file:)\S*", text) == []


@pytest.mark.parametrize("lock", LOCKS)
def test_every_version_is_pinned_with_a_hash(tree: Path, lock: str) -> None:
    held = entries(tree, lock)
    assert held
    for head, hashes in held.items():
        assert re.match(r"[a-z0-9\-]+==[\w.]+( ; .+)?$", head), head
        assert re.fullmatch(r"(\s+--hash=sha256:[0-9a-f]{64}( \\)?\n)+", hashes), head


def test_the_test_lock_holds_all_of_the_run_lock(tree: Path) -> None:
    assert entries(tree, "run").items() <= entries(tree, "test").items()


@pytest.mark.parametrize(("lock", "extras"), [("run", ["build"]), ("test", ["build", "test"])])
def test_the_lock_satisfies_what_the_project_asks(tree: Path, lock: str, extras: list[str]) -> None:
    project = tomllib.loads((tree / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    asked = project["dependencies"] + [line for e in extras for line in project["optional-dependencies"][e]]
    pinned: dict[str, list[str]] = {}
    for head in entries(tree, lock):
        name, version = head.split(" ;")[0].split("==")
        pinned.setdefault(name, []).append(version)
    for requirement in map(Requirement, asked):
        versions = pinned.get(canonicalize_name(requirement.name), [])
        assert versions, f"{requirement.name} is not in requirements/{lock}.txt: make lock"
        assert all(requirement.specifier.contains(version) for version in versions), requirement
