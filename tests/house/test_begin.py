"""New houses: their ids after RFC 9562."""

from uuid import UUID

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import begin, uuid7


@given(st.integers(0, 2**48 - 1), st.binary(min_size=10, max_size=10))
def test_an_id_has_the_layout_of_version_7(unix_ms: int, random: bytes) -> None:
    made = UUID(uuid7(unix_ms=unix_ms, random=random))
    assert made.version == 7
    assert made.variant == "specified in RFC 4122"
    assert made.int >> 80 == unix_ms


def test_ids_sort_by_time() -> None:
    ids = [uuid7(unix_ms=ms, random=b"\xff" * 10) for ms in (1, 2, 1_000, 1_732_000_000_000)]
    assert ids == sorted(ids)


def test_random_bits_all_reach_the_id() -> None:
    bits = {uuid7(unix_ms=5, random=(1 << n).to_bytes(10, "big")) for n in range(80)}
    assert len(bits) == 75  # 12 + 62 random bits, and the id of none (6 of the 80 given are left over)


@pytest.mark.parametrize(("unix_ms", "random"), [(-1, b"0" * 10), (2**48, b"0" * 10), (0, b"0" * 9)])
def test_too_little_is_refused(unix_ms: int, random: bytes) -> None:
    with pytest.raises(ValueError, match="48 bits"):
        uuid7(unix_ms=unix_ms, random=random)


def test_a_new_house_is_a_valid_house() -> None:
    house = begin(house_id=uuid7(unix_ms=9, random=bytes(10)), name="Pellow Lane 12")
    assert list(house.rooms) == ["R1"]
