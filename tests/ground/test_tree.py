"""What no file of the tree may hold, and what pages of docs promise by their length."""

import re
from pathlib import Path

import pytest

from tests.ground.tracked import lines_matching, names, texts

# Each pattern is spelt so that it does not find itself.
MACHINE_PATH = r"(?:^|[^\w.\-])/(?:[h]ome|[r]oot|[w]ork|[U]sers)/\w"
REGISTRY = r"(?i)[p]ypi\.|[p]ythonhosted|[n]pmjs|[c]rates\.io|--(?:extra-)?[i]ndex-url[= ]|--[f]ind-links[= ]"
DRAWERS = {"utils", "util", "helpers", "helper", "manager", "managers", "common", "misc", "shared", "tools"}


def test_no_file_names_a_folder_of_some_machine() -> None:
    assert lines_matching(MACHINE_PATH) == []


def test_no_file_names_a_package_registry() -> None:
    assert lines_matching(REGISTRY) == []


@pytest.mark.parametrize(
    ("pattern", "line"),
    [
        (MACHINE_PATH, "open('/ho" + "me/ann/house.json')"),
        (REGISTRY, "https://py" + "pi.org/simple"),
        (REGISTRY, "--index" + "-url https://packages.example"),
    ],
)
def test_the_patterns_find_what_they_are_for(pattern: str, line: str) -> None:
    assert re.search(pattern, line)


def test_no_module_is_a_drawer() -> None:
    modules = [Path(name) for name in names() if name.endswith(".py")]
    assert [str(module) for module in modules if {*module.parts[:-1], module.stem} & DRAWERS] == []


def test_nothing_built_is_tracked() -> None:
    built = re.compile(r"(^|/)(out|__pycache__|\.venv|dist|build)/|\.(pyc|egg-info|coverage)$")
    assert [name for name in names() if built.search(name)] == []


def test_a_decision_page_fits_on_a_page() -> None:
    pages = {name: text for name, text in texts() if name.startswith("docs/decisions/")}
    assert pages
    assert {name: len(text.splitlines()) for name, text in pages.items() if len(text.splitlines()) > 60} == {}


def test_the_readme_shows_a_picture_within_forty_lines(tree: Path) -> None:
    first = (tree / "README.md").read_text(encoding="utf-8").splitlines()[:40]
    pictures = [found for line in first for found in re.findall(r"!\[[^\]]+\]\(([^)\s]+)\)", line)]
    assert pictures, "README.md: no picture with a description in its first 40 lines"
    assert [picture for picture in pictures if not (tree / picture).is_file()] == []
