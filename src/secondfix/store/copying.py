"""The form of a backup: every row of every table as lines of text, compressed, with a digest at the end.

Line 1 says what it is; then one line a row, tables in an order in which each finds what it refers to, rows by
their ids; the last line counts them and has the SHA-256 of all lines before. The same from either database,
and the same bytes again from the store that it was restored into.
"""

import gzip
import json
from collections.abc import Iterator
from hashlib import sha256
from pathlib import Path
from typing import IO, Any

from django.db import connections, models
from django.db.migrations.recorder import MigrationRecorder

from secondfix.house import Fault
from secondfix.store.models import (
    Account,
    CoverSheet,
    Edit,
    House,
    Issue,
    JournalEntry,
    KeyEntry,
    KeyShown,
    ListMapping,
)

FORMAT = 1
TABLES: tuple[type[models.Model], ...] = (
    Account, House, Edit, Issue, CoverSheet, JournalEntry, KeyEntry, KeyShown,
    ListMapping,
)  # fmt: skip
BY_NAME = {table.__name__: table for table in TABLES}
LONGEST_LINE_BYTES = 96 * 1024 * 1024  # a house of the largest size, with room to spare


def lines_of(alias: str, *, ring_key: str) -> Iterator[bytes]:
    """The lines of a backup of the database ``alias``; ``ring_key`` is the print of the key ring's key."""
    digest, rows = sha256(), {table.__name__: 0 for table in TABLES}
    head = {"secondfix_backup": FORMAT, "tables": sorted(migrations(alias)), "ring_key": ring_key}
    line = _line(head)
    digest.update(line)
    yield line
    for table in TABLES:
        for row in table._default_manager.using(alias).order_by("pk").iterator(chunk_size=100):
            line = _line([table.__name__, values_of(row)])
            digest.update(line)
            rows[table.__name__] += 1
            yield line
    yield _line({"rows": rows, "sha256": digest.hexdigest()})


def migrations(alias: str) -> set[str]:
    """The steps that the tables of this database have been through."""
    applied = MigrationRecorder(connections[alias]).applied_migrations()
    return {name for app, name in applied if app == "store"}


def values_of(row: models.Model) -> dict[str, str | None]:
    """Each column as text; None where nothing stands."""
    return {
        f.attname: None if f.value_from_object(row) is None else f.value_to_string(row)
        for f in row._meta.concrete_fields
    }


def row_of(name: str, values: dict[str, str | None]) -> models.Model:
    """The row again; columns that the backup does not know take their default."""
    table = BY_NAME[name]
    fields = {f.attname: f for f in table._meta.concrete_fields}
    return table(**{k: v if v is None else fields[k].to_python(v) for k, v in values.items()})


def checked(path: Path) -> dict[str, Any] | Fault:
    """Read the whole file once: its head, ``rows`` and ``sha256`` of its foot; or what is wrong with it."""
    digest, rows = sha256(), dict.fromkeys(BY_NAME, 0)
    head: dict[str, Any] = {}
    try:
        with gzip.open(path, "rb") as file:
            for number, line in enumerate(_lines(file)):
                plain = json.loads(line)
                if number == 0:
                    if not isinstance(plain, dict) or plain.get("secondfix_backup") != FORMAT:
                        return Fault(
                            str(path), "line 1", "no head of a backup", f"a backup of format {FORMAT}"
                        )
                    head = plain
                elif isinstance(plain, dict):
                    if plain != _foot(rows, digest.hexdigest(), like=plain) or file.read(1):
                        return Fault(
                            str(path), "digest", "another than its lines have", "a file as it was made"
                        )
                    return {**head, **plain}
                else:
                    rows[plain[0]] += 1
                digest.update(line)
    except (OSError, EOFError, ValueError, KeyError, TypeError, IndexError) as error:
        return Fault(str(path), "", "cannot be read to its end", f"a whole backup ({type(error).__name__})")
    return Fault(str(path), "", "cut off", "a backup with its last line")


def _foot(rows: dict[str, int], digest: str, *, like: dict[str, Any]) -> dict[str, Any]:
    """The last line as it should be; a backup of before a table was made does not count it."""
    named = like.get("rows") or {}
    return {"rows": {name: n for name, n in rows.items() if n or name in named}, "sha256": digest}


def rows_in(path: Path) -> Iterator[models.Model]:
    """Every row of a file that was checked."""
    with gzip.open(path, "rb") as file:
        for line in _lines(file):
            plain = json.loads(line)
            if isinstance(plain, list):
                yield row_of(plain[0], plain[1])


def _lines(file: IO[bytes] | gzip.GzipFile) -> Iterator[bytes]:
    while line := file.readline(LONGEST_LINE_BYTES):
        yield line


def _line(plain: object) -> bytes:
    return json.dumps(plain, ensure_ascii=False, separators=(",", ":")).encode() + b"\n"
