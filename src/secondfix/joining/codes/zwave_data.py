"""The data after the DSK in a Z-Wave QR: type * 2 + critical (2 digits), length (2 digits), value.

Source: Z-Wave Alliance, Node Provisioning QR Code Format (2021-03-18), types and ranges from memory; types 0
and 1 confirmed by its published example.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from .reading import Field, Remark

_PROTOCOLS = {0: "Z-Wave", 1: "Z-Wave Long Range"}


def read_data(digits: str) -> tuple[list[Remark], list[Field]]:
    """Faults and fields of all items in `digits` (decimal digits only); reading ends where one is cut off.

    An unknown item is passed over unless it is marked critical. No value stands in a fault.
    """
    faults: list[Remark] = []
    fields: list[Field] = []
    seen: set[int] = set()
    at = 0
    while at < len(digits):
        value = _value(digits, at)
        if value is None:
            says = (
                "The data after the DSK stops in the middle of an item; it was expected to be whole: "
                "scan the QR again."
            )
            faults.append(Remark("truncated-tlv", says))
            break
        kind, critical = divmod(int(digits[at : at + 2]), 2)
        if kind in seen:
            says = f"Item {kind} stands twice after the DSK; once was expected: scan the QR again."
            faults.append(Remark("repeated-tlv", says))
        else:
            seen.add(kind)
            _item(kind, bool(critical), value, faults, fields)
        at += 4 + len(value)
    return faults, fields


def _value(digits: str, at: int) -> str | None:
    if len(digits) - at < 4:
        return None
    end = at + 4 + int(digits[at + 2 : at + 4])
    return digits[at + 4 : end] if end <= len(digits) else None


def _item(kind: int, critical: bool, value: str, faults: list[Remark], fields: list[Field]) -> None:
    if kind not in _KNOWN:
        if critical:
            says = (
                f"Item {kind} is not known here and is marked as one that must be understood: ask the "
                "maker how to join."
            )
            faults.append(Remark("unknown-critical-tlv", says))
        else:
            fields.append(Field(f"item_{kind}", f"not known, {len(value)} digits"))
        return
    lengths, read = _KNOWN[kind]
    if len(value) not in lengths:
        expected = str(lengths[0]) if len(lengths) == 1 else f"{lengths[0]} to {lengths[-1]}"
        says = (
            f"Item {kind} has {len(value)} digits; {expected} were expected: scan the QR again, or "
            "ask the maker."
        )
        faults.append(Remark("bad-tlv-length", says))
        return
    result = read(value)
    if isinstance(result, Remark):
        faults.append(result)
    else:
        fields += result


def _numbers(kind: int, digits: str) -> list[int] | Remark:
    """The 16-bit numbers of 5 digits each in `digits`, or the fault that one is too large."""
    numbers = [int(group) for group in re.findall(".{1,5}", digits)]
    if max(numbers) <= 65535:
        return numbers
    says = f"A number in item {kind} is above 65,535, the largest it can be: scan the QR again."
    return Remark("field-overflow", says)


def _product_type(value: str) -> list[Field] | Remark:
    numbers = _numbers(0, value)
    if isinstance(numbers, Remark):
        return numbers
    generic, specific = divmod(numbers[0], 256)
    device_class = f"generic 0x{generic:02X}, specific 0x{specific:02X}"
    return [Field("device_class", device_class), Field("installer_icon", f"0x{numbers[1]:04X}")]


def _product_id(value: str) -> list[Field] | Remark:
    numbers = _numbers(1, value)
    if isinstance(numbers, Remark):
        return numbers
    names = ("manufacturer", "product_type", "product")
    fields = [Field(name, f"0x{number:04X}") for name, number in zip(names, numbers, strict=False)]
    return [*fields, Field("application_version", "{}.{:02d}".format(*divmod(numbers[3], 256)))]


def _interval(value: str) -> list[Field] | Remark:
    if int(value) >= 5:
        return [Field("request_interval_s", int(value) * 128)]
    says = (
        f"The longest time between SmartStart requests is {int(value)} units of 128 s; 5 to 99 were "
        "expected: scan the QR again, or ask the maker."
    )
    return Remark("field-range", says)


def _uuid(value: str) -> list[Field] | Remark:
    numbers = _numbers(3, value[2:])
    if isinstance(numbers, Remark):
        return numbers
    # Groups of four, apart: no long run of a public value may repeat a secret.
    return [
        Field("uuid", ":".join(f"{number:04X}" for number in numbers)),
        Field("uuid_form", int(value[:2])),
    ]


def _protocols(value: str) -> list[Field] | Remark:
    names = [name for bit, name in _PROTOCOLS.items() if int(value) >> bit & 1]
    return [Field("supported_protocols", ", ".join(names) or "none known")]


_Read = Callable[[str], list[Field] | Remark]
_KNOWN: dict[int, tuple[tuple[int, ...], _Read]] = {
    0: ((10,), _product_type),
    1: ((20,), _product_id),
    2: ((2,), _interval),
    3: ((42,), _uuid),
    4: ((1, 2, 3, 4, 5), _protocols),
}
