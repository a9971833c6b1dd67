"""Rows that are never changed or deleted, held by the database itself: not even our own slip gets past it.

Laid after every migration, because SQLite makes a table anew to change it and forgets what was laid on it.
A migration that must touch such rows drops them first.
"""

from typing import Any

from django.db import connections

KEPT = ("store_edit", "store_issue", "store_journalentry", "store_keyshown")
NOT_DELETED = ("store_account", "store_house", "store_keyentry")

_SQLITE = """CREATE TRIGGER IF NOT EXISTS {table}_no_{deed} BEFORE {deed} ON {table}
BEGIN SELECT RAISE(ABORT, '{table}: no {deed}'); END"""
_FUNCTION = """CREATE OR REPLACE FUNCTION store_refuse() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN
  RAISE EXCEPTION '%: no %', TG_TABLE_NAME, TG_OP USING ERRCODE = 'integrity_constraint_violation';
END $$"""
_POSTGRESQL = """CREATE OR REPLACE TRIGGER {table}_no_{deed} BEFORE {deed} ON {table}
FOR EACH ROW EXECUTE FUNCTION store_refuse()"""


def lay(*, using: str, **_: Any) -> None:
    """Lay the guards on the tables of the database ``using``."""
    connection = connections[using]
    here = set(connection.introspection.table_names())
    with connection.cursor() as cursor:
        if connection.vendor == "postgresql":
            cursor.execute(_FUNCTION)
        form = _POSTGRESQL if connection.vendor == "postgresql" else _SQLITE
        for table, deed in _guards():
            if table in here:
                cursor.execute(form.format(table=table, deed=deed))


def _guards() -> list[tuple[str, str]]:
    both = [(table, deed) for table in KEPT for deed in ("update", "delete")]
    return both + [(table, "delete") for table in NOT_DELETED]
