"""The example house and its papers, set once."""

from datetime import date

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.house import Schedule
from secondfix.papers import Setting, TitleBlock, key_ring_pdf, pack_pdf
from tests.papers.example import FINDINGS, KEYS, example


@pytest.fixture(scope="session")
def house() -> Schedule:
    return example()


@pytest.fixture(scope="session")
def setting() -> Setting:
    return Setting(TitleBlock("B, 3 edits since", date(2026, 11, 19), "M. Ilves"))


@pytest.fixture(scope="session")
def pack(house: Schedule, setting: Setting) -> bytes:
    made = pack_pdf(house, FINDINGS, default_assumptions(), setting=setting)
    assert isinstance(made, bytes), made
    return made


@pytest.fixture(scope="session")
def ring(house: Schedule, setting: Setting) -> bytes:
    made = key_ring_pdf(house.house, KEYS, setting=setting)
    assert isinstance(made, bytes), made
    return made
