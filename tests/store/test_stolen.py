"""A stolen copy of the database gives no code and no key away, and no erased name."""

import base64
import gzip
from pathlib import Path

import pytest
from django.db import connection

from secondfix.store.door import Account, Right, back_up, create_account, erase_cover
from secondfix.store.secrets_kept import secret_of
from tests.desk import FOLDER, PASSWORD
from tests.store.conftest import Store
from tests.store.examples import HOUSE
from tests.store.filled import CODE, DSK, NAME, fill


def forms(secret: bytes) -> dict[str, bytes]:
    """The secret as it might stand in a file; base64 in each of its three alignments."""
    text = secret.hex()
    told = {
        "plain": secret,
        "hex": text.encode(),
        "HEX": text.upper().encode(),
        "UTF-16": secret.decode("latin-1").encode("utf-16-le"),
    }
    for shift in range(3):
        whole = base64.b64encode(bytes(shift) + secret)
        told[f"base64 {shift}"] = whole[4:-4]
    return told


def bytes_of(store: Store, tmp_path: Path) -> bytes:
    """Every byte that a thief of the database would have: its files with the log, or all its tables."""
    if store.file is not None:
        files = sorted(store.file.parent.glob(f"{store.file.name}*"))
        assert {f.name.removeprefix(store.file.name) for f in files} >= {"", "-wal"}
        return b"".join(f.read_bytes() for f in files)
    connection.cursor().execute("CHECKPOINT")
    with connection.cursor() as cursor:
        cursor.execute("SHOW data_directory")
        folder = Path(cursor.fetchone()[0])
    return b"".join(f.read_bytes() for f in sorted(folder.rglob("*")) if f.is_file())


def secrets() -> dict[str, bytes]:
    """What must not be found: codes, without their dashes too, and both secrets of the data folder."""
    return {
        "code": CODE.encode(),
        "code as bytes": bytes.fromhex(CODE),
        "DSK": DSK.encode(),
        "DSK without dashes": DSK.replace("-", "").encode(),
        "ring key": secret_of(FOLDER / "ring.key"),
        "session secret": secret_of(FOLDER / "session.secret"),
    }


def test_the_forms_are_found_where_they_stand() -> None:
    for form in forms(CODE.encode()).values():
        assert len(form) > 16
    held = b"xy" + base64.b64encode(b"K07:" + CODE.encode() + b"end")
    assert any(form in held for form in forms(CODE.encode()).values())


def test_no_code_and_no_key_stands_in_any_file_of_the_database(
    store: Store, writer: Account, tmp_path: Path
) -> None:
    fill(writer)
    stolen = bytes_of(store, tmp_path)
    assert b"Quill End" in stolen  # what is no secret does stand there: the search can find
    found = {
        (name, form)
        for name, secret in secrets().items()
        for form, text in forms(secret).items()
        if text in stolen
    }
    assert found == set()


def test_no_code_and_no_key_stands_in_a_backup(store: Store, writer: Account, tmp_path: Path) -> None:
    fill(writer)
    back_up(tmp_path / "desk.backup")
    stolen = gzip.decompress((tmp_path / "desk.backup").read_bytes())
    assert b"Quill End" in stolen
    for secret in secrets().values():
        assert not any(form in stolen for form in forms(secret).values())


@pytest.mark.parametrize("name", ["ring.key", "session.secret"])
def test_the_secrets_are_for_their_owner_alone(name: str) -> None:
    assert (FOLDER / name).stat().st_mode & 0o777 == 0o600
    assert FOLDER.stat().st_mode & 0o077 == 0


def test_an_erased_name_is_gone_from_the_files_of_sqlite(desk: Path, tmp_path: Path) -> None:
    writer = create_account(username="Ilka", password=PASSWORD, right=Right.WRITER, by=None)
    assert isinstance(writer, Account)
    fill(writer)
    store = Store("sqlite", file=desk)
    assert NAME.encode() in bytes_of(store, tmp_path)
    erase_cover(HOUSE, by=writer)
    assert NAME.encode() not in bytes_of(store, tmp_path)
