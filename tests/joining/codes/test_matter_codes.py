"""Matter QR text and manual code."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.joining.codes import agree, read_matter_manual, read_matter_qr
from secondfix.joining.codes.verhoeff import verhoeff_holds
from tests.joining.codes import encode
from tests.joining.codes.encode import manual_code, sealed


def qr(**fields) -> str:
    return "MT:" + encode.matter_payload(**fields)


def ids(text: str) -> list[str]:
    return [fault.id for fault in read_matter_qr(text).faults]


def manual_ids(text: str) -> list[str]:
    return [fault.id for fault in read_matter_manual(text).faults]


FIELDS = st.fixed_dictionaries(
    {
        "vendor": st.integers(0, 65535),
        "product": st.integers(1, 65535),
        "flow": st.integers(0, 2),
        "discovery": st.integers(0, 255),
        "discriminator": st.integers(0, 4095),
        "passcode": encode.passcodes(),
    }
)


@given(FIELDS)
def test_any_code_reads_back(fields: dict[str, int]) -> None:
    found = read_matter_qr(qr(**fields))
    maker = (fields["vendor"], fields["product"])
    assert found.ok
    assert (found.value("vendor"), found.value("product")) == tuple(f"0x{number:04X}" for number in maker)
    assert found.value("discovery_bits") == fields["discovery"]
    assert found.value("discriminator") == fields["discriminator"]
    assert found.value("passcode") == f"{fields['passcode']:08d}"
    for named in (None, maker):
        manual = read_matter_manual(manual_code(fields["discriminator"] >> 8, fields["passcode"], named))
        assert manual.ok
        assert agree(found, manual).agrees is True


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (qr(version=1), ["unknown-version"]),
        (qr(padding=1), ["bad-padding"]),
        (qr(flow=3), ["reserved-flow"]),
        (qr(vendor=7, product=0), ["bad-product"]),
        (qr(vendor=0, product=0), []),
        (qr(passcode=22222222), ["invalid-passcode"]),
        (qr(passcode=12345678, flow=3, version=2), ["unknown-version", "reserved-flow", "invalid-passcode"]),
        (qr()[:-4], ["too-short"]),
        (qr()[:-1], ["bad-length"]),
        ("MT:......" + qr()[9:], ["overflow"]),
        (qr().replace("MT:", "mt:"), ["bad-prefix"]),
        (qr()[3:], ["bad-prefix"]),
        (qr().lower().replace("mt:", "MT:"), ["bad-character"]),
    ],
)
def test_each_fault_of_a_qr_is_told_apart(text: str, expected: list[str]) -> None:
    assert ids(text) == expected


def test_a_qr_text_always_warns_that_it_must_not_be_typed() -> None:
    (warning,) = read_matter_qr(qr() + "\n").warnings
    assert warning.id == "no-check-digit"
    assert "never type it" in warning.says


def test_several_devices_in_one_text() -> None:
    text = qr(passcode=1) + "*" + encode.matter_payload(passcode=2)
    found = read_matter_qr(text)
    assert found.ok
    assert found.value("code") == text
    assert [part.value("passcode") for part in found.parts] == ["00000001", "00000002"]
    assert agree(found, read_matter_manual(manual_code(2748 >> 8, 2))).agrees is True
    assert agree(found, read_matter_manual(manual_code(2748 >> 8, 3))).agrees is False
    (fault,) = read_matter_qr(text + "*" + encode.matter_payload(flow=3)).faults
    assert fault.says.startswith("Code 3 of 3: ")
    assert ids(text + "*" * 31) == ["too-many-codes"]


def element(tag: int, kind: int, body: bytes) -> bytes:
    return bytes([0x20 | kind, tag]) + body


def text_element(tag: int, text: str) -> bytes:
    return element(tag, 0x0C, bytes([len(text.encode())]) + text.encode())


EXTRA = (
    text_element(0, "tk-0042")
    + element(1, 0x05, (1000).to_bytes(2, "little"))
    + element(2, 0x10, bytes([16]) + bytes(range(16)))
    + element(3, 0x04, b"\x02")
    + element(4, 0x05, (900).to_bytes(2, "little"))
    + element(0x80, 0x04, b"\x07")
    + element(0x81, 0x15, element(0, 0x09, b"") + element(1, 0x0B, bytes(8)) + b"\x18")
)


def test_the_optional_data_is_read() -> None:
    found = read_matter_qr(qr(data=b"\x15" + EXTRA + b"\x18"))
    assert found.ok
    names = ("serial_number", "iterations", "salt", "number_of_devices", "joining_time_s", "other_items")
    assert [found.value(name) for name in names] == ["tk-0042", 1000, bytes(range(16)).hex(), 2, 900, 2]
    assert next(field for field in found.fields if field.name == "salt").secret


@pytest.mark.parametrize(
    ("data", "expected"),
    [
        (b"\x15" + EXTRA, "truncated-tlv"),
        (b"\x15" + text_element(0, "tk-0042")[:-1], "truncated-tlv"),
        (b"\x15" + element(1, 0x07, bytes(3)), "truncated-tlv"),
        (EXTRA, "bad-tlv"),
        (b"\x15" + element(0, 0x1F, b"") + b"\x18", "bad-tlv"),
    ],
)
def test_each_fault_of_the_optional_data_is_told_apart(data: bytes, expected: str) -> None:
    assert ids(qr(data=data)) == [expected]


def test_data_after_the_end_is_warned_of_and_zeros_are_not() -> None:
    closed = b"\x15" + text_element(0, "tk\n") + b"\x18"
    assert [warning.id for warning in read_matter_qr(qr(data=closed + b"\x01")).warnings] == [
        "no-check-digit",
        "trailing-data",
    ]
    found = read_matter_qr(qr(data=closed + bytes(2)))
    assert len(found.warnings) == 1
    assert found.value("serial_number") == "tk\N{REPLACEMENT CHARACTER}"


@given(st.binary(max_size=60))
def test_no_optional_data_makes_the_reader_stumble(data: bytes) -> None:
    for start in (b"", b"\x15"):
        assert read_matter_qr(qr(data=start + data)).value("passcode") == "31415927"


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (sealed("8497011233"), ["unknown-version"]),
        (sealed("9497011233"), ["unknown-version"]),
        (sealed("7497011233"), ["length-flag-mismatch"]),
        (sealed("34970112330002300042"), ["length-flag-mismatch"]),
        (sealed("3655360001"), ["field-overflow"]),
        (sealed("3000018192"), ["field-overflow", "invalid-passcode"]),
        (sealed("74970112339999900042"), ["field-overflow"]),
        (sealed("74970112330002365536"), ["field-overflow"]),
        ("3497O112332", ["bad-character"]),
        ("34970112333", ["bad-check-digit"]),
        ("349701123325", ["bad-length"]),
    ],
)
def test_each_fault_of_a_manual_code_is_told_apart(text: str, expected: list[str]) -> None:
    assert manual_ids(text) == expected


def test_what_differs_between_two_codes_is_named_without_its_value() -> None:
    scanned = read_matter_qr(qr())
    other = agree(scanned, read_matter_manual(manual_code(3, 27182818, (0xFFF1, 0x8002))))
    assert other.agrees is False
    assert "passcode, short discriminator, product:" in other.says
    assert "27182818" not in other.says


def test_codes_that_cannot_be_compared_are_not_said_to_agree() -> None:
    scanned, typed = read_matter_qr(qr()), read_matter_manual(manual_code(10, 31415927))
    assert agree(scanned, typed).agrees is True
    assert agree(typed, scanned).agrees is None
    assert agree(scanned, read_matter_manual("34970112333")).agrees is None


def test_a_check_digit_over_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="no digits"):
        verhoeff_holds("")
