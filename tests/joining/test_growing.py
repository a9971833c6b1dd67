"""Who has a parent while one after the other joins, against a search from the controller each time."""

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from secondfix.joining.growing import Growing
from secondfix.joining.parents import Mesh, Standing
from secondfix.joining.readings import Reach, bits

MOST = 9


@st.composite
def reaches(draw: st.DrawFn, most: int = MOST) -> Reach:
    """A few devices, links at random and the same both ways, a limit of depth for some."""
    everyone = (1 << most) - 1
    near = [0] * most
    for a in range(most):
        for b in range(a):
            if draw(st.integers(0, 2)) == 0:
                near[a] |= 1 << b
                near[b] |= 1 << a
    limited = draw(st.integers(0, everyone))
    deepest = draw(st.integers(1, 4))
    within = (*[everyone] * (deepest + 1), everyone & ~limited)
    roots, carriers = draw(st.integers(0, everyone)), draw(st.integers(0, everyone))
    return Reach(roots, tuple(near), carriers, within)


@given(reaches(), st.integers(0, (1 << MOST) - 1), st.permutations(range(MOST)))
def test_what_is_kept_up_is_what_a_search_finds(reach: Reach, joined: int, order: list[int]) -> None:
    growing = Growing(reach, joined)
    for number in order:
        assert growing.found == reach.ready(joined)
        growing.join(number)
        joined |= 1 << number
    assert growing.found == reach.ready(joined)


@given(reaches(), reaches(), st.integers(0, (1 << MOST) - 1), st.permutations(range(MOST)))
def test_a_whole_mesh_is_kept_up(good: Reach, hoped: Reach, sure: int, order: list[int]) -> None:
    lone = ~sure & 0b101010101 & ((1 << MOST) - 1)
    standing = tuple(
        Standing.GOOD if sure >> n & 1 else Standing.NONE if lone >> n & 1 else Standing.NOT_KNOWN
        for n in range(MOST)
    )
    ids = tuple(f"D{n}" for n in range(MOST))
    mesh = Mesh(ids, good, hoped, hoped, np.zeros((MOST + 1, MOST + 1)), standing, sure, lone)
    growing, joined = mesh.growing(0), 0
    for number in order:
        assert growing.ready() == mesh.ready(joined)
        growing.join(number)
        joined |= 1 << number
    assert growing.ready() == mesh.ready(joined)


@given(reaches(), st.integers(0, (1 << MOST) - 1))
def test_grown_apart_neither_knows_of_the_other(reach: Reach, joined: int) -> None:
    first = Growing(reach, joined)
    other = first.again()
    for number in bits(~joined & ((1 << MOST) - 1)):
        other.join(number)
    assert first.found == reach.ready(joined)
    assert other.found == reach.ready((1 << MOST) - 1)
