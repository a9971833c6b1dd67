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
        at = f"{self.where}: {self.path}" if self.path else self.where
        return f"{at}: {self.stands}; expected {self.expected}"
