"""Codes and people's names: apart from the house, sealed or erasable, and told who saw what."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from secondfix.store.door import (
    Account,
    Cover,
    NoRingKeyError,
    NotAllowedError,
    Refused,
    UnknownError,
    begin_house,
    cover,
    erase_cover,
    keep_code,
    open_house,
    references,
    show_code,
    shown,
    write_cover,
)
from secondfix.store.models import KeyEntry
from tests.desk import FOLDER
from tests.store.examples import HOUSE, TEXT, changed

CODE = "83FED3407A939723A5C639B26916D505C3B5"
OTHER = "34028-23669-20938-46346-33746-07431-56821-14554"


@pytest.fixture(autouse=True)
def house(writer: Account) -> None:
    """The house that the codes belong to."""
    begin_house(TEXT.encode(), by=writer)


@pytest.fixture
def key_away(tmp_path: Path) -> Iterator[Path]:
    """The ring's key taken out of the data folder for a while; the place it stood at."""
    held = FOLDER / "ring.key"
    shutil.copy(held, tmp_path / "ring.key")
    held.unlink()
    yield held
    shutil.copy(tmp_path / "ring.key", held)


def test_a_code_is_kept_and_shown_and_the_trail_says_to_whom(writer: Account) -> None:
    assert keep_code(HOUSE, "K07", CODE, by=writer) is None
    assert references(HOUSE) == ("K07",)
    assert shown(HOUSE) == ()
    assert show_code(HOUSE, "K07", by=writer) == CODE
    assert [(s.reference, s.by) for s in shown(HOUSE)] == [("K07", "Ilka")]


def test_a_reader_is_shown_no_code_and_keeps_none(writer: Account, reader: Account) -> None:
    keep_code(HOUSE, "K07", CODE, by=writer)
    for deed in (
        lambda: show_code(HOUSE, "K07", by=reader),
        lambda: keep_code(HOUSE, "K08", CODE, by=reader),
    ):
        with pytest.raises(NotAllowedError):
            deed()
    assert shown(HOUSE) == ()


def test_a_code_is_replaced_only_when_said_and_the_old_one_stays_sealed(writer: Account) -> None:
    keep_code(HOUSE, "K07", CODE, by=writer)
    assert isinstance(keep_code(HOUSE, "K07", OTHER, by=writer), Refused)
    assert show_code(HOUSE, "K07", by=writer) == CODE
    assert keep_code(HOUSE, "K07", OTHER, by=writer, replace=True) is None
    assert show_code(HOUSE, "K07", by=writer) == OTHER
    assert KeyEntry.objects.count() == 2


@pytest.mark.parametrize(("reference", "code"), [("K07", CODE[:-1] + "6"), ("7", CODE), ("K07", "")])
def test_a_code_with_a_fault_is_refused(writer: Account, reference: str, code: str) -> None:
    assert isinstance(keep_code(HOUSE, reference, code, by=writer), Refused)
    assert references(HOUSE) == ()


def test_a_sealed_code_does_not_open_in_another_place(writer: Account) -> None:
    keep_code(HOUSE, "K07", CODE, by=writer)
    keep_code(HOUSE, "K08", OTHER, by=writer)
    sealed = KeyEntry.objects.get(reference="K07").sealed
    KeyEntry.objects.filter(reference="K08").update(sealed=sealed)
    with pytest.raises(NoRingKeyError):
        show_code(HOUSE, "K08", by=writer)
    assert shown(HOUSE) == ()


def test_without_the_key_or_with_another_no_code_opens(writer: Account, key_away: Path) -> None:
    with pytest.raises(NoRingKeyError):
        keep_code(HOUSE, "K07", CODE, by=writer)
    assert references(HOUSE) == ()
    key_away.write_bytes(bytes(32))
    keep_code(HOUSE, "K07", CODE, by=writer)
    key_away.write_bytes(bytes(31) + b"1")
    with pytest.raises(NoRingKeyError):
        show_code(HOUSE, "K07", by=writer)


def test_an_unknown_reference_is_told(writer: Account) -> None:
    with pytest.raises(UnknownError):
        show_code(HOUSE, "K99", by=writer)


def test_a_cover_sheet_is_written_and_erased_and_the_house_stays(writer: Account) -> None:
    sheet = Cover("Odile Varn", "Pellow Lane 11\nTressick", "before noon", "dog")
    assert cover(HOUSE) is None
    write_cover(HOUSE, sheet, by=writer)
    assert cover(HOUSE) == sheet
    write_cover(HOUSE, Cover("O. Varn"), by=writer)
    assert cover(HOUSE) == Cover("O. Varn")
    erase_cover(HOUSE, by=writer)
    assert cover(HOUSE) is None
    assert open_house(HOUSE).text == TEXT


def test_a_reader_changes_no_cover_sheet(writer: Account, reader: Account) -> None:
    write_cover(HOUSE, Cover("Odile Varn"), by=writer)
    with pytest.raises(NotAllowedError):
        erase_cover(HOUSE, by=reader)
    with pytest.raises(NotAllowedError):
        write_cover(HOUSE, Cover(), by=reader)
    assert cover(HOUSE) == Cover("Odile Varn")


def test_the_cover_sheet_of_one_house_is_not_that_of_another(writer: Account) -> None:
    other = "01936b1e-7a40-7c21-8f3e-5d2c9a71b699"
    begin_house(changed(id=other), by=writer)
    write_cover(HOUSE, Cover("Odile Varn"), by=writer)
    assert cover(other) is None
