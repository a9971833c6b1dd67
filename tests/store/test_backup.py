"""A backup restores into either kind of store, whole and the same; what is not whole is refused."""

import gzip
import json
import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from django.db import connection

from secondfix.store import backup as module
from secondfix.store import copying
from secondfix.store.door import (
    Account,
    BackedUp,
    Refused,
    Right,
    accounts,
    back_up,
    create_account,
    houses,
    list_mapping,
    restore,
    show_code,
)
from tests.desk import FOLDER, PASSWORD, postgresql_desk, sqlite_desk
from tests.store.conftest import Store
from tests.store.examples import HOUSE
from tests.store.filled import CODE, answers, fill

Fresh = Callable[[str], object]


@pytest.fixture
def filled(store: Store, writer: Account, tmp_path: Path) -> Path:
    """A backup of a store with something in every table."""
    fill(writer)
    path = tmp_path / "desk.backup"
    assert isinstance(back_up(path), BackedUp)
    return path


@contextmanager
def fresh(store: Store, request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[None]:
    """A fresh store of the *other* kind."""
    if store.kind == "postgresql":
        with sqlite_desk(request.getfixturevalue("laid_file"), tmp_path / "other.sqlite3"):
            yield
    else:
        with postgresql_desk(request.getfixturevalue("laid_postgresql")):
            yield


def test_the_other_kind_of_store_answers_the_same_after_a_restore(
    store: Store, filled: Path, request: pytest.FixtureRequest, tmp_path: Path
) -> None:
    before = answers()
    with fresh(store, request, tmp_path):
        assert houses() == ()
        restored = restore(filled)
        assert isinstance(restored, BackedUp)
        assert restored.rows == {
            "Account": 1, "House": 2, "Edit": 4, "Issue": 1, "CoverSheet": 1, "JournalEntry": 5,
            "KeyEntry": 2, "KeyShown": 1, "ListMapping": 1,
        }  # fmt: skip
        assert restored.ring_key_here
        assert answers() == before
        assert show_code(HOUSE, "K07", by=accounts()[0]) == CODE
        again = tmp_path / "again.backup"
        show = back_up(again)
        assert isinstance(show, BackedUp)
        assert show.rows["KeyShown"] == 2


def test_a_backup_of_before_a_table_was_made_restores(
    store: Store, writer: Account, request: pytest.FixtureRequest, tmp_path: Path
) -> None:
    fill(writer)
    path = tmp_path / "old.backup"
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(copying, "TABLES", copying.TABLES[:-1])
        patch.setattr(copying, "BY_NAME", {t.__name__: t for t in copying.TABLES})
        assert isinstance(back_up(path), BackedUp)
    with fresh(store, request, tmp_path):
        restored = restore(path)
        assert isinstance(restored, BackedUp)
        assert "ListMapping" not in restored.rows
        assert len(houses()) == 1
        assert list_mapping(HOUSE) is None


def test_a_backup_of_a_restored_store_is_the_same_bytes(
    store: Store, filled: Path, request: pytest.FixtureRequest, tmp_path: Path
) -> None:
    with fresh(store, request, tmp_path):
        restore(filled)
        back_up(tmp_path / "again.backup")
    assert gzip.decompress((tmp_path / "again.backup").read_bytes()) == gzip.decompress(filled.read_bytes())


def test_nothing_is_overwritten(filled: Path, tmp_path: Path) -> None:
    held = filled.read_bytes()
    answer = back_up(filled)
    assert isinstance(answer, Refused)
    assert filled.read_bytes() == held
    answer = restore(filled)
    assert isinstance(answer, Refused)
    assert "fresh" in answer.faults[0].expected


def test_a_backup_is_for_its_owner_alone_and_leaves_nothing_beside_it(filled: Path) -> None:
    assert filled.stat().st_mode & 0o777 == 0o600
    assert [p.name for p in filled.parent.iterdir() if "backup" in p.name] == [filled.name]


def test_a_folder_that_is_not_there_is_told(store: Store, writer: Account, tmp_path: Path) -> None:
    assert isinstance(back_up(tmp_path / "none" / "desk.backup"), Refused)


def test_a_backup_without_the_ring_key_is_restored_and_says_so(
    store: Store, filled: Path, request: pytest.FixtureRequest, tmp_path: Path
) -> None:
    key = FOLDER / "ring.key"
    shutil.copy(key, tmp_path / "held")
    try:
        key.write_bytes(bytes(32))
        with fresh(store, request, tmp_path):
            restored = restore(filled)
            assert isinstance(restored, BackedUp)
            assert not restored.ring_key_here
    finally:
        shutil.copy(tmp_path / "held", key)


def _cut(raw: bytes) -> bytes:
    return raw[: len(raw) // 2]


def _last_line_off(raw: bytes) -> bytes:
    return gzip.compress(b"".join(gzip.decompress(raw).splitlines(keepends=True)[:-1]))


def _changed(raw: bytes) -> bytes:
    return gzip.compress(gzip.decompress(raw).replace(b"Quill End", b"Quill Bnd", 1))


def _row_off(raw: bytes) -> bytes:
    lines = gzip.decompress(raw).splitlines(keepends=True)
    return gzip.compress(b"".join(lines[:3] + lines[4:]))


def _byte_off(raw: bytes) -> bytes:
    return raw[:-20] + bytes([raw[-20] ^ 1]) + raw[-19:]


def _newer(raw: bytes) -> bytes:
    text = gzip.decompress(raw)
    head, rest = text.split(b"\n", 1)
    plain = json.loads(head)
    plain["secondfix_backup"] = 2
    return gzip.compress(json.dumps(plain).encode() + b"\n" + rest)


@pytest.mark.parametrize(
    "spoil",
    [
        _cut,
        _last_line_off,
        _changed,
        _row_off,
        _byte_off,
        _newer,
        lambda _: b"",
        lambda _: b"[]\n",
        lambda raw: raw + raw,
    ],
    ids=["cut", "last line", "changed", "row", "byte", "newer", "empty", "not one", "twice"],
)
def test_a_file_that_is_not_whole_is_refused_and_nothing_is_written(
    desk: Path, laid_file: Path, tmp_path: Path, spoil: Callable[[bytes], bytes]
) -> None:
    writer = create_account(username="Ilka", password=PASSWORD, right=Right.WRITER, by=None)
    assert isinstance(writer, Account)
    fill(writer)
    path = tmp_path / "desk.backup"
    back_up(path)
    path.write_bytes(spoil(path.read_bytes()))
    with sqlite_desk(laid_file, tmp_path / "fresh.sqlite3"):
        answer = restore(path)
        assert isinstance(answer, Refused)
        assert len(answer.faults) == 1
        assert accounts() == ()
        assert houses() == ()


def test_a_missing_file_is_told(desk: Path, tmp_path: Path) -> None:
    assert isinstance(restore(tmp_path / "none"), Refused)


def test_a_damaged_database_is_told_and_not_backed_up(desk: Path, tmp_path: Path) -> None:
    writer = create_account(username="Ilka", password=PASSWORD, right=Right.WRITER, by=None)
    assert isinstance(writer, Account)
    fill(writer)
    with connection.cursor() as cursor:
        cursor.execute("SELECT rootpage FROM sqlite_master WHERE tbl_name = 'store_journalentry' LIMIT 1")
        page = cursor.fetchone()[0]
        cursor.execute("PRAGMA page_size")
        size = cursor.fetchone()[0]
    connection.close()  # the log is written into the file
    with desk.open("r+b") as file:
        file.seek((page - 1) * size)
        file.write(bytes(size))
    answer = back_up(tmp_path / "desk.backup")
    assert isinstance(answer, Refused)
    assert answer.faults[0].where == "database"
    assert not (tmp_path / "desk.backup").exists()


def test_a_backup_that_would_not_restore_is_never_left_standing(
    desk: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(module, "_digest", lambda *_: "another")
    with pytest.raises(RuntimeError):
        back_up(tmp_path / "desk.backup")
    assert not [p.name for p in tmp_path.iterdir() if "backup" in p.name]
