"""Lengths: metric, or feet and inches for houses that follow NFPA 70."""

from typing import Protocol

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.terms import (
    drawn_length,
    feet_inches,
    in_feet,
    printed_mm,
    taped_gap,
    taped_height,
    walked_way,
)


class Said(Protocol):
    """What each of these functions is called as."""

    def __call__(self, mm: int, *, nec: bool) -> str: ...


@pytest.mark.parametrize(
    ("mm", "words"),
    [
        (25.4, '1"'),
        (12.7, '1/2"'),
        (304.8, "1'-0\""),
        (914.4, "3'-0\""),
        (1050, "3'-5 3/8\""),  # 41.339 in; 3/8 is 0.375
        (1219.2, "4'-0\""),
        (0, '0"'),
        (314.3, "1'-0 3/8\""),
        (303.9, "1'-0\""),  # 11.965 in rounds up to the foot
        (-12.7, '−1/2"'),
    ],
)
def test_feet_and_inches_by_the_inch_of_exactly_25_4_mm(mm: float, words: str) -> None:
    assert feet_inches(mm) == words


@given(st.integers(0, 30_000), st.sampled_from([1, 8, 16]))
def test_what_is_printed_is_within_half_a_part_of_an_inch(mm: int, parts: int) -> None:
    words = feet_inches(mm, parts_of_inch=parts).rstrip('"')
    feet, _, rest = words.rpartition("'-")
    inches = sum(int(p.split("/")[0]) / int([*p.split("/"), "1"][1]) for p in rest.split())
    assert inches < 12
    # Rounding errs by half of one part at most; a hair for the division.
    assert abs((int(feet or 0) * 12 + inches) * 25.4 - mm) <= 25.4 / parts / 2 + 1e-9


@pytest.mark.parametrize(
    ("said", "metric", "nec"),
    [
        (drawn_length, "1.05 m", "1050 mm (3'-5 3/8\")"),
        (taped_height, "1.05 m", "3'-5 3/8\""),
        (taped_gap, "1.1 m", "3'-5\""),
        (walked_way, "1 m", "3 ft"),
        (printed_mm, "1050 mm", "1050 mm (3'-5 3/8\")"),
    ],
)
def test_only_nec_houses_get_feet_and_inches(said: Said, metric: str, nec: str) -> None:
    assert said(1050 if said is not taped_gap else 1051, nec=False) == metric
    assert said(1050, nec=True) == nec


def test_only_lengths_have_feet_behind_them() -> None:
    assert (in_feet(25, "mm"), in_feet(30, "m"), in_feet(12, "dB")) == ('1"', "98 ft", "")
