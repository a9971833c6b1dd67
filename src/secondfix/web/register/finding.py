"""What a person asks of the register: words to find, an order, a page."""

from dataclasses import dataclass
from typing import cast, get_args
from urllib.parse import urlencode

from django.http import HttpRequest

from secondfix.store import door

PAGE = 50
ORDERS = {"name": "name", "edit": "last edit", "stage": "stage", "open": "what is open"}


@dataclass(frozen=True, slots=True)
class Wanted:
    """``query`` is what stands before ``page=`` in the address of another page."""

    words: str
    order: door.Order
    page: int

    @property
    def query(self) -> str:
        """The same again, for the next page."""
        return urlencode({"find": self.words, "by": self.order}) + "&"


def wanted(request: HttpRequest) -> Wanted:
    """Read from the address; what cannot be read is the first page of all, by name."""
    by, page = request.GET.get("by", ""), request.GET.get("page", "")
    order = cast(door.Order, by) if by in get_args(door.Order) else "name"
    return Wanted(
        request.GET.get("find", "")[:80],
        order,
        int(page) if page.isascii() and page.isdigit() and 0 < len(page) < 7 else 1,
    )


@dataclass(frozen=True, slots=True)
class Page:
    """One page of the register, in the words of Django's own pages."""

    rows: tuple[door.HouseRow, ...]
    number: int
    count: int

    @property
    def pages(self) -> int:
        """How many pages there are: one at least."""
        return max(1, -(-self.count // PAGE))

    @property
    def start(self) -> int:
        """Which house stands first on it."""
        return (self.number - 1) * PAGE + 1

    @property
    def end(self) -> int:
        """Which stands last."""
        return self.start + len(self.rows) - 1


def page_of(asked: Wanted) -> Page:
    """The page asked for; the last one where there are fewer."""
    number = max(1, asked.page)
    found = door.find_houses(asked.words, order=asked.order, first=(number - 1) * PAGE, most=PAGE)
    last = max(1, -(-found.count // PAGE))
    if number > last:
        return page_of(Wanted(asked.words, asked.order, last))
    return Page(found.rows, number, found.count)


def spoken(stage: str) -> str:
    """A stage in words."""
    return str(door.Stage(stage).label)
