"""What the status page tells of the database and of the folder it stands in."""

import json
import shutil
from datetime import datetime
from pathlib import Path

from django.conf import settings
from django.db import connection

from secondfix.store.answers import LastBackup, Status
from secondfix.store.databases import SOUND_SQLITE
from secondfix.store.ids import now

_LITTLE_BYTES = 500 * 1024 * 1024
_OLD_DAYS = 7
LAST_BACKUP = "last-backup.json"


def status(at: datetime | None = None) -> Status:
    """The database in words, its edition, room left, the last backup, and what to put right.

    Ages are counted up to ``at``: now, where it is not given.
    """
    moment = at or now()
    database, version, told = _database()
    folder = Path(settings.DATA) if settings.DATA else None
    free = shutil.disk_usage(folder).free if folder else None
    last = last_backup()
    warnings = list(told)
    if free is not None and free < _LITTLE_BYTES:
        warnings.append(f"only {free // 1024**2} MB are free where the book is kept: saving stops with none")
    if last is None:
        warnings.append("no backup was ever made of this desk")
    elif (moment - last.at).days >= _OLD_DAYS:
        warnings.append(f"the last backup is {(moment - last.at).days} days old")
    return Status(database, version, tuple(warnings), str(folder or ""), free, last)


def last_backup() -> LastBackup | None:
    """When the last backup of this desk was made and what it was called; None where none is known."""
    if not settings.DATA:
        return None
    try:
        plain = json.loads((Path(settings.DATA) / LAST_BACKUP).read_text())
        return LastBackup(datetime.fromisoformat(plain["at"]), str(plain["file"]), int(plain["bytes"]))
    except (OSError, ValueError, KeyError, TypeError):
        return None


def _database() -> tuple[str, str, tuple[str, ...]]:
    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute("SHOW server_version")
            version = str(cursor.fetchone()[0])
            cursor.execute("SHOW fsync")
            flushes = cursor.fetchone()[0] == "on"
        told = () if flushes else ("fsync is off in PostgreSQL: a power cut can lose what was saved",)
        return "PostgreSQL", version, told
    version = ".".join(map(str, settings.SQLITE_VERSION))
    if settings.SQLITE_VERSION >= SOUND_SQLITE:
        return "SQLite", version, ()
    sound = ".".join(map(str, SOUND_SQLITE))
    words = (
        f"SQLite {version} can damage a write-ahead log, so none is kept and saving is slower: use {sound}"
    )
    return "SQLite", version, (words,)
