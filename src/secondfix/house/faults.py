"""Faults of a document: told all at once, each in one line."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Fault:
    """One fault: file, place in it, what stands, what was expected."""

    where: str
    path: str
    stands: str
    expected: str

    def __str__(self) -> str:
        return f"{self.where}: {self.path or 'the document'}: {self.stands}; expected {self.expected}"
