"""The one door: the kind of a code is told from its shape."""

import subprocess
import sys

import pytest
from hypothesis import given

from secondfix.joining.codes import Kind, read_code, recognise
from tests.joining.codes import encode

EUI = "02:50:7a:ff:fe:31:c4:8b"
CODE = encode.install_code(bytes(range(0x31, 0x41)))
GROUPS = [CODE[at : at + 4] for at in range(0, 36, 4)]


def ids(text: str, kind: Kind | str | None = None) -> list[str]:
    return [fault.id for fault in read_code(text, kind=kind).faults]


@given(encode.keys())
def test_an_install_code_of_any_length_is_recognised(key: bytes) -> None:
    for length in (6, 8, 12, 16):
        code = encode.install_code(key[:length])
        spaced = " ".join(code[at : at + 4] for at in range(0, len(code), 4)).lower()
        assert recognise(code) is recognise(spaced) is Kind.INSTALL_CODE


@given(encode.keys())
def test_zwave_codes_are_recognised(key: bytes) -> None:
    code = encode.dsk(key)
    assert (
        recognise(code) is recognise(code.replace("-", "")) is recognise(code.replace("-", " ")) is Kind.DSK
    )
    assert recognise(encode.zwave_qr(key)) is Kind.ZWAVE_QR


@given(encode.passcodes(), encode.addresses())
def test_matter_codes_and_addresses_are_recognised(passcode: int, address: bytes) -> None:
    assert recognise("MT:" + encode.matter_payload(passcode=passcode)) is Kind.MATTER_QR
    assert recognise(encode.manual_code(9, passcode)) is Kind.MATTER_MANUAL
    assert recognise(encode.manual_code(9, passcode, (77, 78))) is Kind.MATTER_MANUAL
    for form in (
        address.hex(":"),
        address.hex("-").upper(),
        address.hex(".", 2),
        address.hex(" "),
        "0x" + address.hex(),
    ):
        assert recognise(form) is Kind.EUI64


@pytest.mark.parametrize(
    ("text", "kind", "faults"),
    [
        ("hello there", Kind.NOT_RECOGNISED, ["not-recognised"]),
        ("", Kind.NOT_RECOGNISED, ["empty"]),
        ("7" * 5000, Kind.NOT_RECOGNISED, ["too-long"]),
        ("mt:00000CQM00KA0648G00", Kind.MATTER_QR, ["bad-prefix"]),
        ("3497O112332", Kind.MATTER_MANUAL, ["bad-character"]),
        ("5I525-35455-41424-34445-31323-33435-21222-32425", Kind.DSK, ["not-digits"]),
        ("50:32:5f:ff:fe:e7:67", Kind.EUI64, ["bad-length"]),
        ("IEEE 02507aFFFE31C48B", Kind.LABEL, ["code-missing"]),
        ("0050780000319482", Kind.EUI64, []),
        ("00507800003194820", Kind.EUI64, ["digit-too-many"]),
        (f"CODE {CODE}", Kind.LABEL, []),
        (f"{CODE[:20]}O{CODE[21:]}", Kind.INSTALL_CODE, ["not-hex"]),
        (" ".join([*GROUPS[:6], "00O0", *GROUPS[7:]]), Kind.INSTALL_CODE, ["not-hex"]),
    ],
)
def test_a_misread_text_is_still_recognised(text: str, kind: Kind, faults: list[str]) -> None:
    assert recognise(text) is kind
    assert ids(text) == faults


def test_the_kind_asked_for_overrules_the_shape() -> None:
    assert ids("34970112332", "eui-64") == ["bad-length"]
    assert read_code("34970112332", kind="eui-64").kind is Kind.EUI64
    with pytest.raises(ValueError, match="fax"):
        read_code("34970112332", kind="fax")


def test_sixteen_digits_that_could_be_either_are_warned_of() -> None:
    code = encode.install_code(bytes.fromhex("02507AFFFE31"))
    assert "could-be-address" in [warning.id for warning in read_code(code).warnings]
    assert "could-be-address" not in [
        warning.id for warning in read_code(code, kind=Kind.INSTALL_CODE).warnings
    ]
    assert read_code(code, kind=Kind.EUI64).value("address") == bytes.fromhex(code).hex(":")


def test_an_address_beside_another_kind_of_code_is_not_passed_over_in_silence() -> None:
    (warning,) = read_code("34970112332", address=EUI).warnings
    assert warning.id == "address-not-used"


def test_only_a_link_key_loads_the_cipher_library() -> None:
    ask = (
        "import sys; from secondfix.joining.codes import read_code; "
        f"[read_code(text) for text in ('34970112332', 'MT:00000CQM00KA0648G00', '{EUI}')]; "
        f"print('cryptography' in sys.modules); read_code('{CODE}'); print('cryptography' in sys.modules)"
    )
    run = subprocess.run([sys.executable, "-c", ask], capture_output=True, text=True, check=True)
    assert run.stdout.split() == ["False", "True"]
