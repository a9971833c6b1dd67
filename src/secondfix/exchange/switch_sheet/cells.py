"""What a cell may hold: one of some words, a figure in the sheet's unit, the id of something, free words.

Each kind of cell shows a plain value of the document as text and reads text back. What is read from a
text that was shown is the value that was shown.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal, InvalidOperation
from typing import Any, Protocol

from secondfix.house import ABSENT, EARTH, House


@dataclass(frozen=True, slots=True)
class Unreadable:
    """Why a text is no value of this cell: what was expected."""

    expected: str


class Cell(Protocol):
    """A kind of cell."""

    def shown(self, value: Any, house: House) -> str:
        """A plain value as text."""
        ...

    def read(self, text: str, house: House) -> Any | Unreadable:
        """The plain value of a text that is not empty."""
        ...

    def choices(self, house: House) -> list[str]:
        """Texts to choose from; empty where anything may be typed."""
        ...


@dataclass(frozen=True, slots=True)
class Choice:
    """One of some words; the document's own word is understood too."""

    labels: Mapping[str, str]

    def shown(self, value: Any, house: House) -> str:
        """The label."""
        return self.labels.get(str(value), str(value))

    def read(self, text: str, house: House) -> Any | Unreadable:
        """The document's word."""
        wanted = text.casefold()
        for value, label in self.labels.items():
            if wanted in {label.casefold(), value.casefold()}:
                return value
        close = [value for value, label in self.labels.items() if label.casefold().startswith(wanted)]
        return close[0] if len(close) == 1 else Unreadable(f"one of {', '.join(self.labels.values())}")

    def choices(self, house: House) -> list[str]:
        """Every label."""
        return list(self.labels.values())


@dataclass(frozen=True, slots=True)
class Figure:
    """A whole number of the document, shown in the unit of the sheet: ``per`` of it make one."""

    unit: str
    per: Decimal = Decimal(1)
    places: int = 0

    def shown(self, value: Any, house: House) -> str:
        """The figure, without a unit and without idle zeros."""
        text = f"{Decimal(value) / self.per:.{self.places}f}"
        return text.rstrip("0").rstrip(".") if "." in text else text

    def read(self, text: str, house: House) -> Any | Unreadable:
        """The whole number; the unit may stand behind the figure, and a comma may be the decimal sign."""
        bare = text.casefold().removesuffix(self.unit.casefold()).strip().replace(",", ".")
        try:
            figure = Decimal(bare) if bare.isascii() and len(bare) < 20 else None
        except InvalidOperation:
            figure = None
        if figure is None or not figure.is_finite():
            return Unreadable(f"a figure in {self.unit}" if self.unit else "a whole number")
        whole = figure * self.per
        if self.places == 0 and whole != whole.to_integral_value():
            return Unreadable(f"a whole number{' of ' + self.unit if self.unit else ''}")
        return int(whole.to_integral_value())

    def choices(self, house: House) -> list[str]:
        """Any figure."""
        return []


@dataclass(frozen=True, slots=True)
class Known:
    """The id of something in one collection of the house, with its name behind it where it has one."""

    collection: str
    what: str
    besides: Mapping[str, str] = field(default_factory=dict)

    def shown(self, value: Any, house: House) -> str:
        """``C3 Lighting, west``."""
        if value in self.besides:
            return self.besides[value]
        thing = getattr(house, self.collection).get(value)
        return f"{value} {thing.name}" if thing is not None else str(value)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """The id: by itself, before its name, or by a name that one thing alone has."""
        things = getattr(house, self.collection)
        for value, label in self.besides.items():
            if text.casefold() in {label.casefold(), value.casefold()}:
                return value
        head = text.split(maxsplit=1)[0]
        if head in things:
            return head
        named = [key for key, thing in things.items() if thing.name.casefold() == text.casefold()]
        if len(named) == 1:
            return named[0]
        if named:
            return Unreadable(f"the id of {self.what}: {', '.join(named)} have this name")
        return Unreadable(f"{self.what} of this house")

    def choices(self, house: House) -> list[str]:
        """Everything there is."""
        return [
            *self.besides.values(),
            *(f"{k} {v.name}" for k, v in getattr(house, self.collection).items()),
        ]


@dataclass(frozen=True, slots=True)
class Words:
    """Free words."""

    def shown(self, value: Any, house: House) -> str:
        """As they stand."""
        return str(value)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """As they stand."""
        return text

    def choices(self, house: House) -> list[str]:
        """Anything."""
        return []


@dataclass(frozen=True, slots=True)
class YesNo:
    """Yes or no."""

    def shown(self, value: Any, house: House) -> str:
        """In a word."""
        return "yes" if value else "no"

    def read(self, text: str, house: House) -> Any | Unreadable:
        """True or False."""
        return {"yes": True, "no": False}.get(text.casefold(), Unreadable("yes or no"))

    def choices(self, house: House) -> list[str]:
        """Both."""
        return ["yes", "no"]


NEUTRAL = Known("circuits", "a circuit", {ABSENT: "absent", EARTH: "earth"})
