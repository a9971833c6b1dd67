"""Box fill against worked examples of NEC 314.16 and the tables that trade charts print."""

from fractions import Fraction

import pytest

from secondfix.electrical.box_fill import Fill, holds
from secondfix.selection.changes import GANG_BOX_TENTHS_IN3, SQUARE_BOX_TENTHS_IN3
from tests.electrical.sound import answers, at, spoilt
from tests.example_house import seen

# Worked fills in cubic inches after NEC 314.16(B)(1) to (5) and table 314.16(B) (secondary, four quotations
# agree), added up apart from this code: conductors + clamps + devices + grounds. Exact: fractions.
WORKED = {
    "two 14/2 with ground, one switch, clamps: 8 + 2 + 4 + 2": (
        Fill({"14": 4}, {}, {"14": 2}, clamps=True, fittings=0, mounts=("14",)),
        "16.0",
    ),
    "14/2 in, 14/3 out, with grounds, one switch, clamps: 10 + 2 + 4 + 2": (
        Fill({"14": 5}, {}, {"14": 2}, clamps=True, fittings=0, mounts=("14",)),
        "18.0",
    ),
    "the same in 12 AWG: 11.25 + 2.25 + 4.5 + 2.25": (
        Fill({"12": 5}, {}, {"12": 2}, clamps=True, fittings=0, mounts=("12",)),
        "20.25",
    ),
    "two 14/2 and one 14/3, two switches, clamps: 14 + 2 + 8 + 2": (
        Fill({"14": 7}, {}, {"14": 3}, clamps=True, fittings=0, mounts=("14", "14")),
        "26.0",
    ),
    "six 12/2, one device, clamps, six grounds: 27 + 2.25 + 4.5 + 1.5 x 2.25": (
        Fill({"12": 12}, {}, {"12": 6}, clamps=True, fittings=0, mounts=("12",)),
        "37.125",
    ),
}


@pytest.mark.parametrize("name", WORKED)
def test_a_worked_fill(name: str) -> None:
    fill, cubic_inches = WORKED[name]
    assert fill.volume_in3() == Fraction(cubic_inches)


# Table 314.16(B), in³ for one conductor (secondary, four quotations agree). Exact.
@pytest.mark.parametrize(
    ("size", "cubic_inches"),
    [("18", "1.5"), ("16", "1.75"), ("14", "2"), ("12", "2.25"), ("10", "2.5"), ("8", "3"), ("6", "5")],
)
def test_the_volume_of_one_conductor(size: str, cubic_inches: str) -> None:
    fill = Fill({size: 1}, {}, {}, clamps=False, fittings=0)  # type: ignore[dict-item] # sizes of the table
    assert fill.volume_in3() == Fraction(cubic_inches)


def test_a_loop_counts_two_and_a_stud_one_of_the_largest() -> None:
    # 314.16(B)(1) and (3) (secondary): a long loop is two conductors; each kind of stud or hickey is one.
    looped = Fill({}, {"12": 1}, {}, clamps=False, fittings=2)
    assert looped.volume_in3() == 4 * Fraction("2.25")


def test_four_grounds_count_as_one() -> None:
    # 314.16(B)(5), edition 2020 on (secondary): up to four are one, a quarter for each further one.
    counts = [Fill({}, {}, {"14": n}, clamps=False, fittings=0).volume_in3() for n in (1, 4, 5, 8)]
    assert counts == [2, 2, Fraction("2.5"), 4]


# Device boxes of table 314.16(A) (secondary), 1 in³ = 16.387064 cm³: 3 x 2 x 2-3/4 is 14.0, x 3-1/2 is
# 18.0. Whole cubic millimetres: 14.0 in³ is 229 418.9, 18.0 in³ is 294 967.2, of which the document keeps
# the whole.
@pytest.mark.parametrize(
    ("volume_mm3", "conductors", "outcome"),
    [
        (229_418, {"14": 4}, "fails"),
        (294_967, {"14": 4}, "passes"),
        (294_967, {"14": 5}, "passes"),
        (294_967, {"12": 5}, "fails"),
    ],
)
def test_which_device_box_takes_a_worked_fill(
    volume_mm3: int, conductors: dict[str, int], outcome: str
) -> None:
    size = next(iter(conductors))
    changes: dict[str, object] = {
        "boxes.B1.volume_mm3": seen(volume_mm3),
        "boxes.B1.conductors": seen(conductors),
        "boxes.B1.grounds": seen({size: 2}),
        "boxes.B1.mounts.1.largest_awg": seen(size),
    }
    found = at(answers(spoilt(changes, of="nec")), "box_fill", "B1")
    assert found is not None
    assert found.outcome.value == outcome


def test_a_box_exactly_full_and_a_hundredth_short() -> None:
    assert holds(294_967, Fraction(18))
    assert not holds(294_967, Fraction("18.01"))


# Table 314.16(A) (secondary): device boxes 3 x 2 x 2-1/2, 2-3/4 and 3-1/2 of 12.5, 14.0 and 18.0 in³, a
# masonry box of 3-1/2 in for each gang 21.0; square boxes 4 x 2-1/8 of 30.3 and 4-11/16 x 2-1/8 of 42.0.
# Exact.
def test_the_larger_boxes_that_select_offers_are_those_of_the_table() -> None:
    assert [n / 10 for n in GANG_BOX_TENTHS_IN3] == [12.5, 14.0, 18.0, 21.0]
    assert [n / 10 for n in SQUARE_BOX_TENTHS_IN3] == [30.3, 42.0]
