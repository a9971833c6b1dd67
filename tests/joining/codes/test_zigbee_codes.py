"""Zigbee install codes, bare and on a label."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from secondfix.joining.codes import Kind, read_code, read_install_code, read_label
from secondfix.joining.codes.zigbee import aes_mmo, hmac_mmo
from tests.joining.codes import encode

CODE = encode.install_code(bytes(range(0x31, 0x41)))
OTHER = encode.install_code(bytes(range(0x51, 0x61)))
EUI = "00:50:7a:ff:fe:31:c4:8b"


def faults(text: str, **more: str) -> list[str]:
    return [fault.id for fault in read_install_code(text, **more).faults]


def warnings(text: str, **more: str) -> list[str]:
    return [warning.id for warning in read_install_code(text, **more).warnings]


@given(st.sampled_from([6, 8, 12, 16]), encode.keys())
def test_any_code_with_its_crc_reads(length: int, key: bytes) -> None:
    code = encode.install_code(key[:length])
    found = read_install_code(
        "-".join(code[at : at + 4] for at in range(0, len(code), 4)).lower(), address=EUI
    )
    assert found.ok
    assert found.value("code") == code
    assert found.value("link_key") == aes_mmo(bytes.fromhex(code)).hex().upper()
    assert found.value("address") == EUI
    assert [warning.id for warning in found.warnings] == ([] if length == 16 else ["short-code"])


@given(encode.keys(), st.integers(0, 35), st.sampled_from("0123456789ABCDEF"))
def test_no_wrong_digit_passes_or_yields_a_key(key: bytes, at: int, new: str) -> None:
    code = encode.install_code(key)
    assume(code[at] != new)
    found = read_install_code(code[:at] + new + code[at + 1 :])
    assert not found.ok
    assert found.value("link_key") is None


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        (CODE[:-4], "bad-length"),
        (CODE[:-1], "odd-digits"),
        (CODE[:-4] + CODE[-2:] + CODE[-4:-2], "crc-byte-order"),
        (CODE[:-1] + ("0" if CODE[-1] != "0" else "1"), "bad-crc"),
        (CODE.replace("3", "З", 1), "not-hex"),
        (CODE + "00", "bad-length"),
    ],
)
def test_each_fault_is_told_apart(text: str, fault: str) -> None:
    assert faults(text) == [fault]


def test_a_code_without_its_crc_says_so() -> None:
    assert "seem to be left off" in read_install_code(CODE[:-4]).faults[0].says
    assert "seem to be left off" not in read_install_code(CODE + "00").faults[0].says


def test_a_letter_like_a_digit_is_named_with_its_position() -> None:
    (fault,) = read_install_code("83FE-D34O" + CODE[8:]).faults
    assert "“O” at position 9 (resembles 0: look again)" in fault.says


def test_a_missing_address_warns_and_a_wrong_one_is_a_fault() -> None:
    assert warnings(CODE) == ["address-missing"]
    assert warnings(CODE, address=EUI) == []
    assert faults(CODE, address="00:50:7a:31:c4:8b") == ["address-48-bit-address"]
    assert faults(CODE[:-1], address="nothing") == ["odd-digits", "address-not-hex"]
    assert warnings(CODE, address="02:50:7a:00:00:31:c4:8b") == ["address-locally-administered"]


def test_the_hash_refuses_what_it_was_not_made_for() -> None:
    assert len(aes_mmo(bytes(8191))) == 16
    with pytest.raises(ValueError, match="65536"):
        aes_mmo(bytes(8192))
    with pytest.raises(ValueError, match="16 were expected"):
        hmac_mmo(b"short", b"")


@given(
    encode.addresses(),
    encode.keys(),
    st.sampled_from(["Z:{}$I:{}", "IEEE {}\nCODE {}", "a={} b={}", "{}\t{}"]),
)
def test_a_label_gives_its_address_and_code(address: bytes, key: bytes, form: str) -> None:
    code = encode.install_code(key)
    fours = " ".join(code[at : at + 4] for at in range(0, 36, 4))
    for printed in (address.hex(), address.hex(":"), address.hex("-", 2)):
        for written in (code, code.lower(), fours, bytes.fromhex(code).hex(":")):
            found = read_code(form.format(printed, written))
            assert found.kind is Kind.LABEL
            assert found.ok, found
            assert (found.value("address"), found.value("code")) == (address.hex(":"), code)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (f"code {CODE}", []),
        ("nothing here", ["code-missing"]),
        (f"at {EUI}", ["code-missing"]),
        (f"at 01{EUI[2:]}", ["code-missing", "group-address"]),
        (f"at {EUI}, code {CODE[:-1]}{(int(CODE[-1], 16) ^ 1):X}", ["bad-crc"]),
        (f"{CODE} or {OTHER}", ["more-than-one-code"]),
        (f"{CODE} twice {CODE.lower()}", []),
        (f"{EUI} {EUI[:-1]}c {CODE}", ["more-than-one-address"]),
    ],
)
def test_each_fault_of_a_label_is_told_apart(text: str, expected: list[str]) -> None:
    assert [fault.id for fault in read_label(text).faults] == expected


@pytest.mark.parametrize("at", range(0, 36))
@pytest.mark.parametrize("size", [2, 4])
def test_no_piece_of_a_misread_code_is_taken_for_an_address(at: int, size: int) -> None:
    misread = CODE[:at] + "O" + CODE[at + 1 :]
    found = read_label("code: " + " ".join(misread[start : start + size] for start in range(0, 36, size)))
    assert [fault.id for fault in found.faults] == ["code-missing"]
    assert found.fields == ()


def test_a_label_of_another_device_than_the_address_given_is_a_fault() -> None:
    label = f"Z:{EUI.replace(':', '')} I:{CODE}"
    assert read_label(label, address=EUI.upper()).ok
    assert [fault.id for fault in read_label(label, address=EUI[:-1] + "c").faults] == ["address-differs"]
    assert read_label(f"I:{CODE}", address=EUI).value("address") == EUI
