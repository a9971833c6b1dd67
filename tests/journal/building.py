"""Entries put on the example house, and what its as-built house says."""

from typing import Any

from secondfix.catalogue import Model
from secondfix.journal import (
    AsBuilt,
    Entry,
    as_built,
    journal_of,
)
from tests.journal.writing import HOUSE, write

BOX = {"room": "R2", "mounts": {"1": {}}, "gangs": {"1": {}}}


def built(*entries: Entry, models: dict[str, Model] | None = None) -> AsBuilt:
    return as_built(HOUSE, journal_of(entries), models=models or {})


def says(b: AsBuilt) -> list[str]:
    return [d.says for d in b.differences]


def words(b: AsBuilt) -> list[str]:
    return [t.words for t in b.told]


def correction(number: int, path: str, value: object, subject: str, **fields: Any) -> Entry:
    return write(number, "survey_corrected", subject, path=path, found=value, **fields)
