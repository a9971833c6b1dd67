"""What the status page tells of the database."""

from django.conf import settings
from django.db import connection

from secondfix.store.answers import Status
from secondfix.store.databases import SOUND_SQLITE


def status() -> Status:
    """The database in words, its edition, and what should be put right."""
    if connection.vendor == "postgresql":
        with connection.cursor() as cursor:
            cursor.execute("SHOW server_version")
            version = str(cursor.fetchone()[0])
            cursor.execute("SHOW fsync")
            flushes = cursor.fetchone()[0] == "on"
        told = () if flushes else ("fsync is off in PostgreSQL: a power cut can lose what was saved",)
        return Status("PostgreSQL", version, told)
    version = ".".join(map(str, settings.SQLITE_VERSION))
    if settings.SQLITE_VERSION >= SOUND_SQLITE:
        return Status("SQLite", version, ())
    sound = ".".join(map(str, SOUND_SQLITE))
    words = (
        f"SQLite {version} can damage a write-ahead log, so none is kept and saving is slower: use {sound}"
    )
    return Status("SQLite", version, (words,))
