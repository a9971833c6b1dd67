"""Building stones of the document: the strict base, ids, text, surveyed facts."""

from typing import Annotated, Generic, TypeVar

from pydantic import BaseModel, ConfigDict, Field, Strict

from secondfix.terms import Known

T = TypeVar("T")

ID = r"^[A-Z][A-Za-z0-9_-]{0,15}$"
Id = Annotated[str, Field(pattern=ID)]
Slot = Annotated[str, Field(pattern=r"^[1-9][0-9]?$")]
GangId = Annotated[str, Field(pattern=r"^[A-Z][A-Za-z0-9_-]{0,15}\.[1-9][0-9]?$")]
Name = Annotated[str, Field(min_length=1, max_length=80)]
Note = Annotated[str, Field(max_length=500)]
Tag = Annotated[str, Field(pattern=r"^[a-z][a-z0-9_-]{0,30}$")]
Tags = Annotated[tuple[Tag, ...], Strict(False), Field(max_length=20)]


class Part(BaseModel):
    """Frozen and strict; unknown keys are refused; enumerated words are given by their value."""

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True)


class Fact(Part, Generic[T]):
    """A surveyed value and how it is known. An absent fact is unknown."""

    value: T
    known: Annotated[Known, Strict(False)]


def settled(fact: Fact[T] | None) -> T | None:
    """The value if somebody saw, measured or told it; None if absent or only assumed."""
    if fact is None or fact.known is Known.ASSUMED:
        return None
    return fact.value
