"""Cells that hold several things at once, lengths as a tape gives them, and ids of what has no name."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from typing import Any

from secondfix.exchange.addresses import address_of
from secondfix.exchange.switch_sheet import Cell, Choice, Figure, Unreadable
from secondfix.house import House

NONE = "none"
_MM_PER_INCH = Decimal("25.4")  # exact (international inch, 1959)
_FEET = re.compile(
    r"^(?P<sign>[-−]?)(?:(?P<feet>\d{1,4})\s*['′]\s*-?\s*)?"
    r"(?:(?P<inches>\d{1,5})?\s*(?:(?P<over>\d{1,2})/(?P<under>2|4|8|16|32))?\s*[\"″])?$"
)


@dataclass(frozen=True, slots=True)
class Several:
    """A list, its members behind one another. ``empty`` is how a list without members is shown.

    Where it is a word, that says there are none, and an empty text that nobody knows.
    """

    of: Cell
    sign: str = ","
    empty: str = NONE

    def shown(self, value: Any, house: House) -> str:
        """Members, or the word for none."""
        return f"{self.sign} ".join(self._bare(v, house) for v in value) or self.empty

    def _bare(self, value: Any, house: House) -> str:
        """Ids stand without their names: a name may hold the sign between members."""
        return self.of.shown(value, house) if isinstance(self.of, Choice) else str(value)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """Every member read as its own cell would."""
        if text.casefold() == NONE:
            return []
        out = []
        for part in (p.strip() for p in text.split(self.sign)):
            value = self.of.read(part, house) if part else Unreadable("a member between the signs")
            if isinstance(value, Unreadable):
                return Unreadable(
                    f"{NONE}, or members with '{self.sign}' between them, each {value.expected}"
                )
            out.append(value)
        return out

    def choices(self, house: House) -> list[str]:
        """Too many to list: any members in any number."""
        del house
        return []


@dataclass(frozen=True, slots=True)
class Pairs:
    """A figure or an id for each of some keys: ``14: 2, 12: 4``."""

    keys: str
    values: str
    figures: bool = False
    empty: str = NONE

    def shown(self, value: Any, house: House) -> str:
        """Each pair, or the word for none."""
        del house
        return ", ".join(f"{k}: {v}" for k, v in value.items()) or self.empty

    def read(self, text: str, house: House) -> Any | Unreadable:
        """The pairs; each key once."""
        del house
        if text.casefold() == NONE:
            return {}
        out: dict[str, Any] = {}
        for part in text.split(","):
            key, colon, value = (p.strip() for p in part.partition(":"))
            whole = value.isascii() and value.isdecimal() and len(value) < 6
            if not colon or not value or key in out or (self.figures and not whole):
                return Unreadable(f"{NONE}, or {self.keys} and {self.values} as in '14: 2, 12: 4', each once")
            out[key] = int(value) if self.figures else value.split(maxsplit=1)[0]
        return out

    def choices(self, house: House) -> list[str]:
        """Anything."""
        del house
        return []


@dataclass(frozen=True, slots=True)
class Corners:
    """Corners of an outline: ``0 0, 4200 0, 4200 3100``."""

    def shown(self, value: Any, house: House) -> str:
        """x and y of each corner."""
        del house
        return ", ".join(f"{x} {y}" for x, y in value)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """Pairs of whole millimetres."""
        del house
        points = [p.split() for p in re.split(r"[,;]", text) if p.strip()]
        if any(len(p) != 2 or not all(re.fullmatch(r"-?\d{1,8}", v) for v in p) for p in points):
            return Unreadable("x and y of each corner in whole mm, such as '0 0, 4200 0, 4200 3100'")
        return [[int(x), int(y)] for x, y in points]

    def choices(self, house: House) -> list[str]:
        """Anything."""
        del house
        return []


@dataclass(frozen=True, slots=True)
class Corner:
    """One point of the plan: ``4200 3100``."""

    def shown(self, value: Any, house: House) -> str:
        """x and y."""
        return Corners().shown([value], house)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """A pair of whole millimetres."""
        points = Corners().read(text, house)
        if isinstance(points, list) and len(points) == 1:
            return points[0]
        return Unreadable("x and y in whole mm, such as '4200 3100'")

    def choices(self, house: House) -> list[str]:
        """Anything."""
        del house
        return []


@dataclass(frozen=True, slots=True)
class Layers:
    """Layers with their thickness: ``concrete 180, air 40, plasterboard 13``."""

    labels: Mapping[str, str]

    def shown(self, value: Any, house: House) -> str:
        """Material and millimetres of each."""
        del house
        return ", ".join(f"{self.labels[layer.material]} {layer.thickness_mm}" for layer in value)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """Each layer's material and millimetres."""
        out = []
        for part in text.split(","):
            words, _, figure = part.strip().removesuffix("mm").strip().rpartition(" ")
            material = Choice(self.labels).read(words.strip(), house) if words else None
            if not isinstance(material, str) or not re.fullmatch(r"\d{1,5}", figure):
                known = ", ".join(self.labels.values())
                return Unreadable(f"layers such as 'concrete 180, air 40'; of {known}, in whole mm")
            out.append({"material": material, "thickness_mm": int(figure)})
        return out

    def choices(self, house: House) -> list[str]:
        """Anything."""
        del house
        return []


