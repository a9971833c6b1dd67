"""Codes and the key ring on the command line: secrets stay hidden until asked for."""

import json
from pathlib import Path

import pytest

from secondfix.files import keyring
from tests.cli.conftest import Call

CODE = "83FED3407A939723A5C639B26916D505C3B5"  # a published example: tests/published/onboarding-vectors.json
LINK_KEY = "66B6900981E1EE3CA4206B6B861C02BB"
QR, MANUAL = "MT:00000CQM00KA0648G00", "34970112332"


@pytest.fixture(autouse=True)
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(keyring, "_N", 2**4)
    monkeypatch.setenv("SECONDFIX_PASSPHRASE", "three grey herons")


def test_keys_are_hidden_unless_revealed(call: Call) -> None:
    hidden = call("code", "-", stdin=CODE.encode())
    assert hidden.code == 0
    assert CODE not in hidden.out
    assert LINK_KEY not in hidden.out
    assert LINK_KEY in call("code", "-", "--reveal", stdin=CODE.encode()).out
    plain = json.loads(call("code", CODE, "--json").out)
    assert LINK_KEY not in json.dumps(plain)
    assert plain["ok"] is True


def test_a_code_with_a_fault_is_told_and_exits_1(call: Call) -> None:
    ended = call("code", CODE[:-1] + "4")
    assert ended.code == 1
    assert "◆" in ended.out


def test_two_codes_of_one_device_are_compared(call: Call) -> None:
    assert "agree" in call("code", QR, "--manual", MANUAL).out
    other = call("code", QR, "--manual", "32140830464")
    assert other.code == 1
    assert (
        json.loads(call("code", QR, "--manual", "32140830464", "--json").out)["agreement"]["agrees"] is False
    )


def test_a_code_goes_onto_the_ring_and_comes_back_only_if_asked(call: Call, tmp_path: Path) -> None:
    added = call("keys", "add", "ring.keys", "K07", stdin=f"{CODE}\n".encode())
    assert added.code == 0
    assert CODE not in added.out
    assert call("keys", "list", "ring.keys").out == "K07\n"
    assert call("keys", "show", "ring.keys", "K07").out == f"{CODE}\n"
    assert CODE.encode() not in (tmp_path / "ring.keys").read_bytes()


@pytest.mark.parametrize(
    ("words", "stdin", "line"),
    [
        (("add", "ring.keys", "K07"), CODE, "K07: a code stands there"),
        (("add", "ring.keys", "Seven"), CODE, "expected a reference of the form K07"),
        (("add", "ring.keys", "K08"), CODE[:-1] + "4", "expected a code without fault"),
        (("show", "ring.keys", "K99"), "", "K99: nothing; expected one of K07"),
    ],
)
def test_what_may_not_be_kept_or_shown_is_refused(
    call: Call, tmp_path: Path, words: tuple[str, ...], stdin: str, line: str
) -> None:
    call("keys", "add", "ring.keys", "K07", stdin=f"{CODE}\n".encode())
    before = (tmp_path / "ring.keys").read_bytes()
    ended = call("keys", *words, stdin=f"{stdin}\n".encode())
    assert ended.code == 2
    assert line in ended.err
    assert CODE not in ended.err
    assert (tmp_path / "ring.keys").read_bytes() == before


def test_another_passphrase_opens_nothing(call: Call, monkeypatch: pytest.MonkeyPatch) -> None:
    call("keys", "add", "ring.keys", "K07", stdin=f"{CODE}\n".encode())
    monkeypatch.setenv("SECONDFIX_PASSPHRASE", "four grey herons")
    ended = call("keys", "show", "ring.keys", "K07")
    assert (ended.code, ended.out) == (2, "")
    assert "does not open this ring" in ended.err


def test_the_key_ring_is_printed_only_on_request_into_a_file_for_its_owner_alone(
    call: Call, tmp_path: Path, tree: Path
) -> None:
    import pypdfium2  # noqa: PLC0415 - a test's reader of papers

    def text(path: Path) -> str:
        pages = [page.get_textpage().get_text_range() for page in pypdfium2.PdfDocument(path)]
        return "\n".join(pages).replace("\r\n", "").replace("\n", "")

    call("keys", "add", "ring.keys", "K01", stdin=f"{CODE}\n".encode())
    house = tree / "demo/house-mended.json"
    assert call("pack", house, "--out", "plain").code == 0
    assert not (tmp_path / "plain" / "key-ring.pdf").exists()
    ended = call("pack", house, "--out", "keyed", "--keys", "ring.keys")
    assert ended.code == 0
    assert "not on the key ring" in ended.out
    assert "keep it apart from the pack" in ended.out
    ring = tmp_path / "keyed" / "key-ring.pdf"
    assert CODE in text(ring)
    assert ring.stat().st_mode & 0o777 == 0o600
    others = [p for folder in ("plain", "keyed") for p in (tmp_path / folder).iterdir() if p != ring]
    assert [p.name for p in others if p.suffix == ".pdf" and CODE in text(p)] == []
    assert [p.name for p in others if p.suffix != ".pdf" and CODE in p.read_text(encoding="utf-8")] == []
