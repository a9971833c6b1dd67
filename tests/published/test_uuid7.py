"""UUID version 7 against the worked example of the standard.

Source: RFC 9562, appendix A.6 (secondary: as other projects quote it): 2022-02-22 14:22:22.00
GMT-5 is 0x017F22E279B0 ms, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F, giving
017F22E2-79B0-7CC3-98C4-DC0C0C07398F. Exact: no tolerance.
"""

from uuid import RFC_4122, UUID

from hypothesis import given
from hypothesis import strategies as st

from secondfix.house import uuid7


def test_the_standards_example() -> None:
    rand = (0xCC3 << 68 | 0x18C4DC0C0C07398F).to_bytes(10, "big")
    assert uuid7(unix_ms=0x017F22E279B0, random=rand) == "017f22e2-79b0-7cc3-98c4-dc0c0c07398f"


@given(st.integers(0, 2**48 - 1), st.binary(min_size=10, max_size=10))
def test_the_layout_is_that_of_the_standard_as_an_older_reader_sees_it(unix_ms: int, random: bytes) -> None:
    """RFC 9562, 5.7: 48 bits of time, version 0111, 12 bits, variant 10, 62 bits; read by uuid of Python."""
    made = UUID(uuid7(unix_ms=unix_ms, random=random))
    assert made.version == 7
    assert made.variant == RFC_4122
    assert made.int >> 80 == unix_ms
    assert str(made) == uuid7(unix_ms=unix_ms, random=random)