@dataclass(frozen=True, slots=True)
class Length:
    """Whole millimetres; feet and inches are understood too, as a tape reads them."""

    def shown(self, value: Any, house: House) -> str:
        """Millimetres."""
        del house
        return str(value)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """``1050``, ``1050 mm``, ``3'-5 3/8"``."""
        found = _FEET.match(text) if re.search("['′\"″]", text) else None
        if found is None:
            read = Figure("mm").read(text, house)
            return Unreadable("whole mm, or feet and inches such as 3'-5 3/8\"") if _no(read) else read
        inches = Decimal(found["inches"] or 0) + 12 * Decimal(found["feet"] or 0)
        if found["over"]:
            inches += Decimal(found["over"]) / Decimal(found["under"])
        mm = int((inches * _MM_PER_INCH).to_integral_value())
        return -mm if found["sign"] else mm

    def choices(self, house: House) -> list[str]:
        """Any length."""
        del house
        return []


def _no(read: Any) -> bool:
    return isinstance(read, Unreadable)


@dataclass(frozen=True, slots=True)
class InRoom:
    """The id of something that has no name of its own, with its room behind it."""

    collection: str
    what: str

    def shown(self, value: Any, house: House) -> str:
        """``B07 Dining room``."""
        thing = getattr(house, self.collection).get(value)
        return f"{value} {house.rooms[thing.room].name}" if thing is not None else str(value)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """The id, by itself or before the room."""
        head = text.split(maxsplit=1)[0]
        return head if head in getattr(house, self.collection) else Unreadable(f"{self.what} of this house")

    def choices(self, house: House) -> list[str]:
        """Everything there is."""
        return [self.shown(key, house) for key in getattr(house, self.collection)]


@dataclass(frozen=True, slots=True)
class Bare:
    """The id of something that has neither name nor room."""

    collection: str
    what: str

    def shown(self, value: Any, house: House) -> str:
        """The id."""
        del house
        return str(value)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """The id."""
        return text if text in getattr(house, self.collection) else Unreadable(f"{self.what} of this house")

    def choices(self, house: House) -> list[str]:
        """Everything there is."""
        return list(getattr(house, self.collection))


@dataclass(frozen=True, slots=True)
class Address:
    """The 64-bit address of a device."""

    def shown(self, value: Any, house: House) -> str:
        """Sixteen hex digits."""
        del house
        return str(value)

    def read(self, text: str, house: House) -> Any | Unreadable:
        """However the digits are parted."""
        del house
        return address_of(text) or Unreadable("16 hex digits, as on the label or in the controller's list")

    def choices(self, house: House) -> list[str]:
        """Anything."""
        del house
        return []
