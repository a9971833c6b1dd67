"""The key ring: nothing of it in the clear, no other passphrase opens it, no altered byte passes."""

import json
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from secondfix.files import KeyRing, WrongPassphraseError, open_ring, save_ring
from secondfix.files import keyring as module

CODE = "83FED3407A939723A5C639B26916D505C3B5"


@pytest.fixture(autouse=True)
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """A cheap scrypt: the cost of a guess is not what these tests are about."""
    monkeypatch.setattr(module, "_N", 2**4)


def test_a_ring_opens_with_its_passphrase_alone(tmp_path: Path) -> None:
    save_ring(tmp_path / "r.keys", KeyRing({"K07": CODE}), "three grey herons")
    assert open_ring(tmp_path / "r.keys", "three grey herons").codes == {"K07": CODE}
    with pytest.raises(WrongPassphraseError):
        open_ring(tmp_path / "r.keys", "three grey heron")


def test_neither_code_nor_reference_stands_in_the_file_nor_in_the_repr(tmp_path: Path) -> None:
    ring = KeyRing({"K07": CODE})
    save_ring(tmp_path / "r.keys", ring, "three grey herons")
    bytes_of_file = (tmp_path / "r.keys").read_bytes()
    assert CODE.encode() not in bytes_of_file
    assert b"K07" not in bytes_of_file
    assert CODE not in repr(ring)


def test_the_same_ring_never_looks_the_same_twice(tmp_path: Path) -> None:
    for name in ("a", "b"):
        save_ring(tmp_path / name, KeyRing({"K07": CODE}), "three grey herons")
    assert (tmp_path / "a").read_bytes() != (tmp_path / "b").read_bytes()


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.data())
def test_no_altered_byte_passes(tmp_path: Path, data: st.DataObject) -> None:
    path = tmp_path / "r.keys"
    save_ring(path, KeyRing({"K07": CODE}), "three grey herons")
    parts = json.loads(path.read_text())
    name = data.draw(st.sampled_from(sorted(parts)))
    raw = bytearray(module.b64decode(parts[name]))
    raw[data.draw(st.integers(0, len(raw) - 1))] ^= data.draw(st.integers(1, 255))
    path.write_text(json.dumps({**parts, name: module.b64encode(bytes(raw)).decode()}))
    with pytest.raises(WrongPassphraseError):
        open_ring(path, "three grey herons")


@pytest.mark.parametrize(
    "text",
    ["", "{}", "[1]", '{"salt": 3, "nonce": "", "sealed": ""}', '{"salt": "%", "nonce": "", "sealed": ""}'],
)
def test_what_is_no_ring_is_said_to_be_none(tmp_path: Path, text: str) -> None:
    (tmp_path / "r.keys").write_text(text)
    with pytest.raises(ValueError, match="not a key ring"):
        open_ring(tmp_path / "r.keys", "x")
