"""Tables of the things of a house, a row each, put together here: a large house has thousands of cells."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from html import escape

from django.urls import reverse
from django.utils.safestring import SafeString, mark_safe

from secondfix.exchange import KINDS, fields_of, shown_thing
from secondfix.web.frame.asked import Asked
from secondfix.web.frame.softened import softened


@dataclass(frozen=True, slots=True)
class Extra:
    """A column that is no field: ``markup`` of the thing's id, every text of the house escaped in it."""

    heading: str
    markup: Callable[[Asked, str], str]


@dataclass(frozen=True, slots=True)
class Table:
    """A table of one kind, each row an anchor and a way to the thing's form."""

    kind: str
    title: str
    count: int
    headings: tuple[str, ...]
    rows: SafeString


def table_of(about: Asked, kind_name: str, title: str, columns: Sequence[str | Extra]) -> Table:
    """All things of a kind. Columns are keys of fields, those of the house's world alone, and extras."""
    kind, house = KINDS[kind_name], about.house
    headings = {f.key: f.heading for f in fields_of(kind, house)}
    shown = [c for c in columns if isinstance(c, Extra) or c in headings]
    keys = [c for c in shown if isinstance(c, str)]
    things = getattr(house, kind.collection)
    rows = []
    for thing_id in things:
        texts = shown_thing(house, kind, f"{kind.collection}.{thing_id}", keys)
        cells = (softened(texts[c]) if isinstance(c, str) else c.markup(about, thing_id) for c in shown)
        rows.append(_row(house.id, thing_id, cells))
    return Table(
        kind_name,
        title,
        len(things),
        tuple(headings[c] if isinstance(c, str) else c.heading for c in shown),
        mark_safe("\n".join(rows)),  # noqa: S308 - every text of the house is escaped above
    )


def _row(house_id: str, thing_id: str, cells: Iterable[str]) -> str:
    way = reverse("thing", args=[house_id, thing_id])
    head = f'<th scope="row"><a href="{way}">{escape(thing_id)}</a></th>'
    return f'<tr id="{thing_id}">{head}{"".join(f"<td>{c}</td>" for c in cells)}</tr>'
