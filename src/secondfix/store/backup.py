"""Backup and restore: one file for everything, tried in a fresh store before it is called a backup.

For a process of its own (``secondfix backup``), beside a desk that goes on working: connections are opened
and forgotten here that requests in other threads must not see.
"""

import gzip
import json
import os
import tempfile
from hashlib import sha256
from itertools import groupby, islice
from pathlib import Path

from django.conf import settings
from django.core.management import call_command
from django.db import DatabaseError, connections, transaction

from secondfix.house import Fault
from secondfix.store.answers import BackedUp, NoRingKeyError, Refused
from secondfix.store.copying import checked, lines_of, migrations, rows_in
from secondfix.store.databases import sqlite_at
from secondfix.store.ids import now
from secondfix.store.models import Account, House
from secondfix.store.ring import key_print
from secondfix.store.second import beside, still
from secondfix.store.status import LAST_BACKUP

TRIAL = "trial"


def back_up(path: Path) -> BackedUp | Refused:
    """Write houses, edits, issues, entries, sealed codes, cover sheets, mappings and accounts to ``path``.

    The picture is of one moment; nobody waits for it. Before it gets its name the file is restored into a
    fresh store and copied out of it again, and both must be the same, digest and row counts. The key of
    the key ring is *not* in it: keep ``ring.key`` of the data folder apart from it. Refused where ``path``
    stands already or cannot be written, or where the database itself is damaged.
    """
    if path.exists():
        return Refused((Fault(str(path), "", "a file that exists", "a new name: nothing is overwritten"),))
    damage = _damage()
    if damage:
        return Refused((Fault("database", "", damage, "a database that its own check finds whole"),))
    beside_it = path.with_name(f".{path.name}.part")
    try:
        try:
            _write(beside_it)
            answer = _tried(beside_it)
            os.link(beside_it, path)
        finally:
            beside_it.unlink(missing_ok=True)
    except OSError as error:
        return Refused(
            (Fault(str(path), "", (error.strerror or "cannot be written").lower(), "a free name"),)
        )
    _remember(path)
    return answer


def restore(path: Path) -> BackedUp | Refused:
    """Lay the contents of a backup into this store, which must be fresh: no account and no house yet.

    The file is read to its end and its digest and row counts are held against it before anything is
    written; all of it is laid, or none. Where ``ring_key_here`` is False, put the ``ring.key`` of the folder
    that the backup was made of into the data folder: until then no code can be shown.
    """
    if Account.objects.exists() or House.objects.exists():
        return Refused((Fault("store", "", "accounts or houses", "a fresh store: nothing is overwritten"),))
    return _laid(path, "default")


def _remember(path: Path) -> None:
    """Leave word for the status page; a folder that cannot take it is no reason to doubt the backup."""
    told = {"at": now().isoformat(), "file": path.name, "bytes": path.stat().st_size}
    try:
        (Path(settings.DATA or "") / LAST_BACKUP).write_text(json.dumps(told) + "\n")
    except OSError:
        return


def _write(path: Path) -> None:
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
    with os.fdopen(handle, "wb") as file:
        packed = gzip.GzipFile(filename="", mode="wb", compresslevel=6, fileobj=file, mtime=0)
        with packed, still() as alias:
            for line in lines_of(alias, ring_key=_own_print()):
                packed.write(line)
        file.flush()
        os.fsync(file.fileno())


def _tried(path: Path) -> BackedUp:
    """Restore it into a fresh store and copy that out again: the proof that it is a backup."""
    with tempfile.TemporaryDirectory() as folder:
        fresh = sqlite_at(Path(folder) / "trial.sqlite3", settings.SQLITE_VERSION)
        with beside(TRIAL, {**fresh, "CONN_MAX_AGE": 0}):
            call_command("migrate", database=TRIAL, verbosity=0, interactive=False)
            answer = _laid(path, TRIAL)
            if isinstance(answer, Refused):
                raise RuntimeError(f"the backup does not restore: {answer.faults[0]}")
            if _digest(TRIAL, _own_print()) != answer.digest:
                raise RuntimeError("the store that the backup restores into is not the one it was made of")
    return answer


def _digest(alias: str, ring_key: str) -> str:
    digest, last = sha256(), b""
    for line in lines_of(alias, ring_key=ring_key):
        digest.update(last)
        last = line
    return digest.hexdigest()


def _laid(path: Path, alias: str) -> BackedUp | Refused:
    head = checked(path)
    if isinstance(head, Fault):
        return Refused((head,))
    newer = set(head["tables"]) - migrations(alias)
    if newer:
        stands = f"tables made by {', '.join(sorted(newer))}"
        return Refused((Fault(str(path), "tables", stands, "a backup that is not of a newer Secondfix"),))
    with transaction.atomic(using=alias):
        for _, rows in groupby(rows_in(path), key=type):
            while batch := list(islice(rows, 200)):
                type(batch[0])._default_manager.using(alias).bulk_create(batch)
        connections[alias].check_constraints()
    return BackedUp(head["rows"], head["sha256"], head["ring_key"] == (_own_print() or None))


def _own_print() -> str:
    """The print of the key that stands here, '' where none does: houses are backed up all the same."""
    try:
        return key_print()
    except NoRingKeyError:
        return ""


def _damage() -> str:
    """What SQLite's own check says of the file ('' for whole); PostgreSQL keeps its own watch."""
    if connections["default"].vendor != "sqlite":
        return ""
    try:
        with connections["default"].cursor() as cursor:
            cursor.execute("PRAGMA integrity_check")
            told = [str(row[0]) for row in cursor.fetchall()]
    except DatabaseError as error:
        told = [str(error)]
    return "" if told == ["ok"] else "; ".join(told[:3])
