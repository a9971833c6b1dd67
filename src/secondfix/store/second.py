"""A second connection for a while: a still picture of the database to copy, or a fresh store to try in."""

from collections.abc import Iterator
from contextlib import contextmanager
from copy import deepcopy
from typing import Any

import psycopg
from django.db import connections, transaction

STILL = "still"


@contextmanager
def beside(alias: str, database: dict[str, Any]) -> Iterator[str]:
    """Open ``database`` under ``alias``, and close and forget it afterwards."""
    settings: dict[str, Any] = connections.settings
    settings[alias] = connections.configure_settings({"default": deepcopy(database)})["default"]
    try:
        yield alias
    finally:
        connections[alias].close()
        del connections[alias]
        del settings[alias]


@contextmanager
def still() -> Iterator[str]:
    """The database as it stands at this moment, read without holding anybody up while it is read."""
    database = deepcopy(connections.settings["default"])
    if connections["default"].vendor == "sqlite":
        database["OPTIONS"]["transaction_mode"] = "DEFERRED"
    else:
        database["OPTIONS"]["isolation_level"] = psycopg.IsolationLevel.REPEATABLE_READ
    with beside(STILL, database) as alias, transaction.atomic(using=alias):
        yield alias
