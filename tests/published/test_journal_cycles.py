"""Rings of crossed gangs, counted over all permutations, against a published table.

The number of permutations of n elements with k cycles is the unsigned Stirling number of the first
kind. Source: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, section 24.1.3 and its table of
Stirling numbers of the first kind (secondary: the rows to n = 6 as reprinted in a reference manual of
computer algebra; from memory that the handbook agrees). Counts are whole: no tolerance.
"""

from collections import Counter
from itertools import permutations

import pytest

from secondfix.journal.crossing import crossings

# n: permutations with 1, 2, ... n cycles
STIRLING_FIRST_KIND = {
    1: (1,),
    2: (1, 1),
    3: (2, 3, 1),
    4: (6, 11, 6, 1),
    5: (24, 50, 35, 10, 1),
    6: (120, 274, 225, 85, 15, 1),
}


@pytest.mark.parametrize("n", STIRLING_FIRST_KIND)
def test_rings_and_gangs_that_are_right_count_as_the_table_says(n: int) -> None:
    designed = {f"B1.{i + 1}": f"L{i}" for i in range(n)}
    cycles = Counter[int]()
    for order in permutations(range(n)):
        found = crossings(designed, {f"B1.{i + 1}": f"L{order[i]}" for i in range(n)})
        right = n - sum(len(c.channels) for c in found)
        cycles[len(found) + right] += 1
    assert tuple(cycles[k] for k in range(1, n + 1)) == STIRLING_FIRST_KIND[n]
