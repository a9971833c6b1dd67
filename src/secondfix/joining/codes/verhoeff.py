"""The Verhoeff check digit, which finds every single wrong digit and every exchange of neighbours.

Source: J. Verhoeff, Error Detecting Decimal Codes, 1969 (from memory; checked against python-stdnum in the
tests). The tables are made from their definitions: the dihedral group D5 and the powers of one permutation.
"""

from __future__ import annotations

_STEP = (1, 5, 7, 6, 2, 8, 3, 0, 9, 4)


def _product(left: int, right: int) -> int:
    """Multiply in D5: 0 to 4 turn, 5 to 9 turn and mirror."""
    turned = left + right if left < 5 else left - right
    return turned % 5 + (5 if (left < 5) != (right < 5) else 0)


def _permuted(digit: int, times: int) -> int:
    for _ in range(times % 8):
        digit = _STEP[digit]
    return digit


def verhoeff_holds(digits: str) -> bool:
    """Whether the last of `digits` (decimal, at least one, else ValueError) is the check digit of those
    before.
    """
    if not digits:
        raise ValueError("no digits to check")
    check = 0
    for place, digit in enumerate(reversed(digits)):
        check = _product(check, _permuted(int(digit), place))
    return check == 0
