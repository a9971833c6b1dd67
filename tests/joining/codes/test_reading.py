"""Secrets stay out of sight, and no text makes a reader stumble."""

import json
from collections.abc import Iterator

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.joining.codes import (
    CodeReading,
    Field,
    Kind,
    read_code,
    read_dsk,
    read_eui64,
    read_install_code,
    read_label,
    read_matter_manual,
    read_matter_qr,
    read_zwave_qr,
    shown,
)
from tests.joining.codes import encode

READERS = [
    read_dsk,
    read_eui64,
    read_install_code,
    read_label,
    read_matter_manual,
    read_matter_qr,
    read_zwave_qr,
]
CODES = st.one_of(
    st.builds(encode.install_code, encode.keys()),
    st.builds(encode.dsk, encode.keys()),
    st.builds(encode.zwave_qr, encode.keys(), data=st.just(encode.item(1, "65520001000000300578"))),
    st.builds("MT:{}".format, st.builds(encode.matter_payload, passcode=encode.passcodes())),
    st.builds(encode.manual_code, st.integers(0, 15), encode.passcodes(), st.just((0xFFF1, 0x8001))),
    st.builds(
        "MT:{}*{}".format,
        st.builds(encode.matter_payload, passcode=encode.passcodes()),
        st.builds(encode.matter_payload, discriminator=st.integers(0, 4095)),
    ),
    st.builds(
        "Z {} / {}".format, encode.addresses().map(bytes.hex), st.builds(encode.install_code, encode.keys())
    ),
)


def secrets(reading: CodeReading) -> Iterator[str]:
    yield from (str(field.value) for field in reading.fields if field.secret)
    for part in reading.parts:
        yield from secrets(part)


def runs(text: str) -> set[str]:
    return {text[at : at + 5] for at in range(len(text) - 4)}


def assert_hidden(reading: CodeReading) -> None:
    told = json.dumps(shown(reading), ensure_ascii=False) + repr(reading)
    for secret in secrets(reading):
        assert not {run for run in runs(secret) if run in told}


@given(CODES)
def test_no_secret_nor_a_run_of_five_of_its_characters_is_shown(code: str) -> None:
    found = read_code(code)
    assert list(secrets(found))
    assert_hidden(found)


@given(CODES, st.data())
def test_nor_when_the_code_has_a_fault(code: str, data: st.DataObject) -> None:
    at = data.draw(st.integers(0, len(code) - 1))
    new = data.draw(st.sampled_from("0123456789ABCDEFO. "))
    for kind in [None, *Kind]:
        assert_hidden(read_code(code[:at] + new + code[at + 1 :], kind=kind))


@given(CODES)
def test_revealing_shows_every_field(code: str) -> None:
    found = read_code(code)
    told = shown(found, reveal=True)
    assert told["fields"] == [
        {"name": field.name, "value": field.value, "secret": field.secret} for field in found.fields
    ]
    assert json.loads(json.dumps(told)) == told


def test_a_public_value_that_repeats_a_secret_is_hidden_with_it() -> None:
    fields = (
        Field("passcode", "31415927", secret=True),
        Field("serial_number", "SN-314159"),
        Field("flow", "none"),
    )
    told = shown(CodeReading(Kind.MATTER_QR, fields=fields))
    assert told["fields"] == [
        {"name": "passcode", "value": None, "secret": True},
        {"name": "serial_number", "value": None, "secret": True},
        {"name": "flow", "value": "none", "secret": False},
    ]


@given(encode.texts(), st.none() | encode.texts())
def test_no_text_makes_a_reader_stumble(text: str, other: str | None) -> None:
    for reading in [
        read_code(text, address=other),
        read_dsk(text, again=other),
        *(read(text) for read in READERS),
    ]:
        assert reading.ok is (reading.faults == ())
        told = json.dumps(shown(reading))
        assert str(reading.kind) in told
        assert all(
            fault.says.strip() and fault.says[-1] in ".?" for fault in reading.faults + reading.warnings
        )
    for kind in Kind:
        assert read_code(text, kind=kind).kind is kind


@pytest.mark.deep
@given(encode.texts())
def test_every_kind_is_read_without_stumbling_on_many_texts(text: str) -> None:
    for kind in Kind:
        assert_hidden(read_code(text, kind=kind))


@pytest.mark.parametrize("reader", READERS)
def test_empty_and_endless_texts_are_told_apart(reader) -> None:
    assert [fault.id for fault in reader(" \n").faults] == ["empty"]
    assert "too-long" not in [fault.id for fault in reader("7" * 4096).faults]
    (fault,) = reader("7" * 4097).faults
    assert fault.id == "too-long"
    assert "4,097" in fault.says
    assert "4,096" in fault.says
