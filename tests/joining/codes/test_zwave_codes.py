"""Z-Wave DSK and QR digits."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.joining.codes import read_dsk, read_zwave_qr
from tests.joining.codes import encode
from tests.joining.codes.encode import item

KEY = bytes(range(0x31, 0x41))
DSK = encode.dsk(KEY)


def faults(text: str) -> list[str]:
    return [fault.id for fault in read_zwave_qr(text).faults]


@given(encode.keys(), st.sampled_from(["-", " ", " - ", ""]))
def test_any_dsk_reads_back(key: bytes, between: str) -> None:
    found = read_dsk(encode.dsk(key).replace("-", between), again=encode.dsk(key))
    assert found.ok
    assert found.warnings == ()
    assert found.value("dsk") == encode.dsk(key)
    assert found.value("pin") == encode.dsk(key)[:5]


def test_a_dsk_typed_once_is_warned_of() -> None:
    assert [warning.id for warning in read_dsk(DSK).warnings] == ["no-check-digit"]


def test_two_typings_that_differ_name_the_groups() -> None:
    (fault,) = read_dsk(DSK, again=DSK[:10] + "0" + DSK[11:-1] + "9").faults
    assert fault.id == "typed-differently"
    assert "groups 2, 8;" in fault.says
    assert [fault.id for fault in read_dsk(DSK, again=DSK[:-1]).faults] == ["again-group-format"]
    assert [fault.id for fault in read_dsk(DSK, again="").faults] == ["again-group-count"]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (DSK[:-6], ["group-count"]),
        (DSK.replace("-", "")[:-1], ["group-count"]),
        (DSK[:-1], ["group-format"]),
        ("99999-" + DSK[6:-1], ["group-overflow", "group-format"]),
        ("O" + DSK[1:], ["not-digits"]),
    ],
)
def test_each_fault_of_a_dsk_is_told_apart(text: str, expected: list[str]) -> None:
    assert [fault.id for fault in read_dsk(text).faults] == expected


@given(encode.keys(), st.sampled_from([0, 1]), st.integers(0, 255), st.binary(min_size=8, max_size=8))
def test_any_qr_reads_back(key: bytes, version: int, keys: int, product: bytes) -> None:
    numbers = [int.from_bytes(product[at : at + 2], "big") for at in range(0, 8, 2)]
    data = item(1, "".join(f"{number:05d}" for number in numbers))
    found = read_zwave_qr(encode.zwave_qr(key, version=version, keys=keys, data=data))
    assert found.ok
    assert found.value("dsk") == encode.dsk(key)
    assert found.value("version") == ("S2", "SmartStart")[version]
    assert [found.value(name) for name in ("manufacturer", "product_type", "product")] == [
        f"0x{number:04X}" for number in numbers[:3]
    ]
    assert found.value("application_version") == f"{numbers[3] // 256}.{numbers[3] % 256:02d}"


def test_requested_keys_are_named() -> None:
    def requested(keys: int) -> object:
        return read_zwave_qr(encode.zwave_qr(KEY, keys=keys)).value("requested_keys")

    assert requested(0) == "none"
    assert requested(0x87) == "S2 Unauthenticated, S2 Authenticated, S2 Access Control, S0"
    assert requested(0x09) == "S2 Unauthenticated, bit 3 (not known)"


def test_every_known_item_is_read() -> None:
    uuid = "00" + "".join(f"{number:05d}" for number in (0, 1, 65535, 43981, 4, 5, 6, 7))
    data = item(0, "0435301537") + item(2, "05") + item(3, uuid) + item(4, "3") + item(7, "123456")
    found = read_zwave_qr(encode.zwave_qr(KEY, data=data))
    assert found.ok
    assert {field.name: field.value for field in found.fields[5:]} == {
        "device_class": "generic 0x11, specific 0x01",
        "installer_icon": "0x0601",
        "request_interval_s": 640,
        "uuid": "0000:0001:FFFF:ABCD:0004:0005:0006:0007",
        "uuid_form": 0,
        "supported_protocols": "Z-Wave, Z-Wave Long Range",
        "item_7": "not known, 6 digits",
    }


@pytest.mark.parametrize(
    ("data", "expected"),
    [
        (item(9, "12", critical=True), ["unknown-critical-tlv"]),
        (item(9, "12"), []),
        (item(0, "0435399999"), ["field-overflow"]),
        (item(1, "99999001000000300578"), ["field-overflow"]),
        (item(3, "00" + "99999" + "00000" * 7), ["field-overflow"]),
        (item(0, "04353"), ["bad-tlv-length"]),
        (item(4, ""), ["bad-tlv-length"]),
        (item(2, "04"), ["field-range"]),
        (item(2, "99"), []),
        (item(2, "05") * 2, ["repeated-tlv"]),
        (item(2, "05")[:-1], ["truncated-tlv"]),
        ("040", ["truncated-tlv"]),
        (
            item(2, "04") + item(9, "1", critical=True) + "1",
            ["field-range", "unknown-critical-tlv", "truncated-tlv"],
        ),
    ],
)
def test_each_fault_in_the_data_is_told_apart_and_all_at_once(data: str, expected: list[str]) -> None:
    assert faults(encode.zwave_qr(KEY, data=data)) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (encode.zwave_qr(KEY, version=7), ["unknown-version"]),
        (encode.zwave_qr(KEY, keys=256), ["field-overflow"]),
        ("80" + encode.zwave_qr(KEY)[2:], ["bad-lead-in"]),
        ("900199999" + encode.zwave_qr(KEY)[9:], ["field-overflow"]),
        (encode.zwave_qr(KEY)[:51], ["too-short"]),
        (encode.zwave_qr(KEY)[:-1] + "x", ["not-digits"]),
    ],
)
def test_each_fault_of_the_head_is_told_apart(text: str, expected: list[str]) -> None:
    assert faults(text) == expected
