"""UUID version 7 against the worked example of the standard.

Source: RFC 9562, appendix A.6 (read as published figures, from memory of the text): 2022-02-22 14:22:22.00
GMT-5 is 0x017F22E279B0 ms, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F, giving
017F22E2-79B0-7CC3-98C4-DC0C0C07398F. Exact: no tolerance.
"""

from secondfix.house import uuid7


def test_the_standards_example() -> None:
    rand = (0xCC3 << 68 | 0x18C4DC0C0C07398F).to_bytes(10, "big")
    assert uuid7(unix_ms=0x017F22E279B0, random=rand) == "017f22e2-79b0-7cc3-98c4-dc0c0c07398f"
