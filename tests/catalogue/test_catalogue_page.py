"""docs/catalogue.md names every field and word of a model file, and its example is one."""

import re
from enum import StrEnum
from pathlib import Path

import pytest

from secondfix.catalogue import (
    Act,
    CodeKind,
    Edge,
    Form,
    Model,
    NeutralNeed,
    Output,
    Procedure,
    Rating,
    Removal,
    Stated,
    Step,
    Supply,
    WholeSwitches,
    read_model,
)
from secondfix.terms import PowerLossState, Protocol, RatingKind

WORDS = (
    Act,
    CodeKind,
    Edge,
    Form,
    NeutralNeed,
    Output,
    PowerLossState,
    Protocol,
    RatingKind,
    Removal,
    Stated,
    Supply,
    WholeSwitches,
)


@pytest.fixture(scope="module")
def page(tree: Path) -> str:
    return (tree / "docs" / "catalogue.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("part", [Model, Procedure, Rating, Step])
def test_every_field_is_named(part: type[Model | Procedure | Rating | Step], page: str) -> None:
    assert [name for name in part.model_fields if f"`{name}`" not in page] == []


@pytest.mark.parametrize("words", WORDS)
def test_every_word_is_named(words: type[StrEnum], page: str) -> None:
    assert [word.value for word in words if f"`{word.value}`" not in page] == []


def test_every_form_says_where_it_stands(page: str) -> None:
    table = page.split("### Where a form may stand")[1].split("###", maxsplit=1)[0]
    assert sorted(
        re.findall(r"`(\w+)`", "".join(re.findall(r"^\| (`[^|]*) \|", table, re.MULTILINE)))
    ) == sorted(form.value for form in Form)


def test_required_fields_are_marked_so(page: str) -> None:
    marked = {
        name: mark
        for names, mark in re.findall(r"^\| (`[^|]*`) \| ([●○]) \|", page, re.MULTILINE)
        for name in re.findall(r"`(\w+)`", names)
    }
    assert marked == {n: "●" if f.is_required() else "○" for n, f in Model.model_fields.items()}


def test_the_example_is_a_model(page: str) -> None:
    (example,) = re.findall(r"```toml\n(.*?)```", page, re.DOTALL)
    assert isinstance(read_model(example, where="docs/catalogue.md"), Model)


def test_the_example_current_is_right(page: str) -> None:
    """I = P / U at power factor 1."""
    watts, volts, milliamperes = re.findall(r"(\d+) W of LED lamps at (\d+) V is (\d+) mA", page)[0]
    assert round(int(watts) / int(volts) * 1000) == int(milliamperes)
