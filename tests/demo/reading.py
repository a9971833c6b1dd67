"""The demo houses as the tests read them."""

from functools import cache
from pathlib import Path

from secondfix.actions.check import check
from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding
from secondfix.house import House, read_house

DEMO = Path(__file__).resolve().parents[2] / "demo"


def text_of(name: str) -> str:
    """The file of a demo house."""
    return (DEMO / name).read_text(encoding="utf-8")


@cache
def house_of(name: str) -> House:
    """The house, read without any model at hand but its own."""
    house = read_house(text_of(name).encode(), where=name, models={})
    assert isinstance(house, House), "\n".join(map(str, house))
    return house


@cache
def findings_of(name: str) -> tuple[Finding, ...]:
    """Every answer of `check`, under the default assumptions."""
    return check(house_of(name), assumptions=default_assumptions()).findings
