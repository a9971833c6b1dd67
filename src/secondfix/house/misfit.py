"""A contradiction inside a document, before the file's name is put to it."""

from collections.abc import Container, Iterator
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Misfit:
    """Place in the document, what stands there, what was expected."""

    path: str
    stands: str
    expected: str


def dangling(path: str, value: str | None, ids: Container[str], what: str) -> Iterator[Misfit]:
    """A misfit if ``value`` is given and is not among ``ids``."""
    if value is not None and value not in ids:
        yield Misfit(path, f"'{value}'", f"the id of a {what} of this house")
