"""EUI-64 as printed on a label."""

import pytest
from hypothesis import given

from secondfix.joining.codes import read_eui64
from tests.joining.codes import encode


def ids(text: str) -> list[str]:
    return [fault.id for fault in read_eui64(text).faults]


@given(encode.addresses())
def test_every_way_of_printing_gives_the_same_address(address: bytes) -> None:
    forms = [
        address.hex(),
        address.hex(":"),
        address.hex("-").upper(),
        address.hex(".", 2),
        "0X" + address.hex(),
    ]
    for form in (*forms, f"  {address.hex(' ', 4)}\n"):
        found = read_eui64(form)
        assert found.ok
        assert found.value("address") == address.hex(":")
        assert found.value("on_air") == address[::-1].hex(":")


@pytest.mark.parametrize(
    ("text", "fault", "words"),
    [
        ("02:50:7a:31:c4:8b", "48-bit-address", "12 hex digits"),
        ("02:50:7a:ff:e:31:c4:8b", "digit-missing", "in group 5"),
        ("02507afffe31c48", "digit-missing", "one is missing,"),
        ("02:50:7a:fff:fe:31:c4:8b", "digit-too-many", "in group 4"),
        ("02507afffe31c48bb", "digit-too-many", "one is too many,"),
        ("02507afffe31c4", "bad-length", "14 hex digits"),
        ("02507afffe31c48O", "not-hex", "“O” at position 16 (resembles 0: look again)"),
        ("0x02507afffeI1c48b", "not-hex", "“I” at position 13 (resembles 1: look again)"),
        ("0000000000000000", "all-zeros", "'not known'"),
        ("ffffffffffffffff", "all-ones", "'any device'"),
        ("8bc431feff7a5002", "group-address", "02:50:7a:ff:fe:31:c4:8b?"),
        ("8bc431feff7a5003", "group-address", "odd"),
    ],
)
def test_each_fault_is_told_apart(text: str, fault: str, words: str) -> None:
    found = read_eui64(text)
    assert ids(text) == [fault]
    assert words in found.faults[0].says


def test_an_address_made_up_locally_is_warned_of() -> None:
    assert [warning.id for warning in read_eui64("02507a000031c48b").warnings] == ["locally-administered"]
    assert read_eui64("00507a000031c48b").warnings == ()


def test_an_order_that_looks_reversed_is_asked_about() -> None:
    (warning,) = read_eui64("8cc431feff7a5000").warnings
    assert warning.id == "maybe-reversed"
    assert "00:50:7a:ff:fe:31:c4:8c" in warning.says


def test_a_stretched_48_bit_address_is_named() -> None:
    assert read_eui64("00507afffe31c48b").value("form") == "48-bit address stretched (FF-FE)"
    assert read_eui64("00507a000031c48b").value("form") == "64-bit"
